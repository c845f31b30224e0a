/** The day it is where the person is, as a log keeps it: "2026-11-26". */
export function today(now = new Date()): string {
  const two = (number: number) => String(number).padStart(2, '0');
  return `${String(now.getFullYear()).padStart(4, '0')}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
