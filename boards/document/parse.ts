import { freezeDeep } from '../base/freeze';
import { ok, type Result, refuse } from '../base/result';
import { referenceProblems } from './check/references';
import { tooDeepAt } from './depth';
import type { Document } from './document';
import { FORMATS, type Format } from './formats';
import { isRecord } from './is-record';
import { LIMITS } from './limits';
import { type Chains, upgrade } from './migrate';
import { MIGRATIONS } from './migrations';
import { jsonMistake } from './problem/json-mistake';
import type { OpenProblem } from './problem/problem';
import { readFields } from './problem/read-fields';
import { shownValue } from './problem/shown-value';
import { positionOf } from './problem/text-position';

/**
 * The text of a file as a frozen document of today's version, or why not. The limits come first, then
 * the version, then the schema, then that every name in it is the name of something.
 *
 * @param text as it was read; a byte order mark may stand at its beginning
 * @param chains the steps from older versions; only a test has others than the real ones
 */
export function parseDocument(text: string, chains: Chains = MIGRATIONS): Result<Document, OpenProblem> {
  const data = readJson(text);
  if (!data.ok) return data;
  const read = documentFrom(data.value, chains);
  return read.ok ? ok(freezeDeep(read.value)) : read;
}

/** As above, of what JSON has been read already, and not frozen: for whoever only writes it out again. */
export function documentFrom(data: unknown, chains: Chains = MIGRATIONS): Result<Document, OpenProblem> {
  const format = formatOf(data);
  if (!format.ok) return format;
  const current = upgrade(data, format.value.format, chains);
  return current.ok ? fromData(current.value, format.value) : current;
}

/** The text as plain data, when it is not too large, not too deep and JSON. */
function readJson(text: string): Result<unknown, OpenProblem> {
  const limitBytes = LIMITS.fileBytes;
  // Letters and not bytes: never more than the bytes, which the host has counted already.
  if (text.length > limitBytes) return refuse({ code: 'too-large', bytes: text.length, limitBytes });
  const json = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (json.trim() === '') return refuse({ code: 'empty' });
  const deep = tooDeepAt(json, LIMITS.depth);
  if (deep !== undefined)
    return refuse({ code: 'too-deep', line: positionOf(json, deep).line, limit: LIMITS.depth });
  try {
    return ok(JSON.parse(json));
  } catch (thrown) {
    const mistake = jsonMistake(json);
    if (mistake === undefined) throw thrown;
    return refuse({ code: 'not-json', ...positionOf(json, mistake.at), detail: mistake.detail });
  }
}

function formatOf(raw: unknown): Result<Format, OpenProblem> {
  if (!isRecord(raw)) return refuse({ code: 'not-ours', found: shownValue(raw) });
  const name = Object.hasOwn(raw, 'format') ? raw.format : undefined;
  const known = FORMATS.find(({ format }) => format === name);
  if (known !== undefined) return ok(known);
  const found = name === undefined ? 'no “format”' : `the format ${shownValue(name)}`;
  return refuse({ code: 'not-ours', found });
}

function fromData(raw: unknown, { schema }: Format): Result<Document, OpenProblem> {
  const read = readFields(schema, raw);
  if (!read.ok) return refuse({ code: 'invalid', ...read.problem });
  const references = referenceProblems(read.value);
  return references.fields.length > 0 ? refuse({ code: 'invalid', ...references }) : read;
}
