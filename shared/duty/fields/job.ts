import { text } from "../field.ts";

export const job = {
  project: text({ label: "Project", help: "Name of the job." }),
  customer: text({ label: "Customer", help: "Who asked." }),
  item: text({ label: "Item", help: "Pump or item number, such as P-101." }),
  reference: text({ label: "Reference", help: "Enquiry or quotation number." }),
  revision: text({ label: "Revision", help: "Revision of this calculation." }),
  preparedBy: text({ label: "Prepared by", help: "Your name or initials." }),
  date: text({ label: "Date", help: "Date of this calculation, as you write it." }),
};
