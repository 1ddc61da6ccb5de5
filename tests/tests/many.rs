//! A first part of the very many recipes of `cargo xtask recipes`.

use pithball_tests::many::{hold_against_slow, recipe, weigh_and_check};

#[test]
fn random_recipes_end_in_numbers_within_their_bound() {
    const COUNT: u64 = 1_001;
    const SAMPLED: u64 = 125;
    for n in 0..COUNT {
        let recipe = recipe(n);
        let checked = weigh_and_check(&recipe);
        let (ball, got) = checked.unwrap_or_else(|fault| panic!("recipe {n}: {fault}"));
        if n % SAMPLED == 0 {
            let blunt =
                hold_against_slow(&recipe, &ball, &got, n).unwrap_or_else(|fault| panic!("recipe {n}: {fault}"));
            assert!(blunt < 2e-4, "recipe {n}: the comparison says nothing, {blunt:e}");
        }
    }
}
