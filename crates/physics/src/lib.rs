//! What is inside a ten-pin bowling ball and how that makes it move.
//!
//! Data flows one way: [`recipe::Recipe`] → [`ball::Ball`] → [`weigh::Weighed`]
//! → shot. Pure functions over plain data in SI units; no IO, no files, no page.

pub mod area;
pub mod ball;
pub mod check;
pub mod control;
pub mod cover;
pub mod drill;
pub mod figures;
pub mod ladder;
pub mod lane;
pub mod levers;
pub mod map;
mod moments;
pub mod pouring;
pub mod recipe;
pub mod roll;
pub mod scatter;
pub mod section;
pub mod seek;
mod solid;
pub mod spec;
pub mod track;
pub mod units;
mod walk;
pub mod wear;
pub mod weigh;
pub mod why;
