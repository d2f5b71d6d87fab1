import {define} from '../base/define.js';
import {GliderFlightCheck} from './flight-check.js';

define('glider-flight-check', GliderFlightCheck);

declare global { interface HTMLElementTagNameMap { 'glider-flight-check': GliderFlightCheck } }
export {GliderFlightCheck};
