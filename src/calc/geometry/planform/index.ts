export {asFlown} from './as-flown.js';
export {wingCubeLoading, wingLoading} from './loading.js';
export {planformOf, type Planform} from './planform.js';
export {sectionAt} from './section-at.js';
export type {Station} from './station.js';
export {sweepOf} from './sweep.js';
export {tailVolume, type TailVolumeInputs} from './tail-volume.js';
