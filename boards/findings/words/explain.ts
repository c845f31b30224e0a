import { capital } from '../../base/capital';
import { circuitOf } from '../../circuit/circuit';
import { pinNode } from '../../circuit/elements';
import type { MachineState } from '../../circuit/machine-state';
import { type Path, pathOf } from '../../circuit/path';
import type { Build } from '../../document/build';
import type { PinRef } from '../../document/lookup';
import type { Finding } from '../finding';
import { stateWords } from './machine-state';
import { type PathWords, pathWords } from './path';

/** The way of the current in the states of the machine that are the same in words. */
export interface Explained extends PathWords {
  /** "Running; running, power held". */
  readonly when: string;
  readonly path: Path;
}

/** For each state in which something flows through a finding's pins, the way of the largest current. */
export function explainWords(build: Build, { pins }: Finding): readonly Explained[] {
  const told = new Map<
    string,
    { readonly states: string[]; readonly path: Path; readonly words: PathWords }
  >();
  for (const state of statesOf(build, pins)) {
    const path = largestPath(build, pins, state);
    if (!path) continue;
    const words = pathWords(build, path);
    const key = [words.head, ...words.steps].join('\n');
    const known = told.get(key);
    if (known) known.states.push(stateWords(state));
    else told.set(key, { states: [stateWords(state)], path, words });
  }
  return [...told.values()].map(({ states, path, words }) => ({
    when: capital(states.join('; ')),
    path,
    ...words,
  }));
}

/** Every state that some of the pins can tell apart. */
function statesOf(build: Build, pins: readonly PinRef[]): readonly MachineState[] {
  const circuit = circuitOf(build);
  const states = pins.flatMap(({ connector, pin }) => circuit.statesOf(pinNode(connector, pin)));
  return [...new Map(states.map((state) => [stateWords(state), state])).values()];
}

function largestPath(build: Build, pins: readonly PinRef[], state: MachineState): Path | undefined {
  let most: { readonly path: Path; readonly amps: number } | undefined;
  for (const pin of pins) {
    const path = pathOf(build, { kind: 'pin', pin }, state);
    if (path.kind === 'still') continue;
    const amps = Math.max(...path.steps.map((step) => step.amps));
    if (!most || amps > most.amps) most = { path, amps };
  }
  return most?.path;
}
