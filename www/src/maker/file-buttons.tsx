import { open, saveJson } from "../files";
import { OpenFile } from "../parts/open-file";
import { useStore } from "../store";
import type { Problem } from "../types";

interface FileButtonsProps {
  /** "tolerances" or "target": what it is called, and the ending of its files. */
  kind: string;
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
  return (
    <p class="maker-buttons">
      <OpenFile
        label={`${kind.charAt(0).toUpperCase()}${kind.slice(1)} file`}
        onOpen={([chosen]) => chosen && void open(store, chosen)}
      >
        Open {kind}
      </OpenFile>
      <button
        type="button"
        disabled={problem !== null}
        onClick={() => saveJson(file.name ?? store.derived.value.file.name, `${kind}.json`, file)}
      >
        Save {kind}
      </button>
      <button type="button" disabled={!own} onClick={usual}>
        {back}
      </button>
    </p>
  );
}
