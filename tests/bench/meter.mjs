import { domain } from './bundled/domain.mjs';

/**
 * Identification with a simulated meter: for every pin header of the library with up to twenty posts, whether
 * the true layout comes first, and how many readings it takes beside a fixed order; then headers that the
 * library lacks, pin by pin; then what a reading of a 2x10 header costs beside working out every likelihood anew.
 *
 * node tests/bench/meter.mjs [runs for each layout] [first seed]
 */
const RUNS = Number(process.argv[2] ?? 500);
/** No weight was set with these seeds. */
const SEED = Number(process.argv[3] ?? 31_415_926);
const STRANGE_RUNS = 8;
const FIRST_AIM = 0.95;
const SHARE_AIM = 0.6;
/** Headers so small that the fewest readings can be told by trying everything. */
const SMALL = 5;

const bench = await domain('meter', {
  '/boards/pinout/meter/evidence.ts': ['likelihoods'],
  '/boards/pinout/meter/held.ts': ['afterReadings'],
  '/boards/pinout/meter/identify.ts': ['heldOf', 'identifyPins'],
  '/tests/boards/pinout/meter/fewest-readings.ts': ['fewestReadings'],
  '/tests/boards/pinout/meter/simulated-runs.ts': [
    'chosen',
    'fixedOrder',
    'KNOWN',
    'pinRunOf',
    'runOf',
    'STRANGE',
  ],
});

knownLayouts();
strangeLayouts();
eachReading();

function knownLayouts() {
  const fewest = fewestOfSmall();
  const began = performance.now();
  const used = process.cpuUsage();
  const rows = bench.KNOWN.map((unknown) => {
    const ours = runs((seed) => bench.runOf(unknown, seed, bench.chosen(unknown)));
    const fixed = runs((seed) => bench.runOf(unknown, seed, bench.fixedOrder(unknown)));
    return { id: unknown.id, ours, fixed, fewest: fewest.get(unknown.id) };
  });
  const seconds = (performance.now() - began) / 1_000;
  const busy = process.cpuUsage(used).user / 1e6;
  say(`${RUNS} runs for each layout from seed ${SEED}, 5 % noise, 5 % of readings wrong`);
  say(`${'layout'.padEnd(27)} first  sure   readings  fixed order   share  fewest possible over the shape`);
  for (const { id, ours, fixed, fewest } of rows) {
    const [mine, theirs] = [mean(ours, 'readings'), mean(fixed, 'readings')];
    const bound = fewest === undefined ? '' : fewest.toFixed(2);
    say(
      `${id.padEnd(27)} ${percent(mean(ours, 'first'))}  ${percent(mean(ours, 'sure'))}  ${mine.toFixed(2).padStart(7)}  ` +
        `${theirs.toFixed(2).padStart(11)}  ${percent(mine / theirs)}  ${bound}`,
    );
  }
  const pooled = (of) => rows.reduce((sum, row) => sum + mean(row[of], 'readings'), 0) / rows.length;
  const good = rows.filter(({ ours }) => mean(ours, 'first') >= FIRST_AIM).length;
  const short = rows.filter(
    ({ ours, fixed }) => mean(ours, 'readings') <= SHARE_AIM * mean(fixed, 'readings'),
  );
  say(
    `first in ${FIRST_AIM * 100} % or more: ${good} of ${rows.length} layouts; readings at most ${SHARE_AIM * 100} % of a fixed ` +
      `order: ${short.length} of ${rows.length}, over all ${percent(pooled('ours') / pooled('fixed'))}; ${seconds.toFixed(0)} s, ` +
      `${busy.toFixed(0)} s of one processor`,
  );
}

/** For headers of one shape together, since nobody knows which of them it is before the first reading. */
function fewestOfSmall() {
  const shapes = new Map();
  for (const unknown of bench.KNOWN.filter(({ truth }) => truth.size <= SMALL)) {
    const { grid, pins } = unknown.connector;
    const shape = JSON.stringify([grid, pins]);
    shapes.set(shape, [...(shapes.get(shape) ?? []), unknown]);
  }
  return new Map(
    [...shapes.values()].flatMap((alike) => {
      const fewest = bench.fewestReadings(alike);
      return alike.map(({ id }) => [id, fewest]);
    }),
  );
}

function strangeLayouts() {
  const found = bench.STRANGE.flatMap((unknown) =>
    Array.from({ length: STRANGE_RUNS }, (_, at) => bench.pinRunOf(unknown, SEED + at, 30)),
  );
  const sum = (what) => found.reduce((all, run) => all + run[what], 0);
  say(
    `${bench.STRANGE.length} headers that the library lacks, ${STRANGE_RUNS} runs each, at most 30 readings: ` +
      `${percent(sum('right') / sum('pins')).trim()} of the pins right, ${percent(sum('certain') / sum('pins')).trim()} called certain, ` +
      `${percent(sum('certainAndWrong') / Math.max(1, sum('certain'))).trim()} of these wrong; ` +
      `${(sum('readings') / found.length).toFixed(1)} readings each`,
  );
}

/** A 2x10 header with a panel of its own order, reading by reading. */
function eachReading() {
  const unknown = bench.STRANGE.filter(({ truth }) => truth.size > 12).toSorted(
    (a, b) => b.truth.size - a.truth.size,
  )[0];
  const pins = [...unknown.truth.keys()];
  const readings = pins
    .slice(0, 10)
    .map((pin, at) => ({ kind: 'ohms', pin, ohms: at % 3 === 0 ? 0.3 : 400 * (at + 1) }));
  const first = timed(() => bench.identifyPins({ ...unknown.connector }));
  const times = readings.map((_, at) =>
    timed(() => bench.identifyPins({ ...unknown.connector, readings: readings.slice(0, at + 1) })),
  );
  const { header } = bench.heldOf(unknown.connector, readings);
  const tabled = median(Array.from({ length: 9 }, () => timed(() => bench.afterReadings(header, readings))));
  const anew = timed(() => withoutTables(header, readings));
  say(
    `${pins.length} pins of ${unknown.id}, ${header.layouts.length} layouts: ${median(times).toFixed(0)} ms at each reading ` +
      `(slowest ${Math.max(...times).toFixed(0)} ms, the first look ${first.toFixed(0)} ms), panels drawn anew and the next ` +
      `reading chosen; beliefs alone ${tabled.toFixed(2)} ms for ${readings.length} readings, each likelihood worked out for ` +
      `each layout ${anew.toFixed(0)} ms, ${(anew / tabled).toFixed(0)} times`,
  );
}

/** The same beliefs, as they are without tables: each layout asks each reading's likelihood for itself. */
function withoutTables(header, readings) {
  const { layouts, kinds, postOf } = header;
  const logs = Float64Array.from(header.logWeights);
  for (let at = 0; at < layouts.length; at++)
    for (const reading of readings)
      logs[at] += Math.log(bench.likelihoods(reading)[kinds[postOf.get(reading.pin) * layouts.length + at]]);
  return logs;
}

function runs(run) {
  return Array.from({ length: RUNS }, (_, at) => run(SEED + at));
}

function mean(list, what) {
  return list.reduce((sum, one) => sum + Number(one[what]), 0) / list.length;
}

function percent(share) {
  return `${(share * 100).toFixed(1)} %`.padStart(7);
}

function timed(work) {
  const began = performance.now();
  work();
  return performance.now() - began;
}

function median(values) {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
}

function say(line) {
  console.log(`meter: ${line}`);
}
