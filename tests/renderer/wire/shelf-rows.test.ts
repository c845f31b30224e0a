import { describe, expect, test } from 'vitest';
import { analyse } from '../../../boards/analyse';
import { previewSeat } from '../../../renderer/areas/wire/placing/preview';
import { shelfRows } from '../../../renderer/areas/wire/shelf-rows';
import { bench, POWER_SWITCH, type TestBench } from '../stand-in';

const rowsOf = (b: TestBench) => shelfRows(b.build(), analyse(b.build()).findings);
const titles = (rows: readonly { readonly title: string }[]) => rows.map(({ title }) => title);

describe('the shelf', () => {
  test('lists what is wired under “seated”, with where it sits', () => {
    const { onShelf, seated } = rowsOf(bench());
    expect(onShelf).toEqual([]);
    expect(seated.find(({ title }) => title === 'Power switch')?.words).toBe('PANEL, pins\u00a06 and 8');
  });

  test('takes a lead back when it is taken off, and says what its plug looks like', () => {
    const b = bench();
    b.run({ name: 'unseat-plug', args: POWER_SWITCH });
    expect(rowsOf(b).onShelf).toMatchObject([{ title: 'Power switch', words: '2-way, green and white' }]);
  });

  test('keeps a lead that is set aside out of the way', () => {
    const b = bench();
    b.run({ name: 'unseat-plug', args: POWER_SWITCH });
    b.run({ name: 'set-lead-aside', args: { lead: POWER_SWITCH.lead, aside: true } });
    expect([titles(rowsOf(b).onShelf), titles(rowsOf(b).setAside)]).toEqual([[], ['Power switch']]);
  });

  test('shows the worst that is found about each seated lead', () => {
    const b = bench();
    const bySeverity = new Map(rowsOf(b).seated.map(({ title, severity }) => [title, severity]));
    expect([bySeverity.get('Power switch'), bySeverity.get('Case-open switch')]).toEqual([null, 'doubt']);
  });
});

describe('trying a place before the plug goes there', () => {
  test('tells what would come and what would go, and changes nothing', () => {
    const b = bench();
    b.run({ name: 'unseat-plug', args: POWER_SWITCH });
    const before = b.build();
    const right = previewSeat(before, { ...POWER_SWITCH, connector: 'panel', at: [0, 2], turn: 0 });
    expect([right.coming, right.going.map(({ severity }) => severity)]).toEqual([[], ['fault']]);
    const off = previewSeat(before, { ...POWER_SWITCH, connector: 'panel', at: [0, 3], turn: 0 });
    expect(off.coming.map(({ code }) => code)).toContain('shifted');
    expect(b.build()).toBe(before);
  });

  test('where it does not fit, only says why', () => {
    const b = bench();
    const { build, coming, fit } = previewSeat(b.build(), {
      ...POWER_SWITCH,
      connector: 'panel',
      at: [0, 0],
      turn: 0,
    });
    expect([build, coming, fit.refusals.map(({ code }) => code)]).toEqual([undefined, [], ['occupied']]);
  });
});
