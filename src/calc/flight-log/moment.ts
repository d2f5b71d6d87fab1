// Calendar arithmetic only: no clock is read, and no place's time is guessed.
/* eslint-disable no-restricted-globals */

const written = /^(\d{4}-\d\d-\d\d)(?:[T ](\d\d:\d\d(?::\d\d(?:\.\d+)?)?)\s*(Z|[+-]\d\d:?\d\d)?)?$/;

/** ms since 1970 of a date such as `2031-05-04T09:30:00Z`, in universal time where it names no zone; undefined for what is none. */
export function readMoment(text: string): number | undefined {
  const [, day, clock = '00:00', zone = 'Z'] = written.exec(text.trim()) ?? [];
  const at = day === undefined ? NaN : Date.parse(`${day}T${clock}${zone}`);
  return Number.isFinite(at) ? at : undefined;
}

/** The same the other way round; nothing for what is no moment. */
export const writeMoment = (at: number): string => (Math.abs(at) <= 8.64e15 ? new Date(at).toISOString() : '');
