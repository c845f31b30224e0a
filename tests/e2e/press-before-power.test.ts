import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Build, Seat } from '../../boards/document/build';
import { wired } from '../boards/library/demo-files';
import { demoFile } from './bench-work';
import { moveByMouse, rowOf, seatByMouse, takeOff, wireOnScreen } from './hands';
import { plain } from './reading';
import { workplaceFor } from './workplace';

/** The button on the screen is pressed before the real one, and what would happen is read in words. */
const workplace = workplaceFor('all tests');
let page: Page;

const seatOf = (lead: string): Seat => {
  const seat = wired.seats.find((one) => one.lead === lead);
  if (!seat) throw new Error(`The demo has a seat for ${lead}`);
  return seat;
};

beforeAll(async () => {
  copyFileSync(demoFile('wired.build.json'), join(workplace.home, 'wired.build.json'));
  page = await workplace.open([join(workplace.home, 'wired.build.json')]);
  await page.getByRole('grid', { name: 'Leads' }).waitFor();
});

async function story(): Promise<string> {
  return plain(
    await page.getByRole('region', { name: 'What would happen' }).getByRole('status').textContent(),
  );
}

async function hold(button: 'power' | 'reset', on: boolean): Promise<void> {
  const toggle = page.getByRole('button', { name: `Hold ${button}` });
  if ((await toggle.getAttribute('aria-pressed')) !== String(on)) await toggle.click();
}

describe('the machine wired right', () => {
  it('starts when power is held, and shows which lamps are lit once it runs', async () => {
    await hold('power', true);
    expect(await story()).toContain('The machine starts.');
    await hold('power', false);
    await page.getByRole('radio', { name: 'Running' }).click();
    await page.getByRole('button', { name: 'Drive busy' }).click();
    const lamps = page.getByRole('list', { name: 'Lamps' });
    expect(plain(await lamps.textContent())).toMatch(/Drive LED\s*lit, [\d.]+ to [\d.]+ mA/);
    await page.getByRole('radio', { name: 'Standby' }).click();
  });
});

async function wayRead(): Promise<string> {
  return plain(await page.getByRole('region', { name: 'Way of the current' }).textContent());
}

describe('a wire of a lit lead', () => {
  it('clicked on the drawing, it tells the way of its current in volts and amps', async () => {
    await page.getByRole('radio', { name: 'Running' }).click();
    // Near enough to see single wires; the drawing may still be on its way there at the first click.
    await rowOf(page, 'Power LED').click();
    const clickWire = async () => {
      const { x, y } = await wireOnScreen(page, wired, 'power-led', 0);
      await page.mouse.click(x, y);
      return wayRead();
    };
    await expect.poll(clickWire).toContain('The green wire of Power LED.');
    expect(await wayRead()).toMatch(/through the green wire of Power LED.*: [\d.]+ V, [\d.]+ mA/);
  });

  it('is chosen among the wires of its plug by the keyboard too', async () => {
    const choice = page.getByRole('list', { name: 'Wires by hole' }).getByRole('button', { name: /white/ });
    await choice.focus();
    await page.keyboard.press('Space');
    expect(await choice.getAttribute('aria-pressed')).toBe('true');
    expect(await wayRead()).toContain('The white wire of Power LED.');
    await page.getByRole('radio', { name: 'Standby' }).click();
  });
});

describe('the power lead on the drive LED pins', () => {
  it('nothing happens on a press, and the words say where the button is and why', async () => {
    const drive = seatOf('drive-led');
    const wrong: Seat = { ...drive, lead: 'power-switch', plug: seatOf('power-switch').plug };
    await takeOff(page, wired, drive);
    const without: Build = { ...wired, seats: wired.seats.filter((seat) => seat !== drive) };
    await moveByMouse(page, without, wrong);
    await hold('power', true);
    const words = await story();
    expect(words).toContain('Nothing happens.');
    expect(words).toMatch(/joins pin 1 \(drive LED \+\) of PANEL and pin 3 \(drive LED −\) of PANEL/);
    expect(words).toContain('Nothing touches the power switch input');
    await hold('power', false);
  });

  it('chosen among the findings, it tells the way that the current would take through the switch', async () => {
    await page.getByRole('list', { name: 'Findings', exact: true }).getByRole('button').first().click();
    await expect.poll(wayRead).toMatch(/power held.* flows, from the supply to ground:.*\d V, [\d.]+ mA/);
  });

  it('moved back with the board live, the next press starts the machine', async () => {
    const right = seatOf('power-switch');
    const before: Build = {
      ...wired,
      seats: wired.seats.filter(({ lead }) => lead !== 'drive-led' && lead !== 'power-switch'),
    };
    const wrong: Seat = { ...seatOf('drive-led'), lead: 'power-switch', plug: right.plug };
    await hold('power', true);
    await moveByMouse(page, { ...before, seats: [...before.seats, wrong] }, right);
    expect(await story()).toContain('The machine starts.');
    await seatByMouse(page, { ...before, seats: [...before.seats, right] }, seatOf('drive-led'));
  });
});

describe('a resistor that was measured', () => {
  it('stated for its pin, takes the place of the usual range; nonsense is refused in words', async () => {
    await page.keyboard.press('Control+1');
    await page.getByRole('tab', { name: 'Board', exact: true }).click();
    await page.getByRole('option', { name: /^PANEL/ }).click();
    const row = page.getByRole('grid', { name: 'Pins of PANEL' }).getByRole('row').nth(1);
    await row.click();
    const line = page.getByRole('textbox', { name: 'resistor in the LED feed, in ohms' });
    expect(plain(await line.getAttribute('placeholder'))).toBe('usually 150 Ω to 1 kΩ');
    await line.fill('many');
    await line.press('Enter');
    await page.getByText('This is no number of ohms.').waitFor();
    await line.fill('4.7k');
    await line.press('Enter');
    await page.getByText('Outside of what is usual').waitFor();
    expect(await line.inputValue()).toBe('4700');
    await line.fill('');
    await line.press('Enter');
    await expect.poll(() => page.getByText('Outside of what is usual').count()).toBe(0);
    await row.click();
    await page.keyboard.press('Control+z');
    await expect.poll(() => line.inputValue()).toBe('4700');
  });
});

describe('a socket that a wake jumper feeds', () => {
  it('is dead while the machine is off once its jumper lies on the main supply, and alive again undone', async () => {
    await page.keyboard.press('Control+1');
    await page.getByRole('tab', { name: 'Board', exact: true }).click();
    await page.getByRole('option', { name: /^USB_1/ }).click();
    await page.getByRole('grid', { name: 'Pins of USB_1' }).getByRole('row').nth(1).click();
    await page.getByRole('button', { name: /Fed by \(wake jumper\)/ }).click();
    await page.getByRole('option', { name: 'only while it runs' }).click();
    await page.keyboard.press('Control+2');
    expect(await wayRead()).toContain('Pin 1 of USB_1.');
    expect(await wayRead()).not.toContain('standby rail');
    await page.keyboard.press('Control+z');
    await expect.poll(wayRead).toContain('the +5 V standby rail');
  });
});
