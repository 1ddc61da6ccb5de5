import { moreBytes as load } from "module:bytes";
import { part } from "./parts/later";

/** The second module's bytes, fetched once for the page and its workers. */
export const moreBytes = part(load);
