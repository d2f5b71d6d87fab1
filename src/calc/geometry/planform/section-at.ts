import type {Station} from './station.js';

/**
 * The chord and leading edge of a half wing at a place along it, between its stations; beyond its ends, those of the
 * end. At a step in the chord, the inner side of it.
 */
export function sectionAt(stations: readonly Station[], at: number): Station | undefined {
  const [root] = stations;
  if (!root || at <= root.at) return root && {...root, at};
  for (let i = 1; i < stations.length; i++) {
    const inner = stations[i - 1], outer = stations[i];
    if (!inner || !outer || at > outer.at) continue;
    const t = (at - inner.at) / (outer.at - inner.at);
    return {
      at,
      chord: inner.chord + t * (outer.chord - inner.chord),
      back: inner.back + t * (outer.back - inner.back),
    };
  }
  const tip = stations.at(-1);
  return tip && {...tip, at};
}
