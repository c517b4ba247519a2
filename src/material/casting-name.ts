import { nearestNames } from "../basis/nearest.ts";
import { fail, type Result, succeed } from "../basis/result.ts";
import { inBritish } from "../basis/spelling.ts";
import { CASTINGS, type Casting } from "../tables/materials-cast.ts";

/** Spellings beside id, name, specification and UNS number, as `tidy` leaves them; without a grade, "takenAs". */
const ALSO: Readonly<Record<string, { readonly exact: readonly string[]; readonly takenAs: readonly string[] }>> = {
  DI: {
    exact: ["a536", "654512", "ductileiron654512"],
    takenAs:
      "ductile nodulariron sgiron engjs4007 gjs4007 engjs40015 gjs40015 engjs40018 gjs40018 engjs5007 gjs5007 engjs6003 gjs6003 ggg40 ggg403 ggg50 ggg60".split(
        " ",
      ),
  },
  DI395: { exact: ["a395", "604018", "ductileirona395"], takenAs: [] },
  GI: {
    exact: ["a4830", "a4830b", "greyiron30"],
    takenAs: "a48 a126 a126b castiron greycastiron engjl250 gjl250 engjl200 gjl200 gg25 gg20".split(" "),
  },
  HCWI: {
    exact: ["a532iiia", "a532iiitypea", "a532classiiitypea"],
    takenAs: ["highchrome", "highchromeiron", "hichrome", "chromeiron", "whiteiron", "a532", "25cr"],
  },
  "316C": {
    exact: ["cf8m", "a743cf8m", "a744cf8m", "a351cf8m", "cast316"],
    takenAs: "316 316ss 316stainless 316stainlesssteel stainless316 cf3m 14408 14409".split(" "),
  },
  "1B": {
    exact: ["cd4mcun", "a8901b", "a9951b", "a890gr1b", "a995gr1b"],
    takenAs: "duplex duplexstainless duplexstainlesssteel 14470 14517".split(" "),
  },
  "1A": { exact: ["cd4mcu", "a8901a"], takenAs: [] },
  NAB: {
    exact: ["b148c95800", "c95800"],
    takenAs: ["aluminiumbronze", "b148", "cc333g"],
  },
  WCB: {
    exact: ["a216wcb"],
    takenAs: "carbonsteel caststeel steel a216 wcc lcc gp240gh 10619 gsc25".split(" "),
  },
  CA6NM: { exact: ["a743ca6nm", "134", "13cr4ni"], takenAs: ["13cr", "14317"] },
};

/** One way of writing: no case, spaces or hyphens, nor the words for a standards body or a grade. */
function tidy(text: string): string {
  return inBritish(text.toLowerCase())
    .replace(/\b(?:astm|asme|uns|grade|gr\.?|class|type)\b/g, " ")
    .replace(/[\s._\-,/()%]/g, "");
}

interface Spelling {
  readonly casting: Casting;
  readonly isExact: boolean;
}

const bySpelling = new Map<string, Spelling>(
  CASTINGS.flatMap((casting) => {
    const { exact, takenAs } = ALSO[casting.id] ?? { exact: [], takenAs: [] };
    const sure = [casting.id, casting.name, casting.specification, casting.uns, ...exact];
    return [
      ...takenAs.map((name) => [tidy(name), { casting, isExact: false }] as const),
      ...sure.map((name) => [tidy(name), { casting, isExact: true }] as const),
    ];
  }),
);

export const CASTING_NAMES: readonly string[] = CASTINGS.map(({ name }) => name);

/**
 * The casting a text names: by common name, specification, grade or UNS number.
 * Fails: `name-unknown` with the nearest names.
 * Warns: caution with the grade that a name without one is taken as.
 */
export function castingNamed(text: string, subject: string): Result<Casting> {
  const found = bySpelling.get(tidy(text.slice(0, 100)));
  if (found !== undefined) {
    const { casting, isExact } = found;
    if (isExact) return succeed(casting);
    const facts = { specification: casting.specification };
    return succeed(casting, [{ code: "casting-taken-as", kind: "check", subject, given: text.trim(), facts }]);
  }
  const near = nearestNames(text.slice(0, 100), [
    ...CASTING_NAMES,
    ...CASTINGS.map(({ specification }) => specification),
  ]);
  const suggestions = near.length > 0 ? near : ["ductile iron", "CF8M", "CD4MCuN", "high-chrome white iron"];
  return fail([{ code: "name-unknown", kind: "error", subject, given: text.trim(), suggestions }]);
}
