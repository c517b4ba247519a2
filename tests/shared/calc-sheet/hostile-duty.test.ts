import { describe, expect, it } from "vitest";
import { dutyPlan, fieldsNotUsed, PACKAGE_SECTIONS } from "../../../shared/calc-sheet/duty-plan.ts";
import { tableCell } from "../../../shared/calc-sheet/expression.ts";
import { type CalcSheetPlan, isExpression } from "../../../shared/calc-sheet/plan.ts";
import { type Argument, isCellError, isRange } from "../../../shared/cells/cell.ts";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import type { Duty } from "../../../shared/duty/duty.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { FIELD_KEYS, FIELDS } from "../../../shared/duty/fields.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { costParts } from "../../../shared/package/cost-parts.ts";
import { flangeFaces } from "../../../shared/package/flange-faces.ts";
import { headAndSuction } from "../../../shared/package/head-and-suction.ts";
import { powerLadder } from "../../../shared/package/power-ladder.ts";
import { pumpOnDuty } from "../../../shared/package/pump-on-duty.ts";
import { risingWater } from "../../../shared/package/rising-water.ts";
import { settlingRuns } from "../../../shared/package/settling.ts";
import { shownSection } from "../../../shared/package/shown-section.ts";
import { solidsMap } from "../../../shared/package/solids-map.ts";
import { stagePressures } from "../../../shared/package/stage-pressures.ts";
import { workedDuty } from "../../../shared/package/worked-duty.ts";
import { QUARRY } from "../../support/duty-of.ts";
import {
  filledUp,
  HOSTILE,
  type HostilePlace,
  hostilePlaces,
  isAt,
  othersFor,
  UNREADABLE,
} from "../../support/hostile-places.ts";
import { readTooEarly } from "../../support/plan-order.ts";
import { STATION } from "../../support/station-duty.ts";

const SAND = (SAMPLE_DUTIES[3] as (typeof SAMPLE_DUTIES)[number]).duty;

const WITH_OTHERS = { name: "the quarry with a further pump and two cases", duty: STATION };

/** The samples, the two with a pump with every box filled, by either driver, in series, flooded, and a station with cases. */
const DUTIES: readonly { readonly name: string; readonly duty: DutyText }[] = [
  ...SAMPLE_DUTIES,
  { name: "the quarry, every box filled, engine", duty: filledUp(QUARRY) },
  {
    name: "the quarry, every box filled, motor, three in series, flooded",
    // Lifted as high as three pumps lift the flow.
    duty: filledUp(QUARRY, {
      driver: "motor",
      pumpLevel: "90",
      deliveryLevel: "360",
      leastStaticHead: "255",
      greatestStaticHead: "270",
      pumpsRunning: "3",
      arrangement: "series",
    }),
  },
  { name: "the sand plant, every box filled", duty: filledUp(SAND, { pumpLevel: "5" }) },
  WITH_OTHERS,
];

/** Some hundreds of duties are worked out, on a machine that may be busy, ms. */
const PATIENCE = 300_000;

type Cells = ReadonlyMap<string, Argument>;

function dutyRead(typed: DutyText): Duty {
  return decodeDuty(typed).duty;
}

function cellsOf(typed: DutyText): Cells {
  return workedDuty(dutyRead(typed)).worked.cells;
}

interface WorkedText {
  readonly cells: Cells;
  /** Cells that show what was typed, at its own place or again beside the page: no answers. */
  readonly echoes: ReadonlySet<string>;
}

const NOTHING: WorkedText = { cells: new Map(), echoes: new Set() };

function workedOf(typed: DutyText): WorkedText {
  const { plan, worked } = workedDuty(dutyRead(typed));
  return { cells: worked.cells, echoes: new Set(plan.items.flatMap(echoesOf)) };
}

function echoesOf(item: CalcSheetPlan["items"][number]): readonly string[] {
  if (item.kind === "input") return [item.key];
  if (item.kind === "line") {
    return item.rows.flatMap((row, i) =>
      item.stated.flatMap(({ key }) => (isExpression(row[key]) ? [] : [tableCell(item.key, i, key)])),
    );
  }
  if (item.kind !== "working") return [];
  return item.columns.flatMap(({ key, cells }) =>
    typeof cells === "function"
      ? Array.from({ length: item.rows }, (_, row) => row)
          .filter((row) => cells(row)?.op === "value")
          .map((row) => tableCell(item.key, row, key))
      : [],
  );
}

/** A cell that holds no answer, or one that is no number. */
function isBad(cell: Argument | undefined): boolean {
  if (cell === undefined) return true;
  if (typeof cell === "number") return !Number.isFinite(cell);
  if (isRange(cell)) return cell.flat().some(isBad);
  return isCellError(cell) && (cell.message ?? "").startsWith("Not worked out for this duty");
}

function findFaults(typed: DutyText): readonly string[] {
  const duty = dutyRead(typed);
  const { plan, worked } = workedDuty(duty);
  const faults = [...worked.cells].filter(([, cell]) => isBad(cell)).map(([key]) => key);
  headAndSuction(duty, workedDuty(duty));
  pumpOnDuty(duty);
  for (const picture of PICTURES) picture(duty);
  for (const { id } of PACKAGE_SECTIONS) {
    const said = JSON.stringify(shownSection(duty, id) ?? "");
    if (/NaN|undefined|Infinity|\[object/.test(said)) faults.push(`section ${id}`);
  }
  return [...faults, ...readTooEarly(plan)];
}

const PICTURES = [costParts, flangeFaces, powerLadder, risingWater, settlingRuns, solidsMap, stagePressures];

/** A text that reads as another reads is worked out once. */
function readingsOf(place: HostilePlace): readonly DutyText[] {
  const readings = new Map<string, DutyText>();
  for (const text of HOSTILE) {
    const typed = place.holding(text);
    readings.set(JSON.stringify(dutyRead(typed), withoutText), typed);
  }
  return [...readings.values()];
}

/** What is kept of a text beside what it was read as: the text itself, in rows, cases and findings. */
const AS_TYPED = new Set(["texts", "typed", "given", "suggestions"]);

function withoutText(key: string, part: unknown): unknown {
  return AS_TYPED.has(key) ? undefined : part;
}

describe.each([...SAMPLE_DUTIES, WITH_OTHERS])("any text in any box of: $name", ({ duty }) => {
  // The fields stand in the samples: of the station its rows, pumps and cases.
  const places = hostilePlaces(duty).filter(({ key }) => duty !== STATION || key.includes("."));

  it(
    "is worked out as far as it goes, every cell with an answer or a reason",
    () => {
      const faults = places.flatMap((place) =>
        readingsOf(place).flatMap((typed) => findFaults(typed).map((fault) => `${place.key}: ${fault}`)),
      );
      expect(faults).toEqual([]);
    },
    PATIENCE,
  );
});

describe.each(DUTIES)("an unreadable box of: $name", ({ duty }) => {
  const places = hostilePlaces(duty);
  const own = once(() => cellsOf(duty));
  const withouts = new Map(places.map((place) => [place.key, once(() => workedOf(place.holding(UNREADABLE)))]));
  const withoutAt = ({ key }: HostilePlace): WorkedText => withouts.get(key)?.() ?? NOTHING;

  it(
    "lets no figure stand that belongs to another text in it",
    () => {
      const standing: string[] = [];
      let compared = 0;
      for (const place of places) {
        const readable = [place.own, ...othersFor(place)].filter((text) => isRead(place, text));
        // Blank against stated tells what a section is there for, not what hangs on the text.
        const texts = [...readable.filter((text) => text !== ""), ...readable].slice(0, 2);
        // A figure of the slurry beside two others is none the box can hold.
        if (texts.length < 2 && OF_SLURRY.has(place.key)) continue;
        expect([place.key, texts.length]).toEqual([place.key, 2]);
        const [a, b] = texts.map((text) => (text === place.own ? own() : cellsOf(place.holding(text)))) as [
          Cells,
          Cells,
        ];
        const without = withoutAt(place);
        for (const key of new Set([...a.keys(), ...b.keys()])) {
          const answers = [a.get(key), b.get(key)];
          if (answers.some((answer) => answer !== undefined && isRange(answer)) || same(answers[0], answers[1]))
            continue;
          compared += 1;
          if (without.echoes.has(key) || ALONG_A_CURVE.test(key)) continue;
          const left = without.cells.get(key);
          // The lists of findings move up a row where one is gone. An open verdict is no answer, and a worse one may
          // stand on another part; that one passes may not.
          if (OF_SLURRY.has(place.key) && BESIDE_SLURRY.test(key)) continue;
          if (
            // Where no operating point is known the power is that to the end of the curve, whatever is typed.
            /^(?:reached|powersReached|clearPower)/.test(key) ||
            // Nor is a check valve counted that cannot be read: the careful side.
            (place.key.endsWith("fittings") && /checkValve|standing|case$/.test(key)) ||
            LISTS.test(key) ||
            OF_THE_REST.test(key) ||
            isOfLaterRow(key, left, [a, b]) ||
            // The speed that would give a case its flow is one and the same; what runs at it waits.
            (place.key === "speedControl" && /^case(?:\d+SpeedTable\.|Running\.\d+\.reach$)/.test(key)) ||
            // What other cases say of their own pipe.
            (/^cases\.\d+\.pipe$/.test(place.key) && /^cases\.\d+\.pipe$/.test(key)) ||
            // Without a check valve that can be read the greater pressure counts: the careful side.
            (place.key.endsWith("fittings") &&
              /^case(?:Nozzles|NozzlesWorst|Pressures)\./.test(key) &&
              isGreatest(left, answers)) ||
            (typeof left === "string" &&
              /^(?:\? open|open|not known .*|Open: .*|(?:Fails|Check): .*|[✗!] .*|)$/.test(left))
          )
            continue;
          if (typeof left === "number" || (typeof left === "string" && answers.includes(left))) {
            standing.push(`${place.key}: ${key} ${left}, of ${answers.map(shown).join(" and ")}`);
          }
        }
      }
      expect(standing).toEqual([]);
      expect(compared).toBeGreaterThan(500);
    },
    PATIENCE,
  );

  it(
    "leaves total head and NPSH available standing wherever they do not hang on it",
    () => {
      for (const place of places) {
        const { cells } = withoutAt(place);
        const isLine = (line: string): boolean => place.key.startsWith(line);
        // They make the liquid as pumped, of which both are.
        if (OF_SLURRY.has(place.key)) continue;
        const ofHead =
          OF_BOTH.has(place.key) ||
          isOfLines(place, duty) ||
          OF_HEAD.has(place.key) ||
          isLine("dischargeLine") ||
          isLine("suctionLine");
        const ofNpsh =
          OF_BOTH.has(place.key) || isOfLines(place, duty) || OF_NPSH.has(place.key) || isLine("suctionLine");
        expect([place.key, typeof cells.get("totalHead"), typeof cells.get("npshAvailable")]).toEqual([
          place.key,
          ofHead ? "object" : "number",
          ofNpsh ? "object" : "number",
        ]);
        // What stands is what stood: no figure of a duty without the box.
        for (const key of [...(ofHead ? [] : ["totalHead"]), ...(ofNpsh ? [] : ["npshAvailable"])]) {
          expect([place.key, key, cells.get(key)]).toEqual([place.key, key, own().get(key)]);
        }
      }
    },
    PATIENCE,
  );
});

const OF_BOTH = new Set(["flow", "sourceLevel", "sourcePressure", "liquid", "temperature"]);

/** What a line carries hangs on how many pumps share the flow, and the levels of its rows on where it starts. */
function isOfLines({ key }: HostilePlace, { fields, otherPumps = [], dischargeLine }: DutyText): boolean {
  if (key === "pumpsRunning") return fields.arrangement !== "series";
  if (key === "arrangement") return !["", "1"].includes(fields.pumpsRunning) || otherPumps.length > 0;
  return key === "pumpLevel" && dischargeLine.some(({ level = "" }) => level !== "");
}
const OF_SLURRY = new Set([
  "solids",
  "solidsByVolume",
  "solidsGravity",
  "slurryGravity",
  "medianSize",
  "coarseSize",
  "fines",
]);
const OF_HEAD = new Set(["deliveryLevel", "deliveryPressure"]);
const OF_NPSH = new Set(["pumpLevel", "altitude"]);

const LISTS =
  /^(?:notes|found|graveFindings|assumed|confirm|criteria|verdicts\.|verdictCount|pipeRuns|lineVacuum|stationStates|stationNpsh|statedPart|materialCheck|dutyStates|bellStates|atBell)/;
/** Of the states that have a figure: the words beside name those that have none. */
const OF_THE_REST = /^(?:worstOfStates|worstBellRow|routeFill|caseVelocities|pressureAlong)(?:Figures|Marks)\./;
/** The flows at which a curve is drawn. */
const ALONG_A_CURVE = /Lost\.\d+\.at$|Curve\.\d+\.flow$/;
/** Of the clear liquid, or of no liquid at all. */
const BESIDE_SLURRY = /^(?:flush|clear|slurryCurve|upwardSlope)/;

function isGreatest(left: ReturnType<Cells["get"]>, answers: readonly ReturnType<Cells["get"]>[]): boolean {
  return typeof left === "number" && answers.every((answer) => typeof answer === "number" && answer <= left);
}

/** Of a table that lost a row above this one, such as a state that only a stated number of pumps has. */
function isOfLaterRow(key: string, left: ReturnType<Cells["get"]>, both: readonly Cells[]): boolean {
  const [, table = "", row, column = ""] = /^(.+)\.(\d+)\.(\w+)$/.exec(key) ?? [];
  if (row === undefined || left === undefined) return false;
  const later = (cells: Cells): boolean => {
    for (let at = Number(row) + 1; cells.has(`${table}.${at}.${column}`); at += 1) {
      if (same(cells.get(`${table}.${at}.${column}`), left)) return true;
    }
    return false;
  };
  return both.every(later);
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

function isRead(place: HostilePlace, text: string): boolean {
  const { findings } = decodeDuty(place.holding(text));
  return ![...findings].some(([key, list]) => isAt(key, place) && list.some(({ kind }) => kind === "error"));
}

function same(a: Argument | undefined, b: Argument | undefined): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

function shown(answer: Argument | undefined): string {
  return JSON.stringify(answer) ?? "nothing";
}

describe("a supply voltage that cannot be read", () => {
  it("takes the current of the motor with it, and nothing else", () => {
    const motor = filledUp(QUARRY, { driver: "motor", supplyVoltage: "460" });
    const whole = cellsOf(motor);
    const without = cellsOf({ ...motor, fields: { ...motor.fields, supplyVoltage: "230 furlongs" } });
    const waits = { error: "#N/A", message: "Waits for Supply voltage.", waitsFor: "Supply voltage" };
    for (const key of ["motorCurrent", "startingCurrent"]) {
      expect([key, typeof whole.get(key), without.get(key)]).toEqual([key, "number", waits]);
    }
    const others = ["totalHead", "npshAvailable", "operatingFlow", "greatestPressure", "primeTime"];
    for (const key of others) {
      expect([key, typeof whole.get(key), without.get(key)]).toEqual([key, "number", whole.get(key)]);
    }
    const materials = [...whole].filter(([key]) => key.startsWith("wettedParts."));
    expect(materials.length).toBeGreaterThan(20);
    for (const [key, cell] of materials) expect([key, without.get(key)]).toEqual([key, cell]);
  });
});

describe("a box whose step is withheld", () => {
  it.each([
    ["pH", { fields: { ...QUARRY.fields, temperature: UNREADABLE } }, "Waits for Liquid temperature."],
    [
      "greatestStaticHead",
      { pump: { ...QUARRY.pump, speed: UNREADABLE } as DutyText["pump"] },
      "Waits for the selected pump.",
    ],
    ["engineRating", { fields: { ...QUARRY.fields, driver: UNREADABLE } }, "Waits for Driver."],
  ] as const)("%s says what it waits for, not that something is to be stated", (key, change, reason) => {
    const duty = dutyRead({ ...QUARRY, ...change } as DutyText);
    const unused = fieldsNotUsed(duty, workedDuty(duty).plan.items);
    expect(unused.find((one) => one.key === key)?.reason).toBe(reason);
  });
});

const VARIATIONS: readonly { readonly name: string; readonly of: (typed: DutyText) => DutyText }[] = [
  { name: "as it is", of: (typed) => typed },
  { name: "without a pump", of: ({ pump: _, ...typed }) => typed },
  { name: "by a motor", of: (typed) => ({ ...typed, fields: { ...typed.fields, driver: "motor" } }) },
  { name: "by an engine", of: (typed) => ({ ...typed, fields: { ...typed.fields, driver: "engine" } }) },
  {
    name: "without the efficiency of the curve",
    of: ({ pump, ...typed }) => ({
      ...typed,
      ...(pump && { pump: { ...pump, points: pump.points.map((point) => ({ ...point, efficiency: "" })) } }),
    }),
  },
];

describe.each(DUTIES)("$name", ({ duty }) => {
  it.each(VARIATIONS)("$name, loses nothing stated in silence, and reads nothing before it is placed", ({ of }) => {
    const typed = of(duty);
    const read = dutyRead(typed);
    const plan = dutyPlan(read);
    expect(readTooEarly(plan)).toEqual([]);
    const stands = new Set(plan.items.flatMap((item) => (item.kind === "input" ? [item.of ?? item.key] : [])));
    const said = new Map(fieldsNotUsed(read, plan.items).map(({ key, reason }) => [key, reason]));
    const inWords = JSON.stringify(plan.items);
    for (const key of FIELD_KEYS.filter((field) => typed.fields[field].trim() !== "")) {
      const isFound =
        stands.has(key) ||
        /[a-z]{3}/.test(said.get(key) ?? "") ||
        (key === "paper" && plan.paper === typed.fields[key]) ||
        (FIELDS[key].kind === "text" && inWords.includes(typed.fields[key].trim()));
      expect([key, isFound]).toEqual([key, true]);
    }
  });
});
