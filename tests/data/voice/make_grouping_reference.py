"""Makes grouping_reference.txt with scikit-learn, scipy and jellyfish (Debian: python3-sklearn,
python3-scipy, python3-jellyfish).

Run by hand: python3 tests/data/voice/make_grouping_reference.py > tests/data/voice/grouping_reference.txt
The answers are invented. The tests read the text file and need no Python package.
"""

import pathlib
import re

import jellyfish
from scipy.cluster.hierarchy import linkage
from scipy.spatial.distance import squareform
from sklearn.feature_extraction.text import TfidfVectorizer

ANSWERS = """the sun drinks the puddle with a straw
the puddle went up to the sun
the sun drank all of it up
the sun made it hot and it went away
it went down in the ground to the worms
the ground was thirsty so it drank the puddle
the worms drank it under the ground
a worm can drink a hole puddle
the wind blowed it away over the fence
the wind took the puddle for a walk
the wind dryed it like my hair
somebody stepped in it and it stuck on the boots
my boots took the water home
boots make the puddle go smaller every time
it is a cloud now and it will rain again
the cloud has the puddle inside and it rains
rain makes a new puddle tomorrow
my sister says a dog licked it
i dont know i was at the dentist
why is there a ring of mud where it was
élan über straße
o""".splitlines()
EVERYDAY = set(
    (pathlib.Path(__file__).parents[3] / "core/voice/words/everyday_en.txt").read_text().split()
)


def sounds(answer: str) -> list[str]:
    words = re.findall(r"[^\W\d_]+", answer.lower())
    return [key for key in (jellyfish.metaphone(w) for w in words if w not in EVERYDAY) if key]




def main() -> None:
    rows = TfidfVectorizer(analyzer="char_wb", ngram_range=(3, 5), sublinear_tf=True).fit_transform(ANSWERS)
    cosine = (rows @ rows.T).toarray()
    distance = 1 - cosine
    for at in range(len(ANSWERS)):
        distance[at, at] = 0
    heights = linkage(squareform(distance, checks=False), "average")[:, 2]
    for answer in ANSWERS:
        print("answer", answer)
    for row in cosine:
        print("likeness", *(f"{value:.15g}" for value in row))
    for height in heights:
        print("height", f"{height:.15g}")
    keys = TfidfVectorizer(analyzer=sounds, sublinear_tf=True).fit_transform(ANSWERS)
    for row in (keys @ keys.T).toarray():
        print("sound", *(f"{value:.15g}" for value in row))


main()
