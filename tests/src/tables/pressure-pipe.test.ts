import { describe, expect, it } from "vitest";
import { DUCTILE_IRON_EN_545 } from "../../../src/tables/ductile-iron-pipe-en-545.ts";
import { POLYETHYLENE_ISO_4427, POLYETHYLENE_SDR } from "../../../src/tables/polyethylene-pipe-iso-4427.ts";
import { PVC_PIPE_EN_ISO_1452 } from "../../../src/tables/pvc-pipe-en-iso-1452.ts";
import { PVC_PIPE_C900, PVC_PIPE_D2241, PVC_PRESSURE_CLASSES } from "../../../src/tables/pvc-pressure-pipe-inch.ts";

/** Up to the next tenth, past the dust of binary fractions. */
function upToTenth(value: number): number {
  return Math.ceil(Number((10 * value).toFixed(6))) / 10;
}

describe("ISO 4427-2, polyethylene pipe", () => {
  it("has each SDR of each outside diameter once", () => {
    expect(POLYETHYLENE_ISO_4427).toHaveLength(252);
    expect(new Set(POLYETHYLENE_ISO_4427.map(([od, , sdr]) => `${od} ${sdr}`)).size).toBe(252);
    expect(new Set(POLYETHYLENE_ISO_4427.map(([, , sdr]) => sdr))).toEqual(
      new Set(POLYETHYLENE_SDR.map(([sdr]) => sdr)),
    );
  });

  // ISO 4065: e = d/(2 S + 1), S the exact preferred number 10^(n/10), 25/3 for SDR 17.6; rounded to 0.01, then up to 0.1 mm.
  const SERIES: Readonly<Record<number, number>> = {
    41: 10 ** 1.3,
    33: 10 ** 1.2,
    26: 10 ** 1.1,
    21: 10,
    17.6: 25 / 3,
    17: 10 ** 0.9,
    13.6: 10 ** 0.8,
    11: 10 ** 0.7,
    9: 10 ** 0.6,
    7.4: 10 ** 0.5,
  };
  it("has the minimum wall of ISO 4065 from 40 mm up, never below 2.0 mm to 63 mm", () => {
    for (const [od, , sdr, least] of POLYETHYLENE_ISO_4427) {
      if (od < 40) continue;
      const ruled = upToTenth(Number((od / (2 * (SERIES[sdr] as number) + 1)).toFixed(2)));
      expect(least, `${od} SDR ${sdr}`).toBe(od <= 63 ? Math.max(2, ruled) : ruled);
    }
  });

  it("has the maximum wall of ISO 11922-1, grade V", () => {
    for (const [od, , sdr, least, greatest] of POLYETHYLENE_ISO_4427) {
      expect(greatest, `${od} SDR ${sdr}`).toBeCloseTo(upToTenth(1.1 * least + 0.1), 9);
    }
  });

  // Walls of three public tables of EN 12201-2.
  it.each([
    [110, 11, 10, 11.1],
    [315, 17, 18.7, 20.7],
    [250, 17, 14.8, 16.4],
    [160, 11, 14.6, 16.2],
  ])("%d mm SDR %d", (od, sdr, least, greatest) => {
    expect(POLYETHYLENE_ISO_4427.find((row) => row[0] === od && row[2] === sdr)?.slice(3)).toEqual([least, greatest]);
  });

  // PN from 20 MRS/(1.25 (SDR − 1)) bar; printed rounded: R10 numbers within 4 %.
  it.each(POLYETHYLENE_SDR)("SDR %d is PN %d of PE 80 and PN %d of PE 100", (sdr, pe80, pe100) => {
    expect(Math.abs((20 * 8) / 1.25 / (sdr - 1) / pe80 - 1)).toBeLessThan(0.03);
    expect(Math.abs((20 * 10) / 1.25 / (sdr - 1) / pe100 - 1)).toBeLessThan(0.03);
  });
});

describe("PVC pressure pipe", () => {
  it("has the rows of the three standards", () => {
    expect([PVC_PIPE_C900.length, PVC_PIPE_D2241.length, PVC_PIPE_EN_ISO_1452.length]).toEqual([92, 96, 117]);
  });

  it("has walls of outside diameter over DR in C900", () => {
    for (const [size, od, dr, least] of PVC_PIPE_C900) expect(least, `${size} DR ${dr}`).toBeCloseTo(od / dr, 2.9);
  });

  // Printed walls, read in an open library's tables (C900) and a pump makers' data book (D2241).
  it.each([
    [PVC_PIPE_C900, "4", 14, 4.8, 0.343],
    [PVC_PIPE_C900, "12", 18, 13.2, 0.733],
    [PVC_PIPE_D2241, "6", 26, 6.625, 0.255],
    [PVC_PIPE_D2241, "10", 21, 10.75, 0.511],
  ] as const)("wall of a size", (rows, size, dr, od, least) => {
    const row = rows.find((one) => one[0] === size && one[2] === dr);
    expect(row).toEqual([size, od, dr, least]);
  });

  // AWWA C900-16, pressure class 2 × 2000/(DR − 1), printed within 2 %.
  it.each(PVC_PRESSURE_CLASSES.C900)("C900 DR %d is of %d psi", (dr, rating) => {
    expect(Math.abs(4000 / (dr - 1) / rating - 1)).toBeLessThan(0.021);
  });

  // EN ISO 1452-2: 20 × 25 MPa/(C (SDR − 1)) bar, C 2.5 to 90 mm and 2.0 above; printed within 5 %.
  it.each(PVC_PIPE_EN_ISO_1452)("PVC-U %d mm SDR %d", (od, sdr, least, bore, pn) => {
    expect(Math.abs((20 * 25) / (od > 90 ? 2 : 2.5) / (sdr - 1) / pn - 1)).toBeLessThan(0.06);
    expect(least).toBeGreaterThanOrEqual(1.5);
    expect(bore).toBeLessThan(od - 2 * least + 0.4);
  });
});

describe("EN 545, ductile iron pipe", () => {
  it("has each DN once", () => {
    expect(DUCTILE_IRON_EN_545).toHaveLength(18);
  });

  it.each(DUCTILE_IRON_EN_545)("DN %d", (dn, od, name, wall, least, allowable, k9, k9Least, k9Allowable) => {
    // Tolerance of the wall, EN 545: 1.3 + 0.001 DN; K9: 9 (0.5 + 0.001 DN), at least 6.0 mm.
    expect(Math.abs(wall - least - 1.3 - 0.001 * dn)).toBeLessThan(0.11);
    expect(Math.abs(k9 - Math.max(6, 9 * (0.5 + 0.001 * dn)))).toBeLessThan(0.051);
    expect(name).toBe(`C${allowable}`);
    // PFA of thin pipe, 20 e Rm/(3 (D − e)), Rm 420 MPa, at most 85 bar.
    const ruled = Math.min(85, (20 * k9Least * 420) / (3 * (od - k9Least)));
    expect(k9Allowable - ruled).toBeLessThanOrEqual(0);
    expect(ruled - k9Allowable).toBeLessThan(1);
  });

  // Public summaries of EN 545:2010: DN 200 C40 4.7 mm (least 3.1), OD 222; a foundry's table: DN 600 K9 9.9 mm.
  it("has the printed rows", () => {
    expect(DUCTILE_IRON_EN_545.find(([dn]) => dn === 200)?.slice(0, 6)).toEqual([200, 222, "C40", 4.7, 3.1, 40]);
    expect(DUCTILE_IRON_EN_545.find(([dn]) => dn === 600)?.[6]).toBe(9.9);
  });
});
