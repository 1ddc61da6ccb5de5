// Texts of the Bench.
import bench from "../../../locales/en/bench.ftl";
import { phrases } from "../../locale/say";

export const say = phrases(bench);
