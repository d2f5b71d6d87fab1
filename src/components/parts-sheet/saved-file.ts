/** A file made on the page: its address lasts until it is let go. */
export interface SavedFile {
  readonly name: string;
  readonly address: string;
  letGo(): void;
}

/** Keeps a file under an address of the page's own, to be saved by a link. Nothing is sent anywhere. */
export function fileOf(name: string, content: Blob): SavedFile {
  const address = URL.createObjectURL(content);
  return {name, address, letGo: () => { URL.revokeObjectURL(address); }};
}

/** A name for a file: `Halfpenny No. 2` gives `halfpenny-no-2`. */
export const fileName = (title: string): string => title.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '');
