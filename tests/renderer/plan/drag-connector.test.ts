import { describe, expect, it } from 'vitest';
import type { Target } from '../../../renderer/canvas/canvas-props';
import { dragConnector, type PlanGround } from '../../../renderer/canvas/plan/drag-connector';
import type { PlanProps } from '../../../renderer/canvas/plan/plan-props';
import type { Moving } from '../../../renderer/store/session';
import { wiredBuild } from '../stand-in';

const PANEL: Target = { kind: 'connector', connector: 'panel' };
const AT = { x: 100, y: 100 };
const PX_PER_MM = 10;

/** A plan of ten pixels a millimetre that writes down what it is told. */
function plan(target: Target | null) {
  const told: string[] = [];
  let moving: Moving | null = null;
  const props: PlanProps = {
    build: wiredBuild(),
    chosen: null,
    moving: null,
    step: 'tenth-mm',
    remarks: [],
    theme: 'light',
    onChoose: (id) => told.push(`choose ${id}`),
    onOpen: (id) => told.push(`open ${id}`),
    onMove: (next) => {
      moving = next;
      if (next === null) told.push('taken back');
    },
    onDrop: () => told.push('drop'),
  };
  const ground: PlanGround = {
    view: {
      now: () => ({ scale: PX_PER_MM, x: 0, y: 0 }),
      size: () => ({ width: 800, height: 600 }),
      panBy: (dx, dy) => told.push(`pan ${dx} ${dy}`),
      zoomAt: () => {},
      fit: () => {},
      centreOn: () => {},
      subscribe: () => () => {},
    },
    props: () => props,
    targetAt: () => target,
    setCursor: () => {},
  };
  return { told, moving: () => moving, ground };
}

describe('a press on the plan', () => {
  it('let go in place, or with a trembling hand, chooses what lies under it', () => {
    const { told, ground } = plan(PANEL);
    const gesture = dragConnector(ground, AT);
    gesture.move({ x: 102, y: 101 });
    gesture.up({ x: 102, y: 101 });
    dragConnector(plan(null).ground, AT).up(AT);
    expect(told).toEqual(['choose panel']);
  });

  it('moved on from a connector, brings it along by as many millimetres, and puts it down once', () => {
    const { told, moving, ground } = plan(PANEL);
    const gesture = dragConnector(ground, AT);
    gesture.move({ x: 60, y: 90 });
    gesture.move({ x: -100, y: -500 });
    // 200 px are 20 mm, 600 px are 60 mm, from 214 and 234 mm.
    expect(moving()).toEqual({ connector: 'panel', place: { xMm: 194, yMm: 174, turn: 0 } });
    gesture.up({ x: -100, y: -500 });
    expect(told).toEqual(['choose panel', 'drop']);
  });

  it('dropped by Escape or a second finger, is taken back', () => {
    const { told, moving, ground } = plan(PANEL);
    const gesture = dragConnector(ground, AT);
    gesture.move({ x: 300, y: 300 });
    gesture.cancel();
    expect(moving()).toBeNull();
    expect(told).toEqual(['choose panel', 'taken back']);
  });

  it('moved on from the ground, drags that along', () => {
    const { told, ground } = plan(null);
    const gesture = dragConnector(ground, AT);
    gesture.move({ x: 110, y: 100 });
    gesture.up({ x: 110, y: 100 });
    expect(told).toEqual(['pan 10 0']);
  });
});
