import { describe, expect, it } from "vitest";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import { logoOfSize, readLogo } from "../../../shared/duty/logo.ts";
import { loadDuty, saveDuty } from "../../../shared/duty/saved.ts";
import { bytesOf } from "../../../shared/text/base64.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import { QUARRY } from "../../support/duty-of.ts";
import { BASELINE_JPEG, GIF, PROGRESSIVE_JPEG, WEBP, WIDE_PNG } from "../../support/pictures.ts";

function refusal(base64: string): string {
  const found = readLogo(base64);
  return found.ok ? "taken" : found.findings.map((finding) => findingText(finding, "SI")).join(" ");
}

function base64(bytes: Uint8Array | string): string {
  return Buffer.from(bytes).toString("base64");
}

/** The picture with four bytes of it replaced by a number. */
function withNumber(picture: string, at: number, value: number): string {
  const bytes = Buffer.from(picture, "base64");
  bytes.writeUInt32BE(value, at);
  return base64(bytes);
}

describe("a logo", () => {
  // Both were asked for at 120 by 48 pixels.
  it.each([
    ["png", WIDE_PNG],
    ["jpeg", BASELINE_JPEG],
    ["jpeg", PROGRESSIVE_JPEG],
  ])("says kind and size: %s", (type, picture) => {
    expect(readLogo(picture)).toMatchObject({
      ok: true,
      value: { type, widthPx: 120, heightPx: 48, base64: picture },
    });
  });

  it("is read past what a camera puts before the picture", () => {
    // An APP1 segment of 3000 bytes after the start of image, and fill bytes before the next marker: ITU-T T.81, B.1.1.2.
    const bytes = Buffer.from(BASELINE_JPEG, "base64");
    const segment = Buffer.alloc(3002, 0xc0);
    segment.writeUInt16BE(0xffe1, 0);
    segment.writeUInt16BE(3000, 2);
    const longer = Buffer.concat([bytes.subarray(0, 2), segment, Buffer.from([0xff, 0xff]), bytes.subarray(2)]);
    expect(readLogo(base64(longer))).toMatchObject({ ok: true, value: { widthPx: 120, heightPx: 48 } });
  });

  it.each([
    ["a GIF", GIF, "The logo is not taken: it is a GIF picture; save it as PNG or JPEG"],
    ["a WebP", WEBP, "it is a WebP picture; save it as PNG or JPEG"],
    [
      "an SVG",
      base64('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>'),
      "it is a drawing in text form, such as SVG; save it as PNG or JPEG",
    ],
    ["an SVG with a byte order mark", base64("\uFEFF<?xml version='1.0'?><svg/>"), "such as SVG"],
    ["a PDF", base64("%PDF-1.7 and more of it"), "it is a PDF file"],
    ["a text", base64("abc"), "it is no picture of a known kind; save it as PNG or JPEG"],
    ["nothing", "", "it is no picture of a known kind"],
    ["what is no base64", "a logo, please", "what is kept of it is no base64 text"],
    ["half a PNG", base64((bytesOf(WIDE_PNG) as Uint8Array).subarray(0, 600)), "the file breaks off"],
    ["the head of a PNG", base64((bytesOf(WIDE_PNG) as Uint8Array).subarray(0, 33)), "the file breaks off"],
    ["half a JPEG", base64((bytesOf(BASELINE_JPEG) as Uint8Array).subarray(0, 900)), "the file breaks off"],
    ["the start of a JPEG", base64(Uint8Array.of(0xff, 0xd8, 0xff, 0xe0)), "the file breaks off"],
    ["a PNG without width", withNumber(WIDE_PNG, 16, 0), "it does not say its width and height"],
    ["a wide PNG", withNumber(WIDE_PNG, 16, 4001), "it is 4001 by 48 pixels; at most 4000 a side"],
    ["a high PNG", withNumber(WIDE_PNG, 20, 4001), "it is 120 by 4001 pixels; at most 4000 a side"],
  ])("is refused in words: %s", (_, picture, words) => {
    expect(refusal(picture)).toContain(words);
  });

  it("has at most 4000 pixels a side and 200 kB", () => {
    expect(refusal(withNumber(WIDE_PNG, 16, 4000))).toBe("taken");
    const longer = (bytes: number): string => base64(Buffer.concat([Buffer.from(WIDE_PNG, "base64")], bytes)); // What follows the end of a PNG is no part of it.
    expect(refusal(longer(200_000))).toBe("taken");
    for (const bytes of [200_001, 200_002, 200_003]) {
      expect([bytes, refusal(longer(bytes))]).toEqual([bytes, "The logo is not taken: it has 201 kB; at most 200 kB."]);
    }
    expect(logoOfSize(200_000).ok).toBe(true);
    expect(logoOfSize(200_001).ok).toBe(false);
  });
});

describe("a duty with a logo", () => {
  it("keeps it in its saved form, letter for letter", () => {
    const typed = { ...QUARRY, logo: WIDE_PNG };
    const loaded = loadDuty(saveDuty(typed));
    expect(loaded.ok && loaded.value).toEqual(typed);
    expect(decodeDuty(typed).duty.logo).toMatchObject({ type: "png", widthPx: 120, heightPx: 48 });
    expect(decodeDuty(QUARRY).duty.logo).toBeUndefined();
  });

  it("is complete without one that cannot be used, and says so", () => {
    const { duty, findings, isComplete } = decodeDuty({ ...QUARRY, logo: GIF });
    expect([duty.logo, isComplete]).toEqual([undefined, true]);
    expect(findings.get("logo")).toMatchObject([{ code: "logo-refused", kind: "check" }]);
  });
});
