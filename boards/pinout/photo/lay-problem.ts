import { listed } from '../../base/listed';

/** Why the pins cannot be laid over the picture. Closed: every one has words below. */
export type LayProblem =
  | { readonly code: 'too-few'; readonly have: number; readonly need: number }
  | { readonly code: 'unknown-pin'; readonly pin: string }
  | { readonly code: 'pin-twice'; readonly pin: string }
  | { readonly code: 'same-place'; readonly pins: readonly [string, string] }
  | { readonly code: 'outside'; readonly pin: string }
  | { readonly code: 'in-line'; readonly pins: readonly string[] }
  | { readonly code: 'crossed' };

/** Which of the points does not agree with the rest. */
export type Doubt =
  /** This one; `standsAt` is the pin whose place it lies on, where it lies on one. */
  | { readonly kind: 'one'; readonly pin: string; readonly standsAt?: string }
  /** One of these, and the points do not say which. */
  | { readonly kind: 'one-of'; readonly pins: readonly string[] }
  /** They disagree, and it does not help to leave one out. */
  | { readonly kind: 'several' };

/** Why there is no grid over the picture, and what to do. */
export function layProblemWords(problem: LayProblem): string {
  switch (problem.code) {
    case 'too-few': {
      const more = problem.need - problem.have;
      return `Point at ${more === 1 ? 'one more pin' : `${more}\u00a0more pins`}: ${problem.need} hold the grid.`;
    }
    case 'unknown-pin':
      return `The connector has no position\u00a0${problem.pin}. Take that point away.`;
    case 'pin-twice':
      return `Pin\u00a0${problem.pin} is pointed at twice. Take one of the two points away.`;
    case 'same-place':
      return `Pins\u00a0${listed(problem.pins)} are pointed at in one place. Move one of the two points.`;
    case 'outside':
      return `The point for pin\u00a0${problem.pin} lies outside the picture. Move it onto the pin.`;
    case 'in-line':
      return `Pins\u00a0${listed(problem.pins)} lie in a line. Point at a pin beside that line: four that make a quadrangle hold the grid.`;
    case 'crossed':
      return 'The grid would be twisted. Two points may be exchanged: compare the pin numbers with the picture.';
  }
}

/** What does not agree, and what to do about it. */
export function doubtWords(doubt: Doubt): string {
  switch (doubt.kind) {
    case 'one':
      return doubt.standsAt === undefined
        ? `The point for pin\u00a0${doubt.pin} is off and was left out. Move it onto the pin.`
        : `The point for pin\u00a0${doubt.pin} lies on pin\u00a0${doubt.standsAt} and was left out. Move it, or count again.`;
    case 'one-of':
      return `One of pins\u00a0${listed(doubt.pins)} is off. Point at one more pin in the same row, and it will show which.`;
    case 'several':
      return 'The points do not agree with the grid. Compare rows, columns and pitch with the picture, then the pin numbers.';
  }
}
