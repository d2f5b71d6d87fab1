import type {Sight} from './seen.js';

/** Why a glider flies as it does. */
export type CauseId =
  | 'thrown-fast' | 'thrown-slow' | 'thrown-up' | 'thrown-down' | 'thrown-banked' | 'windy'
  | 'nose-heavy' | 'tail-heavy'
  | 'bowed-body' | 'askew-wing' | 'uneven-tips'
  | 'lost-camber' | 'crooked-fin' | 'heavy-tip' | 'twisted-wing' | 'little-dihedral' | 'small-fin' | 'loose-tail' | 'loose-boards' | 'soft-wing';

/** Whose doing it is: the hand's, the setting of balance and tail, or the building. */
export type Blame = 'throw' | 'trim' | 'build';

export const blameOf: Readonly<Record<CauseId, Blame>> = {
  'thrown-fast': 'throw', 'thrown-slow': 'throw', 'thrown-up': 'throw', 'thrown-down': 'throw', 'thrown-banked': 'throw', 'windy': 'throw',
  'nose-heavy': 'trim', 'tail-heavy': 'trim',
  'bowed-body': 'build', 'askew-wing': 'build', 'uneven-tips': 'build',
  'lost-camber': 'build', 'crooked-fin': 'build', 'heavy-tip': 'build', 'twisted-wing': 'build', 'little-dihedral': 'build', 'small-fin': 'build',
  'loose-tail': 'build', 'loose-boards': 'build', 'soft-wing': 'build',
};

/** Left and right have the same causes. */
const turns = {'twisted-wing': 0.3, 'crooked-fin': 0.3, 'heavy-tip': 0.2, 'thrown-banked': 0.2};

/**
 * How often each cause is behind what is seen, before anything is known of the plane. Always noses down: nose-heavy; always noses up: tail-heavy; thrown too fast
 * it zooms, too slow it drops. Common practice, no source; so are the figures.
 */
export const usualCauses: Readonly<Record<Sight, Readonly<Partial<Record<CauseId, number>>>>> = {
  good: {},
  dives: {'nose-heavy': 0.5, 'thrown-down': 0.2, 'lost-camber': 0.15, 'thrown-slow': 0.15},
  swoops: {'tail-heavy': 0.55, 'thrown-fast': 0.25, 'thrown-up': 0.15, 'windy': 0.05},
  zooms: {'thrown-fast': 0.5, 'thrown-up': 0.25, 'tail-heavy': 0.2, 'windy': 0.05},
  drops: {'thrown-slow': 0.5, 'tail-heavy': 0.25, 'lost-camber': 0.2, 'windy': 0.05},
  left: turns,
  right: turns,
  rolls: {'twisted-wing': 0.35, 'little-dihedral': 0.25, 'heavy-tip': 0.2, 'thrown-banked': 0.2},
  wags: {'small-fin': 0.45, 'loose-tail': 0.4, 'windy': 0.15},
  flutters: {'loose-boards': 0.5, 'soft-wing': 0.25, 'thrown-fast': 0.25},
};
