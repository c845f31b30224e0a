/** Colours of indicator LEDs. The colour decides the forward voltage. */
export const LAMP_COLOURS = ['red', 'orange', 'yellow', 'green', 'blue', 'white'] as const;

export type LampColour = (typeof LAMP_COLOURS)[number];
