import type { Build, Seat } from '../../../../boards/document/build';
import type { Finding } from '../../../../boards/findings/finding';
import { wordsOf } from '../../../../boards/findings/words';
import { overhangWords, refusalWords } from '../../../../boards/fit/fit-words';
import { meetingWords, seatTurnWords, seatWords } from '../../../words/seat-words';
import { SEVERITY_WORDS } from '../../../words/severity-words';
import type { Preview } from './preview';

/** How many findings are read out while a plug is moved about. */
const READ_OUT = 3;

/** "PANEL, pins 6 and 8, turned by half: power switch and ground." */
export function placeWords(build: Build, seat: Seat): string {
  const turn = seatTurnWords(build, seat);
  return `${seatWords(build, seat)}${turn === '' ? '' : `, ${turn}`}: ${meetingWords(build, seat)}.`;
}

/** Whether it fits, or every reason why not. */
export function fitWords(build: Build, { fit }: Preview): string {
  if (fit.refusals.length > 0) {
    return `Does not fit. ${fit.refusals.map((refusal) => refusalWords(refusal, build)).join(' ')}`;
  }
  const overhang = overhangWords(fit.overhang);
  return overhang === '' ? 'Fits.' : `Fits. ${overhang}`;
}

/** What would be found with the plug there; empty where it does not fit. */
export function consequenceWords(preview: Preview): string {
  if (preview.build === undefined) return '';
  const { build, coming } = preview;
  if (coming.length === 0) return 'Nothing new would be found.';
  const said = coming.slice(0, READ_OUT).map((finding) => saidOf(finding, build));
  const more = coming.length - said.length;
  return `Would be found: ${said.join(' ')}${more > 0 ? ` And ${more} more.` : ''}`;
}

function saidOf(finding: Finding, build: Build): string {
  return `${SEVERITY_WORDS[finding.severity]}: ${wordsOf(finding, build).title}`;
}

/** All of it, for the live region. */
export function candidateWords(build: Build, seat: Seat, preview: Preview): string {
  return [placeWords(build, seat), fitWords(build, preview), consequenceWords(preview)]
    .filter((part) => part !== '')
    .join(' ');
}
