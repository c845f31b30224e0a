/** Whether a value is an object with names, as JSON has them: not a list, not null. */
export function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
