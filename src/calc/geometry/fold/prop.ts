import {good, refused, type Outcome} from '../../problem.js';
import {foldProblems, lengthProblems, refusal, rounding} from './lengths.js';
import {foldSectionOverStack, sectionProppedBy, stackForFold, type Overhang, type Section, type SectionOnBench} from './propped-section.js';
import type {FoldFace, Prop, PropPlacing, StandingStack} from './stack.js';

export type {ContactKind, FoldFace, Prop, PropPlacing, PropWhere, StandingStack} from './stack.js';

/** The panel that is propped, lengths in metres. */
export interface Panel {
  /** From the crease to the free edge, along the face that lies below. */
  readonly length: number;
  readonly thickness: number;
  readonly face: FoldFace;
  /** Width at the surface of a V groove already cut: a closing fold stops at 2 atan(w / 2t). */
  readonly groove?: number;
  /** The panel that lies flat; it is read only where a groove stops the fold. As long as the propped one when left out. */
  readonly flat?: number;
}

/** A propped panel at rest: a section of two panels, and its one fold in rad. */
export interface FoldFromProp extends SectionOnBench {
  readonly angle: number;
}

/**
 * The fold that a stack gives.
 *
 * Right-angled triangle on the bench; own derivation. With the pivot d above the bench (0 closing, t opening), a fold f
 * lifts the point s along the lower face to d (1 − cos f) + s sin f, at d sin f + s cos f from the crease. Hence, with
 * panel L, stack h:
 * - edge (s = L) and inset (s = L − e): f = asin((h − d) / √(s² + d²)) + atan(d / s); closing, sin f = h / s;
 * - bench: f = asin(d / √(x² + (h − d)²)) + atan2(h − d, x); closing, tan f = h / x;
 * - plumb: d (1 − cos f) + L sin f − w tan f = h, the least root.
 *
 * A stack of no height leaves the panel flat. Refused as `foldSectionOverStack`.
 */
export const foldFromProp = (panel: Panel, prop: Prop): Outcome<FoldFromProp> =>
  folded(foldSectionOverStack(sectionOf(panel), prop));

/** The stack that a wanted fold needs, d (1 − cos f) + s sin f high: the exact inverse of `foldFromProp`. Refused as `stackForFold`. */
export const propForFold = (panel: Panel, angle: number, prop: PropPlacing): Outcome<{readonly height: number}> =>
  stackForFold(sectionOf(panel), angle, prop);

/** What happens when a panel is let down on a stack that stands where it stands. Refused as `sectionProppedBy`. */
export const proppedBy = (panel: Panel, stack: StandingStack): Outcome<FoldFromProp & Overhang> =>
  folded(sectionProppedBy(sectionOf(panel), stack));

/** Where a block at hand must stand for a wanted fold: its near upper edge, in metres. */
export interface PropPlace {
  /** In from the free edge, along the panel. */
  readonly inset: number;
  /** From the crease, on the bench. */
  readonly fromCrease: number;
}

/**
 * Where a block of this height must stand for a wanted fold: s = (h − d (1 − cos f)) / sin f along the panel; closing,
 * h / sin f along it and h / tan f on the bench.
 *
 * Refused: `prop-too-tall` {height, most}: even under the free edge it would fold the panel further; `prop-past-crease`: so
 * low that it would have to stand under the crease; `fold-out-of-range`, `fold-past-groove`, and lengths that cannot be.
 */
export function placeForFold(panel: Panel, angle: number, height: number): Outcome<PropPlace> {
  const problems = [...lengthProblems({height}), ...foldProblems(angle)];
  if (problems.length) return refused(...problems);
  const edge = propForFold(panel, angle, {where: 'edge'});
  if (!edge.ok) return edge;
  const most = edge.value.height, d = panel.face === 'opening' ? panel.thickness : 0;
  if (height > most * (1 + rounding)) return refusal('prop-too-tall', {height, most});
  // down from the free edge: what is lacking in height, along the slope
  const inset = Math.max(0, most - height) / Math.sin(angle), along = panel.length - inset;
  return along > 0
    ? good({inset, fromCrease: d * Math.sin(angle) + along * Math.cos(angle)}) : refusal('prop-past-crease', {height});
}

const sectionOf = ({length, flat = length, thickness, face, groove}: Panel): Section =>
  ({panels: [flat, length], propped: 'rear', thickness, face, grooves: [groove]});

const folded = <T extends SectionOnBench>(outcome: Outcome<T>): Outcome<T & {readonly angle: number}> =>
  (outcome.ok ? good({...outcome.value, angle: outcome.value.total}) : outcome);
