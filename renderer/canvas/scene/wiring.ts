import type { Mm } from '../../../boards/base/units';
import type { WireColour } from '../../../boards/document/lead';
import type { PlugRef } from '../../../boards/document/lookup';
import type { Block } from '../../../boards/drawing/block';
import type { Point, Rect } from '../../../boards/drawing/geometry';
import type { PlugShape } from '../../../boards/drawing/plug-shape';
import { jointsOfPlug } from '../../../boards/fit/joints';
import type { SeatedPlug } from '../../../boards/fit/seated-plug';

/** A wire from its contact to its flag. */
export interface WireShape {
  readonly plug: PlugRef;
  readonly hole: string;
  /** Its place in the lead's list of wires. */
  readonly wire: number;
  readonly path: readonly Point[];
  readonly width: Mm;
  readonly colour: WireColour;
  readonly stripe?: WireColour;
}

/** The many wires of a block plug, gathered. */
export interface SleeveShape {
  readonly plug: PlugRef;
  readonly path: readonly Point[];
  readonly width: Mm;
  readonly colours: readonly WireColour[];
}

/** The little box at a lead's end of the drawing, with its print. */
export interface FlagShape {
  readonly plug: PlugRef;
  readonly text: string;
  /** The whole print, also where only a part of it is drawn. */
  readonly full: string;
  readonly box: Rect;
  /** Where wires further apart than the flag is high end, and the flag hangs on. */
  readonly bar?: Rect;
  readonly textMm: Mm;
  /** Where a severity sign stands, and how wide it may be. */
  readonly sign: Point;
  /** Printed on the plug's own body, for want of room beside it. */
  readonly onBody: boolean;
}

/** A seated plug with everything the layout of its wires needs. */
export interface WiredPlug {
  readonly shape: PlugShape;
  readonly block: Block;
  readonly ends: readonly WireEnd[];
}

export interface WireEnd {
  readonly hole: string;
  readonly wire: number;
  readonly row: number;
  readonly col: number;
  readonly centre: Point;
  readonly colour: WireColour;
  readonly stripe?: WireColour;
}

/** More wires than this leave in one sleeve. */
export const MOST_SINGLE_WIRES = 4;

export function wiredPlug(seated: SeatedPlug, shape: PlugShape, block: Block): WiredPlug {
  const ends = jointsOfPlug(seated).map(({ lead, hole, landing, wire }): WireEnd => {
    const end = {
      hole,
      wire: lead.wires.indexOf(wire),
      ...block.grid.place(landing.cell),
      colour: wire.colour,
    };
    return wire.stripe === undefined ? end : { ...end, stripe: wire.stripe };
  });
  return { shape, block, ends };
}
