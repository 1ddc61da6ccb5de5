// Texts of a lesson that has the bench, and of what the lessons share.
import lesson from "../../locales/en/lesson.ftl";
import { phrases } from "../locale/say";

export const say = phrases(lesson);
