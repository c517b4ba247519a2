import { oneOf, text } from "../field.ts";

/** What a sheet is issued for; any other words do as well. Common practice, no source. */
const STATUSES = [
  "Preliminary",
  "For information",
  "For quotation",
  "For approval",
  "For construction",
  "As built",
] as const;

const DAY = "As you write it; 2026-11-29 is read alike everywhere.";

export const job = {
  firm: text({ label: "Firm", help: "Who issues the sheet." }),
  project: text({ label: "Project", help: "Name of the job." }),
  customer: text({ label: "Customer", help: "Who asked." }),
  item: text({ label: "Item", help: "Pump or item number, such as P-101." }),
  reference: text({ label: "Reference", help: "Enquiry or quotation number." }),
  revision: text({ label: "Revision", help: "Revision of this calculation, such as A, 0 or P1." }),
  date: text({ label: "Date", help: `Date of this revision. ${DAY}` }),
  status: text({ label: "Status", choices: STATUSES, help: "What the sheet is issued for, in any words." }),
  preparedBy: text({ label: "Prepared by", help: "Name of who made the calculation." }),
  preparedInitials: text({ label: "Prepared, initials", help: "By which this revision is signed." }),
  preparedOn: text({ label: "Prepared on", help: DAY }),
  checkedBy: text({ label: "Checked by", help: "Name of who checks it: not who prepared it." }),
  checkedInitials: text({
    label: "Checked, initials",
    help: "By which this revision is signed; a new one needs new signatures.",
  }),
  checkedOn: text({ label: "Checked on", help: DAY }),
  approvedBy: text({ label: "Approved by", help: "Name of who answers for it." }),
  approvedInitials: text({
    label: "Approved, initials",
    help: "By which this revision is signed; a new one needs new signatures.",
  }),
  approvedOn: text({ label: "Approved on", help: DAY }),
  exclusions: text({
    label: "Excluded",
    isLong: true,
    help: "What the package does not hold, one thing a line: civil works, cables, start-up on site.",
  }),
  paper: oneOf(["auto", "A4", "Letter"], {
    label: "Paper",
    whenBlank: "auto",
    help: "What the sheet is printed on: A4 or Letter. Auto takes Letter with US units and A4 with SI.",
  }),
};
