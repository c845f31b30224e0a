import { useState } from 'react';
import { anyConnectorOf } from '../../../../boards/document/lookup';
import { connectorName } from '../../../../boards/document/names';
import { orientationOf } from '../../../../boards/drawing/orientation';
import { applyCommand } from '../../../../boards/edit/apply';
import type { Command } from '../../../../boards/edit/command';
import { refusalWords } from '../../../../boards/edit/refusal-words';
import { doCommand } from '../../../do-command';
import { Button } from '../../../look/button';
import { Choice } from '../../../look/choice';
import { Tick } from '../../../look/tick';
import { Window } from '../../../look/window';
import { useBuild, useWorkbench } from '../../../workbench';
import { emptyWords, labelProblem, numberingFrom, typedLabels } from './free-labels';
import { layoutOf } from './header-layout';
import { LabelInputs } from './label-inputs';
import { LabelPreview } from './label-preview';
import { NumberingPicker } from './numbering-picker';
import './connector.css';

const KEEP = [
  { id: 'labels', label: 'goes with the number of its pin' },
  { id: 'positions', label: 'stays where it is on the header' },
] as const;

interface NumberingDialogProps {
  readonly connector: string;
  readonly onClose: () => void;
}

/** How a connector is counted: by a scheme or by labels of one's own, shown as it would be before it is done. */
export function NumberingDialog({ connector: id, onClose }: NumberingDialogProps) {
  const workbench = useWorkbench();
  const build = useBuild();
  const connector = anyConnectorOf(build, id);
  if (connector === undefined) throw new Error(`No connector ${id}`);
  const [numbering, setNumbering] = useState(connector.grid.numbering);
  const [labels, setLabels] = useState(() => typedLabels(connector.grid));
  const [keep, setKeep] = useState<'labels' | 'positions'>('labels');
  const [typing, setTyping] = useState(connector.grid.numbering.scheme === 'free');

  const problem = typing ? labelProblem(labels) : '';
  const wanted = typing ? numberingFrom(labels) : numbering;
  const command = (anyway: boolean): Command => ({
    name: 'number-connector',
    args: { connector: id, numbering: wanted, keep, ...(anyway && { anyway: true }) },
  });
  const asked = problem === '' ? applyCommand(build, command(false)) : undefined;
  const cost = asked && !asked.ok ? refusalWords(asked.problem, build) : '';
  const result = problem === '' ? applyCommand(build, command(true)) : undefined;
  const after = result?.ok ? anyConnectorOf(result.value, id) : undefined;
  const layout = layoutOf(after ?? connector, build.view);
  const apply = () => {
    if (doCommand(workbench, command(cost !== ''))) onClose();
  };
  return (
    <Window
      title={`Number ${connectorName(build, id)}`}
      size="large"
      onClose={onClose}
      doings={
        <>
          <Button onPress={onClose}>Cancel</Button>
          <Button kind="main" disabled={problem !== '' || !result?.ok} onPress={apply}>
            {cost === '' ? 'Number it so' : 'Number it so anyway'}
          </Button>
        </>
      }
    >
      <Tick
        on={typing}
        onChange={(free) => {
          setTyping(free);
          // What was counted so far is what the labels begin with, and stays in its place.
          if (free) {
            setLabels(typedLabels({ ...connector.grid, numbering }));
            setKeep('positions');
          }
        }}
      >
        Labels of their own, typed pin by pin
      </Tick>
      {!typing && (
        <NumberingPicker
          grid={{ ...connector.grid, numbering }}
          orientation={orientationOf(build.view)}
          turn={connector.place.turn}
          onChoose={setNumbering}
        />
      )}
      <Choice label="What is known of a pin" options={KEEP} chosen={keep} onChoose={setKeep} />
      {typing && (
        <LabelInputs
          layout={layout}
          labels={labels}
          onType={([row, col], label) =>
            setLabels(labels.map((line, r) => (r === row ? line.with(col, label) : line)))
          }
        />
      )}
      {!typing && after && <LabelPreview connector={after} layout={layout} />}
      <p className="field-problem" role="alert">
        {problem || cost}
      </p>
      {typing && <p className="soft small">{emptyWords(labels)}</p>}
    </Window>
  );
}
