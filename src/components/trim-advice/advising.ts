import type {GliderDesign} from '../../calc/design/design.js';
import {flyingPlane} from '../../calc/flight/flying-plane.js';
import {behindLimit} from '../../calc/trim-advice/limit.js';
import type {Values} from '../../calc/trim-advice/change.js';

/** What only a thrown plane needs: the advice and its words. */
export {adviceFor} from '../../calc/trim-advice/advice.js';
export {causeList} from './cause-list.js';
export {adviceAnswer, changeWords} from './sentences.js';

/** What brings a balance in front of its limit; nothing where it lies there, or where no weight at the nose does it. */
export function remedyFor(design: GliderDesign): Values | undefined {
  const plane = flyingPlane(design);
  return plane.ok ? behindLimit(plane.value, design)?.weight?.values : undefined;
}
