//! Small cloths against a proof by a general constraint solver.

#[path = "common/small_cloths.rs"]
mod small_cloths;

use pelmet_bolt::{check, lay};
use small_cloths::small_cloths;

#[test]
fn bounds_are_under_the_proven_length_and_all_layouts_have_it() {
    let cloths = small_cloths();
    assert_eq!(cloths.len(), 51);
    for it in &cloths {
        let layout = lay(&it.cloth, &it.pieces).unwrap();
        assert_eq!(check(&it.cloth, &it.pieces, &layout), [], "{}", it.name);
        assert!(layout.lower_bound <= it.shortest, "{}", it.name);
        assert_eq!(it.shortest, layout.exact, "{}", it.name);
    }
}
