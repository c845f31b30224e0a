import type { HostApi } from '../../boards/host';
import { browserHost } from './browser-host';

declare global {
  interface Window {
    /** Put there by the preload script; missing in the system's browser. */
    readonly leadwright?: HostApi;
  }
}

/** The machine behind this window, whichever door it came in by. */
export async function connect(page: string): Promise<HostApi> {
  return window.leadwright ?? browserHost(page);
}
