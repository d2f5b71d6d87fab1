import {widthOf} from '../lettering.js';
import type {Pen, XY} from '../pen.js';
import type {Box} from '../view.js';
import {mmPerPx, ownArea} from './draw-board.js';
import {codeOf, type TemplatePage, type TemplatePlan} from './plan.js';

/** The pages of one board in small, against the right edge of a box, with the page itself filled in. Gives the width it took, in mm. */
export function drawMap(pen: Pen, plan: TemplatePlan, page: TemplatePage, room: Box): number {
  const {sheet} = page;
  const own = plan.pages.filter((each) => each.sheet === sheet);
  const areas = own.map((each) => ({each, area: ownArea(plan, each)}));
  const left = Math.min(0, ...areas.map(({area}) => area.left)), right = Math.max(sheet.length, ...areas.map(({area}) => area.right));
  const low = Math.min(0, ...areas.map(({area}) => area.low)), high = Math.max(sheet.width, ...areas.map(({area}) => area.high));
  const scale = Math.min(room.width / (right - left), room.height / (high - low));
  const corner = {x: room.x + room.width, y: room.y + room.height};
  const on = ({x, y}: XY): XY => ({x: corner.x - (right - x) * scale, y: corner.y - (y - low) * scale});
  const rectangle = (l: number, b: number, r: number, t: number): readonly XY[] => [{x: l, y: b}, {x: r, y: b}, {x: r, y: t}, {x: l, y: t}].map(on);

  const here = areas.find(({each}) => each === page)?.area;
  if (here) pen.polygon('map-here', rectangle(here.left, here.low, here.right, here.high), 'none', 'stack');
  for (const piece of sheet.pieces) pen.polygon(`map-piece-${String(piece.number)}`, piece.outline.map(on), 'thin', 'none');
  pen.polygon('map-board', rectangle(0, 0, sheet.length, sheet.width), 'fine', 'none');
  for (const {each, area} of areas) {
    const code = codeOf(each.tile);
    const middle = on({x: (area.left + area.right) / 2, y: (area.low + area.high) / 2});
    pen.polygon(`map-${code}`, rectangle(area.left, area.low, area.right, area.high), 'mark', 'none');
    const fits = Math.min((area.right - area.left) * scale / widthOf(code, 11), (area.high - area.low) * scale / 12) >= mmPerPx;
    if (fits) pen.text(`map-${code}-words`, {x: middle.x, y: middle.y + 1}, code, {anchor: 'middle', sizePx: 11, weight: each === page ? 600 : 400, halo: each !== page});
  }
  return (right - left) * scale;
}
