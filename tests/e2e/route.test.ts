import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import type { Page } from 'playwright-core';
import { beforeEach, describe, expect, it } from 'vitest';
import { parseDocument } from '../../boards/document/parse';
import { asLaid } from '../../boards/routing/laid/as-laid';
import { verdictOf } from '../../boards/routing/laid/run-verdict';
import { saveAs } from './files';
import { arrowTo, tabTo } from './keys';
import { plain } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');
let page: Page;

beforeEach(async () => {
  page = await workplace.open();
});

const cables = () => page.getByRole('listbox', { name: 'Cables' });
const cable = (name: string) => cables().getByRole('option', { name: new RegExp(`^${name}\\b`) });
const panel = () => page.getByRole('complementary', { name: 'Chosen, and what is known' });
const said = async () => plain((await panel().textContent()) ?? '');

async function doAction(label: string): Promise<void> {
  await page.keyboard.press('Control+K');
  await page.getByRole('dialog', { name: 'Search everything' }).getByRole('searchbox').fill(label);
  await page.getByRole('option', { name: label }).first().waitFor();
  await page.keyboard.press('Enter');
}

/** From the demo that was opened to its cables. */
async function inRoute(): Promise<void> {
  await page.getByRole('heading', { level: 1, name: /machine/ }).waitFor();
  await page.keyboard.press('Control+3');
  await cables().waitFor();
}

async function routeDemo(label: string): Promise<void> {
  await page.getByRole('button', { name: label }).click();
  await inRoute();
}

/** Saves a paper or a list by the window's own dialog, which has been opened. */
async function written(name: string): Promise<string> {
  const files = page.getByRole('dialog', { name: 'Save as' });
  await files.getByRole('textbox', { name: 'Name of the file' }).fill(name);
  await files.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText(`Saved ${name} in`).first().waitFor();
  return readFileSync(join(workplace.home, name), 'utf8');
}

function verdictsIn(name: string): Readonly<Record<string, string>> {
  const parsed = parseDocument(readFileSync(join(workplace.home, name), 'utf8'));
  if (!parsed.ok || parsed.value.format !== 'leadwright/build') throw new Error('Not a build');
  const laid = asLaid(parsed.value);
  if (laid === undefined) throw new Error('No tray');
  return Object.fromEntries(laid.runs.map((run) => [run.id, verdictOf(laid, run).kind]));
}

describe('In a cramped case', () => {
  it('a cable too short is found, led another way, and all others laid in one step that is undone', async () => {
    await routeDemo('Open the demo of a cramped case');
    await cable('Front USB 3').click();
    expect(await said()).toContain('too short by 49 mm');
    await panel()
      .getByRole('button', { name: /^It reaches by another way through Lower slot/ })
      .click();
    await expect.poll(said).toContain('laid, 40 mm to spare');

    await page.getByRole('button', { name: 'Lay all' }).click();
    await expect.poll(said).toMatch(/7 of 9 cables can be laid\..*this is proved/);
    await panel().getByRole('button', { name: 'Apply all' }).click();
    await expect.poll(said).toContain('Every cable lies so already.');
    await saveAs(page, 'laid.build.json');
    const kinds = verdictsIn('laid.build.json');
    expect(Object.values(kinds).filter((kind) => kind === 'laid')).toHaveLength(7);

    await page.keyboard.press('Control+Z');
    await saveAs(page, 'undone.build.json');
    expect(Object.values(verdictsIn('undone.build.json')).filter((kind) => kind === 'laid')).toHaveLength(1);
  });

  it('a way that is pinned after all were laid together is not given up by what was found before', async () => {
    await routeDemo('Open the demo of a cramped case');
    await page.getByRole('button', { name: 'Lay all' }).click();
    await expect.poll(said).toContain('7 of 9 cables can be laid.');
    await cable('Front USB 3').click();
    await panel().getByRole('button', { name: 'Pin the way' }).click();
    await expect.poll(said).toContain('Cables, plugs, pinned ways or the tray have changed since');
    expect(await panel().getByRole('button', { name: 'Apply all' }).count()).toBe(0);
    await panel().getByRole('button', { name: 'Lay all anew' }).click();
    await expect.poll(said).toContain('7 of 9 cables can be laid.');
    await panel().getByRole('button', { name: 'Apply all' }).click();
    await expect.poll(said).toContain('too short by 49 mm, pinned');
  });

  it('what no way reaches for is said with what would help', async () => {
    await routeDemo('Open the demo of a cramped case');
    await cable('CPU power').click();
    expect(await said()).toContain('An extension of at least 48 mm reaches');
    await cable('Data of Drive').click();
    expect(await said()).toContain('may be bent to an inside radius of 9 mm reaches through Lower slot');
  });

  it('a length of nothing is not taken, and said', async () => {
    await routeDemo('Open the demo of a cramped case');
    await cable('CPU power').click();
    await panel().getByText('Measures', { exact: true }).click();
    const length = panel().getByRole('textbox', { name: /^Length from/ });
    for (const typed of ['0', '-40']) {
      await length.fill(typed);
      await length.press('Enter');
      await expect.poll(said).toContain('A size is more than 0 and at most 20,000 mm.');
    }
    await length.fill('400');
    await length.press('Enter');
    await panel().getByRole('button', { name: 'Find a way' }).click();
    await expect.poll(said).toMatch(/laid, \d+ mm to spare/);
  });
});

describe('A cable for two drives', () => {
  it('is asked for the length of each of its pieces, and has no length that nobody measured', async () => {
    await routeDemo('Open the demo with every cable');
    await cable('Drive power to').first().click();
    await panel().getByText('Measures', { exact: true }).click();
    await panel().getByRole('button', { name: 'Forget the measures' }).click();
    const keep = panel().getByRole('button', { name: 'Keep the measures' });
    const type = async (line: RegExp, typed: string) => {
      await panel().getByRole('textbox', { name: line }).fill(typed);
      await panel().getByRole('textbox', { name: line }).press('Enter');
    };
    await type(/^Thickness/, '7');
    await type(/^Length from .* to Drive A/, '450');
    expect(await keep.isDisabled()).toBe(true);
    await type(/^Length from .* to Drive B/, '150');
    await keep.click();
    await saveAs(page, 'measured.build.json');
    const parsed = parseDocument(readFileSync(join(workplace.home, 'measured.build.json'), 'utf8'));
    const extras = parsed.ok && parsed.value.format === 'leadwright/build' ? parsed.value.extras : [];
    const lengths = extras.find(({ id }) => id === 'supply-sata')?.cable?.runs.map((run) => run.lengthMm);
    expect(lengths).toEqual([450, 150]);
  });
});

describe('By keyboard alone', () => {
  it('a cable is chosen, led place by place, and its way pinned', async () => {
    await tabTo(page, page.getByRole('button', { name: 'Open the demo of a cramped case' }));
    await page.keyboard.press('Enter');
    await inRoute();
    await tabTo(page, cables());
    await page.keyboard.press('Home');
    await arrowTo(page, cable('Front USB 3'));
    await page.keyboard.press('Enter');
    await tabTo(page, panel().getByRole('button', { name: 'Choose place by place' }));
    await page.keyboard.press('Enter');
    for (const place of ['Column', 'Lower slot', 'USB3']) {
      const next = panel().getByRole('button', { name: new RegExp(`^${place}, `) });
      await tabTo(page, next);
      await page.keyboard.press('Enter');
    }
    await expect.poll(said).toContain('laid, 40 mm to spare');
    await tabTo(page, panel().getByRole('button', { name: 'Pin the way' }));
    await page.keyboard.press('Enter');
    await expect.poll(said).toContain(', pinned');
  });
});

describe('The demo with every cable', () => {
  it('prints labels of a chosen size, and saves the cable list as values', async () => {
    await routeDemo('Open the demo with every cable');
    await doAction('Print the cable labels…');
    const dialog = page.getByRole('dialog', { name: 'Print the cable labels' });
    await dialog.getByRole('textbox', { name: 'Width of a label, mm' }).fill('45');
    await dialog.getByRole('textbox', { name: 'Width of a label, mm' }).press('Enter');
    await dialog.getByRole('button', { name: 'File' }).click();
    await page.getByRole('option', { name: 'SVG, sharp at any size' }).click();
    const save = dialog.getByRole('button', { name: 'Save as SVG…' });
    await expect.poll(() => save.isEnabled()).toBe(true);
    await save.click();
    const svg = await written('labels.svg');
    expect(svg).toContain('CPU power');
    expect(svg).toContain('other end:');

    await doAction('Save the cable list…');
    const rows = parse(await written('cables.csv'), { columns: true, record_delimiter: '\r\n' }) as Record<
      string,
      string
    >[];
    expect(rows.length).toBe(19);
    expect(rows).toContainEqual(
      expect.objectContaining({ Cable: 'CPU power', To: 'CPU_12V', Laid: 'Before the board goes in' }),
    );
  });

  it('hides kinds of cables, and shows what goes through each opening', async () => {
    await routeDemo('Open the demo with every cable');
    const before = await cables().getByRole('option').count();
    await page.getByRole('button', { name: 'Fans' }).click();
    await expect.poll(() => cables().getByRole('option').count()).toBe(before - 2);
    await panel().getByText('Openings', { exact: true }).click();
    expect(await said()).toMatch(/Beside the supply\d+ % of the 40 % that 4 cables may fill/);
  });
});
