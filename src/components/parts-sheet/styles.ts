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
  .list .note td { white-space: normal; color: var(--_soft); font-size: .94em; line-height: 1.4; padding-block: 0 .4rem; }
  .list .lit > * { background: var(--_accent-soft); }
  button.piece { min-inline-size: 2rem; min-block-size: 1.6rem; padding: 0 .25rem; border-color: var(--_rule); font-variant-numeric: tabular-nums; margin-inline-end: .3rem; }
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
  .use { margin: 0 0 1rem; }
  @container (min-width: 56rem) { .laid.beside { grid-template-columns: minmax(0, 1fr) minmax(min-content, 23rem); } }
  @container (max-width: 26rem) { .list th, .list td { padding-inline-end: .45rem; } }
  @media print {
    .templates { display: none; }
    .not-to-scale { display: block; margin: 0; font-weight: 600; }
    .list { overflow: visible; }
    button.piece { display: inline; border: 0; padding: 0; color: inherit; }
    .list tbody { break-inside: avoid; }
    .list .lit > * { background: none; }
  }
`;
