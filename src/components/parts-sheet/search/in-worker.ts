import type {Sought} from '../../../calc/sheet/sought.js';
import type {Report, Runner, ToWorker} from './messages.js';

/** A worker that has answered; rejects where the page, its address or its policy refuses one. */
async function startedBy(make: () => Worker): Promise<Worker> {
  const worker = make();
  await new Promise<void>((resolve, reject) => {
    worker.addEventListener('message', () => { resolve(); }, {once: true});
    worker.addEventListener('error', (event) => {
      event.preventDefault();
      reject(new Error('the worker was refused'));
    }, {once: true});
  }).catch((error: unknown) => {
    worker.terminate();
    throw error;
  });
  return worker;
}

/** Where scripts come from another origin than the page, a worker may still import them. */
async function importing(address: string): Promise<Worker> {
  const script = URL.createObjectURL(new Blob([`import ${JSON.stringify(address)};`], {type: 'text/javascript'}));
  try {
    return await startedBy(() => new Worker(script, {type: 'module'}));
  } finally {
    URL.revokeObjectURL(script);
  }
}

function started(): Promise<Worker> {
  const {origin, protocol, href} = new URL('./search-worker.js', import.meta.url);
  if (!/^https?:$/.test(protocol)) return Promise.reject(new Error('no worker starts from such an address'));
  // written out, so that bundlers find what is to be bundled for the worker
  return origin === location.origin ? startedBy(() => new Worker(new URL('./search-worker.js', import.meta.url), {type: 'module'})) : importing(href);
}

/** Searches in a worker; rejects where there is none to be had. */
export async function searchInWorker(sought: Sought, tell: (report: Report) => void): Promise<Runner> {
  const worker = await started();
  const say = (message: ToWorker): void => { worker.postMessage(message); };
  worker.addEventListener('message', ({data}: MessageEvent<Report>) => { tell(data); });
  say({sought});
  return {rest: (resting) => { say({rest: resting}); }, stop: () => { worker.terminate(); }};
}
