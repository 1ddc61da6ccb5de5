import why from "../../locales/en/why.ftl";
import { phrases } from "../locale/say";

export const say = phrases(why);
