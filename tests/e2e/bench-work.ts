import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Build, Seat } from '../../boards/document/build';
import { parseDocument } from '../../boards/document/parse';
import { applyCommand } from '../../boards/edit/apply';
import { wired } from '../boards/library/demo-files';

/** Where a file of the demo lies. */
export function demoFile(name: string): string {
  return fileURLToPath(new URL(`../../boards/library/demo/${name}`, import.meta.url));
}

/** A build with the demo's board and case, nothing seated: what "New build" begins with. */
export const UNWIRED: Build = { ...wired, extras: [], seats: [] };

/** Where the leads of the case belong, as the drawing of the wired demo shows it. */
export const RIGHT_SEATS: readonly Seat[] = wired.seats.filter(({ lead }) =>
  wired.case.leads.some(({ id }) => id === lead),
);

/** The build with one more plug seated. */
export function withSeat(build: Build, { lead, plug, connector, at, turn }: Seat): Build {
  const result = applyCommand(build, { name: 'seat-plug', args: { lead, plug, connector, at, turn } });
  if (!result.ok) throw new Error(`${lead} does not go there: ${JSON.stringify(result.problem)}`);
  return result.value;
}

/** The build that a file on disk holds. */
export function buildIn(file: string): Build {
  const result = parseDocument(readFileSync(file, 'utf8'));
  if (!result.ok || result.value.format !== 'leadwright/build') throw new Error(`${file} is no build`);
  return result.value;
}
