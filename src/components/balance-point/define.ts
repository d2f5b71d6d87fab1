import {define} from '../base/define.js';
import {GliderBalancePoint} from './balance-point.js';

define('glider-balance-point', GliderBalancePoint);

declare global { interface HTMLElementTagNameMap { 'glider-balance-point': GliderBalancePoint } }
export {GliderBalancePoint};
