import { Check } from 'lucide-react';
import { listed } from '../../../../boards/base/listed';
import type { Pin } from '../../../../boards/document/connector';
import { ownerWords } from '../../../../boards/document/pin-words';
import { HOW_READ_WORDS, signalWords } from '../../../../boards/pinout/pin-list/list-words';
import type { HowRead, ReadPin } from '../../../../boards/pinout/pin-list/reading';
import { SeveritySign } from '../../../look/severity-sign';
import { type Meant, WordChoice } from './word-choice';

/** Readings that the person is asked about, also once an answer was given. */
const ASKED: ReadonlySet<HowRead> = new Set([
  'described',
  'guessed',
  'two-meanings',
  'no-signal',
  'not-understood',
  'chosen',
]);

interface ReadRowProps {
  readonly read: ReadPin;
  /** What the sheet holds of the pin already. */
  readonly known: Pin;
  readonly onChoose: (meant: Meant) => void;
}

/** One pin of the list: its word, what was made of it, and how. */
export function ReadRow({ read, known, onChoose }: ReadRowProps) {
  const { label, word, how, missing, signal } = read;
  return (
    <tr className={`read-row read-${how}`}>
      <th scope="row" className="mono">
        {label}
      </th>
      <td className="mono read-word">{word === '' ? <span className="soft">nothing</span> : word}</td>
      <td>
        {isAsked(read) ? (
          <WordChoice pin={label} meant={missing ? 'no-pin' : (signal ?? 'unknown')} onChoose={onChoose} />
        ) : (
          <span className="read-signal">{meaningWords(read)}</span>
        )}
        {isAsked(read) && read.or.length > 0 && (
          <span className="soft small read-known">{saidBesides(read)}</span>
        )}
        {differs(known, read) && (
          <span className="soft small read-known">
            The sheet says {signalWords(known.signal, known.missing === true)}: both are kept.
          </span>
        )}
      </td>
      <td>
        <span className="read-how">
          <HowSign how={how} />
          <span className="small">{HOW_READ_WORDS[how]}</span>
        </span>
      </td>
    </tr>
  );
}

function isAsked({ how, or }: ReadPin): boolean {
  return ASKED.has(how) || or.length > 0;
}

function HowSign({ how }: { readonly how: HowRead }) {
  if (how === 'not-understood') return <SeveritySign severity="fault" />;
  if (how === 'guessed' || how === 'two-meanings' || how === 'no-signal')
    return <SeveritySign severity="doubt" />;
  return <Check className="read-well" size={18} aria-hidden="true" />;
}

/** "ground, for reset, port A". */
function meaningWords({ missing, signal, belongsTo, channel }: ReadPin): string {
  return [
    `${signalWords(signal, missing === true)}${missing ? '' : ownerWords({ belongsTo })}`,
    ...(channel === undefined ? [] : [`port\u00a0${channel}`]),
  ].join(', ');
}

function saidBesides(read: ReadPin): string {
  return read.how === 'two-meanings'
    ? `The list says ${otherWords(read)}: choose one.`
    : `The list also says ${otherWords(read)}.`;
}

/** "tach (“TACH”) and “FROB”": what other words and lines say of the pin. */
function otherWords({ or }: ReadPin): string {
  return listed(
    or.map(({ signal, missing, name }) => {
      const said = signalWords(signal, missing === true);
      if (name === undefined) return said;
      return signal === 'unknown' ? `“${name}”` : `${said} (“${name}”)`;
    }),
  );
}

/** Whether the sheet says something else of the pin than the list does. */
function differs(known: Pin, { missing, signal }: ReadPin): boolean {
  const said = known.missing === true || (known.signal !== undefined && known.signal !== 'unknown');
  if (!said || (signal === undefined && !missing)) return false;
  return known.missing === true ? !missing : missing === true || known.signal !== signal;
}
