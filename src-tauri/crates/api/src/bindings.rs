//! The commands as a TypeScript module: every type once, then the map of commands.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use message::Failure;
use ts_rs::{Config, TS, TypeVisitor};

use crate::request::Command;
use crate::speech::Language;

/// The module as it grows command by command.
pub(crate) struct Module {
    config: Config,
    declarations: BTreeMap<String, String>,
    commands: String,
}

impl Default for Module {
    fn default() -> Self {
        let mut module = Self {
            config: Config::new().with_large_int("number"),
            declarations: BTreeMap::new(),
            commands: String::new(),
        };
        module.visit::<Failure>();
        module
    }
}

impl Module {
    /// Adds a command with all the types it names.
    pub(crate) fn command<C, Of>(&mut self)
    where
        C: Command<Of> + TS + 'static,
        C::Reply: TS + 'static,
    {
        self.entry::<C, C::Reply>(C::NAME);
    }

    fn entry<Q: TS + 'static, A: TS + 'static>(&mut self, name: &str) {
        self.visit::<Q>();
        self.visit::<A>();
        let (request, reply) = (Q::name(&self.config), A::name(&self.config));
        let _ = writeln!(
            self.commands,
            "  {name:?}: {{ request: {request}; reply: {reply} }};"
        );
    }

    /// The text of the module.
    pub(crate) fn text(&self) -> String {
        let mut text = String::from(
            "// Written by `cargo dev bindings` from the core's own types; a test holds it to them.\n\n",
        );
        for declaration in self.declarations.values() {
            let _ = writeln!(text, "{declaration}\n");
        }
        let _ = write!(
            text,
            "/** Every command by its name. */\nexport interface Commands {{\n{}}}\n",
            self.commands
        );
        text
    }
}

impl TypeVisitor for Module {
    fn visit<T: TS + 'static + ?Sized>(&mut self) {
        if T::output_path().is_none() {
            // A number, a string or a container: nothing to declare, but what it holds may be.
            T::visit_generics(self);
            return;
        }
        let name = T::ident(&self.config);
        let mut declaration = T::decl(&self.config);
        let docs = T::docs().unwrap_or_default();
        declaration = format!("{docs}export {declaration}");
        match self.declarations.get(&name) {
            Some(known) => assert_eq!(
                known, &declaration,
                "two types of the wire share the name {name}"
            ),
            None => {
                self.declarations.insert(name, declaration);
                T::visit_dependencies(self);
                T::visit_generics(self);
            }
        }
    }
}

/// The names that core and page both say, as a TypeScript module of one language.
pub fn shared_names(language: Language) -> String {
    let mut text = "// Made by `cargo dev bindings` from the catalogue of the core.\n\n\
                    /** What the core and the page both name. */\nexport const core = {\n"
        .to_owned();
    for (group, names) in formulary::said::shared() {
        let _ = writeln!(text, "  {group}: {{");
        for (key, name) in names {
            let is_word = key.chars().all(|letter| letter.is_ascii_alphanumeric());
            let key = if is_word {
                key.to_owned()
            } else {
                format!("{key:?}")
            };
            let _ = writeln!(text, "    {key}: {:?},", language.tell(&name));
        }
        text.push_str("  },\n");
    }
    text + "};\n"
}
