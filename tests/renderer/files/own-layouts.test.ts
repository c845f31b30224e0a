import { describe, expect, test } from 'vitest';
import { serialize } from '../../../boards/document/serialize';
import { readOwnLayouts } from '../../../renderer/files/own-layouts';
import { bench, wiredBuild } from '../stand-in';

const { board, case: demoCase } = wiredBuild();

/** A machine whose library holds these files. */
function libraryOf(...texts: readonly string[]) {
  const { host } = bench();
  for (const [at, text] of texts.entries()) {
    const [handle, name] = [`sheet-${at}`, `sheet-${at}.board.json`];
    host.sheets.set(handle, { name, text });
    host.files.set(handle, { handle, name, folder: '/sheets', text, stamp: 'stamp-0', readOnly: false });
  }
  return host;
}

describe('the connectors of a person’s own sheets', () => {
  test('are those of every board sheet, under its name; cases have none, and what is broken is counted', async () => {
    const host = libraryOf(
      serialize({ ...board, name: 'Study board' }),
      serialize(demoCase),
      '{ broken',
      serialize({ ...board, id: 'other', name: 'Hall board', connectors: board.connectors.slice(0, 2) }),
    );
    const reading = await readOwnLayouts(
      host,
      () => undefined,
      () => false,
    );
    if (!reading.ok) throw new Error(reading.problem.code);
    const { layouts, sheets, unread } = reading.value;
    expect({ sheets, unread }).toEqual({ sheets: 2, unread: 1 });
    expect(layouts).toHaveLength(board.connectors.length + 2);
    expect(layouts.at(-1)).toMatchObject({ from: 'Hall board', connector: { id: board.connectors[1]?.id } });
  });

  test('are read in steps that are told, and no further once the window is closed', async () => {
    const sheet = (at: number) =>
      serialize({ ...board, id: `b-${at}`, connectors: board.connectors.slice(0, 1) });
    const host = libraryOf(...Array.from({ length: 45 }, (_, at) => sheet(at)));
    const steps: string[] = [];
    const all = await readOwnLayouts(
      host,
      (done, of) => steps.push(`${done} of ${of}`),
      () => false,
    );
    expect(steps).toEqual(['0 of 45', '20 of 45', '40 of 45']);
    expect(all.ok && all.value.layouts).toHaveLength(45);
    const some = await readOwnLayouts(
      host,
      () => undefined,
      () => steps.push('asked') > 4,
    );
    expect(some.ok && some.value.layouts).toHaveLength(20);
  });

  test('are missing where the folder cannot be read, and the reason is handed on', async () => {
    const problem = { code: 'not-found', name: 'sheets' } as const;
    const host = { ...bench().host, listLibrary: async () => ({ ok: false, problem }) as const };
    expect(
      await readOwnLayouts(
        host,
        () => undefined,
        () => false,
      ),
    ).toEqual({ ok: false, problem });
  });
});
