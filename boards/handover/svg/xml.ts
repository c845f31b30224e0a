/** What XML 1.0 has no place for, whatever one escapes it as: most controls, halves of pairs, two non-characters. */
const UNWRITABLE = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu;

const NAMED: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&apos;',
};

/** Text as it may stand in an element or an attribute of XML. */
export function xmlText(text: string): string {
  return text.replace(UNWRITABLE, '\ufffd').replace(/[&<>"']/g, (sign) => NAMED[sign] ?? sign);
}

/** A number as short as a thousandth of a millimetre needs it. */
export function xmlNumber(value: number): string {
  const rounded = Math.round(value * 1_000) / 1_000;
  return String(rounded === 0 ? 0 : rounded);
}
