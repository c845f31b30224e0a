import type { Connector, Pin } from '../../document/connector';
import { pinOf } from '../../document/lookup';
import { gridIndex } from '../../document/numbering';
import { claimWords, SOURCE_WORDS } from '../../document/pin-words';
import { contradictions } from '../../document/sureness';
import { parameterOf } from '../../signals/parameters';
import type { SourceList } from './pin-rows';

/** What is said of single pins beside the table: other sources, stated values, wake jumpers, notes. */
export function pinNotes(connector: Connector, sources: SourceList): readonly string[] {
  return gridIndex(connector.grid).positions.flatMap(({ label }) => {
    const pin = pinOf(connector, label);
    return [...disputes(pin, sources), ...values(pin), ...wake(pin), ...notes(pin)].map(
      (words) => `Pin\u00a0${label}: ${words}`,
    );
  });
}

function disputes(pin: Pin, sources: SourceList): readonly string[] {
  return contradictions(pin).map((other) => {
    const letter = sources.letterOf(other.source);
    const words = SOURCE_WORDS[other.source.kind];
    const called =
      other.name === undefined || other.name.trim() === '' ? '' : `, called ${other.name.trim()}`;
    return `another source says ${claimWords(other)}${called} (${letter === '' ? words : `${words}\u00a0${letter}`}).`;
  });
}

const UNITS = { V: 'V', A: 'A', ohm: 'Ω' } as const;

function values({ values: stated = [] }: Pin): readonly string[] {
  return stated.map(({ parameter, value }) => {
    const { name, unit } = parameterOf(parameter);
    return `${name} ${String(value).replace('-', '−')}\u00a0${UNITS[unit]}.`;
  });
}

function wake({ wakeSupply }: Pin): readonly string[] {
  if (wakeSupply === undefined) return [];
  return [`a jumper lays ${wakeSupply === 'main' ? 'the main' : 'the standby'} +5\u00a0V on it.`];
}

function notes({ notes: said }: Pin): readonly string[] {
  return said === undefined || said.trim() === '' ? [] : [said.trim()];
}
