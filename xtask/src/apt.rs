//! Debian's packages: which are missing, and installing them as root without a question.

use std::process::Command;

use crate::problem::{Outcome, Problem};
use crate::process;
use crate::say;

/// The command that installs these packages, for messages.
pub(crate) fn command_line(packages: &[&str]) -> String {
    format!("apt-get update && apt-get install -y --no-install-recommends {}", packages.join(" "))
}

/// Whether packages can be installed here without asking anyone: Debian's tool, and root.
pub(crate) fn can_install() -> bool {
    let root = process::output(Command::new("id").arg("-u")).is_ok_and(|id| id.trim() == "0");
    root && process::on_path("apt-get")
}

/// Installs what is missing of these packages, or says which command does.
pub(crate) fn ensure(packages: &[&str], why: &str) -> Outcome<()> {
    let missing: Vec<&str> = packages.iter().copied().filter(|package| !installed(package)).collect();
    if missing.is_empty() {
        return Ok(());
    }
    if !can_install() {
        return Err(Problem::new(format!("missing: {} ({why})", missing.join(", ")))
            .next(format!("as root, run `{}`", command_line(&missing))));
    }
    say::step(&format!("installing {} ({why})", missing.join(", ")));
    let update = process::output(Command::new("apt-get").args(["update", "-qq"]));
    let mut install = Command::new("apt-get");
    install
        .args(["install", "-y", "-qq", "--no-install-recommends"])
        .args(&missing)
        .env("DEBIAN_FRONTEND", "noninteractive");
    let installed = process::output(&mut install).map(drop);
    // A list that could not be refreshed matters only where the packages are not found either.
    match (update, installed) {
        (_, Ok(())) => Ok(()),
        (Err(update), Err(install)) => Err(Problem::new(format!("{update}\n{install}"))),
        (Ok(_), Err(install)) => Err(install),
    }
}

fn installed(package: &str) -> bool {
    let mut query = Command::new("dpkg-query");
    query.args(["-W", "-f", "${db:Status-Status}", package]);
    process::output(&mut query).is_ok_and(|status| status.trim() == "installed")
}
