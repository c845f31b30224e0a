import type { CauseId } from '../faults/causes';

type Causes = ReadonlySet<CauseId>;

/** Goes away when every plug of the front panel is off the board. */
export const AT_THE_FRONT: Causes = new Set<CauseId>([
  'switch-stuck',
  'switch-broken',
  'panel-lead-short',
  'panel-lead-missing',
  'panel-lead-miswire',
  'panel-lead-mismatch',
  'panel-lead-noise',
  'polarity-switch-electronic',
  'inline-device',
  'usb-front-fault',
  'usb-miswire',
  'usb-nonstandard',
  'usb-oc-pin-grounded',
  'wrong-header-same-shape',
  'factory-miswire',
]);

/** Sits in the two buttons and their wires, and goes along when their plugs are exchanged. */
export const AT_THE_BUTTONS: Causes = new Set<CauseId>(['switch-stuck', 'switch-broken', 'panel-lead-short']);

/** Put right on the way by whoever seats the two plugs anew with the manual at hand. */
export const SEATED_ANEW: Causes = new Set<CauseId>(['panel-lead-miswire', 'panel-lead-missing']);

export const AT_THE_OUTLET: Causes = new Set<CauseId>(['outlet-dead']);

export const LATCHED: Causes = new Set<CauseId>(['psu-latched']);

export const USB_OUTSIDE: Causes = new Set<CauseId>(['usb-device-blocks', 'keyboard-port', 'usb-loop']);

export const IN_SETTINGS: Causes = new Set<CauseId>(['firmware', 'auto-start', 'fan-mode']);

export const IN_THE_CELL: Causes = new Set<CauseId>(['coin-cell']);

export const IN_MEMORY: Causes = new Set<CauseId>(['memory']);

/** Of the supply or its cables: another supply with its own cables has none of it. */
export const IN_THE_SUPPLY: Causes = new Set<CauseId>([
  'psu-fault',
  'psu-latched',
  'psu-min-load',
  'mains-selector',
  'rear-switch-off',
  'modular-mix',
  'power-cable-missing',
  'power-cable-mismatch',
  'cable-short',
  'adapter-burn',
]);

/** Comes from the case: a board on cardboard, without the front leads, has none of it. */
export const IN_THE_CASE: Causes = new Set<CauseId>([...AT_THE_FRONT, 'short-metal', 'short-standoff']);

export const SEEN_AT_SUPPLY_PLUGS: Causes = new Set<CauseId>([
  'power-cable-missing',
  'power-cable-mismatch',
  'power-cable-reversed',
  'modular-mix',
  'header-blocked',
]);

export const SEEN_AT_THE_REAR: Causes = new Set<CauseId>(['rear-switch-off', 'mains-selector']);

export const SEEN_AT_FRONT_PLUGS: Causes = new Set<CauseId>([
  'panel-lead-missing',
  'panel-lead-miswire',
  'panel-lead-mismatch',
  'led-polarity',
  'usb-miswire',
  'wrong-header-same-shape',
  'audio-miswire',
  'off-by-one',
  'fan-header',
]);

export const SEEN_UNDER_THE_BOARD: Causes = new Set<CauseId>(['short-metal', 'short-standoff']);

export const SEEN_AT_CAPS: Causes = new Set<CauseId>(['jumper-wrong', 'jumper-missing', 'usb-power-jumper']);

/** Another start may burn something. */
export const BURNS: Causes = new Set<CauseId>([
  'power-cable-reversed',
  'modular-mix',
  'adapter-burn',
  'board-damage',
  'mains-switch-miswired',
]);
