import { gridIndex } from '../../document/numbering';
import type { CheckContext } from '../context';
import { type Inlet, inletsOf, isFed } from '../fed-pins';
import type { FindingOf } from '../finding';
import { feedRemedies } from '../power-remedies';
import type { Rule } from '../rule';

type Missing = FindingOf<'main-power-missing'>;

/**
 * Where a supply is in the build, the board's main connector needs its plug, all of its pins covered, and the two
 * lines by which the board switches the supply on and is told that it is.
 *
 * Good: a plug of 24 on 24 pins.
 * Bad: no plug, or no wire in the place of PS_ON#: nothing starts. The four extra pins left off: less copper for
 * every rail than the board was made for.
 */
export const mainPowerMissing: Rule<'main-power-missing'> = {
  id: 'main-power-missing',
  source: 'microATX specification v1.2, Figure 8',
  explains: ['rail-left-off'],
  check: (context) =>
    inletsOf(context)
      .filter(({ job }) => job === 'main-power')
      .flatMap((inlet) => missingAt(context, inlet)),
};

function missingAt(context: CheckContext, inlet: Inlet): readonly Missing[] {
  const { connector } = inlet;
  if (!isFed(inlet)) {
    const all = connector.pins.map(({ pin }) => pin);
    return [missing(context, inlet, { severity: 'fault', pins: all, left: [], lines: [] })];
  }
  // A wire that is not there, or with nothing at its other end.
  const lost = inlet.lines.filter(({ fed }) => fed === 'nothing');
  const left = bareLabels(inlet).filter((label) => lost.every(({ pin }) => pin.pin !== label));
  return [
    ...lost.map(({ pin, signal }) =>
      missing(context, inlet, { severity: 'fault', pins: [pin.pin], left: [], lines: [signal] }),
    ),
    ...(left.length > 0 ? [missing(context, inlet, { severity: 'doubt', pins: left, left, lines: [] })] : []),
  ];
}

interface What extends Pick<Missing, 'severity'>, Pick<Missing['data'], 'left' | 'lines'> {
  readonly pins: readonly string[];
}

function missing(
  context: CheckContext,
  { connector, plugs }: Inlet,
  { severity, pins, left, lines }: What,
): Missing {
  return {
    code: 'main-power-missing',
    severity,
    leads: plugs.map(({ lead }) => lead.id),
    pins: pins.map((pin) => ({ connector: connector.id, pin })),
    data: { connector: connector.id, plugged: plugs.length > 0, left, lines },
    remedies: feedRemedies(context, connector),
  };
}

/** Pins that no plug covers. */
function bareLabels({ connector, plugs }: Inlet): readonly string[] {
  const covered = new Set(plugs.flatMap(({ fit }) => fit.landings.flatMap(({ pin }) => pin?.pin ?? [])));
  return gridIndex(connector.grid)
    .positions.map(({ label }) => label)
    .filter((label) => !covered.has(label));
}
