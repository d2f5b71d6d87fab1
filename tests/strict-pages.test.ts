import {expect} from '@open-wc/testing';
import {openStrictPage} from './strict-page.js';

describe('a page under the strict policy', () => {
  it('runs no inline script and takes no inline style, and says so', async () => {
    const page = await openStrictPage('what-the-policy-refuses.html');
    expect(page.document.title).to.equal('What the strict policy refuses');
    expect(page.document.body.matches('[style]') && getComputedStyle(page.document.body).color).to.equal('rgb(0, 0, 0)');
    const directives = page.violations.map(({directive}) => directive.replace(/-(attr|elem)$/, ''));
    expect(new Set(directives)).to.deep.equal(new Set(['script-src', 'style-src']));
    page.close();
  });
});
