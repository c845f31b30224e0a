import { CHANNELS } from '../../../../boards/host';
import type { Evidence, Point } from './evidence';

/**
 * The twenty recommendations of Electron's own page on security
 * (https://www.electronjs.org/docs/latest/tutorial/security, read in August 2026), each as something that
 * can be found broken.
 */
export const POINTS: readonly Point[] = [
  {
    number: 1,
    title: 'Only load secure content',
    broken: ({ window, schemes, sources }) => [
      ...unless(sameAs(window.loaded, ['app://leadwright/']), `the window loads ${window.loaded}`),
      ...unless(JSON.stringify(schemes).includes('"secure":true'), 'the scheme is not as strict as https'),
      ...codeThat(sources, 'electron/', /['"`](?:http|ws):\/\//, 'names an address that is not secure'),
    ],
  },
  {
    number: 2,
    title: 'No Node in the page, in its workers or its frames',
    broken: ({ window }) => [
      ...set(window, 'nodeIntegration', false),
      ...set(window, 'nodeIntegrationInWorker', false),
      ...set(window, 'nodeIntegrationInSubFrames', false),
    ],
  },
  {
    number: 3,
    title: 'Context isolation',
    broken: ({ window }) => set(window, 'contextIsolation', true),
  },
  {
    number: 4,
    title: 'Process sandboxing',
    broken: ({ window, sandboxed, sources }) => [
      ...unless(sandboxed, 'the sandbox is not asked for before the program is ready'),
      ...set(window, 'sandbox', true),
      ...codeThat(sources, 'electron/', /no-sandbox/, 'does without the sandbox'),
    ],
  },
  { number: 5, title: 'Permissions are denied', broken: permissions },
  { number: 6, title: 'Web security is on', broken: ({ window }) => set(window, 'webSecurity', true) },
  { number: 7, title: 'A content security policy', broken: policy },
  {
    number: 8,
    title: 'No insecure content',
    broken: ({ window }) => unset(window, 'allowRunningInsecureContent'),
  },
  {
    number: 9,
    title: 'No experimental features',
    broken: ({ window }) => unset(window, 'experimentalFeatures'),
  },
  {
    number: 10,
    title: 'No features of the engine switched on',
    broken: ({ window }) => unset(window, 'enableBlinkFeatures'),
  },
  {
    number: 11,
    title: 'No web view that opens windows',
    broken: ({ sources }) => [
      ...codeThat(sources, 'renderer/', /<webview|allowpopups/, 'holds a web view'),
      ...codeThat(sources, 'electron/', /allowpopups/, 'lets a web view open windows'),
    ],
  },
  {
    number: 12,
    title: 'No web view at all',
    broken: ({ window }) => [
      ...set(window, 'webviewTag', false),
      ...unless(isPrevented(window, 'will-attach-webview', {}), 'a web view may be attached'),
    ],
  },
  { number: 13, title: 'No navigation away from the page', broken: navigation },
  {
    number: 14,
    title: 'No new windows',
    broken: ({ window }) =>
      unless(
        sameAs(window.webContents.openHandler({ url: 'https://evil.test/' } as never), { action: 'deny' }),
        'a second window may be opened',
      ),
  },
  {
    number: 15,
    title: 'Nothing is opened outside with what a document says',
    broken: ({ sources }) =>
      codeThat(sources, 'electron/', /openExternal|openPath/, 'opens something outside'),
  },
  {
    number: 16,
    title: 'One exact version of Electron',
    broken: ({ sources }) => {
      const { devDependencies } = JSON.parse(sources.get('package.json') ?? '{}');
      const version: unknown = devDependencies?.electron;
      return unless(typeof version === 'string' && /^\d+\.\d+\.\d+$/.test(version), `it is ${version}`);
    },
  },
  { number: 17, title: 'Calls come from our own page only', broken: senders },
  { number: 18, title: 'A scheme of our own, and no file:', broken: schemes },
  {
    number: 19,
    title: 'Fuses',
    broken: ({ fuses }) =>
      unless(
        sameAs(fuses, {
          runAsNode: false,
          enableCookieEncryption: true,
          enableNodeOptionsEnvironmentVariable: false,
          enableNodeCliInspectArguments: false,
          enableEmbeddedAsarIntegrityValidation: true,
          onlyLoadAppFromAsar: true,
          loadBrowserProcessSpecificV8Snapshot: false,
          grantFileProtocolExtraPrivileges: false,
        }),
        JSON.stringify(fuses),
      ),
  },
  { number: 20, title: 'Nothing of Electron reaches the page', broken: bridge },
];

function unless(holds: boolean, otherwise: string): readonly string[] {
  return holds ? [] : [otherwise];
}

function sameAs(found: unknown, wanted: unknown): boolean {
  return JSON.stringify(found) === JSON.stringify(wanted);
}

function preferences({ options }: Evidence['window']): Record<string, unknown> {
  return (options.webPreferences ?? {}) as Record<string, unknown>;
}

function set(window: Evidence['window'], name: string, wanted: boolean): readonly string[] {
  const found = preferences(window)[name];
  return unless(found === wanted, `${name} is ${found}`);
}

function unset(window: Evidence['window'], name: string): readonly string[] {
  return unless(!Object.hasOwn(preferences(window), name), `${name} is set`);
}

function codeThat(
  sources: Evidence['sources'],
  folder: string,
  pattern: RegExp,
  does: string,
): readonly string[] {
  return [...sources]
    .filter(([path, text]) => path.startsWith(folder) && pattern.test(text))
    .map(([path]) => `${path} ${does}`);
}

function isPrevented(window: Evidence['window'], event: string, about: object): boolean {
  let prevented = false;
  window.webContents.emit(event, { ...about, preventDefault: () => (prevented = true) });
  return prevented;
}

/** Names of permissions as Electron's session has them. */
const PERMISSIONS = [
  'clipboard-read',
  'clipboard-sanitized-write',
  'display-capture',
  'fullscreen',
  'geolocation',
  'hid',
  'idle-detection',
  'media',
  'mediaKeySystem',
  'midi',
  'midiSysex',
  'notifications',
  'pointerLock',
  'keyboardLock',
  'openExternal',
  'serial',
  'speaker-selection',
  'storage-access',
  'top-level-storage-access',
  'window-management',
  'fileSystem',
  'usb',
  'unknown',
];

function permissions({ window }: Evidence): readonly string[] {
  const { request, check, device } = window.webContents.session.permissions as Record<
    string,
    ((...given: unknown[]) => unknown) | undefined
  >;
  const granted = PERMISSIONS.filter((name) => {
    let answer: unknown = request === undefined;
    request?.(null, name, (yes: unknown) => {
      answer = yes;
    });
    return answer !== false || check?.(null, name) !== false;
  });
  return [
    ...granted.map((name) => `${name} is granted`),
    ...unless(device?.({ deviceType: 'usb' }) === false, 'devices are granted'),
  ];
}

/** As it has to be, letter by letter. */
const POLICY =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:; font-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'; require-trusted-types-for 'script'";

function policy({ served }: Evidence): readonly string[] {
  const answer = served.get('app')?.(new Request('app://leadwright/'));
  const found = answer?.headers.get('content-security-policy');
  return unless(found === POLICY, `the policy is ${found}`);
}

const ELSEWHERE = [
  'https://evil.test/',
  'http://127.0.0.1/',
  'file:///etc/passwd',
  'app://leadwright/other',
  'app://leadwright.evil/',
  'about:blank',
  'data:text/html,x',
  'javascript:void 0',
];

function navigation({ window }: Evidence): readonly string[] {
  const events = ['will-navigate', 'will-frame-navigate', 'will-redirect'];
  const let_ = events.flatMap((event) =>
    ELSEWHERE.filter((url) => !isPrevented(window, event, { url, isMainFrame: true })).map(
      (url) => `${event} lets it go to ${url}`,
    ),
  );
  return [...let_, ...set(window, 'navigateOnDragDrop', false)];
}

async function senders({ answersTo, window }: Evidence): Promise<readonly string[]> {
  const { mainFrame } = window.webContents;
  const strangers: readonly (readonly [string, unknown])[] = [
    ['a frame in the page', { origin: 'app://leadwright' }],
    ['a frame that is gone', null],
    ...['', 'null', 'about:blank', 'file://', 'https://evil.test', 'app://leadwright.evil'].map(
      (origin) => [`a page at “${origin}”`, { origin }] as const,
    ),
  ];
  const answered: string[] = [];
  for (const [who, frame] of strangers) if (await answersTo(frame)) answered.push(`${who} is answered`);
  const { origin } = mainFrame;
  for (const other of ['', 'null', 'file://', 'https://evil.test']) {
    mainFrame.origin = other;
    if (await answersTo(mainFrame)) answered.push(`our window is answered at “${other}”`);
  }
  mainFrame.origin = origin;
  return [...answered, ...unless(await answersTo(mainFrame), 'our own page is not answered')];
}

function schemes({ served }: Evidence): readonly string[] {
  const file = served.get('file')?.(new Request('http://stands-for-a-file/'));
  const outside = ['app://leadwright/../package.json', 'app://leadwright/%2e%2e/x', 'app://elsewhere/'];
  return [
    ...unless(file?.status === 403, 'the disk is served by its paths'),
    ...outside
      .filter((url) => served.get('app')?.(new Request(url)).status !== 404)
      .map((url) => `something is at ${url}`),
  ];
}

function bridge({ bridge, exposed, heard }: Evidence): readonly string[] {
  const wanted = [...Object.keys(CHANNELS), 'onRequest'].sort();
  return [
    ...unless(sameAs(exposed, ['leadwright']), `the page is given ${exposed}`),
    ...unless(sameAs(Object.keys(bridge).sort(), wanted), `the bridge has ${Object.keys(bridge)}`),
    ...unless(
      Object.values(bridge).every((each) => typeof each === 'function'),
      'the bridge has more than functions',
    ),
    ...unless(sameAs(heard, [[{ kind: 'leave' }]]), `a listener hears ${JSON.stringify(heard)}`),
  ];
}
