import './plain-zod';

import type { Build } from '../../boards/document/build';
import { jsonSchemaOf } from '../../boards/document/json-schema';
import { boardIn } from '../../boards/handover/lay-paper';
import { BUILT } from '../built';
import { check, openNamed, reportOn } from './check';
import type { FileReport } from './check-report';
import { diagnoseReport, evidenceFrom, typicalBuild, withLogged } from './diagnose';
import { weighedBuild } from './diagnose-priors';
import type { DiagnoseRequest } from './diagnose-request';
import { diagnoseText } from './diagnose-words';
import { EXIT, type ExitCode, exitCodeOf } from './exit-code';
import { explanation, type Wanted, wantedFrom } from './explain';
import { HELP } from './help-words';
import { connectorsWanted, identifyReport } from './identify';
import { identifyText } from './identify-words';
import { listText } from './list';
import { keptFrom, planReport, planText } from './plan';
import { reportText } from './report-words';
import { type Request, requestFrom } from './request';
import { sheet, writtenWords } from './sheet';
import type { SheetRequest } from './sheet-request';
import { paintFor, visible, visibleJson } from './terminal';

const { env, stderr, stdout } = process;

async function run(request: Request): Promise<ExitCode> {
  switch (request.command) {
    case 'help':
      stdout.write(HELP);
      return EXIT.fine;
    case 'version':
      stdout.write(`${BUILT.version}\n`);
      return EXIT.fine;
    case 'schema':
      stdout.write(`${JSON.stringify(jsonSchemaOf(request.kind), null, 2)}\n`);
      return EXIT.fine;
    case 'check': {
      const report = await check(request.files);
      if (request.json) stdout.write(`${visibleJson(report)}\n`);
      for (const file of request.json ? [] : report.files) {
        const stream = file.outcome === 'refused' ? stderr : stdout;
        stream.write(reportText(file, paintFor(stream, env)));
      }
      return exitCodeOf(report);
    }
    case 'sheet':
      return printSheet(request);
    case 'list':
      return list(request);
    case 'plan':
      return plan(request);
    case 'identify':
      return identify(request);
    case 'diagnose':
      return diagnose(request);
    case 'explain':
      return explain(request.files, wantedFrom(request.wanted));
  }
}

async function printSheet(request: SheetRequest): Promise<ExitCode> {
  const report = await sheet(request);
  const { file } = report;
  const refused = file.outcome === 'refused';
  if (request.json) stdout.write(`${visibleJson(report)}\n`);
  else if (refused) stderr.write(reportText(file, paintFor(stderr, env)));
  else stdout.write(`${visible(writtenWords(file))}\n`);
  return refused ? EXIT.badInput : EXIT.fine;
}

/** The best arrangement of one build; 1 where a plug has no place. */
async function plan({ file, keep, json }: Extract<Request, { command: 'plan' }>): Promise<ExitCode> {
  const build = await openBuild(file);
  if (build === null) return EXIT.badInput;
  const kept = keptFrom(build, keep);
  if (!kept.ok) {
    stderr.write(`${visible(kept.problem)}\n`);
    return EXIT.badInput;
  }
  const report = planReport(file, build, kept.value);
  stdout.write(json ? `${visibleJson(report)}\n` : planText(report, paintFor(stdout, env)));
  return report.unserved.length > 0 ? EXIT.wrong : EXIT.fine;
}

async function list({ file, list: kind, csv }: Extract<Request, { command: 'list' }>): Promise<ExitCode> {
  const build = await openBuild(file);
  if (build === null) return EXIT.badInput;
  stdout.write(listText(build, kind, csv));
  return EXIT.fine;
}

/** The build in a file; null after it was said why there is none. */
async function openBuild(file: string): Promise<Build | null> {
  const opened = await openNamed(file);
  if (opened.ok && opened.value.format === 'leadwright/build') return opened.value;
  stderr.write(
    opened.ok
      ? `${visible(file)}: expected a build, found a sheet. Only a build has leads on a board.\n`
      : reportText(opened.problem, paintFor(stderr, env)),
  );
  return null;
}

/** What readings say of a board's pins; 1 where some contradict each other, 2 where a connector cannot be told. */
async function identify(request: Extract<Request, { command: 'identify' }>): Promise<ExitCode> {
  const { file, connectors, json } = request;
  const opened = await openNamed(file);
  if (!opened.ok) {
    stderr.write(reportText(opened.problem, paintFor(stderr, env)));
    return EXIT.badInput;
  }
  const board = boardIn(opened.value);
  if (board === null) {
    stderr.write(`${visible(file)}: expected a board sheet or a build, found a case sheet.\n`);
    return EXIT.badInput;
  }
  const wanted = connectorsWanted(board, connectors);
  if (!wanted.ok) {
    stderr.write(`${visible(file)}: ${visible(wanted.problem)}\n`);
    return EXIT.badInput;
  }
  const report = identifyReport(file, board, wanted.value);
  stdout.write(json ? `${visibleJson(report)}\n` : identifyText(report, paintFor(stdout, env)));
  if (report.connectors.some(({ outcome }) => outcome === 'refused')) return EXIT.badInput;
  const contradicted = report.connectors.some(
    (one) => one.outcome === 'told' && one.contradictions.length > 0,
  );
  return contradicted ? EXIT.wrong : EXIT.fine;
}

/** What may be wrong and what to try next; 1 where it has to stop, or where the observations contradict each other. */
async function diagnose(request: DiagnoseRequest): Promise<ExitCode> {
  const { file, json } = request;
  const build = file === null ? typicalBuild() : await openBuild(file);
  if (build === null) return EXIT.badInput;
  const evidence = evidenceFrom(build, request);
  if (!evidence.ok) {
    stderr.write(`${visible(evidence.problem)}\n`);
    return EXIT.badInput;
  }
  const weighed = weighedBuild(build, request.prior);
  if (!weighed.ok) {
    stderr.write(`${visible(weighed.problem)}\n`);
    return EXIT.badInput;
  }
  const report = diagnoseReport(file, weighed.value, withLogged(build, evidence.value));
  stdout.write(json ? `${visibleJson(report)}\n` : diagnoseText(report, paintFor(stdout, env)));
  const { stop, contradicted, excluding } = report;
  return stop.length + contradicted.length + excluding.length > 0 ? EXIT.wrong : EXIT.fine;
}

/** Explains findings of each file; the exit status is that of its check, unless the finding is not there. */
async function explain(names: readonly string[], wanted: Wanted): Promise<ExitCode> {
  const files: FileReport[] = [];
  let missing = false;
  for (const name of names) {
    const opened = await openNamed(name);
    const report = opened.ok ? reportOn(name, opened.value) : opened.problem;
    files.push(report);
    if (!opened.ok || opened.value.format !== 'leadwright/build') {
      stderr.write(reportText(report, paintFor(stderr, env)));
      continue;
    }
    const told = explanation(opened.value, wanted, paintFor(stdout, env));
    if (told.ok) stdout.write(told.value);
    else stderr.write(`${visible(name)}: ${visible(told.problem)}\n`);
    missing ||= !told.ok;
  }
  return missing ? EXIT.badInput : exitCodeOf({ files });
}

// Whoever reads our output may have seen enough: `leadwright check ... | head`.
for (const stream of [stdout, stderr]) stream.on('error', () => undefined);

const request = requestFrom(process.argv.slice(2));
if (request.ok) {
  process.exitCode = await run(request.value).catch((thrown) => {
    stderr.write(`Leadwright made a mistake of its own: ${visible(String(thrown))}\nPlease report it.\n`);
    return EXIT.ownBug;
  });
} else {
  stderr.write(`${visible(request.problem)}\nleadwright --help shows what there is.\n`);
  process.exitCode = EXIT.badInput;
}
