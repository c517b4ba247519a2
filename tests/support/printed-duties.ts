import { type DutyText, EMPTY_DUTY } from "../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import { convertNumbers } from "../../taskpane/pane/convert-numbers.ts";
import { dutyText, type Fields } from "./duty-of.ts";

/** Head and suction alone, nothing said that need not be. */
const MINIMAL: DutyText = {
  ...EMPTY_DUTY,
  fields: {
    ...EMPTY_DUTY.fields,
    project: "Pond return (invented)",
    item: "P-1",
    revision: "A",
    date: "2026-11-29",
    flow: "400 gpm",
    sourceLevel: "0",
    pumpLevel: "-2 ft",
    deliveryLevel: "48 ft",
  },
  suctionLine: [{ pipe: "6in sch40", length: "20 ft", fittings: "1 entrance bell, 1 elbow 90 long" }],
  dischargeLine: [{ pipe: "6in sch40", length: "600 ft", fittings: "1 swing check, 1 gate, 1 exit" }],
};

/** The same with a pump that has to be primed, in either set of units. */
const LIFTING: DutyText = { ...MINIMAL, fields: { ...MINIMAL.fields, pumpLevel: "6 ft" } };
const LIFTING_METRIC: DutyText = convertNumbers(LIFTING, "METRIC");

const [QUARRY] = SAMPLE_DUTIES.map(({ duty }) => duty) as [DutyText];

/** The quarry by its estimator's own judgement, not by what is usual. */
const OWN: Fields = {
  flowInHand: "25",
  npshOff: "8",
  lowFlow: "35",
  ratingUsed: "85",
  lightLoad: "35",
  tankUsable: "85",
  tankReserve: "15",
  primeTimeBypass: "240",
};
export const OWN_SETTINGS: DutyText = { ...QUARRY, fields: { ...QUARRY.fields, ...OWN } };

const LONG_TEXTS: Fields = {
  project:
    "Temporary dewatering and process water relocation for the northern extension of the limestone quarry, second phase (invented)",
  customer: "Quarry A, Department of Water and Environmental Management (invented)",
  item: "P-101A/B and spare P-101C",
  reference: "Enquiry ENQ-2026-001 of 3 November with its two addenda",
  firm: "Pump & Pipework Estimating Office for Dewatering and Process Water (invented)",
  revision: "P3",
  date: "29 November 2026",
  status: "For approval, with comments of the first round taken in",
  preparedBy: "A. Longname-Estimator",
  preparedOn: "29 November 2026",
  checkedBy: "B. Otherlong-Checker",
  exclusions: "civil works and foundations\ncables, panels and all electrical work on site\nstart-up and training",
};

const LONG_BASIS =
  "customer's letter of 3 November, page 4, second paragraph, with the correction sent by the site engineer a week later and not yet confirmed in writing (invented)";

/** The quarry with a discharge line of 23 runs, each with several fittings, and long texts wherever one may be typed. */
const LONG: DutyText = dutyText(LONG_TEXTS, {
  ...QUARRY,
  fields: { ...QUARRY.fields, ...LONG_TEXTS },
  basis: {
    flow: LONG_BASIS,
    sourceLevel: LONG_BASIS,
    pumpLevel: LONG_BASIS,
    npshRequired: LONG_BASIS,
    pH: LONG_BASIS,
  },
  dischargeLine: Array.from({ length: 23 }, (_, i) => ({
    pipe: i === 0 ? "8in sch40" : i % 3 === 0 ? "10in HDPE DR17" : "10in sch40",
    length: String(20 + 7 * i),
    fittings:
      i === 0
        ? "1 swing check, 1 gate, 2 elbow 90 long"
        : i === 22
          ? "1 elbow 45, 1 exit"
          : "2 elbow 45, 1 tee run, 1 butterfly, 2 elbow 90 long",
  })),
  revisions: [
    {
      revision: "P1",
      date: "2 November 2026",
      by: "A. L.-E.",
      change: "First issue for comments of the customer and of the site engineer, line lengths taken off the drawing",
    },
    {
      revision: "P2",
      date: "16 November 2026",
      by: "A. L.-E.",
      change: "Flow up from 1100 to 1200 gpm; line moved to the east bank",
    },
  ],
});

/** Duties whose pages are looked at and printed: the samples, the shortest and a long one. */
export const PRINTED_DUTIES: readonly { readonly name: string; readonly duty: DutyText }[] = [
  ...SAMPLE_DUTIES.map(({ name, duty }) => ({ name, duty })),
  { name: "Head and NPSH alone", duty: MINIMAL },
  { name: "Head and NPSH alone, with a lift", duty: LIFTING },
  { name: "Head and NPSH alone, with a lift (metric)", duty: LIFTING_METRIC },
  { name: "Quarry sump, settings of its own", duty: OWN_SETTINGS },
  { name: "24 runs with long texts", duty: LONG },
];
