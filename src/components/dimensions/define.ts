import {define} from '../base/define.js';
import {GliderDimensions} from './dimensions.js';

define('glider-dimensions', GliderDimensions);

declare global { interface HTMLElementTagNameMap { 'glider-dimensions': GliderDimensions } }
export {GliderDimensions};
