import { moreModule as load } from "module:wasm";
import { part } from "./parts/part";

/** The second module, fetched and compiled once for the page and its workers. */
export const moreModule = part(load);
