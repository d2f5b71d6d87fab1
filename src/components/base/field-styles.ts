import {css} from 'lit';

/** Fields with their labels and units, as many side by side as there is room for. */
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
