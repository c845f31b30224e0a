import type { Amps } from '../../base/units';
import type { Span } from '../corner';

/** How an indicator LED looks from a metre away. */
export type Glow = 'dark' | 'dim' | 'lit';

/** Below this nothing is seen in a lit room, and from this on it is plainly lit: common practice, no source. */
const DIM_AMPS: Amps = 50e-6;
const LIT_AMPS: Amps = 1e-3;

/** The usual and largest steady currents of indicator LEDs (component data, read in secondary): 10 to 20, 30 mA at most. */
export const LED_MOST_AMPS: Amps = 0.03;

export function glowAt(amps: Amps): Glow {
  if (amps >= LIT_AMPS) return 'lit';
  return amps >= DIM_AMPS ? 'dim' : 'dark';
}

/** The usual look, and the darkest and brightest over the ranges. */
export interface GlowSpan {
  readonly usual: Glow;
  readonly least: Glow;
  readonly most: Glow;
  readonly amps: Span;
}

export function glowSpan(amps: Span): GlowSpan {
  return { usual: glowAt(amps.usual), least: glowAt(amps.low), most: glowAt(amps.high), amps };
}
