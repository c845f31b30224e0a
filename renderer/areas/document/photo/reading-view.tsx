import { type KeyboardEvent, useState } from 'react';
import { Label } from 'react-aria-components/Label';
import { Slider, SliderOutput, SliderThumb, SliderTrack } from 'react-aria-components/Slider';
import { ToggleButton } from 'react-aria-components/ToggleButton';
import type { Connector } from '../../../../boards/document/connector';
import type { Grid } from '../../../../boards/document/grid';
import { pinOf } from '../../../../boards/document/lookup';
import { gridIndex } from '../../../../boards/document/numbering';
import type { Photo } from '../../../../boards/document/photo';
import type { Lay } from '../../../../boards/pinout/photo/lay';
import { mapped, type PlanePoint } from '../../../../boards/pinout/photo/matrix3';
import { cellPlace, type PinPoint } from '../../../../boards/pinout/photo/pointed';
import { toView, viewOfGrid } from '../../../../boards/pinout/photo/straighten';
import { signalOf } from '../../../../boards/signals/signals';
import { doCommand } from '../../../do-command';
import { Button } from '../../../look/button';
import { useWorkbench } from '../../../workbench';
import { DrawnHeader } from './drawn-header';
import { pointNear } from './pointing';
import { PrintForm } from './print-form';
import { PrintList } from './print-list';
import { meantPins } from './print-names';
import { Stage } from './stage';
import type { OpenPicture } from './use-picture';
import { useStraight } from './use-straight';

const LONG_SIDE_PX = 1_600;
/** Room for the print round the pins, in pitches. */
const MARGIN = 2.5;

interface ReadingViewProps {
  readonly photo: Photo;
  readonly picture: OpenPicture;
  readonly connector: Connector;
  readonly lay: Lay;
}

/** The photo seen straight from above, behind the drawn header: choose a pin, say what is printed beside it. */
export function ReadingView({ photo, picture, connector, lay }: ReadingViewProps) {
  const { grid } = connector;
  const [mirrored, setMirrored] = useState(lay.mirrored);
  const [strength, setStrength] = useState(0.8);
  const [chosen, setChosen] = useState(gridIndex(grid).positions[0]?.label ?? '');
  const wanted = viewOfGrid(grid, MARGIN * grid.pitchMm, LONG_SIDE_PX, mirrored);
  const { straight, share } = useStraight(picture.pixels, lay.toPx, wanted);
  // As long as another view is being made, what is drawn lies over the one that is seen.
  const view = straight?.view ?? wanted;
  const spots = gridIndex(grid).positions.map(({ label, cell }): PinPoint => {
    const { x, y } = mapped(toView(view), cellPlace(grid, cell));
    return { pin: label, xPx: x, yPx: y };
  });
  const key = (event: KeyboardEvent) => {
    const next = neighbour(grid, chosen, event.key, view.mirrored);
    if (next === undefined) return;
    setChosen(next);
    event.preventDefault();
    event.stopPropagation();
  };
  const spot = spots.find(({ pin }) => pin === chosen);
  const focus: PlanePoint | null = spot ? { x: spot.xPx, y: spot.yPx } : null;
  const progress = `Straightening: ${Math.round(share * 100)}\u00a0%`;
  const choose = (place: PlanePoint) => {
    const near = pointNear(spots, place, view.pxPerMm * grid.pitchMm);
    if (near !== undefined) setChosen(near);
  };
  return (
    <>
      {straight ? (
        <Stage
          label={`Photo, straight. Pin ${chosen}. Arrows go to the pins beside it.`}
          image={straight.image}
          strength={strength}
          focus={focus}
          note={share < 1 ? progress : ''}
          overlay={(px) => (
            <DrawnHeader connector={connector} spots={spots} view={view} chosen={chosen} px={px} />
          )}
          onKeyDown={key}
          onTake={() => false}
          onDrag={() => {}}
          onDrop={() => {}}
          onClick={choose}
        />
      ) : (
        <p className="photo-waiting" role="status">
          {progress}
        </p>
      )}
      <section className="photo-side" aria-label="Print">
        <div className="photo-looks">
          <Slider
            className="photo-slider"
            value={Math.round(strength * 100)}
            minValue={0}
            maxValue={100}
            step={5}
            onChange={(value) => setStrength((typeof value === 'number' ? value : 100) / 100)}
          >
            <Label className="field-label">Strength of the photo</Label>
            <SliderOutput className="small soft">{`${Math.round(strength * 100)}\u00a0%`}</SliderOutput>
            <SliderTrack className="photo-slider-track">
              <SliderThumb className="photo-slider-thumb" />
            </SliderTrack>
          </Slider>
          <ToggleButton className="button" isSelected={mirrored} onChange={setMirrored}>
            Mirrored
          </ToggleButton>
        </div>
        <PrintForm
          connector={connector}
          pin={pinOf(connector, chosen)}
          title={photo.title || photo.id}
          onNext={() => setChosen(following(grid, chosen))}
        />
        <MeantNames connector={connector} title={photo.title || photo.id} />
        <PrintList connector={connector} chosen={chosen} onChoose={setChosen} />
      </section>
    </>
  );
}

/** Takes over what the names mean, where that is more than what is known. */
function MeantNames({ connector, title }: { readonly connector: Connector; readonly title: string }) {
  const workbench = useWorkbench();
  const pins = meantPins(connector, title);
  const words = pins.map(({ pin, signal }) => `${pin} ${signalOf(signal ?? 'unknown').name}`);
  // Never disabled: a button that has just been pressed would take the keys with it.
  const take = () => {
    if (pins.length > 0)
      doCommand(workbench, { name: 'change-pins', args: { connector: connector.id, pins: [...pins] } });
    else workbench.session.getState().tell('The names say no more than is known.');
  };
  return (
    <div className="photo-meant">
      <Button onPress={take}>Take the names for signals</Button>
      <p className="small soft">
        {pins.length === 0 ? 'The names say no more than is known.' : `${words.join(', ')}.`}
      </p>
    </div>
  );
}

/** The pin that an arrow key leads to, as the pins are seen. */
function neighbour(grid: Grid, pin: string, key: string, mirrored: boolean): string | undefined {
  const cell = gridIndex(grid).cellOf(pin);
  const right = mirrored ? -1 : 1;
  const step = { ArrowLeft: [0, -right], ArrowRight: [0, right], ArrowUp: [-1, 0], ArrowDown: [1, 0] }[key];
  if (cell === undefined || step === undefined) return undefined;
  const [down = 0, along = 0] = step;
  return gridIndex(grid).labelAt([cell[0] + down, cell[1] + along]) ?? pin;
}

/** The next pin in counting order; after the last comes the first. */
function following(grid: Grid, pin: string): string {
  const labels = gridIndex(grid).positions.map(({ label }) => label);
  return labels[(labels.indexOf(pin) + 1) % labels.length] ?? pin;
}
