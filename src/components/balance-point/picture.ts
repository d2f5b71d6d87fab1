import type {BalancePlan} from '../../calc/balance/balance-plan.js';
import {sectionAt} from '../../calc/geometry/planform/index.js';
import {bodyPart} from '../../calc/parts/body.js';
import {tailStations} from '../../calc/parts/stations.js';
import {finPart, finPlaces} from '../../calc/parts/tail.js';
import type {BalancePicture, WeightSketch} from '../../drawing/figures/balance.js';
import type {XY} from '../../drawing/pen.js';
import {balanceWords} from '../../messages/en/balance.js';
import type {Handle} from '../base/figure.js';
import type {GliderBalancePoint} from './balance-point.js';
import {near} from '../base/near.js';
import {nowWords, targetWords, thenOf} from './sentences.js';

export {drawBalance} from '../../drawing/figures/balance.js';

const MM = 1000;

/** Half of how large a fitted weight is drawn that nobody gave a size, mm. */
const anyRadius = 3;

const drawn = new WeakMap<BalancePlan, {readonly reader: string; readonly picture: BalancePicture}>();

/** The plane as a figure; the same object for the same plan and reader. */
export function balancePicture(host: GliderBalancePoint, plan: BalancePlan): BalancePicture {
  const {reader} = host;
  const kept = drawn.get(plan);
  if (kept?.reader === reader) return kept.picture;
  const picture = pictureOf(host, plan);
  drawn.set(plan, {reader, picture});
  return picture;
}

/** The plane from its left side, in millimetres, y down from the upper edge of the body. */
function pictureOf(host: GliderBalancePoint, plan: BalancePlan): BalancePicture {
  const {design, plane, lightened, advice, whole, remedy} = plan;
  const {wing, body, tail, arrangement, board} = design;
  const words = host.say(balanceWords);
  const mass = (value: number): string => host.write(value, 'mass');
  const t = board.thickness * MM;
  const cut = bodyPart(body, arrangement, wing, tail);
  const rise = plane.handbook.wing.tipRise * MM;
  const slab = (from: number, length: number, up = 0): readonly XY[] =>
    [{x: from, y: -up}, {x: from + length, y: -up}, {x: from + length, y: -up - t}, {x: from, y: -up - t}];
  const wingAt = arrangement.wingAt * MM, chord = wing.chord * MM, tailAt = arrangement.tailAt * MM;
  const tipAt = wingAt + wing.sweep * MM, tipChord = (wing.tipChord ?? wing.chord) * MM;
  const needed = remedy.ok ? remedy.value : undefined;
  const added: WeightSketch | undefined = advice && needed && {
    at: advice.place * MM, words: mass(advice.mass),
    radius: (whole?.ok ? whole.value.piece.diameter : needed.clayBall) / 2 * MM,
  };
  const target = targetWords(host, plane), then = thenOf(plan);
  const label = ({mass: of, at}: BalancePlan['design']['ballast']['masses'][number]): string => {
    const taken = lightened.off.find((one) => one.at === at && Math.abs(one.mass + one.left - of) < 1e-7);
    return taken ? `${mass(of)} → ${mass(taken.left)}` : mass(of);
  };
  return {
    height: body.height * MM, length: body.length * MM,
    body: cut.ok ? cut.value.outline.map(({x, y}) => ({x: x * MM, y: (body.height - y) * MM})) : [],
    wing: slab(wingAt, chord),
    tip: rise > 0 ? [[{x: wingAt, y: -t}, {x: wingAt + chord, y: -t}, {x: tipAt + tipChord, y: -t - rise}, {x: tipAt, y: -t - rise}], slab(tipAt, tipChord, rise)] : [],
    tailplane: slab(tailAt, tail.chord * MM),
    fin: finOutline(design, t),
    wingAt, now: plane.at * MM, then: then && then.at * MM,
    target: {from: plane.target.from * MM, to: plane.target.to * MM}, neutral: wingAt + plane.neutralPoint * MM,
    fitted: design.ballast.masses.filter((m) => m.mass > 0).map((m) => ({at: m.at * MM, radius: anyRadius, words: label(m)})),
    added,
    words: {
      now: words.now(nowWords(host, plane, plane.behindWing)), then: then ? words.then(near(host, then.behindWing)) : '',
      here: words.here(target), hereShort: words.hereShort, neutral: words.neutral,
    },
  };
}

/** A fin on the tailplane, where the nearer one stands. */
function finOutline({tail, arrangement, board}: BalancePlan['design'], thickness: number): readonly XY[] {
  const fin = finPart(tail);
  const [place = 0] = finPlaces(tail, board);
  const under = sectionAt(tailStations(tail), Math.abs(place));
  if (!fin || !under) return [];
  const front = (arrangement.tailAt + under.back + under.chord - tail.fins.chord) * MM;
  return fin.outline.map(({x, y}) => ({x: front + x * MM, y: -thickness - y * MM}));
}

/** The weight can be moved along the body, and so can the wing. */
export function balanceHandles(host: GliderBalancePoint, {added, wingAt, height}: BalancePicture): readonly Handle[] {
  const step = host.system === 'inch' ? 25.4 / 16 : 0.5;
  const metres = (mm: number): number => Math.round(mm / step) * step / MM;
  const handles: readonly Handle[] = [
    ...added ? [{key: 'weight', path: 'ballast.at', at: {x: added.at, y: height / 2}, drag: ({x}: XY) => [{path: 'ballast.at', value: metres(x)} as const]} as const] : [],
    {key: 'wing', path: 'arrangement.wingAt', at: {x: wingAt, y: 0}, drag: ({x}) => [{path: 'arrangement.wingAt', value: metres(Math.max(x, 0))}]},
  ];
  return handles.filter(({path}) => !host.locked(path));
}
