import { type Circuit, circuitOf } from '../../../boards/circuit/circuit';
import { type Corner, type Span, spanOf, USUAL } from '../../../boards/circuit/corner';
import { partDeviceId, pinNode } from '../../../boards/circuit/elements';
import type { MachineState } from '../../../boards/circuit/machine-state';
import type { Build } from '../../../boards/document/build';
import type { Cell } from '../../../boards/document/grid';
import type { Lead } from '../../../boards/document/lead';
import { gridIndex } from '../../../boards/document/numbering';
import { makeConnector } from '../../../boards/library/make-connector';
import { makeLead } from '../../../boards/library/make-lead';

/** One library connector with one library lead on it, hole by hole on the named pins. */
export interface Bench {
  readonly circuit: Circuit;
  readonly volts: (pin: string, state: MachineState, corner?: Corner) => number | undefined;
  readonly partAmps: (part: string, state: MachineState, device?: string) => Span;
  readonly build: Build;
}

function isolated(lead: Lead, name: string): Lead {
  return { ...lead, id: name, name };
}

/**
 * Seats the holes of a lead's first plug as `pins` says, whatever the plug's own shape: each hole
 * becomes a single flying contact, so that any mistake of the bench can be laid.
 */
export function bench(
  connectorType: string,
  leadType: string,
  pins: Readonly<Record<string, string>>,
): Bench {
  const connector = makeConnector(connectorType, {
    id: 'header',
    print: 'HEADER',
    place: { xMm: 0, yMm: 0, turn: 0 },
  });
  const lead = flying(isolated(makeLead(leadType, { id: 'lead', name: 'LEAD' }), 'lead'));
  const index = gridIndex(connector.grid);
  const seats = Object.entries(pins).map(([hole, pin]) => {
    const at: Cell | undefined = index.cellOf(pin);
    if (!at) throw new Error(`No pin ${pin}`);
    return {
      lead: 'lead',
      plug: `hole-${hole}`,
      connector: 'header',
      at: [...at] as [number, number],
      turn: 0 as const,
    };
  });
  const build: Build = {
    format: 'leadwright/build',
    version: 1,
    id: 'bench',
    name: 'bench',
    board: {
      format: 'leadwright/board',
      version: 1,
      id: 'board',
      name: 'board',
      outline: { widthMm: 100, depthMm: 100 },
      connectors: [connector],
    },
    case: { format: 'leadwright/case', version: 1, id: 'case', name: 'case', leads: [lead] },
    extras: [],
    seats,
    view: { turn: 0, mirrored: false },
  };
  const circuit = circuitOf(build);
  return {
    build,
    circuit,
    volts: (pin, state, corner = USUAL) => circuit.volts(pinNode('header', pin), state, corner),
    partAmps: (part, state, device = partDeviceId('lead', part)) =>
      spanOf((corner) => circuit.amps(partDeviceId('lead', part), device, state, corner)),
  };
}

function flying(lead: Lead): Lead {
  const [plug] = lead.plugs;
  if (!plug) throw new Error('A lead has a plug');
  const holes = gridIndex(plug.grid).positions.map(({ label }) => label);
  const single = (hole: string) => ({
    id: `hole-${hole}`,
    print: '',
    family: plug.family,
    grid: {
      rows: 1,
      cols: 1,
      pitchMm: plug.grid.pitchMm,
      numbering: { scheme: 'by-row' as const, from: 'top-left' as const },
    },
  });
  const renamed = (end: string) => end.replace(new RegExp(`^${plug.id}\\.(.+)$`), 'hole-$1.1');
  return {
    ...lead,
    plugs: holes.map(single),
    wires: lead.wires.map((wire) => ({ ...wire, from: renamed(wire.from), to: renamed(wire.to) })),
  };
}
