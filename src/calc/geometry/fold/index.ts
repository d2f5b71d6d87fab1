export {foldedSection, foldForCamber, type FoldedSection} from './camber.js';
export {foldOverCrest, stackUnderCrest, type CrestStack, type FoldOverCrest} from './crest.js';
export {equivalentDihedral, sameRiseDihedral, wingAsFlown, type DihedralPanel, type WingAsFlown} from './dihedral.js';
export {glueFill, grooveStop, grooveToClose, slotThatOpens} from './groove.js';
export {jointGrooveAlong, jointGrooveWidth, type JointGroovePlace} from './joint-groove.js';
export {foldFromProp, placeForFold, propForFold, proppedBy, type FoldFromProp, type Panel, type PropPlace} from './prop.js';
export {foldSectionOverStack, sectionProppedBy, stackForFold, type Overhang, type Section, type SectionOnBench} from './propped-section.js';
export type {ContactKind, FoldFace, Prop, PropPlacing, PropWhere, StandingStack} from './stack.js';
export {
  angleFromEdges, rearEdgeForAngle, slipAngle, slipForAngle, slipPlaceForAngle, type TailSlip, type TailSlipPlace,
} from './tail-slip.js';
export {blockForV, foldDifference, placeForV, vFromBlock, type VFromBlock, type VPropped} from './tip-joint.js';
