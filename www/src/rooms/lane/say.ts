// Texts of the Lane; the oil on it and the room for error have their own.
import lane from "../../../locales/en/lane.ftl";
import { phrases } from "../../locale/say";

export const say = phrases(lane);
