import { FluentBundle } from "@fluent/bundle";
import { stretched } from "./pseudo";

/** An empty bundle; text is held apart from what is put into it where directions may differ. */
export const bundleOf = (tag: string, pseudo = false): FluentBundle =>
  new FluentBundle(tag, { useIsolating: pseudo, transform: pseudo ? stretched : undefined });
