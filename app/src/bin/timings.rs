//! Timings in a browser; not shipped.

fn main() {
    app::timings();
}
