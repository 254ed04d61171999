//! Runs other programs, with a time limit where one could hang.

use std::io::Read;
use std::process::{Command, Stdio};
use std::thread;
use std::time::{Duration, Instant};

use crate::problem::{Outcome, Problem};

/// The command as a person would type it, for messages.
pub(crate) fn shown(command: &Command) -> String {
    let mut out = command.get_program().to_string_lossy().into_owned();
    for arg in command.get_args() {
        let arg = arg.to_string_lossy();
        out.push(' ');
        if arg.is_empty() || arg.contains([' ', '*', '\'', '"']) {
            out.push_str(&format!("'{arg}'"));
        } else {
            out.push_str(&arg);
        }
    }
    out
}

/// Runs a command that prints for itself; an exit code other than 0 is a problem.
pub(crate) fn run(command: &mut Command) -> Outcome<()> {
    let status = command.stdin(Stdio::null()).status().map_err(|error| not_started(command, &error))?;
    if status.success() {
        Ok(())
    } else {
        Err(Problem::new(format!("`{}` failed ({status})", shown(command))))
    }
}

/// Runs a command and returns what it prints on standard output.
pub(crate) fn output(command: &mut Command) -> Outcome<String> {
    let output = command.stdin(Stdio::null()).output().map_err(|error| not_started(command, &error))?;
    if output.status.success() {
        Ok(String::from_utf8_lossy(&output.stdout).into_owned())
    } else {
        let said = String::from_utf8_lossy(&output.stderr);
        Err(Problem::new(format!("`{}` failed ({}): {}", shown(command), output.status, tail(&said))))
    }
}

/// Runs a command quietly and ends it when the limit has passed.
pub(crate) fn run_within(command: &mut Command, limit: Duration) -> Outcome<()> {
    let mut child = command
        .stdin(Stdio::null())
        .stdout(Stdio::null())
        .stderr(Stdio::piped())
        .spawn()
        .map_err(|error| not_started(command, &error))?;
    // The pipe is read on the side so that a talkative child never blocks on a full one.
    let reader = child.stderr.take().map(|mut pipe| {
        thread::spawn(move || {
            let mut said = Vec::new();
            // What was read before a failure still serves the message.
            let _ = pipe.read_to_end(&mut said);
            String::from_utf8_lossy(&said).into_owned()
        })
    });
    let started = Instant::now();
    let status = loop {
        match child.try_wait() {
            Ok(Some(status)) => break status,
            Ok(None) if started.elapsed() >= limit => {
                // It may have ended by itself in between; both ways it is gone after `wait`.
                let _ = child.kill();
                let _ = child.wait();
                return Err(Problem::new(format!(
                    "`{}` was ended after {} s without finishing",
                    shown(command),
                    limit.as_secs()
                )));
            }
            Ok(None) => thread::sleep(Duration::from_millis(50)),
            Err(error) => return Err(not_started(command, &error)),
        }
    };
    if status.success() {
        return Ok(());
    }
    let said = reader.and_then(|reader| reader.join().ok()).unwrap_or_default();
    Err(Problem::new(format!("`{}` failed ({status}): {}", shown(command), tail(&said))))
}

/// Whether a program of this name can be started.
pub(crate) fn on_path(program: &str) -> bool {
    let Some(path) = std::env::var_os("PATH") else {
        return false;
    };
    std::env::split_paths(&path).any(|folder| folder.join(program).is_file())
}

fn not_started(command: &Command, error: &std::io::Error) -> Problem {
    Problem::new(format!("`{}` could not be run: {error}", shown(command)))
}

/// The last lines of what a program said: where it tells why it stopped.
fn tail(said: &str) -> String {
    let lines: Vec<&str> = said.lines().filter(|line| !line.trim().is_empty()).collect();
    let from = lines.len().saturating_sub(5);
    lines.get(from..).unwrap_or_default().join("\n    ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_hanging_program_is_ended() {
        let started = Instant::now();
        let problem = run_within(Command::new("sleep").arg("60"), Duration::from_millis(200));
        assert!(started.elapsed() < Duration::from_secs(10));
        assert!(problem.unwrap_err().to_string().contains("`sleep 60` was ended"));
    }

    #[test]
    fn a_failure_repeats_what_the_program_said() {
        let mut command = Command::new("sh");
        command.args(["-c", "echo no such shelf >&2; exit 3"]);
        let problem = run_within(&mut command, Duration::from_secs(10)).unwrap_err();
        assert!(problem.to_string().contains("no such shelf"), "{problem}");
    }

    #[test]
    fn a_command_is_shown_as_it_is_typed() {
        let mut command = Command::new("cargo");
        command.args(["test", "--test", "*"]);
        assert_eq!(shown(&command), "cargo test --test '*'");
    }
}
