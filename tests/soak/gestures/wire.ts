import type { Page } from 'playwright-core';
import type { Seat } from '../../../boards/document/build';
import { connectorOf, leadsOf } from '../../../boards/document/lookup';
import type { Command } from '../../../boards/edit/command';
import { placesOf } from '../../../boards/fit/places';
import { properSeats } from '../../../boards/fit/proper-seats';
import {
  type Direction,
  firstCandidate,
  otherConnector,
  stepCandidate,
  turnedBy,
} from '../../../renderer/areas/wire/placing/steps';
import { pointOnScreen, rowOf, titleOf } from '../../e2e/hands';
import { fromMenu, goTo, oneOf, oneWay, pressOne } from './controls';
import { AREA_KEYS, type Bench, type Gesture, type Hand, type Made } from './gesture';

const SEARCH_MS = 4_000;

/** A plug taken off or turned by its key. */
export async function takeOffOrTurn({ page, dice }: Hand): Promise<string> {
  await page.keyboard.press(AREA_KEYS.wire);
  const rows = page.getByRole('grid', { name: 'Leads' }).locator('[role="row"][aria-label]');
  const row = await oneOf(rows, dice);
  await row?.click();
  const key = dice.pick(['Delete', 'Delete', 'r', 'Shift+R']) ?? 'Delete';
  await page.keyboard.press(key);
  await page.keyboard.press('Escape');
  return key;
}

async function toLeads(page: Page): Promise<void> {
  await goTo(page, AREA_KEYS.wire);
  await page.getByRole('tab', { name: 'Leads', exact: true }).click();
  await page.getByRole('grid', { name: 'Leads' }).waitFor();
}

async function chooseLead({ page, dice }: Hand): Promise<string | undefined> {
  await toLeads(page);
  const rows = page.getByRole('grid', { name: 'Leads' }).locator('[role="row"][aria-label]');
  const row = await oneOf(rows, dice);
  await row?.click();
  return (await row?.getAttribute('aria-label')) ?? undefined;
}

/** One of the plugs that the drawing of the board can show, and a place where it fits there. */
async function plugAndPlace({ saved, dice }: Bench) {
  const build = await saved();
  const onBoard = (seat: Seat) => connectorOf(build.board, seat.connector) !== undefined;
  const plugs = leadsOf(build).flatMap((lead) =>
    lead.plugs.map((plug) => ({ lead: lead.id, plug: plug.id })),
  );
  const placesFor = (plug: (typeof plugs)[number]) => placesOf(build, plug).filter(onBoard);
  const plug = dice.pick(plugs.filter((each) => placesFor(each).length > 0));
  const seat = plug && dice.pick(placesFor(plug));
  return seat && { build, seat };
}

/** Drags a plug from the shelf to one of the places where it fits, turned on the way. */
async function seatByDrag(bench: Bench): Promise<Made | undefined> {
  const { page } = bench;
  await toLeads(page);
  const chosen = await plugAndPlace(bench);
  if (chosen === undefined) return undefined;
  const { build, seat } = chosen;
  const row = rowOf(page, titleOf(build, seat)).first();
  await row.scrollIntoViewIfNeeded();
  const box = await row.boundingBox();
  if (box === null) return undefined;
  const from = build.seats.find((each) => each.lead === seat.lead && each.plug === seat.plug);
  await page.mouse.move(box.x + 30, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + 38, box.y + box.height / 2 - 8, { steps: 2 });
  const quarters = ((seat.turn - (from?.turn ?? 0) + 360) % 360) / 90;
  for (let turned = 0; turned < quarters; turned++) await page.keyboard.press('r');
  await page.keyboard.press('Control+0');
  const goal = await pointOnScreen(page, build, seat);
  await page.mouse.move(goal.x, goal.y, { steps: 4 });
  await page.mouse.up();
  const said = `dragged ${seat.lead} ${seat.plug} to ${seat.connector} ${seat.at} ${seat.turn}`;
  return { said, means: { before: build, command: { name: 'seat-plug', args: seat } } };
}

const STEPS: Readonly<Record<string, Direction>> = {
  ArrowLeft: 'left',
  ArrowRight: 'right',
  ArrowUp: 'up',
  ArrowDown: 'down',
};

/** Takes a plug into the hand by its key, moves it about, and seats it, or puts it back. */
async function seatByKeys(bench: Bench): Promise<Made | undefined> {
  const { page, dice } = bench;
  await toLeads(page);
  const chosen = await plugAndPlace(bench);
  if (chosen === undefined) return undefined;
  const { build, seat: plug } = chosen;
  const now = build.seats.find((each) => each.lead === plug.lead && each.plug === plug.plug);
  // A plug of a unit is put by the list of its places.
  if (now && connectorOf(build.board, now.connector) === undefined) return undefined;
  await rowOf(page, titleOf(build, plug)).first().click();
  await page.keyboard.press('Control+Enter');
  const bar = page.getByRole('application', { name: / in the hand\./ });
  await bar.waitFor();
  let here = firstCandidate(build, plug, properSeats(build, plug)[0]);
  if (here === null) return undefined;
  const pressed: string[] = [];
  for (let left = dice.below(5); left > 0; left--) {
    const key = dice.pick([...Object.keys(STEPS), 'PageDown', 'PageUp', 'r', 'Shift+R']) ?? 'r';
    await page.keyboard.press(key);
    pressed.push(key);
    const direction = STEPS[key];
    if (direction !== undefined) here = stepCandidate(build, here, direction);
    else if (key.startsWith('Page')) here = otherConnector(build, here, key === 'PageDown' ? 1 : -1);
    else here = { ...here, turn: turnedBy(here.turn, key === 'r' ? 1 : -1) };
  }
  const seats = !dice.oneIn(6);
  // What fits nowhere stays in the hand, and is put back.
  for (const key of seats ? ['Enter', 'Escape'] : ['Escape']) await page.keyboard.press(key);
  const command: Command | null = seats ? { name: 'seat-plug', args: here } : null;
  const said = `took ${plug.lead} ${plug.plug}, ${pressed.join(' ')}, ${seats ? 'seated' : 'put back'}`;
  return { said, means: { before: build, command } };
}

async function chooseByList({ page, dice }: Bench): Promise<Made | undefined> {
  const lead = await chooseLead({ page, dice });
  if (lead === undefined) return undefined;
  await page.keyboard.press('Control+L');
  const dialog = page.getByRole('dialog', { name: /^Places for / });
  await dialog.getByRole('searchbox').waitFor();
  const place = await oneOf(dialog.getByRole('option'), dice);
  await place?.click();
  return { said: `chose a place for ${lead}` };
}

/** Takes proposals of the best seating over, or has something kept as it is. */
async function bestSeating(hand: Bench): Promise<Made | undefined> {
  const { page, dice } = hand;
  await goTo(page, AREA_KEYS.wire);
  await page.keyboard.press('Control+B');
  const panel = page.getByRole('complementary', { name: 'Best seating' });
  await panel.waitFor();
  const apply = panel.getByRole('button', { name: 'Apply all' });
  const found = apply.or(panel.getByText('Your wiring is this arrangement.')).first();
  // A search that takes longer is left; it changes nothing by itself.
  await found.waitFor({ timeout: SEARCH_MS }).catch(() => undefined);
  const made = (await apply.isVisible())
    ? await pressOne(hand, panel, dice.oneIn(2) ? /^(?!Apply all)/ : /Close|Stop|anew/)
    : undefined;
  await panel.getByRole('button', { name: 'Close the best seating' }).click();
  return made && { said: `best seating: ${made.said}` };
}

export const WIRE_GESTURES: readonly Gesture[] = [
  {
    name: 'take off or turn by key',
    make: async (bench) => {
      await toLeads(bench.page);
      return { said: `key ${await takeOffOrTurn(bench)}` };
    },
  },
  { name: 'seat by drag', make: seatByDrag },
  { name: 'seat by keys', make: seatByKeys },
  { name: 'seat by the list of places', make: chooseByList },
  {
    name: 'what can be done with the chosen lead',
    make: async (hand) => {
      const lead = await chooseLead(hand);
      if (lead === undefined) return undefined;
      const card = hand.page.getByRole('region', { name: 'Chosen lead' });
      const made = await pressOne(hand, card, /…|^Place|^Move/);
      return made && { said: `${made.said} for ${lead}` };
    },
  },
  {
    name: 'what helps against a finding',
    make: async (hand) => {
      await goTo(hand.page, AREA_KEYS.wire);
      return pressOne(hand, hand.page.getByRole('list', { name: 'Findings', exact: true }));
    },
  },
  {
    name: 'turn or mirror the view',
    make: async ({ page, dice }) => {
      await goTo(page, AREA_KEYS.wire);
      const name = dice.pick(['Turn the view', 'Mirror the view']) ?? '';
      await page.getByRole('contentinfo').getByRole('button', { name }).click();
      return { said: name };
    },
  },
  {
    name: 'edits of the menu',
    make: async (hand) => {
      const lead = await chooseLead(hand);
      if (lead === undefined) return undefined;
      return oneWay(hand, [
        () => fromMenu(hand.page, 'Edit', /^(Set .+ aside|Put .+ back on the shelf)/),
        () => fromMenu(hand.page, 'Edit', /^Turn .+ round/),
        () => fromMenu(hand.page, 'Edit', /^Take off (?!all leads)/),
        async () => (hand.dice.oneIn(4) ? fromMenu(hand.page, 'Edit', /^Take off all leads/) : undefined),
      ]);
    },
  },
  { name: 'best seating', make: bestSeating },
];
