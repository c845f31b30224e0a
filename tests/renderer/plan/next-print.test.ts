import { expect, test } from 'vitest';
import { nextPrint } from '../../../renderer/areas/document/plan/next-print';

test.each([
  ['USB_1', ['USB_1'], 'USB_2'],
  ['USB_1', ['USB_1', 'USB_2'], 'USB_3'],
  ['FAN', ['FAN'], 'FAN 2'],
  ['FAN', ['FAN', 'FAN 2'], 'FAN 3'],
  ['COM', ['USB_1'], 'COM'],
  ['', [''], ''],
])('“%s” beside %j becomes “%s”', (print, taken, next) => {
  expect(nextPrint(print, new Set(taken))).toBe(next);
});

test('a print as long as can be stays one', () => {
  const long = 'N'.repeat(200);
  expect(nextPrint(long, new Set([long])).length).toBeLessThanOrEqual(200);
});
