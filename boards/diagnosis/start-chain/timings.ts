/** A stretch of time in milliseconds: at least, at most. */
export interface SpanMs {
  readonly leastMs: number;
  readonly mostMs: number;
}

export interface Timing extends SpanMs {
  readonly source: string;
  readonly confidence: 'read' | 'from memory' | 'common practice';
}

const SUPPLY = 'ATX 3.0 multi-rail power supply design guide (336521), Table 4-9';
const NONE = 'common practice, no source';

function timing(
  leastMs: number,
  mostMs: number,
  source: string,
  confidence: Timing['confidence'] = 'read',
): Timing {
  return { leastMs, mostMs, source, confidence };
}

/** How long each step of a start takes. The wider bounds of older supplies are kept, for they are still about. */
export const TIMINGS = {
  /** T0: mains to +5 V standby. */
  standby: timing(0, 2000, SUPPLY),
  /** How long the power input has to be low before the board believes it. */
  debounce: timing(16, 16, 'chipset datasheets, power button input'),
  /** How long a finger holds the button at least, by the design of the switch. */
  press: timing(50, 50, 'Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2.4'),
  /** T1: PS_ON# low to rails; below 500 in older guides, below 200 since 2020. */
  rails: timing(0, 500, SUPPLY),
  /** T2: how long a rail takes to rise. */
  rise: timing(0.2, 20, SUPPLY),
  /** T3: rails to PWR_OK; 100 to 500 in older guides, 100 to 250 since 2020. */
  powerGood: timing(100, 500, SUPPLY),
  /** PWR_OK to the release of reset, while the regulators of the board come up. */
  resetRelease: timing(1, 1000, NONE, 'common practice'),
  /** Release of reset to a picture, or to the first beep. */
  checks: timing(1000, 60_000, NONE, 'common practice'),
  /** Power held so long is an unconditional off: 4 s, which newer chipsets let be set up to 14 s. */
  override: timing(4000, 14_000, 'ACPI 6.0, 4.8.2.2.1; chipset datasheets for the upper end'),
  /** How soon a board gives up that sees no speed of the processor's fan. */
  fanWatch: timing(1000, 15_000, NONE, 'common practice'),
  /** How soon a processor protects itself that nothing cools. */
  uncooled: timing(2000, 60_000, NONE, 'common practice'),
  /** The same with a cooler that is there and touches badly. */
  badlyCooled: timing(60_000, 1_800_000, NONE, 'common practice'),
} as const satisfies Readonly<Record<string, Timing>>;

/** One stretch after the other. */
export function after(first: SpanMs, ...then: readonly SpanMs[]): SpanMs {
  return {
    leastMs: then.reduce((sum, { leastMs }) => sum + leastMs, first.leastMs),
    mostMs: then.reduce((sum, { mostMs }) => sum + mostMs, first.mostMs),
  };
}
