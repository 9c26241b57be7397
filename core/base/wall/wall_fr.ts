<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr">
<context>
    <name>WallText</name>
    <message>
        <source>a child</source>
        <translation>un enfant</translation>
    </message>
    <message>
        <source>%1 children</source>
        <translation>%1 enfants</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>years of age</comment>
        <translation>%1 à %2 ans</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 et %2</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>before the sound of i</comment>
        <translation>%1 et %2</translation>
    </message>
    <message>
        <source>own writing</source>
        <translation>écrit de sa main</translation>
    </message>
    <message>
        <source>drawn</source>
        <translation>dessiné</translation>
    </message>
    <message>
        <source>signed</source>
        <comment>in a sign language</comment>
        <translation>en langue des signes</translation>
    </message>
    <message>
        <source>pointed</source>
        <translation>montré du doigt</translation>
    </message>
    <message>
        <source>worked up together</source>
        <translation>mis en mots ensemble</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>Work sample</source>
        <translation>Travail d’enfant</translation>
    </message>
    <message>
        <source>dddd, d MMMM</source>
        <translation>dddd d MMMM</translation>
    </message>
    <message>
        <source>dddd, d MMMM yyyy</source>
        <translation>dddd d MMMM yyyy</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <translation>d MMMM</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <translation>d MMMM yyyy</translation>
    </message>
    <message>
        <source>d</source>
        <comment>day of the month, first of two</comment>
        <translation>d</translation>
    </message>
    <message>
        <source>Words taken down as spoken</source>
        <translation>Paroles notées telles quelles</translation>
    </message>
    <message>
        <source>Words taken down as spoken and read back</source>
        <translation>Paroles notées telles quelles et relues</translation>
    </message>
    <message>
        <source>Words taken down, some worked up together</source>
        <translation>Paroles notées, certaines mises en mots ensemble</translation>
    </message>
    <message>
        <source>Words taken down, some worked up together and read back</source>
        <translation>Paroles notées, certaines mises en mots ensemble, et relues</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 par %2</translation>
    </message>
    <message>
        <source>What we make of it</source>
        <translation>Ce que nous y voyons</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>La suite</translation>
    </message>
    <message>
        <source>%1 (continued)</source>
        <translation>%1 (suite)</translation>
    </message>
    <message>
        <source>For our families</source>
        <translation>Pour nos familles</translation>
    </message>
    <message>
        <source>%1 meetings, %2 children. We kept the words and one picture from each.</source>
        <translation>%1 rencontres, %2 enfants. De chacune restent les paroles et une image.</translation>
    </message>
    <message>
        <source>%1 meetings, one child. We kept the words and one picture from each.</source>
        <translation>%1 rencontres, un enfant. De chacune restent les paroles et une image.</translation>
    </message>
    <message>
        <source>no one two three four five six seven eight</source>
        <comment>0 to 8, with spaces between</comment>
        <translation>aucun un deux trois quatre cinq six sept huit</translation>
    </message>
    <message>
        <source>Notice, think, wonder</source>
        <translation>Remarquer, penser, se demander</translation>
    </message>
    <message>
        <source>What do you notice?</source>
        <translation>Qu’est-ce que tu remarques ?</translation>
    </message>
    <message>
        <source>What do you think about it?</source>
        <translation>Qu’est-ce que tu en penses ?</translation>
    </message>
    <message>
        <source>What do you wonder?</source>
        <translation>Qu’est-ce que tu te demandes ?</translation>
    </message>
    <message>
        <source>Hear, think, wonder</source>
        <translation>Écouter, penser, se demander</translation>
    </message>
    <message>
        <source>What do you hear?</source>
        <translation>Qu’est-ce que tu entends ?</translation>
    </message>
    <message>
        <source>What do you think makes it?</source>
        <translation>À ton avis, d’où vient ce bruit ?</translation>
    </message>
    <message>
        <source>Touch, think, wonder</source>
        <translation>Toucher, penser, se demander</translation>
    </message>
    <message>
        <source>How does it feel?</source>
        <translation>C’est comment quand tu touches ?</translation>
    </message>
    <message>
        <source>What does it make you think of?</source>
        <translation>À quoi ça te fait penser ?</translation>
    </message>
    <message>
        <source>Taste and smell</source>
        <translation>Goûts et odeurs</translation>
    </message>
    <message>
        <source>What do you taste?</source>
        <translation>Quel goût ça a ?</translation>
    </message>
    <message>
        <source>What do you smell?</source>
        <translation>Qu’est-ce que tu sens ?</translation>
    </message>
    <message>
        <source>Where do you think it comes from?</source>
        <translation>À ton avis, d’où ça vient ?</translation>
    </message>
    <message>
        <source>One thing</source>
        <translation>Une seule chose</translation>
    </message>
    <message>
        <source>Show me something. What is it doing?</source>
        <translation>Montre-moi quelque chose. Qu’est-ce que ça fait ?</translation>
    </message>
    <message>
        <source>Before and now</source>
        <translation>Avant et maintenant</translation>
    </message>
    <message>
        <source>What do you notice that others may have missed?</source>
        <translation>Que remarques-tu que d’autres n’ont peut-être pas vu ?</translation>
    </message>
    <message>
        <source>What do you think, and what makes you think so?</source>
        <translation>Que penses-tu, et pourquoi le penses-tu ?</translation>
    </message>
    <message>
        <source>Has anything changed your mind?</source>
        <translation>Est-ce que quelque chose t’a fait changer d’avis ?</translation>
    </message>
    <message>
        <source>How could we find out?</source>
        <translation>Comment pourrions-nous le savoir ?</translation>
    </message>
    <message>
        <source>hearing</source>
        <translation>ouïe</translation>
    </message>
    <message>
        <source>touch</source>
        <translation>toucher</translation>
    </message>
    <message>
        <source>taste and smell</source>
        <translation>goût et odorat</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Sommaire</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>For the classroom</source>
        <translation>Pour la classe</translation>
    </message>
    <message>
        <source>For the building</source>
        <translation>Pour l’école</translation>
    </message>
    <message>
        <source>For families</source>
        <translation>Pour les familles</translation>
    </message>
    <message>
        <source>For the public</source>
        <translation>Pour le public</translation>
    </message>
    <message>
        <source>What families allow was asked again on %1.</source>
        <translation>L’accord des familles a été vérifié de nouveau le %1.</translation>
    </message>
    <message>
        <source>1 experience</source>
        <translation>1 expérience</translation>
    </message>
    <message>
        <source>%1 experiences</source>
        <translation>%1 expériences</translation>
    </message>
    <message>
        <source>1 meeting</source>
        <translation>1 rencontre</translation>
    </message>
    <message>
        <source>%1 meetings</source>
        <translation>%1 rencontres</translation>
    </message>
    <message>
        <source>1 wall</source>
        <translation>1 mur</translation>
    </message>
    <message>
        <source>%1 walls</source>
        <translation>%1 murs</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>With</source>
        <comment>materials</comment>
        <translation>Avec quoi</translation>
    </message>
    <message>
        <source>Aims</source>
        <translation>Intentions</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Ce qui s’est passé</translation>
    </message>
    <message>
        <source>Credits</source>
        <translation>Crédits</translation>
    </message>
    <message>
        <source>%1, as it hung</source>
        <translation>%1, comme sur le mur</translation>
    </message>
    <message>
        <source>Photographed</source>
        <comment>on that day</comment>
        <translation>Photographié</translation>
    </message>
    <message>
        <source>%1, panel %2 of %3</source>
        <translation>%1, panneau %2 sur %3</translation>
    </message>
    <message>
        <source>hung for the classroom, %1 × %2 mm, here at %3 %</source>
        <translation>affiché pour la classe, %1 × %2 mm, ici à %3 %</translation>
    </message>
    <message>
        <source>hung for the building, %1 × %2 mm, here at %3 %</source>
        <translation>affiché pour l’école, %1 × %2 mm, ici à %3 %</translation>
    </message>
    <message>
        <source>hung for families, %1 × %2 mm, here at %3 %</source>
        <translation>affiché pour les familles, %1 × %2 mm, ici à %3 %</translation>
    </message>
    <message>
        <source>hung for the public, %1 × %2 mm, here at %3 %</source>
        <translation>affiché pour le public, %1 × %2 mm, ici à %3 %</translation>
    </message>
    <message>
        <source>On the wall: %1</source>
        <translation>Sur le mur : %1</translation>
    </message>
    <message>
        <source>What they said</source>
        <translation>Ce qu’ils ont dit</translation>
    </message>
    <message>
        <source>What belongs together</source>
        <translation>Ce qui va ensemble</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>Ensemble</translation>
    </message>
    <message>
        <source>Meetings</source>
        <translation>Rencontres</translation>
    </message>
    <message>
        <source>About</source>
        <translation>À propos</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notes</translation>
    </message>
    <message>
        <source>We agree on</source>
        <translation>Nous sommes d’accord</translation>
    </message>
    <message>
        <source>Not agreed on</source>
        <translation>Nous ne sommes pas d’accord</translation>
    </message>
    <message>
        <source>A mind changed</source>
        <translation>Un avis qui a changé</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation>Images</translation>
    </message>
    <message>
        <source>Looking back</source>
        <translation>Regard en arrière</translation>
    </message>
    <message>
        <source>Seen</source>
        <comment>by an adult, noted</comment>
        <translation>Vu</translation>
    </message>
    <message>
        <source>Who was heard</source>
        <translation>Qui a été entendu</translation>
    </message>
    <message>
        <source>%1 heard</source>
        <comment>a question</comment>
        <translation>%1 : oui</translation>
    </message>
    <message>
        <source>%1 not yet</source>
        <comment>a question</comment>
        <translation>%1 : pas encore</translation>
    </message>
</context>
</TS>
