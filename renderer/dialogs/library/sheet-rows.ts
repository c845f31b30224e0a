import type { SheetHead } from '../../../boards/host';
import type { ListedSheet } from '../../files/read-library';
import { headWords, refusedWords } from '../../words/library-words';
import { matches } from '../matching';

/** One line of the list. */
interface SheetRow {
  readonly handle: string;
  readonly title: string;
  readonly words: string;
}

/** A part of the list under a heading. */
export interface SheetSection {
  readonly id: 'board' | 'case' | 'unread' | 'refused';
  readonly heading: string;
  readonly rows: readonly SheetRow[];
}

const ORDER = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });
const HEADINGS = [
  ['board', 'Boards'],
  ['case', 'Cases'],
  ['unread', 'Not looked into yet'],
  ['refused', 'Cannot be used'],
] as const;

/** What matches what was typed, in order of its names, boards first. What cannot be used comes last, never hidden. */
export function sheetSections(sheets: readonly ListedSheet[], typed: string): readonly SheetSection[] {
  const twice = idsTwice(sheets);
  const found = sheets.filter(({ head, name }) => matches(`${searched(head)} ${name}`, typed));
  return HEADINGS.map(([id, heading]) => ({
    id,
    heading,
    rows: found
      .filter(({ head }) => sectionOf(head) === id)
      .map((sheet) => rowOf(sheet, twice))
      .sort((a, b) => ORDER.compare(a.title, b.title)),
  })).filter(({ rows }) => rows.length > 0);
}

function sectionOf(head: SheetHead | null): SheetSection['id'] {
  if (head === null) return 'unread';
  return head.outcome === 'sheet' ? head.kind : 'refused';
}

function searched(head: SheetHead | null): string {
  if (head === null) return '';
  return head.outcome === 'sheet'
    ? `${head.title} ${head.words} ${headWords(head)}`
    : refusedWords(head).join(' ');
}

/** Ids that several sheets of a kind have: copied outside, they are two states of the same thing. */
function idsTwice(sheets: readonly ListedSheet[]): ReadonlySet<string> {
  const seen = new Set<string>();
  const twice = new Set<string>();
  for (const { head } of sheets) {
    if (head?.outcome !== 'sheet') continue;
    const id = idOf(head);
    if (seen.has(id)) twice.add(id);
    seen.add(id);
  }
  return twice;
}

function idOf({ kind, id }: Extract<SheetHead, { outcome: 'sheet' }>): string {
  return `${kind} ${id}`;
}

function rowOf({ handle, name, head }: ListedSheet, twice: ReadonlySet<string>): SheetRow {
  if (head === null) return { handle, title: name, words: '' };
  if (head.outcome !== 'sheet') return { handle, title: name, words: refusedWords(head)[0] ?? '' };
  const shared = twice.has(idOf(head)) ? ', same id as another' : '';
  return { handle, title: head.title, words: `${headWords(head)}, ${name}${shared}` };
}
