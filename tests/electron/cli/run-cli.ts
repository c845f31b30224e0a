import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { fileURLToPath } from 'node:url';
import { build } from '../../../electron/start/build.mjs';

const ROOT = fileURLToPath(new URL('../../..', import.meta.url));

export const demo = (name: string) => join(ROOT, 'boards', 'library', 'demo', name);

export interface Run {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export interface RunOptions {
  readonly env?: Readonly<Record<string, string>>;
  readonly cwd?: string;
  /** A user of the system, where we are root. */
  readonly uid?: number;
  readonly nodeOptions?: readonly string[];
}

/** The command as it is shipped, run as a program of its own. */
export async function leadwright(args: readonly string[], options: RunOptions = {}): Promise<Run> {
  const { env = {}, cwd = ROOT, uid, nodeOptions = [] } = options;
  const program = join(ROOT, 'dist', 'leadwright.mjs');
  const child = spawn(process.execPath, [...nodeOptions, program, ...args], {
    cwd,
    env: { PATH: process.env.PATH, ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
    ...(uid !== undefined && process.getuid?.() === 0 && { uid }),
  });
  const [out, err] = await Promise.all([text(child.stdout), text(child.stderr), once(child, 'close')]);
  return { code: child.exitCode, out, err };
}

/** Builds the command from today's sources. */
export async function buildCommand(): Promise<void> {
  await build(['cli']);
}
