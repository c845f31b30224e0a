import type { Bridge, HostApi } from '../../boards/host';
import { browserHost } from './browser-host';
import { hostBy } from './host-by';

declare global {
  interface Window {
    /** Put there by the preload script; missing in the system's browser. */
    readonly leadwright?: Bridge;
  }
}

/** The machine behind this window, whichever door it came in by. */
export async function connect(page: string): Promise<HostApi> {
  const { leadwright: bridge } = window;
  return bridge ? hostBy((channel, json) => bridge[channel](json), bridge.onRequest) : browserHost(page);
}
