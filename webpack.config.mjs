import addin from "./tools/build/addin.mjs";
import workbench from "./tools/build/workbench.mjs";

export default [addin, workbench];
