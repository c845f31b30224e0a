import type { Mm } from '../../base/units';
import type { Build } from '../../document/build';
import { seatOf } from '../../document/lookup';
import { plugName } from '../../document/names';
import { lengthWords } from '../fill/length-words';
import type { AsLaid, LaidRun } from './as-laid';
import { type CableFamily, cableFamilyOf } from './cable-family';
import { runName } from './end-names';

/** What a person may want to know of a run that reaches: habits of the trade, none of which keeps it from being laid. */
type CableRemark =
  | { readonly code: 'data-too-long'; readonly lengthMm: Mm }
  | { readonly code: 'data-long'; readonly lengthMm: Mm }
  /** A front audio lead along one path with what makes noise in it. */
  | { readonly code: 'audio-beside'; readonly runs: readonly string[] }
  /** A plug that nobody needs hangs loose beside one that is in use. */
  | { readonly code: 'loose-plug'; readonly plug: string };

/** Serial ATA allows 1 m of internal cable (from memory); half of that is calmer (common practice, no source). */
const MOST_DATA_MM: Mm = 1_000;
const CALM_DATA_MM: Mm = 500;

/** What disturbs a lead of small voltages that lies along it (common practice, no source). */
const NOISY: readonly CableFamily[] = ['supply', 'fan'];

/** What is worth a look about one run, by the habits of the trade. */
export function cableRemarks(build: Build, laid: AsLaid, run: LaidRun): readonly CableRemark[] {
  const family = cableFamilyOf(build, run.lead);
  const { lengthMm } = run.run;
  const remarks: CableRemark[] = [];
  if (family === 'data' && lengthMm > MOST_DATA_MM) remarks.push({ code: 'data-too-long', lengthMm });
  else if (family === 'data' && lengthMm > CALM_DATA_MM) remarks.push({ code: 'data-long', lengthMm });
  if (family === 'audio' && run.state.kind === 'laid') {
    const own = new Set(run.state.route.paths);
    const beside = laid.runs.filter(
      ({ lead, state }) =>
        state.kind === 'laid' &&
        NOISY.includes(cableFamilyOf(build, lead)) &&
        state.route.paths.some((path) => own.has(path)),
    );
    if (beside.length > 0)
      remarks.push({ code: 'audio-beside', runs: beside.map((each) => runName(build, each.lead, each.run)) });
  }
  const seated = run.lead.plugs.filter(({ id }) => seatOf(build, { lead: run.lead.id, plug: id }));
  for (const { id } of run.lead.plugs)
    if (seated.length > 0 && run.lead.parts.length > 0 && !seated.some((plug) => plug.id === id))
      remarks.push({ code: 'loose-plug', plug: plugName(build, { lead: run.lead.id, plug: id }) });
  return remarks;
}

/** A remark in a sentence or two. */
export function cableRemarkWords(remark: CableRemark): string {
  switch (remark.code) {
    case 'data-too-long':
      return `It is ${lengthWords(remark.lengthMm)} long, and Serial ATA allows ${lengthWords(MOST_DATA_MM)}. Take a shorter one.`;
    case 'data-long':
      return `It is ${lengthWords(remark.lengthMm)} long. Up to ${lengthWords(MOST_DATA_MM)} is allowed; ${lengthWords(CALM_DATA_MM)} or less gives less trouble (common practice).`;
    case 'audio-beside': {
      const [first, ...more] = remark.runs;
      const others = more.length === 0 ? (first ?? '') : `${first ?? ''} and ${more.length}\u00a0more`;
      return `It lies along one path with ${others}: keep sound away from supply and fans, or it hums (common practice).`;
    }
    case 'loose-plug':
      return `${remark.plug} is not in use. Tie it back so that it touches nothing (common practice).`;
  }
}
