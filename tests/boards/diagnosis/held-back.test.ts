import { beforeAll, describe, expect, it } from 'vitest';
import { type Dictionary, dictionaryOf } from '../../../boards/diagnosis/dictionary';
import { faultsAsWritten } from '../../../boards/diagnosis/faults/as-written';
import type { ObservationId } from '../../../boards/diagnosis/observations/observations';
import type { Evidence } from '../../../boards/diagnosis/posterior';
import { stopsIn } from '../../../boards/diagnosis/trials/held-back';
import { nextTrials, weighedTrials } from '../../../boards/diagnosis/trials/next-trials';
import type { ResultId, Tried } from '../../../boards/diagnosis/trials/trial';
import { trialsOf } from '../../../boards/diagnosis/trials/trials';
import { resultWords, stopWords } from '../../../boards/diagnosis/trials/words';
import { demo } from '../findings/demo';

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
  const pinched: Evidence = { seen: ['twitch'], notSeen: [], tried: tried(['look-supply-plugs', 'pinched']) };

  it('has nothing started but what puts that right, until that is made', () => {
    expect(poweredIn(pinched)).toEqual(['right:look-supply-plugs']);
    const weighed = weighedTrials(dictionary, pinched, TRIALS);
    expect(weighed.find(({ trial }) => trial.id === 'front-usb-off')?.risk).toBe('put-right');
    const made = tried(['look-supply-plugs', 'pinched'], ['right:look-supply-plugs', 'same']);
    expect(poweredIn({ ...pinched, tried: made })).toContain('front-usb-off');
  });

  it('found anew after it was put right has to be put right anew', () => {
    const anew = tried(['right:look-supply-plugs', 'same'], ['look-supply-plugs', 'pinched']);
    expect(poweredIn({ ...pinched, tried: anew })).toEqual(['right:look-supply-plugs']);
  });

  it('holds back no start where all was as it should be', () => {
    const sound = tried(['look-supply-plugs', 'not-found']);
    expect(poweredIn({ ...pinched, tried: sound })).toContain('front-usb-off');
  });
});
