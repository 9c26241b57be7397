"""Makes sound_keys.txt with jellyfish's Metaphone (Debian: python3-jellyfish).

Run by hand: python3 tests/data/voice/make_sound_keys.py > tests/data/voice/sound_keys.txt
The words stand for every rule, most of them twice, with spellings of the kind children invent. Left out
are words on which jellyfish departs from the rules as they were published: the last B of "thumb", GN at
the end of "sign", GG in "bigger", SC in "science", SCH in "school", GH before a vowel in "ghost".
"""

import jellyfish

WORDS = """apple egg ice ocean under bubble rabbit number cat circle city cycle catch watch match chair
church special social social duck back rock bridge edge budgie badger dog drip puddle feather flip off go
give gem giraffe gym ginger night nite light lite though high hat behind home hole whole jump joy kite
knee knife knot lake ball moon hammer nest gnome pneumatic phone foto photo elephant pond happy queen
quick rain run carrot sun shoe ship fish mission vision asia sea pass toad thing bath feather nation
patient butter kitten van very river wind wet wren write wrap snow whale wheel wig box six fox xylophone
yellow yes day toy zoo zebra buzz drinked drank drinks worm werm wurms ground grond boots butes cloud
clowd clawd thirsty ferstee sky skie dried dride leaf leef leaves evaporate vapor mud muddy smoke school
water watter wotr ladder because becuz friend frend straw stro chalk chok""".split()


def main() -> None:
    for word in dict.fromkeys(WORDS):
        if word != "school":
            print(word, jellyfish.metaphone(word))


main()
