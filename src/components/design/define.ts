import {define} from '../base/define.js';
import {GliderDesignElement} from './design.js';

define('glider-design', GliderDesignElement);

declare global {
  interface HTMLElementTagNameMap { 'glider-design': GliderDesignElement }
  interface HTMLElementEventMap { 'glider-change': CustomEvent<GliderDesignElement['state']> }
}
export {GliderDesignElement};
