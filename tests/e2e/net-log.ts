import { readFileSync } from 'node:fs';

interface NetLog {
  readonly events: readonly { readonly params?: Readonly<Record<string, unknown>> }[];
}

/** Makes a browser write down what goes on in its network, and lead no name anywhere but to this machine. */
export function netLogArgs(file: string): readonly string[] {
  return ['--host-resolver-rules=MAP * ~NOTFOUND , EXCLUDE 127.0.0.1', `--log-net-log=${file}`];
}

/** What an event says of the page that it is for, where it does not say who began it. */
const FOR_WHOM = ['network_isolation_key', 'network_anonymization_key', 'site_for_cookies'];
/** Where an event says to whom it goes. */
const TO_WHOM = ['url', 'host', 'destination', 'logical_destination'];
/** This machine, and what the browser calls a name that leads nowhere. */
const OWN = ['127.0.0.1', '~notfound'];
const HOST = /^(?:[a-z][a-z+.-]*:\/\/)(\[[^\]]*\]|[^/:?#]+)/i;

/**
 * Every other host that a browser looked up or tried to reach for a page of this machine, by its own log: also
 * what never became a request that a test could see. What a browser asks its own maker of its own accord (who
 * is signed in, what the fields of a form may be for) was begun by no page, and is not ours to answer for.
 */
export function foreignHosts(file: string): readonly string[] {
  const found = new Set<string>();
  for (const { params = {} } of readLog(file).events) {
    const forWhom = 'initiator' in params ? ['initiator'] : FOR_WHOM;
    if (!forWhom.some((key) => String(params[key] ?? '').includes('127.0.0.1'))) continue;
    for (const key of TO_WHOM) {
      const [, host] = HOST.exec(String(params[key] ?? '')) ?? [];
      if (host !== undefined && !OWN.includes(host.toLowerCase())) found.add(host.toLowerCase());
    }
  }
  return [...found].sort();
}

/** A browser that was killed leaves its log without an end. */
function readLog(file: string): NetLog {
  const text = readFileSync(file, 'utf8');
  try {
    return JSON.parse(text);
  } catch {
    return JSON.parse(`${text.replace(/,?\s*$/, '')}]}`);
  }
}
