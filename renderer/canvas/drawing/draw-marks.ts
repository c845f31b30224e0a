import { SEVERITIES, type Severity } from '../../../boards/findings/finding';
import type { Mark } from '../canvas-props';
import type { Scene } from '../scene/scene';
import { SIZES } from '../scene/sizes';
import { drawMark } from './draw-plug';
import { drawPinRing, drawSign } from './draw-sign';
import type { Pen } from './pen';

/** The worst severity of each lead and each pin that some mark concerns. */
export interface WorstMarks {
  readonly ofLead: ReadonlyMap<string, Severity>;
  /** By connector id and pin label, joined by a space: neither can hold one. */
  readonly ofPin: ReadonlyMap<string, Severity>;
}

export function worstMarks(marks: readonly Mark[]): WorstMarks {
  const ofLead = new Map<string, Severity>();
  const ofPin = new Map<string, Severity>();
  const mildestFirst = [...marks].sort(
    (a, b) => SEVERITIES.indexOf(b.severity) - SEVERITIES.indexOf(a.severity),
  );
  for (const { severity, leads, pins } of mildestFirst) {
    for (const lead of leads) ofLead.set(lead, severity);
    for (const { connector, pin } of pins) ofPin.set(`${connector} ${pin}`, severity);
  }
  return { ofLead, ofPin };
}

/** Below this many pixels a ring would hide the pin. */
const LEAST_RINGED_PIN_PX = 5;
/** Signs keep this size on the screen when the flags are too small for them. */
const LEAST_SIGN_PX = 7;

/** Signs at the flags, rings at the pins. A note is told at the flag alone. */
export function drawMarks(pen: Pen, scene: Scene, marks: WorstMarks): void {
  for (const { connector, pins } of scene.blocks)
    for (const { pin, box } of pins) {
      const severity = marks.ofPin.get(`${connector.id} ${pin}`);
      if (severity && severity !== 'note' && box.width * pen.scale >= LEAST_RINGED_PIN_PX)
        drawPinRing(pen, severity, box);
    }
  // A ring may lie over the triangle beside its pin, and the triangle says which way round it sits.
  for (const plug of scene.plugs) drawMark(pen, plug);
  const radius = Math.max((SIZES.flagSign / 2) * 0.82, LEAST_SIGN_PX / pen.scale);
  for (const flag of scene.flags) {
    const severity = marks.ofLead.get(flag.plug.lead);
    if (severity) drawSign(pen, severity, flag.sign, radius);
  }
}
