import { CircleCheck } from 'lucide-react';
import { useMemo } from 'react';
import { GridList, GridListHeader, GridListItem, GridListSection } from 'react-aria-components/GridList';
import { analyse } from '../../../boards/analyse';
import { properSeats } from '../../../boards/fit/proper-seats';
import { LongList, listClass } from '../../look/long-list';
import { SeveritySign } from '../../look/severity-sign';
import { chosenPlug } from '../../store/session';
import { useBuild, useSession, useWorkbench } from '../../workbench';
import { dragStart } from './drag-start';
import { carry, drag } from './placing/hand';
import { PlugDrawing } from './plug-drawing';
import { plugKey, type ShelfRow, shelfRows } from './shelf-rows';

/** The leads: those on the shelf first, then those that sit, then those set aside. */
export function LeadsList() {
  const workbench = useWorkbench();
  const build = useBuild();
  const chosen = useSession(({ selection }) => chosenPlug(selection));
  const rows = useMemo(() => shelfRows(build, analyse(build).findings), [build]);
  const all = [...rows.onShelf, ...rows.seated, ...rows.setAside];
  const rowOf = (key: unknown) => all.find((row) => row.key === key);

  const select = (row: ShelfRow) => {
    workbench.session.getState().select({ kind: 'plug', plug: row.ref });
    const place = row.seat ?? properSeats(build, row.ref)[0];
    if (place) workbench.canvas.current?.show([place.connector]);
  };

  return (
    <LongList rows={all.length} rowPx={66} headingPx={40} gapPx={4}>
      <GridList
        className={listClass('shelf-list', all.length)}
        aria-label="Leads"
        selectionMode="single"
        selectionBehavior="replace"
        selectedKeys={chosen ? [plugKey(chosen)] : []}
        onSelectionChange={(keys) => {
          const row = rowOf(keys === 'all' ? undefined : [...keys][0]);
          if (row) select(row);
        }}
        onAction={(key) => {
          const row = rowOf(key);
          if (row) carry(workbench, row.ref);
        }}
      >
        <Section title="On the shelf" count={`${rows.onShelf.length}`} rows={rows.onShelf} />
        <Section
          title="Seated"
          count={`${rows.seated.length}\u00a0of\u00a0${rows.onShelf.length + rows.seated.length}`}
          rows={rows.seated}
        />
        <Section title="Set aside" count={`${rows.setAside.length}`} rows={rows.setAside} />
      </GridList>
    </LongList>
  );
}

interface SectionProps {
  readonly title: string;
  readonly count: string;
  readonly rows: readonly ShelfRow[];
}

function Section({ title, count, rows }: SectionProps) {
  if (rows.length === 0) return null;
  return (
    <GridListSection className="shelf-section" aria-label={title}>
      <GridListHeader className="shelf-heading">
        {title}
        <span className="shelf-count">{count}</span>
      </GridListHeader>
      {rows.map((row) => (
        <LeadRow key={row.key} row={row} />
      ))}
    </GridListSection>
  );
}

function LeadRow({ row }: { readonly row: ShelfRow }) {
  const workbench = useWorkbench();
  return (
    <GridListItem
      id={row.key}
      textValue={`${row.title}, ${row.words}`}
      className={row.seat ? 'lead-row lead-row-seated' : 'lead-row'}
    >
      <div className="lead-row-inside" onPointerDown={dragStart(() => drag(workbench, row.ref))}>
        <div className="lead-row-words">
          <span className="lead-name mono">{row.title}</span>
          <span className="soft small">{row.words}</span>
        </div>
        {row.seat ? <State row={row} /> : <PlugDrawing lead={row.lead} plug={row.plug} cellPx={12} />}
      </div>
    </GridListItem>
  );
}

function State({ row }: { readonly row: ShelfRow }) {
  if (row.severity) return <SeveritySign severity={row.severity} spoken />;
  return (
    <CircleCheck
      className="seated-well"
      size={20}
      role="img"
      aria-label="nothing found"
      aria-hidden={false}
    />
  );
}
