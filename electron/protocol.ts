import { protocol } from 'electron';
import type { PageFiles } from './host/page-files';
import { PAGE_HEADERS } from './host/page-headers';
import { ORIGIN, SCHEME } from './origin';

/** Has to be said before Electron is ready: the page's scheme is as strict as https. */
export function claimScheme(): void {
  protocol.registerSchemesAsPrivileged([
    { scheme: SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true, codeCache: true } },
  ]);
}

/** Serves the page's files and nothing else; addresses are looked up as they are, and file: is closed. */
export function servePage(files: PageFiles): void {
  protocol.handle(SCHEME, (request) => {
    const file = request.url.startsWith(`${ORIGIN}/`)
      ? files.get(request.url.slice(ORIGIN.length))
      : undefined;
    if (file === undefined || request.method !== 'GET') return new Response(null, { status: 404 });
    return new Response(new Uint8Array(file.body), {
      headers: { ...PAGE_HEADERS, 'Content-Type': file.type },
    });
  });
  protocol.handle('file', () => new Response(null, { status: 403 }));
}
