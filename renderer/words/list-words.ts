/** "1 lead", "3 leads"; the number and its noun stay on one line. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count.toLocaleString('en')}\u00a0${count === 1 ? one : many}`;
}
