//! What the tasks tell while they work. Progress goes to standard error, results to standard output.

/// Says what is done now and why.
pub(crate) fn step(text: &str) {
    eprintln!("==> {text}");
}

/// Adds a detail to the step before.
pub(crate) fn note(text: &str) {
    eprintln!("    {text}");
}

/// A table with its columns aligned: the first to the left, the others to the right.
pub(crate) fn table(head: &[&str], rows: &[Vec<String>]) -> String {
    let mut widths: Vec<usize> = head.iter().map(|cell| cell.chars().count()).collect();
    for row in rows {
        for (width, cell) in widths.iter_mut().zip(row) {
            *width = (*width).max(cell.chars().count());
        }
    }
    let line = |cells: &mut dyn Iterator<Item = &str>| {
        let mut out = String::new();
        for (column, (cell, width)) in cells.zip(&widths).enumerate() {
            if column == 0 {
                out.push_str(&format!("{cell:<width$}"));
            } else {
                out.push_str(&format!("  {cell:>width$}"));
            }
        }
        out.truncate(out.trim_end().len());
        out.push('\n');
        out
    };
    let mut out = line(&mut head.iter().copied());
    for row in rows {
        out.push_str(&line(&mut row.iter().map(String::as_str)));
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_line_up() {
        let rows =
            vec![vec!["fmt".to_owned(), "1.5 s".to_owned()], vec!["clippy".to_owned(), "120.0 s".to_owned()]];
        assert_eq!(table(&["stage", "time"], &rows), "stage      time\nfmt       1.5 s\nclippy  120.0 s\n");
    }
}
