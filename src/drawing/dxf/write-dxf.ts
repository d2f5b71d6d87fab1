import Drawing from 'dxf-writer';
import {layers, type Layer, type LayeredSheets} from '../layers.js';

/** A colour of the format's own index and a line type for each layer: what is on the face below is dashed. */
const styles: Readonly<Record<Layer, readonly [color: number, lineType: string]>> = {
  'cut': [7, 'CONTINUOUS'],
  'crease-A': [1, 'CONTINUOUS'],
  'crease-B': [1, 'DASHED'],
  'mark-A': [5, 'CONTINUOUS'],
  'mark-B': [5, 'DASHED'],
  'names': [8, 'CONTINUOUS'],
  'board': [9, 'CONTINUOUS'],
};

const anchors = {start: 'left', middle: 'center', end: 'right'} as const;

const nameOf = (layer: Layer): string => layer.toUpperCase();

/** Everything to cut as a DXF file in millimetres, its layers named CUT, CREASE-A, CREASE-B, MARK-A, MARK-B, NAMES and BOARD. */
export function writeDxf({paths, texts}: LayeredSheets): string {
  const drawing = new Drawing();
  drawing.setUnits('Millimeters');
  for (const layer of layers) {
    const [color, lineType] = styles[layer];
    drawing.addLayer(nameOf(layer), color, lineType);
  }
  for (const {layer, points, closed} of paths) {
    drawing.setActiveLayer(nameOf(layer));
    const [from, to] = points;
    if (!closed && points.length === 2 && from && to) drawing.drawLine(from.x, from.y, to.x, to.y);
    else drawing.drawPolyline(points.map(({x, y}) => [x, y]), closed);
  }
  drawing.setActiveLayer(nameOf('names'));
  for (const {at, anchor, upright, size, words} of texts) {
    // capitals stand as high as the format's text height, about 0.72 of a font's size
    drawing.drawText(at.x, at.y, 0.72 * size, upright ? 90 : 0, escaped(words), anchors[anchor], 'baseline');
  }
  return drawing.toDxfString();
}

/** The format's own way of writing a letter beyond ASCII. */
const escaped = (words: string): string => words.replaceAll('\u00a0', ' ')
  .replace(/[^\x20-\x7e]/g, (letter) => `\\U+${letter.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`);
