import type { Build } from '../document/build';
import type { Finding, FindingCode, FindingOf } from './finding';
import { RULES } from './rules/index';
import type { Said, WordsFor } from './words/finding-words';
import { LEFT_OVER_WORDS } from './words/left-over';
import { PANEL_WORDS } from './words/panel';
import { PORT_WORDS } from './words/ports';
import { POWER_WORDS } from './words/power';
import { SEAT_WORDS } from './words/seats';
import { STANDOFF_WORDS } from './words/standoffs';

const WORDS: WordsFor<FindingCode> = {
  ...SEAT_WORDS,
  ...PANEL_WORDS,
  ...PORT_WORDS,
  ...POWER_WORDS,
  ...LEFT_OVER_WORDS,
  ...STANDOFF_WORDS,
};

const SOURCES = new Map(RULES.map(({ id, source }) => [id, source]));

/** A finding as it is told to people. */
interface FindingWords extends Said {
  /** The published document it rests on, or that there is none. */
  readonly source: string;
}

/** The words of a finding of the given build: what would happen, why, and where that was read. */
export function wordsOf(finding: Finding, build: Build): FindingWords {
  return { ...said(finding, build), source: SOURCES.get(finding.code) ?? '' };
}

function said<Code extends FindingCode>(finding: FindingOf<Code>, build: Build): Said {
  return WORDS[finding.code](finding, build);
}
