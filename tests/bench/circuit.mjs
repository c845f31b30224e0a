import { readFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build as bundle } from 'vite';

/**
 * What the circuit costs: the operating point of one LED loop beside a general circuit simulator on the
 * same netlist, and what a check spends on a copy nothing is known of and after one plug was moved.
 */
const POINT_AIM = 100;
const CHECK_AIM_MS = 8;
const ROUNDS = 41;
const root = fileURLToPath(new URL('../..', import.meta.url));
const demo = readFileSync(`${root}/boards/library/demo/wired.build.json`, 'utf8');

const {
  analyse,
  applyCommand,
  circuitOf,
  CORNERS,
  groupsOf,
  netlistOf,
  parseDocument,
  placesOf,
  RUNNING,
  samePlug,
  solve,
  startReference,
  USUAL,
} = await domain();
const wired = parseDocument(demo).value;

await onePoint();
everyState();
wholeCheck();
movedPlugs();

/** The LED loop of the panel header: feed, wires, junction, sink. */
async function onePoint() {
  const loop = groupsOf(circuitOf(wired).elements).find(({ elements }) =>
    elements.some(({ id }) => id.startsWith('part.power-led.')),
  );
  const netlist = netlistOf(loop.elements, RUNNING, USUAL);
  const reference = await startReference();
  const ours = [];
  const theirs = [];
  for (let round = 0; round < ROUNDS; round++) {
    theirs.push(await waited(() => reference.operatingPoint(netlist)));
    const each = 100;
    ours.push(
      timed(() => {
        for (let i = 0; i < each; i++) solve(netlist);
      }) / each,
    );
  }
  const ratio = median(theirs) / median(ours);
  console.log(
    `circuit: one LED loop of ${netlist.length} devices: ${(median(ours) * 1e3).toFixed(1)} µs, ` +
      `a general simulator ${(median(theirs) * 1e3).toFixed(0)} µs, ${ratio.toFixed(0)} times (aim ${POINT_AIM})`,
  );
}

/** Every group of the demo in every state that it can tell apart, at every corner of the ranges. */
function everyState() {
  let points = 0;
  const times = rounds(() => {
    points = 0;
    const circuit = circuitOf(structuredClone(wired));
    for (const { id } of circuit.elements)
      for (const state of circuit.statesOf(id))
        for (const corner of CORNERS) if (circuit.solution(id, state, corner)) points += 1;
  });
  console.log(
    `circuit: all states and corners of the demo, asked of each of its elements: ${median(times).toFixed(2)} ms ` +
      `for ${points} answers`,
  );
}

function wholeCheck() {
  const copies = Array.from({ length: ROUNDS }, () => structuredClone(wired));
  const times = rounds((round) => analyse(copies[round]));
  console.log(
    `circuit: a full check of a fresh copy: ${median(times).toFixed(2)} ms (aim under ${CHECK_AIM_MS})`,
  );
}

/** Each plug in turn goes to another place and back: the check of the build it leaves. */
function movedPlugs() {
  const start = structuredClone(wired);
  analyse(start);
  const moves = wired.seats.flatMap((seat) => {
    const away = placesOf(start, seat).find((place) => !start.seats.some((one) => sameCells(one, place)));
    return away ? [{ name: 'seat-plug', args: away }] : [];
  });
  const times = moves.map((move) => {
    const moved = applyCommand(start, move);
    if (!moved.ok) throw new Error(`Not moved: ${JSON.stringify(moved.problem)}`);
    return timed(() => analyse(moved.value));
  });
  console.log(
    `circuit: a check after one plug moved, median of ${times.length} plugs: ${median(times).toFixed(2)} ms, ` +
      `worst ${Math.max(...times).toFixed(2)} ms (aim under ${CHECK_AIM_MS})`,
  );
}

function sameCells(a, b) {
  return samePlug(a, b) && a.connector === b.connector && `${a.at}` === `${b.at}` && a.turn === b.turn;
}

function rounds(work) {
  return Array.from({ length: ROUNDS }, (_, round) => timed(() => work(round)));
}

function timed(work) {
  const began = performance.now();
  work();
  return performance.now() - began;
}

async function waited(work) {
  const began = performance.now();
  await work();
  return performance.now() - began;
}

function median(values) {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
}

/** The modules that are measured, in one file without types, as the window has them. */
async function domain() {
  const names = {
    '/boards/analyse.ts': ['analyse'],
    '/boards/circuit/circuit.ts': ['circuitOf'],
    '/boards/circuit/corner.ts': ['CORNERS', 'USUAL'],
    '/boards/circuit/elements.ts': ['netlistOf'],
    '/boards/circuit/groups.ts': ['groupsOf'],
    '/boards/circuit/machine-state.ts': ['RUNNING'],
    '/boards/circuit/solve.ts': ['solve'],
    '/boards/document/lookup.ts': ['samePlug'],
    '/boards/document/parse.ts': ['parseDocument'],
    '/boards/edit/apply.ts': ['applyCommand'],
    '/boards/fit/places.ts': ['placesOf'],
    '/tests/reference/circuit-simulator.ts': ['startReference'],
  };
  const text = Object.entries(names).map(([from, what]) => `export { ${what} } from '${root}${from}';`);
  const entry = 'virtual:circuit-bench';
  const outDir = `${root}/out/bench`;
  await bundle({
    configFile: false,
    root,
    logLevel: 'error',
    publicDir: false,
    plugins: [
      {
        name: entry,
        resolveId: (id) => (id === entry ? `\0${entry}` : undefined),
        load: (id) => (id === `\0${entry}` ? text.join('\n') : undefined),
      },
    ],
    build: {
      outDir,
      emptyOutDir: false,
      ssr: true,
      minify: false,
      rolldownOptions: {
        input: entry,
        output: { entryFileNames: 'circuit.mjs', codeSplitting: false },
        external: ['eecircuit-engine'],
      },
    },
    ssr: { noExternal: ['zod'] },
  });
  return import(pathToFileURL(`${outDir}/circuit.mjs`).href);
}
