//! Inputs with something wrong in them, made of inputs that are right.

use serde_json::{Map, Value, json};

/// G. L. Steele Jr., D. Lea and C. H. Flood's SplitMix64 (OOPSLA 2014).
pub struct Dice(pub u64);

impl Dice {
    /// Any 64 bits.
    pub fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// A whole number below `end`, which is not 0.
    pub fn below(&mut self, end: usize) -> usize {
        (self.bits() % end as u64) as usize
    }
}

/// Numbers that are apt to break something, as a file may write them.
const NUMBERS: [f64; 14] = [0.0, -0.0, 1.0, -1.0, 0.5, 1e-9, 1e-300, 5e-324, 1e9, 1e300, -1e300, 4.0, 12.0, 360.0];

/// The seed with one to three changes, of its bytes or of its values.
pub fn mutated(seed: &[u8], dice: &mut Dice) -> Vec<u8> {
    let mut bytes = seed.to_vec();
    for _ in 0..1 + dice.below(3) {
        let parsed = if dice.below(4) > 0 { serde_json::from_slice::<Value>(&bytes).ok() } else { None };
        bytes = match parsed {
            Some(mut value) => {
                let mut at = dice.below(count(&value));
                change(&mut value, &mut at, dice);
                value.to_string().into_bytes()
            }
            None => spliced(bytes, dice),
        };
    }
    bytes
}

/// Some bytes gone, others in their place.
fn spliced(mut bytes: Vec<u8>, dice: &mut Dice) -> Vec<u8> {
    let at = dice.below(bytes.len() + 1);
    let end = (at + dice.below(12)).min(bytes.len());
    let instead: Vec<u8> = match dice.below(4) {
        0 => (0..dice.below(9)).map(|_| dice.bits() as u8).collect(),
        1 => b"[".repeat(dice.below(200)),
        2 => bytes[dice.below(bytes.len() + 1)..].iter().take(40).copied().collect(),
        _ => Vec::new(),
    };
    bytes.splice(at..end, instead);
    bytes
}

fn count(value: &Value) -> usize {
    1 + match value {
        Value::Array(items) => items.iter().map(count).sum(),
        Value::Object(items) => items.values().map(count).sum::<usize>(),
        _ => 0,
    }
}

/// Changes the `at`-th value of the tree.
fn change(value: &mut Value, at: &mut usize, dice: &mut Dice) -> bool {
    if *at == 0 {
        *value = instead(value, dice);
        return true;
    }
    *at -= 1;
    match value {
        Value::Array(items) => items.iter_mut().any(|item| change(item, at, dice)),
        Value::Object(items) => items.values_mut().any(|item| change(item, at, dice)),
        _ => false,
    }
}

fn instead(value: &Value, dice: &mut Dice) -> Value {
    match (value, dice.below(3)) {
        (Value::Number(number), 0 | 1) => {
            let near = number.as_f64().unwrap_or(1.0);
            let factors = [0.0, 0.5, 0.999, 1.001, 1.5, 2.0, 10.0, -1.0];
            json!(near * factors[dice.below(factors.len())])
        }
        (Value::Array(items), 0 | 1) if !items.is_empty() => {
            let mut items = items.clone();
            let one = dice.below(items.len());
            match dice.below(3) {
                0 => drop(items.remove(one)),
                1 => items.push(items[one].clone()),
                _ => items.swap(one, 0),
            }
            Value::Array(items)
        }
        (Value::Object(items), 0 | 1) if !items.is_empty() => {
            let mut items: Map<String, Value> = items.clone();
            let key = items.keys().nth(dice.below(items.len())).cloned().unwrap_or_default();
            let gone = items.remove(&key);
            if dice.below(2) == 0 {
                items.insert(format!("{key}x"), gone.unwrap_or_default());
            }
            Value::Object(items)
        }
        _ => [
            Value::Null,
            json!(true),
            json!(""),
            json!("a text"),
            json!([]),
            json!({}),
            json!(NUMBERS[dice.below(NUMBERS.len())]),
            json!([NUMBERS[dice.below(NUMBERS.len())], NUMBERS[dice.below(NUMBERS.len())]]),
        ][dice.below(8)]
        .clone(),
    }
}
