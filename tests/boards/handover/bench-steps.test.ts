import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Build } from '../../../boards/document/build';
import { FITTED } from '../../../boards/document/fitted';
import { type BenchStep, benchStepsOf } from '../../../boards/handover/steps/bench-steps';
import { stepWords } from '../../../boards/handover/steps/step-words';
import { arbitraryBuild } from '../arbitrary-build';
import { demo } from '../findings/demo';
import { bench, grid, partLead, posts, seat } from '../fixtures/bench';

// Every "before" in this file is common practice, no source.
const WIRED: Build = { ...demo('wired'), fitted: [...FITTED] };

function idsOf(build: Build): readonly string[] {
  const steps = benchStepsOf(build);
  if (!steps.ok) throw new Error(`A ring: ${steps.problem.ids.join(', ')}`);
  return steps.value.map(({ id }) => id);
}

function expectBefore(ids: readonly string[], one: string, other: string): void {
  expect(ids).toContain(one);
  expect(ids).toContain(other);
  expect(ids.indexOf(one), `${one} before ${other}`).toBeLessThan(ids.indexOf(other));
}

describe('the order of the work on the demo', () => {
  const ids = idsOf(WIRED);

  it.each([
    ['make-safe', 'io-plate'],
    ['io-plate', 'board-in'],
    ['standoffs', 'board-in'],
    ['processor', 'cooler'],
    ['memory', 'cooler'],
    ['feed-cpu-lead', 'board-in'],
    ['board-in', 'plug power-switch plug'],
    ['plug power-switch plug', 'graphics-card'],
    ['cooler', 'plug cpu-fan plug'],
    ['plug front-usb3 plug', 'plug power-switch plug'],
    ['m2-drive', 'graphics-card'],
    ['graphics-card', 'look-over'],
  ])('%s comes before %s', (one, other) => expectBefore(ids, one, other));

  it('puts the inner row of the panel header before the outer one, which lies at the edge of the board', () => {
    // Pins 2 to 10 are the upper row, further from the lower edge; 1 to 9 the lower.
    for (const inner of ['power-led', 'power-switch'])
      for (const outer of ['drive-led', 'reset-switch'])
        expectBefore(ids, `plug ${inner} plug`, `plug ${outer} plug`);
  });

  it('measures before the card covers the headers', () => {
    for (const meter of ids.filter((id) => id.startsWith('meter '))) {
      expectBefore(ids, meter, 'graphics-card');
      expectBefore(ids, meter, 'supply-leads');
    }
    expect(ids).toContain('meter switch power-switch switch');
  });
});

describe('what a machine does not have', () => {
  it('is left out, and the rest keeps its order', () => {
    const bare = idsOf({ ...WIRED, fitted: [] });
    for (const gone of ['io-plate', 'cooler', 'memory', 'graphics-card']) expect(bare).not.toContain(gone);
    expectBefore(bare, 'make-safe', 'board-in');
    expectBefore(bare, 'board-in', 'plug power-switch plug');
  });

  it('lets memory wait for the cooler where that does not reach over it', () => {
    const coolerWaitsFor = (build: Build) => {
      const steps = benchStepsOf(build);
      return steps.ok ? steps.value.find(({ id }) => id === 'cooler')?.after : undefined;
    };
    expect(coolerWaitsFor(WIRED)).toContain('memory');
    expect(coolerWaitsFor({ ...WIRED, fitted: ['cooler', 'memory'] })).not.toContain('memory');
  });
});

describe('any build', () => {
  it('has an order without a ring, with every seated plug in it once', () => {
    fc.assert(
      fc.property(arbitraryBuild, fc.subarray([...FITTED]), (build, fitted) => {
        const ids = idsOf({ ...build, fitted });
        expect(new Set(ids).size).toBe(ids.length);
        expect(ids.filter((id) => id.startsWith('plug '))).toHaveLength(build.seats.length);
      }),
    );
  });

  it('has words for every step', () => {
    fc.assert(
      fc.property(arbitraryBuild, (build) => {
        const steps = benchStepsOf(build);
        for (const step of steps.ok ? steps.value : []) {
          const { title, lines } = stepWords(build, step);
          expect(title).not.toBe('');
          expect(`${title} ${lines.join(' ')}`).not.toMatch(/undefined|NaN|Infinity/);
        }
      }),
    );
  });
});

describe('the words of a plug', () => {
  it('say which colour goes to which pin, and where the mark is', () => {
    const led = partLead('led', 'power-led', grid(1, 2), { anode: '1', cathode: '2' }, { mark: '1' });
    const wires = led.wires.map((wire, at) => ({
      ...wire,
      colour: at === 0 ? ('green' as const) : ('white' as const),
    }));
    const header = posts('panel', grid(1, 2), { pins: ['power-led-sink', 'power-led-feed'] });
    const build = bench([header], [{ ...led, wires }], [seat('led', 'panel', [0, 1], 180)]);
    const steps = benchStepsOf(build);
    const plug = steps.ok ? steps.value.find(({ kind }: BenchStep) => kind === 'plug') : undefined;
    expect(plug && stepWords(build, plug).lines).toEqual([
      'Green wire to pin\u00a02.',
      'White wire to pin\u00a01.',
      'The mark on the plug is at pin\u00a02.',
    ]);
  });
});
