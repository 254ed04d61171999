//! The resident's page.

fn main() {
    app::resident();
}
