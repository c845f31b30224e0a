import { Button } from '../look/button';

interface SheetChoiceProps {
  readonly kind: 'board' | 'case';
  /** The chosen sheet in words. */
  readonly chosen: string;
  readonly onEmpty: () => void;
  readonly onDemo: () => void;
  readonly onFile: () => void;
}

/** Which sheet a new build begins with, and the three places it can come from. */
export function SheetChoice({ kind, chosen, onEmpty, onDemo, onFile }: SheetChoiceProps) {
  return (
    <fieldset className="sheet-choice">
      <legend>{kind === 'board' ? 'Board sheet' : 'Case sheet'}</legend>
      <p>{chosen}</p>
      <div className="sheet-choice-doings">
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
