import { describe, expect, it } from 'vitest';
import { applyCommand } from '../../../boards/edit/apply';
import type { Command } from '../../../boards/edit/command';
import {
  type History,
  perform,
  redo,
  redoLabel,
  startHistory,
  undo,
  undoLabel,
} from '../../../boards/edit/history';
import { bench, grid, partLead, posts, seat } from '../fixtures/bench';

const power = partLead('power-sw', 'power-switch', grid(1, 2), { a: '1', b: '2' });
const start = startHistory(bench([posts('panel', grid(2, 5))], [power]));
const SEAT: Command = { name: 'seat-plug', args: seat('power-sw', 'panel') };
const TURN: Command = { name: 'turn-plug', args: { lead: 'power-sw', plug: 'plug', by: 180 } };
const RENAME: Command = { name: 'rename-build', args: { name: 'Machine 3' } };

function carriedOut(history: History, ...commands: readonly Command[]): History {
  return commands.reduce((before, command) => {
    const result = perform(before, command);
    if (!result.ok) throw new Error(result.problem.code);
    return result.value;
  }, history);
}

describe('undo and redo', () => {
  it('go back and forth through the very same builds, one command a step', () => {
    const first = carriedOut(start, SEAT);
    const last = carriedOut(first, TURN);
    expect(undo(last).present).toBe(first.present);
    expect(undo(undo(last)).present).toBe(start.present);
    expect(redo(undo(last)).present).toBe(last.present);
    expect(redo(redo(undo(undo(last)))).present).toBe(last.present);
  });

  it('stand still at both ends', () => {
    expect(undo(start)).toBe(start);
    expect(redo(start)).toBe(start);
  });

  it('say what they would take back or do again', () => {
    const last = carriedOut(start, SEAT, TURN);
    expect([undoLabel(last), redoLabel(last)]).toEqual(['Turn POWER-SW', undefined]);
    const back = undo(last);
    expect([undoLabel(back), redoLabel(back)]).toEqual(['Seat POWER-SW', 'Turn POWER-SW']);
    expect([undoLabel(undo(back)), redoLabel(undo(back))]).toEqual([undefined, 'Seat POWER-SW']);
  });

  it('forget what could be redone once something else is done', () => {
    const other = carriedOut(undo(carriedOut(start, SEAT, TURN)), RENAME);
    expect(redo(other)).toBe(other);
    expect(undoLabel(other)).toBe('Rename the build');
  });

  it('know nothing of a command that changes nothing, nor of one that is refused', () => {
    const back = undo(carriedOut(start, SEAT, RENAME));
    expect(carriedOut(back, SEAT)).toBe(back);
    const refused = perform(back, { name: 'unseat-plug', args: { lead: 'none', plug: 'plug' } });
    expect(refused).toEqual({ ok: false, problem: { code: 'unknown-lead', lead: 'none' } });
    expect(redoLabel(back)).toBe('Rename the build');
  });
});

describe('a build that a command made', () => {
  it('cannot be changed by hand any more, and shares what did not change', () => {
    const { present } = carriedOut(start, SEAT);
    expect(Object.isFrozen(present) && Object.isFrozen(present.seats[0]?.at)).toBe(true);
    expect(present.board).toBe(start.present.board);
  });

  it('does not hold on to what the command was given', () => {
    const args = { ...seat('power-sw', 'panel') };
    const result = applyCommand(start.present, { name: 'seat-plug', args });
    expect(result.ok && result.value.seats[0]).toEqual(args);
    expect(Object.isFrozen(args) || Object.isFrozen(args.at)).toBe(false);
  });
});
