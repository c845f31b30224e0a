import { describe, expect, it } from 'vitest';
import { centreOf, overlap, rectAbout } from '../../../boards/drawing/geometry';
import { measureByTable } from '../../../boards/drawing/measure';
import { farLabels, farLabelsNeeded } from '../../../renderer/canvas/drawing/far-labels';
import { sceneOf } from '../../../renderer/canvas/scene/scene-of';
import { everyCable } from '../../boards/library/demo-files';
import { wiredBoard } from './wired-board';

/** The page's usual base type size. */
const TYPE_PX = 15;

describe('seen from afar', () => {
  it('connectors carry their print, and no two prints lie over each other', () => {
    for (const seed of [1, 2, 3, 4, 5])
      for (const scale of [2, 3, 5, 8]) {
        const build = wiredBoard(seed, 40);
        const scene = sceneOf(build, { view: build.view, measure: measureByTable });
        const labels = farLabels(scene, scale, TYPE_PX);
        expect(labels.map(({ text }) => text)).toEqual(scene.blocks.map(({ connector }) => connector.print));
        for (const a of labels) {
          for (const b of labels) expect(a !== b && overlap(a.box, b.box)).toBe(false);
          for (const { shell } of scene.blocks) expect(overlap(a.box, shell)).toBe(false);
        }
      }
  });

  it('prints side by side stay two words: between them is as much as between words', () => {
    const bare = { ...everyCable, seats: [] };
    const scene = sceneOf(bare, { view: bare.view, measure: measureByTable });
    for (let scale = 1; scale < 4; scale += 0.05) {
      const labels = farLabels(scene, scale, TYPE_PX);
      for (const a of labels) {
        const space = measureByTable(' ', a.sizeMm, 'strong');
        const wider = { ...a.box, width: a.box.width + space };
        for (const b of labels) expect(a !== b && overlap(wider, b.box), `${a.text} ${b.text}`).toBe(false);
      }
    }
  });

  it('prints keep off mounting holes where there is another place', () => {
    const build = wiredBoard(1, 1);
    const scene = sceneOf({ ...build, seats: [] }, { view: build.view, measure: measureByTable });
    const [usual] = farLabels(scene, 3, TYPE_PX);
    if (!usual) throw new Error('A connector without a print');
    const hole = { hole: 'under', label: '', centre: centreOf(usual.box), radius: 2 };
    const [label] = farLabels({ ...scene, holes: [hole] }, 3, TYPE_PX);
    expect(label?.text).toBe(usual.text);
    expect(label && overlap(label.box, rectAbout(hole.centre, 4, 4))).toBe(false);
  });

  it('a connector without a print is called what it is, and a print as long as a sentence is cut', () => {
    const build = wiredBoard(1, 2);
    const [first, second] = build.board.connectors;
    if (!first || !second) throw new Error('Two connectors were asked for');
    const connectors = [
      { ...first, print: '' },
      { ...second, print: 'N'.repeat(200) },
    ];
    const scene = sceneOf(
      { ...build, board: { ...build.board, connectors }, seats: [] },
      { view: build.view, measure: measureByTable },
    );
    expect(farLabels(scene, 3, TYPE_PX).map(({ text }) => text)).toEqual([first.title, `${'N'.repeat(23)}…`]);
  });

  it('from near the titles themselves can be read', () => {
    expect(farLabelsNeeded(3, TYPE_PX)).toBe(true);
    expect(farLabelsNeeded(26, TYPE_PX)).toBe(false);
  });
});
