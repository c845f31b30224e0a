const SLICE = 0x8000;

/** Bytes as the letters of base64 that a sheet holds. */
export function toBase64(bytes: Uint8Array): string {
  let letters = '';
  // In slices: as the arguments of one call there can be only so many.
  for (let from = 0; from < bytes.length; from += SLICE)
    letters += String.fromCharCode(...bytes.subarray(from, from + SLICE));
  return btoa(letters);
}

/** The bytes that letters of base64 stand for; a sheet's schema has let only such letters in. */
export function fromBase64(text: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
}
