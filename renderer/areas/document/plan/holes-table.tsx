import { Plus, Trash2 } from 'lucide-react';
import { LIMITS } from '../../../../boards/document/limits';
import type { MountingHole, Outline } from '../../../../boards/document/outline';
import { doCommand } from '../../../do-command';
import { freshId } from '../../../files/file-name';
import { Button, IconButton } from '../../../look/button';
import { LengthLine } from '../../../look/length-line';
import { TextLine } from '../../../look/text-line';
import { HOLE_BOUNDS, PLACE_BOUNDS } from '../../../words/length-words';
import { formFactorWords, HOLES_FULL_WORDS, holeName } from '../../../words/plan-words';
import { useBuild, useWorkbench } from '../../../workbench';

/** The mounting holes: letter, place and diameter of each, to be changed, added and removed. */
export function HolesTable() {
  const workbench = useWorkbench();
  const { board } = useBuild();
  const { outline } = board;
  const { holes = [] } = outline;
  const put = (next: readonly MountingHole[]) =>
    doCommand(workbench, { name: 'outline-board', args: { outline: withHoles(outline, next) } });
  const add = () => {
    if (holes.length >= LIMITS.mountingHoles) workbench.session.getState().tell(HOLES_FULL_WORDS);
    else put([...holes, newHole(outline)]);
  };
  const about = formFactorWords(outline);
  return (
    <section className="plan-holes" aria-label="Mounting holes">
      <h3>Mounting holes</h3>
      {holes.length === 0 ? (
        <p className="soft">None yet. A form factor brings its own; others are measured to their middle.</p>
      ) : (
        <table className="holes-table">
          <thead>
            <tr>
              <th scope="col">Letter</th>
              <th scope="col">From the left, mm</th>
              <th scope="col">From the top, mm</th>
              <th scope="col">Diameter, mm</th>
              <th scope="col">
                <span className="aside-hidden">Remove</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {holes.map((hole) => (
              <HoleRow
                key={hole.id}
                hole={hole}
                name={holeName(board, hole.id)}
                onChange={(changed) => put(holes.map((each) => (each.id === hole.id ? changed : each)))}
                onRemove={() => put(holes.filter((each) => each.id !== hole.id))}
              />
            ))}
          </tbody>
        </table>
      )}
      <div className="form-doings">
        <Button onPress={add}>
          <Plus size={16} aria-hidden="true" />
          Add a hole
        </Button>
      </div>
      {about.length > 0 && (
        <ul className="soft small">
          {about.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      )}
    </section>
  );
}

interface HoleRowProps {
  readonly hole: MountingHole;
  readonly name: string;
  readonly onChange: (hole: MountingHole) => void;
  readonly onRemove: () => void;
}

function HoleRow({ hole, name, onChange, onRemove }: HoleRowProps) {
  const { label: _, ...unnamed } = hole;
  const { diameterMm: __, ...unmeasured } = hole;
  return (
    <tr>
      <td>
        <TextLine
          label={`Letter of hole ${name}`}
          labelShown={false}
          value={hole.label ?? ''}
          maxLength={8}
          onDone={(typed) => onChange(typed.trim() === '' ? unnamed : { ...hole, label: typed.trim() })}
        />
      </td>
      <td>
        <LengthLine
          label={`Hole ${name} from the left, mm`}
          labelShown={false}
          value={hole.xMm}
          bounds={PLACE_BOUNDS}
          onDone={(xMm) => xMm !== undefined && onChange({ ...hole, xMm })}
        />
      </td>
      <td>
        <LengthLine
          label={`Hole ${name} from the top, mm`}
          labelShown={false}
          value={hole.yMm}
          bounds={PLACE_BOUNDS}
          onDone={(yMm) => yMm !== undefined && onChange({ ...hole, yMm })}
        />
      </td>
      <td>
        <LengthLine
          label={`Diameter of hole ${name}, mm`}
          labelShown={false}
          value={hole.diameterMm}
          bounds={HOLE_BOUNDS}
          mayBeEmpty
          onDone={(diameterMm) => onChange(diameterMm === undefined ? unmeasured : { ...hole, diameterMm })}
        />
      </td>
      <td>
        <IconButton
          label={`Remove hole ${name}`}
          icon={<Trash2 size={18} aria-hidden="true" />}
          onPress={onRemove}
        />
      </td>
    </tr>
  );
}

function withHoles(outline: Outline, holes: readonly MountingHole[]): Outline {
  const { holes: _, ...bare } = outline;
  return holes.length === 0 ? bare : { ...bare, holes: [...holes] };
}

/** A hole on the diagonal where none is yet, for the person to say where it really is. */
function newHole({ holes = [], widthMm, depthMm }: Outline): MountingHole {
  const id = freshId('hole', 'hole', new Set(holes.map((hole) => hole.id)));
  const share = (holes.length + 1) / (LIMITS.mountingHoles + 1);
  return { id, xMm: Math.round(widthMm * share), yMm: Math.round(depthMm * share) };
}
