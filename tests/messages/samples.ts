/** A stand-in for what is filled into a sentence: each of its properties is its own name in brackets, and so is the sentence's share of it. */
function stand(name: string, known: Readonly<Record<string, unknown>>): unknown {
  return new Proxy({}, {
    get: (_, key) => {
      if (key === Symbol.toPrimitive) return () => `‹${name}›`;
      if (typeof key === 'symbol') return undefined;
      return key in known ? known[key] : `‹${key}›`;
    },
  });
}

/** What must be a number, a list, or one of a few words for a sentence to be made. */
const usual: Readonly<Record<string, unknown>> = {
  side: 'rear', place: 'edge', where: 'edge', propped: 'panel', end: 'nose', heavy: 'nose', part: 'wing', missing: ['wing', 'fin'], at: ['‹at›'],
  sheets: 2, kits: 2, gliders: 3, used: 1, needed: 2, layers: 2, perSheet: 2, first: 1, alike: 3, only: false, old: 2, wanted: 3, spare: 2, again: false, along: true, better: 2,
};

/** Sentences whose arguments are not spoken as they are. */
const own: Readonly<Record<string, readonly unknown[]>> = {
  'as-built.turns': [stand('0', {way: 'right'})],
  'as-built.hardlyTurns': ['right'],
  'as-built.rollsOver': ['right'],
  'as-built.dives': [stand('0', {how: 'measured'})],
  'as-built.stalls': [stand('0', {how: 'planned'})],
  'as-built.unstable': ['measured'],
  'as-built.steepTurn': ['right'],
  'as-built.tooFarOff': [['‹a›', '‹b›']],
  'as-built.picture': [stand('0', {measured: 2})],
  'balance.put': [stand('0', {...usual, like: stand('like', usual)})],
  'balance.piece': ['eur-0.05', 3],
  'camber.stack': [2, 3, 4],
  'weights.then': [['‹a›', '‹b›']],
  'tail-shim.series': [2, 3, 4],
  'trim-advice-causes.series': [2, 3, 4],
  'tail-shim.set': [stand('0', {...usual, edge: 'rear'})],
  'tail-shim.towards.in-all': [stand('0', {...usual, edge: 'rear'})],
  'tail-shim.towards.more': [stand('0', {...usual, edge: 'rear'})],
  'tail-shim.towards.less': [stand('0', {...usual, edge: 'rear'})],
  'tail-shim.perStep': [stand('0', {...usual, edge: 'rear'})],
  'sheet.noOutline': ['fin'],
  'sheet.maybeFewer': [2],
  'sheet.allAlike': [2],
  'sheet.show': [stand('0', {number: 1})],
  'sheet.piece': [stand('0', {number: 1})],
  'sheet.pictureSheet': ['‹title›', ['‹a›', '‹b›']],
  'sheet.sheetNumbers': [1, 1],
  'flight-check.out': [['‹a›', '‹b›']],
  'reckoned.with': [stand('0', {what: ['‹a›', '‹b›'], count: 3})],
  'flight-path.turns': [stand('0', {way: 'right'})],
  'flight-path.hardlyTurns': [stand('0', {way: 'right'})],
  'flight-path.rollsOver': ['right'],
  'flight-path.steepTurn': ['right'],
  'flight-path.plan.aside': ['‹distance›', 'right'],
  'flight-log.several': [stand('0', {measure: 'ratio'})],
  'flight-log.settled': [stand('0', {measure: 'distance'})],
  'flight-log.open': [stand('0', {measure: 'sink'})],
  'flight-log.picture': [stand('0', {lanes: ['‹a›', '‹b›']})],
  'flight-log.expected': [stand('0', {standing: 'above'})],
  'flight-log.changed': [stand('0', {what: ['‹a›', '‹b›']})],
  'flight-log.differMany': [stand('0', {what: ['‹a›', '‹b›']})],
  'flight-log-panels.readIn': [stand('0', {known: 2, replaced: 4, unread: 3})],
  'sheet-templates.leftOut': [['wing', 'fin']],
  'sheet.note.pieces': [2],
  'sheet.note.marks': [[{label: 'wing-front', at: '‹a›'}, {label: 'tail-rear', at: '‹b›'}]],
  'sheet.note.centre': [['A']],
  'sheet.fits': [stand('0', {...usual, from: 'each'})],
  'sheet.gives': [stand('0', {...usual, from: 'last', used: 2})],
  'sheet.use': [stand('0', {used: '‹used›'})],
  'sheet.because.area': [2],
  'sheet.because.bound': [2],
  'sheet-lists.off': [['‹a›', '‹b›']],
  'sheet-lists.outline': [['‹a›', '‹b›']],
  'sheet-lists.slanting': [['‹a›', '‹b›']],
  'sheet-lists.edge': [stand('0', {pieces: ['‹a›', '‹b›']})],
  'sheet-search.manyHeld': [2],
  'sheet-search.onSheet': [stand('0', {})],
  'sheet-search.lies': [stand('0', {})],
  'sheet-search.moved': [stand('0', {})],
  'sheet-search.held': [stand('0', {})],
  'sheet.lengthOf': [stand('0', {})],
};

/** Arguments for the sentence at a path such as `camber.gives`. */
export const samplesFor = (path: string): readonly unknown[] => own[path] ?? [0, 1, 2].map((i) => stand(String(i), usual));

/** What stands in a sentence of its arguments, in the order of the alphabet. */
export const filledIn = (sentence: string): readonly string[] => [...new Set(sentence.match(/‹\w+›/g) ?? [])].sort();
