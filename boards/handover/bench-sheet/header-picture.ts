import { ok, type Result, refuse } from '../../base/result';
import type { Mm } from '../../base/units';
import type { Build } from '../../document/build';
import { nearestOf } from '../../document/problem/nearest';
import { seatedPlugs } from '../../fit/seated-plug';
import { PAPER_CAUTION } from '../caution-words';
import { type Letters, NO_SHAPE_WORDS } from '../page/letters';
import type { Drawn, Paper } from '../page/page';
import { linesOf } from '../page/paragraph';
import { lineHeight, linesAt, TYPES, type Type } from '../page/type';
import type { PaperProblem } from '../paper-problem';
import { lyingWords } from '../pinout/lying-words';
import { closeUp } from './close-up';
import { printableBuild } from './printable-build';

/** Which header, and how the board lies. */
export interface HeaderPicture extends Readonly<Build['view']> {
  readonly connector: string;
}

const EDGE_MM: Mm = 6;
/** Narrower, the cautions would be a column of single words. */
const LEAST_WIDTH_MM: Mm = 90;
const ROOM = { widthMm: 420, heightMm: 420 };
const BETWEEN_MM: Mm = 3;

/** One header with its plugs and wires as a picture by itself: what it is, the drawing, the cautions. */
export function headerPicture(
  build: Build,
  { connector: id, ...lying }: HeaderPicture,
  printedOn: string,
  letters: Letters,
): Result<Paper, PaperProblem> {
  const { measure } = letters;
  const { build: shown, replaced } = printableBuild(build, letters);
  const connector = shown.board.connectors.find((each) => each.id === id);
  if (!connector) {
    const nearest = nearestOf(
      shown.board.connectors.map((each) => each.id),
      id,
    );
    return refuse({ code: 'no-such-connector', id, ...(nearest !== undefined && { nearest }) });
  }
  const plugs = seatedPlugs(shown).filter((seated) => seated.connector === connector);
  const { tiles } = closeUp(shown, connector, plugs, lying, ROOM, measure);
  const name = connector.print.trim() || connector.title.trim() || id;
  const widthMm = Math.max(LEAST_WIDTH_MM, ...tiles.map((tile) => tile.widthMm)) + 2 * EDGE_MM;
  const items: Drawn[] = [];
  let y = EDGE_MM;
  const say = (text: string, type: Type) => {
    const lines = linesOf(text, widthMm - 2 * EDGE_MM, type, measure);
    items.push(...linesAt(lines, { x: EDGE_MM, y }, type, measure));
    y += lines.length * lineHeight(type);
  };
  say(name, TYPES.heading);
  say(`${shown.name} · board ${shown.board.name} · ${lyingWords(lying)}, not to scale`, TYPES.soft);
  y += BETWEEN_MM;
  for (const tile of tiles) {
    items.push(...tile.draw({ x: EDGE_MM, y }, { pages: 1, pageOf: () => undefined }));
    y += tile.heightMm + BETWEEN_MM;
  }
  if (replaced) say(NO_SHAPE_WORDS, TYPES.least);
  say(`${PAPER_CAUTION} Drawn ${printedOn}.`, TYPES.least);
  const size = { name: 'Picture', widthMm, heightMm: y + EDGE_MM };
  const title = `${build.name}: ${name}`;
  return ok({ title, size, contents: [], pages: [{ words: title, items }] });
}
