import type {GliderDesign} from '../../design/design.js';
import type {Crooked} from './crooked.js';
import type {ThrowStudy} from './throw-study.js';
import {turnTrack} from './turning.js';

/** The same throws, and the reader's own with a plane that is crooked; or in `turn` why that one is not to be followed. */
export function withTurn(study: ThrowStudy, design: GliderDesign, crooked: Crooked): ThrowStudy {
  if (!study.trim.ok) return study;
  const turn = turnTrack(design, crooked, {thrown: study.own, air: study.air});
  return {...study, turn, flown: turn.ok ? [...study.flown, {id: 'crooked', thrown: study.own, track: turn.value}] : study.flown};
}
