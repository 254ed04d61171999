//! Several hands on one pile of work.

use std::num::NonZeroUsize;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::sync::mpsc;

/// Does `work` for every task, several at once, and hands each result to `done` in the order in which they are
/// finished, on the caller's thread. No task is begun once `stop` is set; those begun are finished. A task that
/// panics comes back as nothing, and the others go on.
pub(crate) fn at_once<T: Sync, R: Send>(
    tasks: &[T],
    hands: NonZeroUsize,
    stop: &AtomicBool,
    work: impl Fn(&T) -> R + Sync,
    mut done: impl FnMut(usize, Option<R>),
) {
    let next = AtomicUsize::new(0);
    let (sender, receiver) = mpsc::channel();
    std::thread::scope(|scope| {
        for _ in 0..hands.get().min(tasks.len()) {
            let (sender, next, work) = (sender.clone(), &next, &work);
            scope.spawn(move || {
                while !stop.load(Ordering::Relaxed) {
                    let at = next.fetch_add(1, Ordering::Relaxed);
                    let Some(task) = tasks.get(at) else { return };
                    // Nothing that a task shares is changed by it, so nothing can be left half changed.
                    let result = catch_unwind(AssertUnwindSafe(|| work(task))).ok();
                    if sender.send((at, result)).is_err() {
                        return;
                    }
                }
            });
        }
        drop(sender);
        for (at, result) in receiver {
            done(at, result);
        }
    });
}

#[cfg(test)]
mod tests {
    use super::*;

    fn hands(n: usize) -> NonZeroUsize {
        NonZeroUsize::new(n).unwrap()
    }

    #[test]
    fn everything_is_done_once_whatever_the_number_of_hands() {
        let tasks: Vec<usize> = (0..200).collect();
        for n in [1, 2, 3, 64, 500] {
            let mut results = vec![0; tasks.len()];
            at_once(
                &tasks,
                hands(n),
                &AtomicBool::new(false),
                |task| task * 3,
                |at, result| {
                    assert_eq!(result, Some(at * 3));
                    results[at] += 1;
                },
            );
            assert!(results.iter().all(|times| *times == 1), "{n} hands");
        }
        at_once(&[] as &[u8], hands(4), &AtomicBool::new(false), |_| (), |_, _| panic!("there was nothing"));
    }

    #[test]
    fn what_panics_is_told_and_the_rest_is_done() {
        let mut results = Vec::new();
        let tasks = [1, 2, 0, 4];
        at_once(
            &tasks,
            hands(2),
            &AtomicBool::new(false),
            |task| {
                assert_ne!(*task, 0, "a task that goes wrong, as this test wants");
                *task
            },
            |at, result| results.push((at, result)),
        );
        results.sort_unstable();
        assert_eq!(results, [(0, Some(1)), (1, Some(2)), (2, None), (3, Some(4))]);
    }

    #[test]
    fn a_stop_finishes_what_is_begun_and_begins_nothing() {
        let stop = AtomicBool::new(false);
        let tasks: Vec<usize> = (0..100).collect();
        let (begun, mut told) = (AtomicUsize::new(0), 0);
        at_once(
            &tasks,
            hands(2),
            &stop,
            |task| {
                begun.fetch_add(1, Ordering::Relaxed);
                if *task == 5 {
                    stop.store(true, Ordering::Relaxed);
                }
            },
            |_, result| {
                assert!(result.is_some());
                told += 1;
            },
        );
        let begun = begun.into_inner();
        assert_eq!(told, begun);
        // The one that stopped it, those before it, and what the other hand had taken up by then.
        assert!((6..100).contains(&begun), "{begun}");
    }
}
