// Texts of what is kept, also where the Shelf is not looked at.
import kept from "../../locales/en/kept.ftl";
import { phrases } from "../locale/say";

export const say = phrases(kept);
