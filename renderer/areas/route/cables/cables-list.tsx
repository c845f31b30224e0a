import { useMemo } from 'react';
import { ListBoxItem } from 'react-aria-components/ListBox';
import { ToggleButton } from 'react-aria-components/ToggleButton';
import { ToggleButtonGroup } from 'react-aria-components/ToggleButtonGroup';
import { leadOf } from '../../../../boards/document/lookup';
import { runId } from '../../../../boards/routing/laid/laying-ids';
import { Button } from '../../../look/button';
import { SeveritySign } from '../../../look/severity-sign';
import { chosenPlug } from '../../../store/session';
import { CABLE_FAMILY_WORDS } from '../../../words/cable-words';
import { useBuild, useSession, useWorkbench } from '../../../workbench';
import { SectionedList } from '../sectioned-list';
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

function Rows({ groups }: { readonly groups: readonly CableGroup[] }) {
  const { session } = useWorkbench();
  const build = useBuild();
  const chosen = useSession(({ selection }) => chosenPlug(selection));
  const all = groups.flatMap(({ rows }) => rows);
  // A lead is chosen by any of its plugs in other areas.
  const row =
    chosen &&
    (all.find(({ key }) => key === runId(chosen)) ?? all.find(({ plug }) => plug.lead === chosen.lead));
  return (
    <SectionedList<CableRow>
      label="Cables"
      sections={groups.map(({ family, rows }) => ({ title: CABLE_FAMILY_WORDS[family], rows }))}
      empty="No cable of these kinds."
      chosen={row && leadOf(build, row.plug.lead) ? row.key : undefined}
      onChoose={({ plug }) => session.getState().select({ kind: 'plug', plug })}
      // On to what is known of it, past the map.
      onEnter={() => document.getElementById(CABLE_HEADING)?.focus()}
      rowPx={76}
    >
      {(each) => <Row key={each.key} row={each} />}
    </SectionedList>
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
