const SHOWN = 40;

/** Characters that would move the text round them, or that nobody can see: shown by number. */
const UNSEEN = /[\p{Cc}\p{Cf}\p{Co}\p{Cs}\p{Zl}\p{Zp}]/gu;

/** A text from a file, made fit to be shown in a line: cut, in quotes, with nothing hidden in it. */
export function shownText(text: string): string {
  const cut = text.length > SHOWN ? `${text.slice(0, SHOWN)}…` : text;
  const seen = cut.replace(UNSEEN, (letter) => `\\u${letter.codePointAt(0)?.toString(16).padStart(4, '0')}`);
  const long = text.length > SHOWN ? ` (${count(text.length)} characters)` : '';
  return `“${seen}”${long}`;
}

/** A value from a file in a few words. */
export function shownValue(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'string') return value === '' ? 'an empty text' : shownText(value);
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : `a list of ${count(value.length)}`;
  if (typeof value === 'object' && value !== null) return 'an object';
  if (value === Number.POSITIVE_INFINITY || value === Number.NEGATIVE_INFINITY)
    return 'a number too large to hold';
  return String(value);
}

/** 12345 as "12,345". Without the engine's own tables of languages, whose loading the start would wait for. */
export function count(number: number): string {
  const [whole = '', ...decimals] = String(number).split('.');
  return [whole.replace(/\B(?=(\d{3})+$)/g, ','), ...decimals].join('.');
}

/** A path as in "leads[3].plugs[0].grid"; a key that is no plain word stands in quotes. */
export function shownPath(path: readonly (string | number)[]): string {
  return path
    .map((key, at) => {
      if (typeof key === 'number') return `[${key}]`;
      const plain = /^\w{1,40}$/.test(key) ? key : shownText(key);
      return at === 0 ? plain : `.${plain}`;
    })
    .join('');
}
