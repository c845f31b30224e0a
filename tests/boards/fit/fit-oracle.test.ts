import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addTurns, TURNS } from '../../../boards/base/units';
import type { Build, Seat } from '../../../boards/document/build';
import type { Fit, FitRefusal } from '../../../boards/fit/fit';
import { fitSeat } from '../../../boards/fit/fit-seat';
import { placesOf } from '../../../boards/fit/places';
import { paintedFit } from './painted-fit';
import { randomBench } from './random-bench';

function told(refusal: FitRefusal): string {
  switch (refusal.code) {
    case 'blocked-hole':
      return `blocked-hole ${refusal.hole} ${refusal.pin}`;
    case 'no-hole':
      return `no-hole ${refusal.pin}`;
    case 'wall':
      return `wall ${refusal.side}`;
    case 'obstructed':
      return `obstructed ${refusal.by}`;
    case 'occupied':
      return `occupied ${refusal.by.lead} ${refusal.pins.join(' ')}`;
    default:
      return refusal.code;
  }
}

function toldFit({ refusals, overhang, landings }: Fit) {
  return {
    refusals: refusals.map(told).sort(),
    overhang,
    over: landings.flatMap(({ hole, pin }) => (pin ? [`${hole} ${pin.pin}`] : [])),
  };
}

function turnedBoard(build: Build): Build {
  const connectors = build.board.connectors.map((connector) => {
    const { xMm, yMm, turn } = connector.place;
    return { ...connector, place: { xMm: -yMm, yMm: xMm, turn: addTurns(turn, 90) } };
  });
  return { ...build, board: { ...build.board, connectors } };
}

describe('fit against a bench painted on squared paper', () => {
  it('says the same of 2,000 seats on crowded random benches', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(randomBench, ({ build, seat }) => {
        const fit = fitSeat(build, seat);
        for (const { code } of fit.refusals) seen.add(code);
        if (fit.refusals.length === 0) seen.add(fit.overhang.length > 0 ? 'hangs over' : 'sits inside');
        const painted = paintedFit(build, seat);
        // Where the pitch is another, holes lie between pins and only the refusal counts.
        if (painted.refusals.includes('pitch') || painted.refusals.includes('family'))
          expect(fit.refusals.map(told)).toEqual(painted.refusals);
        else expect(toldFit(fit)).toEqual(painted);
      }),
      { seed: 20050, numRuns: 2_000 },
    );
    expect([...seen].sort()).toEqual([
      'blocked-hole',
      'family',
      'guide',
      'hangs over',
      'no-hole',
      'no-pin',
      'obstructed',
      'occupied',
      'pitch',
      'rib',
      'sits inside',
      'wall',
    ]);
  }, 30_000);

  it('finds exactly the places that trying every cell and turn finds', () => {
    let total = 0;
    fc.assert(
      fc.property(randomBench, ({ build, seat }) => {
        const tried: Seat[] = [];
        for (const { id } of build.board.connectors)
          for (const turn of TURNS)
            for (let row = -4; row < 7; row++)
              for (let col = -4; col < 9; col++) {
                const there: Seat = { ...seat, connector: id, at: [row, col], turn };
                if (paintedFit(build, there).refusals.length === 0) tried.push(there);
              }
        const places = placesOf(build, seat);
        total += places.length;
        expect(places).toEqual(tried);
      }),
      { seed: 20051, numRuns: 8 },
    );
    expect(total).toBeGreaterThan(100);
  }, 30_000);

  it('does not change when the whole board is turned', () => {
    fc.assert(
      fc.property(randomBench, ({ build, seat }) => {
        const refusals = (each: Build) => fitSeat(each, seat).refusals.map(told).sort();
        expect(refusals(turnedBoard(build))).toEqual(refusals(build));
      }),
      { seed: 20052, numRuns: 500 },
    );
  }, 30_000);
});
