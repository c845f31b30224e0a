import type { Tray, TraySide } from '../../../../boards/document/tray';
import { pathShapes } from '../../../canvas/tray/path-shapes';
import { doCommand } from '../../../do-command';
import { Choice } from '../../../look/choice';
import { LengthLine } from '../../../look/length-line';
import { mmWords } from '../../../words/length-words';
import { PATH_BOUNDS } from '../../../words/tray-words';
import { useWorkbench } from '../../../workbench';
import { straightMm } from '../tray/new-place';

const SIDES: readonly { readonly id: TraySide; readonly label: string }[] = [
  { id: 'front', label: 'on the front' },
  { id: 'back', label: 'on the back' },
];

type Path = Tray['paths'][number];

/** How long a path is, and on which side. */
export function PathForm({ tray, path }: { readonly tray: Tray; readonly path: Path }) {
  const workbench = useWorkbench();
  const put = (changed: Partial<Path>) =>
    doCommand(workbench, { name: 'change-tray-paths', args: { paths: [{ ...path, ...changed }] } });
  const look = { side: 'front', widthMm: tray.widthMm } as const;
  const [shape] = pathShapes({ ...tray, paths: [path] }, look);
  const straight = shape && straightMm(shape.line);
  return (
    <>
      <LengthLine
        label="Length, mm"
        value={path.lengthMm}
        bounds={PATH_BOUNDS}
        onDone={(lengthMm) => lengthMm !== undefined && put({ lengthMm })}
      />
      {straight !== undefined && (
        <p className="soft small">
          Measure along the path with a string. The straight way on the map is {mmWords(straight)}
          {path.lengthMm < straight && ', and no path is shorter'}.
        </p>
      )}
      <Choice label="Side" options={SIDES} chosen={path.side} onChoose={(side) => put({ side })} />
    </>
  );
}
