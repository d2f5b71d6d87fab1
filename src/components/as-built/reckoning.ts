/** What the element needs beyond its words, loaded together. */
export {measurements} from '../../calc/as-built/as-built.js';
export * as lever from '../../calc/as-built/on-supports.js';
export {asBuiltStudy} from '../../calc/as-built/study.js';
export {inchSteps, metricSteps} from '../../calc/as-built/tolerances.js';
export {card} from './card.js';
export {asBuiltAnswer} from './sentences.js';
