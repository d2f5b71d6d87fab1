import type {Glide} from '../glide.js';
import type {Throw} from './throw.js';

type Place = Pick<Throw, 'height' | 'wind'>;

/** The throw that leaves a plane flying through the air as in a glide, but at another speed or more steeply upwards. */
export function asGliding({angle, setting}: Glide, speed: number, steeper: number, {height, wind}: Place): Throw {
  const way = steeper - angle;
  const along = speed * Math.cos(way) - wind, up = speed * Math.sin(way);
  const hand = Math.atan2(up, along);
  return {height, wind, speed: Math.hypot(along, up), angle: hand, attack: way + setting.attack - hand};
}

/** The throw that a plane goes on from as it glides. */
export const rightThrow = (glide: Glide, place: Place): Throw => asGliding(glide, glide.speed, 0, place);
