import { z } from 'zod';
import { LISTS, PAPER_FORMATS, PrintZ, SCALES } from './handover/order';
import { PaperProblemZ } from './handover/paper-problem';

/**
 * The one contract between the window and the machine. The page never sends a path: the host
 * gives out opaque handles for what the person has chosen, and takes them back.
 */
const HandleZ = z.string().regex(/^[A-Za-z0-9_-]{16,64}$/);
const NoneZ = z.undefined();
const TextZ = z.string().max(64 * 1024 * 1024);
const NameZ = z.string().min(1).max(255);
const KindZ = z.enum(['build', 'board', 'case']);
const PaperFormatZ = z.enum(PAPER_FORMATS);
/** What a new file is to be: a document, a paper, or a list. */
const FileKindZ = z.enum([...KindZ.options, ...PAPER_FORMATS, 'csv']);

/** Pages are counted from 1. */
const PageZ = z.int().min(1).max(10_000);

/** A file on disk as it was when it was last read or written; opaque to the page. */
const StampZ = z.string().max(200);

/** Time, length and hash of a version; never a path. */
const VersionIdZ = z.string().regex(/^\d{1,15}-\d{1,12}-[0-9a-f]{16}$/);

const OpenedZ = z.strictObject({
  handle: HandleZ,
  name: NameZ,
  /** Where it lies, for people to read only. */
  folder: z.string(),
  text: TextZ,
  stamp: StampZ,
  readOnly: z.boolean(),
});

/** Why a file could not be read. Closed: words in the renderer's and the command line's one table. */
const ReadProblemZ = z.discriminatedUnion('code', [
  z.strictObject({ code: z.literal('not-found'), name: z.string() }),
  z.strictObject({ code: z.literal('no-permission'), name: z.string() }),
  z.strictObject({ code: z.literal('folder'), name: z.string() }),
  z.strictObject({ code: z.literal('special'), name: z.string() }),
  z.strictObject({
    code: z.literal('too-large'),
    name: z.string(),
    bytes: z.number(),
    limitBytes: z.number(),
  }),
  z.strictObject({ code: z.literal('not-text'), name: z.string() }),
  z.strictObject({ code: z.literal('stale-handle'), name: z.string() }),
  /** A recovery copy on which another window works. */
  z.strictObject({ code: z.literal('open-elsewhere'), name: z.string() }),
  z.strictObject({ code: z.literal('unreadable'), name: z.string(), detail: z.string() }),
]);

const SaveProblemZ = z.discriminatedUnion('code', [
  z.strictObject({ code: z.literal('changed-outside'), name: z.string() }),
  /** With what the file takes there and what is free; null where that could not be asked, or is not what is short. */
  z.strictObject({
    code: z.literal('no-space'),
    name: z.string(),
    room: z.strictObject({ neededBytes: z.number(), freeBytes: z.number() }).nullable(),
  }),
  z.strictObject({ code: z.literal('quota-used'), name: z.string() }),
  z.strictObject({ code: z.literal('no-permission'), name: z.string() }),
  z.strictObject({ code: z.literal('read-only-disk'), name: z.string() }),
  z.strictObject({ code: z.literal('folder-gone'), name: z.string() }),
  z.strictObject({ code: z.literal('special'), name: z.string() }),
  z.strictObject({ code: z.literal('bad-name'), name: z.string(), expected: z.string() }),
  z.strictObject({ code: z.literal('invalid'), name: z.string(), path: z.string(), expected: z.string() }),
  z.strictObject({ code: z.literal('stale-handle'), name: z.string() }),
  z.strictObject({ code: z.literal('unwritable'), name: z.string(), detail: z.string() }),
]);

const SavedZ = z.strictObject({
  handle: HandleZ,
  name: NameZ,
  folder: z.string(),
  stamp: StampZ,
  /** False when the folder entry could not be flushed: saved, not yet surely on disk. */
  durable: z.boolean(),
});

function resultOf<T extends z.ZodType, E extends z.ZodType>(value: T, problem: E) {
  return z.discriminatedUnion('ok', [
    z.strictObject({ ok: z.literal(true), value }),
    z.strictObject({ ok: z.literal(false), problem }),
  ]);
}

export const SettingsZ = z.strictObject({
  theme: z.enum(['system', 'light', 'dark']),
  largeType: z.boolean(),
});

const EntryZ = z.strictObject({
  handle: HandleZ,
  name: NameZ,
  kind: z.enum(['folder', 'file']),
  modifiedMs: z.number(),
});

const FolderZ = z.strictObject({
  handle: HandleZ,
  /** The way down to it, outermost first. */
  crumbs: z.array(z.strictObject({ handle: HandleZ, name: z.string() })),
  entries: z.array(EntryZ).max(5_000),
  /** More entries than are listed. */
  cut: z.boolean(),
});

/** A file in the library of sheets, before anybody has looked into it. */
const SheetFileZ = z.strictObject({
  handle: HandleZ,
  name: NameZ,
  modifiedMs: z.number(),
  bytes: z.number(),
});

const LibraryZ = z.strictObject({
  /** Where the folder lies, for people to read only. */
  folder: z.string(),
  /** It is the folder that the program made, not one that the person chose. */
  usual: z.boolean(),
  files: z.array(SheetFileZ).max(5_000),
  /** There are more files than are listed. */
  cut: z.boolean(),
});

/** What a sheet of the library is and can be found by; or why the file is none. */
const SheetHeadZ = z.discriminatedUnion('outcome', [
  z.strictObject({
    outcome: z.literal('sheet'),
    handle: HandleZ,
    kind: z.enum(['board', 'case']),
    id: z.string(),
    title: z.string(),
    /** Connectors of a board, leads of a case. */
    count: z.int().min(0),
    /** Prints, titles, signals, size: everything a search may hit. */
    words: z.string(),
  }),
  z.strictObject({ outcome: z.literal('build'), handle: HandleZ, title: z.string() }),
  z.strictObject({ outcome: z.literal('unreadable'), handle: HandleZ, problem: ReadProblemZ }),
  z.strictObject({
    outcome: z.literal('unsound'),
    handle: HandleZ,
    lines: z.array(z.string()),
    advice: z.string(),
  }),
]);

/** Where a sheet is kept in the library: in a file of its own, or in place of one that is there. */
const SheetPlaceZ = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('new'), name: NameZ }),
  z.strictObject({
    kind: z.literal('over'),
    handle: HandleZ,
    expected: StampZ.nullable(),
    /** Keep what was there in the folder of removed sheets. */
    setAside: z.boolean(),
  }),
]);

const RecoveryZ = z.strictObject({
  id: HandleZ,
  name: z.string(),
  /** The file it belongs to, where it has one. */
  folder: z.string().nullable(),
  savedMs: z.number(),
  changes: z.number(),
});

/** Every call: what goes in, what comes out. Each end checks what it receives. */
export const CHANNELS = {
  about: {
    /** A page names itself, by an id of its own, so that its work is not offered to another one. */
    input: z.strictObject({ page: HandleZ }),
    output: z.strictObject({
      version: z.string(),
      door: z.enum(['electron', 'browser']),
      platform: z.string(),
      /** "page" where the window has to show folders itself. */
      dialogs: z.enum(['native', 'page']),
      /** Files named on the command line or opened by the system before the window was ready. */
      toOpen: z.array(HandleZ),
    }),
  },
  chooseOpen: { input: NoneZ, output: HandleZ.nullable() },
  chooseSave: {
    input: z.strictObject({ suggested: NameZ, kind: FileKindZ }),
    output: z.strictObject({ handle: HandleZ, name: NameZ, exists: z.boolean() }).nullable(),
  },
  browse: { input: z.strictObject({ folder: HandleZ.nullable() }), output: resultOf(FolderZ, ReadProblemZ) },
  placeNew: {
    input: z.strictObject({ folder: HandleZ, name: NameZ, kind: FileKindZ }),
    output: resultOf(z.strictObject({ handle: HandleZ, name: NameZ, exists: z.boolean() }), SaveProblemZ),
  },
  open: { input: z.strictObject({ handle: HandleZ }), output: resultOf(OpenedZ, ReadProblemZ) },
  save: {
    input: z.strictObject({
      handle: HandleZ,
      /** Read as a file is before anything is written. */
      document: z.unknown(),
      /** What the file was when last read or written; null to replace whatever is there. */
      expected: StampZ.nullable(),
    }),
    output: resultOf(SavedZ, SaveProblemZ),
  },
  /** One page of what is to be printed as an SVG picture, to be looked at. */
  drawPaper: {
    input: z.strictObject({ document: TextZ, print: PrintZ, page: PageZ }),
    output: resultOf(z.strictObject({ svg: TextZ, pages: z.int() }), PaperProblemZ),
  },
  /** A paper of a build or of a board sheet, made and written to a file that was chosen. */
  savePaper: {
    input: z.strictObject({
      handle: HandleZ,
      document: TextZ,
      print: PrintZ,
      format: PaperFormatZ,
      /** One page by its number; null for all. */
      page: PageZ.nullable(),
      scale: z.number().min(SCALES.least).max(SCALES.most),
    }),
    output: resultOf(
      z.strictObject({ name: NameZ, folder: z.string(), pages: z.int() }),
      z.union([SaveProblemZ, PaperProblemZ]),
    ),
  },
  /** A list of a build as comma-separated values, written to a file that was chosen. */
  saveList: {
    input: z.strictObject({ handle: HandleZ, build: TextZ, list: z.enum(LISTS) }),
    output: resultOf(
      z.strictObject({ name: NameZ, folder: z.string() }),
      z.union([SaveProblemZ, PaperProblemZ]),
    ),
  },
  /** Gives up the papers that are being made. */
  stopPaper: { input: NoneZ, output: NoneZ },
  listRecent: {
    input: NoneZ,
    output: z
      .array(z.strictObject({ handle: HandleZ, name: NameZ, folder: z.string(), missing: z.boolean() }))
      .max(10),
  },
  /** A file turned out to be a document of ours: it is one of those last worked on. */
  noteRecent: { input: z.strictObject({ handle: HandleZ }), output: NoneZ },
  forgetRecent: { input: z.strictObject({ handle: HandleZ.nullable() }), output: NoneZ },
  /** A folder chosen in the system's own dialog. */
  chooseFolder: { input: NoneZ, output: HandleZ.nullable() },
  /** Makes a folder the library; null goes back to the usual one. */
  moveLibrary: {
    input: z.strictObject({ folder: HandleZ.nullable() }),
    output: resultOf(z.null(), ReadProblemZ),
  },
  listLibrary: { input: NoneZ, output: resultOf(LibraryZ, ReadProblemZ) },
  /** Looks into a few files of the library; the window asks again for the next few, or stops. */
  readSheetHeads: {
    input: z.strictObject({ handles: z.array(HandleZ).max(50) }),
    output: z.array(SheetHeadZ).max(50),
  },
  keepSheet: {
    input: z.strictObject({ document: z.unknown(), place: SheetPlaceZ }),
    output: resultOf(z.strictObject({ handle: HandleZ, name: NameZ }), SaveProblemZ),
  },
  /** Moves a sheet of the library to its folder of removed sheets. */
  removeSheet: {
    input: z.strictObject({ handle: HandleZ }),
    output: resultOf(z.strictObject({ name: NameZ, folder: z.string() }), SaveProblemZ),
  },
  readSettings: { input: NoneZ, output: SettingsZ },
  writeSettings: { input: SettingsZ, output: NoneZ },
  keepRecovery: {
    input: z.strictObject({
      session: HandleZ,
      page: HandleZ,
      handle: HandleZ.nullable(),
      /** What the file was when the work on it began; null where there is no file yet. */
      stamp: StampZ.nullable(),
      name: NameZ,
      text: TextZ,
      changes: z.int().min(0),
    }),
    // Not undefined: a value in an answer has to survive JSON.
    output: resultOf(z.null(), SaveProblemZ),
  },
  dropRecovery: { input: z.strictObject({ id: HandleZ, page: HandleZ }), output: NoneZ },
  listRecovery: { input: NoneZ, output: z.array(RecoveryZ).max(100) },
  /** The work of a copy, which from then on is the page's own. */
  takeRecovery: {
    input: z.strictObject({ id: HandleZ, page: HandleZ }),
    output: resultOf(
      z.strictObject({ text: TextZ, name: NameZ, handle: HandleZ.nullable(), stamp: StampZ.nullable() }),
      ReadProblemZ,
    ),
  },
  /** What a file held before, newest first: copies outside its folder. */
  listVersions: {
    input: z.strictObject({ handle: HandleZ }),
    output: z.array(z.strictObject({ id: VersionIdZ, savedMs: z.number(), bytes: z.number() })).max(1_000),
  },
  readVersion: {
    input: z.strictObject({ handle: HandleZ, id: VersionIdZ }),
    output: resultOf(z.strictObject({ text: TextZ }), ReadProblemZ),
  },
  /** The program itself has failed in the window: a report for the person to read, and to share or not. */
  writeReport: {
    input: z.strictObject({
      name: z.string().max(100),
      message: z.string().max(10_000),
      stack: z.string().max(100_000),
    }),
    output: resultOf(z.strictObject({ name: NameZ, folder: z.string(), text: TextZ }), SaveProblemZ),
  },
  /** The title and the unsaved mark of the window, and whether closing has to ask. */
  showState: { input: z.strictObject({ name: z.string().max(300), unsaved: z.boolean() }), output: NoneZ },
} as const;

export type ChannelName = keyof typeof CHANNELS;
export type Input<C extends ChannelName> = z.input<(typeof CHANNELS)[C]['input']>;
export type Output<C extends ChannelName> = z.output<(typeof CHANNELS)[C]['output']>;

export type Saved = z.infer<typeof SavedZ>;
export type ReadProblem = z.infer<typeof ReadProblemZ>;
export type FileKind = z.infer<typeof FileKindZ>;
export type SaveProblem = z.infer<typeof SaveProblemZ>;
/** What a file takes on a disk that is full, and what is free there; null where it is not known. */
export type ScarceRoom = Extract<SaveProblem, { code: 'no-space' }>['room'];
export type Settings = z.infer<typeof SettingsZ>;
export type Folder = z.infer<typeof FolderZ>;
export type Library = z.infer<typeof LibraryZ>;
export type SheetFile = z.infer<typeof SheetFileZ>;
export type SheetHead = z.infer<typeof SheetHeadZ>;
export type SheetPlace = z.infer<typeof SheetPlaceZ>;
export type Version = Output<'listVersions'>[number];
export type RecoveryOffer = z.infer<typeof RecoveryZ>;

/** What the machine asks of the window, unasked. */
export type HostRequest =
  | { readonly kind: 'action'; readonly id: string }
  /** Files that came together, such as of one start. */
  | { readonly kind: 'open'; readonly handles: readonly string[] }
  /**
   * The person wants the window closed and there is unsaved work. The window asks them; to go it says by
   * showState that nothing is unsaved any more, and closes itself.
   */
  | { readonly kind: 'leave' };

type Calls = {
  readonly [C in ChannelName]: Input<C> extends undefined
    ? () => Promise<Output<C>>
    : (input: Input<C>) => Promise<Output<C>>;
};

/** The machine as the window sees it. Main, preload, the browser door and the test stand-in all satisfy it. */
export interface HostApi extends Calls {
  /** Calls back for each request of the machine; returns the way to stop. */
  readonly onRequest: (listener: (request: HostRequest) => void) => () => void;
}

/**
 * The machine as the preload script hands it to the page: each call takes its input as JSON. Between the two every
 * object is copied entry by entry, which takes longer than to write and to read it.
 */
export type Bridge = { readonly [C in ChannelName]: (json?: string) => Promise<unknown> } & Pick<
  HostApi,
  'onRequest'
>;
