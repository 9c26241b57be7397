#!/usr/bin/env python3
"""Makes sets of sorted public texts for bench_groups: public_texts.py FOLDER

synopses.txt       what Debian's packages say of themselves in one line, by section; from the lists apt
                   has on this machine
sayings.txt        one-line sayings by topic, of Debian's package "fortunes"; fetched and unpacked, not
                   installed
two_languages.txt  labels and keywords of pictures by subgroup, each in English or in Spanish, of
                   emojibase-data 17.0.0 (npm, MIT)

The texts have many authors and stay out of the project. A set that cannot be fetched is left out, and
said so. Each line: the number of the class, a tab, the text.
"""

import json
import pathlib
import random
import re
import subprocess
import sys

LEAST = 60  # texts of a section
MOST = 450
TOPICS = (
    "art computers drugs education food humorists kids law love medicine men-women news pets politics "
    "science sports wisdom work"
).split()


def synopses(folder):
    found = {}
    listed = subprocess.run(["apt-cache", "dumpavail"], capture_output=True, check=True).stdout
    for package in listed.decode(errors="replace").split("\n\n"):
        section = re.search(r"^Section: (.*)$", package, re.M)
        says = re.search(r"^Description(?:-en)?: (.*)$", package, re.M)
        words = re.findall(r"[a-z']+", says.group(1).lower()) if says else []
        if section and 4 <= len(words) <= 14:
            found.setdefault(section.group(1).split("/")[-1], set()).add(" ".join(words))
    order = random.Random(1)
    for texts in (sorted(found[name]) for name in sorted(found) if len(found[name]) >= LEAST):
        order.shuffle(texts)
        yield texts[:MOST]


def sayings(folder):
    subprocess.run(["apt-get", "download", "fortunes"], cwd=folder, capture_output=True, check=True)
    package = next(folder.glob("fortunes_*.deb"))
    subprocess.run(["dpkg-deb", "-x", package, folder / "fortunes"], check=True)
    for topic in TOPICS:
        text = (folder / "fortunes/usr/share/games/fortunes" / topic).read_text(errors="replace")
        said = (re.sub(r"\n\s*--.*", "", one, flags=re.S).strip() for one in text.split("\n%\n"))
        yield [one for one in said if "\n" not in one and 5 <= len(one.split()) <= 18]


def two_languages(folder):
    subprocess.run(["npm", "pack", "emojibase-data@17.0.0"], cwd=folder, capture_output=True, check=True)
    subprocess.run(["tar", "xzf", next(folder.glob("emojibase-data-*.tgz")).name], cwd=folder, check=True)
    spanish = {one["hexcode"]: one for one in json.loads((folder / "package/es/data.json").read_text())}
    chance = random.Random(1)
    found = {}
    for one in json.loads((folder / "package/en/data.json").read_text()):
        if "subgroup" in one:
            shown = spanish.get(one["hexcode"], one) if chance.random() < 0.5 else one
            words = re.findall(r"\w+", " ".join([shown["label"], *shown.get("tags", [])]).lower())
            found.setdefault(one["subgroup"], []).append(" ".join(words))
    yield from found.values()


def main():
    folder = pathlib.Path(sys.argv[1])
    folder.mkdir(parents=True, exist_ok=True)
    for made in (synopses, sayings, two_languages):
        try:
            lines = [f"{at}\t{text}" for at, texts in enumerate(made(folder)) for text in texts]
        except (OSError, StopIteration, subprocess.CalledProcessError) as error:
            print(f"{made.__name__}: left out, {error}")
            continue
        (folder / f"{made.__name__}.txt").write_text("\n".join(lines) + "\n")
        print(f"{made.__name__}.txt: {len(lines)} texts")


main()
