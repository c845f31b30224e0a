import { describe, expect, it } from 'vitest';
import { parseDocument } from '../../../boards/document/parse';
import { type LogEntry, logOf } from '../../../boards/document/trouble';
import { labelOf } from '../../../boards/edit/apply';
import type { Command } from '../../../boards/edit/command';
import { bench, grid, posts } from '../fixtures/bench';
import { done, toldNo } from './carried-out';

const NBSP = '\u00a0';
const day = '2026-11-26';
const machine = bench([posts('panel', grid(2, 5))], []);

const answer = (observation: string, said: 'yes' | 'no' | null): Command => ({
  name: 'answer-question',
  args: { observation, answer: said, day },
});
const tried = (trial: string, result: string): Command => ({
  name: 'note-trial',
  args: { trial, result, day },
});
const remark = (text: string): Command => ({ name: 'note-remark', args: { text } });
const drop = (line: number): Command => ({ name: 'drop-log-line', args: { line } });
const over: Command = { name: 'start-over', args: { day } };

const noticed = (what: string, said: 'yes' | 'no'): LogEntry => ({
  kind: 'noticed',
  what,
  answer: said,
  day,
});

describe('the log of a machine that does not start', () => {
  it('is kept in the order in which things were said and tried', () => {
    const after = done(
      machine,
      answer('nothing-on-press', 'yes'),
      tried('bare-pins', 'same'),
      remark('The button\nfeels soft.'),
      answer('standby-light', 'no'),
    );
    expect(logOf(after)).toEqual([
      noticed('nothing-on-press', 'yes'),
      { kind: 'tried', trial: 'bare-pins', result: 'same', day },
      { kind: 'remark', text: 'The button\nfeels soft.' },
      noticed('standby-light', 'no'),
    ]);
  });

  it('holds one answer to a question: another takes its place, and null takes it back', () => {
    const yes = done(machine, answer('no-beep', 'yes'), answer('rattle', 'no'));
    expect(logOf(done(yes, answer('no-beep', 'no')))).toEqual([
      noticed('rattle', 'no'),
      noticed('no-beep', 'no'),
    ]);
    expect(done(yes, answer('no-beep', 'yes'))).toBe(yes);
    expect(logOf(done(yes, answer('no-beep', null)))).toEqual([noticed('rattle', 'no')]);
    expect(done(yes, answer('no-beep', null), answer('rattle', null))).toEqual(machine);
    expect(done(machine, answer('no-beep', null))).toBe(machine);
  });

  it('keeps what was said before it was started over, and asks anew', () => {
    const before = done(machine, answer('no-beep', 'yes'), over, answer('no-beep', 'no'));
    expect(logOf(before)).toEqual([
      noticed('no-beep', 'yes'),
      { kind: 'started-over', day },
      noticed('no-beep', 'no'),
    ]);
    expect(logOf(done(before, answer('no-beep', null)))).toHaveLength(2);
    expect(done(machine, over)).toBe(machine);
    const once = done(before, over);
    expect(done(once, over)).toBe(once);
  });

  it('loses single lines, and without any the build is as before', () => {
    const two = done(machine, tried('new-cell', 'gone'), remark('Lit again.'));
    expect(logOf(done(two, drop(0)))).toEqual([{ kind: 'remark', text: 'Lit again.' }]);
    expect(done(two, drop(1), drop(0))).toEqual(machine);
  });

  it('refuses a question that nobody asks, a line that is not there, and one too many', () => {
    expect(toldNo(machine, answer('no-beeps', 'yes'))).toBe(
      'There is no observation “no-beeps”. Name one that can be asked about. Perhaps “no-beep” is meant.',
    );
    expect(toldNo(machine, drop(0))).toBe(`The log has no line${NBSP}1.`);
    expect(toldNo(machine, tried('Bare pins', 'same'))).toMatch(
      /^“trial” cannot be kept: it has to be a code/,
    );
    expect(toldNo(machine, remark(''))).toMatch(/it has to be a text of 1 to 1,000 plain characters/);
    const full = {
      ...machine,
      trouble: { log: Array.from({ length: 2_000 }, () => noticed('rattle', 'no')) },
    };
    expect(toldNo(full, remark('One more.'))).toBe(
      `The log of a trouble can hold no more than 2,000${NBSP}lines.`,
    );
    expect(toldNo(full, answer('smoke', 'yes'))).toMatch(/^The log of a trouble/);
  });

  it('opens with codes that this version does not know, and not with a day that no calendar has', () => {
    const old = {
      ...machine,
      trouble: { log: [{ kind: 'noticed', what: 'smells-of-elephants', answer: 'yes' }] },
    };
    expect(parseDocument(JSON.stringify(old))).toMatchObject({ ok: true });
    const wrong = { ...machine, trouble: { log: [{ ...noticed('smoke', 'yes'), day: '2026-02-30' }] } };
    expect(parseDocument(JSON.stringify(wrong))).toMatchObject({
      ok: false,
      problem: {
        code: 'invalid',
        fields: [{ path: 'trouble.log[0].day', expected: 'a day of the calendar, as 2026-11-26' }],
      },
    });
  });

  it('is called by what was said', () => {
    expect(labelOf(machine, answer('smoke', 'yes'))).toBe('Answer “Is there smoke?” with yes');
    expect(labelOf(machine, answer('smoke', null))).toBe('Take back the answer to “Is there smoke?”');
  });
});
