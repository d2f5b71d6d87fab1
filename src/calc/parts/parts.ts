import type {GliderDesign} from '../design/design.js';
import {memo} from '../memo.js';
import type {Outcome, Problem} from '../problem.js';
import {bodyPart} from './body.js';
import {alongGrain} from './grain.js';
import type {Part} from './part.js';
import {finPart, tailplanePart} from './tail.js';
import {wingPart} from './wing.js';

export type {LineLabel, Part, PartId, PartLine} from './part.js';

/** What can be cut, and why anything else cannot: a clash in one part leaves the others standing. */
export interface Parts {
  readonly parts: readonly Part[];
  readonly problems: readonly Problem[];
}

/** The parts of a glider, flat, as they are cut from the board: wing, body layers, tailplane, fins. */
export const partsOf = memo((
  wing: GliderDesign['wing'], body: GliderDesign['body'], tail: GliderDesign['tail'],
  arrangement: GliderDesign['arrangement'], board: GliderDesign['board'],
): Parts => {
  const parts: Part[] = [];
  const problems: Problem[] = [];
  const take = (part: Outcome<Part>): void => {
    if (part.ok) parts.push(alongGrain(part.value, board.grain)); else problems.push(...part.problems);
  };
  take(wingPart(wing));
  take(bodyPart(body, arrangement, wing, tail));
  take(tailplanePart(tail, board));
  const fin = finPart(tail);
  if (fin) parts.push(alongGrain(fin, board.grain));
  return {parts, problems};
});
