// Texts of pouring balls a little off.
import scatter from "../../../locales/en/scatter.ftl";
import { phrases } from "../../locale/say";
import { named } from "../say";

export const say = phrases(scatter);

/** What makes a ball a second or scrap, by the module's words. */
const REASONS: Record<string, string> = {
  sticks_out: "shares-sticks-out",
  touches: "shares-touches",
  breaks_out: "shares-breaks-out",
};
const RULES: Record<string, string> = {
  published_weight: "maker-weight",
  published_diameter: "maker-diameter",
  published_density: "shares-rule-density",
  published_low_rg: "shares-rule-low-rg",
  published_high_rg: "shares-rule-high-rg",
  published_differential: "maker-differential",
  published_low_rg_mark: "shares-rule-low-rg-mark",
  published_high_rg_mark: "shares-rule-high-rg-mark",
};
const WINDOW = /^window_/;

/** `name` is the module's own sentence; a window's ends with the number it is of. */
export function reasonSays({ reason, name }: { reason: string; name: string }): string {
  const id = REASONS[reason];
  if (id) return say(id);
  const rule = RULES[reason];
  if (rule) return say("shares-published", { rule: say(rule) });
  if (!WINDOW.test(reason)) return name;
  return say("shares-window", { number: named(name.slice(name.indexOf(": ") + 2)) });
}
