import {Task, initialState} from '@lit/task';
import type {ReactiveController} from 'lit';
import type {GliderElement} from '../base/element.js';
import type {Standing} from './found.js';
import {answersAtOnce, jobOf, sameAsked, type Asked} from './job-of.js';
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
  #standing: Standing = 'answers';
  #waiting: Report | undefined;
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
  ask(asked: Asked): {readonly laid: LaidOut; readonly standing: Standing} {
    if (this.#shown && sameAsked(this.#asked, asked)) return {laid: this.#shown, standing: this.#standing};
    // what is held changes where parts lie, not which: the layout from before stays until there is another
    const stays = this.#shown && sameAsked(this.#asked, asked, 'held') ? this.#shown : undefined;
    this.#asked = asked;
    this.#waiting = undefined;
    this.#standing = answersAtOnce(asked) ? 'answers' : 'awaited';
    this.#shown = stays ?? this.#placed(asked);
    this.better = 0;
    this.seconds = 0;
    this.state = 'soon';
    return {laid: this.#shown, standing: this.#standing};
  }

  #placed({first, others}: Asked): LaidOut {
    if (this.#first?.first !== first || this.#first.others !== others) this.#first = {first, others, laid: firstLaidOut(first, others.length > 0)};
    return this.#first.laid;
  }

  /** While a part is in hand nothing else may move under it. */
  freeze(frozen: boolean): void {
    this.#frozen = frozen;
    const report = this.#waiting;
    if (frozen || !report) return;
    this.#waiting = undefined;
    void this.#take(report);
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
    const runner = await beginSearch(jobOf(asked), (report) => { if (!signal.aborted) void this.#hear(report, signal); });
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

  async #take(report: Report, signal?: AbortSignal): Promise<void> {
    const asked = this.#asked;
    if (this.#frozen) { this.#waiting = report; return; }
    if (!report.found || !asked) return;
    const {laidFrom, isBetter} = await import('./search/search.js');
    if (signal?.aborted || asked !== this.#asked || !this.#shown) return;
    const laid = laidFrom(report.found, asked.first, asked.others.length > 0);
    if (!this.admits({asked, laid})) return;
    const answered = this.#standing === 'answers';
    // in exchange for a layout that answers another question, even one that is no better
    const complete = asked.ownCount !== undefined
      || laid.leftOut.length <= this.#shown.leftOut.length && (asked.atMost === undefined || laid.sheets <= asked.atMost);
    if (answered ? this.#shown.from === 'search' || isBetter(laid, this.#shown) : complete) {
      if (answered) this.better++;
      this.#shown = laid;
      this.#standing = 'answers';
    } else if (laid.least > this.#shown.least && this.#shown.leftOut.length === 0) this.#shown = {...this.#shown, least: laid.least};
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
