// What the page itself finds wrong, where no file says how.

import type { ToSay } from "./locale/say";
import type { Problem } from "./types";

export const ownProblem = (message: ToSay, place = ""): Problem => ({
  place,
  found: "",
  accepted: "",
  message,
});
