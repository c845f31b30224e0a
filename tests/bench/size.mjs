import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { domain } from './bundled/domain.mjs';

/**
 * What a build of 10,000 pins, 1,000 leads and 500 cables costs beside an eighth of it, in the same run and in
 * turn. Aim: nothing grows faster than the build does, with a half more for what a cache no longer holds; and a
 * single edit costs less than the whole did.
 */
const [SMALL, LARGE] = [8, 64];
const [CABLES_EACH, LOOSE_EACH] = [8, 2];
const AIM = 1.5 * (LARGE / SMALL);
const ROUNDS = 5;
const root = fileURLToPath(new URL('../..', import.meta.url));

const {
  analyse,
  benchStepsOf,
  fromToCsv,
  largeBuild,
  measureByTable,
  parseDocument,
  perform,
  placesOf,
  sceneOf,
  serialize,
  sizeOf,
  startHistory,
} = await domain('size', {
  '/boards/analyse.ts': ['analyse'],
  '/boards/document/parse.ts': ['parseDocument'],
  '/boards/document/serialize.ts': ['serialize'],
  '/boards/drawing/measure.ts': ['measureByTable'],
  '/boards/edit/history.ts': ['perform', 'startHistory'],
  '/boards/fit/places.ts': ['placesOf'],
  '/boards/handover/from-to-csv.ts': ['fromToCsv'],
  '/boards/handover/steps/bench-steps.ts': ['benchStepsOf'],
  '/renderer/canvas/scene/scene-of.ts': ['sceneOf'],
  '/tests/boards/large-build.ts': ['largeBuild', 'sizeOf'],
});
const wired = parseDocument(readFileSync(`${root}/boards/library/demo/wired.build.json`, 'utf8')).value;

/** What is done with a build, in the order in which a person comes to it. Each is timed by itself. */
const WORK = {
  save: ({ build }) => serialize(build),
  open: ({ text }) => parseDocument(text),
  check: ({ fresh }) => analyse(fresh),
  draw: ({ fresh }) => sceneOf(fresh, { view: fresh.view, measure: measureByTable }),
  edit: ({ fresh }) => unseated(fresh),
  'check after the edit': ({ edited }) => analyse(edited),
  'draw after the edit': ({ edited }) => sceneOf(edited, { view: edited.view, measure: measureByTable }),
  'places of a plug': ({ edited, seat }) => placesOf(edited, seat),
  'from-to list': ({ fresh }) => fromToCsv(fresh),
  'steps of the work': ({ fresh }) => benchStepsOf(fresh),
};

/** @param {number} copies */
function buildOf(copies) {
  return largeBuild(wired, copies, { cables: copies * CABLES_EACH, loose: copies * LOOSE_EACH });
}

/** @param {number} copies */
function round(copies) {
  const build = buildOf(copies);
  const text = serialize(build);
  const fresh = parseDocument(text).value;
  const edited = unseated(fresh);
  const held = { build, text, fresh, edited, seat: fresh.seats[0] };
  return Object.values(WORK).map((work) => {
    const began = performance.now();
    work(held);
    return performance.now() - began;
  });
}

function unseated(build) {
  const [{ lead, plug }] = build.seats;
  return perform(startHistory(build), { name: 'unseat-plug', args: { lead, plug } }).value.present;
}

/** @param {number[]} values */
function least(values) {
  return Math.min(...values);
}

// Once beforehand, so that neither pays for what the engine does with code that it meets first.
round(SMALL);
const times = { small: [], large: [] };
for (let at = 0; at < ROUNDS; at++) {
  times.small.push(round(SMALL));
  times.large.push(round(LARGE));
}
const { pins, leads, cables } = sizeOf(buildOf(LARGE));
console.log(
  `${pins} pins, ${leads} leads, ${cables} cables beside an eighth of it, least of ${ROUNDS} (aim: under ${AIM} times):`,
);
const worst = Object.keys(WORK).map((name, at) => {
  const small = least(times.small.map((each) => each[at]));
  const large = least(times.large.map((each) => each[at]));
  // What takes less than this in the small build drowns in what the engine's own housekeeping takes.
  const ratio = large / Math.max(small, 2);
  console.log(
    `  ${name.padEnd(22)} ${large.toFixed(1).padStart(8)} ms against ${small.toFixed(1).padStart(7)} ms: ${ratio.toFixed(1)} times`,
  );
  return ratio;
});
if (Math.max(...worst) > AIM) process.exitCode = 1;
