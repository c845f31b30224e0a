import { ok, type Result, refuse } from '../../boards/base/result';
import { dictionaryOf } from '../../boards/diagnosis/dictionary';
import { faultsAsWritten } from '../../boards/diagnosis/faults/as-written';
import { CAUSES } from '../../boards/diagnosis/faults/causes';
import { PRIOR_SOURCE, sharesOf } from '../../boards/diagnosis/faults/priors';
import { trialWordsIn } from '../../boards/diagnosis/log/log-words';
import { evidenceOf, readLog, tellingLines } from '../../boards/diagnosis/log/read-log';
import {
  OBSERVATIONS,
  type ObservationId,
  observationNamed,
} from '../../boards/diagnosis/observations/observations';
import { withPairs } from '../../boards/diagnosis/pairs';
import {
  type Evidence,
  explainsBadly,
  isNoneLikeliest,
  steering,
  suspicionOf,
} from '../../boards/diagnosis/posterior';
import { trialCautions } from '../../boards/diagnosis/trials/cautions';
import { startsHeldBack, stopsIn } from '../../boards/diagnosis/trials/held-back';
import { nextLooks, nextTrials } from '../../boards/diagnosis/trials/next-trials';
import { type Tried, worksNow } from '../../boards/diagnosis/trials/trial';
import { trialsOf } from '../../boards/diagnosis/trials/trials';
import { RISK_WORDS, resultWords, stopWords, WORKS_NOW } from '../../boards/diagnosis/trials/words';
import { doubleWords } from '../../boards/diagnosis/words';
import { type Build, BuildZ } from '../../boards/document/build';
import { nearestOf } from '../../boards/document/problem/nearest';
import { logOf } from '../../boards/document/trouble';
import typical from '../../boards/library/demo/wired.build.json' with { type: 'json' };
import type { DiagnoseReport } from './diagnose-report';
import type { DiagnoseRequest } from './diagnose-request';

/** Faults that are listed for one suspect: a plug has many wrong places. */
const FAULTS = 5;

/** Two at once that are listed: there are as many as pairs of causes. */
const DOUBLES = 5;

/** The build that stands in for a case of which nothing is written down. */
export function typicalBuild(): Build {
  return BuildZ.parse(typical);
}

/** What was noticed and tried by the log in the build; what is named on the command line goes before it. */
export function withLogged(build: Build, named: Required<Evidence>): Required<Evidence> {
  const logged = evidenceOf(tellingLines(readLog(logOf(build), trialsOf(build))).map(({ told }) => told));
  const isNamed = (id: ObservationId) => named.seen.includes(id) || named.notSeen.includes(id);
  const isMade = (id: string) => named.tried.some(({ trial }) => trial.id === id);
  return {
    seen: [...logged.seen.filter((id) => !isNamed(id)), ...named.seen],
    notSeen: [...logged.notSeen.filter((id) => !isNamed(id)), ...named.notSeen],
    tried: [...logged.tried.filter(({ trial }) => !isMade(trial.id)), ...named.tried],
  };
}

/** What was noticed and tried by the names on the command line, or what was expected instead. */
export function evidenceFrom(
  build: Build,
  { observe, not, tried }: Pick<DiagnoseRequest, 'observe' | 'not' | 'tried'>,
): Result<Required<Evidence>, string> {
  const seen = observationsNamed(observe);
  if (!seen.ok) return seen;
  const notSeen = observationsNamed(not);
  if (!notSeen.ok) return notSeen;
  const made: Tried[] = [];
  for (const each of tried) {
    const one = triedFrom(build, each);
    if (!one.ok) return one;
    const before = made.find(({ trial }) => trial.id === one.value.trial.id);
    if (before && before.result !== one.value.result)
      return refuse(`The trial “${before.trial.id}” has two results. Keep the last one only.`);
    if (!before) made.push(one.value);
  }
  return ok({ seen: seen.value, notSeen: notSeen.value, tried: made });
}

function observationsNamed(names: readonly string[]): Result<readonly ObservationId[], string> {
  const found = new Set<ObservationId>();
  for (const name of names) {
    const observation = observationNamed(name);
    if (observation === undefined) {
      const known = OBSERVATIONS.flatMap(({ id, codes }) => [id, ...codes]);
      const file = /[./\\]/.test(name) ? ' A file goes before the first option.' : '';
      return refuse(`There is no observation “${name}”.${meant(known, name)}${file}`);
    }
    found.add(observation.id);
  }
  return ok([...found]);
}

function triedFrom(build: Build, text: string): Result<Tried, string> {
  const split = text.lastIndexOf('=');
  if (split < 0)
    return refuse(`Expected a trial with its result after “--tried”, as “bare-pins=same”, found “${text}”.`);
  const [id, result] = [text.slice(0, split), text.slice(split + 1)];
  const trials = trialsOf(build);
  const trial = trials.find((each) => each.id === id);
  if (trial === undefined) {
    const ids = trials.map((each) => each.id);
    return refuse(`There is no trial “${id}”.${meant(ids, id) || ` There are: ${ids.join(', ')}.`}`);
  }
  const came = trial.results.find((each) => each === result);
  if (came !== undefined) return ok({ trial, result: came });
  return refuse(`“${id}” has no result “${result}”. It has: ${trial.results.join(', ')}.`);
}

function meant(known: readonly string[], typed: string): string {
  const near = nearestOf(known, typed);
  return near === undefined ? '' : ` Did you mean “${near}”?`;
}

/** Suspects and next trials, as they are printed for programs. */
export function diagnoseReport(
  file: string | null,
  build: Build,
  evidence: Required<Evidence>,
): DiagnoseReport {
  const singles = dictionaryOf(faultsAsWritten(build));
  // Two faults at once are taken up only where one alone explains it badly.
  const dictionary = explainsBadly(singles, evidence) ? withPairs(singles) : singles;
  const suspicion = suspicionOf(dictionary, evidence);
  const { suspects, doubles, noneOfThese, contradicted, excluding } = suspicion;
  const stops = stopsIn(evidence);
  const trials = trialsOf(build);
  const held = startsHeldBack(steering({ dictionary, evidence }), evidence, trials);
  return {
    format: 'leadwright/diagnose-report',
    version: 1,
    file,
    name: build.name,
    observed: [...evidence.seen],
    notObserved: [...evidence.notSeen],
    contradicted: [...contradicted],
    excluding: excluding.map(([one, other]) => [one, other]),
    stop: stops.length > 0 ? [...stopWords(stops)] : [],
    suspects: suspects.map(({ cause, chance, faults }) => ({
      cause,
      chance: asChance(chance),
      words: CAUSES[cause],
      faults: faults.slice(0, FAULTS).map(({ fault: { id, name, lead }, chance: share }) => ({
        id,
        chance: asChance(share),
        words: name,
        ...(lead !== undefined && { lead }),
      })),
    })),
    doubles: doubles.slice(0, DOUBLES).map(({ causes, chance, faults }) => ({
      causes: [...causes],
      chance: asChance(chance),
      words: doubleWords({ causes }),
      faults: faults.map(({ id, name }) => ({ id, words: name })),
    })),
    allDoubles: asChance(doubles.reduce((sum, { chance }) => sum + chance, 0)),
    noneOfThese: asChance(noneOfThese),
    noneLikeliest: isNoneLikeliest(suspicion),
    look: nextLooks(dictionary, evidence, trials).map(({ id, gainBits }) => {
      const { question, sign } = observationOf(id);
      return { observation: id, words: question, sign, gainBits };
    }),
    next: nextTrials(dictionary, evidence, trials).map(({ trial, gainBits, effort, results }) => {
      const { title, steps } = trialWordsIn(build, trial);
      return {
        trial: trial.id,
        words: title,
        steps: [...steps],
        cautions: [...trialCautions(trial)],
        gainBits,
        effort,
        powered: trial.powered,
        results: results.map(({ result, chance }) => ({
          result,
          chance: asChance(chance),
          words: resultWords(result, trial),
        })),
      };
    }),
    ...(held && { heldBack: { risk: held, words: RISK_WORDS[held] } }),
    priors: priorsOf(build),
    ...(worksNow(evidence) && { worksNow: { ...WORKS_NOW } }),
  };
}

function priorsOf(build: Build): DiagnoseReport['priors'] {
  const factors = new Map(build.priors?.map(({ cause, factor }) => [cause, factor]));
  return {
    source: PRIOR_SOURCE,
    causes: sharesOf(faultsAsWritten(build)).map(({ cause, share }) => {
      const factor = factors.get(cause);
      return { cause, share: asChance(share), ...(factor !== undefined && { factor }) };
    }),
  };
}

function observationOf(id: ObservationId) {
  const found = observationNamed(id);
  if (found === undefined) throw new Error(`No observation ${id}`);
  return found;
}

/** A sum of chances may pass 1 by the last digit. */
function asChance(sum: number): number {
  return Math.min(1, sum);
}
