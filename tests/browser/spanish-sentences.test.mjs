// Sentences that are put together from variants, in Spanish: the shot, the Scale's verdicts and shares, the comparison.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bundled } from "./bundled.mjs";

let page;
before(async () => {
  globalThis.document = { documentElement: {} };
  page = await bundled(
    "locale/language.ts",
    "rooms/lane/sentence.ts",
    "rooms/scale/words.ts",
    "rooms/shelf/compare/words.ts",
  );
  await page.speak("es");
});
after(() => {
  delete globalThis.document;
});

const reads = (text, expected) => assert.equal(text.replaceAll("\u00a0", " "), expected);

function shot(summary, { x_in = 0, y_ft = 60 } = {}) {
  const usual = { entry_angle_deg: 4.6, board_at_pins: 17.2, hook_start_ft: 38, roll_start_ft: 51 };
  return {
    summary: { ...usual, gutter: false, end_ft: y_ft, breakpoint: { distance_ft: 40 }, ...summary },
    samples: [
      { x_in: 0, y_ft: 0 },
      { x_in, y_ft },
    ],
  };
}
const gone = { entry_angle_deg: null, board_at_pins: null };

test("what the shot did", () => {
  const told = (roll, expected, hand = "right", units = "trade") =>
    reads(page.whatHappened(roll, hand, units), expected);
  told(
    shot({}),
    "Desliza 38 ft, hace gancho durante 13 ft y rueda los últimos 9 ft; entra a 4,6° por la tabla 17,2.",
  );
  told(
    shot({}),
    "Desliza 11,6 m, hace gancho durante 3,9 m y rueda los últimos 2,8 m; entra a 4,6° por la tabla 17,2, contada desde la izquierda.",
    "left",
    "metric",
  );
  told(
    shot({ roll_start_ft: null }),
    "Desliza 38 ft y hace gancho durante 22 ft, y al llegar a los pinos aún resbala; entra a 4,6° por la tabla 17,2.",
  );
  told(
    shot({ hook_start_ft: null, roll_start_ft: null, entry_angle_deg: 0, board_at_pins: 20 }),
    "Desliza todo el camino y nunca llega a rodar; entra recta, por la tabla 20,0.",
  );
  told(
    shot({ hook_start_ft: null, roll_start_ft: 0, entry_angle_deg: -1.5, board_at_pins: 9 }),
    "Rueda todo el camino sin resbalar; entra a 1,5° alejándose del lado del bolsillo, por la tabla 9,0.",
  );
  told(
    shot({ hook_start_ft: null, roll_start_ft: 50 }),
    "Desliza 50 ft y rueda los últimos 10 ft; entra a 4,6° por la tabla 17,2.",
  );
  told(
    shot({ hook_start_ft: 0 }),
    "Hace gancho durante 51 ft y rueda los últimos 9 ft; entra a 4,6° por la tabla 17,2.",
  );
  told(
    shot({ ...gone, roll_start_ft: null, gutter: true, hook_start_ft: 40 }, { x_in: -20.75, y_ft: 57.3 }),
    "Desliza 40 ft y hace gancho durante 17 ft; luego cae en la canaleta izquierda a 57,3 ft de la línea de falta.",
  );
  told(
    shot({ ...gone, roll_start_ft: null, hook_start_ft: 0, gutter: true }, { x_in: 20.75, y_ft: 31 }),
    "Hace gancho durante 31 ft; luego cae en la canaleta derecha a 31,0 ft de la línea de falta.",
  );
  told(
    {
      ...shot({ ...gone, hook_start_ft: null, roll_start_ft: null, end_ft: 0 }),
      samples: [{ y_ft: 0 }, { y_ft: 12.34 }, { y_ft: 0 }],
    },
    "Desliza 12 ft; nunca llega a los pinos: no pasa de 12,3 ft.",
  );
});

test("a value among its limits", () => {
  const told = (value, range, expected, units = "trade") =>
    reads(page.verdict(value, range, "rg", units).text, expected);
  const both = { low: 2.46, high: 2.8 };
  told(2.5, both, "Dentro de lo publicado, de 2,460 a 2,800 in.");
  told(2.4, both, "Por debajo de lo publicado, de 2,460 a 2,800 in.");
  told(
    2.4599,
    both,
    "Por debajo de lo publicado, de 2,460 a 2,800 in, por menos que la última cifra que se ve.",
  );
  told(2.9, both, "Por encima de lo publicado, de 2,460 a 2,800 in.");
  told(
    2.80001,
    both,
    "Por encima de lo publicado, de 2,460 a 2,800 in, por menos que la última cifra que se ve.",
  );
  told(0.05, { high: 0.06 }, "Dentro del límite publicado de 0,060 in.");
  told(0.07, { high: 0.06 }, "Por encima del límite publicado de 1,52 mm.", "metric");
  told(
    0.0601,
    { high: 0.06 },
    "Por encima del límite publicado de 0,060 in, por menos que la última cifra que se ve.",
  );
  told(1, { low: 2.46 }, "Por debajo del límite publicado de 2,460 in.");
  told(
    2.4599,
    { low: 2.46 },
    "Por debajo del límite publicado de 2,460 in, por menos que la última cifra que se ve.",
  );
});

test("the error bound in words", () => {
  reads(
    page.partsIn(1e-13),
    "La cota que da el propio programa para el error de masa e inercia: menos de una parte en un billón.",
  );
  reads(
    page.partsIn(2e-11),
    "La cota que da el propio programa para el error de masa e inercia: cerca de una parte en 50 mil millones.",
  );
  reads(
    page.partsIn(2e-8),
    "La cota que da el propio programa para el error de masa e inercia: cerca de una parte en 50 millones.",
  );
  reads(
    page.partsIn(2e-4).replace("\u202f", " "),
    "La cota que da el propio programa para el error de masa e inercia: cerca de una parte en 5 000.",
  );
});

test("the part with the largest share of the RG", () => {
  const told = (pieces, expected) =>
    reads(
      page.largest({ pieces: pieces.map(([mass_kg, rg_share]) => ({ mass_kg, rg_share })) }, [
        "cubierta",
        "núcleo",
      ]),
      expected,
    );
  told([[6, 1]], "Aquí hay una sola parte, así que todo el RG viene de ella.");
  told(
    [
      [3, 0.62],
      [3, 0.38],
    ],
    "Aquí la mayor aportación es la de «cubierta»: el 62,0% del RG con el 50,0% del peso, porque está más afuera que el resto.",
  );
  told(
    [
      [1, 0.4],
      [4, 0.6],
    ],
    "Aquí la mayor aportación es la de «núcleo»: el 60,0% del RG con el 80,0% del peso; está más adentro que el resto y aporta tanto porque pesa mucho.",
  );
  told(
    [
      [6, 0.6],
      [4, 0.4],
    ],
    "Aquí la mayor aportación es la de «cubierta»: el 60,0% del RG, lo mismo que tiene del peso.",
  );
});

test("one shot beside the first", () => {
  const first = { letter: "A", roll: shot({}) };
  const told = (roll, expected, units = "trade", one = first) =>
    reads(page.against(one, { letter: "B", roll }, units), expected);
  told(null, "B no se puede seguir.");
  told(shot({ ...gone, gutter: true }), "B cae en la canaleta.");
  told(shot({}), "B llega a los pinos.", "trade", { letter: "A", roll: null });
  told(shot({}), "B rueda igual que A.");
  told(shot({ entry_angle_deg: 5.1 }), "B entra 0,5° más inclinada que A.");
  told(
    shot({ entry_angle_deg: 4.1, board_at_pins: 15.2 }),
    "B entra 0,5° más plana y 2,0 tablas más afuera que A.",
  );
  told(shot({ breakpoint: { distance_ft: 42 } }), "B empieza a volver 2,0 ft más lejos.");
  told(
    shot({ board_at_pins: 19.2, breakpoint: { distance_ft: 38 } }),
    "B entra 2,0 tablas más adentro que A y empieza a volver 0,61 m antes.",
    "metric",
  );
});
