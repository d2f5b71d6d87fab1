import type {DimensionPath} from '../../calc/design/dimensions.js';
import type {GliderElement} from './element.js';
import {later} from './later.js';

const loadSentence = () => import('./reckoned-with.js');

/**
 * With which measurements on the finished plane an answer was reckoned, as a sentence; nothing where there are none, nor for the moment in
 * which the sentence is fetched.
 *
 * @param reads whether the answer depends on a measurement
 */
export function reckoned(host: GliderElement, reads: (path: DimensionPath) => boolean): string | undefined {
  const {built, measured} = host.state.design;
  const any = [...Object.values(built), ...Object.values(measured)].some((value) => value !== undefined);
  return any ? later(host, loadSentence)?.reckonedWith(host, reads) : undefined;
}
