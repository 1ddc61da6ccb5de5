// Texts of the page's frame: the bar, the rooms' names, what is said of the page itself.
import frame from "../locales/en/frame.ftl";
import { phrases } from "./locale/say";

export const say = phrases(frame);
