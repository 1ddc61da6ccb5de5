import model from "../../../locales/en/model.ftl";
import { phrases } from "../../locale/say";

export const say = phrases(model);
