import {define} from '../base/define.js';
import {GliderDihedralAngle} from './dihedral-angle.js';

define('glider-dihedral-angle', GliderDihedralAngle);

declare global { interface HTMLElementTagNameMap { 'glider-dihedral-angle': GliderDihedralAngle } }
export {GliderDihedralAngle};
