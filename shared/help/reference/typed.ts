import { QUANTITIES, type Quantity } from "../../../src/basis/quantities.ts";
import { UNITS, type Unit } from "../../../src/basis/units.ts";
import { CASTING_NAMES } from "../../../src/material/casting-name.ts";
import { PIPE_FAMILIES } from "../../../src/pipework/pipe-families.ts";
import { pipesOf } from "../../../src/pipework/pipe-name.ts";
import { SERVICES } from "../../../src/tables/services.ts";
import { parameterName } from "../../catalogue/entry.ts";
import { isRange } from "../../cells/cell.ts";
import { escaped, type Html, list, type Page, section, table } from "../html.ts";
import { inline } from "../links.ts";
import { answerOf, entryOf, workedCall } from "../worked-call.ts";

/** Pages of all that may be typed, each name out of the tables the functions read. */
export const TYPED_PAGES: readonly Page[] = [pipesPage(), fittingsPage(), liquidsPage(), unitsPage(), namesPage()];

function pipesPage(): Page {
  const families = PIPE_FAMILIES.filter(({ sizes }) => sizes.length > 0).map(({ family, sizes }) => {
    const { variant, size, dnSize } = sizes[Math.floor(sizes.length / 2)] as (typeof sizes)[number];
    const name = (printed: string) =>
      [printed, family, variant].filter((part) => part !== undefined && part !== "").join(" ");
    return [
      escaped(family),
      `<code>${escaped(name(size))}</code>${dnSize === undefined ? "" : `, <code>${escaped(name(dnSize))}</code>`}`,
      escaped(sizesOf(family)),
    ];
  });
  return typed(
    "pipes",
    "What to type for a pipe or hose",
    "Nominal size, then family, as one text; every family there is.",
    [
      section(
        "How a name is made",
        list(
          [
            `Size and family: \`8in sch40\`, \`DN200 sch40\`, \`10in HDPE DR17\`, \`6in layflat\`, \`8in suction hose\`. The bore of \`10in HDPE DR17\` is ${answerOf("BORE", ["10in HDPE DR17"])}.`,
            "A condition may follow: `8in sch40 used`, `6in sch40 galvanised`; then a roughness: `8in sch40 rough 0.2 mm`; or a C of Hazen–Williams: `8in sch40 C 120`.",
            "A grade for pressure: `10in HDPE DR17 PE4710`, `250mm HDPE SDR17 PE100`.",
            "Anything measured: `ID 154.1 mm rough 0.045 mm`, or with its wall `OD 168.3 mm wall 4.5 mm steel`.",
            "PIPES lists every size with its dimensions; BORE and the pane name the nearest where a name is not known.",
          ].map(inline),
        ),
      ),
      section("Families", table("Families of pipe and hose", ["Family", "For example", "Sizes"], families)),
    ],
  );
}

/** "1/8in to 24in", of the family's list. */
function sizesOf(family: string): string {
  const found = pipesOf(family);
  if (!found.ok || found.value.length === 0) return "";
  const names = found.value.map(({ name }) => name.split(" ")[0]);
  return names.length === 1 ? (names[0] ?? "") : `${names[0]} to ${names.at(-1)}, ${names.length} in all`;
}

function fittingsPage(): Page {
  return typed(
    "fittings",
    "What to type for fittings",
    "Counts and names, with commas between: 2 elbow 90 long, 1 gate, 1 exit.",
    [
      section(
        "How fittings are written",
        list(
          [
            "`2 elbow 90 long, 1 swing check, 1 gate`: a count before each name; without one it is 1.",
            "`1 exit` stands once, at the end of the discharge line; a suction line begins with its entrance.",
            "A known figure instead: `K 3.2`, `Cv 1000`, `Kv 865`.",
            "FITTINGK gives the coefficient of one, FITTINGHEAD the head of several.",
          ].map(inline),
        ),
      ),
      section("Every fitting", spilledTable("FITTINGS", "Fittings", [0, 1, 2, 3])),
    ],
    ["valve", "elbow", "bend", "tee", "reducer", "strainer", "camlock"],
  );
}

function liquidsPage(): Page {
  return typed(
    "liquids",
    "What to type for a liquid",
    "A name, or a name with its strength, or its figures; solids may follow.",
    [
      section(
        "How a liquid is written",
        list(
          [
            "By name: `water`, `sea water 35 g/kg`, `ethylene glycol 40 %` (by weight).",
            "By its figures: `SG 1.12, 3.5 cP, pv 2.3 kPa`: specific gravity or density, viscosity, vapour pressure.",
            "A slurry: `water with solids 25 %, SG 2.65, d50 0.4 mm`.",
            "The temperature is an argument of its own; its range depends on the liquid.",
          ].map(inline),
        ),
      ),
      section("Liquids known by name", spilledTable("LIQUIDS", "Liquids", [0, 1, 2, 3])),
    ],
    ["glycol", "sea water", "diesel", "oil", "sewage", "brine"],
  );
}

function unitsPage(): Page {
  const dimensions = [...new Set(UNITS.map(({ dimension }) => dimension))];
  const parts = dimensions.map((dimension) => {
    const rows = UNITS.filter((unit: Unit) => unit.dimension === dimension).map(({ symbol, also }: Unit) => [
      `<code>${escaped(symbol)}</code>`,
      escaped(also.join("; ")),
    ]);
    const quantities = (Object.keys(QUANTITIES) as Quantity[]).filter(
      (quantity) => QUANTITIES[quantity].dimension === dimension,
    );
    const sets = quantities.map((quantity) => {
      const { US, SI, METRIC } = QUANTITIES[quantity];
      return `${parameterName(quantity)}: ${US} (US), ${SI} (SI), ${METRIC} (METRIC)`;
    });
    const name = parameterName(dimension);
    const heading = name.charAt(0).toUpperCase() + name.slice(1);
    return section(
      heading,
      `${sets.length === 0 ? "" : list(sets.map(escaped))}\n${table(`Units of ${name}`, ["Unit", "May also be written"], rows)}`,
    );
  });
  return typed(
    "units",
    "Units",
    "Every unit that may be typed behind a number, and the unit of plain numbers in each unit set.",
    [
      `<p>${inline(`A plain number is in the unit of the unit set. A text carries its own: \`45 L/s\` is ${answerOf("INUNITS", ["45 L/s", "gpm"])} US gpm whatever the unit set; INUNITS converts. Gauge and absolute pressure are told apart: \`psig\`, \`psia\`, \`bar(g)\`, \`bar(a)\`; vacuum is written \`9 inHg vac\`.`)}</p>`,
      ...parts,
    ],
    ["convert", "conversion", "gpm", "psi", "metric"],
  );
}

function namesPage(): Page {
  const choices = (id: string, key: string): readonly string[] =>
    entryOf(id).parameters.find(([own]) => own === key)?.[1].choices ?? [];
  const groups: readonly (readonly [heading: string, said: string, names: readonly string[]])[] = [
    ["Services", "What the pump is for: NPSHMARGIN, NOZZLECLASSES and the pane’s box Service.", SERVICES],
    ["Flange materials", "FLANGERATING, FLANGECLASS and the casing’s box.", choices("FLANGERATING", "flangeMaterial")],
    ["Flange classes", "By name or number.", choices("FLANGERATING", "flangeClass")],
    ["Drillings without a rating", "FLANGEDIMENSIONS reads these too.", choices("FLANGEDIMENSIONS", "flangeClass")],
    ["Bolting materials", "BOLTTORQUE.", choices("BOLTTORQUE", "boltGrade")],
    ["Gaskets", "BOLTTORQUE.", choices("BOLTTORQUE", "gasket")],
    ["Pump castings", "CASTINGPROPERTY and MATERIALCHECK.", CASTING_NAMES],
    ["Hardness of solids", "WETTEDPARTS: a word, Mohs 7 or HV 1100.", choices("WETTEDPARTS", "hardness")],
    [
      "Constituents",
      "WETTEDPARTS: what the liquid is, or what else is in it, with commas between.",
      choices("WETTEDPARTS", "constituents"),
    ],
    ["Solids to be primed through", "PRIMINGMETHODS.", choices("PRIMINGMETHODS", "solids")],
  ];
  return typed(
    "names",
    "Materials, classes and other names",
    "Services, flange materials and classes, bolting, castings, constituents: every name the functions read.",
    groups
      .filter(([, , names]) => names.length > 0)
      .map(([heading, said, names]) =>
        section(
          heading,
          `<p>${inline(said)}</p>\n<p class="names">${names.map((name) => `<code>${escaped(name)}</code>`).join(", ")}</p>`,
        ),
      ),
    ["material", "gasket", "bolt", "casting", "service", "chemical"],
  );
}

/** Columns of a list function as a table of the page. */
function spilledTable(id: string, caption: string, columns: readonly number[]): Html {
  const { value } = workedCall(entryOf(id), []);
  const [head = [], ...rows] = isRange(value) ? value : [];
  const shown = (row: readonly unknown[]) => columns.map((column) => escaped(String(row[column] ?? "")));
  return table(
    caption,
    columns.map((column) => String(head[column])),
    rows.map(shown),
  );
}

function typed(
  name: string,
  title: string,
  summary: string,
  parts: readonly Html[],
  words: readonly string[] = [],
): Page {
  return { file: `typed-${name}.html`, kind: "reference", title, summary, words, main: parts.join("\n") };
}
