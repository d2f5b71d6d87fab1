import type {Problem} from '../../calc/problem.js';
import type {HeldPiece} from '../../calc/sheet/engine/job.js';
import type {CutPiece} from '../../calc/sheet/plans.js';
import {rulerStep} from '../base/dragged.js';
import type {GliderElement} from '../base/element.js';
import {piecesOf, type LaidOut, type LaidPlan} from './laid-out.js';
import type {Arrived, Layouts} from './layouts.js';
import {isHeldAs, keptOn, movedPiece, turnedPose, type Pose} from './moved-piece.js';

/** The part in hand: where it was, and where it is now. */
interface InHand {
  readonly piece: CutPiece;
  readonly plan: LaidPlan;
  readonly pose: Pose;
  readonly moved: boolean;
}

const noneHeld: readonly HeldPiece[] = [];

/**
 * The part that a reader has in hand, to move, to turn and to hold where it is: then the rest is placed round it. Whether it can be held
 * there is for the search to say; until then nothing else changes.
 */
export class Hand {
  readonly #host: GliderElement;
  readonly #layouts: Layouts;
  #held = noneHeld;
  #inHand: InHand | undefined;
  /** The plan that the part in hand was taken from. */
  #from: LaidPlan | undefined;
  /** What was held last, to be found again in the next layout. */
  #lastHeld: HeldPiece | undefined;
  /** What is to be held as soon as the search has agreed, and what was held before. */
  #asking: {readonly piece: HeldPiece; readonly before: readonly HeldPiece[]} | undefined;
  isOpen = false;
  /** Why the part in hand cannot be held where it is. */
  refusal: Problem | undefined;

  constructor(host: GliderElement, layouts: Layouts) {
    this.#host = host;
    this.#layouts = layouts;
    layouts.admits = (arrived) => this.#admits(arrived);
    layouts.dropped = () => { this.#giveUp(); };
  }

  get held(): readonly HeldPiece[] { return this.#held; }
  get isAsking(): boolean { return this.#asking !== undefined; }
  get number(): number | undefined { return this.#inHand?.piece.number; }
  get isMoved(): boolean { return this.#inHand?.moved === true; }
  get mayTurn(): boolean { return this.#turnsBy !== undefined; }
  /** By how much a part may be turned at once: board with a grain leaves only which end is first. */
  get #turnsBy(): 90 | 180 | undefined {
    const {mayTurn, mayTurnHalf} = this.#inHand?.piece.part ?? {};
    return mayTurn ? 90 : mayTurnHalf ? 180 : undefined;
  }

  get plan(): LaidPlan | undefined { return this.#inHand?.plan; }

  /** The part in hand as it lies now. */
  get piece(): CutPiece | undefined { return this.#inHand && movedPiece(this.#inHand.piece, this.#inHand.pose); }

  /** Whether a piece is held where it lies. */
  holds(piece: CutPiece, {sheet}: LaidPlan): boolean {
    return sheet.held !== undefined && this.#held.some((held) => held.sheet === sheet.held && isHeldAs(piece.placed, held));
  }

  get holdsInHand(): boolean {
    return this.#inHand !== undefined && !this.#inHand.moved && this.holds(this.#inHand.piece, this.#inHand.plan);
  }

  /** Whether what can be done with it is to be seen. */
  open(open: boolean): void {
    if (open === this.isOpen) return;
    this.isOpen = open;
    this.#host.requestUpdate();
  }

  /** Takes a part up, or none; one that was moved and not held goes back. */
  take(laid: LaidOut, number: number | undefined): void {
    if (number === this.number || this.#asking) return;
    const found = piecesOf(laid).find(({piece}) => piece.number === number);
    this.#set(found && {...found, pose: found.piece.placed, moved: false});
  }

  /** After another layout came: the same part where it lies now. */
  follow(laid: LaidOut): void {
    const inHand = this.#inHand;
    if (!inHand || inHand.moved || this.#asking) return;
    const all = piecesOf(laid);
    if (all.some(({piece, plan}) => piece === inHand.piece && plan === inHand.plan)) return;
    const {id} = inHand.piece.placed;
    const found = all.find(({piece}) => this.#lastHeld && isHeldAs(piece.placed, this.#lastHeld) && id === piece.placed.id)
      ?? all.find(({piece}) => piece.number === inHand.piece.number && piece.placed.id === id);
    this.#lastHeld = undefined;
    this.#inHand = found && {...found, pose: found.piece.placed, moved: false};
    this.#from = found?.plan;
  }

  /** By so many marks of the ruler, or to a place, on its sheet or another one. */
  moveBy(across: number, up: number): void {
    const step = rulerStep(this.#host.system);
    const {pose} = this.#inHand ?? {};
    if (pose) this.moveTo({...pose, x: pose.x + across * step, y: pose.y + up * step});
  }

  moveTo(pose: Pose, plan: LaidPlan | undefined = this.#inHand?.plan): void {
    const inHand = this.#inHand;
    if (!inHand || !plan || this.#asking) return;
    const {sheet: {length, width}} = plan;
    const {margin} = this.#host.state.design.board;
    this.#set({...inHand, plan, pose: keptOn(inHand.piece, pose, {length, width, margin}, rulerStep(this.#host.system)), moved: true});
  }

  turn(): void {
    const inHand = this.#inHand, by = this.#turnsBy;
    if (inHand && by !== undefined) this.moveTo(turnedPose(inHand.piece, inHand.pose, by));
  }

  putBack(): void {
    if (!this.#inHand || this.#asking) return;
    const {piece} = this.#inHand;
    const from = this.#from;
    this.#set({piece, plan: from ?? this.#inHand.plan, pose: piece.placed, moved: false});
  }

  /** Holds the part in hand where it is, or lets it go if it is held there. */
  holdOrLetGo(): void {
    const inHand = this.#inHand;
    if (!inHand || this.#asking) return;
    if (this.holdsInHand) {
      this.#held = this.#without(inHand);
      if (this.#held.length === 0) this.#held = noneHeld;
      this.#host.requestUpdate();
      return;
    }
    const before = this.#held;
    const {piece: {placed: {id, mirrored}}, plan: {sheet}, pose: {x, y, turn}} = inHand;
    const number = sheet.held ?? 1 + Math.max(0, ...before.map((held) => held.sheet));
    const piece: HeldPiece = {id, sheet: number, board: sheet.board.id, x, y, turn, mirrored};
    this.refusal = undefined;
    this.#asking = {piece, before};
    this.#held = [...this.#without(inHand), piece];
    this.#layouts.freeze(false);
    this.#host.requestUpdate();
  }

  /** Nobody is there to say whether the part can be held. */
  #giveUp(): void {
    if (!this.#asking) return;
    this.#held = this.#asking.before;
    this.#asking = undefined;
  }

  letAllGo(): void {
    this.#asking = undefined;
    this.#held = noneHeld;
    this.#set(undefined);
  }

  /** What is held but for the part in hand, which may have been held elsewhere. */
  #without({piece}: InHand): readonly HeldPiece[] {
    const plan = this.#from;
    return this.#held.filter((held) => !(plan?.sheet.held === held.sheet && isHeldAs(piece.placed, held)));
  }

  #set(inHand: InHand | undefined): void {
    if (inHand?.piece !== this.#inHand?.piece) this.#from = inHand?.plan;
    this.#inHand = inHand;
    this.refusal = undefined;
    this.#layouts.freeze(inHand?.moved === true);
    this.#host.requestUpdate();
  }

  /** The first layout with what was just put in place says whether it can be held there; if not, all is as before. */
  #admits({asked, laid}: Arrived): boolean {
    const asking = this.#asking;
    if (!asking || asked.held !== this.#held) return true;
    this.#asking = undefined;
    const {piece, before} = asking;
    const lies = piecesOf(laid).some(({piece: {placed}, plan: {sheet}}) => sheet.held === piece.sheet && isHeldAs(placed, piece));
    if (lies) {
      this.#lastHeld = piece;
      if (this.#inHand) this.#inHand = {...this.#inHand, moved: false};
      return true;
    }
    this.#held = before;
    this.refusal = [...laid.problems].reverse().find(({code, args}) => code.startsWith('held-') && args?.['id'] === piece.id) ?? {code: 'held-cannot-lie', args: {id: piece.id}};
    this.#layouts.freeze(true);
    this.#host.requestUpdate();
    return false;
  }
}
