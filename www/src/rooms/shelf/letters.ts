/** What those compared are called in drawings and tables, the first one first. */
export const LETTERS = ["A", "B", "C", "D"] as const;
