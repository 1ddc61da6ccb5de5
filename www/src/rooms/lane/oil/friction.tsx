// How friction follows from the film for this cover, beside a cover of which
// nothing is said.
import { useMemo } from "preact/hooks";
import { line } from "../../../draw/lane-frame";
import { CoverSurface } from "../../../parts/cover-surface";
import { NumberField } from "../../../parts/field";
import { Fold } from "../../../parts/fold";
import { Aside, Term } from "../../../parts/term";
import { isProblem, type Store, useStore } from "../../../store";
import type { Coverstock, Friction, FrictionCurve, OiledLane, Roll } from "../../../types";
import { digits, number, reading } from "../../../units";

/** Used where the file leaves them out; see the module's law. */
const USUAL: Required<Friction> = { mu_oil: 0.04, mu_dry: 0.2, film_half_um: 0.3 };

const LITERATURE =
  "The value usually quoted from the physics literature (C. Frohlich, American Journal of Physics 72, 1170, 2004); from memory, unverified.";

const ROWS = [
  {
    key: "mu_oil",
    label: "In thick oil",
    quantity: "friction",
    min: 0,
    max: 0.15,
    step: 0.005,
    source: LITERATURE,
  },
  {
    key: "mu_dry",
    label: "On dry boards",
    quantity: "friction",
    min: 0.05,
    max: 0.32,
    step: 0.005,
    source: `${LITERATURE} The published limit of a ball is 0.32.`,
  },
  {
    key: "film_half_um",
    label: "Half-way film",
    quantity: "film",
    min: 0.05,
    max: 2,
    step: 0.05,
    source:
      "The film on which friction lies half-way between the two; a model choice, no figure is published.",
  },
] as const;

const FORM =
  "The form is that of mixed lubrication: the thinner the film beside the roughness, the more of the load rubs dry (A. V. Olver and H. A. Spikes, Proc. Inst. Mech. Eng. J 212, 321, 1998; from memory). That it holds for a ball on a lane, and the factors of family and finish, are model choices; that a rougher surface grips more is common practice, no source.";

const PLAIN: Coverstock = { density_g_cc: 1 };

/** A curve, or null while what it is made from is wrong. */
function curveOf({ wasm }: Store, cover: Coverstock, friction: Friction | null): FrictionCurve | null {
  try {
    return wasm.friction_curve(cover, friction);
  } catch (error) {
    if (isProblem(error)) return null;
    throw error;
  }
}

/** Friction on an oiled lane: its numbers, what the cover makes of them, and the curve. */
export function FrictionFold({ lane }: { lane: OiledLane }) {
  const store = useStore();
  const { file, roll, shot, shotProblem } = store.derived.value;
  const { units } = store.view.value;
  const good = "zones" in shot.lane ? lane : shot.lane;
  const friction = good.friction ?? null;
  const own = useMemo(() => curveOf(store, file.cover, friction), [file.cover, friction]);
  const plain = useMemo(() => curveOf(store, PLAIN, friction), [friction]);
  const wrong = shotProblem?.place.startsWith("lane.friction") ? shotProblem : null;
  if (!own || !plain) return null;

  function set(key: keyof Friction, value: number) {
    store.editShot((old) => {
      if ("zones" in old.lane) return old;
      return { ...old, lane: { ...old.lane, friction: { ...old.lane.friction, [key]: value } } };
    }, `friction.${key}`);
  }

  return (
    <Fold
      summary={
        <>
          Friction: {digits(own.mu_oil, 3)} in thick oil, {digits(own.mu_dry, 3)} dry
        </>
      }
      wrong={wrong !== null}
    >
      <div class="friction-fold">
        <Curve own={own} plain={plain} roll={roll} />
        <details>
          <summary>The same as a table</summary>
          <CurveTable own={own} plain={plain} />
        </details>
        <CoverSurface />
        <fieldset>
          <legend>
            <Term word="friction">Friction</Term> of a plain cover
          </legend>
          {ROWS.map(({ key, source, ...row }) => (
            <div key={key}>
              <NumberField
                {...row}
                value={lane.friction?.[key] ?? USUAL[key]}
                problem={wrong?.place === `lane.friction.${key}` ? wrong : null}
                onChange={(value) => set(key, value)}
              />
              <p class="hint">
                {number(own[key], row.quantity, units)} with this cover;{" "}
                <Aside text={source}>
                  {row.quantity === "film" ? "model choice" : "where that comes from"}
                </Aside>
              </p>
            </div>
          ))}
          <p class="hint">
            <Aside text={FORM}>How the curve is made</Aside>
          </p>
          {lane.friction && (
            <button
              type="button"
              onClick={() =>
                store.editShot((old) => ("zones" in old.lane ? old : { ...old, lane: { oil: old.lane.oil } }))
              }
            >
              The usual figures
            </button>
          )}
        </fieldset>
      </div>
    </Fold>
  );
}

const WIDTH = 280;
const HEIGHT = 120;
const TICKS_UM = [0, 0.5, 1, 2, 4, 8];

interface CurveProps {
  own: FrictionCurve;
  plain: FrictionCurve;
  roll: Roll;
}

function Curve({ own, plain, roll }: CurveProps) {
  const { units } = useStore().view.value;
  const to_um = own.points.at(-1)?.film_um ?? 1;
  const top = Math.max(own.mu_dry, plain.mu_dry, 0.01) * 1.1;
  // Thin films matter most: the axis goes with the root of the film.
  const x = (film_um: number) => Math.sqrt(Math.min(1, film_um / to_um)) * WIDTH;
  const y = (mu: number) => HEIGHT - (mu / top) * HEIGHT;
  const path = ({ points }: FrictionCurve) =>
    line(points.map(({ film_um, mu }): [number, number] => [x(film_um), y(mu)]));
  const met = roll.samples.flatMap(({ film_um }) => (film_um === null ? [] : [film_um]));
  const range =
    met.length > 0
      ? `This shot meets films from ${reading(Math.max(...met), "film", units)} down to ${reading(Math.min(...met), "film", units)}.`
      : "";
  const ends = ({ mu_dry, mu_oil }: FrictionCurve) =>
    `from ${number(mu_dry, "friction", units)} dry to ${number(mu_oil, "friction", units)} in thick oil`;
  return (
    <>
      <svg
        class="chart friction-curve"
        viewBox={`-26 -10 ${WIDTH + 46} ${HEIGHT + 42}`}
        role="img"
        aria-labelledby="friction-title friction-desc"
      >
        <title id="friction-title">Friction by film</title>
        <desc id="friction-desc">
          {`With this cover ${ends(own)}; with a plain one ${ends(plain)}. ${range}`}
        </desc>
        <path class="chart-axis" d={`M0 0V${HEIGHT}H${WIDTH}`} />
        {[0, 0.1, 0.2, 0.3]
          .filter((mu) => mu <= top)
          .map((mu) => (
            <text key={mu} x="-4" y={y(mu) + 4} text-anchor="end">
              {digits(mu, 1)}
            </text>
          ))}
        {TICKS_UM.map((film_um) => (
          <text key={film_um} x={x(film_um)} y={HEIGHT + 24} text-anchor="middle">
            {film_um === to_um ? `${film_um}\u00a0µm` : film_um}
          </text>
        ))}
        <path
          class="friction-met"
          d={met.map((film_um) => `M${x(film_um).toFixed(1)} ${HEIGHT}v8`).join("")}
        />
        <path class="friction-plain" d={path(plain)} />
        <path class="chart-line" d={path(own)} />
      </svg>
      <p class="hint">
        Solid: this cover. Dashed: a plain one. Ticks below the line: films this shot meets. {range}
      </p>
    </>
  );
}

/** Points of the curve that a table shows: about 0, 0.1, 0.5, 1, 2, 4 and 8 µm. */
const SHOWN = [0, 9, 20, 28, 40, 57, 80];

function CurveTable({ own, plain }: { own: FrictionCurve; plain: FrictionCurve }) {
  const { units } = useStore().view.value;
  return (
    <table class="friction-table">
      <caption>
        <Term word="friction">Friction</Term> by <Term word="film">film</Term>
      </caption>
      <thead>
        <tr>
          <th scope="col">Film, µm</th>
          <th scope="col">This cover</th>
          <th scope="col">A plain one</th>
        </tr>
      </thead>
      <tbody>
        {SHOWN.map((at) => {
          const [a, b] = [own.points[at], plain.points[at]];
          return a && b ? (
            <tr key={at}>
              <th scope="row">{number(a.film_um, "film", units)}</th>
              <td>{number(a.mu, "friction", units)}</td>
              <td>{number(b.mu, "friction", units)}</td>
            </tr>
          ) : null;
        })}
      </tbody>
    </table>
  );
}
