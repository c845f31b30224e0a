import { useState } from 'react';
import { Label } from 'react-aria-components/Label';
import { TextArea } from 'react-aria-components/TextArea';
import { TextField } from 'react-aria-components/TextField';
import { PinZ } from '../../../../boards/document/connector';
import { connectorName } from '../../../../boards/document/names';
import { doCommand } from '../../../do-command';
import { Button } from '../../../look/button';
import { Window } from '../../../look/window';
import { counted } from '../../../words/list-words';
import { useBuild, useWorkbench } from '../../../workbench';

/** The names of pins from lines that begin with their label: "1 PLED+". */
function namesIn(text: string) {
  return text.split('\n').flatMap((line) => {
    const [, pin, name] = /^\s*([A-Za-z]?\d{1,4})[\s:.)-]+(\S.*)$/.exec(line) ?? [];
    const read = PinZ.safeParse({ pin, name: name?.trim(), source: { kind: 'manual' } });
    return read.success ? [read.data] : [];
  });
}

interface PinListDialogProps {
  readonly connector: string;
  readonly onClose: () => void;
}

/** A list copied from a manual: the names of its pins are written to the connector. */
export function PinListDialog({ connector, onClose }: PinListDialogProps) {
  const workbench = useWorkbench();
  const build = useBuild();
  const [text, setText] = useState('');
  const pins = namesIn(text);
  const fill = () => {
    if (pins.length > 0 && doCommand(workbench, { name: 'fill-pins', args: { connector, pins } })) onClose();
  };
  return (
    <Window
      title={`Paste a pin list for ${connectorName(build, connector)}`}
      size="large"
      onClose={onClose}
      doings={
        <>
          <Button onPress={onClose}>Cancel</Button>
          <Button kind="main" disabled={pins.length === 0} onPress={fill}>
            {`Fill ${counted(pins.length, 'pin')}`}
          </Button>
        </>
      }
    >
      <TextField className="field" value={text} onChange={setText} autoFocus>
        <Label className="field-label">Lines of the manual, each with the label of its pin first</Label>
        <TextArea rows={12} />
      </TextField>
    </Window>
  );
}
