#!/usr/bin/env python3
"""Makes word_vectors.bin from WordNet 3.0 (Debian: wordnet-base, python3-scipy, python3-stemmer).

Run by hand in this folder: python3 make_word_vectors.py /usr/share/wordnet word_vectors.bin

One document for each synset: its lemmas twice, its gloss and examples, two lemmas of each neighbour.
Everyday words out, English Snowball stems; which stems occur together, as positive pointwise mutual
information with context distribution smoothing of 0.75 (Levy, Goldberg and Dagan 2015); truncated
singular value decomposition, U sqrt(s), rows of length 1. Then the direction that nearly all glosses
share is taken out, so that two sentences are not alike merely for being sentences (Arora, Liang and
Ma 2017; here frozen, so that one more sentence changes nothing).

The file: "WVT1", number of words and of dimensions (u32, little-endian); the stems in byte order,
each ended by a line feed; for each stem one byte, the largest component in 1/255, and the components
in 4 bits each from -7 to 7, the first in the low half of its byte.
"""

import collections
import pathlib
import re
import struct
import sys

import numpy as np
import scipy.sparse as sp
import Stemmer
from scipy.sparse.linalg import svds

WORDS = 12_000
DIMENSIONS = 100
SMOOTHING = 0.75
NEIGHBOURS = ("@", "@i", "#p", "%p", "&", "~")
EVERYDAY = set((pathlib.Path(__file__).parent / "everyday_en.txt").read_text().split())
STEMMER = Stemmer.Stemmer("english")


def words(text):
    return [w for w in re.findall(r"[a-z]+(?:'[a-z]+)*", text.lower()) if len(w) > 1 and w not in EVERYDAY]


def irregular(folder):
    """Forms such as "drank" and "mice" with the word they are a form of."""
    forms = {}
    for name in ("verb.exc", "noun.exc"):
        for line in (folder / name).read_text().splitlines():
            form, base = line.split()[:2]
            if "_" not in form and form not in EVERYDAY:
                forms.setdefault(form, base)
    return forms


def synsets(folder, part):
    found = {}
    for line in (folder / f"data.{part}").read_text(encoding="latin-1").splitlines():
        if line.startswith(" "):
            continue
        fields, gloss = line.split("|", 1)
        fields = fields.split()
        count = int(fields[3], 16)
        lemmas = [fields[4 + 2 * at].replace("_", " ") for at in range(count)]
        at = 4 + 2 * count
        pointers = [(fields[at + 1 + 4 * p], fields[at + 2 + 4 * p]) for p in range(int(fields[at]))]
        found[fields[0]] = (lemmas, gloss, pointers)
    return found


def documents(folder, forms):
    made = []
    for part in ("noun", "verb", "adj", "adv"):
        all_of = synsets(folder, part)
        for lemmas, gloss, pointers in all_of.values():
            text = [w for lemma in lemmas for w in words(lemma)] * 2 + words(gloss)
            for kind, target in pointers:
                if kind in NEIGHBOURS and target in all_of:
                    text += [w for lemma in all_of[target][0][:2] for w in words(lemma)]
            made.append(STEMMER.stemWords([forms.get(w, w) for w in text]))
    return made


def use_of_stems(folder, docs):
    """How often WordNet's own texts and its sense-tagged texts use a stem."""
    use = collections.Counter(stem for doc in docs for stem in set(doc))
    known = {stem for stem, count in use.items() if count >= 3}
    for line in (folder / "cntlist.rev").read_text().splitlines():
        sense, _, count = line.split()
        for word in words(sense.split("%")[0].replace("_", " ")):
            use[STEMMER.stemWord(word)] += int(count)
    return [stem for stem, _ in sorted(use.items(), key=lambda item: (-item[1], item[0])) if stem in known]


def rows_for(stems, docs):
    place = {stem: at for at, stem in enumerate(stems)}
    pairs = [(place[w], at) for at, doc in enumerate(docs) for w in sorted(set(doc)) if w in place]
    rows, columns = zip(*pairs)
    occurs = sp.csr_matrix((np.ones(len(rows)), (rows, columns)), shape=(len(stems), len(docs)))
    length = np.maximum(np.asarray(occurs.sum(0)).ravel(), 1)
    occurs = occurs @ sp.diags(1 / np.sqrt(length))
    together = (occurs @ occurs.T).tocsr()
    together.setdiag(0)
    together.eliminate_zeros()
    sums = np.asarray(together.sum(1)).ravel()
    context = sums**SMOOTHING / (sums**SMOOTHING).sum()
    together = together.tocoo()
    information = np.log(together.data / sums[together.row] / context[together.col])
    kept = information > 0
    positive = sp.csr_matrix((information[kept], (together.row[kept], together.col[kept])), shape=together.shape)
    left, values, _ = svds(positive, k=DIMENSIONS, random_state=0)
    return unit(left * np.sqrt(values))


def unit(rows):
    return rows / np.maximum(np.linalg.norm(rows, axis=1, keepdims=True), 1e-9)


def without_common(rows, stems, docs):
    place = {stem: at for at, stem in enumerate(stems)}
    known = [[place[w] for w in doc if w in place] for doc in docs[:: max(1, len(docs) // 6000)]]
    sentences = unit(np.array([rows[at].sum(0) for at in known if at]))
    common = np.linalg.svd(sentences, full_matrices=False)[2][0]
    return rows - np.outer(rows @ common, common)


def with_irregular(rows, stems, forms):
    place = {stem: at for at, stem in enumerate(stems)}
    made = {stem: rows[at] for stem, at in place.items()}
    for form, base in forms.items():
        base = STEMMER.stemWord(base)
        if base in place:
            made.setdefault(STEMMER.stemWord(form), rows[place[base]])
    return dict(sorted(made.items(), key=lambda item: item[0].encode()))


def packed(row):
    largest = min(255, max(1, int(np.ceil(np.abs(row).max() * 255))))
    parts = np.clip(np.round(row / (largest / 255) * 7), -7, 7).astype(np.int8).astype(np.uint8) & 15
    return bytes([largest]) + bytes(parts[0::2] | parts[1::2] << 4)


def main():
    folder = pathlib.Path(sys.argv[1])
    forms = irregular(folder)
    docs = documents(folder, forms)
    stems = use_of_stems(folder, docs)[:WORDS]
    rows = without_common(rows_for(stems, docs), stems, docs)
    made = with_irregular(rows, stems, forms)
    with open(sys.argv[2], "wb") as file:
        file.write(b"WVT1" + struct.pack("<II", len(made), DIMENSIONS))
        file.write(b"".join(stem.encode() + b"\n" for stem in made))
        file.write(b"".join(packed(row) for row in made.values()))


main()
