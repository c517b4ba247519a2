import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { DutyText } from "../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import { saveDuty } from "../../shared/duty/saved.ts";
import { workedDuty } from "../../shared/package/worked-duty.ts";
import { readWorkbook } from "../../shared/xlsx/read-workbook.ts";
import { dutyRead, dutyText, type Fields, QUARRY } from "../support/duty-of.ts";
import { started } from "../support/terminal.ts";

// The command itself, as another program sees it.

const folder = mkdtempSync(join(tmpdir(), "duties-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function line(duty: DutyText, id?: unknown): string {
  return JSON.stringify({ ...JSON.parse(saveDuty(duty)), ...(id === undefined ? {} : { id }) });
}

interface Answer {
  readonly id?: unknown;
  readonly figures?: Readonly<Record<string, { value?: number; unit?: string; text?: string }>>;
  readonly findings?: readonly { kind: string; text: string; at: string }[];
  readonly verdicts?: readonly {
    readonly of: string;
    readonly state: string;
    readonly text: string;
    readonly found?: { value: number; unit: string };
    readonly limit?: { value: number; unit: string };
  }[];
  readonly missing?: readonly string[];
  readonly error?: string;
  readonly at?: readonly string[];
  readonly sheet?: { readonly file?: string; readonly error?: string };
}

async function answersTo(lines: readonly string[], ...args: readonly string[]): Promise<readonly Answer[]> {
  const run = started("duties", ...args);
  run.end(lines.join("\n"));
  const { lines: answers, code, errors } = await run.ended;
  expect(errors).toBe("");
  const read = answers.map((answer) => JSON.parse(answer) as Answer);
  expect(code).toBe(read.some(({ error, sheet }) => error !== undefined || sheet?.error !== undefined) ? 1 : 0);
  return read;
}

describe("duties from the terminal", () => {
  // 100 ft lifted from 0 ft at no friction margin; water of 62.37 lb/ft³ at 15 °C.
  const small: Fields = { temperature: "59 °F", altitude: "0" };
  let answers: readonly Answer[];
  beforeAll(async () => {
    answers = await answersTo([
      line(dutyText(small), "P-1"),
      line(dutyText({ ...small, flow: "" }), 2),
      line(dutyText({ ...small, temperature: "cold", altitude: "70 psi" })),
      line(QUARRY, { nested: true }),
      "{}",
      "no duty",
      line(dutyText({ ...small, ...({ flwo: "3" } as Fields) }), "typing error"),
    ]);
  });

  it("answers each line in order with its own id", () => {
    expect(answers.map(({ id }) => id)).toEqual([
      "P-1",
      2,
      undefined,
      { nested: true },
      undefined,
      undefined,
      "typing error",
    ]);
  });

  it("gives every figure of the sheet in the duty's unit set, with its unit", () => {
    const { figures = {}, missing } = answers[0] as Answer;
    expect(missing).toEqual([]);
    expect(figures["staticHead"]).toEqual({ value: 100, unit: "ft" });
    // Velocity in 8 in schedule 40 (7.981 in, ASME B36.10M) at 600 US gpm: 0.4085 × 600 / 7.981² = 3.848 ft/s.
    expect(figures["dischargeLine.0.velocity"]?.value).toBeCloseTo(3.848, 3);
    expect(figures["dischargeLine.0.velocity"]?.unit).toBe("ft/s");
    expect(figures["density"]?.value).toBeCloseTo(62.37, 2);
    for (const figure of Object.values(answers[3]?.figures ?? {})) expect(figure.value).not.toBeNull();
  });

  it("names what is missing and still gives what does not need it", () => {
    const { figures = {}, missing, error } = answers[1] as Answer;
    expect(missing).toEqual(["flow"]);
    expect(error).toBeUndefined();
    expect(figures["staticHead"]?.value).toBe(100);
    expect(figures["totalHead"]).toBeUndefined();
  });

  it("says what cannot be read and in which boxes, and gives no figure beside it", () => {
    const { error, at, figures } = answers[2] as Answer;
    expect(at).toEqual(["temperature", "altitude"]);
    expect(error).toMatch(/temperature is not a number: “cold”.*altitude.*psi/);
    expect(figures).toBeUndefined();
  });

  it("says of a line that is no duty what it is not", () => {
    expect(answers[4]).toEqual({ error: expect.stringContaining("“format”"), at: [], line: 5 });
    expect(answers[5]).toEqual({ error: "The line is not JSON.", at: [], line: 6 });
  });

  it("says which field it does not know, with the nearest known", () => {
    const said = answers[6]?.findings?.find(({ text }) => text.includes("flwo"));
    expect(said).toEqual({
      kind: "Check",
      text: expect.stringContaining("the nearest known: flow") as string,
      at: "saved duty",
    });
  });

  it("gives each finding once with the rows it concerns, the gravest first", () => {
    const findings = answers[3]?.findings ?? [];
    const kinds = ["Safety", "Limit", "Check", "Assumed"];
    const order = findings.map(({ kind }) => kinds.indexOf(kind));
    expect(order).toEqual([...order].sort());
    expect(new Set(findings.map(({ kind, text }) => kind + text)).size).toBe(findings.length);
    // The hose bend of the sample stands in the suction line, so total head and NPSH available both rest on it.
    const bend = findings.find(({ text }) => text.startsWith("Hose bend"));
    expect(bend?.at).toMatch(/(?:^|; )Total dynamic head; NPSH available/);
  });

  it("writes the workbooks beside, over none that stands there already", async () => {
    const tag = "P-101A/B";
    const lines = [line(QUARRY, tag), line(QUARRY, tag), line(dutyText({ flow: "" }), "not complete")];
    const written = await answersTo(lines, "--sheets", folder);
    const files = ["P-101A B 2.xlsx", "P-101A B.xlsx"];
    expect(readdirSync(folder).sort()).toEqual(files);
    expect(written.map(({ sheet }) => sheet?.file).sort()).toEqual([
      ...files.map((file) => join(folder, file)),
      undefined,
    ]);
    const workbook = readWorkbook(new Uint8Array(readFileSync(join(folder, "P-101A B.xlsx"))));
    expect(workbook.ok).toBe(true);
  });

  it("says how it is called where it is called otherwise", async () => {
    const run = started("duties", "--sheet", folder);
    run.end();
    const { code, errors } = await run.ended;
    expect(code).toBe(2);
    expect(errors).toMatch(/^Usage: npm run -s duties/);
  });

  it("answers every sample without an error, with the verdicts of its calc sheet", async () => {
    const found = await answersTo(SAMPLE_DUTIES.map(({ duty, name }) => line(duty, name)));
    expect(found.map(({ id }) => id)).toEqual(SAMPLE_DUTIES.map(({ name }) => name));
    found.forEach(({ error, missing, verdicts = [] }, i) => {
      expect(error).toBeUndefined();
      expect(missing).toEqual([]);
      const { cells } = workedDuty(dutyRead((SAMPLE_DUTIES[i] as (typeof SAMPLE_DUTIES)[number]).duty)).worked;
      const onSheet = [...cells].flatMap(([key, cell]) => (/^verdictOn\w+\.0\.text$/.test(key) ? [cell] : []));
      expect(onSheet.length).toBeGreaterThan(2);
      // What waits for the same pump stands in one row of the sheet.
      expect([...new Set(verdicts.map(({ text }) => text))]).toEqual(onSheet);
    });
  });

  it("judges with the figure that decides and its limit", async () => {
    // An engine of 10 hp on the quarry's pump, which takes some 40 hp: whatever the site leaves of it, it is short.
    const fields = { ...QUARRY.fields, engineRating: "10 hp" };
    const [answer] = await answersTo([line({ ...QUARRY, fields })]);
    const driver = answer?.verdicts?.find(({ of }) => of === "driver");
    expect(driver).toMatchObject({ state: "fail", found: { unit: "hp" }, limit: { unit: "hp" } });
    expect(driver?.found?.value).toBeLessThan(10.001);
    expect(driver?.limit?.value).toBeGreaterThan(30);
  });
});
