import { describe, expect, it } from 'vitest';
import type { Build } from '../../../../boards/document/build';
import type { Tray } from '../../../../boards/document/tray';
import { asLaid } from '../../../../boards/routing/laid/as-laid';
import { layingOf } from '../../../../boards/routing/laid/laying-of';
import { verdictOf } from '../../../../boards/routing/laid/run-verdict';
import { verdictWords } from '../../../../boards/routing/laid/run-words';
import { allRoutes } from '../../../../boards/routing/search/all-routes';
import { laidMachine, MACHINE_TRAY } from './laid-machine';

/** The machine with a board of so many millimetres from the right edge on, which lies from 40 mm down, and more on its tray. */
function machineWith(
  depthMm: number,
  more: Partial<Pick<Tray, 'points' | 'openings' | 'paths'>> = {},
): Build {
  const machine = laidMachine();
  const tray = {
    ...MACHINE_TRAY,
    points: [...MACHINE_TRAY.points, ...(more.points ?? [])],
    openings: [...MACHINE_TRAY.openings, ...(more.openings ?? [])],
    paths: [...MACHINE_TRAY.paths, ...(more.paths ?? [])],
  };
  return {
    ...machine,
    board: { ...machine.board, outline: { ...machine.board.outline, depthMm } },
    case: { ...machine.case, tray },
  };
}

function said(build: Build): Readonly<Record<string, string>> {
  const laid = asLaid(build);
  return Object.fromEntries(
    (laid?.runs ?? []).map((run) => [run.lead.id, laid ? verdictWords(build, verdictOf(laid, run)) : '']),
  );
}

/** Where a cable can go on to from the connector FAN_LOW, with how far it is. */
function fromFanLow(build: Build): Readonly<Record<string, number>> {
  const stretches = layingOf(build)?.laying.paths.filter(({ from }) => from === 'board/fan-low') ?? [];
  return Object.fromEntries(stretches.map(({ to, lengthMm }) => [to, lengthMm]));
}

/** All openings that any cable passes when all are laid anew. */
function passedAnew(build: Build): ReadonlySet<string> {
  const laying = layingOf(build)?.laying;
  const routes = laying === undefined ? [] : allRoutes(laying).cables;
  return new Set(routes.flatMap((each) => (each.kind === 'laid' ? each.route.openings : [])));
}

describe('what the board covers on the tray', () => {
  it('is no place where a cable comes up to a connector, and a way through it is gone', () => {
    // From 40 to 340 down; the opening below the board is from 300 to 320.
    const larger = machineWith(300);
    expect(said(machineWith(200))['fan-low']).toMatch(/^laid/);
    expect(said(larger)).toMatchObject({ 'fan-low': 'its way is gone', button: 'its way is gone' });
    expect(said(larger).cpu).toMatch(/^laid/);
    expect(Object.keys(fromFanLow(larger))).not.toContain('below');
    expect([...passedAnew(machineWith(200))]).toContain('below');
    expect([...passedAnew(larger)].toSorted()).toEqual(['above', 'beside']);
  });

  it('is a cut-out behind the processor: nobody gets a cable through it once the board is in', () => {
    const cutOut = machineWith(200, {
      openings: [{ id: 'cut-out', xMm: 60, yMm: 90, widthMm: 90, heightMm: 90, edge: 'rolled' }],
      paths: [{ id: 'column-cut-out', from: 'column', to: 'cut-out', lengthMm: 100, side: 'back' }],
    });
    expect(Object.keys(fromFanLow(cutOut))).toContain('below');
    expect(Object.keys(fromFanLow(cutOut))).not.toContain('cut-out');
    expect([...passedAnew(cutOut)]).not.toContain('cut-out');
  });

  it('is an opening in part: cables come up through what is free of it, and are measured from there', () => {
    // The middle of FAN_LOW is at 173.81, 190; the opening is free from 310 to 320, so its middle is at 120, 315.
    expect(fromFanLow(machineWith(270)).below).toBeCloseTo(53.81 + 125, 9);
    expect(fromFanLow(machineWith(260)).below).toBeCloseTo(53.81 + 120, 9);
    expect(fromFanLow(machineWith(200)).below).toBeCloseTo(53.81 + 120, 9);
  });

  it('is no tie either, but still a place where cables end over the board, such as at a card', () => {
    const at = { xMm: 100, yMm: 100 };
    const over = machineWith(200, {
      points: [
        { id: 'tie', kind: 'tie', ...at },
        { id: 'card', kind: 'end', ...at },
        { id: 'edge', kind: 'tie', xMm: 220, yMm: 100 },
      ],
      paths: ['tie', 'card', 'edge'].map((id) => ({
        id: `below-${id}`,
        from: 'below',
        to: id,
        lengthMm: 100,
        side: 'front' as const,
      })),
    });
    const found = Object.keys(fromFanLow(over));
    expect(found).toEqual(expect.arrayContaining(['card', 'edge']));
    expect(found).not.toContain('tie');
  });
});
