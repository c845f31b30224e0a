import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { expect, onTestFinished, test } from 'vitest';
import { findBrowser } from '../../electron/start/find-browser.mjs';
import { foreignHosts, netLogArgs } from './net-log';

/** What the whole run of these tests is held to would be seen, were it otherwise. */
test.each([
  ['asks nobody', '', []],
  ['loads a picture from elsewhere', '<img src="http://picture.test/x.png">', ['picture.test']],
  ['sends a word there', '<script>navigator.sendBeacon("http://word.test/", "x")</script>', ['word.test']],
  ['opens a socket', '<script>new WebSocket("ws://socket.test/")</script>', ['socket.test']],
  ['goes there itself', '<script>location = "http://away.test/"</script>', ['away.test']],
])('a page that %s is seen to', async (_what, html, hosts) => {
  const folder = mkdtempSync(join(tmpdir(), 'lw-net-'));
  const server = createServer((_request, response) =>
    response.writeHead(200, { 'Content-Type': 'text/html' }).end(`<!doctype html>${html}`),
  );
  onTestFinished(() => {
    server.close();
    rmSync(folder, { recursive: true, force: true });
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const log = join(folder, 'net.json');
  const browser = await chromium.launch({ executablePath: findBrowser() ?? '', args: [...netLogArgs(log)] });
  const page = await browser.newPage();
  await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
  await page.waitForTimeout(500);
  await browser.close();
  expect(foreignHosts(log)).toEqual(hosts);
});
