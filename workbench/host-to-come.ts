import { HostFault } from "../shared/ports/host-fault.ts";
import type { SheetHost } from "../shared/ports/sheet-host.ts";
import type { GridHost } from "./grid-host.ts";

/** The grid as the pane asks it. */
type PaneHost = Pick<GridHost, keyof SheetHost>;

/** A host whose grid comes after the pane: what is asked of it meanwhile waits, and fails in words while there is none. */
export interface HostToCome {
  readonly host: PaneHost;
  readonly arrived: (host: PaneHost) => void;
  /** It did not come. It still may, and is then asked from there on. */
  readonly failed: () => void;
}

interface Waiting {
  readonly give: (host: PaneHost) => void;
  /** Left out by one who waits however long it takes. */
  readonly refuse?: (fault: HostFault) => void;
}

export function hostToCome(): HostToCome {
  let there: PaneHost | undefined;
  let hasFailed = false;
  let waiting: Waiting[] = [];
  const refusal = (): HostFault => new HostFault("The spreadsheet is not loaded.", "Press “Try again” in its place.");
  const grid = (): Promise<PaneHost> => {
    if (there !== undefined) return Promise.resolve(there);
    if (hasFailed) return Promise.reject(refusal());
    return new Promise((give, refuse) => {
      waiting.push({ give, refuse });
    });
  };
  const gridAtLast = (): Promise<PaneHost> =>
    there === undefined ? new Promise((give) => waiting.push({ give })) : Promise.resolve(there);
  const callbacks = new Map<() => void, (() => void) | undefined>();
  return {
    host: {
      kind: "workbench",
      addSheets: async (set) => (await grid()).addSheets(set),
      sheetNames: async () => (await grid()).sheetNames(),
      read: async (refs) => (await grid()).read(refs),
      write: async (values) => (await grid()).write(values),
      onCalculated: (callback) => {
        callbacks.set(callback, there?.onCalculated(callback));
        return () => {
          callbacks.get(callback)?.();
          callbacks.delete(callback);
        };
      },
      selection: {
        cell: async () => (await grid()).selection.cell(),
        enter: async (reference, formula, mayReplace) => (await grid()).selection.enter(reference, formula, mayReplace),
      },
      holdsPictures: () => true,
      holdsRecords: () => true,
      // Where there is no sheet there is nothing to say of duties on it.
      recorded: async () => (await gridAtLast()).recorded(),
    },
    arrived: (host) => {
      there = host;
      for (const callback of callbacks.keys()) callbacks.set(callback, host.onCalculated(callback));
      for (const { give } of waiting) give(host);
      waiting = [];
      // Whoever was refused before looks once more.
      if (hasFailed) for (const callback of callbacks.keys()) callback();
      hasFailed = false;
    },
    failed: () => {
      hasFailed = true;
      for (const { refuse } of waiting) refuse?.(refusal());
      waiting = waiting.filter(({ refuse }) => refuse === undefined);
    },
  };
}
