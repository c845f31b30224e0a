import type { BoardSheet } from '../../../boards/document/board-sheet';
import type { Build } from '../../../boards/document/build';
import type { CaseSheet } from '../../../boards/document/case-sheet';
import type { Connector } from '../../../boards/document/connector';
import type { Lead } from '../../../boards/document/lead';
import type { Unit } from '../../../boards/document/unit';
import type { Command, CommandName } from '../../../boards/edit/command';
import type { Dice } from '../dice';

/** What a command is made up from: the build as it is now, things to put into it, and chance. */
export interface Situation {
  readonly build: Build;
  readonly dice: Dice;
  readonly text: string;
  readonly lead: Lead;
  readonly connector: Connector;
  readonly cable: Lead;
  readonly unit: Unit;
  readonly board: BoardSheet;
  readonly case: CaseSheet;
}

export type ArgsOf<Name extends CommandName> = Extract<Command, { name: Name }>['args'];

/** For some commands, arguments that mostly apply; undefined where there is nothing to do it to. */
export type Makers<Names extends CommandName> = {
  readonly [Name in Names]: (situation: Situation) => ArgsOf<Name> | undefined;
};
