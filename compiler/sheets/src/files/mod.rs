//! The files of a packet's folder: which there are, how they are called and what is in them.

mod choice;
mod drawings;
mod form;
mod name;

pub use choice::PacketChoice;
pub use form::{FORMS, PacketForm};
pub use name::PacketFile;

use pelmet_packet::Packet;

/// The files of a packet, in the forms chosen.
pub fn files(packet: &Packet, choice: &PacketChoice) -> Vec<PacketFile> {
    let forms = choice.forms.iter();
    forms.flat_map(|form| form.files(packet, choice)).collect()
}

/// Whether a file has a name that a packet's files have, whatever was chosen, and so may be replaced
/// by one.
pub fn is_of_a_packet(name: &str) -> bool {
    let mut names = FORMS.iter().flat_map(|form| form.names);
    names.any(|known| known.fits(name))
}

#[cfg(test)]
mod tests {
    use super::is_of_a_packet;

    #[test]
    fn a_name_is_a_packets_or_not() {
        for (name, is) in [
            ("packet.html", true),
            ("packet.json", true),
            ("packet.pdf", true),
            ("sheets.txt", true),
            ("elevation-1-bay.svg", true),
            ("layout-12-kelp-stripe.svg", true),
            ("packet-old.html", false),
            ("packet.html.txt", false),
            ("my packet.html", false),
            ("elevation-.svg", false),
            ("elevation.svg", false),
            ("sheets", false),
            ("", false),
        ] {
            assert_eq!(is_of_a_packet(name), is, "{name}");
        }
    }
}
