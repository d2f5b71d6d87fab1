/** What a figure is drawn with: presentation attributes, never styles. */
export interface Ink {
  readonly line: string;
  readonly soft: string;
  readonly rule: string;
  readonly accent: string;
  readonly accentSoft: string;
  readonly fill: string;
  readonly hatch: string;
  readonly paper: string;
  readonly problem: string;
  readonly font: string;
}

/** On screen: the element's own custom properties, so that a figure follows the page's colours. */
export const screenInk: Ink = {
  line: 'var(--_ink)', soft: 'var(--_soft)', rule: 'var(--_rule)', accent: 'var(--_accent)', accentSoft: 'var(--_accent-soft)',
  fill: 'var(--_fill)', hatch: 'var(--_hatch)', paper: 'var(--_paper)', problem: 'var(--_problem)', font: 'inherit',
};

/** On paper and in files: fixed dark lines on white. */
export const printInk: Ink = {
  line: '#1f2a30', soft: '#4a565d', rule: '#b9b4a8', accent: '#b8430a', accentSoft: '#f7e3d6',
  fill: '#f4f1ea', hatch: '#b5ae9f', paper: '#ffffff', problem: '#a3121f', font: 'helvetica',
};
