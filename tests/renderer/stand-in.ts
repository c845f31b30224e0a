import type { Build } from '../../boards/document/build';
import { parseDocument } from '../../boards/document/parse';
import type { Command } from '../../boards/edit/command';
import type { HostApi, Input, Output } from '../../boards/host';
import wiredText from '../../boards/library/demo/wired.build.json?raw';
import type { CanvasView } from '../../renderer/canvas/canvas-props';
import { createEditor } from '../../renderer/store/editor';
import { keepRecovery } from '../../renderer/store/recovery';
import { createSession } from '../../renderer/store/session-store';
import type { Workbench } from '../../renderer/workbench';

type Opened = Extract<Output<'open'>, { ok: true }>['value'];

/** The machine as a test sees it: files by handle, and a record of what was asked of it. */
interface StandIn extends HostApi {
  readonly files: Map<string, Opened>;
  readonly copies: Map<string, Input<'keepRecovery'>>;
  readonly asked: string[];
  /** What the next save answers instead of saving. */
  refusal: Extract<Output<'save'>, { ok: false }>['problem'] | null;
  /** What the person picks in the system's dialogs. */
  chosen: string | null;
}

const NOTHING_CHOSEN = null;

function standIn(): StandIn {
  const files = new Map<string, Opened>();
  const copies = new Map<string, Input<'keepRecovery'>>();
  const asked: string[] = [];
  let stamps = 0;
  const host: StandIn = {
    files,
    copies,
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
    save: async ({ handle, text, expected }) => {
      asked.push(`save ${handle} over ${expected}`);
      if (host.refusal) return { ok: false, problem: host.refusal };
      const saved = { handle, name: handle, folder: '/bench', stamp: `stamp-${++stamps}` };
      files.set(handle, { ...saved, text, readOnly: false });
      return { ok: true, value: { ...saved, durable: true } };
    },
    listRecent: async () => [],
    noteRecent: async ({ handle }) => void asked.push(`note ${handle}`),
    forgetRecent: async () => undefined,
    readSettings: async () => ({ theme: 'system', largeType: false }),
    writeSettings: async () => undefined,
    keepRecovery: async (copy) => {
      copies.set(copy.session, copy);
      return { ok: true, value: null };
    },
    dropRecovery: async ({ id }) => void copies.delete(id),
    listRecovery: async () => [],
    readRecovery: async ({ id }) => {
      const copy = copies.get(id);
      if (!copy) return { ok: false, problem: { code: 'not-found', name: id } };
      const { text, name, handle, stamp } = copy;
      return { ok: true, value: { text, name, handle, stamp } };
    },
    showState: async () => undefined,
    onRequest: () => () => undefined,
  };
  return host;
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
  const shown: string[] = [];
  const view: CanvasView = {
    zoomBy: () => undefined,
    fitAll: () => undefined,
    panBy: () => undefined,
    show: (connectors) => void shown.push(...connectors),
  };
  let copies = 0;
  const recovery = keepRecovery(host, editor, () => `recovery-copy-${++copies}`);
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

export const POWER_SWITCH = { lead: 'power-switch', plug: 'plug' } as const;
