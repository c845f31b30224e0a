import { describe, expect, it } from 'vitest';
import { drivesToBranches } from '../../../../boards/routing/assign/branches';
import {
  type Fan,
  type FanHeader,
  type FanOnHeader,
  fansToHeaders,
} from '../../../../boards/routing/assign/fans';
import { type DataDrive, type DataPort, drivesToPorts } from '../../../../boards/routing/assign/ports';
import {
  ASSIGN_SOURCES,
  branchWords,
  fanPlaceWords,
  loadWords,
  portWords,
  provenWords,
} from '../../../../boards/routing/assign/words';

const PORTS: readonly DataPort[] = [
  { id: 'D1', lineRateGbps: 3 },
  { id: 'D2', lineRateGbps: 6, offWith: ['M2-A'] },
];

function drives(list: readonly DataDrive[], usedM2: readonly string[] = []): readonly string[] {
  return drivesToPorts(list, PORTS, usedM2).drives.map(portWords);
}

const HEADER: FanHeader = { id: 'F1', modes: ['pwm'], ratedA: 1.5 };

function fan(id: string, over: Partial<Fan> = {}): Fan {
  return { id, wires: 4, cools: 'case', runningA: 0.3, startA: 0.6, ...over };
}

describe('what is said of data ports', () => {
  it('is what the drive moves and what the port does', () => {
    expect(drives([{ id: 'Boot drive', lineRateGbps: 6, fastestMBps: 560 }])).toEqual([
      'Boot drive goes on D2: it moves up to 560\u00a0MB/s, the port up to 600\u00a0MB/s.',
    ]);
    expect(ASSIGN_SOURCES.ports).toContain('ten bits for each byte');
  });

  it('is why a chosen port cannot be had, or slows the drive', () => {
    expect(drives([{ id: 'Boot drive', lineRateGbps: 6, pinned: 'D2' }], ['M2-A'])).toEqual([
      'D2, chosen for Boot drive, is off while something is in M2-A. Choose another port, or empty that place; the board’s manual has the table.',
    ]);
    expect(drives([{ id: 'Boot drive', lineRateGbps: 6, pinned: 'D1' }])).toEqual([
      'Boot drive goes on D1 and is slowed: it could move 600\u00a0MB/s, the port moves up to 300\u00a0MB/s. You chose this port.',
    ]);
  });
});

describe('what is said where nothing is written down to go on', () => {
  it('is what to write down, and not that all is taken', () => {
    const said = [
      ...drivesToPorts([{ id: 'Boot drive', lineRateGbps: 6 }], [], []).drives.map(portWords),
      ...fansToHeaders([fan('Front')], []).fans.map(placeWords),
      ...drivesToBranches([{ id: 'Boot drive', startA: 2 }], []).drives.map(branchWords),
    ];
    expect(said).toEqual([
      'The board’s sheet has no port for the data cable of Boot drive. Write its ports down in Document.',
      'The board’s sheet has no header for Front. Write its fan headers down in Document.',
      'No cable on an outlet of a supply has a plug for Boot drive. Add the supply with its cables, or plug in the cable at the supply.',
    ]);
  });

  it('is, for the fan of the processor, that the machine must not start so', () => {
    const { fans } = fansToHeaders([fan('Cooler', { cools: 'processor' })], []);
    expect(fans.map(placeWords).join()).toContain('Do not start without it.');
  });
});

/** A fan by the names of its place; outlets are printed by letters here. */
function placeWords({ fan, header, outlet, reason }: FanOnHeader): string {
  return fanPlaceWords({
    fan,
    reason,
    ...(header !== undefined && { header: outlet === undefined ? header : `Hub on ${header}` }),
    ...(outlet !== undefined && { outlet: 'ABCD'[outlet - 1] ?? '' }),
  });
}

describe('what is said of fans', () => {
  it('is where each goes, what sets its speed, and what the header carries', () => {
    const plan = fansToHeaders([fan('Front fan')], [HEADER]);
    expect(plan.fans.map(placeWords)).toEqual(['Front fan goes on F1: its speed is set by pulses.']);
    expect(plan.loads.map(loadWords)).toEqual([
      'F1 carries 0.30\u00a0A while its fans run and 0.60\u00a0A when all start at once, of 1.50\u00a0A.',
    ]);
    expect(ASSIGN_SOURCES.fans).toContain('2.2 A');
  });

  it('is a hub that would overload its header, and what carries the fans instead', () => {
    const fans = ['a', 'b', 'c'].map((id) => fan(id));
    const hub = { outlets: 4, ratedA: 4, speedOutlet: 1 };
    const fed = (fedBy: 'header' | 'supply') =>
      fansToHeaders(fans, [{ ...HEADER, hub: { ...hub, fedBy } }]).fans.map(placeWords);
    expect(fed('header')).toContain(
      'No header has a place and current left for c. A hub fed from the supply unit would carry it.',
    );
    expect(fed('supply')).toEqual([
      'a goes on outlet\u00a0A of Hub on F1: its speed is set by pulses.',
      'b goes on outlet\u00a0B of Hub on F1: its speed is set by pulses. Its speed is not reported to the board.',
      'c goes on outlet\u00a0C of Hub on F1: its speed is set by pulses. Its speed is not reported to the board.',
    ]);
  });

  it('is that its speed is not reported where it has no wire for that', () => {
    const plan = fansToHeaders(
      [fan('Cooler', { cools: 'processor', wires: 3, silent: true })],
      [{ ...HEADER, watched: true }],
    );
    expect(plan.fans.map(placeWords)).toEqual([
      'Cooler goes on F1: it always runs at full speed there. Its speed is not reported to the board.',
    ]);
  });

  it('is a caution where the processor’s fan was chosen for a header that is not watched', () => {
    const cooler = fan('Cooler', { cools: 'processor' });
    const told = (over: Partial<Fan>) =>
      fansToHeaders([{ ...cooler, ...over }], [HEADER]).fans.map(placeWords);
    expect(told({ pinned: 'F1' })).toEqual([
      'Cooler goes on F1: its speed is set by pulses. The board does not watch this header for the processor’s fan, and it may carry too little: see the board’s manual before power.',
    ]);
    expect(told({})[0]).toContain('Do not start without it.');
  });

  it('is that a plan is not proved, where it is not', () => {
    expect(provenWords(fansToHeaders([fan('a')], [HEADER]))).toBeUndefined();
    expect(provenWords({ proven: false })).toContain('a better one may exist');
  });
});
