import {define} from '../base/define.js';
import {GliderFlightLog} from './flight-log.js';

define('glider-flight-log', GliderFlightLog);

declare global { interface HTMLElementTagNameMap { 'glider-flight-log': GliderFlightLog } }
export {GliderFlightLog};
