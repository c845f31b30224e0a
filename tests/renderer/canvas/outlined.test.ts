import { describe, expect, it } from 'vitest';
import { samePlug } from '../../../boards/document/lookup';
import { measureByTable } from '../../../boards/drawing/measure';
import { rectsOfSelection } from '../../../renderer/canvas/drawing/draw-selection';
import { flagsNeeded, wiresNeeded } from '../../../renderer/canvas/drawing/far-labels';
import { sceneOf } from '../../../renderer/canvas/scene/scene-of';
import type { Selection } from '../../../renderer/store/session';
import { POWER_SWITCH, wiredBuild } from '../stand-in';

const build = wiredBuild();
const scene = sceneOf(build, { view: build.view, measure: measureByTable });
const [near, further, far] = [30, 10, 2];
const bodies = scene.plugs.filter(({ ref }) => samePlug(ref, POWER_SWITCH)).map(({ body }) => body);
const flags = scene.flags.filter(({ plug }) => samePlug(plug, POWER_SWITCH)).map(({ box }) => box);

const plug: Selection = { kind: 'plug', plug: POWER_SWITCH };
const wire: Selection = { kind: 'wire', plug: POWER_SWITCH, wire: 0 };
const finding: Selection = { kind: 'finding', id: 'any', pins: [], leads: [POWER_SWITCH.lead] };

const drawn = (scale: number) => ({ flags: flagsNeeded(scale), wires: wiresNeeded(scale) });

describe('What is chosen is outlined where it is drawn', () => {
  it('near by the plug and its flag, and of a finding the flag', () => {
    expect([bodies.length, flags.length > 0]).toEqual([1, true]);
    expect(drawn(near)).toEqual({ flags: true, wires: true });
    expect(rectsOfSelection(scene, plug, near)).toEqual([...bodies, ...flags]);
    expect(rectsOfSelection(scene, finding, near)).toEqual(flags);
    expect(rectsOfSelection(scene, wire, near)).toEqual([]);
  });

  it('the plug alone where flags are too small to be read', () => {
    expect(drawn(further)).toEqual({ flags: false, wires: true });
    for (const chosen of [plug, finding]) expect(rectsOfSelection(scene, chosen, further)).toEqual(bodies);
    expect(rectsOfSelection(scene, wire, further)).toEqual([]);
  });

  it('from afar, where no wires are drawn either, the plug for its wires too', () => {
    expect(drawn(far)).toEqual({ flags: false, wires: false });
    for (const chosen of [plug, finding, wire]) expect(rectsOfSelection(scene, chosen, far)).toEqual(bodies);
  });
});
