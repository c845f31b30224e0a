import { Trash2, Undo2 } from 'lucide-react';
import { listed } from '../../../../boards/base/listed';
import { CAUSES } from '../../../../boards/diagnosis/faults/causes';
import type { LineEffect } from '../../../../boards/diagnosis/log/effects';
import { lineWords } from '../../../../boards/diagnosis/log/log-words';
import type { ReadLine } from '../../../../boards/diagnosis/log/read-log';
import { LIMITS } from '../../../../boards/document/limits';
import { useAction } from '../../../actions/actions';
import { Button, IconButton } from '../../../look/button';
import { TextLine } from '../../../look/text-line';
import { useWorkbench } from '../../../workbench';
import { dropLine, noteRemark, startOver } from '../doings';
import type { Diagnosis } from '../use-diagnosis';

/** What was said and tried, the last on top, with what each line ruled out; a remark can be added. */
export function LogPanel({ diagnosis }: { readonly diagnosis: Diagnosis }) {
  const workbench = useWorkbench();
  const undo = useAction('edit.undo');
  const { lines, effects, awaited } = diagnosis;
  return (
    <section className="log" aria-label="Log">
      <TextLine
        label="A remark, written down by Enter"
        value=""
        maxLength={LIMITS.remarkLength}
        placeholder="The button was changed in spring."
        onDone={(text) => text.trim() !== '' && noteRemark(workbench, text.trim())}
      />
      <div className="log-doings">
        <Button kind="quiet" label={undo.label} disabled={!undo.enabled} onPress={() => void undo.run()}>
          <Undo2 size={16} aria-hidden="true" />
          Undo
        </Button>
        <Button disabled={!lines.some(({ current }) => current)} onPress={() => startOver(workbench)}>
          Start over, keep the log
        </Button>
      </div>
      {lines.length === 0 ? (
        <p className="soft">
          Nothing is written down yet. Answers and results come here by themselves, and are saved in the
          build.
        </p>
      ) : (
        <ol
          className="log-lines"
          aria-label="Lines of the log, the last first"
          aria-busy={awaited.has('effects')}
          reversed
        >
          {lines.toReversed().map((line) => (
            <Line key={line.at} diagnosis={diagnosis} line={line} effect={effects.get(line.entry)} />
          ))}
        </ol>
      )}
    </section>
  );
}

interface LineProps {
  readonly diagnosis: Diagnosis;
  readonly line: ReadLine;
  readonly effect: LineEffect | undefined;
}

function Line({ diagnosis: { build }, line, effect }: LineProps) {
  const workbench = useWorkbench();
  const { what, came } = lineWords(build, line);
  const { day } = line.entry;
  return (
    <li className="log-line" data-current={line.current}>
      <div>
        <p>
          <span className="mono soft small">{line.at + 1}</span> {what}{' '}
          {came !== '' && <strong>{came}</strong>}
        </p>
        {effect && effect.ruledOut.length > 0 && <p className="small">Ruled out: {ruledOutWords(effect)}.</p>}
        {effect?.nowFirst && <p className="small">Likeliest since: {CAUSES[effect.nowFirst]}.</p>}
        {day !== undefined && <p className="soft small">{day}</p>}
      </div>
      <IconButton
        label={`Take line ${line.at + 1} out`}
        icon={<Trash2 size={16} aria-hidden="true" />}
        onPress={() => dropLine(workbench, line.at)}
      />
    </li>
  );
}

/** Causes that are named of those that a line ruled out. */
const NAMED = 4;

function ruledOutWords({ ruledOut }: LineEffect): string {
  const named = ruledOut.slice(0, NAMED).map((cause) => CAUSES[cause]);
  const more = ruledOut.length - named.length;
  return listed(more > 0 ? [...named, `${more}\u00a0more`] : named);
}
