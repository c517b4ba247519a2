import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { Unseen } from "../../shared/xlsx/patch/unseen.ts";
import type { Opening } from "../opened-file.ts";
import type { Steps } from "../structure-log.ts";
import type { WorkbookCopy } from "./workbook-copy.ts";

/** What is told of a kept workbook before it is read. */
export interface SlotHead {
  /** Of the tab whose workbook it is. */
  readonly id: string;
  /** ms since 1970 */
  readonly at: number;
  /** Something in it is not known to be in a file. */
  readonly isUnsaved: boolean;
  /** So often was it begun to bring it back, and not ended. */
  readonly tries: number;
}

/** A workbook as the page holds it. */
export interface SlotContent {
  readonly fileName: string;
  readonly copy: WorkbookCopy;
  /** The duty of the pane as saved, where it was changed, and when. */
  readonly duty?: { readonly text: string; readonly at: number };
  /** The file that was opened in its place. */
  readonly behind?: {
    readonly name: string;
    readonly unseen: readonly Unseen[];
    readonly isGivenUp: boolean;
    readonly steps: Steps;
  };
}

export interface Slot extends SlotContent {
  readonly opening?: Opening;
}

interface Kept extends DBSchema {
  heads: { key: string; value: SlotHead };
  contents: { key: string; value: SlotContent };
  /** Apart, because they are large and do not change. */
  openings: { key: string; value: Opening };
}

/** The workbooks of all tabs in the storage of the browser. Every call fails where that refuses. */
export interface Slots {
  readonly heads: () => Promise<readonly SlotHead[]>;
  readonly read: (id: string) => Promise<Slot | undefined>;
  readonly write: (head: SlotHead, slot: Slot) => Promise<void>;
  readonly writeHead: (head: SlotHead) => Promise<void>;
  readonly remove: (id: string) => Promise<void>;
}

const STORES = ["heads", "contents", "openings"] as const;

export function workbookSlots(): Slots {
  let opened: Promise<IDBPDatabase<Kept>> | undefined;
  /** What was last written for a tab, not to be written again. */
  const openings = new Map<string, Opening | undefined>();

  const forget = (): void => {
    opened = undefined;
    openings.clear();
  };
  const database = async (): Promise<IDBPDatabase<Kept>> => {
    opened ??= openDB<Kept>("dutybook-workbooks", 1, {
      upgrade: (made) => {
        for (const store of STORES) made.createObjectStore(store);
      },
      // The browser has cleared its storage, or closed it.
      terminated: forget,
    });
    try {
      return await opened;
    } catch (fault) {
      forget();
      throw fault;
    }
  };

  return {
    heads: async () => {
      const heads = await (await database()).getAll("heads");
      return heads.toSorted((a, b) => b.at - a.at);
    },
    read: async (id) => {
      const tx = (await database()).transaction(STORES);
      const [content, opening] = await Promise.all([
        tx.objectStore("contents").get(id),
        tx.objectStore("openings").get(id),
      ]);
      return content === undefined ? undefined : { ...content, ...(opening === undefined ? {} : { opening }) };
    },
    write: async (head, { opening, ...content }) => {
      const tx = (await database()).transaction(STORES, "readwrite");
      const { id } = head;
      const isWritten = openings.has(id) && openings.get(id) === opening;
      const openingStore = tx.objectStore("openings");
      await Promise.all([
        tx.objectStore("heads").put(head, id),
        tx.objectStore("contents").put(content, id),
        ...(isWritten ? [] : [opening === undefined ? openingStore.delete(id) : openingStore.put(opening, id)]),
        tx.done,
      ]);
      openings.set(id, opening);
    },
    writeHead: async (head) => {
      await (await database()).put("heads", head, head.id);
    },
    remove: async (id) => {
      openings.delete(id);
      const tx = (await database()).transaction(STORES, "readwrite");
      await Promise.all([...STORES.map((store) => tx.objectStore(store).delete(id)), tx.done]);
    },
  };
}
