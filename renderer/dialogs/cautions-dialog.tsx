import { SEVERITIES } from '../../boards/findings/finding';
import { SeveritySign } from '../look/severity-sign';
import { Window } from '../look/window';
import { CAUTIONS } from '../words/caution-words';
import { SEVERITY_MEANINGS, SEVERITY_WORDS } from '../words/severity-words';

/** The cautions in full, and what the signs of the findings mean. */
export function CautionsDialog({ onClose }: { readonly onClose: () => void }) {
  return (
    <Window title="Before you touch a pin" onClose={onClose}>
      <ol className="cautions">
        {CAUTIONS.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ol>
      <h3>What the signs mean</h3>
      <ul className="legend">
        {SEVERITIES.map((severity) => (
          <li key={severity}>
            <SeveritySign severity={severity} />
            <strong>{SEVERITY_WORDS[severity]}</strong>
            {SEVERITY_MEANINGS[severity]}
          </li>
        ))}
      </ul>
    </Window>
  );
}
