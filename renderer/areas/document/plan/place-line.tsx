import { CopyPlus, RotateCw, TableProperties, Trash2 } from 'lucide-react';
import { connectorOf } from '../../../../boards/document/lookup';
import { connectorName } from '../../../../boards/document/names';
import { firstPin, placeByFirstPin } from '../../../../boards/fit/first-pin';
import { IconButton } from '../../../look/button';
import { LengthLine } from '../../../look/length-line';
import { PLACE_BOUNDS } from '../../../words/length-words';
import { turnWords } from '../../../words/seat-words';
import { useBuild, useSession, useWorkbench } from '../../../workbench';
import { duplicate, openPins, place as placeIt, remove, turn } from './plan-moves';

/** Where the chosen connector stands, in numbers that can be typed, and what can be done with it. */
export function PlaceLine() {
  const workbench = useWorkbench();
  const build = useBuild();
  const chosen = useSession(({ selection }) =>
    selection.kind === 'connector' ? selection.connector : undefined,
  );
  const moving = useSession((state) => state.moving);
  const connector = chosen === undefined ? undefined : connectorOf(build.board, chosen);
  if (connector === undefined)
    return (
      <div className="plan-place">
        <p className="soft">
          {build.board.connectors.length === 0
            ? 'Add the connectors you can see on the board, on the left; then drag each to its place.'
            : 'Choose a connector to say exactly where it stands, or drag it there.'}
        </p>
      </div>
    );
  const place = moving?.connector === connector.id ? moving.place : connector.place;
  const name = connectorName(build, connector.id);
  const shown = { ...connector, place };
  const first = firstPin(shown);
  const putPin = (to: Parameters<typeof placeByFirstPin>[1]) =>
    placeIt(workbench, connector.id, placeByFirstPin(shown, to));
  const turned = turnWords(place.turn);
  return (
    <section className="plan-place" aria-label={`Place of ${name}`}>
      <div className="plan-place-name">
        <p className="mono lead-name">{name}</p>
        <p className="soft small">{turned === '' ? 'not turned' : turned}</p>
      </div>
      <LengthLine
        key={`x ${connector.id}`}
        label={`Pin ${first.label} from the left, mm`}
        value={first.xMm}
        bounds={PLACE_BOUNDS}
        onDone={(xMm) => xMm !== undefined && putPin({ xMm })}
      />
      <LengthLine
        key={`y ${connector.id}`}
        label={`Pin ${first.label} from the top, mm`}
        value={first.yMm}
        bounds={PLACE_BOUNDS}
        onDone={(yMm) => yMm !== undefined && putPin({ yMm })}
      />
      <div className="plan-place-doings">
        <IconButton
          label={`Turn ${name}`}
          keys="R"
          icon={<RotateCw size={18} aria-hidden="true" />}
          onPress={() => turn(workbench, 90)}
        />
        <IconButton
          label={`Duplicate ${name}`}
          keys="Ctrl+D"
          icon={<CopyPlus size={18} aria-hidden="true" />}
          onPress={() => duplicate(workbench)}
        />
        <IconButton
          label={`Pins of ${name}`}
          keys="Enter"
          icon={<TableProperties size={18} aria-hidden="true" />}
          onPress={() => openPins(workbench)}
        />
        <IconButton
          label={`Remove ${name}`}
          keys="Delete"
          icon={<Trash2 size={18} aria-hidden="true" />}
          onPress={() => remove(workbench)}
        />
      </div>
    </section>
  );
}
