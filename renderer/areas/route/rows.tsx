import type { ReactNode } from 'react';
import { Button } from '../../look/button';
import type { TrayPart } from '../../store/session';
import { useSession, useWorkbench } from '../../workbench';
import { choose } from './tray/tray-bench';

interface RowGroupProps {
  readonly title: string;
  /** Its rows. */
  readonly children: ReactNode;
  /** What is to be said below them. */
  readonly below?: ReactNode;
}

/** Rows of a section under a heading. */
export function RowGroup({ title, children, below }: RowGroupProps) {
  return (
    <div className="route-group">
      <h3>{title}</h3>
      <ul>{children}</ul>
      {below}
    </div>
  );
}

interface PartRowProps {
  readonly part: TrayPart;
  readonly name: string;
  readonly words: string;
  /** After it was chosen by its name here. */
  readonly onChosen?: () => void;
  /** What can be said of it at once, at the end of its line. */
  readonly control: ReactNode;
  /** Below its line. */
  readonly children?: ReactNode;
}

/** Something of the tray: its name chooses it and brings it into sight on the map. */
export function PartRow({ part, name, words, onChosen, control, children }: PartRowProps) {
  const workbench = useWorkbench();
  const chosen = useSession(
    ({ selection }) =>
      selection.kind === 'on-tray' && selection.part.kind === part.kind && selection.part.id === part.id,
  );
  return (
    <li className="route-row" data-chosen={chosen || undefined}>
      <div className="route-row-line">
        <span className="route-row-name">
          <Button
            kind="link"
            onPress={() => {
              choose(workbench, part);
              workbench.canvas.current?.show([part.id]);
              onChosen?.();
            }}
          >
            {name}
          </Button>
          <span className="soft small">{words}</span>
        </span>
        {control}
      </div>
      {children}
    </li>
  );
}
