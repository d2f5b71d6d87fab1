import type {GliderDesign} from '../design/design.js';
import type {Flight} from '../flight/flight.js';
import type {Change} from './change.js';
import {leversFor} from './levers.js';
import type {Sight} from './seen.js';

/** A plane that would only dive or only stall as it is set. */
export type NoGlide = 'trim-dives' | 'trim-stalls';

/** Whether a plane does, by the model. */
export function noGlideOf({trim}: Flight): NoGlide | undefined {
  const code = trim.ok ? undefined : trim.problems[0]?.code;
  return code === 'trim-dives' || code === 'trim-stalls' ? code : undefined;
}

type TailChange = Extract<Change, {id: 'slip-more' | 'slip-less'}>;

/** Slips that let such a plane glide flat, with speed to spare; nothing where it glides already, or where none do. */
export function tailRemedy(design: GliderDesign, flight: Flight): TailChange | undefined {
  const doing = noGlideOf(flight);
  return doing && leversFor(design, flight, flight.advised.speed, doing === 'trim-dives' ? 'slower' : 'faster')
    .find((change): change is TailChange => change.id === 'slip-more' || change.id === 'slip-less');
}

/** Sights that a plane which does so cannot give: then its numbers are not the plane that was thrown. */
const never: Readonly<Record<NoGlide, readonly Sight[]>> = {'trim-dives': ['good', 'swoops', 'zooms'], 'trim-stalls': ['good', 'dives']};

/** Whether what was seen speaks against what was reckoned. */
export const speaksAgainst = (doing: NoGlide, what: Sight): boolean => never[doing].includes(what);
