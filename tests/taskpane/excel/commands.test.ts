import { readFileSync } from "node:fs";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { registerCommands } from "../../../taskpane/excel/commands.ts";

type Handler = (event: { readonly completed: () => void }) => Promise<void>;

describe("the buttons of the ribbon", () => {
  const commands = new Map<string, Handler>();
  const showAsTaskpane = vi.fn();
  const repairFunctions = vi.fn();

  beforeEach(() => {
    showAsTaskpane.mockReset().mockResolvedValue(undefined);
    repairFunctions.mockReset().mockResolvedValue(undefined);
    const actions = { associate: (name: string, handler: Handler) => commands.set(name, handler) };
    Object.assign(globalThis, { Office: { actions, addin: { showAsTaskpane } } });
    registerCommands({ repairFunctions });
  });

  afterEach(() => {
    Reflect.deleteProperty(globalThis, "Office");
    commands.clear();
  });

  it("are those of the manifest", () => {
    const named = [...readFileSync("manifest.xml", "utf8").matchAll(/<FunctionName>(\w+)<\/FunctionName>/g)];
    expect([...commands.keys()]).toEqual(named.map(([, name]) => name));
  });

  it("show the pane, do their work there and let Excel go on", async () => {
    const completed = vi.fn();
    await commands.get("repairFunctions")?.({ completed });
    expect(showAsTaskpane).toHaveBeenCalledBefore(repairFunctions);
    expect(repairFunctions).toHaveBeenCalledBefore(completed);
    expect(completed).toHaveBeenCalledOnce();
  });

  it("do their work where the pane cannot be shown", async () => {
    showAsTaskpane.mockRejectedValue(new Error("not here"));
    await commands.get("repairFunctions")?.({ completed: vi.fn() });
    expect(repairFunctions).toHaveBeenCalledOnce();
  });

  it("let Excel go on when the work failed", async () => {
    repairFunctions.mockRejectedValue(new Error("refused"));
    const completed = vi.fn();
    await expect(commands.get("repairFunctions")?.({ completed })).rejects.toThrow("refused");
    expect(completed).toHaveBeenCalledOnce();
  });

  it("are nothing outside Office", () => {
    Reflect.deleteProperty(globalThis, "Office");
    expect(() => registerCommands({ repairFunctions })).not.toThrow();
  });
});
