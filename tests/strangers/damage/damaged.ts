import { encodeCopy } from '../../../electron/host/recovery-copy';
import type { Dice } from '../../boards/dice';
import { KINDS, type Kind, type SoundFiles } from '../originals';
import { damagedBytes } from './bytes';
import { bentText } from './tree';

const TREES: readonly Kind[] = ['build', 'board', 'case', 'settings', 'recent files'];

/** A file of some kind with damage to its bytes, or to what stands in it. */
export function damaged(kind: Kind, bytes: Uint8Array, sound: SoundFiles, dice: Dice): Uint8Array {
  const otherKind = dice.oneIn(2) ? kind : (dice.pick(KINDS) ?? kind);
  const other = dice.pick(sound[otherKind]) ?? bytes;
  if (kind === 'recovery copy' && dice.oneIn(2)) return wholeCopy(sound, dice);
  if (!TREES.includes(kind) || dice.oneIn(3)) return damagedBytes(bytes, other, dice);
  const tree = dice.pick(sound[dice.pick(['build', 'board', 'case'] as const) ?? 'build']) ?? bytes;
  const text = textOf(bytes);
  // What was damaged before may be no JSON any more.
  if (!isJson(text)) return damagedBytes(bytes, other, dice);
  return new TextEncoder().encode(bentText(text, textOf(tree), dice));
}

/** A recovery copy that is whole and holds a build that is not sound: its own hash does not speak of that. */
function wholeCopy(sound: SoundFiles, dice: Dice): Uint8Array {
  const build = textOf(dice.pick(sound.build) ?? new Uint8Array());
  const owner = { pid: 1, started: null };
  const note = { owner, path: null, stamp: null, name: 'Bench', serial: 1, savedMs: 1, changes: 1 };
  return new TextEncoder().encode(encodeCopy(note, bentText(build, build, dice)));
}

function textOf(bytes: Uint8Array): string {
  return new TextDecoder().decode(bytes);
}

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
