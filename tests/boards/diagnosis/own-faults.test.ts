import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { grouped } from '../../../boards/base/grouped';
import type { Fault } from '../../../boards/diagnosis/faults/fault';
import { feedOf, railVolts } from '../../../boards/diagnosis/faults/own/feed';
import { asBuilt, writtenFaults } from '../../../boards/diagnosis/faults/own/own-faults';
import { SUPPLY_FAULTS } from '../../../boards/diagnosis/faults/supply-faults';
import { leadOf, plugOf } from '../../../boards/document/lookup';
import { contextOf } from '../../../boards/findings/context';
import { fedPinsUnder, isHarmful } from '../../../boards/findings/fed-pins';
import { findingsOf } from '../../../boards/findings/findings';
import { seatedPlug } from '../../../boards/fit/seated-plug';
import { type SignalId, signalOf } from '../../../boards/signals/signals';
import { demo } from '../findings/demo';
import { ANY } from './faults-by-name';
import { anyMachine } from './machines-with-units';

const sumsOf = (faults: readonly Fault[]) =>
  new Map(
    [...grouped(faults, ({ cause }) => cause)].map(([cause, those]) => [
      cause,
      those.reduce((sum, { weight }) => sum + weight, 0),
    ]),
  );

describe('faults of any machine as a build has them', () => {
  it('are those of any machine where there is nothing but a board and its front leads', () => {
    const { tray: _, ...bare } = demo('wired').case;
    expect(asBuilt({ ...demo('wired'), case: bare }, SUPPLY_FAULTS)).toEqual(SUPPLY_FAULTS);
  });

  it('have ids of their own, and name no lead and no plug that is not there', () => {
    fc.assert(
      fc.property(anyMachine, (build) => {
        const faults = asBuilt(build, ANY);
        expect(new Set(faults.map(({ id }) => id)).size).toBe(faults.length);
        for (const { id, lead, seat, name, weight, ways, caseOf } of faults) {
          expect(name).toMatch(/^\S.*\.$/);
          expect(weight).toBeGreaterThan(0);
          expect(ways.length).toBeGreaterThan(0);
          if (caseOf !== undefined) expect(ANY.some((any) => any.id === caseOf)).toBe(true);
          if (lead === undefined) continue;
          const found = leadOf(build, lead);
          expect(found).toBeDefined();
          expect(name).toContain(found?.name);
          const [, plug = ''] = id.split('/');
          const parts = found?.parts.map((part) => part.id) ?? [];
          expect(plugOf(build, { lead, plug }) !== undefined || parts.includes(plug)).toBe(true);
          if (seat) expect(() => seatedPlug(build, seat)).not.toThrow();
        }
      }),
      { numRuns: 15 },
    );
  });

  it('make no cause more frequent than it is on any machine, nor ten times less', () => {
    const any = sumsOf(ANY);
    fc.assert(
      fc.property(anyMachine, (build) => {
        for (const [cause, sum] of sumsOf(asBuilt(build, ANY))) {
          const usual = any.get(cause) ?? 0;
          expect(sum).toBeLessThanOrEqual(usual * (1 + 1e-9));
          expect(sum).toBeGreaterThanOrEqual(usual / 10 - 1e-9);
        }
      }),
      { numRuns: 15 },
    );
  });

  it('are the same objects while wiring and tray stay, and the same list for a machine made anew', () => {
    fc.assert(
      fc.property(anyMachine, (build) => {
        const faults = asBuilt(build, ANY);
        const ids = faults.map(({ id }) => id);
        const renamed = asBuilt({ ...build, name: 'Another name' }, ANY);
        renamed.forEach((fault, at) => {
          expect(fault.ways).toBe(faults[at]?.ways);
        });
        expect(asBuilt(structuredClone(build), ANY).map(({ id }) => id)).toEqual(ids);
        const written = writtenFaults(build);
        for (const id of written) expect(ids).toContain(id);
      }),
      { numRuns: 12 },
    );
  });
});

const isRailOrGround = (signal: SignalId) => ['supply', 'ground'].includes(signalOf(signal).nature);
const voltsOf = (signal: SignalId) => signalOf(signal).volts ?? 0;

/** Fed by a line of another kind, and by nothing else that is known. */
function isOtherLineAlone({ own: { signal, given }, rails }: Compared): boolean {
  const lines = given.filter((id) => id !== signal && id !== 'unknown');
  return rails.length === 0 && lines.length > 0;
}

interface Compared {
  readonly own: ReturnType<typeof feedOf>[number]['pins'][number];
  readonly rails: readonly SignalId[];
}

describe('what the wires bring to an inlet', () => {
  // The circuit solver follows the same wires and solves for volts: the rules of the window ask it.
  it('is by the names of the rails what the circuit says by volts', () => {
    let compared = 0;
    fc.assert(
      fc.property(anyMachine, (build) => {
        const context = contextOf(build);
        const feeds = new Map(feedOf(build).map((feed) => [feed.connector.id, feed]));
        const pairs = context.plugs.flatMap((plug) => {
          const pins = plug.connector.pins.filter(({ missing }) => missing !== true);
          return fedPinsUnder(context, plug).map(({ pin, signal, fed }) => {
            const own = feeds.get(plug.connector.id)?.pins[pins.findIndex((each) => each.pin === pin.pin)];
            if (!own) throw new Error(`Nothing is told of ${pin.connector} ${pin.pin}`);
            expect(own.signal).toBe(signal);
            return { own, fed, rails: own.given.filter(isRailOrGround) };
          });
        });
        // Where rails meet on a wire, or a rail and ground, what a meter shows hangs on how long each wire is.
        const meeting = pairs.filter(({ rails }) => new Set(rails.map(voltsOf)).size > 1);
        for (const { own } of meeting) expect(own.fed).toBe('short');
        expect(meeting.some(isHarmful)).toBe(meeting.length > 0);
        // A line that is pulled up, as PS_ON# is inside the supply (ATX12V), has volts but drives nothing.
        const alike = pairs.filter((pair) => !meeting.includes(pair) && !isOtherLineAlone(pair));
        for (const { own, fed } of alike) expect(own.fed).toBe(fed);
        compared += alike.filter(({ own }) => own.given.length > 0).length;
      }),
      { numRuns: 25 },
    );
    expect(compared).toBeGreaterThan(15);
  });

  it('is a short where rails meet on one wire, and none where a rail meets a line', () => {
    expect(railVolts(['supply-12v', 'ground'])).toEqual(new Set([12, 0]));
    expect(railVolts(['supply-5v', 'supply-5v-standby', 'ps-on', 'power-ok'])).toEqual(new Set([5]));
    expect(railVolts(['ps-on'])).toEqual(new Set());
  });
});

describe('what is written down as wrong with the supply', () => {
  it('is suspected for itself where the rules find a fault or a danger there, and only there', () => {
    const rules = new Set([
      'supply-mismatch',
      'main-power-missing',
      'cpu-power-missing',
      'drive-power-missing',
      'card-power-missing',
      'cpu-card-exchanged',
      'drive-plug-turned',
      'hub-unfed',
      'fan-overload',
      'watched-header-silent',
    ]);
    let written = 0;
    fc.assert(
      fc.property(anyMachine, (build) => {
        const found = findingsOf(build)
          .filter(({ severity }) => severity === 'danger' || severity === 'fault')
          .map(({ code }) => code);
        const own = writtenFaults(build);
        written += own.length;
        if (found.some((code) => rules.has(code))) expect(own).not.toEqual([]);
        if (found.length === 0) expect(own).toEqual([]);
      }),
      { numRuns: 25 },
    );
    expect(written).toBeGreaterThan(10);
  });
});
