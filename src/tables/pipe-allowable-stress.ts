/**
 * Steel pipe under pressure: specification, what it is made of, quality factor E of its seam, allowable stress S in ksi at 100,
 * 200, 300, 400 and 500 °F. ASME B31.3 (2018), tables A-1 and A-1B; straight lines between. The last of them is grade B of a
 * cross-country pipeline, 0.72 of its yield strength of 35 ksi, ASME B31.4. Then
 * metric steel P235 of EN 13480-3 in MPa by °C, steps: the lesser of 235/1.5 and 360/2.4 cold, 198/1.5 at 100 °C; its seam factor
 * if not tested.
 *
 * Verified: A106 B looked up at 100 and 500 °F, TP316 to 500 °F; the quality factor 0.80 by a maker's table of TP316 schedule 10S
 * (2 × 20 ksi × 0.80 × 0.875 t/D gives each figure within 0.1 %); the rest from memory.
 */
export const STRESS_TEMPERATURES = [100, 200, 300, 400, 500] as const;

export const PIPE_ALLOWABLE_STRESS = {
  "A53 B seamless": { material: "steel", quality: 1, stress: [20, 20, 20, 20, 18.9] },
  "A53 B ERW": { material: "steel", quality: 0.85, stress: [20, 20, 20, 20, 18.9] },
  "A53 A furnace butt": { material: "steel", quality: 0.6, stress: [16, 16, 16, 16, 16] },
  "A106 B seamless": { material: "steel", quality: 1, stress: [20, 20, 20, 20, 18.9] },
  "TP304 seamless": { material: "stainless steel", quality: 1, stress: [20, 20, 20, 18.6, 17.5] },
  "TP304 welded": { material: "stainless steel", quality: 0.8, stress: [20, 20, 20, 18.6, 17.5] },
  "TP316 seamless": { material: "stainless steel", quality: 1, stress: [20, 20, 20, 19.3, 17.9] },
  "TP316 welded": { material: "stainless steel", quality: 0.8, stress: [20, 20, 20, 19.3, 17.9] },
  "TP304L seamless": { material: "stainless steel", quality: 1, stress: [16.7, 16.7, 16.7, 15.8, 14.8] },
  "TP304L welded": { material: "stainless steel", quality: 0.8, stress: [16.7, 16.7, 16.7, 15.8, 14.8] },
  "TP316L seamless": { material: "stainless steel", quality: 1, stress: [16.7, 16.7, 16.7, 15.7, 14.8] },
  "TP316L welded": { material: "stainless steel", quality: 0.8, stress: [16.7, 16.7, 16.7, 15.7, 14.8] },
  "B31.4 grade B": { material: "steel", quality: 1, stress: [25.2, 25.2] },
} as const satisfies Record<string, PipeSpecification>;

export interface PipeSpecification {
  readonly material: "steel" | "stainless steel";
  readonly quality: number;
  /** Of a pipeline to B31.4 cold alone: it ends at 250 °F. */
  readonly stress: readonly [number, number, number, number, number] | readonly [number, number];
}

export type PipeSpecificationName = keyof typeof PIPE_ALLOWABLE_STRESS;

/** From memory. */
export const EN_13480_STEEL = {
  stress: [
    [50, 150],
    [100, 132],
  ],
  leastSeam: 0.85,
} as const;
