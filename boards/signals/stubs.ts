import type { ParameterId } from './parameters';
import type { SignalId } from './signals';
import type { RailId, Stub, StubElement } from './stub';

const rail = (id: RailId, ohms: ParameterId = 'rail-ohms'): StubElement => ({ kind: 'rail', rail: id, ohms });
const ground = (ohms: ParameterId = 'ground-ohms'): StubElement => ({ kind: 'ground', ohms });
const fused = (id: RailId): StubElement => ({
  kind: 'fused-rail',
  rail: id,
  coldOhms: 'usb-fuse-ohms',
  tripAmps: 'usb-fuse-trip-amps',
  trippedOhms: 'usb-fuse-tripped-ohms',
});

const NOTHING: Stub = [];
const GROUND: Stub = [ground()];
const USB_LINE: Stub = [ground('usb-pull-down-ohms')];
const FAST_LINE: Stub = [ground('usb-line-ohms')];
const LINE_1394: Stub = [ground('ieee1394-line-ohms')];
const SERIAL_OUT: Stub = [rail('serial', 'serial-out-ohms')];
const SERIAL_IN: Stub = [ground('serial-in-ohms')];
/** A jack of the board itself on the line of the front panel: its switch closes when a plug is in. */
const ownJack = (ohms: ParameterId): StubElement => ({ kind: 'pulls-low', when: 'sockets-used', ohms });
const AUDIO_LINE: Stub = [ground('audio-line-ohms')];
const SATA_LINE: Stub = [ground('usb-line-ohms')];

/** What the board holds behind each pin, as far as direct current sees it. One row a signal. */
export const STUBS: Readonly<Record<SignalId, Stub>> = {
  unknown: NOTHING,
  'no-connection': NOTHING,
  reserved: NOTHING,
  ground: GROUND,
  shield: GROUND,
  'supply-3v3': [rail('main-3v3')],
  'supply-5v': [rail('main-5v')],
  'supply-5v-standby': [rail('standby-5v')],
  'supply-12v': [rail('main-12v')],
  'supply-minus-12v': [rail('main-minus-12v')],
  'supply-minus-5v': [rail('main-minus-5v')],
  'power-switch-input': [rail('logic', 'switch-pull-ohms')],
  'reset-switch-input': [rail('logic', 'switch-pull-ohms')],
  'drive-led-feed': [rail('main-5v', 'led-feed-ohms')],
  'drive-led-sink': [{ kind: 'pulls-low', when: 'drive-busy', ohms: 'led-sink-ohms' }],
  // Asleep the board turns the pair round, and a two-colour LED shows its other colour:
  // Front Panel I/O Connectivity Design Guide v1.3 (2005), Table 3; the reversal read in secondary.
  'power-led-feed': [
    rail('main-5v', 'led-feed-ohms'),
    { kind: 'pulls-low', when: 'asleep', ohms: 'led-sink-ohms' },
  ],
  'power-led-sink': [
    { kind: 'pulls-low', when: 'running', ohms: 'led-sink-ohms' },
    { kind: 'rail', rail: 'standby-5v', ohms: 'led-feed-ohms', when: 'asleep' },
  ],
  'message-led-feed': [rail('main-5v', 'led-feed-ohms')],
  'message-led-sink': [{ kind: 'pulls-low', when: 'never-at-rest', ohms: 'led-sink-ohms' }],
  'speaker-feed': [rail('main-5v', 'speaker-feed-ohms')],
  'speaker-drive': [{ kind: 'pulls-low', when: 'speaker-sounds', ohms: 'speaker-drive-ohms' }],
  'case-open-input': [rail('cell', 'cell-pull-ohms')],
  'key-lock-input': [rail('logic', 'switch-pull-ohms')],
  'sensor-input': [rail('main-3v3', 'switch-pull-ohms')],
  'clear-settings': [rail('cell', 'cell-pull-ohms')],
  'usb-vbus': [fused('standby-5v')],
  'usb-d-minus': USB_LINE,
  'usb-d-plus': USB_LINE,
  'usb-over-current': [rail('logic', 'over-current-pull-ohms')],
  'usb3-vbus': [fused('standby-5v')],
  'usb3-ssrx-minus': FAST_LINE,
  'usb3-ssrx-plus': FAST_LINE,
  'usb3-sstx-minus': FAST_LINE,
  'usb3-sstx-plus': FAST_LINE,
  'usb3-d-minus': USB_LINE,
  'usb3-d-plus': USB_LINE,
  'usbc-vbus': [fused('standby-5v')],
  'usbc-tx1-plus': FAST_LINE,
  'usbc-tx1-minus': FAST_LINE,
  'usbc-rx1-plus': FAST_LINE,
  'usbc-rx1-minus': FAST_LINE,
  'usbc-tx2-plus': FAST_LINE,
  'usbc-tx2-minus': FAST_LINE,
  'usbc-rx2-plus': FAST_LINE,
  'usbc-rx2-minus': FAST_LINE,
  'usbc-cc1': [rail('standby-5v', 'switch-pull-ohms')],
  'usbc-cc2': [rail('standby-5v', 'switch-pull-ohms')],
  'usbc-sbu1': NOTHING,
  'usbc-sbu2': NOTHING,
  'usbc-d-minus': USB_LINE,
  'usbc-d-plus': USB_LINE,
  'ieee1394-tpa-plus': LINE_1394,
  'ieee1394-tpa-minus': LINE_1394,
  'ieee1394-tpb-plus': LINE_1394,
  'ieee1394-tpb-minus': LINE_1394,
  'ieee1394-power': [fused('main-12v')],
  'serial-dcd': SERIAL_IN,
  'serial-dsr': SERIAL_IN,
  'serial-rxd': SERIAL_IN,
  'serial-rts': SERIAL_OUT,
  'serial-txd': SERIAL_OUT,
  'serial-cts': SERIAL_IN,
  'serial-dtr': SERIAL_OUT,
  'serial-ri': SERIAL_IN,
  'hd-mic-left': AUDIO_LINE,
  'hd-mic-right': AUDIO_LINE,
  'hd-phones-left': AUDIO_LINE,
  'hd-phones-right': AUDIO_LINE,
  'hd-presence': [rail('main-3v3', 'presence-pull-ohms')],
  'hd-sense-send': [rail('audio', 'sense-pull-ohms'), ownJack('sense3-ohms'), ownJack('sense4-ohms')],
  'hd-sense1-return': [ground('sense1-ohms')],
  'hd-sense2-return': [ground('sense2-ohms')],
  'ac97-mic': AUDIO_LINE,
  'ac97-mic-bias': [rail('audio', 'mic-bias-ohms')],
  'ac97-out-right': AUDIO_LINE,
  'ac97-return-right': AUDIO_LINE,
  'ac97-out-left': AUDIO_LINE,
  'ac97-return-left': AUDIO_LINE,
  'ac97-supply': [rail('main-5v')],
  'ac97-phones-on': NOTHING,
  'fan-supply': [rail('main-12v')],
  'fan-tach': [rail('main-12v', 'tach-pull-ohms')],
  'fan-pwm': [{ kind: 'pulls-low', when: 'never-at-rest', ohms: 'pwm-ohms' }],
  'ps-on': [rail('standby-5v', 'ps-on-pull-ohms')],
  'power-ok': NOTHING,
  'card-sense': [rail('main-3v3', 'switch-pull-ohms')],
  'card-sense0': [rail('main-3v3', 'switch-pull-ohms')],
  'card-sense1': [rail('main-3v3', 'switch-pull-ohms')],
  'drive-spin-up': [rail('main-3v3', 'switch-pull-ohms')],
  'drive-power-disable': [rail('main-3v3')],
  'sata-a-plus': SATA_LINE,
  'sata-a-minus': SATA_LINE,
  'sata-b-plus': SATA_LINE,
  'sata-b-minus': SATA_LINE,
};
