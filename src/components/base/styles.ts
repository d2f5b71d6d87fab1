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

/** A calculator: answer, picture, question, working, between two rules. */
export const calculatorStyles = css`
  .card { border-block: 1.5px solid var(--_ink); padding-block: 1rem .5rem; display: grid; gap: var(--_gap); line-height: 1.5; }
  .card > * { min-inline-size: 0; }
  .coming { min-block-size: 30rem; }
  h3 { font-size: .9em; font-weight: 600; line-height: 1.25; color: var(--_soft); margin: 0 0 .4rem; }
  .answer { font-size: clamp(1.15em, 4.4cqi, 1.5em); line-height: 1.32; margin: 0; text-wrap: balance; max-inline-size: 40ch; }
  .answer strong { font-weight: 650; }
  .answer .aside { display: block; font-size: max(.66em, .92rem); line-height: 1.45; color: var(--_soft); margin-block-start: .4rem; max-inline-size: 62ch; text-wrap: pretty; }
  .stale { color: var(--_soft); user-select: none; -webkit-user-select: none; }
  .stale strong { font-weight: inherit; }
  .stale svg, .stale .handles { opacity: .45; }
  .caution { font-size: .9em; border-inline-start: 3px solid var(--_accent); padding-inline-start: .7rem; margin: 0; max-inline-size: 62ch; }
  details { border-block-start: 1px solid var(--_rule); padding-block: .5rem; font-size: .95em; }
  summary { cursor: pointer; color: var(--_ink); min-block-size: 24px; }
  summary:focus-visible { outline: 2px solid var(--_accent); outline-offset: 3px; }
  .working { display: grid; grid-template-columns: minmax(0, 1fr); gap: .55rem; padding-block: .5rem .2rem; overflow-x: auto; }
  .working math { font-size: 1.1rem; display: block; text-align: start; }
  .source { color: var(--_soft); font-size: .88em; margin: 0; max-inline-size: 65ch; }
  table { border-collapse: collapse; font-size: .92em; justify-self: start; min-inline-size: min(100%, 27rem); }
  caption { text-align: start; padding-block: .3rem; }
  th, td { text-align: start; font-weight: inherit; padding: .22rem 1.2rem .22rem 0; border-block-end: 1px solid var(--_rule); vertical-align: baseline; }
  thead th { color: var(--_soft); font-size: .92em; }
  td.number, th.number { text-align: end; font-variant-numeric: tabular-nums; }
  button { font: inherit; color: var(--_ink); background: none; border: 1.5px solid var(--_ink); padding: .3rem .8rem; min-block-size: 2rem; cursor: pointer; }
  button:hover { border-color: var(--_accent); color: var(--_accent); }
  button:focus-visible { outline: 2px solid var(--_accent); outline-offset: 2px; }
  button:disabled { opacity: .5; cursor: default; }
  @media (pointer: coarse) { button { min-block-size: 44px; } summary { padding-block: .6rem; min-block-size: 44px; box-sizing: border-box; } }
  @media print {
    .stale, button, .handles, [part='question'], details:not([open]) { display: none; }
    h3 { break-after: avoid; }
    .answer, figure, tr { break-inside: avoid; }
  }
  @media (forced-colors: active) { .q:focus-within { border-color: Highlight; } .stale { color: GrayText; opacity: 1; } }
`;

export const fieldStyles = css`
  .fields { border: 0; margin: 0; padding: 0; min-inline-size: 0; display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 9.2rem), 1fr)); column-gap: 1.2rem; align-items: end; }
  .fields > legend { padding: 0; font-size: .9em; font-weight: 600; margin-block-end: .5rem; }
  .field { display: grid; grid-row: span 3; grid-template-rows: subgrid; row-gap: .1rem; align-items: end; margin-block-end: .75rem; }
  .field > :last-child { align-self: start; }
  .field.wide { grid-column: 1 / -1; }
  @container (min-width: 20.5rem) { .field.choice { grid-column: span 2; } }
  .field label, .field .label { font-size: .88em; line-height: 1.3; color: var(--_soft); }
  .q { display: flex; align-items: baseline; gap: .35rem; border-block-end: 1.5px solid var(--_ink); }
  .q input, .q select { font: inherit; font-size: 1.08em; color: var(--_ink); background: none; border: 0; border-radius: 0; inline-size: 100%; min-inline-size: 0; padding: .2rem 0; block-size: 2.1rem; box-sizing: border-box; font-variant-numeric: tabular-nums; outline: none; }
  .q select { text-overflow: ellipsis; }
  @media (pointer: coarse) { .q input, .q select { block-size: 44px; } }
  .q option { background: Canvas; color: CanvasText; }
  .q .unit { color: var(--_soft); white-space: nowrap; }
  .q:focus-within, .lit .q { border-color: var(--_accent); box-shadow: 0 1.5px 0 var(--_accent); }
  .q:has(input[aria-invalid='true']) { border-color: var(--_problem); }
  .q input:disabled, .q select:disabled { color: var(--_soft); }
  details.more { border: 0; padding: 0; grid-column: 1 / -1; }
  details.more > .fields { margin-block-start: .6rem; }
`;
