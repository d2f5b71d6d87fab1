import type {BalancePlan} from '../../calc/balance/balance-plan.js';
import {balanceWorkingWords} from '../../messages/en/balance-working.js';
import type {GliderElement} from '../base/element.js';
import {thenOf, wingLoading} from './sentences.js';

/** The numbers in the picture, and those that follow. */
export function balanceRows(host: GliderElement, plan: BalancePlan): readonly (readonly [string, string])[] {
  const {plane, advice} = plan, then = thenOf(plan);
  const {rows} = host.say(balanceWorkingWords);
  const length = (value: number): string => host.write(value, 'length');
  const after = then ?? plane;
  return [
    [rows.now, length(plane.behindWing)], [rows.from, length(plane.target.from - plane.wingAt)], [rows.to, length(plane.target.to - plane.wingAt)],
    [rows.neutral, length(plane.neutralPoint)], [rows.margin, host.write(plane.margin, 'ratio')], [rows.mass, host.write(plane.mass, 'mass')],
    ...advice ? [
      [rows.weight, host.write(advice.mass, 'mass')], [rows.place, length(advice.place)],
    ] as const : [],
    ...then ? [
      [rows.then, length(after.behindWing)],
      [rows.marginThen, host.write(after.margin, 'ratio')], [rows.massThen, host.write(after.mass, 'mass')],
    ] as const : [],
    [rows.wing, wingLoading(host, after.wingLoading)], [rows.cube, host.write(after.cubeLoading, 'cube-loading')],
    [rows.volume, host.write(plane.handbook.tailVolume, 'count', {digits: 2})],
  ];
}
