//! What each command does. They read, ask the domain, and put the result into words or JSON.

use guide_data::Program;
use locales::{Lang, Messages};

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
