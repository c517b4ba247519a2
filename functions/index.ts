import { type FunctionHost, registerFunctions } from "./register.ts";

// Absent where the page is open outside Excel and office.js could not be had.
const host = (globalThis as { readonly CustomFunctions?: FunctionHost }).CustomFunctions;
if (host?.associate !== undefined) registerFunctions(host);
