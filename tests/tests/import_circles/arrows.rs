//! Which crates a crate uses, by its manifest.

/// How the names of all crates of the workspace begin.
const BEGINNING: &str = "pelmet-";

/// The crates of the workspace that a crate uses, without the beginning of their names. What its
/// tests alone use does not count.
pub fn used_crates(manifest: &str) -> Vec<&str> {
    let mut counts = false;
    let mut used = Vec::new();
    for line in manifest.lines() {
        if let Some(section) = line.strip_prefix('[') {
            counts = section.ends_with("dependencies]") && !section.ends_with("dev-dependencies]");
        } else if let (true, Some(rest)) = (counts, line.strip_prefix(BEGINNING)) {
            used.extend(rest.split(['.', ' ', '=']).next());
        }
    }
    used
}

/// What is wrong with what a crate uses, where each may use only those before it in this order.
pub fn upward<'t>(name: &str, used: &[&'t str], order: &[&str]) -> Vec<&'t str> {
    let place = |name: &str| order.iter().position(|other| *other == name);
    let above = |other: &&&str| place(other) >= place(name) || place(other).is_none();
    used.iter().filter(above).copied().collect()
}
