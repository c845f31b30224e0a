import { Trash2 } from 'lucide-react';
import { LIMITS } from '../../../../boards/document/limits';
import { doCommand } from '../../../do-command';
import { Button, IconButton } from '../../../look/button';
import { TextLine } from '../../../look/text-line';
import { useBuild, useWorkbench } from '../../../workbench';

/** The places for drives that the board itself has, which may switch ports off. */
export function DrivePlaces() {
  const workbench = useWorkbench();
  const places = useBuild().board.drivePlaces ?? [];
  const put = (next: typeof places) =>
    doCommand(workbench, { name: 'list-drive-places', args: { places: next } });
  const add = () => {
    let number = places.length + 1;
    while (places.some(({ id }) => id === `m2-${number}`)) number += 1;
    put([...places, { id: `m2-${number}`, name: `M.2 ${number}` }]);
  };
  return (
    <>
      <p className="soft small">
        Places for drives on the board itself. Some switch data ports off when they are used: the board’s
        manual has the table.
      </p>
      {places.map((place) => (
        <div key={place.id} className="route-with-button">
          <TextLine
            label={`Name of ${place.name}`}
            value={place.name}
            maxLength={LIMITS.textLength}
            onDone={(name) => {
              if (name !== '') put(places.map((each) => (each.id === place.id ? { ...each, name } : each)));
            }}
          />
          <IconButton
            label={`Remove ${place.name}`}
            icon={<Trash2 size={18} aria-hidden="true" />}
            onPress={() => put(places.filter(({ id }) => id !== place.id))}
          />
        </div>
      ))}
      <div className="form-doings">
        <Button disabled={places.length >= LIMITS.drivePlaces} onPress={add}>
          Add a place for a drive
        </Button>
      </div>
    </>
  );
}
