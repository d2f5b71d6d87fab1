import type {Pen, XY} from '../pen.js';
import {fitView, type View} from '../view.js';

/** A board on slips on the straight upper edge of a body, front edge to the left: millimetres, y down from that edge. */
export interface TailShimPicture {
  /** Lower face from the edge it turns about to the raised one, along the board. */
  readonly chord: number;
  readonly thickness: number;
  /** Which edge is raised, and by what angle, rad; the front where nothing is. */
  readonly raised: 'front' | 'rear';
  readonly angle: number;
  /** Where the slips begin and end, from the pivot along the body, and their layers upwards. */
  readonly slip: {readonly from: number; readonly to: number; readonly layers: readonly {readonly from: number; readonly to: number}[]} | undefined;
  /** How far the pivot edge overhangs its step. */
  readonly overhang: number;
  readonly words: {readonly angle: string; readonly height: string; readonly chord: string; readonly rise: string; readonly front: string; readonly body: string};
}

export function drawTailShim(pen: Pen, widthPx: number, data: TailShimPicture): View {
  const {chord, thickness, raised, angle, slip, overhang, words} = data;
  // along the body from the pivot towards the raised edge
  const side = raised === 'rear' ? 1 : -1;
  const at = (along: number, up: number): XY => ({x: side * along, y: -up});
  const on = (along: number, above: number): XY => at(along * Math.cos(angle) - above * Math.sin(angle), along * Math.sin(angle) + above * Math.cos(angle));
  const reach = chord - overhang, margin = 0.12 * chord;
  const rise = reach * Math.sin(angle);
  const left = Math.min(side * -overhang, side * reach) - margin, right = Math.max(side * -overhang, side * reach) + margin;
  const view = fitView({x: left, y: -rise - thickness, width: right - left, height: rise + thickness + 0.14 * chord}, widthPx, {left: 12, right: 56, top: 40, bottom: 48}, 340);
  pen.begin(view);
  const {u} = pen;
  const depth = 0.14 * chord;
  pen.polygon('body', [{x: left, y: 0}, {x: right, y: 0}, {x: right, y: depth}, {x: left, y: depth}], 'none', 'hatch');
  pen.line('body-edge', {x: left, y: 0}, {x: right, y: 0}, 'cut');
  pen.text('body-words', {x: left + 6 * u, y: depth - 5 * u}, words.body, {soft: true, halo: true});
  slip?.layers.forEach(({from, to}, i) => {
    pen.polygon(`layer-${String(i)}`, [at(slip.from, from), at(slip.to, from), at(slip.to, to), at(slip.from, to)], 'fine', 'stack');
  });
  pen.polygon('board', [on(-overhang, 0), on(reach, 0), on(reach, thickness), on(-overhang, thickness)], 'cut', 'paper');
  const frontEdge = raised === 'front' ? on(reach, thickness) : on(-overhang, thickness);
  pen.text('front', {x: frontEdge.x, y: frontEdge.y - 8 * u}, words.front, {anchor: 'start', soft: true, halo: true});
  if (angle > 0) {
    const mid = on(reach * 0.55, thickness);
    pen.text('angle', {x: mid.x, y: mid.y - 14 * u}, words.angle, {anchor: 'middle', accent: true, weight: 600, halo: true});
    const corner = on(reach, 0), floor = at(reach * Math.cos(angle), 0);
    pen.dimension('rise', corner, floor, side > 0 ? 16 : -16, words.rise, {upright: true});
    if (slip) {
      const top = slip.layers.at(-1)?.to ?? 0;
      pen.circle('contact', at(slip.from, top), 3, 'accent', 'accent');
    }
  } else {
    pen.text('angle', {x: (left + right) / 2, y: -thickness - 14 * u}, words.angle, {anchor: 'middle', halo: true});
  }
  pen.circle('pivot', at(0, 0), 3, 'cut', 'paper');
  const [a, b] = side > 0 ? [at(-overhang, 0), at(reach * Math.cos(angle), 0)] : [at(reach * Math.cos(angle), 0), at(-overhang, 0)];
  pen.dimension('chord', {x: b.x, y: depth}, {x: a.x, y: depth}, 18, words.chord);
  pen.finish();
  return view;
}
