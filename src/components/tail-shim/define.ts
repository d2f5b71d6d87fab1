import {define} from '../base/define.js';
import {GliderTailShim} from './tail-shim.js';

define('glider-tail-shim', GliderTailShim);

declare global { interface HTMLElementTagNameMap { 'glider-tail-shim': GliderTailShim } }
export {GliderTailShim};
