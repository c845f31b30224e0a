import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import type { Build, Seat } from '../../boards/document/build';
import { connectorOf } from '../../boards/document/lookup';
import { cellCentre } from '../../boards/fit/geometry';
import { properSeats } from '../../boards/fit/proper-seats';
import { placeWords } from '../../renderer/areas/wire/placing/candidate-words';
import {
  type Direction,
  firstCandidate,
  otherConnector,
  stepCandidate,
} from '../../renderer/areas/wire/placing/steps';
import { expectSeated, rowOf, titleOf } from './hands';
import { plain } from './reading';

const ARROWS: Readonly<Record<Direction, string>> = {
  left: 'ArrowLeft',
  right: 'ArrowRight',
  up: 'ArrowUp',
  down: 'ArrowDown',
};
const DIRECTIONS = ['left', 'right', 'up', 'down'] as const;

/** Goes on with Tab until the focus is on something, or in it. */
export async function tabTo(page: Page, target: Locator): Promise<void> {
  await target.waitFor();
  for (let presses = 0; presses < 60; presses++) {
    if (await target.evaluate((element) => element.contains(document.activeElement))) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Sixty tabs do not reach ${target}`);
}

/** Goes down a list until the focus is on an entry. */
export async function arrowTo(page: Page, entry: Locator): Promise<void> {
  await entry.waitFor();
  for (let presses = 0; presses < 40; presses++) {
    if (await entry.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('ArrowDown');
  }
  throw new Error(`The arrows do not reach ${entry}`);
}

/** Seats a plug by keys alone: found on the shelf with the arrows, Enter, moved and turned, Enter. */
export async function seatByKeys(page: Page, build: Build, seat: Seat): Promise<void> {
  await takeByKeys(page, titleOf(build, seat));
  const bar = page.getByRole('application');
  await bar.waitFor();

  let here = firstCandidate(build, seat, properSeats(build, seat)[0]);
  while (here && here.connector !== seat.connector) {
    await page.keyboard.press('PageDown');
    here = otherConnector(build, here, 1);
  }
  if (here === null) throw new Error('The board has no connector');
  while (here.turn !== seat.turn) {
    await page.keyboard.press('r');
    here = { ...here, turn: here.turn === 270 ? 0 : here.turn === 180 ? 270 : here.turn === 90 ? 180 : 90 };
  }
  while (distance(build, here, seat) > 0) {
    const { direction, there } = nearestStep(build, here, seat);
    await page.keyboard.press(ARROWS[direction]);
    here = there;
  }
  await expect.poll(async () => plain(await bar.textContent())).toContain(plain(placeWords(build, seat)));
  await page.keyboard.press('Enter');
  await expectSeated(page, build, seat);
}

/** From the list on the shelf, where the focus is, into the hand. */
async function takeByKeys(page: Page, title: string): Promise<void> {
  const list = page.getByRole('grid', { name: 'Leads' });
  await tabTo(page, list);
  await page.keyboard.press('Home');
  await arrowTo(page, rowOf(page, title));
  await page.keyboard.press('Enter');
}

function nearestStep(build: Build, here: Seat, goal: Seat): { direction: Direction; there: Seat } {
  const steps = DIRECTIONS.map((direction) => ({ direction, there: stepCandidate(build, here, direction) }));
  const [best] = steps.toSorted((a, b) => distance(build, a.there, goal) - distance(build, b.there, goal));
  if (best === undefined || distance(build, best.there, goal) >= distance(build, here, goal)) {
    throw new Error(`No arrow leads from ${JSON.stringify(here)} to ${JSON.stringify(goal)}`);
  }
  return best;
}

function distance(build: Build, a: Seat, b: Seat): number {
  const [from, to] = [connectorOf(build.board, a.connector), connectorOf(build.board, b.connector)];
  if (!from || !to) throw new Error('No such connector');
  const [p, q] = [cellCentre(from, a.at), cellCentre(to, b.at)];
  return Math.round(100 * Math.hypot(p.xMm - q.xMm, p.yMm - q.yMm));
}
