//! The modules of one crate, and which of them uses what of which.

use std::collections::{BTreeMap, BTreeSet};

use crate::lookup::{Lookup, Meaning};
use crate::module::{Module, read};

/// Every module of a crate, by its full path: `crate::pleating::laid`.
pub type Modules = BTreeMap<String, Module>;

/// What each module uses: the modules that define it, and its names there.
pub type Uses = BTreeMap<String, BTreeMap<String, BTreeSet<String>>>;

/// The modules in some files, each with its path within `src`.
pub fn modules<'t>(files: impl IntoIterator<Item = (&'t str, &'t str)>) -> Modules {
    let files = files.into_iter();
    files
        .flat_map(|(path, text)| read(&module_path(path), text))
        .collect()
}

/// The full path of the module in a file: `pleating/laid.rs` is `crate::pleating::laid`.
fn module_path(file: &str) -> String {
    let names = file.trim_end_matches(".rs").split('/');
    let names = names.filter(|name| !["lib", "main", "mod"].contains(name));
    let names: Vec<&str> = std::iter::once("crate").chain(names).collect();
    names.join("::")
}

/// What each module uses of which others.
///
/// A name counts for the module that defines it, however many modules hand it on. Handing a name on
/// uses nothing, and neither does declaring a module.
pub fn uses(modules: &Modules) -> Uses {
    let paths = modules.keys();
    paths
        .map(|path| (path.clone(), uses_of(path, modules)))
        .collect()
}

fn uses_of(path: &str, modules: &Modules) -> BTreeMap<String, BTreeSet<String>> {
    let module = &modules[path];
    let own = module.imports.iter().filter(|import| !import.is_handed_on);
    let imported = own.map(|import| &import.path);
    let mut uses: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    for written in imported.chain(&module.mentions) {
        match Lookup::of(modules).meaning(path, written) {
            Some(Meaning::Item(definer, name)) if definer != path => {
                let names = uses.entry(definer.to_owned()).or_default();
                names.insert(name.to_owned());
            }
            Some(Meaning::Item(..) | Meaning::Module(_)) | None => {}
        }
    }
    uses
}
