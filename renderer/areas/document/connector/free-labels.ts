import type { Grid, Numbering } from '../../../../boards/document/grid';
import { gridIndex } from '../../../../boards/document/numbering';

export type Labels = readonly (readonly string[])[];

const LABEL = /^[A-Za-z0-9+-]{1,8}$/;

/** The labels of a grid as they are typed, row by row unturned; empty where there is no position. */
export function typedLabels(grid: Grid): Labels {
  const { labelAt } = gridIndex(grid);
  return Array.from({ length: grid.rows }, (_, row) =>
    Array.from({ length: grid.cols }, (__, col) => labelAt([row, col]) ?? ''),
  );
}

/** Typed labels as the document holds them. */
export function numberingFrom(labels: Labels): Extract<Numbering, { scheme: 'free' }> {
  return {
    scheme: 'free',
    labels: labels.map((row) => row.map((label) => (label.trim() === '' ? null : label.trim()))),
  };
}

/** What is wrong with typed labels, in words; nothing where they can be kept. */
export function labelProblem(labels: Labels): string {
  const typed = labels.flat().flatMap((label) => (label.trim() === '' ? [] : [label.trim()]));
  if (typed.length === 0) return 'A header has at least one position. Type a label for it.';
  const wrong = typed.find((label) => !LABEL.test(label));
  if (wrong !== undefined) return `“${wrong}” cannot be a label. Use up to eight letters, digits, + or −.`;
  const twice = typed.find((label, at) => typed.indexOf(label) !== at);
  return twice === undefined ? '' : `“${twice}” stands on two positions. Give one of them another label.`;
}

/** The labels that stand where they cannot stay: twice, or with a sign that a label cannot have. */
export function wrongLabels(labels: Labels): ReadonlySet<string> {
  const typed = labels.flat().map((label) => label.trim());
  return new Set(
    typed.filter((label, at) => label !== '' && (!LABEL.test(label) || typed.indexOf(label) !== at)),
  );
}

/** "2 positions without a label are left out of the header."; nothing where every one has a label. */
export function emptyWords(labels: Labels): string {
  const empty = labels.flat().filter((label) => label.trim() === '').length;
  if (empty === 0) return '';
  return empty === 1
    ? 'The position without a label is left out: no pin and no hole is there.'
    : `The ${empty}\u00a0positions without a label are left out: no pin and no hole is there.`;
}
