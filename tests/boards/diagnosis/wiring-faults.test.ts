import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { dictionaryOf } from '../../../boards/diagnosis/dictionary';
import { consequencesOf } from '../../../boards/diagnosis/faults/consequence';
import type { Fault } from '../../../boards/diagnosis/faults/fault';
import { faultsOf } from '../../../boards/diagnosis/faults/faults';
import { slipId, slipsOf } from '../../../boards/diagnosis/faults/slips';
import type { ObservationId } from '../../../boards/diagnosis/observations/observations';
import { placeOf, predict } from '../../../boards/diagnosis/predict';
import { demo } from '../findings/demo';

const build = demo('wired');
let faults: readonly Fault[] = [];
beforeAll(() => {
  faults = faultsOf(build);
}, 120_000);

const one = (id: string) => {
  const found = faults.find((fault) => fault.id === id);
  if (!found) throw new Error(`No fault ${id} among ${faults.length}`);
  return found;
};
const ends = (id: string) => new Set(predict(one(id)).map(({ end }) => end));
/** The chance of a yes to an observation, over all ways in which a fault may go. */
const chance = (id: string, observation: ObservationId) =>
  predict(one(id)).reduce((sum, each) => sum + each.chance * (each.yes[placeOf(observation)] ?? 0), 0);

// Symptoms that manuals and teaching texts state, restated; the build and the circuit make the prediction.
describe('what wrong leads show, as the teaching texts have it', () => {
  it('with the power lead off nothing happens on the press, and standby is there', () => {
    expect(ends('power-switch/plug/off/')).toEqual(new Set(['not-asked']));
    expect(chance('power-switch/plug/off/', 'standby-light')).toBeGreaterThan(0.8);
  });

  it('a power button held closed puts it on and off again, or is never heard', () => {
    expect(ends('power-switch/switch/stuck')).toEqual(new Set(['forced-off', 'not-heard', 'runs']));
    expect(chance('power-switch/switch/stuck', 'off-after-seconds')).toBeGreaterThan(0.4);
  });

  it('a reset button held closed runs the fans, without picture and beep', () => {
    expect(ends('reset-switch/switch/stuck')).toContain('held-in-reset');
    expect(chance('reset-switch/switch/stuck', 'no-picture')).toBeGreaterThan(0.6);
    expect(chance('reset-switch/switch/stuck', 'no-beep')).toBeGreaterThan(0.6);
    expect(chance('reset-switch/switch/stuck', 'nothing-on-press')).toBeLessThan(0.05);
  });

  it('a reset that closes now and then restarts the machine', () => {
    expect(ends('reset-wires-touch')).toContain('restarts');
  });

  it('with power and reset exchanged the reset button starts it', () => {
    const exchanged = 'power-switch/plug/exchanged/reset-switch';
    expect(ends(exchanged)).toEqual(new Set(['not-asked']));
    expect(chance(exchanged, 'reset-starts')).toBeGreaterThan(0.8);
  });

  it('a power light the wrong way round stays dark, and the machine runs', () => {
    const turned = faults.filter(({ id }) => id.startsWith('power-led/plug/turned'));
    expect(turned).toHaveLength(1);
    const [{ id, cause }] = turned as [Fault];
    expect(cause).toBe('led-polarity');
    expect(ends(id)).toEqual(new Set(['runs']));
    expect(chance(id, 'power-light-dark')).toBeGreaterThan(0.85);
    expect(chance(id, 'drive-light-dark')).toBeLessThan(0.05);
  });

  it('switches and speaker do not mind being turned: that is no fault', () => {
    for (const lead of ['power-switch', 'reset-switch', 'speaker'])
      expect(faults.filter(({ id }) => id.startsWith(`${lead}/plug/turned`))).toEqual([]);
  });

  it('without the processor’s supply the fans run, and there is no beep and no picture', () => {
    expect(ends('processor-plug-off')).toEqual(new Set(['no-code']));
    expect(chance('processor-plug-off', 'no-picture')).toBeGreaterThan(0.85);
    expect(chance('processor-plug-off', 'no-beep')).toBeGreaterThan(0.8);
  });

  it('without a speed at the processor’s header boards go off, complain or go on', () => {
    expect(ends('cpu-fan/plug/off/')).toEqual(new Set(['fan-stops-it', 'fan-complained-of', 'runs']));
  });
});

describe('the faults of a build', () => {
  it('have names of their own, and each a way to show', () => {
    expect(new Set(faults.map(({ id }) => id)).size).toBe(faults.length);
    for (const { ways, weight, name } of faults) {
      expect(ways.length).toBeGreaterThan(0);
      expect(weight).toBeGreaterThan(0);
      expect(name).toMatch(/^\S.*\.$/);
    }
  });

  it('say which hole is on which pin, as the manual counts them', () => {
    const ofPower = faults.filter(({ lead }) => lead === 'power-switch').map(({ name }) => name);
    expect(ofPower).toContain('Power switch is on USB_2: holes 1 and 2 on pins 2 and 4.');
    const shifted = faults.filter(({ id }) => id.startsWith('power-led/plug/shifted/'));
    expect(shifted.map(({ name }) => name)).toContain('Power LED is shifted on PANEL: only hole 2 on pin 2.');
    for (const { name } of faults) expect(name).not.toMatch(/row \d/);
  });

  it('leave every plug off once', () => {
    const off = faults.filter(({ id }) => id.endsWith('/off/')).map(({ lead }) => lead);
    expect(off.sort()).toEqual(build.seats.map(({ lead }) => lead).sort());
  });

  it('carry where the plug would be then: of two that changed places, the place of the other', () => {
    const turned = faults.find(({ id }) => id.startsWith('power-led/plug/turned'));
    expect(turned?.seat).toMatchObject({ lead: 'power-led', plug: 'plug', connector: 'panel', turn: 180 });
    const reset = build.seats.find(({ lead }) => lead === 'reset-switch');
    const { connector, at } = one('power-switch/plug/exchanged/reset-switch').seat ?? {};
    expect({ connector, at }).toEqual({ connector: reset?.connector, at: reset?.at });
    expect(one('power-switch/plug/off/').seat).toBeUndefined();
    expect(one('power-switch/switch/stuck').seat).toBeUndefined();
  });

  it('never are the build as it stands', () => {
    for (const { lead, plug, connector, at, turn } of build.seats) {
      const now = `${connector}:${at.join('.')}:${turn}`;
      expect(faults.some(({ id }) => id.startsWith(`${lead}/${plug}/`) && id.endsWith(`/${now}`))).toBe(
        false,
      );
    }
  });

  it('name what could burn: a USB plug that has changed places with that of 1394 brings heat or smell', () => {
    const exchanged = 'front-usb/plug/exchanged/front-1394';
    expect(one(exchanged).cause).toBe('wrong-header-same-shape');
    expect(chance(exchanged, 'smell')).toBeGreaterThan(0.1);
    // One in three of them trips, and then there is no socket to try.
    expect(chance(exchanged, 'usb-missing')).toBeGreaterThan(0.5);
  });

  it('are the same list for the same wiring', () => {
    expect(faultsOf({ ...build, name: 'Another name' })).toBe(faults);
  });
});

describe('working out only what a wrong seat can change', () => {
  it.each(['wired', 'eight-slips'] as const)('gives what solving the whole build gives: %s', (name) => {
    const whole = demo(name);
    const known = new Map(faultsOf(whole).map((fault) => [fault.id, fault]));
    const slips = whole.seats.flatMap((seat) => slipsOf(whole, seat).map((slip) => ({ seat, slip })));
    fc.assert(
      fc.property(fc.constantFrom(...slips), ({ seat, slip }) => {
        const fault = known.get(slipId(seat, slip));
        // Switches do not mind being turned, so that this is none of the faults.
        if (fault) expect(fault.ways).toEqual(consequencesOf(slip.build, slip.leads));
        else expect(slip.kind).toBe('turned');
      }),
      { numRuns: 150 },
    );
  });

  it('gives faults of one lead that show the same the same object, so that they are one hypothesis', () => {
    const { hypotheses } = dictionaryOf(faults);
    expect(hypotheses.length).toBeLessThan(faults.length / 4);
    expect(hypotheses.flatMap(({ members }) => members).sort((a, b) => a - b)).toEqual(
      faults.map((_, at) => at),
    );
    for (const { members, outcomes, weight } of hypotheses) {
      const own = members.flatMap((at) => faults[at] ?? []);
      expect(new Set(own.map(({ cause, lead }) => `${cause} ${lead}`)).size).toBe(1);
      for (const each of own) expect(predict(each)).toEqual(outcomes);
      expect(own.reduce((sum, each) => sum + each.weight, 0)).toBeCloseTo(weight, 9);
    }
  });
});

describe('a prediction', () => {
  it('shares out every fault completely, and is never certain', () => {
    for (const fault of faults) {
      const outcomes = predict(fault);
      expect(outcomes.reduce((sum, each) => sum + each.chance, 0)).toBeCloseTo(1, 9);
      for (const { yes } of outcomes) {
        expect(Math.min(...yes)).toBeGreaterThan(0);
        expect(Math.max(...yes)).toBeLessThan(1);
      }
    }
  });
});
