// Texts about the cover, said by Saw and Scale.
import cover from "../../locales/en/cover.ftl";
import { phrases } from "../locale/say";

export const say = phrases(cover);
