/**
 * One spelling for the many ways of typing the same: typographic minus, primes and quotation marks, `½`, `²`, full-width
 * letters, no-break spaces, capitals, `sq in`. Whatever is no quantity stays none.
 */
export function plainSpelling(text: string): string {
  return text
    .replace(/\p{Cf}/gu, '')                             // marks of writing direction come along with copied text
    .replace(/[²³]/g, (power) => power === '²' ? '^2' : '^3')
    .replace(/[¹⁰-₎]/g, '^')                             // before NFKC makes digits of them: 5⁴ mm is not 54 mm
    .replace(/[¼-¾⅐-⅞]/g, ' $&')                         // likewise 1½ is not 11/2
    .replace(/[º˚]/g, '°')
    .replace(/[‘’‛′´]/g, '\'').replace(/''|[“”„‟″]/g, '"')
    .normalize('NFKC')
    .replace(/[⁄∕]/g, '/').replace(/[‐-―−]/g, '-')
    .toLowerCase()
    .replace(/\b(sq|cu)\b\.?\s*([a-z]+)/g, (_, power: string, unit: string) => `${unit}^${power === 'sq' ? '2' : '3'}`)
    .trim();
}
