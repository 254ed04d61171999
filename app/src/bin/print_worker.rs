//! The worker that makes sheets.

fn main() {
    app::print_worker();
}
