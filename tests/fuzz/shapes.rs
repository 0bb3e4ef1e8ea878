//! Requests of the right shape, made from the types that the page is compiled against.

use std::collections::BTreeMap;

use proptest::prelude::*;
use serde_json::{Map, Value, json};

/// What a type of the bindings allows.
#[derive(Debug, Clone)]
enum Shape {
    Number,
    Text,
    Truth,
    Nothing,
    Word(String),
    List(Box<Shape>),
    /// So many in a fixed order.
    Row(Vec<Shape>),
    Record(Vec<Field>),
    OneOf(Vec<Shape>),
    AllOf(Vec<Shape>),
    Named(String),
}

#[derive(Debug, Clone)]
struct Field {
    name: String,
    optional: bool,
    shape: Shape,
}

/// The types of the bindings and the request of each command.
pub struct Bindings {
    types: BTreeMap<String, Shape>,
    requests: BTreeMap<String, Shape>,
}

/// Words that mean something somewhere, among them every id of the journal that is asked.
pub type Known = Vec<String>;

impl Bindings {
    /// Reads the TypeScript that the core writes.
    pub fn read(text: &str) -> Self {
        let mut reader = Reader::new(text);
        let (mut types, mut requests) = (BTreeMap::new(), BTreeMap::new());
        while let Some(word) = reader.next() {
            match word.as_str() {
                "type" => {
                    let name = reader.next().unwrap();
                    reader.expect("=");
                    types.insert(name, reader.shape());
                }
                "interface" => {
                    reader.next();
                    let Shape::Record(commands) = reader.shape() else {
                        panic!("the commands are no record")
                    };
                    for Field { name, shape, .. } in commands {
                        let Shape::Record(fields) = shape else {
                            panic!("{name} is no record")
                        };
                        let request = fields.into_iter().find(|field| field.name == "request");
                        requests.insert(name, request.unwrap().shape);
                    }
                }
                _ => {}
            }
        }
        Self { types, requests }
    }

    /// The names of the commands.
    pub fn commands(&self) -> Vec<String> {
        self.requests.keys().cloned().collect()
    }

    /// Requests of a command: most of the right shape with odd things in it, some of a wrong one.
    pub fn request(&self, command: &str, known: &Known) -> BoxedStrategy<Value> {
        let right = self.strategy(&self.requests[command], "", known, 6);
        prop_oneof![19 => right, 1 => anything()].boxed()
    }

    fn strategy(
        &self,
        shape: &Shape,
        name: &str,
        known: &Known,
        depth: u32,
    ) -> BoxedStrategy<Value> {
        if depth == 0 {
            return Just(Value::Null).boxed();
        }
        let deeper = |shape: &Shape, name: &str| self.strategy(shape, name, known, depth - 1);
        let right = match shape {
            Shape::Number => number(),
            Shape::Text => text(name, known),
            Shape::Truth => any::<bool>().prop_map(Value::from).boxed(),
            Shape::Nothing => Just(Value::Null).boxed(),
            Shape::Word(word) => Just(json!(word)).boxed(),
            Shape::List(each) => prop::collection::vec(deeper(each, name), 0..4)
                .prop_map(Value::from)
                .boxed(),
            Shape::Row(each) => {
                let each: Vec<_> = each.iter().map(|shape| deeper(shape, name)).collect();
                each.prop_map(Value::from).boxed()
            }
            Shape::Named(name) => return deeper(&self.types[name], name),
            Shape::OneOf(shapes) => {
                prop::strategy::Union::new(shapes.iter().map(|shape| deeper(shape, name))).boxed()
            }
            Shape::AllOf(shapes) => {
                let parts: Vec<_> = shapes.iter().map(|shape| deeper(shape, name)).collect();
                parts.prop_map(joined).boxed()
            }
            Shape::Record(fields) => {
                let fields: Vec<_> = fields
                    .iter()
                    .map(|field| {
                        let value = deeper(&field.shape, &field.name);
                        let share = if field.optional { 0.4 } else { 0.98 };
                        let value = prop::option::weighted(share, value);
                        (Just(field.name.clone()), value)
                    })
                    .collect();
                fields
                    .prop_map(|fields| {
                        let there = fields
                            .into_iter()
                            .filter_map(|(name, value)| Some((name, value?)));
                        Value::Object(there.collect())
                    })
                    .boxed()
            }
        };
        prop_oneof![60 => right, 1 => anything()].boxed()
    }
}

fn joined(parts: Vec<Value>) -> Value {
    let mut all = Map::new();
    for part in parts {
        if let Value::Object(fields) = part {
            all.extend(fields);
        }
    }
    Value::Object(all)
}

fn number() -> BoxedStrategy<Value> {
    prop_oneof![
        8 => (0_u32..2000).prop_map(|n| json!(f64::from(n) / 4.0)),
        4 => (0_u32..12).prop_map(|n| json!(n)),
        1 => any::<f64>().prop_filter_map("finite", |n| n.is_finite().then(|| json!(n))),
        1 => any::<i64>().prop_map(|n| json!(n)),
        1 => prop::sample::select(vec![
            json!(0), json!(-0.0), json!(-1), json!(1e308), json!(-1e308), json!(5e-324),
            json!(u64::MAX), json!(i64::MIN), json!(9_007_199_254_740_993_u64), json!(4_294_967_296_u64),
        ]),
    ]
    .boxed()
}

fn text(name: &str, known: &Known) -> BoxedStrategy<Value> {
    // No text may name a file of this machine: the commands would read it or write to it.
    let odd = prop_oneof![
        "\\PC{0,12}",
        "[ -~]{0,40}",
        Just("\u{202e}\u{0}\n\r\t\u{feff}".to_owned()),
        Just("x".repeat(100_000)),
        Just("ß".repeat(3000)),
    ]
    .prop_map(|text| json!(text.trim_start_matches('/')));
    let told = prop::sample::select(known.clone()).prop_map(Value::from);
    let fitting: Vec<Value> = match name {
        "herb" => vec![json!("peppermint"), json!("calendula"), json!("elderberry")],
        "part" => vec![json!("leaf"), json!("flower"), json!("fruit")],
        "preparation" => vec![
            json!("tincture-dried"),
            json!("glycerite"),
            json!("oil"),
            json!("oxymel"),
        ],
        "base64" => vec![
            json!(""),
            json!("/9j/4AAQ"),
            json!("UEsDBA=="),
            json!("%%%"),
        ],
        "file" => vec![
            json!("brought:a"),
            json!("brought:../x"),
            json!("relative.zip"),
        ],
        _ if name.ends_with("_on") || name.ends_with("_at") || name.contains("before") => vec![
            json!("2026-07-14"),
            json!("2026-07-14T09:00:00+02:00"),
            json!("2026-02-30"),
            json!("-262143-01-01"),
            json!("+262142-12-31T23:59:60Z"),
            json!("0000-00-00"),
        ],
        _ => vec![json!("Lower bank"), json!("calm"), json!("")],
    };
    prop_oneof![4 => prop::sample::select(fitting), 4 => told, 2 => odd].boxed()
}

/// Any JSON at all.
fn anything() -> BoxedStrategy<Value> {
    let leaf = prop_oneof![
        Just(Value::Null),
        any::<bool>().prop_map(Value::from),
        number(),
        "[a-z_]{0,9}".prop_map(Value::from),
    ];
    leaf.prop_recursive(4, 24, 5, |inner| {
        prop_oneof![
            prop::collection::vec(inner.clone(), 0..5).prop_map(Value::from),
            prop::collection::btree_map("[a-z_]{1,9}", inner, 0..5)
                .prop_map(|fields| Value::Object(fields.into_iter().collect())),
        ]
    })
    .boxed()
}

/// The words of the bindings, one by one, without their comments.
struct Reader {
    words: std::iter::Peekable<std::vec::IntoIter<String>>,
}

impl Reader {
    fn new(text: &str) -> Self {
        let mut words = Vec::new();
        let mut left = text;
        while let Some(first) = left.chars().next() {
            let length = if left.starts_with("/*") {
                left.find("*/").unwrap() + 2
            } else if left.starts_with("//") {
                left.find('\n').unwrap()
            } else if first == '"' {
                left[1..].find('"').unwrap() + 2
            } else if first.is_alphanumeric() || first == '_' {
                left.find(|c: char| !c.is_alphanumeric() && c != '_')
                    .unwrap()
            } else {
                first.len_utf8()
            };
            if !first.is_whitespace() && !left.starts_with("/*") && !left.starts_with("//") {
                words.push(left[..length].to_owned());
            }
            left = &left[length..];
        }
        Self {
            words: words.into_iter().peekable(),
        }
    }

    fn next(&mut self) -> Option<String> {
        self.words.next()
    }

    fn is_next(&mut self, word: &str) -> bool {
        let is_next = self.words.peek().is_some_and(|next| next == word);
        if is_next {
            self.words.next();
        }
        is_next
    }

    fn expect(&mut self, word: &str) {
        let found = self.next();
        assert_eq!(
            found.as_deref(),
            Some(word),
            "the bindings are written otherwise"
        );
    }

    fn shape(&mut self) -> Shape {
        self.is_next("|");
        let mut shapes = vec![self.joint()];
        while self.is_next("|") {
            shapes.push(self.joint());
        }
        if shapes.len() == 1 {
            shapes.remove(0)
        } else {
            Shape::OneOf(shapes)
        }
    }

    fn joint(&mut self) -> Shape {
        let mut shapes = vec![self.single()];
        while self.is_next("&") {
            shapes.push(self.single());
        }
        if shapes.len() == 1 {
            shapes.remove(0)
        } else {
            Shape::AllOf(shapes)
        }
    }

    fn single(&mut self) -> Shape {
        let word = self.next().expect("a type");
        match word.as_str() {
            "{" => self.record(),
            "(" => {
                let shape = self.shape();
                self.expect(")");
                shape
            }
            "[" => {
                let mut each = Vec::new();
                while !self.is_next("]") {
                    each.push(self.shape());
                    self.is_next(",");
                }
                Shape::Row(each)
            }
            "number" => Shape::Number,
            "string" => Shape::Text,
            "boolean" => Shape::Truth,
            "null" => Shape::Nothing,
            "Array" => {
                self.expect("<");
                let each = self.shape();
                self.expect(">");
                Shape::List(Box::new(each))
            }
            "Record" => {
                while !self.is_next(">") {
                    self.next();
                }
                Shape::Record(Vec::new())
            }
            word if word.starts_with('"') => Shape::Word(word.trim_matches('"').to_owned()),
            name => Shape::Named(name.to_owned()),
        }
    }

    fn record(&mut self) -> Shape {
        let mut fields = Vec::new();
        loop {
            while self.is_next(",") || self.is_next(";") {}
            if self.is_next("}") {
                return Shape::Record(fields);
            }
            let name = self.next().unwrap().trim_matches('"').to_owned();
            // A map of anything: `[key in string]: T`.
            if name == "[" {
                while !self.is_next("]") {
                    self.next();
                }
                self.is_next("?");
                self.expect(":");
                self.shape();
                continue;
            }
            let optional = self.is_next("?");
            self.expect(":");
            fields.push(Field {
                name,
                optional,
                shape: self.shape(),
            });
        }
    }
}
