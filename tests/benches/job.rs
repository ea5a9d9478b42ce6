//! How long a job of a thousand windows takes, in nine thousand lines.

use criterion::{Criterion, criterion_group, criterion_main};
use pelmet_design::{load, resolve};
use pelmet_diagnostics::FileId;
use pelmet_driver::check;
use pelmet_syntax::parse;
use pelmet_tests::{Memory, generated_job};

/// How many windows the measured job has.
const WINDOWS: usize = 1_000;

/// From bare reading to the whole packet, each step with the ones before it.
fn thousand_windows(criterion: &mut Criterion) {
    let text = generated_job(WINDOWS);
    let project = Memory::of(text.as_str());
    let mut group = criterion.benchmark_group("a thousand windows");
    group.sample_size(10);
    group.bench_function("read", |bencher| bencher.iter(|| parse(FileId(0), &text)));
    group.bench_function("resolve", |bencher| {
        bencher.iter(|| resolve(&load(&project.main, &project)));
    });
    group.bench_function("check", |bencher| {
        bencher.iter(|| check(&project.main, &project));
    });
    group.bench_function("build", |bencher| bencher.iter(|| project.build()));
    group.bench_function("build and print", |bencher| {
        bencher.iter(|| project.build().packet.map(|packet| packet.to_json()));
    });
    group.finish();
}

/// What a maker waits for after changing a number.
fn one_window(criterion: &mut Criterion) {
    let project = Memory::of(generated_job(1));
    criterion.bench_function("one window", |bencher| bencher.iter(|| project.build()));
}

criterion_group!(benches, thousand_windows, one_window);
criterion_main!(benches);
