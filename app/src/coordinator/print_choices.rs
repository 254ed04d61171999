//! What a print shop is told and the guide does not say: sizes, folds, stock, several on a press sheet.

use leptos::prelude::*;
use lidleaf::sheets::SheetChoices;
use print::{Fold, Mm, PRESS_SHEETS, PressSheet, QrLevel, SheetKind, SheetSize, Stock, Turning};

use super::desk::Desk;
use super::fields::Choice;

/// The fields as they are filled in.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub(crate) struct Fields {
    /// A named size, empty for the usual one, [`TYPED`] for the typed one.
    size: String,
    typed: String,
    corner: String,
    thirds: bool,
    die_line: bool,
    printers_mark: bool,
    qr_level: String,
    stock: String,
    thickness: String,
    distance: String,
    item: String,
    /// The most words of a line, empty for as many as it takes.
    words: String,
    press: String,
    work_and_turn: bool,
}

/// The choice that the size is typed.
const TYPED: &str = "typed";

/// A field that cannot be read, with what was typed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Unread {
    /// No size.
    Size(String),
    /// No number of millimetres.
    Number(String),
}

impl Fields {
    /// The item's id, empty for none.
    pub(crate) fn item(&self) -> &str {
        &self.item
    }

    /// What they say, for a kind of sheet: a choice that it does not offer is left aside.
    pub(crate) fn read(&self, kind: SheetKind) -> Result<SheetChoices, Unread> {
        let limits = kind.sizes();
        let mut size = if self.size == TYPED && limits.typed.is_some() {
            Some(SheetSize::parse(&self.typed).ok_or_else(|| Unread::Size(self.typed.clone()))?)
        } else {
            SheetSize::named(&self.size).filter(|_| limits.named.contains(&self.size.as_str()))
        };
        if let Some(radius) = number(&self.corner)? {
            let base = size.unwrap_or_else(|| kind.usual_size());
            size = Some(SheetSize { corner: Some(radius), ..base });
        }
        let press = PRESS_SHEETS.iter().find(|(name, _)| *name == self.press).map(|(_, size)| PressSheet {
            turning: if self.work_and_turn { Turning::WorkAndTurn } else { Turning::Sheetwise },
            ..PressSheet::new(*size)
        });
        Ok(SheetChoices {
            size,
            fold: if self.thirds { Fold::Thirds } else { Fold::Half },
            die_line: self.die_line,
            printers_mark: self.printers_mark,
            qr_level: match self.qr_level.as_str() {
                "medium" => Some(QrLevel::Medium),
                "quartile" => Some(QrLevel::Quartile),
                "high" => Some(QrLevel::High),
                _ => None,
            },
            stock: Stock { name: self.stock.trim().to_owned(), thickness: number(&self.thickness)? },
            press,
            distance: number(&self.distance)?,
            item: (!self.item.is_empty()).then(|| self.item.clone()),
            without_places: false,
            words: self.words.parse().ok(),
        })
    }
}

/// A length in millimetres; nothing where nothing is typed.
fn number(text: &str) -> Result<Option<Mm>, Unread> {
    let text = text.trim();
    if text.is_empty() {
        return Ok(None);
    }
    let plain = text.trim_end_matches("mm").trim().replace(',', ".");
    let unread = || Unread::Number(text.to_owned());
    plain
        .parse::<f64>()
        .ok()
        .filter(|value| value.is_finite())
        .map(|value| Some(Mm(value)))
        .ok_or_else(unread)
}

/// How many words a line may be limited to. Ours: fewer say only what a thing is called, and few lines have more.
const WORDS: [&str; 6] = ["3", "4", "5", "6", "8", "10"];

type Shown<T> = fn(&T) -> String;
type Taken<T> = fn(&mut T, String);

/// One choice of several, kept in a part of what the screen is filled in with.
pub(crate) fn pick<T: Send + Sync + 'static>(
    kept: RwSignal<T>,
    id: &'static str,
    label: String,
    choices: Vec<Choice>,
    get: Shown<T>,
    set: Taken<T>,
) -> AnyView {
    let now = kept.with_untracked(get);
    view! {
        <label class="field">
            <span>{label}</span>
            <select id=id on:change:target=move |ev| kept.update(|all| set(all, ev.target().value()))>
                {choices.into_iter().map(|(v, name)| {
                    let chosen = v == now;
                    view! { <option value=v selected=chosen>{name}</option> }
                }).collect_view()}
            </select>
        </label>
    }
    .into_any()
}

/// The fields' part of the form.
#[component]
pub(crate) fn ChoiceFields(desk: Desk, fields: RwSignal<Fields>, kind: Signal<SheetKind>) -> impl IntoView {
    let say = move |key: &'static str| desk.words.with(|w| w.say(key));
    let line = move |id: &'static str, label: &'static str, get: Shown<Fields>, set: Taken<Fields>| {
        view! {
            <label class="field">
                <span>{say(label)}</span>
                <input id=id type="text" dir="ltr" prop:value=move || fields.with(get)
                    on:input:target=move |ev| fields.update(|all| set(all, ev.target().value()))/>
            </label>
        }
        .into_any()
    };
    let tick =
        move |id: &'static str, label: &'static str, get: fn(&Fields) -> bool, set: fn(&mut Fields, bool)| {
            view! {
                <label class="tick">
                    <input id=id type="checkbox" prop:checked=move || fields.with(get)
                        on:change:target=move |ev| fields.update(|all| set(all, ev.target().checked()))/>
                    <span>{say(label)}</span>
                </label>
            }
            .into_any()
        };
    let sizes = move || {
        let limits = kind.get().sizes();
        let mut all = vec![(String::new(), say("print-size-usual"))];
        all.extend(limits.named.iter().map(|name| ((*name).to_owned(), (*name).to_owned())));
        if limits.typed.is_some() {
            all.push((TYPED.to_owned(), say("print-size-typed")));
        }
        pick(fields, "print-size", say("print-size"), all, |f| f.size.clone(), |f, v| f.size = v)
    };
    let typed = move || {
        let shown = fields.with(|f| f.size == TYPED) && kind.get().sizes().typed.is_some();
        shown.then(|| line("print-typed-size", "print-typed-size", |f| f.typed.clone(), |f, v| f.typed = v))
    };
    let cut = move || {
        let label =
            matches!(kind.get(), SheetKind::CartLid | SheetKind::RoundSticker | SheetKind::EnclosureSign);
        let round = kind.get() == SheetKind::RoundSticker;
        label.then(|| {
            view! {
                {(!round).then(|| line("print-corner", "print-corner", |f| f.corner.clone(), |f, v| f.corner = v))}
                {tick("print-die-line", "print-die-line", |f| f.die_line, |f, v| f.die_line = v)}
            }
        })
    };
    let fold = move || {
        (kind.get() == SheetKind::SelfMailer).then(|| {
            let choices = vec![
                (String::new(), say("print-fold-half")),
                ("thirds".to_owned(), say("print-fold-thirds")),
            ];
            let now: Shown<Fields> = |f| if f.thirds { "thirds".to_owned() } else { String::new() };
            pick(fields, "print-fold", say("print-fold"), choices, now, |f, v| f.thirds = v == "thirds")
        })
    };
    let items = move || {
        let mut ids: Vec<(String, String)> = desk.catalog.with_value(|catalog| {
            let own = desk.program.with_untracked(|p| catalog.with(&p.items));
            own.items.iter().map(|item| (item.id.clone(), desk.words.with(|w| w.item(&item.id)))).collect()
        });
        ids.sort_by(|a, b| a.1.cmp(&b.1));
        ids.insert(0, (String::new(), say("choice-none")));
        pick(fields, "print-item", say("print-item"), ids, |f| f.item.clone(), |f, v| f.item = v)
    };
    let levels = vec![
        (String::new(), say("print-qr-most")),
        ("medium".to_owned(), say("print-qr-medium")),
        ("quartile".to_owned(), say("print-qr-quartile")),
        ("high".to_owned(), say("print-qr-high")),
    ];
    let mut words = vec![(String::new(), say("print-words-any"))];
    words.extend(WORDS.iter().map(|most| ((*most).to_owned(), (*most).to_owned())));
    let mut presses = vec![(String::new(), say("print-press-none"))];
    presses.extend(PRESS_SHEETS.iter().map(|(name, _)| ((*name).to_owned(), (*name).to_owned())));
    view! {
        {sizes}
        {typed}
        {cut}
        {fold}
        <details class="wide">
            <summary>{say("print-more")}</summary>
            <div class="fields">
                {items()}
                {pick(fields, "print-words", say("print-words"), words, |f| f.words.clone(), |f, v| f.words = v)}
                {line("print-distance", "print-distance", |f| f.distance.clone(), |f, v| f.distance = v)}
                {pick(fields, "print-qr-level", say("print-qr-level"), levels, |f| f.qr_level.clone(), |f, v| f.qr_level = v)}
                {line("print-stock", "print-stock", |f| f.stock.clone(), |f, v| f.stock = v)}
                {line("print-thickness", "print-thickness", |f| f.thickness.clone(), |f, v| f.thickness = v)}
                {tick("print-printers-mark", "print-printers-mark", |f| f.printers_mark, |f, v| f.printers_mark = v)}
                {pick(fields, "print-press", say("print-press"), presses, |f| f.press.clone(), |f, v| f.press = v)}
                {tick("print-work-and-turn", "print-work-and-turn", |f| f.work_and_turn, |f, v| f.work_and_turn = v)}
            </div>
        </details>
    }
}
