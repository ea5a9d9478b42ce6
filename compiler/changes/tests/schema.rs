//! The published schema is the one of this code.

const PUBLISHED: &str = include_str!("../changes.schema.json");

#[test]
fn the_published_schema_is_up_to_date() {
    let now = format!("{:#}\n", pelmet_changes::changes_schema());
    assert!(
        now == PUBLISHED,
        "renew it: cargo run -p pelmet-changes --example changes_schema > compiler/changes/changes.schema.json"
    );
}
