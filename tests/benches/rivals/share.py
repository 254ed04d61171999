"""What both measure alike: which labels, in how many processes, and the time."""

import json
import multiprocessing
import sys
import time
from pathlib import Path


def run(start, label):
    """`start(work, fonts)` readies a process and returns what `label(ready, number, job, out)` needs."""
    work, fonts, count, hands = Path(sys.argv[1]), sys.argv[2], int(sys.argv[3]), int(sys.argv[4])
    numbers = sorted(int(path.stem) for path in (work / "jobs").glob("*.json"))
    numbers = numbers[:: len(numbers) // count][:count]
    context = multiprocessing.get_context("fork")
    ready, go = context.Barrier(hands + 1), context.Barrier(hands + 1)
    shares = [numbers[hand::hands] for hand in range(hands)]
    workers = [
        context.Process(target=work_through, args=(start, label, work, fonts, share, ready, go)) for share in shares
    ]
    for worker in workers:
        worker.start()
    ready.wait()
    begun = time.monotonic()
    go.wait()
    for worker in workers:
        worker.join()
    taken = time.monotonic() - begun
    if any(worker.exitcode for worker in workers):
        sys.exit("a label failed")
    print(taken)


def work_through(start, label, work, fonts, numbers, ready, go):
    tools = start(work, fonts)
    ready.wait()
    go.wait()
    for number in numbers:
        job = json.loads((work / "jobs" / f"{number}.json").read_text(encoding="utf-8"))
        label(tools, number, job)
