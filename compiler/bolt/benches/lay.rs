//! How long laying and checking take as the pieces grow in number.

use criterion::{BenchmarkId, Criterion, Throughput, criterion_group, criterion_main};
use pelmet_bolt::{LayoutCloth, LayoutPiece, OutlineCorner, OutlinePolygon, check, lay};
use pelmet_measure::Length;

const COUNTS: [u32; 4] = [10, 60, 200, 500];

fn millimetres(count: u32) -> Length {
    Length::millimetres(count.into())
}

fn printed_cloth() -> LayoutCloth {
    LayoutCloth {
        usable_width: millimetres(1372),
        gap: millimetres(6),
        repeat_along: Some(millimetres(320)),
        repeat_across: None,
        half_drop: false,
        one_way: true,
        bolt_length: None,
        buying_step: millimetres(100),
        flaws: Vec::new(),
    }
}

/// As many single pieces, no two alike in a row, every other one held by the print.
fn pieces(count: u32) -> Vec<LayoutPiece> {
    let spread = |index: u32, by: u32, over: u32| {
        index
            .wrapping_mul(by)
            .checked_rem(over)
            .map_or(Length::ZERO, millimetres)
    };
    (0..count)
        .map(|index| LayoutPiece {
            width: millimetres(80) + spread(index, 7_919, 900),
            length: millimetres(120) + spread(index, 104_729, 1_300),
            quantity: 1,
            phase_along: index
                .is_multiple_of(2)
                .then(|| spread(index, 1_299_709, 320)),
            phase_across: None,
            outline: None,
            on_fold: false,
        })
        .collect()
}

/// The same pieces, their lower edges at a slant, on plain cloth that has no top.
fn shapes(count: u32) -> (LayoutCloth, Vec<LayoutPiece>) {
    let cloth = LayoutCloth {
        repeat_along: None,
        one_way: false,
        ..printed_cloth()
    };
    let slanting = |piece: LayoutPiece| {
        let (width, length) = (piece.width, piece.length);
        let left = length.divided(2);
        let corners = [
            (Length::ZERO, Length::ZERO),
            (width, Length::ZERO),
            (width, length),
            (Length::ZERO, left),
        ];
        let corners = corners.map(|(across, along)| OutlineCorner { across, along });
        LayoutPiece {
            phase_along: None,
            outline: Some(OutlinePolygon::through(corners.to_vec(), Length::ZERO)),
            ..piece
        }
    };
    (cloth, pieces(count).into_iter().map(slanting).collect())
}

fn lay_and_check(criterion: &mut Criterion) {
    let cloth = printed_cloth();
    let mut group = criterion.benchmark_group("bolt");
    group.sample_size(10);
    for count in COUNTS {
        let pieces = pieces(count);
        group.throughput(Throughput::Elements(count.into()));
        group.bench_with_input(
            BenchmarkId::new("lay", count),
            &pieces,
            |bencher, pieces| {
                bencher.iter(|| lay(&cloth, pieces));
            },
        );
        let shapes = shapes(count);
        group.bench_with_input(
            BenchmarkId::new("lay shapes", count),
            &shapes,
            |bencher, (cloth, pieces)| {
                bencher.iter(|| lay(cloth, pieces));
            },
        );
        if let Ok(layout) = lay(&cloth, &pieces) {
            group.bench_with_input(
                BenchmarkId::new("check", count),
                &layout,
                |bencher, layout| {
                    bencher.iter(|| check(&cloth, &pieces, layout));
                },
            );
        }
    }
    group.finish();
}

criterion_group!(benches, lay_and_check);
criterion_main!(benches);
