#![allow(clippy::expect_used, reason = "a check that fails stops its test")]

use core::f64::consts::PI;

use nalgebra::Vector3;

use super::*;
use crate::recipe::{Piece, Shape, Solid};
use crate::units::M_PER_IN;

fn solid(shape: Shape, z_in: f64) -> Solid {
    Solid { shape, squash: [1.0; 2], turn_rad: [0.0; 3], at_m: Vector3::new(0.0, 0.0, z_in * M_PER_IN) }
}

fn sphere(density_g_cc: f64, diameter_in: f64, z_in: f64) -> Piece {
    let shape = Shape::Sphere { diameter_m: diameter_in * M_PER_IN };
    Piece { density_kg_m3: density_g_cc * KG_M3_PER_G_CC, solid: solid(shape, z_in), cuts: vec![] }
}

fn ball(cover_g_cc: f64, pieces: Vec<Piece>) -> Recipe {
    let cover_density_kg_m3 = cover_g_cc * KG_M3_PER_G_CC;
    Recipe { diameter_m: 8.55 * M_PER_IN, cover_density_kg_m3, pieces, holes: vec![] }
}

/// A filler, an egg with a flow channel in it, and a puck that cuts into the egg.
fn three_piece() -> Recipe {
    let egg = Shape::Ellipsoid { size_m: [3.0 * M_PER_IN, 3.2 * M_PER_IN, 4.6 * M_PER_IN] };
    let groove = Shape::Ring { ring_diameter_m: 3.0 * M_PER_IN, tube_diameter_m: 0.5 * M_PER_IN };
    let puck = Shape::Cylinder { diameter_m: 2.0 * M_PER_IN, height_m: 0.6 * M_PER_IN };
    ball(
        1.18,
        vec![
            sphere(0.95, 7.0, 0.0),
            Piece { density_kg_m3: 2000.0, solid: solid(egg, 0.1), cuts: vec![solid(groove, 0.0)] },
            Piece { density_kg_m3: 2600.0, solid: solid(puck, 1.9), cuts: vec![] },
        ],
    )
}

fn all_kg() -> Vec<f64> {
    WEIGHTS_LB.map(|lb| lb * KG_PER_LB).to_vec()
}

fn line(recipe: &Recipe, chosen: &[Part], by: By) -> Vec<Rung> {
    ladder(recipe, chosen, by, &all_kg()).expect("a line")
}

fn volume_m3(diameter_in: f64) -> f64 {
    PI / 6.0 * (diameter_in * M_PER_IN).powi(3)
}

#[test]
fn a_sphere_in_a_sphere_by_density_is_the_closed_form() {
    let recipe = ball(1.1, vec![sphere(1.6, 5.0, 0.2)]);
    let cover_kg = 1100.0 * (volume_m3(8.55) - volume_m3(5.0));
    for rung in line(&recipe, &[Part::Piece(0)], By::Density) {
        let expected = (rung.target_kg - cover_kg) / volume_m3(5.0) / 1600.0;
        assert!((rung.density_factor.expect("a factor") - expected).abs() < 1e-12, "{rung:?}");
        let Some((made, weighed)) = rung.made else {
            assert!(expected <= 0.0 && rung.trouble == Some(Trouble::DensityNotPositive));
            continue;
        };
        assert!((weighed.mass_kg - rung.target_kg).abs() <= EXACT_KG);
        assert_eq!(made.cover_density_kg_m3, 1100.0);
        assert_eq!(made.pieces[0].solid, recipe.pieces[0].solid);
        let above = made.pieces[0].density_kg_m3 > 3800.0;
        assert_eq!(rung.trouble, above.then_some(Trouble::DensityAboveLimit));
    }
}

#[test]
fn a_sphere_in_a_sphere_by_size_is_the_closed_form() {
    let recipe = ball(1.1, vec![sphere(1.9, 5.0, 0.2)]);
    for rung in line(&recipe, &[Part::Piece(0)], By::Size) {
        // m = ρ_cover V_ball + (ρ − ρ_cover) V s³
        let cube = (rung.target_kg - 1100.0 * volume_m3(8.55)) / (800.0 * volume_m3(5.0));
        let most: f64 = 2.0 * (4.275 - 0.2) / 5.0;
        match rung.size_factor {
            Some(factor) => {
                assert!((factor - libm::cbrt(cube)).abs() < 1e-9, "{factor} {cube}");
                let (_, weighed) = rung.made.expect("a ball");
                assert!((weighed.mass_kg - rung.target_kg).abs() <= EXACT_KG);
            }
            None if cube > most.powi(3) => assert_eq!(rung.trouble, Some(Trouble::SticksOut)),
            None => {
                assert!(cube < 0.0);
                assert_eq!(rung.trouble, Some(Trouble::VanishesFirst));
                // The density that would do it at this size: none above 0, or a lower one.
                let needed = (rung.target_kg - 1100.0 * (volume_m3(8.55) - volume_m3(5.0))) / volume_m3(5.0);
                assert!((rung.density_factor.expect("a factor") - needed / 1900.0).abs() < 1e-12);
            }
        }
    }
}

#[test]
fn every_weight_that_can_be_had_is_exact_and_the_rest_is_kept() {
    let recipe = three_piece();
    for (chosen, by) in [
        (vec![Part::Piece(0)], By::Density),
        (vec![Part::Cover], By::Density),
        (vec![Part::Piece(0), Part::Piece(1)], By::Density),
        (vec![Part::Piece(1)], By::Size),
        (vec![Part::Piece(1), Part::Piece(2)], By::Size),
    ] {
        let rungs = line(&recipe, &chosen, by);
        let made: Vec<_> = rungs.iter().filter(|rung| rung.trouble.is_none()).collect();
        assert!(made.len() >= 2, "{chosen:?} {by:?}");
        for rung in &made {
            let (made, weighed) = rung.made.as_ref().expect("a ball");
            let error_kg = EXACT_KG.max(weighed.relative_error * weighed.mass_kg);
            assert!((weighed.mass_kg - rung.target_kg).abs() <= error_kg, "{chosen:?} {by:?}");
            assert_eq!(weigh(&Ball::new(made).expect("a ball")), *weighed);
            for (n, piece) in made.pieces.iter().enumerate() {
                if !chosen.contains(&Part::Piece(n)) {
                    assert_eq!(*piece, recipe.pieces[n]);
                }
            }
        }
        // Lighter and lighter: less and less of what changes.
        for pair in made.windows(2) {
            let factor = |rung: &Rung| match by {
                By::Density => rung.density_factor.expect("a factor"),
                By::Size => rung.size_factor.expect("a factor"),
            };
            assert!(factor(pair[0]) > factor(pair[1]), "{chosen:?} {by:?}");
        }
    }
}

#[test]
fn two_parts_keep_their_proportion() {
    let recipe = three_piece();
    for rung in line(&recipe, &[Part::Piece(0), Part::Piece(1)], By::Density) {
        let Some((made, _)) = rung.made else { continue };
        let ratio = |recipe: &Recipe| recipe.pieces[0].density_kg_m3 / recipe.pieces[1].density_kg_m3;
        assert!((ratio(&made) / ratio(&recipe) - 1.0).abs() < 1e-14);
    }
}

#[test]
fn its_own_weight_gives_the_recipe_back() {
    let recipe = three_piece();
    let own = weigh(&Ball::new(&recipe).expect("a ball"));
    for by in [By::Density, By::Size] {
        let rungs = ladder(&recipe, &[Part::Piece(1)], by, &[own.mass_kg]).expect("a line");
        assert_eq!(rungs[0].trouble, None);
        assert!((rungs[0].density_factor.expect("a factor") - 1.0).abs() < 1e-9);
        assert!((rungs[0].size_factor.expect("a factor") - 1.0).abs() < 1e-9);
    }
}

#[test]
fn a_piece_grows_with_its_cuts() {
    // Alone in the cover, egg and groove: volume as the cube of the size.
    let mut recipe = three_piece();
    recipe.pieces = vec![recipe.pieces[1].clone()];
    let before = weigh(&Ball::new(&recipe).expect("a ball")).shares[1].volume_m3;
    let target_kg = weigh(&Ball::new(&recipe).expect("a ball")).mass_kg + 0.2;
    let rung = ladder(&recipe, &[Part::Piece(0)], By::Size, &[target_kg]).expect("a line").remove(0);
    let (factor, (_, weighed)) = (rung.size_factor.expect("a size"), rung.made.expect("a ball"));
    assert!(factor > 1.0);
    assert!((weighed.shares[1].volume_m3 / before / factor.powi(3) - 1.0).abs() < 2e-6);
}

#[test]
fn what_cannot_be_had_says_why() {
    let heavy = ball(1.45, vec![sphere(1.5, 3.0, 0.0)]);
    let tenth = |rungs: Vec<Rung>| rungs.last().expect("seven").clone();
    let rung = tenth(line(&heavy, &[Part::Piece(0)], By::Density));
    assert_eq!(rung.trouble, Some(Trouble::DensityNotPositive));
    assert!(rung.made.is_none() && rung.density_factor.expect("a factor") <= 0.0);
    let light = ball(0.8, vec![sphere(1.2, 3.0, 0.0)]);
    let rung = line(&light, &[Part::Piece(0)], By::Density).remove(0);
    assert_eq!(rung.trouble, Some(Trouble::DensityAboveLimit));
    let rung = line(&light, &[Part::Piece(0)], By::Size).remove(0);
    assert_eq!(rung.trouble, Some(Trouble::SticksOut));
    // A piece that a later one displaces wholly.
    let hidden = ball(1.1, vec![sphere(1.5, 3.0, 0.0), sphere(2.0, 4.0, 0.0)]);
    let rung = line(&hidden, &[Part::Piece(0)], By::Density).remove(0);
    assert_eq!((rung.trouble, rung.density_factor), (Some(Trouble::FillsNothing), None));
}

#[test]
fn a_choice_that_makes_no_sense_is_refused() {
    let recipe = three_piece();
    let refused = |chosen: &[Part], by| ladder(&recipe, chosen, by, &all_kg()).expect_err("refused");
    assert_eq!(refused(&[], By::Density), LadderError::NoSuchPart { pieces: 3 });
    assert_eq!(refused(&[Part::Piece(3)], By::Density), LadderError::NoSuchPart { pieces: 3 });
    assert_eq!(refused(&[Part::Cover], By::Size), LadderError::CoverSize);
}

#[test]
fn a_ball_floats_below_the_weight_of_its_water() {
    // Archimedes: 11.617 lb at 8.500 in, 12.011 lb at 8.595 in, whatever is in it.
    for (diameter_in, weight_lb) in [(8.5, 11.617), (8.595, 12.011)] {
        let mut recipe = three_piece();
        recipe.diameter_m = diameter_in * M_PER_IN;
        let weighed = weigh(&Ball::new(&recipe).expect("a ball"));
        assert!((floating_mass_kg(&weighed) / KG_PER_LB - weight_lb).abs() < 5e-4);
    }
}
