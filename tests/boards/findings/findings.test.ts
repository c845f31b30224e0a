import { describe, expect, test } from 'vitest';
import type { Build } from '../../../boards/document/build';
import { applyCommand } from '../../../boards/edit/apply';
import { findingId, SEVERITIES } from '../../../boards/findings/finding';
import { findingsOf } from '../../../boards/findings/findings';
import { RULES } from '../../../boards/findings/rules/index';
import { demo } from './demo';
import { EXAMPLES } from './examples';
import { Bench, bench } from './harness';

const BUILDS = [...Object.values(EXAMPLES).map(({ build }) => build), demo('wired'), demo('eight-slips')];

test('a board without leads, and leads without a board, are no reason for alarm', () => {
  expect(bench().codes()).toEqual([]);
  expect(bench().lead('power-switch-1x2', 'power').faults()).toEqual([]);
});

test('the worst comes first, everywhere', () => {
  for (const build of BUILDS) {
    const ranks = findingsOf(build).map(({ severity }) => SEVERITIES.indexOf(severity));
    expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
  }
});

test('the same build gives the same findings, and every finding has an id of its own', () => {
  for (const build of BUILDS) {
    const ids = findingsOf(build).map(findingId);
    // A copy of everything, so that nothing is known of it.
    const copy = structuredClone(build);
    expect(findingsOf(copy)).not.toBe(findingsOf(build));
    expect(findingsOf(copy).map(findingId)).toEqual(ids);
    expect(new Set(ids).size).toBe(ids.length);
  }
});

describe('the rules are gone through once for a machine', () => {
  const { build } = EXAMPLES['standoff-short'];
  const codes = (of: Build) => findingsOf(of).map(({ code }) => code);

  test('a new name, a note and a turn of the view find the same list again', () => {
    const turned: Build = {
      ...build,
      name: 'Other',
      notes: 'by the door',
      view: { turn: 90, mirrored: true },
    };
    expect(findingsOf(turned)).toBe(findingsOf(build));
  });

  test('but not another tray, nor a board with other holes', () => {
    expect(codes(build)).toContain('standoff-short');
    const { tray: _, ...bare } = build.case;
    expect(codes({ ...build, case: bare })).not.toContain('standoff-short');
    const { outline } = build.board;
    const standoffs = build.case.tray?.standoffs ?? [];
    const corner = build.case.tray?.board ?? { xMm: 0, yMm: 0 };
    const holes = standoffs.map(({ id, xMm, yMm }) => ({ id, xMm: xMm - corner.xMm, yMm: yMm - corner.yMm }));
    expect(codes({ ...build, board: { ...build.board, outline: { ...outline, holes } } })).not.toContain(
      'standoff-short',
    );
  });
});

describe('a finding that a worse one explains is left out', () => {
  test('a block on the wrong header is told once, not once for each wire', () => {
    expect(EXAMPLES['usb-on-1394'].codes()).toEqual(['usb-on-1394']);
    expect(EXAMPLES['panel-on-serial'].codes()).toEqual(['panel-on-serial']);
  });

  test('but what another lead does wrong on other pins stays', () => {
    const build = EXAMPLES['switches-exchanged'].lead('drive-led-1x2', 'drive').seat('drive', 'panel', '2');
    expect(build.codes('power')).toEqual(['switches-exchanged']);
    expect(build.codes('drive')).not.toEqual([]);
  });

  test('a doubt about a pin stays beside a fault on it: the fault itself rests on that pin', () => {
    const build = bench()
      .header('panel-2x5', 'panel', { '4': { source: { kind: 'guessed' } } })
      .lead('power-led-1x2', 'led')
      .seat('led', 'panel', '4', { turn: 180 });
    expect(build.codes('led')).toEqual(['reversed', 'pin-unsure']);
  });
});

describe('a remedy that the program can do', () => {
  const offers = RULES.flatMap(({ id }) =>
    EXAMPLES[id]
      .finding(id)
      .remedies.flatMap(({ text, command }) => (command ? [{ id, text, command }] : [])),
  );

  test('there are many', () => {
    expect(offers.length).toBeGreaterThan(20);
  });

  test.each(offers)('$id: $text', ({ id, command }) => {
    const { build } = EXAMPLES[id];
    const done = applyCommand(build, command);
    if (!done.ok) throw new Error(`Refused: ${done.problem.code}`);
    const before = findingsOf(build).map(findingId);
    const finding = findingId(EXAMPLES[id].finding(id));
    expect(before).toContain(finding);
    expect(new Bench(done.value).build).not.toBe(build);
    expect(findingsOf(done.value).map(findingId)).not.toContain(finding);
  });
});
