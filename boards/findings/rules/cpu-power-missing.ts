import type { CheckContext } from '../context';
import { type Inlet, inletsOf, isFed } from '../fed-pins';
import type { FindingOf, Severity } from '../finding';
import { feedRemedies } from '../power-remedies';
import type { Rule } from '../rule';

/**
 * Where a supply is in the build, the CPU needs its own +12 V.
 *
 * Good: a CPU cable from an outlet to the socket beside the CPU.
 * Bad: no cable, or one whose other end lies loose: fans turn, and nothing starts. Four of eight pins left off: a doubt.
 */
export const cpuPowerMissing: Rule<'cpu-power-missing'> = {
  id: 'cpu-power-missing',
  source:
    'ATX 3.0 power supply design guide (336521), Table 5-8; a second connector: common practice, no source',
  explains: ['rail-left-off'],
  check: (context) => {
    const inlets = inletsOf(context).filter(({ job }) => job === 'cpu-power');
    const fed = inlets.filter(isFed);
    return inlets.flatMap((inlet) => {
      if (!isFed(inlet)) return [found(context, inlet, fed.length === 0 ? 'fault' : 'note')];
      const half = inlet.rails.some((pin) => pin.fed === 'nothing');
      return half ? [found(context, inlet, 'doubt')] : [];
    });
  },
};

function found(context: CheckContext, inlet: Inlet, severity: Severity): FindingOf<'cpu-power-missing'> {
  const { connector, plugs, rails } = inlet;
  return {
    code: 'cpu-power-missing',
    severity,
    leads: plugs.map(({ lead }) => lead.id),
    pins: rails.filter(({ fed }) => fed === 'nothing').map(({ pin }) => pin),
    data: { connector: connector.id, plugged: plugs.length > 0 },
    remedies: feedRemedies(context, connector),
  };
}
