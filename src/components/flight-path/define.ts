import {define} from '../base/define.js';
import {GliderFlightPath} from './flight-path.js';

define('glider-flight-path', GliderFlightPath);

declare global { interface HTMLElementTagNameMap { 'glider-flight-path': GliderFlightPath } }
export {GliderFlightPath};
