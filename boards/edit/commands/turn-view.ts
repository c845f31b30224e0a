import { ok } from '../../base/result';
import { ViewZ } from '../../document/build';
import { defineCommand } from '../definition';

/** Lays the board as it lies in front of the person: turned by quarters, mirrored or not. */
export const turnView = defineCommand({
  name: 'turn-view',
  args: ViewZ,
  label: () => 'Turn the board',
  apply: (build, view) => ok({ ...build, view }),
});
