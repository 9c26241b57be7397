<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>Ask</name>
    <message>
        <source>Ask: %1</source>
        <translation>Preguntar: %1</translation>
    </message>
</context>
<context>
    <name>Audience</name>
    <message>
        <source>the classroom</source>
        <translation>el aula</translation>
    </message>
    <message>
        <source>the hallway</source>
        <translation>el pasillo</translation>
    </message>
    <message>
        <source>families</source>
        <translation>las familias</translation>
    </message>
    <message>
        <source>everyone</source>
        <translation>todo el mundo</translation>
    </message>
</context>
<context>
    <name>DrawerRows</name>
    <message>
        <source>%1, %2 not on a wall</source>
        <translation>%1, %2 sin colgar</translation>
    </message>
    <message>
        <source>No words yet. Take down six answers or more, or gather them from a file.</source>
        <translation>Aún no hay palabras. Anotar seis respuestas o más, o reunirlas desde un archivo.</translation>
    </message>
    <message>
        <source>Nothing here fits what you look for.</source>
        <translation>Aquí nada coincide con la búsqueda.</translation>
    </message>
    <message>
        <source>Told in a meeting</source>
        <translation>Contado en asamblea</translation>
    </message>
    <message>
        <source>On their own</source>
        <translation>Sueltas</translation>
    </message>
    <message>
        <source>not looked at yet</source>
        <translation>aún sin mirar</translation>
    </message>
    <message>
        <source>nobody in it</source>
        <translation>no sale nadie</translation>
    </message>
    <message>
        <source>Show only the best of these %1</source>
        <translation>Ver solo la mejor de estas %1</translation>
    </message>
    <message>
        <source>Show all %1 that are nearly alike</source>
        <translation>Ver las %1 casi iguales</translation>
    </message>
    <message>
        <source>No photos here. Drop some on the panel, or gather a folder in the Book menu.</source>
        <translation>Aquí no hay fotos. Soltar algunas en el panel, o reunir una carpeta en el menú Libro.</translation>
    </message>
    <message>
        <source>No work here. Scanned drawings come in with the photos.</source>
        <translation>Aquí no hay obras. Los dibujos escaneados entran con las fotos.</translation>
    </message>
    <message>
        <source>Empty, to be written on the panel</source>
        <translation>Vacío, se escribe en el panel</translation>
    </message>
    <message>
        <source>What you saw</source>
        <translation>Lo observado</translation>
    </message>
    <message>
        <source>Observation</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>on panel %1</source>
        <translation>en el panel %1</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>en %1</translation>
    </message>
</context>
<context>
    <name>Finding</name>
    <message>
        <source>Must be mended: %1</source>
        <translation>Hay que corregirlo: %1</translation>
    </message>
    <message>
        <source>Finding: %1</source>
        <translation>Aviso: %1</translation>
    </message>
    <message>
        <source>Measured %1, the limit here is %2.</source>
        <translation>Medido: %1; el límite aquí es %2.</translation>
    </message>
    <message>
        <source>Measured %1.</source>
        <translation>Medido: %1.</translation>
    </message>
    <message>
        <source>1 caption</source>
        <translation>1 pie de foto</translation>
    </message>
    <message>
        <source>%1 captions</source>
        <translation>%1 pies de foto</translation>
    </message>
    <message>
        <source>1 character</source>
        <translation>1 carácter</translation>
    </message>
    <message>
        <source>%1 characters</source>
        <translation>%1 caracteres</translation>
    </message>
    <message>
        <source>1 line of credits</source>
        <translation>1 línea de créditos</translation>
    </message>
    <message>
        <source>%1 lines of credits</source>
        <translation>%1 líneas de créditos</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 día</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>1 edge</source>
        <translation>1 borde</translation>
    </message>
    <message>
        <source>%1 edges</source>
        <translation>%1 bordes</translation>
    </message>
    <message>
        <source>1 hyphen</source>
        <translation>1 guion</translation>
    </message>
    <message>
        <source>%1 hyphens</source>
        <translation>%1 guiones</translation>
    </message>
    <message>
        <source>1 letter</source>
        <translation>1 letra</translation>
    </message>
    <message>
        <source>%1 letters</source>
        <translation>%1 letras</translation>
    </message>
    <message>
        <source>1 ligature</source>
        <translation>1 ligadura</translation>
    </message>
    <message>
        <source>%1 ligatures</source>
        <translation>%1 ligaduras</translation>
    </message>
    <message>
        <source>1 line</source>
        <translation>1 línea</translation>
    </message>
    <message>
        <source>%1 lines</source>
        <translation>%1 líneas</translation>
    </message>
    <message>
        <source>1 name</source>
        <translation>1 nombre</translation>
    </message>
    <message>
        <source>%1 names</source>
        <translation>%1 nombres</translation>
    </message>
    <message>
        <source>1 piece</source>
        <translation>1 pieza</translation>
    </message>
    <message>
        <source>%1 pieces</source>
        <translation>%1 piezas</translation>
    </message>
    <message>
        <source>1 answer</source>
        <translation>1 respuesta</translation>
    </message>
    <message>
        <source>%1 answers</source>
        <translation>%1 respuestas</translation>
    </message>
    <message>
        <source>1 size of type</source>
        <translation>1 tamaño de letra</translation>
    </message>
    <message>
        <source>%1 sizes of type</source>
        <translation>%1 tamaños de letra</translation>
    </message>
    <message>
        <source>1 title</source>
        <translation>1 título</translation>
    </message>
    <message>
        <source>%1 titles</source>
        <translation>%1 títulos</translation>
    </message>
    <message>
        <source>1 word</source>
        <translation>1 palabra</translation>
    </message>
    <message>
        <source>%1 words</source>
        <translation>%1 palabras</translation>
    </message>
    <message>
        <source>%1 to 1</source>
        <translation>%1 a 1</translation>
    </message>
    <message>
        <source>%1 arcminutes</source>
        <translation>%1 minutos de arco</translation>
    </message>
    <message>
        <source>%1 pixels an inch</source>
        <translation>%1 píxeles por pulgada</translation>
    </message>
    <message>
        <source>%1 row</source>
        <translation>%1 fila</translation>
    </message>
    <message>
        <source>%1 rows</source>
        <translation>%1 filas</translation>
    </message>
    <message>
        <source>%1 cap heights</source>
        <translation>%1 alturas de mayúscula</translation>
    </message>
    <message>
        <source>There is none; there should be %1.</source>
        <translation>No hay; debería haber %1.</translation>
    </message>
    <message>
        <source>Found %1; there should be %2 or more.</source>
        <translation>Hay %1; deberían ser %2 o más.</translation>
    </message>
    <message>
        <source>Found %1; there should be none.</source>
        <translation>Hay %1; no debería haber.</translation>
    </message>
    <message>
        <source>Found %1; %2 is the most here.</source>
        <translation>Hay %1; aquí el máximo es %2.</translation>
    </message>
    <message>
        <source>1 marked part</source>
        <translation>1 parte marcada</translation>
    </message>
    <message>
        <source>%1 marked parts</source>
        <translation>%1 partes marcadas</translation>
    </message>
    <message>
        <source>1 work</source>
        <translation>1 trabajo</translation>
    </message>
    <message>
        <source>%1 works</source>
        <translation>%1 trabajos</translation>
    </message>
    <message>
        <source>school grade %1</source>
        <translation>grado escolar %1</translation>
    </message>
</context>
<context>
    <name>HangingList</name>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>Measured to the panel&apos;s own edges, from the floor and from the left edge of the wall; its board reaches %1 mm further on every side.</source>
        <translation>Medido hasta los bordes del propio panel, desde el suelo y desde el borde izquierdo de la pared; su tablero sobresale %1 mm por cada lado.</translation>
    </message>
    <message>
        <source>Nails go in %1 mm under the upper edge (common practice, no source); strips behind the corners. Floors slope: measure one nail up from the floor, then use a level.</source>
        <translation>Los clavos van %1 mm por debajo del borde superior (práctica común, sin fuente); las tiras adhesivas, detrás de las esquinas. Los suelos tienen desnivel: medir un clavo desde el suelo y usar después un nivel.</translation>
    </message>
    <message>
        <source>Cut %1 of %2 by %3 mm (%4 by %5): the panel with %6 mm all round.</source>
        <translation>Cortar %1 de %2 por %3 mm (%4 por %5): el panel con %6 mm alrededor.</translation>
    </message>
    <message>
        <source>1 board</source>
        <translation>1 tablero</translation>
    </message>
    <message>
        <source>%1 boards</source>
        <translation>%1 tableros</translation>
    </message>
    <message>
        <source>Before you hang it: %1</source>
        <translation>Antes de colgarlo: %1</translation>
    </message>
    <message>
        <source>%1 % of the wall is covered, limit %2 % (%3). Ask your fire authority.</source>
        <translation>El %1 % de la pared queda cubierto, límite: %2 % (%3). Preguntar a la autoridad contra incendios.</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Panel</translation>
    </message>
    <message>
        <source>left edge</source>
        <translation>borde izquierdo</translation>
    </message>
    <message>
        <source>right edge</source>
        <translation>borde derecho</translation>
    </message>
    <message>
        <source>lower edge</source>
        <translation>borde inferior</translation>
    </message>
    <message>
        <source>upper edge</source>
        <translation>borde superior</translation>
    </message>
    <message>
        <source>nails up</source>
        <translation>altura de los clavos</translation>
    </message>
    <message>
        <source>from the left</source>
        <translation>desde la izquierda</translation>
    </message>
    <message>
        <source>%1 and %2 mm</source>
        <translation>%1 y %2 mm</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>%1: %2 by %3 mm (%4 by %5)</source>
        <translation>%1: %2 por %3 mm (%4 por %5)</translation>
    </message>
</context>
<context>
    <name>Length</name>
    <message>
        <source>%1 in</source>
        <translation>%1 pulg.</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>in</source>
        <translation>″</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
</context>
<context>
    <name>LimitsDialog</name>
    <message>
        <source>Type</source>
        <translation>Letra</translation>
    </message>
    <message>
        <source>Contrast</source>
        <translation>Contraste</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Líneas</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Palabras</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Lugares</translation>
    </message>
    <message>
        <source>Ink</source>
        <translation>Tinta</translation>
    </message>
    <message>
        <source>The way in</source>
        <translation>La entrada</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation>Imágenes</translation>
    </message>
    <message>
        <source>Captions</source>
        <translation>Pies de foto</translation>
    </message>
    <message>
        <source>Children&apos;s words</source>
        <translation>Palabras infantiles</translation>
    </message>
    <message>
        <source>Seams between sheets</source>
        <translation>Uniones entre hojas</translation>
    </message>
</context>
<context>
    <name>Mend</name>
    <message>
        <source>Take it off</source>
        <translation>Quitarla del panel</translation>
    </message>
    <message>
        <source>Move it onto the paper</source>
        <translation>Moverla dentro del papel</translation>
    </message>
    <message>
        <source>Move it away from the edge</source>
        <translation>Alejarla del borde</translation>
    </message>
    <message>
        <source>Put it on the grid</source>
        <translation>Ponerla en la cuadrícula</translation>
    </message>
    <message>
        <source>Give its words room</source>
        <translation>Dar sitio a sus palabras</translation>
    </message>
    <message>
        <source>Fit its ground to the words</source>
        <translation>Ajustar su fondo a las palabras</translation>
    </message>
    <message>
        <source>Make room for it</source>
        <translation>Hacerle sitio</translation>
    </message>
    <message>
        <source>Arrange again</source>
        <translation>Ordenar de nuevo</translation>
    </message>
    <message>
        <source>Add the title</source>
        <translation>Añadir el título</translation>
    </message>
    <message>
        <source>Move it down from the title</source>
        <translation>Bajarla del título</translation>
    </message>
    <message>
        <source>Children&apos;s words a step smaller</source>
        <translation>Palabras de los niños, un paso más pequeñas</translation>
    </message>
    <message>
        <source>Children&apos;s words a step larger</source>
        <translation>Palabras de los niños, un paso más grandes</translation>
    </message>
    <message>
        <source>Take the display&apos;s letters</source>
        <translation>Tomar la letra de la exposición</translation>
    </message>
    <message>
        <source>Take colours that stand out</source>
        <translation>Tomar colores que destaquen</translation>
    </message>
    <message>
        <source>Make its lines shorter</source>
        <translation>Acortar sus líneas</translation>
    </message>
    <message>
        <source>Shorten it</source>
        <translation>Acortarlo</translation>
    </message>
    <message>
        <source>Write the caption</source>
        <translation>Escribir el pie de foto</translation>
    </message>
    <message>
        <source>Shorten the caption</source>
        <translation>Acortar el pie de foto</translation>
    </message>
    <message>
        <source>Bring caption and picture together</source>
        <translation>Juntar el pie y la imagen</translation>
    </message>
    <message>
        <source>Smaller, so it is sharp</source>
        <translation>Más pequeña, para que sea nítida</translation>
    </message>
    <message>
        <source>Even out its mat</source>
        <translation>Igualar su marco</translation>
    </message>
    <message>
        <source>Show the marked part</source>
        <translation>Mostrar la parte marcada</translation>
    </message>
    <message>
        <source>Show the whole of it</source>
        <translation>Mostrarla entera</translation>
    </message>
    <message>
        <source>The second picture smaller</source>
        <translation>La segunda imagen, más pequeña</translation>
    </message>
    <message>
        <source>Move it down from the name</source>
        <translation>Bajarla del nombre</translation>
    </message>
    <message>
        <source>Break its lines anew</source>
        <translation>Partir de nuevo sus líneas</translation>
    </message>
    <message>
        <source>Add the credits</source>
        <translation>Añadir los créditos</translation>
    </message>
    <message>
        <source>Add the day</source>
        <translation>Añadir el día</translation>
    </message>
    <message>
        <source>Find a place for %1</source>
        <translation>Buscar sitio para %1</translation>
    </message>
    <message>
        <source>Left it as it is</source>
        <translation>Dejarlo como está</translation>
    </message>
    <message>
        <source>Go to it</source>
        <translation>Ir ahí</translation>
    </message>
    <message>
        <source>Go to the panel</source>
        <translation>Ir al panel</translation>
    </message>
    <message>
        <source>Hang it at their eyes</source>
        <translation>Colgarlo a la altura de sus ojos</translation>
    </message>
    <message>
        <source>Say it more plainly</source>
        <translation>Decirlo con más sencillez</translation>
    </message>
    <message>
        <source>Write its own caption</source>
        <translation>Escribir un pie propio</translation>
    </message>
    <message>
        <source>Show all the words</source>
        <translation>Mostrar todas las palabras</translation>
    </message>
</context>
<context>
    <name>Piece</name>
    <message>
        <source>Colours: %1</source>
        <translation>Colores: %1</translation>
    </message>
    <message>
        <source>Letters: %1</source>
        <translation>Letras: %1</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Título</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Pregunta</translation>
    </message>
    <message>
        <source>How it came about</source>
        <translation>Cómo surgió</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Rótulo</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Obra</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Palabras</translation>
    </message>
    <message>
        <source>What we make of it</source>
        <translation>Lo que entendemos</translation>
    </message>
    <message>
        <source>What comes next</source>
        <translation>Lo que viene</translation>
    </message>
    <message>
        <source>Invitation</source>
        <translation>Invitación</translation>
    </message>
    <message>
        <source>Credits</source>
        <translation>Créditos</translation>
    </message>
</context>
<context>
    <name>Place</name>
    <message>
        <source>Gather</source>
        <translation>Reunir</translation>
    </message>
    <message>
        <source>Listen</source>
        <translation>Escuchar</translation>
    </message>
    <message>
        <source>Compose</source>
        <translation>Componer</translation>
    </message>
    <message>
        <source>Hang</source>
        <translation>Colgar</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>ReadingLine</name>
    <message>
        <source>1 word.</source>
        <translation>1 palabra.</translation>
    </message>
    <message>
        <source>%1 words, longest sentence %2.</source>
        <translation>%1 palabras; la frase más larga, %2.</translation>
    </message>
    <message>
        <source>%1 No reading formula for this language.</source>
        <translation>%1 Sin fórmula de lectura para este idioma.</translation>
    </message>
    <message>
        <source>%1 Flesch %2, grade %3.</source>
        <translation>%1 Flesch %2, grado %3.</translation>
    </message>
    <message>
        <source>At most %1 words, %2 in a sentence (%3). Flesch: higher is easier; grade: years of school, by an English formula with syllables estimated.</source>
        <translation>Máximo: %1 palabras, %2 por frase (%3). Flesch: más alto es más fácil; grado: años de escuela, por una fórmula inglesa con sílabas estimadas.</translation>
    </message>
    <message>
        <source>limits set here</source>
        <translation>límites puestos aquí</translation>
    </message>
</context>
<context>
    <name>Says</name>
    <message>
        <source>half an A4 sheet</source>
        <translation>media hoja A4</translation>
    </message>
    <message>
        <source>one A4 sheet</source>
        <translation>una hoja A4</translation>
    </message>
    <message>
        <source>%1 A4 sheets</source>
        <translation>%1 hojas A4</translation>
    </message>
    <message>
        <source>%1 square centimetres, about %2</source>
        <translation>%1 centímetros cuadrados, más o menos %2</translation>
    </message>
    <message>
        <source>One quote that was meant for it has</source>
        <translation>Una cita prevista no tiene</translation>
    </message>
    <message>
        <source>%1 quotes that were meant for it have</source>
        <translation>%1 citas previstas no tienen</translation>
    </message>
    <message>
        <source>%1 % of the panel is white; on %2 everything fits and %3 % is.</source>
        <translation>El %1 % del panel queda en blanco; en %2 cabe todo y queda el %3 %.</translation>
    </message>
    <message>
        <source>%1 % of the panel is white; with the children&apos;s words one step larger (step %2) %3 % is.</source>
        <translation>El %1 % del panel queda en blanco; con las palabras de los niños y las niñas un paso más grandes (paso %2) queda el %3 %.</translation>
    </message>
    <message>
        <source>%1 no room: %2. On %3 panels it fits.</source>
        <translation>%1 espacio: faltan %2. En %3 paneles cabe todo.</translation>
    </message>
    <message>
        <source>%1 no room: %2. What stands on the panel is the best choice without it.</source>
        <translation>%1 espacio: faltan %2. Sin ello, lo que está en el panel es la mejor elección.</translation>
    </message>
    <message>
        <source>There is no other way that looks different and is as good.</source>
        <translation>No hay otra manera que se vea distinta y sea igual de buena.</translation>
    </message>
    <message>
        <source>There is one other way that looks different and is as good.</source>
        <translation>Hay otra manera que se ve distinta y es igual de buena.</translation>
    </message>
    <message>
        <source>There are two other ways that look different and are as good.</source>
        <translation>Hay otras dos maneras que se ven distintas y son igual de buenas.</translation>
    </message>
    <message>
        <source>Looking for other ways</source>
        <translation>Buscando otras maneras</translation>
    </message>
    <message>
        <source>The panel</source>
        <translation>El panel</translation>
    </message>
    <message>
        <source>its pieces do not fit; take one off or take a pin out</source>
        <translation>sus piezas no caben; quitar una o desfijar una</translation>
    </message>
    <message>
        <source>A display needs a name</source>
        <translation>Una exposición necesita un nombre</translation>
    </message>
    <message>
        <source>%1 panels</source>
        <translation>%1 paneles</translation>
    </message>
    <message>
        <source>a display has 1 to %1</source>
        <translation>una exposición tiene de 1 a %1</translation>
    </message>
    <message>
        <source>A reading distance of %1 mm</source>
        <translation>Una distancia de lectura de %1 mm</translation>
    </message>
    <message>
        <source>people read from 0.3 m to 10 m</source>
        <translation>se lee desde 0,3 m hasta 10 m</translation>
    </message>
    <message>
        <source>Step %1 for children&apos;s words</source>
        <translation>Paso %1 para las palabras de los niños y las niñas</translation>
    </message>
    <message>
        <source>the type scale has steps 1 to 3 for them, 0 leaves it to the plan</source>
        <translation>para ellas la escala de letra tiene los pasos 1 a 3; 0 lo deja al tipo de panel</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no template</source>
        <translation>«%1» no es un tipo de panel</translation>
    </message>
    <message>
        <source>known are %1</source>
        <translation>los que hay son %1</translation>
    </message>
    <message>
        <source>it has no photo and two children&apos;s words that may be shown</source>
        <translation>le faltan una foto y palabras de dos niños o niñas que se puedan mostrar</translation>
    </message>
    <message>
        <source>it has no drawing with its maker&apos;s words that may be shown</source>
        <translation>le falta un dibujo, con palabras de quien lo hizo, que se pueda mostrar</translation>
    </message>
    <message>
        <source>nothing of it may be shown to this audience</source>
        <translation>nada de lo que contiene se puede mostrar a este público</translation>
    </message>
    <message>
        <source>%1 is nearly the same as %2, which is shown; star it to show it instead.</source>
        <translation>%1 es casi igual que %2, que ya se muestra; poner estrella a la primera para mostrarla en su lugar.</translation>
    </message>
    <message>
        <source>The %1 is in one language only: the panel is not finished before it is in both.</source>
        <translation>Solo en un idioma: «%1». El panel no está acabado hasta que esté en los dos.</translation>
    </message>
    <message>
        <source>The experience &quot;%1&quot;</source>
        <translation>La experiencia «%1»</translation>
    </message>
    <message>
        <source>this book has no experience of that title</source>
        <translation>este libro no tiene ninguna experiencia con ese título</translation>
    </message>
    <message>
        <source>all of its panels are locked; unlock one or ask for one more</source>
        <translation>todos sus paneles están bloqueados; desbloquear uno o pedir uno más</translation>
    </message>
    <message>
        <source>A book needs a title</source>
        <translation>Un libro necesita un título</translation>
    </message>
    <message>
        <source>Making %1</source>
        <translation>Haciendo %1</translation>
    </message>
    <message>
        <source>Comparing pictures</source>
        <translation>Comparando imágenes</translation>
    </message>
    <message>
        <source>The display &quot;%1&quot;</source>
        <translation>La exposición «%1»</translation>
    </message>
    <message>
        <source>this book has no display of that name</source>
        <translation>este libro no tiene ninguna exposición con ese nombre</translation>
    </message>
    <message>
        <source>a picture has 10 to 600 dots an inch</source>
        <translation>una imagen tiene de 10 a 600 puntos por pulgada</translation>
    </message>
    <message>
        <source>it has no panel yet; arrange it first</source>
        <translation>aún no tiene ningún panel; antes hay que ordenar</translation>
    </message>
    <message>
        <source>Drawing panel %1</source>
        <translation>Dibujando el panel %1</translation>
    </message>
    <message>
        <source>row 1, the header, has no column &quot;%1&quot;; it has %2</source>
        <translation>la fila 1, la cabecera, no tiene la columna «%1»; tiene %2</translation>
    </message>
    <message>
        <source>%1, row %2: %3.</source>
        <translation>%1, fila %2: %3.</translation>
    </message>
    <message>
        <source>Gather pictures</source>
        <translation>Reunir imágenes</translation>
    </message>
    <message>
        <source>there is no file</source>
        <translation>falta el archivo</translation>
    </message>
    <message>
        <source>%1 is in an earlier row already</source>
        <translation>%1 ya está en una fila anterior</translation>
    </message>
    <message>
        <source>%1 is the same picture as %2.</source>
        <translation>%1 es la misma imagen que %2.</translation>
    </message>
    <message>
        <source>%1, row %2: there is no picture &quot;%3&quot; in the folder.</source>
        <translation>%1, fila %2: no hay ninguna imagen «%3» en la carpeta.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no kind of picture (photo or work); %2 is taken as a photo</source>
        <translation>«%1» no es un tipo de imagen (photo o work); %2 se toma como foto</translation>
    </message>
    <message>
        <source>no child of this book is called &quot;%1&quot;; %2 stays cleared for no audience until somebody has looked</source>
        <translation>en este libro nadie se llama «%1»; %2 queda sin permiso para ningún público hasta que alguien mire quién sale</translation>
    </message>
    <message>
        <source>Looking at pictures</source>
        <translation>Mirando imágenes</translation>
    </message>
    <message>
        <source>Keeping pictures</source>
        <translation>Guardando imágenes</translation>
    </message>
    <message>
        <source>it changed while it was being read</source>
        <translation>cambió mientras se leía</translation>
    </message>
    <message>
        <source>Gather words from %1</source>
        <translation>Reunir palabras de %1</translation>
    </message>
    <message>
        <source>there is no prompt; known are %1</source>
        <translation>falta la pregunta; las que hay son %1</translation>
    </message>
    <message>
        <source>the prompt &quot;%1&quot; is not asked in this experience; known are %2</source>
        <translation>la pregunta «%1» no se hace en esta experiencia; las que hay son %2</translation>
    </message>
    <message>
        <source>there are no words</source>
        <translation>no hay palabras</translation>
    </message>
    <message>
        <source>%1, row 1: the column &quot;%2&quot; is no prompt of this experience (%3); its cells are left out.</source>
        <translation>%1, fila 1: la columna «%2» no es una pregunta de esta experiencia (%3); sus celdas se dejan fuera.</translation>
    </message>
    <message>
        <source>there is no child</source>
        <translation>falta el niño o la niña</translation>
    </message>
    <message>
        <source>no child of this book is called &quot;%1&quot;</source>
        <translation>en este libro nadie se llama «%1»</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no way of telling; known are said, wrote, drew, signed, pointed</source>
        <translation>«%1» no es una manera de contar; las que hay son said, wrote, drew, signed, pointed</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no date (2026-11-03)</source>
        <translation>«%1» no es una fecha (2026-11-03)</translation>
    </message>
    <message>
        <source>it has neither the columns prompt and words nor a column for one of the prompts (%1)</source>
        <translation>no tiene las columnas «prompt» y «words», ni una columna para alguna de las preguntas (%1)</translation>
    </message>
    <message>
        <source>Read %1</source>
        <translation>Leído: %1</translation>
    </message>
    <message>
        <source>%1 % of this wall would be covered, doors counted in; ask your fire authority.</source>
        <translation>Quedaría cubierto el %1 % de esta pared, contando las puertas; preguntar a la autoridad contra incendios.</translation>
    </message>
    <message>
        <source>Panels hang in one run of %1 mm without a gap of %2 mm; ask your fire authority.</source>
        <translation>Los paneles cuelgan seguidos a lo largo de %1 mm, sin un hueco de %2 mm; preguntar a la autoridad contra incendios.</translation>
    </message>
    <message>
        <source>the measures of the wall</source>
        <translation>las medidas de la pared</translation>
    </message>
    <message>
        <source>There is no room left for it on this wall.</source>
        <translation>En esta pared no le queda espacio.</translation>
    </message>
    <message>
        <source>It hangs at the children&apos;s eyes, %1 mm; grown-ups look down from %2 to %3 mm.</source>
        <translation>Cuelga a la altura de los ojos de los niños y las niñas, %1 mm; las personas adultas miran hacia abajo desde %2 a %3 mm.</translation>
    </message>
    <message>
        <source>The limit &quot;%1&quot;</source>
        <translation>El límite «%1»</translation>
    </message>
    <message>
        <source>the limits are: %1</source>
        <translation>los límites son: %1</translation>
    </message>
    <message>
        <source>The wall</source>
        <translation>La pared</translation>
    </message>
    <message>
        <source>has no size</source>
        <translation>no tiene medidas</translation>
    </message>
    <message>
        <source>No child&apos;s words would be on it.</source>
        <translation>No tendría palabras de ningún niño ni niña.</translation>
    </message>
    <message>
        <source>Days on a wall</source>
        <translation>Días en la pared</translation>
    </message>
    <message>
        <source>One question, many voices</source>
        <translation>Una pregunta, muchas voces</translation>
    </message>
    <message>
        <source>Evening for families</source>
        <translation>Tarde con las familias</translation>
    </message>
    <message>
        <source>One drawing and its words</source>
        <translation>Un dibujo y sus palabras</translation>
    </message>
    <message>
        <source>The thread of an idea</source>
        <translation>El hilo de una idea</translation>
    </message>
    <message>
        <source>A sheet for the door</source>
        <translation>Una hoja para la puerta</translation>
    </message>
    <message>
        <source>%1 was to begin a panel, and there is no further one: ask for one panel more.</source>
        <translation>%1 debía empezar un panel, y no queda otro: pedir un panel más.</translation>
    </message>
    <message>
        <source>this book does not have it</source>
        <translation>no está en este libro</translation>
    </message>
    <message>
        <source>the widths of title and large picture are not those of %1</source>
        <translation>los anchos del título y de la imagen grande no son los que tiene el %1</translation>
    </message>
    <message>
        <source>pieces begin at other columns than in %1</source>
        <translation>hay piezas que empiezan en otras columnas que en el %1</translation>
    </message>
    <message>
        <source>pieces have other widths than in %1</source>
        <translation>hay piezas con otros anchos que en el %1</translation>
    </message>
    <message>
        <source>pieces could not stay where %1 fixes them</source>
        <translation>hay piezas que no pudieron quedar donde las fija el %1</translation>
    </message>
    <message>
        <source>the large picture is much smaller than in %1</source>
        <translation>la imagen grande es mucho más pequeña que en el %1</translation>
    </message>
    <message>
        <source>%1 can do without %2, so it is left out</source>
        <translation>el %1 puede estar sin %2, y así queda</translation>
    </message>
    <message>
        <source>there is no template of that name</source>
        <translation>no hay ningún tipo de panel con ese nombre</translation>
    </message>
    <message>
        <source>the panel does not have twelve columns</source>
        <translation>el panel no tiene doce columnas</translation>
    </message>
    <message>
        <source>it lays out one panel at a time</source>
        <translation>ordena un solo panel cada vez</translation>
    </message>
    <message>
        <source>it holds %1 groups, and here are %2</source>
        <translation>admite %1 grupos, y aquí hay %2</translation>
    </message>
    <message>
        <source>it has no place for some of the pieces</source>
        <translation>no tiene lugar para algunas de las piezas</translation>
    </message>
    <message>
        <source>the pieces do not fit into it</source>
        <translation>las piezas no caben en él</translation>
    </message>
    <message>
        <source>there is not enough room</source>
        <translation>no hay espacio suficiente</translation>
    </message>
    <message>
        <source>too much would be cropped or left white</source>
        <translation>se recortaría o quedaría en blanco demasiado</translation>
    </message>
    <message>
        <source>the template “%1”</source>
        <translation>tipo de panel «%1»</translation>
    </message>
    <message>
        <source>%1 is not kept: %2. The panel is arranged freely.</source>
        <translation>%1: no se sigue; %2. El panel se ordena libremente.</translation>
    </message>
    <message>
        <source>a child</source>
        <translation>un niño o una niña</translation>
    </message>
    <message>
        <source>what %1 said</source>
        <translation>lo que dijo %1</translation>
    </message>
    <message>
        <source>the picture %1</source>
        <translation>la imagen %1</translation>
    </message>
    <message>
        <source>keeps its size: its letters are as large as they must be</source>
        <translation>mantiene su tamaño: sus letras son tan grandes como deben</translation>
    </message>
    <message>
        <source>keeps its size because it is pinned</source>
        <translation>mantiene su tamaño porque se fijó a mano</translation>
    </message>
    <message>
        <source>does not get the size you asked for: the rest would not fit, or it has too few pixels</source>
        <translation>no recibe el tamaño pedido: el resto no cabría, o le faltan píxeles</translation>
    </message>
    <message>
        <source>no straight cuts go between the pinned pieces, so this is a good arrangement around them, not the proven best.</source>
        <translation>entre las piezas fijadas no caben cortes rectos, así que este es un buen orden alrededor de ellas, pero no el mejor demostrado.</translation>
    </message>
    <message>
        <source>%1 is pinned beyond the edge; move or unpin it.</source>
        <translation>%1 se fijó más allá del borde; mover o desfijar la pieza.</translation>
    </message>
    <message>
        <source>%1 are pinned over each other; move or unpin one.</source>
        <translation>%1 se superponen porque se fijaron así; mover o desfijar una pieza.</translation>
    </message>
    <message>
        <source>Propose %1</source>
        <translation>Proponer %1</translation>
    </message>
    <message>
        <source>Panel %1: %2</source>
        <translation>Panel %1: %2</translation>
    </message>
    <message>
        <source>Stopped; nothing was changed.</source>
        <translation>Se paró; no se cambió nada.</translation>
    </message>
    <message>
        <source>%1: %2%3%4 is not placed for want of room.</source>
        <translation>%1: %2%3%4 queda fuera por falta de espacio.</translation>
    </message>
    <message>
        <source>%1 is not placed for want of room.</source>
        <translation>%1 queda fuera por falta de espacio.</translation>
    </message>
    <message>
        <source>That cannot be done</source>
        <translation>Eso no se puede hacer</translation>
    </message>
    <message>
        <source> was not found</source>
        <translation> no se encontró</translation>
    </message>
    <message>
        <source> cannot be read</source>
        <translation> no se puede leer</translation>
    </message>
    <message>
        <source> cannot be written</source>
        <translation> no se puede escribir</translation>
    </message>
    <message>
        <source> is damaged</source>
        <translation> tiene daños</translation>
    </message>
    <message>
        <source> was made by a later version of Wainscot, so it stays closed</source>
        <translation> es de una versión posterior de Wainscot, así que no se abre</translation>
    </message>
    <message>
        <source> is open in another window or on another computer</source>
        <translation> está en uso en otra ventana o en otro equipo</translation>
    </message>
    <message>
        <source> is not taken</source>
        <translation> no se admite</translation>
    </message>
    <message>
        <source>Something went wrong inside the program, and nothing was changed</source>
        <translation>Algo falló dentro del programa, y no se cambió nada</translation>
    </message>
    <message>
        <source>a word is wider than any place it could have; choose a larger panel or a shorter reading distance.</source>
        <translation>una palabra es más ancha que cualquier lugar posible; elegir un panel más grande o una distancia de lectura más corta.</translation>
    </message>
    <message>
        <source>a picture has too few pixels to be shown that large.</source>
        <translation>una imagen no tiene píxeles suficientes para verse tan grande.</translation>
    </message>
    <message>
        <source>there is too little room by about %1 square centimetres; a larger panel, a shorter reading distance or one more panel helps.</source>
        <translation>faltan unos %1 centímetros cuadrados; ayuda un panel más grande, una distancia de lectura más corta o un panel más.</translation>
    </message>
    <message>
        <source>two pinned pieces lie over each other; move or unpin one.</source>
        <translation>dos piezas fijadas se superponen; mover o desfijar una.</translation>
    </message>
    <message>
        <source>the pinned pieces leave the others no place between them; unpin one.</source>
        <translation>las piezas fijadas no dejan lugar entre ellas a las demás; desfijar una.</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>Leyendo %1</translation>
    </message>
    <message>
        <source>A template needs a name</source>
        <translation>Un tipo de panel necesita un nombre</translation>
    </message>
    <message>
        <source>the program&apos;s own template has this name</source>
        <translation>un tipo de panel del programa ya se llama así</translation>
    </message>
    <message>
        <source>Keep the template %1</source>
        <translation>Guardar el tipo de panel %1</translation>
    </message>
    <message>
        <source>Panel %1 of &quot;%2&quot;</source>
        <translation>El panel %1 de «%2»</translation>
    </message>
    <message>
        <source>it has %1</source>
        <translation>el número de paneles es %1</translation>
    </message>
    <message>
        <source>nothing stands on it yet</source>
        <translation>aún no tiene nada</translation>
    </message>
    <message>
        <source>; about %1 square centimetres more would let everybody speak</source>
        <translation>; con unos %1 centímetros cuadrados más habría voz para toda la clase</translation>
    </message>
    <message>
        <source>%1 is not heard on this display: there is no room beside the others%2.</source>
        <translation>En esta exposición falta la voz de %1: no hay espacio junto a las demás%2.</translation>
    </message>
    <message>
        <source>%1 is not heard on this display: none of the words may be shown to this audience.</source>
        <translation>En esta exposición falta la voz de %1: ninguna de sus palabras se puede mostrar a este público.</translation>
    </message>
    <message>
        <source>%1 is not heard on this display: no words have been gathered yet.</source>
        <translation>En esta exposición falta la voz de %1: aún no se han reunido palabras suyas.</translation>
    </message>
    <message>
        <source>It is the largest picture, %1 times the next, so that the eye has one way in.</source>
        <translation>Es la imagen más grande, %1 veces la siguiente, para que el ojo tenga por dónde entrar.</translation>
    </message>
    <message>
        <source>%1 is %2.</source>
        <translation>%1 tiene %2.</translation>
    </message>
    <message>
        <source>It is %1 % %2 than its share of the room.</source>
        <translation>Ocupa un %1 % %2 de lo que le toca.</translation>
    </message>
    <message>
        <source>Read row by row, %1 of its pieces come in another order than they happened.</source>
        <translation>Al leer fila a fila, piezas fuera del orden en que pasó todo: %1.</translation>
    </message>
    <message>
        <source>the work sample</source>
        <translation>la obra</translation>
    </message>
    <message>
        <source>the photo</source>
        <translation>la foto</translation>
    </message>
    <message>
        <source>Its capitals are %1 mm high, because it is read from %2 m (%3 arcminutes).</source>
        <translation>Sus mayúsculas miden %1 mm de alto, porque se lee desde %2 m (%3 minutos de arco).</translation>
    </message>
    <message>
        <source>%1 stands here because you pinned it; no arranging moves it.</source>
        <translation>%1 está aquí porque se fijó a mano; ordenar no mueve esta pieza.</translation>
    </message>
    <message>
        <source>%1 stands here because it belongs with %2.</source>
        <translation>%1 está aquí porque va con %2.</translation>
    </message>
    <message>
        <source>%1 stands here because the panel begins with it.</source>
        <translation>%1 está aquí porque es lo primero del panel.</translation>
    </message>
    <message>
        <source>%1 stands here because it is read after %2.</source>
        <translation>%1 está aquí porque antes se lee %2.</translation>
    </message>
    <message>
        <source>No other arrangement that looks different is nearly as good.</source>
        <translation>Ningún otro orden que se vea distinto es casi tan bueno.</translation>
    </message>
    <message>
        <source>at the top</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>at the foot</source>
        <translation>abajo</translation>
    </message>
    <message>
        <source>at the left</source>
        <translation>a la izquierda</translation>
    </message>
    <message>
        <source>at the right</source>
        <translation>a la derecha</translation>
    </message>
    <message>
        <source>%1 % cropped %2</source>
        <translation>un recorte del %1 % %2</translation>
    </message>
    <message>
        <source>%1 % cropped</source>
        <translation>un recorte del %1 %</translation>
    </message>
    <message>
        <source>This panel is as full as the next best arrangement.</source>
        <translation>Este panel está tan lleno como con el siguiente mejor orden.</translation>
    </message>
    <message>
        <source>This panel is %1 % %2 than the next best arrangement.</source>
        <translation>Este panel está un %1 % %2 que con el siguiente mejor orden.</translation>
    </message>
    <message>
        <source>The piece</source>
        <translation>La pieza</translation>
    </message>
    <message>
        <source>it has no place on this panel</source>
        <translation>no tiene lugar en este panel</translation>
    </message>
    <message>
        <source>Nothing says who took the words down, and how.</source>
        <translation>Nada dice quién anotó las palabras, ni cómo.</translation>
    </message>
    <message>
        <source>Nothing on this display says when it happened.</source>
        <translation>Nada en esta exposición dice cuándo pasó.</translation>
    </message>
    <message>
        <source>%1 was heard but does not speak on this display.</source>
        <translation>Se escuchó a %1, pero su voz falta en esta exposición.</translation>
    </message>
    <message>
        <source>%1 has no caption: what cannot be seen in it?</source>
        <translation>%1 no tiene pie de foto: ¿qué es lo que no se ve?</translation>
    </message>
    <message>
        <source>The caption of %1 takes %2 lines; two are read.</source>
        <translation>El pie de foto de %1 ocupa %2 líneas; se leen dos.</translation>
    </message>
    <message>
        <source>The caption of %1 has come off its picture: %2 cap heights below it.</source>
        <translation>El pie de foto de %1 se separó de su imagen: está %2 alturas de mayúscula más abajo.</translation>
    </message>
    <message>
        <source>%1 takes %2 % of the panel; a larger panel or a shorter reading distance gives it room.</source>
        <translation>%1 ocupa el %2 % del panel; un panel más grande o una distancia de lectura más corta le dan espacio.</translation>
    </message>
    <message>
        <source>%1 prints at %2 pixels an inch and will look soft from %3 m; show it smaller or show more of it.</source>
        <translation>%1 se imprime a %2 píxeles por pulgada y se verá poco nítida desde %3 m; mostrarla más pequeña, o mostrar más de ella.</translation>
    </message>
    <message>
        <source>%1 prints at %2 pixels an inch: fine from %3 m, soft from nearby.</source>
        <translation>%1 se imprime a %2 píxeles por pulgada: bien desde %3 m, poco nítida de cerca.</translation>
    </message>
    <message>
        <source>The largest picture has %1 times the area of the next; from %2 times on it leads the eye.</source>
        <translation>La imagen más grande tiene %1 veces el área de la siguiente; a partir de %2 veces guía la mirada.</translation>
    </message>
    <message>
        <source>%1 is cut to %2 % of itself; a child&apos;s work is shown whole.</source>
        <translation>De %1 solo se ve el %2 %; las obras de niños y niñas se muestran enteras.</translation>
    </message>
    <message>
        <source>The mat of %1 is %2 mm wide on one side and %3 mm on another.</source>
        <translation>El paspartú de %1 tiene %2 mm de ancho por un lado y %3 mm por otro.</translation>
    </message>
    <message>
        <source>The marked part of %1 is cut off.</source>
        <translation>La parte marcada de %1 queda cortada.</translation>
    </message>
    <message>
        <source>The marked part of %1 comes within %2 % of the edge.</source>
        <translation>La parte marcada de %1 está a solo un %2 % del borde.</translation>
    </message>
    <message>
        <source>%1 goes %2 mm over the edge of the paper and would be cut off.</source>
        <translation>%1 pasa %2 mm del borde del papel, y esa parte se cortaría.</translation>
    </message>
    <message>
        <source>Text of %1 stands %2 mm from the edge; printers may lose what is nearer than %3 mm.</source>
        <translation>En %1 hay texto a %2 mm del borde; una impresora puede perder lo que está a menos de %3 mm.</translation>
    </message>
    <message>
        <source>The margin of this format is %1 mm; %2 mm look calm.</source>
        <translation>El margen de este formato es de %1 mm; con %2 mm se ve tranquilo.</translation>
    </message>
    <message>
        <source>%1 lies %2 mm over %3.</source>
        <translation>%1 y %3 se superponen %2 mm.</translation>
    </message>
    <message>
        <source>The text of %1 is %2 mm too long for its place; give it more room.</source>
        <translation>En %1 el texto se pasa %2 mm de su lugar; darle más espacio.</translation>
    </message>
    <message>
        <source>%1 stands %2 mm off the grid that everything else begins on.</source>
        <translation>%1 está a %2 mm de la cuadrícula en la que empieza todo lo demás.</translation>
    </message>
    <message>
        <source>Pieces begin at %1 different left edges; with %2 at most the page looks calm.</source>
        <translation>Las piezas empiezan en %1 bordes izquierdos distintos; con %2 como máximo, el panel se ve tranquilo.</translation>
    </message>
    <message>
        <source>The ground of %1 goes on for %2 rows below its text.</source>
        <translation>En %1 el fondo sigue %2 filas por debajo del texto.</translation>
    </message>
    <message>
        <source>Tinted grounds cover %1 % of the panel; up to %2 % they stay quiet.</source>
        <translation>Los fondos de color cubren el %1 % del panel; hasta el %2 % son discretos.</translation>
    </message>
    <message>
        <source>About %1 % of the paper stays white; half of it lets the rest be seen.</source>
        <translation>Queda en blanco más o menos el %1 % del papel; con la mitad en blanco, lo demás se ve.</translation>
    </message>
    <message>
        <source>Panel %1 has no title to begin with.</source>
        <translation>El panel %1 no tiene título por el que empezar.</translation>
    </message>
    <message>
        <source>The title is %1 times as large as the children&apos;s words; from %2 times on it is found first.</source>
        <translation>El título tiene %1 veces el tamaño de las palabras de los niños y las niñas; a partir de %2 veces se ve primero.</translation>
    </message>
    <message>
        <source>%1 follows the title after %2 rows; %3 let the title stand.</source>
        <translation>Entre el título y %1 hay %2 filas; con %3 el título destaca.</translation>
    </message>
    <message>
        <source>%1 begins too near the name above it; whose words are whose?</source>
        <translation>%1 empieza demasiado cerca del nombre de arriba; ¿de quién es cada palabra?</translation>
    </message>
    <message>
        <source>%1 has a hyphen the child did not say.</source>
        <translation>%1 tiene un guion que nadie dijo.</translation>
    </message>
    <message>
        <source>The last line of %1 is a single short word.</source>
        <translation>La última línea de %1 es una sola palabra corta.</translation>
    </message>
    <message>
        <source>Letters of %1 are joined into one; a new reader looks for each.</source>
        <translation>En %1 hay letras unidas en una; quien empieza a leer busca cada una.</translation>
    </message>
    <message>
        <source>a piece</source>
        <translation>una pieza</translation>
    </message>
    <message>
        <source>The letters of %1 are %2 mm high; read %3 (%4 m) they should be %5 mm.</source>
        <translation>En %1 las letras miden %2 mm de alto; para leer %3 (%4 m) deberían medir %5 mm.</translation>
    </message>
    <message>
        <source>The size of %1 is %2 % off the type scale: no text is made smaller or larger to fit.</source>
        <translation>En %1 el tamaño se aparta un %2 % de la escala de letra: ningún texto se reduce ni se agranda para que quepa.</translation>
    </message>
    <message>
        <source>There are %1 sizes of type on this panel; four are enough.</source>
        <translation>En este panel hay %1 tamaños de letra; bastan cuatro.</translation>
    </message>
    <message>
        <source>The children&apos;s words are %1 times as large as the adult&apos;s text; at least %2 times makes them the loudest.</source>
        <translation>Las palabras de los niños y las niñas tienen %1 veces el tamaño del texto adulto; con %2 veces o más son las que más se oyen.</translation>
    </message>
    <message>
        <source>%1 is set in the other voice&apos;s face (%2).</source>
        <translation>%1 lleva la letra de la otra voz (%2).</translation>
    </message>
    <message>
        <source>The children&apos;s colour stands out %1 times as much as the adult&apos;s; it should be %2 times.</source>
        <translation>El color de los niños y las niñas resalta %1 veces lo que el del texto adulto; deberían ser %2 veces.</translation>
    </message>
    <message>
        <source>The colour of %1 stands out from its ground by %2 : 1; at least %3 : 1 is asked for.</source>
        <translation>En %1 el contraste entre color y fondo es de %2 : 1; se pide al menos %3 : 1.</translation>
    </message>
    <message>
        <source>A line of %1 has %2 characters; beyond %3 the eye loses the next line.</source>
        <translation>En %1 una línea tiene %2 caracteres; con más de %3 el ojo pierde la línea siguiente.</translation>
    </message>
    <message>
        <source>There are %1 words in %2; people standing read at most %3.</source>
        <translation>Hay %1 palabras en %2; de pie se leen como mucho %3.</translation>
    </message>
    <message>
        <source>There are %1 words in %2; %3 leave more room for the children&apos;s.</source>
        <translation>Hay %1 palabras en %2; con %3 queda más espacio para las de los niños y las niñas.</translation>
    </message>
    <message>
        <source>A sentence of %1 has %2 words; %3 is the most that reads well standing.</source>
        <translation>En %1 una frase tiene %2 palabras; de pie se leen bien %3 como mucho.</translation>
    </message>
    <message>
        <source>No child speaks on this panel; the adult says %1 words.</source>
        <translation>En este panel no habla ningún niño ni niña; el texto adulto tiene %1 palabras.</translation>
    </message>
    <message>
        <source>The adult says %1 words and the children %2; shorten the adult&apos;s text or let more children speak.</source>
        <translation>El texto adulto tiene %1 palabras, y el de los niños y las niñas, %2; acortar el texto adulto o dejar hablar a más niños y niñas.</translation>
    </message>
    <message>
        <source>in the classroom</source>
        <translation>en el aula</translation>
    </message>
    <message>
        <source>in the building</source>
        <translation>en el edificio</translation>
    </message>
    <message>
        <source>for other families</source>
        <translation>ante otras familias</translation>
    </message>
    <message>
        <source>in public</source>
        <translation>en público</translation>
    </message>
    <message>
        <source>A photo</source>
        <translation>Una foto</translation>
    </message>
    <message>
        <source>A work sample</source>
        <translation>Una obra</translation>
    </message>
    <message>
        <source>%1 has no permission to be quoted %2.</source>
        <translation>%1 no tiene permiso para que se citen sus palabras %2.</translation>
    </message>
    <message>
        <source>The child who said this is no longer in the class list.</source>
        <translation>Quien dijo esto ya no está en la lista de clase.</translation>
    </message>
    <message>
        <source>%1: nobody has written these words in the other language yet.</source>
        <translation>%1: nadie ha escrito aún estas palabras en el otro idioma.</translation>
    </message>
    <message>
        <source>These words are no longer in the book.</source>
        <translation>Estas palabras ya no están en el libro.</translation>
    </message>
    <message>
        <source>to be seen</source>
        <translation>para aparecer</translation>
    </message>
    <message>
        <source>to show work</source>
        <translation>para mostrar su obra</translation>
    </message>
    <message>
        <source>%1: %2 %3 no permission %4 %5.</source>
        <translation>%1: %2 no %3 permiso %4 %5.</translation>
    </message>
    <message>
        <source>who is in it</source>
        <translation>quién sale</translation>
    </message>
    <message>
        <source>who made it</source>
        <translation>de quién es</translation>
    </message>
    <message>
        <source>%1: nobody has said yet %2.</source>
        <translation>%1: nadie ha dicho aún %2.</translation>
    </message>
    <message>
        <source>is by</source>
        <translation>es de</translation>
    </message>
    <message>
        <source>%1 %2 a child who is not in the class list.</source>
        <translation>%1 %2 alguien que no está en la lista de clase.</translation>
    </message>
    <message>
        <source>This picture is no longer in the book.</source>
        <translation>Esta imagen ya no está en el libro.</translation>
    </message>
    <message>
        <source>%1 is shown by the first name only.</source>
        <translation>De %1 se muestra solo el nombre, sin apellidos.</translation>
    </message>
    <message>
        <source>the title</source>
        <translation>el título</translation>
    </message>
    <message>
        <source>the question</source>
        <translation>la pregunta</translation>
    </message>
    <message>
        <source>the context</source>
        <translation>el contexto</translation>
    </message>
    <message>
        <source>the label</source>
        <translation>el rótulo</translation>
    </message>
    <message>
        <source>the work</source>
        <translation>la obra</translation>
    </message>
    <message>
        <source>the quote</source>
        <translation>la cita</translation>
    </message>
    <message>
        <source>the interpretation</source>
        <translation>la interpretación</translation>
    </message>
    <message>
        <source>the next step</source>
        <translation>el paso siguiente</translation>
    </message>
    <message>
        <source>the invitation</source>
        <translation>la invitación</translation>
    </message>
    <message>
        <source>the credits</source>
        <translation>la línea de créditos</translation>
    </message>
    <message>
        <source>larger</source>
        <translation>más</translation>
    </message>
    <message>
        <source>smaller</source>
        <translation>menos</translation>
    </message>
    <message>
        <source>emptier</source>
        <translation>más vacío</translation>
    </message>
    <message>
        <source>fuller</source>
        <translation>más lleno</translation>
    </message>
    <message>
        <source>has</source>
        <translation>tiene</translation>
    </message>
    <message>
        <source>have</source>
        <translation>tienen</translation>
    </message>
    <message>
        <source>shows</source>
        <translation>muestra a</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; names &quot;%2&quot;, which is no audience; known are %3, all and none</source>
        <translation>la columna «%1» nombra «%2», que no es ningún público; se conocen %3, all y none</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; says none and more at once</source>
        <translation>la columna «%1» dice none y algo más a la vez</translation>
    </message>
    <message>
        <source>there is no name</source>
        <translation>falta el nombre</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no date of birth (2021-04-17 or 2021-04) for %2</source>
        <translation>«%1» no es fecha de nacimiento (2021-04-17 o 2021-04) para %2</translation>
    </message>
    <message>
        <source>Gather children from %1</source>
        <translation>Reunir niños y niñas de %1</translation>
    </message>
    <message>
        <source>%1 is in row %2 already</source>
        <translation>%1 ya está en la fila %2</translation>
    </message>
    <message>
        <source>The label “%1” has words of a child without permission to be quoted %2.</source>
        <translation>El rótulo «%1» lleva palabras que no hay permiso para citar %2.</translation>
    </message>
    <message>
        <source>it has no two days with a picture and words that may be shown</source>
        <translation>no tiene dos días con una imagen y palabras que puedan mostrarse</translation>
    </message>
    <message>
        <source>it has no child&apos;s question that may be shown</source>
        <translation>no tiene ninguna pregunta infantil que pueda mostrarse</translation>
    </message>
    <message>
        <source>Copying pictures</source>
        <translation>Copiando imágenes</translation>
    </message>
    <message>
        <source>It holds every child&apos;s words, name and pictures, also of those who may not be shown. Keep it as you would keep the class list.</source>
        <translation>Contiene las palabras, el nombre y las imágenes de todos los niños, también de quienes no deben mostrarse. Guardarlo con el cuidado de la lista de clase.</translation>
    </message>
    <message>
        <source>Proposed groups</source>
        <translation>Grupos propuestos</translation>
    </message>
    <message>
        <source>Hallway</source>
        <translation>Pasillo</translation>
    </message>
    <message>
        <source>A wall</source>
        <translation>Una pared</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Antes y después</translation>
    </message>
    <message>
        <source>One child&apos;s questions</source>
        <translation>Las preguntas de un niño o una niña</translation>
    </message>
    <message>
        <source>&quot;%1&quot;</source>
        <translation>«%1»</translation>
    </message>
    <message>
        <source>The sheets</source>
        <translation>Las hojas</translation>
    </message>
    <message>
        <source>say whether they are for the children or for the scribe</source>
        <translation>indique si son para los niños o para quien escribe</translation>
    </message>
    <message>
        <source>one or two stand on a page</source>
        <translation>en una página caben una o dos</translation>
    </message>
    <message>
        <source>the paper is too small; take A4 or Letter</source>
        <translation>el papel es demasiado pequeño; use A4 o Carta</translation>
    </message>
    <message>
        <source>The child &quot;%1&quot;</source>
        <translation>El niño o la niña «%1»</translation>
    </message>
    <message>
        <source>the class list has nobody of that name</source>
        <translation>en la lista de la clase no hay nadie con ese nombre</translation>
    </message>
    <message>
        <source>%1 gets a line instead of the name: may not be named %2.</source>
        <translation>%1 recibe una línea en lugar del nombre: no se puede decir su nombre %2.</translation>
    </message>
    <message>
        <source>NUREG-0700 rev. 2, 1.3.1-4 (preferred 20 arcminutes, minimum 16)</source>
        <translation>NUREG-0700 rev. 2, 1.3.1-4 (preferible 20 minutos de arco, mínimo 16)</translation>
    </message>
    <message>
        <source>W3C WCAG 2, 1.4.3 (AA)</source>
        <translation>W3C WCAG 2, 1.4.3 (AA)</translation>
    </message>
    <message>
        <source>W3C WCAG 2, 1.4.6 (AAA)</source>
        <translation>W3C WCAG 2, 1.4.6 (AAA)</translation>
    </message>
    <message>
        <source>Wainscot&apos;s panel style</source>
        <translation>el estilo de panel de Wainscot</translation>
    </message>
    <message>
        <source>Smithsonian Guidelines for Accessible Exhibition Design, part B III</source>
        <translation>Smithsonian Guidelines for Accessible Exhibition Design, parte B III</translation>
    </message>
    <message>
        <source>one pixel per arcminute (acuity from memory): ppi = 87.3 / metres</source>
        <translation>un píxel por minuto de arco (agudeza de memoria): ppp = 87,3 / metros</translation>
    </message>
    <message>
        <source>largest unprintable edge on plain paper in printers&apos; manuals: 6.7 mm</source>
        <translation>mayor borde no imprimible en papel corriente según manuales de impresoras: 6,7 mm</translation>
    </message>
    <message>
        <source>what the families allowed, as recorded in this book</source>
        <translation>lo que permitieron las familias, según este libro</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>práctica común, sin fuente</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>ppi</source>
        <translation>ppp</translation>
    </message>
    <message>
        <source>arcmin</source>
        <translation>minutos de arco</translation>
    </message>
    <message>
        <source>sizes</source>
        <translation>tamaños</translation>
    </message>
    <message>
        <source>ratio</source>
        <translation>veces</translation>
    </message>
    <message>
        <source>characters</source>
        <translation>caracteres</translation>
    </message>
    <message>
        <source>words</source>
        <translation>palabras</translation>
    </message>
    <message>
        <source>edges</source>
        <translation>bordes</translation>
    </message>
    <message>
        <source>rows</source>
        <translation>filas</translation>
    </message>
    <message>
        <source>titles</source>
        <translation>títulos</translation>
    </message>
    <message>
        <source>captions</source>
        <translation>pies</translation>
    </message>
    <message>
        <source>lines</source>
        <translation>líneas</translation>
    </message>
    <message>
        <source>cap heights</source>
        <translation>alturas de mayúscula</translation>
    </message>
    <message>
        <source>letters</source>
        <translation>letras</translation>
    </message>
    <message>
        <source>hyphens</source>
        <translation>guiones</translation>
    </message>
    <message>
        <source>ligatures</source>
        <translation>ligaduras</translation>
    </message>
    <message>
        <source>credits</source>
        <translation>créditos</translation>
    </message>
    <message>
        <source>dates</source>
        <translation>fechas</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>piezas</translation>
    </message>
    <message>
        <source>names</source>
        <translation>nombres</translation>
    </message>
    <message>
        <source>quotes</source>
        <translation>citas</translation>
    </message>
    <message>
        <source>the edge of the paper</source>
        <translation>el borde del papel</translation>
    </message>
    <message>
        <source>from afar</source>
        <translation>de lejos</translation>
    </message>
    <message>
        <source>from the reading distance</source>
        <translation>desde la distancia de lectura</translation>
    </message>
    <message>
        <source>from close by</source>
        <translation>de cerca</translation>
    </message>
    <message>
        <source>%1 can do without %2, so they are left out</source>
        <translation>el %1 puede estar sin %2, y así quedan</translation>
    </message>
    <message>
        <source>No day is set until which this book is kept.</source>
        <translation>No hay un día hasta el que se guarda este libro.</translation>
    </message>
    <message>
        <source>This book was to be kept until %1. Pack it away, or erase what is in it.</source>
        <translation>Este libro se guardaba hasta el %1. Empaquetarlo y guardarlo aparte, o borrar lo que hay en él.</translation>
    </message>
    <message>
        <source>This book is kept until %1.</source>
        <translation>Este libro se guarda hasta el %1.</translation>
    </message>
    <message>
        <source>%1 sheets of %2</source>
        <translation>%1 hojas de %2</translation>
    </message>
    <message>
        <source>a picture is 16 to 20,000 pixels wide</source>
        <translation>una imagen tiene de 16 a 20 000 píxeles de ancho</translation>
    </message>
    <message>
        <source>The piece %1</source>
        <translation>La pieza %1</translation>
    </message>
    <message>
        <source>this display has no such piece</source>
        <translation>esta exposición no tiene esa pieza</translation>
    </message>
    <message>
        <source>its audience may not see it</source>
        <translation>su público no puede verla</translation>
    </message>
    <message>
        <source>nothing of it is drawn yet</source>
        <translation>todavía no hay nada dibujado de ella</translation>
    </message>
    <message>
        <source>the PDF %1 of %2</source>
        <translation>el PDF %1 del %2</translation>
    </message>
    <message>
        <source>the pictures %1 of %2</source>
        <translation>las imágenes %1 del %2</translation>
    </message>
    <message>
        <source>the term&apos;s file %1 of %2</source>
        <translation>el archivo del trimestre %1 del %2</translation>
    </message>
    <message>
        <source>the packed book %1 of %2</source>
        <translation>el libro empaquetado %1 del %2</translation>
    </message>
    <message>
        <source>the data %1 of %2</source>
        <translation>los datos %1 del %2</translation>
    </message>
    <message>
        <source>Title, least height</source>
        <translation>Título, altura mínima</translation>
    </message>
    <message>
        <source>Children&apos;s words, least height</source>
        <translation>Palabras infantiles, altura mínima</translation>
    </message>
    <message>
        <source>Adult&apos;s text, least height</source>
        <translation>Texto adulto, altura mínima</translation>
    </message>
    <message>
        <source>Captions and names, least height</source>
        <translation>Pies y nombres, altura mínima</translation>
    </message>
    <message>
        <source>Small letters, least height</source>
        <translation>Minúsculas, altura mínima</translation>
    </message>
    <message>
        <source>Letters where the panel hangs, least height</source>
        <translation>Letras donde cuelga el panel, altura mínima</translation>
    </message>
    <message>
        <source>Sizes off the type scale</source>
        <translation>Tamaños fuera de la escala</translation>
    </message>
    <message>
        <source>Sizes of type on a panel</source>
        <translation>Tamaños de letra en un panel</translation>
    </message>
    <message>
        <source>Children&apos;s words beside the adult&apos;s text</source>
        <translation>Palabras infantiles frente al texto adulto</translation>
    </message>
    <message>
        <source>Faces of the two voices</source>
        <translation>Letras de las dos voces</translation>
    </message>
    <message>
        <source>Contrast of small print</source>
        <translation>Contraste de la letra pequeña</translation>
    </message>
    <message>
        <source>Contrast of running text</source>
        <translation>Contraste del texto corrido</translation>
    </message>
    <message>
        <source>Children&apos;s colour beside the adult&apos;s</source>
        <translation>Color infantil frente al adulto</translation>
    </message>
    <message>
        <source>A line of children&apos;s words</source>
        <translation>Una línea de palabras infantiles</translation>
    </message>
    <message>
        <source>A line of the adult&apos;s text</source>
        <translation>Una línea del texto adulto</translation>
    </message>
    <message>
        <source>A line of small print</source>
        <translation>Una línea de letra pequeña</translation>
    </message>
    <message>
        <source>Words in one text</source>
        <translation>Palabras en un texto</translation>
    </message>
    <message>
        <source>Words in a sentence</source>
        <translation>Palabras en una frase</translation>
    </message>
    <message>
        <source>Words about what happened</source>
        <translation>Palabras sobre lo que pasó</translation>
    </message>
    <message>
        <source>Words of interpretation</source>
        <translation>Palabras de interpretación</translation>
    </message>
    <message>
        <source>Words about the next step</source>
        <translation>Palabras sobre el paso siguiente</translation>
    </message>
    <message>
        <source>Words of the credits</source>
        <translation>Palabras de los créditos</translation>
    </message>
    <message>
        <source>The adult&apos;s words beside the children&apos;s</source>
        <translation>Palabras adultas frente a las infantiles</translation>
    </message>
    <message>
        <source>School grade of the adult&apos;s text</source>
        <translation>Grado escolar del texto adulto</translation>
    </message>
    <message>
        <source>Over the edge of the paper</source>
        <translation>Más allá del borde del papel</translation>
    </message>
    <message>
        <source>Words from the edge</source>
        <translation>Palabras hasta el borde</translation>
    </message>
    <message>
        <source>Margin of the panel</source>
        <translation>Margen del panel</translation>
    </message>
    <message>
        <source>One piece over another</source>
        <translation>Una pieza sobre otra</translation>
    </message>
    <message>
        <source>Words beyond their place</source>
        <translation>Palabras fuera de su lugar</translation>
    </message>
    <message>
        <source>Off the grid</source>
        <translation>Fuera de la cuadrícula</translation>
    </message>
    <message>
        <source>Left edges on a panel</source>
        <translation>Bordes izquierdos en un panel</translation>
    </message>
    <message>
        <source>Ground beyond its words</source>
        <translation>Fondo más allá de sus palabras</translation>
    </message>
    <message>
        <source>Share of tinted ground</source>
        <translation>Parte de fondo teñido</translation>
    </message>
    <message>
        <source>Share of untouched paper</source>
        <translation>Parte de papel en blanco</translation>
    </message>
    <message>
        <source>Missing title</source>
        <translation>Falta el título</translation>
    </message>
    <message>
        <source>Title beside children&apos;s words</source>
        <translation>Título frente a palabras infantiles</translation>
    </message>
    <message>
        <source>Air under the title</source>
        <translation>Aire bajo el título</translation>
    </message>
    <message>
        <source>Sharpness from one metre</source>
        <translation>Nitidez desde un metro</translation>
    </message>
    <message>
        <source>Sharpness from nearby</source>
        <translation>Nitidez desde cerca</translation>
    </message>
    <message>
        <source>Largest picture beside the next</source>
        <translation>La imagen mayor frente a la siguiente</translation>
    </message>
    <message>
        <source>Share of a work that is shown</source>
        <translation>Parte de un trabajo que se muestra</translation>
    </message>
    <message>
        <source>Share of the panel for its drawing</source>
        <translation>Parte del panel para su dibujo</translation>
    </message>
    <message>
        <source>Unevenness of a mat</source>
        <translation>Desigualdad de un paspartú</translation>
    </message>
    <message>
        <source>Air around a marked part</source>
        <translation>Aire alrededor de una parte marcada</translation>
    </message>
    <message>
        <source>Missing caption</source>
        <translation>Falta el pie de foto</translation>
    </message>
    <message>
        <source>The same caption again</source>
        <translation>El mismo pie otra vez</translation>
    </message>
    <message>
        <source>Lines of a caption</source>
        <translation>Líneas de un pie de foto</translation>
    </message>
    <message>
        <source>Caption from its picture</source>
        <translation>El pie hasta su imagen</translation>
    </message>
    <message>
        <source>Air between two answers</source>
        <translation>Aire entre dos respuestas</translation>
    </message>
    <message>
        <source>Shortest last line</source>
        <translation>Última línea más corta</translation>
    </message>
    <message>
        <source>Hyphens in words</source>
        <translation>Guiones en palabras</translation>
    </message>
    <message>
        <source>Joined letters</source>
        <translation>Letras unidas</translation>
    </message>
    <message>
        <source>Words that are not the child&apos;s</source>
        <translation>Palabras que no se dijeron</translation>
    </message>
    <message>
        <source>Missing credits</source>
        <translation>Faltan los créditos</translation>
    </message>
    <message>
        <source>Missing day</source>
        <translation>Falta el día</translation>
    </message>
    <message>
        <source>Pieces without permission</source>
        <translation>Piezas sin permiso</translation>
    </message>
    <message>
        <source>Names without permission</source>
        <translation>Nombres sin permiso</translation>
    </message>
    <message>
        <source>Children not heard on it</source>
        <translation>Voces que faltan en ella</translation>
    </message>
    <message>
        <source>Marked parts cut by a seam</source>
        <translation>Partes marcadas que corta una unión</translation>
    </message>
    <message>
        <source>Works cut by a seam</source>
        <translation>Trabajos que corta una unión</translation>
    </message>
    <message>
        <source>Lines of text cut by a seam</source>
        <translation>Líneas de texto que corta una unión</translation>
    </message>
    <message>
        <source>0.7 of the 16 arcminutes NUREG-0700 asks of capitals; the 0.7 is common practice, no source</source>
        <translation>0,7 de los 16 minutos de arco que NUREG-0700 pide a las mayúsculas; el 0,7 es práctica común, sin fuente</translation>
    </message>
    <message>
        <source>NUREG-0700 rev. 2, 1.3.1-4 (minimum 16 arcminutes), from eyes at their height</source>
        <translation>NUREG-0700 rev. 2, 1.3.1-4 (mínimo 16 minutos de arco), desde ojos a su altura</translation>
    </message>
    <message>
        <source>grade 6 to 8: a US school district&apos;s policy for writing to families</source>
        <translation>grado 6 a 8: norma de un distrito escolar de EE. UU. para escribir a las familias</translation>
    </message>
    <message>
        <source>the words as they were taken down in this book</source>
        <translation>las palabras tal como se anotaron en este libro</translation>
    </message>
    <message>
        <source>school grade</source>
        <translation>grado escolar</translation>
    </message>
    <message>
        <source>marked parts</source>
        <translation>partes marcadas</translation>
    </message>
    <message>
        <source>works</source>
        <translation>trabajos</translation>
    </message>
    <message>
        <source>children&apos;s eyes</source>
        <translation>ojos infantiles</translation>
    </message>
    <message>
        <source>grown-ups&apos; eyes</source>
        <translation>ojos adultos</translation>
    </message>
    <message>
        <source>Where it hangs on %1, %2 is hard to read from %3, %4 cm above the floor.</source>
        <translation>Donde cuelga en %1, %2 cuesta leerse desde %3, a %4 cm del suelo.</translation>
    </message>
    <message>
        <source>%1 has the caption of another picture; what is to be seen in this one?</source>
        <translation>%1 tiene el pie de otra imagen; ¿qué se ve en esta?</translation>
    </message>
    <message>
        <source>What is drawn of %1 is not what the child said.</source>
        <translation>Lo que se dibuja de %1 no es lo que se dijo.</translation>
    </message>
    <message>
        <source>What was shortened of %1 is no longer in the words taken down; all of them are shown.</source>
        <translation>Lo acortado de %1 ya no está en las palabras anotadas; se muestran todas.</translation>
    </message>
    <message>
        <source>set here; %1 is usual (%2)</source>
        <translation>puesto aquí; lo habitual es %1 (%2)</translation>
    </message>
    <message>
        <source>On %1, a seam goes through a marked part of %2.</source>
        <translation>En %1, una unión atraviesa una parte marcada de %2.</translation>
    </message>
    <message>
        <source>On %1, a seam goes through a child&apos;s work: %2.</source>
        <translation>En %1, una unión atraviesa un trabajo infantil: %2.</translation>
    </message>
    <message>
        <source>On %1, seams go through lines of text. A larger overlap lets them move.</source>
        <translation>En %1, las uniones atraviesan líneas de texto. Una superposición mayor deja moverlas.</translation>
    </message>
    <message>
        <source>The small letters of %1 are %2 mm high; from %3 m they should be %4 mm.</source>
        <translation>Las minúsculas de %1 miden %2 mm; desde %3 m deberían medir %4 mm.</translation>
    </message>
    <message>
        <source>%1 reads like school grade %2; shorter sentences and words reach more families.</source>
        <translation>%1 se lee como el grado escolar %2; frases y palabras más cortas llegan a más familias.</translation>
    </message>
    <message>
        <source>%1 shows what hung there. %2</source>
        <translation>%1 muestra lo que colgaba allí. %2</translation>
    </message>
    <message>
        <source>%1, panel %2</source>
        <translation>%1, panel %2</translation>
    </message>
    <message>
        <source>The middle of %1 hangs at %2 cm, above grown-ups&apos; eyes (%3 to %4 cm).</source>
        <translation>El centro de %1 cuelga a %2 cm, por encima de los ojos adultos (de %3 a %4 cm).</translation>
    </message>
    <message>
        <source>The middle of %1 hangs at %2 cm, below grown-ups&apos; eyes (%3 to %4 cm).</source>
        <translation>El centro de %1 cuelga a %2 cm, por debajo de los ojos adultos (de %3 a %4 cm).</translation>
    </message>
    <message>
        <source>The middle of %1 hangs at %2 cm, above the children&apos;s eyes (%3 to %4 cm).</source>
        <translation>El centro de %1 cuelga a %2 cm, por encima de los ojos infantiles (de %3 a %4 cm).</translation>
    </message>
    <message>
        <source>The middle of %1 hangs at %2 cm, below the children&apos;s eyes (%3 to %4 cm).</source>
        <translation>El centro de %1 cuelga a %2 cm, por debajo de los ojos infantiles (de %3 a %4 cm).</translation>
    </message>
    <message>
        <source>IFC 1030.6, second-hand: nothing over exits, signs, extinguishers</source>
        <translation>IFC 1030.6, de segunda mano: nada sobre salidas, señales ni extintores</translation>
    </message>
    <message>
        <source>%1 % of this wall is covered, doors and windows counted in; ask your fire authority.</source>
        <translation>El %1 % de esta pared está cubierto, contando puertas y ventanas; preguntar a la autoridad contra incendios.</translation>
    </message>
    <message>
        <source>Panels hang in one run of %1 cm without a gap of %2 cm; ask your fire authority.</source>
        <translation>Los paneles cuelgan en una fila de %1 cm sin un hueco de %2 cm; preguntar a la autoridad contra incendios.</translation>
    </message>
    <message>
        <source>%1 reaches %2 cm over the edge of the wall.</source>
        <translation>%1 sobresale %2 cm del borde de la pared.</translation>
    </message>
    <message>
        <source>%1 hangs over what stays clear at the %2.</source>
        <translation>%1 cuelga sobre lo que queda libre (%2).</translation>
    </message>
    <message>
        <source>%1 stands out %2 cm between knee and head; a cane does not find it. Ask your school.</source>
        <translation>%1 sobresale %2 cm entre la rodilla y la cabeza; un bastón no lo encuentra. Preguntar en la escuela.</translation>
    </message>
    <message>
        <source>2010 ADA Standards 307.2: 27 to 80 in above the floor, 4 in</source>
        <translation>Normas ADA de 2010, 307.2: de 27 a 80 in sobre el suelo, 4 in</translation>
    </message>
    <message>
        <source>door</source>
        <translation>puerta</translation>
    </message>
    <message>
        <source>window</source>
        <translation>ventana</translation>
    </message>
    <message>
        <source>radiator</source>
        <translation>radiador</translation>
    </message>
    <message>
        <source>socket</source>
        <translation>enchufe</translation>
    </message>
    <message>
        <source>switch</source>
        <translation>interruptor</translation>
    </message>
    <message>
        <source>exit sign</source>
        <translation>señal de salida</translation>
    </message>
    <message>
        <source>extinguisher</source>
        <translation>extintor</translation>
    </message>
    <message>
        <source>alarm</source>
        <translation>alarma</translation>
    </message>
    <message>
        <source>Chicago Municipal Code 15-4-620, of all walls of a room</source>
        <translation>Código municipal de Chicago 15-4-620, de todas las paredes de una sala</translation>
    </message>
    <message>
        <source>IFC 2012 807.1.2, material that passed NFPA 701, quoted second-hand</source>
        <translation>IFC 2012 807.1.2, material que pasó NFPA 701, citado de segunda mano</translation>
    </message>
    <message>
        <source>NFPA 101 for schools and day care without sprinklers, NFPA Journal 2012</source>
        <translation>NFPA 101 para escuelas y guarderías sin rociadores, NFPA Journal 2012</translation>
    </message>
    <message>
        <source>IFC 2012 807.4.3.2, school corridors, quoted second-hand</source>
        <translation>IFC 2012 807.4.3.2, pasillos de escuela, citado de segunda mano</translation>
    </message>
    <message>
        <source>NFPA 101 for schools and day care with sprinklers, NFPA Journal 2012</source>
        <translation>NFPA 101 para escuelas y guarderías con rociadores, NFPA Journal 2012</translation>
    </message>
    <message>
        <source>Building Bulletin 100 (2007) 3.1.6, quoted second-hand</source>
        <translation>Building Bulletin 100 (2007) 3.1.6, citado de segunda mano</translation>
    </message>
    <message>
        <source>0.92 x stature, 5th to 95th percentile, CDC growth charts 2000 (an estimate)</source>
        <translation>0,92 x estatura, percentiles 5 a 95, tablas de crecimiento CDC 2000 (una estimación)</translation>
    </message>
    <message>
        <source>British women, 5th percentile, to men, 95th, floor to inner corner of the eye (a university&apos;s notes on anthropometry)</source>
        <translation>De mujeres británicas, percentil 5, a hombres, 95, del suelo al lagrimal (apuntes de antropometría de una universidad)</translation>
    </message>
    <message>
        <source>And %1 more.</source>
        <translation>Y %1 más.</translation>
    </message>
    <message>
        <source>%1 shows a name that hung there: %2, with no permission to be named %3.</source>
        <translation>%1 muestra un nombre que colgaba allí: %2, sin permiso para que se le nombre %3.</translation>
    </message>
    <message>
        <source>%1 shows a name that hung there: %2, seen in it or in another photo too, with no permission to be seen and named together %3.</source>
        <translation>%1 muestra un nombre que colgaba allí: %2, que también se ve en ella o en otra foto, sin permiso para mostrar foto y nombre juntos %3.</translation>
    </message>
    <message>
        <source>%1 shows an exact age that hung there: %2, seen in it or in another photo too; %3 no exact age goes with name and photo.</source>
        <translation>%1 muestra una edad exacta que colgaba allí: %2, que también se ve en ella o en otra foto; %3 ninguna edad exacta acompaña al nombre y la foto.</translation>
    </message>
    <message>
        <source>the sheets to answer on %1 of %2</source>
        <translation>las hojas para responder %1, del %2</translation>
    </message>
    <message>
        <source>the panels %1 printed on %2</source>
        <translation>los paneles %1 impresos el %2</translation>
    </message>
    <message>
        <source>the sheets to answer on for %1, printed on %2</source>
        <translation>las hojas para responder de %1, impresas el %2</translation>
    </message>
    <message>
        <source>%1: take them down and print them anew.</source>
        <translation>%1: hay que quitarlos e imprimirlos de nuevo.</translation>
    </message>
    <message>
        <source>%1: collect them and print them anew.</source>
        <translation>%1: hay que recogerlas e imprimirlas de nuevo.</translation>
    </message>
    <message>
        <source>%1: make it anew.</source>
        <translation>%1: hay que hacerlo de nuevo.</translation>
    </message>
    <message>
        <source>%1 %2.</source>
        <translation>%1 %2.</translation>
    </message>
    <message>
        <source>cannot be read: the part of this program that reads PDFs is missing</source>
        <translation>no se puede leer: falta la parte de este programa que lee los PDF</translation>
    </message>
    <message>
        <source>cannot be read: no program could be started</source>
        <translation>no se puede leer: no se pudo iniciar ningún programa</translation>
    </message>
    <message>
        <source>is locked with a password; save it without one and add that</source>
        <translation>está protegido con una contraseña; guárdelo sin ella y añada esa copia</translation>
    </message>
    <message>
        <source>is not there</source>
        <translation>no existe</translation>
    </message>
    <message>
        <source>is damaged: the PDF breaks off or was changed</source>
        <translation>está dañado: el PDF se interrumpe o fue modificado</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>no se puede leer</translation>
    </message>
    <message>
        <source>is a PDF without pages</source>
        <translation>es un PDF sin páginas</translation>
    </message>
    <message>
        <source>has %1 pages, and one is wanted here; add it where pictures are gathered</source>
        <translation>tiene %1 páginas y aquí hace falta una sola; añádalo donde se reúnen las imágenes</translation>
    </message>
    <message>
        <source>has %1 pages; %2 is the most that is read at once, so divide it first</source>
        <translation>tiene %1 páginas; se leen %2 como máximo de una vez, así que divídalo antes</translation>
    </message>
    <message>
        <source>is damaged: its pages cannot be told apart</source>
        <translation>está dañado: no se distinguen sus páginas</translation>
    </message>
    <message>
        <source>is blank and was left out</source>
        <translation>está en blanco y se dejó fuera</translation>
    </message>
    <message>
        <source>is larger than any paper that is read (10 square metres)</source>
        <translation>es mayor que cualquier papel que se lee (10 metros cuadrados)</translation>
    </message>
    <message>
        <source>needs more room on the disk</source>
        <translation>necesita más espacio en el disco</translation>
    </message>
    <message>
        <source>%1, page %2</source>
        <translation>%1, página %2</translation>
    </message>
    <message>
        <source>%1, page %2, %3.</source>
        <translation>%1, página %2, %3.</translation>
    </message>
    <message>
        <source>is damaged: from page %1 on it cannot be read</source>
        <translation>está dañado: no se puede leer a partir de la página %1</translation>
    </message>
    <message>
        <source>is larger than %1 MB</source>
        <translation>ocupa más de %1 MB</translation>
    </message>
    <message>
        <source>is no PDF</source>
        <translation>no es un PDF</translation>
    </message>
    <message>
        <source>is damaged: reading it fails</source>
        <translation>está dañado: falla al leerlo</translation>
    </message>
    <message>
        <source>there is no such experience</source>
        <translation>no existe esa experiencia</translation>
    </message>
    <message>
        <source>is damaged: its beginning cannot be read</source>
        <translation>está dañado: no se puede leer su comienzo</translation>
    </message>
    <message>
        <source>needs too much memory</source>
        <translation>necesita demasiada memoria</translation>
    </message>
    <message>
        <source>is not a folder</source>
        <translation>no es una carpeta</translation>
    </message>
    <message>
        <source>cannot be opened</source>
        <translation>no se puede abrir</translation>
    </message>
    <message>
        <source>is damaged and cannot be read (%1)</source>
        <translation>está dañado y no se puede leer (%1)</translation>
    </message>
    <message>
        <source>is damaged: it names no picture</source>
        <translation>está dañado: no contiene ninguna imagen</translation>
    </message>
    <message>
        <source>is damaged and cannot be read</source>
        <translation>está dañado y no se puede leer</translation>
    </message>
    <message>
        <source>it holds %1 pictures; only the first is used</source>
        <translation>contiene %1 imágenes; solo se usa la primera</translation>
    </message>
    <message>
        <source>its printing colours (CMYK) can only be shown roughly</source>
        <translation>sus colores de imprenta (CMYK) solo se muestran de forma aproximada</translation>
    </message>
    <message>
        <source>is empty</source>
        <translation>está vacío</translation>
    </message>
    <message>
        <source>is damaged: the file breaks off or was changed</source>
        <translation>está dañado: el archivo se interrumpe o fue modificado</translation>
    </message>
    <message>
        <source>the file is damaged; part of the picture may be grey</source>
        <translation>el archivo está dañado; parte de la imagen puede verse gris</translation>
    </message>
    <message>
        <source>breaks off before the picture begins</source>
        <translation>se interrumpe antes de que empiece la imagen</translation>
    </message>
    <message>
        <source>is a JPEG with more than 8 bits a colour, which is not read</source>
        <translation>es un JPEG con más de 8 bits por color, que no se lee</translation>
    </message>
    <message>
        <source>is no picture of a kind that is read</source>
        <translation>no es una imagen de un tipo que se lea</translation>
    </message>
    <message>
        <source>has %1 million pixels; %2 million is the most that is read</source>
        <translation>tiene %1 millones de píxeles; se leen %2 millones como máximo</translation>
    </message>
    <message>
        <source>claims far more pixels than a file of its size can hold</source>
        <translation>dice tener muchos más píxeles de los que caben en un archivo de su tamaño</translation>
    </message>
    <message>
        <source>is too large a file</source>
        <translation>es un archivo demasiado grande</translation>
    </message>
    <message>
        <source>is too large for the memory</source>
        <translation>es demasiado grande para la memoria</translation>
    </message>
    <message>
        <source>contradicts itself about its size</source>
        <translation>se contradice sobre su tamaño</translation>
    </message>
    <message>
        <source>is a web page, not a picture</source>
        <translation>es una página web, no una imagen</translation>
    </message>
    <message>
        <source>is a drawing in XML (perhaps SVG), a kind that is not read</source>
        <translation>es un dibujo en XML (quizá SVG), un tipo que no se lee</translation>
    </message>
    <message>
        <source>is a GIF, a kind that is not read</source>
        <translation>es un GIF, un tipo que no se lee</translation>
    </message>
    <message>
        <source>is a film or a kind of picture that is not read</source>
        <translation>es un vídeo o un tipo de imagen que no se lee</translation>
    </message>
    <message>
        <source>is a bitmap of a kind that is not read</source>
        <translation>es un mapa de bits de un tipo que no se lee</translation>
    </message>
    <message>
        <source>holds text, not a picture</source>
        <translation>contiene texto, no una imagen</translation>
    </message>
    <message>
        <source>is no picture of a kind that is read (JPEG, PNG, WebP, TIFF, HEIC)</source>
        <translation>no es una imagen de un tipo que se lea (JPEG, PNG, WebP, TIFF, HEIC)</translation>
    </message>
    <message>
        <source>has corners that go round no page</source>
        <translation>tiene esquinas que no rodean ninguna página</translation>
    </message>
    <message>
        <source>is a PDF, not a picture</source>
        <translation>es un PDF, no una imagen</translation>
    </message>
    <message>
        <source>the hanging list of %1, printed on %2</source>
        <translation>la lista para colgar de %1, impresa el %2</translation>
    </message>
    <message>
        <source>%1: throw it away and print it anew.</source>
        <translation>%1: tírela e imprímala de nuevo.</translation>
    </message>
    <message>
        <source>is damaged: the list of its parts is broken</source>
        <translation>está dañado: la lista de sus partes está rota</translation>
    </message>
    <message>
        <source>is damaged: a picture in it is made of itself, or of too many</source>
        <translation>está dañado: una imagen que contiene está hecha de sí misma, o de demasiadas</translation>
    </message>
    <message>
        <source>The language &quot;%1&quot;</source>
        <translation>El idioma «%1»</translation>
    </message>
    <message>
        <source>write its code (BCP 47), as en, es or pt-BR</source>
        <translation>escribir su código (BCP 47), como en, es o pt-BR</translation>
    </message>
    <message>
        <source>About the book</source>
        <translation>Sobre el libro</translation>
    </message>
    <message>
        <source>en</source>
        <comment>the language these sentences are written in</comment>
        <translation>es</translation>
    </message>
    <message>
        <source>%1 is shown as “%3”: no permission to be named %2.</source>
        <translation>%1 aparece como «%3»: no tiene permiso para que se diga su nombre %2.</translation>
    </message>
    <message>
        <source>%1 is shown as “%3”: seen in a photo on this display, with no permission to be seen and named together %2.</source>
        <translation>%1 aparece como «%3»: sale en una foto de esta exposición, y no tiene permiso para foto y nombre a la vez %2.</translation>
    </message>
    <message>
        <source>%1 (%2 times)</source>
        <translation>%1 (%2 veces)</translation>
    </message>
</context>
<context>
    <name>Sheets</name>
    <message>
        <source>en</source>
        <comment>the language these sentences are written in</comment>
        <translation>es</translation>
    </message>
    <message>
        <source>cut at the left and top ticks, lay on %1 and %2</source>
        <translation>corte por las marcas de la izquierda y de arriba, ponga sobre %1 y %2</translation>
    </message>
    <message>
        <source>cut at the left ticks, lay on %1</source>
        <translation>corte por las marcas de la izquierda, ponga sobre %1</translation>
    </message>
    <message>
        <source>cut at the top ticks, lay on %1</source>
        <translation>corte por las marcas de arriba, ponga sobre %1</translation>
    </message>
    <message>
        <source>start here</source>
        <translation>empiece aquí</translation>
    </message>
    <message>
        <source>stands alone: see how the sheets go together</source>
        <translation>queda sola: vea cómo se unen las hojas</translation>
    </message>
    <message>
        <source>How the sheets go together</source>
        <translation>Cómo se unen las hojas</translation>
    </message>
    <message>
        <source>%1 sheets, %2 in a row</source>
        <translation>%1 hojas, %2 por fila</translation>
    </message>
    <message>
        <source>%1 would stay white and are left out</source>
        <translation>%1 quedarían en blanco y se omiten</translation>
    </message>
    <message>
        <source>This line must measure 100 mm. If it does not, print again at actual size (100 %), or tell the program what it measures.</source>
        <translation>Esta línea debe medir 100 mm. Si no, imprima de nuevo a tamaño real (100 %) o diga al programa cuánto mide.</translation>
    </message>
    <message>
        <source>Begin with A1. Cut each further sheet at its left and top ticks.</source>
        <translation>Empiece por A1. Corte cada hoja siguiente por sus marcas de la izquierda y de arriba.</translation>
    </message>
    <message>
        <source>Lay its cut edge on the ticks of the sheet before and glue it down.</source>
        <translation>Ponga el borde cortado sobre las marcas de la hoja anterior y péguelo.</translation>
    </message>
    <message>
        <source>Panel %1</source>
        <translation>Panel %1</translation>
    </message>
</context>
<context>
    <name>StepBack</name>
    <message>
        <source>a three-year-old</source>
        <translation>alguien de tres años</translation>
    </message>
    <message>
        <source>a five-year-old</source>
        <translation>alguien de cinco años</translation>
    </message>
    <message>
        <source>an eight-year-old</source>
        <translation>alguien de ocho años</translation>
    </message>
    <message>
        <source>a grown-up</source>
        <translation>una persona adulta</translation>
    </message>
    <message>
        <source>a grown-up, seated</source>
        <translation>una persona adulta sentada</translation>
    </message>
    <message>
        <source>usual sight</source>
        <translation>vista habitual</translation>
    </message>
    <message>
        <source>somewhat weaker sight</source>
        <translation>vista algo más débil</translation>
    </message>
    <message>
        <source>weaker sight</source>
        <translation>vista más débil</translation>
    </message>
    <message>
        <source>much weaker sight</source>
        <translation>vista mucho más débil</translation>
    </message>
</context>
<context>
    <name>VoiceMark</name>
    <message>
        <source>said</source>
        <translation>dijo</translation>
    </message>
    <message>
        <source>wrote</source>
        <translation>escribió</translation>
    </message>
    <message>
        <source>drew</source>
        <translation>dibujó</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>en señas</translation>
    </message>
    <message>
        <source>pointed</source>
        <translation>señaló</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>aún no</translation>
    </message>
    <message>
        <source>passes for now</source>
        <translation>por ahora pasa</translation>
    </message>
    <message>
        <source>noted why not</source>
        <translation>anotado por qué no</translation>
    </message>
</context>
<context>
    <name>WallPicture</name>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>suelo</translation>
    </message>
    <message>
        <source>%1 to %2 cm</source>
        <translation>de %1 a %2 cm</translation>
    </message>
    <message>
        <source>Grown-ups&apos; eyes</source>
        <translation>Ojos adultos</translation>
    </message>
    <message>
        <source>standing, 5th to 95th</source>
        <translation>de pie, percentil 5 a 95</translation>
    </message>
    <message>
        <source>Children&apos;s eyes</source>
        <translation>Ojos infantiles</translation>
    </message>
    <message>
        <source>%1 to %2 years, estimate</source>
        <translation>de %1 a %2 años, estimación</translation>
    </message>
    <message>
        <source>%1 mm from the left</source>
        <translation>%1 mm desde la izquierda</translation>
    </message>
    <message>
        <source>%1 mm up</source>
        <translation>%1 mm de altura</translation>
    </message>
</context>
<context>
    <name>WhoAnswers</name>
    <message>
        <source>%1, thinking on</source>
        <translation>%1, que sigue pensando</translation>
    </message>
    <message>
        <source>%1, answering %2</source>
        <translation>%1, en respuesta a %2</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::AnswerColumn</name>
    <message>
        <source>Exact words</source>
        <translation>Palabras exactas</translation>
    </message>
    <message>
        <source>Worked up together</source>
        <translation>Redactado en conjunto</translation>
    </message>
    <message>
        <source>Read back</source>
        <translation>Releído en voz alta</translation>
    </message>
    <message>
        <source>Taken down by %1</source>
        <translation>Anotado por %1</translation>
    </message>
    <message>
        <source>Type what is said, as it is said. Nothing is suggested, finished or corrected.</source>
        <translation>Escribir lo que se dice, tal como se dice. Nada se sugiere, se completa ni se corrige.</translation>
    </message>
    <message>
        <source>Go to the question: %1</source>
        <translation>Ir a la pregunta: %1</translation>
    </message>
    <message>
        <source>Passes for now. Asked on %1.</source>
        <translation>Por ahora pasa. Se preguntó el %1.</translation>
    </message>
    <message>
        <source>%1 Noted on %2.</source>
        <translation>%1 Anotado el %2.</translation>
    </message>
    <message>
        <source>Enter: take these words up again</source>
        <translation>Intro: retomar estas palabras</translation>
    </message>
    <message>
        <source>First said: %1</source>
        <translation>Dicho al principio: %1</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::AnswerEditor</name>
    <message>
        <source>Exact words</source>
        <translation>Palabras exactas</translation>
    </message>
    <message>
        <source>Add the sheet</source>
        <translation>Añadir la hoja</translation>
    </message>
    <message>
        <source>Passes for now</source>
        <translation>Por ahora pasa</translation>
    </message>
    <message>
        <source>Note why not</source>
        <translation>Anotar por qué no</translation>
    </message>
    <message>
        <source>Said</source>
        <translation>Dijo</translation>
    </message>
    <message>
        <source>Wrote</source>
        <translation>Escribió</translation>
    </message>
    <message>
        <source>Drew</source>
        <translation>Dibujó</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>En señas</translation>
    </message>
    <message>
        <source>Pointed</source>
        <translation>Señaló</translation>
    </message>
    <message>
        <source>Alt+%1</source>
        <translation>Alt+%1</translation>
    </message>
    <message>
        <source>The sheet</source>
        <translation>La hoja</translation>
    </message>
    <message>
        <source>Off: made into sentences together with the child. Both are kept.</source>
        <translation>Sin marcar: se hicieron frases junto con el niño o la niña. Se guardan las dos versiones.</translation>
    </message>
    <message>
        <source>Asked, did not want to; not the same as not asked</source>
        <translation>Se preguntó y no quiso; no es lo mismo que no preguntar</translation>
    </message>
    <message>
        <source>Why there is no answer: away this week</source>
        <translation>Por qué no hay respuesta: esta semana no vino</translation>
    </message>
    <message>
        <source>Why there is no answer</source>
        <translation>Por qué no hay respuesta</translation>
    </message>
    <message>
        <source>Keep the note</source>
        <translation>Guardar la nota</translation>
    </message>
    <message>
        <source>Take words down: %1. %2</source>
        <translation>Anotar palabras: %1. %2</translation>
    </message>
    <message>
        <source>Read back to %1</source>
        <translation>Releer a %1</translation>
    </message>
    <message>
        <source>Add the drawing</source>
        <translation>Añadir el dibujo</translation>
    </message>
    <message>
        <source>First said: nothing yet. Now write it together.</source>
        <translation>Dicho al principio: nada aún. Ahora, escribirlo en conjunto.</translation>
    </message>
    <message>
        <source>First said: %1</source>
        <translation>Dicho al principio: %1</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::AskTask</name>
    <message>
        <source>Add a language</source>
        <translation>Añadir un idioma</translation>
    </message>
    <message>
        <source>A set of your own</source>
        <translation>Una serie propia</translation>
    </message>
    <message>
        <source>Sets of questions</source>
        <translation>Series de preguntas</translation>
    </message>
    <message>
        <source>Ready to be taken</source>
        <translation>Listas para usar</translation>
    </message>
    <message>
        <source>asked here</source>
        <translation>se pregunta aquí</translation>
    </message>
    <message>
        <source>Add a question</source>
        <translation>Añadir una pregunta</translation>
    </message>
    <message>
        <source>What do you ...?</source>
        <translation>¿Qué ...?</translation>
    </message>
    <message>
        <source>Name of the set</source>
        <translation>Nombre de la serie</translation>
    </message>
    <message>
        <source>Name of a set</source>
        <translation>Nombre de una serie</translation>
    </message>
    <message>
        <source>What a set suits</source>
        <translation>Para qué va bien una serie</translation>
    </message>
    <message>
        <source>Sense</source>
        <translation>Sentido</translation>
    </message>
    <message>
        <source>Ages</source>
        <translation>Edades</translation>
    </message>
    <message>
        <source>1 answer here belongs to another question and stays with it.</source>
        <translation>1 respuesta de aquí es de otra pregunta y se queda con ella.</translation>
    </message>
    <message>
        <source>%1 answers here belong to other questions and stay with them.</source>
        <translation>%1 respuestas de aquí son de otras preguntas y se quedan con ellas.</translation>
    </message>
    <message>
        <source>Sign beside the question: %1</source>
        <translation>Signo junto a la pregunta: %1</translation>
    </message>
    <message>
        <source>Sign beside a question</source>
        <translation>Signo junto a una pregunta</translation>
    </message>
    <message>
        <source>Ask it earlier</source>
        <translation>Preguntarla antes</translation>
    </message>
    <message>
        <source>Ask it later</source>
        <translation>Preguntarla después</translation>
    </message>
    <message>
        <source>Take the question out</source>
        <translation>Quitar la pregunta</translation>
    </message>
    <message>
        <source>Question %1 in %2</source>
        <translation>Pregunta %1 en %2</translation>
    </message>
    <message>
        <source>Wording of a question</source>
        <translation>Redactar una pregunta</translation>
    </message>
    <message>
        <source>Ask in a further language</source>
        <translation>Preguntar en otro idioma más</translation>
    </message>
    <message>
        <source>Choose, or write its code (BCP 47)</source>
        <translation>Elegir, o escribir su código (BCP 47)</translation>
    </message>
    <message>
        <source>Ask in %1</source>
        <translation>Preguntar en %1</translation>
    </message>
    <message>
        <source>Our questions</source>
        <translation>Nuestras preguntas</translation>
    </message>
    <message>
        <source>Our questions %1</source>
        <translation>Nuestras preguntas %1</translation>
    </message>
    <message>
        <source>Three questions are ready: notice, think, wonder.</source>
        <translation>Hay tres preguntas listas: qué se ve, qué se piensa, qué se quiere saber.</translation>
    </message>
    <message>
        <source>Change them if yours are different.</source>
        <translation>Cambiarlas si aquí se preguntan otras.</translation>
    </message>
    <message>
        <source>Take words down</source>
        <translation>Anotar palabras</translation>
    </message>
    <message>
        <source>1 question</source>
        <translation>1 pregunta</translation>
    </message>
    <message>
        <source>%1 questions</source>
        <translation>%1 preguntas</translation>
    </message>
    <message>
        <source>Changes count from the next answer on.</source>
        <translation>Los cambios valen desde la próxima respuesta.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Not asked here yet.</source>
        <translation>Aquí aún no se pregunta.</translation>
    </message>
    <message>
        <source>Ask these</source>
        <translation>Preguntar estas</translation>
    </message>
    <message>
        <source>%1 here: %2</source>
        <translation>%1 aquí: %2</translation>
    </message>
    <message>
        <source>Picture beside a question</source>
        <translation>Imagen junto a una pregunta</translation>
    </message>
    <message>
        <source>On paper it stands only where everybody in it may be seen in the classroom.</source>
        <translation>En papel aparece solo si todos los que están en ella pueden verse en el aula.</translation>
    </message>
    <message>
        <source>No picture, the sign</source>
        <translation>Sin imagen, el signo</translation>
    </message>
    <message>
        <source>Print sheets to answer on</source>
        <translation>Imprimir hojas para responder</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::BookSheet</name>
    <message>
        <source>Name and language</source>
        <translation>Nombre e idioma</translation>
    </message>
    <message>
        <source>Name of the class</source>
        <translation>Nombre de la clase</translation>
    </message>
    <message>
        <source>Language of its walls</source>
        <translation>Idioma de sus muros</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Choose one, or write its code (BCP 47): en, es, pt-BR.</source>
        <translation>Elegir uno o escribir su código (BCP 47): en, es, pt-BR.</translation>
    </message>
    <message>
        <source>Questions, dates and small print are written in it. What people wrote stays.</source>
        <translation>Las preguntas, las fechas y la letra pequeña se escriben en él. Lo que escribieron las personas no cambia.</translation>
    </message>
    <message>
        <source>Read aloud and printed as such. Dates and small print that Wainscot writes are in English.</source>
        <translation>Se lee en voz alta y se imprime como tal. Las fechas y la letra pequeña que escribe Wainscot salen en inglés.</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::Canvas</name>
    <message>
        <source>Panel</source>
        <translation>Panel</translation>
    </message>
    <message>
        <source>Pinned by you</source>
        <translation>Fijada a mano</translation>
    </message>
    <message>
        <source>trade places</source>
        <translation>cambiar de lugar</translation>
    </message>
    <message>
        <source>here</source>
        <translation>aquí</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::CaptureDesk</name>
    <message>
        <source>%1&apos;s words</source>
        <translation>Palabras de %1</translation>
    </message>
    <message>
        <source>%1 passes for now</source>
        <translation>%1 pasa por ahora</translation>
    </message>
    <message>
        <source>Why not: %1</source>
        <translation>Por qué no: %1</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::CellNote</name>
    <message>
        <source>an unknown day</source>
        <translation>día desconocido</translation>
    </message>
    <message>
        <source>Show it</source>
        <translation>Ver</translation>
    </message>
    <message>
        <source>Name, birth, languages</source>
        <translation>Nombre, nacimiento, idiomas</translation>
    </message>
    <message>
        <source>said by</source>
        <translation>lo dijo</translation>
    </message>
    <message>
        <source>her mother</source>
        <translation>su madre</translation>
    </message>
    <message>
        <source>Who said so</source>
        <translation>Quién lo dijo</translation>
    </message>
    <message>
        <source>on</source>
        <translation>el</translation>
    </message>
    <message>
        <source>On which day</source>
        <translation>Qué día</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>Withdrawn</source>
        <translation>Retirado</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Sin decir</translation>
    </message>
    <message>
        <source>%1, for %2: %3 %4</source>
        <translation>%1, para %2: %3, %4</translation>
    </message>
    <message>
        <source>allowed</source>
        <translation>con permiso</translation>
    </message>
    <message>
        <source>Name, birth, languages: %1</source>
        <translation>Nombre, nacimiento, idiomas: %1</translation>
    </message>
    <message>
        <source>Nobody has noted who said so. Space changes what is allowed.</source>
        <translation>Nadie ha anotado quién lo dijo. Espacio cambia lo permitido.</translation>
    </message>
    <message>
        <source>Noted on %1.</source>
        <translation>Anotado (%1).</translation>
    </message>
    <message>
        <source>%1 said so on %2.</source>
        <translation>Lo dijo %1 (%2).</translation>
    </message>
    <message>
        <source>It had been allowed since %1.</source>
        <translation>Antes había permiso (desde: %1).</translation>
    </message>
    <message>
        <source>1 display holds</source>
        <translation>1 exposición incluye a</translation>
    </message>
    <message>
        <source>%1 displays hold</source>
        <translation>%1 exposiciones incluyen a</translation>
    </message>
    <message>
        <source>%1: show it</source>
        <translation>%1: ver</translation>
    </message>
    <message>
        <source>%1. What is not allowed is not printed; look at what is left.</source>
        <translation>%1. Lo no permitido no se imprime; conviene mirar lo que queda.</translation>
    </message>
    <message>
        <source>To be made anew: %1.</source>
        <translation>Por hacer de nuevo: %1.</translation>
    </message>
    <message>
        <source>%1 answers of families are chosen</source>
        <translation>Se han elegido %1 respuestas de familias</translation>
    </message>
    <message>
        <source>What you choose goes to all of them, in one step.</source>
        <translation>Lo que se elija vale para todas, en un solo paso.</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::CheckPage</name>
    <message>
        <source>The whole display</source>
        <translation>Toda la exposición</translation>
    </message>
    <message>
        <source>Panel %1</source>
        <translation>Panel %1</translation>
    </message>
    <message>
        <source>There is no panel yet. Make one in Compose first.</source>
        <translation>Aún no hay ningún panel. Antes hay que hacer uno en Componer.</translation>
    </message>
    <message>
        <source>Nothing was found. Measured: type, contrast, pictures, edges, permissions.</source>
        <translation>Sin avisos. Se midieron: letra, contraste, imágenes, bordes, permisos.</translation>
    </message>
    <message>
        <source>%1. Yours to change.</source>
        <translation>%1. Se puede cambiar.</translation>
    </message>
    <message>
        <source>Left as it is: %1</source>
        <translation>Se deja tal cual: %1</translation>
    </message>
    <message>
        <source>Go to it</source>
        <translation>Ir ahí</translation>
    </message>
    <message>
        <source>Leave it, and say why</source>
        <translation>Dejarlo y decir por qué</translation>
    </message>
    <message>
        <source>Another reason</source>
        <translation>Otra razón</translation>
    </message>
    <message>
        <source>Your reason is kept with the panel.</source>
        <translation>La razón se guarda con el panel.</translation>
    </message>
    <message>
        <source>Nothing was found.</source>
        <translation>No se encontró nada.</translation>
    </message>
    <message>
        <source>1 thing to mend first</source>
        <translation>1 cosa por corregir antes</translation>
    </message>
    <message>
        <source>%1 things to mend first</source>
        <translation>%1 cosas por corregir antes</translation>
    </message>
    <message>
        <source>%1 to look at</source>
        <translation>%1 por revisar</translation>
    </message>
    <message>
        <source>%1 left as they are</source>
        <translation>%1 tal cual</translation>
    </message>
    <message>
        <source>1 note</source>
        <translation>1 nota</translation>
    </message>
    <message>
        <source>%1 notes</source>
        <translation>%1 notas</translation>
    </message>
    <message>
        <source>This one is yours to decide.</source>
        <translation>Esto lo decide usted.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1 more children were heard and do not speak here</source>
        <translation>%1 más fueron escuchados y no hablan aquí</translation>
    </message>
    <message>
        <source>All limits and who set them</source>
        <translation>Todos los límites y quién los puso</translation>
    </message>
    <message>
        <source>Change the limit</source>
        <translation>Cambiar el límite</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::ChildList</name>
    <message>
        <source>Next to listen to</source>
        <translation>Por escuchar</translation>
    </message>
    <message>
        <source>Heard on every question</source>
        <translation>Con todas las preguntas</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::ChildRow</name>
    <message>
        <source>Take words down: %1</source>
        <translation>Anotar palabras: %1</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::ChildSheet</name>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Shown on a wall as</source>
        <translation>En la pared, como</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>Nacimiento</translation>
    </message>
    <message>
        <source>2021-04-17 or 2021-04; may stay empty</source>
        <translation>2021-04-17 o 2021-04; puede quedar vacío</translation>
    </message>
    <message>
        <source>Languages</source>
        <translation>Idiomas</translation>
    </message>
    <message>
        <source>Portuguese and some English</source>
        <translation>Portugués y algo de inglés</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Dejarla</translation>
    </message>
    <message>
        <source>%1 (years;months) today</source>
        <translation>%1 (años;meses) hoy</translation>
    </message>
    <message>
        <source>Without a date, no age is shown.</source>
        <translation>Sin fecha no se muestra la edad.</translation>
    </message>
    <message>
        <source>Year and month, then the day: 2021-04-17.</source>
        <translation>Año y mes, luego el día: 2021-04-17.</translation>
    </message>
    <message>
        <source>About %1</source>
        <translation>Datos de %1</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::ClassTask</name>
    <message>
        <source>Who is in your class? Type a name, or paste the list.</source>
        <translation>¿Quién está en la clase? Escribir un nombre, o pegar la lista.</translation>
    </message>
    <message>
        <source>What is allowed</source>
        <translation>Lo permitido</translation>
    </message>
    <message>
        <source>A name; Enter adds the child</source>
        <translation>Un nombre; Intro lo añade</translation>
    </message>
    <message>
        <source>Add a child: name</source>
        <translation>Añadir un niño o niña: nombre</translation>
    </message>
    <message>
        <source>From a file</source>
        <translation>Desde un archivo</translation>
    </message>
    <message>
        <source>Paste a list</source>
        <translation>Pegar una lista</translation>
    </message>
    <message>
        <source>Add a child</source>
        <translation>Añadir un niño o niña</translation>
    </message>
    <message>
        <source>There is no name in it. A list has a name in each line.</source>
        <translation>No contiene ningún nombre. Una lista tiene un nombre en cada línea.</translation>
    </message>
    <message>
        <source>Add %1</source>
        <translation>Añadir a %1</translation>
    </message>
    <message>
        <source>Add %1 children</source>
        <translation>Añadir %1 niños y niñas</translation>
    </message>
    <message>
        <source>%1 of %2 were in the class already.</source>
        <translation>%1 de %2 ya estaban en la clase.</translation>
    </message>
    <message>
        <source>%1 answers of families</source>
        <translation>%1 respuestas de familias</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Nobody is in the class yet.</source>
        <translation>Aún no hay nadie en la clase.</translation>
    </message>
    <message>
        <source>Not said counts as no. Nothing is shown that is not allowed.</source>
        <translation>Lo no dicho cuenta como no. No se muestra nada que no esté permitido.</translation>
    </message>
    <message>
        <source>1 child.</source>
        <translation>1 niño o niña.</translation>
    </message>
    <message>
        <source>%1 children.</source>
        <translation>%1 niños y niñas.</translation>
    </message>
    <message>
        <source>Every family has answered.</source>
        <translation>Todas las familias han respondido.</translation>
    </message>
    <message>
        <source>1 answer from a family is missing.</source>
        <translation>Falta 1 respuesta de una familia.</translation>
    </message>
    <message>
        <source>%1 answers from families are missing.</source>
        <translation>Faltan %1 respuestas de las familias.</translation>
    </message>
    <message>
        <source>Take words down</source>
        <translation>Anotar palabras</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::ComposePlace</name>
    <message>
        <source>Write</source>
        <translation>Escribir</translation>
    </message>
    <message>
        <source>All the words</source>
        <translation>Todas las palabras</translation>
    </message>
    <message>
        <source>Bigger</source>
        <translation>Agrandar</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Reducir</translation>
    </message>
    <message>
        <source>Crop</source>
        <translation>Recortar</translation>
    </message>
    <message>
        <source>Turn, straighten, cover</source>
        <translation>Girar, enderezar, tapar</translation>
    </message>
    <message>
        <source>Swap</source>
        <translation>Cambiar de lugar</translation>
    </message>
    <message>
        <source>Pin here</source>
        <translation>Fijar aquí</translation>
    </message>
    <message>
        <source>Take off</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Once more</source>
        <translation>Duplicar</translation>
    </message>
    <message>
        <source>Say who is in it</source>
        <translation>Decir quién sale</translation>
    </message>
    <message>
        <source>Name who is in it</source>
        <translation>Poner los nombres</translation>
    </message>
    <message>
        <source>Why it is here</source>
        <translation>Por qué está aquí</translation>
    </message>
    <message>
        <source>Left edges</source>
        <translation>Bordes izquierdos</translation>
    </message>
    <message>
        <source>Centres</source>
        <translation>Centros en columna</translation>
    </message>
    <message>
        <source>Right edges</source>
        <translation>Bordes derechos</translation>
    </message>
    <message>
        <source>Top edges</source>
        <translation>Bordes superiores</translation>
    </message>
    <message>
        <source>Middles</source>
        <translation>Centros en fila</translation>
    </message>
    <message>
        <source>Feet</source>
        <translation>Bordes inferiores</translation>
    </message>
    <message>
        <source>Even across</source>
        <translation>Igualar a lo ancho</translation>
    </message>
    <message>
        <source>Even down</source>
        <translation>Igualar a lo alto</translation>
    </message>
    <message>
        <source>Arrange only these</source>
        <translation>Ordenar solo estas</translation>
    </message>
    <message>
        <source>Keep together</source>
        <translation>Mantener juntas</translation>
    </message>
    <message>
        <source>Start a new panel here</source>
        <translation>Empezar aquí otro panel</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Levantar</translation>
    </message>
    <message>
        <source>Take all in hand</source>
        <translation>Tomar todo en la mano</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Copiar</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Cortar</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Pegar</translation>
    </message>
    <message>
        <source>To the panel before</source>
        <translation>Al panel anterior</translation>
    </message>
    <message>
        <source>To the panel after</source>
        <translation>Al panel siguiente</translation>
    </message>
    <message>
        <source>Arrange again</source>
        <translation>Ordenar de nuevo</translation>
    </message>
    <message>
        <source>Arrange the whole display</source>
        <translation>Ordenar toda la exposición</translation>
    </message>
    <message>
        <source>Three other ways</source>
        <translation>Otras tres maneras</translation>
    </message>
    <message>
        <source>Propose a panel anew</source>
        <translation>Proponer de nuevo un panel</translation>
    </message>
    <message>
        <source>New panel</source>
        <translation>Panel nuevo</translation>
    </message>
    <message>
        <source>Name this panel</source>
        <translation>Dar nombre a este panel</translation>
    </message>
    <message>
        <source>This panel once more</source>
        <translation>Duplicar este panel</translation>
    </message>
    <message>
        <source>Take this panel down</source>
        <translation>Descolgar este panel</translation>
    </message>
    <message>
        <source>Lock this panel</source>
        <translation>Bloquear este panel</translation>
    </message>
    <message>
        <source>How this display came about</source>
        <translation>Cómo se hizo esta exposición</translation>
    </message>
    <message>
        <source>Kinds of panel</source>
        <translation>Tipos de panel</translation>
    </message>
    <message>
        <source>Keep this panel as a kind of your own...</source>
        <translation>Guardar este panel como tipo propio...</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Colores</translation>
    </message>
    <message>
        <source>Letters</source>
        <translation>Letras</translation>
    </message>
    <message>
        <source>Colours of this piece</source>
        <translation>Colores de esta pieza</translation>
    </message>
    <message>
        <source>Letters of this piece</source>
        <translation>Letras de esta pieza</translation>
    </message>
    <message>
        <source>Next finding</source>
        <translation>Aviso siguiente</translation>
    </message>
    <message>
        <source>Finding before</source>
        <translation>Aviso anterior</translation>
    </message>
    <message>
        <source>What you have</source>
        <translation>Lo que hay</translation>
    </message>
    <message>
        <source>Find in what you have</source>
        <translation>Buscar en «Lo que hay»</translation>
    </message>
    <message>
        <source>Whole panel</source>
        <translation>Panel entero</translation>
    </message>
    <message>
        <source>Nearer</source>
        <translation>Acercar</translation>
    </message>
    <message>
        <source>Further</source>
        <translation>Alejar</translation>
    </message>
    <message>
        <source>True size</source>
        <translation>Tamaño real</translation>
    </message>
    <message>
        <source>Step back</source>
        <translation>Ver desde lejos</translation>
    </message>
    <message>
        <source>Rulers</source>
        <translation>Reglas</translation>
    </message>
    <message>
        <source>Inches</source>
        <translation>Pulgadas</translation>
    </message>
    <message>
        <source>Copied.</source>
        <translation>Copiado.</translation>
    </message>
    <message>
        <source>Copied %1 pieces.</source>
        <translation>%1 piezas copiadas.</translation>
    </message>
    <message>
        <source>There is nothing to paste that can hang on a panel.</source>
        <translation>No hay nada para pegar que se pueda colgar en un panel.</translation>
    </message>
    <message>
        <source>There is no panel on that side.</source>
        <translation>No hay ningún panel de ese lado.</translation>
    </message>
    <message>
        <source>If you let go here</source>
        <translation>Al soltar aquí</translation>
    </message>
    <message>
        <source>It goes onto that panel, to a free place.</source>
        <translation>Va a ese panel, a un lugar libre.</translation>
    </message>
    <message>
        <source>Trades places with %1.</source>
        <translation>Cambia de lugar con %1.</translation>
    </message>
    <message>
        <source>Hold still to see what makes room.</source>
        <translation>Sin mover la mano se ve qué deja espacio.</translation>
    </message>
    <message>
        <source>Nobody to recognise</source>
        <translation>No se reconoce a nadie</translation>
    </message>
    <message>
        <source>On the panel: %1</source>
        <translation>En el panel: %1</translation>
    </message>
    <message>
        <source>Before all this</source>
        <translation>Antes de todo esto</translation>
    </message>
    <message>
        <source>as it is now</source>
        <translation>como está ahora</translation>
    </message>
    <message>
        <source>1 step back</source>
        <translation>1 paso atrás</translation>
    </message>
    <message>
        <source>%1 steps back</source>
        <translation>%1 pasos atrás</translation>
    </message>
    <message>
        <source>One way</source>
        <translation>Una manera</translation>
    </message>
    <message>
        <source>Another way</source>
        <translation>Otra manera</translation>
    </message>
    <message>
        <source>A third way</source>
        <translation>Una tercera manera</translation>
    </message>
    <message>
        <source>1 piece stands elsewhere</source>
        <translation>1 pieza cambia de lugar</translation>
    </message>
    <message>
        <source>%1 pieces stand elsewhere</source>
        <translation>%1 piezas cambian de lugar</translation>
    </message>
    <message>
        <source>Other ways</source>
        <translation>Otras maneras</translation>
    </message>
    <message>
        <source>The same pieces, arranged differently. What is pinned stays.</source>
        <translation>Las mismas piezas, ordenadas de otra manera. Lo fijado se queda.</translation>
    </message>
    <message>
        <source>1 panel</source>
        <translation>1 panel</translation>
    </message>
    <message>
        <source>%1 panels</source>
        <translation>%1 paneles</translation>
    </message>
    <message>
        <source>%1, words of %2</source>
        <translation>%1, palabras de %2</translation>
    </message>
    <message>
        <source>1 child</source>
        <translation>1 niño o niña</translation>
    </message>
    <message>
        <source>%1 children</source>
        <translation>%1 niños y niñas</translation>
    </message>
    <message>
        <source>Proposed anew from what may be shown. What is pinned stays. It can be undone.</source>
        <translation>Propuesto de nuevo con lo que se puede mostrar. Lo fijado se queda. Se puede deshacer.</translation>
    </message>
    <message>
        <source>A kind of your own</source>
        <translation>Un tipo propio</translation>
    </message>
    <message>
        <source>Its name. It keeps places and sizes, none of the words and pictures.</source>
        <translation>Su nombre. Guarda lugares y tamaños, no las palabras ni las imágenes.</translation>
    </message>
    <message>
        <source>Each keeps words at seven to one against paper and tints, or more.</source>
        <translation>En todos, el contraste de las palabras con papel y fondos es de siete a uno o más.</translation>
    </message>
    <message>
        <source>One face for children, another for adults. The panel is arranged for its widths.</source>
        <translation>Una letra para niños y niñas, otra para personas adultas. El panel se ordena según sus anchos.</translation>
    </message>
    <message>
        <source>No longer together</source>
        <translation>Dejar sueltas</translation>
    </message>
    <message>
        <source>Leave the names out</source>
        <translation>Quitar los nombres</translation>
    </message>
    <message>
        <source>Shorten</source>
        <translation>Acortar</translation>
    </message>
    <message>
        <source>Pin out</source>
        <translation>Desfijar</translation>
    </message>
    <message>
        <source>A translation is changed where it was written.</source>
        <translation>Una traducción se cambia donde se escribió.</translation>
    </message>
    <message>
        <source>Nothing was found on this panel.</source>
        <translation>En este panel no hay avisos.</translation>
    </message>
    <message>
        <source>For the hallway</source>
        <translation>Para el pasillo</translation>
    </message>
    <message>
        <source>A1</source>
        <translation>A1</translation>
    </message>
    <message>
        <source>Read from 1.5 m</source>
        <translation>Leer desde 1,5 m</translation>
    </message>
    <message>
        <source>The same pieces, around those that are pinned</source>
        <translation>Las mismas piezas, alrededor de las fijadas</translation>
    </message>
    <message>
        <source>The same pieces, arranged differently</source>
        <translation>Las mismas piezas, ordenadas de otra manera</translation>
    </message>
    <message>
        <source>For %1</source>
        <translation>Para %1</translation>
    </message>
    <message>
        <source>%1 × %2 mm</source>
        <translation>%1 × %2 mm</translation>
    </message>
    <message>
        <source>%1 upright</source>
        <translation>%1 vertical</translation>
    </message>
    <message>
        <source>%1 wide</source>
        <translation>%1 horizontal</translation>
    </message>
    <message>
        <source>Read from %1 m</source>
        <translation>Leer desde %1 m</translation>
    </message>
    <message>
        <source>%1 px for 1 mm</source>
        <translation>%1 px por 1 mm</translation>
    </message>
    <message>
        <source>Mend this finding</source>
        <translation>Arreglar este aviso</translation>
    </message>
    <message>
        <source>Nothing was found on what is in your hand.</source>
        <translation>No se encontró nada en lo que tiene en la mano.</translation>
    </message>
    <message>
        <source>This one is yours to decide.</source>
        <translation>Esto lo decide usted.</translation>
    </message>
    <message>
        <source>Leave it, and say why</source>
        <translation>Dejarlo y decir por qué</translation>
    </message>
    <message>
        <source>Looking for earlier days</source>
        <translation>Buscando días anteriores</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>a las %1</translation>
    </message>
    <message>
        <source>Choose one to bring the display back to it, with today&apos;s permissions. That can be undone too.</source>
        <translation>Elegir uno para volver a él, con los permisos de hoy. También eso se puede deshacer.</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::Desk</name>
    <message>
        <source>. Pinned by you</source>
        <translation>. Fijada a mano</translation>
    </message>
    <message>
        <source>. %1 to look at</source>
        <translation>. %1 por revisar</translation>
    </message>
    <message>
        <source>1 finding</source>
        <translation>1 aviso</translation>
    </message>
    <message>
        <source>%1 findings</source>
        <translation>%1 avisos</translation>
    </message>
    <message>
        <source>Not shown to this audience.</source>
        <translation>No se muestra a este público.</translation>
    </message>
    <message>
        <source>Arranged again</source>
        <translation>Ordenar de nuevo</translation>
    </message>
    <message>
        <source>This panel is locked. Unlock it to have it arranged.</source>
        <translation>Este panel está bloqueado. Hay que desbloquearlo para ordenarlo.</translation>
    </message>
    <message>
        <source>Arranging around what is pinned</source>
        <translation>Ordenando alrededor de lo fijado</translation>
    </message>
    <message>
        <source>Arranging what is in your hand</source>
        <translation>Ordenando lo que está en la mano</translation>
    </message>
    <message>
        <source>Arranged %1 pieces</source>
        <translation>Ordenar %1 piezas</translation>
    </message>
    <message>
        <source>Every panel is locked.</source>
        <translation>Todos los paneles están bloqueados.</translation>
    </message>
    <message>
        <source>Arranged the display</source>
        <translation>Ordenar la exposición</translation>
    </message>
    <message>
        <source>Arranging the display</source>
        <translation>Ordenando la exposición</translation>
    </message>
    <message>
        <source>Panel %1</source>
        <translation>Panel %1</translation>
    </message>
    <message>
        <source>Looking for other ways</source>
        <translation>Buscando otras maneras</translation>
    </message>
    <message>
        <source>Another way</source>
        <translation>Otra manera</translation>
    </message>
    <message>
        <source>Hallway</source>
        <translation>Pasillo</translation>
    </message>
    <message>
        <source>Proposing a panel</source>
        <translation>Proponiendo un panel</translation>
    </message>
    <message>
        <source>Proposed panel</source>
        <translation>Proponer un panel</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is this panel now. You find it among the kinds of panel.</source>
        <translation>Este panel es ahora «%1». Está entre los tipos de panel.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is among the kinds of panel now.</source>
        <translation>«%1» está ya entre los tipos de panel.</translation>
    </message>
    <message>
        <source>Trying every kind of panel</source>
        <translation>Probando cada tipo de panel</translation>
    </message>
    <message>
        <source>Kind of panel: %1</source>
        <translation>Tipo de panel: %1</translation>
    </message>
    <message>
        <source>An empty panel</source>
        <translation>Un panel vacío</translation>
    </message>
    <message>
        <source>Hallway %1</source>
        <translation>Pasillo %1</translation>
    </message>
    <message>
        <source>New panel</source>
        <translation>Panel nuevo</translation>
    </message>
    <message>
        <source>Panel once more</source>
        <translation>Duplicar el panel</translation>
    </message>
    <message>
        <source>Panel to place %1</source>
        <translation>Panel al lugar %1</translation>
    </message>
    <message>
        <source>Taken down: panel %1</source>
        <translation>Descolgar: panel %1</translation>
    </message>
    <message>
        <source>Panel %1 is taken down. Its pieces are back in what you have.</source>
        <translation>El panel %1 está descolgado. Sus piezas vuelven a «Lo que hay».</translation>
    </message>
    <message>
        <source>Text: %1</source>
        <translation>Texto: %1</translation>
    </message>
    <message>
        <source>The panel has a title now.</source>
        <translation>El panel ya tiene título.</translation>
    </message>
    <message>
        <source>Back to: %1</source>
        <translation>Volver a: %1</translation>
    </message>
    <message>
        <source>Another audience</source>
        <translation>Otro público</translation>
    </message>
    <message>
        <source>Another panel size</source>
        <translation>Otro tamaño de panel</translation>
    </message>
    <message>
        <source>Another reading distance</source>
        <translation>Otra distancia de lectura</translation>
    </message>
    <message>
        <source>Turned picture</source>
        <translation>Girar la imagen</translation>
    </message>
    <message>
        <source>Straightened picture</source>
        <translation>Enderezar la imagen</translation>
    </message>
    <message>
        <source>Picture as it lay</source>
        <translation>Imagen como estaba</translation>
    </message>
    <message>
        <source>Covered a part</source>
        <translation>Tapar una parte</translation>
    </message>
    <message>
        <source>Took a cover off</source>
        <translation>Destapar una parte</translation>
    </message>
    <message>
        <source>Changed a cover</source>
        <translation>Cambiar lo tapado</translation>
    </message>
    <message>
        <source>Evened out the light</source>
        <translation>Igualar la luz</translation>
    </message>
    <message>
        <source>Light as it was</source>
        <translation>Luz como estaba</translation>
    </message>
    <message>
        <source>Marked what must stay</source>
        <translation>Marcar lo que debe quedar</translation>
    </message>
    <message>
        <source>Nothing must stay</source>
        <translation>Quitar la marca</translation>
    </message>
    <message>
        <source>First of its series</source>
        <translation>Primera de su serie</translation>
    </message>
    <message>
        <source>Left the names out</source>
        <translation>Quitar los nombres</translation>
    </message>
    <message>
        <source>Names in the caption</source>
        <translation>Nombres en el pie de foto</translation>
    </message>
    <message>
        <source>It will look soft.</source>
        <translation>Se verá poco nítida.</translation>
    </message>
    <message>
        <source>Sharp from there, soft from nearby.</source>
        <translation>Nítida desde ahí, poco nítida de cerca.</translation>
    </message>
    <message>
        <source>Sharp.</source>
        <translation>Nítida.</translation>
    </message>
    <message>
        <source>On paper %1 pixels an inch. %2
From %3 m %4 are needed (%5), from nearby %6 (%7).</source>
        <translation>En papel, %1 píxeles por pulgada. %2
Desde %3 m hacen falta %4 (%5); de cerca, %6 (%7).</translation>
    </message>
    <message>
        <source>Onto the panel: %1</source>
        <translation>Al panel: %1</translation>
    </message>
    <message>
        <source>Pasted</source>
        <translation>Pegar</translation>
    </message>
    <message>
        <source>Words of %1</source>
        <translation>Palabras de %1</translation>
    </message>
    <message>
        <source>Kept in what you have. %1</source>
        <translation>Queda en «Lo que hay». %1</translation>
    </message>
    <message>
        <source>Star</source>
        <translation>Estrella</translation>
    </message>
    <message>
        <source>Who is in the picture</source>
        <translation>Quién sale en la imagen</translation>
    </message>
    <message>
        <source>Gathering pictures</source>
        <translation>Reuniendo imágenes</translation>
    </message>
    <message>
        <source>Pasted %1.png</source>
        <translation>Pegado %1.png</translation>
    </message>
    <message>
        <source>The picture could not be kept.</source>
        <translation>No se pudo guardar la imagen.</translation>
    </message>
    <message>
        <source>Another size: %1</source>
        <translation>Otro tamaño: %1</translation>
    </message>
    <message>
        <source>Moved: %1</source>
        <translation>Mover: %1</translation>
    </message>
    <message>
        <source>Moved %1 pieces</source>
        <translation>Mover %1 piezas</translation>
    </message>
    <message>
        <source>Bigger: %1</source>
        <translation>Agrandar: %1</translation>
    </message>
    <message>
        <source>Smaller: %1</source>
        <translation>Reducir: %1</translation>
    </message>
    <message>
        <source>Aligned %1 pieces</source>
        <translation>Alinear %1 piezas</translation>
    </message>
    <message>
        <source>Spread %1 pieces evenly</source>
        <translation>Igualar el espacio entre %1 piezas</translation>
    </message>
    <message>
        <source>Cropped photo</source>
        <translation>Recortar la foto</translation>
    </message>
    <message>
        <source>Caption</source>
        <translation>Pie de foto</translation>
    </message>
    <message>
        <source>All the words</source>
        <translation>Todas las palabras</translation>
    </message>
    <message>
        <source>Shortened words</source>
        <translation>Acortar las palabras</translation>
    </message>
    <message>
        <source>Pinned: %1</source>
        <translation>Fijar: %1</translation>
    </message>
    <message>
        <source>Pin out: %1</source>
        <translation>Desfijar: %1</translation>
    </message>
    <message>
        <source>1 piece</source>
        <translation>1 pieza</translation>
    </message>
    <message>
        <source>%1 pieces</source>
        <translation>%1 piezas</translation>
    </message>
    <message>
        <source>Taken off: %1</source>
        <translation>Quitar: %1</translation>
    </message>
    <message>
        <source>%1 is back in what you have.</source>
        <translation>De vuelta en «Lo que hay»: %1.</translation>
    </message>
    <message>
        <source>%1 pieces are back in what you have.</source>
        <translation>%1 piezas vuelven a «Lo que hay».</translation>
    </message>
    <message>
        <source>Swapped two pieces</source>
        <translation>Cambiar de lugar dos piezas</translation>
    </message>
    <message>
        <source>Once more</source>
        <translation>Duplicar</translation>
    </message>
    <message>
        <source>To another panel: %1</source>
        <translation>A otro panel: %1</translation>
    </message>
    <message>
        <source>%1 hangs on panel %2 now.</source>
        <translation>%1: ahora en el panel %2.</translation>
    </message>
    <message>
        <source>another size</source>
        <translation>otro tamaño</translation>
    </message>
    <message>
        <source>1 row down</source>
        <translation>1 fila más abajo</translation>
    </message>
    <message>
        <source>1 row up</source>
        <translation>1 fila más arriba</translation>
    </message>
    <message>
        <source>%1 rows down</source>
        <translation>%1 filas más abajo</translation>
    </message>
    <message>
        <source>%1 rows up</source>
        <translation>%1 filas más arriba</translation>
    </message>
    <message>
        <source>1 column to the right</source>
        <translation>1 columna a la derecha</translation>
    </message>
    <message>
        <source>1 column to the left</source>
        <translation>1 columna a la izquierda</translation>
    </message>
    <message>
        <source>%1 columns to the right</source>
        <translation>%1 columnas a la derecha</translation>
    </message>
    <message>
        <source>%1 columns to the left</source>
        <translation>%1 columnas a la izquierda</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Kept together: %1 pieces</source>
        <translation>Mantener juntas: %1 piezas</translation>
    </message>
    <message>
        <source>No longer kept together</source>
        <translation>Dejar sueltas</translation>
    </message>
    <message>
        <source>A new panel begins: %1</source>
        <translation>Empezar otro panel: %1</translation>
    </message>
    <message>
        <source>The panel begins with it already.</source>
        <translation>El panel ya empieza con esa pieza.</translation>
    </message>
    <message>
        <source>A new panel</source>
        <translation>Otro panel</translation>
    </message>
    <message>
        <source>Locked: panel %1</source>
        <translation>Bloquear: panel %1</translation>
    </message>
    <message>
        <source>Unlocked: panel %1</source>
        <translation>Desbloquear: panel %1</translation>
    </message>
    <message>
        <source>. Kept together with others</source>
        <translation>. Junto con otras</translation>
    </message>
    <message>
        <source>Panel of %1</source>
        <translation>Panel de %1</translation>
    </message>
    <message>
        <source>Larger words</source>
        <translation>Palabras más grandes</translation>
    </message>
    <message>
        <source>On %1 panels</source>
        <translation>En %1 paneles</translation>
    </message>
    <message>
        <source>There is no further step. Another kind of panel may help.</source>
        <translation>No hay más pasos. Otro tipo de panel puede ayudar.</translation>
    </message>
    <message>
        <source>These are the ones that stand out most. Choose others by hand.</source>
        <translation>Estos son los que más destacan. Elija otros a mano.</translation>
    </message>
    <message>
        <source>The book does not know it. Say it in Gather, or write it here.</source>
        <translation>El libro no lo sabe. Dígalo en Reunir o escríbalo aquí.</translation>
    </message>
    <message>
        <source>Your reason is kept with the panel.</source>
        <translation>El motivo se guarda con el panel.</translation>
    </message>
    <message>
        <source>No place on this panel mends it. It needs more room or fewer words.</source>
        <translation>Ningún sitio de este panel lo arregla. Hace falta más espacio o menos palabras.</translation>
    </message>
    <message>
        <source>No frame of this size shows it all. Make the picture bigger.</source>
        <translation>Ningún marco de este tamaño la muestra entera. Agrande la imagen.</translation>
    </message>
    <message>
        <source>There is no better place for it on its wall. Larger letters help.</source>
        <translation>No hay un lugar mejor en su pared. Ayudan letras más grandes.</translation>
    </message>
    <message>
        <source>1 more page is under What you have (F4).</source>
        <translation>Hay 1 página más en Lo que hay (F4).</translation>
    </message>
    <message>
        <source>%1 more pages are under What you have (F4).</source>
        <translation>Hay %1 páginas más en Lo que hay (F4).</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::Drawer</name>
    <message>
        <source>What you have</source>
        <translation>Lo que hay</translation>
    </message>
    <message>
        <source>not for %1</source>
        <translation>no para %1</translation>
    </message>
    <message>
        <source>Onto the panel</source>
        <translation>Al panel</translation>
    </message>
    <message>
        <source>Go where it hangs</source>
        <translation>Ir a donde cuelga</translation>
    </message>
    <message>
        <source>First of its series</source>
        <translation>Primera de su serie</translation>
    </message>
    <message>
        <source>Take the star away</source>
        <translation>Quitar la estrella</translation>
    </message>
    <message>
        <source>Star it</source>
        <translation>Poner estrella</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Ocultar</translation>
    </message>
    <message>
        <source>Put away: What you have</source>
        <translation>Ocultar: Lo que hay</translation>
    </message>
    <message>
        <source>Find words, a child, a caption</source>
        <translation>Buscar palabras, nombre, pie de foto</translation>
    </message>
    <message>
        <source>Find in what you have</source>
        <translation>Buscar en «Lo que hay»</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Palabras</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Obras</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Not on a wall</source>
        <translation>Sin colgar</translation>
    </message>
    <message>
        <source>Starred</source>
        <translation>Con estrella</translation>
    </message>
    <message>
        <source>Every child</source>
        <translation>Toda la clase</translation>
    </message>
    <message>
        <source>Only %1</source>
        <translation>Solo %1</translation>
    </message>
    <message>
        <source>Only of one child</source>
        <translation>Solo de un niño o una niña</translation>
    </message>
    <message>
        <source>Every question</source>
        <translation>Todas las preguntas</translation>
    </message>
    <message>
        <source>Told in a meeting</source>
        <translation>Contado en asamblea</translation>
    </message>
    <message>
        <source>Meeting of %1</source>
        <translation>Asamblea del %1</translation>
    </message>
    <message>
        <source>Question or meeting: %1</source>
        <translation>Pregunta o asamblea: %1</translation>
    </message>
    <message>
        <source>By group</source>
        <translation>Por grupo</translation>
    </message>
    <message>
        <source>By question</source>
        <translation>Por pregunta</translation>
    </message>
    <message>
        <source>In order: %1</source>
        <translation>Orden: %1</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::DrawerEntry</name>
    <message>
        <source>Starred</source>
        <translation>Con estrella</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::EarlierDaySlip</name>
    <message>
        <source>1 child</source>
        <translation>1 niño o niña</translation>
    </message>
    <message>
        <source>%1 children</source>
        <translation>%1 niños y niñas</translation>
    </message>
    <message>
        <source>1 answer</source>
        <translation>1 respuesta</translation>
    </message>
    <message>
        <source>%1 answers</source>
        <translation>%1 respuestas</translation>
    </message>
    <message>
        <source>1 panel</source>
        <translation>1 panel</translation>
    </message>
    <message>
        <source>%1 panels</source>
        <translation>%1 paneles</translation>
    </message>
    <message>
        <source>Nothing hung yet</source>
        <translation>Aún no había nada colgado</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::EmptyStage</name>
    <message>
        <source>Nothing hangs here yet.</source>
        <translation>Aquí aún no cuelga nada.</translation>
    </message>
    <message>
        <source>A panel shows one question, the children&apos;s own words and the pictures of them at work.</source>
        <translation>Un panel muestra una pregunta, las palabras de los niños y las niñas, y sus imágenes mientras trabajan.</translation>
    </message>
    <message>
        <source>Words and pictures come first.</source>
        <translation>Antes van las palabras y las imágenes.</translation>
    </message>
    <message>
        <source>Go to Gather</source>
        <translation>Ir a Reunir</translation>
    </message>
    <message>
        <source>Bring in the class, what was said and the pictures.</source>
        <translation>Traer la clase, lo que se dijo y las imágenes.</translation>
    </message>
    <message>
        <source>You have %1 and %2.</source>
        <translation>Hay %1 y %2.</translation>
    </message>
    <message>
        <source>1 answer</source>
        <translation>1 respuesta</translation>
    </message>
    <message>
        <source>%1 answers</source>
        <translation>%1 respuestas</translation>
    </message>
    <message>
        <source>1 picture</source>
        <translation>1 imagen</translation>
    </message>
    <message>
        <source>%1 pictures</source>
        <translation>%1 imágenes</translation>
    </message>
    <message>
        <source>Propose a panel</source>
        <translation>Proponer un panel</translation>
    </message>
    <message>
        <source>From everything here that may be shown.</source>
        <translation>Con todo lo que aquí se puede mostrar.</translation>
    </message>
    <message>
        <source>Start with one child&apos;s words</source>
        <translation>Empezar por lo que alguien dijo</translation>
    </message>
    <message>
        <source>An empty panel. Drag them there, or press Enter on them.</source>
        <translation>Un panel vacío. Las palabras llegan arrastrándolas, o con Intro.</translation>
    </message>
    <message>
        <source>Start with a picture</source>
        <translation>Empezar por una imagen</translation>
    </message>
    <message>
        <source>An empty panel, and your pictures.</source>
        <translation>Un panel vacío, y las imágenes.</translation>
    </message>
    <message>
        <source>Show the first steps</source>
        <translation>Mostrar los primeros pasos</translation>
    </message>
    <message>
        <source>Six short steps with pictures.</source>
        <translation>Seis pasos cortos con imágenes.</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::FindDialog</name>
    <message>
        <source>Find in the whole book</source>
        <translation>Buscar en todo el libro</translation>
    </message>
    <message>
        <source>Words, or a child&apos;s name</source>
        <translation>Palabras, o el nombre de un niño</translation>
    </message>
    <message>
        <source>1 answer</source>
        <translation>1 respuesta</translation>
    </message>
    <message>
        <source>%1 answers</source>
        <translation>%1 respuestas</translation>
    </message>
    <message>
        <source>Every child, every year. Accents and capitals do not matter.</source>
        <translation>Todos los niños, todos los años. Acentos y mayúsculas no importan.</translation>
    </message>
    <message>
        <source>No words like this in the book.</source>
        <translation>No hay palabras así en el libro.</translation>
    </message>
    <message>
        <source>%1. The latest %2 are shown; type more to find others.</source>
        <translation>%1. Se muestran las últimas %2; escribir más para encontrar otras.</translation>
    </message>
    <message>
        <source>%1, the latest first.</source>
        <translation>%1, las últimas primero.</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::FirstSteps</name>
    <message>
        <source>Enter the class</source>
        <translation>Introducir la clase</translation>
    </message>
    <message>
        <source>Paste the list of names, or type them one by one. Then note what each family allows. Not said counts as no.</source>
        <translation>Pegar la lista de nombres o escribirlos uno a uno. Después, anotar lo que permite cada familia. Lo no dicho cuenta como no.</translation>
    </message>
    <message>
        <source>Go to the class</source>
        <translation>Ir a la clase</translation>
    </message>
    <message>
        <source>Take words down</source>
        <translation>Anotar palabras</translation>
    </message>
    <message>
        <source>Say what happened; three questions are ready. Type what a child says. Enter keeps it, and the next question comes.</source>
        <translation>Decir qué ocurrió; hay tres preguntas preparadas. Escribir lo que dice cada niño o niña. Intro lo guarda y llega la pregunta siguiente.</translation>
    </message>
    <message>
        <source>Go to the words</source>
        <translation>Ir a las palabras</translation>
    </message>
    <message>
        <source>Add the pictures</source>
        <translation>Añadir las imágenes</translation>
    </message>
    <message>
        <source>Drop photos and scanned drawings into the window. Nobody sees them until you say who is in them.</source>
        <translation>Soltar fotos y dibujos escaneados en la ventana. Nadie los ve hasta que se diga quién sale en ellos.</translation>
    </message>
    <message>
        <source>Go to the pictures</source>
        <translation>Ir a las imágenes</translation>
    </message>
    <message>
        <source>Put like with like</source>
        <translation>Juntar lo parecido</translation>
    </message>
    <message>
        <source>Answers with words in common are proposed as groups. Move what you understood otherwise. A meeting gives them back to the class.</source>
        <translation>Las respuestas con palabras en común se proponen como grupos. Mover lo que se entendió de otra manera. Una asamblea las devuelve a la clase.</translation>
    </message>
    <message>
        <source>Go to the groups</source>
        <translation>Ir a los grupos</translation>
    </message>
    <message>
        <source>Propose a panel</source>
        <translation>Proponer un panel</translation>
    </message>
    <message>
        <source>One press makes a panel from all that may be shown. Drag, write, try other colours: every step can be undone, nothing needs saving.</source>
        <translation>Con una pulsación se hace un panel de todo lo que puede mostrarse. Arrastrar, escribir, probar otros colores: cada paso se puede deshacer y no hay que guardar nada.</translation>
    </message>
    <message>
        <source>Go to the panel</source>
        <translation>Ir al panel</translation>
    </message>
    <message>
        <source>Hang it</source>
        <translation>Colgarlo</translation>
    </message>
    <message>
        <source>Check says what to mend. Measure a wall once, and it says where each panel hangs. Print makes a PDF, or sheets for a small printer.</source>
        <translation>Revisar dice qué arreglar. Medir una pared una vez, y dice dónde cuelga cada panel. Imprimir hace un PDF u hojas para una impresora pequeña.</translation>
    </message>
    <message>
        <source>Go to the wall</source>
        <translation>Ir a la pared</translation>
    </message>
    <message>
        <source>First steps</source>
        <translation>Primeros pasos</translation>
    </message>
    <message>
        <source>From nothing to a panel on the wall.</source>
        <translation>De la nada a un panel en la pared.</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>The picture is being made.</source>
        <translation>La imagen se está haciendo.</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Anterior</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Picture: %1</source>
        <translation>Imagen: %1</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::GatherPlace</name>
    <message>
        <source>Class</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Ask</source>
        <translation>Preguntar</translation>
    </message>
    <message>
        <source>Take words down</source>
        <translation>Anotar palabras</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation>Imágenes</translation>
    </message>
    <message>
        <source>Who was heard</source>
        <translation>A quién se escuchó</translation>
    </message>
    <message>
        <source>What you saw</source>
        <translation>Lo observado</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::GoBackDialog</name>
    <message>
        <source>Go back to an earlier day</source>
        <translation>Volver a un día anterior</translation>
    </message>
    <message>
        <source>The book as it was before the first change of:</source>
        <translation>El libro como estaba antes del primer cambio del:</translation>
    </message>
    <message>
        <source>Permissions, who is in pictures and what is covered stay as today. Undo brings today back.</source>
        <translation>Los permisos, quién está en las fotos y lo cubierto quedan como hoy. Deshacer devuelve el hoy.</translation>
    </message>
    <message>
        <source>Leave everything</source>
        <translation>Dejar todo</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::GoalLinks</name>
    <message>
        <source>What shows this goal</source>
        <translation>Qué muestra esta meta</translation>
    </message>
    <message>
        <source>Tick the words and panels that show it. It says nothing about a child.</source>
        <translation>Marque las palabras y los paneles que la muestran. No dice nada de un niño.</translation>
    </message>
    <message>
        <source>Words and panels</source>
        <translation>Palabras y paneles</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>a drawing</source>
        <translation>un dibujo</translation>
    </message>
    <message>
        <source>Panel %1 of %2</source>
        <translation>Panel %1 de %2</translation>
    </message>
    <message>
        <source>What shows a goal</source>
        <translation>Qué muestra una meta</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::GoalsCard</name>
    <message>
        <source>1 answer</source>
        <translation>1 respuesta</translation>
    </message>
    <message>
        <source>%1 answers</source>
        <translation>%1 respuestas</translation>
    </message>
    <message>
        <source>1 panel</source>
        <translation>1 panel</translation>
    </message>
    <message>
        <source>%1 panels</source>
        <translation>%1 paneles</translation>
    </message>
    <message>
        <source>Say what shows it</source>
        <translation>Decir qué la muestra</translation>
    </message>
    <message>
        <source>Shown by %1</source>
        <translation>La muestran %1</translation>
    </message>
    <message>
        <source>A further goal</source>
        <translation>Otra meta</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>De dónde viene</translation>
    </message>
    <message>
        <source>Goals</source>
        <translation>Metas</translation>
    </message>
    <message>
        <source>Your own list, for all experiences. Words and panels can show a goal.</source>
        <translation>Su propia lista, para todas las experiencias. Las palabras y los paneles pueden mostrar una meta.</translation>
    </message>
    <message>
        <source>Add the goal</source>
        <translation>Añadir la meta</translation>
    </message>
    <message>
        <source>A goal</source>
        <translation>Una meta</translation>
    </message>
    <message>
        <source>Goal: %1</source>
        <translation>Meta: %1</translation>
    </message>
    <message>
        <source>Where it comes from: %1</source>
        <translation>De dónde viene: %1</translation>
    </message>
    <message>
        <source>Take the goal out</source>
        <translation>Quitar la meta</translation>
    </message>
    <message>
        <source>Take the goal out: %1</source>
        <translation>Quitar la meta: %1</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::GroupHead</name>
    <message>
        <source>1 answer</source>
        <translation>1 respuesta</translation>
    </message>
    <message>
        <source>%1 answers</source>
        <translation>%1 respuestas</translation>
    </message>
    <message>
        <source>%1. Kept as you made it.</source>
        <translation>%1. Queda como se hizo a mano.</translation>
    </message>
    <message>
        <source>%1, proposed</source>
        <translation>%1, según lo propuesto</translation>
    </message>
    <message>
        <source>Into a meeting</source>
        <translation>A una asamblea</translation>
    </message>
    <message>
        <source>Into a meeting: %1</source>
        <translation>A una asamblea: %1</translation>
    </message>
    <message>
        <source>Split this group</source>
        <translation>Dividir este grupo</translation>
    </message>
    <message>
        <source>Split this group: %1</source>
        <translation>Dividir este grupo: %1</translation>
    </message>
    <message>
        <source>Let it be proposed anew</source>
        <translation>Dejar que se proponga</translation>
    </message>
    <message>
        <source>Keep it as it is</source>
        <translation>Dejarlo como está</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::GroupName</name>
    <message>
        <source>Name of the group: %1</source>
        <translation>Nombre del grupo: %1</translation>
    </message>
    <message>
        <source>F2 or a double click: write another name</source>
        <translation>F2 o doble clic: escribir otro nombre</translation>
    </message>
    <message>
        <source>Name of the group</source>
        <translation>Nombre del grupo</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::GroupsPage</name>
    <message>
        <source>Groups need words. Take down six answers or more.</source>
        <translation>Los grupos necesitan palabras. Anotar seis respuestas o más.</translation>
    </message>
    <message>
        <source>%1 wait to be put with their like.</source>
        <translation>%1 por juntar con sus parecidas.</translation>
    </message>
    <message>
        <source>1 answer</source>
        <translation>1 respuesta</translation>
    </message>
    <message>
        <source>%1 answers</source>
        <translation>%1 respuestas</translation>
    </message>
    <message>
        <source>Groups are proposed by the words the answers share. What a child meant, only you and the child know: you move, name and keep them.</source>
        <translation>Los grupos se proponen por las palabras que las respuestas comparten. Qué quiso decir cada cual, solo lo saben quien habló y quien escuchó: moverlos, darles nombre y mantenerlos se hace a mano.</translation>
    </message>
    <message>
        <source>Leave the groups as they were</source>
        <translation>Dejar los grupos como estaban</translation>
    </message>
    <message>
        <source>Split a group</source>
        <translation>Dividir un grupo</translation>
    </message>
    <message>
        <source>Kept a group</source>
        <translation>Dejar un grupo como está</translation>
    </message>
    <message>
        <source>Let a group be proposed anew</source>
        <translation>Dejar que un grupo se proponga</translation>
    </message>
    <message>
        <source>Named a group</source>
        <translation>Dar nombre a un grupo</translation>
    </message>
    <message>
        <source>On their own</source>
        <translation>Sueltas</translation>
    </message>
    <message>
        <source>Like no other. Often worth a meeting.</source>
        <translation>Distintas de las demás. A menudo merecen una asamblea.</translation>
    </message>
    <message>
        <source>Put answers with their like</source>
        <translation>Juntar respuestas con sus parecidas</translation>
    </message>
    <message>
        <source>Put with their like</source>
        <translation>Juntar con sus parecidas</translation>
    </message>
    <message>
        <source>Answers alike enough join a group; no other moves</source>
        <translation>Las que se parecen bastante van a un grupo; ninguna otra se mueve</translation>
    </message>
    <message>
        <source>A new group</source>
        <translation>Un grupo nuevo</translation>
    </message>
    <message>
        <source>Set a slip down here.</source>
        <translation>Dejar aquí una tira.</translation>
    </message>
    <message>
        <source>To: %1</source>
        <translation>A: %1</translation>
    </message>
    <message>
        <source>Fewer</source>
        <translation>Menos</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Propose again</source>
        <translation>Proponer de nuevo</translation>
    </message>
    <message>
        <source>Fewer groups</source>
        <translation>Menos grupos</translation>
    </message>
    <message>
        <source>More groups</source>
        <translation>Más grupos</translation>
    </message>
    <message>
        <source>Looks at all answers again; you see it before it is kept</source>
        <translation>Vuelve a mirar todas las respuestas; se ve antes de guardarlo</translation>
    </message>
    <message>
        <source>Proposed groups</source>
        <translation>Proponer grupos</translation>
    </message>
    <message>
        <source>No three answers have words in common. All stay on their own.</source>
        <translation>No hay tres respuestas con palabras en común. Todas quedan sueltas.</translation>
    </message>
    <message>
        <source>Proposed groups again</source>
        <translation>Proponer grupos de nuevo</translation>
    </message>
    <message>
        <source>Looked at again: the groups stay as they are.</source>
        <translation>Mirado de nuevo: los grupos quedan como están.</translation>
    </message>
    <message>
        <source>%1, no groups yet.</source>
        <translation>%1, aún sin grupos.</translation>
    </message>
    <message>
        <source>Go to Gather</source>
        <translation>Ir a Reunir</translation>
    </message>
    <message>
        <source>1 group</source>
        <translation>1 grupo</translation>
    </message>
    <message>
        <source>%1 groups</source>
        <translation>%1 grupos</translation>
    </message>
    <message>
        <source>As it would be: %1. %2 would change company.</source>
        <translation>Así quedaría: %1. De un grupo a otro: %2.</translation>
    </message>
    <message>
        <source>Keep these groups</source>
        <translation>Guardar estos grupos</translation>
    </message>
    <message>
        <source>Proposed by the words the answers share. You move what does not belong.</source>
        <translation>Propuesto por las palabras que las respuestas comparten. Lo que no encaja se mueve a mano.</translation>
    </message>
    <message>
        <source>Propose groups</source>
        <translation>Proponer grupos</translation>
    </message>
    <message>
        <source>%1, %2 made by you.</source>
        <translation>%1; hechos a mano, %2.</translation>
    </message>
    <message>
        <source>%1, as proposed.</source>
        <translation>%1, según lo propuesto.</translation>
    </message>
    <message>
        <source>%1 on their own.</source>
        <translation>Sueltas: %1.</translation>
    </message>
    <message>
        <source>Plan a meeting</source>
        <translation>Planear una asamblea</translation>
    </message>
    <message>
        <source>Moved %1&apos;s words</source>
        <translation>Mover palabras de %1</translation>
    </message>
    <message>
        <source>%1&apos;s words are in your hand. Arrow keys choose a strand, Enter sets down.</source>
        <translation>En la mano: palabras de %1. Las flechas eligen un cordel, Intro las deja.</translation>
    </message>
    <message>
        <source>Here: %1</source>
        <translation>Aquí: %1</translation>
    </message>
    <message>
        <source>One more answer moves no other.</source>
        <translation>Una respuesta más no mueve ninguna otra.</translation>
    </message>
    <message>
        <source>Proposed because words are alike; the words shared are underlined. What a child meant, only you and the child know. Drag a slip to another group, or lift it with Space; its menu keeps two together or apart.</source>
        <translation>Propuesto porque las palabras se parecen; las compartidas están subrayadas. Qué quiso decir cada cual, solo lo saben quien habló y quien escuchó. Arrastrar una tira a otro grupo, o levantarla con Espacio; su menú mantiene dos juntas o aparte.</translation>
    </message>
    <message>
        <source>Find words or a child</source>
        <translation>Buscar palabras o un nombre</translation>
    </message>
    <message>
        <source>Find in the groups</source>
        <translation>Buscar en los grupos</translation>
    </message>
    <message>
        <source>1 answer found.</source>
        <translation>1 respuesta encontrada.</translation>
    </message>
    <message>
        <source>%1 answers found.</source>
        <translation>%1 respuestas encontradas.</translation>
    </message>
    <message>
        <source>Kept apart from %1</source>
        <translation>Aparte de %1</translation>
    </message>
    <message>
        <source>Kept together with %1</source>
        <translation>Junto con %1</translation>
    </message>
    <message>
        <source>with %1</source>
        <translation>con %1</translation>
    </message>
    <message>
        <source>with %1 others</source>
        <translation>con otras %1</translation>
    </message>
    <message>
        <source>apart from %1</source>
        <translation>aparte de %1</translation>
    </message>
    <message>
        <source>apart from %1 others</source>
        <translation>aparte de otras %1</translation>
    </message>
    <message>
        <source>Kept two answers apart</source>
        <translation>Separar dos respuestas</translation>
    </message>
    <message>
        <source>Kept two answers together</source>
        <translation>Mantener juntas dos respuestas</translation>
    </message>
    <message>
        <source>Keep apart from</source>
        <translation>Mantener aparte de</translation>
    </message>
    <message>
        <source>Keep together with</source>
        <translation>Mantener junto con</translation>
    </message>
    <message>
        <source>Let answers go their own way</source>
        <translation>Soltar respuestas</translation>
    </message>
    <message>
        <source>Let go of</source>
        <translation>Soltar</translation>
    </message>
    <message>
        <source>All of these</source>
        <translation>Todas estas</translation>
    </message>
    <message>
        <source>%1, %2 made by you, %3 placed by you.</source>
        <translation>%1; hechos a mano, %2; puestas a mano, %3.</translation>
    </message>
    <message>
        <source>%1, %2 placed by you.</source>
        <translation>%1; puestas a mano, %2.</translation>
    </message>
    <message>
        <source>What you made and placed stays. Nothing is kept yet.</source>
        <translation>Lo hecho y lo puesto a mano se queda. Aún no se guarda nada.</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::HangPlace</name>
    <message>
        <source>Check</source>
        <translation>Revisar</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Pared</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>Nothing hangs on %1 yet.</source>
        <translation>En %1 aún no cuelga nada.</translation>
    </message>
    <message>
        <source>%1 on %2.</source>
        <translation>%1 en %2.</translation>
    </message>
    <message>
        <source>1 panel</source>
        <translation>1 panel</translation>
    </message>
    <message>
        <source>%1 panels</source>
        <translation>%1 paneles</translation>
    </message>
    <message>
        <source>No wall is measured yet.</source>
        <translation>Aún no se ha medido ninguna pared.</translation>
    </message>
    <message>
        <source>%1 to look at.</source>
        <translation>%1 por revisar.</translation>
    </message>
    <message>
        <source>1 finding</source>
        <translation>1 aviso</translation>
    </message>
    <message>
        <source>%1 findings</source>
        <translation>%1 avisos</translation>
    </message>
    <message>
        <source>Limits are yours to change. Ask your fire authority.</source>
        <translation>Los límites se pueden cambiar. Preguntar a la autoridad contra incendios.</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::HeardGrid</name>
    <message>
        <source>not yet</source>
        <translation>aún no</translation>
    </message>
    <message>
        <source>nothing taken down</source>
        <translation>nada anotado</translation>
    </message>
    <message>
        <source>week %1</source>
        <translation>semana %1</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>quoted</source>
        <translation>en citas</translation>
    </message>
    <message>
        <source>pictured</source>
        <translation>en imágenes</translation>
    </message>
    <message>
        <source>on a wall</source>
        <translation>en la pared</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::HeardTask</name>
    <message>
        <source>Listen to next</source>
        <translation>A quién escuchar</translation>
    </message>
    <message>
        <source>After the first words are taken down you see here who has not been asked.</source>
        <translation>Tras anotar las primeras palabras, aquí se ve a quién aún no se ha preguntado.</translation>
    </message>
    <message>
        <source>Who was heard</source>
        <translation>A quién se escuchó</translation>
    </message>
    <message>
        <source>said</source>
        <translation>dijo</translation>
    </message>
    <message>
        <source>wrote</source>
        <translation>escribió</translation>
    </message>
    <message>
        <source>drew</source>
        <translation>dibujó</translation>
    </message>
    <message>
        <source>signed or pointed</source>
        <translation>en señas o señaló</translation>
    </message>
    <message>
        <source>passes for now</source>
        <translation>por ahora pasa</translation>
    </message>
    <message>
        <source>noted why not</source>
        <translation>anotado por qué no</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>aún no</translation>
    </message>
    <message>
        <source>Marks are counted, children are not compared. The order is the class&apos;s own.</source>
        <translation>Se cuentan marcas, no se comparan niños ni niñas. El orden es el de la clase.</translation>
    </message>
    <message>
        <source>1 question open.</source>
        <translation>1 pregunta abierta.</translation>
    </message>
    <message>
        <source>%1 questions open.</source>
        <translation>%1 preguntas abiertas.</translation>
    </message>
    <message>
        <source>Heard here. Few weeks before.</source>
        <translation>Aquí ya se escuchó. Antes, pocas semanas.</translation>
    </message>
    <message>
        <source>Not heard yet this term.</source>
        <translation>Sin escuchar aún este trimestre.</translation>
    </message>
    <message>
        <source>Last heard on %1.</source>
        <translation>Última vez: %1.</translation>
    </message>
    <message>
        <source>Not yet on a wall.</source>
        <translation>Aún no está en la pared.</translation>
    </message>
    <message>
        <source>Take words down</source>
        <translation>Anotar palabras</translation>
    </message>
    <message>
        <source>Note why not</source>
        <translation>Anotar por qué no</translation>
    </message>
    <message>
        <source>Take words down: %1</source>
        <translation>Anotar palabras: %1</translation>
    </message>
    <message>
        <source>Note why not: %1</source>
        <translation>Anotar por qué no: %1</translation>
    </message>
    <message>
        <source>Everybody was heard in as many weeks.</source>
        <translation>Se escuchó a toda la clase en igual número de semanas.</translation>
    </message>
    <message>
        <source>These have told us little so far. There are many reasons for that; you know them.</source>
        <translation>Hasta ahora han contado poco. Los motivos pueden ser muchos; quien está con la clase los conoce.</translation>
    </message>
    <message>
        <source>Listen to next: %1</source>
        <translation>A quién escuchar: %1</translation>
    </message>
    <message>
        <source>On this</source>
        <translation>Sobre esto</translation>
    </message>
    <message>
        <source>The term, week by week</source>
        <translation>El trimestre, semana a semana</translation>
    </message>
    <message>
        <source>So far</source>
        <translation>Hasta ahora</translation>
    </message>
    <message>
        <source>%1 of %2 answers. %3</source>
        <translation>%1 de %2 respuestas. %3</translation>
    </message>
    <message>
        <source>Every child is complete.</source>
        <translation>Toda la clase está completa.</translation>
    </message>
    <message>
        <source>1 child is not complete.</source>
        <translation>Queda 1 niño o niña por completar.</translation>
    </message>
    <message>
        <source>%1 children are not complete.</source>
        <translation>Quedan %1 niños y niñas por completar.</translation>
    </message>
    <message>
        <source>Complete means an answer to each question, or your note why not.</source>
        <translation>Completar es tener una respuesta a cada pregunta, o una nota de por qué no.</translation>
    </message>
    <message>
        <source>Listen to %1</source>
        <translation>Escuchar a %1</translation>
    </message>
    <message>
        <source>Put ideas together</source>
        <translation>Juntar ideas</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::HungPanel</name>
    <message>
        <source>On the stage</source>
        <translation>A la vista</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::HungPanels</name>
    <message>
        <source>Panels of this display</source>
        <translation>Paneles de esta exposición</translation>
    </message>
    <message>
        <source>Name of the panel</source>
        <translation>Nombre del panel</translation>
    </message>
    <message>
        <source>Panel %1 of %2</source>
        <translation>Panel %1 de %2</translation>
    </message>
    <message>
        <source>locked: %1</source>
        <translation>bloqueado: %1</translation>
    </message>
    <message>
        <source>New panel</source>
        <translation>Panel nuevo</translation>
    </message>
    <message>
        <source>after these</source>
        <translation>después de estos</translation>
    </message>
    <message>
        <source>Name it</source>
        <translation>Dar nombre</translation>
    </message>
    <message>
        <source>Once more</source>
        <translation>Duplicar</translation>
    </message>
    <message>
        <source>One place up</source>
        <translation>Un lugar más arriba</translation>
    </message>
    <message>
        <source>One place down</source>
        <translation>Un lugar más abajo</translation>
    </message>
    <message>
        <source>Take down</source>
        <translation>Descolgar</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::HungWall</name>
    <message>
        <source>classroom</source>
        <translation>aula</translation>
    </message>
    <message>
        <source>hallway</source>
        <translation>pasillo</translation>
    </message>
    <message>
        <source>families</source>
        <translation>familias</translation>
    </message>
    <message>
        <source>public</source>
        <translation>todo el mundo</translation>
    </message>
    <message>
        <source>%1, for the %2: %3</source>
        <translation>%1, para %2: %3</translation>
    </message>
    <message>
        <source>1 panel</source>
        <translation>1 panel</translation>
    </message>
    <message>
        <source>%1 panels</source>
        <translation>%1 paneles</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::KeepPlace</name>
    <message>
        <source>a nail on a strand is a class meeting</source>
        <translation>un clavo en un hilo es una asamblea</translation>
    </message>
    <message>
        <source>a picture hanging is a wall, with who stood in front of it</source>
        <translation>una imagen colgada es una pared, con quién la miraba</translation>
    </message>
    <message>
        <source>The term</source>
        <translation>El trimestre</translation>
    </message>
    <message>
        <source>Put away, carry, erase</source>
        <translation>Guardar, llevar, borrar</translation>
    </message>
    <message>
        <source>After the first wall, the term begins to show here.</source>
        <translation>Después de la primera pared, el trimestre empieza a verse aquí.</translation>
    </message>
    <message>
        <source>The term has not begun.</source>
        <translation>El trimestre no ha empezado.</translation>
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
        <translation>1 pared</translation>
    </message>
    <message>
        <source>%1 walls</source>
        <translation>%1 paredes</translation>
    </message>
    <message>
        <source>%1 since %2.</source>
        <translation>%1 desde %2.</translation>
    </message>
    <message>
        <source>What families allow is asked again whenever something leaves the book.</source>
        <translation>Lo que permiten las familias se vuelve a comprobar cada vez que algo sale del libro.</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::LimitsDialog</name>
    <message>
        <source>Limits</source>
        <translation>Límites</translation>
    </message>
    <message>
        <source>They hold for every book on this computer. For fire, heights and privacy ask your school.</source>
        <translation>Valen para todos los libros de este equipo. Sobre fuego, alturas y privacidad, preguntar en la escuela.</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Ahora no</translation>
    </message>
    <message>
        <source>All as usual</source>
        <translation>Todo como es habitual</translation>
    </message>
    <message>
        <source>Keep these limits</source>
        <translation>Guardar estos límites</translation>
    </message>
    <message>
        <source>On the wall</source>
        <translation>En la pared</translation>
    </message>
    <message>
        <source>How far panels stand out from the wall</source>
        <translation>Cuánto sobresalen los paneles de la pared</translation>
    </message>
    <message>
        <source>10 mm is common practice, no source. Measured against 2010 ADA Standards 307.2</source>
        <translation>10 mm es práctica común, sin fuente. Se mide con las normas ADA 2010, 307.2</translation>
    </message>
    <message>
        <source>As usual</source>
        <translation>Como es habitual</translation>
    </message>
    <message>
        <source>%1 as usual</source>
        <translation>%1 como es habitual</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::ListenPlace</name>
    <message>
        <source>%1, draft</source>
        <translation>%1, borrador</translation>
    </message>
    <message>
        <source>Groups</source>
        <translation>Grupos</translation>
    </message>
    <message>
        <source>Meetings</source>
        <translation>Asambleas</translation>
    </message>
    <message>
        <source>Looking back</source>
        <translation>Volver a mirar</translation>
    </message>
    <message>
        <source>A draft needs groups. Propose them first.</source>
        <translation>Un borrador necesita grupos. Antes hay que proponerlos.</translation>
    </message>
    <message>
        <source>Making a draft for a wall</source>
        <translation>Haciendo un borrador para la pared</translation>
    </message>
    <message>
        <source>A draft for a wall</source>
        <translation>Un borrador para la pared</translation>
    </message>
    <message>
        <source>This is a draft from the groups. Change what should be otherwise.</source>
        <translation>Es un borrador hecho con los grupos. Se puede cambiar lo que deba ser distinto.</translation>
    </message>
    <message>
        <source>None of these words may hang in the hallway yet. Say in Gather, Class, what families allow.</source>
        <translation>Ninguna de estas palabras puede colgarse aún en el pasillo. Anotar en Reunir, Clase, qué permiten las familias.</translation>
    </message>
    <message>
        <source>This is a draft from the groups, on %1, which their words fill. Change what should be otherwise.</source>
        <translation>Es un borrador hecho con los grupos, en %1, que sus palabras llenan. Se puede cambiar lo que deba ser distinto.</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::LookingBackPage</name>
    <message>
        <source>Who found it hard? What would help?</source>
        <translation>¿A quién le costó? ¿Qué ayudaría?</translation>
    </message>
    <message>
        <source>What surprised you?</source>
        <translation>¿Qué fue una sorpresa?</translation>
    </message>
    <message>
        <source>What does it touch that the class works on, or is about to?</source>
        <translation>¿Con qué se relaciona de lo que la clase hace, o va a hacer?</translation>
    </message>
    <message>
        <source>Where could it go that nobody had planned?</source>
        <translation>¿A dónde podría llevar que nadie había planeado?</translation>
    </message>
    <message>
        <source>How could you find out more about what they think?</source>
        <translation>¿Cómo saber más sobre lo que piensan?</translation>
    </message>
    <message>
        <source>%1 (you)</source>
        <translation>%1 (quien enseña)</translation>
    </message>
    <message>
        <source>Nothing to look back on yet.</source>
        <translation>Aún no hay nada que volver a mirar.</translation>
    </message>
    <message>
        <source>%1 of %2 questions answered.</source>
        <translation>%1 de %2 preguntas respondidas.</translation>
    </message>
    <message>
        <source>Answer when you are ready; nothing waits for it.</source>
        <translation>Responder en cualquier momento; nada depende de ello.</translation>
    </message>
    <message>
        <source>Make a draft for a wall</source>
        <translation>Hacer un borrador para la pared</translation>
    </message>
    <message>
        <source>A question of your own</source>
        <translation>Una pregunta propia</translation>
    </message>
    <message>
        <source>What you offer next</source>
        <translation>Lo que se ofrece después</translation>
    </message>
    <message>
        <source>It stands on panels as the next step, and can become an experience of its own.</source>
        <translation>En los paneles es el paso siguiente, y puede llegar a ser otra experiencia.</translation>
    </message>
    <message>
        <source>Make it the next experience</source>
        <translation>Hacer de ello la próxima experiencia</translation>
    </message>
    <message>
        <source>Looking back</source>
        <translation>Volver a mirar</translation>
    </message>
    <message>
        <source>Write what you offer next; its first line becomes the title.</source>
        <translation>Escribir lo que se ofrece después; su primera línea será el título.</translation>
    </message>
    <message>
        <source>There is an experience of that name already.</source>
        <translation>Ya hay una experiencia con ese nombre.</translation>
    </message>
    <message>
        <source>The next experience</source>
        <translation>La próxima experiencia</translation>
    </message>
    <message>
        <source>The next experience is begun: %1</source>
        <translation>La próxima experiencia ya empezó: %1</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::MainWindow</name>
    <message>
        <source>Kept %1</source>
        <translation>Guardado %1</translation>
    </message>
    <message>
        <source>Open for looking only: somebody else writes in this book, or the folder may not be written.</source>
        <translation>Abierto solo para mirar: alguien más escribe en este libro, o no se puede escribir en la carpeta.</translation>
    </message>
    <message>
        <source>Begin a book</source>
        <translation>Empezar un libro</translation>
    </message>
    <message>
        <source>Name of the class</source>
        <translation>Nombre de la clase</translation>
    </message>
    <message>
        <source>A folder for the book</source>
        <translation>Una carpeta para el libro</translation>
    </message>
    <message>
        <source>Open a book</source>
        <translation>Abrir un libro</translation>
    </message>
    <message>
        <source>Books (book.wainscot)</source>
        <translation>Libros (book.wainscot)</translation>
    </message>
    <message>
        <source>Making the sample class</source>
        <translation>Haciendo la clase de ejemplo</translation>
    </message>
    <message>
        <source>Which experience?</source>
        <translation>¿Qué experiencia?</translation>
    </message>
    <message>
        <source>What happened: choose, or write a new title</source>
        <translation>Lo que pasó: elegir, o escribir un título nuevo</translation>
    </message>
    <message>
        <source>Gather a class list</source>
        <translation>Reunir la lista de clase</translation>
    </message>
    <message>
        <source>Tables (*.csv *.tsv *.txt)</source>
        <translation>Tablas (*.csv *.tsv *.txt)</translation>
    </message>
    <message>
        <source>Gather words</source>
        <translation>Reunir palabras</translation>
    </message>
    <message>
        <source>Gather pictures</source>
        <translation>Reunir imágenes</translation>
    </message>
    <message>
        <source>%1: %2 new, %3 changed.</source>
        <translation>%1: entradas nuevas, %2; cambiadas, %3.</translation>
    </message>
    <message>
        <source>Left out: %1. </source>
        <translation>Sin incluir: %1. </translation>
    </message>
    <message>
        <source>Reading the class list</source>
        <translation>Leyendo la lista de clase</translation>
    </message>
    <message>
        <source>Class list</source>
        <translation>Lista de clase</translation>
    </message>
    <message>
        <source>Reading the words</source>
        <translation>Leyendo las palabras</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Palabras</translation>
    </message>
    <message>
        <source>Gathering pictures</source>
        <translation>Reuniendo imágenes</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation>Imágenes</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>Enviado a la impresora.</translation>
    </message>
    <message>
        <source>The printer does not answer.</source>
        <translation>La impresora no responde.</translation>
    </message>
    <message>
        <source>%1, %2 and %3 on panels go, and the name from %4. Nothing of it can be brought back.</source>
        <translation>Se van %1, %2 y %3 de los paneles, y el nombre de %4. Nada de ello se puede recuperar.</translation>
    </message>
    <message>
        <source>1 answer</source>
        <translation>1 respuesta</translation>
    </message>
    <message>
        <source>%1 answers</source>
        <translation>%1 respuestas</translation>
    </message>
    <message>
        <source>1 picture</source>
        <translation>1 imagen</translation>
    </message>
    <message>
        <source>%1 pictures</source>
        <translation>%1 imágenes</translation>
    </message>
    <message>
        <source>1 piece</source>
        <translation>1 pieza</translation>
    </message>
    <message>
        <source>%1 pieces</source>
        <translation>%1 piezas</translation>
    </message>
    <message>
        <source>1 text</source>
        <translation>1 texto</translation>
    </message>
    <message>
        <source>%1 texts</source>
        <translation>%1 textos</translation>
    </message>
    <message>
        <source>To be taken down from the wall: %1.</source>
        <translation>Por descolgar de la pared: %1.</translation>
    </message>
    <message>
        <source>%1 goes by the same name, so it stays in texts.</source>
        <translation>Se llama igual: %1. Por eso el nombre queda en los textos.</translation>
    </message>
    <message>
        <source>Erase a child</source>
        <translation>Borrar a un niño o niña</translation>
    </message>
    <message>
        <source>Who is to be forgotten:</source>
        <translation>A quién hay que olvidar:</translation>
    </message>
    <message>
        <source>Erase %1 from this book for good?</source>
        <translation>¿Borrar a %1 de este libro para siempre?</translation>
    </message>
    <message>
        <source>Erase %1</source>
        <translation>Borrar a %1</translation>
    </message>
    <message>
        <source>Leave everything</source>
        <translation>Dejar todo</translation>
    </message>
    <message>
        <source>%1 is erased.</source>
        <translation>Se borró a %1.</translation>
    </message>
    <message>
        <source>%1 is erased. Take down what hangs: %2.</source>
        <translation>Se borró a %1. Descolgar lo que cuelga: %2.</translation>
    </message>
    <message>
        <source>All keys</source>
        <translation>Todas las teclas</translation>
    </message>
    <message>
        <source>On the panel</source>
        <translation>En el panel</translation>
    </message>
    <message>
        <source>Between pieces; with Shift several</source>
        <translation>Entre piezas; con Mayús, varias</translation>
    </message>
    <message>
        <source>Arrows, Home, End</source>
        <translation>Flechas, Inicio, Fin</translation>
    </message>
    <message>
        <source>Lift; arrows move, Alt finer, Shift resizes</source>
        <translation>Levantar; flechas mueven, Alt más fino, Mayús da otro tamaño</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>A step of the grid, without lifting</source>
        <translation>Un paso de la cuadrícula, sin levantar</translation>
    </message>
    <message>
        <source>Ctrl+Arrows</source>
        <translation>Ctrl+Flechas</translation>
    </message>
    <message>
        <source>Half a millimetre</source>
        <translation>Medio milímetro</translation>
    </message>
    <message>
        <source>Alt+Arrows</source>
        <translation>Alt+Flechas</translation>
    </message>
    <message>
        <source>Resize by a step</source>
        <translation>Otro tamaño, un paso</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Arrows</source>
        <translation>Ctrl+Mayús+Flechas</translation>
    </message>
    <message>
        <source>Set down; write on a piece; take a slip onto the panel</source>
        <translation>Dejar; escribir en una pieza; llevar una tira al panel</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>Put back; let go</source>
        <translation>Devolver a su lugar; soltar</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>While the mouse carries a piece</source>
        <translation>Mientras se arrastra una pieza</translation>
    </message>
    <message>
        <source>Trade places with the piece under it</source>
        <translation>Cambiar de lugar con la pieza de debajo</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Mayús</translation>
    </message>
    <message>
        <source>Off the grid, by half millimetres</source>
        <translation>Fuera de la cuadrícula, por medios milímetros</translation>
    </message>
    <message>
        <source>Ctrl</source>
        <translation>Ctrl</translation>
    </message>
    <message>
        <source>In what you have</source>
        <translation>En «Lo que hay»</translation>
    </message>
    <message>
        <source>Onto the panel at the best place</source>
        <translation>Al panel, en el mejor lugar</translation>
    </message>
    <message>
        <source>Star, or take the star away</source>
        <translation>Poner o quitar la estrella</translation>
    </message>
    <message>
        <source>On a hung panel</source>
        <translation>En un panel colgado</translation>
    </message>
    <message>
        <source>One place up or down</source>
        <translation>Un lugar más arriba o más abajo</translation>
    </message>
    <message>
        <source>Alt+Up, Alt+Down</source>
        <translation>Alt+Arriba, Alt+Abajo</translation>
    </message>
    <message>
        <source>Name it; once more; take down</source>
        <translation>Dar nombre; duplicar; descolgar</translation>
    </message>
    <message>
        <source>F2; Ctrl+D; Del</source>
        <translation>F2; Ctrl+D; Supr</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>&amp;Book</source>
        <translation>&amp;Libro</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Editar</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>&amp;Ir</translation>
    </message>
    <message>
        <source>&amp;Show</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Ayuda</translation>
    </message>
    <message>
        <source>Begin a book...</source>
        <translation>Empezar un libro...</translation>
    </message>
    <message>
        <source>Open a book...</source>
        <translation>Abrir un libro...</translation>
    </message>
    <message>
        <source>Look at a sample class</source>
        <translation>Ver una clase de ejemplo</translation>
    </message>
    <message>
        <source>Gather a class list...</source>
        <translation>Reunir la lista de clase...</translation>
    </message>
    <message>
        <source>Gather words...</source>
        <translation>Reunir palabras...</translation>
    </message>
    <message>
        <source>Gather pictures...</source>
        <translation>Reunir imágenes...</translation>
    </message>
    <message>
        <source>Make the PDF...</source>
        <translation>Hacer el PDF...</translation>
    </message>
    <message>
        <source>On sheets...</source>
        <translation>En hojas...</translation>
    </message>
    <message>
        <source>As pictures...</source>
        <translation>Como imágenes...</translation>
    </message>
    <message>
        <source>Print...</source>
        <translation>Imprimir...</translation>
    </message>
    <message>
        <source>Pack the whole book to carry...</source>
        <translation>Empaquetar todo el libro...</translation>
    </message>
    <message>
        <source>Unpack a book...</source>
        <translation>Desempaquetar un libro...</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Do again</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Several pieces</source>
        <translation>Varias piezas</translation>
    </message>
    <message>
        <source>How it looks</source>
        <translation>Aspecto</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Panel</translation>
    </message>
    <message>
        <source>Next step</source>
        <translation>Paso siguiente</translation>
    </message>
    <message>
        <source>Next region</source>
        <translation>Zona siguiente</translation>
    </message>
    <message>
        <source>Region before</source>
        <translation>Zona anterior</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>As this computer&apos;s</source>
        <translation>El de este equipo</translation>
    </message>
    <message>
        <source>The window speaks it from the next start.</source>
        <translation>El programa estará en este idioma al abrirlo de nuevo.</translation>
    </message>
    <message>
        <source>Pack the whole book to carry</source>
        <translation>Empaquetar todo el libro</translation>
    </message>
    <message>
        <source>Packing the book</source>
        <translation>Empaquetando el libro</translation>
    </message>
    <message>
        <source>Unpack a book</source>
        <translation>Desempaquetar un libro</translation>
    </message>
    <message>
        <source>Where the book shall be</source>
        <translation>Dónde estará el libro</translation>
    </message>
    <message>
        <source>Unpacking the book</source>
        <translation>Desempaquetando el libro</translation>
    </message>
    <message>
        <source>%1 files are there, the first is %2.</source>
        <translation>Hay %1 archivos; el primero es %2.</translation>
    </message>
    <message>
        <source>It is at %1.</source>
        <translation>Está en %1.</translation>
    </message>
    <message>
        <source>Left out: %1</source>
        <translation>Sin incluir: %1</translation>
    </message>
    <message>
        <source>Make the PDF</source>
        <translation>Hacer el PDF</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Making the PDF</source>
        <translation>Haciendo el PDF</translation>
    </message>
    <message>
        <source>A PDF that is trimmed</source>
        <translation>Un PDF con marcas de corte</translation>
    </message>
    <message>
        <source> trimmed</source>
        <translation> con marcas</translation>
    </message>
    <message>
        <source>On sheets</source>
        <translation>En hojas</translation>
    </message>
    <message>
        <source> on %1</source>
        <translation> en %1</translation>
    </message>
    <message>
        <source>Cutting the panels into sheets</source>
        <translation>Cortando los paneles en hojas</translation>
    </message>
    <message>
        <source>As pictures</source>
        <translation>Como imágenes</translation>
    </message>
    <message>
        <source>Pictures (*.png)</source>
        <translation>Imágenes (*.png)</translation>
    </message>
    <message>
        <source>Making pictures of the panels</source>
        <translation>Haciendo imágenes de los paneles</translation>
    </message>
    <message>
        <source>A book holds one class for one year.</source>
        <translation>Un libro guarda una clase durante un año.</translation>
    </message>
    <message>
        <source>Words, pictures and panels stay in one folder on this computer.</source>
        <translation>Palabras, imágenes y paneles quedan en una carpeta de este equipo.</translation>
    </message>
    <message>
        <source>A folder with the file book.wainscot in it.</source>
        <translation>Una carpeta con el archivo book.wainscot dentro.</translation>
    </message>
    <message>
        <source>An invented class with its words, drawings and photos, made on this computer.</source>
        <translation>Una clase inventada con sus palabras, dibujos y fotos, hecha en este equipo.</translation>
    </message>
    <message>
        <source>1 child</source>
        <translation>1 niño o niña</translation>
    </message>
    <message>
        <source>%1 children</source>
        <translation>%1 niños y niñas</translation>
    </message>
    <message>
        <source>Go to Compose</source>
        <translation>Ir a Componer</translation>
    </message>
    <message>
        <source>Carry</source>
        <translation>Llevar</translation>
    </message>
    <message>
        <source>It is kept in %1.</source>
        <translation>Se guarda en %1.</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>Traer de vuelta</translation>
    </message>
    <message>
        <source>A packed book becomes a book again, in a folder of its own.</source>
        <translation>Un libro empaquetado vuelve a ser un libro, en su propia carpeta.</translation>
    </message>
    <message>
        <source>Words, pictures and name, out of the book for good. This is the one thing that cannot be undone; you are asked first.</source>
        <translation>Palabras, imágenes y nombre, fuera del libro para siempre. Es lo único que no se puede deshacer; antes se pregunta.</translation>
    </message>
    <message>
        <source>Erase a child...</source>
        <translation>Borrar a un niño o niña...</translation>
    </message>
    <message>
        <source>%1 of %2 answers</source>
        <translation>%1 de %2 respuestas</translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation>nada aún</translation>
    </message>
    <message>
        <source>1 panel</source>
        <translation>1 panel</translation>
    </message>
    <message>
        <source>%1 panels</source>
        <translation>%1 paneles</translation>
    </message>
    <message>
        <source>%1, %2 to look at</source>
        <translation>%1, %2 por revisar</translation>
    </message>
    <message>
        <source>nothing to hang</source>
        <translation>nada que colgar</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Deshacer: %1</translation>
    </message>
    <message>
        <source>Do again: %1</source>
        <translation>Rehacer: %1</translation>
    </message>
    <message>
        <source>No book is open.</source>
        <translation>No hay ningún libro abierto.</translation>
    </message>
    <message>
        <source>A book is a folder. Everything stays in it.</source>
        <translation>Un libro es una carpeta. Todo queda en ella.</translation>
    </message>
    <message>
        <source>You are writing.</source>
        <translation>Escribiendo.</translation>
    </message>
    <message>
        <source>The panel shows every line as it will be printed.</source>
        <translation>El panel muestra cada línea como se imprimirá.</translation>
    </message>
    <message>
        <source>Done writing</source>
        <translation>Terminar de escribir</translation>
    </message>
    <message>
        <source>%1 is in your hand.</source>
        <translation>En la mano: %1.</translation>
    </message>
    <message>
        <source>Arrow keys move it, Enter sets it down, Esc puts it back.</source>
        <translation>Las flechas mueven la pieza, Intro la deja, Esc la devuelve.</translation>
    </message>
    <message>
        <source>Set it down</source>
        <translation>Dejarla aquí</translation>
    </message>
    <message>
        <source>%1. No panel yet.</source>
        <translation>%1. Aún sin panel.</translation>
    </message>
    <message>
        <source>No words and no panel yet.</source>
        <translation>Aún sin palabras y sin panel.</translation>
    </message>
    <message>
        <source>Only what the families allowed is proposed.</source>
        <translation>Solo se propone lo que las familias permitieron.</translation>
    </message>
    <message>
        <source>Propose a panel</source>
        <translation>Proponer un panel</translation>
    </message>
    <message>
        <source>Go to Gather</source>
        <translation>Ir a Reunir</translation>
    </message>
    <message>
        <source>%1 children are not on it.</source>
        <translation>%1 niños y niñas no aparecen.</translation>
    </message>
    <message>
        <source>Not on it: %1.</source>
        <translation>Sin aparecer: %1.</translation>
    </message>
    <message>
        <source>%1 to look at.</source>
        <translation>%1 por revisar.</translation>
    </message>
    <message>
        <source>1 finding</source>
        <translation>1 aviso</translation>
    </message>
    <message>
        <source>%1 findings</source>
        <translation>%1 avisos</translation>
    </message>
    <message>
        <source>%1. %2 of %3 children are on it.</source>
        <translation>%1. Aparecen %2 de %3 niños y niñas.</translation>
    </message>
    <message>
        <source>Mend %1 first</source>
        <translation>Corregir antes %1</translation>
    </message>
    <message>
        <source>1 thing</source>
        <translation>1 cosa</translation>
    </message>
    <message>
        <source>%1 things</source>
        <translation>%1 cosas</translation>
    </message>
    <message>
        <source>A photo or scan of the sheet</source>
        <translation>Una foto o un escaneo de la hoja</translation>
    </message>
    <message>
        <source>Taking in the sheet</source>
        <translation>Añadiendo la hoja</translation>
    </message>
    <message>
        <source>Add pictures</source>
        <translation>Añadir imágenes</translation>
    </message>
    <message>
        <source>Begin something new first: pictures belong to what happened.</source>
        <translation>Antes hay que empezar algo nuevo: las imágenes van con lo que pasó.</translation>
    </message>
    <message>
        <source>Begin something new</source>
        <translation>Empezar algo nuevo</translation>
    </message>
    <message>
        <source>What happened? Give it a name.</source>
        <translation>¿Qué pasó? Darle un nombre.</translation>
    </message>
    <message>
        <source>Begin: %1</source>
        <translation>Empezar: %1</translation>
    </message>
    <message>
        <source>Begin something new...</source>
        <translation>Empezar algo nuevo...</translation>
    </message>
    <message>
        <source>Taking words down</source>
        <translation>Anotar palabras</translation>
    </message>
    <message>
        <source>1 group</source>
        <translation>1 grupo</translation>
    </message>
    <message>
        <source>%1 groups</source>
        <translation>%1 grupos</translation>
    </message>
    <message>
        <source>Print %1</source>
        <translation>Imprimir %1</translation>
    </message>
    <message>
        <source>1 sheet</source>
        <translation>1 hoja</translation>
    </message>
    <message>
        <source>%1 sheets</source>
        <translation>%1 hojas</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Hojas</translation>
    </message>
    <message>
        <source>Sent to the printer. Measure the ruler on the first sheet.</source>
        <translation>Enviado a la impresora. Medir la regla de la primera hoja.</translation>
    </message>
    <message>
        <source>The term&apos;s file</source>
        <translation>El archivo del trimestre</translation>
    </message>
    <message>
        <source>Making the term&apos;s file</source>
        <translation>Haciendo el archivo del trimestre</translation>
    </message>
    <message>
        <source>The term&apos;s file has %1 pages. It is at %2.</source>
        <translation>El archivo del trimestre tiene %1 páginas. Está en %2.</translation>
    </message>
    <message>
        <source>A PDF that is trimmed...</source>
        <translation>Un PDF con marcas de corte...</translation>
    </message>
    <message>
        <source>Make the term&apos;s file...</source>
        <translation>Hacer el archivo del trimestre...</translation>
    </message>
    <message>
        <source>Make the term&apos;s file</source>
        <translation>Hacer el archivo del trimestre</translation>
    </message>
    <message>
        <source>%1 on a wall</source>
        <translation>%1 en la pared</translation>
    </message>
    <message>
        <source>not on a wall yet</source>
        <translation>aún sin colgar</translation>
    </message>
    <message>
        <source>the term, carry, erase</source>
        <translation>el trimestre, llevar, borrar</translation>
    </message>
    <message>
        <source>Go back to an earlier day...</source>
        <translation>Volver a un día anterior...</translation>
    </message>
    <message>
        <source>Repair a book...</source>
        <translation>Reparar un libro...</translation>
    </message>
    <message>
        <source>Packed books (*.zip *.locked)</source>
        <translation>Libros empaquetados (*.zip *.locked)</translation>
    </message>
    <message>
        <source>Lock the packed book</source>
        <translation>Poner contraseña al libro empaquetado</translation>
    </message>
    <message>
        <source>A passphrase of 8 characters or more. Leave it empty for a file without a lock.
Who forgets it cannot open the file.</source>
        <translation>Una contraseña de 8 caracteres o más. Vacía, el archivo queda sin contraseña.
Quien la olvide no podrá abrir el archivo.</translation>
    </message>
    <message>
        <source>That has fewer than 8 characters. Choose a longer one:</source>
        <translation>Tiene menos de 8 caracteres. Elegir una más larga:</translation>
    </message>
    <message>
        <source>The same once more:</source>
        <translation>La misma otra vez:</translation>
    </message>
    <message>
        <source>The two were not the same. From the beginning:</source>
        <translation>No eran iguales. Desde el principio:</translation>
    </message>
    <message>
        <source>The whole book is in %1, with its %2 pictures. %3</source>
        <translation>El libro entero está en %1, con sus %2 imágenes. %3</translation>
    </message>
    <message>
        <source>It is locked.</source>
        <translation>Lleva contraseña.</translation>
    </message>
    <message>
        <source>It is not locked.</source>
        <translation>No lleva contraseña.</translation>
    </message>
    <message>
        <source>It is locked. Its passphrase:</source>
        <translation>Lleva contraseña. Escribirla:</translation>
    </message>
    <message>
        <source>What could not be saved as it was</source>
        <translation>Lo que no se pudo salvar como estaba</translation>
    </message>
    <message>
        <source>The whole book as one file, every part with its checksum. With a passphrase it is locked. Without one, carry it like the class list.</source>
        <translation>El libro entero en un archivo, cada parte con su suma de control. Puede llevar contraseña. Sin ella, llevarlo con el cuidado de la lista de clase.</translation>
    </message>
    <message>
        <source>Go back</source>
        <translation>Volver atrás</translation>
    </message>
    <message>
        <source>Before the first change of each day the book keeps its state here.</source>
        <translation>Antes del primer cambio de cada día el libro guarda aquí cómo estaba.</translation>
    </message>
    <message>
        <source>%1 kept, thinned out with time. Nothing is lost by going back: undo brings today back.</source>
        <translation>%1, menos cuanto más lejos. Al volver no se pierde nada: deshacer trae de vuelta el día de hoy.</translation>
    </message>
    <message>
        <source>1 earlier day is</source>
        <translation>1 día anterior guardado</translation>
    </message>
    <message>
        <source>%1 earlier days are</source>
        <translation>%1 días anteriores guardados</translation>
    </message>
    <message>
        <source>Go back to an earlier day</source>
        <translation>Volver a un día anterior</translation>
    </message>
    <message>
        <source>No earlier day is kept yet. The first is kept with the next change.</source>
        <translation>Aún no hay ningún día guardado. El primero se guarda con el próximo cambio.</translation>
    </message>
    <message>
        <source>Going back</source>
        <translation>Volviendo atrás</translation>
    </message>
    <message>
        <source>The book is as it was then. Permissions, who is in pictures and what is covered stay as today. Undo brings today back.</source>
        <translation>El libro está como entonces. Los permisos, quién está en las imágenes y lo tapado siguen como hoy. Deshacer trae de vuelta el día de hoy.</translation>
    </message>
    <message>
        <source>Repair a book</source>
        <translation>Reparar un libro</translation>
    </message>
    <message>
        <source>Where the repaired book shall be</source>
        <translation>Dónde irá el libro reparado</translation>
    </message>
    <message>
        <source>repaired</source>
        <translation>reparado</translation>
    </message>
    <message>
        <source>Repairing the book</source>
        <translation>Reparando el libro</translation>
    </message>
    <message>
        <source>Everything was saved. The damaged book is as it was.</source>
        <translation>Se salvó todo. El libro dañado sigue como estaba.</translation>
    </message>
    <message>
        <source>Saved, but for %1. The damaged book is as it was.</source>
        <translation>Salvado, menos %1. El libro dañado sigue como estaba.</translation>
    </message>
    <message>
        <source>%1, panel %2: %3</source>
        <translation>%1, panel %2: %3</translation>
    </message>
    <message>
        <source>And %1 more.</source>
        <translation>Y %1 más.</translation>
    </message>
    <message>
        <source>A folder cannot be called so. Begin it from the menu Book.</source>
        <translation>Una carpeta no puede llamarse así. Empezarlo desde el menú Libro.</translation>
    </message>
    <message>
        <source>Take the data out</source>
        <translation>Sacar los datos</translation>
    </message>
    <message>
        <source>Everything in this book, as JSON, as CSV files and as pictures.</source>
        <translation>Todo lo de este libro, como JSON, como archivos CSV y como imágenes.</translation>
    </message>
    <message>
        <source>Choose a folder...</source>
        <translation>Elegir una carpeta...</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Ahora no</translation>
    </message>
    <message>
        <source>Where the data shall be</source>
        <translation>Dónde estarán los datos</translation>
    </message>
    <message>
        <source>%1, data</source>
        <translation>%1, datos</translation>
    </message>
    <message>
        <source>Taking the data out</source>
        <translation>Sacando los datos</translation>
    </message>
    <message>
        <source>The data is in %1, with %2 pictures. %3</source>
        <translation>Los datos están en %1, con %2 imágenes. %3</translation>
    </message>
    <message>
        <source>It is not cleared for anybody.</source>
        <translation>No está autorizado para nadie.</translation>
    </message>
    <message>
        <source>The folder of the data</source>
        <translation>La carpeta de los datos</translation>
    </message>
    <message>
        <source>My class</source>
        <translation>Mi clase</translation>
    </message>
    <message>
        <source>Bringing the data in</source>
        <translation>Trayendo los datos</translation>
    </message>
    <message>
        <source>These pictures show other children too: %1. To keep one for them, cover %2 in it first.</source>
        <translation>En estas imágenes salen más niños y niñas: %1. Para conservar una, cubrir antes a %2 en ella.</translation>
    </message>
    <message>
        <source>Packed books, data taken out, backups and prints made before are out of reach.</source>
        <translation>Los libros empaquetados, los datos sacados, las copias y lo impreso antes quedan fuera de alcance.</translation>
    </message>
    <message>
        <source>Keep for the others, with what is covered in them: %1</source>
        <translation>Conservar para los demás, con lo cubierto en ellas: %1</translation>
    </message>
    <message>
        <source>%1 is in pictures with other children; nothing was done.</source>
        <translation>%1 sale en imágenes con más niños y niñas; no se hizo nada.</translation>
    </message>
    <message>
        <source>Covering pictures for good</source>
        <translation>Cubriendo imágenes para siempre</translation>
    </message>
    <message>
        <source>%1 was changed meanwhile; nothing was done.</source>
        <translation>%1 cambió entretanto; no se hizo nada.</translation>
    </message>
    <message>
        <source>Take the data out...</source>
        <translation>Sacar los datos...</translation>
    </message>
    <message>
        <source>Bring data in...</source>
        <translation>Traer datos...</translation>
    </message>
    <message>
        <source>In Listen</source>
        <translation>En Escuchar</translation>
    </message>
    <message>
        <source>Find in the whole book...</source>
        <translation>Buscar en todo el libro...</translation>
    </message>
    <message>
        <source>Groups</source>
        <translation>Grupos</translation>
    </message>
    <message>
        <source>Meetings</source>
        <translation>Asambleas</translation>
    </message>
    <message>
        <source>Looking back</source>
        <translation>Volver a mirar</translation>
    </message>
    <message>
        <source>A draft for a wall</source>
        <translation>Un borrador para la pared</translation>
    </message>
    <message>
        <source>First steps</source>
        <translation>Primeros pasos</translation>
    </message>
    <message>
        <source>The Wrens, autumn</source>
        <translation>Los Gorriones, otoño</translation>
    </message>
    <message>
        <source>Write the name of your class. The book is kept in %1; the menu Book begins one elsewhere.</source>
        <translation>Escribir el nombre de la clase. El libro se guarda en %1; el menú Libro empieza uno en otro lugar.</translation>
    </message>
    <message>
        <source>Six short steps with pictures, from nothing to a panel on the wall.</source>
        <translation>Seis pasos cortos con imágenes, de la nada a un panel en la pared.</translation>
    </message>
    <message>
        <source>Show the first steps</source>
        <translation>Mostrar los primeros pasos</translation>
    </message>
    <message>
        <source>Carry, bring back, erase.</source>
        <translation>Llevar, recuperar, borrar.</translation>
    </message>
    <message>
        <source>The term&apos;s file asks again what families allow. A packed book and data hold everything.</source>
        <translation>El archivo del trimestre vuelve a preguntar qué permiten las familias. Un libro empaquetado y los datos contienen todo.</translation>
    </message>
    <message>
        <source>Everything in the book as JSON, as CSV files for a spreadsheet, and as pictures, with a page that tells what is what.</source>
        <translation>Todo lo del libro como JSON, como archivos CSV para una hoja de cálculo y como imágenes, con una página que explica qué es cada cosa.</translation>
    </message>
    <message>
        <source>Bring data in</source>
        <translation>Traer datos</translation>
    </message>
    <message>
        <source>A folder of data becomes the same book again, in a folder of its own.</source>
        <translation>Una carpeta de datos vuelve a ser el mismo libro, en una carpeta propia.</translation>
    </message>
    <message>
        <source>In a meeting</source>
        <translation>En una reunión</translation>
    </message>
    <message>
        <source>That child speaks</source>
        <translation>Habla ese niño</translation>
    </message>
    <message>
        <source>A letter</source>
        <translation>Una letra</translation>
    </message>
    <message>
        <source>We agree; we do not agree; a changed mind</source>
        <translation>De acuerdo; en desacuerdo; cambio de opinión</translation>
    </message>
    <message>
        <source>F2; F5; F3</source>
        <translation>F2; F5; F3</translation>
    </message>
    <message>
        <source>For another day; back; next group</source>
        <translation>Otro día; atrás; grupo siguiente</translation>
    </message>
    <message>
        <source>F4; F8; F9</source>
        <translation>F4; F8; F9</translation>
    </message>
    <message>
        <source>In what you saw</source>
        <translation>En lo observado</translation>
    </message>
    <message>
        <source>Keep the note and begin another</source>
        <translation>Guardar la nota y empezar otra</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <translation>Ctrl+Intro</translation>
    </message>
    <message>
        <source>Print sheets to answer on...</source>
        <translation>Imprimir hojas para responder...</translation>
    </message>
    <message>
        <source>Note what you see</source>
        <translation>Anotar lo que se ve</translation>
    </message>
    <message>
        <source>Say first what happened; its questions stand on the sheets.</source>
        <translation>Diga primero qué pasó; sus preguntas van en las hojas.</translation>
    </message>
    <message>
        <source>Sheets to answer on</source>
        <translation>Hojas para responder</translation>
    </message>
    <message>
        <source>Making the sheets</source>
        <translation>Haciendo las hojas</translation>
    </message>
    <message>
        <source>%1 to answer on. They are at %2.</source>
        <translation>%1 para responder. Están en %2.</translation>
    </message>
    <message>
        <source>1 page</source>
        <translation>1 página</translation>
    </message>
    <message>
        <source>%1 pages</source>
        <translation>%1 páginas</translation>
    </message>
    <message>
        <source>The piece in hand</source>
        <translation>La pieza en mano</translation>
    </message>
    <message>
        <source>To be deleted or made anew by hand: %1.</source>
        <translation>Por borrar o hacer de nuevo a mano: %1.</translation>
    </message>
    <message>
        <source>The limits are kept on this computer.</source>
        <translation>Los límites quedan guardados en este equipo.</translation>
    </message>
    <message>
        <source>Only the piece in the hand: %1</source>
        <translation>Solo la pieza en la mano: %1</translation>
    </message>
    <message>
        <source>Pictures (*.jpg)</source>
        <translation>Imágenes (*.jpg)</translation>
    </message>
    <message>
        <source>Making the picture</source>
        <translation>Haciendo la imagen</translation>
    </message>
    <message>
        <source>To take down or make anew</source>
        <translation>Por descolgar o hacer de nuevo</translation>
    </message>
    <message>
        <source>How long it is kept</source>
        <translation>Hasta cuándo se guarda</translation>
    </message>
    <message>
        <source>After that day the book asks to be packed away or erased.</source>
        <translation>Pasado ese día, el libro pide que se empaquete o se borre.</translation>
    </message>
    <message>
        <source>Set the day</source>
        <translation>Poner el día</translation>
    </message>
    <message>
        <source>Looking for earlier days</source>
        <translation>Buscando días anteriores</translation>
    </message>
    <message>
        <source>The last day, written as 2027-07-31. Empty: no day.</source>
        <translation>El último día, escrito como 2027-07-31. Vacío: ningún día.</translation>
    </message>
    <message>
        <source>%1 is no day. Write it as 2027-07-31.</source>
        <translation>%1 no es un día. Escribirlo como 2027-07-31.</translation>
    </message>
    <message>
        <source>Add a photo of the wall</source>
        <translation>Añadir una foto de la pared</translation>
    </message>
    <message>
        <source>Taking in the photo</source>
        <translation>Recogiendo la foto</translation>
    </message>
    <message>
        <source>Photo of the wall</source>
        <translation>Foto de la pared</translation>
    </message>
    <message>
        <source>Say who stands in front of it; then the term&apos;s file can show it.</source>
        <translation>Decir quién está delante; después puede ir en el archivo del trimestre.</translation>
    </message>
    <message>
        <source>Find in the groups</source>
        <translation>Buscar en los grupos</translation>
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
        <source>%1, photo of the wall: %2</source>
        <translation>%1, foto de la pared: %2</translation>
    </message>
    <message>
        <source>A file for each panel</source>
        <translation>Un archivo por panel</translation>
    </message>
    <message>
        <source>These files are there already: %1</source>
        <translation>Estos archivos ya existen: %1</translation>
    </message>
    <message>
        <source>Replace them</source>
        <translation>Reemplazarlos</translation>
    </message>
    <message>
        <source>Pictures and scans (*.jpg *.jpeg *.png *.webp *.tif *.tiff *.heic *.pdf)</source>
        <translation>Imágenes y escaneos (*.jpg *.jpeg *.png *.webp *.tif *.tiff *.heic *.pdf)</translation>
    </message>
    <message>
        <source>Wait until this is done: %1.</source>
        <translation>Hay que esperar a que termine: %1.</translation>
    </message>
    <message>
        <source>Name and language...</source>
        <translation>Nombre e idioma...</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::MeetingRun</name>
    <message>
        <source>Meeting</source>
        <translation>Asamblea</translation>
    </message>
    <message>
        <source>What is said</source>
        <translation>Lo que se dice</translation>
    </message>
    <message>
        <source>Kept a group for today</source>
        <translation>Dejar un grupo para hoy</translation>
    </message>
    <message>
        <source>Carried a group to another day</source>
        <translation>Pasar un grupo a otro día</translation>
    </message>
    <message>
        <source>%1 changed their mind. What does %1 think now?</source>
        <translation>%1 cambió de idea. ¿Qué piensa %1 ahora?</translation>
    </message>
    <message>
        <source>%1 answers %2. Enter keeps it, Esc leaves it.</source>
        <translation>%1 responde a %2. Intro lo guarda, Esc lo descarta.</translation>
    </message>
    <message>
        <source>Who changed their mind? Press the child&apos;s letter.</source>
        <translation>¿Quién cambió de idea? Pulsar su letra.</translation>
    </message>
    <message>
        <source>A note of the meeting</source>
        <translation>Una nota de la asamblea</translation>
    </message>
    <message>
        <source>%1&apos;s answer</source>
        <translation>Respuesta de %1</translation>
    </message>
    <message>
        <source>Held the meeting</source>
        <translation>Hacer la asamblea</translation>
    </message>
    <message>
        <source>What do we agree on?</source>
        <translation>¿En qué estamos de acuerdo?</translation>
    </message>
    <message>
        <source>What do we not agree on?</source>
        <translation>¿En qué no estamos de acuerdo?</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Primero</translation>
    </message>
    <message>
        <source>Second</source>
        <translation>Segundo</translation>
    </message>
    <message>
        <source>Third</source>
        <translation>Tercero</translation>
    </message>
    <message>
        <source>Fourth</source>
        <translation>Cuarto</translation>
    </message>
    <message>
        <source>Fifth</source>
        <translation>Quinto</translation>
    </message>
    <message>
        <source>Sixth</source>
        <translation>Sexto</translation>
    </message>
    <message>
        <source>Meeting on %1</source>
        <translation>Asamblea del %1</translation>
    </message>
    <message>
        <source>What we agree on</source>
        <translation>En qué estamos de acuerdo</translation>
    </message>
    <message>
        <source>Someone changed their mind</source>
        <translation>Alguien cambió de idea</translation>
    </message>
    <message>
        <source>Talk about it today</source>
        <translation>Hablar de ello hoy</translation>
    </message>
    <message>
        <source>Carry to another day</source>
        <translation>Pasar a otro día</translation>
    </message>
    <message>
        <source>Dark on light</source>
        <translation>Oscuro sobre claro</translation>
    </message>
    <message>
        <source>Light on dark</source>
        <translation>Claro sobre oscuro</translation>
    </message>
    <message>
        <source>%1 of %2. %3.</source>
        <translation>%1 de %2. %3.</translation>
    </message>
    <message>
        <source>one group</source>
        <translation>un grupo</translation>
    </message>
    <message>
        <source>%1 groups</source>
        <translation>%1 grupos</translation>
    </message>
    <message>
        <source>1 minute</source>
        <translation>1 minuto</translation>
    </message>
    <message>
        <source>%1 minutes</source>
        <translation>%1 minutos</translation>
    </message>
    <message>
        <source>No group is planned</source>
        <translation>No hay ningún grupo previsto</translation>
    </message>
    <message>
        <source>%1 (for another day)</source>
        <translation>%1 (para otro día)</translation>
    </message>
    <message>
        <source>What was answered to this today</source>
        <translation>Lo que hoy se respondió a esto</translation>
    </message>
    <message>
        <source>Who is speaking? Press the child&apos;s letter, type, Enter.</source>
        <translation>¿Quién habla? Pulsar su letra, escribir, Intro.</translation>
    </message>
    <message>
        <source>Not yet spoken: %1</source>
        <translation>Sin hablar aún: %1</translation>
    </message>
    <message>
        <source>%1: %2, %3 today.</source>
        <translation>%1: %2, %3 hoy.</translation>
    </message>
    <message>
        <source>1 idea</source>
        <translation>1 idea</translation>
    </message>
    <message>
        <source>%1 ideas</source>
        <translation>%1 ideas</translation>
    </message>
    <message>
        <source>1 answer</source>
        <translation>1 respuesta</translation>
    </message>
    <message>
        <source>%1 answers</source>
        <translation>%1 respuestas</translation>
    </message>
    <message>
        <source>Arrow keys: another idea. Esc ends the meeting. Everything said is kept.</source>
        <translation>Flechas: otra idea. Esc termina la asamblea. Todo lo dicho se guarda.</translation>
    </message>
    <message>
        <source>Back: %1</source>
        <translation>Atrás: %1</translation>
    </message>
    <message>
        <source>End the meeting</source>
        <translation>Terminar la asamblea</translation>
    </message>
    <message>
        <source>Next group: %1</source>
        <translation>Grupo siguiente: %1</translation>
    </message>
    <message>
        <source>What we do not agree on</source>
        <translation>En qué no estamos de acuerdo</translation>
    </message>
    <message>
        <source>%1 thinks on. Enter keeps it, Esc leaves it.</source>
        <translation>%1 sigue pensando. Intro lo guarda, Esc lo deja.</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::MeetingsPage</name>
    <message>
        <source>Planned a meeting</source>
        <translation>Planear una asamblea</translation>
    </message>
    <message>
        <source>Put a group into a meeting</source>
        <translation>Llevar un grupo a una asamblea</translation>
    </message>
    <message>
        <source>1 meeting held.</source>
        <translation>1 asamblea hecha.</translation>
    </message>
    <message>
        <source>%1 meetings held.</source>
        <translation>%1 asambleas hechas.</translation>
    </message>
    <message>
        <source>%1 The next has %2.</source>
        <translation>%1 La próxima tiene %2.</translation>
    </message>
    <message>
        <source>1 group</source>
        <translation>1 grupo</translation>
    </message>
    <message>
        <source>%1 groups</source>
        <translation>%1 grupos</translation>
    </message>
    <message>
        <source>The words are shown large; a child&apos;s letter takes down what the child answers.</source>
        <translation>Las palabras se ven grandes; con la letra de cada cual se anota su respuesta.</translation>
    </message>
    <message>
        <source>Begin the meeting</source>
        <translation>Empezar la asamblea</translation>
    </message>
    <message>
        <source>Choose two or three groups to give back to the class.</source>
        <translation>Elegir dos o tres grupos para devolver a la clase.</translation>
    </message>
    <message>
        <source>Go to the groups</source>
        <translation>Ir a los grupos</translation>
    </message>
    <message>
        <source>Plan a meeting</source>
        <translation>Planear una asamblea</translation>
    </message>
    <message>
        <source>In a meeting the children&apos;s words stand large, one idea at a time, and what others answer is kept under it.</source>
        <translation>En una asamblea las palabras de los niños y las niñas se ven grandes, una idea cada vez, y debajo se guarda lo que se responde.</translation>
    </message>
    <message>
        <source>The next meeting: %1</source>
        <translation>La próxima asamblea: %1</translation>
    </message>
    <message>
        <source>A day earlier</source>
        <translation>Un día antes</translation>
    </message>
    <message>
        <source>A day later</source>
        <translation>Un día después</translation>
    </message>
    <message>
        <source>Another day for the meeting</source>
        <translation>Otro día para la asamblea</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>Order of the groups</source>
        <translation>Orden de los grupos</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>Not in this meeting</source>
        <translation>No en esta asamblea</translation>
    </message>
    <message>
        <source>Left a group out</source>
        <translation>Dejar fuera un grupo</translation>
    </message>
    <message>
        <source>read out</source>
        <translation>se lee</translation>
    </message>
    <message>
        <source>not read out</source>
        <translation>no se lee</translation>
    </message>
    <message>
        <source>Whose words are read out</source>
        <translation>Qué palabras se leen</translation>
    </message>
    <message>
        <source>Into the meeting: %1</source>
        <translation>A la asamblea: %1</translation>
    </message>
    <message>
        <source>Not in it yet</source>
        <translation>Aún fuera</translation>
    </message>
    <message>
        <source>Make a draft for a wall</source>
        <translation>Hacer un borrador para la pared</translation>
    </message>
    <message>
        <source>We agree</source>
        <translation>Estamos de acuerdo</translation>
    </message>
    <message>
        <source>We do not agree</source>
        <translation>No estamos de acuerdo</translation>
    </message>
    <message>
        <source>%1 changed their mind</source>
        <translation>%1 cambió de idea</translation>
    </message>
    <message>
        <source>For another day: %1</source>
        <translation>Para otro día: %1</translation>
    </message>
    <message>
        <source>No meeting was held yet.</source>
        <translation>Todavía no hubo ninguna reunión.</translation>
    </message>
    <message>
        <source>In this order. Press a slip to leave it out of what is read, or to take it in again.</source>
        <translation>En este orden. Una ficha que se pulsa no se lee, o se vuelve a leer.</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::Note</name>
    <message>
        <source>Beside the piece in hand</source>
        <translation>Junto a la pieza en la mano</translation>
    </message>
    <message>
        <source>Limit: %1.</source>
        <translation>Límite: %1.</translation>
    </message>
    <message>
        <source>Bigger</source>
        <translation>Agrandar</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Reducir</translation>
    </message>
    <message>
        <source>Crop</source>
        <translation>Recortar</translation>
    </message>
    <message>
        <source>Swap</source>
        <translation>Cambiar</translation>
    </message>
    <message>
        <source>Pin out</source>
        <translation>Desfijar</translation>
    </message>
    <message>
        <source>Pin here</source>
        <translation>Fijar aquí</translation>
    </message>
    <message>
        <source>Take off</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Supr</translation>
    </message>
    <message>
        <source>Turn, straighten, cover</source>
        <translation>Girar, enderezar, tapar</translation>
    </message>
    <message>
        <source>Once more</source>
        <translation>Duplicar</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>Write the caption</source>
        <translation>Escribir el pie de foto</translation>
    </message>
    <message>
        <source>Shorten</source>
        <translation>Acortar</translation>
    </message>
    <message>
        <source>Write</source>
        <translation>Escribir</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>All the words</source>
        <translation>Todas las palabras</translation>
    </message>
    <message>
        <source>Leave the names out</source>
        <translation>Quitar los nombres</translation>
    </message>
    <message>
        <source>Name who is in it</source>
        <translation>Poner los nombres</translation>
    </message>
    <message>
        <source>Nobody here may be named.</source>
        <translation>Aquí no se puede nombrar a nadie.</translation>
    </message>
    <message>
        <source>On this wall: %1</source>
        <translation>En esta pared: %1</translation>
    </message>
    <message>
        <source>The words stay as they were said, here in full.</source>
        <translation>Las palabras quedan como se dijeron, aquí completas.</translation>
    </message>
    <message>
        <source>Said in full: %1</source>
        <translation>Dicho completo: %1</translation>
    </message>
    <message>
        <source>Not shown: %1</source>
        <translation>No se muestra: %1</translation>
    </message>
    <message>
        <source>Cleared for %1.</source>
        <translation>Con permiso para %1.</translation>
    </message>
    <message>
        <source>%1 × %2 mm.</source>
        <translation>%1 × %2 mm.</translation>
    </message>
    <message>
        <source>Pinned by you.</source>
        <translation>Fijada a mano.</translation>
    </message>
    <message>
        <source>Kept together with others.</source>
        <translation>Se mantiene junto a otras.</translation>
    </message>
    <message>
        <source>The panel is locked: no arranging changes it.</source>
        <translation>El panel está bloqueado: ordenar no lo cambia.</translation>
    </message>
    <message>
        <source>Drag the picture in its frame, or use the arrow keys. + and − look nearer or wider. Enter when it is right.</source>
        <translation>Arrastrar la imagen en su marco, o usar las flechas. Con + y − se ve más cerca o más amplio. Intro cuando esté bien.</translation>
    </message>
    <message>
        <source>Now choose the piece to trade places with. Esc leaves it.</source>
        <translation>Ahora, elegir la pieza con la que cambia de lugar. Esc lo deja.</translation>
    </message>
    <message>
        <source>Say who is in it</source>
        <translation>Decir quién sale</translation>
    </message>
    <message>
        <source>Why it is here</source>
        <translation>Por qué está aquí</translation>
    </message>
    <message>
        <source>%1 pieces in your hand</source>
        <translation>%1 piezas en la mano</translation>
    </message>
    <message>
        <source>Into one line with the first (%1), or the same room between them.</source>
        <translation>En línea con la primera (%1), o con el mismo espacio entre ellas.</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Arriba</translation>
    </message>
    <message>
        <source>Centre</source>
        <translation>Columna</translation>
    </message>
    <message>
        <source>Middle</source>
        <translation>Fila</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecha</translation>
    </message>
    <message>
        <source>Foot</source>
        <translation>Abajo</translation>
    </message>
    <message>
        <source>Across</source>
        <translation>A lo ancho</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>A lo alto</translation>
    </message>
    <message>
        <source>Bring into line: %1</source>
        <translation>Alinear: %1</translation>
    </message>
    <message>
        <source>The same room between: %1</source>
        <translation>El mismo espacio entre ellas: %1</translation>
    </message>
    <message>
        <source>Arrange only these</source>
        <translation>Ordenar solo estas</translation>
    </message>
    <message>
        <source>No longer together</source>
        <translation>Dejar sueltas</translation>
    </message>
    <message>
        <source>Keep together</source>
        <translation>Mantener juntas</translation>
    </message>
    <message>
        <source>Words keep their size. Shift trades places with the piece under it, Ctrl leaves the grid.</source>
        <translation>Las palabras mantienen su tamaño. Mayús cambia de lugar con la pieza de debajo, Ctrl sale de la cuadrícula.</translation>
    </message>
    <message>
        <source>And 1 other.</source>
        <translation>Y 1 más.</translation>
    </message>
    <message>
        <source>And %1 others.</source>
        <translation>Y %1 más.</translation>
    </message>
    <message>
        <source>Nothing else moves.</source>
        <translation>Nada más se mueve.</translation>
    </message>
    <message>
        <source>Nothing leaves the panel.</source>
        <translation>Nada sale del panel.</translation>
    </message>
    <message>
        <source>Make it %1</source>
        <translation>Hacerlo de %1</translation>
    </message>
    <message>
        <source>Larger words</source>
        <translation>Palabras más grandes</translation>
    </message>
    <message>
        <source>On %1 panels</source>
        <translation>En %1 paneles</translation>
    </message>
    <message>
        <source>Left as it is: %1</source>
        <translation>Se deja como está: %1</translation>
    </message>
    <message>
        <source>Leave it, and say why</source>
        <translation>Dejarlo y decir por qué</translation>
    </message>
    <message>
        <source>Another reason</source>
        <translation>Otro motivo</translation>
    </message>
    <message>
        <source>What would suit better</source>
        <translation>Lo que convendría más</translation>
    </message>
    <message>
        <source>Leave it so</source>
        <translation>Dejarlo así</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::PanelChoice</name>
    <message>
        <source>Leave it as it is</source>
        <translation>Dejarlo como está</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::PermissionGrid</name>
    <message>
        <source>%1, %2, %3: %4</source>
        <translation>%1, %2, %3: %4</translation>
    </message>
    <message>
        <source>not said, counts as no</source>
        <translation>sin decir, cuenta como no</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>permiso retirado</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>words</source>
        <translation>palabras</translation>
    </message>
    <message>
        <source>work</source>
        <translation>obra</translation>
    </message>
    <message>
        <source>photo and name</source>
        <translation>foto y nombre</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::PictureChoice</name>
    <message>
        <source>No picture</source>
        <translation>Sin imagen</translation>
    </message>
    <message>
        <source>Take this picture</source>
        <translation>Tomar esta imagen</translation>
    </message>
    <message>
        <source>A picture</source>
        <translation>Una imagen</translation>
    </message>
    <message>
        <source>No picture yet. Add one under Pictures.</source>
        <translation>Todavía no hay imágenes. Añada una en Imágenes.</translation>
    </message>
    <message>
        <source>Which picture?</source>
        <translation>¿Qué imagen?</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::PictureList</name>
    <message>
        <source>not looked at yet</source>
        <translation>aún sin mirar</translation>
    </message>
    <message>
        <source>nobody to recognise</source>
        <translation>no se reconoce a nadie</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation>Imágenes</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::PictureSheet</name>
    <message>
        <source>The picture</source>
        <translation>La imagen</translation>
    </message>
    <message>
        <source>Corner %1 of 4: %2 across, %3 down</source>
        <translation>Esquina %1 de 4: %2 a lo ancho, %3 a lo alto</translation>
    </message>
    <message>
        <source>%1 across, %2 down, %3 wide, %4 high</source>
        <translation>%1 a lo ancho, %2 a lo alto, %3 de ancho, %4 de alto</translation>
    </message>
    <message>
        <source>Must stay: %1</source>
        <translation>Debe quedar: %1</translation>
    </message>
    <message>
        <source>Covered part %1 of %2: %3</source>
        <translation>Parte tapada %1 de %2: %3</translation>
    </message>
    <message>
        <source>Nothing is marked</source>
        <translation>Nada está marcado</translation>
    </message>
    <message>
        <source>Nothing is covered</source>
        <translation>Nada está tapado</translation>
    </message>
    <message>
        <source>Reading the picture</source>
        <translation>Leyendo la imagen</translation>
    </message>
    <message>
        <source>The four corners have to go round a page.</source>
        <translation>Las cuatro esquinas tienen que rodear una página.</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::PictureTable</name>
    <message>
        <source>How the page comes out</source>
        <translation>Cómo queda la página</translation>
    </message>
    <message>
        <source>What is done here is done to the picture, wherever it hangs. The original stays.</source>
        <translation>Lo que se hace aquí vale para la imagen, cuelgue donde cuelgue. El original se conserva.</translation>
    </message>
    <message>
        <source>Back to the panel</source>
        <translation>Volver al panel</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Must stay</source>
        <translation>Debe quedar</translation>
    </message>
    <message>
        <source>Straighten</source>
        <translation>Enderezar</translation>
    </message>
    <message>
        <source>Cover</source>
        <translation>Tapar</translation>
    </message>
    <message>
        <source>In patches</source>
        <translation>A cuadros</translation>
    </message>
    <message>
        <source>Blurred</source>
        <translation>Borroso</translation>
    </message>
    <message>
        <source>Plain</source>
        <translation>Liso</translation>
    </message>
    <message>
        <source>Cover: %1</source>
        <translation>Tapar: %1</translation>
    </message>
    <message>
        <source>What can be done with the picture</source>
        <translation>Lo que se puede hacer con la imagen</translation>
    </message>
    <message>
        <source>Oval</source>
        <translation>Óvalo</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Supr</translation>
    </message>
    <message>
        <source>Turn to the right</source>
        <translation>Girar a la derecha</translation>
    </message>
    <message>
        <source>Turn to the left</source>
        <translation>Girar a la izquierda</translation>
    </message>
    <message>
        <source>Even out the light</source>
        <translation>Igualar la luz</translation>
    </message>
    <message>
        <source>Show as it came</source>
        <translation>Ver como llegó</translation>
    </message>
    <message>
        <source>The picture cannot be read.</source>
        <translation>No se puede leer la imagen.</translation>
    </message>
    <message>
        <source>Drag the four corners onto the corners of the page. Space takes the next one, arrows move it, with Alt finely.</source>
        <translation>Arrastrar las cuatro esquinas a las esquinas de la página. Espacio toma la siguiente, las flechas la mueven, con Alt más fino.</translation>
    </message>
    <message>
        <source>Straighten so</source>
        <translation>Enderezar así</translation>
    </message>
    <message>
        <source>Leave it as it lies</source>
        <translation>Dejarla como está</translation>
    </message>
    <message>
        <source>Draw over what nobody shall recognise. Arrows move the part in hand, with Shift they size it; Space takes the next.</source>
        <translation>Dibujar sobre lo que nadie debe reconocer. Las flechas mueven la parte en la mano, con Mayús le dan tamaño; Espacio toma la siguiente.</translation>
    </message>
    <message>
        <source>Cover a part</source>
        <translation>Tapar una parte</translation>
    </message>
    <message>
        <source>Take this cover off</source>
        <translation>Destapar esta parte</translation>
    </message>
    <message>
        <source>Draw round the part that no crop may cut. Arrows move it, with Shift they size it.</source>
        <translation>Rodear la parte que ningún recorte debe cortar. Las flechas la mueven, con Mayús le dan tamaño.</translation>
    </message>
    <message>
        <source>Mark the middle</source>
        <translation>Marcar el centro</translation>
    </message>
    <message>
        <source>Nothing must stay</source>
        <translation>Quitar la marca</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::PicturesDialog</name>
    <message>
        <source>Every panel of the display</source>
        <translation>Todos los paneles de la exposición</translation>
    </message>
    <message>
        <source>The piece in the hand</source>
        <translation>La pieza en la mano</translation>
    </message>
    <message>
        <source>PNG: every letter stays sharp</source>
        <translation>PNG: cada letra queda nítida</translation>
    </message>
    <message>
        <source>JPEG: a small file</source>
        <translation>JPEG: un archivo pequeño</translation>
    </message>
    <message>
        <source>As pictures</source>
        <translation>Como imágenes</translation>
    </message>
    <message>
        <source>Nothing is in them but what is seen, as its audience may see it.</source>
        <translation>No contienen más que lo que se ve, tal como su público puede verlo.</translation>
    </message>
    <message>
        <source>For one piece alone, take it in the hand in Compose first.</source>
        <translation>Para una sola pieza, tomarla antes en la mano en Componer.</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Ahora no</translation>
    </message>
    <message>
        <source>Make pictures</source>
        <translation>Hacer imágenes</translation>
    </message>
    <message>
        <source>How wide</source>
        <translation>Qué ancho</translation>
    </message>
    <message>
        <source>Width in pixels</source>
        <translation>Ancho en píxeles</translation>
    </message>
    <message>
        <source>pixels</source>
        <translation>píxeles</translation>
    </message>
    <message>
        <source>A message</source>
        <translation>Un mensaje</translation>
    </message>
    <message>
        <source>A newsletter</source>
        <translation>Un boletín</translation>
    </message>
    <message>
        <source>A print</source>
        <translation>Una copia impresa</translation>
    </message>
    <message>
        <source>In which form</source>
        <translation>En qué formato</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::PicturesTask</name>
    <message>
        <source>Drop photos and scanned drawings here. Nobody sees them until you say who is in them.</source>
        <translation>Soltar aquí fotos y dibujos escaneados. Nadie los ve hasta que se dice quién sale.</translation>
    </message>
    <message>
        <source>Add pictures</source>
        <translation>Añadir imágenes</translation>
    </message>
    <message>
        <source>A whole folder</source>
        <translation>Una carpeta entera</translation>
    </message>
    <message>
        <source>Who is in it?</source>
        <translation>¿Quién sale?</translation>
    </message>
    <message>
        <source>Nobody can be recognised</source>
        <translation>No se reconoce a nadie</translation>
    </message>
    <message>
        <source>A photo</source>
        <translation>Una foto</translation>
    </message>
    <message>
        <source>Something a child made</source>
        <translation>Hecho por un niño o niña</translation>
    </message>
    <message>
        <source>Kind of picture</source>
        <translation>Tipo de imagen</translation>
    </message>
    <message>
        <source>Caption</source>
        <translation>Pie de foto</translation>
    </message>
    <message>
        <source>Taken by</source>
        <translation>Tomada por</translation>
    </message>
    <message>
        <source>Who is in it? Nobody sees it until you say so.</source>
        <translation>¿Quién sale? Nadie la ve hasta que se dice.</translation>
    </message>
    <message>
        <source>Who made it?</source>
        <translation>¿Quién lo hizo?</translation>
    </message>
    <message>
        <source>Who is in the picture</source>
        <translation>Quién sale en la imagen</translation>
    </message>
    <message>
        <source>No picture yet.</source>
        <translation>Aún no hay imágenes.</translation>
    </message>
    <message>
        <source>Photos and scanned drawings; originals are never changed.</source>
        <translation>Fotos y dibujos escaneados; los originales no se cambian nunca.</translation>
    </message>
    <message>
        <source>1 picture.</source>
        <translation>1 imagen.</translation>
    </message>
    <message>
        <source>%1 pictures.</source>
        <translation>%1 imágenes.</translation>
    </message>
    <message>
        <source>Somebody has said who is in each of them.</source>
        <translation>De todas se ha dicho quién sale.</translation>
    </message>
    <message>
        <source>1 is not looked at yet.</source>
        <translation>1 está aún sin mirar.</translation>
    </message>
    <message>
        <source>%1 are not looked at yet.</source>
        <translation>%1 están aún sin mirar.</translation>
    </message>
    <message>
        <source>Next to look at</source>
        <translation>Siguiente por mirar</translation>
    </message>
    <message>
        <source>Take words down</source>
        <translation>Anotar palabras</translation>
    </message>
    <message>
        <source>Day it hung so</source>
        <translation>Día en que colgaba así</translation>
    </message>
    <message>
        <source>Nothing on the panels can be made out</source>
        <translation>No se distingue nada de los paneles</translation>
    </message>
    <message>
        <source>Who stands in front of it? Whoever is on the panels counts too.</source>
        <translation>¿Quién está delante? Quien está en los paneles también cuenta.</translation>
    </message>
    <message>
        <source>%1, as it hung on</source>
        <translation>%1, tal como colgaba el</translation>
    </message>
    <message>
        <source>Day of the photo</source>
        <translation>Día de la foto</translation>
    </message>
    <message>
        <source>What can be made out</source>
        <translation>Qué se distingue</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::PrintPage</name>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Overlap</source>
        <translation>Superposición</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Margen</translation>
    </message>
    <message>
        <source>The 100 mm ruler on the first sheet measures</source>
        <translation>La regla de 100 mm de la primera hoja mide</translation>
    </message>
    <message>
        <source>What the 100 mm ruler measures, in millimetres</source>
        <translation>Lo que mide la regla de 100 mm, en milímetros</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Sheets to the printer</source>
        <translation>Hojas a la impresora</translation>
    </message>
    <message>
        <source>You see them first; single sheets can be printed again.</source>
        <translation>Antes se ven; se pueden volver a imprimir hojas sueltas.</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>Sheets as a PDF</source>
        <translation>Hojas en un PDF</translation>
    </message>
    <message>
        <source>With one that shows how they go together.</source>
        <translation>Con una que muestra cómo se unen.</translation>
    </message>
    <message>
        <source>Make the sheets</source>
        <translation>Hacer las hojas</translation>
    </message>
    <message>
        <source>A PDF that is trimmed</source>
        <translation>Un PDF con marcas de corte</translation>
    </message>
    <message>
        <source>3 mm of colour beyond the edge and crop marks, for a print shop.</source>
        <translation>3 mm de color más allá del borde y marcas de corte, para una imprenta.</translation>
    </message>
    <message>
        <source>Make it with marks</source>
        <translation>Hacerlo con marcas</translation>
    </message>
    <message>
        <source>A PDF at true size</source>
        <translation>Un PDF a tamaño real</translation>
    </message>
    <message>
        <source>One page for each panel, to keep or to send.</source>
        <translation>Una página por panel, para guardar o enviar.</translation>
    </message>
    <message>
        <source>Make the PDF</source>
        <translation>Hacer el PDF</translation>
    </message>
    <message>
        <source>Pictures of the panels</source>
        <translation>Imágenes de los paneles</translation>
    </message>
    <message>
        <source>For a newsletter or a message. Nothing is in them but what is seen.</source>
        <translation>Para un boletín o un mensaje. No llevan nada más que lo que se ve.</translation>
    </message>
    <message>
        <source>Make pictures</source>
        <translation>Hacer imágenes</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>Overlap %1 mm</source>
        <translation>Superposición: %1 mm</translation>
    </message>
    <message>
        <source>Margin %1 mm</source>
        <translation>Margen: %1 mm</translation>
    </message>
    <message>
        <source>There is no panel yet.</source>
        <translation>Aún no hay ningún panel.</translation>
    </message>
    <message>
        <source>Make one in Compose first.</source>
        <translation>Antes hay que hacer uno en Componer.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>1 sheet</source>
        <translation>1 hoja</translation>
    </message>
    <message>
        <source>%1 sheets</source>
        <translation>%1 hojas</translation>
    </message>
    <message>
        <source>%1 rows of %2 for each panel%3, and one that shows how they go together.</source>
        <translation>Filas por panel: %1, de %2 cada una%3; y una hoja que muestra cómo se unen.</translation>
    </message>
    <message>
        <source>, the paper turned</source>
        <translation>, con el papel girado</translation>
    </message>
    <message>
        <source>There is nothing to print yet.</source>
        <translation>Aún no hay nada que imprimir.</translation>
    </message>
    <message>
        <source>Pictures and grounds take colour on %1 % of the paper.</source>
        <translation>Las imágenes y los fondos llevan color en el %1 % del papel.</translation>
    </message>
    <message>
        <source>%1 on %2 of %3.</source>
        <translation>%1 en %2 de %3.</translation>
    </message>
    <message>
        <source>1 panel</source>
        <translation>1 panel</translation>
    </message>
    <message>
        <source>%1 panels</source>
        <translation>%1 paneles</translation>
    </message>
    <message>
        <source>With what the panels say, as data</source>
        <translation>Con lo que dicen los paneles, como datos</translation>
    </message>
    <message>
        <source>For a program that reads it in other years</source>
        <translation>Para un programa que los lea en otros años</translation>
    </message>
    <message>
        <source>A file for each panel</source>
        <translation>Un archivo por panel</translation>
    </message>
    <message>
        <source>Any printer</source>
        <translation>Cualquier impresora</translation>
    </message>
    <message>
        <source>This computer knows no printer</source>
        <translation>Este ordenador no conoce ninguna impresora</translation>
    </message>
    <message>
        <source>Printer %1</source>
        <translation>Impresora %1</translation>
    </message>
    <message>
        <source>This printer leaves %1 mm at the edge white. With a smaller margin something of every sheet is missing.</source>
        <translation>Esta impresora deja %1 mm del borde en blanco. Con un margen menor falta algo de cada hoja.</translation>
    </message>
    <message>
        <source>Leave out %1</source>
        <translation>Omitir %1</translation>
    </message>
    <message>
        <source>1 sheet that stays white</source>
        <translation>1 hoja que queda en blanco</translation>
    </message>
    <message>
        <source>%1 sheets that stay white</source>
        <translation>%1 hojas que quedan en blanco</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::Rail</name>
    <message>
        <source>Experience: %1</source>
        <translation>Experiencia: %1</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::Seat</name>
    <message>
        <source>%1, has spoken, key %2</source>
        <translation>%1, ya ha hablado, tecla %2</translation>
    </message>
    <message>
        <source>%1, has not yet spoken, key %2</source>
        <translation>%1, aún no ha hablado, tecla %2</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::SeenTask</name>
    <message>
        <source>What do you see?</source>
        <translation>¿Qué ve?</translation>
    </message>
    <message>
        <source>Ctrl+Enter keeps it and begins another.</source>
        <translation>Ctrl+Intro la guarda y empieza otra.</translation>
    </message>
    <message>
        <source>Who was there?</source>
        <translation>¿Quién estaba?</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>A picture...</source>
        <translation>Una imagen...</translation>
    </message>
    <message>
        <source>Nothing noted yet.</source>
        <translation>Todavía no hay notas.</translation>
    </message>
    <message>
        <source>What you saw</source>
        <translation>Lo observado</translation>
    </message>
    <message>
        <source>A picture without words</source>
        <translation>Una imagen sin palabras</translation>
    </message>
    <message>
        <source>Another picture...</source>
        <translation>Otra imagen...</translation>
    </message>
    <message>
        <source>Take the note out</source>
        <translation>Quitar la nota</translation>
    </message>
    <message>
        <source>Another note</source>
        <translation>Otra nota</translation>
    </message>
    <message>
        <source>Kept: what you saw.</source>
        <translation>Guardado: lo observado.</translation>
    </message>
    <message>
        <source>Who was there</source>
        <translation>Quién estaba</translation>
    </message>
    <message>
        <source>Picture of what you saw</source>
        <translation>Imagen de lo observado</translation>
    </message>
    <message>
        <source>Say first what happened.</source>
        <translation>Diga primero qué pasó.</translation>
    </message>
    <message>
        <source>A note belongs to an experience.</source>
        <translation>Una nota pertenece a una experiencia.</translation>
    </message>
    <message>
        <source>Take words down</source>
        <translation>Anotar palabras</translation>
    </message>
    <message>
        <source>1 note of what you saw.</source>
        <translation>1 nota de lo observado.</translation>
    </message>
    <message>
        <source>%1 notes of what you saw.</source>
        <translation>%1 notas de lo observado.</translation>
    </message>
    <message>
        <source>This one is not kept yet.</source>
        <translation>Esta aún no está guardada.</translation>
    </message>
    <message>
        <source>Keep the note</source>
        <translation>Guardar la nota</translation>
    </message>
    <message>
        <source>What you see is yours; the children&apos;s own words go under Take words down.</source>
        <translation>Lo que ve es suyo; las palabras de los niños van en Anotar palabras.</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::Session</name>
    <message>
        <source>This book is open for looking only. Nothing can be changed in it.</source>
        <translation>Este libro está abierto solo para mirar. No se puede cambiar nada en él.</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::SheetPreview</name>
    <message>
        <source>The page</source>
        <translation>La página</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::SheetsDialog</name>
    <message>
        <source>Sheets to answer on</source>
        <translation>Hojas para responder</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Ahora no</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>Make the PDF</source>
        <translation>Hacer el PDF</translation>
    </message>
    <message>
        <source>A box under each question, as large as the child&apos;s age needs.</source>
        <translation>Un recuadro bajo cada pregunta, tan grande como pide la edad.</translation>
    </message>
    <message>
        <source>A sheet for every child</source>
        <translation>Una hoja para cada niño</translation>
    </message>
    <message>
        <source>A sheet for the scribe, with all children</source>
        <translation>Una hoja para quien escribe, con toda la clase</translation>
    </message>
    <message>
        <source>Lines to write on</source>
        <translation>Renglones para escribir</translation>
    </message>
    <message>
        <source>Two on a page, to be cut</source>
        <translation>Dos por página, para cortar</translation>
    </message>
    <message>
        <source>Page before</source>
        <translation>Página anterior</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Página siguiente</translation>
    </message>
    <message>
        <source>Ask in</source>
        <translation>Preguntar en</translation>
    </message>
    <message>
        <source>For the whole class</source>
        <translation>Para toda la clase</translation>
    </message>
    <message>
        <source>On %1</source>
        <translation>En %1</translation>
    </message>
    <message>
        <source>For %1</source>
        <translation>Para %1</translation>
    </message>
    <message>
        <source>1 page.</source>
        <translation>1 página.</translation>
    </message>
    <message>
        <source>%1 pages.</source>
        <translation>%1 páginas.</translation>
    </message>
    <message>
        <source>Say whether they are for the children or for the scribe.</source>
        <translation>Indique si son para los niños o para quien escribe.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::SignButton</name>
    <message>
        <source>no sign</source>
        <translation>sin signo</translation>
    </message>
    <message>
        <source>an eye</source>
        <translation>un ojo</translation>
    </message>
    <message>
        <source>an ear</source>
        <translation>una oreja</translation>
    </message>
    <message>
        <source>a hand</source>
        <translation>una mano</translation>
    </message>
    <message>
        <source>a mouth</source>
        <translation>una boca</translation>
    </message>
    <message>
        <source>a nose</source>
        <translation>una nariz</translation>
    </message>
    <message>
        <source>a thought</source>
        <translation>un pensamiento</translation>
    </message>
    <message>
        <source>a question mark</source>
        <translation>un signo de interrogación</translation>
    </message>
    <message>
        <source>The sign beside the question: %1</source>
        <translation>El signo junto a la pregunta: %1</translation>
    </message>
    <message>
        <source>The picture beside the question</source>
        <translation>La imagen junto a la pregunta</translation>
    </message>
    <message>
        <source>A picture...</source>
        <translation>Una imagen...</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::Sill</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>Cuánto lleva</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Deshacer: %1</translation>
    </message>
    <message>
        <source>%1: %2 of %3</source>
        <translation>%1: %2 de %3</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::StepBack</name>
    <message>
        <source>Larger, to look closely</source>
        <translation>Más grande, para mirar de cerca</translation>
    </message>
    <message>
        <source>Back to the panel</source>
        <translation>Volver al panel</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Eyes of %1, %2 m</source>
        <translation>Ojos de %1, %2 m</translation>
    </message>
    <message>
        <source>%1 (acuity %2)</source>
        <translation>%1 (agudeza %2)</translation>
    </message>
    <message>
        <source>Its middle hangs at %1 m</source>
        <translation>Su centro cuelga a %1 m</translation>
    </message>
    <message>
        <source>From %1 m</source>
        <translation>Desde %1 m</translation>
    </message>
    <message>
        <source>As large as it appears from there, if you sit 60 cm from this screen.</source>
        <translation>Tan grande como se ve desde ahí, a 60 cm de esta pantalla.</translation>
    </message>
    <message>
        <source>Shown at %1 % of how large it appears from there.</source>
        <translation>Se muestra al %1 % de lo grande que se ve desde ahí.</translation>
    </message>
    <message>
        <source>%1 mm tall, easy from %2 mm</source>
        <translation>%1 mm de alto, cómodo desde %2 mm</translation>
    </message>
    <message>
        <source>1 text cannot be read from here</source>
        <translation>1 texto no se puede leer desde aquí</translation>
    </message>
    <message>
        <source>%1 texts cannot be read from here</source>
        <translation>%1 textos no se pueden leer desde aquí</translation>
    </message>
    <message>
        <source>1 text asks for effort</source>
        <translation>1 texto pide esfuerzo</translation>
    </message>
    <message>
        <source>%1 texts ask for effort</source>
        <translation>%1 textos piden esfuerzo</translation>
    </message>
    <message>
        <source>The 1 text can be read from here.</source>
        <translation>El único texto se puede leer desde aquí.</translation>
    </message>
    <message>
        <source>All %1 texts can be read from here.</source>
        <translation>Los %1 textos se pueden leer desde aquí.</translation>
    </message>
    <message>
        <source>With ease: capitals of %1 arcminutes and more (NUREG-0700; for weaker sight in the proportion of DIN 1450). Lost: below %2. Blur and limits are models of eyes, not a test of anybody&apos;s.</source>
        <translation>Cómodo: mayúsculas de %1 minutos de arco o más (NUREG-0700; con vista más débil, en la proporción de DIN 1450). Perdido: por debajo de %2. El desenfoque y los límites son modelos de ojos, no una prueba de los de nadie.</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::StepPictures</name>
    <message>
        <source>Making the pictures of the guide</source>
        <translation>Haciendo las imágenes de la guía</translation>
    </message>
    <message>
        <source>The sample class could not be opened.</source>
        <translation>No se pudo abrir la clase de muestra.</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::Strand</name>
    <message>
        <source>here</source>
        <translation>aquí</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::TermColumn</name>
    <message>
        <source>Walls, as they hung</source>
        <translation>Paredes, tal como estaban</translation>
    </message>
    <message>
        <source>Words and groups</source>
        <translation>Palabras y grupos</translation>
    </message>
    <message>
        <source>Meetings and changed minds</source>
        <translation>Asambleas y cambios de idea</translation>
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
        <source>Who was heard</source>
        <translation>A quién se escuchó</translation>
    </message>
    <message>
        <source>For the classroom</source>
        <translation>Para el aula</translation>
    </message>
    <message>
        <source>For the building</source>
        <translation>Para el edificio</translation>
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
        <source>The term&apos;s file</source>
        <translation>El archivo del trimestre</translation>
    </message>
    <message>
        <source>One document to keep. What families allow is asked again today.</source>
        <translation>Un documento para guardar. Lo que permiten las familias se vuelve a comprobar hoy.</translation>
    </message>
    <message>
        <source>First day, as 2026-09-01</source>
        <translation>Primer día, como 2026-09-01</translation>
    </message>
    <message>
        <source>Last day, as 2026-12-18</source>
        <translation>Último día, como 2026-12-18</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Del</translation>
    </message>
    <message>
        <source>to</source>
        <translation>al</translation>
    </message>
    <message>
        <source>Cover and contents</source>
        <translation>Portada e índice</translation>
    </message>
    <message>
        <source>Pack the whole book to carry</source>
        <translation>Empaquetar todo el libro para llevarlo</translation>
    </message>
    <message>
        <source>Nothing in the book has a day between these two.</source>
        <translation>Nada en el libro tiene fecha entre estos dos días.</translation>
    </message>
    <message>
        <source>%1, %2 pages.</source>
        <translation>%1, %2 páginas.</translation>
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
        <source>Nothing is left out.</source>
        <translation>No falta nada.</translation>
    </message>
    <message>
        <source>1 thing</source>
        <translation>1 cosa</translation>
    </message>
    <message>
        <source>%1 things</source>
        <translation>%1 cosas</translation>
    </message>
    <message>
        <source>Counting the pages.</source>
        <translation>Contando las páginas.</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Páginas</translation>
    </message>
    <message>
        <source>Left out %1:</source>
        <translation>Sin incluir %1:</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::TermView</name>
    <message>
        <source>The term, from its first day to its last</source>
        <translation>El trimestre, del primer día al último</translation>
    </message>
    <message>
        <source>1 answer</source>
        <translation>1 respuesta</translation>
    </message>
    <message>
        <source>%1 answers</source>
        <translation>%1 respuestas</translation>
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
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>%1, on no day yet</source>
        <translation>%1, todavía sin fecha</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::WalkLine</name>
    <message>
        <source>How far from the wall, in millimetres</source>
        <translation>Distancia a la pared, en milímetros</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>pared</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::WallPage</name>
    <message>
        <source>%1 cm</source>
        <translation>%1 cm</translation>
    </message>
    <message>
        <source>What was measured</source>
        <translation>Lo medido</translation>
    </message>
    <message>
        <source>Limit %1. </source>
        <translation>Límite: %1. </translation>
    </message>
    <message>
        <source>Choose another limit</source>
        <translation>Elegir otro límite</translation>
    </message>
    <message>
        <source>Hanging list</source>
        <translation>Lista para colgar</translation>
    </message>
    <message>
        <source>Nothing hangs here yet. Propose places, then drag what you like.</source>
        <translation>Aquí aún no cuelga nada. Proponer lugares y después arrastrar lo que se quiera.</translation>
    </message>
    <message>
        <source>Make a panel in Compose first.</source>
        <translation>Antes hay que hacer un panel en Componer.</translation>
    </message>
    <message>
        <source>from left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>abajo</translation>
    </message>
    <message>
        <source>top</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>Print the list</source>
        <translation>Imprimir la lista</translation>
    </message>
    <message>
        <source>Measured: %1</source>
        <translation>Medir: %1</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Take off</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Take off: %1</source>
        <translation>Quitar: %1</translation>
    </message>
    <message>
        <source>From left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>Bottom</source>
        <translation>Abajo</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Del suelo</translation>
    </message>
    <message>
        <source>For children</source>
        <translation>Para niños y niñas</translation>
    </message>
    <message>
        <source>For grown-ups</source>
        <translation>Para personas adultas</translation>
    </message>
    <message>
        <source>For children and grown-ups</source>
        <translation>Para niños, niñas y personas adultas</translation>
    </message>
    <message>
        <source>Measure one wall: width, height, door.</source>
        <translation>Medir una pared: ancho, alto, puerta.</translation>
    </message>
    <message>
        <source>It takes two minutes and lasts the year.</source>
        <translation>Son dos minutos y sirve todo el año.</translation>
    </message>
    <message>
        <source>Measure a wall</source>
        <translation>Medir una pared</translation>
    </message>
    <message>
        <source>Moved %1</source>
        <translation>Mover: %1</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Pared</translation>
    </message>
    <message>
        <source>Add a door, a window</source>
        <translation>Añadir puerta o ventana</translation>
    </message>
    <message>
        <source>Propose places</source>
        <translation>Proponer lugares</translation>
    </message>
    <message>
        <source>On one line at the eyes, clear of doors and signs</source>
        <translation>En una línea a la altura de los ojos, sin tapar puertas ni señales</translation>
    </message>
    <message>
        <source>Measured a wall</source>
        <translation>Medir una pared</translation>
    </message>
    <message>
        <source>Wall %1</source>
        <translation>Pared %1</translation>
    </message>
    <message>
        <source>Write its width and height, then add doors and windows.</source>
        <translation>Escribir su ancho y su alto; después, añadir puertas y ventanas.</translation>
    </message>
    <message>
        <source>Proposed places</source>
        <translation>Proponer lugares</translation>
    </message>
    <message>
        <source>%1 of %2 panels have room on this wall.</source>
        <translation>En esta pared caben %1 de %2 paneles.</translation>
    </message>
    <message>
        <source>Placed at the eyes, with equal gaps. Drag what should hang elsewhere.</source>
        <translation>A la altura de los ojos, con huecos iguales. Arrastrar lo que deba colgar en otro lugar.</translation>
    </message>
    <message>
        <source>Added: %1</source>
        <translation>Añadir: %1</translation>
    </message>
    <message>
        <source>Took off: %1</source>
        <translation>Quitar: %1</translation>
    </message>
    <message>
        <source>Another limit</source>
        <translation>Otro límite</translation>
    </message>
    <message>
        <source>Children of %1 to %2</source>
        <translation>Niños y niñas de %1 a %2</translation>
    </message>
    <message>
        <source>Another name...</source>
        <translation>Otro nombre...</translation>
    </message>
    <message>
        <source>The wall&apos;s name</source>
        <translation>El nombre de la pared</translation>
    </message>
    <message>
        <source>Name:</source>
        <translation>Nombre:</translation>
    </message>
    <message>
        <source>Named a wall</source>
        <translation>Dar nombre a una pared</translation>
    </message>
    <message>
        <source>Measure another wall</source>
        <translation>Medir otra pared</translation>
    </message>
    <message>
        <source>Children of %1 to %2 years</source>
        <translation>Niños y niñas de %1 a %2 años</translation>
    </message>
    <message>
        <source>%1 %: %2</source>
        <translation>%1 %: %2</translation>
    </message>
    <message>
        <source>Add: %1</source>
        <translation>Añadir: %1</translation>
    </message>
    <message>
        <source>The hanging list</source>
        <translation>La lista para colgar</translation>
    </message>
    <message>
        <source>The printer does not answer.</source>
        <translation>La impresora no responde.</translation>
    </message>
    <message>
        <source>Add a photo of the wall</source>
        <translation>Añadir una foto de la pared</translation>
    </message>
    <message>
        <source>It goes into the term&apos;s file, after the panels</source>
        <translation>Va en el archivo del trimestre, después de los paneles</translation>
    </message>
    <message>
        <source>%1: %2 of it</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>1 photo</source>
        <translation>1 foto</translation>
    </message>
    <message>
        <source>%1 photos</source>
        <translation>%1 fotos</translation>
    </message>
    <message>
        <source>Millimetres; inches and nails on the printed list.</source>
        <translation>Milímetros; pulgadas y clavos en la lista impresa.</translation>
    </message>
    <message>
        <source>%1 in millimetres</source>
        <translation>%1 en milímetros</translation>
    </message>
    <message>
        <source>Millimetres. Take a door or a panel to measure it.</source>
        <translation>Milímetros. Tomar una puerta o un panel para medirlo.</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::WallView</name>
    <message>
        <source>The hanging list tells where everything is.</source>
        <translation>La lista para colgar dice dónde está todo.</translation>
    </message>
    <message>
        <source>%1, %2 by %3 mm, %4 panels</source>
        <translation>%1, %2 por %3 mm, %4 paneles</translation>
    </message>
    <message>
        <source>%1 in your hand, %2 mm from the left, %3 mm up</source>
        <translation>%1 en la mano, a %2 mm de la izquierda, a %3 mm de altura</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::WordOffer</name>
    <message>
        <source>Keep it</source>
        <translation>Dejarla</translation>
    </message>
    <message>
        <source>Alt+%1</source>
        <translation>Alt+%1</translation>
    </message>
    <message>
        <source>Write %1 for %2</source>
        <translation>Escribir %1 en lugar de %2</translation>
    </message>
    <message>
        <source>Keep %1: it is right</source>
        <translation>Dejar %1: está bien</translation>
    </message>
    <message>
        <source>%1:</source>
        <translation>%1:</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::WordsEditor</name>
    <message>
        <source>Write: %1</source>
        <translation>Escribir: %1</translation>
    </message>
    <message>
        <source>Missing words leave an ellipsis, yours stand in [brackets]. Enter: done.</source>
        <translation>Lo que falta deja puntos suspensivos; lo propio va entre [corchetes]. Intro: listo.</translation>
    </message>
    <message>
        <source>Enter: done. Esc: as it was.</source>
        <translation>Intro: listo. Esc: como estaba.</translation>
    </message>
</context>
<context>
    <name>wainscot::ui::WordsTask</name>
    <message>
        <source>Child by child</source>
        <translation>Persona a persona</translation>
    </message>
    <message>
        <source>Scribe</source>
        <translation>Quién anota</translation>
    </message>
    <message>
        <source>Just taken down</source>
        <translation>Recién anotado</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Teclas</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>keep, next question</source>
        <translation>guardar, pregunta siguiente</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <translation>Ctrl+Intro</translation>
    </message>
    <message>
        <source>keep, next child</source>
        <translation>guardar, siguiente niño o niña</translation>
    </message>
    <message>
        <source>Shift+Enter</source>
        <translation>Mayús+Intro</translation>
    </message>
    <message>
        <source>new line</source>
        <translation>línea nueva</translation>
    </message>
    <message>
        <source>Alt+1 … 5</source>
        <translation>Alt+1 … 5</translation>
    </message>
    <message>
        <source>how it was told</source>
        <translation>cómo se contó</translation>
    </message>
    <message>
        <source>Ctrl+R</source>
        <translation>Ctrl+R</translation>
    </message>
    <message>
        <source>read back</source>
        <translation>releer en voz alta</translation>
    </message>
    <message>
        <source>F2</source>
        <translation>F2</translation>
    </message>
    <message>
        <source>passes for now</source>
        <translation>por ahora pasa</translation>
    </message>
    <message>
        <source>F3</source>
        <translation>F3</translation>
    </message>
    <message>
        <source>note why not</source>
        <translation>anotar por qué no</translation>
    </message>
    <message>
        <source>Ctrl+J</source>
        <translation>Ctrl+J</translation>
    </message>
    <message>
        <source>go to a child</source>
        <translation>ir a un niño o niña</translation>
    </message>
    <message>
        <source>Where does the puddle go?</source>
        <translation>¿A dónde va el charco?</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Lo que pasó</translation>
    </message>
    <message>
        <source>Enter the class</source>
        <translation>Anotar la clase</translation>
    </message>
    <message>
        <source>Child by child: all questions to one child</source>
        <translation>Persona a persona: todas las preguntas a un niño o niña</translation>
    </message>
    <message>
        <source>Question by question: one question to all</source>
        <translation>Pregunta a pregunta: una pregunta a toda la clase</translation>
    </message>
    <message>
        <source>Somebody else...</source>
        <translation>Otra persona...</translation>
    </message>
    <message>
        <source>Who takes the words down?</source>
        <translation>¿Quién anota las palabras?</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Keep, next child</source>
        <translation>Guardar, siguiente niño o niña</translation>
    </message>
    <message>
        <source>Said</source>
        <translation>Dijo</translation>
    </message>
    <message>
        <source>Wrote</source>
        <translation>Escribió</translation>
    </message>
    <message>
        <source>Drew</source>
        <translation>Dibujó</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>En señas</translation>
    </message>
    <message>
        <source>Pointed</source>
        <translation>Señaló</translation>
    </message>
    <message>
        <source>Read back</source>
        <translation>Releer en voz alta</translation>
    </message>
    <message>
        <source>Passes for now</source>
        <translation>Por ahora pasa</translation>
    </message>
    <message>
        <source>Note why not</source>
        <translation>Anotar por qué no</translation>
    </message>
    <message>
        <source>Go to a child</source>
        <translation>Ir a un niño o niña</translation>
    </message>
    <message>
        <source>What happened? Give it a name.</source>
        <translation>¿Qué pasó? Darle un nombre.</translation>
    </message>
    <message>
        <source>There is nobody to listen to yet.</source>
        <translation>Aún no hay a quién escuchar.</translation>
    </message>
    <message>
        <source>Question by question</source>
        <translation>Pregunta a pregunta</translation>
    </message>
    <message>
        <source>Scribe: nobody yet</source>
        <translation>Anota: aún nadie</translation>
    </message>
    <message>
        <source>Scribe: %1</source>
        <translation>Anota: %1</translation>
    </message>
    <message>
        <source>Nobody has been heard on this yet. Begin with the child who talks least.</source>
        <translation>Aún no se ha escuchado a nadie sobre esto. Empezar por quien menos habla.</translation>
    </message>
    <message>
        <source>Nobody is in the class yet.</source>
        <translation>Aún no hay nadie en la clase.</translation>
    </message>
    <message>
        <source>Nothing has happened yet.</source>
        <translation>Aún no ha pasado nada.</translation>
    </message>
    <message>
        <source>Give it a name; the questions are ready.</source>
        <translation>Darle un nombre; las preguntas están listas.</translation>
    </message>
    <message>
        <source>Begin it</source>
        <translation>Empezar</translation>
    </message>
    <message>
        <source>%1 of %2 answers. %3 of %4 children on every question.</source>
        <translation>%1 de %2 respuestas. %3 de %4 niños y niñas con todas las preguntas.</translation>
    </message>
    <message>
        <source>Everybody was asked everything.</source>
        <translation>Se ha preguntado todo a toda la clase.</translation>
    </message>
    <message>
        <source>%1 children have a question open.</source>
        <translation>%1 niños y niñas tienen alguna pregunta abierta.</translation>
    </message>
    <message>
        <source>A question is open for %1.</source>
        <translation>Con alguna pregunta abierta: %1.</translation>
    </message>
    <message>
        <source>Next child: %1</source>
        <translation>Siguiente: %1</translation>
    </message>
    <message>
        <source>See who was heard</source>
        <translation>Ver a quién se escuchó</translation>
    </message>
</context>
</TS>
