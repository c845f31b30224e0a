/** Something that the program does not do, and what its own code would hold if it did. */
interface NeverDone {
  readonly what: string;
  readonly pattern: RegExp;
  /** The files that do it all the same, each with why it may. */
  readonly but?: Readonly<Record<string, string>>;
}

/** A module of Node by one of these names, however it is asked for. */
const module = (names: string) => new RegExp(`['"\`](?:node:)?(?:${names})(?:/\\w+)?['"\`]`);
const either = (...patterns: readonly RegExp[]) => new RegExp(patterns.map(({ source }) => source).join('|'));

/** What begins the program on a clone, sees to its tools and runs its tests. None of it is packaged. */
const ON_A_CLONE = {
  'electron/start/bench.mjs': 'runs a bench in a process of its own',
  'electron/start/browser-window.mjs': 'opens the system’s browser for `npm start -- --browser`',
  'electron/start/debian.mjs': 'asks Debian for what the tests need',
  'electron/start/electron-binary.mjs': 'runs Electron’s own installer',
  'electron/start/ensure-browser.mjs': 'asks the driver of the tests for a browser',
  'electron/start/ensure.mjs': 'runs npm where packages are missing',
  'electron/start/open-in-electron.mjs': 'starts Electron with this program',
  'electron/start/run-tool.mjs': 'runs the tools of `npm run check`',
  'electron/start/schemas.mjs': 'has the built command line print its schemas',
  'electron/start/test.mjs': 'starts the shell to see that it draws itself',
};

export const NEVER_DONE: readonly NeverDone[] = [
  {
    what: 'reads or writes archives',
    pattern: either(module('zlib'), /\b(?:Dec|C)ompressionStream\b|yauzl|adm-zip|from 'tar'/),
  },
  { what: 'decodes a picture in the main process', pattern: /nativeImage|from 'sharp'/ },
  {
    what: 'makes code out of text',
    pattern: either(
      /\beval\(|\bFunction\(|\b(?:setTimeout|setInterval)\(\s*['"`]|importScripts/,
      module('vm'),
    ),
  },
  {
    what: 'writes HTML out of text',
    pattern: /dangerouslySetInnerHTML|\.(?:inner|outer)HTML\s*=|insertAdjacentHTML|document\.write\(/,
  },
  {
    what: 'starts another program',
    pattern: either(module('child_process|cluster'), /utilityProcess|\bopenExternal\b|\bopenPath\b/),
    but: ON_A_CLONE,
  },
  {
    what: 'asks a host by the means of Node or Electron',
    pattern: either(
      module('http|https|http2|net|tls|dgram|dns'),
      /import \{[^}]*\bnet(?:Log)?\b[^}]*\} from 'electron'/,
    ),
    but: {
      'electron/browser/door.ts': 'listens on 127.0.0.1 and asks nobody',
      'electron/browser/guard.ts': 'knows the type of a request to the door',
      'electron/browser/json-body.ts': 'knows the type of a request to the door',
      'electron/browser/presence.ts': 'knows the type of an answer of the door',
      'electron/browser/serve.ts': 'knows the types of a request to the door, and of its answer',
    },
  },
  {
    what: 'asks a host by the means of a page',
    pattern: either(
      /(?<![\w.])fetch\(|(?:window|self|globalThis)\.fetch\b|XMLHttpRequest|\bEventSource\b|sendBeacon/,
      /\bWebSocket\b|\bWebTransport\b|\bRTCPeerConnection\b/,
    ),
    but: {
      'renderer/host/browser-host.ts': 'asks the door that served the page, by a path without a host',
      'renderer/fetched.ts': 'has a function of its own by that name, which loads a part of the page',
    },
  },
];
