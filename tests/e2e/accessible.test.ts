import { copyFileSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';
import { beforeAll, expect, it } from 'vitest';
import { plainPixels, pngOf } from '../boards/pinout/photo/picture-files';
import { demoFile } from './bench-work';
import { rowOf } from './hands';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('all tests');
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
let page: Page;

beforeAll(async () => {
  copyFileSync(demoFile('eight-slips.build.json'), join(workplace.home, 'slips.build.json'));
  page = await workplace.open();
  await page.evaluate(AXE);
});

interface View {
  readonly view: string;
  readonly show: () => Promise<unknown>;
  /** Back to where the next view is reached from. */
  readonly leave?: () => Promise<unknown>;
}

const press = (key: string) => () => page.keyboard.press(key);
const open = async () => {
  await page.keyboard.press('Control+O');
  await page.getByRole('option', { name: 'slips.build.json' }).click();
  await page.getByRole('main').getByRole('img').waitFor();
};
const dialog = (keys: string, name: string) => ({
  show: async () => {
    await page.keyboard.press(keys);
    await page.getByRole('dialog', { name }).waitFor();
  },
  leave: press('Escape'),
});
const button = (name: string) => page.getByRole('button', { name, exact: true });
const inDialog = async (name: string, title: RegExp) => {
  await button(name).click();
  await page.getByRole('dialog', { name: title }).waitFor();
};

/** Every view and dialog, in an order in which each is reached from the one before. */
const VIEWS: readonly View[] = [
  { view: 'the start screen', show: () => page.getByRole('heading', { name: 'Leadwright' }).waitFor() },
  { view: 'the new build', ...dialog('Control+N', 'New build') },
  { view: 'the choice of a file', ...dialog('Control+O', 'Open') },
  { view: 'the keys', ...dialog('F1', 'Keys') },
  { view: 'the library of sheets, empty', ...dialog('Control+Shift+O', 'Library of sheets') },
  { view: 'the Wire area', show: open },
  {
    view: 'a chosen finding',
    show: () =>
      page.getByRole('list', { name: 'Findings' }).getByRole('heading').first().getByRole('button').click(),
  },
  { view: 'a chosen lead', show: () => rowOf(page, 'Power LED').click() },
  {
    view: 'the best seating beside the wiring',
    show: async () => {
      await page.keyboard.press('Control+B');
      await page
        .getByRole('list', { name: 'Differences from your wiring' })
        .getByRole('button')
        .first()
        .click();
    },
    leave: press('Escape'),
  },
  { view: 'a plug in the hand', show: () => button('Move').click(), leave: press('Escape') },
  { view: 'the places of a lead', show: () => inDialog('Places', /^Places for/), leave: press('Escape') },
  {
    view: 'the connectors in words',
    show: async () => {
      await page.getByRole('tab', { name: 'Connectors' }).click();
      const first = page.getByRole('treegrid').getByRole('row').first();
      await first.click();
      await page.keyboard.press('ArrowRight');
      await page.getByRole('row', { name: /^Pin 1,/ }).waitFor();
    },
  },
  {
    view: 'the units',
    show: async () => {
      await page.getByRole('tab', { name: 'Units' }).click();
      await button('Add a unit…').waitFor();
    },
  },
  { view: 'the choice of a unit', show: () => inDialog('Add a unit…', /^Add a unit/) },
  {
    view: 'a unit from near by',
    show: async () => {
      await page.getByRole('option').filter({ hasText: 'Hard drive' }).first().click();
      await page.getByRole('dialog', { name: 'Hard drive' }).getByRole('table').waitFor();
    },
    leave: async () => {
      await page.keyboard.press('Escape');
      await page.getByRole('dialog').waitFor({ state: 'detached' });
      await page.keyboard.press('Control+Z');
      await page.getByRole('tab', { name: 'Connectors' }).click();
    },
  },
  {
    view: 'a sheet of the library',
    show: async () => {
      await page.keyboard.press('Control+Shift+O');
      await button('Keep this build’s board').click();
      await page.getByRole('img', { name: /from above/ }).waitFor();
    },
  },
  {
    view: 'two sheets side by side',
    show: async () => {
      await inDialog('Compare with this build’s board…', /^Compare/);
      await page.getByRole('checkbox', { name: 'Only differences' }).press('Space');
      await page.getByRole('rowheader', { name: 'PANEL' }).waitFor();
    },
    leave: async () => {
      await page.keyboard.press('Escape');
      await page.getByRole('dialog', { name: /^Compare/ }).waitFor({ state: 'detached' });
      await page.keyboard.press('Escape');
    },
  },
  { view: 'the search', ...dialog('Control+K', 'Search everything') },
  {
    view: 'a menu',
    show: async () => {
      await button('File').click();
      await page.getByRole('menu').waitFor();
    },
    leave: press('Escape'),
  },
  {
    view: 'a question about unsaved work',
    show: async () => {
      await page.getByRole('tab', { name: 'Leads' }).click();
      await rowOf(page, 'Power LED').click();
      await page.keyboard.press('Delete');
      await page.keyboard.press('Control+W');
      await page.getByRole('alertdialog').waitFor();
    },
    leave: press('Escape'),
  },
  { view: 'the choice of a place to save', ...dialog('Control+Shift+S', 'Save as') },
  {
    view: 'the pages of the pinout',
    show: async () => {
      await page.keyboard.press('Control+P');
      await page.getByRole('img', { name: /of the pinout/ }).waitFor();
    },
    leave: press('Escape'),
  },
  {
    view: 'the map of the tray, with an opening chosen',
    show: async () => {
      await page.keyboard.press('Control+3');
      await page.getByRole('tab', { name: 'Places' }).click();
      await page.getByRole('option', { name: /^Upper front/ }).click();
      await page.getByRole('textbox', { name: 'Edge from the left, mm' }).waitFor();
    },
  },
  {
    view: 'a path of the tray, from the back',
    show: async () => {
      await page.getByRole('radio', { name: 'Back' }).click();
      await page.getByRole('tab', { name: 'Paths' }).click();
      await page
        .getByRole('option', { name: /^Column, top/ })
        .first()
        .click();
      await page.getByRole('textbox', { name: 'Length, mm' }).waitFor();
    },
  },
  {
    view: 'a cable that is laid, its measures and the order of laying',
    show: async () => {
      await page.getByRole('tab', { name: 'Cables' }).click();
      await page.getByRole('option', { name: /^Front USB 3/ }).click();
      await page.getByRole('button', { name: 'Find a way' }).click();
      await page.getByRole('heading', { name: 'Its way' }).waitFor();
      for (const fold of ['Measures', 'Openings', 'Order of laying'])
        await page.locator('summary', { hasText: fold }).click();
    },
  },
  {
    view: 'a way that is chosen place by place',
    show: () => page.getByRole('button', { name: 'Choose place by place' }).click(),
    leave: () => page.getByRole('button', { name: 'Leave it as it was' }).click(),
  },
  {
    view: 'all cables laid together',
    show: async () => {
      await page.getByRole('button', { name: 'Lay all' }).click();
      await page.getByRole('button', { name: 'Apply all' }).waitFor();
    },
    leave: () => page.getByRole('button', { name: 'Close all cables' }).click(),
  },
  {
    view: 'the steps, with a plug on its header',
    show: async () => {
      await page.keyboard.press('Control+5');
      await page
        .getByRole('row', { name: /Power switch on/ })
        .getByText('Power switch')
        .click();
      await page.getByRole('img', { name: /as it lies/ }).waitFor();
    },
  },
  {
    view: 'what to measure',
    show: async () => {
      await page
        .getByRole('row', { name: /No short at/ })
        .first()
        .getByText('No short')
        .click();
      await page.getByText('Ohms, one probe on').waitFor();
    },
  },
  { view: 'the steps in large letters', ...dialog('F9', 'No short at') },
  {
    view: 'what the machine has',
    show: () => page.getByRole('tab', { name: 'This machine' }).click(),
  },
  {
    view: 'the pages of the bench sheet',
    show: async () => {
      await page.keyboard.press('Control+Shift+P');
      await page.getByRole('img', { name: /of the bench sheet/ }).waitFor();
    },
    leave: press('Escape'),
  },
  {
    view: 'a pin of a connector',
    show: async () => {
      await page.keyboard.press('Control+1');
      await page.getByRole('tab', { name: 'Board', exact: true }).click();
      await page.getByRole('option', { name: /^PANEL/ }).click();
      await page.getByRole('grid', { name: 'Pins of PANEL' }).getByRole('row').nth(1).click();
      await page.getByRole('region', { name: 'Pin 1' }).waitFor();
    },
  },
  {
    view: 'a pasted pin list, with guesses, unknown words and contradictions',
    show: async () => {
      await page.keyboard.press('Control+Shift+L');
      await page
        .getByRole('textbox', { name: 'The list, as it was copied' })
        .fill('1 HDD LED+\n2 PWR LED\n3 FROB\n4 PWR LED\n4 GND\n11 NC');
      await page.getByRole('combobox', { name: 'Signal of pin 3' }).waitFor();
    },
    leave: press('Escape'),
  },
  { view: 'what a connector looks like', ...dialog('Control+Shift+K', 'What PANEL looks like') },
  {
    view: 'a connector from a meter',
    show: async () => {
      await page.keyboard.press('Control+Shift+M');
      await page.getByRole('dialog', { name: 'PANEL from a meter' }).waitFor();
      await page.getByRole('region', { name: 'Whole layouts' }).waitFor();
      await page.getByRole('button', { name: /^Another reading/ }).click();
      await page.getByRole('textbox', { name: 'What the meter shows, in ohms' }).first().fill('380');
      await page.keyboard.press('Enter');
      await page.getByRole('button', { name: 'Drop reading 1' }).waitFor();
      // The next reading is dim while it is worked out anew.
      await page.locator('.meter-next[aria-busy="false"]').waitFor();
    },
    leave: press('Escape'),
  },
  {
    view: 'a photo of a connector, pointed at',
    show: async () => {
      await inDialog('From a photo…', /^PANEL from a photo/);
      const chooser = page.waitForEvent('filechooser');
      await button('Choose a photo…').click();
      const buffer = pngOf(plainPixels(400, 300));
      await (await chooser).setFiles({ name: 'grey.png', mimeType: 'image/png', buffer });
      const box = await page.getByRole('application', { name: /^Photo/ }).boundingBox();
      if (!box) throw new Error('No photo');
      // Round the header, as its corners are asked for.
      for (const [x, y] of [
        [0.35, 0.4],
        [0.65, 0.4],
        [0.65, 0.55],
        [0.35, 0.55],
      ] as const)
        await page.mouse.click(box.x + x * box.width, box.y + y * box.height);
    },
  },
  {
    view: 'the print on a photo',
    show: async () => {
      await page.getByRole('tab', { name: 'Read the print' }).click();
      await page.getByRole('slider', { name: 'Strength of the photo' }).waitFor();
    },
    leave: async () => {
      await page.keyboard.press('Escape');
      await page.getByRole('dialog', { name: /^PANEL from a photo/ }).waitFor({ state: 'detached' });
    },
  },
  {
    view: 'the ways of numbering a connector',
    show: async () => {
      await page.getByRole('button', { name: /^Names, shape and place/ }).click();
      await inDialog('Number it another way…', /^Number PANEL/);
    },
  },
  {
    view: 'labels typed pin by pin',
    show: () => page.getByText('Labels of their own').click(),
    leave: press('Escape'),
  },
  {
    view: 'several pins of a connector',
    show: async () => {
      await page
        .getByRole('grid', { name: 'Header PANEL' })
        .getByRole('gridcell', { name: /^Pin 9/ })
        .click();
      await page.keyboard.press('Shift+ArrowUp');
      await page.getByRole('region', { name: '2 pins' }).waitFor();
    },
  },
  {
    view: 'a blank header',
    show: async () => {
      await inDialog('Add a connector…', /^Add a connector/);
      await page.getByRole('tab', { name: 'Blank header' }).click();
    },
    leave: press('Escape'),
  },
  {
    view: 'the connectors of the library',
    show: () => inDialog('Add a connector…', /^Add a connector/),
    leave: press('Escape'),
  },
  {
    view: 'a lead in the Document area',
    show: async () => {
      await page.getByRole('tab', { name: 'Case' }).click();
      await page.getByRole('option', { name: /^Front USB 1 plug/ }).click();
    },
  },
  {
    view: 'the leads of the library',
    show: () => inDialog('Add a lead…', /^Add a lead/),
    leave: press('Escape'),
  },
  {
    view: 'the board plan with a connector chosen by keys',
    show: async () => {
      await page.getByRole('tab', { name: 'Board plan' }).click();
      await page.getByRole('application', { name: /^Board plan/ }).focus();
      await page.keyboard.press('Tab');
      await page.getByRole('region', { name: /^Place of / }).waitFor();
    },
  },
  { view: 'names and notes', show: () => button('Names and notes').click() },
];

it.each(VIEWS)(
  'nothing in the way of assistive technology in $view, light or dark',
  async ({ show, leave }) => {
    await show();
    try {
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme });
        expect(await violations()).toEqual([]);
      }
    } finally {
      await leave?.();
    }
  },
);

async function violations(): Promise<readonly string[]> {
  const results = await page.evaluate(() => window.axe?.run());
  if (results === undefined) throw new Error('The checks are not on the page');
  expect(results.passes.length).toBeGreaterThan(5);
  return results.violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`),
  );
}

declare global {
  interface Window {
    readonly axe?: { readonly run: () => Promise<AxeResults> };
  }
}
