import { analyse } from '../../boards/analyse';
import type { Build } from '../../boards/document/build';
import type { Document } from '../../boards/document/document';
import { sheetHead } from '../../boards/document/sheet-head';
import { measureByTable } from '../../boards/drawing/measure';
import { wordsOf } from '../../boards/findings/words';
import { BENCH_PARTS } from '../../boards/handover/bench-sheet/options';
import { fromToCsv } from '../../boards/handover/from-to-csv';
import { boardIn, layPaper } from '../../boards/handover/lay-paper';
import type { Print } from '../../boards/handover/order';
import { PLAIN_OPTIONS } from '../../boards/handover/pinout/options';
import { svgOf } from '../../boards/handover/svg/svg';
import { identifyPins } from '../../boards/pinout/meter/identify';
import { sceneOf } from '../../renderer/canvas/scene/scene-of';

const LETTERS = { measure: measureByTable, has: () => true };
const DAY = '26 November 2026';
/** Meter readings on more positions than this take the time of many mutants. */
const FEW_POSITIONS = 8;

/**
 * Does with an opened document what the program does with one: shows it, checks it, prints it. Throws
 * where something of that does, or where a number gets lost in it.
 */
export function workWith(document: Document): void {
  if (document.format !== 'leadwright/build') sheetHead(document);
  if (document.format === 'leadwright/build') workWithBuild(document);
  const board = boardIn(document);
  if (board !== null) {
    layOut(document, { kind: 'pinout', options: PLAIN_OPTIONS });
    const measured = board.connectors.find(
      ({ readings, grid }) => readings && grid.rows * grid.cols <= FEW_POSITIONS,
    );
    if (measured !== undefined) identifyPins(measured);
  }
}

function workWithBuild(build: Build): void {
  const { findings } = analyse(build);
  for (const finding of findings) lost(JSON.stringify(wordsOf(finding, build)), 'the words of a finding');
  lost(fromToCsv(build), 'the from-to list');
  const scene = sceneOf(build, { view: build.view, measure: measureByTable });
  lost(JSON.stringify(scene), 'the scene');
  const { view } = build;
  layOut(build, { kind: 'bench-sheet', options: { paper: 'a4', ...view, parts: [...BENCH_PARTS] } });
}

function layOut(document: Document, print: Print): void {
  const paper = layPaper(document, print, DAY, LETTERS);
  if (!paper.ok) return;
  const svg = svgOf(paper.value, paper.value.pages, { kind: 'text', style: '' });
  if (/[^a-z]NaN[^a-z]|Infinity/.test(svg.replace(/>[^<]*</g, '><')))
    throw new Error(`A number was lost in the ${print.kind}`);
}

/** Names come from the document, so that only what no name was given as can be looked for. */
function lost(text: string, what: string): void {
  if (/\[object Object\]|\bundefined\b/.test(text)) throw new Error(`A value was lost in ${what}`);
}
