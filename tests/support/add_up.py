#!/usr/bin/env python3
"""Adds up the results of all test programs that ctest was to run; ends with "N passed, M failed".

A program that died before it wrote its results counts as one failure, so it cannot be missed.
"""
import pathlib
import sys
import xml.etree.ElementTree as xml


def main():
    build = pathlib.Path(sys.argv[1])
    passed = failed = 0
    log = build / "Testing" / "Temporary" / "LastTestsFailed.log"
    broken = set()
    if log.exists():
        broken = {line.split(":", 1)[1].strip() for line in log.read_text().splitlines() if ":" in line}
    for results in sorted((build / "results").glob("*.xml")):
        suites = xml.parse(results).getroot()
        bad = int(suites.get("failures", 0)) + int(suites.get("errors", 0))
        skipped = sum(1 for case in suites.iter("testcase") if case.get("result") == "skipped")
        total = int(suites.get("tests", 0)) - int(suites.get("disabled", 0)) - skipped
        passed += total - bad
        failed += bad
        if bad:
            broken.discard(results.stem)
    for name in sorted(broken):
        print(f"{name}: ended without a result of its own")
    failed += len(broken)
    print(f"{passed} passed, {failed} failed")
    return 1 if failed or not passed else 0


sys.exit(main())
