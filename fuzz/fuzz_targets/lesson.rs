#![no_main]
libfuzzer_sys::fuzz_target!(|bytes: &[u8]| pithball_tests::hostile::lesson(bytes));
