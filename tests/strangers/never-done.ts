/** What the program does not do, and what its code would hold if it did. */
export const NEVER_DONE: readonly (readonly [string, RegExp])[] = [
  ['reads or writes archives', /node:zlib|DecompressionStream|yauzl|adm-zip|from 'tar'/],
  ['decodes a picture in the main process', /nativeImage|from 'sharp'/],
  ['makes code out of text', /\beval\(|new Function\(|node:vm|setTimeout\(\s*['"`]/],
  ['writes HTML out of text', /dangerouslySetInnerHTML|\.outerHTML\s*=|insertAdjacentHTML|document\.write\(/],
  ['starts another program', /node:child_process/],
  ['asks a host elsewhere', /node:https|node:dgram|node:dns|XMLHttpRequest|new WebSocket\(|sendBeacon/],
];
