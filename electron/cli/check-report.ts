import { z } from 'zod';
import { SEVERITIES } from '../../boards/findings/finding';

/**
 * What `leadwright check --json` prints. Stable: within version 1 fields may be added, and none is
 * removed, renamed or given another meaning.
 */
const SeverityZ = z.enum(SEVERITIES);
const KindZ = z.enum(['build', 'board', 'case']);

const PinRefZ = z.strictObject({ connector: z.string(), pin: z.string() });

/** One pin that takes power; no volts where the wire hangs in the air. */
const ArrivalZ = z.strictObject({
  connector: z.string(),
  pin: z.string(),
  /** What the pin is made for, as a board sheet calls it. */
  madeFor: z.string(),
  /** The pins that its wires come from. */
  from: z.array(PinRefZ),
  voltsUsual: z.number().optional(),
  voltsLow: z.number().optional(),
  voltsHigh: z.number().optional(),
});

const FindingZ = z.strictObject({
  /** Which rule; a word that does not change. */
  code: z.string(),
  severity: SeverityZ,
  /** What is wrong, and what it would do, in words. The words may change. */
  title: z.string(),
  reason: z.string(),
  /** The published document the rule rests on, or that there is none. */
  source: z.string(),
  /** What can be done about it, the best first. */
  remedies: z.array(z.string()),
  leads: z.array(z.string()),
  pins: z.array(PinRefZ),
  /** Ids of places of the case's tray. Absent where the finding is about none. */
  places: z.array(z.string()).optional(),
  /**
   * What the finding rests on, each number named with its unit: "amps", "watts". Of a value that
   * depends on the board: "ampsUsual", "ampsLow", "ampsHigh". Absent where there are none.
   */
  numbers: z.record(z.string(), z.number()).optional(),
  /** What would arrive at each pin that gets something else than it is made for. Absent where it is not about that. */
  arrivals: z.array(ArrivalZ).optional(),
});

/** A build whose wiring was checked. */
const CheckedZ = z.strictObject({
  file: z.string(),
  outcome: z.literal('checked'),
  kind: z.literal('build'),
  name: z.string(),
  findings: z.array(FindingZ),
});

/** A board or case sheet: well formed, and nothing in it is wired. */
const WellFormedZ = z.strictObject({
  file: z.string(),
  outcome: z.literal('well-formed'),
  kind: KindZ.exclude(['build']),
  name: z.string(),
});

export const RefusedZ = z.strictObject({
  file: z.string(),
  outcome: z.literal('refused'),
  /** Why, as a word that does not change: "not-found", "not-json", "invalid" ... */
  code: z.string(),
  title: z.string(),
  lines: z.array(z.string()),
  advice: z.string(),
  /** The places in the file that are not as they should be; empty where it is not about places. */
  fields: z.array(z.strictObject({ path: z.string(), expected: z.string(), found: z.string() })),
});

const FileReportZ = z.discriminatedUnion('outcome', [CheckedZ, WellFormedZ, RefusedZ]);

export const CheckReportZ = z.strictObject({
  format: z.literal('leadwright/check-report'),
  version: z.literal(1),
  /** In the order in which they were named. */
  files: z.array(FileReportZ),
});

export type CheckReport = z.infer<typeof CheckReportZ>;
export type ArrivalReport = z.infer<typeof ArrivalZ>;
export type FileReport = z.infer<typeof FileReportZ>;
export type Refused = z.infer<typeof RefusedZ>;
