#!/usr/bin/env python3
"""Adds up what the fault tests recorded about themselves; ends with "losses: N".

A part that counted nothing did not run, and then the losses say nothing either.
"""
import collections
import pathlib
import sys
import xml.etree.ElementTree as xml

SAYS = (("kills", "times a program was killed at work"),
        ("failed_writes", "changes of the disk made to fail"),
        ("far_runs", "tasks on a slow disk far away"),
        ("far_breaks", "of them with a disk that broke off"),
        ("full_disks", "tasks on disks that were full"),
        ("damaged_books", "damaged books repaired"),
        ("displays", "displays exported and searched"),
        ("forbidden_searched", "forbidden names, words and pictures looked for in them"),
        ("fuzz_executions", "changed files given to what reads them"))

NEEDED = ("kills", "failed_writes", "damaged_books", "forbidden_searched", "fuzz_executions")


def main():
    counts = collections.Counter()
    failed = 0
    for results in sorted((pathlib.Path(sys.argv[1]) / "results").glob("*.xml")):
        suites = xml.parse(results).getroot()
        failed += int(suites.get("failures", 0)) + int(suites.get("errors", 0))
        for one in suites.iter("property"):
            if one.get("value", "").lstrip("-").isdigit():
                counts[one.get("name")] += int(one.get("value"))
    for name, words in SAYS:
        print(f"{counts[name]:>9}  {words}")
    for name in NEEDED:
        if not counts[name]:
            print(f"not run: {dict(SAYS)[name]}")
    print(f"losses: {max(counts['losses'], failed)}")
    return 1 if counts["losses"] or failed or not all(counts[name] for name in NEEDED) else 0


sys.exit(main())
