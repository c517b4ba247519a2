import { describe, expect, it } from "vitest";
import { HostFault } from "../../shared/ports/host-fault.ts";
import type { GridHost } from "../../workbench/grid-host.ts";
import { hostToCome } from "../../workbench/host-to-come.ts";

/** A host of one sheet; `calculate` tells whoever listens. */
function grid(): { readonly host: GridHost; readonly calculate: () => void } {
  const listening = new Set<() => void>();
  const host = {
    sheetNames: async () => ["Pump house"],
    selection: { cell: async () => "Pump house!C7" },
    onCalculated: (callback: () => void) => {
      listening.add(callback);
      return () => listening.delete(callback);
    },
  } as unknown as GridHost;
  return {
    host,
    calculate: () => {
      for (const callback of listening) callback();
    },
  };
}

describe("a host whose grid comes after the pane", () => {
  it("keeps waiting whoever asks before, and answers once the grid is there", async () => {
    const { host, arrived } = hostToCome();
    let answer: readonly string[] | undefined;
    const asked = host.sheetNames().then((names) => {
      answer = names;
    });
    await Promise.resolve();
    expect(answer).toBeUndefined();
    arrived(grid().host);
    await asked;
    expect(answer).toEqual(["Pump house"]);
    expect(await host.sheetNames()).toEqual(["Pump house"]);
    expect(await host.selection.cell()).toBe("Pump house!C7");
  });

  it("refuses in words where the grid could not be had, those who wait and those who ask after", async () => {
    const { host, failed } = hostToCome();
    const waiting = host.sheetNames();
    failed();
    await expect(waiting).rejects.toThrow("The spreadsheet is not loaded.");
    await expect(host.addSheets({} as never)).rejects.toBeInstanceOf(HostFault);
  });

  it("keeps waiting, without a refusal, what looks for duties on sheets: where none is there is nothing to say", async () => {
    const { host, failed, arrived } = hostToCome();
    const told: string[] = [];
    const look = (when: string): Promise<void> =>
      host.recorded().then(
        () => void told.push(`${when}: read`),
        () => void told.push(`${when}: refused`),
      );
    const asked = [look("before")];
    failed();
    asked.push(look("after"));
    await expect(host.sheetNames()).rejects.toBeInstanceOf(HostFault);
    expect(told).toEqual([]);
    arrived({ ...grid().host, recorded: async () => ({ records: [], sheets: [] }) });
    await Promise.all(asked);
    expect(told).toEqual(["before: read", "after: read"]);
  });

  it("answers after all where the grid comes at a second try, and has those look again who were refused", async () => {
    const { host, failed, arrived } = hostToCome();
    let told = 0;
    host.onCalculated(() => {
      told += 1;
    });
    failed();
    arrived(grid().host);
    expect(told).toBe(1);
    expect(await host.sheetNames()).toEqual(["Pump house"]);
  });

  it("tells of calculations whoever listens, from before the grid or after, until it is let go", () => {
    const { host, arrived } = hostToCome();
    const { host: there, calculate } = grid();
    const told = { before: 0, after: 0, gone: 0 };
    host.onCalculated(() => {
      told.before += 1;
    });
    host.onCalculated(() => {
      told.gone += 1;
    })();
    arrived(there);
    const stop = host.onCalculated(() => {
      told.after += 1;
    });
    calculate();
    stop();
    calculate();
    expect(told).toEqual({ before: 2, after: 1, gone: 0 });
  });
});
