import { describe, expect, it } from 'vitest';
import { CONNECTOR_TYPES } from '../../../boards/library/connectors/index';
import { LEAD_TYPES } from '../../../boards/library/leads/index';
import type { PartKind } from '../../../boards/signals/part-kind';
import { PART_KINDS } from '../../../boards/signals/part-kinds';
import type { Signal } from '../../../boards/signals/signal';
import { JOBS } from '../../../boards/signals/signal';
import { SIGNALS, signalOf } from '../../../boards/signals/signals';

const signals: readonly Signal[] = SIGNALS;
const kinds: readonly PartKind[] = PART_KINDS;

/** Met on boards whose order is their maker's own, which the library has none of. */
const ON_NO_STANDARD_HEADER = ['unknown', 'shield', 'message-led-feed', 'message-led-sink', 'sensor-input'];

describe('the table of signals', () => {
  it('has each id once, a name and a source for every one', () => {
    expect(new Set(signals.map(({ id }) => id)).size).toBe(signals.length);
    expect(signals.filter(({ name, source }) => name === '' || source === '')).toEqual([]);
  });

  it('gives volts to rails and feeds, and to nothing else', () => {
    const rails = signals.filter(({ nature }) => nature === 'supply' || nature === 'feed');
    expect(signals.filter(({ volts }) => volts !== undefined)).toEqual(rails);
  });

  // Nominal levels: microATX specification v1.2, Table 7; USB 2.0 7.2.2; fans specification rev 1.3, 2.1.1.
  it.each([
    ['supply-3v3', 3.3],
    ['supply-5v', 5],
    ['supply-5v-standby', 5],
    ['supply-12v', 12],
    ['supply-minus-12v', -12],
    ['usb-vbus', 5],
    ['usb3-vbus', 5],
    ['fan-supply', 12],
    ['ieee1394-power', 12],
  ] as const)('%s is %d V', (id, volts) => {
    expect(signalOf(id)).toMatchObject({ nature: 'supply', volts });
  });

  it('has no signal that neither a header of the library nor a known exception carries', () => {
    const carried = new Set<string>(
      CONNECTOR_TYPES.flatMap(({ connector }) =>
        connector.pins.flatMap(({ signal, alternatives = [] }) => [
          ...(signal ? [signal] : []),
          ...alternatives.map((other) => other.signal),
        ]),
      ),
    );
    expect(signals.filter(({ id }) => !carried.has(id)).map(({ id }) => id)).toEqual(ON_NO_STANDARD_HEADER);
  });
});

describe('the table of parts', () => {
  it('has each id once, and each terminal once in its part', () => {
    expect(new Set(kinds.map(({ id }) => id)).size).toBe(kinds.length);
    for (const { terminals } of kinds)
      expect(new Set(terminals.map(({ id }) => id)).size).toBe(terminals.length);
  });

  it('wants first, at every terminal that is not a ground, a signal of the part’s own job', () => {
    const foreign = kinds.flatMap(({ id, job, terminals }) =>
      terminals
        .filter(({ wants }) => {
          const [first] = wants;
          return first !== undefined && signalOf(first).nature !== 'ground' && signalOf(first).job !== job;
        })
        .map((terminal) => `${id}.${terminal.id}`),
    );
    expect(foreign).toEqual([]);
  });

  it('lets only terminals that it has change places, and only where turning does nothing', () => {
    for (const { terminals, exchangeable = [], reversed } of kinds) {
      expect(terminals.map(({ id }) => id)).toEqual(expect.arrayContaining([...exchangeable]));
      expect(exchangeable.length > 0).toBe(reversed === 'nothing');
    }
  });

  it('has every part in at least one lead of the library, and every job in one part or one header', () => {
    const used = new Set<string>(LEAD_TYPES.flatMap(({ lead }) => lead.parts.map(({ kind }) => kind)));
    expect(kinds.filter(({ id }) => !used.has(id)).map(({ id }) => id)).toEqual([]);
    const done = new Set([
      ...kinds.map(({ job }) => job),
      ...CONNECTOR_TYPES.flatMap(({ connector }) => connector.pins.map(({ belongsTo }) => belongsTo)),
    ]);
    expect(JOBS.filter((job) => !done.has(job))).toEqual([]);
  });

  // Front Panel I/O Connectivity Design Guide v1.3 (2005): switches 2.2.2.3 and 2.2.2.4, LEDs 2.2.2.1 and 2.2.2.2.
  it.each([
    ['power-switch', 'nothing'],
    ['reset-switch', 'nothing'],
    ['power-led', 'dark'],
    ['drive-led', 'dark'],
    ['two-colour-power-led', 'other-colour'],
    ['speaker', 'nothing'],
    ['buzzer', 'dead'],
    ['usb2-port', 'harm'],
  ])('a %s turned round: %s', (id, reversed) => {
    expect(kinds.find((kind) => kind.id === id)?.reversed).toBe(reversed);
  });
});
