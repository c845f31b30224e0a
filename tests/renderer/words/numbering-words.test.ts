import { expect, it } from 'vitest';
import { orientationOf } from '../../../boards/drawing/orientation';
import { labelled, zigZag } from '../../../boards/library/grids';
import { drawnCorner } from '../../../renderer/areas/document/connector/drawn-side';
import { connectorShapeWords } from '../../../renderer/words/connector-words';
import { posts } from '../../boards/fixtures/bench';

const grid = { ...zigZag(5), numbering: { scheme: 'zig-zag', from: 'bottom-left' } } as const;

/** The last words on the shape of a header that is turned so and seen on a board that lies so. */
function counted(
  turn: 0 | 90 | 180 | 270,
  boardTurn: 0 | 90 | 180 | 270,
  mirrored = false,
): string | undefined {
  const view = orientationOf({ turn: boardTurn, mirrored });
  return connectorShapeWords(posts('panel', grid), (corner) => drawnCorner(corner, turn, view))
    .split('; ')
    .at(-1);
}

it('Where counting begins is told as the header lies in the drawing beside it', () => {
  expect(counted(0, 0)).toBe('zig-zag from the bottom left');
  expect(counted(180, 0)).toBe('zig-zag from the top right');
  expect(counted(90, 0)).toBe('zig-zag from the top left');
  expect(counted(90, 270)).toBe('zig-zag from the bottom left');
  expect(counted(0, 0, true)).toBe('zig-zag from the bottom right');
});

it('A connector with labels of its own has no such corner', () => {
  expect(connectorShapeWords(posts('odd', labelled(['A B'])), (corner) => corner)).toMatch(
    /; labels of their own$/,
  );
});
