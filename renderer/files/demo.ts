import type { Document } from '../../boards/document/document';
import { parseDocument } from '../../boards/document/parse';
import type { Workbench } from '../workbench';
import { startBuild } from './new-build';

/** The demo's documents, each fetched only when it is wanted. They go through the same door as any file. */
const TEXTS = {
  board: () => import('../../boards/library/demo/bench.board.json?raw'),
  case: () => import('../../boards/library/demo/reading-room.case.json?raw'),
  wired: () => import('../../boards/library/demo/wired.build.json?raw'),
  everyCable: () => import('../../boards/library/demo/every-cable.build.json?raw'),
  cramped: () => import('../../boards/library/demo/letterbox.build.json?raw'),
} as const;

export async function demoDocument(which: keyof typeof TEXTS): Promise<Document> {
  const { default: text } = await TEXTS[which]();
  const result = parseDocument(text);
  if (!result.ok) throw new Error(`The demo ${which} does not open: ${JSON.stringify(result.problem)}`);
  return result.value;
}

/** Builds to look at: the wiring alone, a machine with every cable laid, and one in a case that is too small. */
export type DemoBuild = 'wired' | 'everyCable' | 'cramped';

export async function openDemo(workbench: Workbench, which: DemoBuild = 'wired'): Promise<void> {
  const build = await demoDocument(which);
  if (build.format === 'leadwright/build') await startBuild(workbench, build);
}
