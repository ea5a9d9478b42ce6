//! One module as it is written: what it defines, what it imports, and every path it writes.

use std::collections::BTreeSet;

use proc_macro2::{TokenStream, TokenTree};
use syn::visit::Visit;
use syn::{Item, UseTree, Visibility};

/// A path as it is written: `super::row::Row` is `["super", "row", "Row"]`.
pub type Path = Vec<String>;

/// What one module says, apart from the modules that are written inside it.
#[derive(Default)]
pub struct Module {
    /// The names of its own items.
    pub items: BTreeSet<String>,
    /// The names it imports, one by one.
    pub imports: Vec<Import>,
    /// What it imports by a `*`: everything in these modules.
    pub globs: Vec<Path>,
    /// Every path outside the imports.
    pub mentions: BTreeSet<Path>,
}

/// A name that stands for something of another module.
pub struct Import {
    /// What it is called here.
    pub name: String,
    /// What it stands for.
    pub path: Path,
    /// Whether others may use the name too: `pub use`, `pub(crate) use`.
    pub is_handed_on: bool,
}

/// Reads a file of Rust, which is the module `path`, and the modules written inside it.
pub fn read(path: &str, text: &str) -> Vec<(String, Module)> {
    let file = syn::parse_file(text).unwrap_or_else(|error| panic!("{path}: {error}"));
    read_items(path, &file.items)
}

fn read_items(path: &str, items: &[Item]) -> Vec<(String, Module)> {
    let mut module = Module::default();
    let mut inside = Vec::new();
    for item in items {
        match (item, defined(item)) {
            (Item::Mod(child), _) => {
                let path = format!("{path}::{}", child.ident);
                let items = child.content.iter();
                inside.extend(items.flat_map(|(_, items)| read_items(&path, items)));
            }
            (_, name) => {
                module.items.extend(name);
                module.visit_item(item);
            }
        }
    }
    inside.push((path.to_owned(), module));
    inside
}

/// The name that an item gives to what it defines.
fn defined(item: &Item) -> Option<String> {
    let name = match item {
        Item::Const(item) => &item.ident,
        Item::Enum(item) => &item.ident,
        Item::Fn(item) => &item.sig.ident,
        Item::Macro(item) => item.ident.as_ref()?,
        Item::Static(item) => &item.ident,
        Item::Struct(item) => &item.ident,
        Item::Trait(item) => &item.ident,
        Item::Type(item) => &item.ident,
        _ => return None,
    };
    Some(name.to_string())
}

impl Visit<'_> for Module {
    fn visit_item_use(&mut self, item: &syn::ItemUse) {
        let is_handed_on = !matches!(item.vis, Visibility::Inherited);
        self.import(&item.tree, &mut Vec::new(), is_handed_on);
    }

    fn visit_path(&mut self, path: &syn::Path) {
        let names = path.segments.iter();
        self.mentions
            .insert(names.map(|segment| segment.ident.to_string()).collect());
        syn::visit::visit_path(self, path);
    }

    fn visit_macro(&mut self, call: &syn::Macro) {
        syn::visit::visit_macro(self, call);
        self.mention_tokens(call.tokens.clone());
    }

    /// `#[derive(..)]` and its like name nothing of this repository.
    fn visit_attribute(&mut self, _: &syn::Attribute) {}
}

impl Module {
    fn import(&mut self, tree: &UseTree, before: &mut Path, is_handed_on: bool) {
        match tree {
            UseTree::Path(tree) => {
                before.push(tree.ident.to_string());
                self.import(&tree.tree, before, is_handed_on);
                before.pop();
            }
            UseTree::Group(group) => {
                for tree in &group.items {
                    self.import(tree, before, is_handed_on);
                }
            }
            UseTree::Glob(_) => self.globs.push(before.clone()),
            UseTree::Name(tree) => self.import_as(None, &tree.ident, before, is_handed_on),
            UseTree::Rename(tree) => {
                let name = Some(tree.rename.to_string());
                self.import_as(name, &tree.ident, before, is_handed_on);
            }
        }
    }

    fn import_as(
        &mut self,
        name: Option<String>,
        last: &syn::Ident,
        before: &Path,
        is_handed_on: bool,
    ) {
        let mut path = before.clone();
        // `use row::{self, Row}` imports the module `row`.
        if last != "self" {
            path.push(last.to_string());
        }
        let name = name.or_else(|| path.last().cloned()).unwrap_or_default();
        self.imports.push(Import {
            name,
            path,
            is_handed_on,
        });
    }

    /// The paths in what a macro is given, which has no syntax of its own: names with `::` between.
    fn mention_tokens(&mut self, tokens: TokenStream) {
        let mut path = Path::new();
        let mut colons = 0;
        for token in tokens {
            match token {
                TokenTree::Ident(name) => {
                    if colons != 2 {
                        self.mention(&mut path);
                    }
                    path.push(name.to_string());
                    colons = 0;
                }
                TokenTree::Punct(sign) if sign.as_char() == ':' => {
                    colons = u8::saturating_add(colons, 1);
                }
                TokenTree::Group(group) => {
                    self.mention(&mut path);
                    self.mention_tokens(group.stream());
                    colons = 0;
                }
                TokenTree::Punct(_) | TokenTree::Literal(_) => {
                    self.mention(&mut path);
                    colons = 0;
                }
            }
        }
        self.mention(&mut path);
    }

    fn mention(&mut self, path: &mut Path) {
        if !path.is_empty() {
            self.mentions.insert(std::mem::take(path));
        }
    }
}
