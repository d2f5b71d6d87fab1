/** What only a thrown plane needs: the advice and its words. */
export {adviceFor} from '../../calc/trim-advice/advice.js';
export {causeList} from './cause-list.js';
export {heldAnswer, remedyButton} from './remedy.js';
export {adviceAnswer, beginAnswer, changeWords} from './sentences.js';
