import {css} from 'lit';

/**
 * Ink on paper. Everything is inherited from the page unless its author sets one of the custom properties; the colours fall back to a
 * light and a dark set of their own only where the page's text colour gives no hint.
 *
 * The twelve: --glider-ink, -soft, -rule, -paper, -fill, -hatch, -accent, -accent-soft, -problem, -font, -gap, -measure.
 */
export const baseStyles = css`
  :host {
    --_ink: var(--glider-ink, currentColor);
    --_soft: var(--glider-soft, color-mix(in srgb, currentColor 74%, transparent));
    --_rule: var(--glider-rule, color-mix(in srgb, currentColor 20%, transparent));
    --_paper: var(--glider-paper, light-dark(#fdfcf9, #171b1e));
    --_fill: var(--glider-fill, color-mix(in srgb, currentColor 6%, transparent));
    --_hatch: var(--glider-hatch, color-mix(in srgb, currentColor 30%, transparent));
    --_accent: var(--glider-accent, light-dark(#b8430a, #ff9a5c));
    --_accent-soft: var(--glider-accent-soft, light-dark(#f7e3d6, #3a271b));
    --_problem: var(--glider-problem, light-dark(#a3121f, #ff8f8f));
    --_gap: var(--glider-gap, 1rem);
    font-family: var(--glider-font, inherit);
    display: block;
    container-type: inline-size;
    font-variant-numeric: tabular-nums;
  }
  :host([hidden]) { display: none; }
  .problem { color: var(--_problem); font-size: .88em; line-height: 1.4; margin: .2rem 0 0; }
  .problem::before { content: "▲ " / ""; font-size: .75em; }
  .hidden { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
`;
