import {wingStations} from '../../calc/bench/wing-stations.js';
import {foldedSection} from '../../calc/geometry/fold/camber.js';
import type {FoldedSection} from '../../calc/geometry/fold/camber.js';
import {planformOf} from '../../calc/geometry/planform/planform.js';
import {commonWords} from '../../messages/en/common.js';
import {drawingWords} from '../../messages/en/drawing.js';
import type {GliderElement} from '../base/element.js';
import type {Drawn} from './three-view.js';

type Rows = readonly (readonly [name: string, value: string])[];

/** The folded skin at the middle of the wing. */
export function sectionOf({design: {wing}, folds}: Drawn): FoldedSection {
  const cuts = [0, ...wing.creases.map(({at}) => at), wing.chord];
  return foldedSection(cuts.slice(1).map((cut, i) => cut - (cuts[i] ?? 0)), folds);
}

/** The numbers of the title block. */
export function mainNumbers(host: GliderElement, drawn: Drawn): Rows {
  const {rows} = host.say(drawingWords);
  const {design: {wing, body}, dihedral, balance} = drawn;
  const length = (value: number): string => host.write(value, 'length');
  // what is only estimated is not known to half a millimetre
  const roughly = (value: number): string => host.write(value, 'length', host.system === 'metric' ? {digits: 0} : {});
  const planform = planformOf(wingStations(wing));
  const {camber} = sectionOf(drawn);
  return [
    [rows.span, length(wing.span)],
    [rows.length, length(body.length)],
    [rows.chord, length(wing.chord)],
    ...(planform.ok ? [
      [rows.area, host.write(planform.value.area, 'area')] as const, [rows.aspectRatio, host.write(planform.value.aspectRatio, 'count', {digits: 1})] as const,
    ] : []),
    ...(camber > 1e-6 ? [[rows.camber, host.write(camber, 'ratio')] as const] : []),
    ...(dihedral && dihedral.equivalent > 1e-6 ? [[rows.equivalent, host.write(dihedral.equivalent, 'angle')] as const] : []),
    ...(balance ? [
      [rows.balance, balance.sure === 'weighed' ? length(balance.behindWing) : host.say(commonWords).about(roughly(balance.behindWing))] as const,
      [rows.target, rows.range(roughly(balance.target.from - balance.wingAt), roughly(balance.target.to - balance.wingAt))] as const,
    ] : []),
  ];
}

/** Every number of the picture, for those who do not see it. */
export function allNumbers(host: GliderElement, drawn: Drawn): Rows {
  const {rows} = host.say(drawingWords);
  const {design: {wing, body, tail, arrangement}, dihedral} = drawn;
  const length = (value: number): string => host.write(value, 'length');
  const nth = (label: string, index: number, of: readonly unknown[]): string => (of.length > 1 ? rows.several(label, index + 1) : label);
  return [
    ...mainNumbers(host, drawn),
    ...(wing.tipChord === undefined ? [] : [[rows.tipChord, length(wing.tipChord)] as const]),
    ...(wing.sweep === 0 ? [] : [[rows.sweep, length(wing.sweep)] as const]),
    ...wing.creases.map(({at}, i) => [nth(rows.crease, i, wing.creases), length(at)] as const),
    ...(dihedral?.joints ?? []).flatMap(({at, angle}, i, all) => [[nth(rows.joint, i, all), length(at)] as const, [nth(rows.angle, i, all), host.write(angle, 'angle')] as const]),
    ...(dihedral ? [[rows.flown, length(dihedral.spanAsFlown)] as const, [rows.rise, length(dihedral.tipRise)] as const] : []),
    [rows.wingAt, length(arrangement.wingAt)], [rows.tailAt, length(arrangement.tailAt)],
    [rows.tailSpan, length(tail.span)], [rows.tailChord, length(tail.chord)],
    ...(tail.fins.count > 0 ? [[rows.finHeight, length(tail.fins.height)] as const] : []),
    [rows.bodyHeight, length(body.height)],
  ];
}
