export {counterClockwise, signedArea} from './area.js';
export {bounds, type Bounds} from './bounds.js';
export {polygonDistance} from './distance.js';
export {pointInPolygon} from './inside.js';
export {areaMoments, centroid, type AreaMoments} from './moments.js';
export {polygonsOverlap} from './overlap.js';
export {eachEdge, touching, type Point, type Polygon} from './point.js';
export {isSimple} from './simple.js';
export {mirrored, moved, movedTo, quarterTurned, turned} from './transform.js';
