const WIDTH = 100;
const STEP = 2;

/** JSON for people: what fits in a line of 100 stands on one line, everything else one entry a line. */
export function prettyJson(value: unknown): string {
  return print(value, 0, 0);
}

/**
 * @param indent of the line that the value begins in
 * @param used letters of that line that stand round the value: its name, its comma
 */
function print(value: unknown, indent: number, used: number): string {
  const line = inOneLine(value, WIDTH - indent - used);
  if (line !== undefined) return line;
  const inside = ' '.repeat(indent + STEP);
  if (Array.isArray(value)) {
    const lines = value.map((item) => inside + print(item, indent + STEP, 1));
    return `[\n${lines.join(',\n')}\n${' '.repeat(indent)}]`;
  }
  const lines = entriesOf(value).map(([key, item]) => {
    const name = `${JSON.stringify(key)}: `;
    return inside + name + print(item, indent + STEP, name.length + 1);
  });
  return `{\n${lines.join(',\n')}\n${' '.repeat(indent)}}`;
}

/** The value in one line; undefined for a list or an object that is longer than the room, seen as soon as it is. */
function inOneLine(value: unknown, room: number): string | undefined {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const list = Array.isArray(value);
  const [open, gap, close] = list ? ['[', '', ']'] : ['{', ' ', '}'];
  let line = '';
  for (const [key, item] of list ? value.entries() : entriesOf(value)) {
    const name = list ? '' : `${JSON.stringify(key)}: `;
    const text = inOneLine(item, room - line.length);
    if (text === undefined) return undefined;
    line += `${line === '' ? open + gap : ', '}${name}${text}`;
    if (line.length + gap.length + 1 > room) return undefined;
  }
  return line === '' ? open + close : line + gap + close;
}

function entriesOf(value: unknown): readonly (readonly [string, unknown])[] {
  return Object.entries(value ?? {}).filter(([, item]) => item !== undefined);
}
