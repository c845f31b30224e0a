import { z } from 'zod';
import { ok } from '../../base/result';
import { connectorName } from '../../document/names';
import { IdZ, NotesZ } from '../../document/text';
import { changeConnector } from '../change';
import { defineCommand } from '../definition';

/** Writes the notes of a connector; an empty text takes them away. */
export const noteConnector = defineCommand({
  name: 'note-connector',
  args: z.strictObject({ connector: IdZ, notes: NotesZ }),
  label: (build, { connector }) => `Note on ${connectorName(build, connector)}`,
  apply: (build, { connector: id, notes }) =>
    changeConnector(build, id, ({ notes: _, ...rest }) => ok(notes === '' ? rest : { ...rest, notes })),
});
