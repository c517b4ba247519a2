import fc from "fast-check";

// The same points on every run, so that a red run can be run again; PROPERTY_SEED takes others.
fc.configureGlobal({ seed: Number(process.env["PROPERTY_SEED"] ?? 1) });
