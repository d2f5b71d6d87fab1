import {asBuilt} from '../../calc/as-built/as-built.js';
import type {DimensionPath} from '../../calc/design/dimensions.js';
import {reckonedWords} from '../../messages/en/reckoned.js';
import type {GliderElement} from './element.js';

/** What is measured in one go. */
const together = {
  hollow: /^built\.hollow$/, tips: /^built\.tip/, wing: /^built\.wing/, tail: /^built\.tail/, distances: /TipToTail$/, bow: /^built\.bow$/,
  mass: /^measured\.mass$/, balance: /^measured\.balance$/,
} as const;

/** The measurements that count, of those that an answer depends on. */
export function reckonedWith(host: GliderElement, reads: (path: DimensionPath) => boolean): string | undefined {
  const counted = asBuilt(host.state.design).counted.filter(reads);
  if (counted.length === 0) return undefined;
  const words = host.say(reckonedWords);
  const names = Object.entries(together).filter(([, these]) => counted.some((path) => these.test(path))).map(([name]) => words.names[name as keyof typeof together]);
  return words.with({count: counted.length, what: names});
}
