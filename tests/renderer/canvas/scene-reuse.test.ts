import { describe, expect, it } from 'vitest';
import type { Build } from '../../../boards/document/build';
import { measureByTable } from '../../../boards/drawing/measure';
import { sceneOf } from '../../../renderer/canvas/scene/scene-of';
import { wiredBoard } from './wired-board';

const blocksOf = (build: Build) => sceneOf(build, { view: build.view, measure: measureByTable }).blocks;

describe('a connector that has not changed is not drawn up again', () => {
  it('when a plug is taken off', () => {
    const build = wiredBoard(7, 60);
    expect(build.seats.length).toBeGreaterThan(1);
    const before = blocksOf(build);
    const after = blocksOf({ ...build, seats: build.seats.slice(1) });
    const touched = build.seats[0]?.connector;
    for (const [index, block] of before.entries())
      if (block.connector.id !== touched) expect(after[index]).toBe(block);
  });

  it('when another connector gets a new name', () => {
    const build = wiredBoard(7, 60);
    const [first, ...others] = build.board.connectors;
    if (!first) throw new Error('no connector');
    const renamed = { ...build.board, connectors: [{ ...first, print: 'NEW' }, ...others] };
    const before = blocksOf(build);
    const after = blocksOf({ ...build, board: renamed });
    expect(after[0]).not.toBe(before[0]);
    expect(after.slice(1)).toEqual(before.slice(1));
    for (const [index, block] of after.slice(1).entries()) expect(block).toBe(before[index + 1]);
  });

  it('but all are when the view turns', () => {
    const build = wiredBoard(7, 60);
    const turned = { ...build, view: { turn: build.view.turn === 90 ? 0 : 90, mirrored: false } } as const;
    const before = blocksOf(build);
    for (const [index, block] of blocksOf(turned).entries()) expect(block).not.toBe(before[index]);
  });

  it('and the drawing is the same whether remembered or not', () => {
    const build = wiredBoard(9, 24);
    const fresh: Build = structuredClone(build);
    blocksOf(build);
    const again = sceneOf(build, { view: build.view, measure: measureByTable });
    const first = sceneOf(fresh, { view: fresh.view, measure: measureByTable });
    expect(again.flags).toEqual(first.flags);
    expect(again.wires).toEqual(first.wires);
    expect(again.titles).toEqual(first.titles);
    expect(again.blocks.map(({ names, pins }) => ({ names, pins }))).toEqual(
      first.blocks.map(({ names, pins }) => ({ names, pins })),
    );
  });
});
