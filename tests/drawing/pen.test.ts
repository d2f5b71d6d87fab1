import {expect} from '@open-wc/testing';
import {screenInk} from '../../src/drawing/ink.js';
import {Pen} from '../../src/drawing/pen.js';

const view = {box: {x: 0, y: 0, width: 100, height: 50}, mmPerPx: 0.5};

function onPaper(): {readonly svg: SVGSVGElement; readonly pen: Pen; readonly draw: (what: (pen: Pen) => void) => void} {
  const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  const pen = new Pen(svg, screenInk);
  return {svg, pen, draw: (what) => {
    pen.begin(view);
    what(pen);
    pen.finish();
  }};
}

describe('the pen', () => {
  it('touches nothing of a figure that stays as it was', async () => {
    const {svg, draw} = onPaper();
    const figure = (x: number) => (pen: Pen): void => {
      pen.line('edge', {x: 1, y: 2}, {x: 30, y: 2}, 'dash');
      pen.circle('end', {x: 30, y: 2}, 3, 'cut', 'paper');
      pen.text('name', {x, y: 9}, 'a strip', {turn: -90, halo: true});
    };
    draw(figure(4));
    let changes = 0;
    const observer = new MutationObserver((all) => { changes += all.length; });
    observer.observe(svg, {attributes: true, childList: true, characterData: true, subtree: true});
    const told = async (x: number): Promise<number> => {
      changes = 0;
      draw(figure(x));
      await Promise.resolve();
      return changes;
    };
    const before = await told(4);   // the hatch of the view is laid anew each time
    expect(svg.querySelectorAll('path[d="M1 2L30 2"], circle, text')).to.have.length(3);
    expect(await told(5) - before).to.equal(2);   // x, and about what the words are turned
    observer.disconnect();
  });

  it('leaves nothing on a node of what it was drawn with before', () => {
    const {svg, draw} = onPaper();
    draw((pen) => { pen.text('name', {x: 4, y: 9}, 'a strip', {turn: -90, halo: true}); });
    const text = svg.querySelector('text');
    expect(text?.getAttribute('transform')).to.equal('rotate(-90 4 9)');
    expect(text?.getAttribute('paint-order')).to.equal('stroke');
    draw((pen) => { pen.text('name', {x: 4, y: 9}, 'a strip'); });
    expect(svg.querySelector('text')).to.equal(text);
    for (const name of ['transform', 'paint-order', 'stroke-width', 'stroke-linejoin']) expect(text?.hasAttribute(name), name).to.equal(false);
    expect(text?.getAttribute('stroke')).to.equal('none');
  });

  it('makes another node where a key stands for another shape, and removes what is not drawn again', () => {
    const {svg, draw} = onPaper();
    draw((pen) => { pen.circle('end', {x: 30, y: 2}, 3, 'cut'); pen.line('edge', {x: 1, y: 2}, {x: 30, y: 2}); });
    draw((pen) => { pen.line('end', {x: 1, y: 2}, {x: 1, y: 9}); });
    expect(svg.querySelector('circle')).to.equal(null);
    expect([...svg.querySelectorAll(':scope > path')].map((path) => path.getAttribute('d'))).to.deep.equal(['M1 2L1 9']);
  });
});
