/** At the foot of every printed page: the cautions of the window, in the room a foot has. */
export const PAPER_CAUTION =
  'Before you touch a pin: pull the mains plug, put the supply’s switch to off, wait, and discharge yourself on bare metal. Never open a power supply. Stop at smell, smoke or heat. These pages say what their sheet knows: the board’s own manual and a qualified person have the last word.';
