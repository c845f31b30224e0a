import type { Locator } from 'playwright-core';
import { dragChosen } from '../../e2e/plan-hands';
import { chooseOne, fillOne, goTo, oneOf, oneWay, pressKeys, pressOne, tickOne } from './controls';
import { AREA_KEYS, type Gesture, type Hand, type Made } from './gesture';

const LISTS: readonly string[] = [
  '1 FP ground\n2 PWR SW\n3 reset\n4 GND\n5 nc',
  '1\t+5V\n2\t+5V\n3\tD-\n4\tD-\n5\tD+\n6\tD+\n7\tGND\n8\tGND\n9\tkey\n10\tNC',
  'PWR_LED+ PWR_LED- PWR_SW GND',
];
const SIGNALS = ['power sw', 'ground', 'not conn', 'reset', '+5', 'LED', 'speaker', 'data'];

const PLAN_KEYS = [
  ...['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Shift+ArrowRight', 'Shift+ArrowDown'],
  ...['Alt+ArrowLeft', 'Alt+ArrowUp', 'r', 'Shift+R', 'Tab', 'Shift+Tab'],
  ...['Delete', 'Control+d', 'Control+c', 'Control+v'],
];
const GRID_KEYS = [
  ...['ArrowLeft', 'ArrowRight', 'ArrowDown', 'Shift+ArrowRight', 'Shift+ArrowDown', 'Control+a'],
  ...['Delete', 'Control+d', 'Control+c', 'Control+x', 'Control+v'],
];

const pageOf = ({ page }: Hand): Locator => page.getByRole('main', { name: 'Document' });

/** Chooses one of the entries of a shelf: a connector, a lead, or something of a unit. */
async function choose({ page, dice }: Hand, tab: 'Board' | 'Case' | 'Units'): Promise<string | undefined> {
  await goTo(page, AREA_KEYS.document);
  const shelf = page.getByRole('region', { name: 'Sheets' });
  await shelf.getByRole('tab', { name: tab, exact: true }).click();
  const entry = await oneOf(shelf.getByRole('option'), dice);
  await entry?.click();
  return (await entry?.textContent()) ?? undefined;
}

async function openPage({ page }: Hand, name: 'Board plan' | 'Connector' | 'Lead'): Promise<void> {
  await page.getByRole('main', { name: 'Document' }).getByRole('tab', { name, exact: true }).click();
}

/** Does something with one of the controls of the page that shows. */
const workOne = (hand: Hand, part = pageOf(hand)) =>
  oneWay(hand, [
    () => fillOne(hand, part),
    () => fillOne(hand, part),
    () => chooseOne(hand, part),
    () => pressOne(hand, part),
    () => tickOne(hand, part),
  ]);

/** Adds one of what a list of the library offers, or what was laid out in the dialog. */
async function addFrom(
  hand: Hand,
  tab: 'Board' | 'Case' | 'Units',
  title: string,
): Promise<Made | undefined> {
  const { page, dice } = hand;
  await choose(hand, tab);
  const shelf = page.getByRole('region', { name: 'Sheets' });
  await shelf.getByRole('button', { name: `${title}…` }).click();
  const dialog = page.getByRole('dialog', { name: title });
  await dialog.getByRole('searchbox').waitFor();
  const option = await oneOf(dialog.getByRole('option'), dice);
  const said = (await option?.textContent()) ?? '';
  await option?.click();
  return { said: `${title}: ${said.slice(0, 50)}` };
}

/** Opens one of the ways of filling the pins of a connector. */
async function openWay(hand: Hand, way: string, title: string): Promise<Locator | undefined> {
  if ((await choose(hand, 'Board')) === undefined) return undefined;
  await openPage(hand, 'Connector');
  await pageOf(hand).getByRole('button', { name: way }).click();
  const dialog = hand.page.getByRole('dialog', { name: new RegExp(title) });
  await dialog.waitFor();
  return dialog;
}

async function moveOnPlan(hand: Hand): Promise<Made | undefined> {
  const { page, dice } = hand;
  const connector = await choose(hand, 'Board');
  if (connector === undefined) return undefined;
  await openPage(hand, 'Board plan');
  const plan = page.getByRole('application', { name: /^Board plan/ });
  await plan.getByRole('img').waitFor();
  if (dice.oneIn(2)) {
    await plan.focus();
    const { said } = await pressKeys(hand, PLAN_KEYS, 3);
    return { said: `${connector}: ${said}` };
  }
  const to = [5 + dice.below(230), 5 + dice.below(230)] as const;
  const drops = !dice.oneIn(5);
  await page.getByRole('contentinfo').getByRole('button', { name: 'Show the whole board' }).click();
  await dragChosen(page, to, drops);
  return { said: `${connector}: ${drops ? 'dragged' : 'dragged and dropped by Escape'} to ${to}` };
}

async function editPins(hand: Hand): Promise<Made | undefined> {
  const { page, dice } = hand;
  const connector = await choose(hand, 'Board');
  if (connector === undefined) return undefined;
  await openPage(hand, 'Connector');
  const cell = await oneOf(page.getByRole('grid', { name: /^Header / }).getByRole('gridcell'), dice);
  if (cell === null) return undefined;
  await cell.click();
  if (dice.oneIn(2)) {
    const { said } = await pressKeys(hand, GRID_KEYS, 4);
    return { said: `pins of ${connector}: ${said}` };
  }
  const signal = pageOf(hand).getByRole('combobox', { name: 'Signal' }).first();
  const typed = dice.pick(SIGNALS) ?? 'ground';
  // As a hand does: what scrolls into view while its list opens closes the list.
  await signal.click();
  await signal.fill(typed);
  const option = await oneOf(page.locator('.popover [role="option"]'), dice);
  await option?.click();
  return { said: `a pin of ${connector} is “${typed}”` };
}

async function pasteList(hand: Hand): Promise<Made | undefined> {
  const dialog = await openWay(hand, 'Paste a pin list…', '^Paste a pin list');
  if (dialog === undefined) return undefined;
  const list = hand.dice.pick(LISTS) ?? '';
  await dialog.getByRole('textbox', { name: 'The list, as it was copied' }).fill(list);
  await hand.page.keyboard.press('Control+Enter');
  return { said: `pasted ${JSON.stringify(list)}` };
}

async function looksLike(hand: Hand): Promise<Made | undefined> {
  const dialog = await openWay(hand, 'Looks like…', '[Ll]ooks like');
  if (dialog === undefined) return undefined;
  await dialog
    .getByRole('button', { name: /^(Cancel|Close)$/ })
    .first()
    .waitFor();
  const option = await oneOf(dialog.getByRole('option'), hand.dice);
  await option?.click();
  return pressOne(hand, dialog, /Close|Cancel/);
}

/** Unfolds the names, the shape and the place of the chosen connector. */
async function unfoldShape(hand: Hand): Promise<void> {
  const names = pageOf(hand).getByRole('button', { name: /^Names, shape and place/ });
  if ((await names.isVisible()) && (await names.getAttribute('aria-expanded')) === 'false')
    await names.click();
}

/** What would cost something is asked about first; the question is answered one way or the other. */
async function answerQuestion(hand: Hand): Promise<string> {
  const question = hand.page.getByRole('alertdialog');
  if (!(await question.isVisible())) return '';
  const made = await pressOne(hand, question);
  return made === undefined ? '' : `, and ${made.said}`;
}

async function number(hand: Hand): Promise<Made | undefined> {
  const connector = await choose(hand, 'Board');
  if (connector === undefined) return undefined;
  await openPage(hand, 'Connector');
  await unfoldShape(hand);
  await pageOf(hand).getByRole('button', { name: 'Number it another way…' }).click();
  const dialog = hand.page.getByRole('dialog', { name: /^Number / });
  const way = await oneOf(dialog.getByRole('listbox').getByRole('option'), hand.dice);
  await way?.click();
  if (hand.dice.oneIn(2)) await chooseOne(hand, dialog);
  const made = await pressOne(hand, dialog, /Close|Cancel/);
  return made && { said: `numbered ${connector}: ${made.said}${await answerQuestion(hand)}` };
}

/** Notes a reading of the meter, or does something else of its window. */
async function measure(hand: Hand): Promise<Made | undefined> {
  const dialog = await openWay(hand, 'From a meter…', 'from a meter$');
  if (dialog === undefined) return undefined;
  await dialog.locator('[aria-busy="false"]').first().waitFor();
  const answers = dialog.getByRole('list', { name: 'Answers' });
  const made =
    (hand.dice.oneIn(4) ? undefined : await pressOne(hand, answers)) ?? (await pressOne(hand, dialog));
  return made && { said: `meter: ${made.said}` };
}

export const DOCUMENT_GESTURES: readonly Gesture[] = [
  {
    name: 'a control of the board plan',
    make: async (hand) => {
      await goTo(hand.page, AREA_KEYS.document);
      if (hand.dice.oneIn(2)) await choose(hand, 'Board');
      await openPage(hand, 'Board plan');
      return workOne(hand);
    },
  },
  { name: 'move on the board plan', make: moveOnPlan },
  {
    name: 'a control of a connector',
    make: async (hand) => {
      const chosen = await choose(hand, 'Board');
      await openPage(hand, 'Connector');
      if (hand.dice.oneIn(2)) await unfoldShape(hand);
      const made = await workOne(hand);
      return made && { said: `${chosen}: ${made.said}${await answerQuestion(hand)}` };
    },
  },
  { name: 'edit pins', make: editPins },
  {
    name: 'a control of a lead',
    make: async (hand) => {
      const chosen = await choose(hand, 'Case');
      await openPage(hand, 'Lead');
      const made = await workOne(hand);
      return made && { said: `${chosen}: ${made.said}` };
    },
  },
  {
    name: 'a control of a unit',
    make: async (hand) => {
      const chosen = await choose(hand, 'Units');
      const made = await workOne(hand);
      return made && { said: `${chosen}: ${made.said}` };
    },
  },
  { name: 'number a connector', make: number },
  { name: 'add a connector', make: (hand) => addFrom(hand, 'Board', 'Add a connector') },
  { name: 'add a lead', make: (hand) => addFrom(hand, 'Case', 'Add a lead') },
  {
    name: 'add a unit, and change it',
    make: async (hand) => {
      const added = await addFrom(hand, 'Units', 'Add a unit');
      const dialog = hand.page.getByRole('dialog').filter({ hasText: 'One more connector' });
      await dialog.waitFor();
      const made = await workOne(hand, dialog);
      return { said: `${added?.said}: ${made?.said ?? 'left as it is'}` };
    },
  },
  { name: 'paste a pin list', make: pasteList },
  { name: 'take over what it looks like', make: looksLike },
  { name: 'note a reading', make: measure },
];
