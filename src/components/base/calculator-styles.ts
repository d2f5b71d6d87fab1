import {css} from 'lit';

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
    /* the rule keeps to its heading, and a picture to one page of A4 or Letter with its heading above it */
    .card:has(h3) { border-block-start: 0; padding-block-start: 0; }
    h3 { break-after: avoid; break-inside: avoid; border-block-start: 1.5px solid var(--_ink); padding-block-start: .8rem; }
    .answer, figure, tr, .caution { break-inside: avoid; }
    caption { break-after: avoid; }
    .sheet svg { max-block-size: 21cm; }
  }
  @media (forced-colors: active) { .q:focus-within { border-color: Highlight; } .stale { color: GrayText; opacity: 1; } }
`;
