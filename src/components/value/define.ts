import {define} from '../base/define.js';
import {GliderValue} from './value.js';

define('glider-value', GliderValue);

declare global { interface HTMLElementTagNameMap { 'glider-value': GliderValue } }
export {GliderValue};
