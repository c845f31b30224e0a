import { LIMITS } from '../../../../boards/document/limits';
import { POINT_WORDS } from '../../../../boards/document/place-names';
import type { TrayPlace } from '../../../../boards/document/tray-places';
import { Choice } from '../../../look/choice';
import { TextLine } from '../../../look/text-line';
import { Tick } from '../../../look/tick';
import { EDGE_WORDS } from '../../../words/tray-words';
import { useWorkbench } from '../../../workbench';
import { StandoffFound } from '../standoffs/standoffs-section';
import { write } from '../tray/tray-moves';
import { PlaceFields, SizeFields } from './area-fields';
import { FanFields } from './fan-fields';

type Of<What extends TrayPlace['what']> = Extract<TrayPlace, { what: What }>['place'];

/** What is known of a place of the tray, to be changed. */
export function PlaceForm({ each }: { readonly each: TrayPlace }) {
  const workbench = useWorkbench();
  const put = (place: TrayPlace) => write(workbench, place);
  switch (each.what) {
    case 'point': {
      const to = (place: Of<'point'>) => put({ what: 'point', place });
      const { place } = each;
      return (
        <>
          <NameLine place={place} onName={(name) => to(named(place, name))} />
          <Choice
            label="What it is"
            options={POINT_KINDS}
            chosen={place.kind}
            onChoose={(kind) => to({ ...place, kind })}
          />
          <PlaceFields at={place} onChange={(changed) => to({ ...place, ...changed })} />
        </>
      );
    }
    case 'opening': {
      const to = (place: Of<'opening'>) => put({ what: 'opening', place });
      const { place } = each;
      const { round: _, ...angular } = place;
      return (
        <>
          <NameLine place={place} onName={(name) => to(named(place, name))} />
          <Choice
            label="Edge"
            options={EDGES}
            chosen={place.edge}
            onChoose={(edge) => to({ ...place, edge })}
          />
          <Tick on={place.round ?? false} onChange={(on) => to(on ? { ...place, round: true } : angular)}>
            Round or oval
          </Tick>
          <PlaceFields what="Edge" at={place} onChange={(changed) => to({ ...place, ...changed })} />
          <SizeFields size={place} onChange={(changed) => to({ ...place, ...changed })} />
        </>
      );
    }
    case 'bay': {
      const to = (place: Of<'bay'>) => put({ what: 'bay', place });
      const { place } = each;
      return (
        <>
          <NameLine place={place} onName={(name) => to(named(place, name))} />
          <PlaceFields what="Edge" at={place} onChange={(changed) => to({ ...place, ...changed })} />
          <SizeFields size={place} onChange={(changed) => to({ ...place, ...changed })} />
        </>
      );
    }
    case 'supply': {
      const { place } = each;
      const to = (changed: Partial<Of<'supply'>>) => put({ what: 'supply', place: { ...place, ...changed } });
      return (
        <>
          <PlaceFields what="Edge" at={place} onChange={to} />
          <SizeFields size={place} onChange={to} />
        </>
      );
    }
    case 'standoff': {
      const to = (place: Of<'standoff'>) => put({ what: 'standoff', place });
      const { place } = each;
      const { fixed: _, ...loose } = place;
      const { seen: __, ...unseen } = place;
      return (
        <>
          <NameLine place={place} onName={(name) => to(named(place, name))} />
          <Tick on={place.fixed ?? false} onChange={(on) => to(on ? { ...unseen, fixed: true } : loose)}>
            Pressed in: it cannot be taken out
          </Tick>
          {!place.fixed && (
            <Choice
              label="What is there"
              options={SEEN}
              chosen={place.seen ?? 'unseen'}
              onChoose={(seen) => to(seen === 'unseen' ? unseen : { ...place, seen })}
            />
          )}
          <StandoffFound id={place.id} />
          <PlaceFields at={place} onChange={(changed) => to({ ...place, ...changed })} />
        </>
      );
    }
    case 'fan': {
      const to = (place: Of<'fan'>) => put({ what: 'fan', place });
      const { place } = each;
      return (
        <>
          <NameLine place={place} onName={(name) => to(named(place, name))} />
          <FanFields fan={place} onChange={to} />
        </>
      );
    }
  }
}

const POINT_KINDS = (['tie', 'bend', 'end'] as const).map((id) => ({ id, label: POINT_WORDS[id] }));

const SEEN: readonly { readonly id: 'set' | 'empty' | 'unseen'; readonly label: string }[] = [
  { id: 'set', label: 'a standoff' },
  { id: 'empty', label: 'nothing' },
  { id: 'unseen', label: 'not looked at' },
];

const EDGES = (['grommet', 'rolled', 'bare'] as const).map((id) => ({ id, label: EDGE_WORDS[id] }));

interface NameLineProps {
  readonly place: { readonly id: string; readonly name?: string | undefined };
  readonly onName: (name: string) => void;
}

function NameLine({ place, onName }: NameLineProps) {
  return (
    <TextLine
      label="Name"
      value={place.name ?? ''}
      maxLength={LIMITS.textLength}
      onDone={(name) => onName(name.trim())}
    />
  );
}

/** With a name, or without one where it was emptied. */
function named<P extends { readonly name?: string | undefined }>(place: P, name: string): P {
  if (name !== '') return { ...place, name };
  const { name: _, ...nameless } = place;
  return nameless as P;
}
