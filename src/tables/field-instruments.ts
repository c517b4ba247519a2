/** What an instrument reads. */
export type Measured = "pressure" | "flow" | "power" | "speed";

export interface InstrumentRow {
  readonly kind: string;
  readonly also: readonly string[];
  readonly of: Measured;
  /** Uncertainty at two standard deviations: of the reading, or of the span for what reads pressure. */
  readonly uncertainty: number;
}

/**
 * What instruments on site are good for where nobody states more: at two standard deviations, of the span for pressure, of
 * the reading for the rest. Common practice, no source; where practice gives a range, its greater end.
 */
export const FIELD_INSTRUMENTS: readonly InstrumentRow[] = [
  { kind: "bourdon gauge", also: ["bourdon", "gauge", "dial gauge"], of: "pressure", uncertainty: 0.01 },
  { kind: "test gauge", also: ["calibrated gauge"], of: "pressure", uncertainty: 0.005 },
  { kind: "pressure transmitter", also: ["transmitter", "transducer"], of: "pressure", uncertainty: 0.0025 },
  { kind: "magnetic meter", also: ["mag meter", "magmeter", "electromagnetic meter"], of: "flow", uncertainty: 0.01 },
  { kind: "clamp-on meter", also: ["clamp-on", "clamp on", "ultrasonic", "strap-on"], of: "flow", uncertainty: 0.05 },
  { kind: "drop test", also: ["drawdown test", "bucket", "volume and time"], of: "flow", uncertainty: 0.03 },
  { kind: "orifice", also: ["orifice plate"], of: "flow", uncertainty: 0.03 },
  { kind: "pitot", also: ["pitot tube"], of: "flow", uncertainty: 0.03 },
  { kind: "power analyser", also: ["analyser"], of: "power", uncertainty: 0.015 },
  { kind: "utility meter", also: ["disc meter", "disk meter", "kwh meter"], of: "power", uncertainty: 0.02 },
  { kind: "fuel by volume", also: ["fuel", "fuel flow"], of: "power", uncertainty: 0.03 },
  { kind: "tachometer", also: ["tacho", "strobe", "stroboscope"], of: "speed", uncertainty: 0.001 },
];

/** Of a difference of heights taken with a tape, m (0.1 ft). Common practice, no source. */
export const TAPE_UNCERTAINTY = 0.03048;

/** Of a specific fuel consumption that is not that of this engine, of the figure. Common practice, no source. */
export const CONSUMPTION_UNCERTAINTY = 0.08;
