// Texts of the parts that rooms share, and of those that show numbers.
import numbers from "../../locales/en/numbers.ftl";
import parts from "../../locales/en/parts.ftl";
import { phrases } from "../locale/say";

phrases(numbers);
export const say = phrases(parts);
