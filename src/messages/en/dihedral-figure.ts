import {topic} from '../topic.js';

/** The lettering in the picture of dihedral on the bench. */
export const dihedralFigureWords = topic('dihedral-figure', {
  title: (order: number, at: string) => `${String(order)}. Joint ${at}`,
  atMiddle: 'in the middle',
  atFromMiddle: (at: string) => `${at} from the middle`,
  middle: 'middle of the wing',
  flownTitle: 'As it flies, from the front',
  dashed: (v: string) => `dashed: the plain V it acts like, ${v}`,
});
