import { gaugeHeadMethod } from "../../../src/field/gauge-head.ts";
import { plantEfficiencyMethod } from "../../../src/field/plant-efficiency.ts";
import { powerReadingNamed } from "../../../src/field/power-reading.ts";
import { uncertaintyNamed } from "../../../src/field/uncertainty.ts";
import { pipeNamed } from "../../../src/pipework/pipe-name.ts";
import type { Measured } from "../../../src/tables/field-instruments.ts";
import { amount, named, percent } from "../field.ts";
import { FLOW, PRESSURE, SPEED } from "./bounds.ts";
import { OF_ENGINE, OF_MOTOR } from "./drive.ts";

const { inputs } = gaugeHeadMethod;

function instrument(of: Measured, label: string, help: string) {
  return named((text, subject) => uncertaintyNamed(text, of, subject), { label, help });
}

/** What was measured at one pump while it ran; heights over its shaft. */
export const fieldCheck = {
  fieldFlow: amount({
    label: "Flow measured",
    quantity: "flow",
    bounds: FLOW,
    help: "Flow of one pump while the gauges were read.",
  }),
  dischargeReading: amount({
    label: "Discharge gauge",
    quantity: "gaugePressure",
    bounds: PRESSURE,
    help: "What it reads while the pump runs.",
  }),
  suctionReading: amount({
    label: "Suction gauge",
    quantity: "gaugePressure",
    bounds: PRESSURE,
    help: "What it reads; a vacuum as -3 psi or 6.2 inHg vac. Blank: taken from the source level and the losses of the suction line.",
  }),
  dischargeGaugeHeight: amount({
    isSeldom: true,
    label: "Discharge gauge height",
    quantity: "length",
    bounds: inputs.dischargeHeight,
    whenBlank: 0,
    help: "Of the gauge itself over the pump level, where the line to it is full of liquid.",
  }),
  suctionGaugeHeight: amount({
    isSeldom: true,
    label: "Suction gauge height",
    quantity: "length",
    bounds: inputs.suctionHeight,
    whenBlank: 0,
    help: "Of the gauge itself over the pump level, where the line to it is full of liquid.",
  }),
  dischargeTapHeight: amount({
    isSeldom: true,
    label: "Discharge tap height, air in the line",
    quantity: "length",
    bounds: inputs.dischargeTapHeight,
    help: "Over the pump level. Where the line to the gauge is full of air the height of its tap counts. Blank: the line is full of liquid.",
  }),
  suctionTapHeight: amount({
    isSeldom: true,
    label: "Suction tap height, air in the line",
    quantity: "length",
    bounds: inputs.suctionTapHeight,
    help: "Lines under vacuum usually are full of air. Blank: the line is full of liquid.",
  }),
  dischargeTapPipe: named(pipeNamed, {
    isSeldom: true,
    label: "Pipe at the discharge tap",
    help: "Such as 8 in sch40. Blank: the first row of the discharge line.",
  }),
  suctionTapPipe: named(pipeNamed, {
    isSeldom: true,
    label: "Pipe at the suction tap",
    help: "Such as 10 in sch40. Blank: the last row of the suction line.",
  }),
  tapLoss: amount({
    isSeldom: true,
    label: "Loss from tap to flange",
    quantity: "head",
    bounds: inputs.lossToFlanges,
    whenBlank: 0,
    help: "Head lost between the taps and the flanges, both sides together, where the taps lie off the pump.",
  }),
  fieldSpeed: amount({
    label: "Speed measured",
    quantity: "speed",
    bounds: SPEED,
    help: "By tachometer, while the gauges were read. Blank: the speed the pump is stated to run at.",
  }),
  fieldPower: named(powerReadingNamed, {
    label: "Electric power measured",
    shownIf: OF_MOTOR,
    help: "At the meter, of this pump: 26.8 kW; 62 A, 460 V, pf 0.86; or Kh 3.6, 10 turns in 42 s, ratio 40.",
  }),
  fieldMotorEfficiency: percent({
    isSeldom: true,
    label: "Motor efficiency at that load",
    bounds: plantEfficiencyMethod.inputs.motorEfficiency,
    shownIf: OF_MOTOR,
    help: "With it the pump's own efficiency follows. Blank: from the meter to the water alone.",
  }),
  fieldFuel: amount({
    isSeldom: true,
    label: "Fuel measured",
    quantity: "fuelFlow",
    bounds: { above: 0, atMost: FLOW.atMost as number },
    shownIf: OF_ENGINE,
    help: "Diesel an hour, of this pump's engine. Its specific consumption is stated with the drive.",
  }),
  flowMeter: instrument(
    "flow",
    "Flow meter",
    "magnetic meter, clamp-on meter, drop test, orifice, or how far it may be off: 2 %. Blank: 5 %.",
  ),
  dischargeGauge: instrument(
    "pressure",
    "Discharge gauge kind",
    "bourdon gauge 60 psi, test gauge 4 bar, transmitter 100 psi, or how far it may be off: 0.5 psi.",
  ),
  suctionGauge: instrument(
    "pressure",
    "Suction gauge kind",
    "bourdon gauge -30 inHg to 15 psi, test gauge 1 bar, or how far it may be off: 0.15 psi.",
  ),
  powerMeter: instrument(
    "power",
    "Power or fuel meter",
    "power analyser, utility meter, fuel by volume, or how far it may be off: 1.5 %. Blank: 2 %, fuel 3 %.",
  ),
};
