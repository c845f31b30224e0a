import { describe, expect, it } from 'vitest';
import type { Build } from '../../../boards/document/build';
import { StepIdZ } from '../../../boards/document/text';
import { applyCommand } from '../../../boards/edit/apply';
import { type BenchStep, benchStepsOf } from '../../../boards/handover/steps/bench-steps';
import { planKey, standoffPlan } from '../../../boards/handover/steps/standoff-plan';
import { type StepWords, stepWords } from '../../../boards/handover/steps/step-words';
import { doneOf, tickOf } from '../../../boards/handover/steps/ticks';
import { bench } from '../findings/harness';

/** Inches from the rear and from the right edge (a public drawing script; a second one agrees on C, F, H and J). */
const at = (id: string, rear: number, right: number) => ({
  id,
  name: id.toUpperCase(),
  xMm: rear * 25.4,
  yMm: right * 25.4,
});

const B = at('b', 0.4, 8.25);
const C = at('c', 0.4, 6.45);
const F = at('f', 1.3, 0.25);
const H = at('h', 6.5, 6.45);
const J = at('j', 6.5, 0.25);
const R = at('r', 6.5, 9.05);

function stepsOf(build: Build): readonly BenchStep[] {
  const steps = benchStepsOf(build);
  if (!steps.ok) throw new Error('A ring');
  return steps.value;
}

function stepOf(build: Build, id: string): BenchStep {
  const step = stepsOf(build).find((each) => each.id === id);
  if (step === undefined) throw new Error(`No step ${id}`);
  return step;
}

function words(build: Build, id = 'standoffs'): StepWords {
  const { title, lines, cautions } = stepWords(build, stepOf(build, id));
  const plain = (texts: readonly string[]) => texts.map((text) => text.replaceAll('\u00a0', ' '));
  return { title, lines: plain(lines), cautions: plain(cautions) };
}

const LOOK = 'Hold the board over them once: a standoff is seen through every hole that has one.';

describe('setting the standoffs', () => {
  it('names the holes that get one, those pressed in, and the places that stay empty', () => {
    const { build } = bench().tray('atx', C, F, { ...H, fixed: true }, J, B);
    expect(words(build)).toEqual({
      title: 'Set the standoffs',
      lines: [
        'One under holes C, F, H and J: 4 standoffs in all.',
        'Pressed in already: standoff H.',
        'Leave empty: standoff B. Metal there would touch the underside of the board and short it.',
        'Nothing is under holes A, G, K, L and M: hold the board there from below when a plug is pushed on.',
        LOOK,
      ],
      cautions: [],
    });
  });

  it('has those taken out that were seen where the board has no hole', () => {
    const { build } = bench().tray('mini-itx', C, F, H, J, { ...at('x', 3, 3), seen: 'set' });
    expect(words(build).lines).toEqual([
      'One under holes C, F, H and J: 4 standoffs in all.',
      'Take out standoff X: the board has no hole there.',
      LOOK,
    ]);
  });

  it('warns before a board that cannot go in, because a standoff is pressed in under it', () => {
    const { build } = bench().tray('mini-itx', C, { ...at('x', 3, 3), fixed: true });
    expect(words(build).cautions).toEqual([expect.stringContaining('this board does not go into this case')]);
  });

  it('says to look through a hole whose place no two accounts agree on', () => {
    const { build } = bench().tray('micro-atx', R);
    expect(words(build).lines).toContainEqual(
      expect.stringContaining('Published accounts do not agree on hole R'),
    );
  });

  it('stays a plain reminder where the tray or the holes are not known', () => {
    expect(words(bench().build).lines).toEqual([
      'One under every hole of the board, none where the board has no hole: it would short the board.',
    ]);
  });

  it('comes before the board goes in', () => {
    const ids = stepsOf(bench().tray('atx', C).build).map(({ id }) => id);
    expect(ids.indexOf('standoffs')).toBeLessThan(ids.indexOf('board-in'));
  });

  it('keeps its tick when something is noted, and loses it for another board or another place', () => {
    const { build } = bench().tray('atx', C, B);
    const tick = tickOf(stepOf(build, 'standoffs'));
    expect(StepIdZ.safeParse(tick).success).toBe(true);
    const ticked = applyCommand(build, { name: 'tick-steps', args: { steps: [tick], done: true } });
    if (!ticked.ok) throw new Error('Not ticked');
    const done = (each: Build) => doneOf(each, stepsOf(each)).has('standoffs');
    expect(done(ticked.value)).toBe(true);
    const noted = applyCommand(ticked.value, {
      name: 'note-standoffs',
      args: { seen: [{ standoff: 'b', seen: 'empty' }] },
    });
    expect(noted.ok && done(noted.value)).toBe(true);
    const { outline } = bench().tray('micro-atx').build.board;
    expect(done({ ...ticked.value, board: { ...build.board, outline } })).toBe(false);
    const moved = applyCommand(ticked.value, {
      name: 'move-in-tray',
      args: { to: [{ place: 'c', xMm: 200, yMm: 200 }] },
    });
    expect(moved.ok && done(moved.value)).toBe(false);
  });
});

describe('the drawing of the standoffs', () => {
  const plan = (build: Build) => {
    const step = stepOf(build, 'standoffs');
    const drawn = step.kind === 'standoffs' ? standoffPlan(build, step.known) : undefined;
    if (drawn === undefined) throw new Error('Nothing to draw');
    return drawn;
  };

  it('shows the board as it lies in the case: its rear at the left, the corner of all boards at the top', () => {
    // 12 by 9.6 in (microATX specification v1.2, 2004, Table 3), laid a quarter round.
    const { board, rear } = plan(bench().tray('atx', C).build);
    expect(board).toEqual({ x: 20, y: 15, width: 244, height: 305 });
    expect(rear).toEqual([
      { x: 20, y: 15 },
      { x: 20, y: 320 },
    ]);
  });

  it('marks what gets one, what stays empty, what is near a hole, and holes with nothing under them', () => {
    const { marks } = plan(
      bench().tray('mini-itx', C, { ...H, xMm: H.xMm + 4 }, at('x', 3, 3), at('far', -1, 0)).build,
    );
    expect(marks.map(({ kind, label }) => `${kind} ${label}`)).toEqual([
      'set C',
      'off H',
      'empty X',
      'without F',
      'without H',
      'without J',
    ]);
    expect(marks[0]?.at).toEqual({
      x: expect.closeTo(20 + 0.4 * 25.4, 6),
      y: expect.closeTo(15 + 6.45 * 25.4, 6),
    });
    // F stands 1.3 in from the rear and 0.25 in from the right.
    expect(marks[3]?.at).toEqual({
      x: expect.closeTo(20 + 1.3 * 25.4, 1),
      y: expect.closeTo(15 + 0.25 * 25.4, 1),
    });
  });

  it('explains the marks that are there, and no others', () => {
    const key = planKey(plan(bench().tray('mini-itx', C, F, H, J).build).marks);
    expect(key).toBe('Seen from the front, the thick edge is the rear. Filled: a standoff.');
  });
});

describe('the fans of the case', () => {
  it('are a step of their own where the tray has places of fans: which blow in, which out, which to look at', () => {
    const { build } = bench().tray('atx', C);
    const { tray } = build.case;
    if (tray === undefined) throw new Error('No tray');
    const fans = [
      { id: 'front', name: 'Front fan', wall: 'front' as const, strutsFace: 'inward' as const },
      { id: 'rear', name: 'Rear fan', wall: 'rear' as const, strutsFace: 'outward' as const },
      { id: 'top', name: 'Top fan', wall: 'top' as const },
    ];
    const blown = { ...build, case: { ...build.case, tray: { ...tray, fans } } };
    expect(words(blown, 'fans')).toEqual({
      title: 'See which way the fans blow',
      lines: [
        'Blow in: Front fan.',
        'Blow out: Rear fan.',
        'Not looked at: Top fan.',
        'Air leaves a fan on the side with the struts; an arrow on its frame counts for more.',
      ],
      cautions: [],
    });
    const ids = stepsOf(blown).map(({ id }) => id);
    expect(ids.indexOf('fans')).toBeLessThan(ids.indexOf('look-over'));
    expect(stepsOf(build).map(({ id }) => id)).not.toContain('fans');
  });
});
