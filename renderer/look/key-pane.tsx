import { type KeyboardEvent, type ReactNode, type RefObject, useRef } from 'react';
import { arrowStep } from './arrow-keys';
import './key-pane.css';

interface KeyPaneProps {
  /** What is drawn there, and what the keys do. */
  readonly label: string;
  /** Does what a key press asks for; false leaves the key to the page. */
  readonly onKey: (press: KeyboardEvent) => boolean;
  /** An arrow key is let go, or the focus leaves: what was moved stays where it is. */
  readonly onSettle: () => void;
  readonly ref?: RefObject<HTMLDivElement | null>;
  readonly children: ReactNode;
}

/** A drawing that takes the keys, Tab too: Escape and then Tab leaves it. */
export function KeyPane({ label, onKey, onSettle, ref, children }: KeyPaneProps) {
  /** Escape was pressed last: the next Tab goes on past the drawing. */
  const leaving = useRef(false);
  return (
    <div
      ref={ref}
      className="key-pane"
      role="application"
      aria-label={label}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: it takes the keys for what is chosen
      tabIndex={0}
      onKeyDown={(event) => {
        const leaves = leaving.current && event.key === 'Tab';
        leaving.current = event.key === 'Escape';
        if (!leaves && onKey(event)) event.preventDefault();
      }}
      onKeyUp={({ key }) => {
        if (arrowStep(key)) onSettle();
      }}
      onBlur={onSettle}
    >
      {children}
    </div>
  );
}
