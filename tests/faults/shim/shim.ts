import { execFileSync, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const ROOT = fileURLToPath(new URL('../../..', import.meta.url));

/** Numbers of the system's failures, as Linux has them (errno of asm-generic). */
export const ERRNO = { EIO: 5, EACCES: 13, EMFILE: 24, ENOSPC: 28, EROFS: 30, EDQUOT: 122 } as const;

export interface Shim {
  /** The folder in which files go wrong; for everything a test lays out. */
  readonly below: string;
  /** Runs the program at-work under the shim. */
  readonly atWork: (...args: readonly string[]) => Promise<Ran>;
  /** Any program under the shim, its first fault armed from the start: "at kind lasting". */
  readonly run: (
    args: readonly string[],
    fault: string,
    env?: Readonly<Record<string, string>>,
  ) => Promise<Ran>;
  /** What the last program under the shim did to files, as far as it was logged. */
  readonly log: string;
  readonly close: () => void;
}

interface Ran {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly out: string;
  readonly err: string;
}

/** Why files cannot be made to go wrong under a real program here; null where they can. */
export function whyNoShim(): string | null {
  if (process.platform !== 'linux') return 'LD_PRELOAD works on Linux only';
  return spawnSync('gcc', ['--version']).error === undefined ? null : 'there is no gcc';
}

/** Compiles the shim and bundles the program that works under it. */
export async function openShim(): Promise<Shim> {
  const top = mkdtempSync(join(tmpdir(), 'lw-faults-'));
  const [library, log, below] = [join(top, 'faults.so'), join(top, 'log'), join(top, 'below')];
  mkdirSync(below);
  const source = fileURLToPath(new URL('faults.c', import.meta.url));
  execFileSync('gcc', ['-shared', '-fPIC', '-O1', '-Wall', '-Werror', '-o', library, source, '-ldl']);
  const program = await bundleAtWork();

  async function run(
    args: readonly string[],
    fault: string,
    env: Readonly<Record<string, string>> = {},
  ): Promise<Ran> {
    const child = spawn(process.execPath, args, {
      env: {
        ...process.env,
        ...env,
        NODE_OPTIONS: '',
        LD_PRELOAD: library,
        LEADWRIGHT_FAULTS_BELOW: below,
        LEADWRIGHT_FAULTS_LOG: log,
        LEADWRIGHT_FAULTS: fault,
      },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    const [out, err] = await Promise.all([text(child.stdout), text(child.stderr), once(child, 'close')]);
    return { code: child.exitCode, signal: child.signalCode, out, err };
  }

  return {
    below,
    log,
    run,
    atWork: (...args) => run([program, ...args], '0 none 0'),
    close: () => rmSync(top, { recursive: true, force: true }),
  };
}

let bundled: Promise<string> | null = null;

/** The host and what is done with it, in one file that Node runs as it is. */
export function bundleAtWork(): Promise<string> {
  const outDir = join(ROOT, 'out', 'faults');
  bundled ??= build({
    configFile: false,
    root: ROOT,
    logLevel: 'error',
    publicDir: false,
    ssr: { noExternal: true },
    build: {
      ssr: true,
      target: 'node20',
      outDir,
      emptyOutDir: false,
      minify: false,
      rolldownOptions: {
        input: join(ROOT, 'tests', 'faults', 'work', 'at-work.ts'),
        output: { entryFileNames: 'at-work.mjs', codeSplitting: false },
      },
    },
  }).then(() => join(outDir, 'at-work.mjs'));
  return bundled;
}
