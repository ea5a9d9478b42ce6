//! One of two versions that are compared: a design, a packet, or a folder of designs.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

use pelmet_design::Project;
use pelmet_diagnostics::{Diagnostic, codes};
use pelmet_packet::Packet;

use crate::folder::{Folder, StandardInput, read_file};
use crate::job::Job;

/// What a packet is read from, in its folder.
const PACKET: &str = "packet.json";

/// The largest packet that is read, in bytes.
const MAXIMUM_PACKET_BYTES: u64 = 256 * 1024 * 1024;

/// One of two versions.
pub enum Version {
    /// One job.
    One(Source),
    /// The jobs of a folder by the names of their files.
    Folder(BTreeMap<String, Source>),
}

/// What the packet of a job is had from.
pub enum Source {
    /// A design, to be built.
    Design(Job),
    /// A packet that was built before.
    Packet(Box<Packet>),
}

impl Version {
    /// Opens what a path names; `-` is a design at standard input, in the place of the `other`
    /// version.
    ///
    /// # Errors
    ///
    /// Reports why the path names nothing that can be compared.
    pub fn open(path: &Path, other: &Path) -> Result<Version, Diagnostic> {
        if path == Path::new(StandardInput::NAME) {
            return Job::from_input(other).map(|job| Version::One(Source::Design(job)));
        }
        let packet = path.join(PACKET);
        if packet.is_file() {
            return read_packet(&packet).map(Version::One);
        }
        if path.is_dir() {
            return open_folder(path);
        }
        if path.extension().is_some_and(|ending| ending == "json") {
            return read_packet(path).map(Version::One);
        }
        Job::open(path).map(|job| Version::One(Source::Design(job)))
    }
}

/// The designs of a folder that no other of them uses.
fn open_folder(path: &Path) -> Result<Version, Diagnostic> {
    let shown = path.to_string_lossy();
    let folder = Folder::open(path).map_err(|_| codes::file_not_found(None, &shown, None))?;
    let mut jobs = BTreeMap::new();
    for name in folder.paths() {
        if name.ends_with(".pelmet") {
            let job = Job::open(&path.join(&name))?;
            jobs.insert(name, job);
        }
    }
    let used: BTreeSet<String> = jobs
        .iter()
        .flat_map(|(name, job)| used_by(name, job))
        .collect();
    jobs.retain(|name, _| !used.contains(name));
    let jobs = jobs
        .into_iter()
        .map(|(name, job)| (name, Source::Design(job)));
    Ok(Version::Folder(jobs.collect()))
}

/// The files that a job of a folder uses, by their names in that folder.
fn used_by(name: &str, job: &Job) -> Vec<String> {
    let uses = job.uses().into_iter();
    match name.rsplit_once('/') {
        Some((within, _)) => uses.map(|used| format!("{within}/{used}")).collect(),
        None => uses.collect(),
    }
}

fn read_packet(path: &Path) -> Result<Source, Diagnostic> {
    let shown = &path.to_string_lossy();
    let bytes = read_file(path, MAXIMUM_PACKET_BYTES).map_err(|error| {
        Diagnostic::from(codes::FileNotReadable {
            place: None,
            path: shown,
            reason: &error.kind().to_string(),
        })
    })?;
    let packet = Packet::from_json(&bytes).map_err(|why| {
        Diagnostic::from(codes::PacketNotRead {
            path: shown,
            reason: &why,
        })
    })?;
    Ok(Source::Packet(Box::new(packet)))
}
