import { useMemo } from 'react';
import { Label } from 'react-aria-components/Label';
import { ListBox, ListBoxItem } from 'react-aria-components/ListBox';
import type { Turn } from '../../../../boards/base/units';
import { CORNERS, type Grid, type Numbering, SCHEMES } from '../../../../boards/document/grid';
import { gridIndex } from '../../../../boards/document/numbering';
import { followedBy, type Orientation, turned } from '../../../../boards/drawing/orientation';
import { CORNER_WORDS, SCHEME_WORDS } from '../../../words/numbering-words';
import { drawnCorner } from './drawn-side';
import { NumberingPicture } from './numbering-picture';

type Counted = Exclude<Numbering, { scheme: 'free' }>;

const ALL: readonly Counted[] = SCHEMES.flatMap((scheme) => CORNERS.map((from) => ({ scheme, from })));

interface Way extends Counted {
  /** The labels in order of their cells: ways that count alike are one. */
  readonly id: string;
}

function labelsOf(grid: Pick<Grid, 'rows' | 'cols'>, numbering: Numbering): string {
  const { positions } = gridIndex({ ...grid, pitchMm: 1, numbering });
  return positions.map(({ cell }) => cell.join(' ')).join(', ');
}

/** Every way in which a grid of that size can be counted, each once: zig-zag along two rows is column by column. */
function waysFor(grid: Pick<Grid, 'rows' | 'cols'>): readonly Way[] {
  const ways = ALL.map((numbering): Way => ({ ...numbering, id: labelsOf(grid, numbering) }));
  return ways.filter(({ id }, at) => ways.findIndex((other) => other.id === id) === at);
}

interface NumberingPickerProps {
  readonly grid: Pick<Grid, 'rows' | 'cols' | 'numbering'>;
  /** How the board lies in the drawing, and how the connector is turned on it. */
  readonly orientation: Orientation;
  readonly turn: Turn;
  readonly onChoose: (numbering: Counted) => void;
}

/** Every way of counting by every corner, as small pictures. Arrows walk them. */
export function NumberingPicker({ grid, orientation: view, turn, onChoose }: NumberingPickerProps) {
  const orientation = followedBy(turned(turn), view);
  const { numbering, rows, cols } = grid;
  const ways = useMemo(() => waysFor({ rows, cols }), [rows, cols]);
  const chosen = numbering.scheme === 'free' ? [] : [labelsOf(grid, numbering)];
  return (
    <div className="field">
      <Label className="field-label" id="numbering-label">
        How the pins are counted; the filled square is pin 1
      </Label>
      <ListBox
        className="numbering-list"
        aria-labelledby="numbering-label"
        layout="grid"
        items={ways}
        dependencies={[rows, cols, orientation]}
        selectionMode="single"
        disallowEmptySelection
        selectedKeys={chosen}
        onSelectionChange={(keys) => {
          const [key] = keys === 'all' ? [] : keys;
          const one = ways.find(({ id }) => id === key);
          if (one) onChoose({ scheme: one.scheme, from: one.from });
        }}
      >
        {({ id, scheme, from }) => {
          const words = `${SCHEME_WORDS[scheme]}, ${CORNER_WORDS[drawnCorner(from, turn, view)]}`;
          return (
            <ListBoxItem id={id} textValue={words} className="numbering-option">
              <NumberingPicture
                rows={rows}
                cols={cols}
                numbering={{ scheme, from }}
                orientation={orientation}
              />
              <span className="small soft">{words}</span>
            </ListBoxItem>
          );
        }}
      </ListBox>
    </div>
  );
}
