import type { ReactNode } from 'react';
import { Button } from '../../look/button';
import { Window } from '../../look/window';
import { useWorkbench } from '../../workbench';
import './print-pinout.css';

interface PrintWindowProps {
  readonly title: string;
  readonly saveLabel: string;
  readonly onSave: () => void;
  readonly onClose: () => void;
  /** The file is being made. */
  readonly writing: boolean;
  /** What keeps it from being saved, in a sentence. */
  readonly missing?: string | undefined;
  /** Why it cannot be made stands where the page would be. */
  readonly broken: boolean;
  readonly children: ReactNode;
}

/** The window round choices and preview of a paper: what is going on, and the way to a file or out. */
export function PrintWindow(props: PrintWindowProps) {
  const { title, saveLabel, onSave, onClose, writing, missing, broken, children } = props;
  const { host } = useWorkbench();
  const leave = () => {
    if (writing) void host.stopPaper();
    onClose();
  };
  return (
    <Window
      title={title}
      size="wide"
      onClose={leave}
      doings={
        <>
          <p className="small soft print-state" role="status">
            {writing ? 'The pages are being written …' : (missing ?? '')}
          </p>
          <Button onPress={leave}>{writing ? 'Stop' : 'Cancel'}</Button>
          <Button kind="main" disabled={writing || missing !== undefined || broken} onPress={onSave}>
            {saveLabel}
          </Button>
        </>
      }
    >
      <div className="print-pinout">{children}</div>
    </Window>
  );
}
