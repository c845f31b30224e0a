import { type Fonts, openFonts } from './fonts';

/** Reads one of the files that paper is made with, by the name it has in kit-files.json. */
export type ReadKitFile = (name: string) => Promise<Uint8Array>;

/** What paper is made with: the fonts, and the program that draws pictures. */
export interface PaperKit {
  readonly fonts: Fonts;
  readonly read: ReadKitFile;
}

export async function openKit(read: ReadKitFile): Promise<PaperKit> {
  return { fonts: await openFonts(read), read };
}
