import {define} from '../base/define.js';
import {GliderTrimAdvice} from './trim-advice.js';

define('glider-trim-advice', GliderTrimAdvice);

declare global { interface HTMLElementTagNameMap { 'glider-trim-advice': GliderTrimAdvice } }
export {GliderTrimAdvice};
