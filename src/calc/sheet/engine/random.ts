/** Numbers from 0 up to 1, the same sequence for the same seed. */
export type Random = () => number;

/** T. Ettinger's Mulberry32: small, quick, and even enough to shuffle parts. */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6D2B79F5) >>> 0;
    let mixed = Math.imul(state ^ state >>> 15, state | 1);
    mixed ^= mixed + Math.imul(mixed ^ mixed >>> 7, mixed | 61);
    return ((mixed ^ mixed >>> 14) >>> 0) / 2 ** 32;
  };
}
