import { batch } from "@preact/signals";
import type { ComponentChildren } from "preact";
import { useId, useState } from "preact/hooks";
import { useAloud } from "../aloud";
import { useStore } from "../store";
import type { Problem } from "../types";
import { fieldText, measure, parseField, type Quantity, sentenceIn } from "../units";
import { say } from "./say";

export interface FieldProps {
  label: ComponentChildren;
  /** In the file's unit, like `min`, `max` and `step`. */
  value: number;
  quantity: Quantity;
  /** Ends of the slider; the number field takes more. */
  min: number;
  max: number;
  step: number;
  onChange(value: number): void;
  /** What is wrong with this very value, if anything. */
  problem?: Problem | null;
  /** Why a value is not taken, if it is not: then what was typed stays to be gone on with, and the value as it was. */
  refuse?(value: number): Problem | null;
  /** Worth knowing though not wrong, such as a published limit passed. */
  caution?: string | null;
  /** What this number does, in a few words. */
  hint?: string | null;
  /** Without the slider, where a row holds many numbers. */
  bare?: boolean;
}

/** A number: a slider to drag and a field to type in, with its unit. */
export function NumberField(props: FieldProps) {
  const { label, value, quantity, min, max, step, onChange, refuse, caution, hint, bare } = props;
  const units = useStore().view.value.units;
  const { unit, spoken } = measure(quantity, units);
  const id = useId();
  // What is being typed, kept as typed until the value changes by another way, and the value before it.
  const [draft, setDraft] = useState<{ text: string; value: number; began: number } | null>(null);
  const going = draft && draft.value === value ? draft : null;
  const typed = going?.text ?? null;
  const shown = fieldText(value, quantity, units);
  const means = typed === null ? null : parseField(typed, quantity, units);
  const text = typed ?? shown;
  const notNumber = typed !== null && means === null;
  const refused = means === null ? null : (refuse?.(means) ?? null);
  const problem = refused ?? props.problem;
  const wrong = notNumber || Boolean(problem);
  // What is wrong with the ball or the shot is said with their numbers; of the rest nobody else would tell.
  const own = notNumber
    ? say("parts-not-a-number", { value: shown })
    : problem?.place === ""
      ? sentenceIn(problem.message, units)
      : null;
  useAloud(own, own);

  function type(next: string) {
    const number = parseField(next, quantity, units);
    const taken = number === null || refuse?.(number) ? null : number;
    const began = going?.began ?? value;
    setDraft({ text: next, value: taken ?? began, began });
    batch(() => {
      // The first digits of what is then refused are not what stood there before.
      if (value !== began) onChange(began);
      if (taken !== null) onChange(taken);
    });
  }

  function leave() {
    // What is no number or not taken stays, with the reason beside it.
    if (!notNumber && !refused) setDraft(null);
  }

  function press(event: KeyboardEvent) {
    if (event.key === "Escape") {
      setDraft(null);
    } else if (event.key === "Enter") {
      leave();
    } else if (event.key === "ArrowUp" || event.key === "ArrowDown") {
      event.preventDefault();
      const by = event.key === "ArrowUp" ? step : -step;
      const next = Number((value + by).toFixed(6));
      type(fieldText(next, quantity, units));
    }
  }

  return (
    <div class={bare ? "field field-bare" : "field"} data-wrong={wrong || undefined}>
      <label class="field-label" id={`${id}-label`} for={id}>
        {label}
        {unit !== "" && <span class="visually-hidden">, {spoken}</span>}
      </label>
      {!bare && (
        <input
          type="range"
          class="field-slider"
          aria-labelledby={`${id}-label`}
          aria-valuetext={`${shown} ${spoken}`}
          min={min}
          max={max}
          step={step}
          value={value}
          onInput={(event) => {
            setDraft(null);
            onChange(Number(event.currentTarget.value));
          }}
        />
      )}
      <span class="field-number">
        <input
          id={id}
          type="text"
          dir="ltr"
          inputmode="decimal"
          autocomplete="off"
          spellcheck={false}
          value={text}
          aria-invalid={wrong}
          aria-describedby={wrong || caution ? `${id}-says` : hint ? `${id}-hint` : undefined}
          onInput={(event) => type(event.currentTarget.value)}
          onBlur={leave}
          onKeyDown={press}
        />
        {(unit !== "" || !bare) && (
          <span class="unit" aria-hidden="true">
            {unit}
          </span>
        )}
      </span>
      {hint && (
        <p class="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {(wrong || caution) && (
        <p class={wrong ? "says says-wrong" : "says says-caution"} id={`${id}-says`}>
          {own ?? (problem ? sentenceIn(problem.message, units) : caution)}
        </p>
      )}
    </div>
  );
}
