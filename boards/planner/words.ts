import { capital } from '../base/capital';
import { listed } from '../base/listed';
import type { Build, Seat } from '../document/build';
import { leadOf, leadsOf } from '../document/lookup';
import { seenTurn } from '../document/seen-turn';
import { pinsUnderSeat } from '../findings/about';
import { partOfLead, pinsOf, plugText } from '../findings/words/names';
import { moveContactText, splitText } from '../findings/words/remedies';
import { partKindOf } from '../signals/part-kinds';
import type { Difference } from './differences';
import { groupsOf } from './group';
import type { Plan } from './plan';
import type { PartRef, Unserved, WayOut } from './ways-out';

/** Why there is nothing to plan, and what to do about it; undefined where there is something. */
export function nothingToSeatWords(build: Build): string | undefined {
  const leads = leadsOf(build);
  if (leads.length === 0) return 'There is nothing to seat: this build has no leads. Add them in Document.';
  if (build.board.connectors.length === 0)
    return 'There is nothing to seat a plug on: this board has no connectors. Add them in Document.';
  if (groupsOf(build, []).length > 0) return undefined;
  return leads.every(({ setAside }) => setAside === true)
    ? 'There is nothing to seat: every lead is set aside.'
    : 'There is nothing to seat: no lead has a part wired to a plug, and only a part says where a plug belongs.';
}

/** How good a plan is and how that is known, in a sentence or two. */
export function planWords({ proved, cost, bound, off }: Plan, arrangements: bigint): string {
  const served =
    off.length === 0 ? 'Every plug has its place.' : `${counted(off.length, 'plug')} cannot be served.`;
  if (proved && arrangements === 1n) return `${served} There is no other arrangement.`;
  if (proved) return `${served} This is the best arrangement: ${ruledOut(arrangements)} ruled out.`;
  const open = cost.essentialUnserved + cost.unserved - bound.essentialUnserved - bound.unserved;
  return `${served} The search was stopped before it was done: ${
    open > 0
      ? `at most ${counted(open, 'function')} more could be served.`
      : 'no arrangement serves more functions.'
  }`;
}

function ruledOut(arrangements: bigint): string {
  const others = arrangements - 1n;
  if (others < 1_000_000n) return others === 1n ? '1 other is' : `${others} others are`;
  const digits = others.toString();
  return `about ${digits[0]}.${digits[1]} × 10${superscript(digits.length - 1)} others are`;
}

function superscript(power: number): string {
  return [...String(power)].map((digit) => '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(digit)]).join('');
}

/** "POWER SW on pins 6 and 8 of F_PANEL, turned by half." */
export function seatWords(build: Build, seat: Seat): string {
  const turned = {
    0: '',
    90: ', turned a quarter to the right',
    180: ', turned by half',
    270: ', turned a quarter to the left',
  };
  return `${capital(plugText(build, seat))} on ${pinsOf(build, pinsUnderSeat(build, seat))}${turned[seenTurn(build, seat)]}.`;
}

/** What the plan does with one plug: "Move POWER SW from pins 1 and 3 to pins 6 and 8 of F_PANEL." */
export function differenceWords(build: Build, { plug, now, planned, inTheWay }: Difference): string {
  const name = plugText(build, plug);
  const from = now && pinsOf(build, pinsUnderSeat(build, now));
  if (planned === undefined) return `Take ${name} off${from ? ` ${from}` : ''}: it serves nothing there.`;
  const to = pinsOf(build, pinsUnderSeat(build, planned));
  const done =
    now === undefined
      ? `Seat ${name} on ${to}.`
      : from === to
        ? `Turn ${name} round on ${to}.`
        : `Move ${name} from ${from} to ${to}.`;
  if (inTheWay.length === 0) return done;
  return `${done} ${capital(listed(inTheWay.map((ref) => plugText(build, ref))))} ${
    inTheWay.length === 1 ? 'comes' : 'come'
  } off first.`;
}

/** Why a plug has no place: alone, or because of which others and over which pins. */
export function conflictWords(build: Build, { plug, conflict }: Unserved): string {
  const name = plugText(build, plug);
  if (!conflict.proved)
    return `${capital(name)} has no place in this arrangement. Too many plugs want the same pins to name the fewest that cannot go together.`;
  if (conflict.plugs.length <= 1) return `No free place on this board suits ${name} as it is.`;
  if (conflict.kept.length > 0) {
    const kept = listed([...new Set(conflict.kept.map((ref) => plugText(build, ref)))]);
    return `${capital(name)} has no place as long as ${kept} ${conflict.kept.length === 1 ? 'is' : 'are'} kept.`;
  }
  const all = conflict.plugs.map((ref) => plugText(build, ref));
  const where = conflict.pins.length > 0 ? ` They want ${pinsOf(build, conflict.pins)}.` : '';
  return `${capital(listed([...new Set(all)]))} cannot all be served, though any one fewer could.${where}`;
}

/** What of a plug without a place is not known, or that nothing helps; empty where the ways out say it all. */
export function helplessWords({ waysOut, untried }: Unserved): string {
  if (untried > 0)
    return `${counted(untried, 'remedy', 'remedies')} ${untried === 1 ? 'was' : 'were'} not tried: with so many plugs it would last too long.`;
  return waysOut.length === 0
    ? 'Neither moving a contact nor taking the plug apart nor leaving another lead off would help.'
    : '';
}

/** What to do, and what that would make possible and cost. */
export function wayOutWords(build: Build, plug: Unserved['plug'], way: WayOut): string {
  const does = `${listed(way.gains.map((ref) => partText(build, ref)))} would work`;
  const costs =
    way.loses.length > 0 ? `, and ${listed(way.loses.map((ref) => partText(build, ref)))} would not` : '';
  return `${doing(build, plug, way)} Then ${does}${costs}.`;
}

function doing(build: Build, plug: Unserved['plug'], { kind, command, letGo }: WayOut): string {
  if (letGo.length > 0) return `Let ${listed(letGo.map((ref) => plugText(build, ref)))} go elsewhere.`;
  if (command?.name === 'move-contact') return moveContactText(command.args);
  if (command?.name === 'set-lead-aside')
    return `Leave ${leadOf(build, command.args.lead)?.name ?? command.args.lead} off.`;
  return kind === 'adapter' ? 'Use an adapter lead from this plug to single pins.' : splitText(build, plug);
}

function partText(build: Build, { lead, part }: PartRef): string {
  const found = partOfLead(build, lead, part);
  return `the ${found.name ?? partKindOf(found.kind).name}`;
}

function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
