// Mistakes as the module and the page tell them, and what broke that is none.

import { worded } from "./locale/worded";
import type { Problem } from "./types";

export function isProblem(error: unknown): error is Problem {
  return (
    typeof error === "object" &&
    error !== null &&
    "place" in error &&
    "accepted" in error &&
    "message" in error
  );
}

/** What is made, or why it cannot be. */
export function orProblem<T>(make: () => T): T | Problem {
  try {
    return make();
  } catch (error) {
    if (isProblem(error)) return error;
    throw error;
  }
}

export function describe(error: unknown): string {
  if (error instanceof Error) return `${error.name}: ${error.message}`;
  if (isProblem(error)) return `${worded(error.message)} (${error.place}: ${worded(error.found)})`;
  return String(error);
}
