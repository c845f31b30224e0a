import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { beforeAll, expect, it } from 'vitest';
import type { Build, Seat } from '../../boards/document/build';
import { leadOf } from '../../boards/document/lookup';
import { slips, wired } from '../boards/library/demo-files';
import { demoFile } from './bench-work';
import { moveByMouse, seatByMouse, takeOff } from './hands';
import { findingsIn, leadsIn, stateOf } from './reading';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('all tests');
let page: Page;
beforeAll(async () => {
  copyFileSync(demoFile('wired.build.json'), join(workplace.home, 'wired.build.json'));
  page = await workplace.open([join(workplace.home, 'wired.build.json')]);
  await page.getByRole('grid', { name: 'Leads' }).waitFor();
});

/** One slip of the demo: which leads are wrongly seated in it, and what has to be read then. */
interface Slip {
  readonly situation: string;
  readonly leads: readonly string[];
  readonly told: readonly string[];
}

const SLIPS: readonly Slip[] = [
  {
    situation: 'power and reset switch exchanged',
    leads: ['power-switch', 'reset-switch'],
    told: ['Fault: The power button would reset the machine, and the reset button would start it.'],
  },
  {
    situation: 'drive LED one column too far',
    leads: ['drive-led'],
    told: ['Fault: Drive LED is one pin off.'],
  },
  {
    situation: 'power LED turned round',
    leads: ['power-led'],
    told: ['Fault: The power LED would stay dark.'],
  },
  {
    situation: 'USB and 1394 lead exchanged',
    leads: ['front-usb', 'front-1394'],
    told: [
      'Danger: +12 V would reach Front USB and could destroy what is plugged in.',
      'Danger: The USB supply would reach the data wires of Front 1394 and could destroy port or device.',
    ],
  },
  {
    situation: 'card reader turned end for end',
    leads: ['card-reader'],
    told: ['Danger: Whatever is plugged into the USB 2.0 port would be fed +5 V backwards.'],
  },
  {
    situation: 'CPU fan one pin too far',
    leads: ['cpu-fan'],
    told: ['Danger: +12 V would reach a wire of the fan that is not made for it.'],
  },
  {
    situation: 'case-open lead on the clear jumper, and its cap on the case-open pins',
    leads: ['case-open', 'clear-cap'],
    told: [
      'Fault: The board could lose its settings, or not start at all.',
      'Fault: The board would report an open case all the time.',
    ],
  },
  {
    situation: 'front audio lead left on the shelf',
    leads: ['front-audio'],
    told: ['Doubt: Front audio is left over.'],
  },
];

it.each(SLIPS)('$situation: told in words as soon as it is done, and undone step by step', async (slip) => {
  const before = await told();
  const seatedBefore = await leadsIn(page, 'Seated');
  for (const title of slip.told) expect(before).not.toContain(title);

  const steps = await makeSlip(wired, slip.leads);
  expect(await told()).toEqual(expect.arrayContaining([...slip.told]));
  expect(await stateOf(page)).toBe(steps === 1 ? '1 unsaved change' : `${steps} unsaved changes`);

  for (let step = 0; step < steps; step++) await page.keyboard.press('Control+Z');
  await expect.poll(() => stateOf(page)).toBe('saved in wired.build.json');
  expect(await told()).toEqual(before);
  expect(await leadsIn(page, 'Seated')).toEqual(seatedBefore);
});

/**
 * Brings leads from where they belong to where the slip has them. Where each goes to the other's place,
 * one is laid on the shelf first. Returns how many things the hand has done.
 */
async function makeSlip(build: Build, leads: readonly string[]): Promise<number> {
  const wrong = leads.map((lead) => slips.seats.find((seat) => seat.lead === lead));
  const [first, last] = [wrong[0], wrong.at(-1)];
  if (first === undefined) {
    await takeOff(page, build, refOf(build, leads[0]));
    return 1;
  }
  if (last === undefined || last === first) {
    await moveByMouse(page, build, first);
    return 1;
  }
  await takeOff(page, build, last);
  await moveByMouse(page, build, first);
  await seatByMouse(page, build, last);
  return 3;
}

function refOf(build: Build, lead: string | undefined): Pick<Seat, 'lead' | 'plug'> {
  const plug = lead === undefined ? undefined : leadOf(build, lead)?.plugs[0];
  if (lead === undefined || plug === undefined) throw new Error(`No lead ${lead}`);
  return { lead, plug: plug.id };
}

async function told(): Promise<string[]> {
  return (await findingsIn(page)).map(({ severity, title }) => `${severity}: ${title}`);
}
