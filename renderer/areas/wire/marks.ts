import { analyse } from '../../../boards/analyse';
import { byIdentity } from '../../../boards/base/by-identity';
import type { Build } from '../../../boards/document/build';
import type { Mark } from '../../canvas/canvas-props';

/** What the canvas marks: every finding that has a place. Worst first, as the findings are. */
export const marksOf = byIdentity((build: Build): readonly Mark[] =>
  analyse(build)
    .findings.filter(({ pins, leads }) => pins.length > 0 || leads.length > 0)
    .map(({ severity, pins, leads }) => ({ severity, pins, leads })),
);
