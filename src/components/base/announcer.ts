import type {ReactiveController, ReactiveControllerHost} from 'lit';

const QUIET = 600;

/** Says the answer once after a burst of changes, and only if it is another one. */
export class Announcer implements ReactiveController {
  /** What the polite live region holds now. */
  said = '';
  #host: ReactiveControllerHost;
  #answer: string | undefined;
  #reader: string | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostDisconnected(): void { clearTimeout(this.#timer); }

  /** To be told the answer after each rendering; neither the first one nor the same one in other words is news. */
  hear(answer: string, reader: string): void {
    // what was said before does not stay in words that the reader no longer reads
    if (reader !== this.#reader && answer !== this.#answer) this.said = '';
    const news = this.#answer !== undefined && answer !== this.#answer && reader === this.#reader;
    this.#answer = answer;
    this.#reader = reader;
    if (!news) return;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => {
      this.said = this.#answer ?? answer;
      this.#host.requestUpdate();
    }, QUIET);
  }
}
