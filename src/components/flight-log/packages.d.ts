// What is used of packages that bring no types, or types that would bring Node's along.

declare module 'jstat' {
  const jStat: {readonly studentt: {readonly inv: (probability: number, freedom: number) => number}};
  export default jStat;
}

declare module 'papaparse' {
  interface ParseError { readonly type: string; readonly code: string }
  interface ParseStep { readonly data: readonly string[]; readonly errors: readonly ParseError[]; readonly meta: {readonly cursor: number} }
  interface ParseOptions { readonly delimiter: string; readonly step: (row: ParseStep, parser: {readonly abort: () => void}) => void }
  const Papa: {
    readonly parse: (text: string, options: ParseOptions) => unknown;
    readonly unparse: (rows: readonly (readonly string[])[], options: {readonly delimiter: string; readonly newline: string; readonly quotes: boolean}) => string;
  };
  export default Papa;
}
