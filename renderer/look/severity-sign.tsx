import type { Severity } from '../../boards/findings/finding';
import { SEVERITY_WORDS } from '../words/severity-words';

interface SeveritySignProps {
  readonly severity: Severity;
  /** Says the word to screen readers; off where the word stands beside it. */
  readonly spoken?: boolean;
}

/** Octagon with hatching, filled diamond, ring with a question mark, dot: told apart by shape alone. */
export function SeveritySign({ severity, spoken = false }: SeveritySignProps) {
  const drawn = { className: `sign sign-${severity}`, viewBox: '0 0 24 24', width: 22, height: 22 } as const;
  return spoken ? (
    <svg {...drawn} role="img" aria-label={SEVERITY_WORDS[severity]}>
      <Shape severity={severity} />
    </svg>
  ) : (
    <svg {...drawn} aria-hidden="true">
      <Shape severity={severity} />
    </svg>
  );
}

function Shape({ severity }: { readonly severity: Severity }) {
  switch (severity) {
    case 'danger':
      return (
        <>
          <path className="sign-fill" d="M7.5 1.5h9l6 6v9l-6 6h-9l-6-6v-9z" />
          <path className="sign-hatch" d="M2.5 10.5l8-8M2.5 15l6.5-6.5M21.5 13.5l-8 8M21.5 9l-6.5 6.5" />
          <path className="sign-cut" d="M10.6 5.5h2.8l-.5 8.2h-1.8zM10.5 15.8h3v2.9h-3z" />
        </>
      );
    case 'fault':
      return <path className="sign-fill" d="M12 1.5L22.5 12 12 22.5 1.5 12z" />;
    case 'doubt':
      return (
        <>
          <circle className="sign-ring" cx="12" cy="12" r="9.5" />
          <path className="sign-ring" d="M9 9.6c0-1.8 1.3-2.9 3-2.9s3 1.1 3 2.7c0 2.1-3 2.3-3 4.3" />
          <circle className="sign-fill" cx="12" cy="17.2" r="1.3" />
        </>
      );
    case 'note':
      return <circle className="sign-fill" cx="12" cy="12" r="4.5" />;
  }
}
