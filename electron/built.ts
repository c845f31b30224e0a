declare const LEADWRIGHT_VERSION: string;
declare const LEADWRIGHT_PAGE: readonly string[];

/** What electron/start/build.mjs writes into the bundles: the version, and every file of the built page. */
export const BUILT = { version: LEADWRIGHT_VERSION, pageNames: LEADWRIGHT_PAGE };
