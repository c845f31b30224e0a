import { percent } from '../../boards/base/percent';
import { signalWords } from '../../boards/pinout/meter/words';
import type { ConnectorReport, IdentifyReport } from './identify-report';
import { type Paint, visible } from './terminal';

type Told = Extract<ConnectorReport, { outcome: 'told' }>;

/** Layouts that are listed; the report for programs has more. */
const LAYOUTS = 3;
/** Chances that are listed for one pin, and from which on. */
const CHANCES = { most: 3, least: 0.02 } as const;

/** What the readings say, for people to read; ends with a line break. */
export function identifyText(report: IdentifyReport, paint: Paint): string {
  const head = `${paint(visible(report.file), 'bold')} (${visible(report.name)})`;
  const lines =
    report.connectors.length === 0
      ? ['  No connector has readings. Name one by “--connector” to be told what to measure first.']
      : report.connectors.flatMap((connector) => ['', ...connectorLines(connector, paint)]);
  return `${[head, ...lines].join('\n')}\n`;
}

function connectorLines(report: ConnectorReport, paint: Paint): readonly string[] {
  const name = paint(visible(report.print || report.connector), 'bold');
  if (report.outcome === 'refused') return [`  ${name}: ${visible(report.words)}`];
  const count = `${report.readings}\u00a0${report.readings === 1 ? 'reading' : 'readings'}`;
  return [
    `  ${name}, ${count}. ${visible(report.words)}`,
    ...report.contradictions.map(({ words }) => `    ${paint('CONTRADICTION', 'red')}  ${visible(words)}`),
    ...report.layouts
      .slice(0, LAYOUTS)
      .map(({ chance, words }) => `    ${percent(chance)}  ${visible(words)}`),
    `    ${percent(report.noneOfThese)}  none of these`,
    ...report.pins.map((pin) => pinLine(pin, paint)),
    ...remainingLines(report),
    ...nextLines(report),
  ];
}

function pinLine({ pin, certain, chances }: Told['pins'][number], paint: Paint): string {
  const told = chances
    .slice(0, CHANCES.most)
    .filter(({ chance }, at) => at === 0 || chance >= CHANCES.least)
    .map((chance) => `${signalWords(chance)} ${percent(chance.chance)}`);
  const mark = certain ? `${paint('certain', 'green')}  ` : '';
  return `    pin\u00a0${visible(pin)}: ${mark}${visible(told.join('; '))}`;
}

function remainingLines({ verdict, remaining }: Told): readonly string[] {
  if (remaining === undefined || verdict === 'identified' || verdict === 'none-of-these') return [];
  const where = `    The two most probable differ on ${remaining.pins.length === 1 ? 'pin' : 'pins'} ${visible(remaining.pins.join(', '))}.`;
  const { reading } = remaining;
  return reading ? [where, `    Told apart by: ${visible(reading.words.join(' '))}`] : [where];
}

function nextLines({ next }: Told): readonly string[] {
  if (next === undefined) return ['    Nothing that is safe to measure would tell more.'];
  return [
    ...next.words.map((words, at) => `    ${at === 0 ? 'Next: ' : ''}${visible(words)}`),
    ...next.outcomes.map(({ chance, words }) => `      ${visible(words)}; chance ${percent(chance)}`),
  ];
}
