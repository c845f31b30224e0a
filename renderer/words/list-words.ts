import { count } from '../../boards/document/problem/shown-value';

/** "1 lead", "3 leads"; the number and its noun stay on one line. */
export function counted(number: number, one: string, many = `${one}s`): string {
  return `${count(number)}\u00a0${number === 1 ? one : many}`;
}
