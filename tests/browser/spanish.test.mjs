// The rooms in Spanish: what they say, with a decimal comma, and nothing of the English texts.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { after, before, test } from "node:test";
import { accessibilityFaults, launch, shoot } from "./harness.mjs";

const npm = createRequire(new URL("../../www/package.json", import.meta.url));
const { FluentParser } = npm("@fluent/syntax");

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

/** A room: the parts whose texts it says, how it is opened and all of it brought out, and some of what it says then. */
const ROOMS = {
  Sierra: {
    parts: ["saw", "cover"],
    async open(room) {
      const seen = [];
      for (const name of ["Dos cortes", "Cubierta", "Dibujo"]) {
        await room.getByRole("button", { name, exact: true }).click();
        if (name === "Cubierta") await room.getByText("Cortar por el lugar más delgado").waitFor();
        seen.push(await heard(room));
      }
      await room.getByText("La bola está cortada").waitFor();
      return seen;
    },
    says: [
      /La bola está cortada a lo largo del eje del pin, por el centro/,
      /En su lugar más delgado la cubierta mide 0,775\sin/,
      /Guardar el corte como SVG/,
      /y toda ella menos de 1,00\sin/,
    ],
  },
};

/** All a room says, to the eye and to the ear. */
const heard = (room) =>
  room.evaluate((element) => {
    const named = [...element.querySelectorAll("[aria-label], [title], [placeholder]")].flatMap((one) => [
      one.getAttribute("aria-label"),
      one.getAttribute("title"),
      one.getAttribute("placeholder"),
    ]);
    return [element.textContent, ...named.filter((text) => text)].join("\n").replace(/\u00ad/g, "");
  });

/** Texts of an English file that stand as they are: no variables or elements, longer than a word, other in Spanish. */
function plainTexts(part) {
  const text = (language) => {
    const path = new URL(`../../www/locales/${language}/${part}.ftl`, import.meta.url);
    const { body } = new FluentParser().parse(readFileSync(path, "utf8"));
    const values = body.flatMap(({ type, id, value }) =>
      type === "Message" && value?.elements.every((element) => element.type === "TextElement")
        ? [[id.name, value.elements.map((element) => element.value).join("")]]
        : [],
    );
    return new Map(values);
  };
  const spanish = text("es");
  return [...text("en")].filter(
    ([id, english]) => english.length > 12 && !english.includes("<") && english !== spanish.get(id),
  );
}

for (const [name, { parts, open, says, place }] of Object.entries(ROOMS)) {
  test(`${name} speaks Spanish`, async () => {
    const { page, check } = await site.open({ locale: "es-MX", reducedMotion: "reduce" });
    if (place) await page.getByRole("button", { name: place, exact: true }).click();
    const room = page.getByRole("region", { name, exact: true });
    await room.waitFor();
    const all = [...((await open(room, page)) ?? []), await heard(room)].join("\n");
    for (const text of says) assert.match(all, text);
    for (const part of parts) {
      for (const [id, english] of plainTexts(part)) {
        assert.ok(!all.includes(english), `English in ${name}: ${id} = ${english}`);
      }
    }
    assert.deepEqual(await accessibilityFaults(page), []);
    await shoot(page, `spanish-${name.toLowerCase()}`);
    await check();
  });
}
