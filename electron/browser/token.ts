import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';

const CODE_LIFE_MS = 30_000;

/** The secret that every call of the page carries, and the code it is had for. */
export interface Keys {
  readonly isToken: (sent: string | undefined) => boolean;
  /** The token for a code that is right, not yet used, and not older than half a minute. */
  readonly redeem: (code: unknown) => string | null;
  /** A code for one page; an earlier one that was not used is void. */
  readonly issueCode: () => string;
}

export function makeKeys(now: () => number = Date.now): Keys {
  const token = randomBytes(32).toString('base64url');
  let code: { readonly text: string; readonly untilMs: number } | null = null;
  return {
    isToken: (sent) => sent !== undefined && same(sent, token),
    issueCode: () => {
      const text = randomBytes(32).toString('base64url');
      code = { text, untilMs: now() + CODE_LIFE_MS };
      return text;
    },
    redeem: (sent) => {
      const issued = code;
      if (issued === null || typeof sent !== 'string' || !same(sent, issued.text)) return null;
      code = null;
      return now() <= issued.untilMs ? token : null;
    },
  };
}

/** Compares in a time that does not tell how much was right; the hashes have one length. */
function same(first: string, second: string): boolean {
  return timingSafeEqual(digest(first), digest(second));
}

function digest(text: string): Buffer {
  return createHash('sha256').update(text).digest();
}
