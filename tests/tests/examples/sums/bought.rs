//! What is bought and asked for: notions, prices and the quote.

use serde_json::Value;

use super::{Sums, list, mm, number, text};

/// How far an amount of money may lie from what it is worked out to be: it is rounded once, to the
/// hundredth.
const MOST_MONEY: f64 = 0.005_000_1;

/// Adds up what a packet buys.
pub fn check(packet: &Value, sums: &mut Sums) {
    for panel in list(packet, "windows")
        .iter()
        .flat_map(|window| list(window, "panels"))
    {
        let tape: f64 = list(panel, "tape")
            .iter()
            .map(|run| mm(run, "length"))
            .sum();
        let what = format!("tape of {}", text(panel, "name"));
        sums.same(&what, mm(panel, "tape_together"), tape);
    }
    for cloth in list(packet, "cloths") {
        check_cost_of_cloth(packet, cloth, sums);
    }
    for notion in list(packet, "notions") {
        check_notion(packet, notion, sums);
    }
    if packet["quote"].is_object() {
        check_quote(&packet["quote"], sums);
    }
}

/// A length costs what it is times its price.
fn check_cost_of_cloth(packet: &Value, cloth: &Value, sums: &mut Sums) {
    let (name, price) = (text(cloth, "name"), &cloth["price"]);
    if price.is_null() {
        return;
    }
    let lengths = [
        ("bought", "cost"),
        ("exact", "exact_cost"),
        ("rule_of_thumb", "rule_of_thumb_cost"),
        ("at_least", "at_least_cost"),
    ];
    for (length, cost) in lengths {
        let worked_out = mm(cloth, length) / mm(price, "per") * number(&price["amount"], "amount");
        let told = number(&cloth[cost], "amount");
        sums.within(&format!("{cost} of {name}"), told, worked_out, MOST_MONEY);
    }
    let told = line(packet, "cloth", name);
    sums.holds(
        &format!("the quote has {name}"),
        told.is_some_and(|line| line["cost"] == cloth["cost"]),
    );
}

/// The line of a quote about something.
fn line<'t>(packet: &'t Value, kind: &str, name: &str) -> Option<&'t Value> {
    let mut lines = list(&packet["quote"], "lines").iter();
    lines.find(|line| text(line, "kind") == kind && text(line, "name") == name)
}

/// What each kind of panel needs, as many times as it is made, is what is needed; and no less is
/// bought.
fn check_notion(packet: &Value, notion: &Value, sums: &mut Sums) {
    let name = text(notion, "name");
    let mut needed = 0.0;
    for part in list(notion, "parts") {
        let what = format!("{name} of {} {}", text(part, "panel"), text(part, "window"));
        let quantity = number(part, "quantity");
        sums.same(
            &format!("{what}, together"),
            extent(&part["together"]),
            quantity * extent(&part["each"]),
        );
        let of_panel = |(window, panel): &(&Value, &Value)| {
            window["name"] == part["window"] && panel["name"] == part["panel"]
        };
        let windows = list(packet, "windows").iter();
        let mut panels = windows.flat_map(|window| {
            list(window, "panels")
                .iter()
                .map(move |panel| (window, panel))
        });
        let made = panels
            .find(of_panel)
            .map(|(_, panel)| number(panel, "quantity"));
        sums.holds(&format!("{what}, how many"), made == Some(quantity));
        needed += extent(&part["together"]);
    }
    let bought = extent(&notion["bought"]);
    sums.same(
        &format!("exact of {name}"),
        extent(&notion["exact"]),
        needed,
    );
    sums.holds(&format!("enough {name} is bought"), bought >= needed);
    if let Some(rolls) = notion["rolls"].as_f64() {
        sums.same(
            &format!("rolls of {name}"),
            bought,
            rolls * mm(notion, "roll"),
        );
    }
    if let Some(packs) = notion["packs"].as_f64() {
        sums.same(
            &format!("packs of {name}"),
            bought,
            packs * number(notion, "pack"),
        );
    }
}

/// A length in millimetres, or a number of things.
fn extent(extent: &Value) -> f64 {
    extent["count"]
        .as_f64()
        .unwrap_or_else(|| mm(extent, "length"))
}

/// Every line is its quantity times its price, and the total is all lines and the markup.
fn check_quote(quote: &Value, sums: &mut Sums) {
    let mut cost = 0.0;
    for line in list(quote, "lines") {
        let reckoned = &line["reckoned"];
        let worked_out = number(reckoned, "quantity") * number(reckoned, "price");
        let told = number(&line["cost"], "amount");
        sums.within(
            &format!("quote for {}", text(line, "name")),
            told,
            worked_out,
            MOST_MONEY,
        );
        cost += told;
    }
    sums.same("cost of the quote", number(&quote["cost"], "amount"), cost);
    let markup = &quote["markup"];
    let added = markup
        .as_object()
        .map_or(0.0, |_| number(&markup["amount"], "amount"));
    if markup.is_object() {
        sums.within("markup", added, cost * number(markup, "part"), MOST_MONEY);
    }
    sums.same(
        "total of the quote",
        number(&quote["total"], "amount"),
        cost + added,
    );
}
