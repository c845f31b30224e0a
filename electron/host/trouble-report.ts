/** A failure of the program itself, as it was caught. */
export interface Trouble {
  /** Which part of the program failed: what is drawn, what works behind it, or the whole page. */
  readonly part: 'window' | 'machine' | 'page';
  /** "TypeError". */
  readonly name: string;
  readonly message: string;
  readonly stack: string;
}

export interface Circumstances {
  readonly version: string;
  readonly platform: string;
  readonly door: string;
  readonly when: Date;
}

const STACK_LINES = 30;
/** Whose messages are made by the language and name parts of the program; every other may name parts of a build. */
const OF_THE_LANGUAGE = ['TypeError', 'RangeError', 'ReferenceError'];

/**
 * What a person may give to somebody who can mend the program. Built from what is known to be harmless, not by
 * taking out what is not: versions, the kind of failure, and names and lines of the program's own files. No
 * path, no message that could quote a document, no name that the person gave to anything.
 */
export function reportText({ part, name, message, stack }: Trouble, at: Circumstances): string {
  return [
    'Leadwright: a report of a failure of the program',
    '',
    'It holds no part of your work, no name of a file or folder, and nothing about you or your machine but what',
    'you read here. Nothing has been sent anywhere; share it only if you want to.',
    '',
    `When: ${at.when.toISOString().slice(0, 16).replace('T', ' ')} UTC`,
    `Version: ${plainWord(at.version)}, ${plainWord(at.door)}, ${plainWord(at.platform)}`,
    `Part: ${part}`,
    `Failure: ${plainWord(name)}`,
    `It says: ${saidBy(name, message)}`,
    '',
    'Where in the program:',
    ...linesOf(stack, message),
    '',
  ].join('\n');
}

function plainWord(word: string): string {
  return /^[A-Za-z0-9.+-]{1,60}$/.test(word) ? word : '(not told)';
}

function saidBy(name: string, message: string): string {
  // "Cannot read properties of undefined (reading 'x')": what is quoted may be an id of a build.
  const words = /^([A-Za-z ]+)/.exec(message)?.[1]?.trim();
  const isOurs = OF_THE_LANGUAGE.includes(name) && words !== undefined && LANGUAGE_SAYS.includes(words);
  return isOurs ? words : '(left out: it may name something of yours)';
}

/** The beginnings of the language's own messages, as its engine words them; anything else is left out. */
const LANGUAGE_SAYS: readonly string[] = [
  'Cannot read properties of undefined',
  'Cannot read properties of null',
  'Cannot set properties of undefined',
  'Cannot set properties of null',
  'Cannot convert undefined or null to object',
  'Maximum call stack size exceeded',
  'Invalid array length',
  'Invalid string length',
];

/** "at name (file.js:1:2)": only names that a program can have, and files by their last name. */
function linesOf(stack: string, message: string): readonly string[] {
  const at = message === '' ? -1 : stack.indexOf(message);
  const frames = at < 0 ? stack : stack.slice(at + message.length);
  const lines = frames.split('\n').flatMap((line) => {
    const place = /[/\\(]([\w.-]{1,80}\.(?:js|mjs|cjs|ts|tsx):\d{1,9}:\d{1,9})\)?$/.exec(line.trimEnd())?.[1];
    if (!/^\s*at /.test(line) || place === undefined) return [];
    const called = /^\s*at (?:async |new )?([\w$.<>]{1,80}) \(/.exec(line)?.[1];
    return [`  at ${called === undefined ? '' : `${called} `}(${place})`];
  });
  return lines.length === 0 ? ['  (not told)'] : lines.slice(0, STACK_LINES);
}
