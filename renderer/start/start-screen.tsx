import { FolderOpen, Library, Play, Plus } from 'lucide-react';
import { useAction } from '../actions/actions';
import { RecentFiles } from '../files/recent-files';
import { Menus } from '../frame/menus';
import { Button } from '../look/button';
import { CAUTIONS } from '../words/caution-words';
import { useWorkbench } from '../workbench';
import { BoardPicture } from './board-picture';
import { RecoveryOffers } from './recovery-offers';
import './start.css';

/** Before anything is open: what this is, one obvious thing to do, what was worked on last. */
export function StartScreen() {
  const { about } = useWorkbench();
  const demo = useAction('help.demo');
  const cables = useAction('help.demo-cables');
  const cramped = useAction('help.demo-cramped');
  const fresh = useAction('file.new');
  const open = useAction('file.open');
  const library = useAction('file.library');
  return (
    <div className="start">
      {about.door === 'browser' && (
        <header className="start-bar">
          <Menus />
        </header>
      )}
      <main className="start-page">
        <section className="start-what">
          <BoardPicture />
          <h1>Leadwright</h1>
          <p className="start-job">
            Put the small leads of a computer case onto the right pins of the board, and know what is wrong
            before power comes.
          </p>
          <RecoveryOffers />
          <div className="start-doings">
            <Button kind="main" onPress={() => demo.run()}>
              <Play size={18} aria-hidden="true" />
              Open the demo build
            </Button>
            <Button onPress={() => fresh.run()}>
              <Plus size={18} aria-hidden="true" />
              New build
            </Button>
            <Button onPress={() => open.run()}>
              <FolderOpen size={18} aria-hidden="true" />
              Open a file
            </Button>
            <Button onPress={() => library.run()}>
              <Library size={18} aria-hidden="true" />
              Library of sheets
            </Button>
          </div>
          <div className="start-demos">
            <Button kind="link" onPress={() => cables.run()}>
              {cables.label}
            </Button>
            <Button kind="link" onPress={() => cramped.run()}>
              {cramped.label}
            </Button>
          </div>
          <p className="soft small">
            Or drop a build, a board sheet or a case sheet anywhere on this window.
          </p>
          <RecentFiles />
        </section>
        <section className="start-cautions" aria-labelledby="start-cautions-title">
          <h2 id="start-cautions-title">Before you touch a pin</h2>
          <ol className="cautions">
            {CAUTIONS.map((caution) => (
              <li key={caution}>{caution}</li>
            ))}
          </ol>
        </section>
      </main>
    </div>
  );
}
