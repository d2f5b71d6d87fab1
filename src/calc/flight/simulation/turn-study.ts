import {crookedAsBuilt} from '../../as-built/crooked.js';
import type {GliderDesign} from '../../design/design.js';
import {straight, type Crooked} from './crooked.js';
import type {ThrowStudy} from './throw-study.js';
import {turnTrack} from './turning.js';

/**
 * The same throws, and the reader's own with a plane as crooked as it is said to be and was measured; or in `turn` why that one is not to be followed. The same
 * study where nothing is crooked.
 */
export function withTurn(study: ThrowStudy, design: GliderDesign, said: Partial<Crooked>): ThrowStudy {
  const measured = crookedAsBuilt(design);
  if (!study.trim.ok || !measured.ok) return study;
  const sum = (cause: keyof Crooked): number => (said[cause] ?? 0) + measured.value[cause];
  const crooked: Crooked = {fin: sum('fin'), tipMass: sum('tipMass'), twist: sum('twist')};
  if (Object.keys(straight).every((cause) => crooked[cause as keyof Crooked] === 0)) return study;
  const turn = turnTrack(design, crooked, {thrown: study.own, air: study.air});
  return {...study, turn, flown: turn.ok ? [...study.flown, {id: 'crooked', thrown: study.own, track: turn.value}] : study.flown};
}
