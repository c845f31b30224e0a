/** The package brings no types. */
declare module 'fontkit' {
  function create(bytes: Uint8Array): import('./font-file').FontFile;
}
