import {css} from 'lit';

/** The picture with the cut list beside it where there is room for both. */
export const partsSheetStyles = css`
  .laid { display: grid; gap: var(--_gap) 2.2rem; align-items: start; }
  .laid > * { min-inline-size: 0; }
  .seen { display: grid; gap: .8rem; }
  .reasons { margin: 0; }
  .reasons .problem { margin: 0 0 .3rem; font-size: .95em; }
  .list { overflow-x: auto; }
  .list table { inline-size: 100%; max-inline-size: 44rem; font-size: .9em; }
  .list caption { text-align: start; font-size: .9em; font-weight: 600; color: var(--_soft); padding-block-end: .3rem; }
  .list th, .list td { padding: .2rem .7rem .2rem 0; border-block-end: 0; }
  .list :is(th, td):last-child { padding-inline-end: .2rem; }
  .list thead th { line-height: 1.25; vertical-align: bottom; border-block-end: 1px solid var(--_rule); }
  .list tbody { border-block-end: 1px solid var(--_rule); }
  .list td { white-space: nowrap; }
  .list th[scope='row'] { white-space: nowrap; }
  .list .named { display: flex; align-items: center; gap: .3rem; }
  .list .named > span { min-inline-size: 0; hyphens: auto; }
  .list .note td { white-space: normal; color: var(--_soft); font-size: .94em; line-height: 1.4; padding-block: 0 .4rem; }
  .list .lit > * { background: var(--_accent-soft); }
  button.piece { min-inline-size: 2rem; min-block-size: 1.6rem; padding: 0 .25rem; border-color: var(--_rule); font-variant-numeric: tabular-nums; flex: none; }
  button.piece[aria-pressed='true'] { border-color: var(--_accent); color: var(--_accent); }
  .corner { white-space: nowrap; }
  .making { display: grid; gap: .8rem; padding-block: .5rem .4rem; }
  .making > p { margin: 0; }
  .making .source { font-size: .94em; text-wrap: pretty; }
  .making details.more .source { margin-block: .4rem .2rem; }
  .make { display: flex; flex-wrap: wrap; gap: .6rem; }
  [role='status'] p { margin: 0; }
  a.file { color: var(--_ink); text-underline-offset: .2em; }
  a.file:focus-visible { outline: 2px solid var(--_accent); outline-offset: 2px; }
  .not-to-scale { display: none; }
  .search { display: flex; flex-wrap: wrap; align-items: center; gap: .2rem .8rem; min-block-size: 2rem; margin-block-end: .6rem; }
  .search .source { flex: 0 1 auto; }
  .bench { position: relative; cursor: default; outline-offset: 4px; }
  .bench:focus-visible { outline: 2px solid var(--_accent); }
  .grip { position: absolute; touch-action: none; cursor: grab; }
  .grip:active { cursor: grabbing; }
  .hand p { margin: 0; }
  .moves { display: flex; flex-wrap: wrap; gap: .6rem; }
  .moves button, .stepping button { min-block-size: 44px; min-inline-size: 5.5rem; }
  .stepping button[aria-disabled='true'] { opacity: .5; cursor: default; }
  .moves button[aria-pressed='true'] { border-color: var(--_accent); color: var(--_accent); }
  .told { min-block-size: 2.9em; }
  fieldset { border: 0; margin: 0 0 .75rem; padding: 0; min-inline-size: 0; grid-column: 1 / -1; }
  fieldset > legend { padding: 0; font-size: .88em; color: var(--_soft); margin-block-end: .4rem; }
  .splice label { display: inline-flex; align-items: center; gap: .4rem; min-block-size: 32px; margin-inline-end: 1.2rem; }
  .splice input { inline-size: 1.2rem; block-size: 1.2rem; accent-color: var(--_accent); }
  .boards .fields { border-inline-start: 2px solid var(--_rule); padding-inline-start: .8rem; margin-block-end: .6rem; }
  .boards .remove { grid-row: span 3; align-self: center; justify-self: start; min-inline-size: 44px; min-block-size: 44px; margin-block-end: .75rem; }
  .doing { display: grid; }
  .doing .panel:first-child { border-block-start: 1px solid var(--_rule); }
  .panel .opened { display: grid; gap: .8rem; padding-block: .6rem .4rem; }
  .panel .field { display: grid; grid-template: auto auto / minmax(0, 20rem); margin: 0; }
  .ticks { margin-block-end: .4rem; }
  .list .ticks td { white-space: normal; }
  .steps { display: grid; gap: .8rem; }
  .stepping { display: flex; flex-wrap: wrap; gap: .6rem; }
  .steps .now { margin: 0; font-size: 1.08em; min-block-size: 4.2em; max-inline-size: 62ch; }
  .steps details { border: 0; padding: 0; }
  .steps ol { margin: 0; padding-inline-start: 2.2em; max-inline-size: 66ch; display: grid; gap: .3rem; }
  .steps li.lit { background: var(--_accent-soft); }
  .use { margin: 0 0 1rem; }
  @container (min-width: 56rem) { .laid.beside { grid-template-columns: minmax(0, 1fr) minmax(min-content, 23rem); } }
  @container (max-width: 26rem) {
    .list th, .list td { padding-inline-end: .4rem; }
    .list table { font-size: .84em; min-inline-size: 0; }
    .list th[scope='row'] { white-space: normal; }
  }
  @media (pointer: coarse) {
    button.piece { min-inline-size: 44px; min-block-size: 44px; }
    summary { min-block-size: 44px; align-content: center; }
    .splice label, .q input, .q select { min-block-size: 44px; }
  }
  @media print {
    .templates, .search, .hand, .steps .now { display: none; }
    .not-to-scale { display: block; margin: 0; font-weight: 600; }
    .list { overflow: visible; }
    button.piece { display: inline; border: 0; padding: 0; color: inherit; }
    .list tbody { break-inside: avoid; }
    .list .lit > * { background: none; }
  }
`;
