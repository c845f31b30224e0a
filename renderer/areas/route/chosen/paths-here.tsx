import { placeName, placesOf } from '../../../../boards/document/place-names';
import type { Tray } from '../../../../boards/document/tray';
import { hasPaths } from '../../../../boards/document/tray-places';
import { Button } from '../../../look/button';
import { SearchChoice } from '../../../look/search-choice';
import { mmWords } from '../../../words/length-words';
import { useWorkbench } from '../../../workbench';
import { join } from '../tray/tray-additions';
import { choose } from '../tray/tray-bench';

/** The paths that lead to a place, and the way to draw another without pointing at it. */
export function PathsHere({ tray, id }: { readonly tray: Tray; readonly id: string }) {
  const workbench = useWorkbench();
  const here = tray.paths.filter(({ from, to }) => from === id || to === id);
  const others = placesOf(tray)
    .filter((place) => hasPaths(place.kind) && place.id !== id)
    .map((place) => ({ id: place.id, name: placeName(tray, place.id) }));
  return (
    <div className="paths-here">
      <h3>Paths from here</h3>
      {here.length === 0 && <p className="soft">None yet.</p>}
      <ul>
        {here.map((path) => (
          <li key={path.id}>
            <Button kind="link" onPress={() => choose(workbench, { kind: 'path', id: path.id })}>
              {placeName(tray, path.from === id ? path.to : path.from)}, {mmWords(path.lengthMm)}, on the{' '}
              {path.side}
            </Button>
          </li>
        ))}
      </ul>
      {others.length > 0 && (
        <SearchChoice
          key={`${id} ${here.length}`}
          label="Draw a path to"
          placeholder="Type a name"
          entries={others}
          chosen={null}
          onChoose={(to) => join(workbench, id, to)}
        />
      )}
    </div>
  );
}
