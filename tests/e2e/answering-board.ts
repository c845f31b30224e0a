import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { PinReading } from '../../boards/document/pin-reading';
import type { MeterQuestion } from '../../boards/pinout/meter/identification';
import { answerWords } from '../../boards/pinout/meter-run/outcome-words';
import type { SignalId } from '../../boards/signals/signals';
import { simulatedMeter } from '../boards/pinout/meter/simulated-meter';
import { plain } from './reading';

/** A board that answers every reading from what its pins truly are, with the values that are usual behind them. */
export interface AnsweringBoard {
  readonly answer: (question: MeterQuestion) => PinReading;
}

export function answeringBoard(truth: ReadonlyMap<string, SignalId>): AnsweringBoard {
  return simulatedMeter(truth, () => 0.5, { noise: 0, wrong: 0, usual: true });
}

const WORDS: readonly (readonly [
  RegExp,
  (a: string, b: string, supply: 'standby' | 'running') => MeterQuestion,
])[] = [
  [/^Resistance from pin (\S+) to ground$/, (pin) => ({ kind: 'ohms', pin })],
  [/^Voltage at pin (\S+), (in standby|running)$/, (pin, _, supply) => ({ kind: 'volts', pin, supply })],
  [/^Continuity between pins (\S+) and (\S+)$/, (a, b) => ({ kind: 'continuity', pins: [a, b] })],
  [
    /^A brief touch of pins (\S+) and (\S+), (in standby|running)$/,
    (a, b, supply) => ({ kind: 'touch', pins: [a, b], supply }),
  ],
  [
    /^LED tester from pin (\S+) \(\+\) to pin (\S+) \(−\), (in standby|running)$/,
    (plus, minus, supply) => ({ kind: 'lamp', plus, minus, supply }),
  ],
];

/** The question that a person reads in the window. */
export function questionIn(words: string): MeterQuestion {
  for (const [pattern, make] of WORDS) {
    const [whole, first = '', second = ''] = pattern.exec(words) ?? [];
    if (whole !== undefined) return make(first, second, words.endsWith('running') ? 'running' : 'standby');
  }
  throw new Error(`No reading is meant by “${words}”`);
}

/** What a person types who sees that on the meter, three figures long. */
export function typedFor(reading: PinReading): string {
  switch (reading.kind) {
    case 'ohms': {
      if (reading.ohms === 'open') return 'OL';
      const [size, prefix] = reading.ohms >= 1e6 ? [1e6, 'M'] : reading.ohms >= 1e3 ? [1e3, 'k'] : [1, ''];
      return `${Number((reading.ohms / size).toPrecision(3))}${prefix}`;
    }
    case 'volts':
      return reading.volts.toFixed(2);
    case 'continuity':
      return answerWords(reading.joined ? 'joined' : 'apart');
    case 'touch':
      return answerWords(reading.did);
    case 'lamp':
      return answerWords(reading.showed);
  }
}

/** The name of the proposed reading, once it is the one for all that was noted. */
export async function proposedIn(page: Page): Promise<string> {
  const next = page.getByRole('region', { name: 'Next reading' });
  await expect.poll(() => next.getAttribute('aria-busy'), { timeout: 20_000 }).toBe('false');
  return plain(await next.locator('.meter-name').textContent());
}
