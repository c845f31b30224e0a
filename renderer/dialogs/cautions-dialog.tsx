import { Window } from '../look/window';
import { CAUTIONS } from '../words/caution-words';

export function CautionsDialog({ onClose }: { readonly onClose: () => void }) {
  return (
    <Window title="Before you touch a pin" onClose={onClose}>
      <ol className="cautions">
        {CAUTIONS.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ol>
    </Window>
  );
}
