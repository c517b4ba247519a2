import { describe, expect, it } from "vitest";
import { FITTING_FORMS } from "../../../src/pipework/fitting-forms.ts";
import { fittingKey } from "../../../src/pipework/fitting-key.ts";
import { fittingNamed, fittingsNamed } from "../../../src/pipework/fitting-name.ts";
import { KNOWN_FITTINGS } from "../../../src/pipework/known-fittings.ts";

function named(text: string): string {
  const found = fittingNamed(text);
  return found.ok ? found.value.name : `${found.findings[0]?.code}`;
}

function counts(text: string): readonly (readonly [number, string])[] {
  const found = fittingsNamed(text);
  if (!found.ok) throw new Error(JSON.stringify(found.findings));
  return found.value.map(({ count, fitting }) => [count, fitting.name]);
}

describe("the name of a fitting", () => {
  it("means one fitting alone", () => {
    const owners = new Map<string, string>();
    for (const { fitting, also } of KNOWN_FITTINGS) {
      for (const name of [fitting.name, ...also]) {
        const key = fittingKey(name);
        expect(owners.get(key) ?? fitting.name, `${name} is also ${owners.get(key)}`).toBe(fitting.name);
        owners.set(key, fitting.name);
      }
    }
    expect(owners.size).toBeGreaterThan(150);
  });

  it("is read back as it is printed", () => {
    for (const { fitting } of KNOWN_FITTINGS) expect(named(fitting.name)).toBe(fitting.name);
    for (const { example } of FITTING_FORMS) expect(named(example)).toBe(example);
  });

  it.each([
    ["90 elbow long", "elbow 90 long"],
    ["LR 90", "elbow 90 long"],
    ["SR 90", "elbow 90 short"],
    ["long sweep 90", "elbow 90 long"],
    ["1.5D bend", "elbow 90 long"],
    ["3D bend", "elbow 90 r/D 3"],
    ["22.5 bend", "elbow 22.5"],
    ["22-1/2° bend", "elbow 22.5"],
    ["22½ bend", "elbow 22.5"],
    ["1/16 bend", "elbow 22.5"],
    ["11-1/4 bend", "elbow 11.25"],
    ["1/8 bend", "elbow 45"],
    ["sluice valve", "gate"],
    ["GV", "gate"],
    ["BFV", "butterfly"],
    ["ARV", "air valve"],
    ["thru tee", "tee run"],
    ["T branch", "tee branch"],
    ["Y", "wye"],
    ["square edge entrance", "entrance square"],
    ["rubber bellows", "flexible connector"],
    ["isolation valve", "fitting-which"],
    ["CV", "fitting-which"],
    ["Long Radius 90° Ell", "elbow 90 long"],
    ["LR ELBOW", "elbow 90 long"],
    ["90 deg bends", "elbow 90"],
    ["45degree elbows", "elbow 45"],
    ["elbows", "elbow 90"],
    ["90° bend r/d = 1.5", "elbow 90 long"],
    ["bend 90 r / D 3", "elbow 90 r/D 3"],
    ["Gate Valves", "gate"],
    ["full-bore ball valve", "ball"],
    ["non return valve", "swing check"],
    ["non-return valves", "swing check"],
    ["NRV", "swing check"],
    ["check valve", "swing check"],
    ["wafer check valve", "wafer check"],
    ["butterfly", "butterfly"],
    ["foot valve", "foot valve"],
    ["branch tee", "tee branch"],
    ["entrance", "entrance square"],
    ["bell mouth", "entrance bell"],
    ["pipe exit", "exit"],
    ["mitered 45", "mitre 45"],
    ["180 return bend", "return bend"],
    ["suction strainer", "strainer"],
    ["3-K gate valve", "3K gate"],
    ["K = 3.2", "K 3.2"],
    ["k 3.2", "K 3.2"],
    ["CV 1000", "Cv 1000"],
  ])("%s is %s", (text, name) => expect(named(text)).toBe(name));

  it.each([
    { text: "2 gaet", near: "gate" },
    { text: "buterfly valve", near: "butterfly" },
    { text: "elbow 45 long", near: "elbow 45" },
  ])("$text is not known, but $near is near", ({ text, near }) => {
    const found = fittingsNamed(text);
    expect(found.findings.map(({ code }) => code)).toEqual(["name-unknown"]);
    expect(found.findings[0]?.suggestions).toContain(near);
  });
});

// Names heard on site, and what each is here.
describe("fittings by the words of the trade", () => {
  it.each([
    ["knife gate", "knife gate"],
    ["knife gate valve", "knife gate"],
    ["slide gates", "knife gate"],
    ["pinch valve", "pinch valve"],
    ["duckbill", "duckbill outfall"],
    ["duckbill check valve", "duckbill outfall"],
    ["ball check valve", "ball check"],
    ["wye", "wye"],
    ["lateral", "wye"],
    ["magmeter", "magmeter"],
    ["flow meter", "magmeter"],
    ["mag flow meter", "name-unknown"],
    ["camlock", "camlock"],
    ["cam and groove", "camlock"],
    ["air valve", "air valve"],
    ["air release valve", "air valve"],
    ["strainer basket", "basket strainer"],
    ["suction basket", "strainer"],
    ["Storz", "Storz coupling"],
    ["eccentric plug valve", "eccentric plug"],
    ["quick-connect aluminum", "quick-connect aluminium"],
  ])("%s is %s", (text, name) => expect(named(text)).toBe(name));

  it.each([
    ["tee", ["tee run", "tee branch"]],
    ["tees", ["tee run", "tee branch"]],
    ["diaphragm valve", ["diaphragm weir", "diaphragm straight"]],
    ["quick-connect", ["quick-connect steel", "quick-connect aluminium"]],
    ["manifold", ["manifold inlet 50 %", "manifold take-off 50 %", "tee branch"]],
    ["reducer", ["reducer 8x6", "reducer from 8in sch40 30 deg"]],
  ])("%s is asked which", (text, suggestions) => {
    expect(fittingsNamed(`2 ${text}`).findings).toMatchObject([{ code: "fitting-which", kind: "error", suggestions }]);
    for (const one of suggestions) expect(fittingNamed(one).ok, one).toBe(true);
  });

  it.each([
    ["elbow 90 x 3", [[3, "elbow 90"]]],
    ["elbow 90 long × 2", [[2, "elbow 90 long"]]],
    ["gate x2", [[2, "gate"]]],
    ["3 no. elbow 45", [[3, "elbow 45"]]],
    ["3 No elbow 45", [[3, "elbow 45"]]],
    ["4 off gate valves", [[4, "gate"]]],
    ["elbow 45, 3 no.", undefined],
    ["two elbows", [[2, "elbow 90"]]],
    [
      "Two elbow 90 long and one gate",
      [
        [2, "elbow 90 long"],
        [1, "gate"],
      ],
    ],
    [
      "2 elbow 90 and 1 swing check",
      [
        [2, "elbow 90"],
        [1, "swing check"],
      ],
    ],
    ["2 cam and groove", [[2, "camlock"]]],
    [
      "1 knife gate & 2 elbow 45, 1 exit",
      [
        [1, "knife gate"],
        [2, "elbow 45"],
        [1, "exit"],
      ],
    ],
    ["2 reducer 10x8", [[2, "reducer 10x8"]]],
    ["reducer 10x8 x 2", [[2, "reducer 10x8"]]],
    ["K 0.3 x 2", [[2, "K 0.3"]]],
  ] as const)("%s counts %j", (text, expected) => {
    const found = fittingsNamed(text);
    expect(found.ok ? found.value.map(({ count, fitting }) => [count, fitting.name]) : undefined).toEqual(expected);
  });

  it.each([
    ["tee dividing run 50 %", "fitting-which"],
    ["tee joining branch 101 %", "out-of-range"],
    ["tee joining branch 0 %", "out-of-range"],
    ["2 gate and 1 nonsense", "name-unknown"],
  ])("%s is refused: %s", (text, code) => expect(fittingsNamed(text).findings[0]?.code).toBe(code));
});

describe("a list of fittings", () => {
  it("has counts, or one for none", () => {
    expect(counts("2 elbow 90 long, 1 gate, swing check; 1 exit\n3x ball, 4 × tee run, 0 globe")).toEqual([
      [2, "elbow 90 long"],
      [1, "gate"],
      [1, "swing check"],
      [1, "exit"],
      [3, "ball"],
      [4, "tee run"],
      [0, "globe"],
    ]);
  });

  it("takes an angle for an angle, not for a count", () => {
    expect(
      counts("90 elbow, 45 elbow, 2 90 elbow, 2 45° elbows, 3 K 2.5, 3K gate, 2 3K gate, 180 return bend"),
    ).toEqual([
      [1, "elbow 90"],
      [1, "elbow 45"],
      [2, "elbow 90"],
      [2, "elbow 45"],
      [3, "K 2.5"],
      [1, "3K gate"],
      [2, "3K gate"],
      [1, "return bend"],
    ]);
  });

  it("may be empty", () => expect([counts(""), counts(" , ;")]).toEqual([[], []]));

  it.each([
    { text: "1.5 gate", code: "not-a-whole-number" },
    { text: "-1 gate", code: "out-of-range" },
    { text: "2 gate, 1.5 ball, 1 nonsense", code: "not-a-whole-number" },
    { text: "Cv 0", code: "out-of-range" },
    { text: "Kv -3", code: "out-of-range" },
    { text: "strainer 100 % blocked", code: "out-of-range" },
    { text: "expander to 8in sch40 181 deg", code: "out-of-range" },
    { text: "expander to 8in sch40 0 deg", code: "out-of-range" },
    { text: "sudden expansion to 8in sch40 20 deg", code: "out-of-range" },
    { text: "hose coupling ID 0 mm", code: "out-of-range" },
    { text: "reducer from 8in sch41", code: "name-unknown" },
  ])("$text is refused: $code", ({ text, code }) => {
    const found = fittingsNamed(text);
    expect(found.ok).toBe(false);
    expect(found.findings[0]?.code).toBe(code);
  });

  it("names the cell that holds the fault, however often the text was read", () => {
    const subjectOf = (text: string, subject: string) =>
      fittingsNamed(text, subject).findings.map((one) => one.subject);
    for (const text of ["2 gate, 1 nothing known", "0.5 gate"]) {
      const [first, second] = ["row 1", "row 2"].map((row) => subjectOf(text, row));
      expect(first).not.toEqual([]);
      expect(second).toEqual(first?.map((subject) => subject.replace("row 1", "row 2")));
    }
    expect(fittingsNamed("2 gate", "row 2")).toEqual(fittingsNamed("2 gate", "row 1"));
  });

  it("names every fault there is", () => {
    expect(fittingsNamed("1.5 gate, 2 gaet, -1 ball").findings).toHaveLength(3);
  });
});

describe("counts as they are typed", () => {
  it.each([
    ["2 LR 90", [[2, "elbow 90 long"]]],
    ["2- 90 LR", [[2, "elbow 90 long"]]],
    ["4 - 45s", [[4, "elbow 45"]]],
    ["4-45s", [[4, "elbow 45"]]],
    [
      "2 90s and 1 gate",
      [
        [2, "elbow 90"],
        [1, "gate"],
      ],
    ],
    ["2 x 45", [[2, "elbow 45"]]],
    ["90 x 2", [[2, "elbow 90"]]],
    ["2 @ 90", [[2, "elbow 90"]]],
    ["2ea 45", [[2, "elbow 45"]]],
    ["(2) 90", [[2, "elbow 90"]]],
    ["long radius elbows (4)", [[4, "elbow 90 long"]]],
    ["2 22.5 bends", [[2, "elbow 22.5"]]],
    ["22.5 bend", [[1, "elbow 22.5"]]],
    ["8x6 reducer", [[1, "8x6 reducer"]]],
    ["2 8x6 reducers", [[2, "8x6 reducers"]]],
  ] as const)("%s", (text, expected) => {
    expect(counts(text)).toEqual(expected);
  });

  it("are none where a number stands alone, which may be a length", () => {
    for (const text of ["90", "45", "22.5", "120"]) expect(fittingsNamed(text).ok, text).toBe(false);
    expect(fittingsNamed("90").findings[0]?.suggestions).toEqual(["elbow 90"]);
  });
});

describe("a fitting that is not known", () => {
  it.each([
    ["1 LR 45", /elbow 45/],
    ["flared inlet", /^entrance/],
    ["5D bend", /elbow|bend/],
    ["HDPE 90", /elbow|bend/],
    ["globe lift 3 way", /globe/],
    ['6" gate valve', /^gate$/],
    ["double orifice air valve", /^air valve$/],
  ])("%s is offered its own kind alone", (text, kind) => {
    const [refused] = fittingsNamed(text).findings;
    expect(refused?.suggestions?.length).toBeGreaterThan(0);
    for (const name of refused?.suggestions ?? []) expect(name).toMatch(kind);
  });

  it("is offered none where its kind is none of the list", () => {
    for (const text of ["puddle flange", "dismantling joint", "pressure reducing valve", "union", "penstock"]) {
      expect(fittingsNamed(text).findings[0]?.suggestions, text).toEqual([]);
    }
  });
});
