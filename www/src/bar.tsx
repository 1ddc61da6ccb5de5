import { useSignal } from "@preact/signals";
import { useEffect, useState } from "preact/hooks";
import { aloud } from "./aloud";
import { open, saveBall, saveShot } from "./files";
import { say } from "./frame";
import { useJobs } from "./jobs";
import { chooseLanguage, LANGUAGES, type Language, spoken } from "./locale/language";
import { Notice, Standing } from "./notices";
import { NewerPage } from "./offline/newer-page";
import { OpenFile } from "./parts/open-file";
import { PlacesNav } from "./places";
import { isShelfFile, openOnShelf } from "./rooms/shelf/exchange";
import { closeShare, ShareButton, SharePanel } from "./share/share";
import { useShelf } from "./shelf/shelf";
import { type Theme, type Units, useStore } from "./store";

/** The top of the page: undo, files, units, light or dark. */
export function Bar() {
  const store = useStore();
  const jobs = useJobs();
  const shelf = useShelf();
  const [menu, setMenu] = useState(false);
  const sharing = useSignal(false);
  const view = store.view.value;

  function undo() {
    if (store.canUndo.peek()) aloud("undo", say("frame-undone"));
    store.undo();
  }

  function redo() {
    if (store.canRedo.peek()) aloud("undo", say("frame-redone"));
    store.redo();
  }

  useEffect(() => {
    function press(event: KeyboardEvent) {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      // A text that is no part of the ball is undone by the browser, letter by letter.
      if (event.target instanceof Element && event.target.closest("[data-own-undo]")) return;
      const key = event.key.toLowerCase();
      if (key === "z") {
        event.preventDefault();
        if (event.shiftKey) redo();
        else undo();
      } else if (key === "y") {
        event.preventDefault();
        redo();
      }
    }
    addEventListener("keydown", press);
    return () => removeEventListener("keydown", press);
  }, [store]);

  /** What opened last closes first. */
  function closeInnermost(event: KeyboardEvent) {
    if (event.key !== "Escape") return;
    if (sharing.peek()) return closeShare(sharing);
    if (!menu) return;
    setMenu(false);
    document.getElementById("bar-menu")?.focus();
  }

  async function openFile(file: File): Promise<void> {
    if (await isShelfFile(file)) {
      await openOnShelf(store, jobs, shelf, [file]);
      store.look({ room: "shelf" });
    } else {
      await open(store, jobs, file);
    }
  }

  async function choose(tag: string): Promise<void> {
    try {
      await chooseLanguage(tag as Language);
      // All of the page is drawn anew, the control too.
      requestAnimationFrame(() => document.getElementById("bar-language")?.focus());
    } catch {
      store.notice.value = () => say("frame-language-missing");
    }
  }

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: Escape closes what is open wherever the keyboard is in it.
    <header class="bar" data-open={menu || undefined} onKeyDown={closeInnermost}>
      <h1 class="bar-name">
        Pithball <span class="bar-tag">{say("frame-tag")}</span>
      </h1>
      <PlacesNav />
      <div class="bar-group">
        <button type="button" disabled={!store.canUndo.value} onClick={undo}>
          {say("frame-undo")}
        </button>
        <button type="button" disabled={!store.canRedo.value} onClick={redo}>
          {say("frame-redo")}
        </button>
        <button
          type="button"
          class="bar-menu"
          id="bar-menu"
          aria-expanded={menu}
          onClick={() => setMenu(!menu)}
        >
          {say("frame-more")}
        </button>
      </div>
      <div class="bar-group bar-tucked">
        <OpenFile label={say("frame-open-label")} onOpen={([file]) => file && void openFile(file)}>
          {say("frame-open")}
        </OpenFile>
        <button
          type="button"
          onClick={() => {
            saveBall(store.doc.value);
            if (store.derived.value.ballProblem) {
              store.notice.value = () => say("frame-saved-wrong");
            }
          }}
        >
          {say("frame-save-ball")}
        </button>
        <button type="button" onClick={() => saveShot(store.doc.value)}>
          {say("frame-save-shot")}
        </button>
        <ShareButton open={sharing} />
      </div>
      <div class="bar-group bar-tucked">
        <label>
          <span class="bar-label">{say("frame-units")}</span>
          <select
            value={view.units}
            onChange={(event) => store.look({ units: event.currentTarget.value as Units })}
          >
            <option value="trade">{say("frame-units-trade")}</option>
            <option value="metric">{say("frame-units-metric")}</option>
          </select>
        </label>
        <label>
          <span class="bar-label">{say("frame-theme")}</span>
          <select
            value={view.theme}
            onChange={(event) => store.look({ theme: event.currentTarget.value as Theme })}
          >
            <option value="system">{say("frame-theme-system")}</option>
            <option value="light">{say("frame-theme-light")}</option>
            <option value="dark">{say("frame-theme-dark")}</option>
          </select>
        </label>
        <label>
          <span class="bar-label">{say("frame-language")}</span>
          <select
            id="bar-language"
            value={spoken.value.tag}
            onChange={(event) => void choose(event.currentTarget.value)}
          >
            {Object.entries(LANGUAGES).map(([tag, name]) => (
              <option key={tag} value={tag} lang={tag}>
                {name}
              </option>
            ))}
          </select>
        </label>
      </div>
      <SharePanel open={sharing} />
      <Notice />
      <Standing />
      <NewerPage />
    </header>
  );
}
