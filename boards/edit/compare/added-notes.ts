import { factWords, fieldWords } from './fact-words';

/** "From “Bench two”: belongs to fan.": what another sheet says and this one has no other place for. */
export function factNote(from: string, field: string, value: unknown): string {
  return `From “${from}”: ${fieldWords(field)} ${factWords(value)}.`;
}

/** Notes with some lines more, each only where the notes do not say it already; undefined where there are none. */
export function withNotes(notes: string | undefined, lines: readonly string[]): string | undefined {
  const all = lines.reduce(
    (text, line) => (line === '' || text.includes(line) ? text : text === '' ? line : `${text}\n${line}`),
    notes ?? '',
  );
  return all === '' ? notes : all;
}
