import type { Pin } from '../document/connector';
import type { Part } from '../document/lead';
import type { PartKind, Terminal } from '../signals/part-kind';
import { partKindOf } from '../signals/part-kinds';
import { type SignalId, signalOf } from '../signals/signals';
import type { Joint } from './joints';

/** One wire of a part and the pin it touches; none over a gap or past the edge. */
export interface Contact {
  readonly terminal: Terminal;
  readonly pin: Pin | undefined;
}

/**
 * How a part's contacts lie, by signals alone: all on pins they are made for; so if read from the
 * other end; on the pins of more than one port; not to be told, for pins of unknown meaning; or wrong.
 */
export type Verdict = 'right' | 'reversed' | 'ports-mixed' | 'unknown' | 'wrong';

export interface PartMatch {
  readonly part: Part;
  readonly kind: PartKind;
  readonly contacts: readonly Contact[];
  readonly verdict: Verdict;
}

/** How each part behind the joints of one seat lies. Parts whose wires end in other plugs are not looked for there. */
export function matchOf(joints: readonly Joint[]): readonly PartMatch[] {
  const contactsOf = new Map<Part, Contact[]>();
  for (const { part, terminal, pin } of joints) {
    if (!part || !terminal) continue;
    const contacts = contactsOf.get(part) ?? [];
    contacts.push({ terminal, pin });
    contactsOf.set(part, contacts);
  }
  return [...contactsOf].map(([part, contacts]) => {
    const kind: PartKind = partKindOf(part.kind);
    return { part, kind, contacts, verdict: verdictOf(kind, contacts) };
  });
}

/** The verdict on a part's contacts, given in the order in which they lie. */
export function verdictOf(kind: PartKind, contacts: readonly Contact[]): Verdict {
  if (clearsSettings(kind, contacts)) return 'wrong';
  const readings = [contacts, exchanged(kind, contacts)];
  if (readings.some((reading) => allSuit(kind, reading)))
    return portsOf(contacts).size > 1 ? 'ports-mixed' : 'right';
  if (allSuit(kind, readBackwards(contacts))) return 'reversed';
  const known = contacts.filter((contact) => !isUnknown(contact));
  if (known.length < contacts.length && allSuit(kind, known)) return 'unknown';
  return 'wrong';
}

/** A cap does not care which pin is which, but from the clear pin to ground it clears for as long as it sits there. */
function clearsSettings(kind: PartKind, contacts: readonly Contact[]): boolean {
  if (kind.job !== 'clear-settings') return false;
  const ids = contacts.flatMap(({ pin }) => (pin ? [signalAt(pin)] : []));
  return ids.includes('clear-settings') && ids.some((id) => signalOf(id).nature === 'ground');
}

/** The ports that the contacts touch. A ground is everybody's. */
export function portsOf(contacts: readonly Contact[]): ReadonlySet<string> {
  const own = contacts.filter(({ pin }) => pin && signalOf(signalAt(pin)).nature !== 'ground');
  return new Set(own.flatMap(({ pin }) => pin?.channel ?? []));
}

function allSuit(kind: PartKind, contacts: readonly Contact[]): boolean {
  return contacts.every((contact) => suits(kind, contact));
}

/** Whether one contact is where it should be. A spare one may also meet nothing, or a pin wired to nothing. */
function suits(kind: PartKind, { terminal, pin }: Contact): boolean {
  if (pin === undefined) return terminal.spare === true;
  const id = signalAt(pin);
  const { nature, job } = signalOf(id);
  if (terminal.spare === true && nature === 'open') return true;
  // A part that does not care which pin is which still has to lie on pins of its own job.
  return terminal.wants.length === 0 ? (job ?? pin.belongsTo) === kind.job : terminal.wants.includes(id);
}

/** Whether one wire alone could be right on a pin, read either way where the two legs may change places. */
export function couldSuit(kind: PartKind, contact: Contact): boolean {
  return suits(kind, contact) || allSuit(kind, exchanged(kind, [contact]));
}

function isUnknown({ pin }: Contact): boolean {
  return pin !== undefined && signalAt(pin) === 'unknown';
}

function signalAt(pin: Pin): SignalId {
  return pin.signal ?? 'unknown';
}

/** The same with the two exchangeable terminals in each other's place. */
function exchanged(kind: PartKind, contacts: readonly Contact[]): readonly Contact[] {
  const [one, other] = kind.exchangeable ?? [];
  const partner = (id: string) => (id === one ? other : id === other ? one : undefined);
  return contacts.map((contact) => {
    const instead = kind.terminals.find(({ id }) => id === partner(contact.terminal.id));
    return instead ? { ...contact, terminal: instead } : contact;
  });
}

/** The same terminals, with the last one's pin under the first. */
function readBackwards(contacts: readonly Contact[]): readonly Contact[] {
  return contacts.map(({ terminal }, index) => ({ terminal, pin: contacts.at(-1 - index)?.pin }));
}
