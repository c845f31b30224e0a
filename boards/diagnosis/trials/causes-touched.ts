import type { CauseId } from '../faults/causes';
import type { Fault } from '../faults/fault';

/**
 * How often a trial takes a fault away, or a look finds it: a share for each cause, or for one of its faults by
 * id, which goes before that of its cause and counts for what a build has of it by name. What is not named is not
 * touched. All of them: common practice, no source.
 */
export interface Touched {
  readonly causes?: Partial<Readonly<Record<CauseId, number>>>;
  readonly faults?: Readonly<Record<string, number>>;
}

export function shareIn({ causes = {}, faults = {} }: Touched, { id, caseOf = id, cause }: Fault): number {
  return faults[caseOf] ?? causes[cause] ?? 0;
}

/** Goes away when every plug of the front panel is off the board, where it concerns the machine at all. */
export const AT_THE_FRONT: Touched = {
  causes: {
    'switch-stuck': 1,
    'switch-broken': 1,
    'panel-lead-short': 1,
    'panel-lead-missing': 1,
    'panel-lead-miswire': 1,
    'panel-lead-mismatch': 1,
    'panel-lead-noise': 1,
    'polarity-switch-electronic': 1,
    'pinout-wrong': 1,
    'inline-device': 1,
    'usb-front-fault': 1,
    'usb-miswire': 1,
    'usb-nonstandard': 1,
    'usb-oc-pin-grounded': 1,
    'wrong-header-same-shape': 1,
    'factory-miswire': 1,
    'audio-miswire': 1,
    'led-wiring': 1,
    speaker: 1,
  },
};

/** The same of the front USB plugs alone. */
export const AT_FRONT_USB: Touched = {
  causes: {
    'usb-front-fault': 1,
    'usb-miswire': 1,
    'usb-nonstandard': 1,
    'usb-oc-pin-grounded': 1,
    'wrong-header-same-shape': 0.7,
    'factory-miswire': 1,
    'panel-ground-loop': 0.8,
    'usb-device-blocks': 0.5,
    'usb-loop': 0.5,
  },
};

/** Sits in the two buttons and their wires, and goes along when their plugs are exchanged. */
export const AT_THE_BUTTONS: Touched = {
  causes: { 'switch-stuck': 1, 'switch-broken': 1, 'panel-lead-short': 1 },
};

/** Put right on the way by whoever seats the two plugs anew with the manual at hand: one that is off is seen to be. */
export const SEATED_ANEW: Touched = { causes: { 'panel-lead-miswire': 0.8, 'panel-lead-missing': 0.95 } };

export const AT_THE_OUTLET: Touched = { causes: { 'outlet-dead': 1 } };

export const USB_OUTSIDE: Touched = {
  causes: { 'usb-device-blocks': 1, 'keyboard-port': 1, 'usb-loop': 1 },
};

export const IN_SETTINGS: Touched = {
  causes: { firmware: 0.7, 'auto-start': 1, 'fan-mode': 0.4, 'coin-cell': 0.15 },
};

export const IN_THE_CELL: Touched = { causes: { 'coin-cell': 1, firmware: 0.3 } };

export const IN_MEMORY: Touched = {
  causes: { memory: 0.9, compatibility: 0.2, transport: 0.2 },
};

export const IN_A_CARD: Touched = {
  causes: { compatibility: 0.3, transport: 0.3 },
  faults: { 'card-plug-off': 0.9 },
};

export const AT_THE_DRIVES: Touched = {
  causes: {
    'adapter-burn': 0.9,
    'cable-short': 0.4,
    'drive-socket': 0.5,
    'sata-cable': 0.3,
    'power-cable-reversed': 0.8,
    'modular-mix': 0.6,
  },
  faults: { 'metal-in-plug': 0.7 },
};

/** Of the supply or its cables: another supply with its own cables has none of it. */
export const IN_THE_SUPPLY: Touched = {
  causes: {
    'psu-fault': 1,
    'psu-latched': 1,
    'psu-min-load': 1,
    'mains-selector': 1,
    'rear-switch-off': 1,
    'modular-mix': 1,
    'power-cable-missing': 0.8,
    'power-cable-mismatch': 0.7,
    'cable-short': 1,
    'adapter-burn': 1,
  },
  faults: { 'outlet-dead': 0.2 },
};

/** Comes from the case: a board on cardboard, without the front leads, has none of it. */
export const IN_THE_CASE: Touched = {
  causes: {
    ...AT_THE_FRONT.causes,
    'short-metal': 1,
    'short-standoff': 1,
    'fan-hub': 1,
    'usb-device-blocks': 1,
    transport: 0.5,
  },
};

/** Everything that is not needed to get as far as a beep. */
export const WITH_THE_FEWEST: Touched = {
  causes: {
    ...AT_THE_FRONT.causes,
    ...AT_THE_DRIVES.causes,
    'usb-device-blocks': 1,
    'keyboard-port': 1,
    'usb-loop': 1,
    memory: 0.6,
    compatibility: 0.3,
    transport: 0.5,
  },
  faults: { 'card-plug-off': 1, 'metal-in-plug': 0.7 },
};

/** A cable that feeds, and a watched header that has its fan. */
export const ON_THE_WATCHED_HEADER: Touched = {
  causes: { 'fan-header': 0.95, 'off-by-one': 0.95, 'fan-hub': 0.5, 'fan-splitter': 0.4 },
};

export const BETWEEN_THE_LEADS: Touched = {
  causes: { 'inline-device': 1, 'polarity-switch-electronic': 1, 'led-loop-open': 1 },
};

export const TURNED_ROUND: Touched = { causes: { 'led-polarity': 0.95 } };

export const SWITCH_TURNED_ROUND: Touched = { causes: { 'polarity-switch-electronic': 0.95 } };

export const ON_THE_MAIN_RAIL: Touched = { causes: { 'usb-power-jumper': 0.95 } };

export const ON_ANOTHER_PORT: Touched = { causes: { 'sata-port-share': 0.95 } };

export const WITH_ANOTHER_DATA_CABLE: Touched = { causes: { 'sata-cable': 0.95 } };

export const WITH_ANOTHER_SYSTEM: Touched = { causes: { software: 0.9 } };

/** Another board takes along whatever is the board's own. */
export const ON_ANOTHER_BOARD: Touched = {
  causes: {
    'board-fault': 1,
    'board-damage': 1,
    firmware: 0.7,
    compatibility: 0.5,
    'coin-cell': 0.9,
    'oem-detection': 0.9,
  },
};

export const WITH_OTHER_MEMORY: Touched = { causes: { memory: 1, compatibility: 0.4 } };

/** Laid away from card, fans and supply. */
export const AUDIO_LEAD_MOVED: Touched = { causes: { 'audio-shield': 0.7, 'panel-ground-loop': 0.05 } };

export const AUDIO_KIND_SET: Touched = { causes: { 'audio-mismatch': 0.7, software: 0.2 } };

export const WITH_ANOTHER_FAN: Touched = { causes: { 'fan-fault': 1, 'fan-wiring': 0.9 } };

export const COOLER_SEATED_ANEW: Touched = { causes: { cooling: 0.9 } };

/** Another start may burn something. */
export const BURNS: ReadonlySet<CauseId> = new Set<CauseId>([
  'power-cable-reversed',
  'modular-mix',
  'adapter-burn',
  'board-damage',
  'mains-switch-miswired',
]);
