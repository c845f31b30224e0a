import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { Build, Seat } from '../../boards/document/build';
import { connectorOf, leadOf, plugOf, seatOf } from '../../boards/document/lookup';
import { measureByTable } from '../../boards/drawing/measure';
import { orientationOf, oriented } from '../../boards/drawing/orientation';
import { plugCentre } from '../../boards/fit/geometry';
import { sceneOf } from '../../renderer/canvas/scene/scene-of';
import { toScreen, type View } from '../../renderer/canvas/view';
import { plugTitle } from '../../renderer/words/plug-words';
import { seatWords } from '../../renderer/words/seat-words';
import { leadsIn, plain } from './reading';

/** Which plug, as the shelf names it. */
export function titleOf(build: Build, ref: Pick<Seat, 'lead' | 'plug'>): string {
  const lead = leadOf(build, ref.lead);
  const plug = plugOf(build, ref);
  if (!lead || !plug) throw new Error(`No plug ${ref.lead} ${ref.plug}`);
  return plugTitle(lead, plug);
}

/** The row of the shelf that lists a plug. */
export function rowOf(page: Page, title: string) {
  return page.getByRole('grid', { name: 'Leads' }).locator(`[role="row"][aria-label^="${title}, "]`);
}

/** Drags a plug from where it is listed on the shelf to a seat, turned on the way by R. */
export async function seatByMouse(page: Page, build: Build, seat: Seat): Promise<void> {
  const row = rowOf(page, titleOf(build, seat));
  await row.scrollIntoViewIfNeeded();
  const box = await row.boundingBox();
  if (box === null) throw new Error(`${seat.lead} is not on the shelf`);
  await dragFrom(page, build, seat, { x: box.x + 30, y: box.y + box.height / 2 });
}

/** Drags a seated plug on the drawing from its pins to others, turned on the way by R. */
export async function moveByMouse(page: Page, build: Build, seat: Seat): Promise<void> {
  const from = seatOf(build, seat);
  if (from === undefined) throw new Error(`${seat.lead} is not seated`);
  await page.keyboard.press('Control+0');
  await dragFrom(page, build, seat, await pointOnScreen(page, build, from));
}

async function dragFrom(page: Page, build: Build, seat: Seat, { x, y }: OnPage): Promise<void> {
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 8, y - 8, { steps: 2 });
  const quarters = ((seat.turn - (seatOf(build, seat)?.turn ?? 0) + 360) % 360) / 90;
  for (let turned = 0; turned < quarters; turned++) await page.keyboard.press('r');
  // The whole board: the connector may be anywhere.
  await page.keyboard.press('Control+0');
  const goal = await pointOnScreen(page, build, seat);
  await page.mouse.move(goal.x, goal.y, { steps: 4 });
  await page.mouse.up();
  await expectSeated(page, build, seat);
}

interface OnPage {
  readonly x: number;
  readonly y: number;
}

/** Where the middle of a seated plug is drawn, in pixels of the page. */
export async function pointOnScreen(page: Page, build: Build, seat: Seat): Promise<OnPage> {
  const plug = plugOf(build, seat);
  const connector = connectorOf(build.board, seat.connector);
  if (!plug || !connector) throw new Error(`No such seat ${JSON.stringify(seat)}`);
  const { xMm, yMm } = plugCentre(plug, connector, seat);
  const { view, left, top } = await drawingOn(page);
  const { x, y } = toScreen(view, oriented(orientationOf(build.view), { x: xMm, y: yMm }));
  return { x: left + x, y: top + y };
}

/** Where a wire of a lead is drawn, in the middle of its last straight piece. */
export async function wireOnScreen(page: Page, build: Build, lead: string, index: number): Promise<OnPage> {
  const { wires } = sceneOf(build, { view: build.view, measure: measureByTable });
  const shape = wires.find(({ plug, wire }) => plug.lead === lead && wire === index);
  const [from, to] = shape?.path.slice(-2) ?? [];
  if (!from || !to) throw new Error(`${lead} has no such wire on the drawing`);
  const { view, left, top } = await drawingOn(page);
  const { x, y } = toScreen(view, { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 });
  return { x: left + x, y: top + y };
}

/** How the drawing lies on the page, as the drawing library has it. */
export function drawingOn(page: Page): Promise<{ view: View; left: number; top: number }> {
  return page.evaluate(() => {
    const [stage] = window.Konva?.stages ?? [];
    if (!stage) throw new Error('There is no drawing on the page');
    const { left, top } = stage.container().getBoundingClientRect();
    return { view: { scale: stage.scaleX(), x: stage.x(), y: stage.y() }, left, top };
  });
}

/** The shelf lists the plug on the pins of the seat. */
export async function expectSeated(page: Page, build: Build, seat: Seat): Promise<void> {
  const title = titleOf(build, seat);
  await expect.poll(() => leadsIn(page, 'Seated')).toContain(`${title}, ${plain(seatWords(build, seat))}`);
}

/** Takes a plug off its pins: chosen on the shelf, then Delete. */
export async function takeOff(page: Page, build: Build, ref: Pick<Seat, 'lead' | 'plug'>): Promise<void> {
  const title = titleOf(build, ref);
  await rowOf(page, title).click();
  await page.keyboard.press('Delete');
  await expect
    .poll(() => leadsIn(page, 'On the shelf'))
    .toContainEqual(expect.stringMatching(new RegExp(`^${title}, `)));
}

declare global {
  interface Window {
    /** The drawing library lists its stages on itself; the view of the drawing is the stage's own. */
    readonly Konva?: {
      readonly stages: readonly {
        readonly width: () => number;
        readonly height: () => number;
        readonly scaleX: () => number;
        readonly x: () => number;
        readonly y: () => number;
        readonly container: () => HTMLElement;
      }[];
    };
  }
}
