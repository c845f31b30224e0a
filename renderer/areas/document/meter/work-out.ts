import type { Result } from '../../../../boards/base/result';
import type { Connector } from '../../../../boards/document/connector';
import type {
  Identification,
  MeterProblem,
  MeterQuestion,
  NextReading,
} from '../../../../boards/pinout/meter/identification';
import { identifyPins } from '../../../../boards/pinout/meter/identify';
import { nextBeside } from '../../../../boards/pinout/meter-run/next-beside';
import { type Outcome, outcomesOf } from '../../../../boards/pinout/meter-run/outcomes';

/** A connector with its readings, and what the person does not want to be asked. */
export interface MeterTask {
  readonly connector: Connector;
  readonly skipped: readonly MeterQuestion[];
}

/** What the readings say, and the next one with what each of its outcomes would say. */
export interface MeterAnswer {
  readonly found: Result<Identification, MeterProblem>;
  readonly next?: NextReading;
  readonly outcomes: readonly Outcome[];
}

/** The answer to a task. Takes up to a second for a large header: not for the thread that draws. */
export function workOut({ connector, skipped }: MeterTask): MeterAnswer {
  const found = identifyPins(connector);
  if (!found.ok) return { found, outcomes: [] };
  const next = skipped.length === 0 ? found.value.next : nextBeside(connector, skipped);
  return {
    found,
    ...(next && { next }),
    outcomes: next ? outcomesOf(next.question, found.value) : [],
  };
}
