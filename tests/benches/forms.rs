//! How long each form of a packet takes to write: of a job of three windows, and of twelve.

use criterion::{Criterion, criterion_group, criterion_main};
use pelmet_sheets::{FORMS, PacketChoice, files};
use pelmet_tests::project_at;

/// Jobs, and what they are called here.
const JOBS: [(&str, &str); 2] = [
    ("three windows", "examples/hall/hall.pelmet"),
    ("twelve windows", "examples/boathouse/boathouse.pelmet"),
];

fn forms(criterion: &mut Criterion) {
    for (name, design) in JOBS {
        let project = project_at(design);
        let Some(packet) = project.build().packet else {
            continue;
        };
        let mut group = criterion.benchmark_group(name);
        group.sample_size(10);
        group.bench_function("sums and layouts", |bencher| {
            bencher.iter(|| project.build());
        });
        for form in FORMS {
            let choice = PacketChoice {
                forms: vec![form],
                ..PacketChoice::default()
            };
            group.bench_function(form.word, |bencher| {
                bencher.iter(|| files(&packet, &choice));
            });
        }
        group.bench_function("usual forms", |bencher| {
            bencher.iter(|| files(&packet, &PacketChoice::default()));
        });
        group.finish();
    }
}

criterion_group!(benches, forms);
criterion_main!(benches);
