/** How far work is known to be saved. A file handed to the browser is not yet: it may be refused, or the disk full. */
export interface SavedMark {
  readonly edited: () => void;
  readonly handedOver: () => void;
  /** The user has seen the file handed over last. Edits made since are not in it. */
  readonly arrived: () => void;
  readonly isUnsaved: () => boolean;
  /** Other work is in its place. */
  readonly restart: (isUnsaved: boolean) => void;
}

export function savedMark(): SavedMark {
  let edits = 0;
  let handed = 0;
  let saved = 0;
  return {
    edited: () => {
      edits += 1;
    },
    handedOver: () => {
      handed = edits;
    },
    arrived: () => {
      saved = handed;
    },
    isUnsaved: () => edits > saved,
    restart: (isUnsaved) => {
      edits += 1;
      handed = saved = isUnsaved ? edits - 1 : edits;
    },
  };
}
