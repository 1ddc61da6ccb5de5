// What a change of language, or of units, reaches: what was said before it, what has a name, a lesson in front.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { launch } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const spanishPage = () => site.open({ locale: "es-MX", reducedMotion: "reduce" });
const speak = (page, tag) => page.locator(".bar select").last().selectOption(tag);
const measure = (page, units) => page.locator(".bar select").first().selectOption(units);
const json = (name, content) => ({
  name,
  mimeType: "application/json",
  buffer: Buffer.from(typeof content === "string" ? content : JSON.stringify(content)),
});

test("what was said is said again in the language chosen since", async () => {
  const { page, context, check } = await spanishPage();
  const notice = page.locator(".notice");
  await page.locator("input[type=file]").first().setInputFiles(json("roto.ball.json", "{"));
  await notice.getByText("No se abrió roto.ball.json.").waitFor();
  await speak(page, "en");
  await notice.getByText("roto.ball.json was not opened.").waitFor();
  await speak(page, "es");
  await page.getByRole("button", { name: "Estante", exact: true }).click();
  await page.getByRole("button", { name: "Poner en el Estante", exact: true }).click();
  const said = page.locator(".shelf-said");
  await said.getByText("En el estante: N.º 3, de tres piezas.").waitFor();
  await speak(page, "en");
  await said.getByText("Put on the shelf: N.º 3, de tres piezas.").waitFor();
  const elsewhere = {
    format: "pithball.shot/1",
    ball: "../balls/x.ball.json",
    hand: "right",
    release: {
      speed_mph: 17,
      revs_rpm: 300,
      axis_rotation_deg: 45,
      axis_tilt_deg: 12,
      launch_angle_deg: 2,
      board: 20,
    },
    layout: { pin_to_pap_in: 4, drilling_angle_deg: 45, start_turn_deg: 0 },
    lane: { zones: [{ from_ft: 0, to_ft: 63, mu: 0.1 }] },
  };
  await page.getByLabel("Files to put on the shelf").setInputFiles(json("lejos.shot.json", elsewhere));
  await said.getByText("lejos.shot.json was not read. Its ball is in another file").waitFor();
  await speak(page, "es");
  await said.getByText("No se leyó lejos.shot.json. Su bola está en otro archivo").waitFor();
  await check();
  await context.close();
});

test("a shelf that the browser does not keep says why in the language chosen since", async () => {
  const { page, context, check } = await site.open({ locale: "es-MX" });
  await page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException("no room", "QuotaExceededError");
    };
  });
  await page.getByRole("button", { name: "Estante", exact: true }).click();
  await page.getByRole("button", { name: "Poner en el Estante", exact: true }).click();
  const alert = page.locator(".shelf-standing [role=alert]");
  await alert.getByText("El espacio del navegador para esta página está lleno.").waitFor();
  await speak(page, "en");
  await alert.getByText("The browser's storage for this page is full.").waitFor();
  await check();
  await context.close();
});

test("what the page adds is named in Spanish: linings of holes, a worn pattern, the usual tolerances", async () => {
  const { page, context, check } = await spanishPage();
  await page.getByText("Taladrarla para una mano").click();
  await page.getByLabel("La bola está taladrada").check();
  await page.locator("#room-saw").getByRole("button", { name: "Por los agujeros" }).click();
  const lane = page.locator("#room-lane");
  await lane.locator("summary", { hasText: /^Pista: fricción/ }).click();
  await lane.getByLabel("Patrón").selectOption("house");
  await lane.getByText("Según pasan los juegos").click();
  await lane.getByRole("button", { name: "Usar la pista gastada" }).click();
  await lane.getByText("Gastado por un modelo, no medido.").waitFor();
  await lane.locator("summary", { hasText: /^Aceite: De la casa tras 3 juegos,/ }).waitFor();
  const scale = page.locator("#room-scale");
  await scale.getByText("Coladas con pequeñas desviaciones: cuántas pasan").click();
  const saving = page.waitForEvent("download");
  await scale.getByRole("button", { name: "Guardar tolerancias" }).click();
  const saved = await saving;
  assert.equal(saved.suggestedFilename(), "habituales.tolerances.json");
  const file = JSON.parse(readFileSync(await saved.path(), "utf8"));
  assert.match(file.note, /^Elección del modelo, sin fuente/);
  await page.getByRole("button", { name: "Estante", exact: true }).click();
  for (const name of [/^Comparar N\.º 3/, /^Comparar N\.º 1/]) {
    await page.getByRole("checkbox", { name }).first().check();
  }
  await page.getByLabel("Corte").selectOption("saw");
  const parts = page.locator(".compare-parts").first();
  await parts.getByText("funda del pulgar").waitFor();
  assert.doesNotMatch(await parts.textContent(), /thumb|finger|cover/);
  await check();
  await context.close();
});

test("a cover and a hole without a name are called in Spanish", async () => {
  const { page, context, check } = await spanishPage();
  const read = (path) => readFileSync(new URL(`../../scenarios/${path}`, import.meta.url), "utf8");
  const ball = JSON.parse(read("balls/no-3-three-piece.ball.json"));
  delete ball.cover.name;
  ball.holes = [{ entry: [0.3, -0.4, 1], diameter_in: 1, depth_in: 2.5 }];
  await page.locator("input[type=file]").first().setInputFiles(json("mia.ball.json", ball));
  await page.locator("#room-bench").getByText("Buscar un núcleo para números deseados").click();
  await page.locator("#room-bench").getByText("cubierta: como está").waitFor();
  await page.locator("#room-scale").getByText("Cómo se cuela, y qué cuesta eso").click();
  await page.locator("#room-scale").getByRole("rowheader", { name: "4 cubierta" }).waitFor();
  await page.locator("#room-saw").getByRole("button", { name: "Cubierta", exact: true }).click();
  await page
    .locator("#room-saw")
    .getByText(/^Agujero 1: /)
    .waitFor();
  await check();
  await context.close();
});

test("usual figures and published limits are in the reader's units", async () => {
  const { page, context, check } = await spanishPage();
  const lane = page.locator("#room-lane");
  const scale = page.locator("#room-scale");
  await scale.getByText("Todas las reglas", { exact: true }).click();
  await lane.getByText("Lo habitual es de 2,0 a 2,5\u00a0mph").waitFor();
  await scale.getByText("permitido: 50\u00a0µin o menos").waitFor();
  await measure(page, "metric");
  await lane.getByText("Lo habitual es de 3,2 a 4,0\u00a0km/h").waitFor();
  await scale.getByText("permitido: 1,27\u00a0µm o menos").waitFor();
  await scale.getByText("permitido: 5 o menos").waitFor();
  await check();
  await context.close();
});

test("a comma before the decimals is taken in both languages and units, and what is no number is told", async () => {
  const { page, context, check } = await spanishPage();
  const typed = async (name, text) => {
    const field = page.getByRole("textbox", { name }).first();
    await field.fill(text);
    return field;
  };
  for (const [tag, name, says] of [
    ["es", /^Densidad/, "Todavía no es un número; se sigue usando 2,55."],
    ["en", /^Density/, "Not a number yet; still using 2.55."],
  ]) {
    await speak(page, tag);
    for (const units of ["trade", "metric"]) {
      await measure(page, units);
      const field = await typed(name, "2,55");
      await field.blur();
      assert.equal(await field.inputValue(), tag === "es" ? "2,55" : "2.55");
      await typed(name, "2,55 g");
      await page.getByText(says).waitFor();
      await typed(name, "2.55");
    }
  }
  await check();
  await context.close();
});

/** What a learner hands in who took lessons in English. */
const ANSWERED = {
  format: "pithball.progress/1",
  learner: "Ben",
  lessons: [
    {
      id: "what-holes-change",
      title: "What holes change",
      of_steps: 5,
      steps: [
        {
          id: "how-much-goes",
          title: "How much goes?",
          passed: true,
          answer: { outcome: "low", said: "1.00 oz", number: 1 },
        },
      ],
    },
    {
      id: "making-a-lighter-ball",
      title: "Making a lighter ball",
      of_steps: 5,
      steps: [
        {
          id: "which-piece",
          title: "Which piece?",
          passed: true,
          answer: { outcome: "wrong", said: "It makes no odds. Weight is weight.", option: 2 },
        },
      ],
    },
    {
      id: "skid-hook-roll",
      title: "Skid, hook, roll",
      of_steps: 5,
      steps: [
        {
          id: "draw-the-path",
          title: "Draw the path",
          passed: true,
          answer: {
            outcome: "wrong",
            said: "by boards 20 at 0 ft, 10.5 at 60 ft",
            path: [
              [20, 0],
              [10.5, 60],
            ],
          },
        },
      ],
    },
  ],
};

test("a class's wrong answers are told in the reader's language and units", async () => {
  const { page, context, check } = await spanishPage();
  await page.getByRole("button", { name: "Lecciones", exact: true }).click();
  await page.locator(".lessons-entry").nth(19).waitFor();
  await page.getByRole("button", { name: "Una clase", exact: true }).click();
  const spanish = structuredClone(ANSWERED);
  spanish.learner = "Ana";
  spanish.lessons[1].steps[0].answer.said = "Da igual. El peso es el peso.";
  await page
    .locator("#room-lessons input[type=file]")
    .setInputFiles([json("ben.progress.json", ANSWERED), json("ana.progress.json", spanish)]);
  const wrong = page.locator(".class-wrong");
  const told = async () =>
    (await wrong.allTextContents()).map((text) => text.replaceAll("\u00a0", " ")).sort();
  await wrong.nth(2).waitFor();
  assert.deepEqual(await told(), [
    "2 ×: Da igual. El peso es el peso.",
    "2 ×: demasiado poco, por ejemplo 1,00 oz",
    "2 ×: otro recorrido, por ejemplo por la tabla 20 (0 ft), la tabla 10,5 (60 ft)",
  ]);
  await measure(page, "metric");
  assert.deepEqual(await told(), [
    "2 ×: Da igual. El peso es el peso.",
    "2 ×: demasiado poco, por ejemplo 28,3 g",
    "2 ×: otro recorrido, por ejemplo por la tabla 20 (0,0 m), la tabla 10,5 (18,3 m)",
  ]);
  await check();
  await context.close();
});

test("a lesson of one's own has its things in the page's language, and begins its step anew in another", async () => {
  const { page, context, check } = await spanishPage();
  await page.getByRole("button", { name: "Lecciones", exact: true }).click();
  await page.locator(".lessons-entry").nth(19).waitFor();
  await page.getByRole("button", { name: "Escribir una", exact: true }).click();
  const at = await page.locator(".write-files option").allTextContents();
  await page.locator(".write-files select").selectOption({ label: at.find((one) => /mismo peso/.test(one)) });
  const text = page.locator(".write textarea");
  await text.fill((await text.inputValue()).replace("minutes = 10", "minutes = 11"));
  await page.getByRole("heading", { name: "Está bien hecha" }).waitFor();
  const english = await text.inputValue();
  await text.fill(english.replaceAll("inner core", "nada"));
  await page.getByRole("heading", { name: "Qué está mal" }).waitFor();
  await text.fill(english.replaceAll("inner core", "núcleo interior"));
  await page.getByRole("heading", { name: "Está bien hecha" }).waitFor();
  await text.fill(english);
  await page.getByRole("heading", { name: "Está bien hecha" }).waitFor();
  const write = page.locator(".write");
  await write.getByRole("button", { name: "En papel", exact: true }).click();
  await page.locator(".paper-page").getByText("el peso de la pieza que se llama núcleo interior").waitFor();
  assert.doesNotMatch(await page.locator(".paper-page").textContent(), /inner core/);
  await page.getByRole("button", { name: "Escribir una", exact: true }).click();
  await page.getByRole("button", { name: "Probarla" }).click();
  await page.locator("#lesson-step").waitFor();
  const parts = page.locator("#room-saw");
  await parts.getByText("núcleo interior").first().waitFor();
  await speak(page, "en");
  await parts.getByText("inner core").first().waitFor();
  assert.match(await page.locator("#room-lesson").textContent(), /Trying it out\. Step 1/);
  await check();
  await context.close();
});

test("a ball of the house has its names in the language it was put on the bench in", async () => {
  const { page, context, check } = await spanishPage();
  const name = () => page.locator(".ball-name input").inputValue();
  assert.equal(await name(), "N.º 3, de tres piezas");
  await page.locator(".template").nth(3).click();
  assert.equal(await name(), "N.º 4, núcleo anidado");
  const parts = await page.locator(".part-title").allTextContents();
  assert.deepEqual(parts, ["núcleo exterior", "núcleo interior", "corazón", "cubierta"]);
  assert.equal(await page.locator(".template[aria-current]").textContent(), "núcleo anidado");
  await speak(page, "en");
  assert.equal(await name(), "N.º 4, núcleo anidado", "one's own names are not translated");
  await page.locator(".template").nth(3).click();
  assert.equal(await name(), "No. 4, nested core");
  await check();
  await context.close();
});

test("a lesson taken in Spanish goes on in English, at its step, and back", async () => {
  const { page, context, check } = await spanishPage();
  await page.getByRole("button", { name: "Lecciones", exact: true }).click();
  const courses = page.locator("#room-lessons section > h3");
  await page.locator(".lessons-entry").nth(19).waitFor();
  assert.deepEqual((await courses.allTextContents()).slice(0, 3), [
    "Qué hay dentro",
    "Qué hace en la pista",
    "En el taller y en la fábrica",
  ]);
  await page.locator(".lessons-entry .primary").first().click();
  const step = page.locator("#lesson-step");
  const reads = (title) => step.and(page.getByText(title, { exact: true })).waitFor();
  await reads("Mira dentro de la bola de la casa");
  await page.locator(".lesson-way .primary").click();
  await reads("¿Qué bola rueda antes?");
  assert.equal(await page.locator(".lesson-far").getAttribute("value"), "1");
  await page.locator(".option input").last().check();
  await page.locator(".question [type=submit]").click();
  const answer = page.locator(".answered > p").first();
  const spanish = await answer.textContent();
  const things = page.locator("#room-saw");
  assert.match(await things.textContent(), /núcleo interior/);
  assert.match(spanish, /\d,\d/);
  await speak(page, "en");
  await reads("Which ball rolls first?");
  const english = await answer.textContent();
  assert.match(await things.textContent(), /inner core/);
  assert.match(english, /\d\.\d/);
  assert.deepEqual(english.match(/\d+/g), spanish.match(/\d+/g));
  await speak(page, "es");
  await reads("¿Qué bola rueda antes?");
  assert.equal(await answer.textContent(), spanish);
  assert.match(await things.textContent(), /núcleo interior/);
  await check();
  await context.close();
});
