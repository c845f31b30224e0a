import { ok, type Result, refuse } from '../../../../boards/base/result';
import { connectorName } from '../../../../boards/document/names';
import {
  type DriveRating,
  type FanRating,
  type HubRating,
  LINE_RATES_GBPS,
  type Rating,
  type SpeedMode,
} from '../../../../boards/document/rating';
import { USUAL_FAN } from '../../../../boards/routing/assign/build-fans';
import { doCommand } from '../../../do-command';
import { Choice } from '../../../look/choice';
import { ReadLine } from '../../../look/read-line';
import { Tick } from '../../../look/tick';
import { useBuild, useWorkbench } from '../../../workbench';
import type { FigureSubject } from './figure-entries';

type Of<Kind extends FigureSubject['kind']> = Extract<FigureSubject, { readonly kind: Kind }>;

const MOST_AMPS = 100;
const RATES = LINE_RATES_GBPS.map((rate) => ({ id: String(rate), label: `${rate}\u00a0Gb/s` }));
const UNREAD = { id: 'unread', label: 'not read' } as const;

/** A number above nothing, or nothing where it is not known. */
function readFigure(most: number, unit: string) {
  return (typed: string): Result<number | null, string> => {
    if (typed.trim() === '') return ok(null);
    const value = Number(typed.trim().replace(',', '.'));
    if (value > 0 && value <= most) return ok(value);
    return refuse(`Type ${unit}, more than 0 and at most ${most}, or nothing.`);
  };
}

interface FigureProps {
  readonly label: string;
  readonly value: number | undefined;
  readonly onDone: (value: number | undefined) => void;
  readonly most?: number;
  readonly unit?: string;
}

function Figure({ label, value, onDone, most = MOST_AMPS, unit = 'amps' }: FigureProps) {
  return (
    <ReadLine<number | null>
      label={label}
      shown={value === undefined ? '' : String(value)}
      placeholder="not read"
      read={readFigure(most, unit)}
      onDone={(next) => onDone(next ?? undefined)}
    />
  );
}

/** A fan by its label: nothing is kept until a current was read. */
export function FanFigures({ lead, part, fan }: Of<'fan'>) {
  const workbench = useWorkbench();
  const put = (next: FanRating | null) =>
    doCommand(workbench, { name: 'rate-fan', args: { lead, part, fan: next } });
  const of = fan ?? USUAL_FAN;
  return (
    <>
      <div className="route-pair">
        <Figure
          label="Running, A"
          value={fan?.runningAmps}
          onDone={(runningAmps) =>
            put(
              runningAmps === undefined
                ? null
                : { ...of, runningAmps, startAmps: Math.max(of.startAmps, runningAmps) },
            )
          }
        />
        <Figure
          label="At the start, A"
          value={fan?.startAmps}
          onDone={(startAmps) => put(startAmps === undefined ? null : { ...of, startAmps })}
        />
      </div>
      <Choice
        label="Cools"
        options={[
          { id: 'processor', label: 'the processor' },
          { id: 'case', label: 'the case' },
        ]}
        chosen={of.cools}
        onChoose={(cools) => put({ ...of, cools })}
      />
    </>
  );
}

const MODES: readonly { readonly id: string; readonly label: string; readonly modes: SpeedMode[] }[] = [
  { id: 'pwm', label: 'by pulses', modes: ['pwm'] },
  { id: 'dc', label: 'by the voltage', modes: ['dc'] },
  { id: 'both', label: 'by either', modes: ['pwm', 'dc'] },
];

/** A fan header or a data port by the board's manual. */
export function ConnectorFigures({
  kind,
  connector,
  rating,
}: Extract<FigureSubject, { readonly connector: string }>) {
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
      <Choice
        label="Line rate"
        options={[UNREAD, ...RATES]}
        chosen={lineRateGbps === undefined ? UNREAD.id : String(lineRateGbps)}
        onChoose={(id) => {
          const rate = LINE_RATES_GBPS.find((each) => String(each) === id);
          put(rate === undefined ? noRate : { ...rating, lineRateGbps: rate });
        }}
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

/** A drive by its label. */
export function DriveFigures({ unit, drive }: Of<'drive'>) {
  const workbench = useWorkbench();
  const put = (next: DriveRating | null) =>
    doCommand(workbench, { name: 'rate-unit', args: { unit, drive: next, hub: null } });
  const of: DriveRating = drive ?? { lineRateGbps: 6 };
  const { fastestMBps, ...unmeasured } = of;
  const { startAmps, ...unread } = of;
  return (
    <>
      <Choice
        label="Line rate"
        options={[UNREAD, ...RATES]}
        chosen={drive === undefined ? UNREAD.id : String(drive.lineRateGbps)}
        onChoose={(id) => {
          const rate = LINE_RATES_GBPS.find((each) => String(each) === id);
          put(rate === undefined ? null : { ...of, lineRateGbps: rate });
        }}
      />
      <div className="route-pair">
        <Figure
          label="At best, MB/s"
          value={fastestMBps}
          most={100_000}
          unit="megabytes a second"
          onDone={(next) => put(next === undefined ? unmeasured : { ...of, fastestMBps: next })}
        />
        <Figure
          label="At the start, A"
          value={startAmps}
          onDone={(next) => put(next === undefined ? unread : { ...of, startAmps: next })}
        />
      </div>
    </>
  );
}

/** A hub by its maker's sheet. */
export function HubFigures({ unit, hub, outlets }: Of<'hub'>) {
  const workbench = useWorkbench();
  const build = useBuild();
  const put = (next: HubRating | null) =>
    doCommand(workbench, { name: 'rate-unit', args: { unit, drive: null, hub: next } });
  const of: HubRating = hub ?? { fedBy: 'header', amps: 1 };
  const { speedOutlet, ...silent } = of;
  return (
    <>
      <Choice
        label="It is fed from"
        options={[
          { id: 'header', label: 'the header' },
          { id: 'supply', label: 'the supply unit' },
        ]}
        chosen={of.fedBy}
        onChoose={(fedBy) => put({ ...of, fedBy })}
      />
      <Figure
        label="Its outlets may carry together, A"
        value={hub?.amps}
        onDone={(amps) => put(amps === undefined ? null : { ...of, amps })}
      />
      <Choice
        label="The speed is reported of"
        options={[
          { id: 'none', label: 'none of its fans' },
          ...outlets.map((id) => ({ id, label: connectorName(build, id) })),
        ]}
        chosen={speedOutlet ?? 'none'}
        onChoose={(id) => put(id === 'none' ? silent : { ...of, speedOutlet: id })}
      />
    </>
  );
}
