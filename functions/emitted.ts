// Run by the build, not by Excel: what the catalogue gives besides the functions themselves.

export { helpFiles } from "../shared/catalogue/help.ts";
export { functionMetadata } from "../shared/catalogue/metadata.ts";
export { NAMESPACE } from "../shared/ports/namespace.ts";
