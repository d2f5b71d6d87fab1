import {css} from 'lit';

export const asBuiltStyles = css`
  fieldset.fields { grid-column: 1 / -1; margin-block-start: .6rem; }
  .weighing { grid-column: 1 / -1; }
  fieldset .group { grid-column: 1 / -1; margin: .7rem 0 .5rem; }
  .weighing .wide { grid-column: 1 / -1; margin: 0 0 .5rem; }
  .weighing .said p { margin: 0; font-size: .95em; }
  .fitted { grid-column: 1 / -1; display: flex; gap: .6rem; align-items: center; min-block-size: 2.75rem; font-size: .95em; }
  .use, .forget { min-block-size: 2.75rem; justify-self: start; margin-block: .3rem; }
  .forget { grid-column: 1 / -1; }
  .group { font-size: .95em; font-weight: 600; margin: 1.1rem 0 .3rem; line-height: 1.25; }
  .truth { inline-size: 100%; min-inline-size: 0; }
  .truth :is(th, td) { padding-block: .1rem; }
  .truth tbody :is(td, th) { vertical-align: middle; }
  .truth td { color: var(--_soft); line-height: 1.35; }
  .truth td.number { color: var(--_ink); white-space: nowrap; }
  .truth :is(th, td):last-child { padding-inline-end: 0; }
  .truth + .source { margin-block-start: .5rem; }
  .truth label { display: flex; gap: .7rem; align-items: center; min-block-size: 2.75rem; padding-block: .3rem; box-sizing: border-box; line-height: 1.35; cursor: pointer; }
  input[type='checkbox'] { inline-size: 1.35rem; block-size: 1.35rem; margin: 0; flex: none; accent-color: var(--_accent); }
  input[type='checkbox']:focus-visible { outline: 2px solid var(--_accent); outline-offset: 2px; }
  .found { display: block; font-size: .9em; line-height: 1.35; color: var(--_soft);  }
  .found.bad { color: var(--_problem); }
  .found.bad::before { content: "▲ " / ""; font-size: .75em; }
  @container (max-width: 30rem) { .truth { font-size: .86em; } .truth :is(th, td) { padding-inline-end: .6rem; } .truth td.number { white-space: normal; } }
  @media screen {
    @container (max-width: 30rem) {
      .truth, .truth tbody { display: block; font-size: inherit; }
      .truth caption { display: block; }
      .truth thead { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
      .truth tbody tr { display: grid; grid-template-columns: 1fr auto; column-gap: 1rem; border-block-end: 1px solid var(--_rule); padding-block: .15rem .6rem; }
      .truth tbody :is(th, td) { border: 0; padding: 0; }
      .truth tbody th { grid-column: 1 / -1; }
      .truth tbody td { font-size: .92em; line-height: 1.35; }
      .truth tbody td:not(.number) { padding-inline-start: 2.05rem; }
      .truth td.number { white-space: nowrap; font-weight: 600; }
      .truth td[data-name]::before { content: attr(data-name); display: block; color: var(--_soft); font-weight: 400; }
    }
  }
  @media print { .forget, .use { display: none; } .truth td { color: var(--_ink); } .truth tr { break-inside: avoid; } }
`;
