import type { DutyText } from "./duty-text.ts";
import harbourBypass from "./samples/harbour-bypass.json" with { type: "json" };
import leveeBooster from "./samples/levee-booster.json" with { type: "json" };
import quarrySump from "./samples/quarry-sump.json" with { type: "json" };
import sandTailings from "./samples/sand-tailings.json" with { type: "json" };
import sewageBypass from "./samples/sewage-bypass.json" with { type: "json" };
import washHeader from "./samples/wash-header.json" with { type: "json" };
import { loadDuty } from "./saved.ts";

export interface SampleDuty {
  readonly name: string;
  readonly about: string;
  readonly duty: DutyText;
}

/** Duties of an invented quarry, works, harbour and sand plant, sewer and drained land; every name and figure in them is made up. */
export const SAMPLE_DUTIES: readonly SampleDuty[] = [
  {
    name: "Quarry sump, suction lift (US)",
    about: "Invented: a portable set lifts sump water out of a quarry through polyethylene pipe.",
    duty: saved(quarrySump),
  },
  {
    name: "Process water, flooded suction (metric)",
    about: "Invented: a fixed pump feeds a pressurised wash header from a tank above it.",
    duty: saved(washHeader),
  },
  {
    name: "Harbour bypass, sea water (SI)",
    about: "Invented: a temporary bypass carries sea water round a dock gate under repair.",
    duty: saved(harbourBypass),
  },
  {
    name: "Sand tailings, slurry (metric)",
    about: "Invented: a fixed pump moves the tailings of a sand washing plant to a settling pond.",
    duty: saved(sandTailings),
  },
  {
    name: "Sewage bypass, two pumps with drives (US)",
    about:
      "Invented: two pumps at varying speed carry a trunk sewer round a length under repair, by night, by day and in the wet.",
    duty: saved(sewageBypass),
  },
  {
    name: "Booster over a levee (metric)",
    about: "Invented: two pumps in series along a route drain low land over a levee into a river.",
    duty: saved(leveeBooster),
  },
];

function saved(sample: object): DutyText {
  const duty = loadDuty(JSON.stringify(sample));
  if (!duty.ok) throw new Error("a sample duty does not load");
  return duty.value;
}
