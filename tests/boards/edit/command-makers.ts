import { TURNS } from '../../../boards/base/units';
import type { Build, Seat } from '../../../boards/document/build';
import type { Connector } from '../../../boards/document/connector';
import { FITTED } from '../../../boards/document/fitted';
import { CONDITIONS, type Lead, type Part, type Plug, WIRE_COLOURS } from '../../../boards/document/lead';
import { connectorsOf, holeState, leadsOf, samePlug, unitsOf } from '../../../boards/document/lookup';
import { gridIndex } from '../../../boards/document/numbering';
import { logOf } from '../../../boards/document/trouble';
import type { Unit } from '../../../boards/document/unit';
import type { CommandName } from '../../../boards/edit/command';
import type { Choices } from '../../../boards/edit/compare/choices';
import { TAKES } from '../../../boards/edit/compare/taking';
import { placesOf } from '../../../boards/fit/places';
import { LAMP_COLOURS } from '../../../boards/signals/lamp-colours';
import { partKindOf } from '../../../boards/signals/part-kinds';
import { hasOneColour, isSwitch } from '../../../boards/signals/part-traits';
import { numberingFor, outlineFor, photoFor, pinFor } from '../arbitrary-build';
import { readingFor } from '../arbitrary-reading';
import type { Dice } from '../dice';
import { CABLE_MAKERS } from './cable-makers';
import { RATING_MAKERS } from './rating-makers';
import type { ArgsOf, Situation } from './situation';
import { TRAY_MAKERS } from './tray-makers';

/** Few, so that they are soon answered again. */
const QUESTIONS = ['nothing-on-press', 'standby-light', 'no-beep', 'smoke'] as const;
const TRIED = ['bare-pins', 'exchange-buttons', 'back:power-switch', 'no-longer-tried'] as const;

/**
 * For every command, arguments that mostly apply to the build at hand; undefined where there is nothing
 * to do it to. A command without a row here does not compile.
 */
export const MAKERS: { readonly [Name in CommandName]: (situation: Situation) => ArgsOf<Name> | undefined } =
  {
    'seat-plug': (given) => {
      const ref = somePlug(given);
      if (ref === undefined) return undefined;
      const { lead, plug } = ref;
      if (given.dice.oneIn(8)) return anySeat(given, lead.id, plug.id);
      return given.dice.pick(placesOf(given.build, { lead: lead.id, plug: plug.id }));
    },
    'turn-plug': ({ build, dice }) => {
      const seat = dice.pick(build.seats);
      return seat && { lead: seat.lead, plug: seat.plug, by: dice.pick([90, 180, 180, 270] as const) ?? 180 };
    },
    'unseat-plug': ({ build, dice }) => {
      const seat = dice.pick(build.seats);
      return seat && { lead: seat.lead, plug: seat.plug };
    },
    'unseat-all': () => ({}),
    'fit-out': ({ dice }) => ({ fitted: FITTED.filter(() => dice.oneIn(2)) }),
    'tick-steps': ({ build: { done }, dice }) =>
      done && dice.oneIn(3)
        ? { steps: dice.oneIn(2) ? done : [dice.pick(done) ?? ''], done: false }
        : { steps: [`plug lead plug one ${dice.below(64)},0 180`], done: true },
    'answer-question': ({ dice }) => ({
      observation: dice.pick(QUESTIONS) ?? 'smoke',
      answer: dice.pick(['yes', 'no', null] as const) ?? null,
      ...(dice.oneIn(2) && { day: '2026-11-26' }),
    }),
    'note-trial': ({ dice }) => ({ trial: dice.pick(TRIED) ?? 'bare-pins', result: 'same' }),
    'note-remark': ({ text, dice }) => ({ text, ...(dice.oneIn(2) && { day: '2026-02-28' }) }),
    'drop-log-line': ({ build, dice }) => {
      const log = logOf(build);
      return log.length === 0 ? undefined : { line: dice.below(log.length) };
    },
    'weigh-cause': ({ dice }) => ({
      cause: dice.pick(['memory', 'coin-cell', 'no-such-cause'] as const) ?? 'memory',
      factor: dice.pick([0.5, 3, null] as const) ?? null,
    }),
    'start-over': ({ build }) => (logOf(build).length === 0 ? undefined : {}),
    'arrange-plugs': (given) => {
      const off = given.build.seats
        .filter(() => given.dice.oneIn(3))
        .map(({ lead, plug }) => ({ lead, plug }));
      const ref = somePlug(given);
      if (ref === undefined) return { seats: [], off };
      const to = { lead: ref.lead.id, plug: ref.plug.id };
      const seat = given.dice.pick(placesOf(given.build, to));
      const others = off.filter((each) => !samePlug(each, to));
      return { seats: seat ? [seat] : [], off: given.dice.oneIn(8) ? off : others };
    },
    'add-lead': ({ lead, dice }) => ({
      lead: { ...lead, id: `lead-${dice.below(12)}` },
      to: dice.oneIn(2) ? 'case' : 'extras',
    }),
    'remove-lead': (given) => withLead(given, (lead) => ({ lead: lead.id })),
    'rename-lead': (given) => withLead(given, (lead) => ({ lead: lead.id, name: given.text })),
    'set-lead-aside': (given) => withLead(given, (lead) => ({ lead: lead.id, aside: given.dice.oneIn(2) })),
    'set-part': (given) =>
      withPart(given, (lead, part) => {
        const kind = partKindOf(part.kind);
        const colour = hasOneColour(kind) ? given.dice.pick(LAMP_COLOURS) : undefined;
        const condition = isSwitch(kind) ? given.dice.pick(CONDITIONS) : undefined;
        return { lead: lead.id, part: part.id, colour: colour ?? null, condition: condition ?? null };
      }),
    'move-contact': (given) => {
      const ref = somePlug(given);
      if (ref === undefined) return undefined;
      const { lead, plug } = ref;
      const holes = gridIndex(plug.grid).positions.map(({ label }) => label);
      const from = given.dice.pick(holes.filter((hole) => holeState(lead, plug, hole) === 'contact'));
      const to = given.dice.pick(holes.filter((hole) => holeState(lead, plug, hole) === 'empty'));
      if (from === undefined || to === undefined) return undefined;
      return { lead: lead.id, plug: plug.id, from, to };
    },
    'split-plug': (given) => {
      const ref = somePlug(given);
      if (ref === undefined || ref.plug.grid.rows * ref.plug.grid.cols === 1) return undefined;
      return { lead: ref.lead.id, plug: ref.plug.id };
    },
    'colour-wire': (given) =>
      withLead(given, (lead) => ({
        lead: lead.id,
        wire: given.dice.below(Math.max(1, lead.wires.length)),
        colour: given.dice.pick(WIRE_COLOURS) ?? 'red',
        stripe: given.dice.oneIn(2) ? null : (given.dice.pick(WIRE_COLOURS) ?? 'white'),
      })),
    'mark-plug': (given) => {
      const ref = somePlug(given);
      if (ref === undefined) return undefined;
      const hole = given.dice.pick(gridIndex(ref.plug.grid).positions)?.label ?? null;
      return { lead: ref.lead.id, plug: ref.plug.id, mark: given.dice.oneIn(3) ? null : hole };
    },
    'add-unit': (given) => {
      const { build, dice, unit, cable } = given;
      const id = `unit-${dice.below(6)}`;
      const own = {
        ...unit,
        id,
        connectors: unit.connectors.map((each, at) => ({ ...each, id: `${id}-${at}` })),
      };
      if (dice.oneIn(2)) return { unit: own };
      const lead = { ...cable, id: `lead-${dice.below(12)}` };
      const alone: Build = {
        ...build,
        board: { ...build.board, connectors: [] },
        case: { ...build.case, leads: [] },
        extras: [lead],
        units: [own],
        seats: [],
      };
      const seat = dice.pick(placesOf(alone, { lead: lead.id, plug: 'near' }));
      return { unit: own, leads: [lead], ...(seat && { seats: [seat] }) };
    },
    'remove-unit': (given) => withUnit(given, ({ id }) => ({ unit: id })),
    'rename-unit': (given) => withUnit(given, ({ id }) => ({ unit: id, name: given.text })),
    'place-unit': (given) =>
      withUnit(given, ({ id, at: now }) => {
        const { board, case: sheet } = given.build;
        const { points = [], bays = [] } = sheet.tray ?? {};
        const at = given.dice.pick([...points, ...bays, ...(board.drivePlaces ?? [])])?.id;
        if (now !== undefined && (at === undefined || given.dice.oneIn(2))) return { unit: id, at: null };
        return at === undefined ? undefined : { unit: id, at };
      }),
    'rename-build': ({ text }) => ({ name: text }),
    'note-build': ({ text, dice }) => ({ notes: dice.oneIn(3) ? '' : text }),
    'turn-view': ({ dice }) => ({ turn: dice.pick(TURNS) ?? 0, mirrored: dice.oneIn(2) }),
    'rename-board': ({ text }) => ({ name: text }),
    'note-board': ({ text, dice }) => ({ notes: dice.oneIn(3) ? '' : text }),
    'outline-board': ({ text, dice }) => ({ outline: outlineFor(dice, text) }),
    'add-connector': ({ build, connector, dice }) => {
      const unit = dice.oneIn(3) ? dice.pick(unitsOf(build))?.id : undefined;
      return {
        connector: { ...connector, id: `connector-${dice.below(12)}` },
        ...(unit !== undefined && { unit }),
      };
    },
    'remove-connector': (given) => withConnector(given, ({ id }) => ({ connector: id })),
    'rename-connector': (given) =>
      withConnector(given, ({ id }) => ({ connector: id, print: given.text, title: given.text })),
    'note-connector': (given) =>
      withConnector(given, ({ id }) => ({ connector: id, notes: given.dice.oneIn(3) ? '' : given.text })),
    'place-connector': (given) =>
      withConnector(given, ({ id }) => ({
        connector: id,
        place: { xMm: given.dice.below(200), yMm: given.dice.below(200), turn: given.dice.pick(TURNS) ?? 0 },
      })),
    'number-connector': (given) =>
      withConnector(given, ({ id, grid }) => ({
        connector: id,
        numbering: numberingFor(grid.rows, grid.cols, given.dice),
        ...(given.dice.oneIn(3) && { keep: 'positions' as const }),
        ...(given.dice.oneIn(3) && { anyway: true as const }),
      })),
    'reshape-connector': (given) =>
      withConnector(given, ({ id, grid, family, shroud = null }) => ({
        connector: id,
        shape: {
          rows: Math.max(1, grid.rows + given.dice.below(3) - 1),
          cols: Math.max(1, grid.cols + given.dice.below(4) - 1),
          pitchMm: given.dice.pick([2.54, 2, 1.27]) ?? 2.54,
          rowPitchMm: given.dice.oneIn(4) ? 2.54 : null,
          family,
          shroud: given.dice.oneIn(4) ? { walls: ['bottom'], guide: 'bottom' } : shroud,
        },
        ...(!given.dice.oneIn(4) && { anyway: true as const }),
      })),
    'change-pins': (given) =>
      withConnector(given, ({ id, grid }) => {
        const labels = gridIndex(grid).positions.map(({ label }) => label);
        const from = given.dice.below(Math.max(1, labels.length));
        const pins = labels
          .slice(from, from + 4)
          .map((label) => (given.dice.oneIn(4) ? { pin: label } : pinFor(label, given.dice, given.text)));
        return { connector: id, pins };
      }),
    'mirror-pins': (given) =>
      withConnector(given, ({ id }) => ({
        connector: id,
        way: given.dice.pick(['left-right', 'top-bottom', 'half-turn'] as const) ?? 'half-turn',
      })),
    'believe-source': ({ build, dice }) => {
      const doubted = build.board.connectors.flatMap(({ id, pins }) =>
        pins.flatMap(({ pin, alternatives }) => (alternatives ? [{ connector: id, pin, alternatives }] : [])),
      );
      const one = dice.pick(doubted);
      if (one === undefined) return undefined;
      const { connector, pin, alternatives } = one;
      return { connector, pin, alternative: dice.below(alternatives.length) };
    },
    'change-pin': (given) =>
      withConnector(given, ({ id, grid }) => {
        const label = given.dice.pick(gridIndex(grid).positions)?.label ?? '1';
        return { connector: id, pin: pinFor(label, given.dice, given.text) };
      }),
    'fill-pins': (given) =>
      withConnector(given, ({ id, grid }) => {
        const labels = gridIndex(grid).positions.map(({ label }) => label);
        const from = given.dice.below(Math.max(1, labels.length));
        const pins = labels.slice(from, from + 4).map((label) => pinFor(label, given.dice, given.text));
        return { connector: id, pins };
      }),
    'note-reading': (given) =>
      withConnector(given, ({ id, grid, readings = [] }) => {
        const labels = gridIndex(grid).positions.map(({ label }) => label);
        const reading = readingFor(labels, given.dice);
        if (reading === undefined) return undefined;
        const instead =
          readings.length > 0 && given.dice.oneIn(3) ? given.dice.below(readings.length) : undefined;
        return { connector: id, reading, ...(instead !== undefined && { instead }) };
      }),
    'drop-reading': (given) =>
      withConnector(given, ({ id, readings = [] }) => ({
        connector: id,
        reading: given.dice.below(Math.max(1, readings.length)),
      })),
    'add-photo': ({ board, build, dice }) => ({
      photo: { ...photoFor(dice, build.board.connectors), id: `photo-${dice.below(12)}`, title: board.name },
    }),
    'remove-photo': ({ build, dice }) => {
      const photo = dice.pick(build.board.photos ?? []);
      return photo && { photo: photo.id };
    },
    'point-photo': (given) =>
      withBoardConnector(given, ({ id, grid }) => {
        const photo = given.dice.pick(given.build.board.photos ?? []);
        const pins = gridIndex(grid).positions.filter(() => given.dice.oneIn(2));
        return (
          photo && {
            photo: photo.id,
            connector: id,
            points: pins.map(({ label }) => ({
              pin: label,
              xPx: given.dice.below(photo.widthPx),
              yPx: given.dice.below(photo.heightPx),
            })),
          }
        );
      }),
    'replace-board': ({ board }) => ({ board }),
    'replace-case': (given) => ({ case: given.case }),
    'merge-board': ({ board, dice }) => ({ board, choices: choicesBy(dice) }),
    'merge-case': (given) => ({ case: given.case, choices: choicesBy(given.dice) }),
    ...TRAY_MAKERS,
    ...CABLE_MAKERS,
    ...RATING_MAKERS,
  };

function choicesBy(dice: Dice): Choices {
  return { others: dice.pick(TAKES) ?? 'both', rows: [] };
}

function withLead<T>({ build, dice }: Situation, make: (lead: Lead) => T): T | undefined {
  const lead = dice.pick(leadsOf(build));
  return lead && make(lead);
}

/** Of the leads that have parts: a cable has none. */
function withPart<T>({ build, dice }: Situation, make: (lead: Lead, part: Part) => T): T | undefined {
  const lead = dice.pick(leadsOf(build).filter(({ parts }) => parts.length > 0));
  const part = lead && dice.pick(lead.parts);
  return lead && part && make(lead, part);
}

function withConnector<T>({ build, dice }: Situation, make: (connector: Connector) => T): T | undefined {
  const connector = dice.pick(connectorsOf(build));
  return connector && make(connector);
}

/** A photo shows the board, and no unit. */
function withBoardConnector<T>({ build, dice }: Situation, make: (connector: Connector) => T): T | undefined {
  const connector = dice.pick(build.board.connectors);
  return connector && make(connector);
}

function withUnit<T>({ build, dice }: Situation, make: (unit: Unit) => T): T | undefined {
  const unit = dice.pick(unitsOf(build));
  return unit && make(unit);
}

function somePlug(given: Situation): { readonly lead: Lead; readonly plug: Plug } | undefined {
  return withLead(given, (lead) => {
    const plug = given.dice.pick(lead.plugs);
    return plug && { lead, plug };
  });
}

function anySeat(given: Situation, lead: string, plug: string): Seat | undefined {
  return withConnector(given, ({ id }) => ({
    lead,
    plug,
    connector: id,
    at: [given.dice.below(6) - 2, given.dice.below(6) - 2],
    turn: given.dice.pick(TURNS) ?? 0,
  }));
}
