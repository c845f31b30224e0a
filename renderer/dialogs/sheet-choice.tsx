import { Button } from '../look/button';

interface SheetChoiceProps {
  readonly kind: 'board' | 'case';
  /** The chosen sheet in words. */
  readonly chosen: string;
  readonly onEmpty: () => void;
  readonly onDemo: () => void;
  readonly onFile: () => void;
  readonly onLibrary: () => void;
}

/** Which sheet a new build begins with, and the four places it can come from. */
export function SheetChoice({ kind, chosen, onEmpty, onDemo, onFile, onLibrary }: SheetChoiceProps) {
  return (
    <fieldset className="sheet-choice">
      <legend>{kind === 'board' ? 'Board sheet' : 'Case sheet'}</legend>
      <p>{chosen}</p>
      <div className="sheet-choice-doings">
        <Button onPress={onLibrary} label={`Library…, ${kind} sheet`}>
          Library…
        </Button>
        <Button onPress={onFile} label={`From a file…, ${kind} sheet`}>
          From a file…
        </Button>
        <Button onPress={onDemo} label={`The demo’s, ${kind} sheet`}>
          The demo’s
        </Button>
        <Button onPress={onEmpty} label={`Empty, ${kind} sheet`}>
          Empty
        </Button>
      </div>
    </fieldset>
  );
}
