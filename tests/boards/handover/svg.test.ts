import { createRequire } from 'node:module';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Connector } from '../../../boards/document/connector';
import type { Lettering } from '../../../boards/handover/svg/lettering';
import { pictureSize, svgOf } from '../../../boards/handover/svg/svg';
import { xmlText } from '../../../boards/handover/svg/xml';
import { anywhere } from '../library/published';
import { boardWith, printed } from './papers';

interface Tag {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
}

/** sax, an XML parser from npm, in its strict mode: it throws at the first thing that is not XML. */
const { parser: makeParser } = createRequire(import.meta.url)('sax');

function read(xml: string) {
  const tags: Tag[] = [];
  const titles: string[] = [];
  const texts: string[] = [];
  const open: string[] = [];
  const parser = makeParser(true, {});
  parser.onerror = (thrown: Error) => {
    throw thrown;
  };
  parser.onopentag = (tag: Tag) => {
    tags.push(tag);
    open.push(tag.name);
    if (tag.name === 'title') titles.push('');
    if (tag.name === 'text') texts.push('');
  };
  parser.onclosetag = () => void open.pop();
  parser.ontext = (text: string) => {
    if (open.at(-1) === 'title') titles[titles.length - 1] += text;
    if (open.at(-1) === 'text') texts[texts.length - 1] += text;
  };
  parser.write(xml).close();
  return { tags, titles, texts };
}

const PLAIN: Lettering = { kind: 'text', style: '' };

const HOSTILE = '</text><script>alert("1")</script>&amp;<!-- ]]> \' {}';

test('Markup in any field is text in the picture, and nothing more', () => {
  const connector: Connector = {
    ...anywhere('panel-2x5'),
    print: HOSTILE,
    title: HOSTILE,
    notes: HOSTILE,
    pins: [{ pin: '1', name: HOSTILE, notes: HOSTILE, source: { kind: 'manual', where: HOSTILE } }],
  };
  const paper = printed(boardWith([connector], HOSTILE));
  const { tags, titles } = read(svgOf(paper, paper.pages, PLAIN));
  expect([...new Set(tags.map(({ name }) => name))].sort()).toEqual([
    'circle',
    'g',
    'path',
    'polygon',
    'rect',
    'style',
    'svg',
    'text',
    'title',
  ]);
  expect(titles[0]).toBe(`${HOSTILE}: pinout`);
  expect(titles).toContain(`Pin 1: unknown, called ${HOSTILE}`);
});

test('Every pin has a title that says what it is', () => {
  const connector = anywhere('panel-2x5');
  const paper = printed(boardWith([connector]));
  const { titles } = read(svgOf(paper, paper.pages, PLAIN));
  expect(titles.filter((title) => title.startsWith('Pin '))).toHaveLength(10);
  expect(titles).toContain('Pin 6: power switch, called PWR_SW+');
  expect(titles).toContain('Pin 10: no pin here');
});

test('Pages stand below each other in one picture, in real millimetres', () => {
  const connectors = ['panel-2x5', 'main-power-24'].map((id, index) => ({
    ...anywhere(id),
    id: `c${index}`,
  }));
  const paper = printed(boardWith(connectors), { paper: 'letter' });
  expect(paper.pages.length).toBeGreaterThan(1);
  const { widthMm, heightMm } = pictureSize(paper, paper.pages.length);
  const [svg] = read(svgOf(paper, paper.pages, PLAIN)).tags;
  expect(svg?.attributes).toMatchObject({
    width: `${widthMm}mm`,
    height: `${heightMm.toFixed(1)}mm`,
    viewBox: `0 0 ${widthMm} ${heightMm.toFixed(1)}`,
  });
  expect(widthMm).toBe(215.9);
});

test('Any text at all comes back from an XML parser as it went in, but for what XML has no place for', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      const { texts } = read(`<text>x${xmlText(text)}</text>`);
      const kept = text
        // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what XML 1.0 leaves out
        .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ud800-\udfff\ufffe\uffff]/gu, '\ufffd');
      // The end of a line is a line feed in XML, however it was written (XML 1.0, 2.11).
      const lines = (said: string) => said.replace(/\r\n?/g, '\n');
      expect(lines(texts[0] ?? '')).toBe(lines(`x${kept}`));
    }),
  );
});
