import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BuildZ } from '../../boards/document/build';
import { CHANNELS } from '../../boards/host';
import type { Request } from '../../electron/cli/request';
import { inRoot } from '../../electron/start/place.mjs';
import { everythingOf } from '../boards/document/frozen-files';
import { withEveryText } from '../strangers/every-text';
import { everyCall } from './network/door-calls';
import { elsewhere, openWatch, type Watch } from './network/watch';
import { whyNoShim } from './shim/shim';

const why = whyNoShim();
if (why !== null) console.warn(`The program under a watch of the network: not run, ${why}.`);

/** Addresses that are nobody's (RFC 5737, RFC 2606), as a stranger might write them into a file. */
const ADDRESSES = [
  'http://192.0.2.1/build.schema.json',
  'https://name.invalid/x',
  '//192.0.2.1/share/x',
  '\\\\name.invalid\\share\\x',
  'file://192.0.2.1/x',
  '192.0.2.1',
];

/** A build with every field there is, each text of which is an address elsewhere. */
function addressed(): string {
  const textFor = (place: number) => ADDRESSES[place % ADDRESSES.length] ?? '';
  return JSON.stringify(withEveryText(BuildZ, JSON.parse(everythingOf('build')), textFor));
}

/** Every command of the command line, on such a build; a word with three letters behind a point is where a paper goes. */
const COMMANDS: Readonly<Record<Request['command'], readonly (readonly string[])[]>> = {
  check: [['check', 'FILE', '--json']],
  explain: [['check', 'FILE', '--explain', 'seat-impossible']],
  plan: [['plan', 'FILE', '--json']],
  list: [
    ['list', 'FILE'],
    ['list', 'FILE', '--cables', '--csv'],
  ],
  identify: [['identify', 'FILE', '--json']],
  diagnose: [['diagnose', 'FILE', '--observe', 'nothing-on-press', '--json']],
  schema: [['schema', 'build']],
  help: [['--help']],
  version: [['--version']],
  sheet: [
    ['sheet', 'FILE', '--out', 'bench.pdf'],
    ['sheet', 'FILE', '--out', 'bench.png', '--page', '1'],
    ['sheet', 'FILE', '--pinout', '--out', 'pinout.svg', '--page', '1'],
    ['sheet', 'FILE', '--trouble', '--out', 'trouble.pdf'],
    ['sheet', 'FILE', '--labels', '--out', 'labels.pdf'],
  ],
};

describe.skipIf(why !== null)('a program under a watch of every address that it asks the system for', () => {
  let watch: Watch;
  let file = '';
  beforeAll(() => {
    watch = openWatch();
    file = join(watch.home, 'desk.build.json');
    writeFileSync(file, addressed());
  });
  afterAll(() => watch.close());

  it.each([
    [
      'connects to',
      "require('node:net').connect(9, '192.0.2.1').on('error', () => {})",
      'connect inet 192.0.2.1',
    ],
    [
      'connects to by IPv6',
      "require('node:net').connect(9, '2001:db8::1').on('error', () => {})",
      'connect inet6 2001:db8::1',
    ],
    ['looks up', "require('node:dns').lookup('name.invalid', () => {})", 'getaddrinfo name name.invalid'],
    ['fetches from', "fetch('http://name.invalid/').catch(() => {})", 'getaddrinfo name name.invalid'],
    [
      'sends a packet to',
      "const s = require('node:dgram').createSocket('udp4'); s.bind(0, '127.0.0.1', () => s.send('x', 9, '192.0.2.1', () => s.close()))",
      'inet 192.0.2.1',
    ],
    [
      'listens for',
      "require('node:net').createServer().listen(0, '0.0.0.0', function () { this.close() }).on('error', () => {})",
      'bind inet 0.0.0.0',
    ],
    [
      'has another program connect to',
      "require('node:child_process').spawnSync(process.execPath, ['-e', \"require('node:net').connect(9, '192.0.2.1').on('error', () => {})\"])",
      'connect inet 192.0.2.1',
    ],
  ])('is seen when it %s somebody', async (_, code, wanted) => {
    const script = join(watch.home, 'asks.cjs');
    writeFileSync(script, code);
    await watch.run(script, []);
    expect(elsewhere(watch.reached()).join('\n')).toContain(wanted);
  });

  it.each(
    Object.values(COMMANDS)
      .flat()
      .map((words) => [words.join(' '), words]),
  )('leadwright %s asks for none elsewhere', async (_, words) => {
    watch.reached();
    const args = words.map((word) =>
      word === 'FILE' ? file : /\.\w{3}$/.test(word) ? join(watch.home, word) : word,
    );
    const { code, err } = await watch.run(inRoot('dist', 'leadwright.mjs'), args);
    expect([0, 1], err).toContain(code);
    expect(elsewhere(watch.reached())).toEqual([]);
  });

  it('the door asks for none elsewhere, from its start to its end, whatever its page calls', async () => {
    watch.reached();
    const door = await watch.begin(inRoot('tests', 'size', 'door-apart.mjs'), [file]);
    const asked = await everyCall(door.url);
    await door.end();
    expect([...asked].sort()).toEqual(Object.keys(CHANNELS).sort());
    const reached = watch.reached();
    expect(elsewhere(reached)).toEqual([]);
    // It listens, and so the watch was there.
    expect(reached).toContain('bind inet 127.0.0.1');
  });
});
