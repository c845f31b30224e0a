import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bundleAtWork } from './shim/shim';

/** Why a small disk of its own cannot be had here; null where it can. */
export function whyNoSmallDisk(): string | null {
  const tried = spawnSync('unshare', ['-Urm', 'mount', '-t', 'tmpfs', '-o', 'size=64k', 'none', '/mnt']);
  return tried.status === 0 ? null : 'this system lets nobody but root make a disk of its own';
}

/**
 * Saving on a real disk of one megabyte that is really full: the former file is untouched, it is said that the
 * disk is full, and saving works again once there is as much room as the message asks for.
 *
 * @param sizes how much is left free, in bytes, one case for each
 * @returns how many of them were too little
 */
export async function fullDisk(
  sizes: readonly number[],
): Promise<{ full: number; failures: readonly string[] }> {
  const program = await bundleAtWork();
  const top = mkdtempSync(join(tmpdir(), 'lw-full-'));
  const disk = join(top, 'disk');
  mkdirSync(disk);
  try {
    const script = `mount -t tmpfs -o size=1m none "$1" && exec "$2" "$3" full "$1" "$4"`;
    const args = ['-Urm', 'sh', '-c', script, 'sh', disk, process.execPath, program, sizes.join(',')];
    const ran = spawnSync('unshare', args, { encoding: 'utf8' });
    if (ran.status !== 0) throw new Error(`The full disk could not be tried: ${ran.stderr}`);
    return JSON.parse(ran.stdout);
  } finally {
    rmSync(top, { recursive: true, force: true });
  }
}
