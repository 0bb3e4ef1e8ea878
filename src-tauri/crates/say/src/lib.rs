//! The macro by which the core says something: it reads the English catalogue while it compiles.
//!
//! What lives here is the check alone; the message it makes is a value of the crate `message`, and its words in each
//! language stand in `words/texts/<language>/*.ftl`.

mod catalogue;
mod places;

use std::collections::BTreeSet;

use proc_macro::TokenStream;
use quote::quote;
use syn::parse::{Parse, ParseStream};
use syn::{Expr, Ident, LitStr, Token, parse_macro_input};

/// One argument: `name = expression`, or `name` alone for a variable of that name.
struct Given {
    name: Ident,
    value: Expr,
}

impl Parse for Given {
    fn parse(input: ParseStream<'_>) -> syn::Result<Self> {
        let name: Ident = input.parse()?;
        let value = if input.peek(Token![=]) {
            input.parse::<Token![=]>()?;
            input.parse()?
        } else {
            syn::parse_quote!(#name)
        };
        Ok(Self { name, value })
    }
}

/// The id of an entry and what stands in its places.
struct Said {
    id: LitStr,
    given: Vec<Given>,
}

impl Parse for Said {
    fn parse(input: ParseStream<'_>) -> syn::Result<Self> {
        let id = input.parse()?;
        let mut given = Vec::new();
        while !input.is_empty() {
            input.parse::<Token![,]>()?;
            if !input.is_empty() {
                given.push(input.parse()?);
            }
        }
        Ok(Self { id, given })
    }
}

impl Said {
    /// What is wrong with it, in the words of the compiler's error.
    fn fault(&self) -> Option<syn::Error> {
        let id = self.id.value();
        let places = match catalogue::english() {
            Ok(entries) => entries.get(&id),
            Err(why) => return Some(syn::Error::new(self.id.span(), why)),
        };
        let Some(places) = places else {
            let why = format!("no entry `{id}` in words/texts/en");
            return Some(syn::Error::new(self.id.span(), why));
        };
        let mut names = BTreeSet::new();
        for given in &self.given {
            let name = given.name.to_string().replace('_', "-");
            if !places.contains(&name) || !names.insert(name.clone()) {
                let why = format!("`{id}` has places for {places:?}, each once; not for `{name}`");
                return Some(syn::Error::new(given.name.span(), why));
            }
        }
        let left: Vec<&String> = places.difference(&names).collect();
        (!left.is_empty())
            .then(|| syn::Error::new(self.id.span(), format!("`{id}` also needs {left:?}")))
    }
}

/// A `message::Message`: `say!("id", name = value, other)`.
///
/// The id and the names of its arguments are held to the English catalogue while this compiles. A value is whatever
/// `message::Argument` can be made from; a bare text is not, for it must be known whose words it holds. An underscore in
/// a name stands for the hyphen of the catalogue.
#[proc_macro]
pub fn say(input: TokenStream) -> TokenStream {
    let said = parse_macro_input!(input as Said);
    if let Some(fault) = said.fault() {
        return fault.to_compile_error().into();
    }
    let id = &said.id;
    let names = said
        .given
        .iter()
        .map(|given| given.name.to_string().replace('_', "-"));
    let values = said.given.iter().map(|given| &given.value);
    quote! {
        ::message::Message::new(#id)#(.with(#names, ::message::Argument::from(#values)))*
    }
    .into()
}
