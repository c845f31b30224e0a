import { useEffect, useRef, useState } from 'react';
import { Button } from '../look/button';

export interface WrittenReport {
  readonly name: string;
  readonly folder: string;
  readonly text: string;
}

interface CrashScreenProps {
  readonly thrown: unknown;
  /** Whether unsaved work has been kept; null where that is not known yet, or there is none. */
  readonly kept?: boolean | null;
  /** Writes the report; left out where there is no machine to write it. */
  readonly report?: (thrown: unknown) => Promise<WrittenReport | null>;
}

/** Said once when the program itself has failed: plainly, with the way on, and with the report to read. */
export function CrashScreen({ thrown, kept = null, report }: CrashScreenProps) {
  const [written, setWritten] = useState<WrittenReport | null>(null);
  const asked = useRef(false);
  useEffect(() => {
    // Once, however often the screen is drawn.
    if (asked.current) return;
    asked.current = true;
    void report?.(thrown).then(setWritten);
  }, [report, thrown]);
  const detail = thrown instanceof Error ? thrown.message : String(thrown);
  return (
    <main className="crash" role="alert">
      <h1>The window cannot go on</h1>
      <p>Something in the program failed that should not.</p>
      <p className="soft">It says: {detail}</p>
      <p>{keptWords(kept)}</p>
      <Button kind="main" onPress={() => location.reload()}>
        Load again
      </Button>
      {written !== null && <Report written={written} />}
    </main>
  );
}

function keptWords(kept: boolean | null): string {
  if (kept === null) return 'Load the window again.';
  return kept
    ? 'Unsaved work has been kept as a recovery copy. Load the window again; the start screen will offer it.'
    : 'What was changed last could not be kept as a recovery copy: the disk takes nothing, or the program behind this window has ended. Start Leadwright again; the start screen will offer what was kept before.';
}

function Report({ written: { name, folder, text } }: { readonly written: WrittenReport }) {
  const [copied, setCopied] = useState(false);
  const copy = async () => {
    await navigator.clipboard.writeText(text);
    setCopied(true);
  };
  return (
    <section aria-labelledby="report-title">
      <h2 id="report-title">A report, for you to share or not</h2>
      <p>
        It is the file {name} in {folder}. This is all that is in it:
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a text that scrolls has to be reached by keyboard */}
      <pre tabIndex={0}>{text}</pre>
      <Button onPress={() => void copy().catch(() => undefined)}>
        {copied ? 'Copied' : 'Copy the report'}
      </Button>
    </section>
  );
}
