import { connectorOf } from '../../../boards/document/lookup';
import { connectorName } from '../../../boards/document/names';
import { shapeWords } from '../../words/plug-words';
import { trayPartName, trayPartSaid } from '../../words/tray-words';
import { useBuild, useSession } from '../../workbench';

/** What is chosen on the map or on the shelf. */
export function ChosenSection() {
  const build = useBuild();
  const selection = useSession((state) => state.selection);
  const { tray } = build.case;
  if (tray === undefined) return null;
  if (selection.kind === 'connector') {
    const connector = connectorOf(build.board, selection.connector);
    if (connector)
      return (
        <Chosen
          name={connectorName(build, connector.id)}
          words={`${connector.title}, ${shapeWords(connector)}`}
        />
      );
  }
  if (selection.kind === 'on-tray') {
    const words = trayPartSaid(build, tray, selection.part);
    if (words !== undefined) return <Chosen name={trayPartName(build, tray, selection.part)} words={words} />;
  }
  return (
    <section className="route-section" aria-labelledby="route-chosen">
      <h2 id="route-chosen">Nothing is chosen</h2>
      <p className="soft">Choose a place or a path on the map or on the left.</p>
    </section>
  );
}

function Chosen({ name, words }: { readonly name: string; readonly words: string }) {
  return (
    <section className="route-section" aria-labelledby="route-chosen">
      <h2 id="route-chosen">{name}</h2>
      <p className="soft">{words}</p>
    </section>
  );
}
