import type {Range} from '../range.js';
import {laminarFriction, mixedFriction, turbulentFriction} from './friction.js';

/** A board as the air meets it. Lengths in m, angles in rad. */
export interface BoardSection {
  readonly chord: number;
  /** Thickness of the front and rear edges, square-cut or pressed thin. */
  readonly frontEdge: number;
  readonly rearEdge: number;
  /** A square-cut front edge of the full board: the air leaves it and comes back turbulent. */
  readonly square: boolean;
  /** The fold at each crease. */
  readonly folds: readonly number[];
  /** From the front edge to the first crease, over the chord; 1 where there is none. */
  readonly firstCrease: number;
}

/** The Reynolds numbers of the chord between which the measurements behind this model lie. */
export const reynoldsOfModel = [1e4, 2e5] as const;

/**
 * Pressure drag of a front edge on its own thickness. Long rectangular bars have about 0.75 in all, friction taken off, of
 * which the blunt rear is a third: S. F. Hoerner, Fluid-Dynamic Drag (1965), chapter 3 (from memory). A pressed edge is rounder and
 * may have half of it or less.
 */
const frontEdgeDrag: Range = {least: 0.2, usual: 0.5, most: 0.8};

/** Base pressure behind a blunt rear edge, 0.135/∛(C_f c/t) on its thickness, both sides' friction: Hoerner, chapter 3 (from memory). */
const baseFactor: Range = {least: 0.09, usual: 0.135, most: 0.2};

/** Of a crease, on the square of its fold in rad. An assumption: no measurement of a sharply creased plate is known to the authors. */
const creaseDrag: Range = {least: 0, usual: 0.1, most: 0.3};

/**
 * Drag coefficient of a thin board at its ideal angle, where the front edge has no suction to lose: friction of both sides, blunt
 * edges and creases.
 *
 * Friction is laminar until the first crease trips the upper side, turbulent throughout behind a square-cut edge; the
 * range runs from all laminar to all turbulent. Pelletier and Mueller, J. Aircraft 37 (2000), measured 0.015 ± 0.004 on plates 2 %
 * thick with shaped edges at Re 1.4·10⁵ (read from their diagrams at second hand); square edges of 5 mm at these speeds and sharp
 * creases have not been measured as far as the authors know, so the range is wide.
 *
 * @param reynolds of the chord
 */
export function boardDrag(board: BoardSection, reynolds: number): Range {
  const laminar = laminarFriction(reynolds), turbulent = Math.max(turbulentFriction(reynolds), laminar);
  return {
    least: dragWith(board, 2 * laminar, frontEdgeDrag.least, baseFactor.least, creaseDrag.least), usual: usualBoardDrag(board, reynolds),
    most: dragWith(board, 2 * turbulent, frontEdgeDrag.most, baseFactor.most, creaseDrag.most),
  };
}

/** The usual figure of that range by itself. */
export const usualBoardDrag = (board: BoardSection, reynolds: number): number =>
  dragWith(board, usualFriction(board, reynolds), frontEdgeDrag.usual, baseFactor.usual, creaseDrag.usual);

function dragWith({chord, frontEdge, rearEdge, folds}: BoardSection, friction: number, front: number, behind: number, crease: number): number {
  const base = rearEdge > 0 ? behind * Math.cbrt(rearEdge / (friction * chord)) * rearEdge / chord : 0;
  let creases = 0;
  for (const fold of folds) creases += fold * fold;
  return friction + front * frontEdge / chord + base + crease * creases;
}

/** Friction of both sides; a turbulent side never rubs less than a laminar one. */
function usualFriction({square, firstCrease}: BoardSection, reynolds: number): number {
  const laminar = laminarFriction(reynolds);
  if (!square && firstCrease >= 1) return 2 * laminar;
  const turbulent = Math.max(turbulentFriction(reynolds), laminar);
  return square ? 2 * turbulent : laminar + Math.min(turbulent, Math.max(laminar, mixedFriction(reynolds, firstCrease * reynolds)));
}

/**
 * The share of the leading edge's suction that is lost: all of it where the air leaves a sharp edge for good, less where it comes
 * back round a bubble. Thin-aerofoil theory gives (c_l − c_l,ideal)²/2π as the drag of losing all. That a thin plate loses most of it is
 * common experience; the figures are an assumption.
 */
export const lostSuction: Range = {least: 0.5, usual: 0.8, most: 1};

/**
 * The section lift coefficient up to which a thin board can be used. Flat plates measured by Pelletier and Mueller (as above) reach
 * 0.75 ± 0.08; arcs of 6 % camber reach about 1 at Re 4·10⁴ to 8·10⁴ (F. W. Schmitz, Aerodynamik des Flugmodells, 1942, from memory). What a
 * crease does to it is not known, so a folded board has the wider range.
 *
 * @param camber over the chord
 */
export function liftLimit(camber: number): Range {
  const usual = 0.75 + 4 * Math.min(Math.max(camber, 0), 0.08);
  const unsure = camber > 0 ? 0.15 : 0.08;
  return {least: usual - unsure, usual, most: usual + unsure};
}
