//! The table of symbols, and what can be asked of it.

use pelmet_diagnostics::{Code, FileId, Sources, Span};
use pelmet_model::Figure;

use crate::closed_sets::KnownName;
use crate::kind::Kind;

/// What is defined in the texts of a job, and what every name in them refers to.
#[derive(Clone, Default, Debug)]
pub struct Symbols {
    /// By [`DefinitionId`].
    definitions: Vec<Definition>,
    /// By their places, each once.
    references: Vec<Reference>,
}

/// A definition, by its place in the table.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct DefinitionId(pub(super) usize);

/// What gives a name its meaning.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Definition {
    /// What it defines.
    pub kind: DefinitionKind,
    /// The name it gives.
    pub name: String,
    /// Where the name stands, and in which file.
    pub span: Span,
    /// The whole of it, from its first letter to its last.
    pub extent: Span,
    /// The item it is defined in: that of a parameter, a step, a corner, or a panel or measure of a
    /// treatment.
    pub owner: Option<DefinitionId>,
    /// The lines of comment directly above it.
    pub documentation: Option<Span>,
}

/// What a definition defines.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum DefinitionKind {
    /// An item; a panel or a measure of a treatment too.
    Item(Kind),
    /// A parameter of an item.
    Parameter,
    /// A step of a making method.
    Step,
    /// A corner of an outline.
    Corner,
}

/// A name or word of a text that refers to something.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct Reference {
    /// Where it stands, and in which file.
    pub span: Span,
    /// What it refers to.
    pub meaning: Meaning,
}

/// What a name or a word refers to.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Meaning {
    /// What this defines.
    Definition(DefinitionId),
    /// A property of an item, by the kind of the item and its key.
    Property(Kind, &'static str),
    /// A length that is known wherever items of a kind are described.
    Known(KnownName),
    /// A figure of a panel.
    Figure(Figure),
    /// A warning, by its code.
    Warning(&'static Code),
    /// A file that is used, or a list of windows.
    File(FileId),
    /// A kind of item, by the word it begins with.
    Kind(Kind),
    /// Words of the language, whole.
    Word(&'static str),
    /// Something of this kind that need not be described, and is not.
    Undescribed(Kind),
    /// Words of the maker's own, which are printed as they stand.
    OwnWords,
}

impl Symbols {
    /// The table of these definitions and references, which may be in any order and there twice.
    pub(super) fn new(definitions: Vec<Definition>, mut references: Vec<Reference>) -> Self {
        references.sort_by_key(|reference| reference.span);
        Self {
            definitions,
            references: each_once(references),
        }
    }

    /// Every definition: those of a file behind those of the files it uses, and within a file in the
    /// order of their places, but for what is defined in an item.
    pub fn definitions(&self) -> impl Iterator<Item = (DefinitionId, &Definition)> {
        let numbered = self.definitions.iter().enumerate();
        numbered.map(|(index, definition)| (DefinitionId(index), definition))
    }

    /// A definition of this table; nothing if it is of another.
    #[must_use]
    pub fn definition(&self, id: DefinitionId) -> Option<&Definition> {
        self.definitions.get(id.0)
    }

    /// Every reference, file by file in the order of their places. What is given for a parameter that
    /// is used in several ways may refer to several things, and so may a panel's name that several
    /// treatments have; each such meaning is a reference of its own.
    #[must_use]
    pub fn references(&self) -> &[Reference] {
        &self.references
    }

    /// The references to what a definition defines, over all files.
    pub fn references_to(&self, id: DefinitionId) -> impl Iterator<Item = &Reference> {
        let wanted = Meaning::Definition(id);
        let references = self.references.iter();
        references.filter(move |reference| reference.meaning == wanted)
    }

    /// The definition whose name holds a byte of a file, the byte after its last letter included.
    #[must_use]
    pub fn definition_at(&self, file: FileId, byte: usize) -> Option<(DefinitionId, &Definition)> {
        self.definitions()
            .find(|(_, definition)| holds(definition.span, file, byte))
    }

    /// The references that hold a byte of a file, the byte after the last letter included.
    pub fn references_at(&self, file: FileId, byte: usize) -> impl Iterator<Item = &Reference> {
        let before = |reference: &Reference| {
            let span = reference.span;
            span.file < file || span.file == file && span.range().end < byte
        };
        let from = self.references.partition_point(before);
        let rest = self.references.iter().skip(from);
        rest.take_while(move |reference| holds(reference.span, file, byte))
    }

    /// The innermost definition that a byte of a file lies in: whose parameters, panels and measures
    /// are known there.
    #[must_use]
    pub fn definition_around(&self, file: FileId, byte: usize) -> Option<DefinitionId> {
        let around = self.definitions().filter(|(_, definition)| {
            matches!(definition.kind, DefinitionKind::Item(_))
                && holds(definition.extent, file, byte)
        });
        let innermost = around.max_by_key(|(_, definition)| definition.extent.start);
        innermost.map(|(id, _)| id)
    }
}

impl Definition {
    /// What the comment directly above it says, line by line, without the signs that begin it.
    #[must_use]
    pub fn documentation<'s>(&self, sources: &'s Sources) -> Vec<&'s str> {
        let written = self.documentation.map_or("", |span| sources.snippet(span));
        let lines = written.lines().map(str::trim);
        lines
            .map(|line| line.strip_prefix('#').unwrap_or(line))
            .map(|line| line.strip_prefix(' ').unwrap_or(line))
            .collect()
    }
}

fn holds(span: Span, file: FileId, byte: usize) -> bool {
    let range = span.range();
    span.file == file && range.start <= byte && byte <= range.end
}

/// References in the order of their places, each once; those of one place keep their order.
fn each_once(references: Vec<Reference>) -> Vec<Reference> {
    let mut kept: Vec<Reference> = Vec::with_capacity(references.len());
    for reference in references {
        let mut beside = kept.iter().rev();
        let known = beside
            .by_ref()
            .take_while(|other| other.span == reference.span)
            .any(|other| *other == reference);
        if !known {
            kept.push(reference);
        }
    }
    kept.shrink_to_fit();
    kept
}
