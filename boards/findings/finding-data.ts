import type { Amps, Mm, Volts } from '../base/units';
import type { Span } from '../circuit/corner';
import type { Level } from '../circuit/readings/level';
import type { StandbyLoad } from '../circuit/readings/standby-load';
import type { Side } from '../document/connector';
import type { PinRef, PlugRef } from '../document/lookup';
import type { FitRefusal } from '../fit/fit';
import type { Job } from '../signals/signal';
import type { SignalId } from '../signals/signals';
import type { FedHole, FedPin } from './fed-pins';

/** One wire of a lead on one pin. Ids only: names are looked up when words are made. */
export interface Meeting {
  readonly plug: PlugRef;
  readonly hole: string;
  /** What the wire ends at, where that is a part of the lead. */
  readonly terminal?: string;
  readonly pin: PinRef;
  readonly signal: SignalId;
}

/** A part of a lead and the wires of it that a finding is about. */
export interface PartOnPins {
  readonly part: string;
  readonly meetings: readonly Meeting[];
}

/** One plug on one connector. */
export interface PlugOnConnector {
  readonly plug: PlugRef;
  readonly connector: string;
}

/** A connector that takes power and gets none, or not all. */
interface Inlet {
  readonly connector: string;
  readonly plugged: boolean;
}

/** Why a pin is not to be relied on. */
export type Unsure = 'unknown' | 'guessed' | 'low-confidence' | 'sources-disagree';

/** What an AC'97 header is like where an HD audio lead meets it. */
export type Ac97Variant = 'supply-on-sense' | 'supply-on-presence' | 'passive';

/** What each kind of finding says beside severity, leads and pins. One entry a code. */
export interface FindingData {
  /** A file may hold a seat that geometry refuses. */
  readonly 'seat-impossible': PlugOnConnector & { readonly refusals: readonly FitRefusal[] };
  /** The label of the missing pin; none where the contact hangs over the edge. */
  readonly 'contact-off-pins': PlugOnConnector & {
    readonly contacts: readonly { readonly hole: string; readonly pin?: string }[];
  };
  readonly overhang: PlugOnConnector & { readonly holes: readonly string[] };
  readonly 'pin-unsure': PlugOnConnector & {
    readonly unsure: readonly { readonly pin: string; readonly why: Unsure }[];
  };

  readonly 'usb-on-1394': PlugOnConnector;
  readonly 'ieee1394-on-usb': PlugOnConnector;
  readonly 'panel-on-serial': PlugOnConnector & { readonly parts: readonly string[] };
  /** The level of the wire on the supply, or of the presence pin where there is no supply. */
  readonly 'hd-audio-on-ac97': PlugOnConnector & {
    readonly variant: Ac97Variant;
    readonly volts?: Span;
    readonly presence?: Level;
  };
  /** The level of the presence pin while the machine runs, where a wire lies on it. */
  readonly 'ac97-on-hd-audio': PlugOnConnector & { readonly presence?: Level; readonly volts?: Span };

  /** "other" is the pin's signal that the supply would reach through the part. */
  /** The most that would flow through the part, and what each of its wires would turn into heat then. */
  readonly 'supply-joined': PartOnPins & {
    readonly volts: Volts;
    readonly other: SignalId;
    readonly amps: Amps;
    readonly watts: number;
    /** Where a resettable fuse is behind the supply and would trip: the usual current for that. */
    readonly tripAmps?: Amps;
  };
  /** Through it the right way round, or across it backwards. */
  readonly 'led-across-supply': PartOnPins & {
    readonly volts: Volts;
    readonly amps: Span;
    readonly reverseVolts: Volts;
  };
  /** What would arrive at the empty socket, plus against ground. */
  readonly 'supply-reversed': PartOnPins & {
    readonly volts: Volts;
    readonly arrives: Span;
    /** Once something is plugged in. */
    readonly tripAmps?: Amps;
  };
  readonly 'supply-on-wire': PartOnPins & { readonly volts: Volts };
  readonly 'fan-supply-on-signal': PartOnPins & { readonly volts: Volts };
  readonly 'fan-unpowered': PartOnPins;
  /** What all fans on a header, or on the hub on it, take; "unread": what was taken as usual, because nobody has read it. */
  readonly 'fan-overload': {
    readonly connector: string;
    readonly hub?: string;
    readonly fedBySupply?: boolean;
    readonly startAmps: Amps;
    readonly runningAmps: Amps;
    readonly ratedAmps: Amps;
    readonly unread?: 'header' | 'hub' | 'fan';
  };
  /** The fan that is there without telling its speed, or where none is, the one that belongs there. */
  readonly 'watched-header-silent': {
    readonly connector: string;
    readonly fan?: string;
    readonly isEmpty: boolean;
  };
  readonly 'ground-on-over-current': PartOnPins;
  /** A cable with a plug at both ends joins two pins that must not meet. */
  readonly 'pins-joined': { readonly first: Meeting; readonly second: Meeting };

  /** What the input would be held at with no button pressed; certain when every board reads that as low. */
  readonly 'input-held': PartOnPins & { readonly job: Job; readonly volts: Span; readonly certain: boolean };
  readonly 'on-clear-settings': PartOnPins;
  readonly 'led-always-lit': PartOnPins & { readonly amps: Span };
  /** On its own pins, but the usual resistors of boards reach from bright to dim or dark. */
  readonly 'led-depends': PartOnPins & { readonly amps: Span; readonly least: 'dim' | 'dark' };
  /** The rating that is recommended now, and the least that older supplies had to give. */
  readonly 'standby-overload': StandbyLoad & { readonly mostAmps: Amps; readonly oldMostAmps: Amps };

  /** What arrives at each pin that gets something else than it is made for; "forced": geometry refuses the seat. */
  readonly 'supply-mismatch': PlugOnConnector & {
    readonly wrong: readonly FedPin[];
    readonly forced: boolean;
    readonly arrives?: Span;
  };
  /** The same at the holes of a plug that lies loose. */
  readonly 'loose-end-mismatch': {
    readonly plug: PlugRef;
    readonly wrong: readonly FedHole[];
    readonly arrives?: Span;
  };
  readonly 'cpu-card-exchanged': PlugOnConnector & { readonly made: Job; readonly met: Job };
  readonly 'drive-plug-turned': PlugOnConnector;
  /**
   * "plugged": a plug is there, and nothing arrives by it. "left": pins beside a plug that feeds the others.
   * "lines": what board and supply have to tell each other, and no wire leads there.
   */
  readonly 'main-power-missing': Inlet & {
    readonly left: readonly string[];
    readonly lines: readonly SignalId[];
  };
  readonly 'cpu-power-missing': Inlet;
  readonly 'card-power-missing': Inlet & { readonly fed: number; readonly sockets: number };
  readonly 'drive-power-missing': Inlet;
  readonly 'rail-left-off': { readonly connector: string; readonly signal: SignalId };
  readonly 'drive-held-off': PlugOnConnector & { readonly certain: boolean; readonly arrives: Span };
  readonly 'hub-unfed': { readonly unit: string; readonly fans: number };
  readonly 'adapter-may-burn': PlugOnConnector;
  readonly 'cable-on-one-unit': PlugOnConnector & { readonly on: string };
  readonly 'feed-ring': { readonly units: readonly string[]; readonly plug?: PlugRef };
  readonly 'outlets-unknown': { readonly unit: string; readonly connectors: readonly string[] };

  readonly 'switches-exchanged': { readonly power: PlugRef; readonly reset: PlugRef };
  readonly 'places-exchanged': { readonly first: PlugRef; readonly second: PlugRef };
  /** The right seat lies one cell towards that side of the unturned connector. */
  readonly shifted: PlugOnConnector & { readonly toward: Side };
  /** What an LED would have across it backwards; 0 for other parts. */
  readonly reversed: PartOnPins & {
    readonly effect: 'dark' | 'dead' | 'other-colour' | 'harm';
    readonly reverseVolts: Volts;
  };
  /** "acts" is the job the part would do there, where it would do one. */
  readonly 'pair-split': PartOnPins & { readonly jobs: readonly Job[]; readonly acts?: Job };
  readonly 'ports-mixed': PartOnPins & { readonly channels: readonly string[] };
  /** On pins of the right job, but not on the right ones of them. */
  readonly 'wrong-pins': PartOnPins;
  readonly 'wrong-function': PartOnPins & { readonly acts?: Job };

  /** The finding's pins are the two that the plug is too wide for. */
  readonly 'plug-too-wide': PlugOnConnector & { readonly part: string };
  /** No plug: none of the leads has such a part. */
  readonly 'required-lead-missing': { readonly plug?: PlugRef; readonly job: Job };
  readonly 'lead-left-over': PlugOnConnector;
  readonly 'place-taken': { readonly plug: PlugRef; readonly by: readonly PlugRef[] };
  readonly 'no-place': { readonly plug: PlugRef; readonly job: Job };

  /** Fixed: it cannot be taken out. */
  readonly 'standoff-short': { readonly standoff: string; readonly fixed: boolean };
  readonly 'standoff-beside-hole': { readonly standoff: string; readonly hole: string; readonly byMm: Mm };
}
