/** Whether a file of that name may be a document of ours, as far as a name can tell. */
export function isDocumentName(name: string): boolean {
  return name.toLowerCase().endsWith('.json');
}

/** What a new file's name has to be, in words; null for a name that will do on every system. */
export function nameProblem(name: string): string | null {
  if (/[/\\:*?"<>|]/.test(name)) return 'a name without / \\ : * ? " < > |';
  if (hasControl(name)) return 'a name of visible characters';
  if (!isDocumentName(name)) return 'a name that ends in .json';
  if (name.startsWith('.')) return 'a name that does not begin with a full stop';
  if (/^(?:con|prn|aux|nul|com\d|lpt\d)\./i.test(name)) return 'a name that is not a device of Windows';
  if (Buffer.byteLength(name, 'utf8') > 255) return 'a name of at most 255 bytes';
  return null;
}

function hasControl(name: string): boolean {
  return [...name].some((character) => character < ' ' || character === '\u007f');
}
