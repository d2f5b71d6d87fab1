import {define} from '../base/define.js';
import {GliderPartsSheet} from './parts-sheet.js';

define('glider-parts-sheet', GliderPartsSheet);

declare global { interface HTMLElementTagNameMap { 'glider-parts-sheet': GliderPartsSheet } }
export {GliderPartsSheet};
