import {html} from 'lit';
import type {ReactiveController, TemplateResult} from 'lit';
import {flightLogWords} from '../../messages/en/flight-log.js';
import type {GliderElement} from '../base/element.js';

/**
 * A watch as large as a thumb needs it. It goes by the moment the screen was touched, not by when the page came to hear of it; a touch that turns into
 * scrolling counts for nothing.
 */
export class Stopwatch implements ReactiveController {
  readonly #host: GliderElement;
  readonly #stopped: (seconds: number) => void;
  #started: number | undefined;
  #shown = 0;
  #timer: ReturnType<typeof setInterval> | undefined;
  /** What a touch did, until it is known to be one. */
  #touched: {readonly before: number | undefined; readonly shown: number} | undefined;

  /** `stopped` is told the time on the watch, s. */
  constructor(host: GliderElement, stopped: (seconds: number) => void) {
    this.#host = host;
    this.#stopped = stopped;
    host.addController(this);
  }

  get running(): boolean { return this.#started !== undefined; }

  hostDisconnected(): void { this.#halt(); }

  /** Back to nothing, as for the next throw. */
  clear(): void {
    this.#halt();
    this.#shown = 0;
  }

  #halt(): void {
    clearInterval(this.#timer);
    this.#started = undefined;
  }

  #press(moment: number): void {
    if (this.#started === undefined) {
      this.#started = moment;
      this.#shown = 0;
      this.#timer = setInterval(() => {
        this.#shown = (performance.now() - (this.#started ?? 0)) / 1000;
        this.#host.requestUpdate();
      }, 90);
    } else {
      this.#shown = Math.max(0, moment - this.#started) / 1000;
      this.#halt();
      this.#stopped(Math.round(this.#shown * 100) / 100);
    }
    this.#host.requestUpdate();
  }

  readonly #down = (event: PointerEvent): void => {
    if (event.button !== 0 || !event.isPrimary) return;
    this.#touched = {before: this.#started, shown: this.#shown};
    this.#press(event.timeStamp);
  };

  /** The page was scrolled: as if nothing had been touched. */
  readonly #cancel = (): void => {
    const touched = this.#touched;
    this.#touched = undefined;
    if (!touched || touched.before === this.#started) return;
    this.#halt();
    this.#shown = touched.shown;
    if (touched.before !== undefined) {
      this.#press(touched.before);
    }
    this.#host.requestUpdate();
  };

  /** Keys and assistive technology click without touching. */
  readonly #click = (event: MouseEvent): void => {
    if (this.#touched) this.#touched = undefined; else this.#press(event.timeStamp);
  };

  render(): TemplateResult {
    const words = this.#host.say(flightLogWords);
    const say = this.running ? words.stop : this.#shown > 0 ? words.again : words.start;
    // the reading lies over the button, not in it: a name that changes ten times a second is none
    return html`<div class="watch-face"><button type="button" class="watch ${this.running ? 'running' : ''}" part="watch"
      @pointerdown=${this.#down} @pointercancel=${this.#cancel} @click=${this.#click}><span class="hidden">${words.watch}: </span>${say}</button>
      <span class="reading" aria-hidden="true">${this.#host.write(this.#shown, 'time', {digits: this.running ? 1 : 2})}</span></div>`;
  }
}
