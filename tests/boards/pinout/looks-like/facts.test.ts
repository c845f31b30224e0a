import { describe, expect, it } from 'vitest';
import type { Connector } from '../../../../boards/document/connector';
import { CONNECTOR_TYPES } from '../../../../boards/library/connectors/index';
import { compared } from '../../../../boards/pinout/looks-like/compare';
import { type KnownLayout, knownLayouts } from '../../../../boards/pinout/looks-like/known-layout';
import { asGoodAs, type LooksLike, looksLike } from '../../../../boards/pinout/looks-like/likeness';
import { header } from './headers';

/** What a person is told: the layouts that match best, and how each lies. */
function bestOf(found: LooksLike): readonly string[] {
  if (found.outcome !== 'found') return [found.outcome];
  return found.likenesses
    .slice(0, found.tied)
    .map(({ layout, also, orientation: { turn, mirrored } }) =>
      [
        [layout, ...also].map(({ connector }) => connector.title).join(' = '),
        `turned ${turn}${mirrored ? ' in mirror' : ''}`,
      ].join(', '),
    );
}

function inLibrary(id: string): KnownLayout {
  const type = CONNECTOR_TYPES.find((each) => each.id === id);
  if (type === undefined) throw new Error(`No connector type ${id}`);
  return { from: 'library', connector: type.connector };
}

const all = knownLayouts([]);

describe('a half-filled header beside the published ones', () => {
  it('is USB 2.0 turned by half when its key and both +5 V lie at the other end', () => {
    // Two board product guides: +5 V on 1 and 2, no pin at 9. Seen from above 2 4 6 8 10 over 1 3 5 7 9.
    const seen = header(['key ? ? ? usb-vbus', '? ? ? ? usb-vbus']);
    expect(bestOf(looksLike(seen, all))).toEqual([
      'USB 2.0, two ports, turned 180',
      'USB 2.0, two ports, over-current on pin 10, turned 180',
    ]);
  });

  it('is one USB 2.0 header, however the ports are called, where its two rows are exchanged', () => {
    const [usb] = looksLikeOnly(
      header(['usb-vbus usb-d-minus usb-d-plus ? ?', '? ? ? ground key']),
      'usb2-2x5',
    );
    expect(usb?.orientation).toEqual({ turn: 0, mirrored: false });
    expect(usb?.score).toBe(1);
  });

  it('is a panel drawn from below when its key lies at the top left and the drive LED at the right', () => {
    // Front Panel I/O Connectivity Design Guide v1.3, Figures 3 and 10: no pin at 10, drive LED on 1 and 3.
    const seen = header([
      'key ? power-switch-input ? power-led-feed',
      '? reset-switch-input ? drive-led-sink drive-led-feed',
    ]);
    expect(bestOf(looksLike(seen, all))).toEqual([
      'switches and LEDs, turned 0 in mirror',
      'switches and LEDs, +5 V on pin 9, turned 0 in mirror',
    ]);
  });

  it('may be a panel or a serial port while only the key is known: both leave out pin 10', () => {
    // The guide, Figure 10; a single-board computer's manual for the serial header.
    const titles = bestOf(looksLike(header(['? ? ? ? key', '? ? ? ? ?']), all));
    expect(titles).toContain('switches and LEDs, turned 0');
    expect(titles).toContain('serial port, ribbon order, turned 0');
    // USB leaves out pin 9: the other corner of the same end, so it takes a mirror to bring it there.
    expect(titles).not.toContain('USB 2.0, two ports, turned 0');
  });

  it('is nothing known where drive power, data and a fan stand side by side', () => {
    const odd = header([
      'sata-a-plus fan-tach supply-12v',
      'usb-d-minus ps-on key',
      'serial-ri ? hd-presence',
    ]);
    const found = looksLike(odd, all);
    expect(found.outcome).toBe('none-close');
    expect(found.outcome === 'none-close' && found.nearest.every(({ score }) => score < 0.65)).toBe(true);
  });

  it('is not like a header of the same key while as many pins speak against it', () => {
    // Universal Serial Bus header: no pin at 9; in mirror it lies where the panel has its own (the guide, Figure 10).
    const half: KnownLayout = { from: 'mine', connector: header(['? ? ? ? key', 'usb-vbus ? ? ? ?']) };
    const panel = header(['? ? power-switch-input ? key', 'drive-led-feed ? ? ? ?']);
    expect(looksLike(panel, [half]).outcome).toBe('none-close');
  });

  it('cannot be compared before one pin is known', () => {
    expect(looksLike(header(['? ? ? ? ?', '? ? ? ? ?']), all)).toEqual({ outcome: 'nothing-known' });
  });

  it('is found with a row of pins that the known one has not, and where it lies among them', () => {
    const [panel] = looksLikeOnly(
      header([
        'speaker-feed ? ? speaker-drive ?',
        'power-led-feed power-led-sink power-switch-input ground key',
        'drive-led-feed drive-led-sink ground reset-switch-input reserved',
      ]),
      'panel-2x5',
    );
    expect(panel).toMatchObject({ offset: [1, 0], sameShape: false, tally: { agree: 10, differ: 0 } });
  });

  it('is rather like the one with three pins right than the one with two right and a pair exchanged', () => {
    const here = header(['ground power-led-feed power-led-sink reset-switch-input']);
    const exchanged: KnownLayout = {
      from: 'mine',
      connector: header(['ground power-led-sink power-led-feed reset-switch-input']),
    };
    const wrong: KnownLayout = {
      from: 'mine',
      connector: header(['ground power-led-feed supply-12v reset-switch-input']),
    };
    // Two halves weigh as much as one whole, so the scores are the same.
    const [first, second] = close(looksLike(here, [exchanged, wrong]));
    expect(first?.score).toBeCloseTo(second?.score ?? 0, 9);
    expect(first?.layout).toBe(wrong);
  });

  it('goes by the key before a ground: a pin may be misread, a gap can be seen', () => {
    const here = header(['key ground ground']);
    const right: KnownLayout = { from: 'mine', connector: header(['key supply-12v ground']) };
    const wrong: KnownLayout = { from: 'mine', connector: header(['ground ground ground']) };
    // Two of three agree in both, so that counting pins alone could not tell.
    const [first] = close(looksLike(here, [wrong, right]));
    expect(first?.layout).toBe(right);
    expect(first?.tally).toMatchObject({ agree: 2, differ: 1 });
  });
});

function close(found: LooksLike) {
  return found.outcome === 'found' ? found.likenesses : [];
}

function looksLikeOnly(here: Connector, id: string) {
  return close(looksLike(here, [inLibrary(id)]));
}

describe('how many layouts match as well', () => {
  it('are all that the first shares its place with, and for the next also those before it', () => {
    const found = close(
      looksLike(header(['? ? power-switch-input ? key', 'drive-led-feed ? drive-led-sink ? ?']), all),
    );
    // The panel with a pin to keep free and the one with +5 V there: the guide and older manuals, pin 9.
    expect(found.slice(0, 2).map((each) => asGoodAs(each, found))).toEqual([2, 2]);
    for (const [at, each] of found.entries()) expect(asGoodAs(each, found)).toBeGreaterThan(at);
  });
});

describe('two published headers pin by pin', () => {
  const asDrawn = { orientation: { turn: 0, mirrored: false }, offset: [0, 0] } as const;

  it('are HD audio and AC’97: the ground on 2 and the key at 8 agree, and nothing else', () => {
    // The guide v1.3: HD audio in Figure 4, AC'97 in Table 6. Pin 4 is presence by the one and ground by the
    // other, and presence again on a header made for both, so that the library holds both for it.
    const places = compared(
      inLibrary('hd-audio-2x5').connector,
      inLibrary('ac97-audio-2x5').connector,
      asDrawn,
    );
    const by = (verdict: string) =>
      places.filter((place) => place.verdict === verdict).map(({ here }) => here?.pin);
    expect(by('agree')).toEqual(['2', '8']);
    expect(by('partly')).toEqual(['4']);
    expect(by('differ')).toEqual(['1', '3', '5', '6', '7', '9', '10']);
  });

  it('are USB 2.0 and IEEE 1394: the same key, and +12 V where USB has ground', () => {
    // Two board product guides list both: USB ground on 7 and 8, 1394 +12 V there; no pin at 9 on either.
    const places = compared(inLibrary('usb2-2x5').connector, inLibrary('ieee1394-2x5').connector, asDrawn);
    expect(places.filter(({ verdict }) => verdict === 'agree').map(({ here }) => here?.pin)).toEqual(['9']);
    const seventh = places.find(({ here }) => here?.pin === '7');
    expect([seventh?.here?.signal, seventh?.there?.signal]).toEqual(['ground', 'ieee1394-power']);
  });

  it('never call +5 V and ground, or +5 V and a data line, partly the same: a port of one name is no pair', () => {
    // Universal Serial Bus 2.0, 7.2.1 and 7.3.2 (from memory): VBUS carries power, D+ and D− the data pair.
    const places = compared(
      header(['usb-vbus usb-d-minus ground usb-d-plus']),
      header(['ground usb-d-plus usb-vbus usb-vbus'], { belongsTo: 'usb2' }),
      asDrawn,
    );
    expect(places.map(({ verdict }) => verdict)).toEqual(['differ', 'partly', 'differ', 'differ']);
  });

  it('are one power LED read with its plus and minus exchanged: of one job, so partly the same', () => {
    const places = compared(
      header(['power-led-sink key power-led-feed']),
      inLibrary('power-led-1x3').connector,
      asDrawn,
    );
    expect(places.map(({ verdict }) => verdict)).toEqual(['partly', 'agree', 'partly']);
  });
});

describe('numbers and pitch', () => {
  it('may be counted otherwise while the same signals lie in the same places', () => {
    const [usb] = looksLikeOnly(header(['? usb-d-minus ? ? ?', 'usb-vbus ? ? ? key']), 'usb2-2x5');
    expect(usb).toMatchObject({ sameNumbers: false, samePitch: true, sameShape: true, score: 1 });
  });

  it('are the same on the header that the layout was read from', () => {
    const [usb] = looksLikeOnly({ ...header(['?']), ...inLibrary('usb2-2x5').connector }, 'usb2-2x5');
    expect(usb).toMatchObject({ sameNumbers: true, score: 1 });
  });

  it('tell two equal matches apart: the one of the same pitch comes first', () => {
    const here = header(['usb3-vbus ?', '? ?']);
    const fine: KnownLayout = {
      from: 'mine',
      connector: { ...here, title: 'fine', grid: { ...here.grid, pitchMm: 2 } },
    };
    const plain: KnownLayout = { from: 'mine', connector: header(['usb3-vbus ?', 'ground ?']) };
    expect(close(looksLike(here, [fine, plain]))[0]?.layout).toBe(plain);
  });
});
