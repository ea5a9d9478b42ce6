//! What a command says, and where it says it.

use std::collections::BTreeSet;
use std::io::{self, IsTerminal, Write};

use clap::Command;
use clap::error::ErrorKind;
use pelmet_diagnostics::{Diagnostic, Severity, Sources, render};
use pelmet_sheets::TextOptions;

use crate::display::{Display, Form, When};
use crate::outcome::Outcome;
use crate::progress::Progress;
use crate::reports::Reports;

/// What a command says.
///
/// Its product (sheets, pages, a formatted text) is said at once, on standard output. Reports are
/// gathered and told at the end: on standard output if they are the product, else on standard error.
pub struct Console {
    display: Display,
    /// What can be typed, as its reader knows it.
    can_be_typed: Command,
    reports: Reports,
    outcome: Outcome,
    reports_are_the_product: bool,
    progress: Progress,
    remarked: BTreeSet<&'static str>,
}

impl Console {
    /// Nothing said yet; `can_be_typed` is what misused arguments are held against.
    pub fn new(display: Display, can_be_typed: Command) -> Console {
        Console {
            display,
            can_be_typed,
            reports: Reports::default(),
            outcome: Outcome::Sound,
            reports_are_the_product: false,
            progress: Progress::new(usize::from(display.width)),
            remarked: BTreeSet::new(),
        }
    }

    /// From here on reports are what the command is for.
    pub fn expect_reports(&mut self) {
        self.reports_are_the_product = true;
    }

    /// How sheets are printed here.
    pub fn text_options(&self) -> TextOptions {
        TextOptions {
            width: usize::from(self.display.width),
        }
    }

    /// Says how far long work has come.
    pub fn progress(&mut self) -> &mut Progress {
        &mut self.progress
    }

    /// Says something, exactly as it stands.
    pub fn say(&mut self, text: &str) {
        self.write(&mut io::stdout().lock(), text);
    }

    /// Says something beside the product, on standard error.
    pub fn remark(&mut self, text: &str) {
        self.write(&mut io::stderr().lock(), text);
    }

    /// Says something beside the product, but not a second time.
    pub fn remark_once(&mut self, text: &'static str) {
        if self.remarked.insert(text) {
            self.remark(text);
        }
    }

    /// Takes the reports of one run; see [`Reports::absorb`].
    pub fn report(
        &mut self,
        sources: &Sources,
        diagnostics: Vec<Diagnostic>,
        shown: impl Fn(&str) -> String,
    ) {
        if diagnostics
            .iter()
            .any(|one| one.severity == Severity::Error)
        {
            self.outcome.worsen(Outcome::Errors);
        }
        self.reports.absorb(sources, diagnostics, shown);
    }

    /// A design is not what this command wants of it.
    pub fn fail(&mut self, diagnostic: impl Into<Diagnostic>) {
        self.worsen(Outcome::Errors);
        self.reports.push(diagnostic.into());
    }

    /// The command cannot be carried out, or not for this file.
    pub fn refuse(&mut self, diagnostic: Diagnostic) {
        self.outcome.worsen(Outcome::NotCarriedOut);
        self.reports.push(diagnostic);
    }

    /// The arguments, each sound by itself, make no sense together.
    pub fn misused(&mut self, explanation: &str) {
        let error = self
            .can_be_typed
            .error(ErrorKind::ArgumentConflict, explanation);
        self.remark(&error.to_string());
        self.outcome.worsen(Outcome::NotCarriedOut);
    }

    /// Lets the command end no better than so.
    pub fn worsen(&mut self, outcome: Outcome) {
        self.outcome.worsen(outcome);
    }

    /// Tells the reports, and how it all went.
    pub fn finish(mut self) -> Outcome {
        if self.reports_are_the_product {
            self.tell(&mut io::stdout().lock(), io::stdout().is_terminal());
        } else {
            self.tell(&mut io::stderr().lock(), io::stderr().is_terminal());
        }
        self.outcome
    }

    fn tell(&mut self, stream: &mut dyn Write, terminal: bool) {
        let quiet = self.reports.diagnostics().is_empty() && !self.reports_are_the_product;
        if !quiet {
            let text = self.told(terminal);
            self.write(stream, &text);
        }
    }

    fn told(&self, terminal: bool) -> String {
        let (diagnostics, sources) = (self.reports.diagnostics(), self.reports.sources());
        let usual = if terminal { Form::Human } else { Form::Plain };
        let parting = if diagnostics.is_empty() { "" } else { "\n" };
        let reports = match self.display.format.unwrap_or(usual) {
            Form::Json => return render::json(diagnostics, sources),
            Form::Plain => render::plain(diagnostics, sources),
            Form::Human => render::human(diagnostics, sources, self.human_options(terminal)),
        };
        format!("{reports}{parting}{}\n", render::summary(diagnostics))
    }

    fn human_options(&self, terminal: bool) -> render::HumanOptions {
        let color = match self.display.color {
            When::Always => true,
            When::Never => false,
            When::Auto => terminal && !is_set("NO_COLOR"),
        };
        render::HumanOptions {
            width: usize::from(self.display.width),
            color,
            unicode: true,
        }
    }

    /// Writes to a stream. A reader who has seen enough and closes the pipe has done nothing wrong.
    fn write(&mut self, stream: &mut dyn Write, text: &str) {
        self.progress.clear();
        match stream
            .write_all(text.as_bytes())
            .and_then(|()| stream.flush())
        {
            Err(error) if error.kind() != io::ErrorKind::BrokenPipe => {
                self.outcome.worsen(Outcome::NotCarriedOut);
            }
            _ => {}
        }
    }
}

#[expect(
    clippy::disallowed_methods,
    reason = "colour is a matter of the terminal, not of the packet"
)]
fn is_set(variable: &str) -> bool {
    std::env::var(variable).is_ok_and(|value| !value.is_empty())
}
