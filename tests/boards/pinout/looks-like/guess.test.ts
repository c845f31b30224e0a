import { describe, expect, it } from 'vitest';
import type { Connector, Pin } from '../../../../boards/document/connector';
import { connectorOf, pinOf } from '../../../../boards/document/lookup';
import { serialize } from '../../../../boards/document/serialize';
import { perform, startHistory, undo } from '../../../../boards/edit/history';
import { makeConnector } from '../../../../boards/library/make-connector';
import { compared } from '../../../../boards/pinout/looks-like/compare';
import {
  disputedPins,
  guessedPins,
  guessSource,
  guessSureness,
} from '../../../../boards/pinout/looks-like/guess';
import type { KnownLayout } from '../../../../boards/pinout/looks-like/known-layout';
import { bench } from '../../fixtures/bench';
import { header } from './headers';

// What a guess may and may not do to what is known: common practice, no source.

const usb: KnownLayout = {
  from: 'library',
  connector: makeConnector('usb2-2x5', { id: 'usb', print: '', place: { xMm: 0, yMm: 0, turn: 0 } }),
};
const asDrawn = { orientation: { turn: 0, mirrored: false }, offset: [0, 0] } as const;

function onlyKnown(...pins: readonly Pin[]): Connector {
  return { ...header(['?']), grid: usb.connector.grid, pins: [...pins] };
}

function filled(here: Connector, ...more: readonly Pin[]) {
  const places = compared(here, usb.connector, asDrawn);
  const build = bench([here], []);
  const history = startHistory(build);
  const pins = [...guessedPins(places, usb, 0.4), ...more];
  const done = perform(history, { name: 'fill-pins', args: { connector: here.id, pins } });
  if (!done.ok) throw new Error(done.problem.code);
  const after = connectorOf(done.value.present.board, here.id);
  if (after === undefined) throw new Error('The connector is gone');
  return { build, after, history: done.value };
}

describe('filling from a likeness', () => {
  const known: Pin = {
    pin: '1',
    signal: 'usb-vbus',
    channel: '2',
    source: { kind: 'print' },
    confidence: 0.9,
  };

  it('is one step that is undone to the byte', () => {
    const { build, history } = filled(onlyKnown(known));
    expect(history.past).toHaveLength(1);
    expect(serialize(undo(history).present)).toBe(serialize(build));
  });

  it('writes signal, name and whose ground it is as guesses, with what they look like', () => {
    const { after } = filled(onlyKnown(known));
    expect(pinOf(after, '1')).toEqual(known);
    expect(pinOf(after, '8')).toEqual({
      pin: '8',
      signal: 'ground',
      name: 'GND',
      channel: 'B',
      belongsTo: 'usb2',
      source: { kind: 'guessed', where: 'looks like USB 2.0, two ports (library)' },
      confidence: 0.4,
    });
    expect(pinOf(after, '9')).toMatchObject({ missing: true, source: { kind: 'guessed' } });
  });

  it('calls a port as it is called here, and never by the name of the other', () => {
    expect(pinOf(filled(onlyKnown(known)).after, '3').channel).toBe('2');
    const crossed = onlyKnown({ ...known, channel: 'B' });
    // What is B here is A there; of what is B there nobody knows the name here.
    expect(pinOf(filled(crossed).after, '3').channel).toBe('B');
    expect(pinOf(filled(crossed).after, '4').channel).toBeUndefined();
  });

  it('keeps a name that was read but not understood, and where it was read', () => {
    const { after } = filled(onlyKnown(known, { pin: '7', name: 'M', source: { kind: 'print' } }));
    expect(pinOf(after, '7')).toMatchObject({
      signal: 'ground',
      name: 'M',
      source: { kind: 'guessed' },
      alternatives: [{ signal: 'unknown', name: 'M', source: { kind: 'print' } }],
    });
  });

  it('leaves a pin that differs as it is, and adds the other word only when asked', () => {
    const here = onlyKnown(known, { pin: '10', signal: 'usb-over-current', source: { kind: 'measured' } });
    expect(pinOf(filled(here).after, '10')).toEqual(here.pins[1]);
    const more = disputedPins(compared(here, usb.connector, asDrawn), usb);
    expect(pinOf(filled(here, ...more).after, '10')).toEqual({
      ...here.pins[1],
      alternatives: [{ signal: 'no-connection', name: 'NC', source: guessSource(usb) }],
    });
  });

  it('leaves even an older guess in front of a new one', () => {
    const here = onlyKnown(known, { pin: '10', signal: 'ground', source: { kind: 'guessed' } });
    const more = disputedPins(compared(here, usb.connector, asDrawn), usb);
    expect(pinOf(filled(here, ...more).after, '10').signal).toBe('ground');
  });

  it('says once of a gap and a pin that they differ, however often it is asked', () => {
    const here = onlyKnown(known, { pin: '9', signal: 'ground', source: { kind: 'print' } });
    const once = disputedPins(compared(here, usb.connector, asDrawn), usb);
    expect(once).toMatchObject([{ pin: '9', alternatives: [{ missing: true, signal: 'no-connection' }] }]);
    const { after } = filled(here, ...once);
    expect(disputedPins(compared(after, usb.connector, asDrawn), usb)).toEqual([]);
  });

  it('cuts a long title so that a sheet can hold it', () => {
    const long: KnownLayout = {
      from: 'x'.repeat(200),
      connector: { ...usb.connector, title: '🔌'.repeat(100) },
    };
    const { where = '' } = guessSource(long);
    expect(where.length).toBeLessThanOrEqual(200);
    // Half a letter cannot be written down in UTF-8.
    expect(() => encodeURIComponent(where)).not.toThrow();
  });
});

describe('how sure a guess is', () => {
  const match = (score: number, agree: number) => ({ score, tally: { agree } });

  it('is never more than a half, and less with few pins behind it, or with others that match as well', () => {
    expect(guessSureness(match(1, 10_000), 1)).toBe(0.5);
    expect(guessSureness(match(1, 1), 1)).toBe(0.25);
    expect(guessSureness(match(0.8, 3), 1)).toBe(0.3);
    expect(guessSureness(match(0.8, 3), 3)).toBe(0.1);
  });

  it('is no more than the layout is sure of itself', () => {
    const doubtful: KnownLayout = {
      from: 'mine',
      connector: header(['? usb-vbus'], { confidence: 0.15 }),
    };
    const [pin] = guessedPins(compared(header(['? ?']), doubtful.connector, asDrawn), doubtful, 0.5);
    expect(pin).toMatchObject({ pin: '2', confidence: 0.15 });
  });
});
