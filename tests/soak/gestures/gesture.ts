import type { Page } from 'playwright-core';
import type { Build } from '../../../boards/document/build';
import type { Command } from '../../../boards/edit/command';
import type { Dice } from '../../boards/dice';

/** Where a gesture is made, and what it is drawn by. */
export interface Hand {
  readonly page: Page;
  readonly dice: Dice;
}

/** A hand that may ask what the window holds. */
export interface Bench extends Hand {
  /** The build that the window would save: it is saved, and the file read. */
  readonly saved: () => Promise<Build>;
}

/** What was done, in words, for the list of a sequence that failed. */
export interface Made {
  readonly said: string;
  /** Where it is known: the edit of the saved build that the gesture stands for; null where it is to change nothing. */
  readonly means?: { readonly before: Build; readonly command: Command | null };
}

/** One thing that a person does in the window: it may take several presses. */
export interface Gesture {
  readonly name: string;
  /** Does it; undefined where there is nothing to do it to. */
  readonly make: (bench: Bench) => Promise<Made | undefined>;
}

/** The key that leads to each work area. */
export const AREA_KEYS = {
  document: 'Control+1',
  wire: 'Control+2',
  route: 'Control+3',
  diagnose: 'Control+4',
  handOver: 'Control+5',
} as const;

export type AreaKey = (typeof AREA_KEYS)[keyof typeof AREA_KEYS];
