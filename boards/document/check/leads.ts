import { partKindOf } from '../../signals/part-kinds';
import { hasOneColour, isFan, isSwitch } from '../../signals/part-traits';
import { type Lead, type Part, type Plug, splitEnd } from '../lead';
import { LIMITS } from '../limits';
import { gridIndex } from '../numbering';
import type { ProblemList } from '../problem/problem-list';
import { count, shownText } from '../problem/shown-value';
import { checkCells, checkGrid } from './grid';
import { Once } from './once';

/** A list of leads, and where it stands in the file. */
interface Shelf {
  readonly path: string;
  readonly leads: readonly Lead[];
}

/** Leads have ids of their own over all shelves together, and wires that begin and end at something. */
export function checkLeads(shelves: readonly Shelf[], list: ProblemList): void {
  const all = shelves.flatMap(({ leads }) => leads);
  const path = shelves.map((shelf) => shelf.path).join(' and ');
  const grids = all.flatMap(({ plugs }) => plugs.map(({ grid }) => grid));
  if (!checkCells(grids, LIMITS.holes, 'holes', path, list)) return;
  const wires = all.reduce((sum, lead) => sum + lead.wires.length, 0);
  if (wires > LIMITS.wires) {
    list.add(() => ({ path, expected: `at most ${count(LIMITS.wires)} wires in all`, found: count(wires) }));
    return;
  }
  const ids = new Once('an id', list);
  for (const shelf of shelves) {
    shelf.leads.forEach((lead, at) => {
      if (list.full) return;
      const here = `${shelf.path}[${at}]`;
      ids.enter(lead.id, `${here}.id`);
      checkLead(lead, here, list);
    });
  }
}

function checkLead(lead: Lead, path: string, list: ProblemList): void {
  const ids = new Once('an id', list);
  lead.parts.forEach((part, at) => {
    ids.enter(part.id, `${path}.parts[${at}].id`);
    checkPart(part, `${path}.parts[${at}]`, list);
  });
  lead.plugs.forEach((plug, at) => {
    const here = `${path}.plugs[${at}]`;
    ids.enter(plug.id, `${here}.id`);
    checkGrid(plug.grid, `${here}.grid`, list);
    checkHoles(plug, here, list);
  });
  checkCable(lead, `${path}.cable`, list);
  const endProblem = endCheck(lead);
  lead.wires.forEach(({ from, to }, at) => {
    const here = `${path}.wires[${at}]`;
    for (const [key, end] of Object.entries({ from, to })) {
      const expected = endProblem(end);
      if (expected !== undefined)
        list.add(() => ({ path: `${here}.${key}`, expected, found: shownText(end) }));
    }
    if (from === to)
      list.add(() => ({ path: `${here}.to`, expected: 'another end than “from”', found: shownText(to) }));
  });
}

/** Runs join two different plugs, none is the far end of two, and none leads round in a ring. */
function checkCable({ cable, plugs }: Lead, path: string, list: ProblemList): void {
  const known = new Set(plugs.map(({ id }) => id));
  const ends = new Once('a plug at the far end', list);
  const before = new Map<string, string>();
  cable?.runs.forEach(({ from, to }, at) => {
    const here = `${path}.runs[${at}]`;
    for (const [key, end] of Object.entries({ ...(from !== undefined && { from }), to }))
      if (!known.has(end))
        list.add(() => ({ path: `${here}.${key}`, expected: 'a plug of this lead', found: shownText(end) }));
    ends.enter(to, `${here}.to`);
    if (from === undefined) return;
    if (isBefore(to, from))
      list.add(() => ({
        path: `${here}.to`,
        expected: 'a plug that the run does not come from',
        found: shownText(to),
      }));
    else before.set(to, from);
  });

  /** True when the way back from a plug comes past another, or begins at it. */
  function isBefore(wanted: string, plug: string): boolean {
    for (let at: string | undefined = plug; at !== undefined; at = before.get(at))
      if (at === wanted) return true;
    return false;
  }
}

/** Only an LED of one colour has a colour, only a switch can be stuck or broken, and only a fan takes what a fan does. */
function checkPart({ kind: id, colour, condition, fan }: Part, path: string, list: ProblemList): void {
  const kind = partKindOf(id);
  if (colour !== undefined && !hasOneColour(kind))
    list.add(() => ({
      path: `${path}.colour`,
      expected: `no colour for a ${kind.name}`,
      found: shownText(colour),
    }));
  if (condition !== undefined && !isSwitch(kind))
    list.add(() => ({
      path: `${path}.condition`,
      expected: `no condition for a ${kind.name}`,
      found: shownText(condition),
    }));
  if (fan !== undefined && !isFan(kind))
    list.add(() => ({
      path: `${path}.fan`,
      expected: `no figures of a fan for a ${kind.name}`,
      found: 'figures',
    }));
}

function checkHoles(plug: Plug, path: string, list: ProblemList): void {
  const { cellOf } = gridIndex(plug.grid);
  const known = (hole: string, here: string) => {
    if (cellOf(hole) !== undefined) return;
    list.add(() => ({ path: here, expected: 'a hole that the grid counts', found: shownText(hole) }));
  };
  const blocked = new Once('a hole', list);
  plug.blocked?.forEach((hole, at) => {
    if (blocked.enter(hole, `${path}.blocked[${at}]`)) known(hole, `${path}.blocked[${at}]`);
  });
  if (plug.mark !== undefined) known(plug.mark, `${path}.mark`);
}

/** For a wire end: what was expected instead, or undefined where it is sound. */
function endCheck(lead: Lead): (end: string) => string | undefined {
  const plugs = new Map(lead.plugs.map((plug) => [plug.id, plug]));
  const parts = new Map(lead.parts.map((part) => [part.id, part]));
  return (end) => {
    const { owner, point } = splitEnd(end);
    const plug = plugs.get(owner);
    if (plug !== undefined) {
      if (gridIndex(plug.grid).cellOf(point) === undefined) return `a hole of the plug ${shownText(owner)}`;
      return plug.blocked?.includes(point) ? 'a hole that is not blocked' : undefined;
    }
    const part = parts.get(owner);
    if (part === undefined) return 'a plug or a part of this lead';
    const { name, terminals } = partKindOf(part.kind);
    if (terminals.some(({ id }) => id === point)) return undefined;
    return `a terminal of the ${name}: ${terminals.map(({ id }) => id).join(', ')}`;
  };
}
