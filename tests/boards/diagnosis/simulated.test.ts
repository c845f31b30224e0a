import { describe, expect, it } from 'vitest';
import { dictionaryOf } from '../../../boards/diagnosis/dictionary';
import { faultsOf } from '../../../boards/diagnosis/faults/faults';
import { trialsOf } from '../../../boards/diagnosis/trials/trials';
import { simulated, summed } from '../../cases/simulated';
import { demo } from '../findings/demo';

// A few benches of those that `npm run bench` prints in full: faults drawn from the priors, 5 in 100 readings wrong.
describe('simulated benches', () => {
  const build = demo('wired');
  const result = simulated(dictionaryOf(faultsOf(build)), trialsOf(build), { benches: 40, seed: 7 });

  it('are searched to the culprit in fewer trials than by a fixed list of checks on the same benches', () => {
    expect(result.proposed.length + result.stopped).toBe(40);
    expect(result.fixed).toHaveLength(result.proposed.length);
    const [proposed, fixed] = [summed(result.proposed), summed(result.fixed)];
    expect(proposed.trials).toBeLessThan(0.7 * fixed.trials);
    expect(proposed.right).toBeGreaterThan(fixed.right);
  });

  it('seldom have a wrong culprit named', () => {
    expect(summed(result.proposed).wrong).toBeLessThanOrEqual(0.06);
  });

  it('name the culprit on most of them, and the same for the same seed', () => {
    expect(summed(result.proposed).right).toBeGreaterThan(0.5);
    const again = simulated(dictionaryOf(faultsOf(build)), trialsOf(build), { benches: 5, seed: 7 });
    expect(again.proposed).toEqual(result.proposed.slice(0, again.proposed.length));
  });
});
