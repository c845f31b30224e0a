import { useLayoutEffect, useRef } from 'react';
import type { Rect } from '../../boards/drawing/geometry';
import { toScreen } from './view';
import type { ViewHandle } from './view-handle';

const GAP_PX = 10;

interface BesideLabelProps {
  readonly lines: readonly string[];
  /** What the label is about, and may not cover. */
  readonly around: Rect;
  readonly view: ViewHandle;
  readonly kind: 'fit' | 'suspected';
}

/** A few words beside a connector, never over its pins; it follows the view. */
export function BesideLabel({ lines, around, view, kind }: BesideLabelProps) {
  const element = useRef<HTMLDivElement>(null);

  // biome-ignore lint/correctness/useExhaustiveDependencies: other words make another size
  useLayoutEffect(() => {
    const place = () => {
      if (element.current) placeBeside(element.current, around, view);
    };
    place();
    return view.subscribe(place);
  }, [around, view, lines.join()]);

  if (lines.length === 0) return null;
  return (
    <div ref={element} className="beside-label" data-kind={kind}>
      {lines.map((line) => (
        <div key={line}>{line}</div>
      ))}
    </div>
  );
}

/** Above the connector where there is room, else below, right or left of it. */
function placeBeside(label: HTMLElement, around: Rect, view: ViewHandle): void {
  const size = view.size();
  const { offsetWidth: width, offsetHeight: height } = label;
  const from = toScreen(view.now(), { x: around.x, y: around.y });
  const to = toScreen(view.now(), { x: around.x + around.width, y: around.y + around.height });
  const along = clamp((from.x + to.x - width) / 2, 0, size.width - width);
  const beside = clamp((from.y + to.y - height) / 2, 0, size.height - height);
  const above = from.y - GAP_PX - height;
  const below = to.y + GAP_PX;
  const spots = [
    { x: along, y: above, free: above >= 0 },
    { x: along, y: below, free: below + height <= size.height },
    { x: to.x + GAP_PX, y: beside, free: to.x + GAP_PX + width <= size.width },
    { x: from.x - GAP_PX - width, y: beside, free: from.x - GAP_PX - width >= 0 },
  ];
  const spot = spots.find(({ free }) => free) ?? { x: along, y: 0 };
  label.style.left = `${Math.round(spot.x)}px`;
  label.style.top = `${Math.round(spot.y)}px`;
}

function clamp(value: number, least: number, most: number): number {
  return Math.max(least, Math.min(value, Math.max(least, most)));
}
