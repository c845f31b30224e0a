import { centreOf, overlap } from '../../../boards/drawing/geometry';
import { SIZES } from '../../../boards/drawing/sizes';
import { SEVERITIES, type Severity } from '../../../boards/findings/finding';
import type { Mark } from '../canvas-props';
import type { Scene } from '../scene/scene';
import { drawMark } from './draw-plug';
import { drawPinRing, drawSign } from './draw-sign';
import { wiresNeeded } from './far-labels';
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
const LEAST_RINGED_PIN_PX = 7;
/** Signs keep this size on the screen when the flags are too small for them. */
const LEAST_SIGN_PX = 7;

/** Signs at the flags and rings at the pins; from afar one sign on each connector, the worst of it. */
export function drawMarks(pen: Pen, scene: Scene, marks: WorstMarks): void {
  if (wiresNeeded(pen.scale)) {
    drawRings(pen, scene, marks);
    drawSigns(pen, scene, marks);
  } else drawFarSigns(pen, scene, marks);
}

/** A note is told at the flag alone. */
function drawRings(pen: Pen, { blocks, plugs }: Scene, { ofPin }: WorstMarks): void {
  for (const { connector, pins, bounds } of blocks) {
    if (!overlap(bounds, pen.window)) continue;
    for (const { pin, box } of pins) {
      const severity = ofPin.get(`${connector.id} ${pin}`);
      if (severity && severity !== 'note' && box.width * pen.scale >= LEAST_RINGED_PIN_PX)
        drawPinRing(pen, severity, box);
    }
  }
  // A ring may lie over the triangle beside its pin, and the triangle says which way round it sits.
  for (const plug of plugs) if (overlap(plug.body, pen.window)) drawMark(pen, plug);
}

function drawSigns(pen: Pen, { flags }: Scene, { ofLead }: WorstMarks): void {
  const radius = Math.max((SIZES.flagSign / 2) * 0.82, LEAST_SIGN_PX / pen.scale);
  for (const flag of flags) {
    const severity = ofLead.get(flag.plug.lead);
    if (severity) drawSign(pen, severity, flag.sign, radius);
  }
}

function drawFarSigns(pen: Pen, { blocks, plugs }: Scene, { ofLead, ofPin }: WorstMarks): void {
  for (const { connector, shell, pins } of blocks) {
    const severities = [
      ...plugs.filter((plug) => plug.connector === connector.id).map(({ ref }) => ofLead.get(ref.lead)),
      ...pins.map(({ pin }) => ofPin.get(`${connector.id} ${pin}`)),
    ];
    const worst = SEVERITIES.find((severity) => severities.includes(severity));
    if (worst) drawSign(pen, worst, centreOf(shell), LEAST_SIGN_PX / pen.scale);
  }
}
