# Names and notes as the files of scenarios/ have them. An id is the kind and the English text in lower case
# with hyphens, apostrophes left out; of a note its first eight words.

## Balls

ball-no-1-simple = N.º 1, sencilla
ball-no-2-two-piece = N.º 2, de dos piezas
ball-no-3-three-piece = N.º 3, de tres piezas
ball-no-4-nested-core = N.º 4, núcleo anidado
ball-no-5-thick-cover = N.º 5, cubierta gruesa
ball-no-6-five-piece = N.º 6, de cinco piezas

## Pieces

piece-cover = cubierta
piece-body = cuerpo
piece-pancake = torta
piece-outer-core = núcleo exterior
piece-inner-core = núcleo interior
piece-puck = disco
piece-lower-puck = disco inferior
piece-disc = disco
piece-heart = corazón
piece-core = núcleo
piece-collar = collar
piece-cap = tapa
piece-new-piece = pieza nueva

## Cuts of a piece

cut-flow-channel = canal de flujo

## Holes and their linings

hole-middle-finger = dedo medio
hole-ring-finger = dedo anular
hole-thumb = pulgar
hole-middle-finger-insert = inserto del dedo medio
hole-ring-finger-insert = inserto del dedo anular
hole-thumb-sleeve = funda del pulgar
hole-number = agujero { $number }
hole-finger-hole = agujero para un dedo

## Materials

material-polyester = poliéster
material-epoxy = epoxi
material-polyurethane = poliuretano
material-reactive-urethane = uretano reactivo
material-resin-with-glass-microspheres = resina con microesferas de vidrio
material-resin-with-glass-beads = resina con perlas de vidrio
material-resin-with-calcium-carbonate = resina con carbonato de calcio
material-resin-with-barium-sulfate = resina con sulfato de bario

## What a material is used for

use-covers-and-bodies = cubiertas y cuerpos
use-covers = cubiertas
use-outer-cores = núcleos exteriores
use-outer-cores-and-bodies = núcleos exteriores y cuerpos
use-bodies-and-inner-cores = cuerpos y núcleos interiores
use-inner-cores-hearts-pucks-and-pancakes = núcleos interiores, corazones, discos y tortas

## Where a density comes from (the marks of materials.json)

source-m = M
source-s-suppliers-data = S, datos del proveedor
source-c-resin-at-1-2-with-hollow-glass-microspheres-at-0-125-to-0-60-m = C, resina de 1,2 con microesferas de vidrio huecas de 0,125 a 0,60 (M)
source-c-resin-at-1-2-with-up-to-half-its-volume-of-glass-beads-at-2-54-s-suppliers-data = C, resina de 1,2 con hasta la mitad de su volumen de perlas de vidrio de 2,54 (S, datos del proveedor)
source-c-resin-at-1-2-with-up-to-half-its-volume-of-calcium-carbonate-at-2-7-s-suppliers-data = C, resina de 1,2 con hasta la mitad de su volumen de carbonato de calcio de 2,7 (S, datos del proveedor)
source-c-resin-at-1-2-with-up-to-six-tenths-of-its-volume-of-barium-sulfate-at-4-5-s-suppliers-data = C, resina de 1,2 con hasta seis décimas de su volumen de sulfato de bario de 4,5 (S, datos del proveedor)

## Layouts

layout-league-right-hander = Liga, mano derecha
layout-two-handed-left-hander = A dos manos, mano izquierda

## Oil patterns

oil-dry = Seco
oil-flat = Plano
oil-house = De la casa
oil-long = Largo
oil-short = Corto
oil-wet-dry = Mojado-seco

## Shots

shot-drilled-for-a-hand = Bola taladrada para una mano
shot-late-in-the-evening-dry-lane = A última hora, pista seca
shot-flat-pattern-tight-line = Patrón plano, línea recta y estrecha
shot-school-club-a-first-throw = Club escolar, un primer lanzamiento
shot-house-pattern-opening-shot = Patrón de la casa, lanzamiento inicial
shot-league-night-high-revs = Noche de liga, muchas revoluciones
shot-league-night-low-revs = Noche de liga, pocas revoluciones
shot-league-night-medium-revs = Noche de liga, revoluciones medias
shot-league-night-left-hander = Noche de liga, mano izquierda
shot-tournament-night-long-oil = Noche de torneo, aceite largo
shot-long-pattern-sanded-ball = Patrón largo, bola lijada
shot-opening-shot = Lanzamiento inicial
shot-short-pattern-from-the-outside = Patrón corto, desde afuera
shot-straight-at-the-corner-pin = Recto al pino de la esquina
shot-school-club-a-student = Club escolar, estudiante
shot-two-handed-high-revs = A dos manos, muchas revoluciones
shot-wet-dry-at-the-step = Mojado-seco, en el escalón

## Targets

target-lower-rg-at-15-lb = RG más bajo con 15 lb

## Notes of balls, layouts, oil, shots and targets

note-one-body-under-a-polyester-cover-and-a = Un solo cuerpo bajo una cubierta de poliéster, y una torta densa cerca de lo alto. Su masa está muy afuera: se va de largo y mantiene su línea.
note-a-light-outer-core-and-one-bulb-shaped = Un núcleo exterior ligero y un núcleo interior en forma de bombilla. Medio en todo.
note-an-outer-core-a-tall-inner-core-and = Un núcleo exterior, un núcleo interior alto y un disco separado encima: RG bajo con bastante diferencial.
note-a-dense-heart-inside-the-inner-core-a = Un corazón denso dentro del núcleo interior. El núcleo interior lleva alrededor un canal para que el núcleo exterior fluya dentro.
note-no-outer-core-a-double-lobed-core-sits = Sin núcleo exterior: un núcleo de dos lóbulos va directamente en una cubierta gruesa.
note-an-outer-core-a-flattened-inner-core-with = Un núcleo exterior, un núcleo interior aplanado con un corazón dentro, un collar en la cintura y una tapa arriba. Asimétrica.
note-a-medium-layout-with-finger-inserts-and-a = Un trazado medio con insertos en los dedos y una funda en el pulgar; el pin por encima de los dedos.
note-no-thumb-hole-two-finger-holes-with-inserts = Sin agujero para el pulgar; dos agujeros para los dedos con insertos, y el pin por debajo de ellos.
note-a-lane-left-overnight-little-oil-and-that = Una pista que pasó la noche sin atender: poco aceite, y corto.
note-nearly-the-same-film-on-every-board-nothing = Casi la misma película en todas las tablas: nada guía a la bola de vuelta.
note-what-league-night-is-bowled-on-much-oil = Lo que hay en la noche de liga: mucho aceite en el centro, poco por fuera de la tabla 8.
note-the-oil-goes-far-down-the-lane-the = El aceite llega muy lejos: a la bola le queda poca pista para doblar.
note-the-oil-ends-early-so-the-ball-is = El aceite termina pronto, así que la bola se juega desde muy afuera.
note-a-steep-step-at-board-10-slick-inside = Un escalón brusco en la tabla 10: resbaladizo por dentro, seco por fuera.
note-the-opening-shot-a-board-further-in-with = El lanzamiento inicial una tabla más adentro, con el pulgar y los dedos taladrados en la bola.
note-the-oil-is-worn-the-ball-hooks-early = El aceite está gastado: la bola hace gancho pronto y hay que lanzarla más afuera.
note-nearly-the-same-oil-on-every-board-straighter = Casi el mismo aceite en todas las tablas: más recto, porque nada trae de vuelta un lanzamiento impreciso.
note-set-down-with-no-aim-into-the-gutter = Soltada sin apuntar: a la canaleta.
note-the-opening-shot-on-oil-out-to-the = El lanzamiento inicial sobre aceite: sale hasta la película fina, junto a la tabla 8, que lo trae de vuelta.
note-many-revs-thrown-out-to-the-dry-boards = Muchas revoluciones, lanzadas hacia las tablas secas de fuera.
note-few-revs-and-little-angle-plays-straight-up = Pocas revoluciones y poco ángulo: va recto por las tablas.
note-a-league-bowlers-usual-shot = El lanzamiento habitual de quien juega en la liga.
note-the-medium-shot-from-the-other-side = El lanzamiento medio desde el otro lado.
note-less-room-to-miss-the-same-bowler-plays = Menos margen de error: la misma persona juega más recto en un patrón más largo.
note-long-oil-and-a-sanded-cover-that-does = Aceite largo y una cubierta lijada que no espera a que termine.
note-a-medium-hook-with-the-three-piece-ball = Un gancho medio con la bola de tres piezas, en el patrón de la casa.
note-short-oil-played-near-the-edge-where-the = Aceite corto: se juega cerca del borde, donde a la bola le queda media pista para doblar.
note-thrown-flat-across-the-lane-at-the-far = Lanzada en línea recta a través de la pista, a la esquina más lejana, con la bola sencilla.
note-slow-with-few-revs-a-small-hook-with = Lento, con pocas revoluciones: un gancho pequeño con la bola sencilla.
note-both-hands-on-the-ball-a-great-many = Las dos manos en la bola: muchísimas revoluciones, y con velocidad.
note-a-left-hander-along-board-10-where-the = Con la mano izquierda, a lo largo de la tabla 10, donde el aceite termina de lado: las tablas secas devuelven un lanzamiento impreciso.
note-for-the-two-piece-ball-a-lower-rg = Para la bola de dos piezas: un RG más bajo con el diferencial de una bola media.
