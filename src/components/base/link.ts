import type {ReactiveController, ReactiveControllerHost} from 'lit';
import type {DesignHandle, DesignState} from '../../calc/design/store.js';

/**
 * How elements and designs meet: two events on the document, plain data in them, so that two copies of this package on
 * one page agree and neither side has to come first.
 *
 * `glider-design-seek` asks; every connected design offers itself. `glider-design-moved` tells that a design has come, gone,
 * or changed its id; every element seeks again.
 */
export const SEEK = 'glider-design-seek';
export const MOVED = 'glider-design-moved';

export interface SeekDetail {
  readonly version: 1;
  /** A design that is still fetching its file offers itself without a handle: it is there, but not ready. */
  offer(element: Element, handle: DesignHandle | undefined): void;
}

/** What an element's `design` may be: the id of a design on the page, or a design's handle. */
export type DesignSource = string | DesignHandle;

export type LinkStatus =
  | 'private'   // a calculator on its own
  | 'linked'
  | 'seeking'   // an id was given; the page may not be complete yet
  | 'missing';  // the page has loaded and holds no such design

type LinkHost = ReactiveControllerHost & Element & {design?: DesignSource | undefined};

interface Offer { readonly element: Element; readonly handle: DesignHandle | undefined }

/** The parent as composed: through slots and out of shadow roots. */
const composedParent = (node: Node): Node | null =>
  (node as Partial<Element>).assignedSlot ?? node.parentNode ?? (node as Partial<ShadowRoot>).host ?? null;

function enclosing(start: Element, offers: readonly Offer[]): Offer | undefined {
  for (let node = composedParent(start); node; node = composedParent(node)) {
    const found = offers.find(({element}) => element === node);
    if (found) return found;
  }
  return undefined;
}

/** Own root first, then outward through hosts, then anywhere in the document if only one answers to the id. */
function named(start: Element, id: string, offers: readonly Offer[]): Offer | undefined {
  const answering = offers.filter(({element}) => element.id === id);
  for (let root: Node = start.getRootNode(); ; root = (root as ShadowRoot).host.getRootNode()) {
    const here = answering.find(({element}) => element.getRootNode() === root);
    if (here) return here;
    if (!('host' in root)) break;
  }
  return answering.length === 1 ? answering[0] : undefined;
}

/** Keeps an element on the design it belongs to, and asks it to render once for each revision. */
export class DesignLink implements ReactiveController {
  status: LinkStatus = 'private';
  #host: LinkHost;
  #private: () => DesignHandle;
  #handle: DesignHandle;
  #unsubscribe: (() => void) | undefined;

  constructor(host: LinkHost, own: () => DesignHandle) {
    this.#host = host;
    this.#private = own;
    this.#handle = own();
    host.addController(this);
  }

  get state(): DesignState { return this.#handle.current(); }
  /** The design that counts here; nothing while one is looked for. */
  get source(): DesignHandle | undefined { return this.status === 'missing' || this.status === 'seeking' ? undefined : this.#handle; }
  get linked(): boolean { return this.status === 'linked'; }
  get request(): DesignHandle['request'] { return this.#handle.request; }

  hostConnected(): void {
    const document = this.#host.ownerDocument;
    document.addEventListener(MOVED, this.#seek);
    if (document.readyState !== 'complete') window.addEventListener('load', this.#seek, {once: true});
    this.#seek();
  }

  hostDisconnected(): void {
    this.#host.ownerDocument.removeEventListener(MOVED, this.#seek);
    window.removeEventListener('load', this.#seek);
    this.#unsubscribe?.();
    this.#unsubscribe = undefined;
  }

  /** Looks again; to be called when the host's `design` changes. */
  seek(): void { if (this.#host.isConnected) this.#seek(); }

  readonly #seek = (): void => {
    const source = this.#host.design as DesignSource | null | undefined;   // Lit gives null for an attribute taken away
    let handle: DesignHandle | undefined;
    if (source && typeof source === 'object') {
      handle = (source.version as number) === 1 ? source : undefined;
      this.status = handle ? 'linked' : 'missing';
    } else {
      const offers: Offer[] = [];
      const detail: SeekDetail = {version: 1, offer: (element, offered) => { if (!offered || (offered.version as number) === 1) offers.push({element, handle: offered}); }};
      this.#host.ownerDocument.dispatchEvent(new CustomEvent(SEEK, {detail}));
      const found = source ? named(this.#host, source, offers) : enclosing(this.#host, offers);
      handle = found?.handle;
      this.status = handle ? 'linked' : found ? 'seeking' : !source ? 'private' : this.#host.ownerDocument.readyState === 'complete' ? 'missing' : 'seeking';
    }
    handle ??= this.#private();
    if (handle !== this.#handle || !this.#unsubscribe) {
      this.#unsubscribe?.();
      this.#handle = handle;
      this.#unsubscribe = handle.subscribe(() => { this.#host.requestUpdate(); });
    }
    this.#host.requestUpdate();
  };
}
