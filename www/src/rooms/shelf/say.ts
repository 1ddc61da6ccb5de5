// Texts of the Shelf and the comparison.
import shelf from "../../../locales/en/shelf.ftl";
import { phrases } from "../../locale/say";

export const say = phrases(shelf);
