import area from "../../../locales/en/area.ftl";
import { phrases } from "../../locale/say";

export const say = phrases(area);
