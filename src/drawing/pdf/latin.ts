/** What the standard fonts of a PDF hold beyond ASCII and Latin-1: the rest of code page 1252. */
const further = '€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ';

/** What stands for a letter that the fonts lack. */
const instead: Readonly<Record<string, string>> = {
  '−': '–', '\u00a0': ' ', '\u202f': ' ', '\u2009': ' ', '\u2011': '-', '″': '"', '′': "'", '≈': '~', '≤': '<=', '≥': '>=', 'ł': 'l', 'Ł': 'L', 'đ': 'd', 'Đ': 'D', 'ı': 'i', 'ĸ': 'k', 'ŋ': 'n', 'ŧ': 't', 'ħ': 'h',
};

const isPlain = (text: string): boolean => Array.from(text).every((letter) => /^[\x20-\x7e\u00a1-\u00ff]$/.test(letter) || further.includes(letter));

/** A text in the letters that the standard fonts of a PDF hold, and the letters for which there is nothing but a question mark. */
export function inLatin(text: string): {readonly text: string; readonly missing: readonly string[]} {
  const missing: string[] = [];
  const written = Array.from(text.normalize('NFC'), (letter) => {
    const known = instead[letter] ?? letter;
    if (isPlain(known)) return known;
    const bare = letter.normalize('NFD').replace(/\p{M}/gu, '');
    if (bare !== '' && isPlain(bare)) return bare;
    missing.push(letter);
    return '?';
  });
  return {text: written.join(''), missing};
}
