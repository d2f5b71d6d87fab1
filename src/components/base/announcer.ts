import type {ReactiveController, ReactiveControllerHost} from 'lit';

const QUIET = 600;

/** Says the answer once after a burst of changes, and only if it is another one. */
export class Announcer implements ReactiveController {
  /** What the polite live region holds now. */
  said = '';
  #host: ReactiveControllerHost;
  #answer: string | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostDisconnected(): void { clearTimeout(this.#timer); }

  /** To be told the answer after each rendering; the first one is not news. */
  hear(answer: string): void {
    const news = this.#answer !== undefined && answer !== this.#answer;
    this.#answer = answer;
    if (!news) return;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => {
      this.said = answer;
      this.#host.requestUpdate();
    }, QUIET);
  }
}
