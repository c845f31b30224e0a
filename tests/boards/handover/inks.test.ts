import { expect, test } from 'vitest';
import { INKS, type Ink } from '../../../boards/handover/page/inks';
import { anywhere } from '../library/published';
import { boardWith, everythingOn, printed } from './papers';

/** Relative luminance, WCAG 2.2. */
function luminance(ink: Ink): number {
  const value = Number.parseInt(INKS[ink].slice(1, 3), 16) / 255;
  return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
}

/** Contrast ratio, WCAG 2.2: 4.5 for text, 3 for lines that mean something. */
function contrast(a: Ink, b: Ink): number {
  const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light + 0.05) / (dark + 0.05);
}

test('Every ink is a grey: red, green and blue alike', () => {
  for (const ink of Object.values(INKS)) expect(ink).toMatch(/^#([0-9a-f]{2})\1\1$/);
});

test('Text on every ground of a page has a contrast of at least 4.5', () => {
  const page = printed(boardWith([anywhere('panel-2x5'), anywhere('speaker-1x4')]));
  const texts = page.pages
    .flatMap(everythingOn)
    .flatMap(({ item }) => (item.kind === 'text' ? [item.ink] : []));
  expect(new Set(texts).size).toBeGreaterThan(1);
  for (const ink of new Set(texts))
    for (const ground of ['paper', 'faint'] as const)
      expect(contrast(ink, ground)).toBeGreaterThanOrEqual(4.5);
});

test('Lines that mean something have one of at least 3', () => {
  for (const ink of ['ink', 'soft', 'line'] as const)
    expect(contrast(ink, 'paper')).toBeGreaterThanOrEqual(3);
});
