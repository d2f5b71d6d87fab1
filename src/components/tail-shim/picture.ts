import type {ShimStudy} from '../../calc/flight/slips.js';
import type {TailShimPicture} from '../../drawing/figures/tail-shim.js';
import {tailShimWords} from '../../messages/en/tail-shim.js';
import type {GliderTailShim} from './tail-shim.js';

export {drawTailShim} from '../../drawing/figures/tail-shim.js';

const MM = 1000;
const drawn = new WeakMap<ShimStudy, {readonly reader: string; readonly picture: TailShimPicture}>();

/** The board on its slips as a figure; the same object for the same answer and reader. */
export function tailShimPicture(host: GliderTailShim, study: ShimStudy): TailShimPicture {
  const {reader} = host;
  const kept = drawn.get(study);
  if (kept?.reader === reader) return kept.picture;
  const picture = pictureOf(host, study);
  drawn.set(study, {reader, picture});
  return picture;
}

function pictureOf(host: GliderTailShim, {now: board}: ShimStudy): TailShimPicture {
  const words = host.say(tailShimWords);
  const {chord, angle, height, raised, rise} = board;
  const {place, overhang} = host.placing;
  const thickness = host.state.design.board.thickness;
  const reach = chord - overhang, turned = Math.abs(angle);
  const end = reach * Math.cos(turned);
  const width = 'width' in place ? place.width : end - place.fromPivot;
  const from = 'width' in place ? end - place.width : place.fromPivot;
  const layers = Math.max(Math.ceil(height / thickness - 1e-9), 1);
  return {
    chord: chord * MM, thickness: thickness * MM, raised: raised ?? 'front', angle: turned, overhang: overhang * MM,
    slip: raised === undefined ? undefined : {
      from: from * MM, to: (from + Math.max(width, 1e-3)) * MM,
      layers: Array.from({length: layers}, (_, i) => ({from: i * thickness * MM, to: Math.min((i + 1) * thickness, height) * MM})),
    },
    words: {
      angle: host.angleWords(angle), height: host.fine(height), chord: host.write(chord, 'length'), rise: host.fine(rise),
      front: words.front, body: words.body,
    },
  };
}
