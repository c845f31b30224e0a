import { mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { fileVersions } from '../../../electron/host/versions';
import { faultyDisk } from './faulty-disk';

const LIMITS = { perFile: 4, bytes: 60, apartMs: 100 };
const PATHS = ['/bench/a.build.json', '/bench/b.build.json', '/bench/c.build.json'];

const save = fc.record({
  path: fc.constantFrom(...PATHS),
  text: fc.string({ minLength: 1, maxLength: 20 }),
  laterMs: fc.integer({ min: 1, max: 200 }),
});

/**
 * Random runs of saves against small bounds: never more than may be, the newest of the file saved last always
 * there, the oldest gone first, and every version that is listed whole.
 */
export async function versionHistories(below: string, runs: number, seed: number) {
  const failures: string[] = [];
  let tried = 0;
  await fc.assert(
    fc.asyncProperty(fc.array(save, { minLength: 5, maxLength: 12 }), async (saves) => {
      tried++;
      const folder = mkdtempSync(join(below, 'versions-'));
      const disk = faultyDisk({ at: Number.POSITIVE_INFINITY, fault: 'EIO', lasting: false });
      const versions = fileVersions(disk, folder, LIMITS);
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
          for (const { id } of listed) {
            const read = await versions.read(each, id);
            if (read === null || !written.get(each)?.includes(read)) failures.push(`${id} does not open`);
          }
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
