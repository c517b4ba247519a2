import { expect, it } from "vitest";
import { call } from "../../../shared/catalogue/call.ts";
import { entryNamed } from "../../../shared/catalogue/catalogue.ts";
import type { Entry } from "../../../shared/catalogue/entry.ts";
import type { Argument } from "../../../shared/cells/cell.ts";

// Excel on the desktop hands a blank cell of a range over as 0, and one given by itself too where the function takes any value.
function said(id: string, ...args: readonly Argument[]): string {
  const outcome = call(entryNamed(id) as Entry, args);
  return outcome.ok ? "answered" : (outcome.error.message ?? "");
}

it("tells of a 0 in the place of a name that a blank cell may be meant", () => {
  expect(said("DENSITY", 0, 60)).toMatch(
    /^Liquid was given as 0, which is what Excel on the desktop hands over for a blank/,
  );
  expect(said("FRICTIONHEAD", 100, 0, 100)).toMatch(/^Pipe was given as 0, .*; fill it: give/);
});

it("says of one that may be left out that it may", () => {
  expect(said("FRICTIONHEAD", 100, "6in sch40", 100, 0)).toMatch(/leave the argument out, or give/);
  expect(said("BORE", "6in sch40", 0)).toMatch(/^Units was given as 0, .*leave the argument out, or give "US"/);
});

it("leaves a 0 alone where it is an amount or is read", () => {
  expect(said("FRICTIONHEAD", 0, "6in sch40", 100)).not.toMatch(/blank cell/);
  expect(said("DENSITY", "water", 0, "SI")).not.toMatch(/hands over for a blank/);
});
