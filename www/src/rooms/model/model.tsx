import "./model.css";
import { useEffect, useRef } from "preact/hooks";
import rulesSpanish from "../../../../docs/coach-rules.es.md";
import rules from "../../../../docs/coach-rules.md";
import noteSpanish from "../../../../docs/model.es.md";
import note from "../../../../docs/model.md";
import { type Language, language } from "../../locale/language";
import { useStore } from "../../store";
import { Edition } from "./edition";
import { say } from "./say";

const NOTES: Record<Language, string[]> = { en: [note, rules], es: [noteSpanish, rulesSpanish] };

/** What the model assumes and leaves out, and what coaches say: the notes of the repository, built into the page. */
export function ModelNote() {
  const store = useStore();
  const back = useRef<HTMLButtonElement>(null);
  // The reader comes from elsewhere on the page, and the keyboard with them.
  useEffect(() => back.current?.focus({ preventScroll: true }), []);
  return (
    <div class="model-note">
      <p class="model-actions">
        <button type="button" ref={back} onClick={() => store.look({ room: "lane" })}>
          {say("model-back")}
        </button>
        <button type="button" onClick={() => print()}>
          {say("model-print")}
        </button>
      </p>
      {NOTES[language()].map((html, n) => (
        // Fixed when the page was built: no text of anybody else's gets in here.
        <article key={n} lang={language()} dir="ltr" dangerouslySetInnerHTML={{ __html: html }} />
      ))}
      <Edition />
    </div>
  );
}
