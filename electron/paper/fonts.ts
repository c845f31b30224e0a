import { create } from 'fontkit';
import type { Face, Measure } from '../../boards/drawing/measure';
import type { Letters } from '../../boards/handover/page/letters';
import type { FontFile } from './font-file';
import { fontOf } from './sign-font';
import { signShapes } from './sign-shapes';

/** One font file, open, with the bytes it was opened from. */
export interface PageFont {
  /** Under which the file is known in a document. */
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly font: FontFile;
}

/** A piece of text that one font file has all the letters of. */
export interface Run {
  readonly font: PageFont;
  readonly text: string;
}

export interface Fonts extends Letters {
  /** Every file by face, in the order in which a letter is looked for. */
  readonly chains: Readonly<Record<Face, readonly PageFont[]>>;
  readonly runsOf: (text: string, face: Face) => readonly Run[];
}

/** How thick the strokes of the faces are, in thousandths of the type size: what our own signs go by. */
const STEMS = { text: 78, strong: 128, mono: 82 } as const satisfies Record<Face, number>;

/** Opens the fonts of the page. Text is measured by the very files it is set in. */
export async function openFonts(read: (name: string) => Promise<Uint8Array>): Promise<Fonts> {
  const chainOf = async (face: Face): Promise<readonly PageFont[]> => {
    const bold = face === 'strong';
    const signs = fontOf(`Leadwright Signs ${face}`, bold, signShapes(STEMS[face]));
    return [
      openFont(face, await read(`${face}.woff`)),
      openFont(`${face}-more`, await read(`${face}-more.woff`)),
      openFont(`${face}-signs`, signs),
    ];
  };
  const chains = {
    text: await chainOf('text'),
    strong: await chainOf('strong'),
    mono: await chainOf('mono'),
  };
  const runsOf = (text: string, face: Face) => runsIn(text, chains[face]);
  return {
    chains,
    runsOf,
    measure: measureBy(runsOf),
    has: (code) =>
      Object.values(chains).every((chain) => chain.some(({ font }) => font.hasGlyphForCodePoint(code))),
  };
}

/** Opens one font file. */
export function openFont(name: string, bytes: Uint8Array): PageFont {
  return { name, bytes, font: create(bytes) };
}

/** Every letter from the first font that has it; from the first of all where none has. */
function runsIn(text: string, chain: readonly PageFont[]): readonly Run[] {
  const runs: { font: PageFont; text: string }[] = [];
  for (const letter of text) {
    const code = letter.codePointAt(0) ?? 0;
    const found = chain.find(({ font }) => font.hasGlyphForCodePoint(code)) ?? chain[0];
    const last = runs.at(-1);
    if (found === undefined) continue;
    if (last?.font === found) last.text += letter;
    else runs.push({ font: found, text: letter });
  }
  return runs;
}

/** Texts come again and again: a word's width is worked out once. */
const REMEMBERED = 50_000;

function measureBy(runsOf: Fonts['runsOf']): Measure {
  const known = new Map<string, number>();
  return (text, sizeMm, face) => {
    const key = `${face} ${text}`;
    let ems = known.get(key);
    if (ems === undefined) {
      ems = runsOf(text, face).reduce((sum, run) => sum + emsOf(run), 0);
      if (known.size >= REMEMBERED) known.clear();
      known.set(key, ems);
    }
    return ems * sizeMm;
  };
}

/** The width of a run in sizes of its type, pairs of letters drawn together as the font says. */
export function emsOf({ font: { font }, text }: Run): number {
  return font.layout(text).advanceWidth / font.unitsPerEm;
}
