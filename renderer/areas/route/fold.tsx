import { type ReactNode, useEffect, useState } from 'react';

interface FoldProps {
  readonly title: string;
  /** Unfolds when it becomes true; the person can fold it away again. */
  readonly unfolds?: boolean;
  readonly children: ReactNode;
}

/** A part of the panel that can be folded away. */
export function Fold({ title, unfolds = false, children }: FoldProps) {
  const [open, setOpen] = useState(unfolds);
  useEffect(() => {
    if (unfolds) setOpen(true);
  }, [unfolds]);
  return (
    <details
      className="route-section route-fold"
      open={open}
      onToggle={({ currentTarget }) => setOpen(currentTarget.open)}
    >
      <summary>
        <h2>{title}</h2>
      </summary>
      <div className="route-fold-body">{children}</div>
    </details>
  );
}
