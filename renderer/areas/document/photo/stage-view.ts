import type { PlanePoint } from '../../../../boards/pinout/photo/matrix3';
import type { SizePx, View } from '../../../canvas/view';

const MARGIN_PX = 8;
/** A pixel of the picture becomes a square of this side at most. */
const MOST = 24;

/** The view in which a whole picture lies in the middle of its place. */
export function wholePicture(picture: SizePx, place: SizePx): View {
  const scale = Math.max(
    0.01,
    Math.min(
      (place.width - 2 * MARGIN_PX) / picture.width,
      (place.height - 2 * MARGIN_PX) / picture.height,
      MOST,
    ),
  );
  return {
    scale,
    x: (place.width - picture.width * scale) / 2,
    y: (place.height - picture.height * scale) / 2,
  };
}

/** Nearer or further, with what is under a point of the screen staying there; never further than the whole. */
export function nearer(view: View, factor: number, at: PlanePoint, whole: View): View {
  const scale = Math.min(MOST, Math.max(whole.scale, view.scale * factor));
  if (scale === whole.scale) return whole;
  const ratio = scale / view.scale;
  return { scale, x: at.x - (at.x - view.x) * ratio, y: at.y - (at.y - view.y) * ratio };
}

/** The view in which these points of the picture fill the place, with room round them for the print beside pins. */
export function broughtNear(points: readonly PlanePoint[], place: SizePx, whole: View): View {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const [width, height] = [Math.max(...xs) - left, Math.max(...ys) - top];
  const room = Math.max(width, height) * 0.6;
  const fitting = Math.min(place.width / (width + room), place.height / (height + room), MOST);
  if (!(fitting > whole.scale)) return whole;
  return {
    scale: fitting,
    x: place.width / 2 - (left + width / 2) * fitting,
    y: place.height / 2 - (top + height / 2) * fitting,
  };
}

/** The view moved just so far that a point of the picture can be seen with some room round it. */
export function broughtIn(view: View, point: PlanePoint, place: SizePx): View {
  const room = Math.min(place.width, place.height) / 6;
  const [x, y] = [point.x * view.scale + view.x, point.y * view.scale + view.y];
  const inside = (at: number, length: number) =>
    at < room ? room - at : at > length - room ? length - room - at : 0;
  const [dx, dy] = [inside(x, place.width), inside(y, place.height)];
  return dx === 0 && dy === 0 ? view : { ...view, x: view.x + dx, y: view.y + dy };
}
