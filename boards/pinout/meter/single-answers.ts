import { byIdentity } from '../../base/by-identity';
import type { Ohms, Volts } from '../../base/units';
import { FAMILY } from '../../library/families';
import {
  bandOhms,
  bandVolts,
  MOST_OHMS,
  normalBelow,
  OHM_BANDS,
  OPEN_BAND,
  ohmBand,
  VOLT_BANDS,
  voltBand,
} from './bands';
import { type Behind, behindPin } from './behind-pin';
import { kindShares } from './kind-shares';
import { type PinKind, pinKinds } from './pin-kinds';

/** Readings at one pin. */
export const SINGLES = ['ohms', 'standby', 'running'] as const;
export type Single = (typeof SINGLES)[number];

/** For one kind of reading: the chance of each band, for each kind of pin, and in general. */
export interface AnswerTable {
  readonly bands: number;
  /** By kind of pin. */
  readonly rows: readonly Float64Array[];
  /** What such readings look like when nothing is known of the pin: mostly as those of some other pin. */
  readonly inGeneral: Float64Array;
}

/** One standard deviation of a usual reading, probes and meter together, as a share of it. */
export const USUAL_TOLERANCE = 0.05;
/** And in absolute terms: the probes' own resistance, and what a free pin picks up. */
const PROBE_OHMS: Ohms = 0.2;
const OHMS_OFF: Ohms = 0.1;
const VOLTS_OFF: Volts = 0.06;
/** A probe that slipped reads another pin; a range that was misread, anything (common practice, no source). */
const LIKE_PINS = 0.75;
const METER_OHMS: Ohms = 10_000_000;
/** The current of a meter on its highest range; a coin cell behind a pin adds to it (common practice, no source). */
const TEST_AMPS = 1e-6;

/** What an ohm meter shows at a pin; "open" where nothing conducts. A live source behind the pin spoils the reading. */
function shownOhms({ volts, ohms }: Behind, board: number): Ohms | 'open' {
  if (!Number.isFinite(ohms)) return 'open';
  if (volts === 0) return ohms + PROBE_OHMS;
  return board % 2 === 0 ? 'open' : ohms + volts / TEST_AMPS;
}

/** What a volt meter shows at a pin. */
function shownVolts({ volts, ohms }: Behind): Volts {
  return Number.isFinite(ohms) ? (volts * METER_OHMS) / (METER_OHMS + ohms) : 0;
}

function ohmRow(behind: readonly Behind[]): Float64Array {
  const row = new Float64Array(OHM_BANDS);
  behind.forEach((each, board) => {
    const shown = shownOhms(each, board);
    if (shown === 'open' || shown > MOST_OHMS) add(row, OPEN_BAND, 1);
    else {
      const off = Math.hypot(USUAL_TOLERANCE, OHMS_OFF / shown);
      smear(row, ohmBand(shown * Math.exp(-4 * off)), ohmBand(shown * Math.exp(4 * off)), (band) =>
        normalBelow((Math.log(bandOhms(band)) - Math.log(shown)) / off),
      );
    }
  });
  return scaled(row);
}

function voltRow(behind: readonly Behind[]): Float64Array {
  const row = new Float64Array(VOLT_BANDS);
  for (const each of behind) {
    const shown = shownVolts(each);
    const off = Math.hypot(USUAL_TOLERANCE * shown, VOLTS_OFF);
    const half = (bandVolts(1) - bandVolts(0)) / 2;
    smear(row, voltBand(shown - 4 * off), voltBand(shown + 4 * off), (band) =>
      normalBelow((bandVolts(band) - half - shown) / off),
    );
  }
  return scaled(row);
}

/** Spreads one reading over the bands from first to last; what lies beyond them falls to the outermost. */
function smear(row: Float64Array, first: number, last: number, below: (band: number) => number): void {
  for (let band = first; band <= last; band++) {
    const from = band === first ? 0 : below(band);
    const to = band === last ? 1 : below(band + 1);
    add(row, band, to - from);
  }
}

function add(row: Float64Array, band: number, share: number): void {
  row[band] = (row[band] ?? 0) + share;
}

function scaled(row: Float64Array): Float64Array {
  const sum = row.reduce((a, b) => a + b, 0);
  return row.map((share) => share / sum);
}

function tableOf(kinds: readonly PinKind[], single: Single): AnswerTable {
  const state = single === 'ohms' ? 'unplugged' : single;
  const rows = kinds.map(({ stub }) => {
    const behind = behindPin(stub, state);
    return single === 'ohms' ? ohmRow(behind) : voltRow(behind);
  });
  const bands = single === 'ohms' ? OHM_BANDS : VOLT_BANDS;
  const shares = kindShares(FAMILY.pinHeader);
  const inGeneral = Float64Array.from({ length: bands }, (_, band) => {
    const likePins = rows.reduce((sum, row, kind) => sum + (shares[kind] ?? 0) * (row[band] ?? 0), 0);
    return LIKE_PINS * likePins + (1 - LIKE_PINS) / bands;
  });
  return { bands, rows, inGeneral };
}

const tablesOf = byIdentity(
  (kinds: readonly PinKind[]): Readonly<Record<Single, AnswerTable>> => ({
    ohms: tableOf(kinds, 'ohms'),
    standby: tableOf(kinds, 'standby'),
    running: tableOf(kinds, 'running'),
  }),
);

/** What a reading at one pin shows, by the kind of the pin. Worked out once. */
export function singleAnswers(single: Single): AnswerTable {
  return tablesOf(pinKinds())[single];
}

/** How far a tolerance wider than usual reaches, in bands to either side. */
export function bandsWithin(single: Single, shown: number, tolerance: number): number {
  if (tolerance <= USUAL_TOLERANCE) return 0;
  if (single === 'ohms') return ohmBand(shown * (1 + tolerance)) - ohmBand(shown);
  return Math.ceil((Math.abs(shown) * tolerance) / (bandVolts(1) - bandVolts(0)));
}
