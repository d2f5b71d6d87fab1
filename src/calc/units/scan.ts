import {plainSpelling} from './spelling.js';

/** A place in a text, moved on by what is taken. */
export interface Scanner {
  readonly text: string;
  at: number;
  /** Takes what a sticky pattern matches here. */
  take(pattern: RegExp): RegExpExecArray | undefined;
  ended(): boolean;
}

export function scanner(written: string): Scanner {
  const text = plainSpelling(written);
  return {
    text,
    at: 0,
    take(pattern) {
      pattern.lastIndex = this.at;
      const found = pattern.exec(text) ?? undefined;
      if (found) this.at = pattern.lastIndex;
      return found;
    },
    ended() { return this.at >= text.length; },
  };
}
