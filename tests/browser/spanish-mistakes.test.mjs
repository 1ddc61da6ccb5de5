// What is wrong with a lesson or a file, said in Spanish and in nothing else.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { accessibilityFaults, DESKTOP, launch, PHONE, shoot } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const ENGLISH = /\b(the|this|that|must|not|here|missing|which|with|and|of|is|are|its|name|number|line|at)\b/i;

/** Nothing English outside of quotation marks. */
function spanish(text) {
  assert.doesNotMatch(text.replace(/"[^"]*"/g, ""), ENGLISH);
}

/** One mistake each: what stands in the short lesson, what is put there, and what is said then. */
const MISTAKES = [
  ["<= goal_mph", "<=", "Aquí debe haber un número con su unidad, un nombre o un paréntesis, no el final."],
  [
    "<= goal_mph",
    "<= gaol_mph",
    'Aquí debe haber un nombre de la lista de nombres, quizá goal_mph, no "gaol_mph".',
  ],
  ["<= goal_mph", "<= 16,5 in", /^Aquí debe haber dos números de la misma unidad, no mph y .*, no "<="\.$/],
  [
    "{weight_lb}",
    "15 libras",
    'Aquí debe haber un número con unidad que se calcule, como {una expresión}, no "15 libras".',
  ],
  ["{weight_lb}", "{weight_lb", "Esta { nunca se cierra: falta una }."],
  ["[[RG]]", "[[RGG]]", 'Aquí debe haber una palabra del glosario, no "RGG".'],
  [
    "[[RG]]",
    "<b>RG</b>",
    "Aquí debe haber párrafos, listas, *énfasis*, **negrita**, [[palabras del oficio]] y {valores}, no HTML.",
  ],
  [
    /right = "board_at_pins [<>]=? centre_board"/g,
    'right = "1 < 2"',
    "De las opciones hay 2 correctas, y debe haber exactamente una.",
  ],
  ['"16.5 mph"', '"30 mph"', "No hay nada que hacer: el banco ya supera la comprobación al abrirse el paso."],
  [
    '"16.5 mph"',
    '"5 mph"',
    "La solución no supera la comprobación. La velocidad es 16,5 mph; debe ser como mucho 5 mph.",
  ],
  [
    "no-3-three-piece",
    "no-9",
    'Aquí debe haber la ruta de un archivo que exista, no "../balls/no-9.ball.json". (ball)',
  ],
  ["order = 1", "order =", "Aquí falta un valor."],
  ["minutes = 5", "minutes = cinco", "Un texto debe ir entre comillas."],
  ['course = "Mi curso"', "", 'Falta la clave "course".'],
  ["minutes = 5", "minutes = 500", "El tiempo en minutos debe ser un número de 1 a 240, no 500."],
];

async function writing(options) {
  const opened = await site.open({ locale: "es-MX", reducedMotion: "reduce", ...options });
  const { page } = opened;
  await page.getByRole("button", { name: "Lecciones", exact: true }).click();
  await page.getByRole("button", { name: "Escribir una", exact: true }).click();
  await page.locator(".write-files select").selectOption({ label: "una corta en blanco" });
  await page.getByRole("heading", { name: "Está bien hecha" }).waitFor();
  const area = page.getByLabel("La lección como texto");
  const told = page.locator(".write-problems li");
  /** What is said of a text, without the lines. */
  const says = async (text) => {
    await area.fill(text);
    await page.getByRole("heading", { name: "Leyéndola" }).waitFor();
    await page.getByRole("heading", { name: "Qué está mal" }).waitFor();
    return (await told.allTextContents()).map((one) =>
      one.replace(/^Línea \d+ /, "").replaceAll("\u00a0", " "),
    );
  };
  return { ...opened, area, says };
}

test("each mistake of a lesson is said in Spanish", async () => {
  const { context, area, says, check } = await writing({ viewport: DESKTOP });
  const sound = await area.inputValue();
  for (const [stands, put, expected] of MISTAKES) {
    const text = sound.replaceAll(stands, () => put);
    assert.notEqual(text, sound, String(stands));
    const all = await says(text);
    all.forEach(spanish);
    const found = all.some((one) => (typeof expected === "string" ? one === expected : expected.test(one)));
    assert.ok(found, `${put}: ${all.join(" | ")}`);
  }
  await check();
  await context.close();
});

for (const [size, viewport] of Object.entries({ desktop: DESKTOP, phone: PHONE })) {
  test(`several mistakes of a lesson are said at once, ${size}`, async () => {
    const { page, context, area, says, check } = await writing({ viewport });
    const sound = await area.inputValue();
    const form = await says(
      sound
        .replace("minutes = 5", "minutes = 500")
        .replace('course = "Mi curso"\n', "")
        .replace('rooms = ["lane"]', 'rooms = ["patio"]'),
    );
    assert.equal(form.length, 3);
    form.forEach(spanish);
    await page.getByText("Puede aparecer más cuando esto se arregle").waitFor();
    assert.deepEqual(await accessibilityFaults(page), []);
    await page.locator(".write-beside").scrollIntoViewIfNeeded();
    await shoot(page, `spanish-mistakes-form-${size}`);
    const numbers = await says(
      sound
        .replace("{weight_lb}", "15 libras")
        .replace("[[RG]]", "<b>RG</b>")
        .replace("<= goal_mph", "<= gaol_mph")
        .replace("board_at_pins < centre_board", "board_at_pins <"),
    );
    assert.equal(numbers.length, 4);
    numbers.forEach(spanish);
    await page.locator(".write-beside").scrollIntoViewIfNeeded();
    await shoot(page, `spanish-mistakes-${size}`);
    await check();
    await context.close();
  });
}

test("a file that cannot be read says its mistake in Spanish", async () => {
  const { page, context, check } = await site.open({ locale: "es-MX", viewport: DESKTOP });
  const ball = readFileSync(new URL("../../scenarios/balls/no-1-simple.ball.json", import.meta.url), "utf8");
  const notice = page.locator(".notice");
  const says = async (text) => {
    await page
      .locator("input[type=file]")
      .first()
      .setInputFiles({ name: "mi.ball.json", mimeType: "application/json", buffer: Buffer.from(text) });
    await notice.waitFor();
    return (await notice.textContent()).trim();
  };
  const cases = [
    ["", "El archivo no es JSON: está vacío."],
    [ball.slice(0, 40), /El archivo no es JSON: se acaba demasiado pronto \(línea \d+, columna \d+\)\./],
    [ball.replace(",", ""), /El archivo no es JSON: falta una coma o } \(línea 3, columna \d+\)\./],
    [ball.replace(":", ""), /El archivo no es JSON: faltan dos puntos \(línea 2, columna \d+\)\./],
    [
      ball.replace(/"density_g_cc": [\d.]+/, '"density_g_cc": 99.5'),
      "La densidad (g/cc) debe ser un número mayor que 0 y hasta 25, no 99,5.",
    ],
  ];
  for (const [text, expected] of cases) {
    const said = await says(text);
    assert.ok(said.startsWith("No se abrió mi.ball.json."), said);
    if (typeof expected === "string") assert.ok(said.includes(expected), said);
    else assert.match(said, expected);
    spanish(said);
    await shoot(page, "spanish-mistakes-file");
    await notice.getByRole("button").click();
  }
  await check();
  await context.close();
});
