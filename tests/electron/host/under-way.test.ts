import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { serialize } from '../../../boards/document/serialize';
import type { Print } from '../../../boards/handover/order';
import { PLAIN_OPTIONS } from '../../../boards/handover/pinout/options';
import { hostCalls } from '../../../electron/host/calls';
import { DISK, type FileSystem } from '../../../electron/host/file-system';
import { makeUnderWay, workEnded } from '../../../electron/host/under-way';
import { boardWith } from '../../boards/handover/papers';
import { anywhere } from '../../boards/library/published';
import { bareSheet } from '../scratch';
import { makeMachine } from './machine';

const PINOUT: Print = { kind: 'pinout', options: PLAIN_OPTIONS };
const BOARD = serialize(boardWith([anywhere('panel-2x5')]));

const never = new Promise<never>(() => undefined);

describe('Before a program ends', () => {
  test('a save that was asked for is on disk, noted among the recent files, and kept as a version', async () => {
    const { calls, host, home, data } = makeMachine();
    const handle = host.handles.give(join(home, 'work.board.json'));
    void calls.save({ handle, document: bareSheet('One'), expected: null });
    await workEnded(host);
    const versions = readdirSync(join(data, 'versions'), { recursive: true, encoding: 'utf8' });
    expect(readdirSync(home)).toEqual(['work.board.json']);
    expect(versions.filter((name) => name.endsWith('.version'))).toHaveLength(1);
    expect(readFileSync(join(data, 'recent.json'), 'utf8')).toContain('work.board.json');
  });

  test('a paper that was asked for is made and written', async () => {
    const { calls, host, home } = makeMachine();
    const handle = host.handles.give(join(home, 'panel.svg'));
    void calls.savePaper({ handle, document: BOARD, print: PINOUT, format: 'svg', page: null, scale: 1 });
    await workEnded(host);
    expect(readdirSync(home)).toEqual(['panel.svg']);
  });

  test('a sheet is in the library, and settings are kept', async () => {
    const { calls, host, data } = makeMachine();
    void calls.keepSheet({ document: bareSheet('One'), place: { kind: 'new', name: 'one.board.json' } });
    void calls.writeSettings({ theme: 'dark', largeType: true });
    await workEnded(host);
    expect(readdirSync(join(data, 'sheets'))).toEqual(['one.board.json']);
    expect(existsSync(join(data, 'settings.json'))).toBe(true);
  });

  test('no dialog is waited for, and no drawing for a window that is gone', async () => {
    const door = { chooseOpen: () => never, chooseSave: () => never, chooseFolder: () => never };
    const { host } = makeMachine({ door });
    const calls = hostCalls({ ...host, paperKit: () => never });
    void calls.chooseOpen();
    void calls.chooseSave({ suggested: 'work.board.json', kind: 'board' });
    void calls.chooseFolder();
    void calls.drawPaper({ document: BOARD, print: PINOUT, page: 1 });
    await expect(host.underWay.idle()).resolves.toBeUndefined();
  });

  test('a disk that hangs is not waited for for ever', async () => {
    const fs: FileSystem = { ...DISK, createNew: () => never };
    const { calls, host, home } = makeMachine({ fs });
    const handle = host.handles.give(join(home, 'work.board.json'));
    void calls.save({ handle, document: bareSheet('One'), expected: null });
    await workEnded(host, 50);
    expect(readdirSync(home)).toEqual([]);
  });
});

describe('What is under way', () => {
  test('is waited for together with what comes meanwhile', async () => {
    const underWay = makeUnderWay();
    const done: string[] = [];
    void underWay.add(
      Promise.resolve().then(() => {
        void underWay.add(new Promise((resolve) => setTimeout(resolve, 1)).then(() => done.push('second')));
        done.push('first');
      }),
    );
    await underWay.idle();
    expect(done).toEqual(['first', 'second']);
  });

  test('may fail: whoever asked for it is told, and the others are waited for', async () => {
    const underWay = makeUnderWay();
    const failing = underWay.add(Promise.reject(new Error('broken')));
    let done = false;
    void underWay.add(new Promise((resolve) => setTimeout(resolve, 1)).then(() => (done = true)));
    await underWay.idle();
    expect(done).toBe(true);
    await expect(failing).rejects.toThrow('broken');
  });

  test('is nothing where nothing was asked for', async () => {
    await expect(makeUnderWay().idle()).resolves.toBeUndefined();
  });
});
