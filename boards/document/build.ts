import { z } from 'zod';
import { BoardSheetZ } from './board-sheet';
import { CaseSheetZ } from './case-sheet';
import { FITTED, FittedZ } from './fitted';
import { LeadZ } from './lead';
import { LIMITS } from './limits';
import { PriorZ } from './prior';
import { ChoiceZ } from './rating';
import { RouteZ } from './route';
import { IdZ, NameZ, NotesZ, SchemaAddressZ, StepIdZ } from './text';
import { TroubleZ } from './trouble';
import { UnitZ } from './unit';

const TurnZ = z.union([z.literal(0), z.literal(90), z.literal(180), z.literal(270)]);
const CellZ = z.tuple([
  z
    .int()
    .min(-LIMITS.gridSide)
    .max(2 * LIMITS.gridSide),
  z
    .int()
    .min(-LIMITS.gridSide)
    .max(2 * LIMITS.gridSide),
]);

/** How the board lies in front of the person. */
export const ViewZ = z.strictObject({ turn: TurnZ, mirrored: z.boolean() });

/** One plug on one connector. */
export const SeatZ = z.strictObject({
  lead: IdZ,
  plug: IdZ,
  connector: IdZ,
  /** The connector's cell under the plug's first cell; outside the grid when it hangs over. */
  at: CellZ,
  /** How far the plug is turned against the connector, clockwise from above. */
  turn: TurnZ,
});

/** One machine on the bench. It carries its own copies of the sheets, so that it stands alone. */
export const BuildZ = z.strictObject({
  $schema: SchemaAddressZ.optional(),
  format: z.literal('leadwright/build'),
  version: z.literal(1),
  id: IdZ,
  name: NameZ,
  board: BoardSheetZ,
  case: CaseSheetZ,
  /** Leads that came with neither: fans, a loose speaker, an adapter. */
  extras: z.array(LeadZ).max(LIMITS.leads),
  /** The supply unit, drives, cards and hubs, as far as something is plugged into them. */
  units: z.array(UnitZ).max(LIMITS.units).optional(),
  seats: z.array(SeatZ).max(LIMITS.seats),
  /** Ways through the tray that were chosen for runs of cables. */
  routes: z.array(RouteZ).max(LIMITS.routes).optional(),
  /** Where drives and fans go because a person said so. One that the machine no longer has does no harm. */
  choices: z.array(ChoiceZ).max(LIMITS.choices).optional(),
  view: ViewZ,
  /** What else is built in; what is usual where nothing is said. */
  fitted: z.array(FittedZ).max(FITTED.length).optional(),
  /** Steps of the work at the bench that are ticked off. One that the machine no longer has does no harm. */
  done: z.array(StepIdZ).max(LIMITS.stepsDone).optional(),
  /** What was noticed and tried while it did not start. */
  trouble: TroubleZ.optional(),
  /** Which causes of trouble are met more or less often than is usual. Of two entries for one cause the last counts. */
  priors: z.array(PriorZ).max(LIMITS.priors).optional(),
  notes: NotesZ.optional(),
});

export type Seat = z.infer<typeof SeatZ>;
export type Build = z.infer<typeof BuildZ>;
