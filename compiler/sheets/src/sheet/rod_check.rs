//! Rod check: what hangs on each rod or board, and how far a rod sags under it.

use pelmet_packet::{Packet, RodCheck, Window};

use crate::content::{SheetBlocks, TextColumn, TextTable};
use crate::sheet::by_window::each_window;

pub(crate) fn print(packet: &Packet, sheet: &mut SheetBlocks) {
    sheet.paragraph(
        "Every number here is an estimate: weights from the areas of the cut pieces and what their \
        cloths are stated to weigh; load and sag as if the weight were spread evenly over the rod, \
        a bracket stood at each end and the others at equal distances, and each span ended at its \
        brackets.",
    );
    each_window(packet, sheet, print_window);
    if let Some(weight) = &packet.weight
        && packet.windows.len() > 1
    {
        sheet.heading("The whole job");
        sheet.paragraph(&format!("Everything weighs about {}.", weight.text));
    }
}

fn print_window(window: &Window, sheet: &mut SheetBlocks) {
    print_weight(window, sheet);
    if let Some(check) = &window.rod_check {
        print_check(check, sheet);
    }
    if let Some(why) = &window.rod_not_checked {
        sheet.paragraph(&format!("Its rod is not checked: {why}."));
    }
}

fn print_weight(window: &Window, sheet: &mut SheetBlocks) {
    sheet.table(&weights(window));
    match &window.weight {
        Some(weight) => sheet.paragraph(&format!("Together about {}.", weight.text)),
        None => sheet.paragraph(&format!(
            "What hangs here is not known: no weight is stated for {}.",
            window.cloths_without_weight.join(", ")
        )),
    }
}

fn weights(window: &Window) -> TextTable {
    let mut table = TextTable::new([
        TextColumn::text("Panel"),
        TextColumn::count("Panels"),
        TextColumn::text("Each weighs"),
    ]);
    for panel in &window.panels {
        table.row([
            panel.name.clone(),
            panel.quantity.to_string(),
            panel
                .weight
                .as_ref()
                .map(|weight| weight.text.clone())
                .unwrap_or_default(),
        ]);
    }
    table
}

fn print_check(check: &RodCheck, sheet: &mut SheetBlocks) {
    sheet.blank();
    sheet.item(&format!(
        "Row and rod carry: about {} with the rod's own {}.",
        check.load.text, check.rod_weight.text
    ));
    sheet.item(&format!(
        "Between brackets: {}, {} apart; bending about {}.",
        brackets(check),
        check.span.text,
        check.bending.text
    ));
    sheet.item(&format!("Sag: {}, {}.", check.sag.text, limit(check)));
    sheet.item(&spacing(check));
    sheet.item(&stiffness(check));
}

fn brackets(check: &RodCheck) -> String {
    let assumed = if check.brackets_stated {
        ""
    } else {
        " (assumed)"
    };
    format!("{} brackets{assumed}", check.brackets)
}

fn limit(check: &RodCheck) -> String {
    let whose = if check.sag_limit_stated {
        "stated"
    } else {
        "usual"
    };
    format!("{} allowed ({whose})", check.sag_limit.text)
}

fn spacing(check: &RodCheck) -> String {
    let enough = check
        .brackets_enough
        .map(|brackets| format!(": {brackets} brackets"));
    format!(
        "Within that limit: brackets up to about {} apart{}.",
        check.widest_spacing.text,
        enough.unwrap_or_default()
    )
}

/// What the sag was reckoned with.
fn stiffness(check: &RodCheck) -> String {
    let material = &check.material;
    let (least, most) = (material.least_million_psi, material.most_million_psi);
    let range = if least < most {
        format!("{least} to {most} million psi, the least taken")
    } else {
        format!("{least} million psi")
    };
    format!(
        "Modulus of elasticity of {}: {range} ({}).",
        material.name, material.source
    )
}
