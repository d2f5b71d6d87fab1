import {usualUnit} from '../../calc/units/kinds.js';
import type {Pen} from '../../drawing/pen.js';
import type {View} from '../../drawing/view.js';
import {drawThreeView} from '../../drawing/figures/three-view.js';
import type {ThreeViewFigures, ThreeViewPicture} from '../../drawing/figures/three-view.js';
import type {ViewName} from '../../drawing/figures/three-view-layout.js';
import {drawingWords} from '../../messages/en/drawing.js';
import {rulerStep} from '../base/dragged.js';
import type {GliderElement} from '../base/element.js';
import type {Handle} from '../base/figure.js';
import {threeViewHandles} from './handles.js';
import {mainNumbers, sectionOf} from './numbers.js';
import {threeViewPicture} from './three-view.js';
import type {Drawn} from './three-view.js';

/** A glider and the views of it that are shown. */
export interface Shown {
  readonly drawn: Drawn;
  readonly views: readonly ViewName[];
}

/** The figure of one element: its picture in the reader's words and units, and what can be moved in it. */
export class ThreeViewPictures {
  #host: GliderElement;
  #made: {readonly of: Shown; readonly reader: string; readonly picture: ThreeViewPicture} | undefined;

  constructor(host: GliderElement) { this.#host = host; }

  readonly draw = (pen: Pen, widthPx: number, shown: Shown): View => drawThreeView(pen, widthPx, this.#pictureOf(shown));

  handles(shown: Shown, view: View): readonly Handle[] {
    const {design, dihedral} = shown.drawn;
    return threeViewHandles(design, dihedral, this.#pictureOf(shown), view.box.width / view.mmPerPx, rulerStep(this.#host.system));
  }

  #pictureOf(shown: Shown): ThreeViewPicture {
    const {reader} = this.#host;
    if (this.#made?.of !== shown || this.#made.reader !== reader) this.#made = {of: shown, reader, picture: this.#picture(shown)};
    return this.#made.picture;
  }

  #picture({drawn, views}: Shown): ThreeViewPicture {
    const words = this.#host.say(drawingWords);
    const {wing, name} = drawn.design;
    const above = wing.creases.length > 0 && wing.foldFace === 'opening' || wing.joints.length > 0 && wing.jointFace === 'closing';
    const below = wing.creases.length > 0 && wing.foldFace === 'closing' || wing.joints.length > 0 && wing.jointFace === 'opening';
    const unit = usualUnit('length', this.#host.system);
    const titled = (title: string): string => (views.includes('plan') ? title : words.inUnit(title, unit));
    return threeViewPicture(drawn, views, this.#figures(drawn), {
      side: titled(words.side), plan: words.plan, front: titled(words.front), section: words.section,
      notes: [words.lengths(unit), ...(above ? [words.faces.above] : []), ...(below ? [words.faces.below] : [])],
      title: words.title(name), rows: mainNumbers(this.#host, drawn),
    });
  }

  #figures(drawn: Drawn): ThreeViewFigures {
    const {design: {wing, body, tail, arrangement}, dihedral} = drawn;
    const length = (value: number): string => this.#host.write(value, 'length', {bare: true});
    const {camber, camberHeight} = sectionOf(drawn);
    return {
      span: length(wing.span), chord: length(wing.chord), tailSpan: length(tail.span), tailChord: length(tail.chord),
      ...(wing.tipChord !== undefined && {tipChord: length(wing.tipChord)}),
      ...(Math.abs(wing.sweep) > 1e-6 && {sweep: length(wing.sweep)}),
      creases: wing.creases.map(({at}) => length(at)), joints: wing.joints.map(({at}) => length(at)),
      wingAt: length(arrangement.wingAt), tailAt: length(arrangement.tailAt), bodyLength: length(body.length), bodyHeight: length(body.height),
      ...(tail.fins.count > 0 && {finHeight: length(tail.fins.height)}),
      flown: length(dihedral?.spanAsFlown ?? wing.span),
      ...(dihedral && dihedral.tipRise > 1e-6 && {rise: length(dihedral.tipRise)}),
      angles: (dihedral?.joints ?? []).map(({angle}) => this.#host.write(angle, 'angle')),
      ...(camber > 1e-6 && {camber: this.#host.say(drawingWords).camber({camber: this.#host.write(camber, 'ratio'), height: this.#host.write(camberHeight, 'length')})}),
    };
  }
}
