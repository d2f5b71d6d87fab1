import {define} from '../base/define.js';
import {GliderCamberShim} from './camber-shim.js';

define('glider-camber-shim', GliderCamberShim);

declare global { interface HTMLElementTagNameMap { 'glider-camber-shim': GliderCamberShim } }
export {GliderCamberShim};
