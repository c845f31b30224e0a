import { beforeAll, describe, expect, it } from 'vitest';
import { analyse } from '../../boards/analyse';
import { circuitOf } from '../../boards/circuit/circuit';
import { USUAL } from '../../boards/circuit/corner';
import { RUNNING } from '../../boards/circuit/machine-state';
import type { Build } from '../../boards/document/build';
import { parseDocument } from '../../boards/document/parse';
import { serialize } from '../../boards/document/serialize';
import { measureByTable } from '../../boards/drawing/measure';
import { perform, startHistory, undo } from '../../boards/edit/history';
import { neighbourhoodOf } from '../../boards/handover/meter/neighbourhood';
import { sceneOf } from '../../renderer/canvas/scene/scene-of';
import { largeBuild, sizeOf } from './large-build';
import { wired } from './library/demo-files';

/** So many of the demo come to 10,000 pins. */
const COPIES = 63;
let large: Build;

beforeAll(() => {
  large = opened(largeBuild(wired, COPIES, { cables: 500, loose: 118 }));
}, 60_000);

function opened(build: Build): Build {
  const result = parseDocument(serialize(build));
  if (!result.ok || result.value.format !== 'leadwright/build') throw new Error(JSON.stringify(result));
  return result.value;
}

function edited(build: Build): Build {
  const [seat] = build.seats;
  if (seat === undefined) throw new Error('Nothing is seated');
  const result = perform(startHistory(build), {
    name: 'unseat-plug',
    args: { lead: seat.lead, plug: seat.plug },
  });
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  expect(undo(result.value).present).toBe(build);
  return result.value.present;
}

describe('a build with 10,000 pins, 1,000 leads and 500 cables', () => {
  it('is as large as that, opens, and is saved as the same', () => {
    expect(sizeOf(large)).toMatchObject({ leads: 1_000, cables: 500, seats: 882 });
    expect(sizeOf(large).pins).toBeGreaterThanOrEqual(10_000);
    expect(serialize(opened(large))).toBe(serialize(large));
  });

  it('has as many findings as all its copies together', () => {
    const single = analyse(opened(largeBuild(wired, 1))).findings.length;
    const many = analyse(large).findings.filter(({ code }) => code !== 'lead-left-over').length;
    expect(many).toBeGreaterThanOrEqual(COPIES * Math.max(0, single - 1));
  });

  it('is after an edit the same in all that the edit does not touch: nothing of it is worked out again', () => {
    const [before, next] = [analyse(large), edited(large)];
    const after = analyse(next);
    const [gone] = large.seats;
    const kept = before.joints.filter(({ seat }) => seat !== gone);
    expect(after.joints).toHaveLength(kept.length);
    expect(after.joints.every((joint, at) => joint === kept[at])).toBe(true);
    const [then, now] = [circuitOf(large), circuitOf(next)];
    const solvedAnew = now.elements.filter(
      ({ id }) => now.solution(id, RUNNING, USUAL) !== then.solution(id, RUNNING, USUAL),
    );
    // Of one machine's wiring at most, never of all machines'.
    expect(solvedAnew.length).toBeLessThan(2 * (circuitOf(opened(largeBuild(wired, 1))).elements.length + 1));
  });

  it('is drawn after an edit with the blocks that it was drawn with', () => {
    const draw = (build: Build) => sceneOf(build, { view: build.view, measure: measureByTable }).blocks;
    const [before, after] = [draw(large), draw(edited(large))];
    expect(after.filter((block, at) => block !== before[at]).length).toBeLessThanOrEqual(1);
  });

  it('is measured lead by lead: what a meter shows depends on no more leads than in a small build', () => {
    const around = (build: Build) => {
      const near = neighbourhoodOf(build);
      return Math.max(...build.case.leads.map(({ id }) => near.aroundLead(id).case.leads.length));
    };
    expect(around(large)).toBe(around(opened(largeBuild(wired, 1))));
  });
});
