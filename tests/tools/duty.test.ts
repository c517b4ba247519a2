import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { loadDuty, saveDuty } from "../../shared/duty/saved.ts";
import { dutyText, QUARRY } from "../support/duty-of.ts";
import { type Edit, fileOf, typed } from "../support/opened-again.ts";
import { started } from "../support/terminal.ts";

const folder = mkdtempSync(join(tmpdir(), "duty-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const [BOOK, OUT, SAVED] = ["book.xlsx", "out.json", "duty.json"].map((name) => join(folder, name)) as [
  string,
  string,
  string,
];

async function ran(name: string, ...args: readonly string[]) {
  const command = started(name, ...args);
  command.end();
  const { code, lines, errors } = await command.ended;
  return { code, said: lines.join("\n"), errors };
}

function opened() {
  const duty = loadDuty(readFileSync(OUT, "utf8"));
  return duty.ok ? duty.value : undefined;
}

describe("npm run duty", () => {
  it("brings back the duty that npm run sheet wrote, letter for letter", async () => {
    writeFileSync(SAVED, saveDuty(QUARRY));
    expect((await ran("sheet", SAVED, BOOK)).code).toBe(0);
    expect(await ran("duty", BOOK, OUT)).toMatchObject({ code: 0, errors: "" });
    expect(readFileSync(OUT, "utf8")).toBe(saveDuty(QUARRY));
  });

  it("says what was changed on the sheet, and what wants to be looked at", async () => {
    writeFileSync(BOOK, fileOf(QUARRY, typed("flow", 1300), typed("total_head", 50)));
    const { code, said } = await ran("duty", BOOK, OUT);
    expect(code).toBe(0);
    expect(said).toMatch(
      /Changed on the sheet:\n {2}Flow: .*, now 1300\nTo look at:\n {2}Total dynamic head was overwritten with 50/,
    );
    expect(opened()?.fields.flow).toBe("1300");
  });

  it("opens no duty from a copy of results", async () => {
    writeFileSync(SAVED, saveDuty(dutyText()));
    await ran("sheet", SAVED, BOOK, "values");
    const { code, errors } = await ran("duty", BOOK, OUT);
    expect(code).toBe(1);
    expect(errors).toContain("holds no duty that can be opened again");
  });

  it("asks for the sheet where there are several, and says why one cannot be had", async () => {
    const copied: Edit = (sheets) => [...sheets, ...sheets.slice(0, 1).map((sheet) => ({ ...sheet, name: "Copy" }))];
    writeFileSync(BOOK, fileOf(dutyText(), copied));
    expect((await ran("duty", BOOK, OUT)).errors).toContain("holds the duties of “Duty”, “Copy”");
    expect((await ran("duty", BOOK, OUT, "copy")).code).toBe(0);
  });

  it.each([
    ["nothing there", "none.xlsx"],
    ["no workbook", "duty.json"],
  ])("refuses %s in words", async (_, name) => {
    const { code, errors } = await ran("duty", join(folder, name), OUT);
    expect(code).toBe(1);
    expect(errors).toContain("cannot be read");
    expect(errors).not.toMatch(/^\s+at /m);
  });
});
