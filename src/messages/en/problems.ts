import {topic} from '../topic.js';

/** Arguments of a problem as a reader reads them: quantities already written in the reader's units. */
export type Said = Readonly<Record<string, string>>;

const kinds: Readonly<Record<string, string>> = {
  'length': 'a length', 'mass': 'a mass', 'angle': 'an angle', 'ratio': 'a share', 'count': 'a whole number', 'areal-mass': 'a mass per area',
  'cube-loading': 'a cube loading', 'area': 'an area', 'speed': 'a speed', 'density': 'a density',
};

/** Each problem as one plain sentence that names the way out. */
export const problemWords = topic<Readonly<Record<string, (a: Said) => string>>>('problems', {
  'quantity-empty': () => 'Nothing is written here yet.',
  'quantity-not-a-number': (a) => `“${a['text'] ?? ''}” cannot be read as ${kinds[a['kind'] ?? ''] ?? 'a number'}.`,
  'quantity-no-unit': (a) => `A unit is missing: write ${a['suggestion'] ?? 'the unit too'}.`,
  'quantity-wrong-unit': (a) => `“${a['unit'] ?? ''}” does not fit: this is ${kinds[a['kind'] ?? a['expected'] ?? ''] ?? 'something else'}.`,
  'quantity-unknown-unit': (a) => `The unit “${a['unit'] ?? ''}” is unknown${a['suggestion'] ? `: try ${a['suggestion']}` : ''}.`,
  'quantity-decimal-mark': (a) => `“${a['text'] ?? ''}” can be read in two ways: write ${a['suggestion'] ?? 'it without the comma'}.`,
  'list-item-incomplete': (a) => `“${a['text'] ?? ''}” is not a whole entry: write it like ${a['suggestion'] ?? ''}.`,
  'list-not-a-list': () => 'A list is needed here.',
  'quantity-not-whole': () => 'This must be a whole number.',
  'quantity-not-finite': () => 'This is not a number that can be used.',
  'quantity-too-big': () => 'This number is too big to be used.',
  'dimension-too-small': (a) => `Must be at least ${a['least'] ?? ''}.`,
  'dimension-too-large': (a) => `Must be at most ${a['most'] ?? ''}.`,
  'choice-unknown': (a) => `“${a['text'] ?? ''}” is not one of: ${a['choices'] ?? ''}.`,
  'list-too-long': (a) => `At most ${a['most'] ?? ''} entries.`,
  'list-not-ascending': (a) => `Write them in order, each further out than the one before; ${a['at'] ?? ''} is not.`,
  'text-too-long': (a) => `At most ${a['most'] ?? ''} letters.`,
  'crease-outside-chord': (a) => `The crease at ${a['at'] ?? ''} lies outside the chord, which is ${a['chord'] ?? ''} at its shortest.`,
  'joint-outside-wing': (a) => `A joint at ${a['at'] ?? ''} lies beyond the tip, which is ${a['half'] ?? ''} from the middle.`,
  'station-outside-wing': (a) => `A corner at ${a['at'] ?? ''} lies beyond the tip, which is ${a['half'] ?? ''} from the middle.`,
  'block-missing': (a) => `There are ${a['joints'] ?? ''} joints but ${a['blocks'] ?? ''} blocks: give one for each.`,
  'wing-off-body': (a) => `The wing would end ${a['end'] ?? ''} behind the nose, but the body is only ${a['body'] ?? ''} long.`,
  'tail-in-wing': (a) => `The tail at ${a['at'] ?? ''} would sit in or ahead of the wing, which ends at ${a['end'] ?? ''}.`,
  'tail-off-body': (a) => `The tail at ${a['at'] ?? ''} is not on the body, which is ${a['body'] ?? ''} long.`,
  'taper-off-body': (a) => `The taper at ${a['at'] ?? ''} begins beyond the body, which is ${a['body'] ?? ''} long.`,
  'tail-height-above-body': (a) => `At the tail end the body may be at most ${a['body'] ?? ''} high.`,
  'margins-crossed': (a) => `The larger margin, ${a['high'] ?? ''}, must not be below the smaller, ${a['low'] ?? ''}.`,
  'file-not-json': () => 'This is not a design file: it cannot be read as JSON.',
  'file-cut-off': () => 'This design file breaks off in the middle. Fetch it again, whole.',
  'file-not-a-design': () => 'This file holds no glider.',
  'file-version-unreadable': () => 'This file does not say which version it is.',
  'file-of-later-version': (a) => `This file is of version ${a['version'] ?? ''}; this page reads up to version ${a['known'] ?? ''}.`,
  'file-unknown-entry': (a) => `“${a['entry'] ?? ''}” is no dimension of a glider and was left out.`,
  'file-number-without-unit': (a) => `${a['text'] ?? ''} has no unit: write it as a text such as "${a['text'] ?? ''} mm".`,
  'file-entry-not-text': () => 'Values in a design file are texts such as "580 mm".',
  'file-not-fetched': (a) => `The design at ${a['src'] ?? ''} could not be fetched; the page’s own settings may forbid it.`,
  'no-such-dimension': (a) => `There is no dimension called “${a['name'] ?? ''}”.`,
  'no-such-value': (a) => `There is no value called “${a['name'] ?? ''}”.`,
  'prop-too-tall': (a) => `The stack is too tall for its panel: at most ${a['most'] ?? ''}.`,
  'prop-inset-too-far': () => 'The stack is pushed in beyond the panel.',
  'prop-past-crease': () => 'The stack would stand under or beyond the crease.',
  'length-not-positive': () => 'A length must be more than nothing.',
});
