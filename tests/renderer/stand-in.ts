import type { Build } from '../../boards/document/build';
import { parseDocument } from '../../boards/document/parse';
import { serializeData } from '../../boards/document/serialize';
import { sheetHead } from '../../boards/document/sheet-head';
import type { Command } from '../../boards/edit/command';
import type { HostApi, Input, Output } from '../../boards/host';
import wiredText from '../../boards/library/demo/wired.build.json?raw';
import type { CanvasView } from '../../renderer/canvas/canvas-props';
import { closeWithoutSubject } from '../../renderer/store/dialog-subjects';
import { createEditor } from '../../renderer/store/editor';
import { keepRecovery } from '../../renderer/store/recovery';
import { createSession } from '../../renderer/store/session-store';
import { recoveryTroubleWords } from '../../renderer/words/host-words';
import type { Workbench } from '../../renderer/workbench';

type Opened = Extract<Output<'open'>, { ok: true }>['value'];

/** The machine as a test sees it: files by handle, and a record of what was asked of it. */
interface StandIn extends HostApi {
  readonly files: Map<string, Opened>;
  readonly copies: Map<string, Input<'keepRecovery'>>;
  /** The library of sheets, by handle. */
  readonly sheets: Map<string, { readonly name: string; readonly text: string }>;
  /** What the open file held before, by id. */
  readonly versions: Map<string, string>;
  readonly asked: string[];
  keepRecovery: HostApi['keepRecovery'];
  /** What the next save answers instead of saving. */
  refusal: Extract<Output<'save'>, { ok: false }>['problem'] | null;
  /** What the person picks in the system's dialogs. */
  chosen: string | null;
}

const NOTHING_CHOSEN = null;
const PAGE = 'page-of-the-bench';

function standIn(): StandIn {
  const files = new Map<string, Opened>();
  const copies = new Map<string, Input<'keepRecovery'>>();
  const sheets = new Map<string, { readonly name: string; readonly text: string }>();
  const asked: string[] = [];
  const versions = new Map<string, string>();
  let stamps = 0;
  const host: StandIn = {
    files,
    copies,
    sheets,
    versions,
    asked,
    refusal: null,
    chosen: NOTHING_CHOSEN,
    about: async () => ({ version: '0', door: 'electron', platform: 'linux', dialogs: 'native', toOpen: [] }),
    chooseOpen: async () => host.chosen,
    chooseSave: async ({ suggested }) => ({ handle: handleOf(suggested), name: suggested, exists: false }),
    browse: async () => ({ ok: false, problem: { code: 'not-found', name: 'folder' } }),
    placeNew: async ({ name }) => ({ ok: true, value: { handle: handleOf(name), name, exists: false } }),
    open: async ({ handle }) => {
      const file = files.get(handle);
      return file ? { ok: true, value: file } : { ok: false, problem: { code: 'not-found', name: handle } };
    },
    save: async ({ handle, document, expected }) => {
      asked.push(`save ${handle} over ${expected}`);
      if (host.refusal) return { ok: false, problem: host.refusal };
      const saved = { handle, name: handle, folder: '/bench', stamp: `stamp-${++stamps}` };
      files.set(handle, { ...saved, text: laidOut(document), readOnly: false });
      return { ok: true, value: { ...saved, durable: true } };
    },
    drawPaper: async ({ page }) => ({ ok: true, value: { svg: `<svg>${page}</svg>`, pages: 3 } }),
    savePaper: async ({ handle, format }) => {
      asked.push(`print ${format} to ${handle}`);
      if (host.refusal) return { ok: false, problem: host.refusal };
      return { ok: true, value: { name: handle, folder: '/bench', pages: 3 } };
    },
    saveList: async ({ handle }) => {
      asked.push(`list to ${handle}`);
      if (host.refusal) return { ok: false, problem: host.refusal };
      return { ok: true, value: { name: handle, folder: '/bench' } };
    },
    stopPaper: async () => undefined,
    listRecent: async () => [],
    noteRecent: async ({ handle }) => void asked.push(`note ${handle}`),
    forgetRecent: async () => undefined,
    chooseFolder: async () => host.chosen,
    moveLibrary: async () => ({ ok: true, value: null }),
    listLibrary: async () => {
      const files = [...sheets].map(([handle, { name }]) => ({ handle, name, modifiedMs: 0, bytes: 1 }));
      return { ok: true, value: { folder: '/sheets', usual: true, files, cut: false } };
    },
    readSheetHeads: async ({ handles }) => handles.map((handle) => headIn(sheets.get(handle)?.text, handle)),
    keepSheet: async ({ document, place }) => {
      asked.push(`keep ${place.kind === 'new' ? place.name : `over ${place.handle}`}`);
      if (host.refusal) return { ok: false, problem: host.refusal };
      const handle = place.kind === 'new' ? `${handleOf(place.name)}-${sheets.size}` : place.handle;
      const name = place.kind === 'new' ? place.name : (sheets.get(handle)?.name ?? handle);
      const text = laidOut(document);
      sheets.set(handle, { name, text });
      files.set(handle, { handle, name, folder: '/sheets', text, stamp: 'stamp-0', readOnly: false });
      return { ok: true, value: { handle, name } };
    },
    removeSheet: async ({ handle }) => {
      const name = sheets.get(handle)?.name ?? '';
      sheets.delete(handle);
      return { ok: true, value: { name, folder: '/sheets/removed' } };
    },
    readSettings: async () => ({ theme: 'system', largeType: false }),
    writeSettings: async () => undefined,
    keepRecovery: async (copy) => {
      copies.set(copy.session, copy);
      return { ok: true, value: null };
    },
    dropRecovery: async ({ id }) => void copies.delete(id),
    listRecovery: async () => [],
    takeRecovery: async ({ id }) => {
      const copy = copies.get(id);
      if (!copy) return { ok: false, problem: { code: 'not-found', name: id } };
      const { text, name, handle, stamp } = copy;
      return { ok: true, value: { text, name, handle, stamp } };
    },
    listVersions: async () =>
      [...versions].map(([id, text]) => ({ id, savedMs: Number.parseInt(id, 10), bytes: text.length })),
    readVersion: async ({ id }) => {
      const text = versions.get(id);
      return text === undefined
        ? { ok: false, problem: { code: 'not-found', name: id } }
        : { ok: true, value: { text } };
    },
    writeReport: async () => ({
      ok: true,
      value: { name: 'report.txt', folder: '/bench', text: 'A report' },
    }),
    showState: async () => undefined,
    onRequest: () => () => undefined,
  };
  return host;
}

/** A head as the machine makes it, of a sheet that is sound. */
function headIn(text: string | undefined, handle: string): Output<'readSheetHeads'>[number] {
  const parsed = parseDocument(text ?? '');
  if (!parsed.ok) return { outcome: 'unsound', handle, lines: ['It is broken.'], advice: 'Mend it.' };
  if (parsed.value.format === 'leadwright/build')
    return { outcome: 'build', handle, title: parsed.value.name };
  return { outcome: 'sheet', handle, ...sheetHead(parsed.value) };
}

export function handleOf(name: string): string {
  return `handle-of-${name.replace(/[^a-z0-9]/g, '-')}`;
}

/** The demo: the library bench's machine, every lead where it belongs. */
export function wiredBuild(): Build {
  const result = parseDocument(wiredText);
  if (!result.ok || result.value.format !== 'leadwright/build') throw new Error('The demo does not open');
  return result.value;
}

export interface TestBench extends Workbench {
  readonly host: StandIn;
  readonly build: () => Build;
  readonly run: (command: Command) => void;
  readonly said: () => string;
  /** Connectors that the canvas was asked to show, in order. */
  readonly shown: string[];
}

/** Stores and a stand-in machine, with the demo build open as if it came from a file. */
export function bench(build: Build = wiredBuild()): TestBench {
  const host = standIn();
  const editor = createEditor();
  const session = createSession();
  closeWithoutSubject(editor, session);
  const shown: string[] = [];
  const view: CanvasView = {
    zoomBy: () => undefined,
    bring: () => undefined,
    fitAll: () => undefined,
    panBy: () => undefined,
    show: (connectors) => void shown.push(...connectors),
  };
  let copies = 0;
  const recovery = keepRecovery(host, editor, {
    page: PAGE,
    newId: () => `recovery-copy-${++copies}`,
    onTrouble: (problem) => session.getState().tell(recoveryTroubleWords(problem)),
  });
  const file = {
    handle: handleOf('demo'),
    name: 'demo',
    folder: '/bench',
    stamp: 'stamp-0',
    readOnly: false,
  };
  editor.getState().load(build, file, build);
  const present = () => {
    const { open } = editor.getState();
    if (!open) throw new Error('Nothing is open');
    return open.history.present;
  };
  return {
    host,
    page: PAGE,
    about: { version: '0', door: 'electron', platform: 'linux', dialogs: 'native', toOpen: [] },
    editor,
    session,
    recovery,
    canvas: { current: view },
    build: present,
    shown,
    said: () => session.getState().announcement.text,
    run: (command) => {
      const result = editor.getState().run(command);
      if (!result.ok) throw new Error(JSON.stringify(result.problem));
    },
  };
}

/** The same bench with another answer of the machine to some calls. */
export function withHost(b: TestBench, calls: Partial<HostApi>): TestBench {
  return { ...b, host: { ...b.host, ...calls } };
}

/** The same bench with a disk that writes nothing until it is told to. */
export function withSlowDisk(b: TestBench): { readonly slow: TestBench; readonly write: () => void } {
  let write = () => {};
  const told = new Promise<void>((resolve) => {
    write = resolve;
  });
  const save: HostApi['save'] = async (input) => {
    await told;
    return b.host.save(input);
  };
  return { slow: withHost(b, { save }), write };
}

export const POWER_SWITCH = { lead: 'power-switch', plug: 'plug' } as const;

/** What the machine writes of the data that a page sends. */
function laidOut(document: unknown): string {
  const text = serializeData(document);
  if (!text.ok) throw new Error(`What was sent could not be opened again: ${text.problem.code}`);
  return text.value;
}
