// The trade's words: each has its name and its meaning, one sentence, in the Fluent files.

import text from "../locales/en/words.ftl";
import { phrases } from "./locale/say";

const say = phrases(text);

export const WORDS = {
  RG: "word-rg",
  differential: "word-differential",
  "intermediate differential": "word-intermediate-differential",
  CG: "word-cg",
  "top weight": "word-top-weight",
  pin: "word-pin",
  PAP: "word-pap",
  "mass bias": "word-mass-bias",
  "track flare": "word-track-flare",
  board: "word-board",
  breakpoint: "word-breakpoint",
  "entry angle": "word-entry-angle",
  coverstock: "word-coverstock",
  "flow channel": "word-flow-channel",
  puck: "word-puck",
  hook: "word-hook",
  skid: "word-skid",
  roll: "word-roll",
  "axis rotation": "word-axis-rotation",
  "axis tilt": "word-axis-tilt",
  "rev rate": "word-rev-rate",
  "drilling angle": "word-drilling-angle",
  "start turn": "word-start-turn",
  "launch angle": "word-launch-angle",
  friction: "word-friction",
  "grip centre": "word-grip-centre",
  span: "word-span",
  bridge: "word-bridge",
  pitch: "word-pitch",
  midline: "word-midline",
  VAL: "word-val",
  "VAL angle": "word-val-angle",
  insert: "word-insert",
  "static balance": "word-static-balance",
  "bow-tie": "word-bow-tie",
  "oil pattern": "word-oil-pattern",
  film: "word-film",
  "oil ratio": "word-oil-ratio",
  taper: "word-taper",
  polyester: "word-polyester",
  urethane: "word-urethane",
  reactive: "word-reactive",
  finish: "word-finish",
  grit: "word-grit",
  polish: "word-polish",
  squash: "word-squash",
  "95 % interval": "word-95-interval",
  "first order": "word-first-order",
  "total order": "word-total-order",
  weight: "word-weight",
  volume: "word-volume",
  "middle RG": "word-middle-rg",
  "high RG": "word-high-rg",
  piece: "word-piece",
  position: "word-position",
  "ball diameter": "word-ball-diameter",
  cut: "word-cut",
  hole: "word-hole",
  speed: "word-speed",
  time: "word-time",
  slip: "word-slip",
  "axis migration": "word-axis-migration",
  pocket: "word-pocket",
  "published limit": "word-published-limit",
  pour: "word-pour",
  "cost index": "word-cost-index",
  "search start": "word-search-start",
  tolerance: "word-tolerance",
  scrap: "word-scrap",
  histogram: "word-histogram",
  "standard deviation": "word-standard-deviation",
  percentile: "word-percentile",
  density: "word-density",
} as const;

export type Word = keyof typeof WORDS;

export const isWord = (word: string): word is Word => word in WORDS;

/** The word as it is called in the page's language. */
export const nameOf = (word: Word): string => say(`${WORDS[word]}.name`);

/** What it means, in one sentence. */
export const meaningOf = (word: Word): string => say(WORDS[word]);
