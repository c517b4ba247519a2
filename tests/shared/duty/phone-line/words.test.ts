import { expect, it } from "vitest";
import { readPhoneLine } from "../../../../shared/duty/phone-line/read-phone-line.ts";
import { mayNameFitting, mayNamePipe } from "../../../../shared/duty/phone-line/words.ts";
import { FITTING_FORMS } from "../../../../src/pipework/fitting-forms.ts";
import { KNOWN_FITTINGS } from "../../../../src/pipework/known-fittings.ts";
import { allPipes } from "../../../../src/pipework/pipe-name.ts";

it("passes over no pipe and no fitting that is known", () => {
  const pipes = [...allPipes("inch"), ...allPipes("metric")].map(({ name }) => name);
  expect(pipes.length).toBeGreaterThan(500);
  expect(pipes.filter((name) => !mayNamePipe(name))).toEqual([]);
  for (const name of [
    "ID 154.1 mm rough 0.045 mm",
    "DN150 EN10220 168.3x4.5",
    "poly 8 DR17",
    "12in DIPS DR17",
    "6in DIP",
    "150 NB sch40",
  ]) {
    expect(mayNamePipe(name), name).toBe(true);
  }
  const fittings = [
    ...KNOWN_FITTINGS.flatMap(({ fitting, also }) => [fitting.name, ...also]),
    ...FITTING_FORMS.map(({ example }) => example),
    ...["K 3.2", "Cv 1000", "2 90s", "3 x 45", "8x6 reducer"],
  ];
  expect(fittings.filter((name) => !mayNameFitting(name))).toEqual([]);
});

it("passes over words that name neither", () => {
  for (const name of ["60 ft up", "abc", "about 1000 gpm"]) expect(mayNamePipe(name), name).toBe(false);
  for (const name of ["abc", "gpm", "the"]) expect(mayNameFitting(name), name).toBe(false);
});

it("reads the longest sentence there is in a moment", () => {
  readPhoneLine("1000 gpm", "US");
  const start = performance.now();
  for (const piece of ["abc ", "20 ft ", "8in hose ", "2 ells, ", "water "]) {
    readPhoneLine(piece.repeat(500 / piece.length), "US");
  }
  // Some 300 ms on an idle machine.
  expect(performance.now() - start).toBeLessThan(6000);
});
