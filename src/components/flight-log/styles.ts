import {css} from 'lit';

/** Big enough for a thumb, dark enough for the sun. */
export const flightLogStyles = css`
  form, .panel, .notes, .told, .entry { display: grid; gap: .8rem; }
  .told > *, .entry > *, form > * { min-inline-size: 0; }
  form .q :is(input, select), .chosen .q select, .panel .q input, .names .q :is(input, select) { block-size: 2.75rem; font-size: 1.12em; }
  form .fields { grid-template-columns: repeat(auto-fill, minmax(min(100%, 7.6rem), 1fr)); }
  .names > button { grid-row: span 3; align-self: end; margin-block-end: .75rem; }
  form .field label, .field label { color: var(--_ink); }
  button { min-block-size: 2.75rem; min-inline-size: 2.75rem; }
  summary { min-block-size: 2.75rem; display: list-item; align-content: center; }
  .watch-face { position: relative; display: grid; min-block-size: 7.5rem; }
  .watch { border-width: 2.5px; padding-block: 4.4rem .8rem; touch-action: manipulation; user-select: none; -webkit-user-select: none; }
  .watch-face .reading { position: absolute; inset-block-start: 1rem; inset-inline: 0; text-align: center; pointer-events: none; font-size: 2.6em; line-height: 1.2; font-weight: 600; }
  .watch.running, .watch.running + .reading { color: var(--_paper); }
  .watch.running { background: var(--_ink); }
  .do-it { margin: 0; display: flex; flex-wrap: wrap; gap: .6rem; }
  .main { flex: 1 1 12rem; font-weight: 600; border-width: 2.5px; min-block-size: 3.25rem; }
  .said { margin: 0; min-block-size: 1.5em; display: flex; flex-wrap: wrap; align-items: center; gap: .6rem; }
  .said p { margin: 0; }
  .notes { list-style: none; margin: 0; padding: 0; gap: .35rem; font-size: .95em; max-inline-size: 68ch; }
  .fields.chosen { grid-template-columns: repeat(auto-fill, minmax(min(100%, 7.4rem), 1fr)); max-inline-size: 40rem; }
  .changed { border-inline-start: 3px solid var(--_accent); padding-inline-start: .7rem; }
  .changed p { margin: 0 0 .5rem; }
  .buttons { display: flex; flex-wrap: wrap; gap: .6rem; margin: 0; align-items: center; }
  .buttons .file { display: inline-flex; align-items: center; min-block-size: 2.75rem; color: var(--_ink); text-underline-offset: .2em; }
  .open { position: relative; display: inline-flex; align-items: center; min-block-size: 2.75rem; border: 1.5px solid var(--_ink); padding: 0 .8rem; cursor: pointer; box-sizing: border-box; }
  .open:hover { border-color: var(--_accent); color: var(--_accent); }
  .open:focus-within { outline: 2px solid var(--_accent); outline-offset: 2px; }
  .open input { position: absolute; inset: 0; opacity: 0; cursor: pointer; inline-size: 100%; font-size: 0; }
  table { inline-size: 100%; min-inline-size: 0; }
  :is(th, td) { padding-inline-end: .7rem; }
  :is(th, td):last-child { padding-inline-end: 0; text-align: end; }
  th[scope='row'] { overflow-wrap: anywhere; }
  tr.left-out :is(th, td) { color: var(--_soft); }
  tr.held > * { background: var(--_accent-soft); }
  tr:has(+ .expected) > * { border-block-end: 0; }
  .expected td, .expected td:last-child { text-align: start; font-size: .9em; color: var(--_soft); padding-block: 0 .3rem; }
  .words { display: block; font-size: .9em; color: var(--_soft); overflow-wrap: anywhere; }
  .row-text { font-family: ui-monospace, "Liberation Mono", monospace; font-size: .9em; overflow-wrap: anywhere; }
  .unread { list-style: none; margin: 0; padding: 0; display: grid; gap: .9rem; }
  .state { font-size: .92em; color: var(--_soft); margin: 0; }
  .state.bad { color: var(--_problem); }
  .panels { display: grid; }
  .panels .state { padding-block: .6rem; }
  .panels details { padding-block: .1rem; }
  .panel { padding-block: .5rem; }
  .panel > p { margin: 0; max-inline-size: 68ch; }
  @container (max-width: 24rem) { table { font-size: .86em; } :is(th, td) { padding-inline-end: .4rem; } }
  @container (min-width: 46rem) {
    form { grid-template-columns: minmax(14rem, 1fr) 2fr; column-gap: 2rem; align-items: start; }
    .watch-face { min-block-size: 13rem; }
    .watch-face .reading { inset-block-start: 3rem; }
    .watch { padding-block-start: 6.5rem; padding-block-end: 3rem; }
  }
  @media print { form, .said, .buttons, .chosen, .state { display: none; } }
`;
