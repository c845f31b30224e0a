import { describe, expect, it } from 'vitest';
import { observationNamed } from '../../../boards/diagnosis/observations/observations';
import type { Build } from '../../../boards/document/build';
import type { LogEntry } from '../../../boards/document/trouble';
import type { Letters } from '../../../boards/handover/page/letters';
import type { Paper } from '../../../boards/handover/page/page';
import { troublePaper } from '../../../boards/handover/trouble-sheet/trouble-paper';
import { demo } from '../findings/demo';
import { ANY_LETTERS, DAY, everythingOn } from './papers';

const build = demo('wired');
const yes = (what: string): LogEntry => ({ kind: 'noticed', what, answer: 'yes', day: '2026-11-26' });

function printed(log: readonly LogEntry[], letters: Letters = ANY_LETTERS, of: Build = build): Paper {
  const troubled: Build = log.length === 0 ? of : { ...of, trouble: { log: [...log] } };
  const paper = troublePaper(troubled, { paper: 'a4' }, DAY, letters);
  if (!paper.ok) throw new Error(JSON.stringify(paper.problem));
  return paper.value;
}

const textsOn = (paper: Paper) =>
  paper.pages.flatMap((page) =>
    everythingOn(page).flatMap(({ item }) => (item.kind === 'text' ? [item.text] : [])),
  );
const wordsOn = (paper: Paper) => textsOn(paper).join(' ');

describe('the trouble sheet', () => {
  it('has the suspects, the questions, the trials with a box for every result, and the log', () => {
    const paper = printed([
      yes('nothing-on-press'),
      { kind: 'tried', trial: 'mains-off-a-minute', result: 'same' },
      { kind: 'remark', text: 'Bought used.' },
    ]);
    expect(paper.contents.map(({ title }) => title)).toEqual([
      'What it may be',
      'What to look for first',
      'What to try next',
      'What was noticed and tried',
    ]);
    const words = wordsOn(paper);
    for (const each of [
      'none of these',
      observationNamed('nothing-on-press')?.question ?? '',
      'Take mains off for a minute',
      'No change',
      'Bought used.',
      '2026-11-26',
    ])
      expect(words).toContain(each.split(' ').slice(0, 3).join(' '));
    const boxes = paper.pages.flatMap((page) =>
      everythingOn(page).filter(({ item }) => item.kind === 'rect'),
    );
    expect(boxes.length).toBeGreaterThan(10);
  });

  it('after smoke says to stop in a box, and proposes nothing to try or look for', () => {
    const paper = printed([yes('smoke')]);
    expect(paper.contents.map(({ title }) => title)).toEqual([
      'What it may be',
      'What was noticed and tried',
    ]);
    expect(wordsOn(paper)).toMatch(/Stop: nothing is tried any more Stop\. Pull the mains plug/);
  });

  it('says the same after a look that found something burnt', () => {
    const burnt = printed([yes('power-light-dark'), { kind: 'tried', trial: 'look-board', result: 'burnt' }]);
    expect(burnt.contents.map(({ title }) => title)).not.toContain('What to try next');
    expect(wordsOn(burnt)).toMatch(/Stop: nothing is tried any more Stop\. Pull the mains plug/);
  });

  it('of a wiring in danger says so in a box as the bench sheet does, and starts nothing', () => {
    const paper = printed([yes('usb-missing')], ANY_LETTERS, demo('eight-slips'));
    const words = wordsOn(paper);
    expect(words).toMatch(/Danger: do not connect the mains with this wiring Held back: the checks name/);
    expect(words).toContain('What to try next');
    expect(words).not.toContain('Put mains back and start');
  });

  it('says what it proves that it works now, and what not', () => {
    const words = wordsOn(printed([{ kind: 'tried', trial: 'new-cell', result: 'gone' }]));
    expect(words).toMatch(/It works now: .* It does not prove/);
  });

  it('says which answers cannot be true together', () => {
    const words = wordsOn(printed([yes('standby-light'), yes('no-standby-light')]));
    expect(words).toContain('they exclude each other');
  });

  it('is printed of a build without any log', () => {
    expect(wordsOn(printed([]))).toContain('Nothing is written down yet.');
  });

  it('stays within the margins, on as many pages as a long log takes', () => {
    const log = Array.from(
      { length: 150 },
      (_, at): LogEntry => ({ kind: 'remark', text: `Remark ${at}, ${'word '.repeat(30)}` }),
    );
    const paper = printed(log);
    expect(paper.pages.length).toBeGreaterThan(5);
    for (const page of paper.pages)
      for (const { item, at } of everythingOn(page)) {
        if (item.kind !== 'text') continue;
        const { x, y } = at(item.at);
        const left =
          item.anchor === 'end' ? x - item.widthMm : item.anchor === 'middle' ? x - item.widthMm / 2 : x;
        expect(left).toBeGreaterThanOrEqual(13.9);
        expect(left + item.widthMm).toBeLessThanOrEqual(paper.size.widthMm - 13.9);
        expect(y).toBeLessThanOrEqual(paper.size.heightMm - 13.9);
      }
  });

  it('marks a sign of a remark that the fonts have no letter for', () => {
    const has = (code: number) => code < 0x2000;
    const words = wordsOn(
      printed([{ kind: 'remark', text: 'It sang \u{1d11e} twice.' }], { ...ANY_LETTERS, has }),
    );
    expect(words).toContain('It sang ▯ twice.');
    expect(words).toContain('▯ stands for a sign');
  });
});
