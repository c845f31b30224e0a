/** What of a cable says with which others it shares openings. */
interface Sharing {
  readonly choices: readonly { readonly openings: readonly number[] }[];
}

/**
 * Cables by their places, in parts of which no two share an opening that any of their choices passes; the
 * smallest part first. A cable whose first and best choice passes none is a part by itself.
 */
export function partsOf(cables: readonly Sharing[]): readonly (readonly number[])[] {
  const wanted = cables.map(({ choices }) =>
    choices[0]?.openings.length === 0 ? [] : choices.flatMap(({ openings }) => openings),
  );
  const headOf = new Map<number, number>();
  const head = (opening: number): number => {
    const above = headOf.get(opening) ?? opening;
    return above === opening ? opening : head(above);
  };
  for (const [first, ...others] of wanted)
    for (const other of others) if (first !== undefined) headOf.set(head(other), head(first));
  const parts = new Map<string, number[]>();
  wanted.forEach(([first], place) => {
    const key = first === undefined ? `cable ${place}` : `opening ${head(first)}`;
    parts.set(key, [...(parts.get(key) ?? []), place]);
  });
  return [...parts.values()].sort((a, b) => a.length - b.length);
}
