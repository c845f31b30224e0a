import { describe, expect, it } from 'vitest';
import { parseDocument } from '../../../boards/document/parse';
import { serialize } from '../../../boards/document/serialize';
import { faults, soundBuild, spoilt } from './refused';

const AREA = { xMm: 10, yMm: 10, widthMm: 40, heightMm: 20 };

/** A tray with a way from the supply behind it, through an opening, to a point on its front. */
function soundTray() {
  return {
    widthMm: 400,
    heightMm: 420,
    behindMm: 22,
    points: [
      { id: 'tie-1', kind: 'tie', xMm: 50, yMm: 200 },
      { id: 'main-power', kind: 'end', xMm: 250, yMm: 180 },
    ],
    openings: [{ id: 'right', ...AREA, edge: 'grommet' }],
    bays: [{ id: 'bay-1', ...AREA }],
    supply: { id: 'supply', ...AREA },
    board: { xMm: 20, yMm: 15, rear: 'left' },
    standoffs: [
      { id: 'standoff-c', name: 'C', xMm: 30, yMm: 179 },
      { id: 'standoff-f', xMm: 53, yMm: 21, fixed: true },
    ],
    fans: [
      { id: 'low', wall: 'front', strutsFace: 'inward', flowM3PerHour: 84.5 },
      { id: 'behind', name: 'Rear fan', wall: 'rear' },
    ],
    paths: [
      { id: 'up', from: 'supply', to: 'tie-1', lengthMm: 180, side: 'back' },
      { id: 'over', from: 'tie-1', to: 'right', lengthMm: 120.5, side: 'back' },
      { id: 'in', from: 'right', to: 'main-power', lengthMm: 60, side: 'front' },
    ],
  };
}

/** The faults of a build whose case has that tray with one place changed. */
function faultsWith(path: string, value: unknown): readonly string[] {
  const tray: unknown = soundTray();
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  let at = tray;
  for (const key of keys) at = Reflect.get(Object(at), key);
  Reflect.set(Object(at), last, value);
  return faults(spoilt('case.tray', tray));
}

describe('the tray of a case', () => {
  it('is kept to the letter in a build and in a case sheet', () => {
    const build = { ...soundBuild(), case: { ...soundBuild().case, tray: soundTray() } };
    for (const document of [build, build.case]) {
      const read = parseDocument(JSON.stringify(document));
      if (!read.ok) throw new Error(JSON.stringify(read.problem));
      expect(JSON.parse(serialize(read.value))).toEqual(document);
    }
  });

  it('may have parts that nothing joins', () => {
    expect(() => faultsWith('paths', [])).toThrow('It was opened');
  });

  it('has openings and paths of a size', () => {
    expect(faultsWith('openings.0.widthMm', 0)).toEqual([
      'case.tray.openings[0].widthMm: expected a finite number above 0, at most 2,000, found 0',
    ]);
    expect(faultsWith('paths.0.lengthMm', -180)).toEqual([
      'case.tray.paths[0].lengthMm: expected a finite number above 0, at most 20,000, found -180',
    ]);
  });

  it('has places of one name only once, whatever they are', () => {
    expect(faultsWith('bays.0.id', 'right')).toEqual([
      'case.tray.bays[0].id: expected an id that is not at case.tray.openings[0].id already, found “right”',
    ]);
    expect(faultsWith('supply.id', 'tie-1')).toContain(
      'case.tray.supply.id: expected an id that is not at case.tray.points[0].id already, found “tie-1”',
    );
  });

  it('has each standoff once, at a place on the tray', () => {
    expect(faultsWith('standoffs.1.id', 'standoff-c')).toEqual([
      'case.tray.standoffs[1].id: expected an id that is not at case.tray.standoffs[0].id already, found “standoff-c”',
    ]);
    expect(faultsWith('standoffs.0.xMm', 2001)).toEqual([
      'case.tray.standoffs[0].xMm: expected a finite number from -2,000 to 2,000, found 2001',
    ]);
  });

  it('has no standoff that cannot be taken out and yet is not there', () => {
    expect(faultsWith('standoffs.1.seen', 'empty')).toEqual([
      'case.tray.standoffs[1].seen: expected a standoff in it, since it is “fixed”, found “empty”',
    ]);
    expect(() => faultsWith('standoffs.1.seen', 'set')).toThrow('It was opened');
  });

  it('has each place for a fan once, with a flow of a size', () => {
    expect(faultsWith('fans.1.id', 'low')).toEqual([
      'case.tray.fans[1].id: expected an id that is not at case.tray.fans[0].id already, found “low”',
    ]);
    expect(faultsWith('fans.0.flowM3PerHour', 0)).toEqual([
      'case.tray.fans[0].flowM3PerHour: expected a finite number above 0, at most 2,000, found 0',
    ]);
  });

  it('has paths between two places that are there', () => {
    expect(faultsWith('paths.1.to', 'rigth')).toEqual([
      'case.tray.paths[1].to: expected a point, an opening, a bay or the supply of the tray that is there (perhaps “right” is meant), found “rigth”',
    ]);
    expect(faultsWith('paths.1.to', 'tie-1')).toEqual([
      'case.tray.paths[1].to: expected another place than “from”, found “tie-1”',
    ]);
  });

  it('changes sides at openings only, because metal is in the way elsewhere', () => {
    expect(faultsWith('paths.1.side', 'front')).toEqual([
      'case.tray.paths[1].side: expected “back” as at case.tray.paths[0], which also meets “tie-1” (only an opening has paths on both sides), found “front”',
    ]);
  });
});
