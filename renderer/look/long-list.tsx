import { type ReactElement, useMemo } from 'react';
import { ListLayout, Virtualizer } from 'react-aria-components/Virtualizer';
import './long-list.css';

/** Of a longer list only the rows in sight are on the page. */
const MANY = 100;

function isLong(rows: number): boolean {
  return rows > MANY;
}

interface LongListProps {
  /** How many the list has. */
  readonly rows: number;
  /** About how high a row is, and a heading. */
  readonly rowPx: number;
  readonly headingPx?: number;
  readonly paddingPx?: number;
  readonly gapPx?: number;
  /** The list; a long one with the class `long-list`. */
  readonly children: ReactElement;
}

/** A list that may be long. A short one is on the page as a whole, so that the browser's own search finds all of it. */
export function LongList({ rows, rowPx, headingPx = 36, paddingPx = 8, gapPx = 0, children }: LongListProps) {
  const layout = useMemo(
    () => ({
      estimatedRowSize: rowPx,
      estimatedHeadingSize: headingPx,
      padding: paddingPx,
      gap: gapPx,
    }),
    [rowPx, headingPx, paddingPx, gapPx],
  );
  if (!isLong(rows)) return children;
  return (
    <Virtualizer layout={ListLayout} layoutOptions={layout}>
      {children}
    </Virtualizer>
  );
}

/** The class of a list that may be long. */
export function listClass(name: string, rows: number): string {
  return isLong(rows) ? `${name} long-list` : name;
}
