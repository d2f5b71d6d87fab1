import {css} from 'lit';

/** A list of numbers, each over its own ruler; two columns where there is room. */
export const measureStyles = css`
  .group { font-size: .95em; font-weight: 600; margin: 1.1rem 0 .3rem; line-height: 1.25; }
  .measures { list-style: none; margin: 0; padding: 0; display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 19rem), 1fr)); gap: .9rem 2.2rem; }
  .measure { display: grid; grid-template-rows: subgrid; grid-row: span 3; gap: .15rem; border-block-start: 1px solid var(--_rule); padding-block-start: .5rem; min-inline-size: 0; }
  .measure .head { display: flex; flex-wrap: wrap; justify-content: space-between; align-items: baseline; gap: 0 .8rem; }
  .measure .name { font-size: .95em; }
  .measure .value { font-weight: 650; margin-inline-start: auto; }
  .measure p { margin: 0; font-size: .88em; line-height: 1.4; color: var(--_soft); max-inline-size: 60ch; text-wrap: pretty; }
  .measure p strong { color: var(--_ink); font-weight: 650; }
  .ruler { display: block; inline-size: 100%; block-size: 46px; overflow: hidden; }
  .ruler text { font-size: 11.5px; fill: var(--_soft); }
  .strength { margin: 1.1rem 0 0; max-inline-size: 62ch; }
  .stale .ruler { opacity: .45; }
  .caution { margin-block-start: 1rem; }
  @media print { .measure { break-inside: avoid; } }
`;
