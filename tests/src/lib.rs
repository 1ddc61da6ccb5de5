//! Shared helpers for the checks in `tests/tests`.
