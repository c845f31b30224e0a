import type { Build } from '../document/build';
import { holeState, leadOf, type PlugRef } from '../document/lookup';
import { gridIndex } from '../document/numbering';
import { applyCommand } from '../edit/apply';
import type { Command } from '../edit/command';
import { properSeats } from '../fit/proper-seats';
import type { CheckContext } from './context';
import type { Remedy } from './finding';
import type { TooWide } from './too-wide';
import { adapterText, moveContactText, splitText } from './words/remedies';

/** The trade's ways with a plug that is too wide: move a contact, take the plug apart, an adapter. */
export function narrowingRemedies({ build }: CheckContext, tooWide: TooWide): readonly Remedy[] {
  const { ref } = tooWide;
  const move = movesOf(build, tooWide).find((command) => helps(build, ref, command));
  return [
    ...(move ? [{ text: moveContactText(move.args), command: move }] : []),
    { text: splitText(build, ref), command: { name: 'split-plug', args: ref } },
    { text: adapterText() },
  ];
}

type MoveContact = Extract<Command, { readonly name: 'move-contact' }>;

/** Either contact, moved to a hole between the two that is still empty. */
function movesOf(build: Build, { ref, contacts }: TooWide): readonly MoveContact[] {
  const lead = leadOf(build, ref.lead);
  const plug = lead?.plugs.find(({ id }) => id === ref.plug);
  if (!lead || !plug) return [];
  const empty = gridIndex(plug.grid)
    .positions.map(({ label }) => label)
    .filter((hole) => holeState(lead, plug, hole) === 'empty');
  return contacts
    .toReversed()
    .flatMap(({ hole: from }) =>
      empty.map((to): MoveContact => ({ name: 'move-contact', args: { ...ref, from, to } })),
    );
}

/** Whether the plug has a right place once the contact is moved, with nothing else taken off. */
function helps(build: Build, ref: PlugRef, command: Command): boolean {
  const moved = applyCommand(build, command);
  return moved.ok && properSeats(moved.value, ref).length > 0;
}
