import { listed } from '../../base/listed';
import type { Build } from '../../document/build';
import type { Part } from '../../document/lead';
import { connectorName, leadName } from '../../document/names';
import type { PartKind } from '../../signals/part-kind';
import { partKindOf } from '../../signals/part-kinds';
import type { Meeting, PartOnPins } from '../finding-data';
import { partOfLead, pinWithJob, plugText, unbroken } from './names';

/** A finding about some wires of a part. */
interface OfPart {
  readonly leads: readonly string[];
  readonly data: PartOnPins;
}

export function partOf({ leads: [lead = ''], data }: OfPart, build: Build): Part {
  return partOfLead(build, lead, data.part);
}

export function kindOf(finding: OfPart, build: Build): PartKind {
  return partKindOf(partOf(finding, build).kind);
}

/** "The power LED". */
export function partName(finding: OfPart, build: Build): string {
  return `The ${kindOf(finding, build).name}`;
}

/** "Reset has the first leg on pin 5 (ground) and the second leg on pin 6 (power switch) of PANEL." */
export function where(finding: OfPart, build: Build): string {
  const { meetings } = finding.data;
  const headers = [...new Set(meetings.map(({ pin }) => connectorName(build, pin.connector)))];
  const wires = meetings.map((meeting) => wireOn(finding, meeting, build));
  return `${owner(finding, build)} has ${listed(wires)} of ${listed(headers)}.`;
}

/** The plug where all the wires are in one, or the lead as a whole. */
function owner({ leads: [lead = ''], data: { meetings } }: OfPart, build: Build): string {
  const [first, ...others] = meetings;
  const one = first && others.every(({ plug }) => plug.plug === first.plug.plug);
  return one ? plugText(build, first.plug) : leadName(build, lead);
}

/** "the + wire on pin 3 (drive LED −)". */
function wireOn(finding: OfPart, { terminal, pin }: Meeting, build: Build): string {
  const name = kindOf(finding, build).terminals.find(({ id }) => id === terminal)?.name ?? '';
  const noun = /leg|side/.test(name) ? name : `${unbroken(name)} wire`;
  return `the ${noun} on ${pinWithJob(build, pin)}`;
}
