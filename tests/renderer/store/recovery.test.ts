import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { LONGEST_MS, REST_MS } from '../../../renderer/store/recovery';
import { bench, POWER_SWITCH, type TestBench } from '../stand-in';

const takeOff = { name: 'unseat-plug', args: POWER_SWITCH } as const;
const rename = (name: string) => ({ name: 'rename-build', args: { name } }) as const;

const textsOf = (b: TestBench) => [...b.host.copies.values()].map(({ text }) => text);

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('the recovery copy', () => {
  test('is written a second after the last edit, with the file it began from', async () => {
    const b = bench();
    b.run(takeOff);
    await vi.advanceTimersByTimeAsync(REST_MS - 1);
    expect(b.host.copies.size).toBe(0);
    await vi.advanceTimersByTimeAsync(1);
    expect([...b.host.copies.values()]).toMatchObject([{ changes: 1, name: 'demo', stamp: 'stamp-0' }]);
  });

  test('waits for a pause while one edit follows another', async () => {
    const b = bench();
    b.run(rename('a'));
    await vi.advanceTimersByTimeAsync(REST_MS / 2);
    b.run(rename('b'));
    await vi.advanceTimersByTimeAsync(REST_MS / 2);
    expect(b.host.copies.size).toBe(0);
  });

  test('does not wait for a pause for ever: at most five seconds of edits are without one', async () => {
    const b = bench();
    for (let at = 0; at < 50; at++) {
      b.run(rename(`name ${at}`));
      await vi.advanceTimersByTimeAsync(REST_MS / 2);
      const [{ changes } = { changes: 0 }] = b.host.copies.values();
      expect((at + 1 - changes) * (REST_MS / 2)).toBeLessThanOrEqual(5_000);
    }
  });

  test('is not written while the same is being saved, unless that takes so long that five seconds would be lost', async () => {
    const b = bench();
    b.run(takeOff);
    await vi.advanceTimersByTimeAsync(REST_MS / 2);
    b.recovery.putOff();
    await vi.advanceTimersByTimeAsync(LONGEST_MS - REST_MS / 2 - 1);
    expect(b.host.copies.size).toBe(0);
    await vi.advanceTimersByTimeAsync(1);
    expect(b.host.copies.size).toBe(1);
    b.recovery.putOff();
    await vi.advanceTimersByTimeAsync(2 * LONGEST_MS);
    expect(b.host.copies.size).toBe(1);
  });

  test('that cannot be written is told once, tried again, and told again after it went well', async () => {
    const b = bench();
    const keep = b.host.keepRecovery;
    let tries = 0;
    const full = async () => {
      tries += 1;
      return { ok: false, problem: { code: 'no-space', name: 'demo', room: null } } as const;
    };
    b.host.keepRecovery = full;
    b.run(takeOff);
    await vi.advanceTimersByTimeAsync(REST_MS + 2 * LONGEST_MS);
    expect(tries).toBe(3);
    expect(b.said()).toContain('No recovery copy could be written: The disk is full.');
    expect(b.session.getState().announcement.count).toBe(1);
    b.host.keepRecovery = keep;
    await vi.advanceTimersByTimeAsync(LONGEST_MS);
    expect(b.host.copies.size).toBe(1);
    b.host.keepRecovery = () => Promise.reject(new Error('The program has ended'));
    b.run(rename('once more'));
    await vi.advanceTimersByTimeAsync(LONGEST_MS);
    expect(b.said()).toContain('does not answer');
  });

  test('is not written again before four seconds have passed', async () => {
    const b = bench();
    b.run(rename('a'));
    await vi.advanceTimersByTimeAsync(REST_MS);
    b.run(rename('b'));
    await vi.advanceTimersByTimeAsync(LONGEST_MS - 1);
    expect([...b.host.copies.values()]).toMatchObject([{ changes: 1 }]);
    await vi.advanceTimersByTimeAsync(1);
    expect([...b.host.copies.values()]).toMatchObject([{ changes: 2 }]);
  });

  test('goes when everything is undone', async () => {
    const b = bench();
    b.run(takeOff);
    await vi.advanceTimersByTimeAsync(REST_MS);
    b.editor.getState().undo();
    await vi.advanceTimersByTimeAsync(0);
    expect(b.host.copies.size).toBe(0);
  });

  test('holds what is on the screen, also where undoing led back to the beginning and that is saved nowhere', async () => {
    const b = bench();
    const began = b.build();
    b.run(takeOff);
    const { opening = 0, file } = b.editor.getState().open ?? {};
    if (file === undefined) throw new Error('Nothing is open');
    b.editor.getState().markSaved(opening, b.build(), file);
    b.editor.getState().undo();
    b.run(rename('thought better of'));
    await vi.advanceTimersByTimeAsync(LONGEST_MS);
    expect(textsOf(b)).toEqual([JSON.stringify(b.build())]);
    b.editor.getState().undo();
    await vi.advanceTimersByTimeAsync(LONGEST_MS);
    expect(textsOf(b)).toEqual([JSON.stringify(began)]);
    expect([...b.host.copies.values()]).toMatchObject([{ changes: 1 }]);
  });

  test('is not written of what was taken up and not touched, and is once an edit to it is undone', async () => {
    const b = bench();
    const { file } = b.editor.getState().open ?? {};
    if (file === undefined) throw new Error('Nothing is open');
    b.recovery.begin('taken-up');
    b.editor.getState().load(b.build(), file, null);
    const takenUp = b.build();
    await vi.advanceTimersByTimeAsync(2 * LONGEST_MS);
    expect(textsOf(b)).toEqual([]);
    b.run(takeOff);
    await vi.advanceTimersByTimeAsync(LONGEST_MS);
    b.editor.getState().undo();
    await vi.advanceTimersByTimeAsync(LONGEST_MS);
    expect(textsOf(b)).toEqual([JSON.stringify(takenUp)]);
  });

  test('that is taken up twice is not dropped for itself', async () => {
    const b = bench();
    b.run(takeOff);
    await b.recovery.keepNow();
    const [id = ''] = b.host.copies.keys();
    b.recovery.begin(id);
    await vi.advanceTimersByTimeAsync(0);
    expect([...b.host.copies.keys()]).toEqual([id]);
  });

  test('has a name of its own for each document, and the former one goes', async () => {
    const b = bench();
    b.run(takeOff);
    await vi.advanceTimersByTimeAsync(REST_MS);
    const [first] = b.host.copies.keys();
    b.recovery.begin();
    b.run(rename('c'));
    await vi.advanceTimersByTimeAsync(LONGEST_MS);
    expect([...b.host.copies.keys()]).not.toContain(first);
    expect(b.host.copies.size).toBe(1);
  });

  test('that was taken up again stays until it is saved', async () => {
    const b = bench();
    b.run(takeOff);
    await vi.advanceTimersByTimeAsync(REST_MS);
    const [id = ''] = b.host.copies.keys();
    const { file } = b.editor.getState().open ?? { file: null };
    if (!file) throw new Error('Nothing is open');
    const build = b.build();
    b.recovery.begin();
    await vi.advanceTimersByTimeAsync(0);
    b.host.copies.set(id, {
      session: id,
      page: b.page,
      handle: null,
      stamp: null,
      name: 'demo',
      text: '{}',
      changes: 1,
    });
    b.recovery.begin(id);
    b.editor.getState().load(build, file, null);
    await vi.advanceTimersByTimeAsync(LONGEST_MS);
    expect([...b.host.copies.keys()]).toEqual([id]);
    b.editor.getState().markSaved(b.editor.getState().open?.opening ?? 0, build, file);
    await vi.advanceTimersByTimeAsync(0);
    expect(b.host.copies.size).toBe(0);
  });

  test('is written at once when a bug stops the window, and it is told whether it was', async () => {
    const b = bench();
    expect(await b.recovery.keepNow()).toBeNull();
    b.run(takeOff);
    expect(await b.recovery.keepNow()).toBe(true);
    expect(await b.recovery.keepNow()).toBe(true);
    expect(b.host.copies.size).toBe(1);
    b.run(rename('too much for the disk'));
    b.host.keepRecovery = async () => ({
      ok: false,
      problem: { code: 'no-space', name: 'demo', room: null },
    });
    // Asked twice at once, as a window that fails while a copy is under way.
    expect(await Promise.all([b.recovery.keepNow(), b.recovery.keepNow()])).toEqual([false, false]);
  });
});

describe('the machine is asked no more than is needed', () => {
  /** What is asked for copies to be removed. */
  function drops(b: TestBench): string[] {
    const asked: string[] = [];
    const drop = b.host.dropRecovery;
    Object.assign(b.host, {
      dropRecovery: (input: { readonly id: string; readonly page: string }) => {
        asked.push(input.id);
        return drop(input);
      },
    });
    return asked;
  }

  test('no copy is removed that was never written, and one that was only once', async () => {
    const b = bench();
    const asked = drops(b);
    await b.recovery.drop();
    b.recovery.begin();
    await b.recovery.drop();
    expect(asked).toEqual([]);
    b.run(takeOff);
    await b.recovery.keepNow();
    await b.recovery.drop();
    await b.recovery.drop();
    expect(asked).toHaveLength(1);
  });

  test('nothing is written where nothing was changed, nothing is open, or it has stopped', async () => {
    const b = bench();
    await b.recovery.keepNow();
    b.run(takeOff);
    b.editor.getState().undo();
    await vi.advanceTimersByTimeAsync(2 * LONGEST_MS);
    b.editor.getState().close();
    b.editor.getState().close();
    await b.recovery.keepNow();
    expect(b.host.copies.size).toBe(0);
    const other = bench();
    other.run(takeOff);
    other.recovery.stop();
    await vi.advanceTimersByTimeAsync(LONGEST_MS);
    other.run(rename('after'));
    await vi.advanceTimersByTimeAsync(2 * LONGEST_MS);
    expect(other.host.copies.size).toBe(0);
  });

  test('a copy that failed is not tried again once the work is saved or closed', async () => {
    const b = bench();
    let tries = 0;
    b.host.keepRecovery = async () => {
      tries += 1;
      return { ok: false, problem: { code: 'read-only-disk', name: 'demo' } };
    };
    b.run(takeOff);
    await vi.advanceTimersByTimeAsync(REST_MS);
    b.editor.getState().close();
    await vi.advanceTimersByTimeAsync(3 * LONGEST_MS);
    expect(tries).toBe(1);
  });
});

test('a key that does nothing does not put the copy off', async () => {
  const b = bench();
  b.run(takeOff);
  await vi.advanceTimersByTimeAsync(REST_MS - 100);
  b.editor.getState().redo();
  await vi.advanceTimersByTimeAsync(100);
  expect(b.host.copies.size).toBe(1);
});

test('work that was taken up again waits for a rest as any other, and has a copy only when it is changed', async () => {
  const b = bench();
  const { file } = b.editor.getState().open ?? {};
  if (!file) throw new Error('Nothing is open');
  b.editor.getState().load(b.build(), file, null);
  await vi.advanceTimersByTimeAsync(5 * LONGEST_MS);
  expect(b.host.copies.size).toBe(0);
  b.run(takeOff);
  await vi.advanceTimersByTimeAsync(REST_MS - 1);
  expect(b.host.copies.size).toBe(0);
  await vi.advanceTimersByTimeAsync(1);
  expect(b.host.copies.size).toBe(1);
});
