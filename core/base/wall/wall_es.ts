<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>WallText</name>
    <message>
        <source>a child</source>
        <translation>alguien de la clase</translation>
    </message>
    <message>
        <source>%1 children</source>
        <translation>%1 niños y niñas</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>years of age</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>before the sound of i</comment>
        <translation>%1 e %2</translation>
    </message>
    <message>
        <source>own writing</source>
        <translation>de su puño y letra</translation>
    </message>
    <message>
        <source>drawn</source>
        <translation>dibujado</translation>
    </message>
    <message>
        <source>signed</source>
        <comment>in a sign language</comment>
        <translation>en señas</translation>
    </message>
    <message>
        <source>pointed</source>
        <translation>señalado</translation>
    </message>
    <message>
        <source>worked up together</source>
        <translation>puesto en palabras entre dos</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Work sample</source>
        <translation>Obra</translation>
    </message>
    <message>
        <source>dddd, d MMMM</source>
        <translation>dddd, d &apos;de&apos; MMMM</translation>
    </message>
    <message>
        <source>dddd, d MMMM yyyy</source>
        <translation>dddd, d &apos;de&apos; MMMM &apos;de&apos; yyyy</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <translation>d &apos;de&apos; MMMM</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <translation>d &apos;de&apos; MMMM &apos;de&apos; yyyy</translation>
    </message>
    <message>
        <source>d</source>
        <comment>day of the month, first of two</comment>
        <translation>d</translation>
    </message>
    <message>
        <source>Words taken down as spoken</source>
        <translation>Palabras anotadas tal como se dijeron</translation>
    </message>
    <message>
        <source>Words taken down as spoken and read back</source>
        <translation>Palabras anotadas tal como se dijeron y leídas de nuevo</translation>
    </message>
    <message>
        <source>Words taken down, some worked up together</source>
        <translation>Palabras anotadas; algunas puestas en frase entre dos</translation>
    </message>
    <message>
        <source>Words taken down, some worked up together and read back</source>
        <translation>Palabras anotadas; algunas puestas en frase entre dos, y leídas de nuevo</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1, por %2</translation>
    </message>
    <message>
        <source>What we make of it</source>
        <translation>Lo que entendemos</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Lo que sigue</translation>
    </message>
    <message>
        <source>%1 (continued)</source>
        <translation>%1 (continúa)</translation>
    </message>
    <message>
        <source>For our families</source>
        <translation>Para nuestras familias</translation>
    </message>
    <message>
        <source>%1 meetings, %2 children. We kept the words and one picture from each.</source>
        <translation>%1 asambleas, %2 niños y niñas. De cada una quedan las palabras y una imagen.</translation>
    </message>
    <message>
        <source>%1 meetings, one child. We kept the words and one picture from each.</source>
        <translation>%1 asambleas, una sola voz. De cada una quedan las palabras y una imagen.</translation>
    </message>
    <message>
        <source>no one two three four five six seven eight</source>
        <comment>0 to 8, with spaces between</comment>
        <translation>ninguna una dos tres cuatro cinco seis siete ocho</translation>
    </message>
    <message>
        <source>Notice, think, wonder</source>
        <translation>Observar, pensar, preguntarse</translation>
    </message>
    <message>
        <source>What do you notice?</source>
        <translation>¿Qué observas?</translation>
    </message>
    <message>
        <source>What do you think about it?</source>
        <translation>¿Qué piensas de eso?</translation>
    </message>
    <message>
        <source>What do you wonder?</source>
        <translation>¿Qué te preguntas?</translation>
    </message>
    <message>
        <source>Hear, think, wonder</source>
        <translation>Oír, pensar, preguntarse</translation>
    </message>
    <message>
        <source>What do you hear?</source>
        <translation>¿Qué oyes?</translation>
    </message>
    <message>
        <source>What do you think makes it?</source>
        <translation>¿Qué crees que lo produce?</translation>
    </message>
    <message>
        <source>Touch, think, wonder</source>
        <translation>Tocar, pensar, preguntarse</translation>
    </message>
    <message>
        <source>How does it feel?</source>
        <translation>¿Cómo se siente al tocarlo?</translation>
    </message>
    <message>
        <source>What does it make you think of?</source>
        <translation>¿A qué te recuerda?</translation>
    </message>
    <message>
        <source>Taste and smell</source>
        <translation>Sabor y olor</translation>
    </message>
    <message>
        <source>What do you taste?</source>
        <translation>¿A qué sabe?</translation>
    </message>
    <message>
        <source>What do you smell?</source>
        <translation>¿A qué huele?</translation>
    </message>
    <message>
        <source>Where do you think it comes from?</source>
        <translation>¿De dónde crees que viene?</translation>
    </message>
    <message>
        <source>One thing</source>
        <translation>Una sola cosa</translation>
    </message>
    <message>
        <source>Show me something. What is it doing?</source>
        <translation>Enséñame algo. ¿Qué hace?</translation>
    </message>
    <message>
        <source>Before and now</source>
        <translation>Antes y ahora</translation>
    </message>
    <message>
        <source>What do you notice that others may have missed?</source>
        <translation>¿Qué observas que quizá se les haya escapado a los demás?</translation>
    </message>
    <message>
        <source>What do you think, and what makes you think so?</source>
        <translation>¿Qué piensas y por qué lo piensas?</translation>
    </message>
    <message>
        <source>Has anything changed your mind?</source>
        <translation>¿Has cambiado de idea por algo?</translation>
    </message>
    <message>
        <source>How could we find out?</source>
        <translation>¿Cómo podríamos averiguarlo?</translation>
    </message>
    <message>
        <source>hearing</source>
        <translation>oído</translation>
    </message>
    <message>
        <source>touch</source>
        <translation>tacto</translation>
    </message>
    <message>
        <source>taste and smell</source>
        <translation>gusto y olfato</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Contenido</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>Del %1 al %2</translation>
    </message>
    <message>
        <source>For the classroom</source>
        <translation>Para el aula</translation>
    </message>
    <message>
        <source>For the building</source>
        <translation>Para el centro</translation>
    </message>
    <message>
        <source>For families</source>
        <translation>Para las familias</translation>
    </message>
    <message>
        <source>For the public</source>
        <translation>Para todo el mundo</translation>
    </message>
    <message>
        <source>What families allow was asked again on %1.</source>
        <translation>Lo que permiten las familias se volvió a preguntar el %1.</translation>
    </message>
    <message>
        <source>1 experience</source>
        <translation>1 experiencia</translation>
    </message>
    <message>
        <source>%1 experiences</source>
        <translation>%1 experiencias</translation>
    </message>
    <message>
        <source>1 meeting</source>
        <translation>1 asamblea</translation>
    </message>
    <message>
        <source>%1 meetings</source>
        <translation>%1 asambleas</translation>
    </message>
    <message>
        <source>1 wall</source>
        <translation>1 muro</translation>
    </message>
    <message>
        <source>%1 walls</source>
        <translation>%1 muros</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>With</source>
        <comment>materials</comment>
        <translation>Con qué</translation>
    </message>
    <message>
        <source>Aims</source>
        <translation>Intenciones</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Qué ocurrió</translation>
    </message>
    <message>
        <source>Credits</source>
        <translation>Créditos</translation>
    </message>
    <message>
        <source>%1, as it hung</source>
        <translation>%1, tal como estuvo colgado</translation>
    </message>
    <message>
        <source>Photographed</source>
        <comment>on that day</comment>
        <translation>Fotografiado</translation>
    </message>
    <message>
        <source>%1, panel %2 of %3</source>
        <translation>%1, panel %2 de %3</translation>
    </message>
    <message>
        <source>hung for the classroom, %1 × %2 mm, here at %3 %</source>
        <translation>colgado para el aula, %1 × %2 mm, aquí al %3 %</translation>
    </message>
    <message>
        <source>hung for the building, %1 × %2 mm, here at %3 %</source>
        <translation>colgado para el centro, %1 × %2 mm, aquí al %3 %</translation>
    </message>
    <message>
        <source>hung for families, %1 × %2 mm, here at %3 %</source>
        <translation>colgado para las familias, %1 × %2 mm, aquí al %3 %</translation>
    </message>
    <message>
        <source>hung for the public, %1 × %2 mm, here at %3 %</source>
        <translation>colgado para todo el mundo, %1 × %2 mm, aquí al %3 %</translation>
    </message>
    <message>
        <source>On the wall: %1</source>
        <translation>En el muro: %1</translation>
    </message>
    <message>
        <source>What they said</source>
        <translation>Lo que dijeron</translation>
    </message>
    <message>
        <source>What belongs together</source>
        <translation>Lo que va junto</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>Juntos</translation>
    </message>
    <message>
        <source>Meetings</source>
        <translation>Asambleas</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Sobre</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>We agree on</source>
        <translation>Estamos de acuerdo en</translation>
    </message>
    <message>
        <source>Not agreed on</source>
        <translation>No estamos de acuerdo en</translation>
    </message>
    <message>
        <source>A mind changed</source>
        <translation>Un cambio de idea</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation>Imágenes</translation>
    </message>
    <message>
        <source>Looking back</source>
        <translation>Volver a mirar</translation>
    </message>
    <message>
        <source>Seen</source>
        <comment>by an adult, noted</comment>
        <translation>Visto</translation>
    </message>
    <message>
        <source>Who was heard</source>
        <translation>A quién se escuchó</translation>
    </message>
    <message>
        <source>%1 heard</source>
        <comment>a question</comment>
        <translation>%1: sí</translation>
    </message>
    <message>
        <source>%1 not yet</source>
        <comment>a question</comment>
        <translation>%1: todavía no</translation>
    </message>
</context>
</TS>
