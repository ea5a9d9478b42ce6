//! What the parts of a sheet are set in.

use crate::drawing::Lettering;

pub(super) const TITLE: Lettering = Lettering::bold(6.4);
pub(super) const HEADING: Lettering = Lettering::bold(4.6);
pub(super) const BODY: Lettering = Lettering::plain(3.6);
pub(super) const PANEL: Lettering = Lettering::bold(3.9);
pub(super) const NUMBER: Lettering = Lettering::bold(4.6);
