import {Task, initialState} from '@lit/task';
import type {ReactiveController} from 'lit';
import type {GliderElement} from '../base/element.js';
import type {Standing} from './found.js';
import {answersAtOnce, firstAt, reachedAtOnce, sameAsked, soughtOf, type Asked} from './job-of.js';
import {firstLaidOut, type LaidOut} from './laid-out.js';
import type {Report, Runner} from './search/messages.js';
import {Sight} from './sight.js';

/** After a change, before a search begins: a reader who is typing is not yet done, ms. */
const pause = 350;
/** A search rests after so long, until the reader wants more, and then again, s. */
const firstSpell = 20, nextSpell = 60;

/** Where the search for a better layout has got to. */
export type SearchState = 'soon' | 'looking' | 'resting' | 'stopped' | 'ended' | 'not loaded';

/** What was reported for a question of its own. */
export interface Arrived {
  readonly asked: Asked;
  readonly laid: LaidOut;
}

/** The layout to show for a question, and how it stands to it. */
export interface Shown {
  readonly laid: LaidOut;
  readonly standing: Standing;
  /** Where a number is asked, gliders or steps of a wing's length: the largest that there is a layout for, and what is proved to be the most. */
  readonly reached: number | undefined;
  readonly bound: number | undefined;
}

/**
 * The layout to show: the first placement at once, then whatever better one a search finds, which begins once the element is seen and its
 * reader pauses, rests out of sight, and ends with the next question.
 */
export class Layouts implements ReactiveController {
  readonly #host: GliderElement;
  readonly #sight: Sight;
  readonly #task: Task<readonly [Asked | undefined]>;
  #asked: Asked | undefined;
  #shown: LaidOut | undefined;
  /** The search that found it. */
  #foundBy: AbortSignal | undefined;
  #reached: number | undefined;
  #bound: number | undefined;
  #standing: Standing = 'answers';
  #waiting: {readonly report: Report; readonly signal: AbortSignal} | undefined;
  #frozen = false;
  #runner: Runner | undefined;
  #stopped = false;
  #limit = firstSpell;
  #end: (() => void) | undefined;
  #first: Pick<Asked, 'first' | 'others'> & {readonly laid: LaidOut} | undefined;
  state: SearchState = 'soon';
  /** How long it has looked, s, and how often it found something better. */
  seconds = 0;
  better = 0;
  /** Where a number is asked: the one that is being tried, and the least beyond the one reached that was tried in vain. */
  trying: number | undefined;
  failed: number | undefined;
  /** Asked of every layout that arrives: whether it may be shown. */
  admits: (arrived: Arrived) => boolean = () => true;
  /** Told when no layout will arrive for what was asked. */
  dropped: () => void = () => undefined;

  constructor(host: GliderElement, private readonly wanted: () => boolean) {
    this.#host = host;
    host.addController(this);
    this.#sight = new Sight(host, (seen) => { this.#rest(!seen); });
    this.#task = new Task(host, {
      args: () => [this.wanted() ? this.#asked : undefined] as const,
      task: async ([asked], {signal}) => (asked ? this.#look(asked, signal) : initialState),
    });
  }

  hostDisconnected(): void {
    this.#task.abort();
    this.state = 'soon';
  }

  hostConnected(): void { if (this.#host.hasUpdated) void this.#task.run(); }

  /** The layout to show for a question, and how it stands to it. */
  ask(asked: Asked): Shown {
    if (this.#shown && sameAsked(this.#asked, asked)) return this.#answerWith(this.#shown);
    // what is held changes where parts lie, not which: the layout from before stays until there is another
    const stays = this.#shown && sameAsked(this.#asked, asked, 'held') ? this.#shown : undefined;
    this.#asked = asked;
    this.#waiting = undefined;
    this.#standing = answersAtOnce(asked) ? 'answers' : 'awaited';
    this.#shown = stays ?? this.#placed(asked);
    this.#foundBy = undefined;
    if (!stays) this.#reached = reachedAtOnce(asked);
    this.#bound = this.trying = this.failed = undefined;
    this.better = 0;
    this.seconds = 0;
    this.state = 'soon';
    return this.#answerWith(this.#shown);
  }

  #answerWith(laid: LaidOut): Shown { return {laid, standing: this.#standing, reached: this.#reached, bound: this.#bound}; }

  #placed({first, others}: Asked): LaidOut {
    if (this.#first?.first !== first || this.#first.others !== others) this.#first = {first, others, laid: firstLaidOut(first, others.length > 0)};
    return this.#first.laid;
  }

  /** While a part is in hand nothing else may move under it. */
  freeze(frozen: boolean): void {
    this.#frozen = frozen;
    const waiting = this.#waiting;
    if (frozen || !waiting) return;
    this.#waiting = undefined;
    void this.#take(waiting.report, waiting.signal);
  }

  /** The reader has seen enough. */
  stop(): void {
    this.#stopped = true;
    this.state = 'stopped';
    this.#task.abort();
    this.dropped();
    this.#host.requestUpdate();
  }

  /** A file is made of the layout as it is: another one must not come in between. */
  settle(): void {
    if (this.state === 'soon' || this.state === 'looking') this.stop();
  }

  /** The reader wants more, after a rest or a stop. */
  lookOn(): void {
    this.#limit += nextSpell;
    if (this.#runner) {
      this.state = 'looking';
      this.#rest(false);
    } else void this.#task.run();
    this.#host.requestUpdate();
  }

  #rest(resting: boolean): void {
    this.#runner?.rest(resting || this.state !== 'looking');
  }

  async #look(asked: Asked, signal: AbortSignal): Promise<void> {
    const again = this.#stopped;
    this.#stopped = false;
    if (!again) this.#limit = firstSpell;
    // what a reader has just put in place is placed round at once
    if (asked.held.length === 0) await wait(pause, signal);
    await this.#sight.seen(signal);
    const {beginSearch} = await import('./search/search.js').catch((error: unknown) => {
      this.state = 'not loaded';
      this.dropped();
      this.#host.requestUpdate();
      throw error;
    });
    signal.throwIfAborted();
    this.state = 'looking';
    this.#host.requestUpdate();
    const ended = new Promise<void>((resolve) => { this.#end = resolve; });
    const runner = await beginSearch(soughtOf(asked, this.#reached, this.#standing === 'answers'), (report) => { if (!signal.aborted) void this.#hear(report, signal); });
    const stop = (): void => {
      runner.stop();
      if (this.#runner === runner) this.#runner = undefined;
      this.#end?.();
    };
    signal.addEventListener('abort', stop, {once: true});
    if (signal.aborted) { stop(); return; }
    this.#runner = runner;
    await ended;
  }

  async #hear(report: Report, signal: AbortSignal): Promise<void> {
    this.seconds = Math.round(report.spent / 1000);
    if (report.found) await this.#take(report, signal);
    if (signal.aborted) return;
    this.#bound = report.bound;
    this.trying = report.trying;
    this.failed = report.failed;
    if (report.done) {
      this.state = 'ended';
      if (this.#standing === 'awaited') this.#standing = 'not found';
      this.#runner?.stop();
      this.#runner = undefined;
      this.#end?.();
    } else if (this.seconds >= this.#limit && this.state === 'looking') {
      this.state = 'resting';
      this.#rest(true);
    }
    this.#host.requestUpdate();
  }

  async #take(report: Report, signal: AbortSignal): Promise<void> {
    const asked = this.#asked;
    if (this.#frozen) { this.#waiting = {report, signal}; return; }
    if (!report.found || !asked) return;
    const {laidFrom, isBetter} = await import('./search/search.js');
    if (signal.aborted || asked !== this.#asked || !this.#shown) return;
    const laid = laidFrom(report.found, firstAt(asked, report.n), asked.others.length > 0);
    if (!this.admits({asked, laid})) return;
    const shown = this.#shown;
    const answered = this.#standing === 'answers';
    const further = (report.n ?? 0) - (this.#reached ?? 0);
    // of one search each layout is better than the one before it; what answers another question is given up even for one that is no better
    const takes = asked.most && laid.leftOut.length > 0 ? false
      : !answered ? asked.ownCount !== undefined || laid.leftOut.length <= shown.leftOut.length
        : further > 0 || further === 0 && (this.#foundBy === signal || isBetter(laid, shown));
    if (takes) {
      if (answered) this.better++;
      this.#shown = laid;
      this.#foundBy = signal;
      this.#reached = report.n;
      this.#standing = 'answers';
    } else if (!asked.most && laid.least > shown.least && shown.leftOut.length === 0) this.#shown = {...shown, least: laid.least};
    this.#host.requestUpdate();
  }
}

const wait = (ms: number, signal: AbortSignal): Promise<void> => new Promise((resolve, reject) => {
  const timer = setTimeout(resolve, ms);
  signal.addEventListener('abort', () => {
    clearTimeout(timer);
    reject(new DOMException('another question came', 'AbortError'));
  }, {once: true});
});
