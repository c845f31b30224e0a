import { execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { fileURLToPath } from 'node:url';
import { type Apart, begin } from '../../size/apart';

/** What a program asked the system for: "connect inet 127.0.0.1", "getaddrinfo name evil.test". */
type Reached = string;

interface Ran {
  readonly code: number | null;
  readonly err: string;
}

export interface Watch {
  /** A folder for everything that is laid out. */
  readonly home: string;
  /** Runs a program of Node under the watch, to its end. */
  readonly run: (script: string, args: readonly string[]) => Promise<Ran>;
  /** Begins one that serves pages under the watch. */
  readonly begin: (script: string, args: readonly string[]) => Promise<Apart>;
  /** What was asked for since the last look. */
  readonly reached: () => readonly Reached[];
  readonly close: () => void;
}

/** Of this machine alone: its loopback, and sockets that are files. */
const HERE = /^\w+ (?:inet 127\.\d+\.\d+\.\d+|inet6 ::1|unix )$/;

/** What was asked for that is not of this machine: addresses elsewhere, and every name that was looked up. */
export function elsewhere(reached: readonly Reached[]): readonly Reached[] {
  return reached.filter((each) => !HERE.test(each));
}

/** Compiles the library that stands between a program and the system. */
export function openWatch(): Watch {
  const top = mkdtempSync(join(tmpdir(), 'lw-reached-'));
  const [library, log] = [join(top, 'reached.so'), join(top, 'log')];
  const source = fileURLToPath(new URL('reached.c', import.meta.url));
  execFileSync('gcc', ['-shared', '-fPIC', '-O1', '-Wall', '-Werror', '-o', library, source, '-ldl']);
  const env = {
    PATH: process.env.PATH,
    HOME: top,
    LEADWRIGHT_DATA: join(top, 'data'),
    LD_PRELOAD: library,
    LEADWRIGHT_REACHED_LOG: log,
  };
  return {
    home: top,
    run: async (script, args) => {
      const child = spawn(process.execPath, [script, ...args], { env, stdio: ['ignore', 'ignore', 'pipe'] });
      const [err] = await Promise.all([text(child.stderr), once(child, 'exit')]);
      return { code: child.exitCode, err };
    },
    begin: (script, args) => begin(script, args, env),
    reached: () => {
      const lines = existsSync(log) ? readFileSync(log, 'utf8').split('\n').slice(0, -1) : [];
      rmSync(log, { force: true });
      return lines.map((line) => line.replaceAll('\t', ' '));
    },
    close: () => rmSync(top, { recursive: true, force: true }),
  };
}
