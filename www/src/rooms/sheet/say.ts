// Texts of the take-home sheet.
import sheet from "../../../locales/en/sheet.ftl";
import { phrases } from "../../locale/say";

export const say = phrases(sheet);
