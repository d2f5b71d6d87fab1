import {aimOf} from '../../calc/flight/simulation/aim.js';
import type {Throw} from '../../calc/flight/simulation/throw.js';
import {throwingWords} from '../../messages/en/throwing.js';
import type {GliderElement} from './element.js';

/** Which way to throw, the same words in every element; to follow a speed and a comma. */
export function aimWords(host: GliderElement, thrown: Pick<Throw, 'angle' | 'height'>): string {
  const {way, angle, ground} = aimOf(thrown), words = host.say(throwingWords);
  const turned = host.write(angle, 'angle', {digits: 0});
  switch (way) {
    case 'level': return words.level;
    case 'up': return words.up(turned);
    case 'down': return ground === undefined ? words.down(turned) : words.downAt({angle: turned, ground: host.write(ground, 'length', host.system === 'inch' ? {unit: 'ft', digits: 0} : {unit: 'm', digits: 0})});
  }
}
