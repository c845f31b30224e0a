import { Trash2 } from 'lucide-react';
import { type ReactNode, useEffect, useRef } from 'react';
import type { Build } from '../../../../boards/document/build';
import { connectorOf } from '../../../../boards/document/lookup';
import { connectorName } from '../../../../boards/document/names';
import type { Tray } from '../../../../boards/document/tray';
import { hasPaths, trayPathOf, trayPlaceOf } from '../../../../boards/document/tray-places';
import { draftedTray } from '../../../canvas/tray/drafted';
import { IconButton } from '../../../look/button';
import { chosenPlug, type TrayPart } from '../../../store/session';
import { shapeWords } from '../../../words/plug-words';
import { trayPartName, trayPartSaid } from '../../../words/tray-words';
import { useBuild, useSession, useWorkbench } from '../../../workbench';
import { remove } from '../tray/tray-moves';
import { BoardPlaceForm } from './board-place-form';
import { PathForm } from './path-form';
import { PathsHere } from './paths-here';
import { PlaceForm } from './place-form';
import { TrayForm } from './tray-form';

/** What is chosen on the map or on the shelf; the tray as a whole where nothing is. */
export function ChosenSection() {
  const build = useBuild();
  const selection = useSession((state) => state.selection);
  const draft = useSession((state) => state.trayDraft);
  const { tray } = build.case;
  // A cable has a part of its own.
  if (tray === undefined || chosenPlug(selection) !== undefined) return null;
  // What is dragged shows its place as it goes.
  const shown = draft?.kind === 'new' ? tray : draftedTray(tray, draft);
  if (selection.kind === 'connector') {
    const connector = connectorOf(build.board, selection.connector);
    if (connector)
      return (
        <Section
          title={connectorName(build, connector.id)}
          words={`${connector.title}, ${shapeWords(connector)}`}
        />
      );
  }
  if (selection.kind === 'on-tray') {
    const { part } = selection;
    const words = trayPartSaid(build, shown, part);
    if (words !== undefined)
      return (
        <Section
          key={`${part.kind} ${part.id}`}
          title={trayPartName(build, shown, part)}
          words={words}
          removes={removeWords(build, tray, part)}
        >
          <PartForm tray={shown} part={part} />
        </Section>
      );
  }
  return (
    <Section title="The tray" words="">
      <TrayForm tray={tray} />
    </Section>
  );
}

function PartForm({ tray, part }: { readonly tray: Tray; readonly part: TrayPart }) {
  if (part.kind === 'board') return tray.board && <BoardPlaceForm board={tray.board} />;
  if (part.kind === 'path') {
    const path = trayPathOf(tray, part.id);
    return path && <PathForm tray={tray} path={path} />;
  }
  const place = trayPlaceOf(tray, part.id);
  return (
    place && (
      <>
        <PlaceForm each={place} />
        {hasPaths(place.what) && <PathsHere tray={tray} id={part.id} />}
      </>
    )
  );
}

function removeWords(build: Build, tray: Tray, part: TrayPart): string {
  return part.kind === 'board' ? 'Forget where the board goes' : `Remove ${trayPartName(build, tray, part)}`;
}

interface SectionProps {
  readonly title: string;
  readonly words: string;
  /** What the button to remove it is called; without one it stays. */
  readonly removes?: string;
  readonly children?: ReactNode;
}

function Section({ title, words, removes, children }: SectionProps) {
  const workbench = useWorkbench();
  const heading = useRef<HTMLHeadingElement>(null);
  // Whoever comes from a finding in another area left a button behind that had the focus.
  useEffect(() => {
    if (removes !== undefined && document.activeElement === document.body) heading.current?.focus();
  }, [removes]);
  return (
    <section className="route-section" aria-labelledby="route-chosen">
      <div className="route-section-head">
        <h2 id="route-chosen" ref={heading} tabIndex={-1}>
          {title}
        </h2>
        {removes !== undefined && (
          <IconButton
            label={removes}
            keys="Delete"
            icon={<Trash2 size={18} aria-hidden="true" />}
            onPress={() => remove(workbench)}
          />
        )}
      </div>
      {words !== '' && <p className="soft">{words}</p>}
      {children}
    </section>
  );
}
