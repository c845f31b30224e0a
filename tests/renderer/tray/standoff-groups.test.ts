import { describe, expect, it } from 'vitest';
import { asItShouldBe, standoffGroups } from '../../../renderer/areas/route/standoffs/standoff-groups';
import { bench } from '../../boards/findings/harness';

/** Inches from the rear and from the right edge (a public drawing script; a second one agrees on C). */
const at = (id: string, rear: number, right: number) => ({
  id,
  name: id.toUpperCase(),
  xMm: rear * 25.4,
  yMm: right * 25.4,
});

const B = at('b', 0.4, 8.25);
const C = at('c', 0.4, 6.45);
const H = at('h', 6.5, 6.45);
const R = at('r', 6.5, 9.05);

function groupsOf(laid: ReturnType<typeof bench>) {
  const { build } = laid;
  const said = build.case.tray && standoffGroups(build, build.case.tray);
  if (said?.kind !== 'known') throw new Error('Not known');
  return said;
}

describe('the list of standoffs beside the map', () => {
  it('has what is wrong first, then what gets one, then what is for other boards', () => {
    const { groups } = groupsOf(
      bench().tray('atx', C, { ...B, seen: 'set' }, { ...H, xMm: H.xMm + 4 }, at('far', -1, 0)),
    );
    expect(
      groups.map(({ title, rows }) => [title, rows.map(({ name, words }) => `${name}, ${words}`)]),
    ).toEqual([
      ['Stay empty', ['Standoff\u00a0B, under no hole of this board']],
      ['Near a hole, not under it', ['Standoff\u00a0H, near hole\u00a0H']],
      ['Get a standoff', ['Standoff\u00a0C, under hole\u00a0C']],
      ['Beside the board', ['Standoff\u00a0FAR, for other boards']],
    ]);
    expect(groups.map(({ rows }) => rows[0]?.found?.severity)).toEqual([
      'danger',
      'doubt',
      undefined,
      undefined,
    ]);
  });

  it('tells of a place under a hole that it is still to be set once it was seen empty', () => {
    const { groups } = groupsOf(bench().tray('atx', { ...C, seen: 'empty' }));
    expect(groups[0]?.rows[0]?.words).toBe('under hole\u00a0C, still to be set');
  });

  it('doubts a standoff under a hole whose place no two accounts agree on', () => {
    const { groups } = groupsOf(bench().tray('micro-atx', R));
    expect(groups[0]?.rows[0]?.found).toMatchObject({ severity: 'doubt' });
  });

  it('names every hole that has nothing under it', () => {
    expect(groupsOf(bench().tray('mini-itx', C)).without.map(({ id }) => id)).toEqual(['f', 'h', 'j']);
  });

  it('says what is missing where nothing can be told', () => {
    const { build } = bench().tray('atx');
    expect(build.case.tray && standoffGroups(build, build.case.tray)).toEqual({
      kind: 'unknown',
      missing: 'standoffs',
    });
  });
});

describe('noting that all are as listed', () => {
  it('sets those under holes and empties those under none, and leaves the others and what is known alone', () => {
    const laid = bench().tray(
      'atx',
      { ...C, seen: 'empty' },
      { ...B, seen: 'set' },
      { ...H, fixed: true },
      at('far', -1, 0),
      { ...at('j', 6.5, 0.25), seen: 'set' },
    );
    expect(asItShouldBe(groupsOf(laid).groups)).toEqual([
      { standoff: 'b', seen: 'empty' },
      { standoff: 'c', seen: 'set' },
    ]);
  });
});
