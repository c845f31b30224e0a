import { capital } from '../../base/capital';
import { listed } from '../../base/listed';
import type { Span } from '../../circuit/corner';
import type { Build } from '../../document/build';
import { connectorName, leadName, unitName } from '../../document/names';
import { jobName } from '../../signals/job-names';
import { uniquePins } from '../about';
import type { FedHole, FedPin } from '../fed-pins';
import { GROUNDED_BY_CABLE, isHarmful } from '../fed-pins';
import type { FindingData } from '../finding-data';
import type { Said, WordsFor } from './finding-words';
import { pinList, pinsOf, plugText, signalName } from './names';
import { voltsSpanText } from './numbers';

/** What a pin is made for: "ground", "+5 V", and of a contact that the cable grounds, its own name. */
function wantedText({ signal }: FedPin): string {
  return signalName(signal);
}

/** What arrives: "+12 V" as a rail is called, the range, or ground. */
function arrivingText({ arrives, fed }: Pick<FedPin, 'arrives' | 'fed'>): string {
  if (fed === 'only-standby') return signalName('supply-5v-standby');
  if (arrives === undefined) return 'nothing';
  return Math.abs(arrives.usual) < 0.5 ? 'ground' : railText(arrives);
}

function railText(arrives: Span): string {
  return `${arrives.usual > 0 ? '+' : ''}${voltsSpanText({ ...arrives, low: arrives.usual, high: arrives.usual })}`;
}

interface Row {
  readonly pins: FedPin[];
}

/** Pins that want the same and get the same from the same outlet are told together. */
function rowsOf(wrong: readonly FedPin[]): readonly Row[] {
  const rows = new Map<string, Row>();
  for (const pin of wrong) {
    const key = [
      pin.signal,
      arrivingText(pin),
      ...new Set(pin.from.map(({ connector }) => connector)),
    ].join();
    const row = rows.get(key) ?? { pins: [] };
    rows.set(key, row);
    row.pins.push(pin);
  }
  return [...rows.values()];
}

/** "Pins 7 to 9 (+5 V) would get +12 V, from pin 3 of DRIVES 1 of Birch." */
function rowText(build: Build, { pins }: Row): string {
  const [first] = pins;
  if (first === undefined) return '';
  const from = uniquePins(pins.flatMap((pin) => pin.from));
  const source = from.length === 0 ? '' : `, from ${pinsOf(build, from)}`;
  const at = capital(pinList(pins.map(({ pin }) => pin.pin)));
  return `${at} (${wantedText(first)}) would get ${arrivingText(first)}${source}.`;
}

interface HoleRow {
  readonly holes: string[];
  readonly signal: FedHole['signal'];
  readonly arriving: string;
  readonly from: FedPin['from'];
}

/** Holes that want the same and get the same are told together. */
function grouped(wrong: readonly FedHole[]): readonly HoleRow[] {
  const rows = new Map<string, HoleRow>();
  for (const hole of wrong) {
    const arriving = arrivingText(hole);
    const key = `${hole.signal} ${arriving}`;
    const row = rows.get(key);
    rows.set(key, {
      holes: [...(row?.holes ?? []), hole.hole],
      signal: hole.signal,
      arriving,
      from: uniquePins([...(row?.from ?? []), ...hole.from]),
    });
  }
  return [...rows.values()];
}

function holesText(holes: readonly string[]): string {
  return pinList(holes).replace(/^pin/, 'hole');
}

function mismatchTitle(build: Build, connector: string, wrong: readonly FedPin[]): string {
  const worst = wrong.filter(isHarmful).toSorted((a, b) => volts(b) - volts(a))[0];
  const name = connectorName(build, connector);
  if (worst === undefined) {
    const [first] = wrong;
    return `${name} would not get the rails that it needs${first ? `: ${arrivingText(first)} in place of ${wantedText(first)}` : ''}.`;
  }
  const shorts = worst.fed === 'short' && !GROUNDED_BY_CABLE.includes(worst.signal);
  return shorts
    ? `${arrivingText(worst)} would be shorted to ground in ${name}.`
    : `${arrivingText(worst)} would reach the ${wantedText(worst)} pins of ${name} and could destroy what is there.`;
}

function volts({ arrives }: Pick<FedPin, 'arrives'>): number {
  return Math.abs(arrives?.usual ?? 0);
}

function bareOrLoose(build: Build, { connector, plugged }: { connector: string; plugged: boolean }): string {
  const name = connectorName(build, connector);
  return plugged
    ? `A plug is on ${name}, and no outlet of a supply is at the other end of its wires.`
    : `No plug is on ${name}.`;
}

function noMainPower(build: Build, data: FindingData['main-power-missing']): Said {
  const [line] = data.lines;
  if (line === undefined) {
    return {
      title: 'The machine would not start: the board has no main power.',
      reason: bareOrLoose(build, data),
    };
  }
  return {
    title:
      line === 'ps-on'
        ? 'The machine would not start: the board could not switch the supply on.'
        : 'The machine would not start: the board would not be told that its power is good.',
    reason: `No wire leads from the ${signalName(line)} pin of ${connectorName(build, data.connector)} to an outlet of a supply.`,
  };
}

/** Supply, cables and what they feed. */
export const POWER_WORDS: WordsFor<
  | 'supply-mismatch'
  | 'loose-end-mismatch'
  | 'cpu-card-exchanged'
  | 'drive-plug-turned'
  | 'main-power-missing'
  | 'cpu-power-missing'
  | 'card-power-missing'
  | 'drive-power-missing'
  | 'rail-left-off'
  | 'drive-held-off'
  | 'hub-unfed'
  | 'adapter-may-burn'
  | 'cable-on-one-unit'
  | 'feed-ring'
  | 'outlets-unknown'
> = {
  'supply-mismatch': ({ data: { plug, connector, wrong, forced } }, build) => ({
    title: mismatchTitle(build, connector, wrong),
    reason: [
      ...rowsOf(wrong).map((row) => rowText(build, row)),
      forced
        ? `${plugText(build, plug)} only goes in there by force.`
        : `The shape of the plugs does not tell: ${plugText(build, plug)} is wired for another outlet than it sits on.`,
    ].join(' '),
  }),

  'loose-end-mismatch': ({ data: { plug, wrong } }, build) => {
    const worst = wrong.filter(isHarmful).toSorted((a, b) => volts(b) - volts(a))[0];
    const rows = grouped(wrong).map(
      ({ holes, signal, arriving, from }) =>
        `${capital(holesText(holes))} (${signalName(signal)}) would get ${arriving}, from ${pinsOf(build, from)}.`,
    );
    return {
      title: `Whatever is plugged into ${plugText(build, plug)} would get ${worst ? arrivingText(worst) : 'another supply'} where it has ${worst ? signalName(worst.signal) : 'its own'}.`,
      reason: [
        ...rows,
        'Nothing is plugged in yet; the cable is wired for another outlet than it sits on.',
      ].join(' '),
    };
  },

  'cpu-card-exchanged': ({ data: { plug, connector, made, met } }, build) => ({
    title: `+12\u00a0V would be shorted to ground in ${connectorName(build, connector)}.`,
    reason: `${plugText(build, plug)} is a plug for ${jobName(made)} forced on ${jobName(met)}: as large, with the row of +12\u00a0V where the other has ground.`,
  }),

  'drive-plug-turned': ({ data: { plug, connector } }, build) => ({
    title: `+12\u00a0V would reach the +5\u00a0V pin of ${connectorName(build, connector)} and could destroy the drive.`,
    reason: `${plugText(build, plug)} is in the wrong way round: pins\u00a01 (+12\u00a0V) and\u00a04 (+5\u00a0V) would get each other’s supply. It only goes in so by force.`,
  }),

  'main-power-missing': ({ data, severity }, build) =>
    severity === 'doubt'
      ? {
          title: `${capital(pinList(data.left))} of ${connectorName(build, data.connector)} would be left without a plug.`,
          reason:
            'Many boards start so, with less copper for every rail than they were made for. Look into the board’s manual, or plug in the four extra pins.',
        }
      : noMainPower(build, data),

  'cpu-power-missing': ({ data, severity, pins }, build) => {
    if (severity === 'doubt')
      return {
        title: `${connectorName(build, data.connector)} would be fed by half.`,
        reason: `Nothing arrives at ${pinsOf(build, pins)}. A small CPU may start so; the contacts that are there carry all of the current.`,
      };
    return severity === 'note'
      ? {
          title: `${connectorName(build, data.connector)} is a second supply for the CPU, and not fed.`,
          reason: 'Most CPUs need only the first. The board’s manual says when both are wanted.',
        }
      : {
          title: 'Fans may turn, and nothing would start: the CPU has no power.',
          reason: bareOrLoose(build, data),
        };
  },

  'card-power-missing': ({ data }, build) => ({
    title:
      data.fed === 0
        ? 'The card would stay dark or tell that its power is missing.'
        : `Only ${data.fed} of ${data.sockets} power sockets of the card would be fed.`,
    reason: `${bareOrLoose(build, data)} A card asks its sense contacts before it starts.`,
  }),

  'drive-power-missing': ({ data }, build) => ({
    title: 'The board would not find this drive: it has no power.',
    reason: bareOrLoose(build, data),
  }),

  'rail-left-off': ({ data: { connector, signal }, severity, pins }, build) => ({
    title: `No ${signalName(signal)} would arrive at ${connectorName(build, connector)}.`,
    reason: `No wire leads to ${pinsOf(build, pins)}. ${severity === 'note' ? 'Few devices of today use it.' : 'The device needs it.'}`,
  }),

  'drive-held-off': ({ data: { connector, certain, arrives }, pins }, build) => ({
    title: certain
      ? 'The drive would stay off, as if it were not there.'
      : 'A newer drive would stay off here.',
    reason: `At ${pinsOf(build, pins)} ${voltsSpanText(arrives)} would arrive. ${certain ? `${connectorName(build, connector)} takes that as the order to stay off.` : 'Drives with power disable take that as the order to stay off; older ones take no notice.'}`,
  }),

  'hub-unfed': ({ data: { unit, fans } }, build) => ({
    title: `${fans === 1 ? 'The fan' : 'The fans'} on ${unitName(build, unit)} would not turn.`,
    reason: `${unitName(build, unit)} has no power of its own, and none arrives at it.`,
  }),

  'adapter-may-burn': ({ data: { plug } }, build) => ({
    title: `${plugText(build, plug)} is an adapter to SATA power: some of its kind have burnt.`,
    reason:
      'Where the contacts are cast into soft plastic they have come to touch under heat, and the supply feeds what burns. Crimped contacts in a hard shell stay apart.',
  }),

  'cable-on-one-unit': ({ data: { on }, leads: [lead = ''] }, build) => ({
    title: `${leadName(build, lead)} leads back to where it begins.`,
    reason: `All of its plugs that sit are on ${on}: it feeds nothing, and joins pins that are apart.`,
  }),

  'feed-ring': ({ data: { units } }, build) => ({
    title: 'Hubs feed each other in a ring.',
    reason: `Cables lead round through ${listed(units.map((unit) => unitName(build, unit)))}: what one gives comes back to it, and two feeds may meet.`,
  }),

  'outlets-unknown': ({ data: { unit, connectors } }, build) => ({
    title: `What the outlets of ${unitName(build, unit)} carry is not known.`,
    reason:
      connectors.length === 0
        ? 'No outlet of it is described, so nothing can be told of what its cables bring.'
        : `${listed(connectors.map((id) => connectorName(build, id)))}: nobody has written down what is on its pins, and the shape of a plug does not tell. Nothing can be told of what arrives.`,
  }),
};
