// Texts about the reader's work: put on the bench, opened, kept, shared.
import work from "../locales/en/work.ftl";
import { phrases } from "./locale/say";

export const say = phrases(work);
