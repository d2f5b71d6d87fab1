import {expect, fixture, html} from '@open-wc/testing';
import {withValues} from '../../src/calc/design/design.js';
import {flightOf} from '../../src/calc/flight/flight.js';
import type {Problem} from '../../src/calc/problem.js';
import type {GliderCamberShim} from '../../src/components/camber-shim/define.js';
import {explain} from '../../src/components/base/explain.js';
import '../../src/components/camber-shim/define.js';
import {balancedWith} from '../calc/flight/planes.js';

/** What keeps a steady plane from gliding with its tail at an angle. */
function trimProblem(margin: number, tailIncidence: number): Problem {
  const flight = flightOf(withValues(balancedWith(margin), {'arrangement.tailIncidence': tailIncidence}));
  const problem = flight.ok && !flight.value.trim.ok ? flight.value.trim.problems[0] : undefined;
  if (!problem) throw new Error('it glides');
  return problem;
}

describe('a plane that only dives or only stalls', () => {
  for (const [lang, dives, stalls] of [
    ['en', /^It would only dive: raise the rear edge of the tailplane by about ([\d.]+) mm, lower/, /^It would only stall: lower the rear edge of the tailplane by about ([\d.]+) mm, raise/],
    ['de', /^Er ginge nur in den Sturzflug: die Hinterkante des Höhenleitwerks um etwa ([\d,]+) mm anheben,/, /^Die Strömung risse nur ab: die Hinterkante des Höhenleitwerks um etwa ([\d,]+) mm senken,/],
  ] as const) {
    it(`is told in ${lang} by how much its tail’s rear edge has to move`, async () => {
      // any element says a problem in its reader's language and units
      const element = await fixture<GliderCamberShim>(html`<glider-camber-shim lang=${lang} units="metric"></glider-camber-shim>`);
      for (const [problem, sentence] of [[trimProblem(0.2, 0.1), dives], [trimProblem(0.1, -0.15), stalls]] as const) {
        explain(element, problem);
        await element.updateComplete;
        const said = explain(element, problem).replaceAll('\u00a0', ' ');
        expect(said).to.match(sentence);
        expect(Number(sentence.exec(said)?.[1]?.replace(',', '.')) / 1000).to.be.closeTo(Number(problem.args?.['edge']), 6e-4);
      }
    });
  }
});
