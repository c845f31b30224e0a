import { describe, expect, test } from 'vitest';
import { RESTING } from '../../../boards/circuit/machine-state';
import { leadOf, leadsOf, plugOf } from '../../../boards/document/lookup';
import { confidenceWords, pinWords, sourceWords } from '../../../boards/document/pin-words';
import { LEAD_TYPES } from '../../../boards/library/leads/index';
import { readProblemWords, saveProblemWords } from '../../../renderer/words/host-words';
import { counted } from '../../../renderer/words/list-words';
import { plugTitle, plugWords } from '../../../renderer/words/plug-words';
import { pointedWords } from '../../../renderer/words/pointed-words';
import { seatTurnWords, seatWords } from '../../../renderer/words/seat-words';
import { countsWords, worst } from '../../../renderer/words/severity-words';
import { whenWords } from '../../../renderer/words/time-words';
import { POWER_SWITCH, wiredBuild } from '../stand-in';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const build = wiredBuild();

describe('a plug in words', () => {
  test('says how many ways and which colours', () => {
    const lead = leadOf(build, POWER_SWITCH.lead);
    const plug = plugOf(build, POWER_SWITCH);
    if (!lead || !plug) throw new Error('The demo has no power switch');
    expect(plain(plugWords(lead, plug))).toBe('2-way, green and white');
    expect(plugTitle(lead, plug)).toBe('Power switch');
  });

  test('tells the blocked hole of a USB plug and counts its wires', () => {
    const usb = LEAD_TYPES.map(({ lead }) => lead).find((lead) => lead.id.includes('usb2'));
    const plug = usb?.plugs[0];
    if (!usb || !plug) throw new Error('The library has no USB lead');
    expect(plain(plugWords(usb, plug))).toMatch(/2 × 5.*blocked.*wires/);
  });

  test('has something to say for every plug of the library', () => {
    const said = LEAD_TYPES.flatMap(({ lead }) => lead.plugs.map((plug) => plugWords(lead, plug)));
    expect(said.length).toBeGreaterThan(20);
    expect(said.filter((words) => words === '' || words.includes('undefined'))).toEqual([]);
  });
});

test('every seat of the demo is told by its connector and pins', () => {
  const said = build.seats.map((seat) => plain(seatWords(build, seat)));
  expect(said).toContain('PANEL, pins 6 and 8');
  expect(said.filter((words) => !/, (all |\d+ )?pins?/.test(words))).toEqual([]);
});

test('a quarter turn is told as it is seen: in the mirror image of the board the other way', () => {
  const seat = { lead: 'drive-led', plug: 'plug', connector: 'panel', at: [0, 0], turn: 90 } as const;
  const told = (mirrored: boolean) =>
    seatTurnWords({ ...build, view: { ...build.view, mirrored } }, { ...seat, at: [0, 0] });
  expect([told(false), told(true)]).toEqual([
    'turned a quarter to the right',
    'turned a quarter to the left',
  ]);
});

describe('what is under the pointer', () => {
  test('a pin tells its signal, where that was read, and who is on it', () => {
    const words = plain(
      pointedWords(build, { kind: 'pin', pin: { connector: 'panel', pin: '6' } }, RESTING) ?? '',
    );
    expect(words).toMatch(/^PANEL, pin 6: power switch/);
    expect(words).toContain('standard');
    expect(words).toContain('Power switch, green wire');
  });

  // 3.3 V behind the pull-up of a switch input, and ground when the button is pressed: common practice.
  test.each([
    ['at rest', '6', RESTING, '3.3 V now'],
    ['with power held', '6', { ...RESTING, held: ['power'] as const }, '0 V now'],
    ['unplugged', '6', { ...RESTING, supply: 'unplugged' as const }, '0 V now'],
  ])('a pin tells its level: %s', (_, pin, machine, level) => {
    const hovered = { kind: 'pin', pin: { connector: 'panel', pin } } as const;
    expect(plain(pointedWords(build, hovered, machine) ?? '')).toContain(level);
  });

  test('a missing pin says so and nothing else', () => {
    expect(pinWords({ pin: '10', missing: true })).toBe('no pin here');
  });

  test('something that is gone says nothing', () => {
    expect(pointedWords(build, { kind: 'connector', connector: 'gone' }, RESTING)).toBeNull();
  });
});

test('a pin without a source does not pretend to have one', () => {
  expect(sourceWords({ pin: '1' })).toBe('not said');
  expect(sourceWords({ pin: '1', source: { kind: 'manual', where: 'page 12' } })).toBe('manual: page 12');
  expect([undefined, 1, 0.8, 0.5, 0.1].map(confidenceWords)).toEqual([
    'not said',
    'sure',
    'fairly sure',
    'likely',
    'a guess',
  ]);
});

test('findings are counted in words, worst first', () => {
  const found = (['doubt', 'danger', 'doubt'] as const).map((severity) => ({ severity }));
  expect(plain(countsWords(found))).toBe('1 danger, 2 doubts');
  expect(countsWords([])).toBe('nothing found');
  expect(worst(found)).toBe('danger');
  expect(plain(counted(1340, 'place'))).toBe('1,340 places');
});

test('times are told as a person would', () => {
  const now = new Date(2026, 4, 12, 18, 0).getTime();
  expect(whenWords(new Date(2026, 4, 12, 14, 5).getTime(), now)).toBe('today at 14:05');
  expect(whenWords(new Date(2026, 4, 11, 9, 30).getTime(), now)).toBe('yesterday at 09:30');
  expect(whenWords(new Date(2026, 2, 3, 9, 30).getTime(), now)).toBe('3 March at 09:30');
  expect(whenWords(new Date(2025, 2, 3, 9, 30).getTime(), now)).toBe('3 March 2025 at 09:30');
});

describe('every refusal of the machine', () => {
  const name = 'x.build.json';
  const messages = [
    ...(['not-found', 'no-permission', 'folder', 'special', 'not-text', 'stale-handle'] as const).map(
      (code) => readProblemWords({ code, name }),
    ),
    readProblemWords({ code: 'too-large', name, bytes: 52_428_800, limitBytes: 33_554_432 }),
    readProblemWords({ code: 'unreadable', name, detail: 'EIO' }),
    ...(
      ['changed-outside', 'quota-used', 'no-permission', 'read-only-disk', 'folder-gone', 'special'] as const
    ).map((code) => saveProblemWords({ code, name })),
    saveProblemWords({ code: 'no-space', name, room: null }),
    saveProblemWords({ code: 'no-space', name, room: { neededBytes: 20_480, freeBytes: 12_288 } }),
    saveProblemWords({ code: 'bad-name', name, expected: 'a name that ends in .build.json' }),
    saveProblemWords({ code: 'invalid', name, path: 'seats[0]', expected: 'a plug' }),
    saveProblemWords({ code: 'stale-handle', name }),
    saveProblemWords({ code: 'unwritable', name, detail: 'EIO' }),
  ];

  test('names the file, says what happened, what stays, and what to do', () => {
    for (const { title, lines, advice } of messages) {
      expect(title).toContain(name);
      expect(lines).toHaveLength(2);
      expect(advice).toMatch(/\.$/);
      expect(`${title} ${lines.join(' ')} ${advice}`).not.toMatch(/error|!|undefined/i);
    }
  });
});

test('every lead of the demo has a title of its own in the list', () => {
  const titles = leadsOf(build).flatMap((lead) => lead.plugs.map((plug) => plugTitle(lead, plug)));
  expect(new Set(titles).size).toBe(titles.length);
});
