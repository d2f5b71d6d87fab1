/** A name that no other row has, in any tab. `crypto.randomUUID` is missing on pages without https, where clubs' own servers are. */
export function newId(): string {
  const [a = 0, b = 0, c = 0] = crypto.getRandomValues(new Uint32Array(3));
  return [a, b, c].map((part) => part.toString(36).padStart(7, '0')).join('');
}
