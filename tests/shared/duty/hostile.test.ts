import { describe, expect, it } from "vitest";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import { FIELD_KEYS } from "../../../shared/duty/fields.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";

const HOSTILE = [
  "\u0000",
  "💧".repeat(50),
  "NaN",
  "Infinity",
  "1e400",
  "-1e30",
  "0",
  "-1",
  "0.1",
  "=1+1",
  "__proto__",
  "-",
];

describe.each(SAMPLE_DUTIES)("any text in any box of: $name", ({ duty: typed }) => {
  it.each(HOSTILE)("is read or refused at that box: %s", (text) => {
    for (const key of FIELD_KEYS) {
      const { duty, findings, isComplete } = decodeDuty({ ...typed, fields: { ...typed.fields, [key]: text } });
      const isRefused = findings.get(key)?.some(({ kind }) => kind === "error") ?? false;
      const stands = duty.state[key] === "stated" && duty[key] !== undefined;
      const isUnreadable = duty.state[key] === "unreadable" && duty[key] === undefined;
      expect([key, stands, isUnreadable]).toEqual([key, !isRefused, isRefused]);
      if (isRefused) expect([key, isComplete]).toEqual([key, false]);
    }
  });
});
