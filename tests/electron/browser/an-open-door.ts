import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { type BrowserDoor, openBrowserDoor } from '../../../electron/browser/door';
import { kitFile } from '../paper/kit';
import { bareBoard, scratchFolder } from '../scratch';
import { type RawAnswer, type RawRequest, sendRaw } from './raw-request';

export interface OpenedDoor {
  readonly door: BrowserDoor;
  readonly port: number;
  readonly send: (request: RawRequest) => Promise<RawAnswer>;
  /** What our own page sends along with a POST, the token apart. */
  readonly own: Readonly<Record<string, string>>;
  /** A board sheet named at the start. */
  readonly file: string;
  /** Everything on the disk that the door could change: its page, its own data, the person's files and home folder. */
  readonly folder: string;
}

/** A door with a page of two files, closed after the test. */
export async function anOpenDoor(): Promise<OpenedDoor> {
  const folder = scratchFolder();
  writeFileSync(join(folder, 'index.html'), '<!doctype html><title>Page</title>');
  writeFileSync(join(folder, 'page.js'), 'export {};');
  writeFileSync(join(folder, 'secret.txt'), 'not listed');
  const file = join(folder, 'bare.board.json');
  writeFileSync(file, bareBoard('Bare'));
  // Asked for once, when the door is opened; this process has others in it.
  const { HOME } = process.env;
  process.env.HOME = join(folder, 'home');
  mkdirSync(process.env.HOME);
  const opening = openBrowserDoor({
    pageFolder: folder,
    pageNames: ['index.html', 'page.js'],
    version: '0.0.1',
    readPaperFile: kitFile,
    toOpen: [file],
    env: { LEADWRIGHT_DATA: join(folder, 'data') },
  });
  if (HOME === undefined) delete process.env.HOME;
  else process.env.HOME = HOME;
  const door = await opening;
  onTestFinished(async () => {
    door.close();
    await door.ended;
  });
  const port = Number(new URL(door.startUrl()).port);
  const own = {
    Origin: `http://127.0.0.1:${port}`,
    'Sec-Fetch-Site': 'same-origin',
    'Content-Type': 'application/json',
  };
  return { door, port, own, file, folder, send: (request) => sendRaw(port, request) };
}

/** The token, had for a fresh start code as the page has it. */
export async function tokenOf({ door, send, own }: OpenedDoor): Promise<string> {
  const code = new URL(door.startUrl()).hash.slice(1);
  const answer = await send({ method: 'POST', target: '/start', headers: own, body: JSON.stringify(code) });
  return JSON.parse(answer.body);
}
