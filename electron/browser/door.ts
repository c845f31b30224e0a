import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { homedir } from 'node:os';
import { hostCalls } from '../host/calls';
import { DISK } from '../host/file-system';
import { type HostOptions, openHost } from '../host/host';
import { loadPageFiles } from '../host/page-files';
import { workEnded } from '../host/under-way';
import { pageDoor } from './page-door';
import { watchPresence } from './presence';
import { serve } from './serve';
import { makeKeys } from './token';

/** The window in the system's browser, for a machine without Electron. */
export interface BrowserDoor {
  /** Where to send the browser. Works once, for half a minute; each reading makes a new one. */
  readonly startUrl: () => string;
  /** Settles when a page has shown itself. */
  readonly shown: Promise<void>;
  /** Settles when the door has closed, by `close` or because no page was there any more, and its work is done. */
  readonly ended: Promise<void>;
  readonly close: () => void;
}

export interface BrowserDoorOptions {
  readonly pageFolder: string;
  readonly pageNames: readonly string[];
  readonly version: string;
  /** Reads a file of the kit that paper is made with. */
  readonly readPaperFile: HostOptions['readPaperFile'];
  /** Paths of files to open at the start. */
  readonly toOpen: readonly string[];
  readonly env?: Readonly<Record<string, string | undefined>>;
  readonly report?: (thrown: unknown) => void;
}

/** Opens the door on this machine only, at a port nobody knows beforehand. */
export async function openBrowserDoor(options: BrowserDoorOptions): Promise<BrowserDoor> {
  const shown = makeSignal();
  const ended = makeSignal();
  const keys = makeKeys();
  const host = openHost({
    fs: DISK,
    version: options.version,
    toOpen: options.toOpen,
    readPaperFile: options.readPaperFile,
    surroundings: { platform: process.platform, home: homedir(), env: options.env ?? process.env },
    door: pageDoor(shown.give),
  });
  const presence = watchPresence(close, { begin: host.recovery.beginPage, end: host.recovery.endPage });
  const served = {
    files: await loadPageFiles(options.pageFolder, options.pageNames),
    calls: hostCalls(host),
    keys,
    presence,
    port: () => port,
    report: (thrown: unknown) => {
      (options.report ?? console.error)(thrown);
      const { name, message, stack = '' } = thrown instanceof Error ? thrown : new Error();
      void host.underWay.add(host.reports.write({ part: 'machine', name, message, stack }));
    },
  };
  const server = createServer(LIMITS, (request, response) => {
    serve(served, request, response).catch(() => response.destroy());
  });
  server.maxConnections = 64;
  const port = await listen(server);

  function close(): void {
    presence.end();
    server.close(() => void workEnded(host).then(ended.give));
    server.closeAllConnections();
  }

  return {
    startUrl: () => `http://127.0.0.1:${port}/#${keys.issueCode()}`,
    shown: shown.given,
    ended: ended.given,
    close,
  };
}

/** Against a client that opens many connections and dawdles on each. */
const LIMITS = {
  maxHeaderSize: 8 * 1024,
  headersTimeout: 5_000,
  requestTimeout: 30_000,
  keepAliveTimeout: 5_000,
  connectionsCheckingInterval: 1_000,
};

function listen(server: ReturnType<typeof createServer>): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen({ host: '127.0.0.1', port: 0, exclusive: true }, () => {
      resolve((server.address() as AddressInfo).port);
    });
  });
}

/** Something that happens once and can be waited for. */
function makeSignal(): { readonly give: () => void; readonly given: Promise<void> } {
  let give = (): void => undefined;
  const given = new Promise<void>((resolve) => {
    give = () => resolve();
  });
  return { give, given };
}
