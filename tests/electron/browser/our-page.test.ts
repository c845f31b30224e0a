import { connect } from 'node:net';
import { setTimeout as wait } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { CHANNELS } from '../../../boards/host';
import { watchPresence } from '../../../electron/browser/presence';
import { makeKeys } from '../../../electron/browser/token';
import { bareBoard, bareSheet } from '../scratch';
import { anOpenDoor, tokenOf } from './an-open-door';

const PAGE = 'page-of-the-window';

test('Our page is served with a policy that lets it do nothing but talk to its door', async () => {
  const { send } = await anOpenDoor();
  const { status, head, body } = await send({ target: '/' });
  expect(status).toBe(200);
  expect(body).toBe('<!doctype html><title>Page</title>');
  const [, ...lines] = head.split('\r\n');
  // Exactly these, letter by letter; what else there is is of the connection.
  expect(lines.filter((line) => !/^(Date|Connection|Content-Length): /.test(line)).sort()).toEqual([
    'Cache-Control: no-store',
    "Content-Security-Policy: default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:; font-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'; require-trusted-types-for 'script'",
    'Content-Type: text/html; charset=utf-8',
    'Cross-Origin-Opener-Policy: same-origin',
    'Cross-Origin-Resource-Policy: same-origin',
    'Referrer-Policy: no-referrer',
    'X-Content-Type-Options: nosniff',
  ]);
});

test('A person may come to it by a link from elsewhere', async () => {
  const { send } = await anOpenDoor();
  const headers = {
    'Sec-Fetch-Site': 'cross-site',
    'Sec-Fetch-Mode': 'navigate',
    'Sec-Fetch-Dest': 'document',
  };
  expect((await send({ headers })).status).toBe(200);
});

test('Our page opens and saves the file that was named at the start', async () => {
  const opened = await anOpenDoor();
  const headers = { ...opened.own, 'X-Leadwright-Token': await tokenOf(opened) };
  const ask = async (channel: string, input?: unknown): Promise<unknown> => {
    const body = input === undefined ? '' : JSON.stringify(input);
    const answer = await opened.send({ method: 'POST', target: `/call/${channel}`, headers, body });
    expect(answer.status).toBe(200);
    return answer.body === '' ? undefined : JSON.parse(answer.body);
  };
  const about = CHANNELS.about.output.parse(await ask('about', { page: PAGE }));
  expect(about).toMatchObject({ door: 'browser', dialogs: 'page', version: '0.0.1' });
  const read = CHANNELS.open.output.parse(await ask('open', { handle: about.toOpen[0] }));
  if (!read.ok) throw new Error(read.problem.code);
  const { handle, stamp } = read.value;
  const saved = CHANNELS.save.output.parse(
    await ask('save', { handle, document: bareSheet('Ω – Bare'), expected: stamp }),
  );
  expect(saved).toMatchObject({ ok: true, value: { name: 'bare.board.json' } });
  const session = 'session-of-the-page';
  const work = { session, page: PAGE, handle, stamp, name: 'Bare', text: bareBoard('x'), changes: 1 };
  expect(CHANNELS.keepRecovery.output.parse(await ask('keepRecovery', work))).toEqual({
    ok: true,
    value: null,
  });
  expect(
    CHANNELS.showState.output.parse(await ask('showState', { name: 'Bare', unsaved: true })),
  ).toBeUndefined();
  await opened.door.shown;
});

test('A start code is too old after half a minute', () => {
  let now = 0;
  const keys = makeKeys(() => now);
  const code = keys.issueCode();
  now = 30_001;
  expect(keys.redeem(code)).toBeNull();
});

test('A new start code makes the one before it worthless', () => {
  const keys = makeKeys();
  const [first, second] = [keys.issueCode(), keys.issueCode()];
  expect(keys.redeem(first)).toBeNull();
  expect(keys.isToken(keys.redeem(second) ?? '')).toBe(true);
});

test('The door knows that its page is there for as long as one request stays open', async () => {
  const opened = await anOpenDoor();
  const token = await tokenOf(opened);
  const socket = connect(opened.port, '127.0.0.1');
  const lines = Object.entries({ ...opened.own, 'X-Leadwright-Token': token }).map(
    ([name, value]) => `${name}: ${value}`,
  );
  socket.write(
    ['POST /alive HTTP/1.1', `Host: 127.0.0.1:${opened.port}`, 'Content-Length: 0', ...lines, '', ''].join(
      '\r\n',
    ),
  );
  const first = await new Promise<string>((resolve) =>
    socket.once('data', (data) => resolve(data.toString())),
  );
  expect(first).toContain('200 OK');
  opened.door.close();
  await new Promise((resolve) => socket.once('close', resolve));
});

test('A door whose page has gone, or never came, closes after its time of grace', async () => {
  let gone = 0;
  const presence = watchPresence(() => gone++, { begin: () => undefined, end: () => undefined }, 50);
  await wait(120);
  expect(gone).toBe(1);
  presence.end();
});
