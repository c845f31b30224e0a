import { FolderOpen } from 'lucide-react';
import { useEffect, useEffectEvent, useRef, useState } from 'react';
import { FileTrigger } from 'react-aria-components/FileTrigger';
import type { OpenWords } from '../../../../boards/document/problem/problem-words';
import { pictureProblemWords } from '../../../../boards/pinout/photo/picture-words';
import { Button } from '../../../look/button';
import { type TakenPhoto, type TakingStep, takePhoto } from './take-photo';

const STEP_WORDS = {
  reading: 'Reading the file',
  decoding: 'Decoding the picture',
  scaling: 'Scaling it down',
  packing: 'Packing it for the sheet',
} as const satisfies Record<TakingStep, string>;

type State =
  | { readonly kind: 'idle' }
  | {
      readonly kind: 'busy';
      readonly name: string;
      readonly step: TakingStep;
      readonly stop: AbortController;
    }
  | { readonly kind: 'refused'; readonly words: OpenWords };

interface PhotoChoiceProps {
  /** A file that was dropped or pasted. */
  readonly incoming: File | null;
  /** One is being dragged over the window. */
  readonly hovering: boolean;
  readonly onTaken: (photo: TakenPhoto) => void;
}

/** Takes a photo from a file, dropped, or pasted; says what is done with it, or why it is none. */
export function PhotoChoice({ incoming, hovering, onTaken }: PhotoChoiceProps) {
  const { state, take } = useTaking(incoming, onTaken);
  const busy = state.kind === 'busy';
  return (
    <div className="photo-choice" data-hovering={hovering || undefined}>
      <p>
        Take the photo from straight above if you can, near enough to read the print, in good light. It need
        not be exact: the grid follows the perspective.
      </p>
      <p className="soft">
        Drop a picture here, paste one, or choose a file: PNG, JPEG or WebP. It is scaled down and kept in the
        board sheet, without the place, the time and whatever else the camera has written beside it.
      </p>
      <FileTrigger
        acceptedFileTypes={['image/png', 'image/jpeg', 'image/webp']}
        onSelect={(files) => {
          const file = files?.[0];
          if (file) take(file);
        }}
      >
        <Button kind="main" disabled={busy} autoFocus>
          <FolderOpen size={16} aria-hidden="true" />
          Choose a photo…
        </Button>
      </FileTrigger>
      <div className="photo-said" role="status">
        {busy && (
          <p>
            {STEP_WORDS[state.step]}: {state.name}
          </p>
        )}
        {state.kind === 'refused' && (
          <>
            <p className="photo-refusal">{state.words.title}</p>
            {state.words.lines.map((line) => (
              <p key={line}>{line}</p>
            ))}
            <p>{state.words.advice}</p>
          </>
        )}
      </div>
      {busy && <Button onPress={() => state.stop.abort()}>Cancel</Button>}
    </div>
  );
}

function useTaking(incoming: File | null, onTaken: (photo: TakenPhoto) => void) {
  const [state, setState] = useState<State>({ kind: 'idle' });
  const running = useRef<AbortController | null>(null);
  const take = async (file: File) => {
    running.current?.abort();
    const stop = new AbortController();
    running.current = stop;
    const name = file.name || 'the pasted picture';
    const put = (next: State) => running.current === stop && setState(next);
    stop.signal.addEventListener('abort', () => put({ kind: 'idle' }));
    const taken = await takePhoto(
      file,
      file.name,
      (step) => !stop.signal.aborted && put({ kind: 'busy', name, step, stop }),
      stop.signal,
    );
    if (taken === null || stop.signal.aborted) return;
    if (taken.ok) {
      put({ kind: 'idle' });
      onTaken(taken.value);
    } else put({ kind: 'refused', words: pictureProblemWords(taken.problem, name) });
  };
  useEffect(() => () => running.current?.abort(), []);
  const arrived = useEffectEvent((file: File) => void take(file));
  useEffect(() => {
    if (incoming) arrived(incoming);
  }, [incoming]);
  return { state, take: (file: File) => void take(file) };
}
