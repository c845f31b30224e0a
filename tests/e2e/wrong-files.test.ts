import { copyFileSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { LIMITS } from '../../boards/document/limits';
import { textOf, wired } from '../boards/library/demo-files';
import { boardOf } from '../size/board-of-pins';
import { demoFile } from './bench-work';
import { dropOn, openFile } from './files';
import { takeOff } from './hands';
import { leadsIn, messageIn, stateOf } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('all tests');
let page: Page;
let seated: readonly string[] = [];

/** The demo is open with one change, which no wrong file may cost. */
beforeEach(async () => {
  if (seated.length > 0) return;
  copyFileSync(demoFile('wired.build.json'), join(workplace.home, 'wired.build.json'));
  page = await workplace.open([join(workplace.home, 'wired.build.json')]);
  await takeOff(page, wired, { lead: 'speaker', plug: 'plug' });
  seated = await leadsIn(page, 'Seated');
});

/** The next test does not meet this one's message. */
afterEach(async () => {
  if ((await page.getByRole('alertdialog').count()) > 0) await page.keyboard.press('Escape');
});

interface WrongFile {
  readonly situation: string;
  readonly text: string;
  /** What was expected and found, by its place in the file where it has one. */
  readonly told: RegExp;
  readonly advised: RegExp;
}

const MEANT = /Check that it is the file you meant|check that it is the file you meant/;
const CORRECT = /in a text editor, or open an earlier copy/;

const WRONG_FILES: readonly WrongFile[] = [
  {
    situation: 'not JSON',
    text: '{\n  "format": "leadwright/build",\n  "name": oops\n}\n',
    told: /not JSON from line 3, column 11/,
    advised: CORRECT,
  },
  { situation: 'empty', text: '', told: /nothing in it/, advised: /earlier copy/ },
  {
    situation: 'another program’s JSON',
    text: '{ "format": "somebody/else", "version": 1 }\n',
    told: /Expected “format” to be leadwright\/build, leadwright\/board or leadwright\/case/,
    advised: /Choose a build, a board sheet or a case sheet/,
  },
  {
    situation: 'of a newer version',
    text: wiredWith('"version": 1', '"version": 7'),
    told: /version 7 of “leadwright\/build”, and this Leadwright reads up to version 1/,
    advised: /newer Leadwright/,
  },
  {
    situation: '100,000 levels deep',
    text: `${'['.repeat(100_000)}${']'.repeat(100_000)}`,
    told: /more than 64 levels deep/,
    advised: MEANT,
  },
  {
    situation: 'two leads of one id',
    text: wiredWith('"id": "reset-switch"', '"id": "power-switch"'),
    told: /case\.leads\[1\]\.id: expected .*power-switch/,
    advised: CORRECT,
  },
  {
    situation: 'a lead on a connector that the board does not have',
    text: wiredWith('"connector": "speaker"', '"connector": "speeker"'),
    told: /seats\[4\]\.connector: expected .*found .*speeker/,
    advised: CORRECT,
  },
  {
    situation: 'a number that is none',
    text: wiredWith('"xMm": 214', '"xMm": 1e999'),
    told: /board\.connectors\[0\]\.place\.xMm: expected a finite number .*found a number too large/,
    advised: CORRECT,
  },
  {
    situation: 'a key that means something to the engine',
    text: wiredWith('"id": "study-machine-3"', '"__proto__": { "seats": [] }, "id": "study-machine-3"'),
    told: /__proto__/,
    advised: CORRECT,
  },
  {
    situation: 'with a pin more than a board may have, so long that it is read beside the window',
    text: JSON.stringify(boardOf(LIMITS.pins + 1)),
    told: /board\.connectors: expected at most 20,000 pins in all/,
    advised: CORRECT,
  },
  {
    situation: 'larger than any build can be',
    text: ' '.repeat(32 * 1024 * 1024 + 1),
    told: /(?:at most|up to) 32\sMB/,
    advised: MEANT,
  },
];

it.each(WRONG_FILES)('a file $situation is refused in words, opened or dropped', async (wrong) => {
  writeFileSync(join(workplace.home, 'wrong.build.json'), wrong.text);
  await openFile(page, 'wrong.build.json');
  await expectRefusal('wrong.build.json', wrong.told, wrong.advised);
  await dropOn(page, [join(workplace.home, 'wrong.build.json')]);
  await expectRefusal('wrong.build.json', wrong.told, wrong.advised);
});

it('a folder that is dropped is told apart from a file', async () => {
  mkdirSync(join(workplace.home, 'a folder'));
  await dropOn(page, [join(workplace.home, 'a folder')]);
  await expectRefusal('a folder', /is a folder/, /choose a file in it/);
});

it('a file that goes away after it was listed is said to be gone', async () => {
  writeFileSync(join(workplace.home, 'fleeting.build.json'), textOf('wired.build.json'));
  await page.keyboard.press('Control+O');
  const option = page.getByRole('option', { name: 'fleeting.build.json' });
  await option.waitFor();
  rmSync(join(workplace.home, 'fleeting.build.json'));
  await option.click();
  await expectRefusal('fleeting.build.json', /is not there/, /Choose it again/);
});

/** The message names the file, says what and what to do, and what was open is still open. */
async function expectRefusal(name: string, told: RegExp, advised: RegExp): Promise<void> {
  const message = await messageIn(page);
  expect(message).toContain(`“${name}”`);
  expect(message).toMatch(told);
  expect(message).toMatch(advised);
  expect(message).toMatch(/open stays as it is/);
  expect(await page.locator('body').textContent()).not.toMatch(/\bat \S+:\d+|\bundefined\b|Error: |\[object/);
  await page.keyboard.press('Escape');
  await page.getByRole('alertdialog').waitFor({ state: 'detached' });
  expect(await stateOf(page)).toBe('1 unsaved change');
  expect(await leadsIn(page, 'Seated')).toEqual(seated);
}

/** The text of the wired demo with its first place of some words changed. */
function wiredWith(words: string, others: string): string {
  const text = readFileSync(demoFile('wired.build.json'), 'utf8');
  if (!text.includes(words)) throw new Error(`The demo has no ${words}`);
  return text.replace(words, others);
}
