/** What a page's policy refused: the directive and what was blocked. */
export interface Violation { readonly directive: string; readonly blocked: string }

type Message = {readonly loaded: true} | {readonly violation: Violation};

/** A page under tests/pages/strict/, loaded in an iframe under the strict policy. */
export interface StrictPage {
  readonly frame: HTMLIFrameElement;
  readonly document: Document;
  /** Grows as the page goes on. */
  readonly violations: readonly Violation[];
  close(): void;
}

/** Loads a page such as `camber-shim.html`; resolves when it has loaded. */
export async function openStrictPage(name: string): Promise<StrictPage> {
  const frame = document.createElement('iframe');
  frame.style.width = '800px';
  frame.style.height = '600px';
  const violations: Violation[] = [];
  let listen: (event: MessageEvent<Message>) => void = () => undefined;
  const loaded = new Promise<void>((resolve) => {
    listen = ({source, data}) => {
      if (source !== frame.contentWindow) return;
      if ('violation' in data) violations.push(data.violation);
      else resolve();
    };
  });
  addEventListener('message', listen);
  frame.src = `/tests/pages/strict/${name}`;
  document.body.append(frame);
  await loaded;
  if (!frame.contentDocument) throw new Error(`${name} is out of reach`);
  return {
    frame, violations, document: frame.contentDocument,
    close: () => {
      removeEventListener('message', listen);
      frame.remove();
    },
  };
}
