import { useLayoutEffect, useRef } from 'react';
import type { Build } from '../../boards/document/build';
import { overhangWords, refusalWords } from '../../boards/fit/fit-words';
import type { Ghost } from './in-hand';
import { toScreen } from './view';
import type { ViewHandle } from './view-handle';

const GAP_PX = 10;
const MOST_REASONS = 2;

interface FitLabelProps {
  readonly build: Build;
  readonly ghost: Ghost;
  readonly view: ViewHandle;
}

/** Why the plug in the hand cannot sit where it is, beside the connector and never over its pins. */
export function FitLabel({ build, ghost, view }: FitLabelProps) {
  const element = useRef<HTMLDivElement>(null);
  const words = fitLabelWords(build, ghost);

  // biome-ignore lint/correctness/useExhaustiveDependencies: other words make another size
  useLayoutEffect(() => {
    const place = () => {
      if (element.current) placeBeside(element.current, ghost, view);
    };
    place();
    return view.subscribe(place);
  }, [ghost, view, words.join()]);

  if (words.length === 0) return null;
  return (
    <div ref={element} className="fit-label">
      {words.map((line) => (
        <div key={line}>{line}</div>
      ))}
    </div>
  );
}

function fitLabelWords(build: Build, { fit }: Ghost): readonly string[] {
  if (fit.refusals.length > 0)
    return fit.refusals.slice(0, MOST_REASONS).map((refusal) => refusalWords(refusal, build));
  const overhang = overhangWords(fit.overhang);
  return overhang === '' ? [] : [overhang];
}

/** Above the connector where there is room, else below, right or left of it. */
function placeBeside(label: HTMLElement, { around }: Ghost, view: ViewHandle): void {
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
