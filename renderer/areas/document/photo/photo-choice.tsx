import { FolderOpen } from 'lucide-react';
import { useEffect, useEffectEvent, useRef, useState } from 'react';
import { FileTrigger } from 'react-aria-components/FileTrigger';
import type { OpenWords } from '../../../../boards/document/problem-words';
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
  readonly onTaken: (photo: TakenPhoto) => void;
}

/** Takes a photo from a file, dropped, or pasted; says what is done with it, or why it is none. */
export function PhotoChoice({ onTaken }: PhotoChoiceProps) {
  const { state, take, hovering } = useTaking(onTaken);
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

function useTaking(onTaken: (photo: TakenPhoto) => void) {
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
  const hovering = useDropped((file) => void take(file));
  return { state, take: (file: File) => void take(file), hovering };
}

/** Files that are dropped or pasted while this is on the screen: the window itself would open them as sheets. */
function useDropped(take: (file: File) => void): boolean {
  const [hovering, setHovering] = useState(false);
  const taken = useEffectEvent(take);
  useEffect(() => {
    const fileIn = (data: DataTransfer | null) => data?.files[0];
    const over = (event: DragEvent) => {
      if (!event.dataTransfer?.types.includes('Files')) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      setHovering(true);
    };
    const leave = (event: DragEvent) => {
      if (event.relatedTarget === null) setHovering(false);
    };
    const drop = (event: DragEvent) => {
      const file = fileIn(event.dataTransfer);
      setHovering(false);
      if (!file) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      taken(file);
    };
    const paste = (event: ClipboardEvent) => {
      const file = fileIn(event.clipboardData);
      if (!file) return;
      event.preventDefault();
      taken(file);
    };
    const first = { capture: true };
    window.addEventListener('dragover', over, first);
    window.addEventListener('dragleave', leave, first);
    window.addEventListener('drop', drop, first);
    window.addEventListener('paste', paste);
    return () => {
      window.removeEventListener('dragover', over, first);
      window.removeEventListener('dragleave', leave, first);
      window.removeEventListener('drop', drop, first);
      window.removeEventListener('paste', paste);
    };
  }, []);
  return hovering;
}
