import { describe, expect, it } from 'vitest';
import type { Pin } from '../../../boards/document/connector';
import { serialize } from '../../../boards/document/serialize';
import { boxesCollide, connectorBox } from '../../../boards/fit/geometry';
import { makeConnector } from '../../../boards/library/make-connector';
import { makeLead } from '../../../boards/library/make-lead';
import { board, LEADS, opened, sheet, slips, textOf, wired } from './demo-files';

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
  it('are leads of the library, with their own measures', () => {
    const leads = [...sheet.leads, ...wired.extras];
    expect(leads.map(({ id }) => id)).toEqual(Object.keys(LEADS));
    for (const { cable: _, ...lead } of leads)
      expect(lead).toEqual(makeLead(LEADS[lead.id] ?? '', { id: lead.id, name: lead.name }));
  });
});
