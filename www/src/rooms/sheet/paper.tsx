// The paper the sheet is laid out for, and telling the printer so.
import type { Signal } from "@preact/signals";
import { useLayoutEffect } from "preact/hooks";
import { say } from "./say";

export type Paper = "A4" | "Letter";

/** Letter where it is the usual paper (common practice), A4 everywhere else. */
export function usualPaper(): Paper {
  return /-(US|CA|MX|PH)$/i.test(navigator.language) ? "Letter" : "A4";
}

/** The browser names a printed file after the page's title. */
export function useTitle(title: string): void {
  useLayoutEffect(() => {
    const before = document.title;
    document.title = title;
    return () => {
      document.title = before;
    };
  }, [title]);
}

/** Without margins the browser adds neither its own nor date and address; what runs over many pages has some. */
export function usePaper(paper: Paper, margin = "0"): void {
  useLayoutEffect(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(`@page { size: ${paper}; margin: ${margin}; }`);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((other) => other !== sheet);
    };
  }, [paper, margin]);
}

/** Which paper, to choose. */
export function PaperSelect({ paper }: { paper: Signal<Paper> }) {
  return (
    <label>
      {say("sheet-paper")}
      <select
        value={paper.value}
        onChange={(event) => {
          paper.value = event.currentTarget.value as Paper;
        }}
      >
        <option value="A4">A4</option>
        <option value="Letter">{say("sheet-letter-paper")}</option>
      </select>
    </label>
  );
}
