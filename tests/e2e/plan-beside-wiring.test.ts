import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { Build } from '../../boards/document/build';
import type { Lead } from '../../boards/document/lead';
import { serialize } from '../../boards/document/serialize';
import { planOf } from '../../boards/planner/plan';
import { seatWords } from '../../boards/planner/words';
import { slips, wired } from '../boards/library/demo-files';
import { tabTo } from './keys';
import { findingsIn, leadsIn, plain, stateOf } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');
/** On a busy machine the search itself may last some seconds. */
const SOON = { timeout: 20_000 };
const BARE: Build = { ...wired, seats: [] };

async function planned(build: Build): Promise<Page> {
  const file = join(workplace.home, 'a.build.json');
  writeFileSync(file, serialize(build));
  const page = await workplace.open([file]);
  await page.getByRole('main', { name: 'Board' }).getByRole('img').waitFor();
  await page.keyboard.press('Control+B');
  return page;
}

const panel = (page: Page) => page.getByRole('complementary', { name: 'Best seating' });
const saying = (page: Page) => async () => plain(await panel(page).textContent());
const differences = (page: Page) =>
  panel(page).getByRole('list', { name: 'Differences from your wiring' }).getByRole('heading');
const announced = (page: Page) => async () =>
  plain(await page.locator('[aria-live="polite"]').first().textContent());

describe('the unwired demo', () => {
  it('is planned, shown, applied by keys difference by difference or at once, and undone in as many steps', async () => {
    const page = await planned(BARE);
    await expect.poll(saying(page), SOON).toContain('Every plug has its place. This is the best arrangement');
    await expect.poll(announced(page), SOON).toContain('14 differences from your wiring.');
    const plan = planOf(BARE);
    expect(
      await differences(page)
        .allTextContents()
        .then((all) => all.map(plain)),
    ).toEqual(plan.seats.map((seat) => plain(`Seat ${seatWords(BARE, seat)}`)));

    // The first difference, by keys: shown on the drawing, then applied.
    await tabTo(page, differences(page).first().getByRole('button'));
    await page.keyboard.press('Enter');
    await expect
      .poll(() => page.getByRole('region', { name: 'Chosen lead' }).textContent())
      .toContain('Power switch');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await expect.poll(() => differences(page).count(), SOON).toBe(13);
    expect(await stateOf(page)).toBe('1 unsaved change');
    expect(await leadsIn(page, 'Seated')).toEqual(['Power switch, PANEL, pins 6 and 8']);
    // The focus is on what comes next, not lost.
    expect(plain(await page.evaluate(() => document.activeElement?.textContent ?? ''))).toMatch(
      /^Seat Reset/,
    );

    await panel(page).getByRole('button', { name: 'Apply all' }).click();
    await expect.poll(saying(page), SOON).toContain('Your wiring is this arrangement.');
    expect(await stateOf(page)).toBe('2 unsaved changes');
    expect(await leadsIn(page, 'Seated')).toHaveLength(14);

    await page.keyboard.press('Control+Z');
    await expect.poll(() => differences(page).count(), SOON).toBe(13);
    await page.keyboard.press('Control+Z');
    await expect.poll(() => differences(page).count(), SOON).toBe(14);
    expect(await stateOf(page)).toBe('saved in a.build.json');
  });

  it('is not planned for a wiring that has become another: that is said, and it is planned anew', async () => {
    const page = await planned(BARE);
    await expect.poll(() => differences(page).count(), SOON).toBe(14);
    await page.keyboard.press('Escape');
    await panel(page).waitFor({ state: 'detached' });
    expect(await page.evaluate(() => document.activeElement?.textContent)).toContain('Plan the best seating');
    await page.keyboard.press('Enter');
    await expect.poll(() => differences(page).count(), SOON).toBe(14);
    // Set aside, a lead is planned no more.
    await page.getByRole('row', { name: /^Speaker/ }).click();
    await page.getByRole('button', { name: 'Set aside' }).click();
    await expect.poll(saying(page), SOON).toContain('Your wiring has changed since this was worked out');
    expect(await differences(page).count()).toBe(0);
    await panel(page).getByRole('button', { name: 'Plan anew' }).click();
    await expect.poll(() => differences(page).count(), SOON).toBe(13);
  });
});

describe('a wiring with eight slips', () => {
  it('is mended at once: nothing that is dangerous or does not work is left', async () => {
    const page = await planned(slips);
    await expect
      .poll(saying(page), SOON)
      .toContain('Move Power switch from pins 5 and 7 of PANEL to pins 6 and 8 of PANEL.');
    await panel(page).getByRole('button', { name: 'Apply all' }).click();
    await expect.poll(saying(page), SOON).toContain('Your wiring is this arrangement.');
    await page.keyboard.press('Escape');
    const found = await findingsIn(page);
    expect(found.filter(({ severity }) => severity === 'Danger' || severity === 'Fault')).toEqual([]);
    await page.keyboard.press('Control+Z');
    await expect.poll(() => stateOf(page)).toBe('saved in a.build.json');
  });

  it('leaves where it is what the person keeps, says what then has no place, and what letting go would do', async () => {
    const astray: Build = {
      ...wired,
      seats: [{ lead: 'power-switch', plug: 'plug', connector: 'speaker', at: [0, 0], turn: 0 }],
    };
    const page = await planned(astray);
    await panel(page).getByRole('checkbox', { name: 'Keep where it is' }).press('Space');
    await expect.poll(saying(page), SOON).toContain('Speaker has no place as long as Power switch is kept.');
    expect(
      await panel(page)
        .getByRole('checkbox', { name: /^Power switch, SPKR/ })
        .isChecked(),
    ).toBe(true);
    await panel(page)
      .getByRole('button', { name: /^Let Power switch go elsewhere/ })
      .click();
    await expect.poll(saying(page), SOON).toContain('Every plug has its place.');
    expect(await stateOf(page)).toBe('saved in a.build.json');
  });
});

/** The demo with a power LED plug three holes wide, its contacts outside: common practice, no source. */
function withWideLed(): Build {
  const wide = (lead: Lead): Lead => {
    const [plug] = lead.plugs;
    if (!plug) throw new Error('The power LED has no plug');
    return {
      ...lead,
      plugs: [{ ...plug, grid: { ...plug.grid, cols: 3 } }],
      wires: lead.wires.map((wire) => ({
        ...wire,
        from: wire.from.replace('plug.2', 'plug.3'),
        to: wire.to.replace('plug.2', 'plug.3'),
      })),
    };
  };
  const leads = wired.case.leads.map((lead) => (lead.id === 'power-led' ? wide(lead) : lead));
  return { ...BARE, case: { ...wired.case, leads } };
}

describe('a power LED plug three holes wide where the board has two pins side by side', () => {
  it('is told to have no place, and the contact moved to the middle hole gives it one', async () => {
    const page = await planned(withWideLed());
    await expect.poll(saying(page), SOON).toContain('1 plug cannot be served.');
    await expect.poll(saying(page), SOON).toContain('No free place on this board suits Power LED as it is.');
    await expect.poll(saying(page), SOON).toContain('Use an adapter lead');
    const move = panel(page).getByRole('button', { name: /^Unlatch the contact/ });
    expect(plain(await move.textContent())).toContain('Then the power LED would work.');
    await move.click();
    await expect.poll(saying(page), SOON).toContain('Every plug has its place.');
    await panel(page).getByRole('button', { name: 'Apply all' }).click();
    await expect.poll(saying(page), SOON).toContain('Your wiring is this arrangement.');
    expect((await leadsIn(page, 'Seated')).filter((lead) => lead.startsWith('Power LED'))).toEqual([
      expect.stringContaining('PANEL, pins 2 and 4'),
    ]);
    expect(await stateOf(page)).toBe('2 unsaved changes');
  });
});

describe('a search that lasts', () => {
  it('is watched and stopped; the wiring stays as it was', async () => {
    const page = await planned(crowded(160));
    await expect.poll(saying(page), SOON).toMatch(/\d+ of 160 done|branches looked at/);
    await panel(page).getByRole('button', { name: 'Stop' }).click();
    await expect
      .poll(saying(page), SOON)
      .toContain('Stopped before there was an answer. Your wiring is as it was.');
    await expect.poll(announced(page), SOON).toContain('Stopped before there was an answer.');
    expect(await stateOf(page)).toBe('saved in a.build.json');
  });
});

describe('where there is nothing to seat', () => {
  it.each([
    ['no leads', { ...BARE, case: { ...wired.case, leads: [] }, extras: [] }, 'this build has no leads'],
    ['no connectors', { ...BARE, board: { ...wired.board, connectors: [] } }, 'this board has no connectors'],
  ])('%s: it is said', async (_, build, said) => {
    const page = await planned(build);
    await expect.poll(saying(page), SOON).toContain(said);
    await expect.poll(announced(page), SOON).toContain(said);
    expect(await panel(page).getByRole('button', { name: 'Apply all' }).count()).toBe(0);
  });
});

/** That many leads of the demo over and over, and its board once for every twenty of them. */
function crowded(plugs: number): Build {
  const leads = [...wired.case.leads, ...wired.extras];
  return {
    ...BARE,
    extras: [],
    case: {
      ...wired.case,
      leads: Array.from({ length: plugs }, (_, at) => {
        const lead = leads[at % leads.length];
        if (!lead) throw new Error('The demo has no leads');
        return { ...lead, id: `lead-${at}` };
      }),
    },
    board: {
      ...wired.board,
      connectors: Array.from({ length: plugs / 20 }, (_, copy) =>
        wired.board.connectors.map((connector) => ({
          ...connector,
          id: `${connector.id}-${copy}`,
          place: {
            ...connector.place,
            xMm: connector.place.xMm + 330 * (copy % 3),
            yMm: connector.place.yMm + 330 * Math.floor(copy / 3),
          },
        })),
      ).flat(),
    },
  };
}
