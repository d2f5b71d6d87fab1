/** Goes on in a task of its own, between which a browser answers its reader. */
export const ownTask = (): Promise<void> => new Promise((resolve) => { setTimeout(resolve); });
