import type { Mm } from '../base/units';
import { SIDES, type Side } from '../document/connector';
import type { FormFactor, MountingHole, Outline } from '../document/outline';
import { type Reading, readAbout, readIn, recalled } from './reading';

/** A published board size, seen from above the component side with the rear panel at the top. */
export interface FormFactorEntry {
  readonly id: FormFactor;
  readonly name: string;
  /** The largest board that the paper allows, with every hole that it gives a letter. */
  readonly outline: Outline;
  readonly size: Reading;
  /** Which letters belong to this size. */
  readonly letters: Reading;
  /** Where the holes lie, all but the doubtful ones. */
  readonly places: Reading;
  readonly diameter: Reading;
  /** Holes whose places no two accounts agree on; measure before you rely on them. */
  readonly doubtful: readonly string[];
}

const MM_PER_INCH: Mm = 25.4;
const HOLE_MM: Mm = 3.96;

const MICRO_ATX_PAPER = 'microATX Motherboard Interface Specification v1.2 (2004)';

const PLACES = readAbout(
  'standard',
  'holes as a public drawing script has them, in inches from the rear right corner; a second script agrees on the distances of C, F, H and J',
);
const DIAMETER = recalled('standard', 'ATX specification 2.2: holes of 0.156 in');

/**
 * Inches from the right edge and from the rear edge. All three sizes share the right rear corner, so one
 * table serves them: a larger board grows to the left and to the front.
 */
const FROM_REAR_RIGHT_IN = {
  A: [11.35, 0.4],
  B: [8.25, 0.4],
  C: [6.45, 0.4],
  F: [0.25, 1.3],
  G: [11.35, 6.5],
  H: [6.45, 6.5],
  J: [0.25, 6.5],
  K: [11.35, 9.35],
  L: [6.45, 9.35],
  M: [0.25, 9.35],
  R: [9.05, 6.5],
  S: [8.25, 6.5],
} as const satisfies Record<string, readonly [right: number, rear: number]>;

type Letter = keyof typeof FROM_REAR_RIGHT_IN;

function holesOf(widthMm: Mm, letters: readonly Letter[]): MountingHole[] {
  return letters.map((label) => {
    const [right, rear] = FROM_REAR_RIGHT_IN[label];
    return {
      id: label.toLowerCase(),
      label,
      xMm: hundredths(widthMm - right * MM_PER_INCH),
      yMm: hundredths(rear * MM_PER_INCH),
      diameterMm: HOLE_MM,
    };
  });
}

function hundredths(value: Mm): Mm {
  return Math.round(value * 100) / 100;
}

function formFactor(
  id: FormFactor,
  name: string,
  size: { readonly widthMm: Mm; readonly depthMm: Mm },
  letters: readonly Letter[],
  readings: Pick<FormFactorEntry, 'size' | 'letters'>,
): FormFactorEntry {
  return {
    id,
    name,
    outline: { ...size, formFactor: id, holes: holesOf(size.widthMm, letters) },
    ...readings,
    places: PLACES,
    diameter: DIAMETER,
    doubtful: letters.filter((letter) => letter === 'R' || letter === 'S'),
  };
}

/** Largest first. */
export const FORM_FACTOR_ENTRIES: readonly FormFactorEntry[] = [
  formFactor('atx', 'ATX', { widthMm: 305, depthMm: 244 }, ['A', 'C', 'F', 'G', 'H', 'J', 'K', 'L', 'M'], {
    size: readIn('standard', `${MICRO_ATX_PAPER}, Table 3: at most 12 by 9.6 in`),
    letters: readIn('standard', `${MICRO_ATX_PAPER}, Figure 2`),
  }),
  formFactor(
    'micro-atx',
    'microATX',
    { widthMm: 244, depthMm: 244 },
    ['B', 'C', 'F', 'H', 'J', 'L', 'M', 'R', 'S'],
    {
      size: readIn('standard', `${MICRO_ATX_PAPER}, Table 3: at most 9.6 by 9.6 in`),
      letters: readIn('standard', `${MICRO_ATX_PAPER}, Figure 2; R required, S optional at full width`),
    },
  ),
  formFactor('mini-itx', 'Mini-ITX', { widthMm: 170, depthMm: 170 }, ['C', 'F', 'H', 'J'], {
    size: readIn('standard', 'Mini-ITX Addendum v1.1 to the microATX specification, Table 1'),
    letters: readAbout('standard', 'letters of the four holes, from an account of the Mini-ITX addendum'),
  }),
];

/** The library's entry of a form factor. */
export function formFactorEntry(id: FormFactor): FormFactorEntry {
  const entry = FORM_FACTOR_ENTRIES.find((each) => each.id === id);
  if (entry === undefined) throw new Error(`No form factor ${id} in the library`);
  return entry;
}

/** Published places and those of a sheet are the same to this, which is finer than anybody measures. */
const SAME_PLACE_MM: Mm = 0.05;

/**
 * Ids of the holes of a board whose places nobody agrees on: those of its form factor that still stand where
 * the library has them. One that was measured and moved is sure.
 */
export function unsureHoles(outline: Outline): readonly string[] {
  if (outline.formFactor === undefined) return [];
  const { outline: published, doubtful } = formFactorEntry(outline.formFactor);
  const upright = turnedOutline(outline, 'top');
  const near = (hole: MountingHole, other: MountingHole) =>
    Math.abs(upright.widthMm - hole.xMm - (published.widthMm - other.xMm)) < SAME_PLACE_MM &&
    Math.abs(hole.yMm - other.yMm) < SAME_PLACE_MM;
  return (upright.holes ?? [])
    .filter((hole) =>
      published.holes?.some(({ label = '', ...other }) => doubtful.includes(label) && near(hole, other)),
    )
    .map(({ id }) => id);
}

/** The outline of a form factor, drawn with the rear panel at some side. */
export function formFactorOutline(id: FormFactor, rear: Side): Outline {
  return turnedOutline(formFactorEntry(id).outline, rear);
}

/** The outline with its holes, turned until the rear panel is at that side. */
export function turnedOutline(outline: Outline, rear: Side): Outline {
  const quarters = (SIDES.indexOf(rear) - SIDES.indexOf(outline.rear ?? 'top') + 4) % 4;
  let turned = outline;
  for (let quarter = 0; quarter < quarters; quarter++) turned = quarterTurned(turned);
  return { ...turned, rear };
}

/** A quarter clockwise: the top side goes to the right. */
function quarterTurned({ widthMm, depthMm, holes, ...others }: Outline): Outline {
  const turned = { ...others, widthMm: depthMm, depthMm: widthMm };
  if (holes === undefined) return turned;
  return {
    ...turned,
    holes: holes.map((hole) => ({ ...hole, xMm: hundredths(depthMm - hole.yMm), yMm: hole.xMm })),
  };
}

/** Which way the published holes go along when a board of that orientation gets wider, and deeper. */
const GOES_ALONG: Readonly<Record<Side, readonly [across: 0 | 1, down: 0 | 1]>> = {
  top: [1, 0],
  right: [1, 1],
  bottom: [0, 1],
  left: [0, 0],
};

/**
 * The outline in another size. Published holes are measured from the rear right corner, so on a board of a
 * form factor they keep their distance from it; free holes keep theirs from the top left.
 */
export function resizedOutline(
  outline: Outline,
  size: { readonly widthMm: Mm; readonly depthMm: Mm },
): Outline {
  if (outline.formFactor === undefined || outline.holes === undefined) return { ...outline, ...size };
  const [across, down] = GOES_ALONG[outline.rear ?? 'top'];
  const byX = across * (size.widthMm - outline.widthMm);
  const byY = down * (size.depthMm - outline.depthMm);
  const holes = outline.holes.map((hole) => ({
    ...hole,
    xMm: hundredths(hole.xMm + byX),
    yMm: hundredths(hole.yMm + byY),
  }));
  return { ...outline, ...size, holes };
}
