import type { Equations } from './equations';
import { type Attempt, newton, REST_SIEMENS } from './newton';

/**
 * The operating point of one island. Plain Newton from rest first; then leaks that are taken
 * away bit by bit; then sources that are turned up bit by bit (gmin and source stepping, Nagel 1975).
 */
export function operatingPoint(equations: Equations): Attempt {
  const rest = new Float64Array(equations.size);
  const plain = newton(equations, rest, REST_SIEMENS, 1);
  if (plain.solved) return plain;
  const leaking = withLeaks(equations, rest);
  if (leaking.solved) return leaking;
  return withRisingSources(equations, rest);
}

function withLeaks(equations: Equations, rest: Float64Array): Attempt {
  let attempt: Attempt = { solved: true, values: rest, steps: 0 };
  let steps = 0;
  for (let exponent = -2; exponent >= -15 && attempt.solved; exponent -= 1) {
    attempt = newton(equations, attempt.values, 10 ** exponent, 1);
    steps += attempt.steps;
  }
  return { ...attempt, steps };
}

function withRisingSources(equations: Equations, rest: Float64Array): Attempt {
  let reached = 0;
  let stride = 0.1;
  let best: Attempt = { solved: false, values: rest, steps: 0 };
  let steps = 0;
  while (reached < 1 && stride > 1e-4) {
    const strength = Math.min(1, reached + stride);
    const attempt = newton(equations, best.values, REST_SIEMENS, strength);
    steps += attempt.steps;
    if (attempt.solved) {
      best = attempt;
      reached = strength;
      stride *= 1.5;
    } else stride /= 4;
  }
  return { ...best, solved: reached >= 1, steps };
}
