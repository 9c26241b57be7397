<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de">
<context>
    <name>WallText</name>
    <message>
        <source>a child</source>
        <translation>ein Kind</translation>
    </message>
    <message>
        <source>%1 children</source>
        <translation>%1 Kinder</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>years of age</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>before the sound of i</comment>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>own writing</source>
        <translation>selbst geschrieben</translation>
    </message>
    <message>
        <source>drawn</source>
        <translation>gezeichnet</translation>
    </message>
    <message>
        <source>signed</source>
        <comment>in a sign language</comment>
        <translation>gebärdet</translation>
    </message>
    <message>
        <source>pointed</source>
        <translation>gezeigt</translation>
    </message>
    <message>
        <source>worked up together</source>
        <translation>gemeinsam in Worte gefasst</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Work sample</source>
        <translation>Arbeit eines Kindes</translation>
    </message>
    <message>
        <source>dddd, d MMMM</source>
        <translation>dddd, d. MMMM</translation>
    </message>
    <message>
        <source>dddd, d MMMM yyyy</source>
        <translation>dddd, d. MMMM yyyy</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <translation>d. MMMM</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <translation>d. MMMM yyyy</translation>
    </message>
    <message>
        <source>d</source>
        <comment>day of the month, first of two</comment>
        <translation>d.</translation>
    </message>
    <message>
        <source>Words taken down as spoken</source>
        <translation>Wörtlich aufgeschrieben</translation>
    </message>
    <message>
        <source>Words taken down as spoken and read back</source>
        <translation>Wörtlich aufgeschrieben und vorgelesen</translation>
    </message>
    <message>
        <source>Words taken down, some worked up together</source>
        <translation>Aufgeschrieben, manches gemeinsam in Worte gefasst</translation>
    </message>
    <message>
        <source>Words taken down, some worked up together and read back</source>
        <translation>Aufgeschrieben, manches gemeinsam in Worte gefasst, und vorgelesen</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>What we make of it</source>
        <translation>Was wir darin sehen</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Wie es weitergeht</translation>
    </message>
    <message>
        <source>%1 (continued)</source>
        <translation>%1 (Fortsetzung)</translation>
    </message>
    <message>
        <source>For our families</source>
        <translation>Für unsere Familien</translation>
    </message>
    <message>
        <source>%1 meetings, %2 children. We kept the words and one picture from each.</source>
        <translation>%1 Treffen, %2 Kinder. Von jedem blieben die Worte und ein Bild.</translation>
    </message>
    <message>
        <source>%1 meetings, one child. We kept the words and one picture from each.</source>
        <translation>%1 Treffen, ein Kind. Von jedem blieben die Worte und ein Bild.</translation>
    </message>
    <message>
        <source>no one two three four five six seven eight</source>
        <comment>0 to 8, with spaces between</comment>
        <translation>kein ein zwei drei vier fünf sechs sieben acht</translation>
    </message>
    <message>
        <source>Notice, think, wonder</source>
        <translation>Bemerken, denken, sich fragen</translation>
    </message>
    <message>
        <source>What do you notice?</source>
        <translation>Was fällt dir auf?</translation>
    </message>
    <message>
        <source>What do you think about it?</source>
        <translation>Was denkst du darüber?</translation>
    </message>
    <message>
        <source>What do you wonder?</source>
        <translation>Was fragst du dich?</translation>
    </message>
    <message>
        <source>Hear, think, wonder</source>
        <translation>Hören, denken, sich fragen</translation>
    </message>
    <message>
        <source>What do you hear?</source>
        <translation>Was hörst du?</translation>
    </message>
    <message>
        <source>What do you think makes it?</source>
        <translation>Was, glaubst du, macht das Geräusch?</translation>
    </message>
    <message>
        <source>Touch, think, wonder</source>
        <translation>Fühlen, denken, sich fragen</translation>
    </message>
    <message>
        <source>How does it feel?</source>
        <translation>Wie fühlt es sich an?</translation>
    </message>
    <message>
        <source>What does it make you think of?</source>
        <translation>Woran erinnert es dich?</translation>
    </message>
    <message>
        <source>Taste and smell</source>
        <translation>Schmecken und riechen</translation>
    </message>
    <message>
        <source>What do you taste?</source>
        <translation>Was schmeckst du?</translation>
    </message>
    <message>
        <source>What do you smell?</source>
        <translation>Was riechst du?</translation>
    </message>
    <message>
        <source>Where do you think it comes from?</source>
        <translation>Woher, glaubst du, kommt das?</translation>
    </message>
    <message>
        <source>One thing</source>
        <translation>Ein Ding</translation>
    </message>
    <message>
        <source>Show me something. What is it doing?</source>
        <translation>Zeig mir etwas. Was macht es?</translation>
    </message>
    <message>
        <source>Before and now</source>
        <translation>Früher und jetzt</translation>
    </message>
    <message>
        <source>What do you notice that others may have missed?</source>
        <translation>Was fällt dir auf, das andere vielleicht übersehen haben?</translation>
    </message>
    <message>
        <source>What do you think, and what makes you think so?</source>
        <translation>Was denkst du, und warum denkst du das?</translation>
    </message>
    <message>
        <source>Has anything changed your mind?</source>
        <translation>Denkst du jetzt über etwas anders?</translation>
    </message>
    <message>
        <source>How could we find out?</source>
        <translation>Wie könnten wir es herausfinden?</translation>
    </message>
    <message>
        <source>hearing</source>
        <translation>Hören</translation>
    </message>
    <message>
        <source>touch</source>
        <translation>Fühlen</translation>
    </message>
    <message>
        <source>taste and smell</source>
        <translation>Schmecken und Riechen</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>For the classroom</source>
        <translation>Für den Gruppenraum</translation>
    </message>
    <message>
        <source>For the building</source>
        <translation>Für das Haus</translation>
    </message>
    <message>
        <source>For families</source>
        <translation>Für Familien</translation>
    </message>
    <message>
        <source>For the public</source>
        <translation>Für die Öffentlichkeit</translation>
    </message>
    <message>
        <source>What families allow was asked again on %1.</source>
        <translation>Was die Familien erlauben, wurde am %1 erneut abgefragt.</translation>
    </message>
    <message>
        <source>1 experience</source>
        <translation>1 Erlebnis</translation>
    </message>
    <message>
        <source>%1 experiences</source>
        <translation>%1 Erlebnisse</translation>
    </message>
    <message>
        <source>1 meeting</source>
        <translation>1 Treffen</translation>
    </message>
    <message>
        <source>%1 meetings</source>
        <translation>%1 Treffen</translation>
    </message>
    <message>
        <source>1 wall</source>
        <translation>1 Wand</translation>
    </message>
    <message>
        <source>%1 walls</source>
        <translation>%1 Wände</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>With</source>
        <comment>materials</comment>
        <translation>Womit</translation>
    </message>
    <message>
        <source>Aims</source>
        <translation>Absichten</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschah</translation>
    </message>
    <message>
        <source>Credits</source>
        <translation>Mitgewirkt haben</translation>
    </message>
    <message>
        <source>%1, as it hung</source>
        <translation>%1, wie es hing</translation>
    </message>
    <message>
        <source>Photographed</source>
        <comment>on that day</comment>
        <translation>Fotografiert</translation>
    </message>
    <message>
        <source>%1, panel %2 of %3</source>
        <translation>%1, Tafel %2 von %3</translation>
    </message>
    <message>
        <source>hung for the classroom, %1 × %2 mm, here at %3 %</source>
        <translation>hing im Gruppenraum, %1 × %2 mm, hier %3 %</translation>
    </message>
    <message>
        <source>hung for the building, %1 × %2 mm, here at %3 %</source>
        <translation>hing im Haus, %1 × %2 mm, hier %3 %</translation>
    </message>
    <message>
        <source>hung for families, %1 × %2 mm, here at %3 %</source>
        <translation>hing für Familien, %1 × %2 mm, hier %3 %</translation>
    </message>
    <message>
        <source>hung for the public, %1 × %2 mm, here at %3 %</source>
        <translation>hing öffentlich, %1 × %2 mm, hier %3 %</translation>
    </message>
    <message>
        <source>On the wall: %1</source>
        <translation>An der Wand: %1</translation>
    </message>
    <message>
        <source>What they said</source>
        <translation>Was sie sagten</translation>
    </message>
    <message>
        <source>What belongs together</source>
        <translation>Was zusammengehört</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>Zusammen</translation>
    </message>
    <message>
        <source>Meetings</source>
        <translation>Treffen</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Worüber</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>We agree on</source>
        <translation>Einig sind wir uns</translation>
    </message>
    <message>
        <source>Not agreed on</source>
        <translation>Nicht einig sind wir uns</translation>
    </message>
    <message>
        <source>A mind changed</source>
        <translation>Anders gedacht als zuvor</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation>Bilder</translation>
    </message>
    <message>
        <source>Looking back</source>
        <translation>Rückblick</translation>
    </message>
    <message>
        <source>Seen</source>
        <comment>by an adult, noted</comment>
        <translation>Gesehen</translation>
    </message>
    <message>
        <source>Who was heard</source>
        <translation>Wer gehört wurde</translation>
    </message>
    <message>
        <source>%1 heard</source>
        <comment>a question</comment>
        <translation>%1: ja</translation>
    </message>
    <message>
        <source>%1 not yet</source>
        <comment>a question</comment>
        <translation>%1: noch nicht</translation>
    </message>
</context>
</TS>
