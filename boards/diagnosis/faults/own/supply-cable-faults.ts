import { tellsOutlets } from '../../../findings/fed-pins';
import { cablesElsewhere, cablesTurned } from './cables-misplaced';
import { cablesMixed } from './cables-mixed';
import { cablesOff } from './cables-off';
import type { OwnFaults } from './share-out';
import type { PowerCables } from './supply-cables';

/** What may be wrong with the cables of the build's supply, by the fault of any machine that each is a case of. */
export function supplyCableFaults(cables: PowerCables): OwnFaults {
  const { build } = cables;
  const off = cablesOff(cables);
  const isAtSupply = cables.plugs.some(({ end }) => end === 'outlet');
  const isPlugged = cables.plugs.length > 0;
  return {
    'main-plug-off': off.get('main-power'),
    'processor-plug-off': off.get('cpu-power'),
    'card-plug-off': off.get('card-power'),
    'drive-plug-off': off.get('drive-power'),
    'plug-turned': isPlugged ? cablesTurned(cables) : undefined,
    ...(tellsOutlets(build) && {
      'cable-of-another': isAtSupply ? cablesMixed(cables) : undefined,
      'main-plug-other': isAtSupply ? cablesElsewhere(cables) : undefined,
    }),
  };
}
