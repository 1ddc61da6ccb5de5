// Texts in the drawings, and what the phases of a shot are called.
import draw from "../../locales/en/draw.ftl";
import { phrases } from "../locale/say";
import type { Phase } from "../types";

export const say = phrases(draw);

const PHASES: Record<Phase, string> = { skid: "draw-skid", hook: "draw-hook", roll: "draw-roll" };

export const phaseName = (phase: Phase): string => say(PHASES[phase]);
