import {define} from '../base/define.js';
import {GliderAsBuilt} from './as-built.js';

define('glider-as-built', GliderAsBuilt);

declare global { interface HTMLElementTagNameMap { 'glider-as-built': GliderAsBuilt } }
export {GliderAsBuilt};
