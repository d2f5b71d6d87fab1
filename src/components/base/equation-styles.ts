import {css} from 'lit';

export const equationStyles = css`
  .equation { display: flex; flex-wrap: wrap; align-items: center; gap: .3rem .35em; }
  .equation math { font-size: 1.12em; display: inline-block; }
`;
