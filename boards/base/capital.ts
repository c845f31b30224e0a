/** The words with a capital at their beginning; a letter stays as it is where its capital is two letters (ß, ᾀ). */
export function capital(words: string): string {
  return words.replace(/^.\p{M}*/su, (first) => {
    // A letter and its marks are one letter, however they were typed.
    const letter = first.normalize('NFC');
    const upper = letter.toUpperCase();
    return [...upper].length > [...letter].length ? letter : upper;
  });
}
