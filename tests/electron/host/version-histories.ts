import { mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { fileVersions, type Held, type Versions } from '../../../electron/host/versions';
import { faultyDisk } from './faulty-disk';

const LIMITS = { perFile: 4, bytes: 60 };
/** With nothing taken out between two that are near, what goes is always the oldest. */
const APART_MS = [0, 100];
const PATHS = ['/bench/a.build.json', '/bench/b.build.json', '/bench/c.build.json'];

/** Few texts that come again, as where an earlier version is saved anew, and others. */
const text = fc.oneof(fc.constantFrom('A', 'B', 'C'), fc.string({ minLength: 1, maxLength: 20 }));

const save = fc.record({
  path: fc.constantFrom(...PATHS),
  text,
  laterMs: fc.integer({ min: 1, max: 200 }),
  /** What another program put there before, with whatever time its file has. */
  foreign: fc.option(fc.record({ text, savedMs: fc.integer({ min: 0, max: 5_000 }) })),
});

const runOfSaves = fc.array(save, { minLength: 5, maxLength: 12 });

interface KeptText {
  readonly id: string;
  readonly savedMs: number;
  readonly bytes: number;
  readonly text: string | null;
}

const keptOf = (versions: Versions, path: string): Promise<readonly KeptText[]> =>
  versions
    .list(path)
    .then((listed) =>
      Promise.all(
        listed.map(async (version) => ({ ...version, text: await versions.read(path, version.id) })),
      ),
    );

/** Of what went, whatever was newer than something that stays, though no save has just replaced that. */
function wentTooEarly(was: readonly KeptText[], is: readonly KeptText[], before: Held | null) {
  const stays = (version: KeptText) => is.some(({ id }) => id === version.id);
  const oldest = Math.min(
    ...was.filter((version) => stays(version) && version.text !== before?.text).map(({ savedMs }) => savedMs),
  );
  return was.filter((version) => !stays(version) && version.savedMs > oldest);
}

/**
 * Random runs of saves against small bounds, of files that others write too: never more than may be, what the file
 * holds always there and so is what it held before the save, the oldest gone first, what others wrote at no other
 * time, and every version that is listed whole.
 */
export async function versionHistories(below: string, runs: number, seed: number) {
  const failures: string[] = [];
  let tried = 0;
  await fc.assert(
    fc.asyncProperty(runOfSaves, fc.constantFrom(...APART_MS), async (saves, apartMs) => {
      tried++;
      const folder = mkdtempSync(join(below, 'versions-'));
      const disk = faultyDisk({ at: Number.POSITIVE_INFINITY, fault: 'EIO', lasting: false });
      const versions = fileVersions(disk, folder, { ...LIMITS, apartMs });
      const held = new Map<string, Held>();
      const everHeld = new Map<string, string[]>(PATHS.map((path) => [path, []]));
      /** What stood there by nobody's save; the window has shown none of it. */
      const ofOthers = new Set<string>();
      let kept = new Map<string, readonly KeptText[]>();
      let nowMs = 1_000;
      for (const { path, text, laterMs, foreign } of saves) {
        nowMs += laterMs;
        const before = foreign ?? held.get(path) ?? null;
        const now = { text, savedMs: nowMs };
        await versions.keep(path, now, before);
        held.set(path, now);
        const was = kept;
        kept = new Map();
        for (const each of PATHS) kept.set(each, await keptOf(versions, each));
        const ours = kept.get(path) ?? [];
        everHeld.get(path)?.push(text, ...(before === null ? [] : [before.text]));
        const known = was.get(path)?.some((version) => version.text === before?.text) ?? false;
        for (const { id, text } of ours.slice(1)) if (!known && text === before?.text) ofOthers.add(id);
        for (const each of PATHS) {
          const is = kept.get(each) ?? [];
          if (is.length > LIMITS.perFile) failures.push(`${is.length} versions of one file`);
          if (is.some(({ text }) => text === null || !everHeld.get(each)?.includes(text)))
            failures.push('one does not open');
          const early = wentTooEarly(was.get(each) ?? [], is, each === path ? before : null);
          if (apartMs === 0 && early.length > 0) failures.push('a newer one went before an older one');
          if (early.some(({ id }) => ofOthers.has(id))) failures.push('what another wrote was thinned out');
        }
        if (ours[0]?.text !== text) failures.push('the newest version is not what was saved last');
        if (before !== null && !ours.some(({ text }) => text === before.text))
          failures.push('what the save has replaced is not there');
        const bytes = [...kept.values()].flat().reduce((sum, version) => sum + version.bytes, 0);
        if (bytes > LIMITS.bytes) failures.push(`${bytes} bytes are kept`);
      }
      rmSync(folder, { recursive: true });
    }),
    { numRuns: runs, seed },
  );
  return { tried, failures };
}
