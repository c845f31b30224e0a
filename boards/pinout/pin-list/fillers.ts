/** Pieces that add nothing to what a pin is. */
const FILLERS: ReadonlySet<string> = new Set(
  'SIGNAL SIG PIN LINE WIRE INPUT OUTPUT IN OUT CONNECTOR CONN HEADER TERMINAL CONTACT SIDE FOR THE TO OF AND A AN AT ACTIVE LOW HIGH FRONT PANEL FP F DC EXTERNAL EXT DIFFERENTIAL PAIR CHANNEL CH ANALOG ANALOGUE POLARITY LEAD FROM WITH IS VOLTAGE LEVEL NORMAL MOMENTARY'.split(
    ' ',
  ),
);

/** The pieces that say something; all of them where none would be left. */
export function withoutFillers(pieces: readonly string[]): readonly string[] {
  const telling = pieces.filter((piece) => !FILLERS.has(piece));
  return telling.length === 0 ? pieces : telling;
}
