//! What a figure comes to on one panel.

use pelmet_measure::Length;
use pelmet_model::CountedThing;
use pelmet_model::{
    Allowance, BandEdge, BandMade, Curve, Each, EdgeKind, EdgePart, Fabric, Figure, FigureValue,
    Layer, LayerMaking, MarkMade, Marked, Need, NeedExtent, NotionKind, PanelMade, PanelOrder,
    PieceMade, Relief,
};

/// A panel whose figures are asked for.
#[derive(Copy, Clone)]
pub(crate) struct Figured<'a> {
    pub(crate) order: &'a PanelOrder,
    pub(crate) made: &'a PanelMade,
    pub(crate) fabrics: &'a [Fabric],
}

impl<'a> Figured<'a> {
    /// How many there are of what words are said for each of.
    pub(crate) fn number_of(self, each: Each) -> usize {
        match each {
            Each::Join => self.joins().count(),
            Each::TapeRun => self.made.tape.len(),
            Each::Pleat => self.made.pleating.pleats.len(),
        }
    }

    /// A figure of the panel, or of one of what the words are said for each of; `None` where the
    /// panel has no such thing.
    pub(crate) fn figure(self, figure: Figure, turn: usize) -> Option<FigureValue> {
        use FigureValue::{Count, Mark, Name, Number, Piece, PleatFold, Stated};
        let made = self.made;
        match figure {
            Figure::Face => self.cloth(Layer::Face).map(Name),
            Figure::Lining => self.cloth(Layer::Lining).map(Name),
            Figure::FaceSize => self.piece(Layer::Face).map(Piece),
            Figure::LiningSize => self.piece(Layer::Lining).map(Piece),
            Figure::Interlining => self.cloth(Layer::Interlining).map(Name),
            Figure::InterliningSize => self.piece(Layer::Interlining).map(Piece),
            Figure::LiningLonger => more(self.lining()?.longer).map(Stated),
            Figure::LiningShorter => more(-self.lining()?.longer).map(Stated),
            Figure::LiningWider => more(self.lining()?.wider).map(Stated),
            Figure::LiningNarrower => more(-self.lining()?.wider).map(Stated),
            Figure::FlatWidth => Some(Mark(made.flat)),
            Figure::FinishedWidth => Some(Mark(made.finished)),
            Figure::Tolerance => made.tolerance.map(|(worst, _)| Mark(worst)),
            Figure::MadeLength => Some(Mark(made.made_length)),
            Figure::Drop => Some(Mark(self.order.drop)),
            Figure::HeadingLine => self.mark(|kind| *kind == Marked::HeadingLine),
            Figure::Edge(layer, edge, part) => self.edge(layer, edge, part),
            Figure::Band => self.band_cloth().map(Name),
            Figure::BandSize(edge) => self.piece(Layer::Band(edge)).map(Piece),
            Figure::BandDepth(edge) => self.band(edge).map(|band| Stated(band.depth)),
            Figure::BandSeam => {
                made.bands.first()?;
                more(self.order.making.face.edges.band.total()).map(Stated)
            }
            Figure::Fold => made.pieces.first()?.fold.map(FigureValue::Cut),
            Figure::Joins => counted(self.joins().count(), CountedThing::Join),
            Figure::JoinSeam => self.joins().next().map(|_| Stated(self.order.making.join)),
            Figure::JoinLayer => self
                .joins()
                .nth(turn)
                .map(|(layer, _)| FigureValue::Layer(layer)),
            Figure::JoinPlace => self.joins().nth(turn).map(|(_, at)| Mark(at)),
            Figure::Tape | Figure::TapeLength => self.tape(figure),
            Figure::RunEdge | Figure::RunEnds | Figure::RunLength => self.run(figure, turn),
            Figure::TurningOpening | Figure::OpeningStart | Figure::OpeningEnd => {
                self.opening(figure)
            }
            Figure::Trims => self.corners(Relief::Trim),
            Figure::Snips => self.corners(Relief::Snip),
            Figure::Mitres => self.corners(Relief::Mitre),
            Figure::Clips => self.cuts(|curve| curve.clips, CountedThing::Clip),
            Figure::Wedges => self.cuts(|curve| curve.wedges, CountedThing::Wedge),
            Figure::Pleats => counted(made.pleating.pleats.len(), CountedThing::Pleat),
            Figure::PleatNumber => Some(Number(turn.saturating_add(1))),
            Figure::PleatKind => Some(Name(made.pleating.pleats.get(turn)?.kind.word().to_owned())),
            Figure::PleatDepth => Some(Mark(made.pleating.pleats.get(turn)?.depth)),
            Figure::PleatFold => Some(PleatFold(turn)),
            Figure::PleatStrips => Some(Count(
                usize_of(made.pleat_strips?.count),
                CountedThing::Strip,
            )),
            Figure::StripLength => Some(FigureValue::Cut(made.pleat_strips?.length)),
            Figure::Rings => counted(self.count(NotionKind::Rings)?, CountedThing::Ring),
            Figure::RingSpacing => self.ring_spacing(),
            Figure::Weights => counted(self.count(NotionKind::Weights)?, CountedThing::Weight),
            Figure::Thread => Some(Name(self.need(NotionKind::Thread)?.name.clone())),
        }
    }

    fn cloth(self, layer: Layer) -> Option<String> {
        let piece = self.made.pieces.get(self.piece(layer)?)?;
        let cloth = self.fabrics.get(piece.fabric)?;
        Some(cloth.name.clone())
    }

    fn band(self, edge: BandEdge) -> Option<&'a BandMade> {
        self.made.bands.iter().find(|band| band.edge == edge)
    }

    fn band_cloth(self) -> Option<String> {
        let band = self.made.bands.first()?;
        self.cloth(Layer::Band(band.edge))
    }

    fn piece(self, layer: Layer) -> Option<usize> {
        let mut pieces = self.made.pieces.iter();
        pieces.position(|piece| piece.layer == layer)
    }

    fn lining(self) -> Option<LayerMaking> {
        self.piece(Layer::Lining)?;
        self.order.making.lining
    }

    fn edge(self, layer: Layer, edge: EdgeKind, part: EdgePart) -> Option<FigureValue> {
        self.piece(layer)?;
        let making = self.order.making.layer(layer)?;
        // Where the face is folded up as its own lining, there is nothing to sew or to hem.
        if self.order.making.self_lined && edge == EdgeKind::Lower {
            return None;
        }
        let allowance = making.edges.of(edge);
        let length = match (allowance, part) {
            (Allowance::Seam(seam), EdgePart::Seam) => seam,
            (Allowance::SingleHem { depth, .. }, EdgePart::Hem) => depth,
            (Allowance::SingleHem { turn, .. }, EdgePart::Turn) => turn,
            (Allowance::DoubleHem(depth), EdgePart::Hem | EdgePart::Turn) => depth,
            _ => return None,
        };
        more(length).map(FigureValue::Stated)
    }

    /// The joins of every layer, each with the word for its layer.
    fn joins(self) -> impl Iterator<Item = (Layer, Length)> + 'a {
        let joined = |piece: &'a PieceMade| Some((piece.layer, piece.joined.as_ref()?));
        let pieces = self.made.pieces.iter().filter_map(joined);
        pieces.flat_map(|(layer, joined)| {
            let seams = joined.seams.iter();
            seams.map(move |seam| (layer, seam.at))
        })
    }

    fn tape(self, figure: Figure) -> Option<FigureValue> {
        let tape = self.order.making.tape.as_ref()?;
        let together: Length = self.made.tape.iter().map(|run| run.length).sum();
        Some(match figure {
            Figure::TapeLength => FigureValue::Cut(together),
            _ => FigureValue::Stated(tape.width),
        })
    }

    fn run(self, figure: Figure, turn: usize) -> Option<FigureValue> {
        let run = self.made.tape.get(turn)?;
        Some(match figure {
            Figure::RunEdge => FigureValue::Edge(run.kind),
            Figure::RunEnds => FigureValue::RunEnds(turn),
            _ => FigureValue::Cut(run.length),
        })
    }

    fn opening(self, figure: Figure) -> Option<FigureValue> {
        let length = self.order.making.turning_opening?;
        let is_end = |mark: &&MarkMade| mark.what == Marked::TurningOpening;
        let mut ends = self.made.marks.iter().filter(is_end);
        let (start, end) = (ends.next()?.across, ends.next()?.across);
        Some(match figure {
            Figure::OpeningStart => FigureValue::Mark(start),
            Figure::OpeningEnd => FigureValue::Mark(end),
            _ => FigureValue::Stated(length),
        })
    }

    fn corners(self, relief: Relief) -> Option<FigureValue> {
        let corners = self.made.shape.corners.iter().zip(1..);
        let corners: Vec<usize> = corners
            .filter(|(corner, _)| corner.relief == Some(relief))
            .map(|(_, number)| number)
            .collect();
        (!corners.is_empty()).then_some(FigureValue::Corners(corners))
    }

    fn cuts(self, of: impl Fn(&Curve) -> u32, what: CountedThing) -> Option<FigureValue> {
        let edges = self.made.shape.edges.iter();
        let cuts = edges.filter_map(|edge| edge.curve.as_ref()).map(of);
        counted(usize_of(cuts.fold(0, u32::saturating_add)), what)
    }

    fn mark(self, is_it: impl Fn(&Marked) -> bool) -> Option<FigureValue> {
        let mark = self.made.marks.iter().find(|mark| is_it(&mark.what))?;
        mark.down.map(FigureValue::Mark)
    }

    fn need(self, kind: NotionKind) -> Option<&'a Need> {
        self.made.needs.iter().find(|need| need.kind == kind)
    }

    fn count(self, kind: NotionKind) -> Option<usize> {
        match self.need(kind)?.extent {
            NeedExtent::Count(count) => Some(usize_of(count)),
            NeedExtent::Length(_) => None,
        }
    }

    /// Rings stand one at each end and the others at equal distances.
    fn ring_spacing(self) -> Option<FigureValue> {
        let spaces = self.count(NotionKind::Rings)?.checked_sub(1)?;
        let spaces = u32::try_from(spaces).ok().filter(|spaces| *spaces > 0)?;
        Some(FigureValue::Mark(self.made.finished.divided(spaces)))
    }
}

/// A length that is something at all.
fn more(length: Length) -> Option<Length> {
    length.is_positive().then_some(length)
}

/// So many of something, where there are any.
fn counted(count: usize, what: CountedThing) -> Option<FigureValue> {
    (count > 0).then_some(FigureValue::Count(count, what))
}

fn usize_of(count: u32) -> usize {
    usize::try_from(count).unwrap_or(usize::MAX)
}
