/** How much of their size letters take up at most in DejaVu Sans and DejaVu Serif, as measured: the widest faces that systems commonly bring. */
const shares: readonly (readonly [letters: RegExp, share: number])[] = [
  [/[ !',./:;|ijl·′]/, 0.34], [/[()"″IJfrt°]/, 0.48], [/[MWmw…—½¼¾⅛⅜⅝⅞]/, 0.99], [/[A-ZÄÖÜ=+×−→<>&%]/, 0.79],
];
const otherwise = 0.64;

/** How small lettering may get, in pixels. */
export const leastPx = 11;

/**
 * How wide a few words may be, in pixels, in whatever face the page is set: rather too wide than too narrow. Reckoned letter by letter and not measured,
 * since a figure is drawn before anybody sees it, and on a server.
 */
export function widthOf(words: string, sizePx = 12.5, bold = false): number {
  const sum = Array.from(words).reduce((width, letter) => width + (shares.find(([letters]) => letters.test(letter))?.[1] ?? otherwise), 0);
  return sum * sizePx * (bold ? 1.12 : 1);
}

/** The size at which words fit into so many pixels: as wanted where they do, smaller where they must, and never too small to read. */
export const sizeFor = (words: string, availablePx: number, sizePx = 12.5, bold = false): number =>
  Math.max(leastPx, sizePx * Math.min(1, availablePx / widthOf(words, sizePx, bold)));
