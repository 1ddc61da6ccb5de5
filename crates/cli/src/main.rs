//! Placeholder until the crate lands.
fn main() {}
