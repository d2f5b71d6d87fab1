import {inLatin} from './latin.js';

/**
 * Makes a drawing ready for the converter, which knows neither weights between normal and bold nor a rim around letters, and whose fonts lack most letters
 * beyond Latin-1. Gives the letters for which there was nothing but a question mark.
 */
export function makeReady(svg: SVGSVGElement): readonly string[] {
  const missing: string[] = [];
  for (const text of svg.querySelectorAll('text')) {
    const latin = inLatin(text.textContent);
    missing.push(...latin.missing);
    text.textContent = latin.text;
    text.setAttribute('font-weight', Number(text.getAttribute('font-weight')) >= 600 ? 'bold' : 'normal');
    text.removeAttribute('paint-order');
    const rim = text.getAttribute('stroke');
    if (rim !== null && rim !== 'none') {
      const under = text.cloneNode(true) as SVGTextElement;
      under.setAttribute('fill', rim);
      text.before(under);
    }
    text.removeAttribute('stroke');
    text.removeAttribute('stroke-width');
  }
  return missing;
}
