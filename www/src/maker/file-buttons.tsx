import { openAs, saveJson } from "../files";
import { OpenFile } from "../parts/open-file";
import { useStore } from "../store";
import type { Problem } from "../types";
import { before, putInPlace } from "./before";
import { say } from "./say";

/** What each kind is called. */
const TEXTS = {
  tolerances: { file: "maker-tolerances-file", open: "maker-tolerances-open", save: "maker-tolerances-save" },
  target: { file: "maker-target-file", open: "maker-target-open", save: "maker-target-save" },
};

interface FileButtonsProps {
  /** What it is, and the ending of its files. */
  kind: keyof typeof TEXTS;
  /** What is asked for as it stands. */
  asked: {
    file: { name?: string };
    problem: Problem | null;
    /** Whether the reader changed anything. */
    own: boolean;
    usual(): void;
  };
  /** Back to what it was before the reader changed anything. */
  back: string;
}

/** What is asked for from a file, into one, and as it was at first. */
export function FileButtons({ kind, asked, back }: FileButtonsProps) {
  const store = useStore();
  const { file, problem, own, usual } = asked;
  const texts = TEXTS[kind];
  return (
    <p class="maker-buttons">
      <OpenFile label={say(texts.file)} onOpen={([chosen]) => chosen && void openAs(store, kind, chosen)}>
        {say(texts.open)}
      </OpenFile>
      <button
        type="button"
        disabled={problem !== null}
        onClick={() => saveJson(file.name ?? store.derived.value.file.name, `${kind}.json`, file)}
      >
        {say(texts.save)}
      </button>
      <button type="button" disabled={!own} onClick={usual}>
        {back}
      </button>
      {before[kind].value !== null && (
        <button
          type="button"
          onClick={() => {
            putInPlace(store, kind, before[kind].peek());
            store.notice.value = () => say("maker-numbers-are-back");
          }}
        >
          {say("maker-numbers-back")}
        </button>
      )}
    </p>
  );
}
