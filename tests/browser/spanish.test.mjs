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
  Banco: {
    parts: ["bench"],
    async open(room) {
      await room.getByText("Taladrarla para una mano").click();
      await room.getByLabel("La bola está taladrada").check();
      await room.locator(".drill-picture").waitFor();
      await room.evaluate((all) => {
        for (const fold of all.querySelectorAll("details:not(.maker)")) fold.open = true;
      });
    },
    says: [
      /Partes, en el orden de colada/,
      /núcleo interior\d,\d\d\sg\/cc; \d,\d\d\slb/,
      /Suele tener de \d,\d+ a \d,\d+ g\/cc/,
      /Hacia el pin, z/,
      /Del pin al PAP/,
      /Dedo anular: 0,72\sin de ancho, 1,13\sin de fondo, inserto/,
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

test("a ball of the house has its names in the language it was put on the bench in", async () => {
  const { page, context, check } = await site.open({ locale: "es-MX" });
  const name = () => page.locator(".ball-name input").inputValue();
  const speak = (tag) => page.locator(".bar select").last().selectOption(tag);
  assert.equal(await name(), "N.º 3, de tres piezas");
  await page.locator(".template").nth(3).click();
  assert.equal(await name(), "N.º 4, núcleo anidado");
  const parts = await page.locator(".part-title").allTextContents();
  assert.deepEqual(parts, ["núcleo exterior", "núcleo interior", "corazón", "cubierta"]);
  assert.equal(await page.locator(".template[aria-current]").textContent(), "núcleo anidado");
  await speak("en");
  assert.equal(await name(), "N.º 4, núcleo anidado", "one's own names are not translated");
  await page.locator(".template").nth(3).click();
  assert.equal(await name(), "No. 4, nested core");
  await check();
  await context.close();
});
