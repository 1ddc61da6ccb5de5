import "./styles/main.css";
import { effect } from "@preact/signals";
import { render } from "preact";
import { App } from "./app";
import { say } from "./frame";
import { type Jobs, JobsContext, startJobs, waiting } from "./jobs";
import { keepFocus } from "./keep-focus";
import { keepPlace } from "./keep-place";
import { speak, spoken, wantedLanguage } from "./locale/language";
import { moreModule } from "./more-module";
import { keepPage } from "./offline/offline";
import { Fault } from "./parts/fault";
import { loadRest } from "./parts/part";
import { autosave, type Found, restore } from "./persist";
import { isProblem } from "./problem";
import { firstDoc } from "./rooms/bench/templates";
import { watchLinks } from "./share/link";
import { createShelf, ShelfContext } from "./shelf/shelf";
import { createStore, type Doc, FIRST_VIEW, type Store, StoreContext } from "./store";
import type { WasmModule } from "./types";
import { startModule } from "./wasm";

function build(wasm: WasmModule, found: Found): Store {
  if ("kept" in found) {
    const { doc, good, view, aside, loan, linked } = found.kept;
    try {
      return createStore(wasm, doc, good ?? doc, { ...FIRST_VIEW, ...view }, aside, loan, linked);
    } catch (error) {
      if (!isProblem(error)) throw error;
      // Written by another version with other limits: the ball stays on the
      // bench with its mistake named, beside the first template's numbers.
      return createStore(wasm, doc, firstDoc(), { ...FIRST_VIEW, ...view }, aside, loan, linked);
    }
  }
  const first = firstDoc();
  const selected = first.ball.pieces.length;
  return createStore(wasm, first, first, { ...FIRST_VIEW, selected });
}

/** The doc as kept, for the panel that stands in when the page cannot start. */
function keptDoc(found: Found): Doc | null {
  return "kept" in found ? found.kept.doc : null;
}

const QUIET_MS = 200;

/** Fetches the rest of the page, after which it asks for nothing more, and starts the workers. */
async function loadOn(store: Store, started: (jobs: Jobs) => void): Promise<void> {
  performance.mark("first picture");
  const rest = loadRest();
  const module = await moreModule().catch(() => null);
  if (module) {
    const jobs = startJobs(module);
    started(jobs);
    watchLinks(store, jobs);
  } else store.notice.value = () => say("frame-rest-missing");
  await rest;
  performance.mark("loaded");
  await keepPage();
}

async function start(root: HTMLElement): Promise<void> {
  const found = restore();
  // Without the texts of its language the page is there in English, and says so.
  const language = speak(wantedLanguage()).then(
    () => true,
    () => false,
  );
  let store: Store;
  try {
    const [wasm] = await Promise.all([startModule(), language]);
    store = build(wasm, found);
  } catch (error) {
    root.replaceChildren();
    render(<Fault error={error} doc={keptDoc(found)} />, root);
    return;
  }
  if (!(await language)) store.notice.value = () => say("frame-language-missing");
  if ("trouble" in found) {
    const said = found.trouble === "work-unreadable" ? store.notice : store.unkept;
    said.value = () => say(found.trouble);
  }
  autosave(store);
  effect(() => {
    document.title = say("frame-title");
  });
  effect(() => {
    document.documentElement.dataset.theme = store.view.value.theme;
  });
  addEventListener("error", (event) => {
    // Without an error it is only the browser's remark, such as on a resize.
    if (event.error) store.fail(event.error);
  });
  addEventListener("unhandledrejection", (event) => store.fail(event.reason));
  let started = (_: Jobs) => {};
  const jobs = waiting(
    new Promise((resolve) => {
      started = resolve;
    }),
  );
  const shelf = createShelf(store);
  root.replaceChildren();
  keepFocus(root);
  keepPlace(root);
  render(
    <StoreContext.Provider value={store}>
      <JobsContext.Provider value={jobs}>
        <ShelfContext.Provider value={shelf}>
          <Page />
        </ShelfContext.Provider>
      </JobsContext.Provider>
    </StoreContext.Provider>,
    root,
  );
  // Once the first picture is there and the page answers: what is not needed for it.
  requestAnimationFrame(() => setTimeout(() => void loadOn(store, started), QUIET_MS));
}

/** All of it anew when another language is chosen; what the reader made is in the store. */
const Page = () => <App key={spoken.value.tag} />;

const root = document.getElementById("page");
if (root) await start(root);
