import {printInk} from '../ink.js';
import {layers, type Layer, type LayeredSheets} from '../layers.js';
import {through, type XY} from '../pen.js';

type Attributes = Readonly<Record<string, string | number>>;

const namespace = 'http://www.w3.org/2000/svg';

/** Kept free around the boards, so that their edges have their full width. */
const rim = 1;

/** Told apart by their dashes as well as by their colours, as on screen. */
const strokes: Readonly<Record<Exclude<Layer, 'names'>, Attributes>> = {
  'cut': {'stroke': printInk.line, 'stroke-width': 0.3},
  'crease-A': {'stroke': printInk.accent, 'stroke-width': 0.25},
  'crease-B': {'stroke': printInk.accent, 'stroke-width': 0.25, 'stroke-dasharray': '2 1'},
  'mark-A': {'stroke': printInk.soft, 'stroke-width': 0.2, 'stroke-dasharray': '0.8 0.6'},
  'mark-B': {'stroke': printInk.soft, 'stroke-width': 0.2, 'stroke-dasharray': '0.3 0.6'},
  'board': {'stroke': printInk.rule, 'stroke-width': 0.2},
};

/** Everything to cut as an SVG file in millimetres, a group for each layer. */
export function writeSvg({length, width, paths, texts}: LayeredSheets, title: string): string {
  const file = document.implementation.createDocument(namespace, 'svg');
  const add = (parent: Element, tag: string, attributes: Attributes = {}, words?: string): Element => {
    const node = file.createElementNS(namespace, tag);
    for (const [name, value] of Object.entries(attributes)) node.setAttribute(name, String(value));
    if (words !== undefined) node.textContent = words;
    return parent.appendChild(node);
  };
  const size = [length + 2 * rim, width + 2 * rim] as const;
  const root = file.documentElement;
  for (const [name, value] of Object.entries({width: `${String(size[0])}mm`, height: `${String(size[1])}mm`, viewBox: `${String(-rim)} ${String(-rim)} ${String(size[0])} ${String(size[1])}`})) {
    root.setAttribute(name, value);
  }
  add(root, 'title', {}, title);
  const down = ({x, y}: XY): XY => ({x, y: width - y});
  for (const layer of layers) {
    if (layer === 'names') {
      if (texts.length === 0) continue;
      const group = add(root, 'g', {id: layer, fill: printInk.soft, stroke: 'none', 'font-family': 'sans-serif'});
      for (const {at, anchor, upright, size: height, words} of texts) {
        const {x, y} = down(at);
        add(group, 'text', {x, y, 'font-size': height, 'text-anchor': anchor, ...upright ? {transform: `rotate(-90 ${String(x)} ${String(y)})`} : {}}, words);
      }
      continue;
    }
    const own = paths.filter((path) => path.layer === layer);
    if (own.length === 0) continue;
    const group = add(root, 'g', {id: layer, fill: 'none', ...strokes[layer]});
    for (const {points, closed} of own) add(group, 'path', {d: through(points.map(down), closed)});
  }
  return `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(file)}\n`;
}
