/** A text of at most so many letters: a longer one in part, and that it goes on. */
export const shorten = (text: string, most: number): string => {
  const letters = [...text];
  return letters.length > most ? `${letters.slice(0, most - 1).join("")}…` : text;
};
