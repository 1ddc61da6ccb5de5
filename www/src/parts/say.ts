// Texts of the parts that show numbers.
import numbers from "../../locales/en/numbers.ftl";
import { phrases } from "../locale/say";

export const say = phrases(numbers);
