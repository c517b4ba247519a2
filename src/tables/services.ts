// What a pump is for, as the trade's tables of defaults sort it: acceptance grades (ANSI/HI 14.6) and NPSH margins
// (ANSI/HI 9.6.1) go by service. One list for both; a duty without one is "not listed". Rental, bypass, trash, drainage
// and irrigation are the trade's own words for what those tables call dewatering.

export const SERVICES = [
  "dewatering",
  "bypass",
  "trash",
  "rental",
  "drainage",
  "irrigation",
  "water and wastewater",
  "building services",
  "electric power",
  "oil and gas",
  "pipeline",
  "water injection",
  "chemical",
  "cooling tower",
  "pulp and paper",
  "slurry",
  "general industry",
] as const;

export type ServiceName = (typeof SERVICES)[number];
