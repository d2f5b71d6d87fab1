import {html, mathml, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import type {WingFold} from '../../calc/bench/wing-fold.js';
import {writeAtLeast} from '../../calc/units/write.js';
import {camberWorkingWords} from '../../messages/en/camber-working.js';
import {commonWords} from '../../messages/en/common.js';
import {brackets, equation, fraction, named, operator, power, quantity, root, row, symbol} from '../base/equation.js';
import {numbersTable} from '../base/table.js';
import type {GliderCamberShim} from './camber-shim.js';

/** The formulas behind the answer, each with this wing's numbers. */
export function renderCamberWorking(host: GliderCamberShim, fold: WingFold): TemplateResult {
  const words = host.say(camberWorkingWords);
  const {wing} = host.state.design;
  const several = fold.panels.length > 2;
  const why = several ? words.because.several : wing.propped === 'crest' ? words.because.crest
    : wing.foldFace === 'opening' ? `${words.because.opening} ${words.because[wing.propPlace]}` : words.because[wing.propPlace];
  return html`<p class="source">${words.how[wing.foldFace]} ${words.faces[wing.foldFace]}</p>
    ${several || fold.panels.length < 2 ? nothing : renderFold(host, fold)}
    <p class="source">${why}</p>
    ${fold.panels.length === 2 ? renderCamber(host, fold) : nothing}
    <p class="source">${words.because.camber}</p>
    ${numbersTable(host, rows(host, fold))}
    <p class="source">${host.say(commonWords).where}: ${words.source}</p>`;
}

function rows(host: GliderCamberShim, fold: WingFold): readonly (readonly [string, string])[] {
  const {rows: names} = host.say(camberWorkingWords);
  const {wing} = host.state.design;
  const {contacts: [contact], pivot, edge} = fold.onBench;
  const fine = (m: number): string => host.write(m, 'length', host.system === 'metric' ? {digits: 1} : {});
  return [
    [names.fold, fold.folds.map((f) => host.write(f, 'angle')).join(' + ') || host.write(0, 'angle')],
    [names.camber, host.write(fold.section.camber, 'ratio')],
    [names.camberHeight, fine(fold.section.camberHeight)],
    [names.crestAt, host.write(fold.section.crest, 'length')],
    [names.chord, fine(fold.section.chord)],
    [names.stack, host.write(fold.stack, 'length')],
    [names.rise, fine(edge.y)],
    ...(contact && wing.propped !== 'crest' ? [[names.contact, host.write(Math.hypot(contact.x - pivot.x, contact.y - pivot.y), 'length')] as const] : []),
    [wing.foldFace === 'closing' ? names.groove : names.slot, fold.grooves.map((w) => writeAtLeast(w, 'length', {system: host.system, decimal: host.decimal})).join(' + ') || '–'],
    [names.glue, `${(fold.glue * 1e6).toFixed(1).replace('.', host.decimal)} mm²`],
  ];
}

function renderFold(host: GliderCamberShim, fold: WingFold): TemplateResult {
  const {wing, board} = host.state.design;
  const write = (m: number): TemplateResult => quantity(host.write(m, 'length'));
  const angle = quantity(host.write(fold.total, 'angle'));
  const [front = 0, rear = 0] = fold.panels;
  const panel = wing.propped === 'front' ? front : rear;
  const f = symbol('f'), h = symbol('h'), L = symbol('L'), t = symbol('t'), e = symbol('e'), x = symbol('x'), w = symbol('w');
  const spoken = host.say(camberWorkingWords).spoken.fold({
    height: host.write(fold.stack, 'length'), length: host.write(panel, 'length'), fold: host.write(fold.total, 'angle')});
  if (wing.propped === 'crest') {
    const a = symbol('a'), b = symbol('b'), c = symbol('c');
    return html`${equation(spoken, h, row(fraction(row(a, b, named('sin', f)), c), brackets(row(mathml`<mn>1</mn>`, operator('−'), fraction(w, c)))), write(fold.stack))}
      ${equation(spoken, c, root(row(power(a, '2'), operator('+'), power(b, '2'), operator('+'), mathml`<mn>2</mn>`, a, b, named('cos', f))))}
      ${equation(spoken, f, angle)}`;
  }
  const opening = wing.foldFace === 'opening';
  switch (wing.propPlace) {
    case 'edge':
    case 'inset': {
      const reach = wing.propPlace === 'edge' ? L : row(L, operator('−'), e);
      const reached = wing.propPlace === 'edge' ? write(panel) : row(write(panel), operator('−'), write(wing.stackInset));
      if (!opening) return equation(spoken, f, named('arcsin', fraction(h, reach)), named('arcsin', fraction(write(fold.stack), reached)), angle);
      const square = wing.propPlace === 'edge' ? power(L, '2') : power(brackets(reach), '2');
      return equation(spoken, f,
        row(named('arcsin', fraction(row(h, operator('−'), t), root(row(square, operator('+'), power(t, '2'))))), operator('+'), named('arctan', fraction(t, reach))),
        row(named('arcsin', fraction(row(write(fold.stack), operator('−'), write(board.thickness)), root(row(power(brackets(reached), '2'), operator('+'), power(brackets(write(board.thickness)), '2'))))), operator('+'), named('arctan', fraction(write(board.thickness), reached))),
        angle);
    }
    case 'bench':
      return opening ? equation(spoken, row(x, named('sin', f), operator('−'), brackets(row(h, operator('−'), t)), named('cos', f)), t)
        : equation(spoken, f, named('arctan', fraction(h, x)), named('arctan', fraction(write(fold.stack), write(wing.stackFromCrease))), angle);
    case 'plumb':
      return equation(spoken, row(L, named('sin', f), operator('−'), w, named('tan', f)), opening ? row(h, operator('−'), t, brackets(row(mathml`<mn>1</mn>`, operator('−'), named('cos', f)))) : h, write(fold.stack));
  }
}

function renderCamber(host: GliderCamberShim, fold: WingFold): TemplateResult {
  const fine = (m: number): TemplateResult => quantity(host.write(m, 'length', host.system === 'metric' ? {digits: 1} : {}));
  const camber = host.write(fold.section.camber, 'ratio');
  const A = symbol('a'), B = symbol('b'), f = symbol('f');
  const squares = (p: TemplateResult, q: TemplateResult): TemplateResult => row(power(p, '2'), operator('+'), power(q, '2'));
  return equation(host.say(camberWorkingWords).spoken.camber(camber),
    fraction(symbol('z'), symbol('c')),
    fraction(row(A, B, named('sin', f)), row(squares(A, B), operator('+'), mathml`<mn>2</mn>`, A, B, named('cos', f))),
    fraction(fine(fold.section.camberHeight), fine(fold.section.chord)),
    quantity(camber));
}
