const DAY_MS = 86_400_000;

/** Other chance every day, and the same all day long, so that what fails can be had again. */
export function seedOfToday(): number {
  return Math.floor(Date.now() / DAY_MS);
}
