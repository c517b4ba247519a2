import { expect, it } from "vitest";
import { loadDuty, saveDuty } from "../../../shared/duty/saved.ts";
import { textOfBytes } from "../../../shared/text/encoding.ts";
import { QUARRY } from "../../support/duty-of.ts";

const SAVED = saveDuty(QUARRY);

function bigEndian(text: string): Buffer {
  return Buffer.from(text, "utf16le").swap16();
}

it.each([
  { how: "UTF-8", bytes: Buffer.from(SAVED) },
  { how: "UTF-8 with a byte-order mark", bytes: Buffer.from(`\uFEFF${SAVED}`) },
  { how: "UTF-16, little end first", bytes: Buffer.from(`\uFEFF${SAVED}`, "utf16le") },
  { how: "UTF-16, big end first", bytes: bigEndian(`\uFEFF${SAVED}`) },
  { how: "UTF-16 without a mark", bytes: Buffer.from(SAVED, "utf16le") },
  { how: "UTF-16, big end first, without a mark", bytes: bigEndian(SAVED) },
])("a saved duty is read in $how", ({ bytes }) => {
  expect(loadDuty(textOfBytes(new Uint8Array(bytes)))).toMatchObject({ ok: true, value: QUARRY });
});

it("takes what is no UTF-8 for windows-1252", () => {
  expect(textOfBytes(Uint8Array.from([0x4d, 0xb3, 0x2f, 0x68]))).toBe("M³/h");
});

it("reads a saved duty handed over with its byte-order mark", () => {
  expect(loadDuty(`\uFEFF${SAVED}`)).toMatchObject({ ok: true });
});

it.each([-1, 0, 0.5, 1.5, "2", null])("refuses a saved duty of version %s", (version) => {
  expect(loadDuty(JSON.stringify({ ...JSON.parse(SAVED), version }))).toMatchObject({ ok: false });
});
