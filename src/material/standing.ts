import { CELSIUS_ZERO } from "../basis/constants.ts";
import { amount } from "../basis/result.ts";
import { greatestOf } from "../numeric/extremes.ts";
import type { StandingColumn } from "../tables/constituents.ts";
import { CONSTITUENTS, type Constituent } from "./constituent.ts";
import { type Judgement, judge, worstOf } from "./judgement.ts";
import { type Level, mildest, severest, severity } from "./level.ts";
import type { NamedLiquid } from "./make-up.ts";
import { exceptionOf } from "./row-exceptions.ts";
import type { WettedDuty } from "./wetted-duty.ts";

/** One liquid of all that a duty may mean. */
export interface Exact {
  readonly pH: number;
  /** K */
  readonly temperature: number;
  /** kg/m³ */
  readonly chlorides: number;
  readonly isStanding: boolean;
}

/** The rules of a material that know no names: each says what it has to say of an exact liquid. */
export interface Screens {
  readonly pH: (at: Exact) => readonly Judgement[];
  readonly heat: (at: Exact) => readonly Judgement[];
  readonly chlorides: (at: Exact) => readonly Judgement[];
  /** Chlorides speak inside the row of a named liquid too (stainless steel, which goes by the figure). */
  readonly isStainless?: true;
  /** What is said where neutral water is taken as plain because nothing names it. */
  readonly takenAsPlain: readonly Judgement[];
}

/** What a duty may leave open, and a material hang on. */
export type Open =
  | "pH"
  | "chlorides"
  | "temperature"
  | "solids"
  | "what the liquid is"
  | "what the faces are"
  | "what the rubber is";

/** What stands between the best and the worst that the duty may mean. */
export interface Standing {
  /** Level at the worst, which it is ranked by. */
  readonly worst: Level;
  readonly best: Level;
  /** What is said at the worst. */
  readonly judgements: readonly Judgement[];
  /** What would have to be stated to tell the best from the worst. */
  readonly decides: readonly Open[];
  /** Of all the liquids an unstated one may be, how many rule the material out. */
  readonly ruledOutBy: number;
}

type Range = readonly [least: number, greatest: number];

const celsius = (reading: number): number => reading + CELSIUS_ZERO;

/** What unstated inputs may be where no named liquid narrows them: 5 to 90 °C, chloride to 200 g/L (house choice). */
const ANY: Readonly<Record<"pH" | "chlorides" | "temperature", Range>> = {
  pH: [0, 14],
  chlorides: [0, 200],
  temperature: [celsius(5), celsius(90)],
};
/** Neutral water, in which an unstated make-up is taken as none. */
const NEUTRAL: Range = [6, 9];
/** Between these pH a screen speaks of any metal; beyond them only the name of a liquid does. */
const SCREENED: Range = [4, 11];
/** Row ranges of chloride up to here are those of waters, whose stainless steel goes by the figure. */
const WATERS = 10;

const holds = ([least, greatest]: Range, value: number): boolean => value >= least && value <= greatest;

/** What a material stands of everything the duty may mean: of each named liquid, or of every one it may be. */
export function standing(column: StandingColumn, duty: WettedDuty, screens: Screens): Standing {
  const { makeUp } = duty;
  if (makeUp === null) return unnamed(column, duty, screens);
  const added = makeUp.named.filter(isAdded);
  const liquids = makeUp.named.filter((one) => !isAdded(one));
  const rows = (named: NamedLiquid): Standing => {
    const meant = meaningsOf(named, duty);
    return oneOf(meant.map((row) => ofRow(row, column, duty, screens, "named")));
  };
  return together([...(liquids.length === 0 ? [ofScreens(duty, screens)] : liquids.map(rows)), ...added.map(rows)]);
}

const isAdded = ({ meanings }: NamedLiquid): boolean => meanings.every(({ row }) => row.isAdded);

/** Several things at once: the worst of each. */
export function together(parts: readonly Standing[]): Standing {
  return {
    worst: severest(parts.map(({ worst }) => worst)),
    best: severest(parts.map(({ best }) => best)),
    judgements: parts.flatMap(({ judgements }) => judgements),
    decides: [...new Set(parts.flatMap(({ decides }) => decides))],
    ruledOutBy: Math.max(0, greatestOf(parts.map(({ ruledOutBy }) => ruledOutBy))),
  };
}

/** One thing of several, and it is not known which. */
export function oneOf(parts: readonly Standing[], what: Open = "what the liquid is"): Standing {
  const worst = severest(parts.map((one) => one.worst));
  const told = parts.find((one) => one.worst === worst) as Standing;
  const differ = parts.some((one) => one.worst !== worst || one.best !== told.best);
  return {
    worst,
    best: mildest(parts.map((one) => one.best)),
    judgements: told.judgements,
    decides: [...new Set<Open>([...(differ ? [what] : []), ...told.decides])],
    ruledOutBy: parts.filter((one) => one.worst === "out").length,
  };
}

/** The rows a name means as far as pH, temperature and chlorides tell, in that order. */
export function meaningsOf({ meanings }: NamedLiquid, duty: WettedDuty): readonly Constituent[] {
  const { pH, temperature, chlorides } = duty;
  const isStanding = duty.makeUp?.isStanding === true;
  const narrowed = [
    (row: Constituent) => pH === null || holds(row.pH, pH),
    (row: Constituent, above = 0) =>
      temperature === null || (temperature <= row.hottest && temperature > above) || (isStanding && above > 0),
    (row: Constituent) => chlorides === null || holds(row.chlorides, chlorides),
  ].reduce((left, fits) => {
    const fitting = left.filter(({ row, above }) => fits(row, above));
    return fitting.length > 0 ? fitting : left;
  }, meanings);
  return narrowed.map(({ row }) => row);
}

/**
 * Nothing is named. Neutral water is taken as plain, and no better than with care; else it may be any liquid of the table
 * whose ranges hold what is stated, or plain water.
 */
function unnamed(column: StandingColumn, duty: WettedDuty, screens: Screens): Standing {
  const { pH, chlorides } = duty;
  const plain = ofScreens(duty, screens);
  if (pH !== null && holds(NEUTRAL, pH)) return together([plain, spoken(screens.takenAsPlain)]);
  const possible = CONSTITUENTS.filter(
    (row) =>
      row.name !== DOSED &&
      (pH === null || holds(row.pH, pH)) &&
      (chlorides === null || holds(row.chlorides, chlorides)),
  );
  const any = oneOf([plain, ...possible.map((row) => ofRow(row, column, duty, screens, "possible"))]);
  return { ...any, decides: any.worst === any.best ? any.decides : [...openOf(duty), "what the liquid is"] };
}

/** Oxidisers have a box of their own, and are below 2 mg/L where it is blank: not what a liquid may be by chance. */
const DOSED = "oxidiser solutions";

/** A standing without a range: what is said, said flatly. */
export function spoken(judgements: readonly Judgement[]): Standing {
  const level = worstOf(judgements);
  return { worst: level, best: level, judgements, decides: [], ruledOutBy: level === "out" ? 1 : 0 };
}

/** What a temperature means over all that the duty may have. */
export function overHeat(duty: WettedDuty, judged: (temperature: number) => readonly Judgement[]): Standing {
  const { makeUp, temperature } = duty;
  const hottest = (makeUp?.named ?? [])
    .filter((one) => !isAdded(one))
    .flatMap((one) => meaningsOf(one, duty))
    .map((row) => row.hottest);
  const range: Range = hottest.length === 0 ? ANY.temperature : [ANY.temperature[0], greatestOf(hottest)];
  const still = { ...ANY, pH: [MILD_PH, MILD_PH], chlorides: [0, 0], temperature: range } as const;
  return overBox(boxOf({ ...duty, pH: null, chlorides: null, temperature }, still), duty, (at) =>
    judged(at.temperature),
  );
}

function ofScreens(duty: WettedDuty, screens: Screens): Standing {
  const box = boxOf(duty, ANY);
  return overBox(box, duty, (at) => [...screens.pH(at), ...screens.heat(at), ...screens.chlorides(at)]);
}

function ofRow(
  row: Constituent,
  column: StandingColumn,
  duty: WettedDuty,
  screens: Screens,
  because: "named" | "possible",
): Standing {
  const isBase = !row.isAdded;
  const hottest = because === "named" && isBase ? row.hottest : ANY.temperature[1];
  const temperature: Range = [Math.min(ANY.temperature[0], hottest), hottest];
  const box = boxOf(duty, isBase || because === "possible" ? { ...row, temperature } : ANY);
  return overBox(box, duty, (at) => [
    ...rowJudgements(row, column, at, screens),
    ...(!isBase
      ? [...screens.pH(at), ...screens.heat(at), ...screens.chlorides(at)]
      : [
          ...(holds(row.pH, at.pH) ? [] : screens.pH(at)),
          ...(at.temperature <= row.hottest ? [] : hotterThan(row, at, screens)),
          ...(at.chlorides > row.chlorides[1] || isByFigure(row, at, screens) ? screens.chlorides(at) : []),
        ]),
  ]);
}

/** Stainless steel in waters goes by its limit of chloride, inside the row of the water too. */
function isByFigure({ pH, chlorides }: Constituent, at: Exact, { isStainless }: Screens): boolean {
  return isStainless === true && chlorides[1] <= WATERS && pH[1] > SCREENED[0] && at.pH >= SCREENED[0];
}

/** Above the temperature of its row a water goes by the screens; of acid and alkali nothing speaks any more. */
function hotterThan(row: Constituent, at: Exact, screens: Screens): readonly Judgement[] {
  const found = amount("temperature", at.temperature);
  const limit = { quantity: "temperature", value: row.hottest, side: "at most" } as const;
  const isWater = row.pH[0] >= SCREENED[0] && row.pH[1] <= SCREENED[1];
  return isWater
    ? screens.heat(at)
    : [
        ...screens.heat(at),
        judge("unknown", { code: "constituent-hotter", found, limit, facts: { constituent: row.name } }),
      ];
}

function rowJudgements(row: Constituent, column: StandingColumn, at: Exact, screens: Screens): readonly Judgement[] {
  const level = exceptionOf(row, column, at) ?? row.stands[column];
  const code = {
    fine: "constituent-stands",
    limited: "chemical-with-care",
    unknown: "chemical-not-judged",
    out: "chemical-rules-out",
  } as const;
  const byRow = judge(level, { code: code[level], facts: { constituent: row.name }, cites: row.cites });
  // What the row rules out, the pH may say why.
  return level === "out" ? [byRow, ...screens.pH(at).filter((one) => one.level === "out")] : [byRow];
}

type Box = Readonly<Record<"pH" | "chlorides" | "temperature", Range>>;

/** What is stated, and the range of what is not. */
function boxOf({ pH, chlorides, temperature }: WettedDuty, otherwise: Box): Box {
  const given = (value: number | null, range: Range): Range => (value === null ? range : [value, value]);
  return {
    pH: given(pH, otherwise.pH),
    chlorides: given(chlorides, otherwise.chlorides),
    temperature: given(temperature, otherwise.temperature),
  };
}

/** pH at which a metal stands best, that the mildest of a range is found too. */
const MILD_PH = 7;

const ends = ([least, greatest]: Range): readonly number[] => (least === greatest ? [least] : [least, greatest]);

/** The best and the worst over a box: levels worsen towards its corners, and are mildest at neutral pH. */
function overBox(box: Box, duty: WettedDuty, judged: (at: Exact) => readonly Judgement[]): Standing {
  const isStanding = duty.makeUp?.isStanding === true;
  const [least, greatest] = box.pH;
  const values = {
    pH: least < MILD_PH && greatest > MILD_PH ? [least, MILD_PH, greatest] : ends(box.pH),
    chlorides: ends(box.chlorides),
    temperature: ends(box.temperature),
  };
  const corners = values.pH.flatMap((pH) =>
    values.chlorides.flatMap((chlorides) =>
      values.temperature.map((temperature) => {
        const at = { pH, chlorides, temperature, isStanding };
        const judgements = judged(at);
        return { at, judgements, level: worstOf(judgements) };
      }),
    ),
  );
  const worst = corners.reduce((one, other) => (severity(other.level) > severity(one.level) ? other : one));
  const best = mildest(corners.map(({ level }) => level));
  const decides = (["pH", "chlorides", "temperature"] as const).filter((open) =>
    corners.some(
      ({ at, level }) =>
        level !== worst.level &&
        at[open] !== worst.at[open] &&
        (["pH", "chlorides", "temperature"] as const).every((other) => other === open || at[other] === worst.at[other]),
    ),
  );
  return {
    worst: worst.level,
    best,
    judgements: worst.judgements,
    decides: decides.length > 0 || best === worst.level ? decides : openOf(duty),
    ruledOutBy: worst.level === "out" ? 1 : 0,
  };
}

/** Where no single datum decides, all of them together do. */
function openOf({ pH, chlorides, temperature }: WettedDuty): readonly Open[] {
  return [
    ...(pH === null ? (["pH"] as const) : []),
    ...(chlorides === null ? (["chlorides"] as const) : []),
    ...(temperature === null ? (["temperature"] as const) : []),
  ];
}
