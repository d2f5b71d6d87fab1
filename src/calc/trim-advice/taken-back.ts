import {withMore} from '../balance/with-more.js';
import {sameValue, valueAt, type GliderDesign} from '../design/design.js';
import type {DimensionPath} from '../design/dimensions.js';
import {checkValue} from '../design/read-dimension.js';
import type {Values} from './change.js';

type Ballast = GliderDesign['ballast']['masses'];

/** What a change made of some dimensions, and what they were before. */
export interface Made {
  readonly before: Values;
  readonly set: Values;
}

/**
 * What takes a change back and nothing else; undefined where it no longer stands in the design, since somebody has changed the same since. Of weights that
 * were changed elsewhere too, what this change put on or took off is still undone where it can be told apart.
 */
export function takenBack(design: GliderDesign, {before, set}: Made): Values | undefined {
  const back: {[P in DimensionPath]?: Values[P]} = {};
  for (const path of Object.keys(set) as DimensionPath[]) {
    const was = before[path], made = set[path];
    if (sameValue(was, made)) continue;
    if (sameValue(valueAt(design, path), made)) back[path] = was;
    else if (path === 'ballast.masses') {
      const masses = withoutChange(design.ballast.masses, was as Ballast, made as Ballast);
      if (!masses || checkValue(path, masses)) return undefined;
      back[path] = masses;
    } else return undefined;
  }
  return back;
}

const sameWeight = (a: Ballast[number], b: Ballast[number]): boolean => a.mass === b.mass && a.at === b.at;
const nearby = (a: number, b: number): boolean => Math.abs(a - b) < 5e-4;
/** Less than any scale shows, kg. */
const nothing = 1e-7;

/** Weights without what made `made` of `was`; undefined where what it put on, or left there, is no longer there. */
function withoutChange(now: Ballast, was: Ballast, made: Ballast): Ballast | undefined {
  const put = made.filter((one) => !was.some((other) => sameWeight(one, other))), taken = was.filter((one) => !made.some((other) => sameWeight(one, other)));
  const places = [...put, ...taken].map(({at}) => at).filter((at, i, all) => all.findIndex((other) => nearby(at, other)) === i);
  return places.reduce<Ballast | undefined>((masses, at) => {
    const there = (all: Ballast): Ballast => all.filter((one) => nearby(one.at, at));
    const sum = (all: Ballast): number => all.reduce((total, {mass}) => total + mass, 0);
    const left = there(put), more = sum(there(taken)) - sum(left);
    if (!masses) return undefined;
    if (more >= 0) return left.length > 0 && there(masses).length === 0 ? undefined : withMore(masses, more, at);
    const from = there(masses).find(({mass}) => Math.abs(mass + more) < nothing) ?? there(masses).find(({mass}) => mass + more > -nothing);
    if (!from) return undefined;
    const rest = Math.round((from.mass + more) * 1e7) / 1e7;
    return masses.flatMap((one) => (one !== from ? [one] : rest > 0 ? [{mass: rest, at: from.at}] : []));
  }, now);
}
