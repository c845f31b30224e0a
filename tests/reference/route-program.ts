import highsLoader from 'highs';
import type { Laying } from '../../boards/routing/fill/laying';

/** The least that all cables together can come to: how many are left, then what is in sight, then how long they are. */
export interface RouteOptimum {
  readonly left: number;
  readonly visibleMm: number;
  readonly totalMm: number;
}

/** By cable and opening, in the order of the sheet: whether the one goes through the other alone. */
export type Passable = readonly (readonly boolean[])[];

/** Weights that keep the three apart, for small trays with lengths in whole millimetres. */
const LEFT = 1e7;
const VISIBLE = 3e3;

/**
 * The routes of all cables of a tray as an integer program for HiGHS (npm "highs", the solver of the
 * University of Edinburgh, built for WebAssembly): flow along the paths from end to end, or the cable is
 * left; no flow longer than the cable less its slack; openings that hold what the fill table says. Nothing
 * of it is shared with the search that it checks. For small trays only.
 */
export async function routeProgram(): Promise<(tray: Laying, passable: Passable) => RouteOptimum> {
  const highs = await highsLoader();
  return (tray, passable) => {
    const solved = highs.solve(modelOf(tray, passable), { mip_rel_gap: 0, mip_abs_gap: 0 });
    if (solved.Status !== 'Optimal') throw new Error(`HiGHS says ${solved.Status}`);
    const value = Math.round(solved.ObjectiveValue);
    const rest = value % LEFT;
    return {
      left: Math.floor(value / LEFT),
      visibleMm: Math.floor(rest / VISIBLE),
      totalMm: rest % VISIBLE,
    };
  };
}

interface Arc {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  readonly visibleMm: number;
  readonly totalMm: number;
  readonly opening?: number;
}

function modelOf(tray: Laying, passable: Passable): string {
  const costs: string[] = [];
  const rows: string[] = [];
  const names: string[] = [];
  const arcs = arcsOf(tray);
  const nodes = [...new Set(arcs.flatMap(({ from, to }) => [from, to]))];
  const ends = new Set([...tray.bays.map(({ id }) => id), tray.supply?.id]);
  const used = tray.openings.map((): { name: string; area: number }[] => []);

  tray.cables.forEach((cable, at) => {
    const kind = tray.cableKinds.find(({ id }) => id === cable.kind);
    if (kind === undefined) throw new Error(`No kind ${cable.kind}`);
    const left = `left${at}`;
    names.push(left);
    costs.push(`${LEFT} ${left}`);
    const own = arcs.flatMap((arc) => {
      if (arc.opening !== undefined && passable[at]?.[arc.opening] !== true) return [];
      // Nothing runs on through a bay or the supply.
      if (ends.has(arc.from) && arc.from !== cable.from) return [];
      if (ends.has(arc.to) && arc.to !== cable.to) return [];
      return [{ ...arc, name: `c${at}${arc.name}` }];
    });
    for (const arc of own) {
      names.push(arc.name);
      const cost = arc.visibleMm * VISIBLE + arc.totalMm;
      if (cost > 0) costs.push(`${cost} ${arc.name}`);
    }
    for (const node of new Set([...nodes, cable.from, cable.to])) {
      const terms = [
        ...own.filter(({ from }) => from === node).map(({ name }) => `+ ${name}`),
        ...own.filter(({ to }) => to === node).map(({ name }) => `- ${name}`),
      ];
      if (node === cable.from) rows.push(`${[...terms, `+ ${left}`].join(' ')} = 1`);
      else if (node === cable.to) rows.push(`${[...terms, `- ${left}`].join(' ')} = -1`);
      else if (terms.length > 0) rows.push(`${terms.join(' ')} = 0`);
    }
    const long = own.filter(({ totalMm }) => totalMm > 0).map(({ name, totalMm }) => `${totalMm} ${name}`);
    if (long.length > 0) rows.push(`${long.join(' + ')} <= ${cable.lengthMm - 2 * kind.slackMm}`);
    tray.openings.forEach((_, opening) => {
      const through = own.filter((arc) => arc.opening === opening);
      if (through.length === 0) return;
      const name = `u${at}o${opening}`;
      names.push(name);
      for (const arc of through) rows.push(`${arc.name} - ${name} <= 0`);
      used[opening]?.push({ name, area: (Math.PI / 4) * kind.diameterMm ** 2 });
    });
  });
  used.forEach((cables, opening) => {
    rows.push(...fillRows(tray, opening, cables, names));
  });
  return [
    'Minimize',
    ` cost: ${costs.join(' + ')}`,
    'Subject To',
    ...rows.map((row, index) => ` r${index}: ${row}`),
    'Binary',
    ` ${names.join(' ')}`,
    'End',
  ].join('\n');
}

/** 53 % for one, 31 % for every two, 40 % for all of more (NEC chapter 9, table 1). */
function fillRows(
  tray: Laying,
  opening: number,
  cables: readonly { readonly name: string; readonly area: number }[],
  names: string[],
): readonly string[] {
  const hole = tray.openings[opening];
  if (hole === undefined || cables.length === 0) return [];
  const area = hole.widthMm * hole.heightMm * (hole.round === true ? Math.PI / 4 : 1);
  const pairs = cables.flatMap((one, at) =>
    cables
      .slice(at + 1)
      .filter((other) => one.area + other.area > 0.31 * area + 1e-6)
      .map((other) => `${one.name} + ${other.name} <= 1`),
  );
  const single = `single${opening}`;
  names.push(single);
  const filled = cables.map((cable) => `${cable.area} ${cable.name}`).join(' + ');
  const counted = cables.map(({ name }) => name).join(' + ');
  return [
    ...pairs,
    `${filled} - ${0.13 * area} ${single} <= ${0.4 * area + 1e-6}`,
    `${counted} + ${cables.length} ${single} <= ${cables.length + 1}`,
  ];
}

/** Both directions of every path and every opening; an opening has a node on each side. */
function arcsOf(tray: Laying): readonly Arc[] {
  const openings = new Set(tray.openings.map(({ id }) => id));
  const nodeOf = (place: string, side: string) => (openings.has(place) ? `${place}/${side}` : place);
  const both = (arc: Arc) => [
    { ...arc, name: `${arc.name}f` },
    { ...arc, name: `${arc.name}b`, from: arc.to, to: arc.from },
  ];
  return [
    ...tray.paths.flatMap(({ from, to, lengthMm, side }, at) =>
      both({
        name: `p${at}`,
        from: nodeOf(from, side),
        to: nodeOf(to, side),
        visibleMm: side === 'front' ? lengthMm : 0,
        totalMm: lengthMm,
      }),
    ),
    ...tray.openings.flatMap(({ id }, opening) =>
      both({ name: `o${opening}`, from: `${id}/front`, to: `${id}/back`, visibleMm: 0, totalMm: 0, opening }),
    ),
  ];
}
