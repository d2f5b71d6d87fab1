import type {ReactiveController, ReactiveControllerHost} from 'lit';

/** The moment that a picture shows, moved by hand or by the clock. Nothing moves by itself where the reader wants less motion. */
export class Player implements ReactiveController {
  #host: ReactiveControllerHost;
  #length: () => number;
  #frame: number | undefined;
  #time = 0;
  #still: MediaQueryList | undefined;

  /** `length` tells how long there is something to show, s. */
  constructor(host: ReactiveControllerHost, length: () => number) {
    this.#host = host;
    this.#length = length;
    host.addController(this);
  }

  get time(): number { return Math.min(this.#time, this.#length()); }
  get playing(): boolean { return this.#frame !== undefined; }
  /** Whether the reader lets things move. */
  get moves(): boolean { return this.#still !== undefined && !this.#still.matches; }

  hostConnected(): void {
    this.#still = window.matchMedia('(prefers-reduced-motion: reduce)');
    this.#still.addEventListener('change', this.#wishes);
    this.#host.requestUpdate();
  }

  hostDisconnected(): void {
    this.pause();
    this.#still?.removeEventListener('change', this.#wishes);
  }

  /** To one moment, and stay there. */
  seek(time: number): void {
    this.pause();
    this.#time = time;
    this.#host.requestUpdate();
  }

  /** As fast as it flies, from the start again where the end was reached. */
  play(): void {
    if (!this.moves || this.playing) return;
    if (this.time >= this.#length()) this.#time = 0;
    let before: number | undefined;
    const next = (now: number): void => {
      this.#time += (now - (before ?? now)) / 1000;
      before = now;
      this.#frame = this.#time < this.#length() ? requestAnimationFrame(next) : undefined;
      this.#host.requestUpdate();
    };
    this.#frame = requestAnimationFrame(next);
    this.#host.requestUpdate();
  }

  pause(): void {
    if (this.#frame === undefined) return;
    cancelAnimationFrame(this.#frame);
    this.#frame = undefined;
    this.#host.requestUpdate();
  }

  readonly #wishes = (): void => {
    if (!this.moves) this.pause();
    this.#host.requestUpdate();
  };
}
