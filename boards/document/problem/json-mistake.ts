import { shownText } from './shown-value';

/** Where a text stops being JSON, and what should have stood there. */
export interface JsonMistake {
  readonly at: number;
  readonly detail: string;
}

/**
 * The first mistake in a text; undefined in one that is JSON. Engines word and place mistakes each in
 * their own way, or do not place them at all, so they are found here. It calls itself, so the depth of
 * the text has to be limited before.
 */
export function jsonMistake(text: string): JsonMistake | undefined {
  return new Reader(text).mistake();
}

const WORD = /true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;
const BLANKS = new Set([' ', '\t', '\n', '\r']);

class Reader {
  readonly #text: string;
  #at = 0;
  #expected = '';

  constructor(text: string) {
    this.#text = text;
  }

  mistake(): JsonMistake | undefined {
    if (this.#value() && (this.#next() === '' || this.#miss('the end of the file'))) return undefined;
    const found = this.#text.charAt(this.#at);
    const stands = found === '' ? 'the text ends' : `${shownText(found)} stands there`;
    return { at: this.#at, detail: `${this.#expected} was expected, and ${stands}` };
  }

  #miss(expected: string): false {
    this.#expected = expected;
    return false;
  }

  /** The character at hand, blanks passed over. */
  #next(): string {
    while (BLANKS.has(this.#text.charAt(this.#at))) this.#at += 1;
    return this.#text.charAt(this.#at);
  }

  #value(): boolean {
    switch (this.#next()) {
      case '{':
        return this.#entries('}', () => this.#name() && this.#value());
      case '[':
        return this.#entries(']', () => this.#value());
      case '"':
        return this.#string();
      default:
        return this.#take(WORD) || this.#miss('a value');
    }
  }

  #entries(close: string, entry: () => boolean): boolean {
    this.#at += 1;
    if (this.#next() === close) return this.#step();
    while (entry()) {
      if (this.#next() === close) return this.#step();
      if (this.#next() !== ',') return this.#miss(`a comma or “${close}”`);
      this.#at += 1;
    }
    return false;
  }

  #name(): boolean {
    if (this.#next() !== '"') return this.#miss('a name in double quotes');
    if (!this.#string()) return false;
    return this.#next() === ':' ? this.#step() : this.#miss('a colon');
  }

  #string(): boolean {
    this.#at += 1;
    for (;;) {
      const letter = this.#text.charAt(this.#at);
      if (letter === '"') return this.#step();
      if (letter < ' ')
        return this.#miss(letter === '' ? 'a closing quote' : 'a closing quote in the same line');
      if (letter !== '\\') this.#at += 1;
      else if (!this.#take(ESCAPE)) return this.#miss('one of \\" \\\\ \\/ \\b \\f \\n \\r \\t \\u0000');
    }
  }

  #step(): true {
    this.#at += 1;
    return true;
  }

  #take(pattern: RegExp): boolean {
    pattern.lastIndex = this.#at;
    if (!pattern.test(this.#text)) return false;
    this.#at = pattern.lastIndex;
    return true;
  }
}
