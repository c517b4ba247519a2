/** The version of the program, as its pages say it. package.json says the same; a test holds it to that. */
export const VERSION = "1.0.0";
