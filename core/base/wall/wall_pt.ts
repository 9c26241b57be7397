<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="pt">
<context>
    <name>WallText</name>
    <message>
        <source>a child</source>
        <translation>uma criança</translation>
    </message>
    <message>
        <source>%1 children</source>
        <translation>%1 crianças</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>years of age</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 e %2</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>before the sound of i</comment>
        <translation>%1 e %2</translation>
    </message>
    <message>
        <source>own writing</source>
        <translation>escrito pela própria mão</translation>
    </message>
    <message>
        <source>drawn</source>
        <translation>desenhado</translation>
    </message>
    <message>
        <source>signed</source>
        <comment>in a sign language</comment>
        <translation>em língua gestual</translation>
    </message>
    <message>
        <source>pointed</source>
        <translation>apontado</translation>
    </message>
    <message>
        <source>worked up together</source>
        <translation>posto em palavras em conjunto</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Fotografia</translation>
    </message>
    <message>
        <source>Work sample</source>
        <translation>Trabalho de criança</translation>
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
        <translation>Palavras anotadas tal como foram ditas</translation>
    </message>
    <message>
        <source>Words taken down as spoken and read back</source>
        <translation>Palavras anotadas tal como foram ditas e lidas de novo</translation>
    </message>
    <message>
        <source>Words taken down, some worked up together</source>
        <translation>Palavras anotadas, algumas postas em frase em conjunto</translation>
    </message>
    <message>
        <source>Words taken down, some worked up together and read back</source>
        <translation>Palavras anotadas, algumas postas em frase em conjunto, e lidas de novo</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1, por %2</translation>
    </message>
    <message>
        <source>What we make of it</source>
        <translation>O que vemos nisto</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>O que se segue</translation>
    </message>
    <message>
        <source>%1 (continued)</source>
        <translation>%1 (continuação)</translation>
    </message>
    <message>
        <source>For our families</source>
        <translation>Para as nossas famílias</translation>
    </message>
    <message>
        <source>%1 meetings, %2 children. We kept the words and one picture from each.</source>
        <translation>%1 encontros, %2 crianças. De cada um ficaram as palavras e uma imagem.</translation>
    </message>
    <message>
        <source>%1 meetings, one child. We kept the words and one picture from each.</source>
        <translation>%1 encontros, uma só voz. De cada um ficaram as palavras e uma imagem.</translation>
    </message>
    <message>
        <source>no one two three four five six seven eight</source>
        <comment>0 to 8, with spaces between</comment>
        <translation>nenhum um dois três quatro cinco seis sete oito</translation>
    </message>
    <message>
        <source>Notice, think, wonder</source>
        <translation>Notar, pensar, perguntar-se</translation>
    </message>
    <message>
        <source>What do you notice?</source>
        <translation>O que notas?</translation>
    </message>
    <message>
        <source>What do you think about it?</source>
        <translation>O que pensas disso?</translation>
    </message>
    <message>
        <source>What do you wonder?</source>
        <translation>O que te perguntas?</translation>
    </message>
    <message>
        <source>Hear, think, wonder</source>
        <translation>Ouvir, pensar, perguntar-se</translation>
    </message>
    <message>
        <source>What do you hear?</source>
        <translation>O que ouves?</translation>
    </message>
    <message>
        <source>What do you think makes it?</source>
        <translation>O que achas que faz este som?</translation>
    </message>
    <message>
        <source>Touch, think, wonder</source>
        <translation>Tocar, pensar, perguntar-se</translation>
    </message>
    <message>
        <source>How does it feel?</source>
        <translation>Como é ao toque?</translation>
    </message>
    <message>
        <source>What does it make you think of?</source>
        <translation>Em que te faz pensar?</translation>
    </message>
    <message>
        <source>Taste and smell</source>
        <translation>Sabor e cheiro</translation>
    </message>
    <message>
        <source>What do you taste?</source>
        <translation>A que sabe?</translation>
    </message>
    <message>
        <source>What do you smell?</source>
        <translation>A que cheira?</translation>
    </message>
    <message>
        <source>Where do you think it comes from?</source>
        <translation>De onde achas que vem?</translation>
    </message>
    <message>
        <source>One thing</source>
        <translation>Uma só coisa</translation>
    </message>
    <message>
        <source>Show me something. What is it doing?</source>
        <translation>Mostra-me uma coisa. O que está a fazer?</translation>
    </message>
    <message>
        <source>Before and now</source>
        <translation>Antes e agora</translation>
    </message>
    <message>
        <source>What do you notice that others may have missed?</source>
        <translation>O que notas que outros talvez não tenham visto?</translation>
    </message>
    <message>
        <source>What do you think, and what makes you think so?</source>
        <translation>O que pensas, e porque pensas assim?</translation>
    </message>
    <message>
        <source>Has anything changed your mind?</source>
        <translation>Alguma coisa te fez mudar de ideias?</translation>
    </message>
    <message>
        <source>How could we find out?</source>
        <translation>Como poderíamos descobrir?</translation>
    </message>
    <message>
        <source>hearing</source>
        <translation>audição</translation>
    </message>
    <message>
        <source>touch</source>
        <translation>tato</translation>
    </message>
    <message>
        <source>taste and smell</source>
        <translation>paladar e olfato</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Conteúdo</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>De %1 a %2</translation>
    </message>
    <message>
        <source>For the classroom</source>
        <translation>Para a sala</translation>
    </message>
    <message>
        <source>For the building</source>
        <translation>Para a escola</translation>
    </message>
    <message>
        <source>For families</source>
        <translation>Para as famílias</translation>
    </message>
    <message>
        <source>For the public</source>
        <translation>Para toda a gente</translation>
    </message>
    <message>
        <source>What families allow was asked again on %1.</source>
        <translation>O que as famílias permitem foi verificado de novo em %1.</translation>
    </message>
    <message>
        <source>1 experience</source>
        <translation>1 experiência</translation>
    </message>
    <message>
        <source>%1 experiences</source>
        <translation>%1 experiências</translation>
    </message>
    <message>
        <source>1 meeting</source>
        <translation>1 encontro</translation>
    </message>
    <message>
        <source>%1 meetings</source>
        <translation>%1 encontros</translation>
    </message>
    <message>
        <source>1 wall</source>
        <translation>1 parede</translation>
    </message>
    <message>
        <source>%1 walls</source>
        <translation>%1 paredes</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quando</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Onde</translation>
    </message>
    <message>
        <source>With</source>
        <comment>materials</comment>
        <translation>Com quê</translation>
    </message>
    <message>
        <source>Aims</source>
        <translation>Intenções</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>O que aconteceu</translation>
    </message>
    <message>
        <source>Credits</source>
        <translation>Créditos</translation>
    </message>
    <message>
        <source>%1, as it hung</source>
        <translation>%1, tal como esteve exposto</translation>
    </message>
    <message>
        <source>Photographed</source>
        <comment>on that day</comment>
        <translation>Fotografado</translation>
    </message>
    <message>
        <source>%1, panel %2 of %3</source>
        <translation>%1, painel %2 de %3</translation>
    </message>
    <message>
        <source>hung for the classroom, %1 × %2 mm, here at %3 %</source>
        <translation>exposto para a sala, %1 × %2 mm, aqui a %3 %</translation>
    </message>
    <message>
        <source>hung for the building, %1 × %2 mm, here at %3 %</source>
        <translation>exposto para a escola, %1 × %2 mm, aqui a %3 %</translation>
    </message>
    <message>
        <source>hung for families, %1 × %2 mm, here at %3 %</source>
        <translation>exposto para as famílias, %1 × %2 mm, aqui a %3 %</translation>
    </message>
    <message>
        <source>hung for the public, %1 × %2 mm, here at %3 %</source>
        <translation>exposto para toda a gente, %1 × %2 mm, aqui a %3 %</translation>
    </message>
    <message>
        <source>On the wall: %1</source>
        <translation>Na parede: %1</translation>
    </message>
    <message>
        <source>What they said</source>
        <translation>O que disseram</translation>
    </message>
    <message>
        <source>What belongs together</source>
        <translation>O que vai junto</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>Juntos</translation>
    </message>
    <message>
        <source>Meetings</source>
        <translation>Encontros</translation>
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
        <translation>Estamos de acordo</translation>
    </message>
    <message>
        <source>Not agreed on</source>
        <translation>Não estamos de acordo</translation>
    </message>
    <message>
        <source>A mind changed</source>
        <translation>Uma mudança de ideias</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation>Imagens</translation>
    </message>
    <message>
        <source>Looking back</source>
        <translation>Olhar para trás</translation>
    </message>
    <message>
        <source>Seen</source>
        <comment>by an adult, noted</comment>
        <translation>Visto</translation>
    </message>
    <message>
        <source>Who was heard</source>
        <translation>Quem foi ouvido</translation>
    </message>
    <message>
        <source>%1 heard</source>
        <comment>a question</comment>
        <translation>%1: sim</translation>
    </message>
    <message>
        <source>%1 not yet</source>
        <comment>a question</comment>
        <translation>%1: ainda não</translation>
    </message>
</context>
</TS>
