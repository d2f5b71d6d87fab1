/** What only a thrown plane needs: the advice and its words. */
export {adviceFor} from '../../calc/trim-advice/advice.js';
export {causeList} from './cause-list.js';
export {remedyButton, remedyWords} from './remedy.js';
export {adviceAnswer, changeWords} from './sentences.js';
