import type { Mm, Turn } from '../base/units';
import type { Connector } from '../document/connector';
import { rowPitchOf } from '../document/grid';
import type { Plug } from '../document/lead';
import type { FitRefusal } from './fit';
import { turnedSide } from './geometry';

/** Pitches this near are the same: 2.5 mm and 2.54 mm bodies are sold for the same posts. */
const SAME_PITCH_MM: Mm = 0.05;

/** Why a plug, turned so, could not enter anywhere on a connector: shape, pitch, or its rib. */
export function entryRefusals(plug: Plug, connector: Connector, turn: Turn): readonly FitRefusal[] {
  const shape = familyRefusal(plug, connector) ?? pitchRefusal(plug, connector, turn);
  if (shape) return [shape];
  const rib = ribRefusal(plug, connector, turn);
  return rib ? [rib] : [];
}

function familyRefusal(plug: Plug, connector: Connector): FitRefusal | undefined {
  if (plug.family === connector.family) return undefined;
  return { code: 'family', plug: plug.family, connector: connector.family };
}

/** Along each way in which the plug has neighbours, they have to be as far apart as the pins there. */
function pitchRefusal(plug: Plug, connector: Connector, turn: Turn): FitRefusal | undefined {
  const across = turn === 90 || turn === 270;
  const pins = connector.grid;
  const alongPins = across ? rowPitchOf(pins) : pins.pitchMm;
  const acrossPins = across ? pins.pitchMm : rowPitchOf(pins);
  const { rows, cols, pitchMm } = plug.grid;
  if (rows === 1 && cols === 1) return unlessSame(pitchMm, pins.pitchMm);
  return (
    (cols > 1 ? unlessSame(pitchMm, alongPins) : undefined) ??
    (rows > 1 ? unlessSame(rowPitchOf(plug.grid), acrossPins) : undefined)
  );
}

function unlessSame(plugMm: Mm, connectorMm: Mm): FitRefusal | undefined {
  const apart = Math.abs(plugMm - connectorMm);
  // Rounded, for 2.55 − 2.50 is a little more than 0.05 in binary.
  return Math.round(apart * 1000) / 1000 > SAME_PITCH_MM ? { code: 'pitch', plugMm, connectorMm } : undefined;
}

/** A rib has to face the slot; where a connector has none, it must not face a wall. */
function ribRefusal(plug: Plug, connector: Connector, turn: Turn): FitRefusal | undefined {
  const { shroud } = connector;
  if (plug.rib === undefined || shroud === undefined) return undefined;
  const faces = turnedSide(plug.rib, turn);
  if (shroud.guide !== undefined)
    return faces === shroud.guide
      ? undefined
      : { code: 'guide', side: shroud.guide, connector: connector.id };
  return shroud.walls.includes(faces) ? { code: 'rib', side: faces, connector: connector.id } : undefined;
}
