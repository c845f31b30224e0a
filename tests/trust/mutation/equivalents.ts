/** A change of the code that nothing can notice, since the program does the same with it. */
export interface Equivalent {
  readonly file: string;
  /** The line on which it begins, as it stands there. */
  readonly line: string;
  /** What Stryker puts in place of it. */
  readonly replacement: string;
  readonly why: string;
}

/** Not counted. One that is noticed after all, or is no longer there, fails the row. */
export const EQUIVALENTS: readonly Equivalent[] = [
  {
    file: 'electron/host/save-file.ts',
    line: "return saveBytes(fs, { ...save, bytes: Buffer.from(text, 'utf8') });",
    replacement: '""',
    why: 'Without a name Node takes UTF-8 too',
  },
  {
    file: 'electron/host/save-file.ts',
    line: 'if (target === null) return null;',
    replacement: 'false',
    why: 'There is no folder of nothing: that is thrown, and caught as null a few lines below',
  },
  {
    file: 'renderer/store/editor.ts',
    line: 'set({ open: { opening: ++openings, history: startHistory(build), file, saved } }),',
    replacement: '--openings',
    why: 'The numbers need only differ',
  },
  {
    file: 'renderer/store/editor.ts',
    line: 'if (back >= 0) return history.past.length - back;',
    replacement: 'back > 0',
    why: 'The first build of all is as far back as there are steps, which is what is said at the end',
  },
];
