const DAY_MS = 24 * 60 * 60 * 1000;

/** "today at 14:05", "yesterday at 09:30", "12 May at 18:20": as a person would say it. */
export function whenWords(timeMs: number, nowMs: number): string {
  const time = new Date(timeMs);
  const clock = time.toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });
  if (sameDay(timeMs, nowMs)) return `today at ${clock}`;
  if (sameDay(timeMs, nowMs - DAY_MS)) return `yesterday at ${clock}`;
  const year = time.getFullYear() === new Date(nowMs).getFullYear() ? {} : { year: 'numeric' as const };
  return `${time.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', ...year })} at ${clock}`;
}

function sameDay(a: number, b: number): boolean {
  return new Date(a).toDateString() === new Date(b).toDateString();
}
