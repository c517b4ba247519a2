import { describe, expect, it } from "vitest";
import { localGravity } from "../../../src/site/gravity.ts";

const degrees = Math.PI / 180;

function gravity(latitude: number, altitude = 0): number {
  const result = localGravity({ latitude: latitude * degrees, altitude });
  if (!result.ok) throw new Error(JSON.stringify(result.findings));
  return result.value;
}

// The published latitudes are in tests/src/basis/units-published.test.ts, with the rest of their topic.
describe("local gravity", () => {
  // WGS 84, defining and derived constants: normal gravity at the equator and the poles.
  it("is that of the ellipsoid at the equator and the poles", () => {
    expect(gravity(0)).toBeCloseTo(9.7803253359, 10);
    expect(gravity(90)).toBeCloseTo(9.8321849378, 8);
    expect(gravity(-90)).toBeCloseTo(9.8321849378, 8);
  });

  it("is the same north and south, rises towards the poles and falls with height", () => {
    for (let latitude = 0; latitude < 90; latitude += 5) {
      expect(gravity(-latitude)).toBe(gravity(latitude));
      expect(gravity(latitude + 5)).toBeGreaterThan(gravity(latitude));
      // 0.3086 mGal a metre, the free-air gradient of the textbooks.
      expect(gravity(latitude) - gravity(latitude, 1000)).toBeCloseTo(3.086e-3, 9);
    }
  });

  it.each([
    { latitude: 91, altitude: 0, codes: ["error out-of-range"] },
    { latitude: -91, altitude: 0, codes: ["error out-of-range"] },
    { latitude: 45, altitude: 12_000, codes: ["error out-of-range"] },
    { latitude: 45, altitude: 9500, codes: ["caution altitude-unusual"] },
    { latitude: 45, altitude: 9000, codes: [] },
  ])("latitude $latitude, altitude $altitude: $codes", ({ latitude, altitude, codes }) => {
    const { findings } = localGravity({ latitude: latitude * degrees, altitude });
    expect(findings.map(({ code, severity }) => `${severity} ${code}`)).toEqual(codes);
  });
});
