import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { prettyJson } from '../../boards/document/pretty-json';

const NOBODY = 65_534;

/** A folder for one test, open to everybody, gone afterwards. */
export function scratchFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'lw-test-'));
  chmodSync(folder, 0o777);
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** Does some work without the powers of root, to whom no file is closed. */
export async function asNobody<T>(work: () => Promise<T>): Promise<T> {
  if (process.geteuid?.() !== 0) return work();
  process.seteuid?.(NOBODY);
  try {
    return await work();
  } finally {
    process.seteuid?.(0);
  }
}

/** A board sheet with nothing on it. */
export function bareSheet(name: string) {
  const outline = { widthMm: 200, depthMm: 170 };
  return { format: 'leadwright/board', version: 1, id: 'bare', name, outline, connectors: [] };
}

/** Its text, as it is saved. */
export function bareBoard(name: string): string {
  return `${prettyJson(bareSheet(name))}\n`;
}
