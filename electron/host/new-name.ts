import type { FileKind } from '../../boards/host';

/** Whether a file of that name may be a document of ours, as far as a name can tell. */
export function isDocumentName(name: string): boolean {
  return name.toLowerCase().endsWith('.json');
}

/** What the name of a file of some kind ends in. */
export function endingOf(kind: FileKind): string {
  return kind === 'build' || kind === 'board' || kind === 'case' ? '.json' : `.${kind}`;
}

/** The name of a new file with the ending its kind has, added where it is not there. */
export function withEnding(name: string, kind: FileKind): string {
  const ending = endingOf(kind);
  if (name.toLowerCase().endsWith(ending)) return name;
  return ending === '.json' ? `${name}.${kind}.json` : `${name}${ending}`;
}

/** Controls, line breaks, halves of letters, and what turns the direction of writing round. */
const UNSEEN = /[\p{Cc}\p{Zl}\p{Zp}\p{Cs}\u202a-\u202e\u2066-\u2069]/u;

/** What a new file's name has to be, in words; null for a name that will do on every system. */
export function nameProblem(name: string, kind: FileKind): string | null {
  if (/[/\\:*?"<>|]/.test(name)) return 'a name without / \\ : * ? " < > |';
  if (UNSEEN.test(name)) return 'a name of visible characters';
  if (!name.toLowerCase().endsWith(endingOf(kind))) return `a name that ends in ${endingOf(kind)}`;
  if (name.startsWith('.')) return 'a name that does not begin with a full stop';
  if (/^(?:con|prn|aux|nul|conin\$|conout\$|(?:com|lpt)[\d¹²³])\s*\./i.test(name))
    return 'a name that is not a device of Windows';
  if (Buffer.byteLength(name, 'utf8') > 255) return 'a name of at most 255 bytes';
  return null;
}
