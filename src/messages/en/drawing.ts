import {topic} from '../topic.js';

export const drawingWords = topic('drawing', {
  heading: (name: string) => name || 'The glider in three views',
  title: (name: string) => name || 'Glider',
  side: 'From the left',
  plan: 'From above, the wing flat as cut',
  front: 'From the front, as it flies',
  section: 'Section in the middle of the wing, enlarged',
  camber: (a: {camber: string; height: string}) => `camber ${a.camber}: ${a.height} over the line from edge to edge`,
  /** Lengths stand in the picture without their unit. */
  lengths: (unit: string) => `Lengths in ${unit}.`,
  inUnit: (title: string, unit: string) => `${title} (${unit})`,
  faces: {
    above: 'A, double line: groove on top.',
    below: 'B, dashed: groove underneath.',
  },
  dimensions: 'Dimensions',
  picture: (a: {views: string; span: string; length: string; chord: string}) => `Drawing to scale of the glider ${a.views}: span ${a.span}, length ${a.length}, wing chord ${a.chord}.`,
  views: {side: 'from the left', plan: 'from above', front: 'from the front'},
  and: 'and',
  rows: {
    span: 'Span, flat', flown: 'Span as it flies', length: 'Length', chord: 'Wing chord', tipChord: 'Chord at the tip', sweep: 'Sweep', area: 'Wing area, as cut', aspectRatio: 'Aspect ratio (span² over area)', camber: 'Camber',
    crease: 'Crease behind the front edge', joint: 'Dihedral joint from the middle', angle: 'Panel rises there', rise: 'Tips over the middle', equivalent: 'Equivalent dihedral',
    tailSpan: 'Tail span', tailChord: 'Tail chord', finHeight: 'Fin height', wingAt: 'Nose to wing', tailAt: 'Nose to tail', bodyHeight: 'Body height', balance: 'Balances behind the wing’s front edge', target: 'Should balance at', range: (from: string, to: string) => `${from} to ${to}`,
    several: (label: string, n: number) => `${label}, ${String(n)}`,
  },
});
