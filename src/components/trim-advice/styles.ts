import {css} from 'lit';

/** Ten pictures to choose from, large enough for a thumb. */
export const trimAdviceStyles = css`
  .card > div:empty { display: none; }
  .card .caution { margin-block-start: .6rem; }
  .answer { min-block-size: 4.2em; }
  fieldset.sights { border: 0; margin: 0 0 .8rem; padding: 0; min-inline-size: 0; display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 9.4rem), 1fr)); gap: .5rem; }
  .sights > legend { padding: 0; font-weight: 600; margin-block-end: .5rem; }
  .sight { position: relative; display: grid; grid-template-columns: 72px 1fr; gap: .5rem; align-items: center; min-block-size: 3.6rem; box-sizing: border-box; padding: .3rem .4rem; border: 1.5px solid var(--_rule); cursor: pointer; font-size: .88em; line-height: 1.25; hyphens: auto; overflow-wrap: anywhere; }
  .sight:hover { border-color: var(--_ink); }
  .sight input { position: absolute; inset: 0; inline-size: 100%; block-size: 100%; margin: 0; opacity: 0; cursor: pointer; }
  .sight:has(:checked) { border-color: var(--_accent); box-shadow: inset 0 0 0 1.5px var(--_accent); font-weight: 600; }
  .sight:has(:focus-visible) { outline: 2px solid var(--_accent); outline-offset: 2px; }
  .sight svg { inline-size: 72px; block-size: 44px; display: block; }
  .measured { margin-block-end: .2rem; }
  .measured .q input { block-size: 2.75rem; }
  .do-it { margin: 0 0 .8rem; display: flex; flex-wrap: wrap; gap: .6rem; }
  .do-it:empty { display: none; }
  .do-it button { flex: 1 1 11rem; max-inline-size: 24rem; }
  .remedy, .left-alone { margin: 0 0 .6rem; }
  .left-alone:empty { display: none; }
  .unlike { margin: 0 0 .6rem; max-inline-size: 68ch; }
  button { min-block-size: 2.75rem; }
  .main { font-weight: 600; border-width: 2.5px; }
  .advised { display: grid; gap: 1rem; }
  h4 { font-size: 1em; font-weight: 600; margin: 0 0 .4rem; }
  .causes, .thread { margin: 0; padding: 0 0 0 1.5em; display: grid; gap: .9rem; max-inline-size: 68ch; }
  .thread { gap: .4rem; }
  .causes p { margin: .15rem 0 0; font-size: .95em; }
  .how { color: var(--_soft); font-size: .9em; }
  .changes { list-style: none; margin: .35rem 0 0; padding: 0; display: grid; gap: .4rem; font-size: .95em; }
  .changes li { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: .3rem .8rem; align-items: center; border-inline-start: 2px solid var(--_rule); padding-inline-start: .7rem; }
  @container (max-width: 30rem) { .changes li { grid-template-columns: 1fr; justify-items: start; } }
  .changes .effect { color: var(--_soft); }
  .back { margin: .6rem 0 0; display: flex; flex-wrap: wrap; gap: .6rem; }
  .back button { font-size: .92em; }
  @container (min-width: 44rem) {
    fieldset.sights { grid-template-columns: repeat(5, minmax(0, 1fr)); }
    .sight { grid-template-columns: 1fr; justify-items: center; align-content: start; text-align: center; padding-block: .6rem; }
    .answer { min-block-size: 3.6em; }
  }
  @container (max-width: 21rem) { .sight { grid-template-columns: 56px 1fr; } .sight svg { inline-size: 56px; block-size: 34px; } }
  @media (forced-colors: active) { .sight:has(:checked) { border-color: Highlight; outline: 2px solid Highlight; } }
  @media print { .do-it, .back, .sights { display: none; } }
`;
