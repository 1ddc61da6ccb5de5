import { useEffect, useState } from "preact/hooks";
import { useStore } from "../../store";

/** Whether the page is dark now, by choice or as the system is. */
export function useDark(): boolean {
  const theme = useStore().view.value.theme;
  const [query] = useState(() => matchMedia("(prefers-color-scheme: dark)"));
  const [system, setSystem] = useState(query.matches);
  useEffect(() => {
    const change = () => setSystem(query.matches);
    query.addEventListener("change", change);
    return () => query.removeEventListener("change", change);
  }, [query]);
  return theme === "system" ? system : theme === "dark";
}
