/** A style sheet imported for its effect; the bundler sets it aside as a file. */
declare module "*.css";
