import type { Finding, FindingCode } from '../../../boards/findings/finding';
import { findingsOf } from '../../../boards/findings/findings';
import { wordsOf } from '../../../boards/findings/words';
import { type Bench, bench } from './harness';

export const pairs = ['ash', 'birch'] as const;
type Maker = (typeof pairs)[number];

interface Wanted {
  /** Whose cables, and whose outlets. */
  readonly cables: Maker;
  readonly outlets: Maker;
  /** Nobody has written down what the outlets carry. */
  readonly untold?: boolean;
}

/** A board, a drive and a card, all plugged in by the cables of one supply to the outlets of another, or of the same. */
export function supplies({ cables, outlets, untold = false }: Wanted) {
  const own = bench().unit(`supply-modular-${cables}`, cables);
  const there = bench().unit(`supply-modular-${outlets}`, outlets).build.units ?? [];
  const units = untold
    ? there.map((unit) => ({
        ...unit,
        connectors: unit.connectors.map((connector) => ({ ...connector, pins: [] })),
      }))
    : there;
  const at = (lead: string) => `${cables}-${lead}`;
  const to = (connector: string) => `${outlets}-${connector}`;
  const build = bench()
    .with({ units, extras: own.build.extras })
    .header('main-power-24', 'main')
    .header('cpu-power-2x4', 'cpu')
    .unit('drive', 'disk')
    .unit('card-one-socket', 'card')
    .seat(at('main'), to('main'), '1', { plug: 'supply' })
    .seat(at('main'), 'main', '1', { plug: 'board' })
    .seat(at('cpu'), to('power-1'), '1', { plug: 'supply' })
    .seat(at('cpu'), 'cpu', '1', { plug: 'board' })
    .seat(at('card'), to('power-2'), '1', { plug: 'supply' })
    .seat(at('card'), 'card-power', '1', { plug: 'card' })
    .seat(at('sata'), to('drives-1'), '1', { plug: 'supply' })
    .seat(at('sata'), 'disk-power', '1', { plug: 'first' });
  return { bench: asked(build), codes: build.codes(), faults: build.faults() };
}

function asked(made: Bench) {
  const found = findingsOf(made.build);
  return {
    build: made.build,
    /** The finding of a code on a connector; fails when there is none. */
    find<Code extends FindingCode>(code: Code, connector: string): Extract<Finding, { code: Code }> {
      const one = found.find((each) => isOf(each, code) && each.pins[0]?.connector === connector);
      if (!one || !isOf(one, code)) throw new Error(`No ${code} on ${connector}`);
      return one;
    },
    /** Codes of what is found on a connector, notes left out. */
    about: (connector: string) =>
      found
        .filter(
          ({ pins, severity }) => severity !== 'note' && pins.some((pin) => pin.connector === connector),
        )
        .map(({ code }) => code),
    words: (finding: Finding) => {
      const { title, reason } = wordsOf(finding, made.build);
      return { title: plain(title), reason: plain(reason) };
    },
  };
}

function isOf<Code extends FindingCode>(
  finding: Finding,
  code: Code,
): finding is Extract<Finding, { code: Code }> {
  return finding.code === code;
}

export function plain(text: string): string {
  return text.replaceAll('\u00a0', ' ');
}
