import { chmodSync, existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { serialize } from '../../../boards/document/serialize';
import type { Print } from '../../../boards/handover/order';
import { PLAIN_OPTIONS } from '../../../boards/handover/pinout/options';
import { CHANNELS } from '../../../boards/host';
import { boardWith } from '../../boards/handover/papers';
import { anywhere } from '../../boards/library/published';
import { asNobody } from '../scratch';
import { type Machine, makeMachine } from './machine';

const PINOUT: Print = { kind: 'pinout', options: PLAIN_OPTIONS };
const BOARD = serialize(boardWith([anywhere('panel-2x5')]));

async function placeFor(machine: Machine, name: string, kind: 'pdf' | 'svg' | 'png') {
  const folder = machine.host.handles.give(machine.home);
  const placed = await machine.calls.placeNew({ folder, name, kind });
  if (!placed.ok) throw new Error(placed.problem.code);
  return placed.value;
}

function order(handle: string, format: 'pdf' | 'svg' | 'png') {
  return { handle, document: BOARD, print: PINOUT, format, page: null, scale: 1 };
}

test.each(['pdf', 'svg', 'png'] as const)(
  'A pinout is written as %s to the place that was chosen',
  async (format) => {
    const machine = makeMachine();
    const { handle } = await placeFor(machine, `panel.${format}`, format);
    const saved = await machine.calls.savePaper(order(handle, format));
    expect(CHANNELS.savePaper.output.parse(saved)).toEqual({
      ok: true,
      value: { name: `panel.${format}`, folder: machine.home, pages: 1 },
    });
    const starts = { pdf: '%PDF-1.7', svg: '<?xml version="1.0"', png: '\u0089PNG' };
    expect(readFileSync(join(machine.home, `panel.${format}`), 'latin1').startsWith(starts[format])).toBe(
      true,
    );
    expect(readdirSync(machine.home)).toEqual([`panel.${format}`]);
  },
);

test('A page is drawn to be looked at, with how many there are', async () => {
  const drawn = await makeMachine().calls.drawPaper({ document: BOARD, print: PINOUT, page: 1 });
  if (!drawn.ok) throw new Error(drawn.problem.code);
  expect(drawn.value.pages).toBe(1);
  expect(drawn.value.svg).toContain('<title>Pin 6: power switch');
});

test('Of several documents in turn each is drawn as itself', async () => {
  const { calls } = makeMachine();
  const other = BOARD.replace('"power-switch"', '"reset-switch"');
  const svgOf = async (document: string) => {
    const drawn = await calls.drawPaper({ document, print: PINOUT, page: 1 });
    return drawn.ok ? drawn.value.svg : drawn.problem.code;
  };
  const first = await svgOf(BOARD);
  const second = await svgOf(other);
  expect(second).not.toBe(first);
  expect(await svgOf('{}')).toBe('not-a-board');
  expect([await svgOf(BOARD), await svgOf(BOARD), await svgOf(other)]).toEqual([first, first, second]);
});

describe('What cannot be printed is said by code, and no file is touched', () => {
  test.each([
    ['what is no board', { document: '{}' }, 'not-a-board'],
    [
      'a connector that is not there',
      { print: { ...PINOUT, options: { ...PLAIN_OPTIONS, connectors: ['x'] } } },
      'no-such-connector',
    ],
    ['a page that is not there', { page: 9 }, 'no-such-page'],
    ['a handle of another start', { handle: 'no-such-handle-at-all' }, 'stale-handle'],
    ['a format that the name is not of', { format: 'svg' as const }, 'bad-name'],
  ])('%s', async (_, changed, code) => {
    const machine = makeMachine();
    const { handle } = await placeFor(machine, 'a.pdf', 'pdf');
    const saved = await machine.calls.savePaper({ ...order(handle, 'pdf'), ...changed });
    expect(saved).toMatchObject({ ok: false, problem: { code } });
    expect(existsSync(join(machine.home, 'a.pdf'))).toBe(false);
  });

  test('a name without the ending of its kind', async () => {
    const machine = makeMachine();
    const folder = machine.host.handles.give(machine.home);
    expect(await machine.calls.placeNew({ folder, name: 'a.json', kind: 'pdf' })).toMatchObject({
      problem: { code: 'bad-name', expected: 'a name that ends in .pdf' },
    });
  });

  test('a folder that may not be written', async () => {
    const machine = makeMachine();
    const { handle } = await placeFor(machine, 'a.pdf', 'pdf');
    chmodSync(machine.home, 0o555);
    const saved = await asNobody(() => machine.calls.savePaper(order(handle, 'pdf')));
    chmodSync(machine.home, 0o777);
    expect(saved).toMatchObject({ ok: false, problem: { code: 'no-permission' } });
  });

  test('a long paper that is stopped while it is made', async () => {
    const machine = makeMachine();
    const connectors = Array.from({ length: 120 }, (_, at) => ({ ...anywhere('panel-2x5'), id: `j${at}` }));
    const { handle } = await placeFor(machine, 'a.pdf', 'pdf');
    const document = serialize(boardWith(connectors));
    const saving = machine.calls.savePaper({ ...order(handle, 'pdf'), document });
    await machine.calls.stopPaper();
    expect(await saving).toEqual({ ok: false, problem: { code: 'stopped' } });
    expect(existsSync(join(machine.home, 'a.pdf'))).toBe(false);
  });
});
