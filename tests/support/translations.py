#!/usr/bin/env python3
"""Says which texts of a translation file are missing or do not fit their source. Ends with 1 if any."""
import re
import sys
import xml.etree.ElementTree as tree


def faults(context, message):
    source = message.findtext("source")
    translation = message.find("translation")
    wordings = [form.text for form in translation.findall("numerusform")] or [translation.text]
    where = f"{context}: {source!r}"
    if translation.get("type") == "unfinished" or not all(wordings):
        yield f"{where} has no translation"
        return
    for wording in wordings:
        if sorted(re.findall(r"%\d", source)) != sorted(re.findall(r"%\d", wording)):
            yield f"{where} has other places for its values: {wording!r}"
        if source.count("...") != wording.count("..."):
            yield f"{where} says otherwise whether more is asked: {wording!r}"
        if "!" in wording or "¡" in wording:
            yield f"{where} is called out: {wording!r}"


def main():
    found = []
    count = 0
    for context in tree.parse(sys.argv[1]).getroot().iter("context"):
        for message in context.iter("message"):
            count += 1
            found += faults(context.findtext("name"), message)
    for line in found:
        print(line)
    print(f"{count} texts, {len(found)} faults")
    sys.exit(1 if found or count == 0 else 0)


main()
