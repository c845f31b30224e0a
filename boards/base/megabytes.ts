const MEGABYTE = 1024 * 1024;

/** Bytes as "1.5 MB", and whole ones as "32 MB". */
export function megabytes(bytes: number): string {
  return `${(bytes / MEGABYTE).toFixed(bytes % MEGABYTE === 0 ? 0 : 1)}\u00a0MB`;
}
