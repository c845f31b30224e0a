import { type KeyboardEvent, useState } from 'react';
import type { Connector } from '../../../../boards/document/connector';
import { gridIndex } from '../../../../boards/document/numbering';
import type { Photo } from '../../../../boards/document/photo';
import { pinSpots } from '../../../../boards/pinout/photo/lay';
import { mapped, type PlanePoint } from '../../../../boards/pinout/photo/matrix3';
import { cellPlace, pinsToPointAt } from '../../../../boards/pinout/photo/pointed';
import { useWorkbench } from '../../../workbench';
import { LaidGrid } from './laid-grid';
import { Cross, Magnifier } from './magnifier';
import { PointList } from './point-list';
import { PointMarks } from './point-marks';
import { inside, nextPin, nudge, pointNear, withPoint } from './pointing';
import { Stage } from './stage';
import type { OpenPicture } from './use-picture';
import { doubtedPins, type Points } from './use-points';

/** Within so many pixels of the screen, a press takes hold of a point; further away may be the next pin. */
const REACH_PX = 8;

interface PointingViewProps {
  readonly photo: Photo;
  readonly picture: OpenPicture;
  readonly connector: Connector;
  readonly points: Points;
  /** The photo has just come: the keys are to work on it at once. */
  readonly fresh: boolean;
}

/** The photo with the pins that are pointed at and the grid they hold; pointing by mouse or by keys. */
export function PointingView({ photo, picture, connector, points: kept, fresh }: PointingViewProps) {
  const { session } = useWorkbench();
  const { points, lay, preview, keep, put } = kept;
  const [wanted, setWanted] = useState<string | null>(null);
  const [skipped, setSkipped] = useState<ReadonlySet<string>>(new Set());
  const [chosen, setChosen] = useState<string | null>(null);
  const [cross, setCross] = useState<PlanePoint>({ x: photo.widthPx / 2, y: photo.heightPx / 2 });
  const [pointer, setPointer] = useState<PlanePoint | null>(null);
  const [byKeys, setByKeys] = useState(false);
  const [grabs, setGrabs] = useState(fresh ? 1 : 0);

  const missing = connector.pins.filter((pin) => pin.missing).map(({ pin }) => pin);
  // A pin that was passed over for another may not be there at all: it is not asked for again.
  const order = pinsToPointAt(connector.grid, new Set([...missing, ...skipped]));
  const next = nextPin(order, points, wanted);
  const spots = lay ? pinSpots(connector.grid, lay) : [];
  const held = points.find(({ pin }) => pin === chosen);
  const at: PlanePoint = held ? { x: held.xPx, y: held.yPx } : cross;

  const point = (pin: string, place: PlanePoint) => {
    const after = withPoint(points, pin, place, photo);
    put(after);
    setWanted(null);
    const following = nextPin(order, after, null);
    const cell = following === null ? undefined : gridIndex(connector.grid).cellOf(following);
    // Where the grid has the next pin: a few presses of the arrows from there, and not from the middle.
    if (lay && cell) setCross(inside(mapped(lay.toPx, cellPlace(connector.grid, cell)), photo));
    const said = `Pin ${pin} is pointed at.`;
    session.getState().announce(following === null ? said : `${said} Point at pin ${following}.`);
  };
  const drop = (pin: string) => {
    put(points.filter((each) => each.pin !== pin));
    setChosen(null);
  };
  const key = (event: KeyboardEvent) => {
    const move = nudge(event);
    if (move) {
      const place = inside({ x: at.x + move.x, y: at.y + move.y }, photo);
      setByKeys(true);
      if (held) preview(withPoint(points, held.pin, place, photo));
      else setCross(place);
    } else if (event.key === 'Enter' || event.key === ' ') {
      if (held) setChosen(null);
      else if (next !== null) point(next, cross);
    } else if ((event.key === 'Delete' || event.key === 'Backspace') && held) drop(held.pin);
    else if (event.key === 'Escape' && held) setChosen(null);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  const shown = held ? at : byKeys ? cross : (pointer ?? cross);
  return (
    <>
      <Stage
        label={stageLabel(next, held?.pin)}
        image={picture.image}
        strength={1}
        grabs={grabs}
        pins={spots.map(({ xPx, yPx }) => ({ x: xPx, y: yPx }))}
        focus={byKeys ? at : null}
        overlay={(px) => (
          <>
            {lay && <LaidGrid spots={spots} lay={lay} grid={connector.grid} px={px} />}
            <PointMarks points={points} doubted={doubtedPins(kept)} chosen={chosen} px={px} />
            {!held && byKeys && next !== null && <Cross x={cross.x} y={cross.y} reach={26 * px} px={px} />}
          </>
        )}
        onKeyDown={key}
        onKeyUp={keep}
        onTake={(place, px) => {
          setByKeys(false);
          const near = pointNear(points, place, REACH_PX * px);
          if (near !== undefined) setChosen(near);
          return near !== undefined;
        }}
        onDrag={(place) => chosen !== null && preview(withPoint(points, chosen, place, photo))}
        onDrop={keep}
        onClick={(place, px) => {
          if (pointNear(points, place, REACH_PX * px) !== undefined) return;
          const within = inside(place, photo);
          setChosen(null);
          if (next !== null && within.x === place.x && within.y === place.y) point(next, place);
        }}
        onHover={(place) => {
          if (place === null) return;
          setPointer(inside(place, photo));
          setByKeys(false);
        }}
      />
      <PointList
        connector={connector}
        order={order}
        next={next}
        points={kept}
        chosen={chosen}
        magnifier={<Magnifier image={picture.image} at={shown} />}
        onWant={(pin) => {
          setWanted(pin);
          if (next !== null) setSkipped(new Set([...skipped, next].filter((each) => each !== pin)));
        }}
        onChoose={(pin) => {
          setChosen(pin);
          setByKeys(true);
          // The arrow keys move it from there on.
          if (pin !== null) setGrabs(grabs + 1);
        }}
        onRemove={drop}
      />
    </>
  );
}

function stageLabel(next: string | null, chosen: string | undefined): string {
  const keys = 'Arrows move by a pixel, with Shift by ten, with Ctrl by a hundred, with Alt by a tenth.';
  if (chosen !== undefined) return `Photo, point for pin ${chosen}. ${keys} Delete takes it away.`;
  return next === null ? 'Photo.' : `Photo, point at pin ${next}. ${keys} Enter sets the point.`;
}
