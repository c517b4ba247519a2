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
    { text: "tee", near: "tee branch" },
    { text: "reducer", near: "reducer from 8in sch40 30 deg" },
    { text: "buterfly valve", near: "butterfly" },
    { text: "elbow 45 long", near: "elbow 45" },
  ])("$text is not known, but $near is near", ({ text, near }) => {
    const found = fittingsNamed(text);
    expect(found.findings.map(({ code }) => code)).toEqual(["name-unknown"]);
    expect(found.findings[0]?.suggestions).toContain(near);
  });
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

  it("names every fault there is", () => {
    expect(fittingsNamed("1.5 gate, 2 gaet, -1 ball").findings).toHaveLength(3);
  });
});
