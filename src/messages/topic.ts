/** The words of one subject in English; other languages bring the same shape under the same name. */
export interface Topic<T> {
  readonly name: string;
  readonly en: T;
}

export const topic = <T>(name: string, en: T): Topic<T> => ({name, en});
