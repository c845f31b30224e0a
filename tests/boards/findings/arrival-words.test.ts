import { expect, test } from 'vitest';
import { arrivalWords } from '../../../boards/findings/words/arrival';
import { bench } from './harness';
import { plain, supplies } from './supplies';

const { build } = supplies({ cables: 'birch', outlets: 'birch' }).bench;
const told = (connector: string, pin: string) => plain(arrivalWords(build, { connector, pin }));

// Serial ATA 1.0a power segment, from a hardware handbook, Table 13-7; microATX specification v1.2, Figure 8.
test.each([
  ['disk-power', '7', '+5 V from pin 1 of DRIVES 1 of BIRCH'],
  ['disk-power', '13', '+12 V from pin 3 of DRIVES 1 of BIRCH'],
  ['disk-power', '4', 'ground from pin 2 of DRIVES 1 of BIRCH'],
  ['main', '9', '+5 V from pin 9 of MAIN of BIRCH'],
  ['main', '14', '−12 V from pin 14 of MAIN of BIRCH'],
])('%s pin %s: %s', (connector, pin, words) => {
  expect(told(connector, pin)).toBe(words);
});

test('a pin that no wire leads to gets nothing, and of one that gives nothing is said', () => {
  expect(told('disk-power', '11')).toBe('nothing');
  expect(told('birch-drives-1', '1')).toBe('');
});

test('a board by itself gives, and nothing is told of what it would get', () => {
  const alone = bench().header('cpu-power-2x4', 'cpu').build;
  expect(arrivalWords(alone, { connector: 'cpu', pin: '5' })).toBe('');
});
