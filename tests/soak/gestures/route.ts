import type { Locator } from 'playwright-core';
import { dragOnMap, pressOnMap } from '../../e2e/tray-hands';
import { chooseOne, fillOne, fromMenu, goTo, oneOf, oneWay, pressKeys, pressOne, tickOne } from './controls';
import { AREA_KEYS, type Bench, type Gesture, type Hand, type Made } from './gesture';

const SEARCH_MS = 10_000;

const TOOLS: readonly string[] = [
  'Add a tie point',
  'Add a bend',
  'Add a cable end',
  'Add an opening',
  'Add a bay',
  'Add the supply unit',
  'Add a standoff',
  'Add a fan',
];
const TOOL_KEYS = ['t', 'b', 'e', 'o', 'd', 's', 'n', 'f', 'p'];
const MAP_KEYS = [
  ...['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Shift+ArrowRight', 'Shift+ArrowDown'],
  ...['Alt+ArrowRight', 'Alt+ArrowUp', 'r', 'm', 'Tab', 'Shift+Tab', 'Enter', 'Delete'],
];

const panelOf = ({ page }: Hand): Locator =>
  page.getByRole('complementary', { name: 'Chosen, and what is known' });

/** To the map; a tray is drawn where the case has none, or undone away. */
async function toMap({ page }: Hand): Promise<Locator> {
  await goTo(page, AREA_KEYS.route);
  const map = page.getByRole('application', { name: /^Map of the tray/ });
  const draw = page.getByRole('button', { name: 'Draw the tray' });
  await map.or(draw).first().waitFor();
  if (await draw.isVisible()) await draw.click();
  await map.getByRole('img').waitFor();
  return map;
}

/** Chooses a part of the tray, or a cable, on the shelf. */
async function choose(hand: Hand): Promise<string | undefined> {
  const { page, dice } = hand;
  await toMap(hand);
  const shelf = page.getByRole('region', { name: 'Tray' });
  const tab = await oneOf(shelf.getByRole('tab'), dice);
  await tab?.click();
  const option = await oneOf(shelf.getByRole('option'), dice);
  await option?.click();
  return (await option?.textContent()) ?? undefined;
}

async function byMouse(bench: Bench): Promise<Made | undefined> {
  const { page, dice, saved } = bench;
  await toMap(bench);
  await page.getByRole('contentinfo').getByRole('button', { name: 'Show the whole tray' }).click();
  const { tray } = (await saved()).case;
  if (tray === undefined) return undefined;
  const somewhere = () => [dice.below(tray.widthMm), dice.below(tray.heightMm)] as const;
  const places = [...tray.points, ...tray.openings, ...tray.bays].map(({ xMm, yMm }) => [xMm, yMm] as const);
  const tool = dice.pick([...TOOLS, 'Draw a path', 'Choose and move', 'Choose and move']) ?? '';
  await page.getByRole('radio', { name: tool }).click();
  const from = tool.startsWith('Add') ? somewhere() : (dice.pick(places) ?? somewhere());
  const to = tool === 'Draw a path' ? (dice.pick(places) ?? somewhere()) : somewhere();
  const drags = !tool.startsWith('Add') || dice.oneIn(2);
  const drops = !dice.oneIn(6);
  if (drags) await dragOnMap(page, from, to, drops);
  else await pressOnMap(page, from);
  await page.keyboard.press('Escape');
  return { said: `${tool} from ${from}${drags ? ` to ${to}${drops ? '' : ', let go by Escape'}` : ''}` };
}

async function byKeys(hand: Hand): Promise<Made | undefined> {
  const { page, dice } = hand;
  const map = await toMap(hand);
  await map.focus();
  for (let walked = dice.below(4); walked > 0; walked--) await page.keyboard.press('Tab');
  const tool = dice.oneIn(2) ? dice.pick(TOOL_KEYS) : undefined;
  if (tool !== undefined) await page.keyboard.press(tool);
  const { said } = await pressKeys(hand, MAP_KEYS, 4);
  if (tool !== undefined) await page.keyboard.press('Enter');
  await page.keyboard.press('Escape');
  return { said: `on the map: ${tool ?? ''} ${said}` };
}

/** All cables laid: the ways that were found are taken over, all or one of them. */
async function takeLaying(hand: Hand): Promise<Made | undefined> {
  const { page, dice } = hand;
  await toMap(hand);
  const made = await fromMenu(page, 'Tray', /^Lay all cables/);
  if (made === undefined) return undefined;
  const panel = panelOf(hand);
  const ended = panel
    .getByRole('button', { name: /^(Apply all|Lay all anew)$/ })
    .or(panel.getByText('Every cable lies so already.'));
  await ended
    .first()
    .waitFor({ timeout: SEARCH_MS })
    .catch(() => undefined);
  const one = dice.oneIn(2) ? /^(?!Apply all)/ : /^(?!Apply this)/;
  const taken = await pressOne(hand, panel.getByRole('region', { name: 'All cables' }), one);
  await panel.getByRole('button', { name: 'Close all cables' }).click();
  return { said: `laid all: ${taken?.said ?? 'nothing to take over'}` };
}

/** The parts of the panel are folded; one is unfolded, and one of its controls used. */
async function workFolded(hand: Hand): Promise<Made | undefined> {
  await toMap(hand);
  // A part within one that is folded away cannot be reached.
  const heads = panelOf(hand).locator('details > summary').filter({ visible: true });
  const head = await oneOf(heads, hand.dice);
  if (head === null) return undefined;
  const fold = head.locator('..');
  if ((await fold.getAttribute('open')) === null) await head.click();
  return workOne(hand, fold);
}

const workOne = (hand: Hand, part: Locator) =>
  oneWay(hand, [
    () => fillOne(hand, part),
    () => chooseOne(hand, part),
    () => pressOne(hand, part),
    () => tickOne(hand, part),
  ]);

/** All cables laid, by the button on the shelf. */
export async function layAll({ page }: Pick<Hand, 'page'>): Promise<void> {
  await page.keyboard.press(AREA_KEYS.route);
  await page.getByRole('button', { name: 'Lay all' }).click();
}

export const ROUTE_GESTURES: readonly Gesture[] = [
  { name: 'on the map by mouse', make: byMouse },
  { name: 'on the map by keys', make: byKeys },
  {
    name: 'a control of a place or a cable',
    make: async (hand) => {
      const chosen = await choose(hand);
      const made = await workOne(hand, panelOf(hand));
      return made && { said: `${chosen ?? 'the tray'}: ${made.said}` };
    },
  },
  {
    name: 'a button of a cable',
    make: async (hand) => {
      await toMap(hand);
      const cables = hand.page.getByRole('listbox', { name: 'Cables' });
      if (!(await cables.isVisible())) return undefined;
      const cable = await oneOf(cables.getByRole('option'), hand.dice);
      await cable?.click();
      return pressOne(hand, panelOf(hand));
    },
  },
  { name: 'a folded part of the panel', make: workFolded },
  { name: 'take the ways of all cables over', make: takeLaying },
];
