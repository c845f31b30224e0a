import type { Rating, SpeedMode } from '../../../../boards/document/rating';
import { doCommand } from '../../../do-command';
import { Choice } from '../../../look/choice';
import { Tick } from '../../../look/tick';
import { useBuild, useWorkbench } from '../../../workbench';
import { Figure } from '../figure';
import type { SubjectOf } from './figure-entries';
import { LineRateChoice, UNREAD } from './line-rate-choice';

const MODES: readonly { readonly id: string; readonly label: string; readonly modes: SpeedMode[] }[] = [
  { id: 'pwm', label: 'by pulses', modes: ['pwm'] },
  { id: 'dc', label: 'by the voltage', modes: ['dc'] },
  { id: 'both', label: 'by either', modes: ['pwm', 'dc'] },
];

/** A fan header or a data port by the board's manual. */
export function ConnectorFigures({ kind, connector, rating }: SubjectOf<'header' | 'port'>) {
  const workbench = useWorkbench();
  const build = useBuild();
  const put = (next: Rating) =>
    doCommand(workbench, {
      name: 'rate-connector',
      args: { connector, rating: Object.keys(next).length === 0 ? null : next },
    });
  const { amps: _, ...noAmps } = rating;
  const { fanModes, ...noModes } = rating;
  const { lineRateGbps, ...noRate } = rating;
  const { offWith = [], ...always } = rating;
  const { watched, ...unwatched } = rating;
  if (kind === 'header')
    return (
      <>
        <Figure
          label="It may carry, A"
          value={rating.amps}
          onDone={(amps) => put(amps === undefined ? noAmps : { ...rating, amps })}
        />
        <Choice
          label="It sets the speed"
          options={[UNREAD, ...MODES]}
          chosen={MODES.find(({ modes }) => modes.join() === fanModes?.join())?.id ?? UNREAD.id}
          onChoose={(id) => {
            const found = MODES.find((each) => each.id === id);
            put(found ? { ...rating, fanModes: [...found.modes] } : noModes);
          }}
        />
        <Tick on={watched === true} onChange={(on) => put(on ? { ...rating, watched: true } : unwatched)}>
          The board watches it for the processor’s fan
        </Tick>
      </>
    );
  return (
    <>
      <LineRateChoice
        rate={lineRateGbps}
        onChoose={(rate) => put(rate === undefined ? noRate : { ...rating, lineRateGbps: rate })}
      />
      {(build.board.drivePlaces ?? []).map(({ id, name }) => (
        <Tick
          key={id}
          on={offWith.includes(id)}
          onChange={(on) => {
            const next = on ? [...offWith, id] : offWith.filter((each) => each !== id);
            put(next.length === 0 ? always : { ...rating, offWith: next });
          }}
        >
          {`Off while something is in ${name}`}
        </Tick>
      ))}
    </>
  );
}
