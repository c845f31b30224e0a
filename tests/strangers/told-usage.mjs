import { writeFileSync } from 'node:fs';

/** Loaded before a program: writes down what the program has used of the machine when it ends. */
process.on('exit', () => {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  const used = { ms: (userCPUTime + systemCPUTime) / 1000, mb: maxRSS / 1024 };
  writeFileSync(process.env.LEADWRIGHT_USAGE ?? '', JSON.stringify(used));
});
