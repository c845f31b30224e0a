import { useMemo, useState } from 'react';
import { Checkbox } from 'react-aria-components/Checkbox';
import { TURNS, type Turn } from '../../../boards/base/units';
import { serialize } from '../../../boards/document/serialize';
import { PAPER_FORMATS, type PaperFormat, SCALES } from '../../../boards/handover/order';
import { PAPER_IDS, PAPERS } from '../../../boards/handover/page/paper';
import type { PinoutOptions } from '../../../boards/handover/pinout/options';
import { Button } from '../../look/button';
import { Choice } from '../../look/choice';
import { Window } from '../../look/window';
import { useBuild, useWorkbench } from '../../workbench';
import { ConnectorList } from './connector-list';
import { PageView } from './page-view';
import './print-pinout.css';
import { savePinout } from './save-pinout';
import { usePagePicture } from './use-page-picture';

const PAPER_CHOICES = PAPER_IDS.map((id) => ({ id, label: PAPERS[id].name }));

const TURN_LABELS: Readonly<Record<Turn, string>> = {
  0: 'As the sheet has it',
  90: 'A quarter clockwise',
  180: 'By half',
  270: 'A quarter against the clock',
};
const TURN_CHOICES = TURNS.map((turn) => ({ id: String(turn), label: TURN_LABELS[turn] }));

const FORMAT_LABELS: Readonly<Record<PaperFormat, string>> = {
  pdf: 'PDF, to print',
  svg: 'SVG, sharp at any size',
  png: 'PNG, a picture of pixels',
};
const FORMAT_CHOICES = PAPER_FORMATS.map((id) => ({ id, label: FORMAT_LABELS[id] }));

const SCALE_CHOICES = [1, 2, 3, 4].map((scale) => ({
  id: String(scale),
  label: `${96 * scale} pixels an inch`,
}));

/** The pinout of the board as pages to print: how they lie, which connectors, what they look like, and off. */
export function PrintPinoutDialog({ onClose }: { readonly onClose: () => void }) {
  const workbench = useWorkbench();
  const { board, view } = useBuild();
  // As the board lies in the Wire area: that is how it lies before the person.
  const [lying, setLying] = useState(view);
  const [paper, setPaper] = useState<PinoutOptions['paper']>('a4');
  const [chosen, setChosen] = useState<ReadonlySet<string>>(
    () => new Set(board.connectors.map(({ id }) => id)),
  );
  const [format, setFormat] = useState<PaperFormat>('pdf');
  const [scale, setScale] = useState<number>(SCALES.usual);
  const [onePage, setOnePage] = useState(false);
  const [asked, setAsked] = useState(1);
  const [writing, setWriting] = useState(false);

  const text = useMemo(() => serialize(board), [board]);
  const options = useMemo((): PinoutOptions => {
    const ids = board.connectors.map(({ id }) => id).filter((id) => chosen.has(id));
    // Nothing chosen shows the first page alone, and cannot be saved.
    const connectors = ids.length === board.connectors.length || ids.length === 0 ? null : ids;
    return { paper, turn: lying.turn, mirrored: lying.mirrored, connectors };
  }, [board, chosen, paper, lying]);
  const change = (made: () => void) => {
    made();
    setAsked(1);
  };
  const print = useMemo(() => ({ kind: 'pinout', options }) as const, [options]);
  const picture = usePagePicture(text, print, asked);
  const nothing = chosen.size === 0 && board.connectors.length > 0;

  const save = async () => {
    const page = format !== 'pdf' && onePage ? asked : null;
    if (await savePinout(workbench, { board, options, format, page, scale }, setWriting)) onClose();
  };
  const stop = () => {
    void workbench.host.stopPaper();
    onClose();
  };

  return (
    <Window
      title="Print the pinout"
      size="wide"
      onClose={writing ? stop : onClose}
      doings={
        <>
          <p className="small soft print-state" role="status">
            {stateWords(writing, nothing)}
          </p>
          <Button onPress={writing ? stop : onClose}>{writing ? 'Stop' : 'Cancel'}</Button>
          <Button
            kind="main"
            disabled={writing || nothing || picture.problem !== null}
            onPress={() => void save()}
          >
            {`Save as ${format.toUpperCase()}…`}
          </Button>
        </>
      }
    >
      <div className="print-pinout">
        <div className="print-choices">
          <Choice
            label="Paper"
            options={PAPER_CHOICES}
            chosen={paper}
            onChoose={(id) => change(() => setPaper(id))}
          />
          <Choice
            label="Turned"
            options={TURN_CHOICES}
            chosen={String(lying.turn)}
            onChoose={(id) => change(() => setLying({ ...lying, turn: turnOf(id) }))}
          />
          <Checkbox
            className="check"
            isSelected={lying.mirrored}
            onChange={(mirrored) => change(() => setLying({ ...lying, mirrored }))}
          >
            <span className="check-box" aria-hidden="true" />
            Mirrored
          </Checkbox>
          <ConnectorList
            connectors={board.connectors}
            chosen={chosen}
            onChoose={(ids) => change(() => setChosen(ids))}
          />
          <Choice label="File" options={FORMAT_CHOICES} chosen={format} onChoose={setFormat} />
          {format !== 'pdf' && (
            <Checkbox className="check" isSelected={onePage} onChange={setOnePage}>
              <span className="check-box" aria-hidden="true" />
              Only the page that is shown
            </Checkbox>
          )}
          {format === 'png' && (
            <Choice
              label="Size"
              options={SCALE_CHOICES}
              chosen={String(scale)}
              onChoose={(id) => setScale(Number(id))}
            />
          )}
        </div>
        <PageView picture={picture} paper={paper} page={asked} onTurnTo={setAsked} />
      </div>
    </Window>
  );
}

function turnOf(id: string): Turn {
  return TURNS.find((turn) => String(turn) === id) ?? 0;
}

function stateWords(writing: boolean, nothing: boolean): string {
  if (writing) return 'The pages are being written …';
  return nothing ? 'Choose at least one connector.' : '';
}
