import { useDeferredValue, useMemo, useState } from 'react';
import { Label } from 'react-aria-components/Label';
import { TextArea } from 'react-aria-components/TextArea';
import { TextField } from 'react-aria-components/TextField';
import type { Connector, PinSource } from '../../../../boards/document/connector';
import { anyConnectorOf } from '../../../../boards/document/lookup';
import { choiceKey, pinsOf, withChoices } from '../../../../boards/pinout/pin-list/filling';
import { listRefusalWords } from '../../../../boards/pinout/pin-list/list-words';
import { readPinList, tooMuch } from '../../../../boards/pinout/pin-list/pin-list';
import type { ListRefusal } from '../../../../boards/pinout/pin-list/reading';
import { shortcutWords } from '../../../actions/shortcut';
import { isMac } from '../../../actions/use-keys';
import { doCommand } from '../../../do-command';
import { Button } from '../../../look/button';
import { Window } from '../../../look/window';
import { counted } from '../../../words/list-words';
import { useBuild, useWorkbench } from '../../../workbench';
import { draftFor, keepDraft } from './drafts';
import type { LargerShape } from './larger-shape';
import { ListPreview } from './list-preview';
import { ListSource } from './list-source';
import type { Meant } from './word-choice';
import '../document.css';
import './pin-list.css';

const SAMPLE = '1 PLED+\n2 HDD LED -\nPin 3: PWRBTN#\n5, 7: GND\n10 no pin';

interface PinListDialogProps {
  readonly connector: string;
  readonly onClose: () => void;
}

/** A list copied from a manual or a page, what is made of it word by word, and one step that fills it in. */
export function PinListDialog({ connector: id, onClose }: PinListDialogProps) {
  const connector = anyConnectorOf(useBuild(), id);
  return connector && <Dialog connector={connector} onClose={onClose} />;
}

function Dialog({ connector, onClose }: { readonly connector: Connector; readonly onClose: () => void }) {
  const workbench = useWorkbench();
  const mac = isMac(workbench);
  const [text, setText] = useState(() => draftFor(workbench, connector.id));
  const [source, setSource] = useState<PinSource>({ kind: 'manual' });
  const [choices, setChoices] = useState<ReadonlyMap<string, Meant>>(new Map());
  // A text that is too much is answered and not put into the field, which would take seconds to show it.
  const [refused, setRefused] = useState<ListRefusal | null>(null);
  const given = useDeferredValue(text);
  const { grid, title, print } = connector;
  const result = useMemo(
    () => readPinList(given, { grid, title: `${print} ${title}` }),
    [given, grid, title, print],
  );
  const read = result.ok ? withChoices(result.value.pins, choices) : [];
  const pins = pinsOf(read, source).filter(({ signal, missing, name }) => signal || missing || name);
  const fill = () => {
    const { id } = connector;
    if (pins.length === 0 || given !== text) return;
    if (doCommand(workbench, { name: 'fill-pins', args: { connector: id, pins: [...pins] } })) {
      keepDraft(workbench, id, '');
      onClose();
    }
  };
  const reshape = ({ rows, cols }: LargerShape) => {
    const { rowPitchMm = null, pitchMm } = grid;
    const { id, family, shroud = null } = connector;
    doCommand(workbench, {
      name: 'reshape-connector',
      args: { connector: id, shape: { rows, cols, pitchMm, rowPitchMm, family, shroud } },
    });
  };
  return (
    <Window
      title={`Paste a pin list for ${print || title}`}
      size="wide"
      onClose={onClose}
      doings={
        <>
          <Button onPress={onClose}>Cancel</Button>
          <Button kind="main" disabled={pins.length === 0} onPress={fill}>
            {`Fill ${counted(pins.length, 'pin')}`}
            <kbd className="keys">{shortcutWords('Mod+Enter', mac)}</kbd>
          </Button>
        </>
      }
    >
      <div
        className="pin-list"
        onKeyDownCapture={(event) => {
          if (event.key !== 'Enter' || !(mac ? event.metaKey : event.ctrlKey)) return;
          event.preventDefault();
          event.stopPropagation();
          fill();
        }}
      >
        <div className="list-given">
          <TextField
            className="field list-text"
            value={text}
            onChange={(typed) => {
              setRefused(null);
              setText(typed);
              keepDraft(workbench, connector.id, typed);
            }}
            autoFocus
          >
            <Label className="field-label">The list, as it was copied</Label>
            <TextArea
              className="mono"
              placeholder={SAMPLE}
              spellCheck="false"
              onPaste={(event) => {
                const problem = tooMuch(event.clipboardData.getData('text/plain'));
                if (problem === undefined) return;
                event.preventDefault();
                setRefused(problem);
              }}
            />
          </TextField>
          <ListSource source={source} onChange={setSource} />
        </div>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls */}
        <section className="list-read" aria-label="What was understood" tabIndex={0}>
          {refused !== null && <Refused {...listRefusalWords(refused)} kept={text !== ''} />}
          {refused !== null && text === '' ? null : result.ok ? (
            <ListPreview
              connector={connector}
              pins={read}
              problems={result.value.problems}
              onChoose={(pin, meant) => setChoices(new Map([...choices, [choiceKey(pin), meant]]))}
              onReshape={reshape}
            />
          ) : (
            <Refused {...listRefusalWords(result.problem)} />
          )}
        </section>
      </div>
    </Window>
  );
}

interface RefusedProps {
  readonly title: string;
  readonly advice: string;
  /** Whether another list stands in the field all the same. */
  readonly kept?: boolean;
}

function Refused({ title, advice, kept = false }: RefusedProps) {
  return (
    <div className="list-refused" role="status">
      <p>{title}.</p>
      <p className="soft">{kept ? `${advice} The list that was here stays.` : advice}</p>
    </div>
  );
}
