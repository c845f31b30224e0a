import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { domain } from './bundled/domain.mjs';

/**
 * What it costs to find the best seating and to prove it, beside a mixed-integer solver on the same
 * problem in the same run: the bare demo, then 8, 16, 24 and 32 plugs of its kinds on fewer headers than
 * they want. Both are given the problem already worked out; what working it out costs stands apart.
 */
const AIM = 50;
const ROUNDS = 31;
const root = fileURLToPath(new URL('../..', import.meta.url));
const demo = readFileSync(`${root}/boards/library/demo/wired.build.json`, 'utf8');

const { arrangementsOf, instanceOf, integerProgram, parseDocument, planOf, problemOf, search } = await domain(
  'planner',
  {
    '/boards/document/parse.ts': ['parseDocument'],
    '/boards/planner/plan.ts': ['arrangementsOf', 'planOf'],
    '/boards/planner/problem.ts': ['instanceOf', 'problemOf'],
    '/boards/planner/search.ts': ['search'],
    '/tests/reference/integer-program.ts': ['integerProgram'],
  },
  { external: ['highs'] },
);
const reference = await integerProgram();
const wired = parseDocument(demo).value;

console.log('planner');
compare('bare demo, 14 plugs', { ...wired, seats: [] }, AIM);
for (const plugs of [8, 16, 24, 32]) compare(`${plugs} plugs, too few headers`, crowded(plugs));
many();

function compare(name, build, aim) {
  const problem = problemOf(build, []);
  const instance = instanceOf(problem);
  const answer = search(instance);
  const expected = reference(instance);
  if (JSON.stringify(answer.cost) !== JSON.stringify(expected)) throw new Error(`${name}: another optimum`);
  const ours = [];
  const theirs = [];
  for (let round = 0; round < ROUNDS; round++) {
    ours.push(timeOf(() => search(instance)));
    theirs.push(timeOf(() => reference(instance)));
  }
  const making = madeAnew(build);
  const ratio = median(theirs) / median(ours);
  const said = aim === undefined ? '' : ` (aim ${aim}${ratio < aim ? ', missed' : ''})`;
  console.log(
    `  ${name}: ${(median(ours) * 1000).toFixed(0)} µs and ${answer.steps} branches, HiGHS ${median(theirs).toFixed(1)} ms: ` +
      `${ratio.toFixed(0)} times${said}; the problem itself ${making.toFixed(0)} ms`,
  );
}

/** 200 plugs: bounded in branches, and told how good the answer is. */
function many() {
  const build = crowded(200);
  const started = performance.now();
  const plan = planOf(build, { limits: { steps: 200_000 } });
  const took = performance.now() - started;
  const arrangements = arrangementsOf(problemOf(build, []));
  console.log(
    `  200 plugs: whole plan in ${(took / 1000).toFixed(1)} s, ${plan.steps} branches, ${
      plan.proved ? 'proved' : `not proved: unserved ${plan.cost.unserved}, at least ${plan.bound.unserved}`
    }, one of 10^${arrangements.toString().length - 1} arrangements`,
  );
}

/** That many leads of the demo, over and over, and one board of the demo for every twenty. */
function crowded(plugs) {
  const leads = [...wired.case.leads, ...wired.extras];
  const copies = Math.max(1, Math.round(plugs / 20));
  return {
    ...wired,
    seats: [],
    extras: [],
    case: {
      ...wired.case,
      leads: Array.from({ length: plugs }, (_, at) => ({ ...leads[at % leads.length], id: `lead-${at}` })),
    },
    board: {
      ...wired.board,
      connectors: Array.from({ length: copies }, (_, copy) =>
        wired.board.connectors.map((connector) => ({
          ...connector,
          id: `${connector.id}-${copy}`,
          place: { ...connector.place, yMm: connector.place.yMm + 400 * copy },
        })),
      ).flat(),
    },
  };
}

/** Of a copy that nothing is known of. */
function madeAnew(build) {
  const copy = structuredClone({ ...build, seats: [] });
  return timeOf(() => problemOf(copy, []));
}

function timeOf(run) {
  const started = performance.now();
  run();
  return performance.now() - started;
}

function median(values) {
  return values.toSorted((a, b) => a - b)[values.length >> 1];
}
