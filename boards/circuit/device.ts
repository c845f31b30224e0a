import type { Amps, Ohms, Volts } from '../base/units';

/** A node of a circuit by name. `GROUND` is the one that every voltage is measured against. */
export type NodeName = string;

export const GROUND: NodeName = '0';

/** A junction by Shockley's equation with a series resistance and a reverse limit. */
export interface DiodeModel {
  readonly saturationAmps: Amps;
  /** The factor n of n·kT/q. */
  readonly ideality: number;
  /** 0 where there is none. */
  readonly seriesOhms: Ohms;
  /** Where it begins to conduct backwards; undefined: never. */
  readonly reverseLimitVolts?: Volts;
}

interface Two {
  readonly id: string;
  readonly a: NodeName;
  readonly b: NodeName;
}

/** What the solver knows. Currents count from a to b through the device. */
export type Device =
  | (Two & { readonly kind: 'resistor'; readonly ohms: Ohms })
  /** a is the plus side. With 0 Ω it is ideal and may clash with another. */
  | (Two & { readonly kind: 'voltage'; readonly volts: Volts; readonly ohms: Ohms })
  | (Two & { readonly kind: 'current'; readonly amps: Amps })
  /** a is the anode. */
  | (Two & { readonly kind: 'diode'; readonly model: DiodeModel })
  | (Two & { readonly kind: 'switch'; readonly closed: boolean })
  /** An output that can only pull down: a resistance to b when on, nothing when off. */
  | (Two & { readonly kind: 'open-drain'; readonly on: boolean; readonly onOhms: Ohms })
  /** A resettable fuse: a small resistance until the trip current is passed, then a large one. */
  | (Two & {
      readonly kind: 'fuse';
      readonly coldOhms: Ohms;
      readonly trippedOhms: Ohms;
      readonly tripAmps: Amps;
    });

export type Netlist = readonly Device[];
