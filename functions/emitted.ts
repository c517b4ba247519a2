// Run by the build, not by Excel: what the catalogue gives besides the functions themselves.

export { functionMetadata } from "../shared/catalogue/metadata.ts";
export { helpFiles } from "../shared/help/help-files.ts";
export { NAMESPACE } from "../shared/ports/namespace.ts";
