import { describe, expect, it } from "vitest";
import { elastomersNamed, lineNamed, sealFacesNamed } from "../../../src/material/part-name.ts";
import { wettedMetalNamed } from "../../../src/material/wetted-metal.ts";
import { pipesOf } from "../../../src/pipework/pipe-name.ts";
import { PRESSURE_MATERIAL_NAMES, pressureMaterialNamed } from "../../../src/pressure/pressure-material.ts";
import { CASTINGS } from "../../../src/tables/materials-cast.ts";

describe("the metal of a casing", () => {
  it("is read by every name that a flange is rated by", () => {
    for (const name of PRESSURE_MATERIAL_NAMES) expect(wettedMetalNamed(name, "casing").ok, name).toBe(true);
  });

  it("is any that the ranking names", () => {
    for (const { name, id } of CASTINGS) {
      expect(wettedMetalNamed(name, "casing"), name).toMatchObject({ value: { casting: { id } } });
    }
  });

  it.each([
    ["A536", "DI"],
    ["A395 65-45-15", "DI"],
    ["EN-GJS-400-15", "DI"],
    ["A126 Class B", "GI"],
    ["EN-GJL-250", "GI"],
    ["CF3M", "316C"],
    ["316L", "316C"],
    ["WCC", "WCB"],
    ["A105", "WCB"],
    ["2205", "1B"],
    ["CD4MCu", "1A"],
  ])("%s is judged as %s", (text, id) => {
    expect(wettedMetalNamed(text, "casing")).toMatchObject({ ok: true, value: { casting: { id } } });
  });

  it("refuses what is no metal", () => {
    expect(wettedMetalNamed("moonlight", "casing").findings[0]?.code).toBe("name-unknown");
    expect(pressureMaterialNamed("moonlight").ok).toBe(false);
  });
});

describe("what a line is made of", () => {
  it.each([
    ["6in sch40", "carbon steel line"],
    ["DN150 sch40 galvanised", "galvanised steel line"],
    ["6in sch10S", "316L line"],
    ["10in HDPE DR17", "polyethylene line"],
    ["8in PVC sch80", "PVC line"],
    ["8in ductile iron cl350", "cement-lined ductile iron line"],
  ])("%s is a %s", (text, name) => {
    expect(lineNamed(text, "line")).toMatchObject({ ok: true, value: { kind: "pipe", hardware: { name } } });
  });

  it("knows rubber hose by its rubbers, and copper as pipe that is not judged", () => {
    expect(lineNamed("6in suction hose", "line")).toMatchObject({ value: { kind: "hose" } });
    expect(lineNamed("4in copper type L", "line")).toMatchObject({ value: { kind: "unknown" } });
    expect(lineNamed("moonlight", "line").ok).toBe(false);
  });

  it("reads every pipe that can be named", () => {
    for (const family of ["sch40", "sch10S", "HDPE DR17", "PVC sch40", "suction hose", "copper type L"]) {
      const pipes = pipesOf(family);
      if (!pipes.ok) throw new Error(family);
      for (const { name } of pipes.value) expect(lineNamed(name, "line").ok, name).toBe(true);
    }
  });
});

describe("seal faces and elastomers", () => {
  it.each([
    ["carbon", ["carbon on sintered silicon carbide"]],
    ["tungsten carbide", ["cobalt-bound tungsten carbide on silicon carbide"]],
    ["TC/SiC", ["cobalt-bound tungsten carbide on silicon carbide"]],
    ["nickel-bound tungsten carbide", ["nickel-bound tungsten carbide on silicon carbide"]],
    ["SiC/SiC", ["reaction-bonded silicon carbide pair", "sintered silicon carbide pair"]],
    ["RBSiC", ["reaction-bonded silicon carbide pair"]],
    ["sintered SiC", ["sintered silicon carbide pair"]],
  ])("reads faces of “%s”", (text, names) => {
    expect(sealFacesNamed(text, "seal")).toMatchObject({ ok: true, value: names });
  });

  it.each([
    ["EPDM", ["EPDM"]],
    ["nitrile", ["NBR (nitrile)"]],
    ["rubber", ["NBR (nitrile)", "EPDM", "natural rubber"]],
  ])("reads “%s”", (text, names) => {
    expect(elastomersNamed(text, "elastomer")).toMatchObject({ ok: true, value: names });
  });
});
