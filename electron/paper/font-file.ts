/** The part of an open font that paper needs, as fontkit 2 has it. */
export interface FontFile {
  readonly unitsPerEm: number;
  readonly hasGlyphForCodePoint: (codePoint: number) => boolean;
  readonly layout: (text: string) => GlyphRun;
}

interface GlyphRun {
  readonly glyphs: readonly { readonly path: GlyphPath }[];
  readonly positions: readonly { readonly xAdvance: number; readonly xOffset: number }[];
  readonly advanceWidth: number;
}

interface GlyphPath {
  readonly commands: readonly { readonly command: string; readonly args: readonly number[] }[];
}
