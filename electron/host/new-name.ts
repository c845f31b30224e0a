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

/** What a new file's name has to be, in words; null for a name that will do on every system. */
export function nameProblem(name: string, kind: FileKind): string | null {
  if (/[/\\:*?"<>|]/.test(name)) return 'a name without / \\ : * ? " < > |';
  if (hasControl(name)) return 'a name of visible characters';
  if (!name.toLowerCase().endsWith(endingOf(kind))) return `a name that ends in ${endingOf(kind)}`;
  if (name.startsWith('.')) return 'a name that does not begin with a full stop';
  if (/^(?:con|prn|aux|nul|com\d|lpt\d)\./i.test(name)) return 'a name that is not a device of Windows';
  if (Buffer.byteLength(name, 'utf8') > 255) return 'a name of at most 255 bytes';
  return null;
}

function hasControl(name: string): boolean {
  return [...name].some((character) => character < ' ' || character === '\u007f');
}
