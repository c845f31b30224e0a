import { centreOf, grown, overlap, rectAbout } from '../../../boards/drawing/geometry';
import { SIZES } from '../../../boards/drawing/sizes';
import { SEVERITIES, type Severity } from '../../../boards/findings/finding';
import type { Mark } from '../canvas-props';
import type { Scene } from '../scene/scene';
import { drawMark } from './draw-plug';
import { drawPinRing, drawSign } from './draw-sign';
import { wiresNeeded } from './far-labels';
import type { Pen } from './pen';

/** The worst severity of each lead, each pin and each connector's pins that some mark concerns. */
export interface WorstMarks {
  readonly ofLead: ReadonlyMap<string, Severity>;
  readonly ofConnector: ReadonlyMap<string, Severity>;
  /** By connector id and pin label, joined by a space: neither can hold one. */
  readonly ofPin: ReadonlyMap<string, Severity>;
}

export function worstMarks(marks: readonly Mark[]): WorstMarks {
  const ofLead = new Map<string, Severity>();
  const ofPin = new Map<string, Severity>();
  const ofConnector = new Map<string, Severity>();
  const mildestFirst = [...marks].sort(
    (a, b) => SEVERITIES.indexOf(b.severity) - SEVERITIES.indexOf(a.severity),
  );
  for (const { severity, leads, pins } of mildestFirst) {
    for (const lead of leads) ofLead.set(lead, severity);
    for (const { connector, pin } of pins) {
      ofPin.set(`${connector} ${pin}`, severity);
      ofConnector.set(connector, severity);
    }
  }
  return { ofLead, ofPin, ofConnector };
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
    if (severity && overlap(grown(flag.box, radius), pen.window)) drawSign(pen, severity, flag.sign, radius);
  }
}

function drawFarSigns(pen: Pen, { blocks, plugs }: Scene, { ofLead, ofConnector }: WorstMarks): void {
  const worst = new Map(ofConnector);
  for (const { connector, ref } of plugs) {
    const severity = worse(worst.get(connector), ofLead.get(ref.lead));
    if (severity) worst.set(connector, severity);
  }
  const radius = LEAST_SIGN_PX / pen.scale;
  for (const { connector, shell } of blocks) {
    const severity = worst.get(connector.id);
    const at = centreOf(shell);
    if (severity && overlap(rectAbout(at, 2 * radius, 2 * radius), pen.window))
      drawSign(pen, severity, at, radius);
  }
}

function worse(a: Severity | undefined, b: Severity | undefined): Severity | undefined {
  if (a === undefined || b === undefined) return a ?? b;
  return SEVERITIES.indexOf(a) <= SEVERITIES.indexOf(b) ? a : b;
}
