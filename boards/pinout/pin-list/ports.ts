/** Pieces of a word with the number or letter of a port taken out of them. */
export interface Ported {
  readonly pieces: readonly string[];
  readonly port?: string;
}

/** Pieces that only say that a number follows: "PORT 1", "IntA_P1". */
const PORT_WORDS: ReadonlySet<string> = new Set([
  'P',
  'PORT',
  'CH',
  'CHANNEL',
  'INT',
  'INTA',
  'NO',
  'NR',
  'LP',
]);

/** The ways to read a number or a letter as that of a port: first none, then behind, before and inside. */
export function portedWays(pieces: readonly string[]): readonly Ported[] {
  return [{ pieces }, ...numbered(pieces), ...lettered(pieces)];
}

function numbered(pieces: readonly string[]): readonly Ported[] {
  const found = pieces.flatMap((piece, at) => {
    const [, before = '', digits, after = ''] = /^([A-Z]*?)(\d{1,2})([A-Z]*)$/.exec(piece) ?? [];
    return digits === undefined ? [] : [{ at, digits, rest: [before, after].filter((part) => part !== '') }];
  });
  const last = found.at(-1);
  if (last === undefined) return [];
  const telling = ({ rest }: (typeof found)[number]) => rest.filter((part) => !PORT_WORDS.has(part));
  const one = (taken: typeof found, port: string): Ported => ({
    port,
    pieces: pieces.flatMap((piece, at) => {
      const here = taken.find((each) => each.at === at);
      const next = taken.find((each) => each.at === at + 1);
      if (here) return telling(here);
      return next && telling(next).length === 0 && PORT_WORDS.has(piece) ? [] : [piece];
    }),
  });
  const [first] = found;
  const further =
    first !== undefined && found.length > 1 ? [one([first], first.digits), one(found, last.digits)] : [];
  // "LP0" and "P1" are names of data lines themselves where nothing else is left.
  const bare = {
    port: last.digits,
    pieces: pieces.flatMap((piece, at) => (at === last.at ? last.rest : [piece])),
  };
  return [one([last], last.digits), ...further, bare].filter((way) => way.pieces.length > 0);
}

function lettered(pieces: readonly string[]): readonly Ported[] {
  if (pieces.length < 2) return [];
  const behind = pieces.at(-1) ?? '';
  const before = pieces[0] ?? '';
  return [
    ...(/^[A-D]$/.test(behind) ? [{ port: behind, pieces: withoutPortWord(pieces.slice(0, -1)) }] : []),
    ...(/^[A-D]$/.test(before) ? [{ port: before, pieces: pieces.slice(1) }] : []),
  ];
}

function withoutPortWord(pieces: readonly string[]): readonly string[] {
  const last = pieces.at(-1);
  return last !== undefined && pieces.length > 1 && PORT_WORDS.has(last) ? pieces.slice(0, -1) : pieces;
}
