// What the glossary's pictures show, one sentence each.

import text from "../../../locales/en/shown.ftl";
import { phrases } from "../../locale/say";
import { WORDS, type Word } from "../../words";

const say = phrases(text);

export const shownOf = (word: Word): string => say(WORDS[word].replace(/^word-/, "shows-"));
