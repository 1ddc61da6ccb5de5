import oil from "../../../../locales/en/oil.ftl";
import { phrases } from "../../../locale/say";

export const say = phrases(oil);
