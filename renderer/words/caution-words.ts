/** In the strip at all times. */
export const CAUTION_LINE =
  'Before you touch a pin: mains plug out, supply switch off, wait, discharge yourself on bare metal. The board’s own manual has the last word.';

/** In full, under Help and on the start screen. */
export const CAUTIONS = [
  'Pull the mains plug before you touch anything inside the case. The switch at the front does not take the voltage off the board.',
  'Put the switch of the power supply to off, then wait until every light on the board has gone out.',
  'Touch bare metal of the case to discharge yourself, and do it again after walking about.',
  'Never open a power supply. What is inside stays charged.',
  'Stop at once, and pull the plug, at smell, smoke or heat.',
  'A finding says what this program knows of the board. The board’s own manual has the last word, and a qualified person where you are not sure.',
] as const;

/** Where nothing was found: why that is no promise. */
export const CAUTION_SHORT =
  'That is no promise: compare with the board’s own manual, which has the last word. Pull the mains plug before you touch a pin.';
