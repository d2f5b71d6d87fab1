import type {GliderDesign} from '../../calc/design/design.js';
import type {Part, PartLine} from '../../calc/parts/part.js';
import {sheetWords} from '../../messages/en/sheet.js';
import type {GliderElement} from '../base/element.js';

/** What else must be known to draw a part and its lines, in the reader's words. */
export function notesOn(host: GliderElement, part: Part, design: GliderDesign): readonly string[] {
  const words = host.say(sheetWords).note;
  const length = (value: number): string => host.write(value, 'length');
  const bare = (values: readonly number[]): readonly string[] => values.map((value, i) => host.write(value, 'length', {bare: i < values.length - 1}));
  const {wing, body, tail, board} = design;
  const lines = (label: PartLine['label']): readonly PartLine[] => part.lines.filter((line) => line.label === label);
  const centre = lines('centre');
  const centreLine = centre.length > 0 ? [words.centre(centre.map(({face}) => face))] : [];
  const tip = (root: number, at: number | undefined, back: number): readonly string[] =>
    (at ?? root) === root && back === 0 ? [] : [words.tip({chord: length(at ?? root), back: back === 0 ? undefined : length(back)})];

  switch (part.id) {
    case 'wing': {
      const [crease] = lines('camber'), [joint] = lines('dihedral');
      const outer = wing.joints.map(({at}) => at).filter((at) => at > 0);
      return [
        ...wing.stations.length > 0 ? [] : tip(wing.chord, wing.tipChord, wing.sweep),
        ...crease ? [words.crease({at: bare(wing.creases.map(({at}) => at)), face: crease.face})] : [],
        ...joint && outer.length < wing.joints.length ? [words.jointMiddle(joint.face)] : [],
        ...joint && outer.length > 0 ? [words.joint({at: bare(outer), face: joint.face})] : [],
        ...centreLine, words.flies,
      ];
    }
    case 'body':
      return [
        ...body.tailHeight !== undefined && body.tailHeight < body.height
          ? [words.taper({from: length(body.taperFrom ?? Math.min(design.arrangement.wingAt + wing.chord, body.length)), height: length(body.tailHeight)})] : [],
        ...part.lines.length > 0 ? [words.marks(part.lines.map(({label, from}) => ({label, at: length(from.x)})))] : [],
      ];
    case 'tailplane':
      return [
        ...tip(tail.chord, tail.tipChord, tail.sweep), ...centreLine,
        ...lines('fin').length > 0 ? [words.fins(length(board.thickness))] : [],
      ];
    case 'fin': {
      const {chord, tipChord = chord} = tail.fins;
      return tipChord === chord ? [] : [words.finTop(length(tipChord))];
    }
  }
}
