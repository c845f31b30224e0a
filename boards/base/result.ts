/** An answer that may be a plain, expected refusal. Bugs throw; refusals are values. */
export type Result<T, E> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: E };

export function ok<T>(value: T): { readonly ok: true; readonly value: T } {
  return { ok: true, value };
}

export function refuse<E>(problem: E): { readonly ok: false; readonly problem: E } {
  return { ok: false, problem };
}
