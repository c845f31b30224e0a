import { WIRE_COLOURS, type WireColour } from '../../../boards/document/lead';
import type { Severity } from '../../../boards/findings/finding';

const TOKENS = {
  ground: '--ground',
  mat: '--mat',
  panel: '--panel',
  ink: '--ink',
  inkSoft: '--ink-soft',
  line: '--line',
  edge: '--edge',
  pin: '--pin',
  pinInk: '--pin-ink',
  shell: '--shell',
  plug: '--plug',
  accent: '--accent',
  select: '--select',
  danger: '--danger',
  fault: '--fault',
  doubt: '--doubt',
  note: '--note',
  textFace: '--text-face',
  monoFace: '--mono-face',
} as const;

/** The page's colours and faces, as its style sheets have them. */
export type Palette = Readonly<Record<keyof typeof TOKENS, string>> & {
  readonly wires: Readonly<Record<WireColour, string>>;
  /** The page's base type size, larger in the mode for the bench. */
  readonly typePx: number;
};

/** Reads the palette once for a theme: asking the page for every shape would be slow. */
export function readPalette(element: HTMLElement): Palette {
  const probe = document.createElement('span');
  probe.hidden = true;
  element.append(probe);
  const style = getComputedStyle(probe);
  const wires = Object.fromEntries(
    WIRE_COLOURS.map((colour) => {
      probe.dataset.wire = colour;
      return [colour, style.getPropertyValue('--wire').trim()];
    }),
  ) as Record<WireColour, string>;
  const tokens = Object.fromEntries(
    Object.entries(TOKENS).map(([key, token]) => [key, style.getPropertyValue(token).trim()]),
  ) as Record<keyof typeof TOKENS, string>;
  probe.remove();
  const typePx = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
  return { ...tokens, wires, typePx };
}

export function severityColour(palette: Palette, severity: Severity): string {
  return palette[severity];
}
