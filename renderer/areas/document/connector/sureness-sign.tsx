import type { Sureness } from '../../../../boards/document/sureness';

/**
 * How far a disc is filled says how sure a pin is; a guess has a question mark, an unknown pin broken
 * lines. The words stand beside it.
 */
export function SurenessSign({ sureness }: { readonly sureness: Sureness }) {
  return (
    <svg className="sureness" viewBox="0 0 16 16" width={14} height={14} aria-hidden="true">
      <Shape sureness={sureness} />
    </svg>
  );
}

function Shape({ sureness }: { readonly sureness: Sureness }) {
  const ring = <circle className="sureness-ring" cx="8" cy="8" r="6.5" />;
  switch (sureness) {
    case 'sure':
      return <circle className="sureness-fill" cx="8" cy="8" r="7" />;
    case 'fairly':
      return (
        <>
          {ring}
          <path className="sureness-fill" d="M8 8V1.5A6.5 6.5 0 1 1 1.5 8z" />
        </>
      );
    case 'likely':
      return (
        <>
          {ring}
          <path className="sureness-fill" d="M8 1.5A6.5 6.5 0 0 1 8 14.5z" />
        </>
      );
    case 'unsaid':
      return (
        <>
          {ring}
          <path className="sureness-ring" d="M5 8h6" />
        </>
      );
    case 'guessed':
      return (
        <>
          {ring}
          <path className="sureness-ring" d="M6 6.4c0-1.2.9-1.9 2-1.9s2 .7 2 1.8c0 1.4-2 1.5-2 2.9" />
          <circle className="sureness-fill" cx="8" cy="11.6" r="0.9" />
        </>
      );
    case 'unknown':
      return <circle className="sureness-ring sureness-broken" cx="8" cy="8" r="6.5" />;
  }
}
