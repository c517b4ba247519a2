import { decodeDuty } from "../../../shared/duty/decode.ts";
import { type Duty, type DutyPump, pumpsInSeries } from "../../../shared/duty/duty.ts";
import type { DutyText, PumpText, SelectedFor } from "../../../shared/duty/duty-text.ts";
import { readAmount } from "../../../shared/duty/read-amount.ts";
import type { Quantity, UnitSetName } from "../../../src/basis/quantities.ts";
import { greatestOf, leastOf } from "../../../src/numeric/extremes.ts";
import type { OfferedPump } from "../../../src/pump/offered-pump.ts";
import { readyPump } from "../../../src/pump/ready-pump.ts";
import { runningPump } from "../../../src/pump/running-pump.ts";
import type { LeftOutPump, RankedPump } from "../../../src/pump/selection.ts";
import { pointsAsItRuns, pumpTextOf, ratioText, SAME_SETTING, writtenWithUnit } from "./pump-text.ts";
import { type Ranking, rankedPumps } from "./ranking.ts";

/** What a ranking asks of the pumps of a station: the flow of all together, and the head of all in a row; m³/s and m. */
export interface AskedThen {
  readonly flow: number;
  readonly head: number;
}

/** A pump selected for another duty than it now has, or set otherwise than it would now be. */
export interface Reselection {
  readonly before: AskedThen;
  readonly now: AskedThen;
  /** Whether the two differ by more than reading a figure off a curve does. */
  readonly hasMoved: boolean;
  /** How far its table lets the speed go, r/s. */
  readonly speeds: { readonly least: number; readonly most: number } | undefined;
  /** The pump by itself, ranked for the duty as it is now; nothing where its speed may not be changed. */
  readonly set: RankedPump | undefined;
  /** Why no speed of it meets the duty. */
  readonly missed: LeftOutPump["reason"] | undefined;
}

/** House choice. */
const MOVED = 0.005;

/** A ranked pump as the selected one of a duty, with what it is selected for. */
export function selectedPumpText(ranking: Ranking, ranked: RankedPump, units: UnitSetName): PumpText {
  const selectedFor = selectedForOf(ranking, ranked.pump, units);
  return { ...pumpTextOf(ranked, units), ...(selectedFor && { selectedFor }) };
}

function selectedForOf(ranking: Ranking, { limits, curves }: OfferedPump, units: UnitSetName): SelectedFor | undefined {
  const asked = askedNow(ranking);
  if (asked === undefined) return undefined;
  const given = curves.flatMap(({ speed }) => (speed === undefined ? [] : [speed]));
  const least = limits.leastSpeed ?? (given.length === 0 ? undefined : leastOf(given));
  const most = limits.greatestSpeed ?? (given.length === 0 ? undefined : greatestOf(given));
  const { greatestPressure } = limits;
  return {
    flow: writtenWithUnit(asked.flow, "flow", units),
    head: writtenWithUnit(asked.head, "head", units),
    ...(least !== undefined && { minimumSpeed: writtenWithUnit(least, "speed", units) }),
    ...(most !== undefined && { maximumSpeed: writtenWithUnit(most, "speed", units) }),
    ...(greatestPressure !== undefined && {
      maximumPressure: writtenWithUnit(greatestPressure, "gaugePressure", units),
    }),
  };
}

function askedNow({ duty, asked }: Ranking): AskedThen | undefined {
  if (asked === undefined || duty.flow === undefined) return undefined;
  return { flow: duty.flow, head: pumpsInSeries(duty) * asked.system.headAt(asked.flow) };
}

const kept = new WeakMap<DutyText, { readonly found: Reselection | undefined }>();

/**
 * What became of a selection: the pump of the duty, by its own curve and the limits kept with it, ranked again for the duty
 * as it is now. Nothing where it stands as it would be selected, where nothing was selected, and beside unlike pumps,
 * which no ranking answers for.
 */
export function reselection(typed: DutyText): Reselection | undefined {
  const known = kept.get(typed) ?? { found: reselected(typed) };
  kept.set(typed, known);
  return known.found;
}

function reselected(typed: DutyText): Reselection | undefined {
  const selectedFor = typed.pump?.selectedFor;
  if (selectedFor === undefined) return undefined;
  const { duty, isComplete } = decodeDuty(typed);
  const { pump } = duty;
  const before = readBefore(selectedFor, duty);
  if (!isComplete || pump === undefined || before === undefined || duty.furtherPumps > 0) return undefined;
  const offered = offeredAgain(pump, selectedFor, duty.unitSet);
  if (offered === undefined) return undefined;
  const ranking = rankedPumps(typed, [readyPump(offered)]);
  const now = ranking && askedNow(ranking);
  if (now === undefined || ranking?.selection.ok !== true) return undefined;
  const [set] = ranking.selection.value.ranked;
  const isAsSet = set !== undefined && Math.abs(pump.speedRatio / set.onWater.speedRatio - 1) < SAME_SETTING;
  if (isAsSet) return undefined;
  const { leastSpeed: least, greatestSpeed: most } = offered.limits;
  const hasMoved = (["flow", "head"] as const).some((key) => Math.abs(now[key] / before[key] - 1) > MOVED);
  return {
    before,
    now,
    hasMoved,
    speeds: least === undefined || most === undefined ? undefined : { least, most },
    set,
    missed: ranking.selection.value.leftOut[0]?.reason,
  };
}

function readBefore({ flow, head }: SelectedFor, { unitSet }: Duty): AskedThen | undefined {
  const [readFlow, readHead] = [read(flow, "flow", unitSet), read(head, "head", unitSet)];
  return readFlow === undefined || readHead === undefined ? undefined : { flow: readFlow, head: readHead };
}

/** Nothing where it cannot be read: what was selected is then not known. */
function read(text: string | undefined, quantity: Quantity, units: UnitSetName): number | undefined {
  if (text === undefined) return undefined;
  const found = readAmount(text, quantity, units, "selected for");
  return found.ok ? found.value : undefined;
}

/** The pump as a table of one would offer it: with its impeller as it is now, at speeds within its limits. */
function offeredAgain(pump: DutyPump, kept: SelectedFor, units: UnitSetName): OfferedPump | undefined {
  const { name, curve, speed, impellerDiameter, trimRatio } = pump;
  const trimmed = trimRatio === 1 ? undefined : runningPump({ curve, speedRatio: 1, trimRatio });
  if (trimmed?.ok === false) return undefined;
  const [leastSpeed, greatestSpeed] = [
    read(kept.minimumSpeed, "speed", units),
    read(kept.maximumSpeed, "speed", units),
  ];
  const greatestPressure = read(kept.maximumPressure, "gaugePressure", units);
  return {
    name,
    curves: [
      {
        points: trimmed === undefined ? curve.points : pointsAsItRuns(trimmed.value),
        ...(speed !== undefined && { speed }),
        ...(impellerDiameter !== undefined && { diameter: impellerDiameter * trimRatio }),
      },
    ],
    limits: {
      ...(leastSpeed !== undefined && { leastSpeed }),
      ...(greatestSpeed !== undefined && { greatestSpeed }),
      ...(greatestPressure !== undefined && { greatestPressure }),
    },
  };
}

/** The selected pump at the speed it would be set to now; its curve and trim stay. */
export function pumpSetAgain(pump: PumpText, { now, set }: Reselection, units: UnitSetName): PumpText {
  return {
    ...pump,
    speedRatio: ratioText(set?.onWater.speedRatio ?? 1),
    selectedFor: {
      ...pump.selectedFor,
      flow: writtenWithUnit(now.flow, "flow", units),
      head: writtenWithUnit(now.head, "head", units),
    },
  };
}
