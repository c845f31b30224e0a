import type { Page } from 'playwright-core';
import { chooseOne, goTo, oneOf, pressKeys, pressOne } from './controls';
import { AREA_KEYS, type Gesture, type Hand, type Made } from './gesture';

const RECKON_MS = 60_000;
const REMARKS = ['Fan twitches once', 'board warm at the left edge', '<b>smell</b>', ' ', 'x'.repeat(300)];

/** One of the questions answered by yes or no; the suspects are reckoned with it. */
export async function answer({ page, dice }: Hand): Promise<string> {
  await page.keyboard.press(AREA_KEYS.diagnose);
  const questions = page.getByRole('grid', { name: 'All questions' });
  await questions.waitFor();
  const button = await oneOf(questions.getByRole('button', { name: /^(Yes|No):/ }), dice);
  await button?.click();
  await reckoned(page);
  return (await button?.getAttribute('aria-label')) ?? '';
}

const reckoned = (page: Page) => page.locator('main[aria-busy="false"]').waitFor({ timeout: RECKON_MS });

async function toSuspects({ page }: Hand): Promise<void> {
  await goTo(page, AREA_KEYS.diagnose);
  await page.getByRole('grid', { name: 'All questions' }).waitFor();
}

async function openTab({ page }: Hand, name: RegExp) {
  const pane = page.getByRole('complementary', { name: 'What to do' });
  await pane.getByRole('tab', { name }).click();
  return pane;
}

async function byKeys(hand: Hand): Promise<Made | undefined> {
  const { page, dice } = hand;
  await toSuspects(hand);
  const row = await oneOf(page.getByRole('grid', { name: 'All questions' }).getByRole('row'), dice);
  await row?.focus();
  return pressKeys(hand, ['ArrowDown', 'ArrowUp', 'y', 'n', 'y', 'n'], 3);
}

async function inLargeLetters(hand: Hand): Promise<Made | undefined> {
  const { page } = hand;
  await toSuspects(hand);
  await reckoned(page);
  await page.keyboard.press('F9');
  await page.getByRole('dialog').waitFor();
  return pressKeys(hand, ['y', 'n', 's', '1', '2', 'Control+z'], 3);
}

async function weigh(hand: Hand): Promise<Made | undefined> {
  const { page, dice } = hand;
  await toSuspects(hand);
  await reckoned(page);
  const suspects = page.getByRole('listbox', { name: /^Suspects/ }).getByRole('option', { disabled: false });
  const suspect = await oneOf(suspects, dice);
  await suspect?.click();
  return chooseOne(hand, page.getByRole('main', { name: 'Suspects' }));
}

async function remark(hand: Hand): Promise<Made | undefined> {
  const { page, dice } = hand;
  await toSuspects(hand);
  const pane = await openTab(hand, /^Log/);
  const said = dice.pick(REMARKS) ?? '';
  await pane.getByRole('textbox').fill(said);
  await page.keyboard.press('Enter');
  return { said: `remarked “${said.slice(0, 24)}”` };
}

export const DIAGNOSE_GESTURES: readonly Gesture[] = [
  {
    name: 'answer a question',
    make: async (hand) => {
      await toSuspects(hand);
      return { said: await answer(hand) };
    },
  },
  {
    name: 'take an answer back',
    make: async (hand) => {
      await toSuspects(hand);
      const questions = hand.page.getByRole('grid', { name: 'All questions' });
      const button = await oneOf(
        questions.locator('button[aria-pressed="false"][aria-label^="Not looked:"]'),
        hand.dice,
      );
      await button?.click();
      return button === null ? undefined : { said: 'took an answer back' };
    },
  },
  { name: 'answer by keys', make: byKeys },
  {
    name: 'what came of a trial',
    make: async (hand) => {
      await toSuspects(hand);
      await reckoned(hand.page);
      const pane = await openTab(hand, /^Next trial/);
      const results = pane.getByRole('list', { name: 'Results' });
      return (await results.isVisible()) ? pressOne(hand, results) : undefined;
    },
  },
  {
    name: 'the panel of trials, or the log',
    make: async (hand) => {
      await toSuspects(hand);
      await reckoned(hand.page);
      const pane = await openTab(hand, hand.dice.oneIn(2) ? /^Log/ : /^Next trial/);
      return pressOne(hand, pane, /…|[Ll]arge letters|Undo/);
    },
  },
  { name: 'remark', make: remark },
  { name: 'how often a cause is met here', make: weigh },
  { name: 'the next trial in large letters', make: inLargeLetters },
  {
    name: 'the view of the suspect',
    make: async (hand) => {
      await toSuspects(hand);
      await hand.page.keyboard.press('Control+Shift+ArrowRight');
      return { said: 'turned the view' };
    },
  },
];
