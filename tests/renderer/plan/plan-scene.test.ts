import { expect, it } from 'vitest';
import type { BoardSheet } from '../../../boards/document/board-sheet';
import { makeConnector } from '../../../boards/library/make-connector';
import { planScene } from '../../../renderer/canvas/plan/plan-scene';

const EMPTY: BoardSheet = {
  format: 'leadwright/board',
  version: 1,
  id: 'small',
  name: 'small board',
  outline: { widthMm: 60, depthMm: 40 },
  connectors: [],
};

const withPanelAt = (xMm: number): BoardSheet => ({
  ...EMPTY,
  connectors: [makeConnector('panel-2x5', { id: 'panel', print: 'PANEL', place: { xMm, yMm: 20, turn: 0 } })],
});

it('The plan is fitted to the board, and no less so for the names of a connector on it', () => {
  const { outline, bounds } = planScene('build', EMPTY);
  expect(bounds).toEqual(outline);
  expect(planScene('build', withPanelAt(20)).bounds).toEqual(outline);
});

it('The plan is fitted to a connector as well that lies off the board', () => {
  const { bounds } = planScene('build', withPanelAt(90));
  expect(bounds.x + bounds.width).toBeGreaterThan(90);
});
