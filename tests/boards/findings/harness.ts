import { freezeDeep } from '../../../boards/base/freeze';
import type { Turn } from '../../../boards/base/units';
import type { Build, Seat } from '../../../boards/document/build';
import type { Connector, Pin } from '../../../boards/document/connector';
import type { Cell } from '../../../boards/document/grid';
import type { Lead } from '../../../boards/document/lead';
import { anyConnectorOf, leadOf, seatOf, unitsOf } from '../../../boards/document/lookup';
import { gridIndex } from '../../../boards/document/numbering';
import type { FormFactor } from '../../../boards/document/outline';
import type { Standoff, Tray } from '../../../boards/document/tray';
import type { Unit } from '../../../boards/document/unit';
import type { Finding, FindingCode } from '../../../boards/findings/finding';
import { findingsOf } from '../../../boards/findings/findings';
import type { Fit } from '../../../boards/fit/fit';
import { fitSeat } from '../../../boards/fit/fit-seat';
import { cellUnder } from '../../../boards/fit/geometry';
import { formFactorOutline } from '../../../boards/library/form-factors';
import { makeConnector } from '../../../boards/library/make-connector';
import { makeLead } from '../../../boards/library/make-lead';
import { makeUnit } from '../../../boards/library/make-unit';

/** How a plug is put: turned clockwise, and which plug of the lead. */
interface Spot {
  readonly turn?: Turn;
  readonly plug?: string;
}

/** A build in the making: connectors far apart on a wide board, leads, seats. */
export class Bench {
  constructor(readonly build: Build = EMPTY) {}

  /** A library connector, under an id of its own. "pins" says otherwise of some of its pins. */
  header(type: string, id: string, pins: Readonly<Record<string, Partial<Pin>>> = {}): Bench {
    const place = { xMm: 20, yMm: 20 + 40 * this.build.board.connectors.length, turn: 0 as const };
    const made = makeConnector(type, { id, print: id.toUpperCase(), place });
    const changed = made.pins.map((pin) => ({ ...pin, ...pins[pin.pin] }));
    return this.connector({ ...made, pins: changed });
  }

  connector(connector: Connector): Bench {
    const { board } = this.build;
    return this.with({ board: { ...board, connectors: [...board.connectors, connector] } });
  }

  /** A library lead, under an id and name of its own. "change" says otherwise of it. */
  lead(type: string, id: string, change: Partial<Lead> = {}): Bench {
    const lead = { ...makeLead(type, { id, name: id.toUpperCase() }), ...change };
    return this.with({ case: { ...this.build.case, leads: [...this.build.case.leads, lead] } });
  }

  /** Lays a board of that size on a tray with these standoffs, measured from the corner that boards share. */
  tray(size: FormFactor, ...standoffs: readonly (Partial<Standoff> & Pick<Standoff, 'id'>)[]): Bench {
    const corner = { xMm: 20, yMm: 15 };
    const tray: Tray = {
      ...{ widthMm: 400, heightMm: 420, points: [], openings: [], bays: [], paths: [] },
      board: { ...corner, rear: 'left' },
      standoffs: standoffs.map(({ xMm = 0, yMm = 0, ...each }) => ({
        ...each,
        xMm: corner.xMm + xMm,
        yMm: corner.yMm + yMm,
      })),
    };
    const { board } = this.build;
    return this.with({
      board: { ...board, outline: formFactorOutline(size, 'left') },
      case: { ...this.build.case, tray },
    });
  }

  /** A library unit with its cables; its connectors and cables begin with its id. "change" says otherwise of it. */
  unit(type: string, id: string, change: Partial<Unit> = {}): Bench {
    const { unit, leads, seats } = makeUnit(type, { id, name: id.toUpperCase() });
    return this.with({
      units: [...unitsOf(this.build), { ...unit, ...change }],
      extras: [...this.build.extras, ...leads],
      seats: [...this.build.seats, ...seats],
    });
  }

  /** Puts a plug with its hole 1 over the given pin, or over a cell where no pin is. */
  seat(lead: string, connector: string, over: string | Cell, { turn = 0, plug: id }: Spot = {}): Bench {
    const pins = anyConnectorOf(this.build, connector)?.grid;
    const plugs = leadOf(this.build, lead)?.plugs ?? [];
    const plug = id === undefined ? plugs[0] : plugs.find((each) => each.id === id);
    const hole = plug && gridIndex(plug.grid).cellOf('1');
    const cell = typeof over === 'string' ? pins && gridIndex(pins).cellOf(over) : over;
    if (!plug || !hole || !cell) throw new Error(`No such seat: ${lead} on ${connector} ${over}`);
    const [down, along] = cellUnder({ at: [0, 0], turn }, hole);
    const at: Seat['at'] = [cell[0] - down, cell[1] - along];
    return this.with({ seats: [...this.build.seats, { lead, plug: plug.id, connector, at, turn }] });
  }

  with(change: Partial<Build>): Bench {
    return new Bench(freezeDeep({ ...this.build, ...change }));
  }

  /** The codes found, worst first: all of them, or those about one lead. */
  codes(lead?: string): readonly FindingCode[] {
    return findingsOf(this.build)
      .filter(({ leads }) => lead === undefined || leads.includes(lead))
      .map(({ code }) => code);
  }

  /** The codes found that make a build not right: no doubts, no notes. */
  faults(): readonly FindingCode[] {
    return findingsOf(this.build)
      .filter(({ severity }) => severity === 'danger' || severity === 'fault')
      .map(({ code }) => code);
  }

  /** Every finding of a code. */
  all<Code extends FindingCode>(code: Code): readonly Extract<Finding, { code: Code }>[] {
    return findingsOf(this.build).flatMap((each) => (has(each, code) ? [each] : []));
  }

  /** How a seated plug fits. */
  fit(lead: string, plug: string): Fit {
    const seat = seatOf(this.build, { lead, plug });
    if (!seat) throw new Error(`Not seated: ${lead} ${plug}`);
    return fitSeat(this.build, seat);
  }

  /** The first finding of a code; fails when there is none. */
  finding<Code extends FindingCode>(code: Code): Extract<Finding, { code: Code }> {
    const found = findingsOf(this.build).find((each) => has(each, code));
    if (!found || !has(found, code))
      throw new Error(`Expected ${code}, found ${this.codes().join(', ') || 'nothing'}`);
    return found;
  }
}

function has<Code extends FindingCode>(
  finding: Finding,
  code: Code,
): finding is Extract<Finding, { code: Code }> {
  return finding.code === code;
}

/** What makes a switch of a lead with two single plugs, “plus” on its first leg and “minus” on its second. */
export function switchOnSingles(kind: 'power-switch' | 'case-open-switch'): Partial<Lead> {
  return {
    parts: [{ id: 'switch', kind }],
    wires: [
      { from: 'switch.a', to: 'plus.1', colour: 'green' },
      { from: 'switch.b', to: 'minus.1', colour: 'white' },
    ],
  };
}

/** A board without connectors and a case without leads. */
export function bench(): Bench {
  return new Bench();
}

const EMPTY: Build = {
  format: 'leadwright/build',
  version: 1,
  id: 'bench',
  name: 'bench',
  board: {
    format: 'leadwright/board',
    version: 1,
    id: 'board',
    name: 'board',
    outline: { widthMm: 244, depthMm: 900 },
    connectors: [],
  },
  case: { format: 'leadwright/case', version: 1, id: 'case', name: 'case', leads: [] },
  extras: [],
  seats: [],
  view: { turn: 0, mirrored: false },
};
