import { describe, expect, it } from 'vitest';
import type { Build } from '../../../boards/document/build';
import type { Lead } from '../../../boards/document/lead';
import { leadOf } from '../../../boards/document/lookup';
import { labelOf } from '../../../boards/edit/apply';
import type { Command } from '../../../boards/edit/command';
import { bench, grid, lead, partLead, posts, seat } from '../fixtures/bench';
import { done, toldNo } from './carried-out';

const NBSP = '\u00a0';

const light = partLead('power-led', 'power-led', grid(1, 3), { anode: '1', cathode: '3' }, { mark: '1' });
const keyed = partLead(
  'drive-led',
  'drive-led',
  grid(1, 3),
  { anode: '1', cathode: '3' },
  { blocked: ['2'] },
);
const spare = partLead('buzzer', 'buzzer', grid(1, 4), { plus: '1', minus: '4' });
const panel = posts('panel', grid(2, 5));
const onTheBench = bench([panel], [light, keyed], [seat('power-led', 'panel')]);

function plugOf(build: Build, id: string) {
  return leadOf(build, id)?.plugs[0];
}

function endsOf(build: Build, id: string): readonly string[] {
  return (leadOf(build, id)?.wires ?? []).map(({ from, to }) => `${from} ${to}`);
}

describe('adding and removing leads', () => {
  it('adds one to the case or to the extras', () => {
    const inCase = done(onTheBench, { name: 'add-lead', args: { lead: spare, to: 'case' } });
    expect(inCase.case.leads).toEqual([light, keyed, spare]);
    const beside = done(onTheBench, { name: 'add-lead', args: { lead: spare, to: 'extras' } });
    expect(beside.extras).toEqual([spare]);
  });

  it('refuses an id that the case or the extras have already', () => {
    const again: Command = { name: 'add-lead', args: { lead: light, to: 'extras' } };
    expect(toldNo(onTheBench, again)).toBe('There is a lead “power-led” already. Choose another id.');
  });

  it('refuses a lead that contradicts itself', () => {
    const torn: Lead = { ...spare, wires: [{ from: 'part.plus', to: 'plug.9', colour: 'red' }] };
    expect(toldNo(onTheBench, { name: 'add-lead', args: { lead: torn, to: 'case' } })).toBe(
      '“case.leads[2].wires[0].to” cannot be kept: it has to be a hole of the plug “plug”, and is “plug.9”.',
    );
  });

  it('refuses one more than a list can hold', () => {
    const leads = Array.from({ length: 2_000 }, (_, at) => ({ ...spare, id: `buzzer-${at}` }));
    const full = bench([panel], leads);
    expect(toldNo(full, { name: 'add-lead', args: { lead: light, to: 'case' } })).toBe(
      `A list of leads can hold no more than 2,000${NBSP}leads.`,
    );
  });

  it('removes one with its seats', () => {
    const without = done(onTheBench, { name: 'remove-lead', args: { lead: 'power-led' } });
    expect(without.case.leads).toEqual([keyed]);
    expect(without.seats).toEqual([]);
    expect(toldNo(without, { name: 'remove-lead', args: { lead: 'power-led' } })).toBe(
      'There is no lead “power-led” in this build.',
    );
  });

  it('removes one with what was chosen for it as a fan, and for drives that it was to feed', () => {
    const choices = [
      { kind: 'header', of: 'power-led', on: 'panel' },
      { kind: 'branch', of: 'disk', on: 'power-led' },
      { kind: 'port', of: 'power-led', on: 'panel' },
    ] as const;
    const without = done(
      { ...onTheBench, choices: [...choices] },
      { name: 'remove-lead', args: { lead: 'power-led' } },
    );
    // A drive that happens to have the same id is another thing.
    expect(without.choices).toEqual([choices[2]]);
    const bare = done(
      { ...onTheBench, choices: [choices[0]] },
      { name: 'remove-lead', args: { lead: 'power-led' } },
    );
    expect(bare).not.toHaveProperty('choices');
  });
});

describe('what a person says of a lead', () => {
  it('is its name', () => {
    const named = done(onTheBench, { name: 'rename-lead', args: { lead: 'power-led', name: 'Front light' } });
    expect(leadOf(named, 'power-led')).toEqual({ ...light, name: 'Front light' });
    expect(toldNo(onTheBench, { name: 'rename-lead', args: { lead: 'power-led', name: '' } })).toBe(
      '“name” cannot be kept: it has to be one line of 1 to 200 plain characters, and is an empty text.',
    );
  });

  it('is that it is left off on purpose, and then that it is not', () => {
    const aside = done(onTheBench, { name: 'set-lead-aside', args: { lead: 'power-led', aside: true } });
    expect(leadOf(aside, 'power-led')).toEqual({ ...light, setAside: true });
    expect(aside.seats).toEqual(onTheBench.seats);
    const again = done(aside, { name: 'set-lead-aside', args: { lead: 'power-led', aside: false } });
    expect(again).toEqual(onTheBench);
  });

  it('is the colour of a wire, with a stripe or without', () => {
    const colour = (wire: number, stripe: 'white' | null): Command => ({
      name: 'colour-wire',
      args: { lead: 'power-led', wire, colour: 'green', stripe },
    });
    const striped = done(onTheBench, colour(1, 'white'));
    expect(leadOf(striped, 'power-led')?.wires).toEqual([
      { from: 'part.anode', to: 'plug.1', colour: 'black' },
      { from: 'part.cathode', to: 'plug.3', colour: 'green', stripe: 'white' },
    ]);
    expect(leadOf(done(striped, colour(1, null)), 'power-led')?.wires[1]).not.toHaveProperty('stripe');
    expect(toldNo(onTheBench, colour(2, null))).toBe(`POWER-LED has no wire${NBSP}3.`);
  });

  it('is the colour of an LED, or that it is not known', () => {
    const colour = (part: string, to: 'green' | null): Command => ({
      name: 'set-part',
      args: { lead: 'power-led', part, colour: to, condition: null },
    });
    const green = done(onTheBench, colour('part', 'green'));
    expect(leadOf(green, 'power-led')?.parts).toEqual([{ id: 'part', kind: 'power-led', colour: 'green' }]);
    expect(done(green, colour('part', null))).toEqual(onTheBench);
    expect(toldNo(onTheBench, colour('lamp', null))).toBe('POWER-LED has no part “lamp”.');
    const two = bench([], [partLead('two', 'two-colour-power-led', grid(1, 2), { first: '1' })]);
    expect(
      toldNo(two, {
        name: 'set-part',
        args: { lead: 'two', part: 'part', colour: 'red', condition: null },
      }),
    ).toBe('“part” of TWO is no LED of one colour.');
  });

  it('is that a switch is stuck or broken, and then that it is sound', () => {
    const reset = partLead('reset', 'reset-switch', grid(1, 2), { a: '1', b: '2' });
    const condition = (lead: string, to: 'stuck' | 'broken' | null): Command => ({
      name: 'set-part',
      args: { lead, part: 'part', colour: null, condition: to },
    });
    const start = bench([], [reset, spare]);
    const stuck = done(start, condition('reset', 'stuck'));
    expect(leadOf(stuck, 'reset')?.parts[0]?.condition).toBe('stuck');
    expect(leadOf(done(stuck, condition('reset', 'broken')), 'reset')?.parts[0]?.condition).toBe('broken');
    expect(done(stuck, condition('reset', null))).toEqual(start);
    expect(toldNo(start, condition('buzzer', 'stuck'))).toBe(
      '“part” of BUZZER is no switch, and only a switch can be stuck or broken.',
    );
  });

  it('is which hole has the mark, or that none has', () => {
    const mark = (hole: string | null): Command => ({
      name: 'mark-plug',
      args: { lead: 'power-led', plug: 'plug', mark: hole },
    });
    expect(plugOf(done(onTheBench, mark('3')), 'power-led')?.mark).toBe('3');
    expect(plugOf(done(onTheBench, mark(null)), 'power-led')).not.toHaveProperty('mark');
    expect(toldNo(onTheBench, mark('4'))).toBe(`POWER-LED has no hole${NBSP}4.`);
  });
});

describe('moving a contact to another hole', () => {
  const move = (id: string, from: string, to: string): Command => ({
    name: 'move-contact',
    args: { lead: id, plug: 'plug', from, to },
  });

  it('lets a three-way LED plug sit on two pins side by side', () => {
    const moved = done(onTheBench, move('power-led', '3', '2'));
    expect(endsOf(moved, 'power-led')).toEqual(['part.anode plug.1', 'part.cathode plug.2']);
    expect(moved.seats).toEqual(onTheBench.seats);
  });

  it('takes every wire along that is crimped into it', () => {
    const twin: Lead = {
      ...lead('twin', grid(1, 3)),
      wires: [
        { from: 'plug.1', to: 'loose.1', colour: 'red' },
        { from: 'plug.2', to: 'plug.1', colour: 'red' },
      ],
    };
    expect(endsOf(done(bench([], [twin]), move('twin', '1', '3')), 'twin')).toEqual([
      'plug.3 loose.1',
      'plug.2 plug.3',
    ]);
  });

  it('is refused for a hole that is blocked, taken, empty or not there', () => {
    expect(toldNo(onTheBench, move('drive-led', '3', '2'))).toBe(
      `Hole${NBSP}2 of DRIVE-LED is blocked. Choose an empty hole.`,
    );
    expect(toldNo(onTheBench, move('power-led', '3', '1'))).toBe(
      `Hole${NBSP}1 of POWER-LED has a contact already. Choose an empty hole.`,
    );
    expect(toldNo(onTheBench, move('power-led', '2', '1'))).toBe(
      `There is no contact in hole${NBSP}2 of POWER-LED.`,
    );
    expect(toldNo(onTheBench, move('power-led', '3', '5'))).toBe(`POWER-LED has no hole${NBSP}5.`);
  });
});

describe('splitting a block into single plugs', () => {
  const split = (id: string, plug = 'plug'): Command => ({ name: 'split-plug', args: { lead: id, plug } });

  it('makes one of each contact, which keeps its wire, its mark and a name to know it by', () => {
    const apart = done(onTheBench, split('power-led'));
    const single = { family: 'pin-header', grid: grid(1, 1) };
    expect(leadOf(apart, 'power-led')?.plugs).toEqual([
      { id: 'plug-1', print: 'POWER-LED +', ...single, mark: '1' },
      { id: 'plug-2', print: 'POWER-LED −', ...single },
    ]);
    expect(endsOf(apart, 'power-led')).toEqual(['part.anode plug-1.1', 'part.cathode plug-2.1']);
    expect(apart.seats).toEqual([]);
    expect(labelOf(onTheBench, split('power-led'))).toBe('Split POWER-LED');
  });

  it('names the part where a block serves several, and passes over ids that are taken', () => {
    const block: Lead = {
      ...partLead('panel', 'reset-switch', grid(2, 2), { a: '1' }),
      parts: [
        { id: 'part', kind: 'reset-switch' },
        { id: 'plug-1', kind: 'drive-led', name: 'Disk light' },
      ],
      wires: [
        { from: 'part.a', to: 'plug.1', colour: 'black' },
        { from: 'plug-1.cathode', to: 'plug.4', colour: 'white' },
      ],
    };
    const apart = done(bench([], [block]), split('panel'));
    expect(leadOf(apart, 'panel')?.plugs.map(({ id, print }) => `${id}: ${print}`)).toEqual([
      'plug-2: reset switch first leg',
      'plug-3: Disk light −',
    ]);
  });

  it('names the hole where a wire leads to another plug', () => {
    const apart = done(bench([], [lead('adapter', grid(1, 2), { contacts: ['2'] })]), split('adapter'));
    expect(leadOf(apart, 'adapter')?.plugs[0]?.print).toBe('ADAPTER 2');
  });

  it('keeps within what an id and a lead can hold', () => {
    const long = lead('long', grid(2, 32), { contacts: Array.from({ length: 64 }, (_, at) => `${at + 1}`) });
    expect(toldNo(bench([], [long]), split('long'))).toBe(`A lead can hold no more than 64${NBSP}plugs.`);
    const id = `${'a'.repeat(58)}-bcdef`;
    const named: Lead = {
      ...light,
      plugs: light.plugs.map((plug) => ({ ...plug, id })),
      wires: [{ from: 'part.anode', to: `${id}.1`, colour: 'red' }],
    };
    const apart = done(bench([], [named]), split('power-led', id));
    expect(plugOf(apart, 'power-led')?.id).toBe(`${'a'.repeat(58)}-1`);
  });

  it('is refused where there is nothing to split', () => {
    const single = partLead('single', 'power-led', grid(1, 1), { anode: '1' });
    const shell = partLead('usb3', 'usb3-port', grid(2, 10), { vbus: '1' }, { family: 'usb3' });
    const bare = lead('bare', grid(1, 2));
    const build = bench([], [single, shell, bare]);
    expect(toldNo(build, split('single'))).toBe('SINGLE has a single hole and cannot be split.');
    expect(toldNo(build, split('usb3'))).toBe(
      'USB3 is made for one shape of connector and cannot be split into single plugs.',
    );
    expect(toldNo(build, split('bare'))).toBe('BARE has no contact in any hole.');
  });
});
