// Texts of the Saw.
import saw from "../../../locales/en/saw.ftl";
import { phrases } from "../../locale/say";

export const say = phrases(saw);
