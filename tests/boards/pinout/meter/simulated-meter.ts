import { type Device, GROUND } from '../../../../boards/circuit/device';
import { solve } from '../../../../boards/circuit/solve';
import type { PinReading } from '../../../../boards/document/pin-reading';
import { LAMP_RESULTS, TOUCH_RESULTS } from '../../../../boards/document/pin-reading';
import type { MeterQuestion } from '../../../../boards/pinout/meter/identification';
import { type ParameterId, parameterOf } from '../../../../boards/signals/parameters';
import type { SignalId } from '../../../../boards/signals/signals';
import { RAILS, type StubElement } from '../../../../boards/signals/stub';
import { stubOf } from '../../../../boards/signals/stub-of';

/**
 * A board and a meter made up by chance, measured with the circuit solver and not with the algebra that
 * identification uses. Values are drawn evenly over the whole range of each parameter (along the logarithm for
 * resistances), while identification expects them near the usual value: its model is not the one that made the data.
 */
export interface SimulatedMeter {
  readonly answer: (question: MeterQuestion) => PinReading;
}

export interface Slips {
  /** One standard deviation of a reading, as a share of it. */
  readonly noise: number;
  /** The share of readings that are wrong: another pin's, or anything at all. */
  readonly wrong: number;
  /** A board with the usual value behind every pin, in place of one drawn by chance. */
  readonly usual?: true;
}

type State = 'unplugged' | 'standby' | 'running' | 'busy';
const RANK = { always: 0, unplugged: 0, standby: 1, running: 2, busy: 2 } as const;
const PROBES_OHMS = 0.2;
const OPEN_OHMS = 20e6;

export function simulatedMeter(
  signals: ReadonlyMap<string, SignalId>,
  random: () => number,
  { noise, wrong, usual }: Slips,
): SimulatedMeter {
  const drawn = new Map<string, number>();
  /** A value of this board: one for each pin, or for each rail. */
  const value = (id: ParameterId, of: string): number => {
    const key = `${id} ${of}`;
    const known = drawn.get(key);
    if (known !== undefined) return known;
    const { low, high, usual: middle } = parameterOf(id);
    const drawnValue = usual
      ? middle
      : low > 0
        ? low * (high / low) ** random()
        : low + (high - low) * random();
    drawn.set(key, drawnValue);
    return drawnValue;
  };
  const cellSpoils = random() < 0.5;

  const elementDevices = (element: StubElement, id: string, pin: string, state: State): readonly Device[] => {
    switch (element.kind) {
      case 'ground':
        return [{ id, kind: 'resistor', a: pin, b: GROUND, ohms: value(element.ohms, pin) }];
      case 'pulls-low': {
        const on =
          (element.when === 'running' && RANK[state] === 2) ||
          (element.when === 'drive-busy' && state === 'busy');
        return on ? [{ id, kind: 'resistor', a: pin, b: GROUND, ohms: value(element.ohms, pin) }] : [];
      }
      case 'rail':
      case 'fused-rail': {
        if (element.kind === 'rail' && element.when === 'asleep') return [];
        const row = RAILS.find((one) => one.id === element.rail);
        const ohms = value(element.kind === 'rail' ? element.ohms : element.coldOhms, pin);
        const rail = `rail-${element.rail}`;
        const live = row !== undefined && RANK[state] >= RANK[row.live];
        return [
          { id, kind: 'resistor', a: rail, b: pin, ohms },
          live && row
            ? { id: rail, kind: 'voltage', a: rail, b: GROUND, volts: value(row.volts, rail), ohms: 0.03 }
            : { id: rail, kind: 'resistor', a: rail, b: GROUND, ohms: value('rail-off-ohms', rail) },
        ];
      }
    }
  };

  /** The board behind some of its pins; a rail that two of them share is there once. */
  const boardAt = (pins: readonly string[], state: State): readonly Device[] => {
    const devices = new Map<string, Device>();
    for (const pin of pins) {
      const stub = stubOf({ signal: signals.get(pin) ?? 'unknown' });
      stub.forEach((element, at) => {
        for (const device of elementDevices(element, `${pin}.${at}`, pin, state))
          devices.set(device.id, device);
      });
      devices.set(`${pin}.leak`, { id: `${pin}.leak`, kind: 'resistor', a: pin, b: GROUND, ohms: 1e10 });
    }
    return [...devices.values()];
  };

  const voltsAt = (pin: string, netlist: readonly Device[]) => solve(netlist).volts.get(pin) ?? 0;
  const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

  const ohmsAt = (pin: string): number | 'open' => {
    const idle = voltsAt(pin, boardAt([pin], 'unplugged'));
    if (Math.abs(idle) > 0.01 && cellSpoils) return 'open';
    const amps = 1e-6;
    const source: Device = { id: 'meter', kind: 'current', a: GROUND, b: pin, amps };
    const ohms = voltsAt(pin, [...boardAt([pin], 'unplugged'), source]) / amps + PROBES_OHMS;
    const shown = ohms * Math.exp(noise * normal()) + 0.05 * normal();
    return shown > OPEN_OHMS ? 'open' : Math.max(0, shown);
  };
  const voltsIn = (pin: string, state: State) => {
    const meter: Device = { id: 'meter', kind: 'resistor', a: pin, b: GROUND, ohms: 10e6 };
    return voltsAt(pin, [...boardAt([pin], state), meter]) * (1 + noise * normal()) + 0.03 * normal();
  };
  const joined = ([a, b]: readonly [string, string]) => {
    const source: Device = { id: 'meter', kind: 'current', a, b, amps: 1e-3 };
    const { volts } = solve([...boardAt([a, b], 'unplugged'), source]);
    return Math.abs((volts.get(a) ?? 0) - (volts.get(b) ?? 0)) / 1e-3 < 40;
  };
  const touched = ([a, b]: readonly [string, string], supply: 'standby' | 'running') => {
    const bridge: Device = { id: 'touch', kind: 'resistor', a, b, ohms: 0.1 };
    const level = voltsAt(a, [...boardAt([a, b], supply), bridge]);
    const is = (signal: SignalId) => [a, b].some((pin) => signals.get(pin) === signal);
    if (level > 0.8) return 'nothing';
    if (is('power-switch-input'))
      return supply === 'standby' ? 'started' : random() < 0.5 ? 'stopped' : 'nothing';
    return is('reset-switch-input') && supply === 'running' ? 'reset' : 'nothing';
  };
  const lampShows = (plus: string, minus: string, supply: 'standby' | 'running') => {
    const lit = (state: State) => {
      const tester: readonly Device[] = [
        { id: 'tester', kind: 'resistor', a: plus, b: 'led', ohms: 1_000 },
        { id: 'led', kind: 'voltage', a: 'led', b: minus, volts: 1.9, ohms: 1 },
      ];
      return (solve([...boardAt([plus, minus], state), ...tester]).amps.get('tester') ?? 0) > 0.0003;
    };
    if (lit(supply)) return 'lit';
    return supply === 'running' && lit('busy') && random() < 0.85 ? 'flickers' : 'dark';
  };

  const pins = [...signals.keys()];
  const any = <T>(items: readonly T[], or: T): T => items[Math.floor(random() * items.length)] ?? or;
  const anywhere = (pin: string) =>
    any(
      pins.filter((other) => other !== pin),
      pin,
    );
  return {
    answer: (question) => {
      const slips = random() < wrong;
      const elsewhere = slips && random() < 0.5;
      switch (question.kind) {
        case 'ohms': {
          if (slips && !elsewhere)
            return { ...question, ohms: random() < 0.2 ? 'open' : 10 ** (random() * 8 - 1) };
          return { ...question, ohms: ohmsAt(elsewhere ? anywhere(question.pin) : question.pin) };
        }
        case 'volts': {
          if (slips && !elsewhere) return { ...question, volts: random() * 14 - 1 };
          return {
            ...question,
            volts: voltsIn(elsewhere ? anywhere(question.pin) : question.pin, question.supply),
          };
        }
        case 'continuity':
          return {
            ...question,
            pins: [...question.pins],
            joined: slips ? random() < 0.5 : joined(question.pins),
          };
        case 'touch': {
          const did = slips ? any(TOUCH_RESULTS, 'nothing') : touched(question.pins, question.supply);
          return { ...question, pins: [...question.pins], did };
        }
        case 'lamp': {
          const showed = slips
            ? any(LAMP_RESULTS, 'dark')
            : lampShows(question.plus, question.minus, question.supply);
          return { ...question, showed };
        }
      }
    },
  };
}
