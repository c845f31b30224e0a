import { useMemo } from 'react';
import { ListBoxItem } from 'react-aria-components/ListBox';
import { ShelfTabs } from '../../../look/shelf-tabs';
import { useBuild, useSession, useWorkbench } from '../../../workbench';
import { CablesList } from '../cables/cables-list';
import { SectionedList } from '../sectioned-list';
import { partKey, pathSections, placeSections, type TrayRow, type TraySection } from './tray-rows';

/** Everything of the tray, as lists: the map, told in words. */
export function TrayShelf() {
  const build = useBuild();
  const { tray } = build.case;
  const places = useMemo(() => (tray === undefined ? [] : placeSections(build, tray)), [build, tray]);
  const paths = useMemo(() => (tray === undefined ? [] : pathSections(tray)), [tray]);
  return (
    <section className="shelf" aria-label="Tray">
      <ShelfTabs
        label="What the shelf lists"
        tabs={[
          { id: 'cables', name: 'Cables', shown: <CablesList /> },
          {
            id: 'places',
            name: 'Places',
            shown: <Rows label="Places of the tray" sections={places} empty="No place yet." />,
          },
          {
            id: 'paths',
            name: 'Paths',
            shown: (
              <Rows
                label="Paths of the tray"
                sections={paths}
                empty="No path yet. A path joins two places of the tray along one of its sides."
              />
            ),
          },
        ]}
      />
    </section>
  );
}

interface RowsProps {
  readonly label: string;
  readonly sections: readonly TraySection[];
  readonly empty: string;
}

function Rows({ label, sections, empty }: RowsProps) {
  const workbench = useWorkbench();
  const chosen = useSession(({ selection }) => (selection.kind === 'on-tray' ? selection.part : null));
  return (
    <SectionedList<TrayRow>
      label={label}
      sections={sections}
      empty={empty}
      chosen={chosen === null ? undefined : partKey(chosen)}
      onChoose={({ part }) => {
        workbench.session.getState().select({ kind: 'on-tray', part });
        workbench.canvas.current?.show([part.id]);
      }}
      rowPx={52}
    >
      {({ key, name, words }) => (
        <ListBoxItem key={key} id={key} textValue={`${name}, ${words}`} className="lead-row tray-row">
          <span className="lead-row-words">
            <span className="lead-name">{name}</span>
            <span className="soft small">{words}</span>
          </span>
        </ListBoxItem>
      )}
    </SectionedList>
  );
}
