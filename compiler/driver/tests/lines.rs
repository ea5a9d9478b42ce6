//! The lines drawn on a piece: where it is sewn, and the arcs of circles along its lines.

#![expect(clippy::panic, reason = "a test stops at the first broken promise")]

use pelmet_design::{Project, ReadFinding};
use pelmet_driver::build;
use pelmet_packet::{LayerKind, MarkKind, OutlinePoint, Packet, Panel, Piece};

struct Text(String);

impl Project for Text {
    fn read(&self, _: &str) -> Result<Vec<u8>, ReadFinding> {
        Ok(self.0.clone().into_bytes())
    }
}

/// A lined panel of 24 in by 16 in with an outline, written as its lines, and a cloth for its face.
fn packet(outline: &str, face: &str) -> Packet {
    let text = format!(
        "\
units inches
job \"Shapes\"
fabric sailcloth {{ width: 54 in, shrinkage: 4 % }}
fabric calico {{ width: 54 in }}
rod pole {{ length: 24 in, diameter: 1 in }}
outline shape {{
{outline}
}}
make seamed {{ seam: 1/2 in }}
treatment valance {{
    panel front {{
        finished width: 24 in
        drop: 16 in
        outline: shape
        head: over rod, tail 4 in
        make: seamed
        cut: open
        face: {face}
        lining: calico
    }}
    row: front
}}
window bay: valance {{ rod: pole }}
"
    );
    let built = build("job.pelmet", &Text(text));
    let found: Vec<&str> = built
        .diagnostics
        .iter()
        .map(|found| found.title.as_str())
        .collect();
    built.packet.unwrap_or_else(|| panic!("{found:?}"))
}

fn front(packet: &Packet) -> &Panel {
    let panels = packet.windows.iter().flat_map(|window| &window.panels);
    panels.last().unwrap_or_else(|| panic!("no panel"))
}

fn piece(panel: &Panel, layer: LayerKind) -> &Piece {
    let mut pieces = panel.pieces.iter();
    let found = pieces.find(|piece| piece.layer == layer);
    found.unwrap_or_else(|| panic!("no {layer:?}"))
}

fn in_inches(point: &OutlinePoint) -> (f64, f64) {
    (point.at.across.mm / 25.4, point.at.down.mm / 25.4)
}

const SLANT: &str = "    from (0, drop)\n    to (width, drop - 3 in)\n    up to heading";

fn corners(line: &[OutlinePoint]) -> Vec<(Option<u32>, (f64, f64))> {
    let corners = line.iter().filter(|point| !point.on_curve);
    corners
        .map(|point| {
            let (across, down) = in_inches(point);
            (point.number, (rounded(across), rounded(down)))
        })
        .collect()
}

fn rounded(inches: f64) -> f64 {
    (inches * 1e4).round() / 1e4
}

#[test]
fn the_sewn_line_lies_inside_the_cutting_line_by_the_allowances() {
    let packet = packet(SLANT, "calico");
    let panel = front(&packet);
    let face = piece(panel, LayerKind::Face);
    let lowest = 0.5 + panel.made_length.mm / 25.4;
    let expected = [
        (Some(1), (0.5, 0.5)),
        (Some(2), (0.5, rounded(lowest))),
        (Some(3), (24.5, rounded(lowest - 3.0))),
        (Some(4), (24.5, 0.5)),
    ];
    assert_eq!(corners(&face.sewn), expected);
}

/// Turned over, its left is the panel's right, and every corner keeps its number.
#[test]
fn a_lining_turned_over_keeps_the_numbers_of_the_corners() {
    let packet = packet(SLANT, "calico");
    let panel = front(&packet);
    let lining = piece(panel, LayerKind::Lining);
    assert!(lining.mirrored);
    let lowest = 0.5 + panel.made_length.mm / 25.4;
    let expected = [
        (Some(4), (0.5, 0.5)),
        (Some(3), (0.5, rounded(lowest - 3.0))),
        (Some(2), (24.5, rounded(lowest))),
        (Some(1), (24.5, 0.5)),
    ];
    assert_eq!(corners(&lining.sewn), expected);
}

#[test]
fn what_a_cloth_loses_is_added_inside_too() {
    let packet = packet(SLANT, "sailcloth");
    let face = piece(front(&packet), LayerKind::Face);
    let left = rounded(0.5 / 0.96);
    assert_eq!(corners(&face.sewn)[0], (Some(1), (left, left)));
}

/// A seam and a motif lie on the cut piece where they lie on the made-up one, and the allowance farther in.
#[test]
fn joins_and_motifs_are_told_on_the_cut_piece() {
    let text = "\
units inches
job \"Wide\"
fabric sailcloth { width: 54 in, repeat: 12 in along }
rod pole { length: 96 in, diameter: 1 in }
make seamed { seam: 1/2 in, lining: none }
treatment valance {
    panel front {
        finished width: fill
        drop: 16 in
        head: over rod, tail 4 in
        make: seamed
        face: sailcloth
        cut: open
    }
    row: front
}
window bay: valance { rod: pole, motif: centred on front, 5 in below heading }
";
    let built = build("job.pelmet", &Text(text.to_owned()));
    let packet = built
        .packet
        .unwrap_or_else(|| panic!("{:?}", built.diagnostics));
    let panel = front(&packet);
    let face = piece(panel, LayerKind::Face);
    let seams = &face.joined.as_ref().unwrap().seams;
    assert!(!seams.is_empty());
    for seam in seams {
        let in_from_cut = (seam.from_cut_edge.mm - seam.at.mm) / 25.4;
        assert!((in_from_cut - 0.5).abs() < 1e-5, "{in_from_cut}");
    }
    let mut marks = panel.marks.iter();
    let mark = marks
        .find(|mark| mark.kind == MarkKind::MotifCentre)
        .unwrap();
    let motif = face.motif.as_ref().unwrap();
    let made = (
        mark.from_left.as_ref().unwrap(),
        mark.down.as_ref().unwrap(),
    );
    for (cut, made) in [(&motif.across, made.0), (&motif.down, made.1)] {
        assert!((cut.mm - made.mm - 12.7).abs() < 1e-5, "{cut:?} {made:?}");
    }
}

/// Three scallops 8 in wide and 2 in deep: by the circle through three points, (4^2 + 2^2) / (2 x 2)
/// = 5 in of radius, turned through 4 atan(2 / 4); cut 1/2 in farther out.
#[test]
fn scallops_are_arcs_of_their_own_circle_and_cut_about_the_same_centre() {
    let scalloped = "    from (0, drop - 2 in)\n    scallops to (width, drop - 2 in), 3 of them, 2 in deep\n    up to heading";
    let packet = packet(scalloped, "calico");
    let face = piece(front(&packet), LayerKind::Face);
    let arcs = |line: &[OutlinePoint]| -> Vec<(f64, f64, f64)> {
        let arcs = line.iter().filter_map(|point| point.arc.as_ref());
        arcs.map(|arc| (arc.radius.mm / 25.4, arc.centre.across.mm / 25.4, arc.bulge))
            .collect()
    };
    let (sewn, cut) = (arcs(&face.sewn), arcs(&face.outline));
    assert_eq!((sewn.len(), cut.len()), (3, 3));
    for ((sewn, cut), centre) in sewn.iter().zip(&cut).zip([4.5, 12.5, 20.5]) {
        assert!((sewn.0 - 5.0).abs() < 1e-5, "{sewn:?}");
        assert!((sewn.1 - centre).abs() < 1e-5, "{sewn:?}");
        assert!((sewn.2 - 0.5).abs() < 1e-5, "{sewn:?}");
        assert!((cut.0 - 5.5).abs() < 1e-3, "{cut:?}");
        assert!((cut.1 - centre).abs() < 1e-3, "{cut:?}");
    }
}

/// Wherever an arc is told, its points lie on its circle and its bulge reaches its end.
#[test]
fn every_arc_of_the_standard_outlines_leads_from_its_first_point_to_its_last() {
    for outline in ["scalloped", "arched", "swag", "cascade-to-right"] {
        let text = format!(
            "use standard outlines\nunits metric\njob \"Arcs\"\nfabric linen {{ width: 1400 mm }}\n\
            rod pole {{ length: 660 mm, diameter: 20 mm }}\nmake seamed {{ seam: 12 mm, lining: none }}\n\
            treatment one {{\n    panel front {{\n finished width: 660 mm\n drop: 400 mm\n outline: {outline}\n \
            head: over rod, tail 4 in\n make: seamed\n face: linen\n cut: open\n    }}\n    row: front\n}}\nwindow bay: one {{ rod: pole }}\n"
        );
        let built = build("job.pelmet", &Text(text));
        let packet = built
            .packet
            .unwrap_or_else(|| panic!("{:?}", built.diagnostics));
        let face = piece(front(&packet), LayerKind::Face);
        let mut found = 0;
        for line in [&face.outline, &face.sewn] {
            for (index, point) in line.iter().enumerate() {
                let Some(arc) = &point.arc else { continue };
                found += 1;
                let end = &line[index + arc.points as usize];
                let (from, to) = (in_inches(point), in_inches(end));
                let half_chord = (to.0 - from.0).hypot(to.1 - from.1) / 2.0;
                let angle = arc.bulge.abs().atan() * 4.0;
                let radius = half_chord / (angle / 2.0).sin();
                assert!(
                    (radius - arc.radius.mm / 25.4).abs() < 1e-3,
                    "{outline} {radius}"
                );
            }
        }
        assert!(found >= 2, "{outline}");
    }
}
