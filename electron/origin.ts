/** The page's own address in the shell: a scheme nobody else can serve, and never file:. */
export const SCHEME = 'app';
export const ORIGIN = `${SCHEME}://leadwright`;

/** Channels between the shell and its page have this before their names. */
export const CHANNEL_PREFIX = 'leadwright:';
