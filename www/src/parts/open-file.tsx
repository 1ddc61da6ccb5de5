import type { ComponentChildren } from "preact";
import { useRef } from "preact/hooks";

interface OpenFileProps {
  /** On the button. */
  children: ComponentChildren;
  /** What the browser's own field is called. */
  label: string;
  multiple?: boolean;
  /** Kinds of files, where they are not JSON. */
  accept?: string;
  onOpen(files: File[]): void;
}

/** A button that lets a person choose files of ours. */
export function OpenFile({ children, label, multiple, accept, onOpen }: OpenFileProps) {
  const picker = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" onClick={() => picker.current?.click()}>
        {children}
      </button>
      <input
        class="visually-hidden"
        type="file"
        accept={accept ?? ".json,application/json"}
        multiple={multiple}
        tabIndex={-1}
        aria-label={label}
        ref={picker}
        onChange={(event) => {
          const files = [...(event.currentTarget.files ?? [])];
          // So that the same file can be chosen again.
          event.currentTarget.value = "";
          if (files.length > 0) onOpen(files);
        }}
      />
    </>
  );
}
