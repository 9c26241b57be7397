"""Makes emoji_subgroups.txt from emojibase-data 17.0.0 (npm, MIT licence, (c) Miles Johnson).

Run by hand: npm pack emojibase-data@17.0.0 && tar xzf emojibase-data-17.0.0.tgz
python3 tests/data/voice/make_emoji_subgroups.py package > tests/data/voice/emoji_subgroups.txt
One line for each picture that belongs to a subgroup: the subgroup's number, a tab, its label and keywords.
"""

import json
import pathlib
import re
import sys


def main() -> None:
    folder = pathlib.Path(sys.argv[1])
    print("# From emojibase-data 17.0.0, MIT licence, Copyright (c) 2017-2019, Miles Johnson.")
    for one in json.loads((folder / "en/data.json").read_text()):
        words = re.sub(r"[^a-z ]", " ", " ".join([one["label"], *one.get("tags", [])]).lower())
        if "subgroup" in one:
            print(one["subgroup"], " ".join(words.split()), sep="\t")


main()
