import { Plus, Trash2 } from 'lucide-react';
import { useState } from 'react';
import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components/Tabs';
import type { Connector } from '../../../../boards/document/connector';
import { LIMITS } from '../../../../boards/document/limits';
import { connectorOf } from '../../../../boards/document/lookup';
import { connectorName } from '../../../../boards/document/names';
import type { Photo } from '../../../../boards/document/photo';
import { pictureProblemWords } from '../../../../boards/pinout/photo/picture-words';
import { doCommand } from '../../../do-command';
import { Button } from '../../../look/button';
import { Choice } from '../../../look/choice';
import { Window } from '../../../look/window';
import { useBuild, useSession, useWorkbench } from '../../../workbench';
import { UndoButton, useUndoKeys } from '../undo-here';
import { PhotoChoice } from './photo-choice';
import { PointingView } from './pointing-view';
import { ReadingView } from './reading-view';
import type { TakenPhoto } from './take-photo';
import { useDropped } from './use-dropped';
import { usePicture } from './use-picture';
import { usePoints } from './use-points';
import './photo.css';

interface PhotoDialogProps {
  readonly connector: string;
  readonly onClose: () => void;
}

/** The pins of a connector from a photo: take one, point at pins, read the print straight from above. */
export function PhotoDialog({ connector: id, onClose }: PhotoDialogProps) {
  const workbench = useWorkbench();
  const build = useBuild();
  const { photos = [] } = build.board;
  const [chosen, setChosen] = useState<string | null>(() => firstFor(photos, id));
  const connector = connectorOf(build.board, id);
  useUndoKeys();
  const [incoming, setIncoming] = useState<File | null>(null);
  const hovering = useDropped((file) => {
    setIncoming(file);
    setChosen(null);
  });
  const show = (photo: string | null) => {
    setIncoming(null);
    setChosen(photo);
  };
  const said = useSession(({ message }) => message);
  const photo = photos.find((each) => each.id === chosen);
  if (connector === undefined) return null;
  const add = (taken: TakenPhoto) => {
    const fresh = freeId(photos);
    if (doCommand(workbench, { name: 'add-photo', args: { photo: { id: fresh, ...taken, points: [] } } }))
      setChosen(fresh);
    setIncoming(null);
  };
  const remove = ({ id: gone }: Photo) => {
    setChosen(null);
    doCommand(workbench, { name: 'remove-photo', args: { photo: gone } });
  };
  return (
    <Window title={`${connectorName(build, id)} from a photo`} size="whole" onClose={onClose}>
      <div className="photo-work">
        <div className="photo-bar">
          {photos.length > 0 && (
            <Choice
              label="Photo"
              options={[
                ...photos.map((each) => ({ id: each.id, label: each.title || each.id })),
                ...(photo ? [] : [{ id: '', label: 'another' }]),
              ]}
              chosen={photo?.id ?? ''}
              onChoose={show}
            />
          )}
          {photo && (
            <>
              <Button disabled={photos.length >= LIMITS.photos} onPress={() => show(null)}>
                <Plus size={16} aria-hidden="true" />
                Another photo…
              </Button>
              <Button onPress={() => remove(photo)}>
                <Trash2 size={16} aria-hidden="true" />
                Remove the photo
              </Button>
            </>
          )}
          <UndoButton />
          {!photo && <p className="photo-told soft small">{said}</p>}
        </div>
        {photo ? (
          <Working key={`${photo.id} ${id}`} photo={photo} connector={connector} />
        ) : (
          <PhotoChoice incoming={incoming} hovering={hovering} onTaken={add} />
        )}
      </div>
    </Window>
  );
}

function Working({ photo, connector }: { readonly photo: Photo; readonly connector: Connector }) {
  const state = usePicture(photo);
  const points = usePoints(photo, connector);
  const [page, setPage] = useState<'point' | 'read' | null>(null);
  if (state.kind === 'waiting')
    return (
      <p className="photo-waiting" role="status">
        Decoding the photo
      </p>
    );
  if (state.kind === 'refused') {
    const words = pictureProblemWords(state.problem, photo.title || photo.id);
    return (
      <div className="photo-choice" role="status">
        <p className="photo-refusal">{words.title}</p>
        {words.lines.map((line) => (
          <p key={line}>{line}</p>
        ))}
        <p>The sheet is as it was. Remove the photo, or choose another.</p>
      </div>
    );
  }
  const { picture } = state;
  const shown = (points.lay && page) ?? 'point';
  return (
    <Tabs
      className="photo-tabs"
      selectedKey={shown}
      onSelectionChange={(key) => setPage(key === 'read' ? 'read' : 'point')}
      disabledKeys={points.lay ? [] : ['read']}
    >
      <TabList className="tab-list" aria-label="From a photo">
        <Tab id="point" className="tab">
          Point at pins
        </Tab>
        <Tab id="read" className="tab">
          Read the print
        </Tab>
      </TabList>
      <TabPanel id="point" className="photo-panel">
        <PointingView
          photo={photo}
          picture={picture}
          connector={connector}
          points={points}
          fresh={page === null}
        />
      </TabPanel>
      <TabPanel id="read" className="photo-panel">
        {points.lay && <ReadingView photo={photo} picture={picture} connector={connector} lay={points.lay} />}
      </TabPanel>
    </Tabs>
  );
}

/** The photo to begin with: one that this connector was pointed at on, or the newest. */
function firstFor(photos: readonly Photo[], connector: string): string | null {
  const pointed = photos.find(({ points }) => points.some((point) => point.connector === connector));
  return (pointed ?? photos.at(-1))?.id ?? null;
}

function freeId(photos: readonly Photo[]): string {
  const taken = new Set(photos.map(({ id }) => id));
  let number = 1;
  while (taken.has(`photo-${number}`)) number += 1;
  return `photo-${number}`;
}
