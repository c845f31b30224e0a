import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { domain } from './bundled/domain.mjs';

/**
 * What it costs to make the bench sheet of the demo as PDF, everything worked out anew. Beside it the same
 * package by itself: as many pages with as many lines of plain text, nothing drawn, nothing worked out.
 */
const ROUNDS = 7;
/** A second is what may pass without a sign of progress. */
const AIM_MS = 1_000;

const { makePaper, openKit } = await domain(
  'bench-sheet',
  { '/electron/paper/make-paper.ts': ['makePaper'], '/electron/paper/kit.ts': ['openKit'] },
  { external: ['pdfkit', 'fontkit', '@resvg/resvg-wasm'] },
);
const PDFDocument = createRequire(import.meta.url)('pdfkit');

const root = new URL('../../', import.meta.url);
const kit = await openKit((name) => readFile(new URL(`dist/paper/${name}`, root)));
const file = await readFile(new URL('boards/library/demo/wired.build.json', root), 'utf8');
const parts = ['steps', 'close-ups', 'meter', 'list'];
const print = { kind: 'bench-sheet', options: { paper: 'a4', turn: 0, mirrored: false, parts } };
const day = new Date(Date.UTC(2026, 10, 26));

const sheet = async () => {
  // Parsed anew, so that nothing is known from the time before.
  const order = { document: JSON.parse(file), print, format: 'pdf', page: null, scale: 1 };
  const made = await makePaper(kit, order, day);
  if (!made.ok) throw new Error(made.problem.code);
  return made.value;
};
const { allPages, bytes } = await sheet();
const svg = await makePaper(
  kit,
  { document: JSON.parse(file), print, format: 'svg', page: null, scale: 1 },
  day,
);
const lines = Buffer.from(svg.value.bytes)
  .toString('utf8')
  .match(/<text /g).length;

const ours = await times(sheet);
const plain = await times(() => plainText(allPages, lines));
const [mine, other] = [median(ours), median(plain)];
console.log(
  `bench-sheet: ${allPages} pages, ${lines} lines of text, ${Math.round(bytes.length / 1_000)} kB in ` +
    `${mine.toFixed(0)} ms (aim under ${AIM_MS}); plain lines alone ${other.toFixed(0)} ms, ` +
    `${(mine / other).toFixed(1)} times`,
);

async function plainText(pages, count) {
  const font = await readFile(new URL('dist/paper/text.woff', root));
  const pdf = new PDFDocument({ size: 'A4', autoFirstPage: false, font: null });
  const chunks = [];
  pdf.on('data', (chunk) => chunks.push(chunk));
  const ended = new Promise((resolve) => pdf.on('end', resolve));
  pdf.registerFont('text', font);
  const perPage = Math.ceil(count / pages);
  for (let page = 0; page < pages; page += 1) {
    pdf.addPage({ size: 'A4', margin: 0 });
    pdf.font('text').fontSize(8);
    for (let line = 0; line < perPage; line += 1)
      pdf.text(`Line ${line} of page ${page}`, 40, 40 + (line * 750) / perPage, { lineBreak: false });
  }
  pdf.end();
  await ended;
  return Buffer.concat(chunks);
}

async function times(work) {
  const taken = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    const began = performance.now();
    await work();
    taken.push(performance.now() - began);
  }
  return taken;
}

function median(values) {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
}
