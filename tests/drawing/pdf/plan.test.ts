import {expect} from '@open-wc/testing';
import {planTemplates, codeOf} from '../../../src/drawing/pdf/plan.js';
import {ownArea} from '../../../src/drawing/pdf/draw-board.js';
import {defaultDesign} from '../../../src/calc/design/design.js';
import {jobOf, papers, planOf} from '../template-jobs.js';

describe('planTemplates', () => {
  it('numbers the pages of all sheets in a row', () => {
    const plan = planOf(jobOf({}, defaultDesign, 3));
    expect(plan.pages.map(({number}) => number)).to.deep.equal(plan.pages.map((_, i) => i + 1));
    expect(new Set(plan.pages.map(({sheet}) => sheet.title))).to.deep.equal(new Set(['Sheet 1', 'Sheet 2']));
  });

  it('calls columns by letter and rows by number', () => {
    expect([[0, 0], [2, 1], [25, 9], [26, 0], [53, 3]].map(([column = 0, row = 0]) => codeOf({column, row}))).to.deep.equal(['A1', 'C2', 'Z10', 'AA1', 'BB4']);
  });

  it('keeps what a page shows clear of its margins and of the boxes to measure', () => {
    for (const paper of Object.values(papers)) {
      const {window, block, page} = planOf(jobOf({paper}));
      expect([window.x, window.y]).to.deep.equal([10, 10]);
      expect(window.x + window.width).to.be.closeTo(page.width - 10, 1e-9);
      expect(window.y + window.height).to.be.below(block.y - 4);
      expect(block.y + block.height).to.be.closeTo(page.height - 10, 1e-9);
      expect(block.width).to.be.at.least(101.6 + 60);
    }
  });

  it('gives a printer that is off less board or more on the same paper', () => {
    const {page, paper, window} = planOf(jobOf({correction: {across: 1.01, up: 0.99}}));
    expect(paper).to.deep.equal({width: 210, height: 297});
    expect(page.width).to.be.closeTo(210 / 1.01, 1e-9);
    expect(page.height).to.be.closeTo(297 / 0.99, 1e-9);
    expect(window.width).to.be.closeTo(210 / 1.01 - 20, 1e-9);
  });

  it('lets what neighbours have to themselves meet at their trim line', () => {
    const plan = planOf(jobOf({overlap: 14}));
    let met = 0;
    for (const page of plan.pages) {
      const right = plan.pages.find(({tile}) => tile.column === page.tile.column + 1 && tile.row === page.tile.row);
      if (!right) continue;
      met++;
      expect(ownArea(plan, page).right).to.be.closeTo(ownArea(plan, right).left, 1e-9);
    }
    expect(met).to.be.above(0);
  });

  it('turns the pieces with the board', () => {
    const board = {length: 150, width: 240};
    const piece = {number: 1, name: 'strip', size: '', places: [{words: 'here', at: {x: 30, y: 10}}], outline: [{x: 0, y: 0}, {x: 150, y: 0}, {x: 150, y: 20}, {x: 0, y: 20}],
      lines: [{kind: 'mark', face: 'A', from: {x: 40, y: 0}, to: {x: 40, y: 20}}] as const};
    const tall = {...piece, number: 2, outline: [{x: 0, y: 20}, {x: 20, y: 20}, {x: 20, y: 200}, {x: 0, y: 200}]};
    const lying = planOf(jobOf({board: {length: 240, width: 150}, sheets: [{title: '', leftover: undefined, pieces: [{...piece, outline: [{x: 0, y: 0}, {x: 215, y: 0}, {x: 215, y: 20}, {x: 0, y: 20}]}]}]}));
    const [turned] = lying.pages;
    expect(lying.pages).to.have.length(1);
    expect(turned?.sheet).to.deep.include({length: 150, width: 240});
    expect(turned?.sheet.pieces[0]?.outline).to.deep.equal([{x: 150, y: 0}, {x: 150, y: 215}, {x: 130, y: 215}, {x: 130, y: 0}]);
    expect(turned?.sheet.pieces[0]?.lines[0]).to.deep.include({from: {x: 150, y: 40}, to: {x: 130, y: 40}});
    expect(turned?.sheet.pieces[0]?.places[0]?.at).to.deep.equal({x: 140, y: 30});
    expect(planOf(jobOf({board, sheets: [{title: '', leftover: undefined, pieces: [piece, tall]}]})).pages[0]?.sheet.pieces[0]?.outline).to.deep.equal(piece.outline);
  });

  it('refuses what no file could hold, and says the most it can', () => {
    const problems = (changes: Parameters<typeof jobOf>[0], most = 200) => {
      const plan = planTemplates(jobOf(changes), most);
      return plan.ok ? [] : plan.problems;
    };
    expect(problems({overlap: 80})[0]).to.deep.include({code: 'overlap-too-wide', path: 'overlap'});
    expect(problems({}, 2)).to.deep.equal([{code: 'too-many-pages', path: 'paper', args: {most: 2, kind: 'count'}}]);
    expect(problems({paper: {width: 100, height: 60}})[0]?.code).to.equal('paper-too-small');
    expect(problems({paper: undefined, board: {length: 5200, width: 500}})).to.deep.equal([{code: 'page-too-long', path: 'paper', args: {most: 5.08}}]);
    expect(problems({paper: undefined, board: {length: NaN, width: 500}})[0]?.code).to.equal('page-too-long');
  });
});
