import { listed } from '../../base/listed';
import { count, shownText } from '../../document/problem/shown-value';
import { type SignalId, signalOf } from '../../signals/signals';
import type { ListProblem } from './list-problem';
import type { HowRead, ListRefusal } from './reading';

/** What is the matter, and what to do about it. */
export interface ListWords {
  readonly title: string;
  readonly advice: string;
}

const FEW = 6;

/** What was pasted, as it can be read in a sentence: the gaps of its table are spaces, and nothing in it is hidden. */
const quoted = (text: string): string => shownText(text.replaceAll('\t', ' '));

/** Why a text was not read, and what would help. */
export function listRefusalWords(refusal: ListRefusal): ListWords {
  switch (refusal.code) {
    case 'too-long':
      return {
        title: `The text has ${count(refusal.length)}\u00a0characters, and at most ${count(refusal.limit)} are read`,
        advice: 'Copy only the table of this one connector.',
      };
    case 'too-many-lines':
      return {
        title: `The text has ${count(refusal.lines)}\u00a0lines, and at most ${count(refusal.limit)} are read`,
        advice: 'Copy only the table of this one connector.',
      };
    case 'nothing-to-read':
      return {
        title: 'There is no list yet',
        advice:
          'Paste the lines that name the pins. Numbered lines, tables with pins on both sides, ranges like “1-4 NC” and bare words in counting order are all read.',
      };
    case 'nothing-readable':
      return {
        title: `No pin was found in ${quoted(refusal.firstLine)}`,
        advice: 'Put one pin in a line, its label first: “5 GND”.',
      };
    case 'no-label-fits':
      return {
        title: `The connector has no ${labels(refusal.labels)}`,
        advice: `It counts ${labels(refusal.known)}. Number the connector as the list does, or choose another one.`,
      };
  }
}

/** A contradiction, a gap or a surplus of the list, and what becomes of it. */
export function listProblemWords(problem: ListProblem): ListWords {
  switch (problem.code) {
    case 'pin-twice': {
      const { label, words, lines } = problem;
      const where = `lines\u00a0${listed(few(lines.map(String)))}`;
      if (words.length === 1)
        return {
          title: `Pin\u00a0${label} stands in ${where} with the same word`,
          advice: 'It is filled once.',
        };
      return {
        title: `Pin\u00a0${label} stands in ${where} with different words: ${listed(few(words.map(quoted)))}`,
        advice: 'The first that is understood is taken, and the others are kept beside it.',
      };
    }
    case 'beyond': {
      const { length } = problem.labels;
      return {
        title: `The list has ${labels(problem.labels)}, and the connector has ${count(problem.positions)}\u00a0positions without ${length === 1 ? 'it' : 'them'}`,
        advice: `${length === 1 ? 'It is' : 'They are'} left out unless the connector is given more positions.`,
      };
    }
    case 'signal-twice':
      return {
        title: `${capital(signalOf(problem.signal).name)} stands on ${labels(problem.labels)}`,
        advice: 'A header mostly has one. Compare with the manual.',
      };
    case 'half-pair':
      return {
        title: `${capital(signalOf(problem.signal).name)} on ${labels(problem.labels)} has no ${signalOf(problem.lacks).name} beside it`,
        advice: 'Look for a line that is missing or was read otherwise.',
      };
    case 'gaps':
      return {
        title: `The list says nothing of ${labels(problem.labels)}`,
        advice: `${problem.labels.length === 1 ? 'It stays' : 'They stay'} as ${problem.labels.length === 1 ? 'it is' : 'they are'}.`,
      };
    case 'counted':
      return {
        title: `No line has a number: the words are counted off from pin\u00a0${problem.first} on`,
        advice: 'Compare pin\u00a01 with the manual.',
      };
    case 'left-over': {
      const [first] = problem.lines;
      const { length } = problem.lines;
      return {
        title: `Nothing was made of ${length === 1 ? 'line' : 'lines'}\u00a0${listed(few(problem.lines.map(({ line }) => String(line))))}`,
        advice: first ? `It begins with ${quoted(first.text)}. Put a pin’s label first where it is one.` : '',
      };
    }
  }
}

/** How a word was understood, as it stands beside it. */
export const HOW_READ_WORDS = {
  exact: 'known word',
  normalised: 'known word, spelt otherwise',
  described: 'known word in a longer text',
  neighbours: 'told by its neighbours',
  guessed: 'a guess',
  'two-meanings': 'two meanings in one place',
  chosen: 'chosen here',
  'no-signal': 'known word, no signal for it',
  'not-understood': 'not understood',
} as const satisfies Record<HowRead, string>;

/** "power switch", "no pin": what a pin was read as. */
export function signalWords(signal: SignalId | undefined, missing: boolean): string {
  return missing ? 'no pin' : signalOf(signal ?? 'unknown').name;
}

function labels(all: readonly string[]): string {
  return `${all.length === 1 ? 'pin' : 'pins'}\u00a0${listed(few(all))}`;
}

function few(all: readonly string[]): readonly string[] {
  const more = all.length - FEW;
  return more > 1 ? [...all.slice(0, FEW), `${count(more)}\u00a0more`] : all;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
