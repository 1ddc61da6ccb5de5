// Texts of the Scale.
import scale from "../../../locales/en/scale.ftl";
import { phrases } from "../../locale/say";

export const say = phrases(scale);
