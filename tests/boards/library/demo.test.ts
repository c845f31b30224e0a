import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { BoardSheet } from '../../../boards/document/board-sheet';
import type { Build } from '../../../boards/document/build';
import type { CaseSheet } from '../../../boards/document/case-sheet';
import type { Pin } from '../../../boards/document/connector';
import type { Document } from '../../../boards/document/document';
import { parseDocument } from '../../../boards/document/parse';
import { serialize } from '../../../boards/document/serialize';
import type { FindingCode } from '../../../boards/findings/finding';
import { findingsOf } from '../../../boards/findings/findings';
import { fitSeat } from '../../../boards/fit/fit-seat';
import { boxesCollide, connectorBox } from '../../../boards/fit/geometry';
import { makeConnector } from '../../../boards/library/make-connector';
import { makeLead } from '../../../boards/library/make-lead';

function textOf(file: string): string {
  return readFileSync(new URL(`../../../boards/library/demo/${file}`, import.meta.url), 'utf8');
}

function opened(file: string): Document {
  const result = parseDocument(textOf(file));
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
}

function boardOf(document: Document): BoardSheet {
  if (document.format !== 'leadwright/board') throw new Error('Not a board sheet');
  return document;
}

function caseOf(document: Document): CaseSheet {
  if (document.format !== 'leadwright/case') throw new Error('Not a case sheet');
  return document;
}

function buildOf(document: Document): Build {
  if (document.format !== 'leadwright/build') throw new Error('Not a build');
  return document;
}

const board = boardOf(opened('bench.board.json'));
const sheet = caseOf(opened('reading-room.case.json'));
const wired = buildOf(opened('wired.build.json'));
const slips = buildOf(opened('eight-slips.build.json'));

const CONNECTORS: Readonly<Record<string, string>> = {
  panel: 'panel-2x5',
  speaker: 'speaker-1x4',
  'case-open': 'case-open-1x2',
  clear: 'clear-settings-1x3',
  'usb-1': 'usb2-2x5',
  'usb-2': 'usb2-2x5',
  usb3: 'usb3-19',
  f1394: 'ieee1394-2x5',
  serial: 'serial-2x5-ribbon',
  audio: 'hd-audio-2x5',
  'fan-cpu': 'fan-1x4',
  'fan-rear': 'fan-1x3',
  'fan-front': 'fan-1x4',
  'sata-1': 'sata-data-7',
  'sata-2': 'sata-data-7',
  'sata-3': 'sata-data-7',
  'sata-4': 'sata-data-7',
  main: 'main-power-24',
  cpu: 'cpu-power-2x4',
};

const LEADS: Readonly<Record<string, string>> = {
  'power-switch': 'power-switch-1x2',
  'reset-switch': 'reset-switch-1x2',
  'drive-led': 'drive-led-1x2',
  'power-led': 'power-led-1x2',
  speaker: 'speaker-1x4',
  'case-open': 'case-open-1x2',
  'front-usb': 'usb2-block-2x5',
  'card-reader': 'usb2-row-1x4',
  'front-usb3': 'usb3-block',
  'front-audio': 'hd-audio-block-2x5',
  'front-1394': 'ieee1394-block-2x5',
  'cpu-fan': 'fan-1x4',
  'rear-fan': 'fan-1x3',
  'clear-cap': 'jumper-cap-1x2',
};

/** Pins of which the sheet says that they are a guess. */
const GUESSED = ['case-open 1', 'case-open 2', 'usb-2 10'];

/** What a pin is, without where that was read. */
function meaning({ source, confidence, ...rest }: Pin): unknown {
  return rest;
}

describe('the demo files', () => {
  it.each(['bench.board.json', 'reading-room.case.json', 'wired.build.json', 'eight-slips.build.json'])(
    '%s is as the program would save it',
    (file) => {
      expect(serialize(opened(file))).toBe(textOf(file));
    },
  );

  it('both builds carry the bench board and the reading-room case', () => {
    for (const build of [wired, slips]) {
      expect(build.board).toEqual(board);
      expect(build.case).toEqual(sheet);
      expect(build.extras).toEqual(wired.extras);
    }
  });
});

describe('the bench board', () => {
  it('has connectors of the library, but for the sources of the pins that are a guess', () => {
    const guessed: string[] = [];
    expect(board.connectors.map(({ id }) => id)).toEqual(Object.keys(CONNECTORS));
    for (const connector of board.connectors) {
      const { id, print, place } = connector;
      const standard = makeConnector(CONNECTORS[id] ?? '', { id, print, place });
      expect({ ...connector, pins: connector.pins.map(meaning) }).toEqual({
        ...standard,
        pins: standard.pins.map(meaning),
      });
      connector.pins.forEach((pin, at) => {
        if (pin.source?.kind === 'guessed') guessed.push(`${id} ${pin.pin}`);
        else expect(pin).toEqual(standard.pins[at]);
      });
    }
    expect(guessed).toEqual(GUESSED);
  });

  it('has every connector inside its outline, at least 2 mm from the edge', () => {
    const astray = board.connectors.filter((connector) => {
      const { leftMm, topMm, rightMm, bottomMm } = connectorBox(connector);
      const { widthMm, depthMm } = board.outline;
      return leftMm < 2 || topMm < 2 || rightMm > widthMm - 2 || bottomMm > depthMm - 2;
    });
    expect(astray.map(({ print }) => print)).toEqual([]);
  });

  it('has a finger’s breadth, 5 mm, between any two connectors', () => {
    const roomy = board.connectors.map((connector) => {
      const { leftMm, topMm, rightMm, bottomMm } = connectorBox(connector);
      const room = {
        leftMm: leftMm - 2.5,
        topMm: topMm - 2.5,
        rightMm: rightMm + 2.5,
        bottomMm: bottomMm + 2.5,
      };
      return { print: connector.print, room };
    });
    const crowded = roomy.flatMap((one, at) =>
      roomy
        .slice(at + 1)
        .filter((other) => boxesCollide(one.room, other.room))
        .map((other) => `${one.print} ${other.print}`),
    );
    expect(crowded).toEqual([]);
  });
});

describe('the leads of the demo', () => {
  it('are leads of the library', () => {
    const leads = [...sheet.leads, ...wired.extras];
    expect(leads.map(({ id }) => id)).toEqual(Object.keys(LEADS));
    for (const lead of leads)
      expect(lead).toEqual(makeLead(LEADS[lead.id] ?? '', { id: lead.id, name: lead.name }));
  });
});

describe('the wired build', () => {
  it('has every lead seated where it fits, nothing hanging over', () => {
    expect(wired.seats.map(({ lead }) => lead)).toEqual(Object.keys(LEADS));
    const fits = wired.seats.map((seat) => fitSeat(wired, seat));
    expect(fits.flatMap(({ refusals }) => refusals)).toEqual([]);
    expect(fits.flatMap(({ overhang }) => overhang)).toEqual([]);
  });

  it('has nothing dangerous or wrong, and doubts only about pins', () => {
    const found = findingsOf(wired);
    expect(found.length).toBeGreaterThan(0);
    expect(new Set(found.map(({ code, severity }) => `${severity} ${code}`))).toEqual(
      new Set(['doubt pin-unsure']),
    );
  });
});

describe('the build with eight slips', () => {
  it('has every plug where it really goes in', () => {
    expect(slips.seats.flatMap((seat) => fitSeat(slips, seat).refusals)).toEqual([]);
  });

  it.each<[slip: string, code: FindingCode, lead: string]>([
    ['power and reset exchanged', 'switches-exchanged', 'power-switch'],
    ['the drive LED one column too far', 'shifted', 'drive-led'],
    ['the power LED turned round', 'reversed', 'power-led'],
    ['the USB lead on 1394', 'usb-on-1394', 'front-usb'],
    ['and the 1394 lead on USB', 'ieee1394-on-usb', 'front-1394'],
    ['the card reader turned end for end', 'supply-reversed', 'card-reader'],
    ['the CPU fan a pin too far', 'fan-supply-on-signal', 'cpu-fan'],
    ['the case-open lead on the clear jumper', 'on-clear-settings', 'case-open'],
    ['and the cap on the case-open pins', 'input-held', 'clear-cap'],
    ['the front audio lead on the shelf', 'lead-left-over', 'front-audio'],
  ])('%s is found as %s', (_slip, code, lead) => {
    const found = findingsOf(slips).filter((finding) => finding.code === code);
    expect(found.some(({ leads }) => leads.includes(lead))).toBe(true);
  });

  it('seats right what is not among the slips', () => {
    const right = slips.seats.filter((seat) =>
      wired.seats.some((other) => JSON.stringify(other) === JSON.stringify(seat)),
    );
    expect(right.map(({ lead }) => lead)).toEqual(['speaker', 'front-usb3', 'rear-fan']);
  });
});
