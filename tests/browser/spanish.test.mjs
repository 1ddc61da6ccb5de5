// The rooms in Spanish: what they say, with a decimal comma, and nothing of the English texts.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { after, before, test } from "node:test";
import { fileURLToPath } from "node:url";
import { accessibilityFaults, launch, shoot } from "./harness.mjs";

const npm = createRequire(new URL("../../www/package.json", import.meta.url));
const { FluentParser } = npm("@fluent/syntax");

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

/** What a learner hands in, who took the lesson in English. */
const PROGRESS = {
  format: "pithball.progress/1",
  learner: "Ana",
  lessons: [
    {
      id: "skid-hook-roll",
      title: "Skid, hook and roll",
      of_steps: 6,
      steps: [
        { id: "a", title: "One", passed: true, answer: { outcome: "right", said: "A", option: 0 } },
        { id: "b", title: "Two", passed: true, answer: { outcome: "wrong", said: "B", option: 1 } },
        { id: "c", title: "Three", passed: true, hints: 1, tries: 3 },
      ],
    },
  ],
};

/** A room: the parts whose texts it says, how it is opened and all of it brought out, and some of what it says then. */
const ROOMS = {
  Pista: {
    parts: ["lane", "draw", "oil", "area", "why"],
    async open(room, page) {
      const openAll = () =>
        room.evaluate((element) => {
          for (const fold of element.querySelectorAll("details")) fold.open = true;
        });
      const seen = [await heard(room)];
      // Another lane than the one before it, so that there is something to tell apart.
      await room.locator("summary", { hasText: /^Pista: fricción 0,04 hasta/ }).click();
      await room.getByLabel("Patrón").selectOption("house");
      await openAll();
      await openAll();
      await room.getByText("Una mano firme:").waitFor();
      await room.getByText("En total").waitFor();
      await room.getByText(/^Tras 3 juegos el mismo tiro/).waitFor();
      seen.push(await heard(room));
      await page.getByRole("button", { name: "Mano izquierda" }).click();
      await room.getByText("contada desde la izquierda").first().waitFor();
      return seen;
    },
    says: [
      /Desliza \d+\sft, hace gancho durante \d+\sft y rueda los últimos \d+\sft; entra a \d,\d° por la tabla \d+,\d\./,
      /contada desde la izquierda/,
      /Aceite: De la casa, 40,0\sft, 24,0\smL, 10:1/,
      /Con la suya: N\.º 3, de tres piezas/,
      /Fricción: 0,\d{3} en aceite grueso/,
      /llegaría al bolsillo|llega al bolsillo/,
    ],
  },
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
    parts: ["bench", "parts"],
    async open(room) {
      await room.locator(".part-head").last().click();
      await room.locator(".cover-surface select").last().selectOption("polished");
      const cover = await heard(room);
      await room.locator(".part-head").nth(2).click();
      await room.getByText("Taladrarla para una mano").click();
      await room.getByLabel("La bola está taladrada").check();
      await room.locator(".drill-picture").waitFor();
      await room.evaluate((all) => {
        for (const fold of all.querySelectorAll("details:not(.maker)")) fold.open = true;
      });
      await room
        .getByRole("textbox", { name: /^Densidad/ })
        .first()
        .fill("3,0,");
      return [cover];
    },
    says: [
      /Partes, en el orden de colada/,
      /núcleo interior\d,\d\d\sg\/cc; \d,\d\d\slb/,
      /Suele tener de \d,\d+ a \d,\d+ g\/cc/,
      /Hacia el pin z/,
      /Del pin al PAP/,
      /Agujeros: dedo medio, dedo anular, pulgar\./,
      /Poliéster, uretano o reactiva; con pulido o sin él\. En una pista con aceite/,
      /lijado y luego pulido/,
      /Todavía no es un número; se sigue usando 3\./,
      /Dedo anular: 0,72\sin de ancho, 1,13\sin de fondo, inserto/,
    ],
  },
  "Trabajos del Banco": {
    region: "Banco",
    parts: ["maker", "levers", "seek"],
    async open(room) {
      await room.getByText("Qué mueve qué: las palancas de la bola").click();
      await room.getByText("Lo que más mueve el diferencial es").waitFor();
      await room.getByText("Buscar un núcleo para números deseados").click();
      await room.getByRole("textbox", { name: "Puntos de partida" }).fill("2");
      await room.getByRole("button", { name: "Buscar un núcleo" }).click();
      await room.locator(".rung-card").first().waitFor({ timeout: 60_000 });
    },
    says: [
      /: \+0,00\d{3} por cada 0,/,
      /es el que más mueve/,
      /núcleo interior: densidad, anchura del perfil/,
      /2 de 2 puntos de partida lo cumplen/,
    ],
  },
  "Trabajos de la Balanza": {
    region: "Balanza",
    within: ".maker",
    parts: ["maker", "map", "scatter", "pouring"],
    async open(room) {
      await room.getByText("Mapa: RG y diferencial sobre dos controles").click();
      await room.getByText("Dibujado con 33 por 33 bolas.").waitFor({ timeout: 60_000 });
      await room.getByText("Cómo se cuela, y qué cuesta eso").click();
      await room.locator(".cost-chart").waitFor({ timeout: 60_000 });
      await room.getByText("Coladas con pequeñas desviaciones: cuántas pasan").click();
      await room.getByText(/^Cada pieza:/).click();
      await room.getByRole("textbox", { name: "Bolas" }).fill("500");
      await room.getByRole("button", { name: "Colar las dos" }).click();
      await room.locator(".beside .why-says").waitFor({ timeout: 60_000 });
      await room.getByRole("button", { name: "Colar 500 bolas" }).click();
      await room.getByText("Qué tolerancia sale más cara").waitFor({ timeout: 60_000 });
    },
    says: [
      /El RG bajo va de 2,\d{3}\sin a 2,\d{3}\sin/,
      /4 coladas, 4 moldes; se mezclan \d+,\d\d\slb/,
      /De estas, N\.º 6, de cinco piezas es la más cara/,
      /De 500 bolas: pasan \d+,\d%/,
      /Con las mismas tolerancias pasan/,
      /Densidad, ±/,
    ],
  },
  Estante: {
    place: "Estante",
    parts: ["shelf", "kept"],
    async open(room) {
      await room.getByRole("button", { name: "Poner en el Estante", exact: true }).click();
      await room.getByText("En el estante: N.º 3, de tres piezas.").waitFor();
      const seen = [await heard(room)];
      for (const name of [/^Comparar N\.º 3/, /^Comparar N\.º 1/]) {
        await room.getByRole("checkbox", { name }).first().check();
      }
      await room.getByText("Lo mismo en una tabla").click();
      await room
        .getByRole("listitem")
        .filter({ hasText: /^B entra/ })
        .waitFor();
      return seen;
    },
    says: [
      /Todavía nada|En el Estante: 1/,
      /guardada: \d/,
      /\d\d,\d\d\slb, RG \d,\d{3}\sin, diferencial \d,\d{3}\sin/,
      /B entra \d,\d° más (plana|inclinada)/,
      /Todas a la misma escala, cortadas a lo largo del eje del pin, por el centro/,
    ],
  },
  Hoja: {
    place: "Hoja",
    parts: ["sheet"],
    async open(room) {
      await room.getByRole("button", { name: "Imprimir…", disabled: false }).waitFor();
      const alone = await heard(room);
      await room.getByLabel("Comparar con").selectOption("house-1");
      await room.getByRole("button", { name: "Imprimir…", disabled: false }).waitFor();
      return [alone];
    },
    says: [
      /Las tablas 17,0 a 18,5 con 4° a 6° son las que mejor derriban/,
      /Mano derecha, 17,5\smph, 300\srpm; rotación del eje 55°/,
      /De A: su RG es 0,\d{3}\sin más bajo/,
      /Según la densidad de .+ en A, de .+ en B/,
    ],
  },
  Balanza: {
    parts: ["scale", "numbers"],
    async open(room, page) {
      await page.getByText("Taladrarla para una mano").click();
      await page.getByLabel("La bola está taladrada").check();
      for (const name of ["Todas las reglas", "Qué hacen estos números en un tiro", "¿Durará la cubierta?"]) {
        await room.getByText(name, { exact: true }).click();
      }
      await room.getByText("Esta bola con otros pesos", { exact: true }).click();
      await room.getByText("flota en el agua").waitFor();
      await room.getByText("Lugar más delgado", { exact: true }).waitFor();
    },
    says: [
      /Equilibrio estático sobre el agarre, se permite 3,00\soz/,
      /la mayor aportación es la de «.+»: el \d\d,\d% del RG con el \d\d,\d% del peso, porque está más afuera/,
      /flota en el agua si pesa menos de \d\d,\d\d\slb/,
      /medio/,
    ],
  },
  Lecciones: {
    place: "Lecciones",
    parts: ["lessons", "lesson"],
    async open(room, page) {
      const seen = [];
      await room.locator(".lessons-entry").nth(19).waitFor();
      seen.push(await heard(room));
      await room.getByRole("button", { name: "Una clase", exact: true }).click();
      await room.locator("input[type=file]").setInputFiles({
        name: "una.progress.json",
        mimeType: "application/json",
        buffer: Buffer.from(JSON.stringify(PROGRESS)),
      });
      await room.locator(".class-table").first().waitFor();
      seen.push(await heard(room));
      await room.getByRole("button", { name: "Escribir una", exact: true }).click();
      await room.locator(".write-files select").selectOption("0");
      await room.getByText("Está bien hecha").waitFor();
      await room.locator(".write-names summary").click();
      seen.push(await heard(room));
      await room.getByRole("button", { name: "En papel", exact: true }).click();
      await room.locator(".paper-page").waitFor();
      seen.push(await heard(room));
      await room.locator(".paper-choices select").first().selectOption("key");
      await room.getByText("Para quien enseña").waitFor();
      seen.push(await heard(room));
      await room.getByRole("button", { name: "Lecciones", exact: true }).click();
      await room.locator(".lessons-entry").nth(19).waitFor();
      await page
        .getByRole("button", { name: /^Mostrar a una sala/ })
        .first()
        .click();
      const slide = page.locator(".coach");
      const next = slide.getByRole("button", { name: "Siguiente", exact: true });
      while (await next.isEnabled()) {
        seen.push(await heard(slide));
        await next.click();
      }
      await slide.getByRole("button", { name: "Terminar", exact: true }).click();
      return seen;
    },
    says: [
      /Qué hay dentro/,
      /Unos 10 minutos, \d+ pasos/,
      /Tomar esta lección Por qué/,
      /Ana/,
      /1 de 2 predicciones correctas, 3 intentos fallidos, 1 ayuda/,
      /Cómo se lee: /,
      /Porque/,
      /Manos para A/,
      /Av Pág/,
    ],
  },
  "Palabras de las lecciones": {
    place: "Lecciones",
    region: "Lecciones",
    parts: ["lessons", "lesson", "words"],
    async open(room) {
      await room.getByRole("button", { name: "Palabras", exact: true }).click();
      await room.locator(".words-entry:last-child figure").last().waitFor();
      const names = await room.locator(".words-entry h4").allTextContents();
      const trade = names.slice(0, await room.locator(".words-list").first().locator("h4").count());
      assert.deepEqual(
        trade,
        trade.toSorted((a, b) => a.localeCompare(b, "es", { sensitivity: "base" })),
      );
    },
    says: [
      /Palabras de contar/,
      /El corazón denso de la n\.º 4 está en el eje, por eso su RG es bajo\. Aquí: \d,\d{3}\sin\./,
      /disco \d,\d\d\slb/,
      /A, poliéster, llega a la tabla \d+,\d y entra a \d,\d°/,
      /\d+ bolas, de \d,\d{4}/,
    ],
  },
};

/** All a room says, or what is within parts of it, to the eye and to the ear. */
const heard = (room, within) =>
  room.evaluate((element, within) => {
    const all = within ? [...element.querySelectorAll(within)] : [element];
    const named = all
      .flatMap((one) => [...one.querySelectorAll("[aria-label], [title], [placeholder]")])
      .flatMap((one) => [
        one.getAttribute("aria-label"),
        one.getAttribute("title"),
        one.getAttribute("placeholder"),
      ]);
    const texts = [...all.map((one) => one.textContent), ...named.filter((text) => text)];
    return texts.join("\n").replace(/\u00ad/g, "");
  }, within);

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

for (const [name, { region = name, within, parts, open, says, place }] of Object.entries(ROOMS)) {
  test(`${name} speaks Spanish`, async () => {
    const { page, check } = await site.open({ locale: "es-MX", reducedMotion: "reduce" });
    if (place) await page.getByRole("button", { name: place, exact: true }).click();
    const room = page.getByRole("region", { name: region, exact: true });
    await room.waitFor();
    const all = [...((await open(room, page)) ?? []), await heard(room, within)].join("\n");
    for (const text of says) assert.match(all, text);
    for (const part of parts) {
      for (const [id, english] of plainTexts(part)) {
        assert.ok(!all.includes(english), `English in ${name}: ${id} = ${english}`);
      }
    }
    assert.deepEqual(await accessibilityFaults(page), []);
    await shoot(page, `spanish-${name.toLowerCase().replaceAll(" ", "-")}`);
    await check();
  });
}

test("links and files are told of in Spanish", async () => {
  const { page, context, check } = await site.open({ locale: "es-MX" });
  await page.getByRole("button", { name: "Compartir enlace" }).click();
  const panel = page.getByRole("region", { name: "Compartir enlace" });
  await panel.getByText(/El enlace tiene \d+ caracteres\./).waitFor();
  const files = page.locator("input[type=file]").first();
  const notice = page.locator(".notice");
  await files.setInputFiles({
    name: "roto.ball.json",
    mimeType: "application/json",
    buffer: Buffer.from("{"),
  });
  await notice.getByText(/^No se abrió roto\.ball\.json\. /).waitFor();
  await files.setInputFiles(
    fileURLToPath(new URL("../../scenarios/shots/opening.shot.json", import.meta.url)),
  );
  await notice.getByText("Se abrió opening.shot.json con la bola del banco").waitFor();
  const said = await heard(page.locator(".bar"));
  for (const [id, english] of plainTexts("work")) {
    assert.ok(!said.includes(english), `English: ${id} = ${english}`);
  }
  await check();
  await context.close();
});
