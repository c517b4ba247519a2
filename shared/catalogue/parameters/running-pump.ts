import { choice, quantity } from "../parameter.ts";

/** How a pump runs against its curve. */
export const speedRatio = quantity("ratio", {
  about: "Speed of the pump over the speed of the curve",
  example: "0.9",
  range: "0.2 to 2.5; within 20 % of 1 with confidence",
  whenLeftOut: { value: 1, shown: "1, the speed of the curve" },
});

export const trimRatio = quantity("ratio", {
  about: "Diameter of the trimmed impeller over that of the curve",
  example: "0.95",
  range: "0.75 to 1",
  whenLeftOut: { value: 1, shown: "1, the impeller of the curve" },
});

export const numberOfPumps = quantity("ratio", {
  about: "How many equal pumps run",
  example: "2",
  range: "a whole number from 1 to 100",
  whenLeftOut: { value: 1, shown: "1" },
});

export const arrangement = choice(["parallel", "series"], {
  about: "How several pumps are set: side by side, or one behind the other",
  whenLeftOut: "parallel",
});
