import { existsSync, readFileSync, writeFileSync } from 'node:fs';

const STATUS = '/proc/self/status';

/** Loaded before a program: writes down what the program has used of the machine when it ends. */
process.on('exit', () => {
  const { userCPUTime, systemCPUTime } = process.resourceUsage();
  const used = { ms: (userCPUTime + systemCPUTime) / 1000, mb: mostKb() / 1024 };
  writeFileSync(process.env.LEADWRIGHT_USAGE ?? '', JSON.stringify(used));
});

/**
 * Linux counts what the program that began this one held as its own in `maxRSS` (getrusage(2): the value is kept
 * over execve); the high-water mark of its own memory does not.
 */
function mostKb() {
  const status = existsSync(STATUS) ? readFileSync(STATUS, 'utf8') : '';
  const [, kb] = /^VmHWM:\s+(\d+) kB$/m.exec(status) ?? [];
  return kb === undefined ? process.resourceUsage().maxRSS : Number(kb);
}
