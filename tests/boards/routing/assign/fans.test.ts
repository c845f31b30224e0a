import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Fan, type FanHeader, fansToHeaders } from '../../../../boards/routing/assign/fans';

/**
 * Ratings as a maker of boards prints them: 2.0 A for the processor's fan, 1.5 A for those of the case (a
 * board specification; an older one gives 1.0 A). Yours are in your board's manual.
 */
const CPU: FanHeader = { id: 'cpu', modes: ['pwm'], ratedA: 2, watched: true };
const PWM: FanHeader = { id: 'case-1', modes: ['pwm'], ratedA: 1.5 };
const DC: FanHeader = { id: 'case-2', modes: ['dc'], ratedA: 1.5 };

function fan(id: string, over: Partial<Fan> = {}): Fan {
  return { id, wires: 4, cools: 'case', runningA: 0.2, startA: 0.4, ...over };
}

const COOLER = fan('cooler', { cools: 'processor' });

function placed(fans: readonly Fan[], headers: readonly FanHeader[]) {
  return Object.fromEntries(
    fansToHeaders(fans, headers).fans.map(({ fan: id, header, reason }) => [
      id,
      [header, reason.code === 'placed' ? reason.speed : reason.code],
    ]),
  );
}

describe('fans on headers', () => {
  it('have the processor’s on the watched one, and each of the others where its speed is set', () => {
    expect(placed([fan('three', { wires: 3 }), fan('four'), COOLER], [CPU, PWM, DC])).toEqual({
      cooler: ['cpu', 'by-pulses'],
      four: ['case-1', 'by-pulses'],
      three: ['case-2', 'by-voltage'],
    });
  });

  it('run at full speed with three wires where only pulses are given (trade knowledge, no source)', () => {
    expect(placed([fan('three', { wires: 3 })], [PWM])).toEqual({ three: ['case-1', 'always-full'] });
  });

  it('leave a case fan out before the processor’s', () => {
    expect(placed([fan('case'), COOLER], [CPU])).toEqual({
      case: [undefined, 'no-header-left'],
      cooler: ['cpu', 'by-pulses'],
    });
    expect(placed([COOLER], [PWM])).toEqual({ cooler: [undefined, 'no-watched-header'] });
  });

  it('go where the person says, if that can carry them', () => {
    expect(placed([fan('a', { pinned: 'case-2' })], [PWM, DC])).toEqual({ a: ['case-2', 'by-voltage'] });
    const heavy = fan('a', { pinned: 'case-2', runningA: 1.4, startA: 2.2 });
    expect(fansToHeaders([heavy], [PWM, DC]).fans[0]?.reason).toEqual({
      code: 'pinned-overloaded',
      startA: 2.2,
      ratedA: 1.5,
    });
    expect(placed([fan('a', { pinned: 'gone' })], [PWM])).toEqual({ a: [undefined, 'pinned-unknown'] });
  });
});

describe('a hub', () => {
  const HUB = { outlets: 4, ratedA: 4, speedOutlet: 2 };
  const four = ['a', 'b', 'c', 'd'].map((id) => fan(id, { runningA: 0.3, startA: 0.6 }));

  it('fed from its header takes what the header may carry, even when all its fans start at once', () => {
    const plan = fansToHeaders(four, [{ ...PWM, hub: { ...HUB, fedBy: 'header' } }]);
    // Running, 4 × 0.3 = 1.2 A would be within 1.5 A; starting, 4 × 0.6 = 2.4 A is not.
    expect(plan.loads).toEqual([
      { header: 'case-1', runningA: 0.6, startA: 1.2, ratedA: 1.5, from: 'header' },
    ]);
    expect(plan.fans.filter(({ header }) => header === undefined)).toHaveLength(2);
  });

  it('fed from the supply unit takes them all, and one outlet reports a speed', () => {
    const plan = fansToHeaders(four, [{ ...PWM, hub: { ...HUB, fedBy: 'supply' } }]);
    expect(plan.loads).toEqual([{ header: 'case-1', runningA: 1.2, startA: 2.4, ratedA: 4, from: 'supply' }]);
    const reporting = plan.fans.filter(({ reason }) => reason.code === 'placed' && reason.reports);
    expect(reporting.map(({ outlet }) => outlet)).toEqual([2]);
    expect(plan.fans.map(({ outlet }) => outlet).sort()).toEqual([1, 2, 3, 4]);
  });

  it('on the watched header has the processor’s fan where its speed is reported, or not at all', () => {
    const watched = (hub: FanHeader['hub']): FanHeader => ({ ...CPU, ...(hub && { hub }) });
    const seen = fansToHeaders([fan('a'), COOLER], [watched({ ...HUB, fedBy: 'supply' })]);
    expect(seen.fans.find((each) => each.fan === 'cooler')).toMatchObject({ header: 'cpu', outlet: 2 });
    expect(placed([COOLER], [watched({ outlets: 4, ratedA: 4, fedBy: 'supply' })])).toEqual({
      cooler: [undefined, 'no-watched-header'],
    });
  });

  it('gives the outlet that reports a speed to a fan that has one to report', () => {
    const plan = fansToHeaders(
      [fan('two', { wires: 3, silent: true }), fan('four')],
      [{ ...DC, hub: { ...HUB, fedBy: 'header' } }],
    );
    expect(plan.fans.map((each) => [each.fan, each.outlet])).toEqual([
      ['two', 1],
      ['four', 2],
    ]);
  });

  it('with a lead to the supply unit gives three wires the full voltage (trade knowledge, no source)', () => {
    const header: FanHeader = { ...DC, hub: { ...HUB, fedBy: 'supply' } };
    expect(placed([fan('three', { wires: 3 })], [header])).toEqual({ three: ['case-2', 'always-full'] });
  });
});

describe('any fans', () => {
  it('never take more than a rating, and share no outlet', () => {
    // The limits of the 4-wire fan specification, rev. 1.3: 1.5 A running, 2.2 A for up to a second.
    const any = fc.record({
      wires: fc.constantFrom<3 | 4>(3, 4),
      runningMa: fc.integer({ min: 50, max: 1_500 }),
      extraMa: fc.integer({ min: 0, max: 700 }),
    });
    const headers: FanHeader[] = [
      CPU,
      DC,
      { ...PWM, hub: { outlets: 3, ratedA: 3, fedBy: 'supply', speedOutlet: 1 } },
    ];
    fc.assert(
      fc.property(fc.array(any, { maxLength: 8 }), (drawn) => {
        const fans = drawn.map(({ wires, runningMa, extraMa }, at) =>
          fan(`f${at}`, { wires, runningA: runningMa / 1_000, startA: (runningMa + extraMa) / 1_000 }),
        );
        const plan = fansToHeaders(fans, headers);
        for (const { startA, runningA, ratedA } of plan.loads) {
          expect(startA).toBeLessThanOrEqual(ratedA);
          expect(runningA).toBeLessThanOrEqual(startA);
        }
        const taken = plan.fans.flatMap(({ header, outlet }) =>
          header === undefined ? [] : [`${header}/${outlet ?? ''}`],
        );
        expect(new Set(taken).size).toBe(taken.length);
      }),
    );
  });
});
