// Texts of the Lessons room.
import lessons from "../../../locales/en/lessons.ftl";
import { phrases } from "../../locale/say";

export const say = phrases(lessons);
