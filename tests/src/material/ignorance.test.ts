import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CONSTITUENTS } from "../../../src/material/constituent.ts";
import { severity } from "../../../src/material/level.ts";
import { BOLTS, hardwareStanding, LINES } from "../../../src/material/line-and-bolts.ts";
import { materialChoice } from "../../../src/material/material-choice.ts";
import { castingStanding, hardPartsFor } from "../../../src/material/metal-choice.ts";
import { sealStanding } from "../../../src/material/seal-choice.ts";
import { elastomerStanding } from "../../../src/material/soft-parts.ts";
import type { WettedDuty } from "../../../src/material/wetted-duty.ts";
import { ELASTOMERS } from "../../../src/tables/elastomers.ts";
import { CASTINGS } from "../../../src/tables/materials-cast.ts";
import { SEAL_FACES } from "../../../src/tables/seal-faces.ts";
import { makeUpOf, particleOf, wettedDuty } from "../../support/make-up.ts";

const PARTICLES = [null, particleOf("soft"), particleOf("limestone"), particleOf("quartz"), particleOf("alumina")];

/** How severe the worst is for every material, by name. */
function severities(duty: WettedDuty): ReadonlyMap<string, number> {
  const hardParts = hardPartsFor(duty);
  return new Map([
    ...CASTINGS.map((one) => [one.name, severity(castingStanding(one, duty, hardParts).worst)] as const),
    ...ELASTOMERS.map((one) => [one.name, severity(elastomerStanding(one, duty).worst)] as const),
    ...SEAL_FACES.map((one) => [one.name, severity(sealStanding(one, duty).worst)] as const),
    ...[...BOLTS, ...LINES].map((one) => [one.name, severity(hardwareStanding(one, duty).worst)] as const),
  ]);
}

function expectNoneRises(known: WettedDuty, unknown: WettedDuty, what: string): void {
  const before = severities(known);
  for (const [name, now] of severities(unknown)) {
    expect(now, `${name} without ${what}: ${JSON.stringify({ ...known, makeUp: null })}`).toBeGreaterThanOrEqual(
      before.get(name) as number,
    );
  }
}

/** What a row of the table may be, inside its own ranges: nothing that is stated contradicts its name. */
const consistent = fc
  .record({
    row: fc.constantFrom(...CONSTITUENTS.filter(({ isAdded }) => !isAdded), null),
    pH: fc.double({ min: 0, max: 1, noNaN: true }),
    chlorides: fc.double({ min: 0, max: 1, noNaN: true }),
    temperature: fc.double({ min: 0, max: 1, noNaN: true }),
    solids: fc.constantFrom(0, 0.0005, 0.03, 0.1, 0.3, 0.4),
    particle: fc.constantFrom(...PARTICLES),
  })
  .map(({ row, pH, chlorides, temperature, solids, particle }): WettedDuty => {
    const at = (share: number, [least, most]: readonly [number, number]) => least + share * (most - least);
    return wettedDuty({
      pH: at(pH, row?.pH ?? [0, 14]),
      chlorides: at(chlorides, row?.chlorides ?? [0, 25]),
      temperature: at(temperature, [278.15, row?.hottest ?? 363.15]),
      solids,
      // Of alumina and the like no unstated solids are: 40 % of quartz is the worst taken.
      particle: particle?.name === "alumina" ? (PARTICLES[3] ?? null) : particle,
      makeUp: makeUpOf(row?.name ?? "nothing else"),
    });
  });

describe("knowing less", () => {
  it.each(["pH", "chlorides", "temperature", "solids", "particle"] as const)(
    "of %s never lets a material rise",
    (key) => {
      fc.assert(
        fc.property(consistent, (duty) => expectNoneRises(duty, { ...duty, [key]: null }, key)),
        { numRuns: 150 },
      );
    },
  );

  // In neutral water an unstated make-up is taken as plain, so the law is of what lies outside it.
  it("of the make-up never lets a material rise outside neutral water", () => {
    const outside = consistent.filter(({ pH }) => pH !== null && (pH < 6 || pH > 9));
    fc.assert(
      fc.property(outside, (duty) => expectNoneRises(duty, { ...duty, makeUp: null }, "make-up")),
      { numRuns: 150 },
    );
  });

  it("of everything at once leaves nothing that is offered", () => {
    const blank = wettedDuty({ pH: null, chlorides: null, temperature: null, solids: null, makeUp: null });
    const found = materialChoice(blank);
    if (!found.ok) throw new Error("refused");
    for (const { verdict, parts } of found.value.wetEnd) {
      expect(verdict).toBe("not judged");
      expect(parts).toBe("");
    }
    expect(found.findings.find(({ code }) => code === "no-material-given")).toMatchObject({
      facts: { missing: expect.stringContaining("pH") },
    });
  });

  it("never puts first what is not judged while anything suits", () => {
    fc.assert(
      fc.property(
        consistent,
        fc.subarray(["pH", "chlorides", "temperature", "solids", "makeUp"] as const),
        (duty, gone) => {
          const known = Object.fromEntries(gone.map((key) => [key, null]));
          const found = materialChoice({ ...duty, ...known });
          if (!found.ok) return;
          const metals = found.value.wetEnd.slice(0, -1).map(({ verdict }) => verdict.startsWith("suits"));
          expect(metals).toEqual(metals.toSorted((a, b) => Number(b) - Number(a)));
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe("a harder liquid", () => {
  const worse = (duty: WettedDuty, change: Partial<WettedDuty>) =>
    expectNoneRises(duty, { ...duty, ...change }, "less");
  const unnamed = fc.record({
    pH: fc.double({ min: 4, max: 9, noNaN: true }),
    chlorides: fc.double({ min: 0, max: 25, noNaN: true }),
    temperature: fc.double({ min: 278.15, max: 363.15, noNaN: true }),
    solids: fc.double({ min: 0.001, max: 0.6, noNaN: true }),
    particle: fc.constantFrom(...PARTICLES),
  });
  const more = fc.double({ min: 0, max: 1, noNaN: true });

  it.each(["chlorides", "solids", "temperature"] as const)("in its %s never improves a material", (key) => {
    const most = { chlorides: 200, solids: 0.69, temperature: 373 }[key];
    fc.assert(
      fc.property(unnamed, more, (change, share) => {
        const duty = wettedDuty(change);
        worse(duty, { [key]: change[key] + share * Math.max(0, most - change[key]) });
      }),
      { numRuns: 120 },
    );
  });

  it("in its acidity, down to pH 4, never improves a material", () => {
    const acid = unnamed.filter(({ pH }) => pH <= 7);
    fc.assert(
      fc.property(acid, more, (change, share) => worse(wettedDuty(change), { pH: 4 + (1 - share) * (change.pH - 4) })),
      { numRuns: 120 },
    );
  });

  // Below pH 4 a metal that a neutral limit would rule out is not judged any more; irons and faces only worsen.
  it("below pH 4 never improves an iron, steel, face or elastomer", () => {
    fc.assert(
      fc.property(unnamed, fc.double({ min: 0, max: 4, noNaN: true }), (change, pH) => {
        const [before, after] = [wettedDuty(change), wettedDuty({ ...change, pH })].map(severities);
        for (const [name, now] of after ?? []) {
          if (/316|duplex|13Cr|bronze/.test(name)) continue;
          expect(now, name).toBeGreaterThanOrEqual(before?.get(name) as number);
        }
      }),
      { numRuns: 120 },
    );
  });
});
