import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Pin } from '../../../boards/document/connector';
import type { PinPoint } from '../../../boards/pinout/photo/pointed';
import { fromBase64, toBase64 } from '../../../renderer/areas/document/photo/base64';
import { nextPin, nudge, pointNear, withPoint } from '../../../renderer/areas/document/photo/pointing';
import { meantPins } from '../../../renderer/areas/document/photo/print-names';
import { printCommand } from '../../../renderer/areas/document/photo/print-pin';
import {
  broughtIn,
  broughtNear,
  nearer,
  wholePicture,
} from '../../../renderer/areas/document/photo/stage-view';
import { done } from '../../boards/edit/carried-out';
import { bench, grid, posts } from '../../boards/fixtures/bench';

const PICTURE = { widthPx: 800, heightPx: 600 };
const points: readonly PinPoint[] = [
  { pin: '1', xPx: 100, yPx: 100 },
  { pin: '2', xPx: 100, yPx: 130 },
];

describe('pointing at pins', () => {
  it('asks for one pin after the other, and for none once six hold the grid', () => {
    const order = ['1', '9', '10', '2', '5', '6', '3'];
    const pointed = (...pins: readonly string[]) => pins.map((pin) => ({ pin, xPx: 0, yPx: 0 }));
    expect(nextPin(order, [], null)).toBe('1');
    expect(nextPin(order, pointed('1', '9'), null)).toBe('10');
    expect(nextPin(order, pointed('1', '9'), '5')).toBe('5');
    expect(nextPin(order, pointed('1', '9'), '9')).toBe('10');
    expect(nextPin(order, pointed('1', '9', '10', '2', '5', '6'), null)).toBeNull();
    expect(nextPin(order, pointed('1', '9', '10', '2', '5', '6'), '3')).toBe('3');
  });

  it('moves a point by a pixel, by ten, by a hundred, by a tenth, and never out of the picture', () => {
    const key = { key: 'ArrowLeft', shiftKey: false, altKey: false, ctrlKey: false };
    expect(nudge(key)).toEqual({ x: -1, y: 0 });
    expect(nudge({ ...key, shiftKey: true })).toEqual({ x: -10, y: 0 });
    expect(nudge({ ...key, ctrlKey: true })).toEqual({ x: -100, y: 0 });
    expect(nudge({ ...key, key: 'ArrowDown', altKey: true })).toEqual({ x: 0, y: 0.1 });
    expect(nudge({ ...key, key: 'a' })).toBeNull();
    expect(withPoint(points, '2', { x: -3, y: 700.126 }, PICTURE)[1]).toEqual({ pin: '2', xPx: 0, yPx: 600 });
    expect(withPoint(points, '9', { x: 1.006, y: 2 }, PICTURE)).toEqual([
      ...points,
      { pin: '9', xPx: 1.01, yPx: 2 },
    ]);
  });

  it('takes hold of the nearest point, where one is within reach', () => {
    expect(pointNear(points, { x: 103, y: 118 }, 20)).toBe('2');
    expect(pointNear(points, { x: 103, y: 118 }, 10)).toBeUndefined();
  });
});

describe('the picture in its place', () => {
  const place = { width: 900, height: 500 };
  const picture = { width: 2_000, height: 1_500 };

  it('is whole at first, and never smaller than that', () => {
    const whole = wholePicture(picture, place);
    expect(whole.scale * picture.height).toBeCloseTo(place.height - 16);
    expect(nearer(whole, 0.5, { x: 10, y: 10 }, whole)).toBe(whole);
  });

  it('keeps what is under the pointer there when it comes nearer', () => {
    const whole = wholePicture(picture, place);
    const factor = fc.double({ min: 1.01, max: 20, noNaN: true });
    const at = fc.double({ min: 0, max: 500, noNaN: true });
    fc.assert(
      fc.property(factor, at, at, (by, x, y) => {
        const view = nearer(whole, by, { x, y }, whole);
        const before = { x: (x - whole.x) / whole.scale, y: (y - whole.y) / whole.scale };
        expect(before.x * view.scale + view.x).toBeCloseTo(x, 6);
        expect(before.y * view.scale + view.y).toBeCloseTo(y, 6);
      }),
    );
  });

  it('comes near to the pins, so that all of them are seen with room round them', () => {
    const whole = wholePicture(picture, place);
    const pins = [
      { x: 900, y: 700 },
      { x: 1_100, y: 760 },
    ];
    const view = broughtNear(pins, place, whole);
    expect(view.scale).toBeGreaterThan(2 * whole.scale);
    for (const { x, y } of pins) {
      expect(Math.abs(x * view.scale + view.x - place.width / 2)).toBeLessThan(0.4 * place.width);
      expect(Math.abs(y * view.scale + view.y - place.height / 2)).toBeLessThan(0.4 * place.height);
    }
    // Pins that fill the picture are seen with the whole of it.
    const wide = [
      { x: 0, y: 0 },
      { x: 2_000, y: 1_500 },
    ];
    expect(broughtNear(wide, place, whole)).toBe(whole);
  });

  it('moves so that the point the keys are at can be seen', () => {
    const view = { scale: 4, x: 0, y: 0 };
    const { x, y } = broughtIn(view, { x: 1_000, y: 50 }, place);
    expect(1_000 * 4 + x).toBeLessThan(place.width);
    expect(y).toBe(0);
  });
});

it('bytes are the same in base64 and back', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
      expect(toBase64(bytes)).toBe(Buffer.from(bytes).toString('base64'));
      expect(fromBase64(toBase64(bytes))).toEqual(Uint8Array.from(bytes));
    }),
  );
  const long = Uint8Array.from({ length: 100_000 }, (_, at) => at % 251);
  expect(fromBase64(toBase64(long))).toEqual(long);
});

describe('the print on the photo as a source', () => {
  const header = posts('panel', grid(2, 5, { numbering: { scheme: 'zig-zag', from: 'top-left' } }));
  const read = (pins: readonly Pin[], label: string, what: Parameters<typeof printCommand>[2]) => {
    const connector = { ...header, pins: [...pins] };
    const build = done(bench([connector], []), printCommand(connector, label, what, 'near'));
    return build.board.connectors[0]?.pins.find(({ pin }) => pin === label);
  };
  const source = { kind: 'print', where: 'photo near' } as const;

  it('is said of the pin, and read twice it is still one statement', () => {
    const named = { pin: '1', name: 'HDD+', source };
    expect(read([], '1', { name: 'HDD+' })).toEqual(named);
    expect(read([named], '1', { signal: 'drive-led-feed' })).toEqual({ ...named, signal: 'drive-led-feed' });
    expect(read([named], '1', { name: 'HDD-' })).toEqual({ ...named, name: 'HDD-' });
    expect(read([named], '1', { missing: true })).toEqual({ ...named, missing: true });
  });

  it('stands beside what the manual says of the same pin', () => {
    const manual: Pin = { pin: '1', signal: 'ground', source: { kind: 'manual', where: 'page 3' } };
    expect(read([manual], '1', { signal: 'drive-led-feed' })).toMatchObject({
      signal: 'drive-led-feed',
      source,
      alternatives: [{ signal: 'ground', source: { kind: 'manual', where: 'page 3' } }],
    });
  });

  it('says that a pin stands where the manual has none, keeps that beside it, and can be taken back', () => {
    const manual = { kind: 'manual', where: 'page 3' } as const;
    const older = { signal: 'ground', source: { kind: 'guessed' } } as const;
    const gap: Pin = {
      pin: '10',
      missing: true,
      source: manual,
      confidence: 0.9,
      alternatives: [older],
      notes: 'bent',
    };
    const beside = { signal: 'no-connection', missing: true, source: manual, confidence: 0.9 } as const;
    const stands: Pin = { pin: '10', source, alternatives: [older, beside], notes: 'bent' };
    expect(read([gap], '10', { missing: false })).toEqual(stands);
    expect(read([stands], '10', { missing: true })).toEqual({ ...stands, missing: true });
    // With a signal the print says something of its own, and the older statement goes beside it all the same.
    expect(read([gap], '10', { missing: false, signal: 'ground' })?.alternatives).toEqual([older, beside]);
  });

  it('keeps notes and measured values of the pin', () => {
    const noted: Pin = { pin: '1', notes: 'bent', values: [{ parameter: 'led-feed-ohms', value: 330 }] };
    expect(read([noted], '1', { signal: 'drive-led-feed' })).toEqual({
      ...noted,
      signal: 'drive-led-feed',
      source,
    });
  });

  it('names mean signals together, and only those read on this photo are taken', () => {
    const names = { '1': 'HDD+', '3': 'HDD-', '5': 'RST-', '7': 'RST+' };
    const pins = Object.entries(names).map(([pin, name]): Pin => ({ pin, name, source }));
    const elsewhere: Pin = { pin: '2', name: 'PLED+', source: { kind: 'manual' } };
    const meant = meantPins({ ...header, pins: [...pins, elsewhere] }, 'near');
    expect(meant.map(({ pin, signal, name }) => [pin, signal, name])).toEqual([
      ['1', 'drive-led-feed', 'HDD+'],
      ['3', 'drive-led-sink', 'HDD-'],
      ['5', 'ground', 'RST-'],
      ['7', 'reset-switch-input', 'RST+'],
    ]);
    expect(meantPins(header, 'near')).toEqual([]);
  });
});
