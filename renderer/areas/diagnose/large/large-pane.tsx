import type { ReactNode } from 'react';

interface LargePaneProps {
  readonly label: string;
  readonly stop?: boolean;
  /** The buttons below. */
  readonly doings: ReactNode;
  readonly children: ReactNode;
}

/** What is to be read in large letters, and what can be done about it. */
export function LargePane({ label, stop = false, doings, children }: LargePaneProps) {
  return (
    <>
      <section
        className={stop ? 'large-scroll large-stop' : 'large-scroll'}
        aria-label={label}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what does not fit is scrolled to by keys
        tabIndex={0}
      >
        {children}
      </section>
      <footer className="large-doings">{doings}</footer>
    </>
  );
}
