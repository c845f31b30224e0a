/** Where sound boards differ from each other. */
export interface Manner {
  /** A power input that is low already when mains comes on. */
  readonly heldAtMains: 'starts' | 'waits';
  /** No speed at the processor's fan header. */
  readonly unseenFan: 'goes-off' | 'complains' | 'goes-on';
  /** Power pressed while the settings are being cleared. */
  readonly clearing: 'stays-off' | 'twitches' | 'shows-nothing';
}

type Shares<Value extends string> = Readonly<Record<Value, number>>;

/** How many boards of a hundred do which. Common practice, no source. */
const MANNER_SHARES: { readonly [Key in keyof Manner]: Shares<Manner[Key]> } = {
  heldAtMains: { starts: 0.7, waits: 0.3 },
  unseenFan: { 'goes-off': 0.4, complains: 0.4, 'goes-on': 0.2 },
  clearing: { 'stays-off': 0.6, twitches: 0.2, 'shows-nothing': 0.2 },
};

export interface LikelyManner {
  readonly share: number;
  readonly manner: Manner;
}

/** Every manner that there is, with its share; the shares add up to 1. */
export const MANNERS: readonly LikelyManner[] = entries(MANNER_SHARES.heldAtMains).flatMap(
  ([heldAtMains, first]) =>
    entries(MANNER_SHARES.unseenFan).flatMap(([unseenFan, second]) =>
      entries(MANNER_SHARES.clearing).map(([clearing, third]) => ({
        share: first * second * third,
        manner: { heldAtMains, unseenFan, clearing },
      })),
    ),
);

function entries<Value extends string>(shares: Shares<Value>): readonly [Value, number][] {
  return (Object.keys(shares) as Value[]).map((value) => [value, shares[value]]);
}
