import { fromMenu, goTo, pressKeys, pressOne, tickOne } from './controls';
import { AREA_KEYS, type Gesture, type Hand } from './gesture';

async function toSteps({ page }: Hand, tab = 'Steps') {
  await goTo(page, AREA_KEYS.handOver);
  await page.getByRole('main', { name: 'Step' }).waitFor();
  const shelf = page.getByRole('region', { name: 'Steps and machine' });
  await shelf.getByRole('tab', { name: tab, exact: true }).click();
  return shelf;
}

export const HAND_OVER_GESTURES: readonly Gesture[] = [
  { name: 'tick a step', make: async (hand) => tickOne(hand, await toSteps(hand)) },
  {
    name: 'what this machine has',
    make: async (hand) => tickOne(hand, await toSteps(hand, 'This machine')),
  },
  {
    name: 'the page of a step',
    make: async (hand) => {
      await toSteps(hand);
      return pressOne(hand, hand.page.getByRole('main', { name: 'Step' }), /…|[Ll]arge letters|Go to/);
    },
  },
  {
    name: 'start the ticks again',
    make: async (hand) => {
      const shelf = await toSteps(hand);
      const again = shelf.getByRole('button', { name: 'Start again' });
      if (!(await again.isVisible())) return undefined;
      await again.click();
      return { said: 'started again' };
    },
  },
  {
    name: 'steps in large letters',
    make: async (hand) => {
      await toSteps(hand);
      await hand.page.keyboard.press('F9');
      await hand.page.getByRole('dialog').waitFor();
      return pressKeys(hand, ['Enter', 'Space', 'Backspace'], 5);
    },
  },
  {
    name: 'the view by the menu',
    make: async (hand) => {
      await toSteps(hand);
      return fromMenu(hand.page, 'View', hand.dice.oneIn(2) ? /^Turn the view/ : /^Mirror the view/);
    },
  },
];
