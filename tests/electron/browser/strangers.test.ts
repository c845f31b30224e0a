import { connect, type Socket } from 'node:net';
import { describe, expect, test } from 'vitest';
import { INPUT_LIMIT_BYTES } from '../../../electron/host/receive';
import { filesBelow } from '../files-below';
import { anOpenDoor, type OpenedDoor, tokenOf } from './an-open-door';
import { pourIn, type RawRequest } from './raw-request';

/** A request that would be answered, made wrong in one way. */
type Stranger = (opened: OpenedDoor, token: string) => RawRequest;

const get =
  (change: (opened: OpenedDoor) => RawRequest): Stranger =>
  (opened) =>
    change(opened);

/** A good call, with some of its headers changed. */
const call =
  (headers: (opened: OpenedDoor) => Record<string, string | null>, rest: RawRequest = {}): Stranger =>
  (opened, token) => ({
    method: 'POST',
    target: '/call/readSettings',
    body: '',
    ...rest,
    headers: { ...opened.own, 'X-Leadwright-Token': token, ...headers(opened) },
  });

const host = (name: string) => get(({ port }) => ({ headers: { Host: name.replace('PORT', String(port)) } }));
const origin = (name: string) => call(({ port }) => ({ Origin: name.replace('PORT', String(port)) }));
const target = (address: string) => get(({ port }) => ({ target: address.replace('PORT', String(port)) }));

const STRANGERS: Readonly<Record<string, Stranger>> = {
  'no Host': get(() => ({ headers: { Host: null } })),
  'HTTP/1.0 without Host': get(() => ({ protocol: 'HTTP/1.0', headers: { Host: null } })),
  'HTTP/1.0 with the right Host': get(() => ({ protocol: 'HTTP/1.0' })),
  'two Hosts, the first one right': get(() => ({ more: ['Host: evil.test'] })),
  'the Host localhost': host('localhost:PORT'),
  'the Host localhost with a full stop': host('localhost.:PORT'),
  'the Host 0.0.0.0': host('0.0.0.0:PORT'),
  'the Host [::1]': host('[::1]:PORT'),
  'the Host 127.1': host('127.1:PORT'),
  'the Host 127.0.0.1 as one number': host('2130706433:PORT'),
  'the Host in octal': host('0177.0.0.1:PORT'),
  'a name that was made to lead here': host('evil.test:PORT'),
  'a name with our address in it': host('127.0.0.1.evil.test:PORT'),
  'the Host with another port': host('127.0.0.1:1'),
  'the Host without a port': host('127.0.0.1'),
  'the Host with a user': host('127.0.0.1:PORT@evil.test'),
  'the Host with a user before it': host('evil.test@127.0.0.1:PORT'),
  'the Host with a comma': host('127.0.0.1:PORT, evil.test'),
  'a GET with a body': get(() => ({ body: 'x' })),
  'a script of another site loading ours': get(() => ({
    target: '/page.js',
    headers: { 'Sec-Fetch-Site': 'cross-site', 'Sec-Fetch-Mode': 'no-cors', 'Sec-Fetch-Dest': 'script' },
  })),
  'a frame of another site': get(() => ({
    headers: { 'Sec-Fetch-Site': 'cross-site', 'Sec-Fetch-Mode': 'navigate', 'Sec-Fetch-Dest': 'iframe' },
  })),
  'a page of another port on this machine': get(() => ({
    target: '/page.js',
    headers: { 'Sec-Fetch-Site': 'same-site', 'Sec-Fetch-Mode': 'no-cors' },
  })),
  'an absolute address': target('http://127.0.0.1:PORT/'),
  'an address of another host': target('http://evil.test/'),
  'two slashes': target('//'),
  'two slashes and a host': target('//evil.test/'),
  'a way up': target('/../secret.txt'),
  'a way up in percent signs': target('/%2e%2e/secret.txt'),
  'a file of the folder that is not listed': target('/secret.txt'),
  'a question mark': target('/page.js?raw'),
  'a number sign': target('/page.js#x'),
  'a NUL in percent signs': target('/page.js%00'),
  'a backslash': target('/..\\secret.txt'),
  'a semicolon': target('/page.js;x'),
  'an address of 64 kB': target(`/${'a'.repeat(65_536)}`),
  'a header of 64 kB': get(() => ({ headers: { 'X-Long': 'a'.repeat(65_536) } })),
  'a call as a GET': (opened, token) => ({
    target: '/call/readSettings',
    headers: { ...opened.own, 'X-Leadwright-Token': token },
  }),
  OPTIONS: call(() => ({}), { method: 'OPTIONS' }),
  'OPTIONS from another site': call(
    () => ({ Origin: 'http://evil.test', 'Access-Control-Request-Method': 'POST' }),
    {
      method: 'OPTIONS',
    },
  ),
  TRACE: call(() => ({}), { method: 'TRACE' }),
  PUT: call(() => ({}), { method: 'PUT' }),
  HEAD: call(() => ({}), { method: 'HEAD' }),
  'a method nobody knows': call(() => ({}), { method: 'BREW' }),
  'no Origin': call(() => ({ Origin: null })),
  'the Origin null': origin('null'),
  'the Origin of another site': origin('http://evil.test'),
  'the Origin with another port': origin('http://127.0.0.1:1'),
  'the Origin with https': origin('https://127.0.0.1:PORT'),
  'the Origin localhost': origin('http://localhost:PORT'),
  'our Origin as a beginning': origin('http://127.0.0.1:PORT.evil.test'),
  'our Origin with a slash': origin('http://127.0.0.1:PORT/'),
  'two Origins': call(() => ({}), { more: ['Origin: http://evil.test'] }),
  'no word of where it comes from': call(() => ({ 'Sec-Fetch-Site': null })),
  'another site by its own word': call(() => ({ 'Sec-Fetch-Site': 'cross-site' })),
  'the same site, but not the same origin': call(() => ({ 'Sec-Fetch-Site': 'same-site' })),
  'no token': call(() => ({ 'X-Leadwright-Token': null })),
  'an empty token': call(() => ({ 'X-Leadwright-Token': '' })),
  'the token of an earlier start': call(() => ({ 'X-Leadwright-Token': 'A'.repeat(43) })),
  'the token with a letter more': (opened, token) =>
    call(() => ({ 'X-Leadwright-Token': `${token}A` }))(opened, token),
  'the token in the address': (opened, token) =>
    call(() => ({ 'X-Leadwright-Token': null }), { target: `/call/readSettings?token=${token}` })(
      opened,
      token,
    ),
  'the token in a cookie': (opened, token) =>
    call(() => ({ 'X-Leadwright-Token': null, Cookie: `x-leadwright-token=${token}` }))(opened, token),
  'a form': call(() => ({ 'Content-Type': 'application/x-www-form-urlencoded' })),
  'plain text': call(() => ({ 'Content-Type': 'text/plain' })),
  'a form in parts': call(() => ({ 'Content-Type': 'multipart/form-data; boundary=x' })),
  'JSON with a charset': call(() => ({ 'Content-Type': 'application/json; charset=utf-7' })),
  'no kind of content': call(() => ({ 'Content-Type': null })),
  'a compressed body': call(() => ({ 'Content-Encoding': 'gzip' })),
  // As empty as the good one is: nothing else is wrong with it.
  'a body of unknown length': call(() => ({ 'Transfer-Encoding': 'chunked' }), { body: '0\r\n\r\n' }),
  'a body of two lengths': call(() => ({ 'Content-Length': '0', 'Transfer-Encoding': 'chunked' }), {
    body: '0\r\n\r\n',
  }),
  'a gigabyte to come': call(() => ({ 'Content-Length': '1073741824' })),
  'a length that is no number': call(() => ({ 'Content-Length': 'many' })),
  'a body that is not JSON': call(() => ({}), { body: '{' }),
  'a channel nobody knows': call(() => ({}), { target: '/call/exec' }),
  'a channel of the language': call(() => ({}), { target: '/call/__proto__' }),
  'a channel with a slash': call(() => ({}), { target: '/call/readSettings/' }),
  'no channel': call(() => ({}), { target: '/call/' }),
  'an input the channel does not take': call(() => ({}), { body: '{"handle":"/etc/passwd"}' }),
  'a path for a handle': call(() => ({}), { target: '/call/open', body: '{"handle":"/etc/passwd"}' }),
  'a wrong start code': call(() => ({}), { target: '/start', body: `"${'A'.repeat(43)}"` }),
  'no start code': call(() => ({}), { target: '/start', body: '' }),
  'a start code that is no text': call(() => ({}), { target: '/start', body: '{"toString":1}' }),
  'a megabyte for a start code, to come': call(() => ({ 'Content-Length': '1048576' }), { target: '/start' }),
  'a megabyte for the name of a page, to come': call(() => ({ 'Content-Length': '1048576' }), {
    target: '/alive',
  }),
  'a megabyte to come for no address': call(() => ({ 'Content-Length': '1048576' }), { target: '/other' }),
  'a call as long as calls may be, to come without the token': call(() => ({
    'Content-Length': '134217728',
    'X-Leadwright-Token': null,
  })),
  'a file by POST': call(() => ({}), { target: '/page.js' }),
};

test('There are more than sixty kinds of stranger', () => {
  expect(Object.keys(STRANGERS).length).toBeGreaterThan(60);
});

/** What a page of ours asks for: the requests that each stranger makes wrong in one way, and a few more. */
async function expectGoodOnes(opened: OpenedDoor, token: string): Promise<void> {
  const post = call(() => ({}))(opened, token);
  const good: readonly RawRequest[] = [
    {},
    { target: '/page.js' },
    post,
    { ...post, target: '/call/listRecent' },
    { ...post, target: '/call/about', body: '{"page":"page-of-the-window"}' },
  ];
  for (const request of good) expect((await opened.send(request)).status).toBe(200);
}

describe('A stranger is refused where the same request, made right, is answered', () => {
  test.each(Object.entries(STRANGERS))('%s', async (_name, stranger) => {
    const opened = await anOpenDoor();
    const token = await tokenOf(opened);
    await expectGoodOnes(opened, token);
    const before = filesBelow(opened.folder);
    const answer = await opened.send(stranger(opened, token));
    expect(answer.status).toBeGreaterThanOrEqual(400);
    expect(answer.status).toBeLessThan(500);
    expect(answer.head).not.toMatch(/access-control|set-cookie/i);
    expect(answer.body).not.toContain('not listed');
    expect(filesBelow(opened.folder)).toEqual(before);
    expect(before).not.toEqual([]);
  });
});

test('What is sent to an address that is no call is refused by its length, before a byte of it has come', async () => {
  const opened = await anOpenDoor();
  const headers = { ...opened.own, 'X-Leadwright-Token': await tokenOf(opened) };
  const status = async (target: string, bytes: number) =>
    (await opened.send({ method: 'POST', target, headers: { ...headers, 'Content-Length': `${bytes}` } }))
      .status;
  expect(await status('/start', 1025)).toBe(413);
  expect(await status('/alive', 1025)).toBe(413);
  const code = JSON.stringify('A'.repeat(1022));
  expect((await opened.send({ method: 'POST', target: '/start', headers, body: code })).status).toBe(401);
});

test('A start code is good for one page', async () => {
  const { door, send, own } = await anOpenDoor();
  const code = new URL(door.startUrl()).hash.slice(1);
  const request = { method: 'POST', target: '/start', headers: own, body: JSON.stringify(code) };
  expect((await send(request)).status).toBe(200);
  expect((await send(request)).status).toBe(401);
});

test('A body without a stated length is refused by its head, and is not taken in', async () => {
  const opened = await anOpenDoor();
  const token = await tokenOf(opened);
  const before = filesBelow(opened.folder);
  const piece = `${(1024 * 1024).toString(16)}\r\n${' '.repeat(1024 * 1024)}\r\n`;
  const pieces = Math.ceil((2 * INPUT_LIMIT_BYTES) / piece.length);
  const request = call(() => ({ 'Transfer-Encoding': 'chunked' }), { body: '' })(opened, token);
  const { heard, taken } = await pourIn(opened.port, request, piece, pieces);
  expect(heard).toMatch(/^HTTP\/1\.1 411 /);
  // What lies in the buffers of both ends is taken by the system, and not by the door.
  expect(taken).toBeLessThan(INPUT_LIMIT_BYTES / 4);
  expect(filesBelow(opened.folder)).toEqual(before);
  await expectGoodOnes(opened, token);
});

test('Those who say nothing, or spell out a header without end, keep nobody out and are sent away', async () => {
  const opened = await anOpenDoor();
  const token = await tokenOf(opened);
  const still = new Set<Socket>();
  const come = (many: number, dribbles: boolean) => {
    for (let at = 0; at < many; at++) {
      const socket = connect(opened.port, '127.0.0.1').on('error', () => undefined);
      still.add(socket);
      socket.on('close', () => still.delete(socket));
      // What the door answers is heard, so that its end is heard too.
      socket.resume();
      if (dribbles) socket.write('GET / HTTP/1.1\r\nX-Slow: ');
    }
  };
  const dribbling = setInterval(() => {
    for (const socket of still) if (socket.bytesWritten > 0) socket.write('a');
  }, 50);
  try {
    come(25, true);
    come(25, false);
    await expectGoodOnes(opened, token);
    // The door loses its patience with some sooner where the machine is slow.
    expect(still.size).toBeGreaterThan(0);
    // More than the door takes at once: now others wait, until the door has lost its patience with these.
    come(150, true);
    await expect.poll(() => still.size, { timeout: 30_000 }).toBe(0);
    await expectGoodOnes(opened, token);
  } finally {
    clearInterval(dribbling);
    for (const socket of still) socket.destroy();
  }
});

test('Nobody listens on any other address of this machine', async () => {
  const { port } = await anOpenDoor();
  const refused = await new Promise((resolve) => {
    connect(port, '127.1.2.3')
      .on('connect', () => resolve(false))
      .on('error', () => resolve(true));
  });
  expect(refused).toBe(true);
});
