import type { KeyboardEvent } from 'react';
import type { Cell } from '../../../../boards/document/grid';
import { type Labels, wrongLabels } from './free-labels';
import type { HeaderLayout } from './header-layout';

interface LabelInputsProps {
  readonly layout: HeaderLayout;
  readonly labels: Labels;
  readonly onType: (cell: Cell, label: string) => void;
}

/** A header whose labels are typed where they stand. Tab goes along a row, Enter and the arrows up and down. */
export function LabelInputs({ layout, labels, onType }: LabelInputsProps) {
  const wrong = wrongLabels(labels);
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    const down = event.key === 'Enter' || event.key === 'ArrowDown';
    if (!down && event.key !== 'ArrowUp') return;
    event.preventDefault();
    const cell = event.currentTarget.closest('td');
    const row = cell?.parentElement;
    const next = down ? row?.nextElementSibling : row?.previousElementSibling;
    next?.children[cell?.cellIndex ?? 0]?.querySelector('input')?.select();
  };
  return (
    <section className="label-preview" aria-label="Labels">
      <table>
        <tbody>
          {layout.spots.map((line) => (
            <tr key={line[0]?.join(' ')}>
              {line.map((spot) => {
                const [row, col] = layout.cellAt(spot);
                const label = labels[row]?.[col] ?? '';
                return (
                  <td
                    key={spot.join(' ')}
                    className={label === '' ? 'label-cell label-missing' : 'label-cell'}
                  >
                    <input
                      className="label-input mono"
                      aria-label={`Label in row ${spot[0] + 1}, column ${spot[1] + 1}`}
                      aria-invalid={wrong.has(label.trim()) || undefined}
                      maxLength={8}
                      value={label}
                      onChange={({ target }) => onType([row, col], target.value)}
                      onKeyDown={onKeyDown}
                    />
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
