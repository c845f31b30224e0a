import { z } from 'zod';
import { LifeZ } from './process-life';
import { sha256 } from './stamp';

/** The first line of a recovery copy; the work itself follows, byte by byte as it would be saved. */
const RecoveryHeaderZ = z.strictObject({
  format: z.literal('leadwright/recovery'),
  version: z.literal(1),
  owner: LifeZ,
  /** Counts the copies of a session; of two whole ones the higher is the newer, whatever the clock said. */
  serial: z.int().min(0),
  /** The file the work belongs to, and what it was when the work began. */
  path: z.string().nullable(),
  stamp: z.string().nullable(),
  name: z.string().min(1).max(255),
  savedMs: z.number(),
  changes: z.int().min(0),
  bytes: z.int().min(0),
  sha256: z.string().length(64),
});

type RecoveryHeader = z.infer<typeof RecoveryHeaderZ>;
export type RecoveryNote = Omit<RecoveryHeader, 'format' | 'version' | 'bytes' | 'sha256'>;

export interface RecoveryCopy {
  readonly header: RecoveryHeader;
  readonly text: string;
}

/** A newer program's copy is left alone; a broken one is set aside. */
export type Decoded = RecoveryCopy | 'newer' | 'broken';

export function encodeCopy(note: RecoveryNote, text: string): string {
  const header: RecoveryHeader = {
    format: 'leadwright/recovery',
    version: 1,
    ...note,
    bytes: Buffer.byteLength(text, 'utf8'),
    sha256: sha256(text),
  };
  return `${JSON.stringify(header)}\n${text}`;
}

/** The header's own length and hash say whether the copy is whole: one cut off in writing is not taken for the work. */
export function decodeCopy(content: string): Decoded {
  const lineEnd = content.indexOf('\n');
  if (lineEnd < 0) return 'broken';
  const raw = fromJson(content.slice(0, lineEnd));
  const header = RecoveryHeaderZ.safeParse(raw);
  if (!header.success) return NewerZ.safeParse(raw).success ? 'newer' : 'broken';
  const text = content.slice(lineEnd + 1);
  const whole = Buffer.byteLength(text, 'utf8') === header.data.bytes && sha256(text) === header.data.sha256;
  return whole ? { header: header.data, text } : 'broken';
}

const NewerZ = z.looseObject({ format: z.literal('leadwright/recovery'), version: z.int().min(2) });

function fromJson(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return undefined;
  }
}
