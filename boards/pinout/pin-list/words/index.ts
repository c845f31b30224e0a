import { AUDIO_WORDS } from './audio';
import { ELSEWHERE_WORDS } from './elsewhere';
import { GENERAL_WORDS } from './general';
import { PANEL_WORDS } from './panel';
import { PORT_WORDS } from './ports';
import { USB_WORDS } from './usb';
import type { WordRow } from './word-row';

/** The word list. Of two rows with the same word the earlier one holds; a test keeps it from happening. */
export const WORD_ROWS: readonly WordRow[] = [
  ...GENERAL_WORDS,
  ...PANEL_WORDS,
  ...USB_WORDS,
  ...AUDIO_WORDS,
  ...PORT_WORDS,
  ...ELSEWHERE_WORDS,
];
