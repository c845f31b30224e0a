import { beforeAll, describe, expect, it } from 'vitest';
import { type Dictionary, dictionaryOf } from '../../../boards/diagnosis/dictionary';
import { faultsAsWritten } from '../../../boards/diagnosis/faults/as-written';
import { CAUSES } from '../../../boards/diagnosis/faults/causes';
import { faultsOf } from '../../../boards/diagnosis/faults/faults';
import { lineWords } from '../../../boards/diagnosis/log/log-words';
import { evidenceOf, readLog, tellingLines } from '../../../boards/diagnosis/log/read-log';
import { type Reckoning, reckon } from '../../../boards/diagnosis/log/reckoning';
import { suspicionOf } from '../../../boards/diagnosis/posterior';
import { trialsOf } from '../../../boards/diagnosis/trials/trials';
import type { Build } from '../../../boards/document/build';
import type { LogEntry } from '../../../boards/document/trouble';
import { demo } from '../findings/demo';

const build = demo('wired');
const trials = trialsOf(build);
let dictionary: Dictionary;
beforeAll(() => {
  dictionary = dictionaryOf(faultsAsWritten(build));
}, 120_000);

const yes = (what: string): LogEntry => ({ kind: 'noticed', what, answer: 'yes' });
const no = (what: string): LogEntry => ({ kind: 'noticed', what, answer: 'no' });
const tried = (trial: string, result: string): LogEntry => ({ kind: 'tried', trial, result });
const OVER: LogEntry = { kind: 'started-over' };

const evidenceIn = (log: readonly LogEntry[]) =>
  evidenceOf(tellingLines(readLog(log, trials)).map(({ told }) => told));
const reckoned = (log: readonly LogEntry[]): Reckoning => reckon(dictionary, log, trials);

describe('what a log tells', () => {
  it('is what stands after the last time it was started over', () => {
    const { seen, notSeen } = evidenceIn([yes('smoke'), OVER, yes('no-beep'), no('rattle')]);
    expect([seen, notSeen]).toEqual([['no-beep'], ['rattle']]);
  });

  it('is the last result of a trial that was made twice, and each answer once', () => {
    const log = [tried('bare-pins', 'same'), yes('no-beep'), tried('bare-pins', 'gone'), yes('no-beep')];
    const evidence = evidenceIn(log);
    expect(evidence.tried.map(({ trial, result }) => `${trial.id}=${result}`)).toEqual(['bare-pins=gone']);
    expect(evidence.seen).toEqual(['no-beep']);
  });

  it('is nothing where this version has no such code, and the line says so', () => {
    const lines = readLog([yes('smells-of-elephants'), tried('bare-pins', 'purple')], trials);
    expect(lines.map(({ unknown, told }) => [unknown, told])).toEqual([
      [true, undefined],
      [true, undefined],
    ]);
    for (const line of lines) expect(lineWords(build, line).came).toMatch(/this version has no such code/);
  });

  it('is said in words: what was asked or tried, and what came of it', () => {
    const [asked, made, over] = readLog([yes('smoke'), tried('back:power-switch', 'back'), OVER], trials);
    if (!asked || !made || !over) throw new Error('Three lines were read');
    expect(lineWords(build, asked)).toEqual({ what: 'Is there smoke?', came: 'Yes' });
    expect(lineWords(build, made).what).toBe('Put Power switch back, and no other lead');
    expect(lineWords(build, over).came).toBe('');
  });
});

describe('a reckoning', () => {
  const log = [yes('nothing-on-press'), yes('standby-light'), yes('only-pins-start')];

  it('has the suspects that inference gives', () => {
    const { suspects, noneOfThese } = reckoned(log);
    const exact = suspicionOf(dictionary, evidenceIn(log));
    expect(suspects.map(({ cause, chance }) => [cause, chance])).toEqual(
      exact.suspects.map(({ cause, chance }) => [cause, chance]),
    );
    expect(noneOfThese).toBe(exact.noneOfThese);
  });

  it('calls a line a reason for a cause that is likelier with it than without it', () => {
    for (const { cause, chance, speaksFor, speaksAgainst, silent } of reckoned(log).suspects.slice(0, 8)) {
      expect([...speaksFor, ...speaksAgainst, ...silent].sort(), cause).toEqual([0, 1, 2]);
      const without = (at: number) => {
        const { suspects } = suspicionOf(dictionary, evidenceIn(log.filter((_, each) => each !== at)));
        return suspects.find((each) => each.cause === cause)?.chance ?? 0;
      };
      for (const at of speaksFor) expect(without(at), cause).toBeLessThan(chance);
      for (const at of speaksAgainst) expect(without(at), cause).toBeGreaterThan(chance);
    }
  });

  it('says of every result what would be believed then, and of every line what it ruled out', () => {
    const { trials: next, effects } = reckoned(log);
    const [best] = next;
    expect(best?.results.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 9);
    const measured = next.find(({ trial }) => trial === 'measure-power-button');
    const broken = measured?.results.find(({ result }) => result === 'never-closes');
    expect(broken?.believed?.cause).toBe('switch-broken');
    // A board that lights its standby LED has mains: teaching texts of the trade, restated.
    const ruledOut = effects[1]?.ruledOut.map((cause) => CAUSES[cause]);
    expect(ruledOut).toEqual(expect.arrayContaining([CAUSES['outlet-dead'], CAUSES['rear-switch-off']]));
  });

  it('after smoke has no trial and no look, and names what was seen', () => {
    const { stops, trials: next, looks } = reckoned([...log, yes('smoke')]);
    expect(stops).toEqual(['smoke']);
    expect([next, looks]).toEqual([[], []]);
  });

  it('of nothing, and of what contradicts itself, is a reckoning all the same', () => {
    expect(reckoned([]).effects).toEqual([]);
    const both = reckoned([yes('no-beep'), no('no-beep')]);
    expect(both.contradicted).toEqual(['no-beep']);
    expect(both.suspects.every(({ chance }) => Number.isFinite(chance))).toBe(true);
  });

  it('knows when a trial made the trouble go away', () => {
    expect(reckoned([...log, tried('exchange-buttons', 'gone')]).worksNow).toBe(true);
    expect(reckoned([...log, tried('exchange-buttons', 'same')]).worksNow).toBe(false);
  });

  it('knows when the trouble came back, by the last start', () => {
    const gone = [...log, tried('bare-pins', 'gone')];
    const worksAfter = (...more: readonly LogEntry[]) => reckoned([...gone, ...more]).worksNow;
    expect(worksAfter(tried('back:power-led', 'not-back'), tried('look-caps', 'not-found'))).toBe(true);
    expect(worksAfter(tried('back:power-switch', 'back'))).toBe(false);
    expect(worksAfter(tried('back:power-switch', 'back'), tried('back:reset-switch', 'not-back'))).toBe(true);
    expect(worksAfter(tried('settings-cleared', 'other'))).toBe(false);
    expect(worksAfter(tried('settings-cleared', 'same'))).toBe(false);
  });
});

describe('a build whose own wiring is wrong', () => {
  const oneOff: Build = {
    ...build,
    seats: build.seats.map((seat) =>
      seat.lead === 'power-switch' ? { ...seat, at: [seat.at[0], seat.at[1] + 1] } : seat,
    ),
  };

  it('is suspected of just that, as much as of everything else together', () => {
    const faults = faultsAsWritten(oneOff);
    const [written] = [...faults].sort((a, b) => b.weight - a.weight);
    expect(written?.id).toMatch(/^power-switch\/plug\/shifted\/panel:0\.3:0$/);
    const all = faults.reduce((sum, { weight }) => sum + weight, 0);
    expect((written?.weight ?? 0) / all).toBeCloseTo(0.5, 9);
    const log = [yes('nothing-on-press'), yes('standby-light'), no('no-picture')];
    const [first] = reckon(dictionaryOf(faults), log, trialsOf(oneOff)).suspects;
    expect(first?.cause).toBe('panel-lead-miswire');
    expect(first?.faults[0]?.id).toBe(written?.id);
  }, 60_000);

  it('is none where the checks find nothing wrong', () => {
    expect(faultsAsWritten(build)).toBe(faultsOf(build));
  });
});
