//! The few flags of the subcommands, without a library for it.

/// Flags as `--name value` or `--name`; everything else is refused.
pub struct Flags {
    given: Vec<(String, Option<String>)>,
}

impl Flags {
    /// Reads `args`; `with_value` and `bare` are the names that are allowed.
    ///
    /// # Errors
    /// A sentence that names the first argument that is not allowed.
    pub fn read(args: &[String], with_value: &[&str], bare: &[&str]) -> Result<Self, String> {
        let mut given = Vec::new();
        let mut args = args.iter();
        while let Some(arg) = args.next() {
            if bare.contains(&arg.as_str()) {
                given.push((arg.clone(), None));
            } else if with_value.contains(&arg.as_str()) {
                let value = args
                    .next()
                    .ok_or_else(|| format!("{arg} needs a value after it."))?;
                given.push((arg.clone(), Some(value.clone())));
            } else {
                return Err(format!("{arg:?} is not understood here."));
            }
        }
        Ok(Self { given })
    }

    /// Whether the flag stands there.
    pub fn has(&self, name: &str) -> bool {
        self.given.iter().any(|(given, _)| given == name)
    }

    /// The value after the flag.
    pub fn value(&self, name: &str) -> Option<&str> {
        self.given
            .iter()
            .find(|(given, _)| given == name)
            .and_then(|(_, value)| value.as_deref())
    }
}
