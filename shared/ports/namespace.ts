/** The prefix of every cell function. The manifest says the same; a test holds it to that. */
export const NAMESPACE = "DUTY";
