// The entry of a worker: nothing imports it, it is started by its address.
import type {Report, Runner, ToWorker} from './messages.js';
import {searchInSlices} from './slices.js';

/** Long enough to get on, short enough to hear that it is to rest. */
const slice = 60;

let runner: Runner | undefined;

addEventListener('message', ({data}: MessageEvent<ToWorker>) => {
  if ('rest' in data) { runner?.rest(data.rest); return; }
  runner?.stop();
  runner = searchInSlices(data.sought, slice, (report: Report) => { postMessage(report); });
});
postMessage('ready');
