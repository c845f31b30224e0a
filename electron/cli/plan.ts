import { ok, type Result, refuse } from '../../boards/base/result';
import type { Build } from '../../boards/document/build';
import { leadOf, type PlugRef } from '../../boards/document/lookup';
import { bestSeating } from '../../boards/planner/best-seating';
import { differencesTo } from '../../boards/planner/differences';
import {
  conflictWords,
  differenceWords,
  helplessWords,
  nothingToSeatWords,
  planWords,
  seatWords,
  wayOutWords,
} from '../../boards/planner/words';
import type { PlanReport } from './plan-report';
import { type Paint, visible } from './terminal';

/** The plugs named by "--keep LEAD" or "--keep LEAD:PLUG", or what was expected instead. */
export function keptFrom(build: Build, named: readonly string[]): Result<readonly PlugRef[], string> {
  const kept: PlugRef[] = [];
  for (const name of named) {
    const colon = name.indexOf(':');
    const lead = leadOf(build, colon < 0 ? name : name.slice(0, colon));
    if (lead === undefined) {
      const ids = [...build.case.leads, ...build.extras].map(({ id }) => id);
      return refuse(`There is no lead “${name}” to keep. There are: ${ids.join(', ')}.`);
    }
    const plugs = lead.plugs.filter(({ id }) => colon < 0 || id === name.slice(colon + 1));
    if (plugs.length === 0)
      return refuse(
        `“${lead.id}” has no plug “${name.slice(colon + 1)}”. It has: ${lead.plugs.map(({ id }) => id).join(', ')}.`,
      );
    kept.push(...plugs.map(({ id }) => ({ lead: lead.id, plug: id })));
  }
  return ok(kept);
}

/** The best arrangement of a build, as it is printed for programs. */
export function planReport(file: string, build: Build, pinned: readonly PlugRef[]): PlanReport {
  const { plan, arrangements, unserved } = wholeSeating(build, pinned);
  return {
    format: 'leadwright/plan-report',
    version: 1,
    file,
    name: build.name,
    words: nothingToSeatWords(build) ?? planWords(plan, arrangements),
    proved: plan.proved,
    arrangements: String(arrangements),
    cost: { ...plan.cost },
    bound: { ...plan.bound },
    seats: plan.seats.map((seat) => ({ ...seat, at: [...seat.at], words: seatWords(build, seat) })),
    differences: differencesTo(build, plan.seats).map((difference) => ({
      ...difference.plug,
      words: differenceWords(build, difference),
    })),
    unserved: unserved.map((each) => ({
      ...each.plug,
      conflict: each.conflict.plugs.map((ref) => ({ ...ref })),
      words: `${conflictWords(build, each)} ${helplessWords(each)}`.trim(),
      waysOut: each.waysOut.map((way) => ({ kind: way.kind, words: wayOutWords(build, each.plug, way) })),
    })),
  };
}

function wholeSeating(build: Build, pinned: readonly PlugRef[]) {
  const news = [...bestSeating(build, { pinned })];
  const unserved = news.flatMap((each) => (each.kind === 'unserved' ? [each.unserved] : []));
  const [found] = news.flatMap((each) => (each.kind === 'plan' ? [each] : []));
  if (found === undefined) throw new Error('A seating without a plan');
  return { ...found, unserved };
}

/** The same for people to read; ends with a line break. */
export function planText(report: PlanReport, paint: Paint): string {
  const lines = [
    `${paint(visible(report.file), 'bold')} (${visible(report.name)})`,
    `  ${visible(report.words)}`,
    '',
    ...report.seats.map(({ words }) => `  ${visible(words)}`),
    ...report.unserved.flatMap(({ words, waysOut }) => [
      '',
      `  ${paint('NO PLACE', 'red')}  ${visible(words)}`,
      ...waysOut.map((way) => `    To do: ${visible(way.words)}`),
    ]),
    ...(report.differences.length === 0
      ? ['', '  The wiring in the file is this one.']
      : [
          '',
          '  From the wiring in the file:',
          ...report.differences.map(({ words }) => `    ${visible(words)}`),
        ]),
  ];
  return `${lines.join('\n')}\n`;
}
