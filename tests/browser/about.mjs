// How tests get about the page, wide or narrow: by the buttons that a person uses.

/** The rooms and places there are to go to. */
export const nav = (page) => page.getByRole("navigation", { name: /Places|Rooms/ });

/** To one of them. */
export const go = (page, name) => nav(page).getByRole("button", { name, exact: true }).click();

/** To Lessons, once all of them are read. */
export async function toLessons(page) {
  await go(page, "Lessons");
  await page.getByText("Reading the lessons").waitFor({ state: "detached" });
}

/** Within Lessons. */
export const inLessons = (page, name) =>
  page.getByRole("navigation", { name: "In Lessons" }).getByRole("button", { name }).click();

/** The lesson that has the bench. */
export const lessonPanel = (page) => page.getByRole("region", { name: "Lesson", exact: true });

/** The first lesson of the list. */
export const FIRST_LESSON = "Why a house ball goes long";
