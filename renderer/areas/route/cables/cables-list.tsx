import { useMemo } from 'react';
import { Header } from 'react-aria-components/Header';
import { ListBox, ListBoxItem, ListBoxSection } from 'react-aria-components/ListBox';
import { ToggleButton } from 'react-aria-components/ToggleButton';
import { ToggleButtonGroup } from 'react-aria-components/ToggleButtonGroup';
import { ListLayout, Virtualizer } from 'react-aria-components/Virtualizer';
import { leadOf } from '../../../../boards/document/lookup';
import { runId } from '../../../../boards/routing/laid/laying-ids';
import { Button } from '../../../look/button';
import { SeveritySign } from '../../../look/severity-sign';
import { chosenPlug } from '../../../store/session';
import { CABLE_FAMILY_WORDS } from '../../../words/cable-words';
import { useBuild, useSession, useWorkbench } from '../../../workbench';
import { CABLE_HEADING } from './cable-heading';
import { type CableGroup, type CableRow, cableGroups } from './cable-rows';

/** Every cable by what it carries, with how it stands; kinds can be hidden, on the map too. */
export function CablesList() {
  const { session } = useWorkbench();
  const build = useBuild();
  const hidden = useSession((state) => state.hiddenCables);
  const groups = useMemo(() => cableGroups(build), [build]);
  const shown = groups.filter(({ family }) => !hidden.includes(family));
  return (
    <>
      {groups.length > 1 && (
        <ToggleButtonGroup
          className="cable-kinds"
          aria-label="Kinds of cables that are shown"
          selectionMode="multiple"
          selectedKeys={groups.map(({ family }) => family).filter((family) => !hidden.includes(family))}
          onSelectionChange={(keys) =>
            session
              .getState()
              .hideCables(groups.map(({ family }) => family).filter((family) => !keys.has(family)))
          }
        >
          {groups.map(({ family }) => (
            <ToggleButton key={family} id={family} className="cable-kind">
              {CABLE_FAMILY_WORDS[family]}
            </ToggleButton>
          ))}
        </ToggleButtonGroup>
      )}
      <Rows groups={shown} />
      {groups.length > 0 && (
        <div className="cables-foot">
          <Button kind="main" onPress={() => session.getState().openLaying(true)}>
            Lay all
          </Button>
        </div>
      )}
    </>
  );
}

/** Of a longer list only the rows in sight are on the page. */
const MANY = 100;
const LAYOUT = { estimatedRowSize: 76, estimatedHeadingSize: 36, padding: 8 } as const;

function Rows({ groups }: { readonly groups: readonly CableGroup[] }) {
  const { session } = useWorkbench();
  const build = useBuild();
  const chosen = useSession(({ selection }) => chosenPlug(selection));
  const all = groups.flatMap(({ rows }) => rows);
  // A lead is chosen by any of its plugs in other areas.
  const key =
    chosen &&
    (all.find((row) => row.key === runId(chosen)) ?? all.find((row) => row.plug.lead === chosen.lead));
  const list = (
    <ListBox
      className={`shelf-list tray-list${all.length > MANY ? ' tray-list-long' : ''}`}
      aria-label="Cables"
      items={groups.map((group) => ({ ...group, id: group.family }))}
      selectionMode="single"
      selectionBehavior="replace"
      selectedKeys={key && leadOf(build, key.plug.lead) ? [key.key] : []}
      onSelectionChange={(keys) => {
        const picked = keys === 'all' ? undefined : [...keys][0];
        const row = all.find((each) => each.key === picked);
        if (row) session.getState().select({ kind: 'plug', plug: row.plug });
      }}
      // Enter leads on to what is known of it, past the map.
      onAction={() => document.getElementById(CABLE_HEADING)?.focus()}
      renderEmptyState={() => <p className="soft window-list-empty">No cable of these kinds.</p>}
    >
      {({ family, rows }) => (
        <ListBoxSection id={family} items={rows}>
          <Header className="shelf-heading">
            {CABLE_FAMILY_WORDS[family]}
            <span>{rows.length}</span>
          </Header>
          {rows.map((row) => (
            <Row key={row.key} row={row} />
          ))}
        </ListBoxSection>
      )}
    </ListBox>
  );
  if (all.length <= MANY) return list;
  return (
    <Virtualizer layout={ListLayout} layoutOptions={LAYOUT}>
      {list}
    </Virtualizer>
  );
}

function Row({ row }: { readonly row: CableRow }) {
  const { key, name, ends, words, severity } = row;
  return (
    <ListBoxItem
      id={key}
      textValue={[name, ends, words].filter((each) => each !== '').join(', ')}
      className="lead-row tray-row cable-row"
    >
      <span className="lead-row-words">
        <span className="lead-name">{name}</span>
        {ends !== '' && <span className="soft small">{ends}</span>}
        <span className="small cable-state">
          {severity && <SeveritySign severity={severity} />}
          <span className={severity ? `severity-${severity}` : 'soft'}>{words}</span>
        </span>
      </span>
    </ListBoxItem>
  );
}
