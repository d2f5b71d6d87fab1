import type {JointFold} from '../../calc/bench/dihedral.js';
import {drawDihedral} from '../../drawing/figures/dihedral.js';
import {layOutDihedral} from '../../drawing/figures/dihedral-layout.js';
import type {DihedralPicture} from '../../drawing/figures/dihedral-layout.js';
import type {Pen} from '../../drawing/pen.js';
import type {View} from '../../drawing/view.js';
import {dihedralFigureWords} from '../../messages/en/dihedral-figure.js';
import {rulerStep} from '../base/dragged.js';
import type {GliderElement} from '../base/element.js';
import type {Handle} from '../base/figure.js';
import type {Solved} from './dihedral-angle.js';
import {dihedralHandles} from './handles.js';
import {dihedralPicture} from './sketches.js';

/** The figure of one element: its picture in the reader's words and units, and what can be moved in it. */
export class DihedralPictures {
  #host: GliderElement;
  #made: {readonly of: Solved; readonly reader: string; readonly picture: DihedralPicture} | undefined;

  constructor(host: GliderElement) { this.#host = host; }

  readonly draw = (pen: Pen, widthPx: number, solved: Solved): View => drawDihedral(pen, widthPx, this.#pictureOf(solved));

  handles(solved: Solved, view: View): readonly Handle[] {
    const picture = this.#pictureOf(solved);
    return dihedralHandles(solved.dihedral, solved.wing, picture, layOutDihedral(picture, view.box.width / view.mmPerPx), rulerStep(this.#host.system));
  }

  #pictureOf(solved: Solved): DihedralPicture {
    const {reader} = this.#host;
    if (this.#made?.of !== solved || this.#made.reader !== reader) this.#made = {of: solved, reader, picture: this.#picture(solved)};
    return this.#made.picture;
  }

  #picture({dihedral, wing, board}: Solved): DihedralPicture {
    const words = this.#host.say(dihedralFigureWords);
    const length = (value: number): string => this.#host.write(value, 'length');
    const angle = (value: number): string => this.#host.write(value, 'angle');
    const where = ({at}: JointFold): string => (at > 0 ? words.atFromMiddle(length(at)) : words.atMiddle);
    return dihedralPicture(dihedral, wing, board.thickness, {
      middle: words.middle,
      joint: (joint, order) => ({
        title: words.title(order + 1, where(joint)), angle: angle(joint.lean), panel: length(joint.panel), height: length(joint.block),
        at: length(joint.at), contact: length(joint.place.fromJoint),
      }),
      flown: {
        title: words.flownTitle, span: length(dihedral.spanAsFlown), rise: length(dihedral.tipRise),
        equivalent: dihedral.panels.length > 1 ? words.dashed(angle(dihedral.equivalent)) : '',
      },
    });
  }
}
