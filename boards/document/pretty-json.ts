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
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const list = Array.isArray(value);
  const entries = list
    ? value.map((item) => print(item, indent + STEP, 1))
    : Object.entries(value)
        .filter(([, item]) => item !== undefined)
        .map(([key, item]) => {
          const name = `${JSON.stringify(key)}: `;
          return name + print(item, indent + STEP, name.length + 1);
        });
  const [open, close] = list ? ['[', ']'] : ['{', '}'];
  if (entries.length === 0) return open + close;
  const gap = list ? '' : ' ';
  const room = WIDTH - indent - used;
  // An entry that had to be broken is too long for this line too.
  const length = entries.reduce((sum, entry) => sum + entry.length + 2, 2 * gap.length);
  if (length <= room) return open + gap + entries.join(', ') + gap + close;
  const margin = ' '.repeat(indent);
  const lines = entries.map((entry) => `${margin}${' '.repeat(STEP)}${entry}`);
  return `${open}\n${lines.join(',\n')}\n${margin}${close}`;
}
