//! The coordinator's page.

fn main() {
    app::coordinator();
}
