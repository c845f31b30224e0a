import { Trash2 } from 'lucide-react';
import type { ReactNode } from 'react';
import type { Connector } from '../../../../boards/document/connector';
import { accuracyMm } from '../../../../boards/pinout/photo/lay';
import { doubtWords, layProblemWords } from '../../../../boards/pinout/photo/lay-problem';
import { Button, IconButton } from '../../../look/button';
import { Choice } from '../../../look/choice';
import { doubtedPins, type Points } from './use-points';

interface PointListProps {
  readonly connector: Connector;
  readonly order: readonly string[];
  readonly next: string | null;
  readonly points: Points;
  readonly chosen: string | null;
  readonly magnifier: ReactNode;
  readonly onWant: (pin: string) => void;
  readonly onChoose: (pin: string | null) => void;
  readonly onRemove: (pin: string) => void;
}

/** What to point at next, how well the points agree, and each of them with how far it is off. */
export function PointList(props: PointListProps) {
  const { connector, order, next, chosen, magnifier, onWant, onChoose, onRemove } = props;
  const { points, lay } = props.points;
  const pointed = new Set(points.map(({ pin }) => pin));
  const free = order.filter((pin) => !pointed.has(pin)).map((pin) => ({ id: pin, label: `pin ${pin}` }));
  const doubted = doubtedPins(props.points);
  return (
    <section className="photo-side" aria-label="Points">
      <h3>{next === null ? 'The pins are pointed at' : `Point at pin ${next}`}</h3>
      {free.length > 0 && (
        <Choice
          label="Pin to point at"
          options={next === null ? [{ id: '', label: 'none for now' }, ...free] : free}
          chosen={next ?? ''}
          onChoose={(pin) => {
            onChoose(null);
            onWant(pin);
          }}
        />
      )}
      {magnifier}
      <div role="status" className="photo-verdict">
        <Verdict connector={connector} points={props.points} />
      </div>
      {points.length > 0 && (
        <table className="photo-points">
          <thead>
            <tr>
              <th scope="col">Pin</th>
              <th scope="col">Off by</th>
              <th>
                <span className="aside-hidden">Take away</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {points.map(({ pin }) => {
              const residual = lay?.residuals.find((each) => each.pin === pin);
              return (
                <tr key={pin} data-off={doubted.has(pin) || undefined}>
                  <th scope="row">
                    <button
                      type="button"
                      className="button button-link mono"
                      aria-pressed={pin === chosen}
                      aria-label={`Point for pin ${pin}`}
                      onClick={() => onChoose(pin === chosen ? null : pin)}
                    >
                      {pin}
                    </button>
                  </th>
                  <td>{residual ? offWords(residual.px, residual.mm) : ''}</td>
                  <td>
                    <IconButton
                      label={`Take away the point for pin ${pin}`}
                      icon={<Trash2 size={16} aria-hidden="true" />}
                      onPress={() => onRemove(pin)}
                    />
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      )}
      {points.length > 1 && (
        <Button kind="link" onPress={() => props.points.put([])}>
          Take all points away
        </Button>
      )}
    </section>
  );
}

function offWords(px: number, mm: number): string {
  return `${px.toFixed(1)}\u00a0px, ${mm.toFixed(2)}\u00a0mm`;
}

function Verdict({ connector, points }: { readonly connector: Connector; readonly points: Points }) {
  const { lay, problem } = points;
  if (problem) return <p>{layProblemWords(problem)}</p>;
  if (lay === null) return null;
  if (lay.doubt) return <p className="photo-doubt">{doubtWords(lay.doubt)}</p>;
  const few = lay.laidBy.length <= (lay.oneRow ? 3 : 4);
  return (
    <>
      <p>
        The grid lies on the pins
        {lay.oneRow
          ? '.'
          : `, within about ${Math.max(0.05, accuracyMm(connector.grid, lay)).toFixed(2)}\u00a0mm.`}
        {few && ' Two more points would show whether one is off.'}
      </p>
      {lay.mirrored && (
        <p>
          The photo shows the pins mirrored. Was it taken from behind, or are they counted from another
          corner?
        </p>
      )}
      {lay.oneRow && <p>With one row, the straight view is only sure along the row.</p>}
    </>
  );
}
