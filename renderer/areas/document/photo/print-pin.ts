import type { Connector, Pin } from '../../../../boards/document/connector';
import { LIMITS } from '../../../../boards/document/limits';
import { pinOf } from '../../../../boards/document/lookup';
import type { Command } from '../../../../boards/edit/command';
import { alternativeOf } from '../../../../boards/edit/merge-pin';
import type { SignalId } from '../../../../boards/signals/signals';

/** What somebody reads beside a pin on the photo. */
export interface PrintRead {
  readonly signal?: SignalId;
  readonly name?: string;
  readonly missing?: boolean;
}

/** Whether it is this photo that says what is known of a pin. */
export function isPrinted({ source }: Pin, title: string): boolean {
  return source?.kind === 'print' && source.where === printedWhere(title);
}

/** Where a print was read: the photo by its title, as far as a line holds it. */
function printedWhere(title: string): string {
  return `photo ${title}`.slice(0, LIMITS.textLength);
}

/**
 * The command that writes what was read on a photo. What the same photo said before is replaced, as reading
 * twice is one statement; what another source said is kept beside it.
 */
export function printCommand(connector: Connector, label: string, read: PrintRead, title: string): Command {
  const known = pinOf(connector, label);
  const ours = isPrinted(known, title);
  const nothingSaid = known.signal === undefined && known.name === undefined && known.missing === undefined;
  const pin = statement(label, ours ? known : {}, read, printedWhere(title));
  if (ours || nothingSaid)
    return { name: 'change-pin', args: { connector: connector.id, pin: { ...kept(known), ...pin } } };
  if (known.missing && read.missing === false && read.signal === undefined)
    return { name: 'change-pin', args: { connector: connector.id, pin: standing(known, pin) } };
  return { name: 'fill-pins', args: { connector: connector.id, pins: [pin] } };
}

/** A pin that the print shows where another source has none: that one is kept beside it, though nothing is read. */
function standing(known: Pin, pin: Pin): Pin {
  const { confidence: _, ...rest } = kept(known);
  return { ...rest, ...pin, alternatives: [...(known.alternatives ?? []), alternativeOf(known)] };
}

function statement(label: string, before: Partial<Pin>, read: PrintRead, where: string): Pin {
  const missing = read.missing ?? before.missing ?? false;
  const [signal, name] = [read.signal ?? before.signal, read.name ?? before.name];
  return {
    pin: label,
    ...(missing && { missing: true as const }),
    ...(!missing && signal !== undefined && { signal }),
    ...(name !== undefined && name !== '' && { name }),
    source: { kind: 'print', where },
  };
}

/** What a print does not speak of and a change must not lose. */
function kept({ signal: _, name: __, missing: ___, source: ____, ...rest }: Pin): Partial<Pin> {
  return rest;
}
