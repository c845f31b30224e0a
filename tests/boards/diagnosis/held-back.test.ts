import { beforeAll, describe, expect, it } from 'vitest';
import { type Dictionary, dictionaryOf } from '../../../boards/diagnosis/dictionary';
import { faultsAsWritten } from '../../../boards/diagnosis/faults/as-written';
import { fault, way } from '../../../boards/diagnosis/faults/fault';
import { reckon } from '../../../boards/diagnosis/log/reckoning';
import { type ObservationId, observationNamed } from '../../../boards/diagnosis/observations/observations';
import type { Evidence } from '../../../boards/diagnosis/posterior';
import { stopsIn } from '../../../boards/diagnosis/trials/held-back';
import { nextLooks, nextTrials, weighedTrials } from '../../../boards/diagnosis/trials/next-trials';
import type { ResultId, Tried } from '../../../boards/diagnosis/trials/trial';
import { trialsOf } from '../../../boards/diagnosis/trials/trials';
import { resultWords, stopWords } from '../../../boards/diagnosis/trials/words';
import type { LogEntry } from '../../../boards/document/trouble';
import { findingsOf } from '../../../boards/findings/findings';
import { demo } from '../findings/demo';

const SEEN_USB: LogEntry = { kind: 'noticed', what: 'usb-missing', answer: 'yes' };
const build = demo('wired');
const TRIALS = trialsOf(build);
let dictionary: Dictionary;
beforeAll(() => {
  dictionary = dictionaryOf(faultsAsWritten(build));
}, 120_000);

function tried(...made: readonly (readonly [id: string, result: ResultId])[]): readonly Tried[] {
  return made.map(([id, result]) => {
    const trial = TRIALS.find((each) => each.id === id);
    if (!trial?.results.includes(result)) throw new Error(`No ${id}=${result}`);
    return { trial, result };
  });
}

const poweredIn = (evidence: Evidence) =>
  nextTrials(dictionary, evidence, TRIALS)
    .filter(({ trial }) => trial.powered)
    .map(({ trial }) => trial.id);

// Workshop safety, common practice, no source: nothing that burnt is switched on again.
describe('a look that found something burnt', () => {
  const BURNT = TRIALS.filter(({ results }) => results.includes('burnt')).map(({ id }) => id);
  const SEEN: readonly (readonly ObservationId[])[] = [
    ['power-light-dark'],
    ['restarts'],
    ['no-picture', 'beep-code'],
    ['drive-light-dark'],
  ];

  it('is one of three', () => {
    expect(BURNT).toEqual(['look-supply-plugs', 'look-drive-plugs', 'look-board']);
  });

  it.each(BURNT)(
    '%s: stops all trying, says what not to plug in again, and has no start proposed',
    (look) => {
      for (const seen of SEEN) {
        const before: Evidence = { seen, notSeen: [] };
        const evidence: Evidence = { ...before, tried: tried([look, 'burnt']) };
        expect(poweredIn(before).length).toBeGreaterThan(0);
        expect(poweredIn(evidence)).toEqual([]);
        expect(stopsIn(evidence)).toEqual(['burnt']);
      }
      expect(stopWords(['burnt']).join(' ')).toMatch(
        /^Stop\. Pull .*Do not plug in again: the part that is burnt/,
      );
      expect(resultWords('burnt')).toContain('do not plug it in again');
    },
  );
});

describe('a look that found something else', () => {
  const off: Evidence = { seen: ['restarts'], notSeen: [], tried: tried(['look-front-plugs', 'plug-off']) };

  it('has nothing started but what puts that right, until that is made', () => {
    expect(poweredIn(off)).toEqual(['right:look-front-plugs']);
    const weighed = weighedTrials(dictionary, off, TRIALS);
    expect(weighed.find(({ trial }) => trial.id === 'front-usb-off')?.risk).toBe('put-right');
    const made = tried(['look-front-plugs', 'plug-off'], ['right:look-front-plugs', 'same']);
    expect(poweredIn({ ...off, tried: made })).toContain('front-usb-off');
  });

  it('found anew after it was put right has to be put right anew', () => {
    const anew = tried(['right:look-front-plugs', 'same'], ['look-front-plugs', 'plug-off']);
    expect(poweredIn({ ...off, tried: anew })).toEqual(['right:look-front-plugs']);
  });

  it('holds back no start where all was as it should be', () => {
    const sound = tried(['look-front-plugs', 'not-found']);
    expect(poweredIn({ ...off, tried: sound })).toContain('front-usb-off');
  });
});

describe('what to look for while nothing is started', () => {
  const turned: Evidence = {
    seen: ['nothing-on-press', 'standby-light'],
    notSeen: [],
    tried: tried(['look-supply-plugs', 'plug-turned']),
  };
  const asked = (given: Evidence) =>
    nextLooks(dictionary, given, TRIALS).flatMap(({ id }) => observationNamed(id) ?? []);

  it('is seen with the machine off and the mains plug pulled', () => {
    expect(weighedTrials(dictionary, turned, TRIALS).filter(({ risk }) => risk).length).toBeGreaterThan(0);
    const looks = asked(turned);
    expect(looks.length).toBeGreaterThan(0);
    expect(new Set(looks.map(({ moment }) => moment))).toEqual(new Set(['before-press']));
    // What the words of the questions say of mains, of the press and of the light of a board that is fed.
    for (const { question, sign } of looks)
      expect(`${question} ${sign}`).not.toMatch(/mains|on the press|start by itself|light/);
  });

  it('is also what shows at a start where one may be made', () => {
    const moments = asked({ ...turned, tried: [] }).map(({ moment }) => moment);
    expect(moments).toContain('on-press');
  });
});

describe('a wiring of which the checks say not to connect the mains', () => {
  const slips = demo('eight-slips');
  const inDanger = trialsOf(slips);
  const seen: Evidence = { seen: ['usb-missing'], notSeen: [] };

  it('has nothing started, and the looks are left', () => {
    expect(findingsOf(slips).filter(({ severity }) => severity === 'danger').length).toBeGreaterThan(0);
    const order = nextTrials(dictionaryOf(faultsAsWritten(slips)), seen, inDanger);
    expect(order.length).toBeGreaterThan(0);
    expect(order.filter(({ trial }) => trial.powered)).toEqual([]);
    const { held, trials } = reckon(dictionaryOf(faultsAsWritten(slips)), [SEEN_USB], inDanger);
    expect(held).toBe('danger');
    expect(new Set(trials.map(({ risk }) => risk))).toEqual(new Set([undefined, 'danger']));
  }, 60_000);

  it('has them started again once no danger is left', () => {
    const seats = slips.seats.filter(
      ({ lead }) =>
        !findingsOf(slips).some(({ severity, leads }) => severity === 'danger' && leads.includes(lead)),
    );
    const safe = { ...slips, seats };
    expect(findingsOf(safe).filter(({ severity }) => severity === 'danger')).toEqual([]);
    const order = nextTrials(dictionaryOf(faultsAsWritten(safe)), seen, trialsOf(safe));
    expect(order.some(({ trial }) => trial.powered)).toBe(true);
  }, 60_000);
});

describe('a fault that shows smoke or a melted plug', () => {
  const shows = (sign: 'smoke' | 'smell') =>
    dictionaryOf([
      fault('any', 'usb-miswire', 1, 'Wrong pins.', way(1, { rails: 'shorted' }, { [sign]: 0.3 })),
    ]);

  it('holds starts back whatever its cause is called, and one that does not holds none', () => {
    const nothing: Evidence = { seen: [], notSeen: [] };
    const isStarted = (given: Dictionary) =>
      nextTrials(given, nothing, TRIALS).some(({ trial }) => trial.powered);
    expect(isStarted(shows('smoke'))).toBe(false);
    expect(isStarted(shows('smell'))).toBe(true);
  });
});
