import type { Fault } from '../faults/fault';
import { shareIn, type Touched } from './causes-touched';
import type { Chances, ResultId, Trial } from './trial';

/** What a look may find, and how often it finds it where it is there. All shares: common practice, no source. */
type Findings = Readonly<Partial<Record<ResultId, Touched>>>;

/** How often something that is not there is taken for it. Common practice, no source. */
const FOUND_WRONGLY = 0.03;

/** How often what was found, and put right, was what was wrong. Common practice, no source. */
const PUT_RIGHT = 0.95;

/** Something that is looked at with mains off, and what may be found there. */
interface LookRow {
  readonly id: string;
  readonly effort: number;
  readonly finds: Findings;
}

const LOOKS: readonly LookRow[] = [
  {
    id: 'look-rear-switch',
    effort: 2,
    finds: {
      'switch-off': { causes: { 'rear-switch-off': 0.95 } },
      'selector-wrong': { causes: { 'mains-selector': 0.9 } },
      'metal-in-port': { faults: { 'finger-in-port': 0.5 } },
    },
  },
  {
    id: 'feel-buttons',
    effort: 2.5,
    finds: {
      hangs: { causes: { 'switch-stuck': 0.7, 'switch-broken': 0.05 } },
      'no-click': { causes: { 'switch-broken': 0.45, 'switch-stuck': 0.1 } },
    },
  },
  {
    id: 'look-front-plugs',
    effort: 4,
    finds: {
      'plug-off': {
        causes: { 'panel-lead-missing': 0.9, 'jumper-missing': 0.1, speaker: 0.2, 'led-wiring': 0.2 },
      },
      'plug-elsewhere': {
        causes: {
          'panel-lead-miswire': 0.85,
          'usb-miswire': 0.8,
          'wrong-header-same-shape': 0.8,
          'audio-miswire': 0.8,
          'off-by-one': 0.85,
          'fan-header': 0.8,
          'led-wiring': 0.3,
          speaker: 0.4,
          'jumper-wrong': 0.1,
          'inline-device': 0.1,
        },
      },
      'plug-turned': { causes: { 'led-polarity': 0.8, 'polarity-switch-electronic': 0.3 } },
      'plug-other-kind': {
        causes: {
          'panel-lead-mismatch': 0.85,
          'audio-mismatch': 0.5,
          'usb-nonstandard': 0.3,
          'audio-label-confusion': 0.4,
        },
      },
    },
  },
  {
    id: 'look-supply-plugs',
    effort: 4,
    finds: {
      'plug-off': { causes: { 'power-cable-missing': 0.85 } },
      'plug-turned': { causes: { 'power-cable-reversed': 0.85 } },
      'plug-other-kind': { causes: { 'power-cable-mismatch': 0.85, 'modular-mix': 0.6 } },
      'in-the-way': { causes: { 'header-blocked': 0.85 } },
      burnt: { causes: { 'adapter-burn': 0.6, 'modular-mix': 0.2 }, faults: { 'metal-in-plug': 0.3 } },
      pinched: { causes: { 'cable-short': 0.4 } },
    },
  },
  {
    id: 'look-processor-plug',
    effort: 3,
    finds: {
      'plug-off': { faults: { 'processor-plug-off': 0.95 } },
      'in-the-way': { causes: { 'header-blocked': 0.8 } },
    },
  },
  {
    id: 'look-card-plug',
    effort: 3,
    finds: {
      'plug-off': { faults: { 'card-plug-off': 0.95 } },
      'came-loose': { faults: { 'came-loose': 0.3 } },
    },
  },
  {
    id: 'look-drive-plugs',
    effort: 3,
    finds: {
      'plug-off': { faults: { 'drive-plug-off': 0.95 }, causes: { 'sata-cable': 0.2 } },
      'socket-broken': { causes: { 'drive-socket': 0.8 } },
      burnt: { causes: { 'adapter-burn': 0.7 }, faults: { 'metal-in-plug': 0.5 } },
      'plug-turned': { causes: { 'power-cable-reversed': 0.8 } },
    },
  },
  {
    id: 'look-caps',
    effort: 3.5,
    finds: {
      'cap-off': { causes: { 'jumper-missing': 0.85, intrusion: 0.4 } },
      'cap-elsewhere': { causes: { 'jumper-wrong': 0.85, 'usb-power-jumper': 0.85 } },
    },
  },
  { id: 'look-case-open', effort: 4, finds: { found: { causes: { intrusion: 0.85 } } } },
  {
    id: 'look-cooler',
    effort: 4,
    finds: {
      'cooler-loose': { causes: { cooling: 0.7, transport: 0.2 } },
      'fan-stuck': { causes: { 'fan-fault': 0.5 } },
      'in-the-way': { causes: { 'header-blocked': 0.4 } },
    },
  },
  {
    id: 'look-fans',
    effort: 4,
    finds: {
      'hub-unfed': { causes: { 'fan-hub': 0.7 } },
      'signals-joined': { causes: { 'fan-splitter': 0.7 } },
      'wire-open': { causes: { 'fan-wiring': 0.6 } },
      'fan-stuck': { causes: { 'fan-fault': 0.5 } },
      'plug-elsewhere': { causes: { 'fan-header': 0.8, 'off-by-one': 0.8 } },
    },
  },
  {
    id: 'look-parts',
    effort: 4,
    finds: {
      'came-loose': { causes: { transport: 0.8 }, faults: { 'memory-seat': 0.35, 'memory-turned': 0.9 } },
    },
  },
  {
    id: 'look-board',
    effort: 4,
    finds: {
      burnt: { causes: { 'board-damage': 0.6 } },
      'loose-metal': { causes: { 'short-metal': 0.1 } },
    },
  },
  {
    id: 'look-under-board',
    effort: 40,
    finds: {
      'loose-metal': { causes: { 'short-metal': 0.85 } },
      standoff: { causes: { 'short-standoff': 0.9 } },
    },
  },
  {
    id: 'meter-header',
    effort: 14,
    finds: {
      'list-wrong': {
        causes: { 'pinout-wrong': 0.9, 'usb-nonstandard': 0.85, 'audio-label-confusion': 0.5 },
      },
      'wires-exchanged': {
        causes: {
          'factory-miswire': 0.8,
          'usb-oc-pin-grounded': 0.7,
          'usb-miswire': 0.5,
          'panel-lead-miswire': 0.5,
        },
      },
    },
  },
];

/** What a look finds of faults. Where two could be found, the first that is. */
function foundBy(finds: Findings, results: readonly ResultId[]): Trial['chances'] {
  const kinds = results.filter((result) => result !== 'not-found');
  return (faults) => {
    const chances: Partial<Record<ResultId, number>> = {};
    let missed = 1;
    for (const fault of faults) {
      const shares = kinds.map((kind) => shareIn(finds[kind] ?? {}, fault));
      kinds.forEach((kind, at) => {
        chances[kind] = (chances[kind] ?? 0) + missed * (shares[at] ?? 0);
      });
      missed *= Math.max(0, 1 - shares.reduce((sum, share) => sum + share, 0));
    }
    for (const kind of kinds) chances[kind] = (chances[kind] ?? 0) + (missed * FOUND_WRONGLY) / kinds.length;
    return { ...chances, 'not-found': missed * (1 - FOUND_WRONGLY) };
  };
}

/** What was found is put right, and the machine is started again. */
function putRight({ id, finds }: LookRow, results: readonly ResultId[]): Trial {
  const isFound = (fault: Fault) => Object.values(finds).some((touched) => shareIn(touched, fault) > 0);
  return {
    id: `right:${id}`,
    results: ['gone', 'other', 'same'],
    tellsNothing: 'same',
    effort: 3,
    powered: true,
    after: { trial: id, results: results.filter((result) => result !== 'not-found') },
    chances: (faults): Chances => {
      const left = faults.filter((fault) => !isFound(fault)).length;
      if (left === faults.length) return { same: 1 };
      return left > 0 ? { other: PUT_RIGHT, same: 1 - PUT_RIGHT } : { gone: PUT_RIGHT, same: 1 - PUT_RIGHT };
    },
  };
}

/** Every look, and beside it what comes of putting right what it found. */
export const LOOK_TRIALS: readonly Trial[] = LOOKS.flatMap((row): readonly Trial[] => {
  const kinds = Object.keys(row.finds) as ResultId[];
  const results: readonly ResultId[] = [...kinds, 'not-found'];
  const look: Trial = {
    id: row.id,
    results,
    tellsNothing: 'not-found',
    effort: row.effort,
    powered: false,
    chances: foundBy(row.finds, results),
  };
  return [look, putRight(row, results)];
});
