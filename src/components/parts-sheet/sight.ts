import type {ReactiveController} from 'lit';
import type {GliderElement} from '../base/element.js';

/** Whether an element can be seen: in the window, on a page that is not behind another. */
export class Sight implements ReactiveController {
  readonly #host: GliderElement;
  readonly #told: (seen: boolean) => void;
  readonly #waiting = new Set<() => void>();
  #watch: IntersectionObserver | undefined;
  #inWindow = false;

  /** `told` hears of every change. */
  constructor(host: GliderElement, told: (seen: boolean) => void) {
    this.#host = host;
    this.#told = told;
    host.addController(this);
  }

  hostConnected(): void {
    this.#watch = new IntersectionObserver((entries) => {
      this.#inWindow = entries.at(-1)?.isIntersecting ?? false;
      this.#tell();
    });
    this.#watch.observe(this.#host);
    document.addEventListener('visibilitychange', this.#tell);
  }

  hostDisconnected(): void {
    this.#watch?.disconnect();
    document.removeEventListener('visibilitychange', this.#tell);
    this.#inWindow = false;
  }

  get isSeen(): boolean { return this.#inWindow && document.visibilityState === 'visible'; }

  /** Once it is seen; never, if the signal comes first. */
  seen(signal: AbortSignal): Promise<void> {
    if (this.isSeen) return Promise.resolve();
    return new Promise((resolve, reject) => {
      this.#waiting.add(resolve);
      signal.addEventListener('abort', () => {
        this.#waiting.delete(resolve);
        reject(new DOMException('no longer asked', 'AbortError'));
      }, {once: true});
    });
  }

  readonly #tell = (): void => {
    const {isSeen} = this;
    this.#told(isSeen);
    if (!isSeen) return;
    for (const resolve of this.#waiting) resolve();
    this.#waiting.clear();
  };
}
