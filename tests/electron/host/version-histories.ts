import { mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { fileVersions } from '../../../electron/host/versions';
import { faultyDisk } from './faulty-disk';

const LIMITS = { perFile: 4, bytes: 60 };
/** With nothing taken out between two that are near, what is left is always the last ones. */
const APART_MS = [0, 100];
const PATHS = ['/bench/a.build.json', '/bench/b.build.json', '/bench/c.build.json'];

const save = fc.record({
  path: fc.constantFrom(...PATHS),
  text: fc.string({ minLength: 1, maxLength: 20 }),
  laterMs: fc.integer({ min: 1, max: 200 }),
});

const runOfSaves = fc.array(save, { minLength: 5, maxLength: 12 });

/**
 * Random runs of saves against small bounds: never more than may be, the newest of the file saved last always
 * there, the oldest gone first, and every version that is listed whole.
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
      const written = new Map<string, string[]>();
      let nowMs = 1_000;
      for (const { path, text, laterMs } of saves) {
        nowMs += laterMs;
        await versions.keep(path, { text, savedMs: nowMs }, null);
        written.set(path, [...(written.get(path) ?? []), text]);
        let bytes = 0;
        for (const each of PATHS) {
          const listed = await versions.list(each);
          bytes += listed.reduce((sum, version) => sum + version.bytes, 0);
          if (listed.length > LIMITS.perFile) failures.push(`${listed.length} versions of one file`);
          const saved = written.get(each) ?? [];
          const read = await Promise.all(listed.map(({ id }) => versions.read(each, id)));
          if (read.some((text) => text === null || !saved.includes(text))) failures.push('one does not open');
          const last = saved.toReversed().slice(0, listed.length);
          if (apartMs === 0 && last.join() !== read.join())
            failures.push('a newer one went before an older one');
        }
        const [newest] = await versions.list(path);
        const held = newest && (await versions.read(path, newest.id));
        if (held !== text) failures.push('the newest version is not what was saved last');
        if (bytes > LIMITS.bytes) failures.push(`${bytes} bytes are kept`);
      }
      rmSync(folder, { recursive: true });
    }),
    { numRuns: runs, seed },
  );
  return { tried, failures };
}
