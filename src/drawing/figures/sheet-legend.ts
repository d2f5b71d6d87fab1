import type {Pen} from '../pen.js';
import {grainOf} from './sheet-grain.js';
import {drawPin} from './sheet-pin.js';
import {room, type LegendItem, type SheetsLayout} from './sheet-layout.js';

/** A sample of each kind of line with what it means. */
export function drawLegend(pen: Pen, legend: SheetsLayout['legend'], words: Readonly<Record<LegendItem, string>>): void {
  const {u} = pen;
  for (const {item, at} of legend) {
    const key = `legend-${item}`;
    const y = at.y - 4 * u;
    const to = at.x + room.sample * u;
    switch (item) {
      case 'cut': pen.line(key, {x: at.x, y}, {x: to, y}, 'cut'); break;
      case 'above': pen.crease(key, {x: at.x, y}, {x: to, y}); break;
      case 'below':
        pen.line(`${key}-one`, {x: at.x, y: y - 1.6 * u}, {x: to, y: y - 1.6 * u}, 'dash');
        pen.line(`${key}-other`, {x: at.x, y: y + 1.6 * u}, {x: to, y: y + 1.6 * u}, 'dash');
        break;
      case 'mark': pen.line(key, {x: at.x, y}, {x: to, y}, 'mark'); break;
      case 'grain': pen.path(key, grainOf({x: at.x, y: y - 5 * u}, {x: to, y: y + 5 * u}, 'length', 3 * u), 'grain'); break;
      case 'held': drawPin(pen, key, {x: (at.x + to) / 2, y}); break;
    }
    pen.text(`${key}-words`, {x: to + 8 * u, y: at.y}, words[item], {soft: true, sizePx: 11.5});
  }
}
