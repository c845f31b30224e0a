import { Focus, Maximize, ZoomIn, ZoomOut } from 'lucide-react';
import {
  type KeyboardEvent,
  type PointerEvent,
  type ReactNode,
  useEffect,
  useLayoutEffect,
  useRef,
  useState,
} from 'react';
import type { PlanePoint } from '../../../../boards/pinout/photo/matrix3';
import { useSize } from '../../../canvas/use-size';
import type { SizePx, View } from '../../../canvas/view';
import { IconButton } from '../../../look/button';
import { broughtIn, broughtNear, nearer, wholePicture } from './stage-view';

const ZOOM_STEP = 1.25;
/** A press that moves less than this is a click. */
const STILL_PX = 4;

interface StageProps {
  readonly label: string;
  readonly image: OffscreenCanvas;
  /** How much of the picture is seen, 0 to 1: what is drawn over it stays. */
  readonly strength: number;
  /** Said in a corner of the picture. */
  readonly note?: string;
  /** What the keyboard is at: kept in sight. */
  readonly focus: PlanePoint | null;
  /** Drawn over the picture, in its pixels; a length of `px` is one pixel of the screen. */
  readonly overlay: (px: number) => ReactNode;
  /** Takes the focus whenever this grows. */
  readonly grabs?: number;
  /** Where the pins are, once that is known: there is a button that goes there. */
  readonly pins?: readonly PlanePoint[];
  readonly onKeyDown: (event: KeyboardEvent) => void;
  readonly onKeyUp?: () => void;
  /** A press on the picture: whether something is taken hold of there, to be dragged. `px` as above. */
  readonly onTake: (place: PlanePoint, px: number) => boolean;
  readonly onDrag: (place: PlanePoint) => void;
  readonly onDrop: () => void;
  readonly onClick: (place: PlanePoint, px: number) => void;
  readonly onHover?: (place: PlanePoint | null) => void;
}

interface Press {
  readonly x: number;
  readonly y: number;
  readonly view: View;
  readonly holds: boolean;
  moved: boolean;
}

/** A picture that can be zoomed, moved and pointed at, with shapes drawn over it. */
export function Stage(props: StageProps) {
  const {
    label,
    image,
    strength,
    focus,
    overlay,
    grabs = 0,
    pins = [],
    note = '',
    onKeyDown,
    onKeyUp,
  } = props;
  const place = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const press = useRef<Press | null>(null);
  const size = useSize(place);
  const { view, whole, setView } = useStageView(image, size, focus);
  useWheel(place, (factor, at) => setView((now) => nearer(now, factor, at, whole)));
  useEffect(() => {
    if (grabs > 0) place.current?.focus();
  }, [grabs]);
  useLayoutEffect(() => {
    if (canvas.current && size) drawPicture(canvas.current, image, view, size, strength);
  }, [image, view, size, strength]);

  const placeOf = (event: PointerEvent): PlanePoint => {
    const { left, top } = event.currentTarget.getBoundingClientRect();
    return {
      x: (event.clientX - left - view.x) / view.scale,
      y: (event.clientY - top - view.y) / view.scale,
    };
  };
  const down = (event: PointerEvent) => {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    const holds = props.onTake(placeOf(event), 1 / view.scale);
    press.current = { x: event.clientX, y: event.clientY, view, holds, moved: false };
  };
  const move = (event: PointerEvent) => {
    const at = placeOf(event);
    props.onHover?.(at);
    const held = press.current;
    if (held === null) return;
    const [dx, dy] = [event.clientX - held.x, event.clientY - held.y];
    if (!held.moved && Math.hypot(dx, dy) < STILL_PX) return;
    held.moved = true;
    if (held.holds) props.onDrag(at);
    else setView({ ...held.view, x: held.view.x + dx, y: held.view.y + dy });
  };
  const up = (event: PointerEvent) => {
    const held = press.current;
    press.current = null;
    if (held === null) return;
    if (held.moved) {
      if (held.holds) props.onDrop();
    } else props.onClick(placeOf(event), 1 / view.scale);
  };
  const zoom = (factor: number) =>
    size && setView((now) => nearer(now, factor, { x: size.width / 2, y: size.height / 2 }, whole));
  const key = (event: KeyboardEvent) => {
    if (event.key === '+' || event.key === '=') zoom(ZOOM_STEP);
    else if (event.key === '-') zoom(1 / ZOOM_STEP);
    else if (event.key === '0') setView(whole);
    else onKeyDown(event);
  };
  return (
    <div className="photo-stage">
      <div
        ref={place}
        className="photo-place"
        role="application"
        aria-label={label}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it is worked by its own keys, as an application is
        tabIndex={0}
        onKeyDown={key}
        onKeyUp={onKeyUp}
        onBlur={onKeyUp}
        onPointerDown={down}
        onPointerMove={move}
        onPointerUp={up}
        onPointerCancel={up}
        onPointerLeave={() => props.onHover?.(null)}
      >
        <canvas ref={canvas} className="photo-canvas" />
        <svg className="photo-overlay" aria-hidden="true">
          <g transform={`translate(${view.x} ${view.y}) scale(${view.scale})`}>{overlay(1 / view.scale)}</g>
        </svg>
      </div>
      {note !== '' && <p className="photo-note small">{note}</p>}
      <div className="photo-zoom">
        {pins.length > 0 && (
          <IconButton
            label="Show the pins"
            icon={<Focus size={18} />}
            onPress={() => size && setView(broughtNear(pins, size, whole))}
          />
        )}
        <IconButton
          label="Zoom out"
          keys="−"
          icon={<ZoomOut size={18} />}
          onPress={() => zoom(1 / ZOOM_STEP)}
        />
        <IconButton label="Zoom in" keys="+" icon={<ZoomIn size={18} />} onPress={() => zoom(ZOOM_STEP)} />
        <IconButton
          label="Show the whole picture"
          keys="0"
          icon={<Maximize size={18} />}
          onPress={() => setView(whole)}
        />
      </div>
    </div>
  );
}

const NO_SIZE: SizePx = { width: 1, height: 1 };

function useStageView(image: SizePx, size: SizePx | null, focus: PlanePoint | null) {
  const whole = wholePicture(image, size ?? NO_SIZE);
  const [kept, setKept] = useState<View | null>(null);
  const view = kept ?? whole;
  const { width, height } = image;
  // Another picture, or a place of another size: seen whole again.
  // biome-ignore lint/correctness/useExhaustiveDependencies: these are the occasions, not what is read
  useLayoutEffect(() => setKept(null), [width, height, size]);
  useEffect(() => {
    if (focus && size) setKept((now) => (now === null ? null : broughtIn(now, focus, size)));
  }, [focus, size]);
  const setView = (next: View | ((now: View) => View)) =>
    setKept((now) => {
      const to = typeof next === 'function' ? next(now ?? whole) : next;
      return to.scale === whole.scale && to === whole ? null : to;
    });
  return { view, whole, setView };
}

/** The wheel zooms; React's own listener could not keep the page from scrolling. */
function useWheel(
  place: React.RefObject<HTMLElement | null>,
  zoom: (factor: number, at: PlanePoint) => void,
): void {
  const latest = useRef(zoom);
  useEffect(() => {
    latest.current = zoom;
  });
  useEffect(() => {
    const element = place.current;
    if (!element) return;
    const turn = (event: WheelEvent) => {
      event.preventDefault();
      const { left, top } = element.getBoundingClientRect();
      latest.current(1.0015 ** -event.deltaY, { x: event.clientX - left, y: event.clientY - top });
    };
    element.addEventListener('wheel', turn, { passive: false });
    return () => element.removeEventListener('wheel', turn);
  }, [place]);
}

function drawPicture(
  canvas: HTMLCanvasElement,
  image: OffscreenCanvas,
  view: View,
  size: SizePx,
  strength: number,
): void {
  const ratio = window.devicePixelRatio;
  const [width, height] = [Math.round(size.width * ratio), Math.round(size.height * ratio)];
  if (canvas.width !== width) canvas.width = width;
  if (canvas.height !== height) canvas.height = height;
  const pen = canvas.getContext('2d');
  if (pen === null) return;
  pen.setTransform(1, 0, 0, 1, 0, 0);
  pen.clearRect(0, 0, width, height);
  pen.globalAlpha = strength;
  pen.setTransform(ratio * view.scale, 0, 0, ratio * view.scale, ratio * view.x, ratio * view.y);
  // From nearby, single pixels are to be told apart: that is what pointing goes by.
  pen.imageSmoothingEnabled = view.scale < 4;
  pen.drawImage(image, 0, 0);
}
