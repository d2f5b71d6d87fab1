import type {GliderDesign} from '../design/design.js';
import type {Flight} from '../flight/flight.js';
import {loadedWith, type FlyingPlane} from '../flight/flying-plane.js';
import type {Glide} from '../flight/glide.js';
import {airframeOf} from '../flight/simulation/plane-airframe.js';
import {fly, type Throw} from '../flight/simulation/throw.js';
import type {Track} from '../flight/simulation/track.js';
import {liftOf, trimmedAt} from '../flight/trimmed.js';
import {glideAt} from '../flight/glide.js';
import type {CauseId} from './causes.js';
import type {Seen, Sight} from './seen.js';

/** A plane with something wrong, flown. */
interface Suspect {
  readonly track: Track;
  /** For a balance that is out: the speed it settles to, over what the plane settled to before. */
  readonly speedRatio?: number;
}

/** What is tried for each cause: shares of the mean chord by which the balance is out, or of the right speed, or rad. Common practice, no source. */
const shifts = [0.05, 0.1, 0.2], slow = [0.8, 0.65], fast = [1.25, 1.6], steep = [12, 25], down = [-15, -35];
const deg = Math.PI / 180;

/** As long as anyone watches. */
const longest = 20;

/** The flights that a cause would make of a plane which otherwise is what its design says; empty for what a flight straight ahead does not show. */
export function suspectsFor(cause: CauseId, {plane, air}: Flight, body: GliderDesign['body'], glide: Glide, right: Throw): readonly Suspect[] {
  const thrown = (change: Partial<Throw>, loaded = plane, more: Omit<Suspect, 'track'> = {}): Suspect[] => {
    const track = fly(airframeOf(loaded, body, air), {...right, ...change}, {until: longest, tolerance: 1e-6});
    return track.ok ? [{track: track.value, ...more}] : [];
  };
  const balanced = (share: number): Suspect[] => {
    const loaded = loadedWith(plane, massFor(plane, share), -plane.wingAt);
    const setting = trimmedAt(loaded, loaded.built);
    const speed = loaded.margin > 0 && liftOf(loaded, setting) > 0 ? glideAt(loaded, setting, air).speed : undefined;
    return thrown({}, loaded, {...(speed !== undefined && {speedRatio: speed / glide.speed})});
  };
  const made: Readonly<Partial<Record<CauseId, () => readonly Suspect[]>>> = {
    'thrown-fast': () => fast.flatMap((by) => thrown({speed: by * right.speed})),
    'thrown-slow': () => slow.flatMap((by) => thrown({speed: by * right.speed})),
    'thrown-up': () => steep.flatMap((by) => thrown({angle: right.angle + by * deg})),
    'thrown-down': () => down.flatMap((by) => thrown({angle: Math.max(right.angle + by * deg, -85 * deg)})),
    'nose-heavy': () => shifts.flatMap((share) => balanced(share)),
    'tail-heavy': () => shifts.flatMap((share) => balanced(-share)),
  };
  return made[cause]?.() ?? [];
}

/** At the nose, kg, for a balance so many mean chords further forward. */
function massFor({mass, balance, wingAt, aero}: FlyingPlane, share: number): number {
  const by = share * aero.shape.wing.meanAerodynamicChord;
  return mass * by / Math.max(balance + wingAt - by, 0.02);
}

/** A climb or a fall of less than this is not seen. */
const noticed = 0.15;

/** What a flight straight ahead looks like to somebody beside it. */
export function looksLike({moments, highest, last, ended}: Track, glide: Glide): Sight {
  const hand = moments[0]?.height ?? 0;
  const climbs = climbsOf(moments.map(({height}) => height));
  if (climbs >= 2) return 'swoops';
  if (climbs === 1) return 'zooms';
  const glided = hand * glide.ratio.usual;
  if (ended !== 'landed' || last.x > 0.7 * glided || highest.height > hand + noticed) return 'good';
  return last.speed > 1.15 * glide.speed ? 'dives' : 'drops';
}

/** How often it rose by what is noticed. */
function climbsOf(heights: readonly number[]): number {
  let climbs = 0, low = heights[0] ?? 0, high = low, rising = false;
  for (const height of heights) {
    if (rising) {
      high = Math.max(high, height);
      if (height < high - noticed) { rising = false; low = height; }
    } else {
      low = Math.min(low, height);
      if (height > low + noticed) { rising = true; high = height; climbs += 1; }
    }
  }
  return climbs;
}

/** Flights look alike that differ by how hard they do the same. */
const near: Readonly<Partial<Record<Sight, readonly Sight[]>>> = {swoops: ['zooms'], zooms: ['swoops'], dives: ['drops'], drops: ['dives']};

/** Where a tape and a thumb leave a throw by hand: a third. Common practice, no source. */
const scatter = 0.35;

/** How well a cause explains what was seen and measured, 1 where nothing was measured and it looks so; and the speed that its likeliest size would have made of the plane's own. */
export interface Fit {
  readonly match: number;
  /** Whether the model flies this plane so for this cause, or nearly. */
  readonly looks: 'so' | 'nearly' | 'otherwise';
  /** Distance and time, where measured, are as that cause makes them. */
  readonly measures: 'fit' | 'miss' | undefined;
  readonly speedRatio?: number;
}

export function fitOf(suspects: readonly Suspect[], seen: Seen, glide: Glide): Fit | undefined {
  const fits = suspects.map(({track, speedRatio}): Fit => {
    const like = looksLike(track, glide);
    const looks = like === seen.what ? 'so' : near[seen.what]?.includes(like) === true ? 'nearly' : 'otherwise';
    const misses = [
      ...seen.distance !== undefined ? [Math.log(seen.distance / Math.max(track.last.x, 0.1))] : [],
      ...seen.time !== undefined ? [Math.log(seen.time / Math.max(track.last.time, 0.05))] : [],
    ].map((off) => off / scatter);
    const measured = Math.exp(-misses.reduce((sum, off) => sum + off * off, 0) / 2);
    const alike = {so: 1, nearly: 0.6, otherwise: 0.3}[looks];
    return {
      match: misses.length === 0 ? alike : alike * (0.15 + 1.35 * measured), looks, measures: misses.length === 0 ? undefined : misses.every((off) => Math.abs(off) < 1) ? 'fit' : 'miss',
      ...(speedRatio !== undefined && {speedRatio}),
    };
  });
  return fits.reduce<Fit | undefined>((best, fit) => (best && best.match >= fit.match ? best : fit), undefined);
}
