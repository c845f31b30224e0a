import { rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { inRoot } from '../../../../electron/start/place.mjs';
import { appFolder, forgetStarted, theWindow } from '../started-shell';
import type { Evidence } from './evidence';
import { flipped, type Sources, sourcesOfShell, written } from './flipped-shell';
import { FLIPS } from './flips';
import { POINTS } from './points';

// Loaded once and kept, while the shell's own modules are loaded anew for each test.
const standIn = await vi.hoisted(() => import('../recorded-electron'));
const { recorded } = standIn;

vi.mock('electron', () => standIn.electron);

const { load } = createRequire(import.meta.url)('js-yaml');
const SHELL = sourcesOfShell();

/** Starts a shell on the stand-in and gathers what can be seen of it. */
async function evidenceOf(sources: Sources): Promise<Evidence> {
  const shell = written(sources);
  appFolder();
  await import(/* @vite-ignore */ join(shell, 'main.ts'));
  const window = await theWindow();
  await import(/* @vite-ignore */ join(shell, 'preload.ts'));
  const bridge = (recorded.exposed.get('leadwright') ?? {}) as Evidence['bridge'];
  const heard: unknown[][] = [];
  (bridge.onRequest as (listener: (...given: unknown[]) => void) => void)((...given) => heard.push(given));
  recorded.renderer.emit('leadwright:request', { sender: 'the channels' }, { kind: 'leave' });
  return {
    window,
    bridge,
    heard,
    sources,
    sandboxed: recorded.app.sandboxed,
    served: recorded.served,
    schemes: recorded.schemes,
    exposed: [...recorded.exposed.keys()],
    fuses: load(sources.get('electron-builder.yml')).electronFuses,
    answersTo: async (senderFrame) => {
      const handler = recorded.handlers.get('leadwright:about') as unknown as (
        ...given: unknown[]
      ) => unknown;
      try {
        const json = JSON.stringify({ page: 'page-of-the-shell' });
        await handler({ sender: window.webContents, senderFrame }, json);
        return true;
      } catch {
        return false;
      }
    },
  };
}

beforeEach(() => {
  forgetStarted();
  vi.resetModules();
});

afterAll(() => rmSync(inRoot('out', 'flips'), { recursive: true, force: true }));

const flips = POINTS.flatMap(({ number, broken }) =>
  (FLIPS[number] ?? []).map((flip) => ({ ...flip, number, broken })),
);

describe('Electron’s twenty points on security, on the stand-in', () => {
  test('are twenty, and each has a setting that would break it', () => {
    expect(POINTS.map(({ number }) => number)).toEqual(Array.from({ length: 20 }, (_, at) => at + 1));
    expect(new Set(flips.map(({ number }) => number)).size).toBe(20);
  });

  test.each(POINTS)('point $number, $title', async ({ broken }) => {
    expect(await broken(await evidenceOf(SHELL))).toEqual([]);
  });

  test.each(flips)('point $number is seen to be broken by “$to” in place of “$from”', async (flip) => {
    expect(await flip.broken(await evidenceOf(flipped(SHELL, flip)))).not.toEqual([]);
  });
});
