import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {tailCall} from '../../calc/flight/calls.js';
import type {Measure, FlightCheck} from '../../calc/flight/flight-check.js';
import {neutralPointBand} from '../../calc/flight/flying-plane.js';
import type {WingStrength} from '../../calc/flight/wing-strength.js';
import type {MeasureId} from '../../calc/flight/usual-ranges.js';
import {flightCheckWords} from '../../messages/en/flight-check.js';
import type {GliderElement} from '../base/element.js';
import {endsOf, usualOf, valueOf} from './numbers.js';
import {ruler} from './ruler.js';

export {flightCheck} from '../../calc/flight/flight-check.js';
export {answerWords, caption, pictureName} from './sentences.js';

const groups = {
  weighs: ['mass', 'wingLoading', 'cubeLoading'],
  steady: ['balance', 'staticMargin', 'tailVolume', 'finVolume', 'roll'],
  glides: ['speed', 'stallMargin', 'glideRatio', 'sink', 'reynolds'],
} as const satisfies Readonly<Record<string, readonly MeasureId[]>>;

/** Every number over its ruler, what the plane does when disturbed, and whether the wing holds. */
export function panel(host: GliderElement, check: FlightCheck): TemplateResult {
  const words = host.say(flightCheckWords);
  return html`<div part="measures">${(Object.keys(groups) as (keyof typeof groups)[]).map((name) => {
    const measures = check.measures.filter(({id}) => (groups[name] as readonly MeasureId[]).includes(id));
    return measures.length === 0 ? nothing : html`<h4 class="group">${words.groups[name]}</h4>
      <ul class="measures">${measures.map((measure) => one(host, measure, check))}</ul>`;
  })}</div>
  ${strength(host, check)}<p class="caution">${words.caution}</p>`;
}

function one(host: GliderElement, measure: Measure, check: FlightCheck): TemplateResult {
  const words = host.say(flightCheckWords);
  const {id, standing, source} = measure;
  const standings = id === 'balance' ? words.balanceStanding : source === 'wanted' ? words.wantedStanding : words.standing;
  const {name, means, [standing === 'within' ? 'means' : standing]: usually} = words.measures[id];
  const change = id === 'speed' && standing === 'above' && check.flight.ok && tailCall(check.flight.value)?.speed !== 'slower' ? words.onlyLighter : usually;
  return html`<li class="measure" data-measure=${id}><div class="head"><span class="name">${name}</span><span class="value">${valueOf(host, measure, check)}</span></div>
    ${ruler(measure, endsOf(host, measure))}
    <p><strong>${standings[standing]}</strong> ${means} ${standing === 'within' ? nothing : change} <span>(${usualOf(host, measure)})</span></p></li>`;
}

/** What it does when it is disturbed, and whether the wing holds, as it is and with its skin peeled or left on. */
function strength(host: GliderElement, {strength: found, otherwise, motion, design}: FlightCheck): TemplateResult | typeof nothing {
  const words = host.say(flightCheckWords);
  if (!found.ok) return nothing;
  const placed = ({weakest: {at}}: WingStrength): {readonly place: string} => ({place: at === 0 ? words.strength.middle : words.strength.joint(host.write(at, 'length'))});
  const swing = motion.ok ? motion.value.phugoid.find(({period}) => period !== undefined)?.period : undefined;
  const other = words.strength[design.wing.peeled === 'none' ? 'peeled' : 'whole'];
  return html`${motion.ok ? html`<p class="strength">${words.motion[motion.value.turn]} ${words.wags[motion.value.wags]}
    ${swing === undefined ? nothing : words.swing(host.write(swing, 'count', {digits: 0}))}</p>` : nothing}
    <p class="strength" part="strength">${words.strength[found.value.holds](placed(found.value))}
      ${otherwise.ok ? other[otherwise.value.holds](placed(otherwise.value)) : nothing}</p>`;
}

/** How well the neutral point is known. */
export const neutralPointWithin = (host: GliderElement, {plane}: FlightCheck): string =>
  host.write(neutralPointBand * plane.aero.shape.wing.meanAerodynamicChord, 'length');
