import {define} from '../base/define.js';
import {GliderDrawing} from './drawing.js';

define('glider-drawing', GliderDrawing);

declare global { interface HTMLElementTagNameMap { 'glider-drawing': GliderDrawing } }
export {GliderDrawing};
