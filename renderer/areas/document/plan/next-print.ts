import { LIMITS } from '../../../../boards/document/limits';

/** The print that a second connector of a kind would have: "USB_1" gives "USB_2", "FAN" gives "FAN 2". */
export function nextPrint(print: string, taken: ReadonlySet<string>): string {
  if (print === '' || !taken.has(print)) return print;
  const counted = /^(.*?)(\d{1,6})$/u.exec(print);
  const stem = (counted?.[1] ?? `${print} `).slice(0, LIMITS.textLength - 6);
  let number = counted ? Number(counted[2]) + 1 : 2;
  while (taken.has(`${stem}${number}`)) number++;
  return `${stem}${number}`;
}
