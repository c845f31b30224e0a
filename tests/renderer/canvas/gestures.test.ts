import { describe, expect, it } from 'vitest';
import type { CanvasProps, Target } from '../../../renderer/canvas/canvas-props';
import type { Bench } from '../../../renderer/canvas/gestures/gesture';
import { pinch } from '../../../renderer/canvas/gestures/pinch';
import { press } from '../../../renderer/canvas/gestures/press';
import { putDown } from '../../../renderer/canvas/gestures/put-down';
import { toMm, type View, zoomedAt } from '../../../renderer/canvas/view';
import type { ViewHandle } from '../../../renderer/canvas/view-handle';

const PLUG: Target = { kind: 'plug', plug: { lead: 'power', plug: 'plug' } };
const PIN: Target = { kind: 'pin', pin: { connector: 'panel', pin: '6' } };

/** A canvas that writes down what it is told. */
function bench(target: Target | null) {
  const told: string[] = [];
  let view: View = { scale: 10, x: 0, y: 0 };
  const handle: ViewHandle = {
    now: () => view,
    size: () => ({ width: 800, height: 600 }),
    panBy: (dx, dy) => {
      view = { ...view, x: view.x + dx, y: view.y + dy };
      told.push(`pan ${dx} ${dy}`);
    },
    zoomAt: (factor, at) => {
      view = zoomedAt(view, factor, at);
    },
    fit: () => told.push('fit'),
    centreOn: () => told.push('centre'),
    subscribe: () => () => {},
  };
  const props: Pick<CanvasProps, 'onSelect' | 'onGrab' | 'onRelease'> = {
    onSelect: (chosen) => told.push(`select ${chosen?.kind ?? 'nothing'}`),
    onGrab: (plug) => told.push(`grab ${plug.lead}`),
    onRelease: () => told.push('release'),
  };
  const fake = {
    view: handle,
    props: () => props,
    targetAt: () => target,
    setCursor: () => {},
  };
  // Only what the gestures of a press use; the page's element is not among it.
  return { told, view: () => view, bench: fake as unknown as Bench };
}

const AT = { x: 100, y: 100 };

describe('a press on the canvas', () => {
  it('let go in place, selects what lies under it', () => {
    const { told, bench: on } = bench(PIN);
    press(on, AT).up(AT);
    expect(told).toEqual(['select pin']);
  });

  it('on empty ground selects nothing', () => {
    const { told, bench: on } = bench(null);
    press(on, AT).up(AT);
    expect(told).toEqual(['select nothing']);
  });

  it('with a trembling hand is still a click', () => {
    const { told, bench: on } = bench(PLUG);
    const gesture = press(on, AT);
    gesture.move({ x: 103, y: 101 });
    gesture.up({ x: 102, y: 101 });
    expect(told).toEqual(['select plug']);
  });

  it('moved on from a plug, takes it into the hand, once, and neither pans nor selects', () => {
    const { told, bench: on } = bench(PLUG);
    const gesture = press(on, AT);
    gesture.move({ x: 110, y: 100 });
    gesture.move({ x: 140, y: 130 });
    gesture.up({ x: 140, y: 130 });
    expect(told).toEqual(['grab power']);
  });

  it('moved on from the ground, drags it along and selects nothing', () => {
    const { told, bench: on } = bench(null);
    const gesture = press(on, AT);
    gesture.move({ x: 110, y: 100 });
    gesture.move({ x: 110, y: 95 });
    gesture.up({ x: 110, y: 95 });
    expect(told).toEqual(['pan 10 0', 'pan 0 -5']);
  });
});

describe('a press while a plug is carried', () => {
  it('puts it down', () => {
    const { told, bench: on } = bench(null);
    putDown(on, AT).up(AT);
    expect(told).toEqual(['release']);
  });

  it('moved on, drags the ground and keeps the plug in the hand', () => {
    const { told, bench: on } = bench(null);
    const gesture = putDown(on, AT);
    gesture.move({ x: 100, y: 130 });
    gesture.up({ x: 100, y: 130 });
    expect(told).toEqual(['pan 0 30']);
  });
});

describe('two fingers', () => {
  it('keep the drawing’s points under them', () => {
    const { view, bench: on } = bench(null);
    const before = [
      { x: 100, y: 100 },
      { x: 200, y: 100 },
    ] as const;
    const now = [
      { x: 100, y: 100 },
      { x: 300, y: 100 },
    ] as const;
    const held = before.map((finger) => toMm(view(), finger));
    pinch(on.view, before, now);
    expect(now.map((finger) => toMm(view(), finger))).toEqual(held);
  });
});
