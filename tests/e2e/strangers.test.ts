import { mkdtempSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type BrowserDoor, openBrowserDoor } from '../../electron/browser/door';
import { findBrowser } from '../../electron/start/find-browser.mjs';
import { inRoot } from '../../electron/start/place.mjs';
import { kitFile } from '../electron/paper/kit';

/** A page of somebody else in the same browser as our window, which tries to reach our door. */
let browser: Browser;
let door: BrowserDoor;
let elsewhere: Server;
let folder: string;
let doorPort: number;
let strangerPort: number;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'lw-e2e-'));
  door = await openBrowserDoor({
    pageFolder: inRoot('tests', 'e2e', 'bare-page'),
    pageNames: ['index.html'],
    version: '0.0.1',
    readPaperFile: kitFile,
    toOpen: [],
    env: { LEADWRIGHT_DATA: folder },
  });
  doorPort = Number(new URL(door.startUrl()).port);
  elsewhere = createServer((_request, response) => {
    response.setHeader('Content-Type', 'text/html');
    response.end('<!doctype html><title>Elsewhere</title>');
  });
  await new Promise<void>((resolve) => elsewhere.listen(0, '127.0.0.1', resolve));
  strangerPort = (elsewhere.address() as AddressInfo).port;
  browser = await chromium.launch({
    executablePath: findBrowser() ?? '',
    // Any name can be made to lead to this machine; here one does.
    args: ['--disable-gpu', '--host-resolver-rules=MAP evil.test 127.0.0.1'],
  });
});

afterAll(async () => {
  await browser?.close();
  elsewhere?.close();
  door?.close();
  await door?.ended;
  rmSync(folder, { recursive: true, force: true });
});

interface Attempt {
  readonly page: Page;
  /** What our door answered while the stranger tried, as statuses. */
  readonly statuses: number[];
}

async function stranger(host: string): Promise<Attempt> {
  const page = await browser.newPage();
  const statuses: number[] = [];
  page.on('response', (response) => {
    if (new URL(response.url()).port === String(doorPort)) statuses.push(response.status());
  });
  await page.goto(`http://${host}:${strangerPort}/`);
  return { page, statuses };
}

/** In the stranger's page: what comes of one try, "reached" or how it failed. */
type Try = (page: Page, url: string) => Promise<string>;

const TRIES: Readonly<Record<string, Try>> = {
  'reads a file': (page, url) => page.evaluate((to) => fetch(to).then(() => 'reached', String), url),
  'calls without asking first': (page, url) =>
    page.evaluate(
      (to) =>
        fetch(`${to}call/readSettings`, { method: 'POST', mode: 'no-cors', body: '' }).then(
          ({ type }) => type,
          String,
        ),
      url,
    ),
  'calls with JSON and a token': (page, url) =>
    page.evaluate((to) => {
      const headers = { 'Content-Type': 'application/json', 'X-Leadwright-Token': 'guess' };
      return fetch(`${to}call/readSettings`, { method: 'POST', headers, body: '' }).then(
        () => 'reached',
        String,
      );
    }, url),
  'loads it as a script': (page, url) =>
    page.evaluate(
      (to) =>
        new Promise<string>((resolve) => {
          const script = document.createElement('script');
          script.onload = () => resolve('reached');
          script.onerror = () => resolve('failed');
          script.src = to;
          document.head.append(script);
        }),
      url,
    ),
  'loads it as a picture': (page, url) =>
    page.evaluate(
      (to) =>
        new Promise<string>((resolve) => {
          const picture = new Image();
          picture.onload = () => resolve('reached');
          picture.onerror = () => resolve('failed');
          picture.src = to;
        }),
      url,
    ),
  'puts it in a frame': (page, url) =>
    page.evaluate(
      (to) =>
        new Promise<string>((resolve) => {
          const frame = document.createElement('iframe');
          frame.onload = () => resolve(frame.contentDocument === null ? 'out of reach' : 'reached');
          frame.src = to;
          document.body.append(frame);
        }),
      url,
    ),
  'opens a socket': (page, url) =>
    page.evaluate(
      (to) =>
        new Promise<string>((resolve) => {
          const socket = new WebSocket(to.replace('http', 'ws'));
          socket.onopen = () => resolve('reached');
          socket.onerror = () => resolve('failed');
        }),
      url,
    ),
  'listens for events': (page, url) =>
    page.evaluate(
      (to) =>
        new Promise<string>((resolve) => {
          const source = new EventSource(to);
          source.onopen = () => resolve('reached');
          source.onerror = () => resolve('failed');
        }),
      url,
    ),
};

describe.each(['127.0.0.1', 'evil.test'])('A page from %s, at another port', (host) => {
  let attempt: Attempt;

  beforeAll(async () => {
    attempt = await stranger(host);
  });

  afterAll(() => attempt.page.close());

  test.each(Object.entries(TRIES))('%s, and is refused', async (_name, tries) => {
    attempt.statuses.length = 0;
    expect(await tries(attempt.page, `http://127.0.0.1:${doorPort}/`)).not.toBe('reached');
    expect(attempt.statuses.filter((status) => status < 400)).toEqual([]);
  });

  test('sends a form, and is refused', async () => {
    const { page, statuses } = attempt;
    const address = `http://127.0.0.1:${doorPort}/call/readSettings`;
    await page.setContent(`<form method="post" action="${address}"><button>Go</button></form>`);
    statuses.length = 0;
    await Promise.all([page.waitForEvent('response'), page.click('button')]);
    expect(statuses).toEqual([403]);
  });
});

test('A name that was made to lead to our door is answered with a refusal', async () => {
  const page = await browser.newPage();
  const answer = await page.goto(`http://evil.test:${doorPort}/`);
  expect(answer?.status()).toBe(421);
  await page.close();
});

test('A page that is opened from elsewhere comes up without the right to call', async () => {
  const { page } = await stranger('evil.test');
  const [opened] = await Promise.all([
    page.waitForEvent('popup'),
    page.evaluate((to) => void window.open(to), `http://127.0.0.1:${doorPort}/`),
  ]);
  await opened.waitForLoadState();
  expect(await opened.title()).toBe('Bare page');
  const status = await opened.evaluate(async () => {
    const headers = { 'Content-Type': 'application/json' };
    return (await fetch('/call/readSettings', { method: 'POST', headers, body: '' })).status;
  });
  expect(status).toBe(401);
  expect(await page.evaluate(() => document.title)).toBe('Elsewhere');
  await page.context().close();
});
