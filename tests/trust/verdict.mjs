/**
 * What one row came to, as `run-rows.ts` wrote it down.
 * @typedef {object} RowResult
 * @property {string} id
 * @property {string} promise
 * @property {{ readonly count: number, readonly what: string }} target
 * @property {boolean} long
 * @property {number} tried
 * @property {readonly string[]} failures
 * @property {string} [notRun] why nothing, or not everything, was tried
 * @property {string} [on] the day on which it was run
 * @property {string} [commit] what was run
 * @property {boolean} [outdated] the row promises something else by now, or more of it
 */

/** @typedef {'held' | 'failed' | 'below target' | 'not run' | 'never run' | 'of another promise'} Outcome */

/** Every row that the table has to have. */
export const ROW_IDS = ['R', 'S'].flatMap((kind) =>
  Array.from({ length: 19 }, (_, at) => `${kind}${at + 1}`),
);

/**
 * What is said of a row. Below its target counts as badly as a failure; only a reason why it cannot be run
 * here is taken for one.
 * @param {RowResult | undefined} row
 * @returns {Outcome}
 */
export function outcomeOf(row) {
  if (row === undefined) return 'never run';
  if (row.outdated) return 'of another promise';
  if (row.failures.length > 0) return 'failed';
  if (row.tried >= row.target.count) return 'held';
  return row.notRun === undefined ? 'below target' : 'not run';
}

/** @param {Outcome} outcome */
export function stands(outcome) {
  return outcome === 'held' || outcome === 'not run';
}

/**
 * What is known of every row after a run. One that was asked for and left nothing has not held again: it broke off.
 * @param {ReadonlyMap<string, RowResult>} before
 * @param {ReadonlyMap<string, RowResult>} ran
 * @param {{ readonly ids: readonly string[], readonly soak: boolean }} asked rows by name, or else the long ones or
 *   the others
 * @param {{ readonly on: string, readonly commit?: string | undefined }} stamp
 * @returns {Map<string, RowResult>}
 */
export function afterRun(before, ran, { ids, soak }, stamp) {
  const after = new Map(before);
  for (const [id, result] of before)
    if (ids.length > 0 ? ids.includes(id) : result.long === soak)
      after.set(id, { ...result, ...stamp, tried: 0, failures: ['It broke off and left no result.'] });
  for (const [id, result] of ran) after.set(id, { ...stamp, ...result });
  return after;
}

/**
 * The same results, with those marked whose row promises something else by now.
 * @param {ReadonlyMap<string, RowResult>} results
 * @param {Readonly<Record<string, Pick<RowResult, 'promise' | 'target'>>>} promises as the rows have them
 * @returns {Map<string, RowResult>}
 */
export function besidePromises(results, promises) {
  return new Map(
    [...results].map(([id, result]) => {
      const now = promises[id];
      const outdated =
        now?.promise !== result.promise ||
        now.target.count !== result.target.count ||
        now.target.what !== result.target.what;
      return [id, outdated ? { ...result, outdated } : result];
    }),
  );
}

const NUMBER = new Intl.NumberFormat('en');
const HEAD = ['row', 'what is promised', 'target', 'tried', 'failures', 'outcome', 'run on'];

/**
 * @param {string} id
 * @param {RowResult | undefined} row
 */
function cellsOf(id, row) {
  const outcome = outcomeOf(row);
  if (row === undefined) return [id, '', '', '', '', outcome, ''];
  const { promise, target, tried, failures, notRun, on = '', commit } = row;
  const why = notRun === undefined ? '' : outcome === 'not run' ? `: ${notRun}` : ` (not run: ${notRun})`;
  return [
    id,
    promise,
    `${NUMBER.format(target.count)} ${target.what}`,
    NUMBER.format(tried),
    NUMBER.format(failures.length),
    outcome + why,
    commit === undefined ? on : `${on}, ${commit}`,
  ];
}

/**
 * The table for a terminal: one row a line, the promise on a line of its own.
 * @param {readonly string[]} ids
 * @param {ReadonlyMap<string, RowResult>} results
 */
export function tableForTerminal(ids, results) {
  return ids
    .map((id) => {
      const [, promise, target = '', tried = '', failures = '', outcome = '', on] = cellsOf(
        id,
        results.get(id),
      );
      const line = `${id.padEnd(5)}${outcome}`;
      if (promise === '') return line;
      return `${line}\n     ${promise}\n     target ${target}; tried ${tried}, failures ${failures}; run on ${on}`;
    })
    .join('\n');
}

/**
 * The same table for the documentation.
 * @param {readonly string[]} ids
 * @param {ReadonlyMap<string, RowResult>} results
 */
export function tableForDocs(ids, results) {
  const line = (/** @type {readonly string[]} */ cells) =>
    `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return [
    line(HEAD),
    line(HEAD.map(() => '---')),
    ...ids.map((id) => line(cellsOf(id, results.get(id)))),
  ].join('\n');
}

const [BEGIN, END] = ['<!-- trust: begin -->', '<!-- trust: end -->'];

/**
 * Puts the table in its place in a text.
 * @param {string} text
 * @param {string} table
 */
export function withTable(text, table) {
  const [begin, end] = [text.indexOf(BEGIN), text.indexOf(END)];
  if (begin < 0 || end < begin) throw new Error(`There is no place for the table: ${BEGIN} … ${END}`);
  return `${text.slice(0, begin)}${BEGIN}\n${table}\n${text.slice(end)}`;
}
