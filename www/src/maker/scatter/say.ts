// Texts of pouring balls a little off.
import scatter from "../../../locales/en/scatter.ftl";
import { phrases } from "../../locale/say";

export const say = phrases(scatter);
