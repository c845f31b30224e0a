import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { domain } from './bundled/domain.mjs';

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
  solvedGroup,
  startReference,
  USUAL,
} = await domain(
  'circuit',
  {
    '/boards/analyse.ts': ['analyse'],
    '/boards/circuit/circuit.ts': ['circuitOf'],
    '/boards/circuit/corner.ts': ['CORNERS', 'USUAL'],
    '/boards/circuit/elements.ts': ['netlistOf'],
    '/boards/circuit/groups.ts': ['groupsOf', 'solvedGroup'],
    '/boards/circuit/machine-state.ts': ['RUNNING'],
    '/boards/circuit/solve.ts': ['solve'],
    '/boards/document/lookup.ts': ['samePlug'],
    '/boards/document/parse.ts': ['parseDocument'],
    '/boards/edit/apply.ts': ['applyCommand'],
    '/boards/fit/places.ts': ['placesOf'],
    '/tests/reference/circuit-simulator.ts': ['startReference'],
  },
  { external: ['eecircuit-engine'] },
);
const wired = parseDocument(demo).value;

// First of all, so that its first check is the first of the process, as a window's is.
wholeCheck();
await onePoint();
everyState();
movedPlugs();

/** The power LED's loop: supply, resistor, wires, junction, the output that pulls it down. */
async function onePoint() {
  const loop = groupsOf(circuitOf(wired).elements).find(({ elements }) =>
    elements.some(({ id }) => id.startsWith('part.power-led.')),
  );
  const netlist = netlistOf(loop.elements, RUNNING, USUAL);
  const reference = await startReference();
  const each = 200;
  const solveMany = () => {
    for (let i = 0; i < each; i++) solve(netlist);
  };
  for (let warming = 0; warming < 10; warming++) solveMany();
  const ours = [];
  const theirs = [];
  for (let round = 0; round < ROUNDS; round++) {
    theirs.push(await waited(() => reference.operatingPoint(netlist)));
    ours.push(timed(solveMany) / each);
  }
  say(
    `one LED loop of ${netlist.length} devices: ${(median(ours) * 1e3).toFixed(1)} µs, ` +
      `a general simulator ${(median(theirs) * 1e3).toFixed(0)} µs, ` +
      `${(median(theirs) / median(ours)).toFixed(0)} times (aim ${POINT_AIM})`,
  );
}

/** Every group of the demo in every state that it can tell apart, at every corner of the ranges. */
function everyState() {
  let points = 0;
  const times = rounds(() => {
    points = 0;
    for (const group of groupsOf(circuitOf(structuredClone(wired)).elements)) {
      const { states, solution } = solvedGroup(group);
      for (const state of states) for (const corner of CORNERS) points += solution(state, corner) ? 1 : 0;
    }
  });
  say(`all states and corners of the demo, ${points} points: ${ms(times)}`);
}

/** Beside reading and writing the same build as JSON, which any program that handles the file has to do. */
function wholeCheck() {
  const json = rounds(() => JSON.stringify(JSON.parse(demo)));
  const copies = Array.from({ length: ROUNDS }, () => structuredClone(wired));
  const times = rounds((round) => analyse(copies[round]));
  say(
    `a full check of a copy nothing is known of: ${ms(times)} (aim under ${CHECK_AIM_MS}), ` +
      `the first in the process ${times[0].toFixed(1)} ms; as JSON there and back ${ms(json)}`,
  );
}

/** Each plug in turn sits elsewhere than in the build checked before; on copies, so that no move is known. */
function movedPlugs() {
  const moves = Array.from({ length: 5 }, () => wired.seats)
    .flat()
    .flatMap((seat) => {
      const start = structuredClone(wired);
      analyse(start);
      const away = placesOf(start, seat).find((place) => !sameCells(seat, place));
      const moved = away && applyCommand(start, { name: 'seat-plug', args: away });
      return moved?.ok ? [moved.value] : [];
    });
  // The first plugs warm the rules up that only wrong seats call.
  const times = moves.map((build) => timed(() => analyse(build))).slice(wired.seats.length);
  say(
    `a check after one plug moved to a wrong place, ${times.length} moves: ${ms(times)}, ` +
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

function ms(times) {
  return `${median(times).toFixed(2)} ms`;
}

function say(line) {
  console.log(`circuit: ${line}`);
}

async function waited(work) {
  const began = performance.now();
  await work();
  return performance.now() - began;
}

function median(values) {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
}
