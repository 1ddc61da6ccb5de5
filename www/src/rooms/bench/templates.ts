// The balls to start from and the first shot: the same files as the command
// line and the tests use.

import no1 from "../../../../scenarios/balls/no-1-simple.ball.json";
import no2 from "../../../../scenarios/balls/no-2-two-piece.ball.json";
import no3 from "../../../../scenarios/balls/no-3-three-piece.ball.json";
import no4 from "../../../../scenarios/balls/no-4-nested-core.ball.json";
import no5 from "../../../../scenarios/balls/no-5-thick-cover.ball.json";
import no6 from "../../../../scenarios/balls/no-6-five-piece.ball.json";
import opening from "../../../../scenarios/shots/opening.shot.json";
import { offeredBall, offeredShot } from "../../locale/names";
import type { Doc, Shot } from "../../store";
import type { BallFile } from "../../types";

export const TEMPLATES = [no1, no2, no3, no4, no5, no6] as unknown as BallFile[];

/** What a first visit opens with: the three-piece ball, already rolling. */
export const firstDoc = (): Doc => ({
  ball: offeredBall(no3 as unknown as BallFile),
  shot: offeredShot(shotOf(opening)),
});

function shotOf({ ball: _, ...shot }: typeof opening): Shot {
  return shot as Shot;
}
