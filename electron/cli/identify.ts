import { ok, type Result, refuse } from '../../boards/base/result';
import type { BoardSheet } from '../../boards/document/board-sheet';
import type { Connector } from '../../boards/document/connector';
import type { Identification, MeterQuestion, NextReading } from '../../boards/pinout/meter/identification';
import { identifyPins } from '../../boards/pinout/meter/identify';
import {
  contradictionWords,
  originWords,
  problemWords,
  questionWords,
  STATE_WORDS,
  stateFor,
  verdictWords,
} from '../../boards/pinout/meter/words';
import { sayingWords, shownWords } from '../../boards/pinout/meter-run/outcome-words';
import { outcomesOf } from '../../boards/pinout/meter-run/outcomes';
import { pinsAsked } from '../../boards/pinout/meter-run/pins-asked';
import type { ConnectorReport, IdentifyReport } from './identify-report';

type Told = Extract<ConnectorReport, { outcome: 'told' }>;

/** The connectors to be told of: those that were named, otherwise those with readings. */
export function connectorsWanted(
  { connectors }: BoardSheet,
  named: readonly string[],
): Result<readonly Connector[], string> {
  const unknown = named.find((name) => !connectors.some(({ id }) => id === name));
  if (unknown !== undefined) {
    const ids = connectors.map(({ id }) => id);
    return refuse(
      `There is no connector “${unknown}”. There ${ids.length === 0 ? 'are none' : `are: ${ids.join(', ')}`}.`,
    );
  }
  const wanted = ({ id, readings = [] }: Connector) =>
    named.length === 0 ? readings.length > 0 : named.includes(id);
  return ok(connectors.filter(wanted));
}

/** What the readings of a board sheet say of its pins, as it is printed for programs. */
export function identifyReport(
  file: string,
  { name }: Pick<BoardSheet, 'name'>,
  connectors: readonly Connector[],
): IdentifyReport {
  return {
    format: 'leadwright/identify-report',
    version: 1,
    file,
    name,
    connectors: connectors.map(connectorReport),
  };
}

function connectorReport(connector: Connector): ConnectorReport {
  const { id, print, readings = [] } = connector;
  const found = identifyPins(connector);
  if (!found.ok) {
    const { problem } = found;
    return { outcome: 'refused', connector: id, print, code: problem.code, words: problemWords(problem) };
  }
  const { layouts, pins, remaining, next, contradictions, ...all } = found.value;
  return {
    outcome: 'told',
    connector: id,
    print,
    readings: readings.length,
    verdict: all.verdict,
    words: verdictWords(found.value),
    layouts: layouts.map(({ chance, origin, pins: signals }) => ({
      chance,
      words: originWords(origin),
      pins: signals.map((pin) => ({ ...pin })),
    })),
    noneOfThese: all.noneOfThese,
    pins: pins.map(({ pin, chances, certain }) => ({
      pin,
      certain: certain !== undefined,
      chances: chances.map((chance) => ({ ...chance, alike: [...chance.alike] })),
    })),
    ...(remaining && {
      remaining: {
        pins: [...remaining.pins],
        ...(remaining.reading && { reading: readingReport(remaining.reading) }),
      },
    }),
    ...(next && { next: { ...readingReport(next), outcomes: outcomesReport(next.question, found.value) } }),
    contradictions: contradictions.map((one) => ({
      why: one.why,
      readings: [...one.readings],
      pins: [...one.pins],
      words: contradictionWords(one, readings),
    })),
    suspects: all.suspects.map((set) => [...set]),
  };
}

function readingReport({ question, gainBits, effort }: NextReading) {
  const state = stateFor(question);
  return {
    kind: question.kind,
    pins: [...pinsAsked(question)],
    state,
    gainBits,
    effort,
    words: [STATE_WORDS[state], questionWords(question)],
  };
}

function outcomesReport(
  question: MeterQuestion,
  found: Identification,
): NonNullable<Told['next']>['outcomes'] {
  return outcomesOf(question, found).map((outcome) => ({
    chance: outcome.chance,
    words: `${shownWords(outcome.shown)}: ${sayingWords(outcome)}`,
    pins: outcome.pins.map(({ pin, signals }) => ({
      pin,
      signals: signals.map(({ signal, chance }) => ({ signal, chance })),
    })),
  }));
}
