import { parseDocument } from '../../../boards/document/parse';
import type { OpenProblem } from '../../../boards/document/problem/problem';
import { type OpenWords, openProblemWords } from '../../../boards/document/problem/problem-words';
import { bench, grid, partLead, posts, seat } from '../fixtures/bench';

/** Why a text is not opened; throws when it is. */
export function refused(text: string): OpenProblem {
  const result = parseDocument(text);
  if (result.ok) throw new Error('It was opened');
  return result.problem;
}

/** What a person reads when a file called "desk.build.json" has this text. */
export function told(text: string): OpenWords {
  return openProblemWords(refused(text), 'desk.build.json');
}

/** Why a document is not opened, as "path: expected …, found …". */
export function faults(document: unknown): readonly string[] {
  const problem = refused(JSON.stringify(document));
  if (problem.code !== 'invalid') throw new Error(`Refused as ${problem.code}`);
  return problem.fields.map(({ path, expected, found }) => `${path}: expected ${expected}, found ${found}`);
}

/** A sound build as plain data to be spoilt: one header, one switch lead on it, one LED lead beside it. */
export function soundBuild() {
  return structuredClone(
    bench(
      [posts('panel', grid(2, 5), { pins: ['drive-led-feed', 'power-led-feed', 'drive-led-sink'] })],
      [
        partLead('switch', 'power-switch', grid(1, 2), { a: '1', b: '2' }),
        partLead('light', 'drive-led', grid(1, 3), { anode: '1', cathode: '3' }, { blocked: ['2'] }),
      ],
      [seat('switch', 'panel', [0, 2])],
    ),
  );
}

/** The same with one place changed: `spoilt('case.leads.0.name', 7)`; undefined takes the place away. */
export function spoilt(path: string, value: unknown): unknown {
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  const root: unknown = soundBuild();
  let at = root;
  for (const key of keys) at = Reflect.get(Object(at), key);
  if (value === undefined) Reflect.deleteProperty(Object(at), last);
  else Reflect.set(Object(at), last, value);
  return root;
}
