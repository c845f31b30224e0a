import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import Ajv from 'ajv/dist/2020';
import { expect, it } from 'vitest';
import { inRoot } from '../../electron/start/place.mjs';
import { demoFile } from './bench-work';

/** A schema as it lies in the built program, for any editor to find. */
function built(kind: string): string {
  return readFileSync(inRoot('dist', 'schemas', `${kind}.schema.json`), 'utf8');
}

it('there is one for each kind of file, as the command line prints it', () => {
  expect(readdirSync(inRoot('dist', 'schemas')).sort()).toEqual(
    ['board', 'build', 'case'].map((kind) => `${kind}.schema.json`),
  );
  for (const kind of ['build', 'board', 'case']) {
    const printed = execFileSync(process.execPath, [inRoot('dist', 'leadwright.mjs'), 'schema', kind]);
    expect(built(kind)).toBe(printed.toString());
  }
});

it.each([
  ['build', 'wired.build.json'],
  ['build', 'eight-slips.build.json'],
  ['board', 'bench.board.json'],
  ['case', 'reading-room.case.json'],
])('the %s schema takes %s, and refuses it with a name that does not exist', (kind, file) => {
  // ajv 8 knows nothing of this program; it reads the schema by the draft of 2020-12.
  const validate = new Ajv({ strict: false }).compile(JSON.parse(built(kind)));
  const document: Record<string, unknown> = JSON.parse(readFileSync(demoFile(file), 'utf8'));
  validate(document);
  expect(validate.errors).toBeNull();
  expect(validate({ ...document, colour: 'beige' })).toBe(false);
});
