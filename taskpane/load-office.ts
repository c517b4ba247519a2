import { isInOffice } from "./excel/office-address.ts";

// Inside Excel alone, and before the page is read on: the functions, next on the page, are then registered with the
// library before it can tell Excel that it is ready. A script put in any other way would not keep that order.
const address = document.currentScript?.dataset["office"];
if (address !== undefined && isInOffice(window)) {
  const script = document.createElement("script");
  script.src = address;
  document.write(script.outerHTML);
}
