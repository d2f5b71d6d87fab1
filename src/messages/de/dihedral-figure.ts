import type {dihedralFigureWords} from '../en/dihedral-figure.js';

const words: typeof dihedralFigureWords.en = {
  title: (order, at) => `${String(order)}. Knick ${at}`,
  atMiddle: 'in der Mitte',
  atFromMiddle: (at) => `${at} ab Mitte`,
  middle: 'Flügelmitte',
  flownTitle: 'Im Flug, von vorn',
  dashed: (v) => `gestrichelt: gleichwertiges V, ${v}`,
};

export default words;
