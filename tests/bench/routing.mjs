import { readFileSync } from 'node:fs';
import { domain } from './bundled/domain.mjs';

/**
 * What it costs to find the routes of all cables of a tray and to prove them, beside a mixed-integer solver
 * on the same tray in the same run: of the demo with every cable, and of trays of chance; then 200 cables on
 * a tray of 500 points, with what the search says of how good they are.
 */
const AIM = 50;
const ROUNDS = 11;
/** Rounds before, so that neither side is timed while its code is still being compiled. */
const WARMING = 20;

const { allRoutes, layingOf, passageProblem, routeProgram } = await domain(
  'routing',
  {
    '/boards/routing/search/all-routes.ts': ['allRoutes'],
    '/boards/routing/fill/fill.ts': ['passageProblem'],
    '/boards/routing/laid/laying-of.ts': ['layingOf'],
    '/tests/reference/route-program.ts': ['routeProgram'],
  },
  { external: ['highs'] },
);
const reference = await routeProgram();

console.log('routing');
compare('all cables of the demo', demo(), AIM);
compare(
  '16 cables, 4 openings, 24 points',
  trayOf({ columns: 6, rows: 4, openings: 4, cables: 16, seed: 1 }),
  AIM,
);
compare(
  'the same with less room',
  trayOf({ columns: 6, rows: 4, openings: 4, cables: 16, seed: 1, widthMm: 14 }),
);
many(
  '200 cables on 500 points',
  trayOf({ columns: 25, rows: 20, openings: 12, cables: 200, seed: 2, widthMm: 60 }),
);
many(
  'the same with less room',
  trayOf({ columns: 25, rows: 20, openings: 12, cables: 200, seed: 2, widthMm: 30 }),
);

function compare(name, tray, aim) {
  const passable = tray.cables.map((cable) => {
    const kind = tray.cableKinds.find(({ id }) => id === cable.kind);
    return tray.openings.map((opening) => passageProblem(opening, kind, tray.behindMm) === undefined);
  });
  const { cost, steps, proved } = allRoutes(tray);
  const expected = reference(tray, passable);
  const found = { left: cost.left, visibleMm: cost.visibleUm / 1000, totalMm: cost.totalUm / 1000 };
  if (worth(found) !== worth(expected))
    throw new Error(`${name}: ${JSON.stringify(found)} instead of ${JSON.stringify(expected)}`);
  const ours = [];
  const theirs = [];
  for (let round = -WARMING; round < ROUNDS; round++) {
    // A copy each time, so that its graph is made each time as well.
    const copy = structuredClone(tray);
    const own = timeOf(() => allRoutes(copy));
    // The other side is long compiled after its first rounds, and slow.
    const other = round < 2 - WARMING || round >= 0 ? timeOf(() => reference(copy, passable)) : 0;
    if (round < 0) continue;
    ours.push(own);
    theirs.push(other);
  }
  const ratio = median(theirs) / median(ours);
  const said = aim === undefined ? '' : ` (aim ${aim}${ratio < aim ? ', missed' : ''})`;
  console.log(
    `  ${name}: ${median(ours).toFixed(2)} ms, ${steps} branches, ${cost.left} left, ${proved ? 'proved' : 'not proved'}; ` +
      `HiGHS ${median(theirs).toFixed(0)} ms: ${ratio.toFixed(0)} times${said}`,
  );
}

/** One number, as the reference weighs the three: of long trays its own reading of it mixes length and sight. */
function worth({ left, visibleMm, totalMm }) {
  return 1e7 * left + 3e3 * visibleMm + totalMm;
}

/** The demo with every cable, its lengths in whole millimetres. */
function demo() {
  const file = new URL('../../boards/library/demo/every-cable.build.json', import.meta.url);
  const { laying } = layingOf(JSON.parse(readFileSync(file, 'utf8')));
  return {
    ...laying,
    paths: laying.paths.map((path) => ({ ...path, lengthMm: Math.round(path.lengthMm) })),
  };
}

function many(name, tray) {
  const told = [];
  let found;
  const took = timeOf(() => {
    found = allRoutes(tray, { tell: (progress) => told.push(progress) });
  });
  const { cost, bound, proved, steps } = found;
  console.log(
    `  ${name}: ${(took / 1000).toFixed(2)} s, ${steps} branches, progress told ${told.length} times, ${cost.left} of ${tray.cables.length} left` +
      `${proved ? ', proved' : `, not proved: at least ${bound.left} left`}; ${(cost.visibleUm / 1e6).toFixed(1)} m in sight` +
      `${proved ? '' : `, at least ${(bound.visibleUm / 1e6).toFixed(1)} m were none left`}`,
  );
}

/** A grid of points, the left half of the columns behind the tray and the right half before it, openings between. */
function trayOf({ columns, rows, openings, cables, seed, widthMm = 40 }) {
  const below = dice(seed);
  const area = { xMm: 0, yMm: 0, widthMm: 20, heightMm: 20 };
  const behind = Math.floor(columns / 2);
  const sideOf = (column) => (column < behind ? 'back' : 'front');
  const points = [];
  const paths = [];
  const join = (from, to, side) =>
    paths.push({ id: `path-${paths.length}`, from, to, lengthMm: 10 + below(30), side });
  for (let column = 0; column < columns; column++)
    for (let row = 0; row < rows; row++) {
      const id = `point-${column}-${row}`;
      points.push({ id, kind: 'tie', xMm: column * 15, yMm: row * 20 });
      if (row > 0) join(`point-${column}-${row - 1}`, id, sideOf(column));
      if (column > 0 && sideOf(column - 1) === sideOf(column))
        join(`point-${column - 1}-${row}`, id, sideOf(column));
    }
  const holes = Array.from({ length: openings }, (_, at) => {
    const row = Math.floor((at * rows) / openings);
    const id = `opening-${at}`;
    join(`point-${below(behind)}-${row}`, id, 'back');
    join(id, `point-${behind + below(columns - behind)}-${row}`, 'front');
    return { ...area, id, widthMm, edge: 'grommet' };
  });
  for (let row = 0; row < rows; row++) join('supply', `point-0-${row}`, 'back');
  return {
    widthMm: 500,
    heightMm: 500,
    points,
    openings: holes,
    bays: [],
    supply: { ...area, id: 'supply' },
    paths,
    cableKinds: [
      { id: 'thin', diameterMm: 4, slackMm: 20 },
      { id: 'thick', diameterMm: 9, slackMm: 25 },
    ],
    cables: Array.from({ length: cables }, (_, at) => ({
      id: `cable-${at}`,
      kind: below(4) === 0 ? 'thick' : 'thin',
      from: below(2) === 0 ? 'supply' : `point-${below(behind)}-${below(rows)}`,
      to: `point-${behind + below(columns - behind)}-${below(rows)}`,
      lengthMm: 15 * (columns + rows) + below(20 * (columns + rows)),
    })),
  };
}

/** Chance that can be repeated (mulberry32). */
function dice(seed) {
  let state = seed;
  return (limit) => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) % limit;
  };
}

function timeOf(run) {
  const started = performance.now();
  run();
  return performance.now() - started;
}

function median(values) {
  return values.toSorted((a, b) => a - b)[values.length >> 1];
}
