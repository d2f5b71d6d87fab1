// What is loaded when somebody opens one of the lists.
export {markingList} from './marking-list.js';
export {cutSketch, cuttingList, stepsOf} from './cutting-list.js';
