import { readFileSync } from 'node:fs';
import type { BoardSheet } from '../../../boards/document/board-sheet';
import type { Build } from '../../../boards/document/build';
import type { CaseSheet } from '../../../boards/document/case-sheet';
import type { Document } from '../../../boards/document/document';
import { parseDocument } from '../../../boards/document/parse';

export function textOf(file: string): string {
  return readFileSync(new URL(`../../../boards/library/demo/${file}`, import.meta.url), 'utf8');
}

export function opened(file: string): Document {
  const result = parseDocument(textOf(file));
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
}

function boardOf(document: Document): BoardSheet {
  if (document.format !== 'leadwright/board') throw new Error('Not a board sheet');
  return document;
}

function caseOf(document: Document): CaseSheet {
  if (document.format !== 'leadwright/case') throw new Error('Not a case sheet');
  return document;
}

function buildOf(document: Document): Build {
  if (document.format !== 'leadwright/build') throw new Error('Not a build');
  return document;
}

export const board = boardOf(opened('bench.board.json'));
export const sheet = caseOf(opened('reading-room.case.json'));
export const wired = buildOf(opened('wired.build.json'));
export const everyCable = buildOf(opened('every-cable.build.json'));
export const letterbox = caseOf(opened('letterbox.case.json'));
export const cramped = buildOf(opened('letterbox.build.json'));
export const slips = buildOf(opened('eight-slips.build.json'));

/** Every lead of the demo, and the entry of the library that it is. */
export const LEADS: Readonly<Record<string, string>> = {
  'power-switch': 'power-switch-1x2',
  'reset-switch': 'reset-switch-1x2',
  'drive-led': 'drive-led-1x2',
  'power-led': 'power-led-1x2',
  speaker: 'speaker-1x4',
  'case-open': 'case-open-1x2',
  'front-usb': 'usb2-block-2x5',
  'card-reader': 'usb2-row-1x4',
  'front-usb3': 'usb3-block',
  'front-audio': 'hd-audio-block-2x5',
  'front-1394': 'ieee1394-block-2x5',
  'cpu-fan': 'fan-1x4',
  'rear-fan': 'fan-1x3',
  'clear-cap': 'jumper-cap-1x2',
};
