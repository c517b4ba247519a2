import { readFileSync } from "node:fs";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { registerCommands } from "../../../taskpane/excel/commands.ts";
import { WorkbookHost } from "../../support/workbook-host.ts";

type Handler = (event: { readonly completed: () => void }) => Promise<void>;

describe("the buttons of the ribbon", () => {
  const commands = new Map<string, Handler>();
  let host: WorkbookHost;

  beforeEach(() => {
    host = new WorkbookHost();
    const actions = { associate: (name: string, handler: Handler) => commands.set(name, handler) };
    Object.assign(globalThis, { Excel: host.Excel, Office: { actions } });
    registerCommands();
  });

  afterEach(() => {
    Reflect.deleteProperty(globalThis, "Office");
    commands.clear();
  });

  it("are those of the manifest", () => {
    const named = [...readFileSync("manifest.xml", "utf8").matchAll(/<FunctionName>(\w+)<\/FunctionName>/g)];
    expect([...commands.keys()]).toEqual(named.map(([, name]) => name));
  });

  it.each([
    { why: "when all went well", fault: undefined },
    { why: "when Excel refused", fault: { sync: 1, at: "before" } as const },
  ])("let Excel go on $why", async ({ fault }) => {
    host.fault = fault;
    const completed = vi.fn();
    const done = commands.get("repairFunctions")?.({ completed });
    if (fault === undefined) await done;
    else await expect(done).rejects.toThrow();
    expect(completed).toHaveBeenCalledOnce();
    expect(host.syncs.length).toBeGreaterThan(0);
  });

  it("are nothing outside Office", () => {
    Reflect.deleteProperty(globalThis, "Office");
    expect(() => registerCommands()).not.toThrow();
  });
});
