//! What a path leads to, by the rules of the language as far as a house needs them.

use crate::house::Modules;

/// What a path leads to.
#[derive(Clone, Copy)]
pub enum Meaning<'t> {
    /// A module.
    Module(&'t str),
    /// Something that is defined in a module: which, and what it is called there.
    Item(&'t str, &'t str),
}

/// One looking up.
pub struct Lookup<'t> {
    modules: &'t Modules,
    /// The names that are being looked up: in which module, and whether a path goes on behind the
    /// name. Modules may hand each other's names on; whoever comes to the same name again has gone
    /// in a round that leads nowhere.
    asked: Vec<(&'t str, String, bool)>,
}

impl<'t> Lookup<'t> {
    /// A looking up among these modules.
    pub fn of(modules: &'t Modules) -> Lookup<'t> {
        Lookup {
            modules,
            asked: Vec::new(),
        }
    }

    /// What a path leads to that is written in this module, or goes on from it; none if it leads
    /// out of the crate, or to something local.
    pub fn meaning(&mut self, module: &'t str, path: &[String]) -> Option<Meaning<'t>> {
        let Some((first, rest)) = path.split_first() else {
            return Some(Meaning::Module(module));
        };
        match first.as_str() {
            "crate" => self.meaning("crate", rest),
            "self" => self.meaning(module, rest),
            "super" => self.meaning(module.rsplit_once("::")?.0, rest),
            name => self.named(module, name, rest),
        }
    }

    /// What a name means in a module, and the path behind it.
    fn named(&mut self, module: &'t str, name: &str, rest: &[String]) -> Option<Meaning<'t>> {
        let question = (module, name.to_owned(), rest.is_empty());
        if self.asked.contains(&question) {
            return None;
        }
        self.asked.push(question);
        let child = self.child(module, name);
        let meaning = match child {
            // A module may have the name of a function in it; only behind a module a path goes on.
            Some(child) if !rest.is_empty() => self.meaning(child, rest),
            _ => self
                .imported(module, name, rest)
                .or_else(|| self.defined(module, name))
                .or(child.map(Meaning::Module))
                .or_else(|| self.imported_with_all(module, name, rest)),
        };
        self.asked.pop();
        meaning
    }

    fn child(&self, module: &str, name: &str) -> Option<&'t str> {
        let path = format!("{module}::{name}");
        self.modules
            .get_key_value(&path)
            .map(|(path, _)| path.as_str())
    }

    fn defined(&self, module: &'t str, name: &str) -> Option<Meaning<'t>> {
        let name = self.modules.get(module)?.items.get(name)?;
        Some(Meaning::Item(module, name))
    }

    fn imported(&mut self, module: &'t str, name: &str, rest: &[String]) -> Option<Meaning<'t>> {
        let imports = self.modules.get(module)?.imports.iter();
        let mut so_called = imports.filter(|import| import.name == name);
        so_called.find_map(|import| self.meaning(module, &[&import.path, rest].concat()))
    }

    /// What a name means that came with a `*`.
    fn imported_with_all(
        &mut self,
        module: &'t str,
        name: &str,
        rest: &[String],
    ) -> Option<Meaning<'t>> {
        let mut globs = self.modules.get(module)?.globs.iter();
        globs.find_map(|glob| match self.meaning(module, glob)? {
            Meaning::Module(source) => self.named(source, name, rest),
            Meaning::Item(..) => None,
        })
    }
}
