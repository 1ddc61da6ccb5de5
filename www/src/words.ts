// The trade's words, each with its meaning in one sentence.

export const WORDS = {
  RG: "Radius of gyration: how far from the axis the weight sits on average; the larger it is, the harder the ball is to spin up.",
  differential:
    "The difference between the ball's highest and lowest RG: how strongly the ball prefers one axis, which lets the track flare.",
  "intermediate differential":
    "The difference between the highest and the middle RG: zero for a round core, more for an asymmetric one.",
  CG: "Centre of gravity: the point on which the whole ball would balance.",
  "top weight":
    "Of a ball without holes: how far its centre of gravity lies towards the pin, told as the weight to set on the far pole to balance it; shops do not all count it alike.",
  pin: "The low-RG end of the core, marked on the cover so that a driller can find it.",
  PAP: "Positive axis point: where the axis the ball spins about at release leaves the ball on the positive side.",
  "mass bias": "The high-RG axis of an asymmetric core.",
  "track flare":
    "The way the ring of oil on a ball moves over with every turn, so that fresh cover meets the lane; told as how far the spin axis moves over the ball.",
  board:
    "One of the 39 strips across a lane, a little over an inch wide, counted from the bowler's own side.",
  breakpoint: "The place where the ball is furthest to the bowler's own side before it comes back.",
  "entry angle":
    "The angle at which the ball travels when it reaches the pins, measured from straight down the lane.",
  coverstock: "The outer material of a ball, the one that touches the lane.",
  "flow channel":
    "A groove in a piece that lets the poured material flow through; it fills with what lies around it.",
  puck: "A flat, round piece, also called a pancake.",
  hook: "The part of the path where the ball curves because its spin still differs from its travel.",
  skid: "The first part of the path, where the ball slides on oil and hardly curves.",
  roll: "The last part of the path, where the ball no longer slips on the lane.",
  "axis rotation":
    "The angle of the spin axis seen from above: 0° is a ball that rolls end over end, 90° one that spins sideways.",
  "axis tilt": "How far the spin axis points up from the level.",
  "rev rate": "How many turns a minute the ball makes when it is let go.",
  "drilling angle":
    "The angle at the pin between the line to the PAP and the ball's x direction, where the mass bias of an asymmetric core should lie.",
  "start turn":
    "How far the ball is turned about its spin axis as it is let go; it matters for a ball that is not the same all round.",
  "launch angle": "The direction the ball leaves in: 0° is straight down the lane.",
  friction:
    "How hard the lane holds the sliding ball back: the sideways force divided by the ball's weight. Oil makes it small.",
  "grip centre": "The middle of the grip, half the span from thumb to fingers.",
  span: "How far the fingers are from the thumb along the ball, from gripping edge to gripping edge, inside inserts: the full span.",
  bridge: "The strip of ball left between the two finger holes.",
  pitch:
    "How far a hole's axis misses the ball's centre: forward leans the hole under the palm, reverse away from it.",
  midline: "The line through the grip centre that crosses the grip at a right angle.",
  VAL: "Vertical axis line: the line through the PAP that crosses the midline at a right angle.",
  "VAL angle":
    "The angle at the PAP between the vertical axis line and the line to the pin: small puts the pin above the fingers, large below them.",
  insert:
    "A soft tube in a finger hole, or a sleeve in the thumb hole; the hole is drilled wider to take it.",
  "static balance":
    "How unevenly the drilled ball hangs about its grip (top or bottom, finger or thumb, side), as a balance scale would show it in ounces.",
  "bow-tie": "One of the two places where the track rings cross and the band of them is narrowest.",
  "oil pattern": "How thick the oil lies on each board, foot by foot, when the lane has just been oiled.",
  film: "The layer of oil on the boards, a few thousandths of a millimetre thick; a micrometre (µm) is one thousandth.",
  "oil ratio":
    "How many times thicker the film is on the five middle boards than on boards 3 to 7; the larger it is, the more the pattern steers a ball back.",
  taper:
    "How the film thins out down the lane: the share of the first, thickest film that is left before the last stretch.",
  polyester: "A hard, smooth plastic cover: the least friction.",
  urethane: "A softer plastic cover that grips early, in oil too.",
  reactive: "Urethane made porous as it sets, a resin that grips hardest on dry boards.",
  finish: "How the surface was worked last: the coarser the grit the rougher; polish smooths it.",
  grit: "How fine the last abrasive was: 500 is rough, 4000 nearly smooth.",
  polish: "A liquid rubbed on last that leaves the surface shinier and smoother.",
  squash:
    "Scales the finished shape along its own x and y: this is how a round shape becomes an asymmetric one.",
  "95 % interval":
    "Where the true share lies in 95 of 100 such samples: the more balls are poured, the narrower it is.",
  "first order":
    "The part of the spread that would go away, on average, if this alone came out exactly as drawn.",
  "total order":
    "The part of the spread that would be left if everything but this came out exactly as drawn: by itself and together with others.",
  weight:
    "How heavy it is: of a ball the whole of it, as it lies on a scale; of a part its density times its volume.",
  volume: "How much room a part takes up in the ball, its cuts and holes taken off.",
  "middle RG":
    "The RG about the axis between the easiest and the hardest: of a round core the same as the high RG.",
  "high RG": "The RG about the hardest axis: there the weight sits furthest out.",
  piece: "One of the parts that are poured or set inside the cover; its sizes are those of its shape.",
  position:
    "Where a piece stands in the ball, from the ball's centre: z towards the pin, x and y to the sides, and how it is turned about each.",
  "ball diameter": "How wide the finished ball is; the rules leave it hardly any room.",
  cut: "The flat face that the saw makes: turned round the pin, leaned over, or moved off the centre.",
  hole: "A hole drilled for a finger or the thumb, told by how wide and how deep it is; what it takes away no longer counts.",
  speed: "How fast the ball travels; sliding over the lane takes some of it away.",
  time: "How long the ball takes from the foul line.",
  slip: "How fast the foot of the ball slides over the lane: once it rolls, not at all.",
  "axis migration": "How far the axis it spins about has moved in the ball by the time it reaches the pins.",
  pocket: "The place beside the front pin where a ball should come in, from the bowler's own side.",
  "published limit":
    "What the rules of the sport allow, as published by its governing body; a ball outside is not allowed in competition.",
  pour: "Filling a mould with liquid material once: every piece and the cover take one, and some of each is lost.",
  "cost index":
    "What a ball costs to make beside others: a pour by itself is 1, moulds and loss are added; a model choice, not money.",
  "search start":
    "A ball from which the search for a core sets out: the more of them, the surer that none better is missed.",
  tolerance: "How far a part may stray from its drawing and still be used.",
  scrap:
    "Balls that no one can sell, because they break a published limit; seconds keep the limits and miss what their maker promises.",
  histogram: "A picture of many numbers at once: the taller a bar, the more balls came out there.",
  "standard deviation":
    "How far from their mean the numbers usually lie: most are closer than that, hardly any three times as far.",
  percentile: "The number below which so many of every hundred balls lie; 50 % below is the middle one.",
  density: "How heavy a material is for its size; water is 1 gram per cc.",
} as const;

export type Word = keyof typeof WORDS;
