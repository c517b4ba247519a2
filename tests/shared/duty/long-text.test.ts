import { expect, it } from "vitest";
import { layOut } from "../../../shared/calc-sheet/layout.ts";
import { LONGEST_TEXT } from "../../../shared/cells/long-text.ts";
import { textIn, withTextIn } from "../../../shared/duty/boxes.ts";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import { FIELD_KEYS, FIELDS } from "../../../shared/duty/fields.ts";
import { workedDuty } from "../../../shared/package/worked-duty.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import { dutyText, QUARRY } from "../../support/duty-of.ts";
import { hostilePlaces } from "../../support/hostile-places.ts";

const TEXTS = ["1".repeat(32_766), "1,".repeat(16_383), `1${" ".repeat(32_763)}ft`, "K(".repeat(16_383)];

it("refuses too long a text in any box that is read for an amount or a name", () => {
  const read = FIELD_KEYS.filter((key) => FIELDS[key].kind !== "text" && FIELDS[key].takesNoOther !== true);
  expect(read.length).toBeGreaterThan(100);
  for (const key of read) {
    for (const text of TEXTS) {
      const outcome = FIELDS[key].read(text, "US", FIELDS[key].label);
      expect(outcome.ok, key).toBe(false);
      expect(outcome.findings.map((finding) => findingText(finding, "US")).join(" "), key).toMatch(
        /is a text of \d+ letters; at most 500 are read/,
      );
    }
  }
});

it("refuses one in each box of a line, and leaves the others as they are", () => {
  const duty = dutyText({});
  for (const column of ["pipe", "length", "fittings", "share", "level"]) {
    const place = `suctionLine.0.${column}`;
    for (const text of [`${" ".repeat(LONGEST_TEXT + 1)}x`, ...TEXTS]) {
      const { findings } = decodeDuty(withTextIn(duty, place, text));
      const said = (findings.get(place) ?? []).map((finding) => findingText(finding, "US")).join(" ");
      expect(said, column).toMatch(column === "share" || text.trim().length > 500 ? /at most 500 are read/ : /./);
    }
  }
  expect(textIn(withTextIn(duty, "suctionLine.0.share", "x"), "suctionLine.0.share")).toBe("x");
});

it("takes a free text of any length", () => {
  const long = "The customer's own words. ".repeat(200);
  expect(decodeDuty(withTextIn(dutyText({}), "project", long)).findings.get("project")).toBeUndefined();
});

it("stands in every box at once, and the sheet is laid out with its errors", () => {
  for (const text of TEXTS) {
    const places = hostilePlaces(QUARRY).map(({ key }) => key);
    const duty = places.reduce((typed, place) => withTextIn(typed, place, text), QUARRY);
    const { plan, worked } = workedDuty(decodeDuty(duty).duty);
    expect(layOut(plan, worked).wanted.length).toBeGreaterThan(0);
  }
});
