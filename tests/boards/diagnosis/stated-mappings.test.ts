import { beforeAll, describe, expect, it } from 'vitest';
import { type Dictionary, dictionaryOf } from '../../../boards/diagnosis/dictionary';
import type { CauseId } from '../../../boards/diagnosis/faults/causes';
import { consequencesOf } from '../../../boards/diagnosis/faults/consequence';
import type { Fault } from '../../../boards/diagnosis/faults/fault';
import { faultsOf } from '../../../boards/diagnosis/faults/faults';
import { slipsOf } from '../../../boards/diagnosis/faults/slips';
import type { ObservationId } from '../../../boards/diagnosis/observations/observations';
import { suspicionOf } from '../../../boards/diagnosis/posterior';
import { placeOf, predict } from '../../../boards/diagnosis/predict';
import { TIMINGS } from '../../../boards/diagnosis/start-chain/timings';
import { nextTrials } from '../../../boards/diagnosis/trials/next-trials';
import { trialsOf } from '../../../boards/diagnosis/trials/trials';
import { jointsOf } from '../../../boards/fit/joints';
import { demo } from '../findings/demo';

/**
 * What manuals and teaching texts of the trade state about leads and starts, in our own words; the build and the
 * circuit have to come to the same. Common practice, no source, where none is named.
 */
const build = demo('wired');
let faults: readonly Fault[] = [];
let dictionary: Dictionary;
beforeAll(() => {
  faults = faultsOf(build);
  dictionary = dictionaryOf(faults);
}, 120_000);

const seatOf = (lead: string) => {
  const seat = build.seats.find((each) => each.lead === lead);
  if (!seat) throw new Error(`${lead} is not seated`);
  return seat;
};
const seatings = (lead: string) =>
  slipsOf(build, seatOf(lead)).map((slip) => ({
    slip,
    signals: jointsOf(slip.build)
      .filter((joint) => joint.lead.id === lead)
      .map(({ pin }) => pin?.signal),
    outcomes: predict({ ways: consequencesOf(slip.build, slip.leads) }),
  }));
const chance = (outcomes: ReturnType<typeof predict>, id: ObservationId) =>
  outcomes.reduce((sum, each) => sum + each.chance * (each.yes[placeOf(id)] ?? 0), 0);
const endsOf = (outcomes: ReturnType<typeof predict>) => new Set(outcomes.map(({ end }) => end));
const faultNamed = (id: string) => {
  const fault = faults.find((each) => each.id === id);
  if (!fault) throw new Error(`No fault ${id}`);
  return predict(fault);
};

describe('the state of a lead and what follows, as it is stated', () => {
  it.each(['power-switch', 'reset-switch', 'speaker'])('%s turned round: works', (lead) => {
    const turned = seatings(lead).filter(({ slip }) => slip.kind === 'turned');
    expect(turned.length).toBeGreaterThan(0);
    for (const { outcomes } of turned) {
      expect(endsOf(outcomes)).toEqual(new Set(['runs']));
      expect(chance(outcomes, 'no-beep')).toBeLessThan(lead === 'speaker' ? 1 : 0.05);
    }
  });

  it('power switch off its pins: nothing on the press', () => {
    const [off] = seatings('power-switch').filter(({ slip }) => slip.kind === 'off');
    expect(endsOf(off?.outcomes ?? [])).toEqual(new Set(['not-asked']));
    expect(chance(off?.outcomes ?? [], 'nothing-on-press')).toBeGreaterThan(0.9);
  });

  it('power switch held closed: on, then off after about four seconds, or later where it is set so', () => {
    const held = faultNamed('power-switch/switch/stuck');
    expect(endsOf(held)).toContain('forced-off');
    expect(TIMINGS.override.leastMs).toBe(4000);
    expect(chance(held, 'off-after-seconds')).toBeGreaterThan(0.4);
  });

  it('reset held closed: fans run, no start-up screen, no beep', () => {
    const held = faultNamed('reset-switch/switch/stuck');
    expect(endsOf(held)).toContain('held-in-reset');
    expect(chance(held, 'no-picture')).toBeGreaterThan(0.6);
    expect(chance(held, 'no-beep')).toBeGreaterThan(0.6);
  });

  it('reset that closes now and then: restarts', () => {
    expect(chance(faultNamed('reset-wires-touch'), 'restarts')).toBeGreaterThan(0.6);
  });

  it('reset button on the power pins: the reset button starts the machine', () => {
    const [exchanged] = seatings('power-switch').filter(
      ({ slip }) => slip.kind === 'exchanged' && slip.leads.includes('reset-switch'),
    );
    expect(chance(exchanged?.outcomes ?? [], 'reset-starts')).toBeGreaterThan(0.8);
  });

  it.each([
    ['power-led', 'power-light-dark'],
    ['drive-led', 'drive-light-dark'],
  ] as const)('%s turned round: dark, and the machine runs', (lead, sign) => {
    const [turned] = seatings(lead).filter(({ slip }) => slip.kind === 'turned');
    expect(endsOf(turned?.outcomes ?? [])).toEqual(new Set(['runs']));
    expect(chance(turned?.outcomes ?? [], sign)).toBeGreaterThan(0.85);
  });

  it('power light on a wrong pair: dark, dim, or fed by what is none of its own', () => {
    const wrong = seatings('power-led').filter(
      ({ slip }) => slip.kind === 'shifted' || slip.kind === 'elsewhere',
    );
    const unlit = wrong.filter(
      ({ outcomes }) =>
        chance(outcomes, 'power-light-dark') > 0.5 || chance(outcomes, 'power-light-dim') > 0.5,
    );
    expect(unlit.length).toBeGreaterThan(0.85 * wrong.length);
    // What lights it all the same is a pin that drives a wire or feeds a device.
    for (const { signals } of wrong.filter((each) => !unlit.includes(each)))
      expect(signals.some((signal) => /^serial-|vbus|power|supply|feed/.test(signal ?? ''))).toBe(true);
  });

  it('a plug shifted by one: its function is dead, and on a supply pin there may be heat', () => {
    const shifted = seatings('power-switch').filter(({ slip }) => slip.kind === 'shifted');
    expect(shifted.length).toBeGreaterThan(3);
    for (const { outcomes } of shifted) expect(endsOf(outcomes)).not.toContain('runs');
    const onSupply = seatings('power-switch').filter(
      ({ signals }) => signals.includes('usb-vbus') && signals.includes('ground'),
    );
    for (const { outcomes } of onSupply) expect(chance(outcomes, 'smell')).toBeGreaterThan(0.1);
  });

  it('an audio plug on a header of the other kind: not noticed, the rear not muted or silent', () => {
    const other = faultNamed('audio-other-kind');
    expect(chance(other, 'front-audio-missing')).toBeGreaterThan(0.8);
    expect(chance(other, 'rear-not-muted') + chance(other, 'rear-silent')).toBeGreaterThan(0.6);
  });

  it('the processor’s supply plug missing: fans run, no beep, no picture', () => {
    const off = faultNamed('processor-plug-off');
    expect(chance(off, 'no-picture')).toBeGreaterThan(0.85);
    expect(chance(off, 'no-beep')).toBeGreaterThan(0.8);
    expect(chance(off, 'nothing-on-press')).toBeLessThan(0.05);
  });
});

describe('the order of checks, as it is taught', () => {
  const share = (
    seen: readonly ObservationId[],
    notSeen: readonly ObservationId[],
    causes: readonly CauseId[],
  ) =>
    suspicionOf(dictionary, { seen, notSeen })
      .suspects.filter(({ cause }) => causes.includes(cause))
      .reduce((sum, { chance: each }) => sum + each, 0);
  const MAINS_SIDE: readonly CauseId[] = [
    'outlet-dead',
    'rear-switch-off',
    'mains-selector',
    'psu-fault',
    'power-cable-missing',
    'short-metal',
    'usb-front-fault',
    'usb-power-jumper',
  ];
  const BUTTON_SIDE: readonly CauseId[] = [
    'switch-broken',
    'switch-stuck',
    'panel-lead-missing',
    'panel-lead-miswire',
    'board-fault',
    // What the start logic of a board hangs on.
    'coin-cell',
    'jumper-missing',
    'jumper-wrong',
    'intrusion',
  ];

  it('standby light dark: mains, the supply, its large plug, a short', () => {
    const dark = share(['nothing-on-press', 'no-standby-light'], [], MAINS_SIDE);
    expect(dark).toBeGreaterThan(0.8);
    expect(dark).toBeGreaterThan(3 * share(['nothing-on-press', 'no-standby-light'], [], BUTTON_SIDE));
  });

  it('standby light lit: the button, its lead, its pins, the board’s start logic', () => {
    const lit = share(['nothing-on-press', 'standby-light'], [], BUTTON_SIDE);
    expect(lit).toBeGreaterThan(0.5);
    expect(lit).toBeGreaterThan(2 * share(['nothing-on-press', 'standby-light'], [], MAINS_SIDE));
  });

  it('with the standby light lit and the lead where it belongs it is rather the button than its lead', () => {
    const trials = trialsOf(build);
    const trial = trials.find(({ id }) => id === 'look-front-plugs');
    if (!trial) throw new Error('No such look');
    const { suspects } = suspicionOf(dictionary, {
      seen: ['nothing-on-press', 'standby-light'],
      notSeen: [],
      tried: [{ trial, result: 'not-found' }],
    });
    const of = (cause: CauseId) => suspects.find((each) => each.cause === cause)?.chance ?? 0;
    expect(of('switch-broken')).toBeGreaterThan(3 * of('panel-lead-miswire'));
    expect(of('switch-broken')).toBeGreaterThan(3 * of('panel-lead-missing'));
  });

  it('what costs nothing and is safe comes long before another supply, another board, or taking it all out', () => {
    const order = nextTrials(dictionary, { seen: ['nothing-on-press'], notSeen: [] }, trialsOf(build));
    const place = (id: string) => order.findIndex(({ trial }) => trial.id === id);
    for (const cheap of ['look-rear-switch', 'mains-off-a-minute', 'exchange-buttons', 'bare-pins'])
      for (const dear of ['other-supply', 'out-of-case', 'other-board', 'look-under-board'])
        expect(place(cheap), `${cheap} before ${dear}`).toBeLessThan(
          place(dear) < 0 ? Number.POSITIVE_INFINITY : place(dear),
        );
  });

  it('that a supply starts by itself does not clear it of being weak', () => {
    const trial = trialsOf(build).find(({ id }) => id === 'supply-alone');
    if (!trial) throw new Error('No such trial');
    const seen: readonly ObservationId[] = ['starts-and-stops'];
    const before = share(seen, [], ['psu-fault']);
    const { suspects } = suspicionOf(dictionary, { seen, notSeen: [], tried: [{ trial, result: 'starts' }] });
    const after = suspects.find(({ cause }) => cause === 'psu-fault')?.chance ?? 0;
    expect(after).toBeGreaterThan(0.8 * before);
  });
});
