import type {WingFold} from '../../calc/bench/wing-fold.js';
import {wholeLayers} from '../../calc/bench/stack.js';
import type {Change} from '../../calc/design/store.js';
import type {CamberPicture} from '../../drawing/figures/camber.js';
import {camberWords} from '../../messages/en/camber.js';
import type {Handle} from '../base/figure.js';
import type {GliderCamberShim} from './camber-shim.js';

export {drawCamber} from '../../drawing/figures/camber.js';

const drawn = new WeakMap<WingFold, {readonly reader: string; readonly picture: CamberPicture}>();

/** The bench as a figure, in millimetres, the leading edge always at the left; the same object for the same fold and reader. */
export function camberPicture(host: GliderCamberShim, fold: WingFold): CamberPicture {
  const {reader} = host;
  const kept = drawn.get(fold);
  if (kept?.reader === reader) return kept.picture;
  const picture = pictureOf(host, fold);
  drawn.set(fold, {reader, picture});
  return picture;
}

/** Back from the free edge along the last panel, which stands at the whole fold. */
function apexOf({onBench: {pivot, edge}, panels, total}: WingFold, front: boolean): {readonly x: number; readonly y: number} {
  if (panels.length < 3) return pivot;
  const last = (front ? panels[0] : panels[panels.length - 1]) ?? 0;
  return {x: edge.x - last * Math.cos(total), y: edge.y - last * Math.sin(total)};
}

function pictureOf(host: GliderCamberShim, fold: WingFold): CamberPicture {
  const words = host.say(camberWords);
  const {wing, board} = host.state.design;
  const {onBench, panels, total, stack} = fold;
  const side = wing.propped === 'front' ? -1 : 1;
  const mm = ({x, y}: {readonly x: number; readonly y: number}): {x: number; y: number} => ({x: side * x * 1000, y: y * 1000});
  const front = panels[0] ?? 0;
  const rear = panels.slice(1).reduce((sum, p) => sum + p, 0);
  const [, whole] = wholeLayers(stack, board.thickness);
  const layers = Array.from({length: stack > 0 ? whole : 0}, (_, i) => ({
    from: Math.min(i * board.thickness, stack) * 1000, to: Math.min((i + 1) * board.thickness, stack) * 1000,
  }));
  const flat = wing.propped === 'front' ? rear : front;
  return {
    side,
    boards: onBench.boards.map((outline) => outline.map(mm)),
    stack: {near: side * onBench.stack[0] * 1000, far: side * onBench.stack[1] * 1000, layers},
    contacts: onBench.contacts.map(mm),
    pivot: mm(onBench.pivot), edge: mm(onBench.edge), apex: mm(apexOf(fold, wing.propped === 'front')),
    flatEnd: wing.propped === 'crest' ? mm({x: -front, y: 0}) : mm({x: -flat, y: 0}),
    crest: wing.propped === 'crest', fold: total, thickness: board.thickness * 1000,
    words: {
      fold: host.write(total, 'angle'), height: host.write(stack, 'length'), front: host.write(front, 'length'), rear: host.write(rear, 'length'),
      crease: words.crease, stack: host.stackInWords(stack), touches: words.touches, flat: words.flatPanel,
    },
  };
}

/** The stack can be made taller and moved; the crease can be moved where there is only one. */
export function camberHandles(host: GliderCamberShim, picture: CamberPicture): readonly Handle[] {
  const {wing} = host.state.design;
  const step = host.system === 'inch' ? 25.4 / 32 : 0.5;
  const metres = (mm: number): number => Math.round(mm / step) * step / 1000;
  const {side, stack, pivot, flatEnd} = picture;
  const top = stack.layers.reduce((most, {to}) => Math.max(most, to), 0);
  const handles: Handle[] = [];
  if (!host.locked('wing.stack') && wing.creases.length > 0) {
    handles.push({
      key: 'height', path: 'wing.stack', at: {x: (stack.near + stack.far) / 2, y: -top},
      drag: ({y}): readonly Change[] => [{path: 'wing.foldBy', value: 'stack'}, {path: 'wing.stack', value: Math.max(0, metres(-y))}],
    });
  }
  if (wing.propped !== 'crest' && !host.locked('wing.stackFromCrease') && top > 0) {
    const half = Math.abs(stack.far - stack.near) / 2;
    handles.push({
      key: 'place', path: 'wing.stackFromCrease', at: {x: (stack.near + stack.far) / 2, y: 0},
      drag: ({x}): readonly Change[] => [
        {path: 'wing.propPlace', value: 'bench'}, {path: 'wing.stackFromCrease', value: Math.max(1e-3, metres((x - pivot.x) * side - half))}],
    });
  }
  const [crease] = wing.creases;
  if (crease && wing.creases.length === 1 && wing.propped !== 'crest' && !host.locked('wing.creases')) {
    handles.push({
      key: 'crease', path: 'wing.creases', at: {x: pivot.x, y: 0},
      drag: ({x}): readonly Change[] => {
        const flat = metres(Math.abs(x - flatEnd.x));
        const at = wing.propped === 'rear' ? flat : wing.chord - flat;
        return at > 0.002 && at < wing.chord - 0.002 ? [{path: 'wing.creases', value: [{at}]}] : [];
      },
    });
  }
  return handles;
}
