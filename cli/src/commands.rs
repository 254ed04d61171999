//! What each command does. They read, ask the domain, and put the result into words or JSON.

use std::collections::BTreeMap;

use guide_data::Program;
use locales::{Args, Lang, Messages, Value};

use crate::run::Voice;
use crate::sheets;

mod answer;
mod batch;
mod check;
mod compare;
mod print;
mod publish;
mod serve;
mod small;

pub(crate) use answer::{AnswerAsked, answer};
pub(crate) use batch::batch;
pub(crate) use check::check;
pub(crate) use compare::compare;
pub(crate) use print::{
    Shop, file_name, job_ticket, output, print, refused, safe, sheet_kind, shop_profile, unspoken,
};
pub(crate) use publish::publish;
pub(crate) use serve::serve;
pub(crate) use small::{demo, schema};

/// The messages of the language asked for, with the units and number symbols of the program's place.
pub(crate) fn messages_for(program: &Program, voice: &Voice) -> Messages {
    let lang: &Lang = voice.messages.lang();
    locales::bundled(&lang.with_region(&sheets::region(program, lang))).isolating(false)
}

/// A message with values that are known only as a map.
fn fill(messages: &Messages, key: &str, args: &BTreeMap<String, String>) -> Option<String> {
    let mut values = Args::new();
    for (name, value) in args {
        // Languages are called what their speakers call them.
        let value = if name == "language" { locales::endonym(value) } else { value.clone() };
        values.set(name.as_str(), Value::from(value));
    }
    messages.find(key, &values).map(|found| found.text)
}
