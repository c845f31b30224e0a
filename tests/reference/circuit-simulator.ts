import { Simulation } from 'eecircuit-engine';
import { type Device, GROUND, type Netlist } from '../../boards/circuit/device';

/**
 * A general circuit simulator (ngspice, as a WebAssembly build from npm) asked for the operating
 * point of the same devices. It knows nothing of boards; it is the reference for our solver.
 */
export interface Reference {
  /** Node voltages against ground. Throws when the simulator reports anything but a clean solution. */
  readonly operatingPoint: (netlist: Netlist) => Promise<ReadonlyMap<string, number>>;
}

export async function startReference(): Promise<Reference> {
  const simulation = new Simulation();
  await simulation.start();
  return {
    operatingPoint: async (netlist) => {
      const complaints: string[] = [];
      for (const options of OPTIONS) {
        const point = await tryPoint(simulation, netlist, options);
        if (point instanceof Map) return point;
        complaints.push(...point);
      }
      throw new Error(complaints.join('\n'));
    },
  };
}

/** Tolerances a thousand times tighter than usual; where the simulator finds no point, even less leakage. */
const OPTIONS = [
  'reltol=1e-6 abstol=1e-12 vntol=1e-9 gmin=1e-12 itl1=1000',
  'reltol=1e-7 abstol=1e-13 vntol=1e-10 gmin=1e-15',
] as const;

/** Node voltages, or what the simulator complained of: it resolves even when it found nothing. */
async function tryPoint(
  simulation: Simulation,
  netlist: Netlist,
  options: string,
): Promise<Map<string, number> | readonly string[]> {
  const nodes = [...new Set(netlist.flatMap(({ a, b }) => [a, b]))].filter((node) => node !== GROUND);
  const names = new Map<string, string>([
    [GROUND, '0'],
    ...nodes.map((node, i): [string, string] => [node, `n${i}`]),
  ]);
  const nameOf = (node: string) => names.get(node) ?? '0';
  const cards = cardsOf(netlist, nameOf, options);
  simulation.setNetList(cards);
  const result = await simulation.runSim();
  const complaints = simulation
    .getError()
    .filter((line) => /singular|aborted|^error|not started/i.test(line));
  if (complaints.length > 0 || result.dataType !== 'real') return [...complaints, cards];
  const values = new Map(
    result.data.map(({ name, values: list }) => [name.toLowerCase(), list[0] ?? Number.NaN]),
  );
  return new Map(nodes.map((node) => [node, values.get(`v(${nameOf(node)})`) ?? Number.NaN]));
}

/** The netlist as the simulator's cards; nodes that nothing else holds get a very large resistor to ground. */
function cardsOf(netlist: Netlist, nameOf: (node: string) => string, options: string): string {
  const cards = netlist.flatMap((device, i) => cardOf(device, i, nameOf));
  const leaks = [...new Set(netlist.flatMap(({ a, b }) => [a, b]))]
    .filter((node) => node !== GROUND)
    .map((node, i) => `Rleak${i} ${nameOf(node)} 0 1e15`);
  return ['* the same circuit', ...cards, ...leaks, `.options ${options}`, '.op', '.end'].join('\n');
}

function cardOf(device: Device, i: number, nameOf: (node: string) => string): readonly string[] {
  const [a, b] = [nameOf(device.a), nameOf(device.b)];
  switch (device.kind) {
    case 'resistor':
      return [`R${i} ${a} ${b} ${device.ohms}`];
    case 'open-drain':
      return device.on ? [`R${i} ${a} ${b} ${device.onOhms}`] : [];
    case 'fuse':
      return [`R${i} ${a} ${b} ${device.coldOhms}`];
    case 'switch':
      return device.closed ? [`V${i} ${a} ${b} 0`] : [];
    case 'current':
      return [`I${i} ${a} ${b} ${device.amps}`];
    case 'voltage':
      return device.ohms > 0
        ? [`V${i} ${a} m${i} ${device.volts}`, `Rs${i} m${i} ${b} ${device.ohms}`]
        : [`V${i} ${a} ${b} ${device.volts}`];
    case 'diode': {
      const { saturationAmps, ideality, seriesOhms, reverseLimitVolts } = device.model;
      const limit = reverseLimitVolts === undefined ? '' : ` BV=${reverseLimitVolts} IBV=1e-3`;
      return [
        `D${i} ${a} ${b} M${i}`,
        `.model M${i} D(IS=${saturationAmps} N=${ideality} RS=${seriesOhms}${limit})`,
      ];
    }
  }
}
