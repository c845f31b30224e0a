import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { observationNamed } from '../../boards/diagnosis/observations/observations';
import type { Seat } from '../../boards/document/build';
import { connectorOf } from '../../boards/document/lookup';
import { measureByTable } from '../../boards/drawing/measure';
import { plugShapeOf } from '../../boards/drawing/plug-shape';
import { seatedPlug } from '../../boards/fit/seated-plug';
import { sceneOf } from '../../renderer/canvas/scene/scene-of';
import { wired } from '../boards/library/demo-files';
import { demoFile } from './bench-work';
import { tabTo } from './keys';
import { plain } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('each test');

/** The middle of a box, in millimetres of the drawing. */
interface Drawn {
  readonly x: number;
  readonly y: number;
  /** Within the pane, as the drawing lies. */
  readonly isInSight: boolean;
}

/** From now on keeps all boxes that the canvas draws with dashes. */
async function dashedOn(page: Page): Promise<void> {
  await page.evaluate(() => {
    const { prototype } = CanvasRenderingContext2D;
    const { roundRect, stroke, beginPath } = prototype;
    const boxes: Drawn[] = [];
    let traced: Drawn[] = [];
    Object.assign(window, { dashed: boxes });
    prototype.beginPath = function () {
      traced = [];
      beginPath.call(this);
    };
    prototype.roundRect = function (left, top, width, height, radii) {
      const [x, y] = [left + width / 2, top + height / 2];
      const px = this.getTransform().transformPoint({ x, y });
      const { canvas } = this;
      traced.push({ x, y, isInSight: px.x > 0 && px.y > 0 && px.x < canvas.width && px.y < canvas.height });
      roundRect.call(this, left, top, width, height, radii);
    };
    prototype.stroke = function () {
      if (this.getLineDash().length > 0) boxes.push(...traced);
      (stroke as () => void).call(this);
    };
  });
}

const drawnIn = (page: Page) =>
  page.evaluate(() => (window as unknown as { dashed: Drawn[] }).dashed.splice(0));

/** Where a plug is drawn in a seat. */
function middleOf(seat: Seat): readonly [number, number] {
  const { blocks } = sceneOf(wired, { view: wired.view, measure: measureByTable });
  const block = blocks.find(({ connector }) => connector.id === seat.connector);
  if (!block || !connectorOf(wired.board, seat.connector)) throw new Error(`No drawing of ${seat.connector}`);
  const { body } = plugShapeOf(seatedPlug(wired, seat), block);
  return [body.x + body.width / 2, body.y + body.height / 2];
}

const seatedIn = (lead: string): Seat => {
  const seat = wired.seats.find((each) => each.lead === lead);
  if (!seat) throw new Error(`${lead} is not seated`);
  return seat;
};

it('the place where a suspected plug may sit is drawn dashed and told, and goes with the suspect by the arrows', async () => {
  const file = join(workplace.home, 'bench.build.json');
  copyFileSync(demoFile('wired.build.json'), file);
  const page = await workplace.open([file]);
  await page.keyboard.press('Control+4');
  const suspects = page.getByRole('listbox', { name: /^Suspects/ }).getByRole('option');
  await suspects.first().waitFor({ timeout: 60_000 });
  const question = observationNamed('nothing-on-press')?.question ?? '';
  await page
    .getByRole('grid', { name: 'All questions' })
    .getByRole('button', { name: `Yes: ${question}` })
    .click();
  await page.locator('.diagnose-area:not(:has([aria-busy="true"]))').waitFor({ timeout: 60_000 });
  await dashedOn(page);

  const drawing = page.getByRole('region', { name: 'Where it sits' });
  const [power, reset] = [seatedIn('power-switch'), seatedIn('reset-switch')];
  await suspects.filter({ hasText: 'A panel lead on the wrong pins' }).click();
  // Of the wrong places of a two-pin plug that of its like neighbour is the likeliest: each is where the other sits.
  await drawing.getByText(/Outlined: Power switch and Reset switch\. Dashed: where both may sit/).waitFor();
  await drawing.getByText('May have changed places').waitFor();
  const picture = drawing.getByRole('img');
  expect(plain(await picture.getAttribute('aria-label'))).toContain(
    'Dashed: where both may sit: Power switch on',
  );
  const drawn = await drawnIn(page);
  for (const seat of [power, reset])
    expect(drawn.some(({ x, y }) => Math.hypot(x - middleOf(seat)[0], y - middleOf(seat)[1]) < 0.01)).toBe(
      true,
    );

  // By the arrows to a suspect that no plug is about: nothing is dashed any more.
  await tabTo(page, page.getByRole('listbox', { name: /^Suspects/ }));
  const isGone = async () => {
    await page.keyboard.press('ArrowDown');
    return (await drawing.getByText('May have changed places').count()) === 0;
  };
  await expect.poll(isGone).toBe(true);
  await expect.poll(async () => (await drawnIn(page)).length === 0).toBe(true);
  expect(plain(await picture.getAttribute('aria-label'))).not.toContain('Dashed');
});

it('the shown suspect is in sight again after a visit to another area', async () => {
  const file = join(workplace.home, 'bench.build.json');
  copyFileSync(demoFile('every-cable.build.json'), file);
  const page = await workplace.open([file]);
  await page.keyboard.press('Control+4');
  const drawing = page.getByRole('region', { name: 'Where it sits' });
  const told = drawing.getByText(
    'Outlined: CPU power and Main power. Dashed: its place, which may be empty.',
  );
  await told.waitFor({ timeout: 60_000 });
  // The Wire area shows the panel first, which is at the other end of the board.
  await page.keyboard.press('Control+2');
  await page.getByRole('region', { name: 'Shelf' }).waitFor();
  await dashedOn(page);
  await page.keyboard.press('Control+4');
  await told.waitFor();
  await expect.poll(async () => (await drawnIn(page)).at(-1)?.isInSight).toBe(true);
});
