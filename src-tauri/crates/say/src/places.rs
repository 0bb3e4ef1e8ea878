//! The places of an entry for its arguments.
//!
//! The macro and the catalogue both read this file, for a crate of macros can lend nothing else.

use std::collections::BTreeSet;

use fluent_syntax::ast;

/// The names of the arguments of a pattern, those of its variants and functions too.
pub(crate) fn places_of(pattern: &ast::Pattern<&str>) -> BTreeSet<String> {
    let mut names = BTreeSet::new();
    of_pattern(pattern, &mut names);
    names
}

fn of_pattern(pattern: &ast::Pattern<&str>, names: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        if let ast::PatternElement::Placeable { expression } = element {
            of_expression(expression, names);
        }
    }
}

fn of_expression(expression: &ast::Expression<&str>, names: &mut BTreeSet<String>) {
    match expression {
        ast::Expression::Inline(inline) => of_inline(inline, names),
        ast::Expression::Select { selector, variants } => {
            of_inline(selector, names);
            for variant in variants {
                of_pattern(&variant.value, names);
            }
        }
    }
}

fn of_inline(inline: &ast::InlineExpression<&str>, names: &mut BTreeSet<String>) {
    match inline {
        ast::InlineExpression::VariableReference { id } => {
            names.insert(id.name.to_owned());
        }
        ast::InlineExpression::FunctionReference { arguments, .. } => {
            for argument in &arguments.positional {
                of_inline(argument, names);
            }
        }
        ast::InlineExpression::Placeable { expression } => of_expression(expression, names),
        _ => {}
    }
}
