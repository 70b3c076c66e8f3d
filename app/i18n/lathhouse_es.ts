<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>ActsMenu</name>
    <message>
        <source>Key %1</source>
        <translation>Tecla %1</translation>
    </message>
</context>
<context>
    <name>AskLine</name>
    <message>
        <source>%1, past</source>
        <translation>%1, pasado</translation>
    </message>
</context>
<context>
    <name>AskSheet</name>
    <message>
        <source>Sprayed: write it down</source>
        <translation>Tratada: anotarlo</translation>
    </message>
    <message>
        <source>Write it down</source>
        <translation>Anotarlo</translation>
    </message>
    <message>
        <source>Control and Enter. Into the journal of the plant; Undo takes it back.</source>
        <translation>Control e Intro. En el diario de la planta; Deshacer lo retira.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Escape</translation>
    </message>
</context>
<context>
    <name>ClassHeading</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>ColdAsk</name>
    <message>
        <source>After a cold night: %1</source>
        <translation>Tras una noche fría: %1</translation>
    </message>
    <message>
        <source>Lowest at the plant</source>
        <translation>Mínima junto a la planta</translation>
    </message>
    <message>
        <source>Blank: as the journal has it. Several nights with ; between them, the last one last</source>
        <translation>En blanco: como está en el diario. Varias noches con ; entre ellas, la última al final</translation>
    </message>
    <message>
        <source>Several nights with ; between them, the last one last</source>
        <translation>Varias noches con ; entre ellas, la última al final</translation>
    </message>
    <message>
        <source>The last of them ended</source>
        <translation>La última acabó</translation>
    </message>
    <message>
        <source>days ago</source>
        <translation>días atrás</translation>
    </message>
    <message>
        <source>Blank: this morning</source>
        <translation>En blanco: esta mañana</translation>
    </message>
    <message>
        <source>Two hours after sunset</source>
        <translation>Dos horas tras la puesta de sol</translation>
    </message>
    <message>
        <source>May be left blank</source>
        <translation>Puede quedar en blanco</translation>
    </message>
    <message>
        <source>High of the day</source>
        <translation>Máxima del día</translation>
    </message>
    <message>
        <source>Hours at or below %1</source>
        <translation>Horas a %1 o menos</translation>
    </message>
    <message>
        <source>h</source>
        <translation>h</translation>
    </message>
    <message>
        <source>Where somebody saw them</source>
        <translation>Si alguien las vio</translation>
    </message>
    <message>
        <source>From sunset to sunrise</source>
        <translation>De la puesta a la salida del sol</translation>
    </message>
    <message>
        <source>Blank: %1 h, by place and date</source>
        <translation>En blanco: %1 h, por lugar y fecha</translation>
    </message>
    <message>
        <source>Blank: %1 h</source>
        <translation>En blanco: %1 h</translation>
    </message>
    <message>
        <source>Another kind of plant</source>
        <translation>Otra especie de planta</translation>
    </message>
    <message>
        <source>Blank: %1. Its name, for a plant that is not among yours</source>
        <translation>En blanco: %1. Si no, el nombre de la especie, para una planta que no es de la casa</translation>
    </message>
    <message>
        <source>Write the lowest of the night at the plant.</source>
        <translation>Escriba la mínima de la noche junto a la planta.</translation>
    </message>
    <message>
        <source>Nothing is written of a plant that is not among yours.</source>
        <translation>De una planta que no es de la casa no se anota nada.</translation>
    </message>
    <message>
        <source>The journal has the cold night of %1 without its lowest at the plant; write it here.</source>
        <translation>El diario tiene la noche fría del %1 sin su mínima junto a la planta; escríbala aquí.</translation>
    </message>
    <message>
        <source>“%1” is no temperature.</source>
        <translation>«%1» no es una temperatura.</translation>
    </message>
    <message>
        <source>That is below the night&apos;s lowest; exchange the two.</source>
        <translation>Eso está por debajo de la mínima de la noche; intercambie las dos.</translation>
    </message>
    <message>
        <source>Write how many days ago it was, 0 to %1.</source>
        <translation>Escriba cuántos días hace, de 0 a %1.</translation>
    </message>
    <message>
        <source>%1 is no low of a night at a pot.</source>
        <translation>%1 no es la mínima de una noche junto a una maceta.</translation>
    </message>
    <message>
        <source>Write %1 nights at most; older ones do not count with the last.</source>
        <translation>Escriba %1 noches como mucho; las más viejas no cuentan con la última.</translation>
    </message>
    <message>
        <source>Write hours of cold, 0 to 72.</source>
        <translation>Escriba horas de frío, de 0 a 72.</translation>
    </message>
    <message>
        <source>A night lasts 3 to 21 hours.</source>
        <translation>Una noche dura de 3 a 21 horas.</translation>
    </message>
    <message>
        <source>As the journal has it.</source>
        <translation>Como está en el diario.</translation>
    </message>
    <message>
        <source>Safe night %1, damage begins at %2, lethal at %3.</source>
        <translation>Noche segura %1, el daño empieza a %2, mortal a %3.</translation>
    </message>
    <message>
        <source>Low %1; %2 h below the safe night (%3 kelvin hours), %4 h below the line of damage (%5).</source>
        <translation>Mínima %1; %2 h bajo la noche segura (%3 horas kelvin), %4 h bajo la línea de daño (%5).</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>New growth is logged: feeding may begin again.</source>
        <translation>Hay brotes nuevos anotados: se puede volver a abonar.</translation>
    </message>
    <message>
        <source>The journal has the cold night of %1 already.</source>
        <translation>El diario ya tiene la noche fría del %1.</translation>
    </message>
    <message>
        <source>%1: the cold night of %2 is written down. Looks at it come into the round.</source>
        <translation>%1: la noche fría del %2 queda anotada. Las miradas entran en la ronda.</translation>
    </message>
    <message>
        <source>%1: %2 cold nights to %3 are written down. Looks at it come into the round.</source>
        <translation>%1: %2 noches frías hasta el %3 quedan anotadas. Las miradas entran en la ronda.</translation>
    </message>
</context>
<context>
    <name>ColdBand</name>
    <message>
        <source>%1: %2. %3</source>
        <translation>%1: %2. %3</translation>
    </message>
    <message>
        <source>Tonight it may fall to %1 %2; %3.</source>
        <translation>Esta noche puede bajar a %1 %2; %3.</translation>
    </message>
    <message>
        <source>It is in</source>
        <translation>Ya está dentro</translation>
    </message>
    <message>
        <source>All of them are in</source>
        <translation>Ya están todas dentro</translation>
    </message>
    <message>
        <source>Ticks every plant that must come in tonight; one Undo takes all of it back</source>
        <translation>Marca todas las plantas que deben entrar esta noche; un solo Deshacer lo retira todo</translation>
    </message>
</context>
<context>
    <name>ColdList</name>
    <message>
        <source>Plants outdoors tonight</source>
        <translation>Plantas fuera esta noche</translation>
    </message>
    <message>
        <source>Carry in</source>
        <translation>Entrar</translation>
    </message>
    <message>
        <source>%1 of %2 done</source>
        <translation>%1 de %2 hechas</translation>
    </message>
    <message>
        <source>Tonight’s low at each spot, %1</source>
        <translation>Mínima de esta noche en cada sitio, %1</translation>
    </message>
    <message>
        <source>At or below its line</source>
        <translation>En su límite o por debajo</translation>
    </message>
    <message>
        <source>Where to</source>
        <translation>Adónde</translation>
    </message>
    <message>
        <source>Is in</source>
        <translation>Dentro</translation>
    </message>
    <message>
        <source>striped: the part of tonight’s range that harms the plant</source>
        <translation>rayado: la parte del margen de esta noche que daña la planta</translation>
    </message>
    <message>
        <source>Cannot carry one? Wall side, off the floor, a dry sheet to the ground over it, off again in the morning. It gains a degree or two at best (common practice, no source).</source>
        <translation>¿Alguna no se puede llevar? Junto a la pared, sin tocar el suelo, con una tela seca que llegue hasta abajo y que se quita por la mañana. Gana uno o dos grados a lo sumo (práctica común, sin fuente).</translation>
    </message>
</context>
<context>
    <name>ColdRow</name>
    <message>
        <source>%1 Not yet in.</source>
        <translation>%1 Aún no está dentro.</translation>
    </message>
    <message>
        <source>%1 It is in.</source>
        <translation>%1 Está dentro.</translation>
    </message>
    <message>
        <source>May stay; the next look is tomorrow</source>
        <translation>Pueden quedarse; mañana se vuelve a mirar</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1; damage from %2</source>
        <translation>%1; daño desde %2</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>a: %1</translation>
    </message>
</context>
<context>
    <name>ComingDays</name>
    <message>
        <source>This week</source>
        <translation>Esta semana</translation>
    </message>
    <message>
        <source>The next %1 days</source>
        <translation>Los próximos %1 días</translation>
    </message>
    <message>
        <source>How many days to come</source>
        <translation>Cuántos días por delante</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>How many days to come, here and on the printed sheet</source>
        <translation>Cuántos días por delante, aquí y en la hoja impresa</translation>
    </message>
    <message>
        <source>Nothing is planned for the next seven days; looks at the water come day by day.</source>
        <translation>No hay nada previsto para los próximos siete días; mirar el agua toca día a día.</translation>
    </message>
    <message>
        <source>Nothing is planned for the next %1 days; looks at the water come day by day.</source>
        <translation>No hay nada previsto para los próximos %1 días; mirar el agua toca día a día.</translation>
    </message>
</context>
<context>
    <name>CompareSpots</name>
    <message>
        <source>Compare with</source>
        <translation>Comparar con</translation>
    </message>
    <message>
        <source>Its light in long dashes in the chart and in the table; again: without it</source>
        <translation>Su luz con trazos largos en el gráfico y en la tabla; otra vez: sin él</translation>
    </message>
</context>
<context>
    <name>Comparison</name>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>What and where</source>
        <translation>Qué y dónde</translation>
    </message>
    <message>
        <source>Botanical name</source>
        <translation>Nombre botánico</translation>
    </message>
    <message>
        <source>Stands</source>
        <translation>Está</translation>
    </message>
    <message>
        <source>at no spot</source>
        <translation>sin sitio</translation>
    </message>
    <message>
        <source>Next move</source>
        <translation>Próximo cambio</translation>
    </message>
    <message>
        <source>none in the year ahead</source>
        <translation>ninguno en el próximo año</translation>
    </message>
    <message>
        <source>Pot</source>
        <translation>Maceta</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Precaución</translation>
    </message>
    <message>
        <source>none known, which is no proof</source>
        <translation>ninguna conocida, lo que no es prueba</translation>
    </message>
    <message>
        <source>Nights and light</source>
        <translation>Noches y luz</translation>
    </message>
    <message>
        <source>Killed at</source>
        <translation>Muere a</translation>
    </message>
    <message>
        <source>Harmed from</source>
        <translation>Daño desde</translation>
    </message>
    <message>
        <source>At ease above</source>
        <translation>A gusto desde</translation>
    </message>
    <message>
        <source>Tonight at its spot</source>
        <translation>Esta noche en su sitio</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>unos %1</translation>
    </message>
    <message>
        <source>Too hot from</source>
        <translation>Demasiado calor desde</translation>
    </message>
    <message>
        <source>Good light</source>
        <translation>Buena luz</translation>
    </message>
    <message>
        <source>%1 mol/m² a day</source>
        <translation>%1 mol/m² al día</translation>
    </message>
    <message>
        <source>Keeps it alive</source>
        <translation>La mantiene viva</translation>
    </message>
    <message>
        <source>Between waterings</source>
        <translation>Entre riegos</translation>
    </message>
    <message>
        <source>dries right out</source>
        <translation>se seca del todo</translation>
    </message>
    <message>
        <source>does not dry out</source>
        <translation>no se seca</translation>
    </message>
    <message>
        <source>Growth</source>
        <translation>Crecimiento</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Medida</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Since the reading before</source>
        <translation>Desde la medición anterior</translation>
    </message>
    <message>
        <source>Recovery</source>
        <translation>Recuperación</translation>
    </message>
    <message>
        <source>nothing to judge</source>
        <translation>nada que juzgar</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Next reading</source>
        <translation>Próxima medición</translation>
    </message>
    <message>
        <source>%1: %2 %3, %4 %5.</source>
        <translation>%1: %2 %3, %4 %5.</translation>
    </message>
    <message>
        <source>%1: both %2.</source>
        <translation>%1: ambas %2.</translation>
    </message>
</context>
<context>
    <name>CourseAsk</name>
    <message>
        <source>Pests and the course: %1</source>
        <translation>Plagas y tratamiento: %1</translation>
    </message>
    <message>
        <source>none in particular</source>
        <translation>ninguna en particular</translation>
    </message>
    <message>
        <source>its own</source>
        <translation>la suya</translation>
    </message>
    <message>
        <source>What is known of a pest</source>
        <translation>Qué se sabe de una plaga</translation>
    </message>
    <message>
        <source>Infested: %1.</source>
        <translation>Infestada: %1.</translation>
    </message>
    <message>
        <source>Suspect: %1.</source>
        <translation>Sospechosa: %1.</translation>
    </message>
    <message>
        <source>Clean: %1.</source>
        <translation>Limpia: %1.</translation>
    </message>
    <message>
        <source>A pest without a known name</source>
        <translation>Una plaga sin nombre conocido</translation>
    </message>
    <message>
        <source>Since the last find on %1: treated %2 times, clean looks %3.</source>
        <translation>Desde el último hallazgo el %1: tratada %2 veces, miradas limpias %3.</translation>
    </message>
    <message>
        <source>Since the last contact on %1: clean looks %2.</source>
        <translation>Desde el último contacto el %1: miradas limpias %2.</translation>
    </message>
    <message>
        <source>Overdue: %1</source>
        <translation>Atrasado: %1</translation>
    </message>
    <message>
        <source>And so on, every %1 days at this temperature.</source>
        <translation>Y así, cada %1 días a esta temperatura.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>DamageAsk</name>
    <message>
        <source>Hit by a spray or weed-killer: %1</source>
        <translation>Alcanzada por un producto o herbicida: %1</translation>
    </message>
    <message>
        <source>another, not in the journal</source>
        <translation>otra vez, no está en el diario</translation>
    </message>
    <message>
        <source>Which, of those in the journal</source>
        <translation>Cuál, de las del diario</translation>
    </message>
    <message>
        <source>What was sprayed</source>
        <translation>Qué se pulverizó</translation>
    </message>
    <message>
        <source>The active substance, from the label; blank where nobody knows</source>
        <translation>La sustancia activa, de la etiqueta; en blanco si nadie lo sabe</translation>
    </message>
    <message>
        <source>It happened</source>
        <translation>Ocurrió</translation>
    </message>
    <message>
        <source>days ago</source>
        <translation>días atrás</translation>
    </message>
    <message>
        <source>Blank: today</source>
        <translation>En blanco: hoy</translation>
    </message>
    <message>
        <source>From the spray to the first signs</source>
        <translation>Del producto a los primeros signos</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
    <message>
        <source>May be left blank</source>
        <translation>Puede quedar en blanco</translation>
    </message>
    <message>
        <source>Mix in the pot</source>
        <translation>Sustrato en la maceta</translation>
    </message>
    <message>
        <source>quarts</source>
        <translation>cuartos</translation>
    </message>
    <message>
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <source>Is it still wet on the leaves?</source>
        <translation>¿Sigue mojado sobre las hojas?</translation>
    </message>
    <message>
        <source>Is it suspected in mix, compost or manure?</source>
        <translation>¿Se sospecha del sustrato, el compost o el estiércol?</translation>
    </message>
    <message>
        <source>Is any of it eaten?</source>
        <translation>¿Se come algo de ella?</translation>
    </message>
    <message>
        <source>What is seen on new growth</source>
        <translation>Qué se ve en los brotes nuevos</translation>
    </message>
    <message>
        <source>On leaves that were there</source>
        <translation>En hojas que ya estaban</translation>
    </message>
    <message>
        <source>On stems</source>
        <translation>En los tallos</translation>
    </message>
    <message>
        <source>On roots</source>
        <translation>En las raíces</translation>
    </message>
    <message>
        <source>Where and on which plants</source>
        <translation>Dónde y en qué plantas</translation>
    </message>
    <message>
        <source>Write how many days ago it was, 0 to %1.</source>
        <translation>Escriba cuántos días hace, de 0 a %1.</translation>
    </message>
    <message>
        <source>Write days, 0 to 1000, or leave it blank.</source>
        <translation>Escriba días, de 0 a 1000, o déjelo en blanco.</translation>
    </message>
    <message>
        <source>Write how much mix the pot holds, or leave it blank.</source>
        <translation>Escriba cuánto sustrato le cabe a la maceta o déjelo en blanco.</translation>
    </message>
    <message>
        <source>What is known of %1, and what to do</source>
        <translation>Qué se sabe de %1 y qué hacer</translation>
    </message>
    <message>
        <source>It looks most like %1. That is not certain.</source>
        <translation>A lo que más se parece: %1. No es seguro.</translation>
    </message>
    <message>
        <source>What did it is not known: the careful way.</source>
        <translation>No se sabe qué fue: el camino prudente.</translation>
    </message>
    <message>
        <source>Do not eat.</source>
        <translation>No comer.</translation>
    </message>
    <message>
        <source>“%1” is not in the table; read on the label what it contains.</source>
        <translation>«%1» no está en la tabla; lea en la etiqueta qué contiene.</translation>
    </message>
    <message>
        <source>To wash the mix through: %1 of water, twice the pot&apos;s volume, caught in a basin.</source>
        <translation>Para lavar el sustrato: %1 de agua, el doble del volumen de la maceta, recogida en un barreño.</translation>
    </message>
    <message>
        <source>Feed</source>
        <translation>Abono</translation>
    </message>
    <message>
        <source>No feed before %1, and then only once new, healthy growth is logged.</source>
        <translation>Sin abono antes del %1, y después solo cuando haya brotes nuevos y sanos anotados.</translation>
    </message>
    <message>
        <source>No feed before %1.</source>
        <translation>Sin abono antes del %1.</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>This is no diagnosis and no legal proof.</source>
        <translation>Esto no es un diagnóstico ni una prueba legal.</translation>
    </message>
    <message>
        <source>What the signs fit, not certain</source>
        <translation>Con qué encajan los signos, no es seguro</translation>
    </message>
    <message>
        <source>Nothing in the table; show it to a plant clinic.</source>
        <translation>Nada en la tabla; llevarla a una clínica de plantas.</translation>
    </message>
    <message>
        <source>What is known of these</source>
        <translation>Qué se sabe de estos</translation>
    </message>
    <message>
        <source>The journal keeps the day it has, %1; another day is another case.</source>
        <translation>El diario conserva el día que tiene, %1; otro día es otro caso.</translation>
    </message>
    <message>
        <source>As the journal has it.</source>
        <translation>Como está en el diario.</translation>
    </message>
    <message>
        <source>%1: hit by a spray on %2, written down. What helps and what waits comes into the round; nothing of it is eaten.</source>
        <translation>%1: alcanzada por un producto el %2, anotado. Lo que ayuda y lo que espera entra en la ronda; no se come nada de ella.</translation>
    </message>
</context>
<context>
    <name>DayBar</name>
    <message>
        <source>Begin the day</source>
        <translation>Empezar el día</translation>
    </message>
    <message>
        <source>This window closes, and one of today opens. What is typed and not kept is lost.</source>
        <translation>Esta ventana se cierra y se abre una de hoy. Lo escrito y no guardado se pierde.</translation>
    </message>
</context>
<context>
    <name>DialogReturn</name>
    <message>
        <source>File name</source>
        <translation>Nombre del archivo</translation>
    </message>
</context>
<context>
    <name>DoseLine</name>
    <message>
        <source>How much?</source>
        <translation>¿Cuánto?</translation>
    </message>
    <message>
        <source>Other feed or can</source>
        <translation>Otro abono u otra regadera</translation>
    </message>
    <message>
        <source>Key D. How much of your feed goes into your can, in your own measures.</source>
        <translation>Tecla D. Cuánto de su abono va en su regadera, en sus propias medidas.</translation>
    </message>
</context>
<context>
    <name>DoseSheet</name>
    <message>
        <source>Numbers on its label</source>
        <translation>Números de la etiqueta</translation>
    </message>
    <message>
        <source>It is a</source>
        <translation>Es</translation>
    </message>
    <message>
        <source>powder</source>
        <translation>polvo</translation>
    </message>
    <message>
        <source>liquid</source>
        <translation>líquido</translation>
    </message>
    <message>
        <source>A millilitre of it weighs</source>
        <translation>Un mililitro pesa</translation>
    </message>
    <message>
        <source>A level teaspoon of it weighs</source>
        <translation>Una cucharadita rasa pesa</translation>
    </message>
    <message>
        <source>On its label; may be left blank</source>
        <translation>Está en la etiqueta; puede quedar en blanco</translation>
    </message>
    <message>
        <source>Weigh ten and take a tenth; may be left blank</source>
        <translation>Pese diez y tome la décima parte; puede quedar en blanco</translation>
    </message>
    <message>
        <source>Strength, nitrogen</source>
        <translation>Fuerza, nitrógeno</translation>
    </message>
    <message>
        <source>By the plan for this plant</source>
        <translation>Según el plan para esta planta</translation>
    </message>
    <message>
        <source>Mixed from</source>
        <translation>Mezcla de</translation>
    </message>
    <message>
        <source>oil</source>
        <translation>aceite</translation>
    </message>
    <message>
        <source>soap</source>
        <translation>jabón</translation>
    </message>
    <message>
        <source>Of the water, by the label</source>
        <translation>Del agua, según la etiqueta</translation>
    </message>
    <message>
        <source>Water, or a can of yours</source>
        <translation>Agua, o una regadera suya</translation>
    </message>
    <message>
        <source>Cans</source>
        <translation>Regaderas</translation>
    </message>
    <message>
        <source>The dose stands here once all of it is known.</source>
        <translation>La dosis aparece aquí en cuanto se sepa todo.</translation>
    </message>
    <message>
        <source>A can or a spoon of your own</source>
        <translation>Una regadera o una cuchara suya</translation>
    </message>
    <message>
        <source>What you call it</source>
        <translation>Cómo la llama</translation>
    </message>
    <message>
        <source>blue can, coffee spoon</source>
        <translation>regadera azul, cuchara de café</translation>
    </message>
    <message>
        <source>What it holds</source>
        <translation>Cuánto le cabe</translation>
    </message>
    <message>
        <source>1.5 L, 6 cups, 7 ml</source>
        <translation>1,5 L, 7 ml</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>It stays with the household and can be taken wherever water is measured.</source>
        <translation>Se queda con el hogar y puede tomarse dondequiera que se mida agua.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Use this feed and can</source>
        <translation>Usar este abono y esta regadera</translation>
    </message>
    <message>
        <source>Control and Enter</source>
        <translation>Control e Intro</translation>
    </message>
    <message>
        <source>Control and Enter. Remembered on this machine; each feed then says its dose.</source>
        <translation>Control e Intro. Se recuerda en este equipo; cada abonado dice entonces su dosis.</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Salir</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Escape</translation>
    </message>
</context>
<context>
    <name>FeedingYear</name>
    <message>
        <source>no feed: %1</source>
        <translation>sin abono: %1</translation>
    </message>
    <message>
        <source>Next feed %1 at %2 ppm nitrogen; it can wait until %3.</source>
        <translation>Próximo abonado %1 con %2 ppm de nitrógeno; puede esperar hasta el %3.</translation>
    </message>
    <message>
        <source>Wash salts out about %1 with %2, twice the pot as guessed from its weight.</source>
        <translation>Lavar las sales hacia el %1 con %2, el doble de la maceta según su peso.</translation>
    </message>
    <message>
        <source>Wash salts out about %1 with %2, twice the pot.</source>
        <translation>Lavar las sales hacia el %1 con %2, el doble de la maceta.</translation>
    </message>
    <message>
        <source>Hard water leaves a crust and makes the mix less acid: use rain for citrus, ferns and others that want it acid.</source>
        <translation>El agua dura deja costra y vuelve el sustrato menos ácido: usar agua de lluvia para cítricos, helechos y otras que lo quieren ácido.</translation>
    </message>
    <message>
        <source>Water from a softener holds salt: not for plants.</source>
        <translation>El agua de un descalcificador lleva sal: no es para plantas.</translation>
    </message>
    <message>
        <source>Dates are by usual weather: feed when you see it grow, never a dry pot, and follow the label.</source>
        <translation>Las fechas son con el tiempo usual: abonar cuando se la ve crecer, nunca una maceta seca, y según la etiqueta.</translation>
    </message>
    <message>
        <source>every %1 days, %2 to %3 ppm nitrogen</source>
        <translation>cada %1 días, de %2 a %3 ppm de nitrógeno</translation>
    </message>
    <message>
        <source>%1, half the strength while it is young</source>
        <translation>%1, la mitad de la dosis mientras es joven</translation>
    </message>
    <message>
        <source>%1, weak for want of light, by the lamps</source>
        <translation>%1, flojo por falta de luz, con las lámparas</translation>
    </message>
    <message>
        <source>%1, weak for want of light</source>
        <translation>%1, flojo por falta de luz</translation>
    </message>
    <message>
        <source>%1, by the lamps</source>
        <translation>%1, con las lámparas</translation>
    </message>
    <message>
        <source>%1 on</source>
        <translation>desde el %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>FilePick</name>
    <message>
        <source>Take this name</source>
        <translation>Tomar este nombre</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
</context>
<context>
    <name>FirstStart</name>
    <message>
        <source>Place</source>
        <translation>Ubicación</translation>
    </message>
    <message>
        <source>Spots</source>
        <translation>Sitios</translation>
    </message>
    <message>
        <source>Plants</source>
        <translation>Plantas</translation>
    </message>
    <message>
        <source>On to the spots</source>
        <translation>Seguir con los sitios</translation>
    </message>
    <message>
        <source>On to the plants</source>
        <translation>Seguir con las plantas</translation>
    </message>
    <message>
        <source>Open the year</source>
        <translation>Abrir el año</translation>
    </message>
    <message>
        <source>First start</source>
        <translation>Primer inicio</translation>
    </message>
    <message>
        <source>When your pots go out, when they come in, and whether they liked it.</source>
        <translation>Cuándo salen las macetas, cuándo entran y si les sentó bien.</translation>
    </message>
    <message>
        <source>Look at the example household</source>
        <translation>Ver el hogar de ejemplo</translation>
    </message>
    <message>
        <source>An invented household, plainly marked as such; nothing is kept</source>
        <translation>Un hogar inventado, claramente señalado como tal; no se guarda nada</translation>
    </message>
    <message>
        <source>Nothing leaves this computer. Everything can be changed later. The household will lie in %1.</source>
        <translation>Nada sale de este ordenador. Todo se puede cambiar después. El hogar quedará en %1.</translation>
    </message>
    <message>
        <source>Where are your pots?</source>
        <translation>¿Dónde están las macetas?</translation>
    </message>
    <message>
        <source>Type the nearest town, or read the place off any map; coordinates of any form can be pasted.</source>
        <translation>Escribir la población más cercana o leer la posición en un mapa; se pueden pegar coordenadas de cualquier forma.</translation>
    </message>
    <message>
        <source>Name of the household</source>
        <translation>Nombre del hogar</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Casa</translation>
    </message>
    <message>
        <source>The household is being written.</source>
        <translation>Se está escribiendo el hogar.</translation>
    </message>
    <message>
        <source>Step %1 of 3. %2</source>
        <translation>Paso %1 de 3. %2</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Alt and Left. What was typed stays.</source>
        <translation>Alt e Izquierda. Lo escrito se conserva.</translation>
    </message>
    <message>
        <source>Leave out for now</source>
        <translation>Omitir por ahora</translation>
    </message>
    <message>
        <source>Control and Enter</source>
        <translation>Control e Intro</translation>
    </message>
</context>
<context>
    <name>FootFigure</name>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
</context>
<context>
    <name>ForecastLine</name>
    <message>
        <source>Forecast low tonight</source>
        <translation>Mínima prevista esta noche</translation>
    </message>
    <message>
        <source>Dew point tonight, where it is told</source>
        <translation>Punto de rocío de esta noche, si se indica</translation>
    </message>
    <message>
        <source>Dew point</source>
        <translation>Punto de rocío</translation>
    </message>
    <message>
        <source>clear sky</source>
        <translation>cielo despejado</translation>
    </message>
    <message>
        <source>cloudy</source>
        <translation>nublado</translation>
    </message>
    <message>
        <source>calm air</source>
        <translation>aire en calma</translation>
    </message>
    <message>
        <source>windy</source>
        <translation>con viento</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Keeps it as tonight’s forecast, so that its errors here are learned</source>
        <translation>La guarda como previsión de esta noche, para aprender aquí sus errores</translation>
    </message>
</context>
<context>
    <name>GrowthPainter</name>
    <message>
        <source>growth clock</source>
        <translation>reloj de crecimiento</translation>
    </message>
    <message>
        <source>stands still</source>
        <translation>está parado</translation>
    </message>
    <message>
        <source>had nothing happened</source>
        <translation>si no hubiera pasado nada</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>next reading, %1</source>
        <translation>próxima medición, %1</translation>
    </message>
</context>
<context>
    <name>GrowthPane</name>
    <message>
        <source>Key T shows the same as a table</source>
        <translation>La tecla T muestra lo mismo en una tabla</translation>
    </message>
    <message>
        <source>%1, reading by reading</source>
        <translation>%1, medición a medición</translation>
    </message>
    <message>
        <source>&lt;b&gt;No readings yet.&lt;/b&gt; Three before an event and four after it make a verdict. Control and L, then Measured, keeps the first.</source>
        <translation>&lt;b&gt;Aún no hay mediciones.&lt;/b&gt; Tres antes de un suceso y cuatro después dan un veredicto. Control y L, luego Medida, guarda la primera.</translation>
    </message>
    <message>
        <source>What the chart shows</source>
        <translation>Lo que muestra el gráfico</translation>
    </message>
    <message>
        <source>As a table</source>
        <translation>Como tabla</translation>
    </message>
    <message>
        <source>Key T</source>
        <translation>Tecla T</translation>
    </message>
    <message>
        <source>Green band: where the fit lies, 9 in 10.</source>
        <translation>Banda verde: dónde está el ajuste, 9 de cada 10.</translation>
    </message>
    <message>
        <source>Judged after</source>
        <translation>Se juzga después de</translation>
    </message>
    <message>
        <source>After what growth is judged</source>
        <translation>Después de qué se juzga el crecimiento</translation>
    </message>
    <message>
        <source>Spared by it, of the same kind</source>
        <translation>Se libraron de ello, de la misma especie</translation>
    </message>
    <message>
        <source>What it grew meanwhile is the clock by which this plant is judged</source>
        <translation>Lo que creció entretanto es el reloj con el que se juzga esta planta</translation>
    </message>
</context>
<context>
    <name>HardenAsk</name>
    <message>
        <source>Going out and coming in: %1</source>
        <translation>Salir y entrar: %1</translation>
    </message>
    <message>
        <source>Neither goes out nor comes in within the year’s plan.</source>
        <translation>En el plan del año ni sale ni entra.</translation>
    </message>
    <message>
        <source>7 to 14 days out, a week of shade, a look, a bath, 14 days apart and 4 to 8 weeks of stepping down in: extension advice; how they grow with the step of light and cold is common practice, without a source. Leaves that bleach or hang want a step back.</source>
        <translation>Para salir, de 7 a 14 días; para entrar, una semana de sombra, una revisión, un baño, 14 días aparte y de 4 a 8 semanas bajando de luz: consejo de los servicios de extensión; cuánto crecen con el paso de luz y frío es práctica común, sin fuente. Si las hojas palidecen o cuelgan, un paso atrás.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
</context>
<context>
    <name>HarmRow</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>HazardRow</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>&lt;font color=&quot;%1&quot;&gt;&lt;b&gt;%2&lt;/b&gt;&lt;/font&gt; %3</source>
        <translation>&lt;font color=&quot;%1&quot;&gt;&lt;b&gt;%2&lt;/b&gt;&lt;/font&gt; %3</translation>
    </message>
    <message>
        <source>&lt;b&gt;%1&lt;/b&gt; %2</source>
        <translation>&lt;b&gt;%1&lt;/b&gt; %2</translation>
    </message>
</context>
<context>
    <name>HomeActSaid</name>
    <message>
        <source>%1 Keep it where you would keep a key, and give it to nobody who need not know where you live.</source>
        <translation>%1 Guárdese como se guarda una llave, y no se dé a nadie que no deba saber dónde se vive.</translation>
    </message>
    <message>
        <source>Write it</source>
        <translation>Escribirlo</translation>
    </message>
    <message>
        <source>Asked once; changed under What may leave the folder</source>
        <translation>Se pregunta una vez; se cambia en «Qué puede salir de la carpeta»</translation>
    </message>
    <message>
        <source>Do not write it</source>
        <translation>No escribirlo</translation>
    </message>
    <message>
        <source>Open it in a window of its own</source>
        <translation>Abrir en una ventana propia</translation>
    </message>
    <message>
        <source>This window and its household stay as they are</source>
        <translation>Esta ventana y su hogar siguen como están</translation>
    </message>
</context>
<context>
    <name>HomeCalendar</name>
    <message>
        <source>The tasks in your own calendar</source>
        <translation>Las tareas en el calendario propio</translation>
    </message>
    <message>
        <source>Carrying and hardening, feeding and washing out, courses against pests, looks after cold and sprays, and sowings of the days to come, in one file that calendars read. Looks at the water are not in it, since each waits for the one before, nor carrying in for a cold night, which a forecast decides. What the plan drops stays in a calendar that took it in before: take it out there by hand.</source>
        <translation>Traslados y endurecimiento, abonados y lavados, tratamientos contra plagas, miradas tras el frío y las pulverizaciones, y siembras de los días que vienen, en un archivo que leen los calendarios. Las miradas al riego no están, pues cada una espera a la anterior, ni meter plantas por una noche fría, que decide el pronóstico. Lo que el plan abandona se queda en un calendario que ya lo había tomado: quitarlo allí a mano.</translation>
    </message>
    <message>
        <source>The calendar file to write</source>
        <translation>El archivo de calendario que se escribe</translation>
    </message>
    <message>
        <source>Calendars (*.ics)</source>
        <translation>Calendarios (*.ics)</translation>
    </message>
    <message>
        <source>Days from today, up to 730</source>
        <translation>Días desde hoy, hasta 730</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
    <message>
        <source>Blank: a year.</source>
        <translation>En blanco: un año.</translation>
    </message>
    <message>
        <source>An alarm for each day</source>
        <translation>Un aviso para cada día</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>at six in the evening before</source>
        <translation>a las seis de la tarde anterior</translation>
    </message>
    <message>
        <source>at noon of the day before</source>
        <translation>al mediodía anterior</translation>
    </message>
    <message>
        <source>a whole day before</source>
        <translation>un día entero antes</translation>
    </message>
    <message>
        <source>Write the calendar</source>
        <translation>Escribir el calendario</translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation>Sustituirlo</translation>
    </message>
</context>
<context>
    <name>HomeCard</name>
    <message>
        <source>A scale card for your photographs</source>
        <translation>Una tarjeta de escala para las fotografías</translation>
    </message>
    <message>
        <source>A ruler of 100 mm with a target at each end, by which a length is measured in the photo, and a grey patch by which its colours are set.</source>
        <translation>Una regla de 100 mm con una marca en cada extremo, por la que se mide una longitud en la foto, y un recuadro gris por el que se ajustan sus colores.</translation>
    </message>
    <message>
        <source>The card to write, .svg</source>
        <translation>La tarjeta que se escribe, .svg</translation>
    </message>
    <message>
        <source>Drawings (*.svg)</source>
        <translation>Dibujos (*.svg)</translation>
    </message>
    <message>
        <source>Write the card</source>
        <translation>Escribir la tarjeta</translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation>Sustituirla</translation>
    </message>
</context>
<context>
    <name>HomeCheck</name>
    <message>
        <source>Look through the folder</source>
        <translation>Revisar la carpeta</translation>
    </message>
    <message>
        <source>The journal, its references, every photograph against its digest; changes nothing</source>
        <translation>El diario, sus referencias y cada foto contra su suma de comprobación; no cambia nada</translation>
    </message>
</context>
<context>
    <name>HomeCredits</name>
    <message>
        <source>Where the figures come from</source>
        <translation>De dónde vienen las cifras</translation>
    </message>
    <message>
        <source>Fewer</source>
        <translation>Menos</translation>
    </message>
    <message>
        <source>All %1 publications</source>
        <translation>Las %1 publicaciones</translation>
    </message>
    <message>
        <source>Publications behind the tables of plants, seeds and pests</source>
        <translation>Publicaciones en que se basan las tablas de plantas, semillas y plagas</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
</context>
<context>
    <name>HomeData</name>
    <message>
        <source>What the household’s folder holds</source>
        <translation>Qué contiene la carpeta del hogar</translation>
    </message>
    <message>
        <source>The demonstration, invented for showing. It lies in memory and is gone when the window is closed.</source>
        <translation>La demostración, inventada para enseñar. Está en la memoria y desaparece al cerrar la ventana.</translation>
    </message>
    <message>
        <source>What was taken back is not counted. Photographs taken out of the lists stay in the folder and in every backup.</source>
        <translation>Lo deshecho no se cuenta. Las fotos quitadas de las listas siguen en la carpeta y en todas las copias de seguridad.</translation>
    </message>
    <message>
        <source>What may leave the folder</source>
        <translation>Qué puede salir de la carpeta</translation>
    </message>
    <message>
        <source>A backup is whole or it is none: with your home’s coordinates, and with photographs that may say where they were taken. Tables hold the same. You are asked before the first of each.</source>
        <translation>Una copia de seguridad es completa o no lo es: con las coordenadas de la casa y con fotos que pueden decir dónde se tomaron. Las tablas contienen lo mismo. Antes de la primera de cada clase se pregunta.</translation>
    </message>
    <message>
        <source>Backups</source>
        <translation>Copias de seguridad</translation>
    </message>
    <message>
        <source>Ask first</source>
        <translation>Preguntar antes</translation>
    </message>
    <message>
        <source>May be written</source>
        <translation>Se puede escribir</translation>
    </message>
    <message>
        <source>Tables for other programs</source>
        <translation>Tablas para otros programas</translation>
    </message>
    <message>
        <source>Back up</source>
        <translation>Copia de seguridad</translation>
    </message>
    <message>
        <source>There is nothing to back up: the demonstration is made anew at every start.</source>
        <translation>No hay nada que copiar: la demostración se hace de nuevo en cada inicio.</translation>
    </message>
    <message>
        <source>The file to write, outside the folder</source>
        <translation>El archivo, fuera de la carpeta</translation>
    </message>
    <message>
        <source>Backups (*.zip)</source>
        <translation>Copias de seguridad (*.zip)</translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation>Hacer la copia ahora</translation>
    </message>
    <message>
        <source>Writes the journal and all photographs into one file, and reads it back</source>
        <translation>Escribe el diario y todas las fotos en un archivo, y lo vuelve a leer</translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation>Sustituirlo</translation>
    </message>
    <message>
        <source>The old one stays until the new one is whole</source>
        <translation>El antiguo se conserva hasta que el nuevo está completo</translation>
    </message>
    <message>
        <source>Say so when the last backup is older than</source>
        <translation>Avisar cuando la última copia sea más antigua que</translation>
    </message>
    <message>
        <source>two weeks</source>
        <translation>dos semanas</translation>
    </message>
    <message>
        <source>a month</source>
        <translation>un mes</translation>
    </message>
    <message>
        <source>three months</source>
        <translation>tres meses</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nunca</translation>
    </message>
    <message>
        <source>Bring a backup back</source>
        <translation>Recuperar una copia de seguridad</translation>
    </message>
    <message>
        <source>Into a new or an empty folder. The household that is open stays as it is.</source>
        <translation>En una carpeta nueva o vacía. El hogar abierto queda como está.</translation>
    </message>
    <message>
        <source>The backup</source>
        <translation>La copia de seguridad</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
    <message>
        <source>The new or empty folder</source>
        <translation>La carpeta nueva o vacía</translation>
    </message>
    <message>
        <source>Bring it back</source>
        <translation>Recuperarla</translation>
    </message>
    <message>
        <source>Every file is compared with the backup’s list before the folder appears</source>
        <translation>Cada archivo se compara con la lista de la copia antes de que aparezca la carpeta</translation>
    </message>
    <message>
        <source>All that the journal knows as comma-separated tables, the photographs beside them.</source>
        <translation>Todo lo que sabe el diario en tablas separadas por comas, y las fotos al lado.</translation>
    </message>
    <message>
        <source>A new or an empty folder</source>
        <translation>Una carpeta nueva o vacía</translation>
    </message>
    <message>
        <source>Write the tables</source>
        <translation>Escribir las tablas</translation>
    </message>
</context>
<context>
    <name>HomeFacts</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source> (height of towns near; your own is not known)</source>
        <translation> (altura de los pueblos cercanos; la propia no se conoce)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1: %2 away, weight %3</source>
        <translation>%1: a %2, peso %3</translation>
    </message>
    <message>
        <source>Lowest night of a winter</source>
        <translation>Noche más fría de un invierno</translation>
    </message>
    <message>
        <source>Lowest night of a year</source>
        <translation>Noche más fría de un año</translation>
    </message>
    <message>
        <source>%1; 8 winters in 10: %2 to %3</source>
        <translation>%1; 8 de cada 10 inviernos: %2 a %3</translation>
    </message>
    <message>
        <source>%1; 8 years in 10: %2 to %3</source>
        <translation>%1; 8 de cada 10 años: %2 a %3</translation>
    </message>
    <message>
        <source>Hardiness zone</source>
        <translation>Zona de rusticidad</translation>
    </message>
    <message>
        <source>Nights with frost</source>
        <translation>Noches con helada</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>%1 a year</source>
        <translation>%1 al año</translation>
    </message>
    <message>
        <source>Days above %1</source>
        <translation>Días por encima de %1</translation>
    </message>
    <message>
        <source>A month’s mean low is right to</source>
        <translation>La mínima media de un mes es exacta en</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>unos %1</translation>
    </message>
    <message>
        <source>A frost date is right to</source>
        <translation>Una fecha de helada es exacta en</translation>
    </message>
    <message>
        <source>about %1 days</source>
        <translation>unos %1 días</translation>
    </message>
    <message>
        <source> Lows there became %1 colder a decade over these years; shown, not added.</source>
        <translation> Las mínimas bajaron allí %1 por decenio en estos años; se muestra, no se suma.</translation>
    </message>
    <message>
        <source> Lows there became %1 warmer a decade over these years; shown, not added.</source>
        <translation> Las mínimas subieron allí %1 por decenio en estos años; se muestra, no se suma.</translation>
    </message>
    <message>
        <source> These are chances, not promises.</source>
        <translation> Son probabilidades, no promesas.</translation>
    </message>
    <message>
        <source>; coast lines: Natural Earth (public domain)</source>
        <translation>; líneas de costa: Natural Earth (dominio público)</translation>
    </message>
    <message>
        <source>; towns: GeoNames (CC BY 4.0)</source>
        <translation>; poblaciones: GeoNames (CC BY 4.0)</translation>
    </message>
    <message>
        <source>from its window or roof as described</source>
        <translation>según la ventana o el techo descritos</translation>
    </message>
    <message>
        <source>from your own summer and winter figure</source>
        <translation>según las cifras propias de verano e invierno</translation>
    </message>
    <message>
        <source>enough for all</source>
        <translation>suficiente para todas</translation>
    </message>
    <message>
        <source>less than %1 would like</source>
        <translation>menos de lo que querría %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1: %2 moles a day, 9 days in 10: %3. %4</source>
        <translation>%1: %2 moles al día, 9 de cada 10 días: %3. %4</translation>
    </message>
    <message>
        <source>%1: %2 moles a day. %3</source>
        <translation>%1: %2 moles al día. %3</translation>
    </message>
    <message>
        <source>enough all year</source>
        <translation>suficiente todo el año</translation>
    </message>
    <message>
        <source>enough in %1</source>
        <translation>suficiente en %1</translation>
    </message>
    <message>
        <source>never enough to thrive</source>
        <translation>nunca suficiente para prosperar</translation>
    </message>
    <message>
        <source>; all year too little to live on</source>
        <translation>; todo el año demasiado poca para vivir</translation>
    </message>
    <message>
        <source>; too little to live on in %1</source>
        <translation>; demasiado poca para vivir en %1</translation>
    </message>
    <message>
        <source>thrives from %1</source>
        <translation>prospera desde %1</translation>
    </message>
    <message>
        <source>%1, %2: %3.</source>
        <translation>%1, %2: %3.</translation>
    </message>
    <message>
        <source>clear, calm</source>
        <translation>despejado, en calma</translation>
    </message>
    <message>
        <source>cloud or wind</source>
        <translation>nubes o viento</translation>
    </message>
    <message>
        <source>sky not noted</source>
        <translation>cielo sin anotar</translation>
    </message>
    <message>
        <source>Night to %1: %2, %3 against the open air, %4</source>
        <translation>Noche al %1: %2, %3 respecto al aire libre, %4</translation>
    </message>
    <message>
        <source>%1 now</source>
        <translation>%1 ahora</translation>
    </message>
    <message>
        <source>9 in 10: %1 to %2</source>
        <translation>9 de cada 10: %1 a %2</translation>
    </message>
    <message>
        <source>clear, calm nights: %1; cloud or wind: %2</source>
        <translation>noches despejadas y en calma: %1; nubes o viento: %2</translation>
    </message>
</context>
<context>
    <name>HomeForecasts</name>
    <message>
        <source>How right the forecasts were here</source>
        <translation>Cuánto acertaron aquí las previsiones</translation>
    </message>
    <message>
        <source>made</source>
        <translation>hecha</translation>
    </message>
    <message>
        <source>nights</source>
        <translation>noches</translation>
    </message>
    <message>
        <source>error</source>
        <translation>error</translation>
    </message>
    <message>
        <source>missed by</source>
        <translation>falló por</translation>
    </message>
    <message>
        <source>the season alone</source>
        <translation>la estación sola</translation>
    </message>
    <message>
        <source>Made, nights, error, missed by, the season alone</source>
        <translation>Hecha, noches, error, falló por, la estación sola</translation>
    </message>
    <message>
        <source>Nights are those whose low a thermometer outdoors read. A miss is a mean one, with the spread that was stated weighed in: a forecast that misses by no less than the season alone is of no use.</source>
        <translation>Cuentan las noches cuya mínima leyó un termómetro al aire libre. El fallo es un promedio en el que pesa el margen indicado: una previsión que no falla por menos que la estación sola no sirve.</translation>
    </message>
</context>
<context>
    <name>HomeJournal</name>
    <message>
        <source>What happened in the household</source>
        <translation>Qué pasó en el hogar</translation>
    </message>
    <message>
        <source>Words to look for: a plant, a spot, what, when</source>
        <translation>Palabras que buscar: una planta, un sitio, qué, cuándo</translation>
    </message>
    <message>
        <source>words to look for</source>
        <translation>palabras que buscar</translation>
    </message>
    <message>
        <source>Log something without a plant</source>
        <translation>Anotar algo sin planta</translation>
    </message>
    <message>
        <source>Control and L. At a spot, or in the whole household. Of a plant it is logged under Plants.</source>
        <translation>Control y L. En un sitio o en toda la casa. Lo de una planta se anota en Plantas.</translation>
    </message>
    <message>
        <source>The journal is being read.</source>
        <translation>Se está leyendo el diario.</translation>
    </message>
    <message>
        <source>Journal</source>
        <translation>Diario</translation>
    </message>
    <message>
        <source>Enter or a double click opens the plant’s page.</source>
        <translation>Intro o un doble clic abre la página de la planta.</translation>
    </message>
</context>
<context>
    <name>HomeJournalLog</name>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Qué pasó</translation>
    </message>
    <message>
        <source>Which pest</source>
        <translation>Qué plaga</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Note, may be left blank</source>
        <translation>Nota, puede quedar en blanco</translation>
    </message>
    <message>
        <source>How many days ago, blank for today</source>
        <translation>Hace cuántos días, en blanco si es hoy</translation>
    </message>
    <message>
        <source>0 days ago</source>
        <translation>hace 0 días</translation>
    </message>
    <message>
        <source>days ago</source>
        <translation>días atrás</translation>
    </message>
    <message>
        <source>Keep in the journal</source>
        <translation>Guardar en el diario</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Dejar</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Escape</translation>
    </message>
</context>
<context>
    <name>HomeKeptNights</name>
    <message>
        <source>Put right</source>
        <translation>Corregir</translation>
    </message>
    <message>
        <source>Night to</source>
        <translation>Noche al</translation>
    </message>
    <message>
        <source>low</source>
        <translation>mínima</translation>
    </message>
    <message>
        <source>high</source>
        <translation>máxima</translation>
    </message>
    <message>
        <source>station</source>
        <translation>estación</translation>
    </message>
    <message>
        <source>sky</source>
        <translation>cielo</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>Night to, low, high, station, sky, note</source>
        <translation>Noche al, mínima, máxima, estación, cielo, nota</translation>
    </message>
    <message>
        <source>%1 nights more</source>
        <translation>%1 noches más</translation>
    </message>
    <message>
        <source>Put right, a night takes its own place. One that was kept for another day or spot is taken back with Undo above the pages.</source>
        <translation>Corregida, una noche ocupa su propio lugar. La que se guardó para otro día u otro lugar se retira con «Deshacer», encima de las páginas.</translation>
    </message>
</context>
<context>
    <name>HomeLightReading</name>
    <message>
        <source>A light meter’s reading</source>
        <translation>Lo que marca el luxómetro</translation>
    </message>
    <message>
        <source>What is known</source>
        <translation>Lo que se sabe</translation>
    </message>
    <message>
        <source>In the light of</source>
        <translation>A la luz de</translation>
    </message>
    <message>
        <source>The same lux are more light for a plant from the sky than from a lamp. Hold the meter at the leaves, facing up.</source>
        <translation>Los mismos lux son para una planta más luz del cielo que de una lámpara. Sostener el medidor junto a las hojas, mirando hacia arriba.</translation>
    </message>
    <message>
        <source>A day’s light</source>
        <translation>Luz de un día</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>For how long a day</source>
        <translation>Cuánto tiempo al día</translation>
    </message>
    <message>
        <source>h</source>
        <translation>h</translation>
    </message>
    <message>
        <source>Blank: 8 h</source>
        <translation>En blanco: 8 h</translation>
    </message>
    <message>
        <source>Hours of a lamp</source>
        <translation>Horas de una lámpara</translation>
    </message>
    <message>
        <source>Day’s light that is wanted</source>
        <translation>Luz del día que se desea</translation>
    </message>
    <message>
        <source>mol</source>
        <translation>mol</translation>
    </message>
    <message>
        <source>The lamp’s light at the leaves</source>
        <translation>Luz de la lámpara en las hojas</translation>
    </message>
    <message>
        <source>µmol</source>
        <translation>µmol</translation>
    </message>
    <message>
        <source>µmol per m² and s</source>
        <translation>µmol por m² y s</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Mes</translation>
    </message>
    <message>
        <source>moles a day</source>
        <translation>moles al día</translation>
    </message>
    <message>
        <source>the lamp burns</source>
        <translation>la lámpara luce</translation>
    </message>
    <message>
        <source>Month, moles a day, the lamp burns</source>
        <translation>Mes, moles al día, la lámpara luce</translation>
    </message>
</context>
<context>
    <name>HomeNightEntry</name>
    <message>
        <source>A night with all that was read, also in a room</source>
        <translation>Una noche con todo lo que se leyó, también en una habitación</translation>
    </message>
    <message>
        <source>Lowest of the night</source>
        <translation>Mínima de la noche</translation>
    </message>
    <message>
        <source>Highest since the last reading</source>
        <translation>Máxima desde la última lectura</translation>
    </message>
    <message>
        <source>May be left blank</source>
        <translation>Puede quedar en blanco</translation>
    </message>
    <message>
        <source>Low of a station near by</source>
        <translation>Mínima de una estación cercana</translation>
    </message>
    <message>
        <source>In the open, of that same night; may be left blank</source>
        <translation>Al aire libre, de esa misma noche; puede quedar en blanco</translation>
    </message>
    <message>
        <source>The night ended</source>
        <translation>La noche terminó hace</translation>
    </message>
    <message>
        <source>days ago</source>
        <translation>días</translation>
    </message>
    <message>
        <source>Blank: this morning</source>
        <translation>En blanco: esta mañana</translation>
    </message>
    <message>
        <source>Anything worth keeping</source>
        <translation>Lo que valga la pena conservar</translation>
    </message>
    <message>
        <source>The sky of that night</source>
        <translation>El cielo de esa noche</translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>no anotado</translation>
    </message>
    <message>
        <source>clear, calm</source>
        <translation>despejado, en calma</translation>
    </message>
    <message>
        <source>cloud or wind</source>
        <translation>nubes o viento</translation>
    </message>
    <message>
        <source>Keep the night</source>
        <translation>Guardar la noche</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Menos</translation>
    </message>
    <message>
        <source>The nights of this spot</source>
        <translation>Las noches de este lugar</translation>
    </message>
    <message>
        <source>Lists what was read there, to look it up or put it right</source>
        <translation>Muestra lo que se leyó allí, para consultarlo o corregirlo</translation>
    </message>
</context>
<context>
    <name>HomeNightLine</name>
    <message>
        <source>Nights at or below a line of your own</source>
        <translation>Noches a una línea propia o menos</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>The line</source>
        <translation>La línea</translation>
    </message>
    <message>
        <source>line</source>
        <translation>línea</translation>
    </message>
    <message>
        <source>From which night on, may be left blank</source>
        <translation>Desde qué noche, puede quedar en blanco</translation>
    </message>
    <message>
        <source>from, such as 1.5.2027</source>
        <translation>desde, como 1/5/2027</translation>
    </message>
    <message>
        <source>To which night, may be left blank</source>
        <translation>Hasta qué noche, puede quedar en blanco</translation>
    </message>
    <message>
        <source>to, such as 31.5.2027</source>
        <translation>hasta, como 31/5/2027</translation>
    </message>
    <message>
        <source>One more chance to give dates for, such as 1 in 12, may be left blank</source>
        <translation>Otra probabilidad para la que dar fechas, como 1 de cada 12, puede quedar en blanco</translation>
    </message>
    <message>
        <source>chance, such as 1 in 12</source>
        <translation>probabilidad, como 1 de cada 12</translation>
    </message>
    <message>
        <source>Tell the chances</source>
        <translation>Decir las probabilidades</translation>
    </message>
    <message>
        <source>A night is named by its morning. Without dates: the last and the first of the season.</source>
        <translation>Una noche se llama por su mañana. Sin fechas: la última y la primera de la temporada.</translation>
    </message>
    <message>
        <source>Chance</source>
        <translation>Probabilidad</translation>
    </message>
    <message>
        <source>one more after</source>
        <translation>una más tras</translation>
    </message>
    <message>
        <source>the first one by</source>
        <translation>la primera antes de</translation>
    </message>
    <message>
        <source>more days without than</source>
        <translation>más días sin que</translation>
    </message>
    <message>
        <source>Chance, one more after, the first one by, more days without than</source>
        <translation>Probabilidad, una más tras, la primera antes de, más días sin que</translation>
    </message>
</context>
<context>
    <name>HomeNights</name>
    <message>
        <source>Thermometer</source>
        <translation>Termómetro</translation>
    </message>
    <message>
        <source>No spot outdoors is known, so there is nothing to learn from a thermometer. Add one under Home, Spots.</source>
        <translation>No se conoce ningún sitio exterior, así que un termómetro no puede enseñar nada. Añadir uno en Casa, Sitios.</translation>
    </message>
    <message>
        <source>Log last night</source>
        <translation>Anotar la última noche</translation>
    </message>
    <message>
        <source>Keeps the low of the night that ended this morning</source>
        <translation>Guarda la mínima de la noche que acabó esta mañana</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>Key T: the nights as a table.</source>
        <translation>Tecla T: las noches en una tabla.</translation>
    </message>
    <message>
        <source>%1, by the number of logged nights. Band: where the spot’s mean lies, 9 in 10. Open dot: clear and calm; filled: cloud or wind; square: sky not noted.</source>
        <translation>%1, según el número de noches anotadas. Banda: dónde está la media del sitio, 9 de cada 10. Punto vacío: despejado y en calma; lleno: nubes o viento; cuadrado: cielo sin anotar.</translation>
    </message>
    <message>
        <source>Night to</source>
        <translation>Noche al</translation>
    </message>
    <message>
        <source>low</source>
        <translation>mínima</translation>
    </message>
    <message>
        <source>against the open air</source>
        <translation>respecto al aire libre</translation>
    </message>
    <message>
        <source>sky</source>
        <translation>cielo</translation>
    </message>
    <message>
        <source>Night to, low, against the open air, sky</source>
        <translation>Noche al, mínima, respecto al aire libre, cielo</translation>
    </message>
    <message>
        <source>No night is logged yet.</source>
        <translation>Aún no hay noches anotadas.</translation>
    </message>
    <message>
        <source>As a table</source>
        <translation>Como tabla</translation>
    </message>
    <message>
        <source>Key T</source>
        <translation>Tecla T</translation>
    </message>
</context>
<context>
    <name>HomePage</name>
    <message>
        <source>Place</source>
        <translation>Ubicación</translation>
    </message>
    <message>
        <source>Spots</source>
        <translation>Sitios</translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation>Termómetro</translation>
    </message>
    <message>
        <source>Own record</source>
        <translation>Registro propio</translation>
    </message>
    <message>
        <source>People and animals</source>
        <translation>Personas y animales</translation>
    </message>
    <message>
        <source>Journal</source>
        <translation>Diario</translation>
    </message>
    <message>
        <source>Data and backup</source>
        <translation>Datos y copias</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Casa</translation>
    </message>
    <message>
        <source>Left and Right go through the sections</source>
        <translation>Izquierda y Derecha recorren las secciones</translation>
    </message>
    <message>
        <source>The place is being worked out.</source>
        <translation>Se está calculando la ubicación.</translation>
    </message>
</context>
<context>
    <name>HomePeople</name>
    <message>
        <source>Who is to be kept from harm</source>
        <translation>A quién hay que proteger</translation>
    </message>
    <message>
        <source>List the child or the animal that gets at the plants, and the spots within reach: no plan will then put a poisonous plant there where another spot will do. What can hurt them is named below.</source>
        <translation>Anotar al niño o al animal que llega a las plantas, y los sitios a su alcance: ningún plan pondrá allí una planta venenosa si otro sitio sirve. Lo que puede hacerles daño figura abajo.</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>Who is added</source>
        <translation>A quién se añade</translation>
    </message>
    <message>
        <source>Name, if you like</source>
        <translation>Nombre, si se quiere</translation>
    </message>
    <message>
        <source>Add to the list</source>
        <translation>Añadir a la lista</translation>
    </message>
    <message>
        <source>Within their reach now</source>
        <translation>Ahora a su alcance</translation>
    </message>
    <message>
        <source>Set them out of reach now; a plan made from now on does it with the poisonous ones, where another spot will do. If something was swallowed, ask a doctor, a vet or the poison line at once, and take a piece of the plant along. Label and local advice first.</source>
        <translation>Ponerlas ya fuera de su alcance; un plan hecho desde ahora lo hace con las venenosas, si otro sitio sirve. Si se tragó algo, preguntar enseguida a un médico, a un veterinario o al servicio de toxicología, y llevar un trozo de la planta. La etiqueta y los consejos locales van primero.</translation>
    </message>
</context>
<context>
    <name>HomePeopleHarm</name>
    <message>
        <source>%1, within reach of %2</source>
        <translation>%1, al alcance de %2</translation>
    </message>
</context>
<context>
    <name>HomePeopleMember</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Rename</source>
        <translation>Cambiar el nombre</translation>
    </message>
    <message>
        <source>Take off the list</source>
        <translation>Quitar de la lista</translation>
    </message>
    <message>
        <source>The name of %1; blank for none</source>
        <translation>El nombre de %1; en blanco, ninguno</translation>
    </message>
    <message>
        <source>Keep the name</source>
        <translation>Guardar el nombre</translation>
    </message>
    <message>
        <source>Press the spots within reach.</source>
        <translation>Pulsar los sitios al alcance.</translation>
    </message>
    <message>
        <source>Within reach of %1</source>
        <translation>Al alcance de %1</translation>
    </message>
    <message>
        <source>Out of reach of %1</source>
        <translation>Fuera del alcance de %1</translation>
    </message>
</context>
<context>
    <name>HomePhotosAside</name>
    <message>
        <source>Photographs that no plant’s page shows</source>
        <translation>Fotos que no están en la página de ninguna planta</translation>
    </message>
    <message>
        <source>Those that were taken out of the lists, and those of no plant that is there. Their files stay in the folder in any case.</source>
        <translation>Las quitadas de las listas y las que no muestran ninguna planta que siga aquí. Sus archivos quedan en la carpeta en todo caso.</translation>
    </message>
    <message>
        <source>Bring it back</source>
        <translation>Recuperarla</translation>
    </message>
    <message>
        <source>Into the lists, with the plants that it shows</source>
        <translation>A las listas, con las plantas que muestra</translation>
    </message>
    <message>
        <source>Bring back %1</source>
        <translation>Recuperar %1</translation>
    </message>
    <message>
        <source>Shows a plant</source>
        <translation>Muestra una planta</translation>
    </message>
    <message>
        <source>Choose the plant from a list.</source>
        <translation>Elegir la planta de una lista.</translation>
    </message>
    <message>
        <source>%1 shows a plant</source>
        <translation>%1 muestra una planta</translation>
    </message>
    <message>
        <source>Out of the lists</source>
        <translation>Quitar de las listas</translation>
    </message>
    <message>
        <source>Its file stays; it can be brought back here.</source>
        <translation>Su archivo queda; aquí se puede recuperar.</translation>
    </message>
    <message>
        <source>Take %1 out of the lists</source>
        <translation>Quitar %1 de las listas</translation>
    </message>
    <message>
        <source>Which plant it shows</source>
        <translation>Qué planta muestra</translation>
    </message>
</context>
<context>
    <name>HomePhotosOut</name>
    <message>
        <source>Photographs as files</source>
        <translation>Fotos como archivos</translation>
    </message>
    <message>
        <source>Those of all plants, each under its date and its plant’s name. What is in the household stays as it is.</source>
        <translation>Las de todas las plantas, cada una con su fecha y el nombre de su planta. Lo que está en el hogar queda como está.</translation>
    </message>
</context>
<context>
    <name>HomePlace</name>
    <message>
        <source>Map of the stations round home</source>
        <translation>Mapa de las estaciones alrededor de la casa</translation>
    </message>
    <message>
        <source>%1 Key T: the same as a table.</source>
        <translation>%1 Tecla T: lo mismo en una tabla.</translation>
    </message>
    <message>
        <source>Stations round home</source>
        <translation>Estaciones alrededor de la casa</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Estación</translation>
    </message>
    <message>
        <source>away, height</source>
        <translation>distancia, altura</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>peso</translation>
    </message>
    <message>
        <source>Station, away and height, weight</source>
        <translation>Estación, distancia y altura, peso</translation>
    </message>
    <message>
        <source>As a table</source>
        <translation>Como tabla</translation>
    </message>
    <message>
        <source>Key T</source>
        <translation>Tecla T</translation>
    </message>
    <message>
        <source>Change the place</source>
        <translation>Cambiar la ubicación</translation>
    </message>
    <message>
        <source>What the place is like</source>
        <translation>Cómo es el lugar</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Menos</translation>
    </message>
    <message>
        <source>The twelve months, and a pot in them</source>
        <translation>Los doce meses y una maceta en ellos</translation>
    </message>
    <message>
        <source>Nights, days, frost, rain, light, and what the soil and a pot meet</source>
        <translation>Noches, días, heladas, lluvia, luz y lo que pasan el suelo y una maceta</translation>
    </message>
</context>
<context>
    <name>HomePlaceMonths</name>
    <message>
        <source>Working out the months.</source>
        <translation>Se calculan los meses.</translation>
    </message>
    <message>
        <source>The air</source>
        <translation>El aire</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Mes</translation>
    </message>
    <message>
        <source>mean low</source>
        <translation>mínima media</translation>
    </message>
    <message>
        <source>mean high</source>
        <translation>máxima media</translation>
    </message>
    <message>
        <source>coldest of all years</source>
        <translation>la más fría de todos los años</translation>
    </message>
    <message>
        <source>days with frost</source>
        <translation>días con helada</translation>
    </message>
    <message>
        <source>degree days</source>
        <translation>grados día</translation>
    </message>
    <message>
        <source>Rain and light</source>
        <translation>Lluvia y luz</translation>
    </message>
    <message>
        <source>rain</source>
        <translation>lluvia</translation>
    </message>
    <message>
        <source>day length</source>
        <translation>duración del día</translation>
    </message>
    <message>
        <source>moles a day</source>
        <translation>moles al día</translation>
    </message>
    <message>
        <source>a lawn drinks</source>
        <translation>bebe un césped</translation>
    </message>
    <message>
        <source>The soil, and a pot</source>
        <translation>El suelo y una maceta</translation>
    </message>
    <message>
        <source>soil, shallow</source>
        <translation>suelo, arriba</translation>
    </message>
    <message>
        <source>soil, deeper</source>
        <translation>suelo, más hondo</translation>
    </message>
    <message>
        <source>pot, low</source>
        <translation>maceta, mínima</translation>
    </message>
    <message>
        <source>pot, high</source>
        <translation>maceta, máxima</translation>
    </message>
    <message>
        <source>it drinks a day</source>
        <translation>bebe al día</translation>
    </message>
    <message>
        <source>Soil at 5 and 10 cm deep, that is 2 and 4 inches.</source>
        <translation>Suelo a 5 y 10 cm de profundidad, es decir, 2 y 4 pulgadas.</translation>
    </message>
    <message>
        <source>Width of the pot, or of its crown</source>
        <translation>Ancho de la maceta o de la copa</translation>
    </message>
</context>
<context>
    <name>HomeReadings</name>
    <message>
        <source>Nights from a file</source>
        <translation>Noches de un archivo</translation>
    </message>
    <message>
        <source>A table with the columns date and low_c (or low_f); where known also spot, high_c, station_low_c, sky, wind and note. Rows that name no spot are of the one shown here.</source>
        <translation>Una tabla con las columnas date y low_c (o low_f); donde se conozcan también spot, high_c, station_low_c, sky, wind y note. Las filas que no nombran sitio son del que se muestra aquí.</translation>
    </message>
    <message>
        <source>The file with the readings</source>
        <translation>El archivo con las lecturas</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.json)</source>
        <translation>Tablas (*.csv *.txt *.json)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
    <message>
        <source>What it calls the columns, where otherwise; may be left blank</source>
        <translation>Cómo llama a las columnas, si es de otro modo; puede quedar en blanco</translation>
    </message>
    <message>
        <source>its own names: date=Day,low_c=Min</source>
        <translation>sus nombres: date=Día,low_c=Mín</translation>
    </message>
    <message>
        <source>Keep the nights</source>
        <translation>Guardar las noches</translation>
    </message>
</context>
<context>
    <name>HomeRecord</name>
    <message>
        <source>No record of your own yet</source>
        <translation>Aún no hay registro propio</translation>
    </message>
    <message>
        <source>The shipped stations answer for this place. A thermometer’s record of ten years and more, kept here, answers better: dates of frost are then counted in it.</source>
        <translation>Para este lugar responden las estaciones incluidas. El registro de un termómetro de diez años o más responde mejor: las fechas de helada se cuentan entonces en él.</translation>
    </message>
    <message>
        <source>Remove the record</source>
        <translation>Quitar el registro</translation>
    </message>
    <message>
        <source>It can be brought back while this window is open</source>
        <translation>Se puede recuperar mientras esta ventana esté abierta</translation>
    </message>
    <message>
        <source>The record taken out or replaced can be brought back until the window is closed; its file is never touched.</source>
        <translation>El registro quitado o sustituido se puede recuperar hasta que se cierre la ventana; su archivo nunca se toca.</translation>
    </message>
    <message>
        <source>Another record</source>
        <translation>Otro registro</translation>
    </message>
    <message>
        <source>Take a record in</source>
        <translation>Incorporar un registro</translation>
    </message>
    <message>
        <source>Month by month against the shipped table</source>
        <translation>Mes a mes frente a la tabla incluida</translation>
    </message>
    <message>
        <source>Here its lows and highs will stand beside those of the stations, so that a wrong unit, place or thermometer shows before it counts.</source>
        <translation>Aquí estarán sus mínimas y máximas junto a las de las estaciones, para que una unidad, un lugar o un termómetro equivocados se vean antes de que cuenten.</translation>
    </message>
    <message>
        <source>Mean lows and highs, here, by the table, and apart</source>
        <translation>Mínimas y máximas medias, aquí, según la tabla, y diferencia</translation>
    </message>
    <message>
        <source>low</source>
        <translation>mínima</translation>
    </message>
    <message>
        <source>apart</source>
        <translation>diferencia</translation>
    </message>
    <message>
        <source>high</source>
        <translation>máxima</translation>
    </message>
    <message>
        <source>Means, %1</source>
        <translation>Medias, %1</translation>
    </message>
    <message>
        <source>low here</source>
        <translation>mínima aquí</translation>
    </message>
    <message>
        <source>low, table</source>
        <translation>mínima, tabla</translation>
    </message>
    <message>
        <source>high here</source>
        <translation>máxima aquí</translation>
    </message>
    <message>
        <source>high, table</source>
        <translation>máxima, tabla</translation>
    </message>
    <message>
        <source>Month, mean low here, by the table, apart, mean high here, by the table, apart</source>
        <translation>Mes, mínima media aquí, según la tabla, diferencia, máxima media aquí, según la tabla, diferencia</translation>
    </message>
    <message>
        <source>Apart: here less the table. Frost hollows and warm walls explain a degree or two; more is more often a wrong unit, place or hour of reading.</source>
        <translation>Diferencia: aquí menos tabla. Las hondonadas de helada y las paredes cálidas explican uno o dos grados; más suele ser una unidad, un lugar o una hora de lectura equivocados.</translation>
    </message>
</context>
<context>
    <name>HomeRecordImport</name>
    <message>
        <source>Let go to take it in</source>
        <translation>Soltar para incorporarlo</translation>
    </message>
    <message>
        <source>Drop a file of daily lows and highs here, or name it below.</source>
        <translation>Soltar aquí un archivo de mínimas y máximas diarias, o nombrarlo abajo.</translation>
    </message>
    <message>
        <source>File of daily records</source>
        <translation>Archivo de registros diarios</translation>
    </message>
    <message>
        <source>Records (*.csv *.dly *.txt)</source>
        <translation>Registros (*.csv *.dly *.txt)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Its numbers are</source>
        <translation>Sus números son</translation>
    </message>
    <message>
        <source>°C and millimetres</source>
        <translation>°C y milímetros</translation>
    </message>
    <message>
        <source>°F and inches</source>
        <translation>°F y pulgadas</translation>
    </message>
    <message>
        <source>Of a table of your own. Files of GHCN-Daily say it themselves.</source>
        <translation>De una tabla propia. Los archivos de GHCN-Daily lo dicen ellos mismos.</translation>
    </message>
    <message>
        <source>Names of columns, station, height, position</source>
        <translation>Nombres de columnas, estación, altura, posición</translation>
    </message>
    <message>
        <source>Columns of date, low, high, rain</source>
        <translation>Columnas de fecha, mínima, máxima, lluvia</translation>
    </message>
    <message>
        <source>Columns, as Day,Min,Max,Rain</source>
        <translation>Columnas, como Day,Min,Max,Rain</translation>
    </message>
    <message>
        <source>Station, of a file with several</source>
        <translation>Estación, de un archivo con varias</translation>
    </message>
    <message>
        <source>Height where it was kept</source>
        <translation>Altura donde se registró</translation>
    </message>
    <message>
        <source>Height where it was kept, if not at home</source>
        <translation>Altura donde se registró, si no fue en casa</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>ft</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>Where it was kept, if not at home: both coordinates</source>
        <translation>Dónde se llevó, si no fue en casa: ambas coordenadas</translation>
    </message>
    <message>
        <source>Position, if not at home, such as 48.2, 20.5</source>
        <translation>Posición, si no es en casa, como 48.2, 20.5</translation>
    </message>
    <message>
        <source>Take it in instead</source>
        <translation>Incorporarlo en su lugar</translation>
    </message>
    <message>
        <source>Take the record in</source>
        <translation>Incorporar el registro</translation>
    </message>
    <message>
        <source>Checked and compared with the shipped table first</source>
        <translation>Antes se comprueba y se compara con la tabla incluida</translation>
    </message>
    <message>
        <source>Take it in all the same</source>
        <translation>Incorporarlo de todos modos</translation>
    </message>
    <message>
        <source>The record is being read.</source>
        <translation>Se está leyendo el registro.</translation>
    </message>
</context>
<context>
    <name>HomeSettings</name>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Degrees</source>
        <translation>Grados</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>Lengths, volumes, weights</source>
        <translation>Longitudes, volúmenes, pesos</translation>
    </message>
    <message>
        <source>Centimetres, litres, millilitres</source>
        <translation>Centímetros, litros, mililitros</translation>
    </message>
    <message>
        <source>Inches, US cups and gallons</source>
        <translation>Pulgadas, tazas y galones de EE. UU.</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Light and dark</source>
        <translation>Claro y oscuro</translation>
    </message>
    <message>
        <source>As the desktop</source>
        <translation>Como el escritorio</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>High contrast</source>
        <translation>Alto contraste</translation>
    </message>
    <message>
        <source>Follows the desktop while the window is open.</source>
        <translation>Sigue al escritorio mientras la ventana está abierta.</translation>
    </message>
    <message>
        <source>Size of the text</source>
        <translation>Tamaño del texto</translation>
    </message>
    <message>
        <source>85 %</source>
        <translation>85 %</translation>
    </message>
    <message>
        <source>100 %</source>
        <translation>100 %</translation>
    </message>
    <message>
        <source>115 %</source>
        <translation>115 %</translation>
    </message>
    <message>
        <source>130 %</source>
        <translation>130 %</translation>
    </message>
    <message>
        <source>150 %</source>
        <translation>150 %</translation>
    </message>
    <message>
        <source>175 %</source>
        <translation>175 %</translation>
    </message>
    <message>
        <source>200 %</source>
        <translation>200 %</translation>
    </message>
    <message>
        <source>Rows, buttons and charts grow with it.</source>
        <translation>Las filas, los botones y los gráficos crecen con él.</translation>
    </message>
    <message>
        <source>Fingers</source>
        <translation>Dedos</translation>
    </message>
    <message>
        <source>From the first touch on</source>
        <translation>Desde el primer toque</translation>
    </message>
    <message>
        <source>Always</source>
        <translation>Siempre</translation>
    </message>
    <message>
        <source>Never</source>
        <translation>Nunca</translation>
    </message>
    <message>
        <source>Buttons, chips and rows are large enough for fingers then, and further apart.</source>
        <translation>Los botones, las casillas y las filas son entonces bastante grandes para los dedos y están más separados.</translation>
    </message>
    <message>
        <source>Motion</source>
        <translation>Movimiento</translation>
    </message>
    <message>
        <source>Bars move to a new plan</source>
        <translation>Las barras se mueven al nuevo plan</translation>
    </message>
    <message>
        <source>Nothing moves</source>
        <translation>Nada se mueve</translation>
    </message>
    <message>
        <source>A word from the desktop</source>
        <translation>Un aviso del escritorio</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguno</translation>
    </message>
    <message>
        <source>Once in the evening, where a plant must come in</source>
        <translation>Una vez por la tarde, si una planta debe entrar</translation>
    </message>
    <message>
        <source>From 16:00 on, while the window is open, and never twice in an evening. It says what the window’s title says.</source>
        <translation>A partir de las 16:00, mientras la ventana está abierta, y nunca dos veces en una tarde. Dice lo que dice el título de la ventana.</translation>
    </message>
    <message>
        <source>Dates, numbers, weeks</source>
        <translation>Fechas, números, semanas</translation>
    </message>
    <message>
        <source>Every key of the page that is open is shown with F1.</source>
        <translation>F1 muestra todas las teclas de la página abierta.</translation>
    </message>
    <message>
        <source>Of you and this machine, not of the household: kept in %1.</source>
        <translation>De la persona y este equipo, no del hogar: se guarda en %1.</translation>
    </message>
</context>
<context>
    <name>HomeSpots</name>
    <message>
        <source>Light on a spot through the year</source>
        <translation>Luz en un sitio a lo largo del año</translation>
    </message>
    <message>
        <source>Add a spot</source>
        <translation>Añadir un sitio</translation>
    </message>
    <message>
        <source>Change this spot</source>
        <translation>Cambiar este sitio</translation>
    </message>
    <message>
        <source>Name, kind, side, pots, reach, window; or take it off the list</source>
        <translation>Nombre, clase, orientación, macetas, alcance, ventana; o quitarlo de la lista</translation>
    </message>
    <message>
        <source>No spot is known yet. A sill, a shelf, a balcony: wherever pots can stand.</source>
        <translation>Aún no se conoce ningún sitio. Un alféizar, un estante, un balcón: donde puedan estar macetas.</translation>
    </message>
    <message>
        <source>Moles of light on a level leaf, m² and day; %1. Behind glass right to about 30 %, outdoors to 10 %.</source>
        <translation>Moles de luz sobre una hoja horizontal, por m² y día; %1. Tras el cristal exacto en un 30 %, al aire libre en un 10 %.</translation>
    </message>
    <message>
        <source>Key T: the same as a table.</source>
        <translation>Tecla T: lo mismo en una tabla.</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Mes</translation>
    </message>
    <message>
        <source>moles a day</source>
        <translation>moles al día</translation>
    </message>
    <message>
        <source>9 days in 10</source>
        <translation>9 de cada 10 días</translation>
    </message>
    <message>
        <source>for the plants there</source>
        <translation>para las plantas de allí</translation>
    </message>
    <message>
        <source>As a table</source>
        <translation>Como tabla</translation>
    </message>
    <message>
        <source>Key T</source>
        <translation>Tecla T</translation>
    </message>
    <message>
        <source>Plants that stand there now</source>
        <translation>Plantas que están allí ahora</translation>
    </message>
    <message>
        <source>None.</source>
        <translation>Ninguna.</translation>
    </message>
    <message>
        <source>Plants at the spot and their light</source>
        <translation>Plantas del sitio y su luz</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
</context>
<context>
    <name>HomeTablesBack</name>
    <message>
        <source>Read tables back</source>
        <translation>Volver a leer tablas</translation>
    </message>
    <message>
        <source>Tables that were written here, perhaps edited since, become a household in a new or an empty folder. The one that is open stays as it is.</source>
        <translation>Las tablas que se escribieron aquí, quizá editadas desde entonces, se vuelven un hogar en una carpeta nueva o vacía. El que está abierto se queda como está.</translation>
    </message>
    <message>
        <source>The folder with the tables</source>
        <translation>La carpeta con las tablas</translation>
    </message>
    <message>
        <source>The new or empty folder</source>
        <translation>La carpeta nueva o vacía</translation>
    </message>
    <message>
        <source>A row that names a plant, spot or lot that is not there</source>
        <translation>Una fila que nombra una planta, un sitio o un lote que no está</translation>
    </message>
    <message>
        <source>stops the reading</source>
        <translation>detiene la lectura</translation>
    </message>
    <message>
        <source>is left out and named</source>
        <translation>se omite y se nombra</translation>
    </message>
    <message>
        <source>Read them back</source>
        <translation>Volver a leerlas</translation>
    </message>
    <message>
        <source>Every row is held against the rules of its table before the folder appears</source>
        <translation>Cada fila se comprueba con las reglas de su tabla antes de que aparezca la carpeta</translation>
    </message>
</context>
<context>
    <name>HomeWatch</name>
    <message>
        <source>A folder that is watched</source>
        <translation>Una carpeta vigilada</translation>
    </message>
    <message>
        <source>What a phone copies there comes in by itself as long as this window is open. A photograph goes to the plant with whose name its own begins, or after which its folder is called; the files stay where they are.</source>
        <translation>Lo que un teléfono copia allí entra por sí solo mientras esta ventana esté abierta. Una fotografía va a la planta con cuyo nombre empieza el suyo o cuyo nombre lleva su carpeta; los archivos se quedan donde están.</translation>
    </message>
    <message>
        <source>The folder of photographs</source>
        <translation>La carpeta de las fotografías</translation>
    </message>
    <message>
        <source>Watch it</source>
        <translation>Vigilarla</translation>
    </message>
    <message>
        <source>%1 is watched. %2</source>
        <translation>Se vigila %1. %2</translation>
    </message>
    <message>
        <source>Watch it no longer</source>
        <translation>Dejar de vigilarla</translation>
    </message>
    <message>
        <source>What came in stays.</source>
        <translation>Lo que ya entró se queda.</translation>
    </message>
</context>
<context>
    <name>JournalLine</name>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>plant %1</source>
        <translation>planta %1</translation>
    </message>
    <message>
        <source>a spot</source>
        <translation>un sitio</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Measured: %1</source>
        <translation>Medido: %1</translation>
    </message>
    <message>
        <source>Lowest of the night: %1</source>
        <translation>Mínima de la noche: %1</translation>
    </message>
    <message>
        <source>night to %1 %2</source>
        <translation>noche hasta el %1 %2</translation>
    </message>
    <message>
        <source>Forecast kept: %1</source>
        <translation>Pronóstico guardado: %1</translation>
    </message>
</context>
<context>
    <name>KeyList</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>KeysSheet</name>
    <message>
        <source>Keys</source>
        <translation>Teclas</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Ronda</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation>Arriba, Abajo</translation>
    </message>
    <message>
        <source>the task before, the next one</source>
        <translation>la tarea anterior, la siguiente</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>tick the task</source>
        <translation>marcar la tarea</translation>
    </message>
    <message>
        <source>the next washing step is done</source>
        <translation>el siguiente lavado está hecho</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>the plant’s page</source>
        <translation>la página de la planta</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Ctrl+L</translation>
    </message>
    <message>
        <source>log something for the task’s plant</source>
        <translation>anotar algo de la planta de la tarea</translation>
    </message>
    <message>
        <source>Menu, Shift+F10</source>
        <translation>Menú, Mayús+F10</translation>
    </message>
    <message>
        <source>all that can be done with the task</source>
        <translation>todo lo que puede hacerse con la tarea</translation>
    </message>
    <message>
        <source>put it off a day</source>
        <translation>aplazarla un día</translation>
    </message>
    <message>
        <source>Shift+P</source>
        <translation>Mayús+P</translation>
    </message>
    <message>
        <source>put it off longer, or to a date</source>
        <translation>aplazarla más tiempo o hasta una fecha</translation>
    </message>
    <message>
        <source>leave it out, and why</source>
        <translation>omitirla, y por qué</translation>
    </message>
    <message>
        <source>how much feed or soap goes into the water</source>
        <translation>cuánto abono o jabón va en el agua</translation>
    </message>
    <message>
        <source>what to look at before a spray</source>
        <translation>qué mirar antes de pulverizar</translation>
    </message>
    <message>
        <source>the ten nights as a table, or drawn</source>
        <translation>las diez noches en tabla o dibujadas</translation>
    </message>
    <message>
        <source>read the household again</source>
        <translation>leer de nuevo la casa</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Año</translation>
    </message>
    <message>
        <source>Left, Right</source>
        <translation>Izquierda, Derecha</translation>
    </message>
    <message>
        <source>a day before, a day on; with Ctrl a week</source>
        <translation>un día antes, un día después; con Ctrl una semana</translation>
    </message>
    <message>
        <source>Page up, Page down</source>
        <translation>Re Pág, Av Pág</translation>
    </message>
    <message>
        <source>a month before, a month on</source>
        <translation>un mes antes, un mes después</translation>
    </message>
    <message>
        <source>Home, End</source>
        <translation>Inicio, Fin</translation>
    </message>
    <message>
        <source>the first day, the last day</source>
        <translation>el primer día, el último día</translation>
    </message>
    <message>
        <source>the plant above, the one below</source>
        <translation>la planta de arriba, la de abajo</translation>
    </message>
    <message>
        <source>closer, down to a week, and back</source>
        <translation>más cerca, hasta una semana, y de vuelta</translation>
    </message>
    <message>
        <source>Shift with Left, Right</source>
        <translation>Mayús con Izquierda, Derecha</translation>
    </message>
    <message>
        <source>move the edge of the plant’s stay by a day, with Ctrl by a week; Enter keeps it, Escape leaves it</source>
        <translation>mover un día el borde de la estancia de la planta, con Ctrl una semana; Intro lo guarda, Escape lo deja</translation>
    </message>
    <message>
        <source>log something for the plant</source>
        <translation>anotar algo de la planta</translation>
    </message>
    <message>
        <source>all that can be done with the plant, or with the lot below the plants</source>
        <translation>todo lo que puede hacerse con la planta, o con el lote debajo de las plantas</translation>
    </message>
    <message>
        <source>the rows by the date out, by spot, or by name</source>
        <translation>las filas por salida, por sitio o por nombre</translation>
    </message>
    <message>
        <source>take off what is pinned of the plant</source>
        <translation>soltar lo que está fijado de la planta</translation>
    </message>
    <message>
        <source>the year from another date</source>
        <translation>el año desde otra fecha</translation>
    </message>
    <message>
        <source>the year as a table, or drawn</source>
        <translation>el año en tabla o dibujado</translation>
    </message>
    <message>
        <source>Plants</source>
        <translation>Plantas</translation>
    </message>
    <message>
        <source>Arrows</source>
        <translation>Flechas</translation>
    </message>
    <message>
        <source>from plant to plant and from shelf to shelf</source>
        <translation>de planta en planta y de estante en estante</translation>
    </message>
    <message>
        <source>open the plant</source>
        <translation>abrir la planta</translation>
    </message>
    <message>
        <source>mark it, or take the mark off</source>
        <translation>marcarla o quitar la marca</translation>
    </message>
    <message>
        <source>all that can be done with the plant</source>
        <translation>todo lo que puede hacerse con la planta</translation>
    </message>
    <message>
        <source>compare the two that are marked</source>
        <translation>comparar las dos marcadas</translation>
    </message>
    <message>
        <source>log something for the plant, or for all that are marked</source>
        <translation>anotar algo de la planta o de todas las marcadas</translation>
    </message>
    <message>
        <source>move them</source>
        <translation>moverlas</translation>
    </message>
    <message>
        <source>keep the plant at a spot, always or from one evening to another</source>
        <translation>fijar la planta en un sitio, siempre o de una noche a otra</translation>
    </message>
    <message>
        <source>all plants as a table, or on their shelves</source>
        <translation>todas las plantas en tabla o en sus estantes</translation>
    </message>
    <message>
        <source>A plant’s page</source>
        <translation>La página de una planta</translation>
    </message>
    <message>
        <source>from photo to photo; Enter opens it</source>
        <translation>de foto en foto; Intro la abre</translation>
    </message>
    <message>
        <source>two photos side by side</source>
        <translation>dos fotos una junto a otra</translation>
    </message>
    <message>
        <source>what was measured as a table, or drawn</source>
        <translation>lo medido en tabla o dibujado</translation>
    </message>
    <message>
        <source>how much feed goes into the water</source>
        <translation>cuánto abono va en el agua</translation>
    </message>
    <message>
        <source>after a cold night</source>
        <translation>tras una noche fría</translation>
    </message>
    <message>
        <source>hit by a spray</source>
        <translation>dañada por un producto</translation>
    </message>
    <message>
        <source>before a spray</source>
        <translation>antes de pulverizar</translation>
    </message>
    <message>
        <source>pests and the course</source>
        <translation>plagas y tratamiento</translation>
    </message>
    <message>
        <source>water and winter</source>
        <translation>agua e invierno</translation>
    </message>
    <message>
        <source>going out and coming in</source>
        <translation>salir y entrar</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Escape</translation>
    </message>
    <message>
        <source>back to all plants</source>
        <translation>volver a todas las plantas</translation>
    </message>
    <message>
        <source>A photo</source>
        <translation>Una foto</translation>
    </message>
    <message>
        <source>measure in it</source>
        <translation>medir en ella</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tab</translation>
    </message>
    <message>
        <source>measuring: the next point</source>
        <translation>al medir: el punto siguiente</translation>
    </message>
    <message>
        <source>measuring: the point by a pixel, with Shift by ten</source>
        <translation>al medir: el punto un píxel, con Mayús diez</translation>
    </message>
    <message>
        <source>Backspace</source>
        <translation>Retroceso</translation>
    </message>
    <message>
        <source>measuring: take the last point back</source>
        <translation>al medir: retirar el último punto</translation>
    </message>
    <message>
        <source>Adding plants</source>
        <translation>Añadir plantas</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Abajo</translation>
    </message>
    <message>
        <source>from the field to the kinds that answer</source>
        <translation>del campo a las especies que responden</translation>
    </message>
    <message>
        <source>pick the kind, or one more of it</source>
        <translation>elegir la especie, o una más de ella</translation>
    </message>
    <message>
        <source>what is known of the kind, before it is picked</source>
        <translation>qué se sabe de la especie, antes de elegirla</translation>
    </message>
    <message>
        <source>Seeds</source>
        <translation>Semillas</translation>
    </message>
    <message>
        <source>the lot above, the one below</source>
        <translation>el lote de arriba, el de abajo</translation>
    </message>
    <message>
        <source>one more has come up in the lot’s first tray, or one fewer</source>
        <translation>en la primera bandeja del lote ha nacido una más, o una menos</translation>
    </message>
    <message>
        <source>lots by name, or by their dates</source>
        <translation>lotes por nombre o por sus fechas</translation>
    </message>
    <message>
        <source>up and down the sheet beside</source>
        <translation>subir y bajar por la hoja de al lado</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Casa</translation>
    </message>
    <message>
        <source>the section before, the next one</source>
        <translation>la sección anterior, la siguiente</translation>
    </message>
    <message>
        <source>what is above in the section, what is below</source>
        <translation>lo de arriba en la sección, lo de abajo</translation>
    </message>
    <message>
        <source>what is drawn as a table, and back</source>
        <translation>lo dibujado en tabla, y de vuelta</translation>
    </message>
    <message>
        <source>under Thermometer: type last night’s low; under Journal: log something at a spot</source>
        <translation>en Termómetro: escribir la mínima de la última noche; en Diario: anotar algo en un sitio</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>En todas partes</translation>
    </message>
    <message>
        <source>1 to 5, or with Alt</source>
        <translation>1 a 5, o con Alt</translation>
    </message>
    <message>
        <source>Round, Year, Plants, Seeds, Home</source>
        <translation>Ronda, Año, Plantas, Semillas, Casa</translation>
    </message>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Mayús+Tab</translation>
    </message>
    <message>
        <source>the next thing that takes a key, the one before</source>
        <translation>lo siguiente que admite teclas, lo anterior</translation>
    </message>
    <message>
        <source>the next part of the page; with Shift the one before</source>
        <translation>la parte siguiente de la página; con Mayús la anterior</translation>
    </message>
    <message>
        <source>Ctrl+F</source>
        <translation>Ctrl+F</translation>
    </message>
    <message>
        <source>find a plant</source>
        <translation>buscar una planta</translation>
    </message>
    <message>
        <source>Ctrl+P</source>
        <translation>Ctrl+P</translation>
    </message>
    <message>
        <source>print the page</source>
        <translation>imprimir la página</translation>
    </message>
    <message>
        <source>Ctrl+Z, Ctrl+Shift+Z</source>
        <translation>Ctrl+Z, Ctrl+Mayús+Z</translation>
    </message>
    <message>
        <source>take back what was done last, do it again</source>
        <translation>deshacer lo último hecho, rehacerlo</translation>
    </message>
    <message>
        <source>Ctrl+,</source>
        <translation>Ctrl+,</translation>
    </message>
    <message>
        <source>colours, text, units and language</source>
        <translation>colores, texto, unidades e idioma</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <translation>Ctrl+Intro</translation>
    </message>
    <message>
        <source>keep what stands in a form</source>
        <translation>guardar lo que hay en un formulario</translation>
    </message>
    <message>
        <source>close what was opened last</source>
        <translation>cerrar lo último que se abrió</translation>
    </message>
    <message>
        <source>these keys</source>
        <translation>estas teclas</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>KindFigures</name>
    <message>
        <source>Safe night</source>
        <translation>Noche segura</translation>
    </message>
    <message>
        <source>Harm begins</source>
        <translation>Daño desde</translation>
    </message>
    <message>
        <source>May kill</source>
        <translation>Puede morir a</translation>
    </message>
    <message>
        <source>Grows well</source>
        <translation>Crece bien</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>Heat harms</source>
        <translation>El calor daña</translation>
    </message>
    <message>
        <source>from %1 on</source>
        <translation>desde %1</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Luz</translation>
    </message>
    <message>
        <source>Light of a day</source>
        <translation>Luz al día</translation>
    </message>
    <message>
        <source>%1 mol/m² is good, %2 keeps it alive</source>
        <translation>%1 mol/m² es bueno, %2 la mantiene viva</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Grows in</source>
        <translation>Crece en</translation>
    </message>
    <message>
        <source>Its rest</source>
        <translation>Su reposo</translation>
    </message>
    <message>
        <source>Feed</source>
        <translation>Abono</translation>
    </message>
    <message>
        <source>Repot</source>
        <translation>Trasplante</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>stands still in winter, and wants it cool then</source>
        <translation>se para en invierno y entonces quiere fresco</translation>
    </message>
    <message>
        <source>stands still in winter</source>
        <translation>se para en invierno</translation>
    </message>
    <message>
        <source>slower in winter, and wants it cool then</source>
        <translation>más lenta en invierno, y entonces quiere fresco</translation>
    </message>
    <message>
        <source>slower in winter</source>
        <translation>más lenta en invierno</translation>
    </message>
    <message>
        <source>stands still in the hot season</source>
        <translation>se para en la temporada de calor</translation>
    </message>
    <message>
        <source>a while after its flowers</source>
        <translation>un tiempo tras la floración</translation>
    </message>
    <message>
        <source>nearly dry while it rests</source>
        <translation>casi seca mientras reposa</translation>
    </message>
    <message>
        <source>none known</source>
        <translation>ninguno conocido</translation>
    </message>
    <message>
        <source>takes no feed</source>
        <translation>no lleva abono</translation>
    </message>
    <message>
        <source>while it grows, %1 to %2 ppm nitrogen each time</source>
        <translation>mientras crece, de %1 a %2 ppm de nitrógeno cada vez</translation>
    </message>
    <message>
        <source>while it grows, %1 ppm nitrogen each time</source>
        <translation>mientras crece, %1 ppm de nitrógeno cada vez</translation>
    </message>
    <message>
        <source>after %1 to %2 years</source>
        <translation>al cabo de %1 a %2 años</translation>
    </message>
    <message>
        <source>after a year</source>
        <translation>al cabo de un año</translation>
    </message>
    <message>
        <source>after %1 years</source>
        <translation>al cabo de %1 años</translation>
    </message>
</context>
<context>
    <name>KindFilterChips</name>
    <message>
        <source>By name alone</source>
        <translation>Solo por el nombre</translation>
    </message>
    <message>
        <source>By group and evidence</source>
        <translation>Por grupo y respaldo</translation>
    </message>
    <message>
        <source>Lists all kinds again</source>
        <translation>Muestra de nuevo todas las especies</translation>
    </message>
    <message>
        <source>Lists the kinds of one group, or those whose cold lines rest on one sort of evidence</source>
        <translation>Muestra las especies de un grupo, o aquellas cuyas líneas de frío se basan en un tipo de respaldo</translation>
    </message>
    <message>
        <source>Of which group</source>
        <translation>De qué grupo</translation>
    </message>
    <message>
        <source>What their cold lines rest on</source>
        <translation>En qué se basan sus líneas de frío</translation>
    </message>
</context>
<context>
    <name>KindRow</name>
    <message>
        <source>Look</source>
        <translation>Ver</translation>
    </message>
    <message>
        <source>Key L in the list. What is known of the kind, before it is picked.</source>
        <translation>Tecla L en la lista. Qué se sabe de la especie, antes de elegirla.</translation>
    </message>
    <message>
        <source>Look at %1</source>
        <translation>Ver %1</translation>
    </message>
</context>
<context>
    <name>KindSheet</name>
    <message>
        <source>low of a night</source>
        <translation>mínima de una noche</translation>
    </message>
    <message>
        <source>Pick this kind</source>
        <translation>Elegir esta especie</translation>
    </message>
    <message>
        <source>One plant of it; it is kept with the form.</source>
        <translation>Una planta de ella; se guarda con el formulario.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Escape</translation>
    </message>
</context>
<context>
    <name>LathProgress</name>
    <message>
        <source>Stopping; what was begun is cleared away.</source>
        <translation>Deteniendo; se retira lo empezado.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>Nothing half written is left</source>
        <translation>No queda nada a medio escribir</translation>
    </message>
</context>
<context>
    <name>LogLine</name>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>How many days ago the night ended, blank for this morning</source>
        <translation>Hace cuántos días terminó la noche, en blanco para esta mañana</translation>
    </message>
    <message>
        <source>this morning</source>
        <translation>esta mañana</translation>
    </message>
    <message>
        <source>days ago</source>
        <translation>días atrás</translation>
    </message>
    <message>
        <source>clear, calm</source>
        <translation>despejado, en calma</translation>
    </message>
    <message>
        <source>The sky was clear and the air still</source>
        <translation>El cielo estaba despejado y el aire en calma</translation>
    </message>
    <message>
        <source>cloud or wind</source>
        <translation>nubes o viento</translation>
    </message>
</context>
<context>
    <name>LogPanel</name>
    <message>
        <source>Log for %1</source>
        <translation>Anotar para %1</translation>
    </message>
    <message>
        <source>What was read; repeats with a semicolon between</source>
        <translation>Lo que se leyó; repeticiones con punto y coma en medio</translation>
    </message>
    <message>
        <source>Nitrogen of the feed, may be left blank</source>
        <translation>Nitrógeno del abono, puede quedar en blanco</translation>
    </message>
    <message>
        <source>43.5; 43.7</source>
        <translation>43,5; 43,7</translation>
    </message>
    <message>
        <source>nitrogen</source>
        <translation>nitrógeno</translation>
    </message>
    <message>
        <source>Measured with</source>
        <translation>Medido con</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>lo usual</translation>
    </message>
    <message>
        <source>ruler</source>
        <translation>regla</translation>
    </message>
    <message>
        <source>counting</source>
        <translation>conteo</translation>
    </message>
    <message>
        <source>by eye</source>
        <translation>a ojo</translation>
    </message>
    <message>
        <source>photograph</source>
        <translation>fotografía</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántos</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>few</source>
        <translation>pocos</translation>
    </message>
    <message>
        <source>many</source>
        <translation>muchos</translation>
    </message>
    <message>
        <source>all over it</source>
        <translation>por todas partes</translation>
    </message>
    <message>
        <source>pests, or new here</source>
        <translation>plagas, o recién llegada</translation>
    </message>
    <message>
        <source>sick roots</source>
        <translation>raíces enfermas</translation>
    </message>
    <message>
        <source>Which pest</source>
        <translation>Qué plaga</translation>
    </message>
    <message>
        <source>With what, may be left blank</source>
        <translation>Con qué, puede quedar en blanco</translation>
    </message>
    <message>
        <source>Lowest at the plant, may be left blank</source>
        <translation>Mínima junto a la planta, puede quedar en blanco</translation>
    </message>
    <message>
        <source>Names of the new plants, with commas</source>
        <translation>Nombres de las plantas nuevas, con comas</translation>
    </message>
    <message>
        <source>Which product, may be left blank</source>
        <translation>Qué producto, puede quedar en blanco</translation>
    </message>
    <message>
        <source>The label and local advice come first, and say how long to keep away.</source>
        <translation>La etiqueta y los consejos locales van primero y dicen cuánto tiempo hay que mantenerse lejos.</translation>
    </message>
    <message>
        <source>How many days ago, blank for today</source>
        <translation>Hace cuántos días, en blanco si es hoy</translation>
    </message>
    <message>
        <source>0 days ago</source>
        <translation>hace 0 días</translation>
    </message>
    <message>
        <source>days ago</source>
        <translation>días atrás</translation>
    </message>
    <message>
        <source>Time of day, may be left blank</source>
        <translation>Hora del día, puede quedar en blanco</translation>
    </message>
    <message>
        <source>time, such as 14:30</source>
        <translation>hora, como 14:30</translation>
    </message>
    <message>
        <source>Time zone of that clock; blank: the one at home</source>
        <translation>Zona horaria de ese reloj; en blanco: la de casa</translation>
    </message>
    <message>
        <source>zone, such as Europe/Rome</source>
        <translation>zona, como Europe/Rome</translation>
    </message>
    <message>
        <source>Who measured, may be left blank</source>
        <translation>Quién midió, puede quedar en blanco</translation>
    </message>
    <message>
        <source>who measured</source>
        <translation>quién midió</translation>
    </message>
    <message>
        <source>Volume of the pot then; blank: as it is now</source>
        <translation>Volumen de la maceta entonces; en blanco: el de ahora</translation>
    </message>
    <message>
        <source>pot, if another</source>
        <translation>maceta, si era otra</translation>
    </message>
    <message>
        <source>What it stood in, may be left blank</source>
        <translation>En qué estaba plantada, puede quedar en blanco</translation>
    </message>
    <message>
        <source>mix it stood in</source>
        <translation>sustrato en que estaba</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Note, may be left blank</source>
        <translation>Nota, puede quedar en blanco</translation>
    </message>
    <message>
        <source>Keep in the journal</source>
        <translation>Guardar en el diario</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Salir</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Escape</translation>
    </message>
</context>
<context>
    <name>LotEntry</name>
    <message>
        <source>Crop</source>
        <translation>Cultivo</translation>
    </message>
    <message>
        <source>tomato, zinnia</source>
        <translation>tomate, zinnia</translation>
    </message>
    <message>
        <source>What you call the lot; blank: crop and year</source>
        <translation>Nombre del lote; en blanco: cultivo y año</translation>
    </message>
    <message>
        <source>Packed in</source>
        <translation>Envasado en</translation>
    </message>
    <message>
        <source>Comes up, by the packet</source>
        <translation>Nace, según el sobre</translation>
    </message>
    <message>
        <source>Seeds in it</source>
        <translation>Semillas que contiene</translation>
    </message>
    <message>
        <source>Note, may be left blank</source>
        <translation>Nota, puede quedar en blanco</translation>
    </message>
</context>
<context>
    <name>LotRow</name>
    <message>
        <source>&lt;b&gt;%1&lt;/b&gt; %2</source>
        <translation>&lt;b&gt;%1&lt;/b&gt; %2</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>%1 · Lathhouse</source>
        <translation>%1 · Lathhouse</translation>
    </message>
    <message>
        <source>Lathhouse · %1</source>
        <translation>Lathhouse · %1</translation>
    </message>
</context>
<context>
    <name>Masthead</name>
    <message>
        <source>Round</source>
        <translation>Ronda</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Año</translation>
    </message>
    <message>
        <source>Plants</source>
        <translation>Plantas</translation>
    </message>
    <message>
        <source>Seeds</source>
        <translation>Semillas</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Casa</translation>
    </message>
    <message>
        <source>%1, %2 to carry in tonight</source>
        <translation>%1, %2 por entrar esta noche</translation>
    </message>
    <message>
        <source>Key %1</source>
        <translation>Tecla %1</translation>
    </message>
    <message>
        <source>Invented, for showing · %1</source>
        <translation>Inventado · %1</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Invented · %1</source>
        <translation>Inventado · %1</translation>
    </message>
    <message>
        <source>Today is %1</source>
        <translation>Hoy es %1</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Control and Z. Takes back what was entered last, on any page.</source>
        <translation>Control y Z. Deshace lo último que se anotó, en cualquier página.</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Control and F. Finds a plant by its name or kind.</source>
        <translation>Control y F. Busca una planta por su nombre o especie.</translation>
    </message>
</context>
<context>
    <name>MeasureLength</name>
    <message>
        <source>1. Something of known size</source>
        <translation>1. Algo de tamaño conocido</translation>
    </message>
    <message>
        <source>A to B is</source>
        <translation>De A a B hay</translation>
    </message>
    <message>
        <source>Length from A to B</source>
        <translation>Longitud de A a B</translation>
    </message>
    <message>
        <source>Write a number such as 14.0; between 1 mm and 10 m.</source>
        <translation>Escribir un número como 14,0; entre 1 mm y 10 m.</translation>
    </message>
    <message>
        <source>The pot’s rim, a ruler, or the 10 cm of the printed card.</source>
        <translation>El borde de la maceta, una regla o los 10 cm de la tarjeta impresa.</translation>
    </message>
    <message>
        <source>A card to print</source>
        <translation>Una tarjeta para imprimir</translation>
    </message>
    <message>
        <source>A ruler of 10 cm and a grey patch, to stand beside the plant; print it at 100 %</source>
        <translation>Una regla de 10 cm y un campo gris, para poner junto a la planta; imprimir al 100 %</translation>
    </message>
    <message>
        <source>2. The plant</source>
        <translation>2. La planta</translation>
    </message>
    <message>
        <source>from 1 to 2</source>
        <translation>de 1 a 2</translation>
    </message>
    <message>
        <source>%1 set</source>
        <translation>%1 puesto</translation>
    </message>
    <message>
        <source>%1 not set</source>
        <translation>%1 sin poner</translation>
    </message>
    <message>
        <source>Chooses the point; the arrow keys in the photograph move it.</source>
        <translation>Elige el punto; las flechas en la fotografía lo mueven.</translation>
    </message>
</context>
<context>
    <name>MeasurePage</name>
    <message>
        <source>Measure in a photograph</source>
        <translation>Medir en una fotografía</translation>
    </message>
    <message>
        <source>Measure in a photo</source>
        <translation>Medir en una foto</translation>
    </message>
    <message>
        <source>Press to set a point, drag to correct it. Arrow keys move the chosen point by one pixel, with Shift by ten. Tab goes to the next. Backspace takes a point back.</source>
        <translation>Pulsar pone un punto, arrastrar lo corrige. Las flechas mueven el punto elegido un píxel, con Mayúsculas diez. Tab pasa al siguiente. Retroceso quita un punto.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>Green share</source>
        <translation>Parte verde</translation>
    </message>
    <message>
        <source>Grey patch</source>
        <translation>Parche gris</translation>
    </message>
    <message>
        <source>Sets the colours of the green share by something that is grey in truth</source>
        <translation>Ajusta los colores de la parte verde según algo que es gris de verdad</translation>
    </message>
    <message>
        <source>An outline round the grey patch</source>
        <translation>Un contorno alrededor del parche gris</translation>
    </message>
    <message>
        <source>An outline round the leaves</source>
        <translation>Un contorno alrededor de las hojas</translation>
    </message>
    <message>
        <source>No corner set yet.</source>
        <translation>Aún no hay esquinas.</translation>
    </message>
    <message>
        <source>%1 corners, %2</source>
        <translation>%1 esquinas, %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Keep what is known and what is measured at the same distance from the camera: at one metre, each 10 cm that the plant stands nearer makes it come out about 10 % too long.</source>
        <translation>Lo conocido y lo medido, a la misma distancia de la cámara: a un metro, cada 10 cm que la planta está más cerca la hacen parecer un 10 % más larga.</translation>
    </message>
    <message>
        <source>or type it</source>
        <translation>o escribirlo</translation>
    </message>
    <message>
        <source>Green share, typed instead of drawn</source>
        <translation>Parte verde, escrita en vez de dibujada</translation>
    </message>
    <message>
        <source>Length, typed instead of marked</source>
        <translation>Longitud, escrita en vez de marcada</translation>
    </message>
    <message>
        <source>Keep the reading</source>
        <translation>Guardar la medición</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Otra vez</translation>
    </message>
    <message>
        <source>Takes the outline away.</source>
        <translation>Quita el contorno.</translation>
    </message>
    <message>
        <source>Keeps this try in mind and has the points set once more.</source>
        <translation>Recuerda este intento y deja poner los puntos otra vez.</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Salir</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Escape</translation>
    </message>
</context>
<context>
    <name>MeasurePicture</name>
    <message>
        <source>Photograph with marks, %1</source>
        <translation>Fotografía con marcas, %1</translation>
    </message>
    <message>
        <source>%1, 4 times</source>
        <translation>%1, 4 aumentos</translation>
    </message>
</context>
<context>
    <name>MendSheet</name>
    <message>
        <source>Name of the household</source>
        <translation>Nombre del hogar</translation>
    </message>
    <message>
        <source>Control and Enter. One line in the journal, which can be taken back.</source>
        <translation>Control e Intro. Una anotación en el diario, que se puede deshacer.</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Salir</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Escape</translation>
    </message>
    <message>
        <source>Take this spot off the list</source>
        <translation>Quitar este sitio de la lista</translation>
    </message>
    <message>
        <source>Only a spot where nothing stands and of which the journal tells nothing</source>
        <translation>Solo un sitio donde no hay nada y del que el diario no cuenta nada</translation>
    </message>
    <message>
        <source>Take back what keeps it</source>
        <translation>Soltar lo que la fija</translation>
    </message>
    <message>
        <source>It goes where the plan puts it</source>
        <translation>Va adonde la pone el plan</translation>
    </message>
</context>
<context>
    <name>MovePanel</name>
    <message>
        <source>%1 moved today: where to?</source>
        <translation>%1 cambia hoy de sitio: ¿adónde?</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Salir</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Escape</translation>
    </message>
    <message>
        <source>Keep it at a spot</source>
        <translation>Fijarla en un sitio</translation>
    </message>
    <message>
        <source>Key K. Always, or from one evening to another; the plan keeps to it.</source>
        <translation>Tecla K. Siempre, o de una noche a otra; el plan lo respeta.</translation>
    </message>
</context>
<context>
    <name>NightLine</name>
    <message>
        <source>No night at or below %1 in any season.</source>
        <translation>Ninguna noche a %1 o menos en ninguna temporada.</translation>
    </message>
    <message>
        <source>%1 nights a year at or below %2, some in every month: no stretch of the year is free of them.</source>
        <translation>%1 noches al año a %2 o menos, algunas en todos los meses: ningún tramo del año está libre de ellas.</translation>
    </message>
    <message>
        <source>%1 nights a year at or below %2. There is no cold season here, so there are no dates.</source>
        <translation>%1 noches al año a %2 o menos. Aquí no hay estación fría, así que no hay fechas.</translation>
    </message>
    <message>
        <source>%1 nights a year at or below %2; seasons without any: %3.</source>
        <translation>%1 noches al año a %2 o menos; temporadas sin ninguna: %3.</translation>
    </message>
    <message>
        <source>%1 nights a year at or below %2.</source>
        <translation>%1 noches al año a %2 o menos.</translation>
    </message>
    <message>
        <source>%1: one more after %2, the first one by %3, more than %4 days without</source>
        <translation>%1: una más tras el %2, la primera antes del %3, más de %4 días sin ellas</translation>
    </message>
    <message>
        <source>Counted in the household’s own record.</source>
        <translation>Contadas en el registro propio del hogar.</translation>
    </message>
    <message>
        <source>Counted at the station that stands here.</source>
        <translation>Contadas en la estación que está aquí.</translation>
    </message>
    <message>
        <source>From monthly figures, moved to the dates of the household’s own record.</source>
        <translation>De cifras mensuales, movidas a las fechas del registro propio del hogar.</translation>
    </message>
    <message>
        <source>From monthly figures and the dates counted at stations near.</source>
        <translation>De cifras mensuales y de las fechas contadas en estaciones cercanas.</translation>
    </message>
    <message>
        <source>From monthly figures.</source>
        <translation>De cifras mensuales.</translation>
    </message>
    <message>
        <source>At %1, whose nights are %2 against the open air, as far as is known. These are chances, not promises.</source>
        <translation>%1: sus noches están, hasta donde se sabe, a %2 frente al aire libre. Son probabilidades, no promesas.</translation>
    </message>
    <message>
        <source>In the open air at home. These are chances, not promises.</source>
        <translation>Al aire libre en casa. Son probabilidades, no promesas.</translation>
    </message>
    <message>
        <source>%1 Right to about %2 days at the middle chances. %3</source>
        <translation>%1 Exactas en unos %2 días en las probabilidades medias. %3</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>A night at or below %1 among the %2 from %3 to %4: %5; %6 such nights on average.</source>
        <translation>Una noche a %1 o menos entre las %2 del %3 al %4: %5; %6 noches así de media.</translation>
    </message>
    <message>
        <source>One before these, since the turn of the season on %1: %2. One after these, up to the next turn: %3.</source>
        <translation>Una antes de estas, desde el cambio de temporada el %1: %2. Una después, hasta el próximo cambio: %3.</translation>
    </message>
    <message>
        <source>%1 in 10</source>
        <translation>%1 de cada 10</translation>
    </message>
    <message>
        <source>1 in %1</source>
        <translation>1 de cada %1</translation>
    </message>
</context>
<context>
    <name>PathField</name>
    <message>
        <source>Choose</source>
        <translation>Elegir</translation>
    </message>
    <message>
        <source>%1: opens a dialog</source>
        <translation>%1: abre un diálogo</translation>
    </message>
    <message>
        <source>There is no dialog for files on this machine; type the path.</source>
        <translation>En este equipo no hay diálogo de archivos; escribir la ruta.</translation>
    </message>
</context>
<context>
    <name>PhotoChooser</name>
    <message>
        <source>Add photographs</source>
        <translation>Añadir fotografías</translation>
    </message>
    <message>
        <source>Photographs (*.jpg *.jpeg *.png *.webp *.heic *.heif *.JPG *.JPEG *.PNG *.HEIC)</source>
        <translation>Fotografías (*.jpg *.jpeg *.png *.webp *.heic *.heif *.JPG *.JPEG *.PNG *.HEIC)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
</context>
<context>
    <name>PhotoDateAsked</name>
    <message>
        <source>When they were taken, blank for the dates of their files</source>
        <translation>Cuándo se tomaron, en blanco para la fecha de sus archivos</translation>
    </message>
    <message>
        <source>as their files say</source>
        <translation>según sus archivos</translation>
    </message>
    <message>
        <source>Take them in</source>
        <translation>Incorporarlas</translation>
    </message>
    <message>
        <source>A date such as %1, with the time behind it where it is known. Those that say it themselves keep their own.</source>
        <translation>Una fecha como %1, con la hora detrás donde se sepa. Las que lo dicen ellas mismas conservan la suya.</translation>
    </message>
    <message>
        <source>Leave them out</source>
        <translation>Dejarlas fuera</translation>
    </message>
    <message>
        <source>Escape. None of what was chosen comes in.</source>
        <translation>Escape. No entra nada de lo elegido.</translation>
    </message>
    <message>
        <source>Left blank, the date of each file stands for it; pictures that were sent or copied often have a later one.</source>
        <translation>En blanco vale la fecha de cada archivo; las imágenes enviadas o copiadas suelen tener una posterior.</translation>
    </message>
</context>
<context>
    <name>PhotoExport</name>
    <message>
        <source>Write out</source>
        <translation>Sacar</translation>
    </message>
    <message>
        <source>all of this plant</source>
        <translation>todas las de esta planta</translation>
    </message>
    <message>
        <source>a strip over time</source>
        <translation>una tira en el tiempo</translation>
    </message>
    <message>
        <source>these two side by side</source>
        <translation>estas dos juntas</translation>
    </message>
    <message>
        <source>Where they were taken</source>
        <translation>Dónde se tomaron</translation>
    </message>
    <message>
        <source>is taken out</source>
        <translation>se quita</translation>
    </message>
    <message>
        <source>stays in them</source>
        <translation>se queda en ellas</translation>
    </message>
    <message>
        <source>Give these to nobody who need not know where you live.</source>
        <translation>No darlas a nadie que no tenga que saber dónde se vive.</translation>
    </message>
    <message>
        <source>How many at most</source>
        <translation>Cuántas como máximo</translation>
    </message>
    <message>
        <source>Spread evenly over its time</source>
        <translation>Repartidas por igual en el tiempo</translation>
    </message>
    <message>
        <source>%1, as usual</source>
        <translation>%1, lo habitual</translation>
    </message>
    <message>
        <source>How many in a row</source>
        <translation>Cuántas en una fila</translation>
    </message>
    <message>
        <source>Height of each</source>
        <translation>Altura de cada una</translation>
    </message>
    <message>
        <source>pixels</source>
        <translation>píxeles</translation>
    </message>
    <message>
        <source>The folder to write them to</source>
        <translation>La carpeta donde escribirlas</translation>
    </message>
    <message>
        <source>The picture to write, .jpg or .png</source>
        <translation>La imagen que se escribe, .jpg o .png</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.png)</source>
        <translation>Imágenes (*.jpg *.png)</translation>
    </message>
    <message>
        <source>Write the photographs</source>
        <translation>Escribir las fotografías</translation>
    </message>
    <message>
        <source>Write the picture</source>
        <translation>Escribir la imagen</translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation>Sustituirlo</translation>
    </message>
</context>
<context>
    <name>PhotoImportPanel</name>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>What came in stays.</source>
        <translation>Lo que entró se queda.</translation>
    </message>
    <message>
        <source>Not taken: %1</source>
        <translation>No incorporada: %1</translation>
    </message>
    <message>
        <source>Not taken: %1: %2</source>
        <translation>No incorporada: %1: %2</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>y %1 más</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Visto</translation>
    </message>
    <message>
        <source>Takes these lines away.</source>
        <translation>Quita estas líneas.</translation>
    </message>
</context>
<context>
    <name>PhotoPage</name>
    <message>
        <source>Photographs of %1</source>
        <translation>Fotografías de %1</translation>
    </message>
    <message>
        <source>%1, side by side</source>
        <translation>%1, lado a lado</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Photographs of %1 and of %2</source>
        <translation>Fotografías de %1 y de %2</translation>
    </message>
    <message>
        <source>Photograph of %1, %2</source>
        <translation>Fotografía de %1, %2</translation>
    </message>
    <message>
        <source>Back to the plant</source>
        <translation>Volver a la planta</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Escape</translation>
    </message>
    <message>
        <source>Older</source>
        <translation>Anterior</translation>
    </message>
    <message>
        <source>Key Left</source>
        <translation>Tecla Izquierda</translation>
    </message>
    <message>
        <source>Newer</source>
        <translation>Posterior</translation>
    </message>
    <message>
        <source>Key Right</source>
        <translation>Tecla Derecha</translation>
    </message>
    <message>
        <source>One alone</source>
        <translation>Una sola</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Lado a lado</translation>
    </message>
    <message>
        <source>Key B. With Shift, Left and Right walk the other one.</source>
        <translation>Tecla B. Con Mayúsculas, Izquierda y Derecha recorren la otra.</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Medir</translation>
    </message>
    <message>
        <source>Key M. Measures in this photograph.</source>
        <translation>Tecla M. Mide en esta fotografía.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 to %2, &lt;b&gt;%3&lt;/b&gt;</source>
        <translation>%1 a %2, &lt;b&gt;%3&lt;/b&gt;</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Draw it again</source>
        <translation>Dibujarla de nuevo</translation>
    </message>
    <message>
        <source>Set as its picture</source>
        <translation>Usar como su imagen</translation>
    </message>
    <message>
        <source>The drawing stands for the plant again.</source>
        <translation>El dibujo vuelve a representar a la planta.</translation>
    </message>
    <message>
        <source>This photograph stands for the plant.</source>
        <translation>Esta fotografía representa a la planta.</translation>
    </message>
    <message>
        <source>Not this plant</source>
        <translation>No es esta planta</translation>
    </message>
    <message>
        <source>The photograph stays, but does not show this plant any more.</source>
        <translation>La fotografía se queda, pero ya no muestra esta planta.</translation>
    </message>
    <message>
        <source>Out of the lists</source>
        <translation>Quitar de las listas</translation>
    </message>
    <message>
        <source>For one that is of no use. Its file stays; Home, Data and backup shows it and brings it back.</source>
        <translation>Para una que no sirve. Su archivo queda; Casa, Datos y copias la muestra y la recupera.</translation>
    </message>
    <message>
        <source>Shows another plant too</source>
        <translation>Muestra también otra planta</translation>
    </message>
    <message>
        <source>Choose the plant from a list.</source>
        <translation>Elegir la planta de una lista.</translation>
    </message>
    <message>
        <source>Set its date</source>
        <translation>Poner su fecha</translation>
    </message>
    <message>
        <source>Where the camera wrote none, or a wrong one. The photograph itself stays as it is.</source>
        <translation>Donde la cámara no escribió ninguna o una equivocada. La fotografía misma se queda como está.</translation>
    </message>
    <message>
        <source>Write out</source>
        <translation>Sacar</translation>
    </message>
    <message>
        <source>As files, as a strip over time, or two side by side, for others to see.</source>
        <translation>Como archivos, como tira en el tiempo o dos juntas, para que otros las vean.</translation>
    </message>
    <message>
        <source>When it was taken, the time behind the date where it is known</source>
        <translation>Cuándo se tomó, la hora tras la fecha donde se sepa</translation>
    </message>
    <message>
        <source>Keep the date</source>
        <translation>Guardar la fecha</translation>
    </message>
    <message>
        <source>Plants</source>
        <translation>Plantas</translation>
    </message>
</context>
<context>
    <name>PhotoStrip</name>
    <message>
        <source>No photograph yet. One a month, from the same place, shows what the eye forgets. Drag files or a folder here, or choose them.</source>
        <translation>Aún no hay fotos. Una al mes, desde el mismo lugar, muestra lo que el ojo olvida. Arrastrar aquí archivos o una carpeta, o elegirlos.</translation>
    </message>
    <message>
        <source>Add photos</source>
        <translation>Añadir fotos</translation>
    </message>
    <message>
        <source>Chooses files. They are copied into the household, unaltered.</source>
        <translation>Elige archivos. Se copian al hogar sin cambios.</translation>
    </message>
    <message>
        <source>Opens it; Left and Right walk the photographs</source>
        <translation>La abre; Izquierda y Derecha recorren las fotografías</translation>
    </message>
    <message>
        <source>&lt;b&gt;%1&lt;/b&gt; %2</source>
        <translation>&lt;b&gt;%1&lt;/b&gt; %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Medir</translation>
    </message>
    <message>
        <source>Measures in the framed photograph.</source>
        <translation>Mide en la fotografía enmarcada.</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Lado a lado</translation>
    </message>
    <message>
        <source>Key B. Two dates beside each other, with what changed.</source>
        <translation>Tecla B. Dos fechas lado a lado, con lo que cambió.</translation>
    </message>
    <message>
        <source>Chooses files; they can be dragged here too.</source>
        <translation>Elige archivos; también se pueden arrastrar aquí.</translation>
    </message>
</context>
<context>
    <name>PickedRow</name>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>One %1 fewer</source>
        <translation>Una menos: %1</translation>
    </message>
    <message>
        <source>Take %1 off the list</source>
        <translation>Quitar %1 de la lista</translation>
    </message>
    <message>
        <source>One more %1</source>
        <translation>Una más: %1</translation>
    </message>
</context>
<context>
    <name>PinEntry</name>
    <message>
        <source>At which spot</source>
        <translation>En qué sitio</translation>
    </message>
    <message>
        <source>First evening</source>
        <translation>Primera noche</translation>
    </message>
    <message>
        <source>Last evening</source>
        <translation>Última noche</translation>
    </message>
    <message>
        <source>Both left blank: always. The plan keeps to it, whatever the nights are like; the page Year shows the plant’s chance of harm there.</source>
        <translation>Las dos en blanco: siempre. El plan lo respeta, sean como sean las noches; la página Año muestra la probabilidad de daño de la planta allí.</translation>
    </message>
</context>
<context>
    <name>PlaceEntry</name>
    <message>
        <source>Nearest town, or coordinates</source>
        <translation>Población más cercana o coordenadas</translation>
    </message>
    <message>
        <source>Town, or 48.2, 16.4</source>
        <translation>Población, o 48.2, 16.4</translation>
    </message>
    <message>
        <source>Towns that answer to it</source>
        <translation>Poblaciones que coinciden</translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation>Latitud</translation>
    </message>
    <message>
        <source>° N</source>
        <translation>° N</translation>
    </message>
    <message>
        <source>Longitude</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>° E</source>
        <translation>° E</translation>
    </message>
    <message>
        <source>Height above the sea</source>
        <translation>Altura sobre el mar</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Zona horaria</translation>
    </message>
    <message>
        <source>What you call the place</source>
        <translation>Cómo llamar al lugar</translation>
    </message>
</context>
<context>
    <name>PlaceGives</name>
    <message>
        <source>What this place gives</source>
        <translation>Lo que da este lugar</translation>
    </message>
    <message>
        <source>Its frost dates, its nights and how sure they are stand here as soon as there is a place.</source>
        <translation>Sus fechas de helada, sus noches y lo seguras que son aparecen aquí en cuanto hay un lugar.</translation>
    </message>
    <message>
        <source>Map of the stations round the place: %1</source>
        <translation>Mapa de las estaciones alrededor del lugar: %1</translation>
    </message>
    <message>
        <source>. These are chances, not promises.</source>
        <translation>. Son probabilidades, no promesas.</translation>
    </message>
    <message>
        <source>; coast lines: Natural Earth (public domain)</source>
        <translation>; líneas de costa: Natural Earth (dominio público)</translation>
    </message>
    <message>
        <source>; towns: GeoNames (CC BY 4.0).</source>
        <translation>; poblaciones: GeoNames (CC BY 4.0).</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>no frost</source>
        <translation>sin heladas</translation>
    </message>
    <message>
        <source>Frost</source>
        <translation>Helada</translation>
    </message>
    <message>
        <source>none in an ordinary year</source>
        <translation>ninguna en un año normal</translation>
    </message>
    <message>
        <source>frost in any month</source>
        <translation>helada en cualquier mes</translation>
    </message>
    <message>
        <source>possible in every month</source>
        <translation>posible en todos los meses</translation>
    </message>
    <message>
        <source>no season</source>
        <translation>sin estación</translation>
    </message>
    <message>
        <source>none; there is no cold season here</source>
        <translation>ninguna; aquí no hay estación fría</translation>
    </message>
    <message>
        <source>chance per night, no season here</source>
        <translation>probabilidad por noche, aquí no hay estación</translation>
    </message>
    <message>
        <source>no frost, most years</source>
        <translation>sin heladas, casi todos los años</translation>
    </message>
    <message>
        <source>Last frost</source>
        <translation>Última helada</translation>
    </message>
    <message>
        <source>half the years by %1, 1 in 10 after %2</source>
        <translation>la mitad de los años hasta el %1, 1 de cada 10 después del %2</translation>
    </message>
    <message>
        <source>First frost</source>
        <translation>Primera helada</translation>
    </message>
    <message>
        <source>half the years by %1, 1 in 10 by %2</source>
        <translation>la mitad de los años hasta el %1, 1 de cada 10 hasta el %2</translation>
    </message>
    <message>
        <source>1 year in 10: %1; most years have none</source>
        <translation>1 año de cada 10: %1; casi ningún año la hay</translation>
    </message>
    <message>
        <source>not in most years; %1 nights a year</source>
        <translation>casi ningún año; %1 noches al año</translation>
    </message>
    <message>
        <source>Hardiness zone</source>
        <translation>Zona de rusticidad</translation>
    </message>
    <message>
        <source>%1, lowest night about %2</source>
        <translation>%1, noche más fría unos %2</translation>
    </message>
    <message>
        <source>Day length</source>
        <translation>Duración del día</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Right to about</source>
        <translation>Exacto en unos</translation>
    </message>
    <message>
        <source>%1 in a month’s lows</source>
        <translation>%1 en las mínimas de un mes</translation>
    </message>
    <message>
        <source>%1 in a month’s lows, %2 days in a frost date</source>
        <translation>%1 en las mínimas de un mes, %2 días en una fecha de helada</translation>
    </message>
    <message>
        <source>Night lows through the year: middle %1 in the coldest week, %2 in the warmest.</source>
        <translation>Mínimas nocturnas del año: centro %1 en la semana más fría, %2 en la más cálida.</translation>
    </message>
    <message>
        <source>1 station, %1 away</source>
        <translation>1 estación, a %1</translation>
    </message>
    <message>
        <source>%1 stations, %2 to %3 away</source>
        <translation>%1 estaciones, de %2 a %3</translation>
    </message>
</context>
<context>
    <name>PlaceMonths</name>
    <message>
        <source>%1: nights %2 and days %3 on average, coldest night of all the years %4, days with frost %5, degree days %6</source>
        <translation>%1: noches de %2 y días de %3 de media, la noche más fría de todos los años %4, días con helada %5, grados día %6</translation>
    </message>
    <message>
        <source>%1: rain %2, day length %3, %4 moles of light a day, a lawn drinks %5</source>
        <translation>%1: lluvia %2, duración del día %3, %4 moles de luz al día, un césped bebe %5</translation>
    </message>
    <message>
        <source>%1: soil %2 near the top and %3 deeper, in a pot %4 to %5, which drinks %6 a day</source>
        <translation>%1: suelo %2 arriba y %3 más hondo, en una maceta de %4 a %5, que bebe %6 al día</translation>
    </message>
    <message>
        <source>The mean of the day lies above %1 from %2 to %3, %4 days.</source>
        <translation>La media del día supera %1 del %2 al %3, %4 días.</translation>
    </message>
    <message>
        <source>The mean of the day lies above %1 all year.</source>
        <translation>La media del día supera %1 todo el año.</translation>
    </message>
    <message>
        <source>The mean of the day never lies above %1.</source>
        <translation>La media del día nunca supera %1.</translation>
    </message>
    <message>
        <source>Degree days above %1, counted in °C: %2 a year.</source>
        <translation>Grados día por encima de %1, contados en °C: %2 al año.</translation>
    </message>
    <message>
        <source>Rain: %1 a year.</source>
        <translation>Lluvia: %1 al año.</translation>
    </message>
    <message>
        <source>A pot or crown of %1 %2, well watered, in the open and in the shade. A dark pot in full sun gets much hotter and can burn roots and hands.</source>
        <translation>Una maceta o copa de %1 %2, bien regada, al aire libre y a la sombra. Una maceta oscura a pleno sol se calienta mucho más y puede quemar raíces y manos.</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
</context>
<context>
    <name>PlantActs</name>
    <message>
        <source>Take the mark off</source>
        <translation>Quitar la marca</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marcar</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>Open the page of %1</source>
        <translation>Abrir la página de %1</translation>
    </message>
    <message>
        <source>Open its page</source>
        <translation>Abrir su página</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>Watered today</source>
        <translation>Regada hoy</translation>
    </message>
    <message>
        <source>Fed today</source>
        <translation>Abonada hoy</translation>
    </message>
    <message>
        <source>Keep a measurement</source>
        <translation>Guardar una medida</translation>
    </message>
    <message>
        <source>Write a note</source>
        <translation>Escribir una nota</translation>
    </message>
    <message>
        <source>Log something else</source>
        <translation>Anotar otra cosa</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Ctrl+L</translation>
    </message>
    <message>
        <source>Move to another spot</source>
        <translation>Mover a otro sitio</translation>
    </message>
    <message>
        <source>Keep it at a spot</source>
        <translation>Fijarla en un sitio</translation>
    </message>
    <message>
        <source>Compare the two</source>
        <translation>Comparar las dos</translation>
    </message>
    <message>
        <source>Add photos</source>
        <translation>Añadir fotos</translation>
    </message>
</context>
<context>
    <name>PlantAsks</name>
    <message>
        <source>Ask</source>
        <translation>Preguntar</translation>
    </message>
    <message>
        <source>After a cold night</source>
        <translation>Tras una noche fría</translation>
    </message>
    <message>
        <source>Key C. What the cold may have done, what helps and what waits.</source>
        <translation>Tecla C. Qué pudo hacer el frío, qué ayuda y qué espera.</translation>
    </message>
    <message>
        <source>Hit by a spray</source>
        <translation>Dañada por un producto</translation>
    </message>
    <message>
        <source>Key H. What weed-killer or drift may have done, by what is seen.</source>
        <translation>Tecla H. Qué pudo hacer un herbicida o su deriva, por lo que se ve.</translation>
    </message>
    <message>
        <source>Before a spray</source>
        <translation>Antes de pulverizar</translation>
    </message>
    <message>
        <source>Key S. Whether to spray now, to wait, or not at all.</source>
        <translation>Tecla S. Si tratar ahora, esperar o no hacerlo.</translation>
    </message>
    <message>
        <source>Pests and the course</source>
        <translation>Plagas y tratamiento</translation>
    </message>
    <message>
        <source>Key P. How it stands, the steps and when it may end.</source>
        <translation>Tecla P. Cómo está, los pasos y cuándo puede acabar.</translation>
    </message>
    <message>
        <source>Water and winter</source>
        <translation>Agua e invierno</translation>
    </message>
    <message>
        <source>Key W. When to look at the mix, its roots and its winter quarters.</source>
        <translation>Tecla W. Cuándo mirar el sustrato, sus raíces y su cuartel de invierno.</translation>
    </message>
    <message>
        <source>Going out and coming in</source>
        <translation>Salir y entrar</translation>
    </message>
    <message>
        <source>Key O. The days before it stays out, and those around its coming in.</source>
        <translation>Tecla O. Los días antes de quedarse fuera y los de su entrada.</translation>
    </message>
</context>
<context>
    <name>PlantCollection</name>
    <message>
        <source>Find a plant by its name</source>
        <translation>Buscar una planta por su nombre</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Add plants</source>
        <translation>Añadir plantas</translation>
    </message>
    <message>
        <source>Shelves</source>
        <translation>Estantes</translation>
    </message>
    <message>
        <source>Key T changes to the table and back</source>
        <translation>La tecla T cambia a la tabla y vuelve</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabla</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Mover</translation>
    </message>
    <message>
        <source>Key M, then the number of the spot. For the chosen plant or those that are marked.</source>
        <translation>Tecla M, luego el número del sitio. Para la planta elegida o las marcadas.</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Comparar</translation>
    </message>
    <message>
        <source>Key C. The two marked plants beside each other.</source>
        <translation>Tecla C. Las dos plantas marcadas, lado a lado.</translation>
    </message>
    <message>
        <source>Log for %1</source>
        <translation>Anotar para %1</translation>
    </message>
    <message>
        <source>Log something</source>
        <translation>Anotar algo</translation>
    </message>
    <message>
        <source>Control and L. For the chosen plant or those that are marked.</source>
        <translation>Control y L. Para la planta elegida o las marcadas.</translation>
    </message>
    <message>
        <source>Read again</source>
        <translation>Leer de nuevo</translation>
    </message>
    <message>
        <source>Key F5. Reads the household anew.</source>
        <translation>Tecla F5. Lee el hogar de nuevo.</translation>
    </message>
    <message>
        <source>The plants are being read.</source>
        <translation>Se están leyendo las plantas.</translation>
    </message>
    <message>
        <source>No plant stands here yet. Each will have its page with photographs, growth and needs, and its place on a shelf. Add the first with the button above.</source>
        <translation>Aún no hay plantas aquí. Cada una tendrá su página con fotos, crecimiento y necesidades, y su lugar en un estante. Añadir la primera con el botón de arriba.</translation>
    </message>
    <message>
        <source>No plant of that name or kind. Escape shows all of them again.</source>
        <translation>Ninguna planta con ese nombre o especie. Escape las muestra todas de nuevo.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Spot</source>
        <translation>Sitio</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Next move</source>
        <translation>Próximo cambio</translation>
    </message>
    <message>
        <source>Hazard</source>
        <translation>Peligro</translation>
    </message>
    <message>
        <source>Plants as a table</source>
        <translation>Plantas en una tabla</translation>
    </message>
    <message>
        <source>1 plant marked. Escape takes the mark off.</source>
        <translation>1 planta marcada. Escape quita la marca.</translation>
    </message>
    <message>
        <source>%1 plants marked. Escape takes the marks off.</source>
        <translation>%1 plantas marcadas. Escape quita las marcas.</translation>
    </message>
    <message>
        <source>Enter opens a plant, Space marks it, Control and L logs, M moves.</source>
        <translation>Intro abre una planta, Espacio la marca, Control y L anota, M la mueve.</translation>
    </message>
    <message>
        <source>Gone, with all of their past kept:</source>
        <translation>Ya no están, con todo su pasado guardado:</translation>
    </message>
    <message>
        <source>All %1</source>
        <translation>Todas: %1</translation>
    </message>
    <message>
        <source>Shows those that are gone, the latest first</source>
        <translation>Muestra las que ya no están, las últimas primero</translation>
    </message>
</context>
<context>
    <name>PlantComparison</name>
    <message>
        <source>%1 and %2 beside each other</source>
        <translation>%1 y %2, lado a lado</translation>
    </message>
    <message>
        <source>Newest photograph of %1</source>
        <translation>Última fotografía de %1</translation>
    </message>
    <message>
        <source>All plants</source>
        <translation>Todas las plantas</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Escape</translation>
    </message>
</context>
<context>
    <name>PlantEntry</name>
    <message>
        <source>Its name</source>
        <translation>Su nombre</translation>
    </message>
    <message>
        <source>Pot holds</source>
        <translation>La maceta contiene</translation>
    </message>
    <message>
        <source>Weight, moist</source>
        <translation>Peso, húmeda</translation>
    </message>
    <message>
        <source>The pot is</source>
        <translation>La maceta es</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>light</source>
        <translation>clara</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>oscura</translation>
    </message>
    <message>
        <source>Its own lines: night lows, and the day’s heat</source>
        <translation>Sus propios límites: mínimas nocturnas y el calor del día</translation>
    </message>
    <message>
        <source>Safe night</source>
        <translation>Noche segura</translation>
    </message>
    <message>
        <source>Harm begins</source>
        <translation>Daño desde</translation>
    </message>
    <message>
        <source>May kill</source>
        <translation>Puede morir a</translation>
    </message>
    <message>
        <source>Heat harms</source>
        <translation>El calor daña desde</translation>
    </message>
    <message>
        <source>Grown outdoors while the nights allow</source>
        <translation>Se cultiva fuera mientras lo permiten las noches</translation>
    </message>
    <message>
        <source>Poisonous or spiny: out of reach of children and animals</source>
        <translation>Venenosa o con espinas: fuera del alcance de niños y animales</translation>
    </message>
    <message>
        <source>Always kept at</source>
        <translation>Siempre fijada en</translation>
    </message>
</context>
<context>
    <name>PlantFacts</name>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>each step up the paper is the same share of growth</source>
        <translation>cada escalón hacia arriba es la misma parte de crecimiento</translation>
    </message>
    <message>
        <source>; bar: error of one reading%1</source>
        <translation>; barra: error de una medición%1</translation>
    </message>
    <message>
        <source>, by its repeats</source>
        <translation>, según sus repeticiones</translation>
    </message>
    <message>
        <source>%1 from %2 on %3 to %4 on %5, %6 readings.</source>
        <translation>%1 de %2 el %3 a %4 el %5, %6 mediciones.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>a move</source>
        <translation>un cambio de sitio</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 puntos</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>cambiada de sitio</translation>
    </message>
    <message>
        <source>went out</source>
        <translation>salió</translation>
    </message>
    <message>
        <source>came in</source>
        <translation>entró</translation>
    </message>
    <message>
        <source>mean of %1</source>
        <translation>media de %1</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1: %2, %3 since the one before.</source>
        <translation>%1: %2, %3 desde la anterior.</translation>
    </message>
    <message>
        <source>Measure again now.</source>
        <translation>Medir de nuevo ahora.</translation>
    </message>
    <message>
        <source>Measure again on %1.</source>
        <translation>Medir de nuevo el %1.</translation>
    </message>
    <message>
        <source>The last of %1 readings that are still needed, about %2, could settle it.</source>
        <translation>La última de las %1 mediciones que aún hacen falta, hacia el %2, podría decidirlo.</translation>
    </message>
    <message>
        <source>No setback</source>
        <translation>Sin retroceso</translation>
    </message>
    <message>
        <source>Recovered</source>
        <translation>Recuperada</translation>
    </message>
    <message>
        <source>Recovering</source>
        <translation>Se recupera</translation>
    </message>
    <message>
        <source>Holding</source>
        <translation>Se mantiene</translation>
    </message>
    <message>
        <source>Declining</source>
        <translation>Decae</translation>
    </message>
    <message>
        <source>Too early</source>
        <translation>Demasiado pronto</translation>
    </message>
    <message>
        <source>Cannot be judged</source>
        <translation>No se puede juzgar</translation>
    </message>
    <message>
        <source>after: %1, %2</source>
        <translation>tras: %1, %2</translation>
    </message>
    <message>
        <source>Nothing to judge.</source>
        <translation>Nada que juzgar.</translation>
    </message>
    <message>
        <source>No move, cold night, spray or other event lies between these readings.</source>
        <translation>Entre estas mediciones no hay cambio de sitio, noche fría, tratamiento ni otro suceso.</translation>
    </message>
    <message>
        <source>From %1 readings before and %2 after it.</source>
        <translation>De %1 mediciones antes y %2 después.</translation>
    </message>
    <message>
        <source>That reading could settle it, if it goes on as now.</source>
        <translation>Esa medición podría decidirlo, si sigue como ahora.</translation>
    </message>
    <message>
        <source>No date in sight settles it, if readings go on as they do.</source>
        <translation>Ninguna fecha a la vista lo decide, si se sigue midiendo así.</translation>
    </message>
    <message>
        <source> Other things happened too close to tell apart; the verdict is on the plant after all of them.</source>
        <translation> Otras cosas ocurrieron demasiado cerca para distinguirlas; el veredicto es de la planta después de todas.</translation>
    </message>
    <message>
        <source>Nights: lethal at %1, harm from %2, stress from %3 on, too hot from %4.%5</source>
        <translation>Noches: letal a %1, daño desde %2, estrés desde %3, demasiado calor desde %4.%5</translation>
    </message>
    <message>
        <source>Light: %1 mol/m² a day is good, %2 keeps it alive.</source>
        <translation>Luz: %1 mol/m² al día es bueno, %2 la mantiene viva.</translation>
    </message>
    <message>
        <source> Where it was eaten or hurts, ask a doctor or a vet.</source>
        <translation> Si se comió o duele, preguntar a un médico o a un veterinario.</translation>
    </message>
    <message>
        <source>Not known to be poisonous,</source>
        <translation>No se sabe que sea venenosa,</translation>
    </message>
    <message>
        <source>which is no proof.</source>
        <translation>lo que no es prueba.</translation>
    </message>
    <message>
        <source>Sheds leaves after any move,</source>
        <translation>Pierde hojas tras cualquier cambio de sitio,</translation>
    </message>
    <message>
        <source>whatever the temperature: move it seldom.</source>
        <translation>sea cual sea la temperatura: moverla poco.</translation>
    </message>
    <message>
        <source>Wants to dry right out</source>
        <translation>Quiere secarse del todo</translation>
    </message>
    <message>
        <source>between waterings.</source>
        <translation>entre riegos.</translation>
    </message>
    <message>
        <source>A kind of your own: its figures are those that you gave.</source>
        <translation>Una especie propia: sus cifras son las que se dieron.</translation>
    </message>
    <message>
        <source>Cold lines: %1 (%2 confidence).</source>
        <translation>Límites de frío: %1 (confianza %2).</translation>
    </message>
    <message>
        <source>Sources: %1.</source>
        <translation>Fuentes: %1.</translation>
    </message>
    <message>
        <source>Gone: %1. All that was kept of it stays; notes and photographs from before can be added.</source>
        <translation>Ya no está: %1. Todo lo guardado de ella queda; se pueden añadir notas y fotos de antes.</translation>
    </message>
    <message>
        <source>Do not eat.</source>
        <translation>No comer.</translation>
    </message>
    <message>
        <source>known since %1</source>
        <translation>conocida desde %1</translation>
    </message>
    <message>
        <source>divided from %1</source>
        <translation>dividida de %1</translation>
    </message>
    <message>
        <source>divided from a plant that is gone</source>
        <translation>dividida de una planta que ya no está</translation>
    </message>
    <message>
        <source>pot %1</source>
        <translation>maceta de %1</translation>
    </message>
    <message>
        <source>about %1 wet</source>
        <translation>unos %1 mojada</translation>
    </message>
    <message>
        <source>where it stands</source>
        <translation>dónde está</translation>
    </message>
    <message>
        <source>at no spot yet</source>
        <translation>aún sin sitio</translation>
    </message>
    <message>
        <source>M gives it one</source>
        <translation>M le da uno</translation>
    </message>
    <message>
        <source>pests found</source>
        <translation>plaga encontrada</translation>
    </message>
    <message>
        <source>suspected</source>
        <translation>sospechosa</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>desde %1</translation>
    </message>
    <message>
        <source>carry in tonight: %1 for harm</source>
        <translation>meter dentro esta noche: %1 de daño</translation>
    </message>
    <message>
        <source>tonight: %1 for harm</source>
        <translation>esta noche: %1 de daño</translation>
    </message>
    <message>
        <source>by the forecast</source>
        <translation>según el pronóstico</translation>
    </message>
    <message>
        <source>by the season alone</source>
        <translation>solo por la estación</translation>
    </message>
    <message>
        <source>stays where it is</source>
        <translation>se queda donde está</translation>
    </message>
    <message>
        <source>for the year ahead, by the plan</source>
        <translation>durante el próximo año, según el plan</translation>
    </message>
    <message>
        <source>to %1 today</source>
        <translation>hoy a %1</translation>
    </message>
    <message>
        <source>to %1 %2</source>
        <translation>a %1 %2</translation>
    </message>
    <message>
        <source>chance of a harmful night after it: %1</source>
        <translation>probabilidad de una noche dañina después: %1</translation>
    </message>
    <message>
        <source>by the plan</source>
        <translation>según el plan</translation>
    </message>
    <message>
        <source>feed today</source>
        <translation>abonar hoy</translation>
    </message>
    <message>
        <source>feed %1</source>
        <translation>abonar %1</translation>
    </message>
    <message>
        <source>%1 ppm nitrogen</source>
        <translation>%1 ppm de nitrógeno</translation>
    </message>
    <message>
        <source>Feed: %1.</source>
        <translation>Abono: %1.</translation>
    </message>
    <message>
        <source>Feed today, %1 ppm nitrogen. The label comes first.</source>
        <translation>Abonar hoy, %1 ppm de nitrógeno. La etiqueta va primero.</translation>
    </message>
    <message>
        <source>Feed on %1, %2 ppm nitrogen. The label comes first.</source>
        <translation>Abonar el %1, %2 ppm de nitrógeno. La etiqueta va primero.</translation>
    </message>
    <message>
        <source>takes no feed</source>
        <translation>no se abona</translation>
    </message>
    <message>
        <source>no feed while it has pests</source>
        <translation>sin abono mientras tenga plagas</translation>
    </message>
    <message>
        <source>no feed until %1</source>
        <translation>sin abono hasta %1</translation>
    </message>
    <message>
        <source>no feed until new growth is logged</source>
        <translation>sin abono hasta anotar un brote nuevo</translation>
    </message>
    <message>
        <source>no feed until it is released</source>
        <translation>sin abono hasta que se libere</translation>
    </message>
    <message>
        <source>no feed until released and growing</source>
        <translation>sin abono hasta que se libere y crezca</translation>
    </message>
    <message>
        <source>no feed for now</source>
        <translation>sin abono por ahora</translation>
    </message>
    <message>
        <source> Its spot has about %1 tonight.</source>
        <translation> Su sitio tiene unos %1 esta noche.</translation>
    </message>
    <message>
        <source>Chance that it is harmed tonight: %1.</source>
        <translation>Probabilidad de que sufra daño esta noche: %1.</translation>
    </message>
    <message>
        <source>Chance that it is harmed tonight, by the season alone: %1.</source>
        <translation>Probabilidad de que sufra daño esta noche, solo por la estación: %1.</translation>
    </message>
    <message>
        <source>Light: %1 mol/m² a day is good, %2 keeps it alive; its spot gives about %3 now.</source>
        <translation>Luz: %1 mol/m² al día es bueno, %2 la mantiene viva; su sitio da ahora unos %3.</translation>
    </message>
    <message>
        <source> That is %1 times as much: sun there may burn its leaves.</source>
        <translation> Eso es %1 veces esa cantidad: el sol puede quemar ahí sus hojas.</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>a las %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>por %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1: %2. %3</source>
        <translation>%1: %2. %3</translation>
    </message>
    <message>
        <source>file missing</source>
        <translation>falta el archivo</translation>
    </message>
    <message>
        <source>newest</source>
        <translation>la última</translation>
    </message>
    <message>
        <source>Photograph of %1</source>
        <translation>Fotografía del %1</translation>
    </message>
    <message>
        <source>Photograph of %1, %2</source>
        <translation>Fotografía de %1, %2</translation>
    </message>
    <message>
        <source>1 photograph</source>
        <translation>1 fotografía</translation>
    </message>
    <message>
        <source>%1 photographs</source>
        <translation>%1 fotografías</translation>
    </message>
    <message>
        <source>%1 shown, spread over %2 months</source>
        <translation>%1 mostradas, repartidas en %2 meses</translation>
    </message>
</context>
<context>
    <name>PlantFeeding</name>
    <message>
        <source>Feeding through the year</source>
        <translation>El abono durante el año</translation>
    </message>
    <message>
        <source>When, how strong, and why not; under lamps too</source>
        <translation>Cuándo, cuánto y por qué no; también bajo lámparas</translation>
    </message>
    <message>
        <source>Hours a day that lamps burn over the plants indoors, may be left blank</source>
        <translation>Horas al día que lucen lámparas sobre las plantas de dentro, puede quedar en blanco</translation>
    </message>
    <message>
        <source>lamps: none</source>
        <translation>lámparas: ninguna</translation>
    </message>
    <message>
        <source>hours of lamps</source>
        <translation>horas de lámparas</translation>
    </message>
    <message>
        <source>The lamps’ light at the leaves, may be left blank: a weak lamp</source>
        <translation>La luz de las lámparas en las hojas, puede quedar en blanco: una lámpara débil</translation>
    </message>
    <message>
        <source>light at the leaves: a weak lamp</source>
        <translation>luz en las hojas: débil</translation>
    </message>
    <message>
        <source>µmol/m² s</source>
        <translation>µmol/m² s</translation>
    </message>
    <message>
        <source>Work it out</source>
        <translation>Calcularlo</translation>
    </message>
    <message>
        <source>The water is</source>
        <translation>El agua es</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>soft</source>
        <translation>blanda</translation>
    </message>
    <message>
        <source>hard</source>
        <translation>dura</translation>
    </message>
</context>
<context>
    <name>PlantList</name>
    <message>
        <source>Plants</source>
        <translation>Plantas</translation>
    </message>
    <message>
        <source>No plant stands here yet. Each will have its year as a bar: where it stands, when it may go out, when it must come in. Add the first under Plants.</source>
        <translation>Aún no hay plantas aquí. Cada una tendrá su año como una barra: dónde está, cuándo puede salir, cuándo debe entrar. Añadir la primera en Plantas.</translation>
    </message>
    <message>
        <source>Add plants</source>
        <translation>Añadir plantas</translation>
    </message>
    <message>
        <source>Goes to Plants, with the form for new ones.</source>
        <translation>Va a Plantas, con el formulario para las nuevas.</translation>
    </message>
</context>
<context>
    <name>PlantPage</name>
    <message>
        <source>All plants</source>
        <translation>Todas las plantas</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Escape</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Mover</translation>
    </message>
    <message>
        <source>Key M, then the number of the spot</source>
        <translation>Tecla M, luego el número del sitio</translation>
    </message>
    <message>
        <source>Print sheet</source>
        <translation>Imprimir hoja</translation>
    </message>
    <message>
        <source>Control and P. Its history, photographs and growth as a PDF.</source>
        <translation>Control y P. Su historia, fotografías y crecimiento en PDF.</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambiar</translation>
    </message>
    <message>
        <source>Name, pot, its own lines, where it is kept</source>
        <translation>Nombre, maceta, límites propios, dónde se mantiene</translation>
    </message>
    <message>
        <source>Add a note</source>
        <translation>Añadir una nota</translation>
    </message>
    <message>
        <source>Log something</source>
        <translation>Anotar algo</translation>
    </message>
    <message>
        <source>Control and L</source>
        <translation>Control y L</translation>
    </message>
    <message>
        <source>The chooser of files is not installed (qml6-module-qtquick-dialogs). Drag the files onto this page instead.</source>
        <translation>El selector de archivos no está instalado (qml6-module-qtquick-dialogs). Arrastrar los archivos a esta página.</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Qué pasó</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Show more of %1 lines</source>
        <translation>Mostrar más de %1 líneas</translation>
    </message>
</context>
<context>
    <name>PlantRow</name>
    <message>
        <source>%1 Due: %2.</source>
        <translation>%1 Toca: %2.</translation>
    </message>
    <message>
        <source>Its page: Enter, or press twice</source>
        <translation>Su página: Intro, o pulsar dos veces</translation>
    </message>
    <message>
        <source>: %1</source>
        <translation>: %1</translation>
    </message>
    <message>
        <source>, %1</source>
        <translation>, %1</translation>
    </message>
</context>
<context>
    <name>PlantSheet</name>
    <message>
        <source>Over time</source>
        <translation>A lo largo del tiempo</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>What it needs</source>
        <translation>Lo que necesita</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>What was written down</source>
        <translation>Lo que se anotó</translation>
    </message>
    <message>
        <source>%1 entries, newest first</source>
        <translation>%1 anotaciones, la última primero</translation>
    </message>
    <message>
        <source>Where the numbers come from</source>
        <translation>De dónde vienen los números</translation>
    </message>
</context>
<context>
    <name>PlantsEntry</name>
    <message>
        <source>Which plants?</source>
        <translation>¿Qué plantas?</translation>
    </message>
    <message>
        <source>Common or botanical name</source>
        <translation>Nombre común o botánico</translation>
    </message>
    <message>
        <source>lemon, Ficus, basil</source>
        <translation>limonero, Ficus, albahaca</translation>
    </message>
    <message>
        <source>Kinds that answer to it</source>
        <translation>Especies que coinciden</translation>
    </message>
    <message>
        <source>Enter picks one; L looks at what is known of it</source>
        <translation>Intro elige una; L muestra qué se sabe de ella</translation>
    </message>
    <message>
        <source>No kind of your own</source>
        <translation>Ninguna especie propia</translation>
    </message>
    <message>
        <source>A kind of your own</source>
        <translation>Una especie propia</translation>
    </message>
    <message>
        <source>For a plant that is not in the list: you say its lines</source>
        <translation>Para una planta que no está en la lista: sus límites se indican aquí</translation>
    </message>
    <message>
        <source>Its name</source>
        <translation>Su nombre</translation>
    </message>
    <message>
        <source>Safe night</source>
        <translation>Noche segura</translation>
    </message>
    <message>
        <source>Harm begins</source>
        <translation>Daño desde</translation>
    </message>
    <message>
        <source>Kills</source>
        <translation>Letal a</translation>
    </message>
    <message>
        <source>Little light</source>
        <translation>Poca luz</translation>
    </message>
    <message>
        <source>Some light</source>
        <translation>Algo de luz</translation>
    </message>
    <message>
        <source>Bright</source>
        <translation>Mucha luz</translation>
    </message>
    <message>
        <source>Full sun</source>
        <translation>Pleno sol</translation>
    </message>
    <message>
        <source>Poisonous or spiny: out of reach of children and animals</source>
        <translation>Venenosa o con espinas: fuera del alcance de niños y animales</translation>
    </message>
    <message>
        <source>Must dry out between waterings; rain on it is stress</source>
        <translation>Debe secarse entre riegos; la lluvia la estresa</translation>
    </message>
    <message>
        <source>Grown outdoors while the nights allow</source>
        <translation>Se cultiva fuera mientras lo permiten las noches</translation>
    </message>
    <message>
        <source>Add this kind</source>
        <translation>Añadir esta especie</translation>
    </message>
    <message>
        <source>Picked</source>
        <translation>Elegidas</translation>
    </message>
    <message>
        <source>Picked: 1 plant</source>
        <translation>Elegida: 1 planta</translation>
    </message>
    <message>
        <source>Picked: %1 plants</source>
        <translation>Elegidas: %1 plantas</translation>
    </message>
    <message>
        <source>Press a kind to pick it, and again for one more. A few are enough for a year.</source>
        <translation>Pulsar una especie la elige, y otra vez para una más. Unas pocas bastan para un año.</translation>
    </message>
    <message>
        <source>Plants that were picked</source>
        <translation>Plantas elegidas</translation>
    </message>
    <message>
        <source>%1 stands today at</source>
        <translation>%1 está hoy en</translation>
    </message>
</context>
<context>
    <name>PlantsFacts</name>
    <message>
        <source>gone</source>
        <translation>ya no está</translation>
    </message>
    <message>
        <source>another spot</source>
        <translation>otro sitio</translation>
    </message>
    <message>
        <source>to %1 today</source>
        <translation>a %1 hoy</translation>
    </message>
    <message>
        <source>to %1 %2</source>
        <translation>a %1 %2</translation>
    </message>
    <message>
        <source>pests found</source>
        <translation>plaga encontrada</translation>
    </message>
    <message>
        <source>suspected: look</source>
        <translation>sospechosa: mirar</translation>
    </message>
    <message>
        <source>set apart</source>
        <translation>apartada</translation>
    </message>
    <message>
        <source>carry in tonight</source>
        <translation>entrar esta noche</translation>
    </message>
    <message>
        <source>look today</source>
        <translation>mirar hoy</translation>
    </message>
    <message>
        <source>declining</source>
        <translation>decae</translation>
    </message>
    <message>
        <source>recovering</source>
        <translation>se recupera</translation>
    </message>
    <message>
        <source>feed today</source>
        <translation>abonar hoy</translation>
    </message>
    <message>
        <source>in flower</source>
        <translation>en flor</translation>
    </message>
    <message>
        <source>new shoots</source>
        <translation>brotes nuevos</translation>
    </message>
    <message>
        <source>watered</source>
        <translation>regada</translation>
    </message>
    <message>
        <source>feel the mix</source>
        <translation>tocar el sustrato</translation>
    </message>
    <message>
        <source>rests</source>
        <translation>en reposo</translation>
    </message>
</context>
<context>
    <name>PlantsPage</name>
    <message>
        <source>Plants</source>
        <translation>Plantas</translation>
    </message>
    <message>
        <source>It is planned</source>
        <translation>Está planeado</translation>
    </message>
    <message>
        <source>Takes the move of today back and asks from which evening to which it stands there; the plan keeps to it.</source>
        <translation>Deshace el traslado de hoy y pregunta de qué noche a qué noche está allí; el plan lo respeta.</translation>
    </message>
</context>
<context>
    <name>PotUp</name>
    <message>
        <source>How many seedlings were potted, each in a pot of its own</source>
        <translation>Cuántas plántulas se pasaron a maceta, cada una en la suya</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántas</translation>
    </message>
    <message>
        <source>What they are called; several are numbered; blank for crop and tray</source>
        <translation>Cómo se llaman; varias se numeran; en blanco, cultivo y bandeja</translation>
    </message>
    <message>
        <source>Name, or blank for crop and tray</source>
        <translation>Nombre, o en blanco: cultivo y bandeja</translation>
    </message>
    <message>
        <source>Potted: today.</source>
        <translation>Pasadas a maceta: hoy.</translation>
    </message>
    <message>
        <source>Potted: %1 days ago, %2.</source>
        <translation>Pasadas a maceta: hace %1 días, %2.</translation>
    </message>
    <message>
        <source>Where they stand, if not where the tray does:</source>
        <translation>Dónde están, si no es donde la bandeja:</translation>
    </message>
    <message>
        <source>Pot them up</source>
        <translation>Pasar a maceta</translation>
    </message>
    <message>
        <source>They stand under Plants then</source>
        <translation>Después están en Plantas</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation>No hecho</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Escape</translation>
    </message>
</context>
<context>
    <name>PrintPane</name>
    <message>
        <source>The sheet is being drawn.</source>
        <translation>Se está dibujando la hoja.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Takes this word away.</source>
        <translation>Quita este mensaje.</translation>
    </message>
</context>
<context>
    <name>ReadAgain</name>
    <message>
        <source>Read again</source>
        <translation>Leer de nuevo</translation>
    </message>
    <message>
        <source>Key F5. Reads the household anew.</source>
        <translation>Tecla F5. Lee el hogar de nuevo.</translation>
    </message>
</context>
<context>
    <name>ReadoutRow</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>RecordFacts</name>
    <message>
        <source>%1, %2 to %3</source>
        <translation>%1, %2 a %3</translation>
    </message>
    <message>
        <source>From %1, taken in on %2. Kept %3 from the household’s place, at %4.</source>
        <translation>De %1, incorporado el %2. Llevado a %3 del lugar del hogar, a %4 de altura.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>First and last night</source>
        <translation>Primera y última noche</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Nights with a low</source>
        <translation>Noches con mínima</translation>
    </message>
    <message>
        <source>%1 of %2, %3 %</source>
        <translation>%1 de %2, %3 %</translation>
    </message>
    <message>
        <source>Cold seasons complete enough</source>
        <translation>Estaciones frías lo bastante completas</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Gaps of five days and more</source>
        <translation>Huecos de cinco días o más</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>%1; the longest %2 days from %3</source>
        <translation>%1; el más largo de %2 días desde el %3</translation>
    </message>
    <message>
        <source>Years without any low</source>
        <translation>Años sin ninguna mínima</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Doubtful days</source>
        <translation>Días dudosos</translation>
    </message>
    <message>
        <source>one %1: %2</source>
        <translation>uno %1: %2</translation>
    </message>
    <message>
        <source>%1 %2, the first %3</source>
        <translation>%1 %2, el primero %3</translation>
    </message>
    <message>
        <source>No shipped station is near enough to compare it with.</source>
        <translation>Ninguna estación incluida está lo bastante cerca para comparar.</translation>
    </message>
    <message>
        <source>%1: mean low %2 here, %3 by the table, apart %4; mean high %5 here, %6 by the table, apart %7</source>
        <translation>%1: mínima media %2 aquí, %3 según la tabla, diferencia %4; máxima media %5 aquí, %6 según la tabla, diferencia %7</translation>
    </message>
    <message>
        <source>Plausible: every month lies as near to the shipped table as one may expect.</source>
        <translation>Plausible: cada mes está tan cerca de la tabla incluida como cabe esperar.</translation>
    </message>
    <message>
        <source>Doubtful.</source>
        <translation>Dudoso.</translation>
    </message>
    <message>
        <source>Implausible.</source>
        <translation>Inverosímil.</translation>
    </message>
    <message>
        <source>It answers here before the shipped table, with its years %1 to %2.</source>
        <translation>Aquí responde antes que la tabla incluida, con sus años %1 a %2.</translation>
    </message>
    <message>
        <source>It is not used: %1. The shipped table answers.</source>
        <translation>No se usa: %1. Responde la tabla incluida.</translation>
    </message>
</context>
<context>
    <name>RiskSlider</name>
    <message>
        <source>For each plant, each way. Left and right choose the stop.</source>
        <translation>Por planta y por trayecto. Izquierda y Derecha eligen el grado.</translation>
    </message>
</context>
<context>
    <name>RoundActs</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Done today</source>
        <translation>Hecho hoy</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>Open the plant’s page</source>
        <translation>Abrir la página de la planta</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>Log something</source>
        <translation>Anotar algo</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Ctrl+L</translation>
    </message>
    <message>
        <source>How much goes into the water</source>
        <translation>Cuánto va en el agua</translation>
    </message>
    <message>
        <source>Before a spray</source>
        <translation>Antes de pulverizar</translation>
    </message>
    <message>
        <source>Put off a day</source>
        <translation>Aplazar un día</translation>
    </message>
    <message>
        <source>Put off longer</source>
        <translation>Aplazar más</translation>
    </message>
    <message>
        <source>Shift+P</source>
        <translation>Mayús+P</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Omitir</translation>
    </message>
</context>
<context>
    <name>RoundAsk</name>
    <message>
        <source>Escape</source>
        <translation>Escape</translation>
    </message>
</context>
<context>
    <name>RoundFold</name>
    <message>
        <source>%1 more</source>
        <translation>%1 más</translation>
    </message>
    <message>
        <source>%1 more: %2</source>
        <translation>%1 más: %2</translation>
    </message>
</context>
<context>
    <name>RoundPage</name>
    <message>
        <source>Today&apos;s round</source>
        <translation>La ronda de hoy</translation>
    </message>
    <message>
        <source>Why is this task left out</source>
        <translation>Por qué se omite esta tarea</translation>
    </message>
    <message>
        <source>Why, for the journal</source>
        <translation>Por qué, para el diario</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Omitirla</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Mantenerla</translation>
    </message>
    <message>
        <source>For how many days is this task put off, up to 60, or until which date</source>
        <translation>Cuántos días, hasta 60, o hasta qué fecha se aplaza esta tarea</translation>
    </message>
    <message>
        <source>days, or a date</source>
        <translation>días o una fecha</translation>
    </message>
    <message>
        <source>Put it off</source>
        <translation>Aplazarla</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántas</translation>
    </message>
    <message>
        <source>Done today</source>
        <translation>Hecho hoy</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation>No hecho</translation>
    </message>
    <message>
        <source>Show the year</source>
        <translation>Mostrar el año</translation>
    </message>
    <message>
        <source>Add plants</source>
        <translation>Añadir plantas</translation>
    </message>
    <message>
        <source>Key 2. What comes next for each plant.</source>
        <translation>Tecla 2. Lo que viene después para cada planta.</translation>
    </message>
    <message>
        <source>Goes to Plants, with the form for new ones.</source>
        <translation>Va a Plantas, con el formulario para las nuevas.</translation>
    </message>
    <message>
        <source>The round is being worked out.</source>
        <translation>Se está calculando la ronda.</translation>
    </message>
    <message>
        <source>Tasks</source>
        <translation>Tareas</translation>
    </message>
    <message>
        <source>Type tonight’s low</source>
        <translation>Escribir la mínima de esta noche</translation>
    </message>
    <message>
        <source>Goes to the field for it; then tonight is in the round.</source>
        <translation>Va al campo para ella; entonces esta noche está en la ronda.</translation>
    </message>
    <message>
        <source>Put off a day</source>
        <translation>Aplazar un día</translation>
    </message>
    <message>
        <source>Key P. The chosen task is due again tomorrow.</source>
        <translation>Tecla P. La tarea elegida vuelve a tocar mañana.</translation>
    </message>
    <message>
        <source>Put off longer</source>
        <translation>Aplazar más</translation>
    </message>
    <message>
        <source>Key Shift and P. Asks for how many days.</source>
        <translation>Mayús y P. Pregunta por cuántos días.</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Omitir</translation>
    </message>
    <message>
        <source>Key S. The chosen task is not done this time; the journal is told why.</source>
        <translation>Tecla S. La tarea elegida no se hace esta vez; al diario se le dice por qué.</translation>
    </message>
    <message>
        <source>Print the list</source>
        <translation>Imprimir la lista</translation>
    </message>
    <message>
        <source>Control and P. The week&apos;s tasks as a PDF with boxes to tick.</source>
        <translation>Control y P. Las tareas de la semana en PDF con casillas para marcar.</translation>
    </message>
    <message>
        <source>Control and Z, or U. Takes back what was done last in this window.</source>
        <translation>Control y Z, o U. Deshace lo último que se hizo en esta ventana.</translation>
    </message>
</context>
<context>
    <name>RoundProgress</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>RoundRow</name>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>pinned</source>
        <translation>fijada</translation>
    </message>
    <message>
        <source>They can wait. Shows them; the arrows do so too.</source>
        <translation>Pueden esperar. Las muestra; las flechas también.</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Seeds</source>
        <translation>Semillas</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>%1; pinned</source>
        <translation>%1; fijada</translation>
    </message>
</context>
<context>
    <name>RoundSheet</name>
    <message>
        <source>nothing is due</source>
        <translation>nada que hacer</translation>
    </message>
    <message>
        <source>1 task, about %1 min</source>
        <translation>1 tarea, unos %1 min</translation>
    </message>
    <message>
        <source>%1 tasks, about %2 min</source>
        <translation>%1 tareas, unos %2 min</translation>
    </message>
    <message>
        <source>: %1</source>
        <translation>: %1</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>%1: as said above</source>
        <translation>%1: como se dijo arriba</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
</context>
<context>
    <name>RoundTreats</name>
    <message>
        <source>Before a spray</source>
        <translation>Antes de pulverizar</translation>
    </message>
    <message>
        <source>Key B. Whether to spray now, to wait, or not at all.</source>
        <translation>Tecla B. Si tratar ahora, esperar o no hacerlo.</translation>
    </message>
</context>
<context>
    <name>RoundWaits</name>
    <message>
        <source>What waits, and why</source>
        <translation>Lo que espera, y por qué</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>RowOrderLine</name>
    <message>
        <source>Key O. Rows by the date out, by spot, or by name.</source>
        <translation>Tecla O. Filas por salida, por sitio o por nombre.</translation>
    </message>
</context>
<context>
    <name>SeedFacts</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2; %3</source>
        <translation>%1: %2; %3</translation>
    </message>
    <message>
        <source>1 plant</source>
        <translation>1 planta</translation>
    </message>
    <message>
        <source>%1 plants</source>
        <translation>%1 plantas</translation>
    </message>
    <message>
        <source>Sow %1 for %2</source>
        <translation>Sembrar %1 para %2</translation>
    </message>
    <message>
        <source>1 seed</source>
        <translation>1 semilla</translation>
    </message>
    <message>
        <source>%1 seeds</source>
        <translation>%1 semillas</translation>
    </message>
    <message>
        <source>Over 100,000 seeds would be needed for %1</source>
        <translation>Harían falta más de 100 000 semillas para %1</translation>
    </message>
    <message>
        <source>enough 19 times in 20, at %1</source>
        <translation>basta 19 veces de cada 20, con %1</translation>
    </message>
    <message>
        <source>first flower</source>
        <translation>primera flor</translation>
    </message>
    <message>
        <source>full leaf</source>
        <translation>hoja completa</translation>
    </message>
    <message>
        <source>first ripe</source>
        <translation>primera madurez</translation>
    </message>
    <message>
        <source>What would help: %1</source>
        <translation>Qué ayudaría: %1</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>hasta el %1</translation>
    </message>
    <message>
        <source>in a mix at %1</source>
        <translation>en sustrato a %1</translation>
    </message>
    <message>
        <source>, warmed</source>
        <translation>, calentado</translation>
    </message>
    <message>
        <source>; best at %1 to %2</source>
        <translation>; lo mejor es de %1 a %2</translation>
    </message>
    <message>
        <source>Sow indoors</source>
        <translation>Sembrar dentro</translation>
    </message>
    <message>
        <source>Comes up</source>
        <translation>Nace</translation>
    </message>
    <message>
        <source>Harden off from</source>
        <translation>Endurecer desde</translation>
    </message>
    <message>
        <source>two weeks, a little longer each day</source>
        <translation>dos semanas, cada día un poco más</translation>
    </message>
    <message>
        <source>Plant out</source>
        <translation>Trasplantar fuera</translation>
    </message>
    <message>
        <source>%1 for a night at %2 still to come; soil %3</source>
        <translation>%1 de que aún venga una noche de %2; suelo %3</translation>
    </message>
    <message>
        <source>Sow outdoors</source>
        <translation>Sembrar fuera</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>soil %1</source>
        <translation>suelo %1</translation>
    </message>
    <message>
        <source>sown on the first day</source>
        <translation>sembrada el primer día</translation>
    </message>
    <message>
        <source>quick to slow sorts</source>
        <translation>variedades rápidas a lentas</translation>
    </message>
    <message>
        <source>Last useful sowing</source>
        <translation>Última siembra útil</translation>
    </message>
    <message>
        <source>all year</source>
        <translation>todo el año</translation>
    </message>
    <message>
        <source>nothing ends the season here</source>
        <translation>aquí nada termina la temporada</translation>
    </message>
    <message>
        <source>The lot is past use: even the best it can be lies below the %1. Sow the rest thickly for what it gives, or buy new.</source>
        <translation>El lote está pasado: incluso lo mejor que puede dar queda por debajo de %1. Sembrar el resto espeso por lo que dé, o comprar nuevo.</translation>
    </message>
    <message>
        <source>The lot is %1 years old; such seed usually keeps %2 (common practice, no source). Count ten in a damp cloth first.</source>
        <translation>El lote tiene %1 años; esa semilla suele durar %2 (práctica común, sin fuente). Probar antes diez en un paño húmedo.</translation>
    </message>
    <message>
        <source>Nothing is left of the lot.</source>
        <translation>No queda nada del lote.</translation>
    </message>
    <message>
        <source>The lot has %1 seeds left, fewer than the %2 that are needed.</source>
        <translation>Al lote le quedan %1 semillas, menos que las %2 necesarias.</translation>
    </message>
    <message>
        <source>Depth, spacing and days to readiness are common practice without a source. How sure the figures of this crop are: %1. </source>
        <translation>La profundidad, la distancia y los días hasta estar lista son práctica común, sin fuente. Qué seguros son los datos de este cultivo: %1. </translation>
    </message>
    <message>
        <source>Nothing comes up at %1; it wants %2 to %3.</source>
        <translation>A %1 no nace nada; necesita de %2 a %3.</translation>
    </message>
    <message>
        <source>The counting is over.</source>
        <translation>El recuento ha terminado.</translation>
    </message>
    <message>
        <source>Comes up %1 at %2; about %3 to be expected by today.</source>
        <translation>Nace %1 a %2; hoy cabe esperar unas %3.</translation>
    </message>
    <message>
        <source> That is fewer than 19 of 20 such trays would show.</source>
        <translation> Es menos de lo que mostrarían 19 de cada 20 bandejas así.</translation>
    </message>
    <message>
        <source>Tray %1, sown %2</source>
        <translation>Bandeja %1, sembrada el %2</translation>
    </message>
    <message>
        <source>%1: %2 of %3 up. %4</source>
        <translation>%1: %2 de %3 nacidas. %4</translation>
    </message>
</context>
<context>
    <name>SeedSheet</name>
    <message>
        <source>No lot of seed is kept yet. A packet is entered on the page Seeds, or with: lathhouse add lot.</source>
        <translation>Aún no hay lotes de semillas. Un sobre se anota en la página Semillas, o con: lathhouse add lot.</translation>
    </message>
    <message>
        <source>packed %1</source>
        <translation>envasado en %1</translation>
    </message>
    <message>
        <source>%1 seeds left</source>
        <translation>quedan %1 semillas</translation>
    </message>
    <message>
        <source>%1 come up, 9 in 10: %2 to %3 %, %4</source>
        <translation>%1 nacen, 9 de cada 10: %2 a %3 %, %4</translation>
    </message>
    <message>
        <source> · </source>
        <translation> · </translation>
    </message>
    <message>
        <source>The tables have no such crop, so nothing is known of its sowing.</source>
        <translation>Las tablas no tienen ese cultivo, así que no se sabe nada de su siembra.</translation>
    </message>
    <message>
        <source>%1; %2.</source>
        <translation>%1; %2.</translation>
    </message>
    <message>
        <source>%1 of %2 up</source>
        <translation>%1 de %2 nacidas</translation>
    </message>
    <message>
        <source>date, up</source>
        <translation>fecha, nacidas</translation>
    </message>
    <message>
        <source>Where the numbers come from</source>
        <translation>De dónde vienen los números</translation>
    </message>
    <message>
        <source>Dates are chances from the nights and soil of the place, not promises.</source>
        <translation>Las fechas son probabilidades según las noches y el suelo del lugar, no promesas.</translation>
    </message>
</context>
<context>
    <name>SeedsPage</name>
    <message>
        <source>Seeds</source>
        <translation>Semillas</translation>
    </message>
    <message>
        <source>By sowing date</source>
        <translation>Por fecha de siembra</translation>
    </message>
    <message>
        <source>Key N changes the order</source>
        <translation>La tecla N cambia el orden</translation>
    </message>
    <message>
        <source>By name</source>
        <translation>Por nombre</translation>
    </message>
    <message>
        <source>Any crop, for its sowing sheet</source>
        <translation>Cualquier cultivo, para su hoja de siembra</translation>
    </message>
    <message>
        <source>Any crop</source>
        <translation>Cualquier cultivo</translation>
    </message>
    <message>
        <source>What can be sown now</source>
        <translation>Qué se puede sembrar ahora</translation>
    </message>
    <message>
        <source>Every crop of the tables, for this place</source>
        <translation>Todos los cultivos de las tablas, para este lugar</translation>
    </message>
    <message>
        <source>Print sheet</source>
        <translation>Imprimir hoja</translation>
    </message>
    <message>
        <source>Control and P. All lots and trays as a PDF.</source>
        <translation>Control y P. Todos los lotes y bandejas en PDF.</translation>
    </message>
    <message>
        <source>Add a lot</source>
        <translation>Añadir un lote</translation>
    </message>
    <message>
        <source>Back to the lots</source>
        <translation>Volver a los lotes</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Escape</translation>
    </message>
    <message>
        <source>Read again</source>
        <translation>Leer de nuevo</translation>
    </message>
    <message>
        <source>Key F5. Reads the household anew.</source>
        <translation>Tecla F5. Lee el hogar de nuevo.</translation>
    </message>
    <message>
        <source>The lots are being worked out.</source>
        <translation>Se están calculando los lotes.</translation>
    </message>
    <message>
        <source>No lot of seed is known yet. With a packet here its germination is followed by your own counts, and its sowing comes into the round. Add one with the button above.</source>
        <translation>Aún no se conoce ningún lote. Con un sobre aquí, su germinación se sigue con recuentos propios y su siembra entra en la ronda. Añadir uno con el botón de arriba.</translation>
    </message>
    <message>
        <source>Until then write a crop above for its sowing sheet.</source>
        <translation>Hasta entonces, escribir arriba un cultivo para ver su hoja de siembra.</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Año</translation>
    </message>
    <message>
        <source>Of 100, how many come up</source>
        <translation>De 100, cuántas nacen</translation>
    </message>
    <message>
        <source>Come up</source>
        <translation>Nacen</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Lots of seed</source>
        <translation>Lotes de semillas</translation>
    </message>
    <message>
        <source>Filled dot: your own counts. Open dot: packet or kind only. Line: 9 in 10.</source>
        <translation>Punto lleno: recuentos propios. Punto vacío: solo el sobre o la especie. Línea: 9 de cada 10.</translation>
    </message>
    <message>
        <source>Control and Z, or U. Takes back what was counted last in this window.</source>
        <translation>Control y Z, o U. Deshace lo último que se contó en esta ventana.</translation>
    </message>
</context>
<context>
    <name>SheetField</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>SheetKeeper</name>
    <message>
        <source>Keep the card as</source>
        <translation>Guardar la tarjeta como</translation>
    </message>
    <message>
        <source>Keep the sheet as</source>
        <translation>Guardar la hoja como</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Drawings (*.svg)</source>
        <translation>Dibujos (*.svg)</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
</context>
<context>
    <name>ShelfPlant</name>
    <message>
        <source>free place</source>
        <translation>lugar libre</translation>
    </message>
    <message>
        <source>free</source>
        <translation>libre</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>SortHead</name>
    <message>
        <source>sorted, from the last</source>
        <translation>ordenado, desde el último</translation>
    </message>
    <message>
        <source>sorted, from the first</source>
        <translation>ordenado, desde el primero</translation>
    </message>
    <message>
        <source>sorts the table by this</source>
        <translation>ordena la tabla por esto</translation>
    </message>
</context>
<context>
    <name>SowingActs</name>
    <message>
        <source>Open the lot in Seeds</source>
        <translation>Abrir el lote en Semillas</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>Write down a sowing</source>
        <translation>Anotar una siembra</translation>
    </message>
    <message>
        <source>What can be sown now</source>
        <translation>Qué se puede sembrar ahora</translation>
    </message>
</context>
<context>
    <name>SowingBarPainter</name>
    <message>
        <source>indoors</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation>fuera</translation>
    </message>
    <message>
        <source>sow</source>
        <translation>sembrar</translation>
    </message>
    <message>
        <source>plant out</source>
        <translation>plantar fuera</translation>
    </message>
    <message>
        <source>up</source>
        <translation>nace</translation>
    </message>
    <message>
        <source>last useful sowing</source>
        <translation>última siembra útil</translation>
    </message>
</context>
<context>
    <name>SowingCalendar</name>
    <message>
        <source>What can be sown here in the next</source>
        <translation>Qué se puede sembrar aquí en los próximos</translation>
    </message>
    <message>
        <source>7 days</source>
        <translation>7 días</translation>
    </message>
    <message>
        <source>30 days</source>
        <translation>30 días</translation>
    </message>
    <message>
        <source>90 days</source>
        <translation>90 días</translation>
    </message>
    <message>
        <source>Press a crop for its sowing sheet.</source>
        <translation>Pulsar un cultivo para su hoja de siembra.</translation>
    </message>
    <message>
        <source>Nothing in these days; look farther ahead.</source>
        <translation>Nada en estos días; mirar más adelante.</translation>
    </message>
    <message>
        <source>What can be sown</source>
        <translation>Qué se puede sembrar</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2; ready from %3</source>
        <translation>%1, %2; lista desde el %3</translation>
    </message>
</context>
<context>
    <name>SowingPane</name>
    <message>
        <source>One plant fewer</source>
        <translation>Una planta menos</translation>
    </message>
    <message>
        <source>One plant more</source>
        <translation>Una planta más</translation>
    </message>
    <message>
        <source>Trays stand at</source>
        <translation>Las bandejas están a</translation>
    </message>
    <message>
        <source>How warm it is where trays stand, blank for the usual</source>
        <translation>Qué temperatura hay donde están las bandejas, en blanco para lo usual</translation>
    </message>
    <message>
        <source>68, as usual</source>
        <translation>68, lo usual</translation>
    </message>
    <message>
        <source>20, as usual</source>
        <translation>20, lo usual</translation>
    </message>
    <message>
        <source>Risk you accept of a night that damages them outdoors</source>
        <translation>Riesgo que se acepta de una noche que las dañe fuera</translation>
    </message>
    <message>
        <source>The year of this sowing</source>
        <translation>El año de esta siembra</translation>
    </message>
    <message>
        <source>Dates of the sowing</source>
        <translation>Fechas de la siembra</translation>
    </message>
</context>
<context>
    <name>SowingRows</name>
    <message>
        <source>Sowings</source>
        <translation>Siembras</translation>
    </message>
    <message>
        <source>ring: sow · bracket: comes up · steps: hardening · slash: first ripe or in flower</source>
        <translation>anillo: sembrar · corchete: nace · escalones: endurecer · barra oblicua: primera madurez o flor</translation>
    </message>
    <message>
        <source>Its lot: Enter, or press twice</source>
        <translation>Su lote: Intro, o pulsar dos veces</translation>
    </message>
</context>
<context>
    <name>SpotChips</name>
    <message>
        <source>Up and Down go through the spots</source>
        <translation>Arriba y Abajo recorren los sitios</translation>
    </message>
</context>
<context>
    <name>SpotMeasures</name>
    <message>
        <source>Glass, width</source>
        <translation>Cristal, ancho</translation>
    </message>
    <message>
        <source>Opening, width</source>
        <translation>Abertura, ancho</translation>
    </message>
    <message>
        <source>Glass, height</source>
        <translation>Cristal, alto</translation>
    </message>
    <message>
        <source>Opening, height</source>
        <translation>Abertura, alto</translation>
    </message>
    <message>
        <source>Pot behind it</source>
        <translation>Maceta detrás</translation>
    </message>
    <message>
        <source>Its lower edge above the leaves</source>
        <translation>Su borde inferior sobre las hojas</translation>
    </message>
    <message>
        <source>Its middle right of the pot</source>
        <translation>Su centro a la derecha de la maceta</translation>
    </message>
    <message>
        <source>Roof or slab above it, depth</source>
        <translation>Techo o losa encima, fondo</translation>
    </message>
    <message>
        <source>House opposite</source>
        <translation>Casa enfrente</translation>
    </message>
    <message>
        <source>Wall behind</source>
        <translation>Pared detrás</translation>
    </message>
    <message>
        <source>Panes, one behind the other</source>
        <translation>Cristales, uno tras otro</translation>
    </message>
    <message>
        <source>Light that gets through</source>
        <translation>Luz que pasa</translation>
    </message>
    <message>
        <source>In high summer</source>
        <translation>En pleno verano</translation>
    </message>
    <message>
        <source>In midwinter</source>
        <translation>En pleno invierno</translation>
    </message>
    <message>
        <source>Nights milder by</source>
        <translation>Noches más suaves en</translation>
    </message>
    <message>
        <source>Right to about</source>
        <translation>Exacto en unos</translation>
    </message>
    <message>
        <source>With a minus where it lies below them</source>
        <translation>Con un menos si queda por debajo</translation>
    </message>
    <message>
        <source>Looking out; with a minus to the left</source>
        <translation>Mirando hacia fuera; a la izquierda, con un menos</translation>
    </message>
    <message>
        <source>How high it stands above the horizon</source>
        <translation>Cuánto se alza sobre el horizonte</translation>
    </message>
    <message>
        <source>Past frame, dirt, mesh, slats or curtain</source>
        <translation>A través de marco, suciedad, malla, listones o cortina</translation>
    </message>
    <message>
        <source>Than the open air; with a minus where they are colder</source>
        <translation>Que al aire libre; con un menos si son más frías</translation>
    </message>
    <message>
        <source>Two chances in three that it lies that near</source>
        <translation>Dos veces de cada tres queda así de cerca</translation>
    </message>
    <message>
        <source>mol</source>
        <translation>mol</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>Write both figures of light, or none.</source>
        <translation>Escribir las dos cifras de luz o ninguna.</translation>
    </message>
    <message>
        <source>“%1” is not a number; leave both fields blank for the light of the window.</source>
        <translation>«%1» no es un número; dejar los dos campos en blanco para la luz de la ventana.</translation>
    </message>
    <message>
        <source>“%1” is not a number; leave the field blank for the usual figure.</source>
        <translation>«%1» no es un número; dejar el campo en blanco para la cifra usual.</translation>
    </message>
    <message>
        <source>Panes are counted in whole numbers.</source>
        <translation>Los cristales se cuentan en números enteros.</translation>
    </message>
    <message>
        <source>This lies from %1 to %2.</source>
        <translation>Esto va de %1 a %2.</translation>
    </message>
    <message>
        <source>This lies from %1 to %2 %3.</source>
        <translation>Esto va de %1 a %2 %3.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>SpotsEntry</name>
    <message>
        <source>Where can pots stand?</source>
        <translation>¿Dónde pueden estar las macetas?</translation>
    </message>
    <message>
        <source>One press adds a spot; change what is different at your home.</source>
        <translation>Una pulsación añade un sitio; cambiar lo que en casa es distinto.</translation>
    </message>
    <message>
        <source>The spots will stand here. The year carries each plant between them.</source>
        <translation>Aquí estarán los sitios. El año lleva cada planta de uno a otro.</translation>
    </message>
    <message>
        <source>Spots</source>
        <translation>Sitios</translation>
    </message>
    <message>
        <source>The spot %1</source>
        <translation>El sitio %1</translation>
    </message>
    <message>
        <source>What you call it</source>
        <translation>Cómo se llama</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Qué es</translation>
    </message>
    <message>
        <source>The house wall behind it faces; press again where there is none</source>
        <translation>Hacia dónde mira la pared de la casa detrás; pulsar otra vez si no la hay</translation>
    </message>
    <message>
        <source>Which way it looks</source>
        <translation>Hacia dónde mira</translation>
    </message>
    <message>
        <source>Pots that fit</source>
        <translation>Macetas que caben</translation>
    </message>
    <message>
        <source>Winter nights</source>
        <translation>Noches de invierno</translation>
    </message>
    <message>
        <source>Summer nights</source>
        <translation>Noches de verano</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Menos</translation>
    </message>
    <message>
        <source>Measured there</source>
        <translation>Medido allí</translation>
    </message>
    <message>
        <source>Measured at the window</source>
        <translation>Medido en la ventana</translation>
    </message>
    <message>
        <source>Measured at its opening</source>
        <translation>Medido en su abertura</translation>
    </message>
    <message>
        <source>Sizes, distances, what stands opposite, light and nights; blank fields keep the usual figure</source>
        <translation>Medidas, distancias, lo que hay enfrente, luz y noches; los campos en blanco conservan la cifra usual</translation>
    </message>
    <message>
        <source>What is round it</source>
        <translation>Lo que hay alrededor</translation>
    </message>
    <message>
        <source>The window</source>
        <translation>La ventana</translation>
    </message>
    <message>
        <source>The open side</source>
        <translation>El lado abierto</translation>
    </message>
    <message>
        <source>A day’s light, where you measured it or know it</source>
        <translation>Luz de un día, si se midió o se conoce</translation>
    </message>
    <message>
        <source>Moles on a level leaf. These two count in place of what the fields above give; hours of sun are then not told.</source>
        <translation>Moles sobre una hoja horizontal. Estas dos cuentan en lugar de lo que dan los campos de arriba; las horas de sol no se dicen entonces.</translation>
    </message>
    <message>
        <source>Its nights against the open air</source>
        <translation>Sus noches frente al aire libre</translation>
    </message>
    <message>
        <source>What the plan begins from; nights that you log then teach it.</source>
        <translation>De ahí parte el plan; las noches anotadas le enseñan después.</translation>
    </message>
    <message>
        <source>A child or an animal gets at the pots there</source>
        <translation>Un niño o un animal llega a las macetas de allí</translation>
    </message>
    <message>
        <source>Poisonous and spiny plants are then kept elsewhere</source>
        <translation>Las plantas venenosas y con espinas estarán entonces en otro lugar</translation>
    </message>
    <message>
        <source>Away from all other plants: fit for infested ones</source>
        <translation>Lejos de las demás plantas: apto para las infestadas</translation>
    </message>
    <message>
        <source>Wind tears at leaves and tips pots there</source>
        <translation>El viento allí rasga hojas y vuelca macetas</translation>
    </message>
    <message>
        <source>Take %1 off the list</source>
        <translation>Quitar %1 de la lista</translation>
    </message>
</context>
<context>
    <name>SprayAsk</name>
    <message>
        <source>Before a spray: %1</source>
        <translation>Antes de pulverizar: %1</translation>
    </message>
    <message>
        <source>What is to be sprayed or wiped on</source>
        <translation>Qué se va a pulverizar o pasar</translation>
    </message>
    <message>
        <source>h</source>
        <translation>h</translation>
    </message>
    <message>
        <source>Blank: none was tried</source>
        <translation>En blanco: no se probó ninguna</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
    <message>
        <source>Blank: long ago</source>
        <translation>En blanco: hace mucho</translation>
    </message>
    <message>
        <source>Blank: just now</source>
        <translation>En blanco: ahora mismo</translation>
    </message>
    <message>
        <source>Another kind of plant</source>
        <translation>Otra especie de planta</translation>
    </message>
    <message>
        <source>Blank: %1. Its name, for a plant that is not among yours</source>
        <translation>En blanco: %1. Si no, el nombre de la especie, para una planta que no es de la casa</translation>
    </message>
    <message>
        <source>A leaf tried today is looked at from %1 to %2.</source>
        <translation>Una hoja probada hoy se mira del %1 al %2.</translation>
    </message>
    <message>
        <source>Nothing is written of a plant that is not among yours.</source>
        <translation>De una planta que no es de la casa no se anota nada.</translation>
    </message>
    <message>
        <source>soap</source>
        <translation>jabón</translation>
    </message>
    <message>
        <source>oil</source>
        <translation>aceite</translation>
    </message>
    <message>
        <source>neem</source>
        <translation>neem</translation>
    </message>
    <message>
        <source>alcohol</source>
        <translation>alcohol</translation>
    </message>
    <message>
        <source>what roots take up</source>
        <translation>lo que toman las raíces</translation>
    </message>
    <message>
        <source>something else</source>
        <translation>otra cosa</translation>
    </message>
    <message>
        <source>Write hours, 0 to 1000, or leave it blank.</source>
        <translation>Escriba horas, de 0 a 1000, o déjelo en blanco.</translation>
    </message>
    <message>
        <source>Write days, or leave it blank.</source>
        <translation>Escriba días o déjelo en blanco.</translation>
    </message>
    <message>
        <source>“%1” is no warmth at which anybody sprays.</source>
        <translation>«%1» no es una temperatura a la que nadie trate.</translation>
    </message>
    <message>
        <source>Not answered yet</source>
        <translation>Sin responder todavía</translation>
    </message>
    <message>
        <source>%1: treated today.</source>
        <translation>%1: tratada hoy.</translation>
    </message>
</context>
<context>
    <name>StartWindow</name>
    <message>
        <source>Lathhouse · First start</source>
        <translation>Lathhouse · Primer inicio</translation>
    </message>
</context>
<context>
    <name>StepLath</name>
    <message>
        <source>Step %1, %2</source>
        <translation>Paso %1, %2</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
</context>
<context>
    <name>TonightColumn</name>
    <message>
        <source>Tonight</source>
        <translation>Esta noche</translation>
    </message>
    <message>
        <source>Tonight is being worked out.</source>
        <translation>Se está calculando la noche.</translation>
    </message>
    <message>
        <source>No spot outdoors is known, so nights are not followed. Add one under Home, Spots.</source>
        <translation>No se conoce ningún sitio exterior, así que no se siguen las noches. Añadir uno en Casa, Sitios.</translation>
    </message>
    <message>
        <source>Tonight’s low, middle %1</source>
        <translation>Mínima de esta noche, centro %1</translation>
    </message>
    <message>
        <source>What must come in tonight is in.</source>
        <translation>Lo que debe entrar esta noche ya está dentro.</translation>
    </message>
    <message>
        <source>&lt;b&gt;%1&lt;/b&gt; %2</source>
        <translation>&lt;b&gt;%1&lt;/b&gt; %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Type another low for tonight</source>
        <translation>Escribir otra mínima para esta noche</translation>
    </message>
    <message>
        <source>It counts instead of the one that is kept.</source>
        <translation>Cuenta en lugar de la que está guardada.</translation>
    </message>
    <message>
        <source>File with ten nights</source>
        <translation>Archivo con diez noches</translation>
    </message>
    <message>
        <source>Forecasts (*.csv *.json *.txt)</source>
        <translation>Previsiones (*.csv *.json *.txt)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
    <message>
        <source>What it calls the columns, where otherwise; may be left blank</source>
        <translation>Cómo llama a las columnas, si es de otro modo; puede quedar en blanco</translation>
    </message>
    <message>
        <source>its own names: date=Day,low_c=Min</source>
        <translation>sus nombres: date=Día,low_c=Mín</translation>
    </message>
    <message>
        <source>How many days ago the forecast was made, blank for today</source>
        <translation>Hace cuántos días se hizo el pronóstico, en blanco para hoy</translation>
    </message>
    <message>
        <source>made today</source>
        <translation>hecho hoy</translation>
    </message>
    <message>
        <source>days ago</source>
        <translation>días atrás</translation>
    </message>
    <message>
        <source>Take it</source>
        <translation>Incorporar</translation>
    </message>
    <message>
        <source>Keeps its nights as the forecast</source>
        <translation>Guarda sus noches como previsión</translation>
    </message>
    <message>
        <source>A table with a line a night: date (the morning after), low_c or low_f; sky, wind and dew_point_c where they are known.</source>
        <translation>Una tabla con una línea por noche: date (la mañana siguiente), low_c o low_f; sky, wind y dew_point_c donde se conozcan.</translation>
    </message>
    <message>
        <source>Night to</source>
        <translation>Noche al</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>centro</translation>
    </message>
    <message>
        <source>9 in 10</source>
        <translation>9 de cada 10</translation>
    </message>
    <message>
        <source>from</source>
        <translation>según</translation>
    </message>
    <message>
        <source>Night to, middle, 9 in 10, from</source>
        <translation>Noche al, centro, 9 de cada 10, según</translation>
    </message>
    <message>
        <source>As a table</source>
        <translation>Como tabla</translation>
    </message>
    <message>
        <source>Key T</source>
        <translation>Tecla T</translation>
    </message>
    <message>
        <source>Plants outdoors tonight</source>
        <translation>Plantas fuera esta noche</translation>
    </message>
    <message>
        <source>tonight’s low at the plant, %1; striped: harms</source>
        <translation>mínima de esta noche junto a la planta, %1; rayado: daña</translation>
    </message>
    <message>
        <source>Risk you accept in one of these nights</source>
        <translation>Riesgo que se acepta en una de estas noches</translation>
    </message>
    <message>
        <source>For looking at the nights here: the tasks of the round keep to 1 in 10.</source>
        <translation>Para mirar aquí las noches: las tareas de la ronda siguen con 1 de cada 10.</translation>
    </message>
</context>
<context>
    <name>TonightFacts</name>
    <message>
        <source>tonight</source>
        <translation>esta noche</translation>
    </message>
    <message>
        <source>in the night to %1</source>
        <translation>en la noche al %1</translation>
    </message>
    <message>
        <source>No forecast is kept, so these nights are what the season usually brings and nothing is said about carrying in. Type tonight’s low below, or take a file with ten nights.</source>
        <translation>No hay previsión guardada, así que estas noches son lo que suele traer la estación y no se dice nada de entrar plantas. Escribir abajo la mínima de esta noche, o incorporar un archivo con diez noches.</translation>
    </message>
    <message>
        <source>The forecast has no low for tonight. Type it below.</source>
        <translation>La previsión no tiene mínima para esta noche. Escribirla abajo.</translation>
    </message>
    <message>
        <source>Forecast for %1 of ten nights; the paler ones are what the season usually brings. More come in with a file.</source>
        <translation>Previsión para %1 de diez noches; las más pálidas son lo que suele traer la estación. Entran más con un archivo.</translation>
    </message>
    <message>
        <source>forecast</source>
        <translation>previsión</translation>
    </message>
    <message>
        <source>season alone</source>
        <translation>solo la estación</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1: middle low %2, 9 in 10: %3, %4</source>
        <translation>%1: mínima central %2, 9 de cada 10: %3, %4</translation>
    </message>
    <message>
        <source>Night lows at %1, next ten nights, %2</source>
        <translation>Mínimas nocturnas en %1, próximas diez noches, %2</translation>
    </message>
    <message>
        <source>A night is named by its morning. Box: half of such nights; line: 9 in 10. Key T: the same as a table.</source>
        <translation>Una noche se nombra por su mañana. Caja: la mitad de esas noches; línea: 9 de cada 10. Tecla T: lo mismo en una tabla.</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>en %1</translation>
    </message>
    <message>
        <source>9 nights in 10 like this: %1 to %2</source>
        <translation>9 de cada 10 noches así: %1 a %2</translation>
    </message>
    <message>
        <source>by the season, 9 in 10: %1 to %2</source>
        <translation>según la estación, 9 de cada 10: %1 a %2</translation>
    </message>
    <message>
        <source>%1 there, from %2 logged nights</source>
        <translation>allí %1, según %2 noches anotadas</translation>
    </message>
    <message>
        <source>%1 there, a guess until nights are logged</source>
        <translation>allí %1, una estimación hasta que se anoten noches</translation>
    </message>
    <message>
        <source>, clear and calm</source>
        <translation>, despejado y en calma</translation>
    </message>
    <message>
        <source>, cloud or wind</source>
        <translation>, nubes o viento</translation>
    </message>
    <message>
        <source>Forecast %1%2; with the season weighed in, the open air has %3; nights are %4.</source>
        <translation>Previsión %1%2; contando con lo que suele traer la estación, el aire libre tiene %3; las noches son %4.</translation>
    </message>
    <message>
        <source>Nights are %1.</source>
        <translation>Las noches son %1.</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 y %2 más</translation>
    </message>
    <message>
        <source>%1 +%2</source>
        <translation>%1 +%2</translation>
    </message>
    <message>
        <source>carry in, though kept there by hand</source>
        <translation>entrar, aunque está fijada allí a mano</translation>
    </message>
    <message>
        <source>carry in</source>
        <translation>entrar</translation>
    </message>
    <message>
        <source>may stay</source>
        <translation>puede quedarse</translation>
    </message>
    <message>
        <source>by the season alone</source>
        <translation>solo según la estación</translation>
    </message>
    <message>
        <source>infested: carried last, then wash</source>
        <translation>infestada: se lleva la última, después lavarse</translation>
    </message>
    <message>
        <source>suspect: after the clean ones</source>
        <translation>sospechosa: después de las limpias</translation>
    </message>
    <message>
        <source>%1, %2: %3. %4.</source>
        <translation>%1, %2: %3. %4.</translation>
    </message>
    <message>
        <source>It goes to: %1.</source>
        <translation>Va a: %1.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1, middle %2</source>
        <translation>%1, centro %2</translation>
    </message>
    <message>
        <source>9 in 10: %1 to %2</source>
        <translation>9 de cada 10: %1 a %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Carry in one plant.</source>
        <translation>Entrar una planta.</translation>
    </message>
    <message>
        <source>Carry in %1 plants.</source>
        <translation>Entrar %1 plantas.</translation>
    </message>
    <message>
        <source>Nothing to carry in.</source>
        <translation>Nada que entrar.</translation>
    </message>
    <message>
        <source>No forecast for tonight.</source>
        <translation>Sin previsión para esta noche.</translation>
    </message>
    <message>
        <source>No plant stands outdoors.</source>
        <translation>No hay plantas fuera.</translation>
    </message>
    <message>
        <source>Closest this week: %1, %2 %3.</source>
        <translation>La más justa esta semana: %1, %2 %3.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>Coldest night ahead, %1</source>
        <translation>Noche más fría por venir, %1</translation>
    </message>
    <message>
        <source>%1, %2 and %3 more</source>
        <translation>%1, %2 y %3 más</translation>
    </message>
    <message>
        <source>%1 more until %2</source>
        <translation>%1 más hasta el %2</translation>
    </message>
</context>
<context>
    <name>TonightPlantRow</name>
    <message>
        <source>%1; damage from %2</source>
        <translation>%1; daño desde %2</translation>
    </message>
</context>
<context>
    <name>TrayCells</name>
    <message>
        <source>Cells of %1</source>
        <translation>Celdas de %1</translation>
    </message>
    <message>
        <source>Cell %1 of %2, up</source>
        <translation>Celda %1 de %2, nacida</translation>
    </message>
    <message>
        <source>Cell %1 of %2, nothing up</source>
        <translation>Celda %1 de %2, nada nacido</translation>
    </message>
</context>
<context>
    <name>TrayPane</name>
    <message>
        <source>Trays</source>
        <translation>Bandejas</translation>
    </message>
    <message>
        <source>Seeds that went into a tray</source>
        <translation>Semillas que fueron a una bandeja</translation>
    </message>
    <message>
        <source>Seeds</source>
        <translation>Semillas</translation>
    </message>
    <message>
        <source>How many days ago it was sown or counted, blank for today</source>
        <translation>Hace cuántos días se sembró o se contó, en blanco para hoy</translation>
    </message>
    <message>
        <source>0 days ago</source>
        <translation>hace 0 días</translation>
    </message>
    <message>
        <source>days ago</source>
        <translation>días atrás</translation>
    </message>
    <message>
        <source>Sown today</source>
        <translation>Sembradas hoy</translation>
    </message>
    <message>
        <source>Sown on that day</source>
        <translation>Sembrado ese día</translation>
    </message>
    <message>
        <source>A tray of this lot, to be counted from now on</source>
        <translation>Una bandeja de este lote, que se cuenta desde ahora</translation>
    </message>
    <message>
        <source>Where it stands, how warm its mix is and a note may be left out.</source>
        <translation>Dónde está, la temperatura del sustrato y una nota pueden faltar.</translation>
    </message>
    <message>
        <source>How warm the mix is, if it was measured</source>
        <translation>Qué temperatura tiene el sustrato, si se midió</translation>
    </message>
    <message>
        <source>Warmth of the mix</source>
        <translation>Calor del sustrato</translation>
    </message>
    <message>
        <source>Note to the tray, may be left blank</source>
        <translation>Nota de la bandeja, puede quedar en blanco</translation>
    </message>
    <message>
        <source>Trays of this lot</source>
        <translation>Bandejas de este lote</translation>
    </message>
    <message>
        <source>No tray of this lot yet. Once seeds have gone into one, what comes up is counted here, and your counts tell how much of the lot comes up.</source>
        <translation>Aún no hay ninguna bandeja de este lote. En cuanto se siembra una, aquí se cuenta lo que nace, y los recuentos propios dicen cuánto nace del lote.</translation>
    </message>
</context>
<context>
    <name>TrayRow</name>
    <message>
        <source>One fewer in %1</source>
        <translation>Una menos en %1</translation>
    </message>
    <message>
        <source>Key −</source>
        <translation>Tecla −</translation>
    </message>
    <message>
        <source>&lt;b&gt;%1&lt;/b&gt; of %2 up</source>
        <translation>&lt;b&gt;%1&lt;/b&gt; de %2 nacidas</translation>
    </message>
    <message>
        <source>%1 of %2 up</source>
        <translation>%1 de %2 nacidas</translation>
    </message>
    <message>
        <source>One more in %1</source>
        <translation>Una más en %1</translation>
    </message>
    <message>
        <source>Key +</source>
        <translation>Tecla +</translation>
    </message>
    <message>
        <source>no more to come</source>
        <translation>no se esperan más</translation>
    </message>
    <message>
        <source>The counting is over; only then does the tray change the lot’s share</source>
        <translation>El recuento ha terminado; solo entonces la bandeja cambia la parte del lote</translation>
    </message>
    <message>
        <source>Pot seedlings up</source>
        <translation>Pasar plántulas a maceta</translation>
    </message>
    <message>
        <source>Seedlings of this tray become plants, each in a pot of its own</source>
        <translation>Las plántulas de esta bandeja pasan a ser plantas, cada una en su maceta</translation>
    </message>
</context>
<context>
    <name>Trouble</name>
    <message>
        <source>Write %1</source>
        <translation>Escribir %1</translation>
    </message>
    <message>
        <source>Puts it into the field; nothing is kept by that</source>
        <translation>Lo pone en el campo; con eso no se guarda nada</translation>
    </message>
</context>
<context>
    <name>UndoBar</name>
    <message>
        <source>Control and Z. Takes back what was logged last on this page.</source>
        <translation>Control y Z. Deshace lo último que se anotó en esta página.</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Control, Shift and Z. Does again what was taken back last.</source>
        <translation>Control, Mayúsculas y Z. Rehace lo último que se deshizo.</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
</context>
<context>
    <name>VerdictPane</name>
    <message>
        <source>%1 %2. %3 %4 %5</source>
        <translation>%1 %2. %3 %4 %5</translation>
    </message>
    <message>
        <source>&lt;b&gt;%1&lt;/b&gt; %2</source>
        <translation>&lt;b&gt;%1&lt;/b&gt; %2</translation>
    </message>
    <message>
        <source>What it needs</source>
        <translation>Lo que necesita</translation>
    </message>
    <message>
        <source>low of a night</source>
        <translation>mínima de una noche</translation>
    </message>
</context>
<context>
    <name>WaterAsk</name>
    <message>
        <source>Water, roots and winter: %1</source>
        <translation>Agua, raíces e invierno: %1</translation>
    </message>
    <message>
        <source>Looks of the next</source>
        <translation>Miradas de los próximos</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
    <message>
        <source>Blank: %1</source>
        <translation>En blanco: %1</translation>
    </message>
    <message>
        <source>Write days, 1 to %1.</source>
        <translation>Escriba días, de 1 a %1.</translation>
    </message>
    <message>
        <source>It stands at no spot, so nothing can be said; give it one.</source>
        <translation>No está en ningún sitio, así que no se puede decir nada; dele uno.</translation>
    </message>
    <message>
        <source>Look at the mix today: %1.</source>
        <translation>Mirar hoy el sustrato: %1.</translation>
    </message>
    <message>
        <source>Look at the mix on %1: %2.</source>
        <translation>Mirar el sustrato el %1: %2.</translation>
    </message>
    <message>
        <source>Reckoned from usual weather; heat, wind and a full crown make it sooner. Empty saucers.</source>
        <translation>Calculado con tiempo usual; el calor, el viento y una copa llena lo adelantan. Vaciar los platos.</translation>
    </message>
    <message>
        <source>A look is a finger in the mix or the pot lifted: water only what is dry as its kind wants it.</source>
        <translation>Mirar es un dedo en el sustrato o levantar la maceta: regar solo lo que está seco como su especie quiere.</translation>
    </message>
    <message>
        <source>Last watered on %1.</source>
        <translation>Regada por última vez el %1.</translation>
    </message>
    <message>
        <source>After a watering, a look about every %1 now.</source>
        <translation>Tras un riego, mirar ahora más o menos cada: %1.</translation>
    </message>
    <message>
        <source>Learnt from 1 interval of yours.</source>
        <translation>Aprendido de 1 intervalo suyo.</translation>
    </message>
    <message>
        <source>Learnt from %1 intervals of yours.</source>
        <translation>Aprendido de %1 intervalos suyos.</translation>
    </message>
    <message>
        <source>They are short for such a pot: feel before you water.</source>
        <translation>Son cortos para una maceta así: palpe antes de regar.</translation>
    </message>
    <message>
        <source>The pot holds about %1 (guessed from its weight) and draws about %2 a day.</source>
        <translation>A la maceta le caben unos %1 (estimado por su peso) y gasta unos %2 al día.</translation>
    </message>
    <message>
        <source>The pot holds %1 and draws about %2 a day.</source>
        <translation>A la maceta le caben %1 y gasta unos %2 al día.</translation>
    </message>
    <message>
        <source>What it draws is rough, from half of it to double, as the size of its crown is not reckoned in: the finger and the weight of the pot decide.</source>
        <translation>Lo que gasta es aproximado, de la mitad al doble, pues el tamaño de la copa no se cuenta: deciden el dedo y el peso de la maceta.</translation>
    </message>
    <message>
        <source>Of a full pot roots draw about %1 with ease; a look is due once %2 is gone.</source>
        <translation>De una maceta llena las raíces toman con facilidad unos %1; toca mirar cuando se han ido %2.</translation>
    </message>
    <message>
        <source>It rests: hardly any water.</source>
        <translation>Reposa: apenas agua.</translation>
    </message>
    <message>
        <source>It rests: less water.</source>
        <translation>Reposa: menos agua.</translation>
    </message>
    <message>
        <source>It must dry right out first.</source>
        <translation>Antes debe secarse del todo.</translation>
    </message>
    <message>
        <source>Looks, as if it were watered at each</source>
        <translation>Miradas, como si se regara en cada una</translation>
    </message>
    <message>
        <source>feel the mix, or lift the pot</source>
        <translation>palpar el sustrato o levantar la maceta</translation>
    </message>
    <message>
        <source>None in these days.</source>
        <translation>Ninguna en esos días.</translation>
    </message>
    <message>
        <source>And %1 more.</source>
        <translation>Y %1 más.</translation>
    </message>
    <message>
        <source>Roots and winter quarters</source>
        <translation>Raíces y cuartel de invierno</translation>
    </message>
    <message>
        <source>In its pot, roots are at risk from %1 on.</source>
        <translation>En su maceta, las raíces corren riesgo desde %1.</translation>
    </message>
    <message>
        <source>Its winter by the plan: %1, %2 on the mean, %3 mol/m² of light a day: %4.</source>
        <translation>Su invierno según el plan: %1, %2 de media, %3 mol/m² de luz al día: %4.</translation>
    </message>
    <message>
        <source>Its kind rests cool.</source>
        <translation>Su especie reposa en fresco.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
</context>
<context>
    <name>YearActs</name>
    <message>
        <source>Open its page</source>
        <translation>Abrir su página</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>Log something</source>
        <translation>Anotar algo</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Ctrl+L</translation>
    </message>
    <message>
        <source>Keep it at a spot</source>
        <translation>Fijarla en un sitio</translation>
    </message>
    <message>
        <source>Take off what is pinned</source>
        <translation>Soltar lo que está fijado</translation>
    </message>
</context>
<context>
    <name>YearChart</name>
    <message>
        <source>Night lows, day length and frost through the year</source>
        <translation>Mínimas nocturnas, duración del día y heladas a lo largo del año</translation>
    </message>
    <message>
        <source>Day length</source>
        <translation>Duración del día</translation>
    </message>
    <message>
        <source>sunrise to sunset</source>
        <translation>del alba al ocaso</translation>
    </message>
    <message>
        <source>blue short, straw long</source>
        <translation>azul corto, paja largo</translation>
    </message>
    <message>
        <source>Night lows</source>
        <translation>Mínimas de noche</translation>
    </message>
    <message>
        <source>open air, %1
9 nights in 10 lie in
the blue band</source>
        <translation>aire libre, %1
9 de cada 10 noches
están en la banda</translation>
    </message>
</context>
<context>
    <name>YearFoot</name>
    <message>
        <source>Night low</source>
        <translation>Mínima</translation>
    </message>
    <message>
        <source>9 in 10: %1</source>
        <translation>9 de cada 10: %1</translation>
    </message>
    <message>
        <source>Frost after this night</source>
        <translation>Helada tras esta noche</translation>
    </message>
    <message>
        <source>Plants outdoors</source>
        <translation>Plantas fuera</translation>
    </message>
    <message>
        <source>Fewer</source>
        <translation>Menos</translation>
    </message>
    <message>
        <source>All numbers</source>
        <translation>Todos los números</translation>
    </message>
    <message>
        <source>Shows every number of this date, and what they rest on.</source>
        <translation>Muestra cada número de esta fecha, y en qué se basa.</translation>
    </message>
</context>
<context>
    <name>YearFrom</name>
    <message>
        <source>The year from another date</source>
        <translation>El año desde otra fecha</translation>
    </message>
    <message>
        <source>Twelve months from there, planned as the plants stand today. It is for looking: nothing of it is kept or pinned.</source>
        <translation>Doce meses a partir de ahí, planeados según están hoy las plantas. Es para mirar: nada de ello se conserva ni se fija.</translation>
    </message>
    <message>
        <source>From which date, blank for today</source>
        <translation>Desde qué fecha, en blanco para hoy</translation>
    </message>
    <message>
        <source>Show the year</source>
        <translation>Mostrar el año</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>From today</source>
        <translation>Desde hoy</translation>
    </message>
    <message>
        <source>The year in which plans are kept.</source>
        <translation>El año en que se conservan los planes.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Escape</translation>
    </message>
</context>
<context>
    <name>YearPage</name>
    <message>
        <source>Risk you accept</source>
        <translation>Riesgo que se acepta</translation>
    </message>
    <message>
        <source>each plant, each way</source>
        <translation>cada planta y trayecto</translation>
    </message>
    <message>
        <source>for each plant, each way</source>
        <translation>por cada planta, cada trayecto</translation>
    </message>
    <message>
        <source>From another date</source>
        <translation>Desde otra fecha</translation>
    </message>
    <message>
        <source>Key F. The year from a date to come, or as of the first of March.</source>
        <translation>Tecla F. El año desde una fecha por venir, o desde el primero de marzo.</translation>
    </message>
    <message>
        <source>Print sheet</source>
        <translation>Imprimir hoja</translation>
    </message>
    <message>
        <source>Control and P. A PDF to hang up.</source>
        <translation>Control y P. Un PDF para colgar.</translation>
    </message>
    <message>
        <source>As a chart</source>
        <translation>Como gráfico</translation>
    </message>
    <message>
        <source>As a table</source>
        <translation>Como tabla</translation>
    </message>
    <message>
        <source>Key T. The same numbers, the same date.</source>
        <translation>Tecla T. Los mismos números, la misma fecha.</translation>
    </message>
</context>
<context>
    <name>YearPainter</name>
    <message>
        <source>frost in under 1 winter in 10</source>
        <translation>helada en menos de 1 de cada 10 inviernos</translation>
    </message>
    <message>
        <source>no frost at this place</source>
        <translation>aquí no hay heladas</translation>
    </message>
    <message>
        <source>frost in every month, no safe window</source>
        <translation>helada en todos los meses, sin época segura</translation>
    </message>
    <message>
        <source>chance per night, no season here</source>
        <translation>probabilidad por noche, aquí no hay estación</translation>
    </message>
    <message>
        <source>last frost: half by %1,</source>
        <translation>última helada: mitad hasta %1,</translation>
    </message>
    <message>
        <source>last frost: half the springs by %1,</source>
        <translation>última helada: mitad de las primaveras hasta el %1,</translation>
    </message>
    <message>
        <source>first frost: half by %1,</source>
        <translation>primera helada: mitad hasta %1,</translation>
    </message>
    <message>
        <source>first frost: half the autumns by %1,</source>
        <translation>primera helada: mitad de los otoños hasta el %1,</translation>
    </message>
    <message>
        <source>last frost: 1 year in 10 after %1</source>
        <translation>última helada: 1 de cada 10 años tras el %1</translation>
    </message>
    <message>
        <source>1 in 10 after %1</source>
        <translation>1 de cada 10 tras %1</translation>
    </message>
    <message>
        <source>1 spring in 10 after %1</source>
        <translation>1 primavera de cada 10 tras el %1</translation>
    </message>
    <message>
        <source>first frost: 1 year in 10 by %1</source>
        <translation>primera helada: 1 de cada 10 años hasta el %1</translation>
    </message>
    <message>
        <source>1 in 10 by %1</source>
        <translation>1 de cada 10 hasta %1</translation>
    </message>
    <message>
        <source>1 autumn in 10 by %1</source>
        <translation>1 otoño de cada 10 hasta el %1</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 el %2</translation>
    </message>
    <message>
        <source>middle night low</source>
        <translation>mínima central</translation>
    </message>
    <message>
        <source>frost line</source>
        <translation>línea de helada</translation>
    </message>
    <message>
        <source>9 nights in 10 within</source>
        <translation>9 de cada 10 noches</translation>
    </message>
    <message>
        <source>1 night in 20 is warmer</source>
        <translation>1 noche de cada 20 es más cálida</translation>
    </message>
    <message>
        <source>1 night in 20 is colder</source>
        <translation>1 noche de cada 20 es más fría</translation>
    </message>
    <message>
        <source> %1</source>
        <translation> %1</translation>
    </message>
</context>
<context>
    <name>YearReadout</name>
    <message>
        <source>Numbers of %1</source>
        <translation>Números del %1</translation>
    </message>
    <message>
        <source>Chance of a harmful night</source>
        <translation>Riesgo de noche dañina</translation>
    </message>
    <message>
        <source>Keep this plan</source>
        <translation>Guardar este plan</translation>
    </message>
    <message>
        <source>Later plans change it only where that pays, and name each change.</source>
        <translation>Los planes siguientes lo cambian solo donde merece la pena, y nombran cada cambio.</translation>
    </message>
    <message>
        <source>For looking: nothing of this year is kept or pinned.</source>
        <translation>Para mirar: nada de este año se conserva ni se fija.</translation>
    </message>
    <message>
        <source>From another date</source>
        <translation>Desde otra fecha</translation>
    </message>
    <message>
        <source>Key F. The year from a date to come, or as of the first of March.</source>
        <translation>Tecla F. El año desde una fecha por venir, o desde el primero de marzo.</translation>
    </message>
</context>
<context>
    <name>YearSheet</name>
    <message>
        <source>in trays</source>
        <translation>en bandejas</translation>
    </message>
    <message>
        <source>out</source>
        <translation>fuera</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <translation>%1 desde el %2</translation>
    </message>
    <message>
        <source>sow %1 to %2</source>
        <translation>sembrar del %1 al %2</translation>
    </message>
    <message>
        <source>The year from %1</source>
        <translation>El año desde el %1</translation>
    </message>
    <message>
        <source>an invented example</source>
        <translation>un ejemplo inventado</translation>
    </message>
    <message>
        <source>1 plant</source>
        <translation>1 planta</translation>
    </message>
    <message>
        <source>%1 plants</source>
        <translation>%1 plantas</translation>
    </message>
    <message>
        <source>1 sowing</source>
        <translation>1 siembra</translation>
    </message>
    <message>
        <source>%1 sowings</source>
        <translation>%1 siembras</translation>
    </message>
    <message>
        <source> · </source>
        <translation> · </translation>
    </message>
    <message>
        <source>Risk accepted: %1 for each plant, each way · %2</source>
        <translation>Riesgo aceptado: %1 por cada planta, cada trayecto · %2</translation>
    </message>
    <message>
        <source>Day length</source>
        <translation>Duración del día</translation>
    </message>
    <message>
        <source>grey short, white long</source>
        <translation>gris corto, blanco largo</translation>
    </message>
    <message>
        <source>Night lows</source>
        <translation>Mínimas de noche</translation>
    </message>
    <message>
        <source>open air, %1; 9 nights in 10 lie in the grey band</source>
        <translation>aire libre, %1; 9 de cada 10 noches están en la banda gris</translation>
    </message>
    <message>
        <source>%1 of %2 on this sheet, %3</source>
        <translation>%1 de %2 en esta hoja, %3</translation>
    </message>
    <message>
        <source>Plants</source>
        <translation>Plantas</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>ninguna aún</translation>
    </message>
    <message>
        <source>Sowings</source>
        <translation>Siembras</translation>
    </message>
    <message>
        <source>ring: sow · bracket: comes up · steps: hardening and planting out · slash: first ready</source>
        <translation>anillo: sembrar · corchete: nace · escalones: endurecer y plantar fuera · barra oblicua: primera lista</translation>
    </message>
    <message>
        <source>by the spot where the year begins</source>
        <translation>por el sitio donde empieza el año</translation>
    </message>
    <message>
        <source>by name</source>
        <translation>por nombre</translation>
    </message>
    <message>
        <source>in order of going out</source>
        <translation>por orden de salida</translation>
    </message>
    <message>
        <source>Look at the forecast before each move.</source>
        <translation>Mirar la previsión antes de cada cambio.</translation>
    </message>
    <message>
        <source>Stepped edge: hardening, or coming-in steps</source>
        <translation>Borde escalonado: endurecer, o escalones al entrar</translation>
    </message>
    <message>
        <source>Bracket above an edge: date at 1 in 5 to 1 in 20</source>
        <translation>Corchete sobre un borde: fecha a 1 de cada 5 hasta 1 de cada 20</translation>
    </message>
    <message>
        <source>Short ticks below a bar: feed</source>
        <translation>Rayas cortas bajo una barra: abonar</translation>
    </message>
    <message>
        <source>Spots</source>
        <translation>Sitios</translation>
    </message>
    <message>
        <source>Marks</source>
        <translation>Marcas</translation>
    </message>
    <message>
        <source>Where the numbers come from</source>
        <translation>De dónde vienen los números</translation>
    </message>
    <message>
        <source>deadly if eaten: keep from children and animals</source>
        <translation>mortal si se come: lejos de niños y animales</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
</context>
<context>
    <name>YearTable</name>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Night low, middle</source>
        <translation>Mínima nocturna, centro</translation>
    </message>
    <message>
        <source>9 nights in 10</source>
        <translation>9 de cada 10 noches</translation>
    </message>
    <message>
        <source>Frost after this night</source>
        <translation>Helada tras esta noche</translation>
    </message>
    <message>
        <source>Day length</source>
        <translation>Duración del día</translation>
    </message>
    <message>
        <source>The year from today, a row for each date</source>
        <translation>El año desde hoy, una fila por fecha</translation>
    </message>
</context>
<context>
    <name>lathhouse::chart</name>
    <message>
        <source>home</source>
        <translation>casa</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>S</source>
        <translation>S</translation>
    </message>
    <message>
        <source>W</source>
        <translation>O</translation>
    </message>
    <message>
        <source>E</source>
        <translation>E</translation>
    </message>
    <message>
        <source>night 1</source>
        <translation>noche 1</translation>
    </message>
    <message>
        <source>a guess: no night is logged yet</source>
        <translation>una estimación: aún no hay noches anotadas</translation>
    </message>
    <message>
        <source>left: the guess before any log</source>
        <translation>izquierda: la estimación antes de anotar</translation>
    </message>
    <message>
        <source>lethal</source>
        <translation>letal</translation>
    </message>
    <message>
        <source>harm</source>
        <translation>daño</translation>
    </message>
    <message>
        <source>stress</source>
        <translation>estrés</translation>
    </message>
    <message>
        <source>at ease</source>
        <translation>a gusto</translation>
    </message>
    <message>
        <source>its spot tonight, about %1</source>
        <translation>su sitio esta noche, unos %1</translation>
    </message>
    <message>
        <source>tonight about %1</source>
        <translation>esta noche, unos %1</translation>
    </message>
    <message>
        <source>%1, thrives</source>
        <translation>%1, prospera</translation>
    </message>
    <message>
        <source>9 days in 10 within</source>
        <translation>9 de cada 10 días</translation>
    </message>
    <message>
        <source>1 day in 20 is brighter</source>
        <translation>1 día de cada 20 es más claro</translation>
    </message>
    <message>
        <source>1 day in 20 is darker</source>
        <translation>1 día de cada 20 es más oscuro</translation>
    </message>
    <message>
        <source>mean of the month</source>
        <translation>media del mes</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>recovering</source>
        <translation>se recupera</translation>
    </message>
    <message>
        <source>recovered</source>
        <translation>recuperada</translation>
    </message>
    <message>
        <source>as before</source>
        <translation>como antes</translation>
    </message>
</context>
<context>
    <name>lathhouse::models</name>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
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
        <source>The answer stands here once what is marked is right.</source>
        <translation>La respuesta estará aquí cuando lo marcado esté bien.</translation>
    </message>
    <message>
        <source>The day&apos;s plan is being worked out.</source>
        <translation>Se está calculando el plan del día.</translation>
    </message>
    <message>
        <source>No kind here is called “%1”.</source>
        <translation>Ninguna especie aquí se llama «%1».</translation>
    </message>
    <message>
        <source>No kind here is called “%1”. Did you mean %2?</source>
        <translation>Ninguna especie aquí se llama «%1». ¿Quizá %2?</translation>
    </message>
    <message>
        <source> or </source>
        <translation> o </translation>
    </message>
    <message>
        <source>sown</source>
        <translation>sembrado</translation>
    </message>
    <message>
        <source>1 seed of %1 sown, of the lot %2</source>
        <translation>1 semilla de %1 sembrada, del lote %2</translation>
    </message>
    <message>
        <source>%1 seeds of %2 sown, of the lot %3</source>
        <translation>%1 semillas de %2 sembradas, del lote %3</translation>
    </message>
    <message>
        <source>plant %1</source>
        <translation>planta %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>a plant</source>
        <translation>una planta</translation>
    </message>
    <message>
        <source>%1: its drawing stands for it</source>
        <translation>%1: su dibujo la representa</translation>
    </message>
    <message>
        <source>%1 photographs came in, %2 the first</source>
        <translation>entraron %1 fotografías, la primera %2</translation>
    </message>
    <message>
        <source>the photograph %1 of %2</source>
        <translation>la fotografía %1 del %2</translation>
    </message>
    <message>
        <source>%1 shows %2</source>
        <translation>%1 muestra %2</translation>
    </message>
    <message>
        <source>%1 shows %2 no longer</source>
        <translation>%1 ya no muestra %2</translation>
    </message>
    <message>
        <source>%1 was dated by hand</source>
        <translation>%1 se fechó a mano</translation>
    </message>
    <message>
        <source>%1 is out of the lists</source>
        <translation>%1 está fuera de las listas</translation>
    </message>
    <message>
        <source>%1 is back in the lists</source>
        <translation>%1 está de nuevo en las listas</translation>
    </message>
    <message>
        <source>%1 stands for %2</source>
        <translation>%1 representa %2</translation>
    </message>
    <message>
        <source>%1 came in</source>
        <translation>%1 entró</translation>
    </message>
    <message>
        <source>%1: %2 %3, %4</source>
        <translation>%1: %2 %3, %4</translation>
    </message>
    <message>
        <source>%1: lowest of the night %2, %3</source>
        <translation>%1: mínima de la noche %2, %3</translation>
    </message>
    <message>
        <source>a spot</source>
        <translation>un sitio</translation>
    </message>
    <message>
        <source>%1: lowest of %2 nights, %3 to %4</source>
        <translation>%1: mínimas de %2 noches, del %3 al %4</translation>
    </message>
    <message>
        <source>lowest of %1 nights at several spots, %2 to %3</source>
        <translation>mínimas de %1 noches en varios lugares, del %2 al %3</translation>
    </message>
    <message>
        <source>Looked over</source>
        <translation>Revisada</translation>
    </message>
    <message>
        <source>Treated</source>
        <translation>Tratada</translation>
    </message>
    <message>
        <source>Watered</source>
        <translation>Regada</translation>
    </message>
    <message>
        <source>Fed</source>
        <translation>Abonada</translation>
    </message>
    <message>
        <source>Washed through</source>
        <translation>Lavada con agua</translation>
    </message>
    <message>
        <source>Repotted</source>
        <translation>Trasplantada</translation>
    </message>
    <message>
        <source>Pruned</source>
        <translation>Podada</translation>
    </message>
    <message>
        <source>Flowered</source>
        <translation>Florida</translation>
    </message>
    <message>
        <source>New growth</source>
        <translation>Brote nuevo</translation>
    </message>
    <message>
        <source>Pest found</source>
        <translation>Plaga hallada</translation>
    </message>
    <message>
        <source>Set apart</source>
        <translation>Apartada</translation>
    </message>
    <message>
        <source>Back among the others</source>
        <translation>De vuelta con las demás</translation>
    </message>
    <message>
        <source>Cold night</source>
        <translation>Noche fría</translation>
    </message>
    <message>
        <source>Hit by a spray</source>
        <translation>Dañada por un producto</translation>
    </message>
    <message>
        <source>Sown</source>
        <translation>Sembrado</translation>
    </message>
    <message>
        <source>Came up</source>
        <translation>Germinado</translation>
    </message>
    <message>
        <source>Planted out</source>
        <translation>Plantada fuera</translation>
    </message>
    <message>
        <source>Died</source>
        <translation>Murió</translation>
    </message>
    <message>
        <source>Given away</source>
        <translation>Regalada</translation>
    </message>
    <message>
        <source>Off the list</source>
        <translation>Fuera de la lista</translation>
    </message>
    <message>
        <source>Divided</source>
        <translation>Dividida</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>moved to %1</source>
        <translation>movida a %1</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>cambiada de sitio</translation>
    </message>
    <message>
        <source>%1 found</source>
        <translation>%1: encontrada</translation>
    </message>
    <message>
        <source>pests</source>
        <translation>plaga</translation>
    </message>
    <message>
        <source>looked over, nothing found</source>
        <translation>revisada, sin hallazgos</translation>
    </message>
    <message>
        <source>looked over</source>
        <translation>revisada</translation>
    </message>
    <message>
        <source>looked over, found %1</source>
        <translation>revisada, se encontró %1</translation>
    </message>
    <message>
        <source>spray damage</source>
        <translation>daño por un producto</translation>
    </message>
    <message>
        <source>damage by %1</source>
        <translation>daño por %1</translation>
    </message>
    <message>
        <source>fed</source>
        <translation>abonada</translation>
    </message>
    <message>
        <source>fed, %1 ppm nitrogen</source>
        <translation>abonada, %1 ppm de nitrógeno</translation>
    </message>
    <message>
        <source>cold night</source>
        <translation>noche fría</translation>
    </message>
    <message>
        <source>new growth</source>
        <translation>brote nuevo</translation>
    </message>
    <message>
        <source>set apart</source>
        <translation>apartada</translation>
    </message>
    <message>
        <source>back among the others</source>
        <translation>de nuevo con las demás</translation>
    </message>
    <message>
        <source>1 seedling of the lot %1 was potted</source>
        <translation>se pasó a maceta 1 plántula del lote %1</translation>
    </message>
    <message>
        <source>%1 seedlings of the lot %2 were potted</source>
        <translation>se pasaron a maceta %1 plántulas del lote %2</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>the lot %1 of %2</source>
        <translation>el lote %1 de %2</translation>
    </message>
    <message>
        <source>%1 of %2 seeds of the lot %3 had come up</source>
        <translation>habían nacido %1 de %2 semillas del lote %3</translation>
    </message>
    <message>
        <source>divided into %1</source>
        <translation>dividida en %1</translation>
    </message>
    <message>
        <source>treated</source>
        <translation>tratada</translation>
    </message>
    <message>
        <source>treated with %1</source>
        <translation>tratada con %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 days ahead</source>
        <translation>con %1 días de antelación</translation>
    </message>
    <message>
        <source>%1 to %2 days ahead</source>
        <translation>con %1 a %2 días de antelación</translation>
    </message>
    <message>
        <source>%1 × the usual</source>
        <translation>%1 × lo habitual</translation>
    </message>
    <message>
        <source>%1: %2 nights, error %3; missed by %4, the season alone by %5</source>
        <translation>%1: %2 noches, error %3; falló por %4, la estación sola por %5</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1, %2: %3.</source>
        <translation>%1, %2: %3.</translation>
    </message>
    <message>
        <source>pot up %1</source>
        <translation>trasplantar %1 a maceta</translation>
    </message>
    <message>
        <source>harden off from %1</source>
        <translation>endurecer desde el %1</translation>
    </message>
    <message>
        <source>harden off now, out %1</source>
        <translation>endurecer ahora, fuera el %1</translation>
    </message>
    <message>
        <source>plant out now</source>
        <translation>plantar fuera ahora</translation>
    </message>
    <message>
        <source>not in the tables</source>
        <translation>no está en las tablas</translation>
    </message>
    <message>
        <source>sown; up from %1</source>
        <translation>sembrada; nace desde el %1</translation>
    </message>
    <message>
        <source>sown; too cold or hot to come up</source>
        <translation>sembrada; demasiado frío o calor para nacer</translation>
    </message>
    <message>
        <source>nothing left</source>
        <translation>no queda nada</translation>
    </message>
    <message>
        <source>past use</source>
        <translation>pasado</translation>
    </message>
    <message>
        <source>old: test first</source>
        <translation>viejo: probar antes</translation>
    </message>
    <message>
        <source>no date here</source>
        <translation>aquí sin fecha</translation>
    </message>
    <message>
        <source>sow outdoors now, until %1</source>
        <translation>sembrar fuera ya, hasta %1</translation>
    </message>
    <message>
        <source>sow now, until %1</source>
        <translation>sembrar ya, hasta %1</translation>
    </message>
    <message>
        <source>outdoors from %1</source>
        <translation>fuera desde %1</translation>
    </message>
    <message>
        <source>sow %1</source>
        <translation>sembrar %1</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 of %2 came up</source>
        <translation>nacieron %1 de %2</translation>
    </message>
    <message>
        <source>packet says %1</source>
        <translation>el sobre dice %1</translation>
    </message>
    <message>
        <source>no test yet</source>
        <translation>aún sin prueba</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2. %3 come up, 9 in 10: %4 to %5, %6. %7. %8</source>
        <translation>%1, %2. %3 nacen, 9 de cada 10: %4 a %5, %6. %7. %8</translation>
    </message>
    <message>
        <source>%1 seeds left</source>
        <translation>quedan %1 semillas</translation>
    </message>
    <message>
        <source>seeds not counted</source>
        <translation>semillas sin contar</translation>
    </message>
    <message>
        <source>Nitrogen of the feed in ppm, may be left blank</source>
        <translation>Nitrógeno del abono en ppm, puede quedar en blanco</translation>
    </message>
    <message>
        <source>Which pest</source>
        <translation>Qué plaga</translation>
    </message>
    <message>
        <source>With what, may be left blank</source>
        <translation>Con qué, puede quedar en blanco</translation>
    </message>
    <message>
        <source>Lowest of the night there, may be left blank</source>
        <translation>Mínima de la noche allí, puede quedar en blanco</translation>
    </message>
    <message>
        <source>Which product, may be left blank</source>
        <translation>Qué producto, puede quedar en blanco</translation>
    </message>
    <message>
        <source>Choose which pest was found, or write it.</source>
        <translation>Elija qué plaga se halló, o escríbala.</translation>
    </message>
    <message>
        <source>Parts of nitrogen in a million lie between 0 and 2000; leave it blank where you do not know.</source>
        <translation>Las partes de nitrógeno por millón están entre 0 y 2000; dejarlo en blanco si no se sabe.</translation>
    </message>
    <message>
        <source>The map cannot be drawn: %1.</source>
        <translation>El mapa no se puede dibujar: %1.</translation>
    </message>
    <message>
        <source>Distances and directions are true from home. Larger triangle, thicker line: more weight.</source>
        <translation>Distancias y direcciones son exactas desde casa. Triángulo mayor, línea más gruesa: más peso.</translation>
    </message>
    <message>
        <source> %1 more stations lie beyond the map.</source>
        <translation> %1 estaciones más quedan fuera del mapa.</translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation>fuera</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>hardening %1 of %2</source>
        <translation>endureciendo, %1 de %2</translation>
    </message>
    <message>
        <source>kept apart</source>
        <translation>se mantiene apartada</translation>
    </message>
    <message>
        <source>gets used to shade</source>
        <translation>se acostumbra a la sombra</translation>
    </message>
    <message>
        <source>died on %1</source>
        <translation>murió el %1</translation>
    </message>
    <message>
        <source>given away on %1</source>
        <translation>regalada el %1</translation>
    </message>
    <message>
        <source>taken off the list on %1</source>
        <translation>quitada de la lista el %1</translation>
    </message>
    <message>
        <source>keep out of reach of children and animals</source>
        <translation>mantener lejos de niños y animales</translation>
    </message>
    <message>
        <source>deadly</source>
        <translation>mortal</translation>
    </message>
    <message>
        <source>poisonous</source>
        <translation>venenosa</translation>
    </message>
    <message>
        <source>slightly poisonous</source>
        <translation>algo venenosa</translation>
    </message>
    <message>
        <source>irritant</source>
        <translation>irritante</translation>
    </message>
    <message>
        <source>%1 to people and animals</source>
        <translation>%1 para personas y animales</translation>
    </message>
    <message>
        <source>%1 to animals</source>
        <translation>%1 para animales</translation>
    </message>
    <message>
        <source>%1 to people</source>
        <translation>%1 para personas</translation>
    </message>
    <message>
        <source>%1 to animals, %2 to people</source>
        <translation>%1 para animales, %2 para personas</translation>
    </message>
    <message>
        <source>At no spot yet</source>
        <translation>Aún sin sitio</translation>
    </message>
    <message>
        <source>M gives it one</source>
        <translation>M le da uno</translation>
    </message>
    <message>
        <source>Gone</source>
        <translation>Ya no están</translation>
    </message>
    <message>
        <source>with a value never read on land (taken as gaps)</source>
        <translation>con un valor nunca leído en tierra (se toman como huecos)</translation>
    </message>
    <message>
        <source>with the low above the high (taken as gaps)</source>
        <translation>con la mínima por encima de la máxima (se toman como huecos)</translation>
    </message>
    <message>
        <source>with low and high both %1 (taken as gaps)</source>
        <translation>con mínima y máxima ambas %1 (se toman como huecos)</translation>
    </message>
    <message>
        <source>in a run of twenty or more equal lows (kept)</source>
        <translation>en una serie de veinte o más mínimas iguales (se conservan)</translation>
    </message>
    <message>
        <source>six standard deviations from the month’s mean (kept)</source>
        <translation>a seis desviaciones típicas de la media del mes (se conservan)</translation>
    </message>
    <message>
        <source>indoors</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>%1: sow %2 %3</source>
        <translation>%1: sembrar %2, %3</translation>
    </message>
    <message>
        <source>%1: sow %2 %3, ready from %4</source>
        <translation>%1: sembrar %2, %3, lista desde el %4</translation>
    </message>
    <message>
        <source>Frost</source>
        <translation>Helada</translation>
    </message>
    <message>
        <source>Frost nights</source>
        <translation>Noches de helada</translation>
    </message>
    <message>
        <source>To %1</source>
        <translation>Hasta %1</translation>
    </message>
    <message>
        <source>Nights to %1</source>
        <translation>Noches hasta %1</translation>
    </message>
    <message>
        <source>Over %1</source>
        <translation>Más de %1</translation>
    </message>
    <message>
        <source>Days over %1</source>
        <translation>Días de más de %1</translation>
    </message>
    <message>
        <source>Rain</source>
        <translation>Lluvia</translation>
    </message>
    <message>
        <source>chance of a frost night</source>
        <translation>probabilidad de noche con helada</translation>
    </message>
    <message>
        <source>chance that a night has frost, open air</source>
        <translation>probabilidad de que una noche hiele, al aire libre</translation>
    </message>
    <message>
        <source>chance of harm to %1</source>
        <translation>probabilidad de daño a %1</translation>
    </message>
    <message>
        <source>chance that a night in the open harms the tenderest, %1</source>
        <translation>probabilidad de que una noche al aire libre dañe a la más tierna, %1</translation>
    </message>
    <message>
        <source>chance of a hot day</source>
        <translation>probabilidad de un día caluroso</translation>
    </message>
    <message>
        <source>chance that a day goes above %1</source>
        <translation>probabilidad de que un día pase de %1</translation>
    </message>
    <message>
        <source>rain of the month</source>
        <translation>lluvia del mes</translation>
    </message>
    <message>
        <source>rain of the month, mean of the years</source>
        <translation>lluvia del mes, media de los años</translation>
    </message>
    <message>
        <source>Frost this night</source>
        <translation>Helada esta noche</translation>
    </message>
    <message>
        <source>To %1 this night</source>
        <translation>Hasta %1 esta noche</translation>
    </message>
    <message>
        <source>Over %1 this day</source>
        <translation>Más de %1 este día</translation>
    </message>
    <message>
        <source>Rain of the month</source>
        <translation>Lluvia del mes</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>seguro</translation>
    </message>
    <message>
        <source>1 in 2</source>
        <translation>1 de cada 2</translation>
    </message>
    <message>
        <source>sow indoors</source>
        <translation>sembrar dentro</translation>
    </message>
    <message>
        <source>sow outdoors</source>
        <translation>sembrar fuera</translation>
    </message>
    <message>
        <source>count the seedlings</source>
        <translation>contar las plántulas</translation>
    </message>
    <message>
        <source>pot the seedlings up</source>
        <translation>trasplantar las plántulas a macetas</translation>
    </message>
    <message>
        <source>begin to harden the seedlings</source>
        <translation>empezar a endurecer las plántulas</translation>
    </message>
    <message>
        <source>plant out</source>
        <translation>plantar fuera</translation>
    </message>
    <message>
        <source>carry it in for the night</source>
        <translation>entrarla por la noche</translation>
    </message>
    <message>
        <source>carry it to another spot</source>
        <translation>llevarla a otro sitio</translation>
    </message>
    <message>
        <source>out by day</source>
        <translation>fuera de día</translation>
    </message>
    <message>
        <source>the first night out</source>
        <translation>la primera noche fuera</translation>
    </message>
    <message>
        <source>into the shade</source>
        <translation>a la sombra</translation>
    </message>
    <message>
        <source>look it over on the way in</source>
        <translation>revisarla al entrarla</translation>
    </message>
    <message>
        <source>soak the pot</source>
        <translation>remojar la maceta</translation>
    </message>
    <message>
        <source>carry it in</source>
        <translation>entrarla</translation>
    </message>
    <message>
        <source>keep it apart</source>
        <translation>mantenerla apartada</translation>
    </message>
    <message>
        <source>a step towards less light</source>
        <translation>un paso hacia menos luz</translation>
    </message>
    <message>
        <source>set it apart</source>
        <translation>apartarla</translation>
    </message>
    <message>
        <source>treat against pests</source>
        <translation>tratarla contra plagas</translation>
    </message>
    <message>
        <source>look for pests</source>
        <translation>buscar plagas</translation>
    </message>
    <message>
        <source>look for pests for the last time</source>
        <translation>buscar plagas por última vez</translation>
    </message>
    <message>
        <source>feel whether the mix is dry</source>
        <translation>tocar si el sustrato está seco</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>abonar</translation>
    </message>
    <message>
        <source>wash the mix through</source>
        <translation>lavar el sustrato</translation>
    </message>
    <message>
        <source>see to it after a cold night</source>
        <translation>atenderla tras una noche fría</translation>
    </message>
    <message>
        <source>see to it after weed-killer or another chemical</source>
        <translation>atenderla tras un herbicida u otro producto</translation>
    </message>
    <message>
        <source>wash hands and tools</source>
        <translation>lavar manos y herramientas</translation>
    </message>
    <message>
        <source>ticked in the round</source>
        <translation>marcado en la ronda</translation>
    </message>
    <message>
        <source>ticked in the round: %1</source>
        <translation>marcado en la ronda: %1</translation>
    </message>
    <message>
        <source>put off in the round</source>
        <translation>aplazado en la ronda</translation>
    </message>
    <message>
        <source>put off in the round: %1</source>
        <translation>aplazado en la ronda: %1</translation>
    </message>
    <message>
        <source>left out in the round</source>
        <translation>omitido en la ronda</translation>
    </message>
    <message>
        <source>left out in the round: %1</source>
        <translation>omitido en la ronda: %1</translation>
    </message>
    <message>
        <source>A number is missing: the lowest temperature, such as %1.</source>
        <translation>Falta un número: la temperatura más baja, como %1.</translation>
    </message>
    <message>
        <source>“%1” is not a number; write it as %2.</source>
        <translation>«%1» no es un número; escribirlo como %2.</translation>
    </message>
    <message>
        <source>%1 is colder than any night ever measured.</source>
        <translation>%1 es más frío que cualquier noche medida jamás.</translation>
    </message>
    <message>
        <source>%1 is no night low. Did you mean %2?</source>
        <translation>%1 no es una mínima nocturna. ¿Quizá %2?</translation>
    </message>
    <message>
        <source>Such a night usually has %1 here; %2 cannot be right.</source>
        <translation>Una noche así suele tener aquí %1; %2 no puede ser.</translation>
    </message>
    <message>
        <source>Such a night usually has %1 here. Instead of %2, did you mean %3?</source>
        <translation>Una noche así suele tener aquí %1. En lugar de %2, ¿quizá %3?</translation>
    </message>
    <message>
        <source>The folder %1 is not there yet; it is made when the file is written.</source>
        <translation>La carpeta %1 aún no existe; se crea al escribir el archivo.</translation>
    </message>
    <message>
        <source>“%1” is no date. Write it such as %2, with the time behind it where it is known.</source>
        <translation>«%1» no es una fecha. Escribirla como %2, con la hora detrás donde se sepa.</translation>
    </message>
    <message>
        <source>%1 is still to come.</source>
        <translation>El %1 aún no ha llegado.</translation>
    </message>
    <message>
        <source>One station, %1 km away, %2, dates right to about %3 days.</source>
        <translation>Una estación, a %1 km, %2, fechas exactas en unos %3 días.</translation>
    </message>
    <message>
        <source>%1 stations, %2 to %3 km away, %4, dates right to about %5 days.</source>
        <translation>%1 estaciones, de %2 a %3 km, %4, fechas exactas en unos %5 días.</translation>
    </message>
    <message>
        <source>%1 %2 (9 in 10: %3 to %4).</source>
        <translation>%1 %2 (9 de cada 10: %3 a %4).</translation>
    </message>
    <message>
        <source>Plan within %1 % of the best.</source>
        <translation>Plan a menos del %1 % del mejor.</translation>
    </message>
    <message>
        <source>All dates are chances, not promises.</source>
        <translation>Todas las fechas son probabilidades, no promesas.</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <translation>ddd d MMM</translation>
    </message>
    <message>
        <source>ddd MMM d</source>
        <translation>ddd d MMM</translation>
    </message>
    <message>
        <source>d MMM</source>
        <translation>d MMM</translation>
    </message>
    <message>
        <source>MMM d</source>
        <translation>d MMM</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <translation>d &apos;de&apos; MMMM</translation>
    </message>
    <message>
        <source>MMMM d</source>
        <translation>d &apos;de&apos; MMMM</translation>
    </message>
    <message>
        <source>dddd d MMMM</source>
        <translation>dddd d &apos;de&apos; MMMM</translation>
    </message>
    <message>
        <source>dddd MMMM d</source>
        <translation>dddd d &apos;de&apos; MMMM</translation>
    </message>
    <message>
        <source>dddd d MMMM yyyy</source>
        <translation>dddd d &apos;de&apos; MMMM &apos;de&apos; yyyy</translation>
    </message>
    <message>
        <source>dddd MMMM d, yyyy</source>
        <translation>dddd d &apos;de&apos; MMMM &apos;de&apos; yyyy</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <translation>d MMMM yyyy</translation>
    </message>
    <message>
        <source>MMMM d, yyyy</source>
        <translation>d MMMM yyyy</translation>
    </message>
    <message>
        <source>sun does not rise</source>
        <translation>el sol no sale</translation>
    </message>
    <message>
        <source>sun does not set</source>
        <translation>el sol no se pone</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>&lt; 1 in 1000</source>
        <translation>&lt; 1 de cada 1000</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::AskModel</name>
    <message>
        <source>The household is being read.</source>
        <translation>Se está leyendo el hogar.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::CalendarModel</name>
    <message>
        <source>plants</source>
        <translation>plantas</translation>
    </message>
    <message>
        <source>Say which file the calendar is to be.</source>
        <translation>Decir qué archivo será el calendario.</translation>
    </message>
    <message>
        <source>Write how many days from today the calendar is to hold, 1 to %1.</source>
        <translation>Escriba cuántos días desde hoy debe contener el calendario, de 1 a %1.</translation>
    </message>
    <message>
        <source>%1 is there already. Replace it where it is an older calendar of yours; else take another name.</source>
        <translation>%1 ya existe. Sustituirlo si es un calendario propio más antiguo; si no, tomar otro nombre.</translation>
    </message>
    <message>
        <source>Wrote %1 events to %2. It names your plants and spots; where your home is stands nowhere in it. Write it again whenever the plan changes: the same matters keep their names, so that they are moved, not doubled.</source>
        <translation>Se escribieron %1 citas en %2. Nombra las plantas y los sitios; no dice en ninguna parte dónde está el hogar. Escribirlo de nuevo cuando cambie el plan: lo mismo conserva su nombre, así que se mueve y no se duplica.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::CardModel</name>
    <message>
        <source>Say which file is to be written.</source>
        <translation>Decir qué archivo se ha de escribir.</translation>
    </message>
    <message>
        <source>%1 is there already. Replace it, or take another name.</source>
        <translation>%1 ya está. Sustituirlo, o tomar otro nombre.</translation>
    </message>
    <message>
        <source>Wrote the card to %1. Print it at 100 % and check with a ruler that its targets are 100 mm apart.</source>
        <translation>Tarjeta escrita en %1. Se imprime al 100 %; una regla muestra si sus marcas distan 100 mm.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::ChangesModel</name>
    <message>
        <source>Nothing is left to take back.</source>
        <translation>No queda nada que deshacer.</translation>
    </message>
    <message>
        <source>Nothing is left to do again.</source>
        <translation>No queda nada que rehacer.</translation>
    </message>
    <message>
        <source>Taken back: %1</source>
        <translation>Deshecho: %1</translation>
    </message>
    <message>
        <source>Counts again: %1</source>
        <translation>Vuelve a contar: %1</translation>
    </message>
    <message>
        <source>the last change in this window</source>
        <translation>el último cambio en esta ventana</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::ComparisonModel</name>
    <message>
        <source>They differ in none of these %1.</source>
        <translation>No difieren en ninguno de estos %1.</translation>
    </message>
    <message>
        <source>They differ in %1 of these %2, which are in bold. Why they differ, two plants cannot show.</source>
        <translation>Difieren en %1 de estos %2, que están en negrita. Por qué difieren no lo pueden mostrar dos plantas.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::CursorReading</name>
    <message>
        <source>%1 of day</source>
        <translation>%1 de día</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>at %1 %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>at its damage line, since %1</source>
        <translation>en su límite de daño, desde el %1</translation>
    </message>
    <message>
        <source>at its damage line, to %1</source>
        <translation>en su límite de daño, hasta el %1</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>none between</source>
        <translation>ninguna en camino</translation>
    </message>
    <message>
        <source>%1 between two lights</source>
        <translation>%1 entre dos luces</translation>
    </message>
    <message>
        <source>%1 at %2: %3.</source>
        <translation>%1, %2: %3.</translation>
    </message>
    <message>
        <source>%1 to %2 on %3: %4.</source>
        <comment>a plant, a spot, a date, the reason</comment>
        <translation>%1 a %2 el %3: %4.</translation>
    </message>
    <message>
        <source>step %1 of %2</source>
        <translation>escalón %1 de %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a step of hardening: what is done on it</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>indoors</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>Night low, middle</source>
        <translation>Mínima nocturna, centro</translation>
    </message>
    <message>
        <source>9 nights in 10</source>
        <translation>9 de cada 10 noches</translation>
    </message>
    <message>
        <source>At %1</source>
        <translation>En: %1</translation>
    </message>
    <message>
        <source>Frost this night</source>
        <translation>Helada esta noche</translation>
    </message>
    <message>
        <source>Frost after this night</source>
        <translation>Helada tras esta noche</translation>
    </message>
    <message>
        <source>… %1</source>
        <translation>… %1</translation>
    </message>
    <message>
        <source>Day length</source>
        <translation>Duración del día</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Sol</translation>
    </message>
    <message>
        <source>no rise or set</source>
        <translation>sin salida ni puesta</translation>
    </message>
    <message>
        <source>Daily light</source>
        <translation>Luz del día</translation>
    </message>
    <message>
        <source>%1 mol/m²</source>
        <translation>%1 mol/m²</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::DayTurn</name>
    <message>
        <source>It is %1 now; these pages are of %2.</source>
        <translation>Ya es %1; estas páginas son del %2.</translation>
    </message>
    <message>
        <source>The new day could not be begun here. Close this window and start the program again.</source>
        <translation>No se pudo empezar el nuevo día aquí. Cierre esta ventana e inicie el programa de nuevo.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::DoseModel</name>
    <message>
        <source>How much oil or soap</source>
        <translation>Cuánto aceite o jabón</translation>
    </message>
    <message>
        <source>How much oil or soap for %1</source>
        <translation>Cuánto aceite o jabón para %1</translation>
    </message>
    <message>
        <source>How much feed</source>
        <translation>Cuánto abono</translation>
    </message>
    <message>
        <source>How much feed for %1</source>
        <translation>Cuánto abono para %1</translation>
    </message>
    <message>
        <source>%1 holds %2</source>
        <translation>A %1 le cabe %2</translation>
    </message>
    <message>
        <source>1 quart</source>
        <translation>1 cuarto de galón</translation>
    </message>
    <message>
        <source>1 quart of water</source>
        <translation>1 cuarto de galón de agua</translation>
    </message>
    <message>
        <source>½ gallon</source>
        <translation>½ galón</translation>
    </message>
    <message>
        <source>½ gallon of water</source>
        <translation>½ galón de agua</translation>
    </message>
    <message>
        <source>1 gallon</source>
        <translation>1 galón</translation>
    </message>
    <message>
        <source>1 gallon of water</source>
        <translation>1 galón de agua</translation>
    </message>
    <message>
        <source>%1 of water</source>
        <translation>%1 de agua</translation>
    </message>
    <message>
        <source>Write percent of the water above 0 and at most 20, as the label has it; leaves are sprayed at 0.5 to 2.</source>
        <translation>Escriba el porcentaje del agua, más de 0 y 20 como mucho, como diga la etiqueta; para hojas son de 0,5 a 2.</translation>
    </message>
    <message>
        <source>Write the three numbers of the feed&apos;s label, such as 20-10-20: nitrogen, phosphate, potash.</source>
        <translation>Escriba los tres números de la etiqueta del abono, como 20-10-20: nitrógeno, fosfato, potasa.</translation>
    </message>
    <message>
        <source>The first number, nitrogen, is above 0 and the three are at most 100 together. A feed without nitrogen is measured by its label alone.</source>
        <translation>El primer número, el nitrógeno, es mayor que 0 y los tres suman 100 como mucho. Un abono sin nitrógeno se mide solo por su etiqueta.</translation>
    </message>
    <message>
        <source>A millilitre of feed weighs 0.2 to 3 g. Leave it blank where the label does not say.</source>
        <translation>Un mililitro de abono pesa de 0,2 a 3 g. Déjelo en blanco si la etiqueta no lo dice.</translation>
    </message>
    <message>
        <source>A level teaspoon of powder weighs 1 to 14 g. Leave it blank where you do not know.</source>
        <translation>Una cucharadita rasa de polvo pesa de 1 a 14 g. Déjelo en blanco si no lo sabe.</translation>
    </message>
    <message>
        <source>Its kind is not in the tables, so no strength is known. Write one: half of what the label says at first.</source>
        <translation>Su especie no está en las tablas, así que no se conoce la fuerza. Escriba una: al principio, la mitad de lo que diga la etiqueta.</translation>
    </message>
    <message>
        <source>Nitrogen lies within 1 and 2000 ppm; pots at home get 50 to 250.</source>
        <translation>El nitrógeno está entre 1 y 2000 ppm; las macetas de casa reciben de 50 a 250.</translation>
    </message>
    <message>
        <source>Write how much water, such as 1 gallon, 6 cups or 2 quarts, or take one of the cans.</source>
        <translation>Escriba cuánta agua, como 1 gallon, 6 cups o 2 quarts, o tome una de las regaderas.</translation>
    </message>
    <message>
        <source>Write how much water, such as 2 L or 500 ml, or take one of the cans.</source>
        <translation>Escriba cuánta agua, como 2 L o 500 ml, o tome una de las regaderas.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>A can or a spoon is called by 1 to 40 letters without digits, and not as a measure is (cup, L): such as blue can.</source>
        <translation>Una regadera o una cuchara se llama con 1 a 40 letras sin cifras, y no como una medida (cup, L): por ejemplo, regadera azul.</translation>
    </message>
    <message>
        <source>Write what it holds, such as 6 cups or 1/2 gallon; a spoon such as 2 tsp.</source>
        <translation>Escriba cuánto le cabe, como 6 cups o 1/2 gallon; una cuchara, como 2 tsp.</translation>
    </message>
    <message>
        <source>Write what it holds, such as 1.5 L; a spoon such as 7 ml.</source>
        <translation>Escriba cuánto le cabe, como 1,5 L; una cuchara, como 7 ml.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::EdgeByHand</name>
    <message>
        <source>%1 to %2 on %3</source>
        <translation>%1 a %2 el %3</translation>
    </message>
    <message>
        <source>: %1 of a harmful night after it, to %2</source>
        <translation>: %1 de una noche dañina después, hasta el %2</translation>
    </message>
    <message>
        <source>: %1 of a harmful night before it, since %2</source>
        <translation>: %1 de una noche dañina antes, desde el %2</translation>
    </message>
    <message>
        <source>%1. Letting go pins it; Esc leaves it.</source>
        <translation>%1. Soltar lo fija; Esc lo deja.</translation>
    </message>
    <message>
        <source>%1 is carried from %2 to %3 on %4, by hand</source>
        <translation>%1 pasa de %2 a %3 el %4, fijado a mano</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::EveningNotice</name>
    <message>
        <source>Nothing comes of it here: no desktop is reached from this window.</source>
        <translation>Aquí no sirve: desde esta ventana no se llega a ningún escritorio.</translation>
    </message>
    <message>
        <source>Nothing comes of it here: the desktop has nothing that shows notices.</source>
        <translation>Aquí no sirve: el escritorio no tiene nada que muestre avisos.</translation>
    </message>
    <message>
        <source>The desktop did not show it (%1); it is tried again this evening.</source>
        <translation>El escritorio no lo mostró (%1); se intenta de nuevo esta tarde.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::FeedingAskModel</name>
    <message>
        <source>The year is still being worked out; ask again in a moment.</source>
        <translation>El año aún se está calculando; preguntar de nuevo en un momento.</translation>
    </message>
    <message>
        <source>Write how many hours a day the lamps burn, 0 to 24.</source>
        <translation>Escribir cuántas horas al día lucen las lámparas, de 0 a 24.</translation>
    </message>
    <message>
        <source>The lamps’ light at the leaves lies between 0 and 2500 micromoles; leave it blank where you do not know.</source>
        <translation>La luz de las lámparas en las hojas está entre 0 y 2500 micromoles; dejarla en blanco si no se sabe.</translation>
    </message>
    <message>
        <source>Say how many hours a day the lamps burn as well.</source>
        <translation>Decir también cuántas horas al día lucen las lámparas.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::FirstStartModel</name>
    <message>
        <source>near %1, by the clock</source>
        <translation>cerca de %1, según el reloj</translation>
    </message>
    <message>
        <source>where the pots stand</source>
        <translation>donde están las macetas</translation>
    </message>
    <message>
        <source>by its coordinates</source>
        <translation>por sus coordenadas</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>omitido</translation>
    </message>
    <message>
        <source>sills, shelves, balcony</source>
        <translation>alféizares, estantes, balcón</translation>
    </message>
    <message>
        <source>1 spot</source>
        <translation>1 sitio</translation>
    </message>
    <message>
        <source>%1 spots</source>
        <translation>%1 sitios</translation>
    </message>
    <message>
        <source>a few are enough to begin</source>
        <translation>con unas pocas basta para empezar</translation>
    </message>
    <message>
        <source>1 plant</source>
        <translation>1 planta</translation>
    </message>
    <message>
        <source>%1 plants</source>
        <translation>%1 plantas</translation>
    </message>
    <message>
        <source>This computer’s clock tells no place, so the year needs one.</source>
        <translation>El reloj de este equipo no dice ningún lugar, así que el año necesita uno.</translation>
    </message>
    <message>
        <source>The year is then that of %1, by this computer’s clock, until you change it.</source>
        <translation>El año es entonces el de %1, según el reloj de este equipo, hasta que se cambie.</translation>
    </message>
    <message>
        <source>Spots can be added later under Home. Plants then stand nowhere yet.</source>
        <translation>Los sitios se pueden añadir después en Casa. Las plantas aún no estarán en ninguno.</translation>
    </message>
    <message>
        <source>Spots can be added later under Home.</source>
        <translation>Los sitios se pueden añadir después en Casa.</translation>
    </message>
    <message>
        <source>Plants can be added later under Plants.</source>
        <translation>Las plantas se pueden añadir después en Plantas.</translation>
    </message>
    <message>
        <source>Without a place there is no year, and this computer’s clock tells none. Type the nearest town, or look at the example household.</source>
        <translation>Sin lugar no hay año, y el reloj de este equipo no dice ninguno. Escribir la población más cercana, o ver el hogar de ejemplo.</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Casa</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::HomeDataModel</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Nights, frost, warmth, rain</source>
        <translation>Noches, heladas, calor, lluvia</translation>
    </message>
    <message>
        <source>Coast lines of the map</source>
        <translation>Líneas de costa del mapa</translation>
    </message>
    <message>
        <source>Natural Earth, public domain.</source>
        <translation>Natural Earth, dominio público.</translation>
    </message>
    <message>
        <source>Towns, search by name</source>
        <translation>Poblaciones, búsqueda por nombre</translation>
    </message>
    <message>
        <source>GeoNames, geonames.org, CC BY 4.0; a selection of its towns.</source>
        <translation>GeoNames, geonames.org, CC BY 4.0; una selección de sus poblaciones.</translation>
    </message>
    <message>
        <source>What plants, seeds and pests need</source>
        <translation>Lo que necesitan plantas, semillas y plagas</translation>
    </message>
    <message>
        <source>%1 publications, listed below; a figure without one is marked as common practice where it stands.</source>
        <translation>%1 publicaciones, listadas abajo; una cifra sin fuente está marcada en su lugar como práctica común.</translation>
    </message>
    <message>
        <source>Sun, light, water, nights, dates</source>
        <translation>Sol, luz, agua, noches, fechas</translation>
    </message>
    <message>
        <source>Worked out by this program; formulas with their sources and measured errors come with it (docs/methods).</source>
        <translation>Calculados por este programa; las fórmulas con sus fuentes y errores medidos vienen con él (docs/methods).</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 of %2 photographs</source>
        <translation>%1 de %2 fotografías</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Getting ready</source>
        <translation>Preparando</translation>
    </message>
    <message>
        <source>%1 read back and compared</source>
        <translation>%1 releídos y comparados</translation>
    </message>
    <message>
        <source>%1 written</source>
        <translation>%1 escritos</translation>
    </message>
    <message>
        <source>%1 compared</source>
        <translation>%1 comparados</translation>
    </message>
    <message>
        <source>%1 of %2 photographs copied</source>
        <translation>%1 de %2 fotografías copiadas</translation>
    </message>
    <message>
        <source>%1 unpacked and compared</source>
        <translation>%1 extraídos y comparados</translation>
    </message>
    <message>
        <source>Stopped. Nothing was changed.</source>
        <translation>Detenido. No se cambió nada.</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written, and nothing half done is left.</source>
        <translation>Detenido. No se escribió nada, y no queda nada a medias.</translation>
    </message>
    <message>
        <source>Nothing was written.</source>
        <translation>No se escribió nada.</translation>
    </message>
    <message>
        <source>The demonstration lies in memory; there is nothing to back up.</source>
        <translation>La demostración está en la memoria; no hay nada que copiar.</translation>
    </message>
    <message>
        <source>Say which file the backup is to be.</source>
        <translation>Indicar qué archivo será la copia.</translation>
    </message>
    <message>
        <source>%1 is there already. Take another name, or replace it once the new one is whole.</source>
        <translation>%1 ya existe. Tomar otro nombre, o sustituirlo cuando el nuevo esté completo.</translation>
    </message>
    <message>
        <source>Wrote %1, %2: the journal and %3, read back and compared. Keep it where you would keep a key.</source>
        <translation>Se escribió %1, %2: el diario y %3, releídos y comparados. Guárdese como se guarda una llave.</translation>
    </message>
    <message>
        <source> %1 that the journal names are not in the folder and so not in the backup; look through the folder for which.</source>
        <translation> %1 que nombra el diario no están en la carpeta y por tanto tampoco en la copia; revisar la carpeta para ver cuáles.</translation>
    </message>
    <message>
        <source> Left out, since no archive takes its name or it is a link: %1.</source>
        <translation> Omitidos, porque ningún archivo comprimido admite su nombre o son enlaces: %1.</translation>
    </message>
    <message>
        <source>The demonstration lies in memory; there is no folder to look through.</source>
        <translation>La demostración está en la memoria; no hay carpeta que revisar.</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source>%1: %2. %3</source>
        <translation>%1: %2. %3</translation>
    </message>
    <message>
        <source>no photograph to compare</source>
        <translation>ninguna fotografía que comparar</translation>
    </message>
    <message>
        <source>%1 compared with their digests</source>
        <translation>%1 comparadas con sus sumas de comprobación</translation>
    </message>
    <message>
        <source>The household is sound: the journal and its references hold, %1.</source>
        <translation>El hogar está sano: el diario y sus referencias son correctos, %1.</translation>
    </message>
    <message>
        <source>One thing is lost or wrong; nothing was changed. The journal was looked at, %1.</source>
        <translation>Una cosa falta o está mal; no se cambió nada. Se revisó el diario, %1.</translation>
    </message>
    <message>
        <source>%1 things are lost or wrong; nothing was changed. The journal was looked at, %2.</source>
        <translation>%1 cosas faltan o están mal; no se cambió nada. Se revisó el diario, %2.</translation>
    </message>
    <message>
        <source>Say which backup is to be brought back.</source>
        <translation>Indicar qué copia hay que recuperar.</translation>
    </message>
    <message>
        <source>Say into which folder; it must be new or empty.</source>
        <translation>Indicar en qué carpeta; debe ser nueva o estar vacía.</translation>
    </message>
    <message>
        <source>The household as it was on %1 is in %2: the journal and %3, each compared with the backup’s list.</source>
        <translation>El hogar tal como estaba el %1 está en %2: el diario y %3, cada uno comparado con la lista de la copia.</translation>
    </message>
    <message>
        <source>The household is in %1: the journal and %2, each compared with the backup’s list.</source>
        <translation>El hogar está en %1: el diario y %2, cada uno comparado con la lista de la copia.</translation>
    </message>
    <message>
        <source> What is open here is as it was.</source>
        <translation> Lo que está abierto aquí sigue como estaba.</translation>
    </message>
    <message>
        <source>  %1 of the backup belongs to no household and was left out.</source>
        <translation>  %1 de la copia no es de ningún hogar y se omitió.</translation>
    </message>
    <message>
        <source>The demonstration lies in memory; there is nothing to write out.</source>
        <translation>La demostración está en la memoria; no hay nada que escribir.</translation>
    </message>
    <message>
        <source>Wrote %1 tables with %2 rows and %3 to %4. A leading apostrophe marks a text that a spreadsheet could take for a formula.</source>
        <translation>Se escribieron %1 tablas con %2 filas y %3 en %4. Un apóstrofo inicial marca un texto que una hoja de cálculo podría tomar por una fórmula.</translation>
    </message>
    <message>
        <source>Say which folder has the tables.</source>
        <translation>Decir qué carpeta tiene las tablas.</translation>
    </message>
    <message>
        <source>Made the household %1 of %2 tables with %3 rows and %4.</source>
        <translation>Se hizo el hogar %1 de %2 tablas con %3 filas y %4.</translation>
    </message>
    <message>
        <source>What is open here is as it was.</source>
        <translation>Lo que está abierto aquí sigue como estaba.</translation>
    </message>
    <message>
        <source>Left out, since they name rows that are not there: %1.</source>
        <translation>Omitidas, porque nombran filas que no están: %1.</translation>
    </message>
    <message>
        <source>Named by the journal and not there: %1. Put them beside the tables and read them again.</source>
        <translation>Las nombra el diario y no están: %1. Ponerlas junto a las tablas y leerlas otra vez.</translation>
    </message>
    <message>
        <source>Passed over, since no table is called so: %1.</source>
        <translation>Pasados por alto, porque ninguna tabla se llama así: %1.</translation>
    </message>
    <message>
        <source>No second window could be started. Close this one and start the program with the folder %1.</source>
        <translation>No se pudo iniciar una segunda ventana. Cierre esta e inicie el programa con la carpeta %1.</translation>
    </message>
    <message>
        <source>under %1 MB</source>
        <translation>menos de %1 MB</translation>
    </message>
    <message>
        <source>%1 MB</source>
        <translation>%1 MB</translation>
    </message>
    <message>
        <source>%1 GB</source>
        <translation>%1 GB</translation>
    </message>
    <message>
        <source>no photograph</source>
        <translation>ninguna fotografía</translation>
    </message>
    <message>
        <source>one photograph</source>
        <translation>una fotografía</translation>
    </message>
    <message>
        <source>%1 photographs</source>
        <translation>%1 fotografías</translation>
    </message>
    <message>
        <source>Last backup: %1, %2. Nothing was entered since.</source>
        <translation>Última copia: %1, %2. Desde entonces no se anotó nada.</translation>
    </message>
    <message>
        <source>Last backup: %1, %2. One thing was entered since.</source>
        <translation>Última copia: %1, %2. Desde entonces se anotó una cosa.</translation>
    </message>
    <message>
        <source>Last backup: %1, %2. %3 things were entered since.</source>
        <translation>Última copia: %1, %2. Desde entonces se anotaron %3 cosas.</translation>
    </message>
    <message>
        <source>No backup was made from this window yet.</source>
        <translation>Aún no se ha hecho ninguna copia desde esta ventana.</translation>
    </message>
    <message>
        <source>Last backup from this window: %1, %2.</source>
        <translation>Última copia desde esta ventana: %1, %2.</translation>
    </message>
    <message>
        <source>No backup of this household was made from this window yet.</source>
        <translation>Aún no se ha hecho ninguna copia de este hogar desde esta ventana.</translation>
    </message>
    <message>
        <source>%1 things were entered since the last backup.</source>
        <translation>Desde la última copia se anotaron %1 cosas.</translation>
    </message>
    <message>
        <source>The last backup is %1 days old.</source>
        <translation>La última copia tiene %1 días.</translation>
    </message>
    <message>
        <source>The last backup is %1 weeks old.</source>
        <translation>La última copia tiene %1 semanas.</translation>
    </message>
    <message>
        <source>%1-tables</source>
        <translation>tablas-%1</translation>
    </message>
    <message>
        <source>It holds where your home is, as exactly as you gave it</source>
        <translation>Contiene dónde está la casa, con la exactitud con que se indicó</translation>
    </message>
    <message>
        <source>%1; none of the photographs says where it was taken.</source>
        <translation>%1; ninguna de las fotografías dice dónde se tomó.</translation>
    </message>
    <message>
        <source>%1, and %2 in which the camera wrote where it was taken.</source>
        <translation>%1, y %2 en que la cámara escribió dónde se tomó.</translation>
    </message>
    <message>
        <source>The folder lies on a network drive. Have it open on one machine at a time, or keep it on this machine’s own disk and copy it by backup.</source>
        <translation>La carpeta está en una unidad de red. Abrirla en un solo equipo a la vez, o tenerla en el disco propio y copiarla con copias de seguridad.</translation>
    </message>
    <message>
        <source>The folder lies on a drive that a program provides, perhaps a synced or a remote one. Keep the household on this machine’s own disk and let backups be synced instead.</source>
        <translation>La carpeta está en una unidad que ofrece un programa, quizá sincronizada o remota. Tener el hogar en el disco propio y dejar que se sincronicen las copias de seguridad.</translation>
    </message>
    <message>
        <source>Plants</source>
        <translation>Plantas</translation>
    </message>
    <message>
        <source>Spots</source>
        <translation>Sitios</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Sucesos</translation>
    </message>
    <message>
        <source>Measurements</source>
        <translation>Mediciones</translation>
    </message>
    <message>
        <source>Nights logged</source>
        <translation>Noches anotadas</translation>
    </message>
    <message>
        <source>Photographs</source>
        <translation>Fotografías</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>The journal</source>
        <translation>El diario</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::HomeJournalModel</name>
    <message>
        <source>Nothing is in the journal yet.</source>
        <translation>En el diario aún no hay nada.</translation>
    </message>
    <message>
        <source>One line.</source>
        <translation>Una línea.</translation>
    </message>
    <message>
        <source>%1 lines, the newest first.</source>
        <translation>%1 líneas, la más reciente primero.</translation>
    </message>
    <message>
        <source>None of %1 lines has these words.</source>
        <translation>Ninguna de %1 líneas tiene estas palabras.</translation>
    </message>
    <message>
        <source>Lines with these words: %1 of %2.</source>
        <translation>Líneas con estas palabras: %1 de %2.</translation>
    </message>
    <message>
        <source>the whole household</source>
        <translation>toda la casa</translation>
    </message>
    <message>
        <source>The label and local advice come first, and say how long to keep away.</source>
        <translation>La etiqueta y los consejos locales van primero y dicen cuánto tiempo hay que mantenerse lejos.</translation>
    </message>
    <message>
        <source>Nothing that it may have touched is eaten. Plants that stood there that day get no feed and are not hardened for a while. Each one that was hit is logged on its own page: from there its course begins.</source>
        <translation>Nada que haya podido tocar se come. Las plantas que estaban allí ese día no reciben abono ni se endurecen por un tiempo. Cada una que fue alcanzada se anota en su propia página: desde ahí empieza su seguimiento.</translation>
    </message>
    <message>
        <source>Nothing that it may have touched is eaten. It names no spot, so it counts for the plants that stood outdoors that day: they get no feed and are not hardened for a while. Each one that was hit is logged on its own page: from there its course begins.</source>
        <translation>Nada que haya podido tocar se come. No se nombra ningún sitio, así que vale para las plantas que ese día estaban al aire libre: no reciben abono ni se endurecen por un tiempo. Cada una que fue alcanzada se anota en su propia página: desde ahí empieza su seguimiento.</translation>
    </message>
    <message>
        <source>Every plant that stood there that day is suspect from then on: it is looked over, and set apart. Where the pest is on a plant itself, log it on that plant’s own page: from there it counts as infested and its treatment begins.</source>
        <translation>Toda planta que estuvo allí ese día es sospechosa desde entonces: se revisa y se aparta. Si la plaga está en una planta misma, se anota en su propia página: desde ahí cuenta como infestada y empieza su tratamiento.</translation>
    </message>
    <message>
        <source>It counts for every plant that stood there that night: one whose line was reached is looked over in the days after, and gets no feed until new growth is logged.</source>
        <translation>Cuenta para toda planta que estuvo allí esa noche: la que llegó a su límite se revisa en los días siguientes y no recibe abono hasta que se anote crecimiento nuevo.</translation>
    </message>
    <message>
        <source>It names no spot, so it counts for every plant that stood outdoors that night: one whose line was reached is looked over in the days after, and gets no feed until new growth is logged.</source>
        <translation>No nombra ningún lugar, así que cuenta para toda planta que estuvo fuera esa noche: la que llegó a su límite se revisa en los días siguientes y no recibe abono hasta que se anote crecimiento nuevo.</translation>
    </message>
    <message>
        <source>Plants that stood there that day get no feed until they are released. A plant counts as set apart from pests where that is logged on its own page.</source>
        <translation>Las plantas que estuvieron allí ese día no reciben abono hasta que se liberen. Una planta cuenta como apartada por plagas cuando eso se anota en su propia página.</translation>
    </message>
    <message>
        <source>Say where it happened, and what.</source>
        <translation>Decir dónde pasó y qué.</translation>
    </message>
    <message>
        <source>Write how many days ago it happened, 0 to %1.</source>
        <translation>Escribir hace cuántos días pasó, de 0 a %1.</translation>
    </message>
    <message>
        <source>Write what is to be kept.</source>
        <translation>Escribir lo que se va a guardar.</translation>
    </message>
    <message>
        <source>Kept: %1, %2. Undo above the pages takes it back.</source>
        <translation>Guardado: %1, %2. Deshacer, encima de las páginas, lo anula.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::HomeModel</name>
    <message>
        <source>%1: %2 to %3 moles of light a day through the year</source>
        <translation>%1: de %2 a %3 moles de luz al día a lo largo del año</translation>
    </message>
    <message>
        <source>9 days in 10: %1 in %2, %3 in %4</source>
        <translation>9 de cada 10 días: %1 en %2, %3 en %4</translation>
    </message>
    <message>
        <source>Beside it %1: %2 to %3</source>
        <translation>Al lado, %1: de %2 a %3</translation>
    </message>
    <message>
        <source>The line is the mean of the month. Of ten days nine lie within the band, which is what clouds change; it is told from the month’s mean (Bendt, Collares-Pereira and Rabl 1981). Held against nine months that were measured in one town, its brightest days were 6 % too bright; in the tropics days differ less than it says.</source>
        <translation>La línea es la media del mes. De diez días, nueve quedan dentro de la banda: es lo que cambian las nubes, calculado a partir de la media del mes (Bendt, Collares-Pereira y Rabl 1981). Frente a nueve meses medidos en una ciudad, los días más claros salían un 6 % demasiado claros; en los trópicos los días difieren menos.</translation>
    </message>
    <message>
        <source>What clouds change from day to day is not told of light that does not rise towards the summer, as under lamps.</source>
        <translation>Lo que cambian las nubes de un día a otro no se dice de una luz que no aumenta hacia el verano, como bajo lámparas.</translation>
    </message>
    <message>
        <source>%1 against the open air</source>
        <translation>%1 respecto al aire libre</translation>
    </message>
    <message>
        <source>%1; %2: %3</source>
        <translation>%1; %2: %3</translation>
    </message>
    <message>
        <source>Write how many days ago the night ended, 0 to %1.</source>
        <translation>Escribir hace cuántos días terminó la noche, de 0 a %1.</translation>
    </message>
    <message>
        <source>Kept: %1 at %2, the night to %3. The same night logged again takes its place; Undo above the pages takes it back.</source>
        <translation>Guardado: %1 en %2, la noche hasta el %3. La misma noche anotada otra vez ocupa su lugar; Deshacer, encima de las páginas, la anula.</translation>
    </message>
    <message>
        <source>Say which file has the readings.</source>
        <translation>Decir qué archivo tiene las lecturas.</translation>
    </message>
    <message>
        <source>Kept 1 night of the file. The same night logged again takes its place.</source>
        <translation>Guardada 1 noche del archivo. La misma noche anotada otra vez ocupa su lugar.</translation>
    </message>
    <message>
        <source>Kept %1 nights of the file; one Undo above the pages takes them back. The same nights logged again take their place.</source>
        <translation>Guardadas %1 noches del archivo; un solo Deshacer sobre las páginas las quita. Las mismas noches anotadas otra vez ocupan su lugar.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::HomePeopleModel</name>
    <message>
        <source>the %1</source>
        <translation>%1</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>child</source>
        <translation>niño</translation>
    </message>
    <message>
        <source>cat</source>
        <translation>gato</translation>
    </message>
    <message>
        <source>dog</source>
        <translation>perro</translation>
    </message>
    <message>
        <source>other animal</source>
        <translation>otro animal</translation>
    </message>
    <message>
        <source>%1, %2: reaches no spot</source>
        <translation>%1, %2: no alcanza ningún sitio</translation>
    </message>
    <message>
        <source>%1, %2: reaches %3</source>
        <translation>%1, %2: alcanza %3</translation>
    </message>
    <message>
        <source>Spots marked as within reach, though nobody on the list gets at them: %1.</source>
        <translation>Sitios marcados como al alcance, aunque nadie de la lista llega a ellos: %1.</translation>
    </message>
    <message>
        <source>whoever comes there</source>
        <translation>quien pase por allí</translation>
    </message>
    <message>
        <source>%1 at %2, within reach of %3. %4. %5 %6</source>
        <translation>%1 en %2, al alcance de %3. %4. %5 %6</translation>
    </message>
    <message>
        <source>Nobody is listed, and no spot is marked as within reach.</source>
        <translation>No hay nadie en la lista, y ningún sitio está marcado como al alcance.</translation>
    </message>
    <message>
        <source>No plant that is known to hurt stands within their reach. One that is not known to may hurt all the same.</source>
        <translation>Ninguna planta que se sepa dañina está a su alcance. Una de la que no se sabe nada puede dañar igualmente.</translation>
    </message>
    <message>
        <source>One plant that can hurt stands within reach.</source>
        <translation>Una planta que puede hacer daño está al alcance.</translation>
    </message>
    <message>
        <source>%1 plants that can hurt stand within reach.</source>
        <translation>%1 plantas que pueden hacer daño están al alcance.</translation>
    </message>
    <message>
        <source>A cat is on the list: %1 can kill it, wherever the plant stands. %2</source>
        <translation>Hay un gato en la lista: %1 puede matarlo, esté donde esté la planta. %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: reaches no spot</source>
        <translation>%1: no alcanza ningún sitio</translation>
    </message>
    <message>
        <source>%1: reaches %2</source>
        <translation>%1: alcanza %2</translation>
    </message>
    <message>
        <source>The name is longer than %1 letters; a shorter one is enough.</source>
        <translation>El nombre tiene más de %1 letras; basta uno más corto.</translation>
    </message>
    <message>
        <source>%1 is on the list. Say which spots are within reach.</source>
        <translation>%1 está en la lista. Indicar qué sitios están a su alcance.</translation>
    </message>
    <message>
        <source>%1 is now called %2.</source>
        <translation>%1 se llama ahora %2.</translation>
    </message>
    <message>
        <source>%1 reaches %2; plans made from now on heed it.</source>
        <translation>%1 alcanza %2; los planes desde ahora lo tienen en cuenta.</translation>
    </message>
    <message>
        <source>%1 does not reach %2; plans made from now on heed it.</source>
        <translation>%1 no alcanza %2; los planes desde ahora lo tienen en cuenta.</translation>
    </message>
    <message>
        <source>%1: off the list</source>
        <translation>%1: fuera de la lista</translation>
    </message>
    <message>
        <source>%1 is off the list.</source>
        <translation>%1 está fuera de la lista.</translation>
    </message>
    <message>
        <source>Taken back: %1</source>
        <translation>Deshecho: %1</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::HomeRecordModel</name>
    <message>
        <source>A record is one file, and %1 were let go here. Nothing was taken in.</source>
        <translation>Un registro es un solo archivo, y aquí se soltaron %1. No se incorporó nada.</translation>
    </message>
    <message>
        <source>Only a file of this computer can be taken in. Save the record first. Nothing was taken in.</source>
        <translation>Solo puede incorporarse un archivo de este ordenador. Guardar primero el registro. No se incorporó nada.</translation>
    </message>
    <message>
        <source>Say which file holds the record.</source>
        <translation>Indicar qué archivo contiene el registro.</translation>
    </message>
    <message>
        <source>“%1” is no height of a place; write it as %2.</source>
        <translation>«%1» no es la altura de un lugar; escribirla como %2.</translation>
    </message>
    <message>
        <source>460</source>
        <translation>460</translation>
    </message>
    <message>
        <source>140</source>
        <translation>140</translation>
    </message>
    <message>
        <source>“%1” is no position; write both coordinates, such as 48.2, 20.5.</source>
        <translation>«%1» no es una posición; escribir ambas coordenadas, como 48.2, 20.5.</translation>
    </message>
    <message>
        <source>The head line of the file has no columns date, low and high (rain may be missing). If it is a table of days that calls them otherwise, write its names below in the order date, low, high, rain, such as Day,Min,Max,Rain. Nothing was taken in.</source>
        <translation>La primera línea del archivo no tiene las columnas date, low y high (rain puede faltar). Si es una tabla de días que las llama de otro modo, escriba sus nombres abajo en el orden fecha, mínima, máxima, lluvia, como Day,Min,Max,Rain. No se tomó nada.</translation>
    </message>
    <message>
        <source>It is not plausible for this place: %1. Nothing was taken in.</source>
        <translation>No es plausible para este lugar: %1. No se incorporó nada.</translation>
    </message>
    <message>
        <source>Taken in: %1.</source>
        <translation>Incorporado: %1.</translation>
    </message>
    <message>
        <source>Removed: %1. The shipped stations answer again.</source>
        <translation>Quitado: %1. Vuelven a responder las estaciones incluidas.</translation>
    </message>
    <message>
        <source>%1 is there again.</source>
        <translation>%1 está de nuevo.</translation>
    </message>
    <message>
        <source>Taken out again; the shipped stations answer.</source>
        <translation>Quitado de nuevo; responden las estaciones incluidas.</translation>
    </message>
    <message>
        <source>Removed again; the shipped stations answer.</source>
        <translation>Retirado de nuevo; responden las estaciones incluidas.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::KindFilter</name>
    <message>
        <source>summer flowers</source>
        <translation>flores de verano</translation>
    </message>
    <message>
        <source>bulbs and tubers</source>
        <translation>bulbos y tubérculos</translation>
    </message>
    <message>
        <source>insect eaters</source>
        <translation>carnívoras</translation>
    </message>
    <message>
        <source>citrus and fruit</source>
        <translation>cítricos y frutales</translation>
    </message>
    <message>
        <source>ferns</source>
        <translation>helechos</translation>
    </message>
    <message>
        <source>flowering pot plants</source>
        <translation>plantas de flor</translation>
    </message>
    <message>
        <source>foliage plants</source>
        <translation>plantas de hoja</translation>
    </message>
    <message>
        <source>herbs</source>
        <translation>hierbas</translation>
    </message>
    <message>
        <source>orchids</source>
        <translation>orquídeas</translation>
    </message>
    <message>
        <source>palms</source>
        <translation>palmeras</translation>
    </message>
    <message>
        <source>hardy porch plants</source>
        <translation>plantas de porche resistentes</translation>
    </message>
    <message>
        <source>tender porch plants</source>
        <translation>plantas de porche delicadas</translation>
    </message>
    <message>
        <source>succulents</source>
        <translation>suculentas</translation>
    </message>
    <message>
        <source>vegetables</source>
        <translation>hortalizas</translation>
    </message>
    <message>
        <source>a figure of their own</source>
        <translation>una cifra propia</translation>
    </message>
    <message>
        <source>a cold-store test</source>
        <translation>un ensayo en cámara fría</translation>
    </message>
    <message>
        <source>a hardiness class</source>
        <translation>una clase de rusticidad</translation>
    </message>
    <message>
        <source>a figure of their group</source>
        <translation>una cifra de su grupo</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>práctica común</translation>
    </message>
    <message>
        <source>all groups</source>
        <translation>todos los grupos</translation>
    </message>
    <message>
        <source>whatever it is</source>
        <translation>lo que sea</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::KindModel</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Also called %1.</source>
        <translation>En inglés: %1.</translation>
    </message>
    <message>
        <source>%1 In English: %2.</source>
        <translation>%1 En inglés: %2.</translation>
    </message>
    <message>
        <source>Where it grows well, heat, light, growth and rest: %1.</source>
        <translation>Dónde crece bien, calor, luz, crecimiento y reposo: %1.</translation>
    </message>
    <message>
        <source>Poison: %1.</source>
        <translation>Veneno: %1.</translation>
    </message>
    <message>
        <source>Water, feed, repotting, and light in moles by its class: common practice, no source.</source>
        <translation>Agua, abono, trasplante y la luz en moles según su clase: práctica común, sin fuente.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::LightReadingModel</name>
    <message>
        <source>lux</source>
        <translation>lux</translation>
    </message>
    <message>
        <source>foot-candles</source>
        <translation>bujías-pie</translation>
    </message>
    <message>
        <source>µmol per m² and s</source>
        <translation>µmol por m² y s</translation>
    </message>
    <message>
        <source>moles a day</source>
        <translation>moles al día</translation>
    </message>
    <message>
        <source>daylight</source>
        <translation>luz del día</translation>
    </message>
    <message>
        <source>a white LED lamp</source>
        <translation>una lámpara LED blanca</translation>
    </message>
    <message>
        <source>a fluorescent tube</source>
        <translation>un tubo fluorescente</translation>
    </message>
    <message>
        <source>a high-pressure sodium lamp</source>
        <translation>una lámpara de sodio de alta presión</translation>
    </message>
    <message>
        <source>none needed</source>
        <translation>no hace falta</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>too weak</source>
        <translation>demasiado débil</translation>
    </message>
    <message>
        <source>A reading is a number from 0 to %1.</source>
        <translation>Una lectura es un número de 0 a %1.</translation>
    </message>
    <message>
        <source>Hours of a day lie above 0 and up to 24.</source>
        <translation>Las horas de un día están por encima de 0 y llegan a 24.</translation>
    </message>
    <message>
        <source>Spread over %1 h that is %2 µmol per m² and s: a meter reads %3 lux, or %4 foot-candles.</source>
        <translation>Repartido en %1 h son %2 µmol por m² y s: un medidor marca %3 lux, o %4 bujías-pie.</translation>
    </message>
    <message>
        <source>%1 µmol per m² and s; over %2 h they make %3 moles of light a day.</source>
        <translation>%1 µmol por m² y s; en %2 h suman %3 moles de luz al día.</translation>
    </message>
    <message>
        <source>White LEDs differ by their colour: right to about 15 %.</source>
        <translation>Las LED blancas difieren según su color: exacto en un 15 %.</translation>
    </message>
    <message>
        <source>The plan reckons with %1 moles a day at %2 in %3.</source>
        <translation>El plan cuenta con %1 moles al día en %2 en %3.</translation>
    </message>
    <message>
        <source>Write the day’s light that is wanted too.</source>
        <translation>Escribir también la luz del día que se desea.</translation>
    </message>
    <message>
        <source>A day’s light lies above 0 and up to 80 moles.</source>
        <translation>La luz de un día está por encima de 0 y llega a 80 moles.</translation>
    </message>
    <message>
        <source>Write the lamp’s light at the leaves too.</source>
        <translation>Escribir también la luz de la lámpara en las hojas.</translation>
    </message>
    <message>
        <source>A lamp’s light at the leaves lies above 0 and up to 3000 µmol.</source>
        <translation>La luz de una lámpara en las hojas está por encima de 0 y llega a 3000 µmol.</translation>
    </message>
    <message>
        <source>On top of what was read, this lamp is too weak.</source>
        <translation>Para añadir a lo medido, esta lámpara es demasiado débil.</translation>
    </message>
    <message>
        <source>On top of what was read, the lamp burns %1 h a day.</source>
        <translation>Además de lo medido, la lámpara luce %1 h al día.</translation>
    </message>
    <message>
        <source>What was read is enough without a lamp.</source>
        <translation>Lo medido basta sin lámpara.</translation>
    </message>
    <message>
        <source>%1: %2 moles a day, lamp: %3</source>
        <translation>%1: %2 moles al día, lámpara: %3</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::LotForm</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Which crop it is is missing, such as tomato.</source>
        <translation>Falta qué cultivo es, como tomate.</translation>
    </message>
    <message>
        <source>No crop here is called “%1”, nor nearly so. Write another name of it, or its botanical name.</source>
        <translation>Ningún cultivo aquí se llama «%1» ni algo parecido. Escribir otro nombre, o el botánico.</translation>
    </message>
    <message>
        <source>No crop here is called “%1”; did you mean %2?</source>
        <translation>Ningún cultivo aquí se llama «%1»; ¿quizá %2?</translation>
    </message>
    <message>
        <source>There is a lot “%1” already; give this one another name.</source>
        <translation>Ya hay un lote «%1»; dar otro nombre a este.</translation>
    </message>
    <message>
        <source>The year on the packet lies from 1950 to %1, or is left blank.</source>
        <translation>El año del sobre está entre 1950 y %1, o se deja en blanco.</translation>
    </message>
    <message>
        <source>Give a percentage above 0, up to 100, or leave it blank.</source>
        <translation>Dar un porcentaje mayor que 0 y hasta 100, o dejarlo en blanco.</translation>
    </message>
    <message>
        <source>The seeds of the packet are a whole number from 1, or are left blank.</source>
        <translation>Las semillas del sobre son un número entero desde 1, o se dejan en blanco.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::MeasureModel</name>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>corner %1 of %2</source>
        <translation>esquina %1 de %2</translation>
    </message>
    <message>
        <source>next corner</source>
        <translation>esquina siguiente</translation>
    </message>
    <message>
        <source>point %1</source>
        <translation>punto %1</translation>
    </message>
    <message>
        <source>point %1, not set</source>
        <translation>punto %1, sin poner</translation>
    </message>
    <message>
        <source>Set A, B, 1 and 2 first, and say how long A to B is.</source>
        <translation>Poner antes A, B, 1 y 2, e indicar cuánto hay de A a B.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>Last reading, %1</source>
        <translation>Última medición, %1</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambio</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 puntos</translation>
    </message>
    <message>
        <source>real: above %1</source>
        <translation>real: por encima de %1</translation>
    </message>
    <message>
        <source>real above %1</source>
        <translation>real por encima de %1</translation>
    </message>
    <message>
        <source>Set A and B on something of known size, then 1 and 2 on the plant.</source>
        <translation>Poner A y B sobre algo de tamaño conocido, y luego 1 y 2 sobre la planta.</translation>
    </message>
    <message>
        <source>as the camera sees it; 9 in 10: %1 to %2</source>
        <translation>como la ve la cámara; 9 de cada 10: %1 a %2</translation>
    </message>
    <message>
        <source>Try %1</source>
        <translation>Intento %1</translation>
    </message>
    <message>
        <source>Mean of %1</source>
        <translation>Media de %1</translation>
    </message>
    <message>
        <source>± %1</source>
        <translation>± %1</translation>
    </message>
    <message>
        <source>A second try shows how far the marks can be trusted: set all four points again. The error here is that of marks set to within two pixels of the photograph, and no nearer than a pixel of the screen; arrow keys set them finer.</source>
        <translation>Un segundo intento muestra hasta dónde se puede confiar en las marcas: volver a poner los cuatro puntos. El error aquí es el de marcas puestas con dos píxeles de la foto de margen, y nunca menos de un píxel de la pantalla; las flechas las ponen con más precisión.</translation>
    </message>
    <message>
        <source>Another try would bring the error to %1.</source>
        <translation>Otro intento llevaría el error a %1.</translation>
    </message>
    <message>
        <source>Set corners round something that is grey in truth and stands in the plant’s light, such as the patch of the card; three at least. The colours of the whole photograph are set by it.</source>
        <translation>Poner esquinas alrededor de algo que es gris de verdad y está en la luz de la planta, como el parche de la tarjeta; tres como mínimo. Con él se ajustan los colores de toda la foto.</translation>
    </message>
    <message>
        <source>The patch is set. Under Green share, set corners round the leaves next.</source>
        <translation>El parche está puesto. Ahora, en Parte verde, poner esquinas alrededor de las hojas.</translation>
    </message>
    <message>
        <source>Set corners round the leaves, three at least; keep clear of pot and soil.</source>
        <translation>Poner esquinas alrededor de las hojas, al menos tres; dejando fuera maceta y tierra.</translation>
    </message>
    <message>
        <source>of the leaves %1 yellow or brown</source>
        <translation>de las hojas %1 amarillo o marrón</translation>
    </message>
    <message>
        <source>%1 green</source>
        <translation>%1 verde</translation>
    </message>
    <message>
        <source>of the outline</source>
        <translation>del contorno</translation>
    </message>
    <message>
        <source>of the outline; %1</source>
        <translation>del contorno; %1</translation>
    </message>
    <message>
        <source>%1; colours set by the grey patch</source>
        <translation>%1; colores según el parche gris</translation>
    </message>
    <message>
        <source>As the camera took it</source>
        <translation>Tal como lo tomó la cámara</translation>
    </message>
    <message>
        <source>Green and the rest hardly part here, so this share means little. A plain ground behind the plant helps.</source>
        <translation>El verde y lo demás apenas se separan aquí, así que esta parte dice poco. Un fondo liso detrás de la planta ayuda.</translation>
    </message>
    <message>
        <source>The patch’s strongest colour came out %1 % above its weakest, more than the lamps of a room and a camera that allows for them leave. If it is not grey in truth, mark another: its own colour was taken out.</source>
        <translation>El color más fuerte de la muestra salió un %1 % por encima del más débil, más de lo que dejan las lámparas de una habitación y una cámara que las compensa. Si no es gris de verdad, marque otra: se ha descontado su propio color.</translation>
    </message>
    <message>
        <source>In this light the patch’s strongest colour came out %1 % above its weakest, and that is taken out. Keep the patch in every photograph that is to be compared.</source>
        <translation>Con esta luz el color más fuerte del parche salió un %1 % por encima del más débil, y eso se ha descontado. Incluir el parche en cada foto que se vaya a comparar.</translation>
    </message>
    <message>
        <source>The same outline, light and place of the camera each time make it comparable. Where the light changes, mark a grey patch.</source>
        <translation>El mismo contorno, la misma luz y el mismo lugar de la cámara cada vez lo hacen comparable. Donde cambia la luz, marcar un parche gris.</translation>
    </message>
    <message>
        <source>“%1” is no number. Write it such as 27.3.</source>
        <translation>«%1» no es un número. Escribirlo como 27,3.</translation>
    </message>
    <message>
        <source>Draw the outline first, or type the share.</source>
        <translation>Dibujar antes el contorno, o escribir la parte.</translation>
    </message>
    <message>
        <source>Set the four points first, or type the length.</source>
        <translation>Poner antes los cuatro puntos, o escribir la longitud.</translation>
    </message>
    <message>
        <source>colours set by the grey patch</source>
        <translation>colores según el parche gris</translation>
    </message>
    <message>
        <source>%1: %2 %3 in the photograph of %4.</source>
        <translation>%1: %2 %3 en la fotografía del %4.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::MendModel</name>
    <message>
        <source>Add plants</source>
        <translation>Añadir plantas</translation>
    </message>
    <message>
        <source>Add spots</source>
        <translation>Añadir sitios</translation>
    </message>
    <message>
        <source>Change a spot</source>
        <translation>Cambiar un sitio</translation>
    </message>
    <message>
        <source>Change the place</source>
        <translation>Cambiar la ubicación</translation>
    </message>
    <message>
        <source>Change a plant</source>
        <translation>Cambiar una planta</translation>
    </message>
    <message>
        <source>Add a lot of seed</source>
        <translation>Añadir un lote de semillas</translation>
    </message>
    <message>
        <source>Keep %1 at a spot</source>
        <translation>Fijar %1 en un sitio</translation>
    </message>
    <message>
        <source>Add the plants</source>
        <translation>Añadir las plantas</translation>
    </message>
    <message>
        <source>Add the spots</source>
        <translation>Añadir los sitios</translation>
    </message>
    <message>
        <source>Add the lot</source>
        <translation>Añadir el lote</translation>
    </message>
    <message>
        <source>Keep it there</source>
        <translation>Fijarla allí</translation>
    </message>
    <message>
        <source>Keep the change</source>
        <translation>Guardar el cambio</translation>
    </message>
    <message>
        <source>The plant is no longer there.</source>
        <translation>La planta ya no está.</translation>
    </message>
    <message>
        <source>Changed %1</source>
        <translation>Cambiado: %1</translation>
    </message>
    <message>
        <source>Pick a kind first.</source>
        <translation>Elegir antes una especie.</translation>
    </message>
    <message>
        <source>Added %1</source>
        <translation>Añadido: %1</translation>
    </message>
    <message>
        <source>Added %1 plants</source>
        <translation>Añadidas %1 plantas</translation>
    </message>
    <message>
        <source>Press one of the spots first.</source>
        <translation>Pulsar antes uno de los sitios.</translation>
    </message>
    <message>
        <source>Added the spot %1</source>
        <translation>Añadido el sitio %1</translation>
    </message>
    <message>
        <source>Added %1 spots</source>
        <translation>Añadidos %1 sitios</translation>
    </message>
    <message>
        <source>Changed the spot %1</source>
        <translation>Cambiado el sitio %1</translation>
    </message>
    <message>
        <source>Took %1 off the list</source>
        <translation>Quitado de la lista: %1</translation>
    </message>
    <message>
        <source>Changed the place to %1</source>
        <translation>Ubicación cambiada a %1</translation>
    </message>
    <message>
        <source>Added the lot %1.</source>
        <translation>Añadido el lote %1.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::NightEntryModel</name>
    <message>
        <source>No night is kept of %1 yet.</source>
        <translation>Aún no hay ninguna noche de %1.</translation>
    </message>
    <message>
        <source>One night is kept of %1.</source>
        <translation>Hay una noche de %1.</translation>
    </message>
    <message>
        <source>%1 nights are kept of %2.</source>
        <translation>Hay %1 noches de %2.</translation>
    </message>
    <message>
        <source>clear, calm</source>
        <translation>despejado, en calma</translation>
    </message>
    <message>
        <source>cloud or wind</source>
        <translation>nubes o viento</translation>
    </message>
    <message>
        <source>Night to %1: low %2</source>
        <translation>Noche al %1: mínima %2</translation>
    </message>
    <message>
        <source>high %1</source>
        <translation>máxima %1</translation>
    </message>
    <message>
        <source>at the station %1</source>
        <translation>en la estación %1</translation>
    </message>
    <message>
        <source>“%1” is no temperature of the air.</source>
        <translation>«%1» no es una temperatura del aire.</translation>
    </message>
    <message>
        <source>The high lies below the low; exchange the two.</source>
        <translation>La máxima está por debajo de la mínima; intercambiarlas.</translation>
    </message>
    <message>
        <source>Write how many days ago the night ended, 0 to %1.</source>
        <translation>Escribir hace cuántos días terminó la noche, de 0 a %1.</translation>
    </message>
    <message>
        <source>Kept: %1 at %2, the night to %3. The same night logged again takes its place; Undo above the pages takes it back.</source>
        <translation>Guardado: %1 en %2, la noche hasta el %3. La misma noche anotada otra vez ocupa su lugar; Deshacer, encima de las páginas, la anula.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::NightLineModel</name>
    <message>
        <source>the open air at home</source>
        <translation>al aire libre en casa</translation>
    </message>
    <message>
        <source>“%1” is no date. Write both, such as %2, or leave both blank.</source>
        <translation>«%1» no es una fecha. Escribir las dos, como %2, o dejar las dos en blanco.</translation>
    </message>
    <message>
        <source>The last night must be the first, or up to a year later.</source>
        <translation>La última noche debe ser la primera, o hasta un año después.</translation>
    </message>
    <message>
        <source>A further chance is written such as 1 in 12 or just 12, down to 1 in 1000; or leave it blank.</source>
        <translation>Otra probabilidad se escribe como 1 de cada 12 o solo 12, hasta 1 de cada 1000; o se deja en blanco.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::NightTable</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::PhotoExportModel</name>
    <message>
        <source>Write how high each photograph is to be, %1 to %2 pixels, or leave it blank.</source>
        <translation>Escribir qué altura ha de tener cada fotografía, de %1 a %2 píxeles, o dejarlo en blanco.</translation>
    </message>
    <message>
        <source>Write how many stand in a row, %1 to %2, or leave it blank.</source>
        <translation>Escribir cuántas van en una fila, de %1 a %2, o dejarlo en blanco.</translation>
    </message>
    <message>
        <source>Write how many it takes at most, %1 to %2, or leave it blank.</source>
        <translation>Escribir cuántas son como máximo, de %1 a %2, o dejarlo en blanco.</translation>
    </message>
    <message>
        <source>Say into which folder.</source>
        <translation>Decir en qué carpeta.</translation>
    </message>
    <message>
        <source>Say which picture is to be written.</source>
        <translation>Decir qué imagen se ha de escribir.</translation>
    </message>
    <message>
        <source>%1 is there already. Replace it, or take another name.</source>
        <translation>%1 ya está. Sustituirlo, o tomar otro nombre.</translation>
    </message>
    <message>
        <source>Wrote 1 photograph to %1.</source>
        <translation>Escrita 1 fotografía en %1.</translation>
    </message>
    <message>
        <source>Wrote %1 photographs to %2.</source>
        <translation>Escritas %1 fotografías en %2.</translation>
    </message>
    <message>
        <source>They are as they were taken: some may say where that was.</source>
        <translation>Están como se tomaron: algunas pueden decir dónde fue.</translation>
    </message>
    <message>
        <source>Where they were taken has been taken out; the pictures are untouched.</source>
        <translation>Se ha quitado dónde se tomaron; las imágenes no cambian.</translation>
    </message>
    <message>
        <source>Stopped before the end.</source>
        <translation>Parado antes del final.</translation>
    </message>
    <message>
        <source>There is no photograph to write.</source>
        <translation>No hay ninguna fotografía que escribir.</translation>
    </message>
    <message>
        <source>Wrote %1 photographs beside each other to %2; nothing in it says where they were taken.</source>
        <translation>Escritas %1 fotografías juntas en %2; nada en ella dice dónde se tomaron.</translation>
    </message>
    <message>
        <source>%1 of %2 photographs</source>
        <translation>%1 de %2 fotografías</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::PhotoImportModel</name>
    <message>
        <source>Photographs are on their way in already; wait for them or stop them first.</source>
        <translation>Ya están entrando fotografías; esperar a que acaben o detenerlas antes.</translation>
    </message>
    <message>
        <source>Say first when those photographs were taken, or leave them out.</source>
        <translation>Decir primero cuándo se tomaron esas fotografías, o dejarlas fuera.</translation>
    </message>
    <message>
        <source>Only files and folders of this computer can be taken in. Save the photograph first.</source>
        <translation>Solo se pueden incorporar archivos y carpetas de este equipo. Guardar antes la fotografía.</translation>
    </message>
    <message>
        <source>The photographs are being counted.</source>
        <translation>Se están contando las fotografías.</translation>
    </message>
    <message>
        <source>the plant</source>
        <translation>la planta</translation>
    </message>
    <message>
        <source>%1: 1 photograph does not say when it was taken. When was that?</source>
        <translation>%1: 1 fotografía no dice cuándo se tomó. ¿Cuándo fue?</translation>
    </message>
    <message>
        <source>%1: %2 photographs do not say when they were taken. When was that?</source>
        <translation>%1: %2 fotografías no dicen cuándo se tomaron. ¿Cuándo fue?</translation>
    </message>
    <message>
        <source>%1 of %2 photographs</source>
        <translation>%1 de %2 fotografías</translation>
    </message>
    <message>
        <source>%1: no new photograph.</source>
        <translation>%1: ninguna fotografía nueva.</translation>
    </message>
    <message>
        <source>%1: 1 photograph came in.</source>
        <translation>%1: entró 1 fotografía.</translation>
    </message>
    <message>
        <source>%1: %2 photographs came in.</source>
        <translation>%1: entraron %2 fotografías.</translation>
    </message>
    <message>
        <source> 1 was known already and shows the plant now; it still shows %1 too.</source>
        <translation> 1 ya se conocía y ahora muestra la planta; sigue mostrando también %1.</translation>
    </message>
    <message>
        <source> %1 were known already and show the plant now; some of them still show %2 too.</source>
        <translation> %1 ya se conocían y ahora muestran la planta; algunas siguen mostrando también %2.</translation>
    </message>
    <message>
        <source> 1 was known already and shows the plant now.</source>
        <translation> 1 ya se conocía y ahora muestra la planta.</translation>
    </message>
    <message>
        <source> %1 were known already and show the plant now.</source>
        <translation> %1 ya se conocían y ahora muestran la planta.</translation>
    </message>
    <message>
        <source> 1 was not taken.</source>
        <translation> 1 no se incorporó.</translation>
    </message>
    <message>
        <source> %1 were not taken.</source>
        <translation> %1 no se incorporaron.</translation>
    </message>
    <message>
        <source> Stopped; what came in stays.</source>
        <translation> Detenido; lo que entró se queda.</translation>
    </message>
    <message>
        <source>Say which folder is to be watched.</source>
        <translation>Decir qué carpeta se debe vigilar.</translation>
    </message>
    <message>
        <source>%1 is no folder of this computer.</source>
        <translation>%1 no es una carpeta de este equipo.</translation>
    </message>
    <message>
        <source>Nothing new has come yet.</source>
        <translation>Aún no ha llegado nada nuevo.</translation>
    </message>
    <message>
        <source>it names no plant; begin its name with a plant’s, or put it into a folder called after one</source>
        <translation>no nombra ninguna planta; empezar su nombre con el de una planta o ponerla en una carpeta que lleve el de una</translation>
    </message>
    <message>
        <source>1 photograph has come in.</source>
        <translation>Ha entrado 1 fotografía.</translation>
    </message>
    <message>
        <source>%1 photographs have come in.</source>
        <translation>Han entrado %1 fotografías.</translation>
    </message>
    <message>
        <source>1 photograph came in from the folder that is watched.</source>
        <translation>Entró 1 fotografía de la carpeta vigilada.</translation>
    </message>
    <message>
        <source>%1 photographs came in from the folder that is watched.</source>
        <translation>Entraron %1 fotografías de la carpeta vigilada.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::PhotosAsideModel</name>
    <message>
        <source>%1, which is gone</source>
        <translation>%1, que ya no está</translation>
    </message>
    <message>
        <source>a plant that is gone</source>
        <translation>una planta que ya no está</translation>
    </message>
    <message>
        <source>out of the lists; shows no plant</source>
        <translation>fuera de las listas; no muestra ninguna planta</translation>
    </message>
    <message>
        <source>shows no plant</source>
        <translation>no muestra ninguna planta</translation>
    </message>
    <message>
        <source>out of the lists; shows %1</source>
        <translation>fuera de las listas; muestra %1</translation>
    </message>
    <message>
        <source>shows %1</source>
        <translation>muestra %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>None: every photograph is in the lists and shows a plant that is there.</source>
        <translation>Ninguna: todas las fotos están en las listas y muestran una planta que sigue aquí.</translation>
    </message>
    <message>
        <source>The newest %1 of %2.</source>
        <translation>Las %1 más recientes de %2.</translation>
    </message>
    <message>
        <source>The photograph %1 of %2</source>
        <translation>La foto %1 del %2</translation>
    </message>
    <message>
        <source>%1 is back in the lists. Undo above the pages takes that back.</source>
        <translation>%1 está de nuevo en las listas. Deshacer, encima de las páginas, lo anula.</translation>
    </message>
    <message>
        <source>%1 is out of the lists; its file stays.</source>
        <translation>%1 está fuera de las listas; su archivo queda.</translation>
    </message>
    <message>
        <source>%1 shows %2.</source>
        <translation>%1 muestra %2.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::PhotosModel</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Two photographs of the plant are needed to lay them side by side.</source>
        <translation>Hacen falta dos fotografías de la planta para ponerlas lado a lado.</translation>
    </message>
    <message>
        <source>by the camera’s clock</source>
        <translation>según el reloj de la cámara</translation>
    </message>
    <message>
        <source>by the file’s time; the camera wrote none</source>
        <translation>según la hora del archivo; la cámara no escribió ninguna</translation>
    </message>
    <message>
        <source>set by hand</source>
        <translation>puesta a mano</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Tomada</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 x %2 pixels</source>
        <translation>%1 x %2 píxeles</translation>
    </message>
    <message>
        <source>%1, %2 MB</source>
        <translation>%1, %2 MB</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Tamaño</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Posición</translation>
    </message>
    <message>
        <source>%1. It leaves the household only where you say so.</source>
        <translation>%1. Sale del hogar solo donde usted lo diga.</translation>
    </message>
    <message>
        <source>The camera wrote none.</source>
        <translation>La cámara no escribió ninguna.</translation>
    </message>
    <message>
        <source>Shows</source>
        <translation>Muestra</translation>
    </message>
    <message>
        <source>Camera</source>
        <translation>Cámara</translation>
    </message>
    <message>
        <source>%1: %2, then %3, %4</source>
        <translation>%1: %2, luego %3, %4</translation>
    </message>
    <message>
        <source>%1 days apart. Nothing was measured near both dates; measure in each of the two.</source>
        <translation>%1 días de diferencia. No se midió nada cerca de ambas fechas; medir en cada una de las dos.</translation>
    </message>
    <message>
        <source>%1 days apart; measured within %2 days of each photograph.</source>
        <translation>%1 días de diferencia; medido a %2 días o menos de cada fotografía.</translation>
    </message>
    <message>
        <source>The photograph of %1 stands for %2.</source>
        <translation>La fotografía del %1 representa a %2.</translation>
    </message>
    <message>
        <source>%1 is drawn on its shelf again.</source>
        <translation>%1 vuelve a estar dibujada en su estante.</translation>
    </message>
    <message>
        <source>The photograph of %1 does not show %2 any more; it stays among the photographs.</source>
        <translation>La fotografía del %1 ya no muestra %2; se queda entre las fotografías.</translation>
    </message>
    <message>
        <source>The photograph of %1 is out of the lists; its file stays, and Home, Data and backup brings it back.</source>
        <translation>La foto del %1 está fuera de las listas; su archivo queda, y Casa, Datos y copias la recupera.</translation>
    </message>
    <message>
        <source>There is no plant with the number %1 (any more).</source>
        <translation>No hay (ya) ninguna planta con el número %1.</translation>
    </message>
    <message>
        <source>The photograph of %1 shows %2 too.</source>
        <translation>La fotografía del %1 muestra también %2.</translation>
    </message>
    <message>
        <source>The photograph %1 was taken on %2.</source>
        <translation>La fotografía %1 se tomó el %2.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::PinForm</name>
    <message>
        <source>on %1</source>
        <translation>el %1</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>del %1 al %2</translation>
    </message>
    <message>
        <source>It is kept at %1 always.</source>
        <translation>Fijada siempre en %1.</translation>
    </message>
    <message>
        <source>It is kept at %1 %2.</source>
        <translation>Fijada en %1 %2.</translation>
    </message>
    <message>
        <source>%1 is poisonous or spiny, and a child or an animal gets at the plants of %2. Choose another spot.</source>
        <translation>%1 es venenosa o espinosa, y un niño o un animal llega a las plantas de %2. Elegir otro sitio.</translation>
    </message>
    <message>
        <source>Choose a spot first.</source>
        <translation>Elegir antes un sitio.</translation>
    </message>
    <message>
        <source>%1 is kept at %2 always already.</source>
        <translation>%1 ya está fijada siempre en %2.</translation>
    </message>
    <message>
        <source>%1 is kept at %2 always</source>
        <translation>%1 queda fijada siempre en %2</translation>
    </message>
    <message>
        <source>Write both evenings, or leave both blank to keep it there always.</source>
        <translation>Escribir las dos noches, o dejar las dos en blanco para fijarla allí siempre.</translation>
    </message>
    <message>
        <source>“%1” is no date. Write it such as %2.</source>
        <translation>«%1» no es una fecha. Escribirla como %2.</translation>
    </message>
    <message>
        <source>The last evening lies before the first; exchange the two.</source>
        <translation>La última noche es anterior a la primera; intercambiarlas.</translation>
    </message>
    <message>
        <source>The last evening is over; nothing is left to keep it for.</source>
        <translation>La última noche ya pasó; no queda nada que fijar.</translation>
    </message>
    <message>
        <source>%1 is kept at %2 %3 already, and it cannot stand in two places. Take that back first, or choose other evenings.</source>
        <translation>%1 ya está fijada en %2 %3, y no puede estar en dos sitios. Soltar eso antes, o elegir otras noches.</translation>
    </message>
    <message>
        <source>%1 is kept at %2 %3</source>
        <translation>%1 queda fijada en %2 %3</translation>
    </message>
    <message>
        <source>%1 is pinned no longer</source>
        <translation>%1 ya no está fijada</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::PlaceForm</name>
    <message>
        <source>ft</source>
        <translation>ft</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>As you typed it.</source>
        <translation>Tal como se escribió.</translation>
    </message>
    <message>
        <source>Unsure? Leave it empty; the stations’ height is taken and the error grows.</source>
        <translation>¿Duda? Dejarla vacía; se toma la altura de las estaciones y el error crece.</translation>
    </message>
    <message>
        <source>“%1” is no latitude; write it as 48.2 or 48°12′N.</source>
        <translation>«%1» no es una latitud; escribirla como 48.2 o 48°12′N.</translation>
    </message>
    <message>
        <source>“%1” is no longitude; write it as 16.4 or 16°24′E.</source>
        <translation>«%1» no es una longitud; escribirla como 16.4 o 16°24′E.</translation>
    </message>
    <message>
        <source>A latitude lies within −90 and 90 degrees; %1 does not. Are the two exchanged?</source>
        <translation>Una latitud está entre −90 y 90 grados; %1 no. ¿Están cambiadas las dos?</translation>
    </message>
    <message>
        <source>A longitude lies within −180 and 180 degrees; %1 does not.</source>
        <translation>Una longitud está entre −180 y 180 grados; %1 no.</translation>
    </message>
    <message>
        <source>“%1” is not a number; write the height as 170, or leave it empty.</source>
        <translation>«%1» no es un número; escribir la altura como 170, o dejarla vacía.</translation>
    </message>
    <message>
        <source>No place on land is %1 %2 high; heights lie within −500 and 9000 m.</source>
        <translation>Ningún lugar en tierra está a %1 %2; las alturas están entre −500 y 9000 m.</translation>
    </message>
    <message>
        <source>There is no time zone “%1”; names are like Europe/Vienna.</source>
        <translation>No hay zona horaria «%1»; los nombres son como Europe/Vienna.</translation>
    </message>
    <message>
        <source>Proposed: the height of %1. Correct it where you know better.</source>
        <translation>Propuesta: la altura de %1. Corregirla si se conoce mejor.</translation>
    </message>
    <message>
        <source>No town is near enough to propose one; names are like Europe/Vienna.</source>
        <translation>Ninguna población está lo bastante cerca para proponer una; los nombres son como Europe/Vienna.</translation>
    </message>
    <message>
        <source>Proposed: that of %1.</source>
        <translation>Propuesta: la de %1.</translation>
    </message>
    <message>
        <source> Please check it.</source>
        <translation> Conviene comprobarla.</translation>
    </message>
    <message>
        <source> Towns with %1 are near too; please check it.</source>
        <translation> También hay cerca poblaciones con %1; conviene comprobarla.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>A place is missing: the nearest town, or latitude and longitude.</source>
        <translation>Falta un lugar: la población más cercana, o latitud y longitud.</translation>
    </message>
    <message>
        <source>A time zone is missing; names are like Europe/Vienna.</source>
        <translation>Falta una zona horaria; los nombres son como Europe/Vienna.</translation>
    </message>
    <message>
        <source>Towns cannot be looked for: %1. Coordinates work.</source>
        <translation>No se pueden buscar poblaciones: %1. Las coordenadas funcionan.</translation>
    </message>
    <message>
        <source>These are no coordinates: %1.</source>
        <translation>Eso no son coordenadas: %1.</translation>
    </message>
    <message>
        <source>No town here is called that. Try a larger one near, or type coordinates.</source>
        <translation>Ninguna población se llama así aquí. Probar una mayor cercana, o escribir coordenadas.</translation>
    </message>
    <message>
        <source>No town is called that. Did you mean one of these?</source>
        <translation>Ninguna población se llama así. ¿Quizá una de estas?</translation>
    </message>
    <message>
        <source>%1, %2 above the sea</source>
        <translation>%1, %2 sobre el mar</translation>
    </message>
    <message>
        <source>%1, guessed by the clock</source>
        <translation>%1, supuesta por el reloj</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::PlaceMonthsModel</name>
    <message>
        <source>A pot is %1 to %2 %3 across.</source>
        <translation>Una maceta mide de %1 a %2 %3 de ancho.</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::PlantForm</name>
    <message>
        <source>qt</source>
        <translation>qt</translation>
    </message>
    <message>
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>nowhere: the plan carries it</source>
        <translation>en ninguno: el plan la lleva</translation>
    </message>
    <message>
        <source>A plant needs a name.</source>
        <translation>Una planta necesita un nombre.</translation>
    </message>
    <message>
        <source>There is, or was, a plant “%1”; give this one another name, so that their histories stay apart.</source>
        <translation>Hay, o hubo, una planta «%1»; dar otro nombre a esta, para que sus historias queden separadas.</translation>
    </message>
    <message>
        <source>The pot’s volume is a number above 0, such as 12, or is left blank.</source>
        <translation>El volumen de la maceta es un número mayor que 0, como 12, o se deja en blanco.</translation>
    </message>
    <message>
        <source>The weight of plant and pot is a number above 0, such as 4.</source>
        <translation>El peso de planta y maceta es un número mayor que 0, como 4.</translation>
    </message>
    <message>
        <source>Each line is a temperature, such as %1.</source>
        <translation>Cada límite es una temperatura, como %1.</translation>
    </message>
    <message>
        <source>The lines rise from what kills over where harm begins to the safe night.</source>
        <translation>Los límites suben de lo que mata, por donde empieza el daño, a la noche segura.</translation>
    </message>
    <message>
        <source>Heat cannot harm below the safe night.</source>
        <translation>El calor no puede dañar por debajo de la noche segura.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::PlantRows</name>
    <message>
        <source>%1 by the spot where the year begins</source>
        <translation>%1 por el sitio donde empieza el año</translation>
    </message>
    <message>
        <source>%1 by name</source>
        <translation>%1 por nombre</translation>
    </message>
    <message>
        <source>%1 in order of going out</source>
        <translation>%1 por orden de salida</translation>
    </message>
    <message>
        <source>%1 by spot</source>
        <translation>%1 por sitio</translation>
    </message>
    <message>
        <source>%1 by date out</source>
        <translation>%1 por salida</translation>
    </message>
    <message>
        <source>stepped edge: hardening</source>
        <translation>borde escalonado: endurecer</translation>
    </message>
    <message>
        <source>bracket: date at 1 in 5 to 1 in 20</source>
        <translation>corchete: fecha a 1 de cada 5 hasta 1 de cada 20</translation>
    </message>
    <message>
        <source>tick below the bar: feed</source>
        <translation>raya bajo la barra: abonar</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::PlantShelves</name>
    <message>
        <source>at no spot</source>
        <translation>sin sitio</translation>
    </message>
    <message>
        <source> Marked.</source>
        <translation> Marcada.</translation>
    </message>
    <message>
        <source>1 plant</source>
        <translation>1 planta</translation>
    </message>
    <message>
        <source>%1 plants</source>
        <translation>%1 plantas</translation>
    </message>
    <message>
        <source>%1 plants, room for 1</source>
        <translation>%1 plantas, sitio para 1</translation>
    </message>
    <message>
        <source>%1 plants, room for %2</source>
        <translation>%1 plantas, sitio para %2</translation>
    </message>
    <message>
        <source>%1 of %2 places, full</source>
        <translation>%1 de %2 lugares, lleno</translation>
    </message>
    <message>
        <source>%1 of %2 places</source>
        <translation>%1 de %2 lugares</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::PlantTable</name>
    <message>
        <source>no spot yet</source>
        <translation>aún sin sitio</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::PlantsForm</name>
    <message>
        <source>No kind is of that group and rests on that; choose another.</source>
        <translation>Ninguna especie de ese grupo se basa en eso; elegir otra cosa.</translation>
    </message>
    <message>
        <source>What is called “%1” is of another group or rests on something else.</source>
        <translation>Lo que se llama «%1» es de otro grupo o se basa en otra cosa.</translation>
    </message>
    <message>
        <source>No kind here is called “%1”. Add it as a kind of your own below.</source>
        <translation>Ninguna especie aquí se llama «%1». Añadirla abajo como especie propia.</translation>
    </message>
    <message>
        <source>No kind here is called “%1”. Did you mean one of these?</source>
        <translation>Ninguna especie aquí se llama «%1». ¿Quizá una de estas?</translation>
    </message>
    <message>
        <source>%1 kinds are known; type a part of a name.</source>
        <translation>Se conocen %1 especies; escribir parte de un nombre.</translation>
    </message>
    <message>
        <source>%1 of %2 kinds</source>
        <translation>%1 de %2 especies</translation>
    </message>
    <message>
        <source>harm from %1</source>
        <translation>daño desde %1</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>, poisonous</source>
        <translation>, venenosa</translation>
    </message>
    <message>
        <source>Stands nowhere yet; choose its spot.</source>
        <translation>Aún no está en ningún sitio; elegirlo.</translation>
    </message>
    <message>
        <source>Poisonous, and %1 is in reach of a child or an animal.</source>
        <translation>Venenosa, y %1 está al alcance de un niño o un animal.</translation>
    </message>
    <message>
        <source>%1 more than fit at %2.</source>
        <translation>%1 más de las que caben en %2.</translation>
    </message>
    <message>
        <source>nowhere yet</source>
        <translation>aún en ningún sitio</translation>
    </message>
    <message>
        <source>a kind of your own</source>
        <translation>una especie propia</translation>
    </message>
    <message>
        <source>%1, %2, at %3. %4</source>
        <translation>%1, %2, en %3. %4</translation>
    </message>
    <message>
        <source>1 place free</source>
        <translation>1 lugar libre</translation>
    </message>
    <message>
        <source>%1 places free</source>
        <translation>%1 lugares libres</translation>
    </message>
    <message>
        <source>The kind needs a name.</source>
        <translation>La especie necesita un nombre.</translation>
    </message>
    <message>
        <source>The safe night is missing: the lowest night that it stands without stress, such as %1.</source>
        <translation>Falta la noche segura: la noche más fría que aguanta sin estrés, como %1.</translation>
    </message>
    <message>
        <source>The night at which harm begins is missing, such as %1.</source>
        <translation>Falta la noche en que empieza el daño, como %1.</translation>
    </message>
    <message>
        <source>Harm cannot begin above the safe night, %1.</source>
        <translation>El daño no puede empezar por encima de la noche segura, %1.</translation>
    </message>
    <message>
        <source>The night that kills it lies at %1 or below, or is left blank.</source>
        <translation>La noche que la mata está a %1 o menos, o se deja en blanco.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::PlantsModel</name>
    <message>
        <source>%1 is gone (%2): its page opens, and notes are taken.</source>
        <translation>%1 ya no está (%2): su página se abre y se aceptan notas.</translation>
    </message>
    <message>
        <source>%1 plants</source>
        <translation>%1 plantas</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Medida</translation>
    </message>
    <message>
        <source>Write how many days ago it was, 0 to %1.</source>
        <translation>Escriba hace cuántos días fue, de 0 a %1.</translation>
    </message>
    <message>
        <source>Choose a plant first: arrow keys, or a click.</source>
        <translation>Elegir antes una planta: flechas, o una pulsación.</translation>
    </message>
    <message>
        <source>%1: watered today.</source>
        <translation>%1: regada hoy.</translation>
    </message>
    <message>
        <source>%1: fed today.</source>
        <translation>%1: abonada hoy.</translation>
    </message>
    <message>
        <source>%1: new growth seen today.</source>
        <translation>%1: brotes nuevos vistos hoy.</translation>
    </message>
    <message>
        <source>%1: in flower today.</source>
        <translation>%1: en flor hoy.</translation>
    </message>
    <message>
        <source>%1: repotted today.</source>
        <translation>%1: trasplantada hoy.</translation>
    </message>
    <message>
        <source>%1: pruned today.</source>
        <translation>%1: podada hoy.</translation>
    </message>
    <message>
        <source>%1: died today. Off the lists, with all of the past kept; Undo brings it back.</source>
        <translation>%1: murió hoy. Fuera de las listas, con todo el pasado conservado; Deshacer la devuelve.</translation>
    </message>
    <message>
        <source>%1: given away today. Off the lists, with all of the past kept; Undo brings it back.</source>
        <translation>%1: regalada hoy. Fuera de las listas, con todo el pasado conservado; Deshacer la devuelve.</translation>
    </message>
    <message>
        <source>Write the note first.</source>
        <translation>Escribir antes la nota.</translation>
    </message>
    <message>
        <source>%1: noted.</source>
        <translation>%1: anotado.</translation>
    </message>
    <message>
        <source>Choose what happened.</source>
        <translation>Elegir qué pasó.</translation>
    </message>
    <message>
        <source>%1: %2, on %3.</source>
        <translation>%1: %2, el %3.</translation>
    </message>
    <message>
        <source>There is no spot of that number.</source>
        <translation>No hay ningún sitio con ese número.</translation>
    </message>
    <message>
        <source>%1 stands at %2 already.</source>
        <translation>%1 ya está en %2.</translation>
    </message>
    <message>
        <source>%1 moved to %2 today.</source>
        <translation>%1 movida hoy a %2.</translation>
    </message>
    <message>
        <source> It has %1 places.</source>
        <translation> Caben %1.</translation>
    </message>
    <message>
        <source>Nothing was logged on this page yet that could be taken back; Undo above the pages takes back what the journal had before.</source>
        <translation>En esta página no se ha anotado aún nada que se pueda deshacer; Deshacer, encima de las páginas, deshace lo que el diario tenía antes.</translation>
    </message>
    <message>
        <source>Taken back: %1</source>
        <translation>Deshecho: %1</translation>
    </message>
    <message>
        <source>Nothing was taken back last on this page that could be done again.</source>
        <translation>En esta página no se ha deshecho al final nada que se pueda rehacer.</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>Hecho de nuevo: %1</translation>
    </message>
    <message>
        <source>qt</source>
        <translation>qt</translation>
    </message>
    <message>
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <source>One plant is measured at a time; take the marks off with Escape.</source>
        <translation>Se mide una planta cada vez; quitar las marcas con Escape.</translation>
    </message>
    <message>
        <source>Choose what was measured.</source>
        <translation>Elegir qué se midió.</translation>
    </message>
    <message>
        <source>Write what was read, such as 27.3; repeats with a semicolon between.</source>
        <translation>Escribir lo que se leyó, como 27.3; repeticiones con punto y coma en medio.</translation>
    </message>
    <message>
        <source>“%1” is no number. Write it such as 27.3.</source>
        <translation>«%1» no es un número. Escribirlo como 27,3.</translation>
    </message>
    <message>
        <source>“%1” is no time of day. Write it such as 14:30.</source>
        <translation>«%1» no es una hora. Escribirla como 14:30.</translation>
    </message>
    <message>
        <source>A time zone goes with a time of day; write the time too, or leave the zone blank.</source>
        <translation>Una zona horaria va con una hora; escribir también la hora o dejar la zona en blanco.</translation>
    </message>
    <message>
        <source>No time zone is called “%1”. Write it such as Europe/Rome.</source>
        <translation>Ninguna zona horaria se llama «%1». Escribirla así: Europe/Rome.</translation>
    </message>
    <message>
        <source>%1 in %2 is after today at home. Write how many days ago it was there.</source>
        <translation>Las %1 en %2 son en casa después de hoy. Escribir cuántos días hace que fue allí.</translation>
    </message>
    <message>
        <source>The pot’s volume is a number above 0, such as 12, or is left blank.</source>
        <translation>El volumen de la maceta es un número mayor que 0, como 12, o se deja en blanco.</translation>
    </message>
    <message>
        <source>%1: %2 %3 today.</source>
        <translation>%1: %2 %3 hoy.</translation>
    </message>
    <message>
        <source>%1: %2 %3 on %4.</source>
        <translation>%1: %2 %3 el %4.</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>Plants</source>
        <translation>Plantas</translation>
    </message>
    <message>
        <source>No plants yet</source>
        <translation>Aún sin plantas</translation>
    </message>
    <message>
        <source>1 plant</source>
        <translation>1 planta</translation>
    </message>
    <message>
        <source>This household is invented: what is logged stays in this window and is gone when it closes.</source>
        <translation>Este hogar es inventado: lo que se anota queda en esta ventana y desaparece al cerrarla.</translation>
    </message>
    <message>
        <source>All %1</source>
        <translation>Todas %1</translation>
    </message>
    <message>
        <source>Outdoors %1</source>
        <translation>Fuera %1</translation>
    </message>
    <message>
        <source>Hardening %1</source>
        <translation>Endureciendo %1</translation>
    </message>
    <message>
        <source>To look at %1</source>
        <translation>Por mirar %1</translation>
    </message>
    <message>
        <source>Poisonous %1</source>
        <translation>Venenosas %1</translation>
    </message>
    <message>
        <source>Set apart %1</source>
        <translation>Apartadas %1</translation>
    </message>
    <message>
        <source>Recovering %1</source>
        <translation>Recuperándose %1</translation>
    </message>
    <message>
        <source>Gone %1</source>
        <translation>Ya no están %1</translation>
    </message>
    <message>
        <source>There is no plant with the number %1 (any more).</source>
        <translation>No hay (ya) ninguna planta con el número %1.</translation>
    </message>
    <message>
        <source>One plant is divided at a time; take the marks off with Escape.</source>
        <translation>Se divide una planta cada vez; quitar las marcas con Escape.</translation>
    </message>
    <message>
        <source>Write a name for each new plant, with a comma between them.</source>
        <translation>Escribir un nombre para cada planta nueva, con una coma en medio.</translation>
    </message>
    <message>
        <source>There is a plant called %1 already; write another name.</source>
        <translation>Ya hay una planta llamada %1; escribir otro nombre.</translation>
    </message>
    <message>
        <source>%1: looked over today, nothing found.</source>
        <translation>%1: revisada hoy, sin hallar nada.</translation>
    </message>
    <message>
        <source>Choose how many there are.</source>
        <translation>Elija cuántos hay.</translation>
    </message>
    <message>
        <source>%1: pests found today. It comes last in the round from now on.</source>
        <translation>%1: plagas halladas hoy. Desde ahora va la última en la ronda.</translation>
    </message>
    <message>
        <source>%1: treated today.</source>
        <translation>%1: tratada hoy.</translation>
    </message>
    <message>
        <source>%1: set apart today.</source>
        <translation>%1: apartada hoy.</translation>
    </message>
    <message>
        <source>%1: back among the others today.</source>
        <translation>%1: hoy de vuelta con las demás.</translation>
    </message>
    <message>
        <source>%1: washed through with water today.</source>
        <translation>%1: lavada hoy con agua.</translation>
    </message>
    <message>
        <source>%1: a cold night hurt it. Looks at it come into the round; no feed until new growth is logged.</source>
        <translation>%1: una noche fría la dañó. Las miradas a ella entran en la ronda; sin abono hasta que se anote crecimiento nuevo.</translation>
    </message>
    <message>
        <source>%1: hit by a spray. What helps and what waits comes into the round; nothing of it is eaten.</source>
        <translation>%1: dañada por un producto. Lo que ayuda y lo que espera entra en la ronda; no se come nada de ella.</translation>
    </message>
    <message>
        <source>%1: planted out today. Its growth is judged from there on.</source>
        <translation>%1: plantada fuera hoy. Su crecimiento se juzga desde ahí.</translation>
    </message>
    <message>
        <source>%1: divided today. The new ones stand beside it; Move gives them another spot.</source>
        <translation>%1: dividida hoy. Las nuevas están a su lado; Mover les da otro sitio.</translation>
    </message>
    <message>
        <source>%1: taken off the list today, with all of its past kept; Undo brings it back.</source>
        <translation>%1: hoy fuera de la lista, con todo su pasado guardado; Deshacer la devuelve.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::RoundModel</name>
    <message>
        <source>carry in this evening</source>
        <translation>entrarla esta tarde</translation>
    </message>
    <message>
        <source>carry to its new spot today</source>
        <translation>llevarla hoy a su nuevo sitio</translation>
    </message>
    <message>
        <source>carry out for the day today</source>
        <translation>sacarla hoy durante el día</translation>
    </message>
    <message>
        <source>carry out today, to stay</source>
        <translation>sacarla hoy, para quedarse fuera</translation>
    </message>
    <message>
        <source>carry into deeper shade today</source>
        <translation>llevarla hoy a una sombra más densa</translation>
    </message>
    <message>
        <source>carry in today</source>
        <translation>entrarla hoy</translation>
    </message>
    <message>
        <source>can wait until %1</source>
        <translation>puede esperar hasta el %1</translation>
    </message>
    <message>
        <source>was due %1</source>
        <translation>tocaba el %1</translation>
    </message>
    <message>
        <source>done %1</source>
        <translation>hecho a las %1</translation>
    </message>
    <message>
        <source>%1. In full above, at %2.</source>
        <translation>%1. Entero arriba, en %2.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Can wait until %1</source>
        <translation>Puede esperar hasta el %1</translation>
    </message>
    <message>
        <source>Pinned</source>
        <translation>Fijada</translation>
    </message>
    <message>
        <source>About 1 minute</source>
        <translation>Alrededor de 1 minuto</translation>
    </message>
    <message>
        <source>About %1 minutes</source>
        <translation>Unos %1 minutos</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation>Sin hacer</translation>
    </message>
    <message>
        <source>1 task</source>
        <translation>1 tarea</translation>
    </message>
    <message>
        <source>%1 tasks</source>
        <translation>%1 tareas</translation>
    </message>
    <message>
        <source>%1, last of all</source>
        <translation>%1, al final de todo</translation>
    </message>
    <message>
        <source>%1, in walking order</source>
        <translation>%1, por orden de paso</translation>
    </message>
    <message>
        <source>%1’s round</source>
        <translation>Ronda del %1</translation>
    </message>
    <message>
        <source>%1, nothing is due.</source>
        <translation>%1, no hay nada que hacer.</translation>
    </message>
    <message>
        <source>%1, %2, about %3 minutes.</source>
        <translation>%1, %2, unos %3 minutos.</translation>
    </message>
    <message>
        <source> Clean plants first, infested ones last.</source>
        <translation> Primero las plantas limpias, al final las infestadas.</translation>
    </message>
    <message>
        <source>%1 of %2 done</source>
        <translation>%1 de %2 hechas</translation>
    </message>
    <message>
        <source>%1 min left</source>
        <translation>quedan %1 min</translation>
    </message>
    <message>
        <source>Nothing is due today. The year (key 2) shows what comes next; what was fed, watered or found since is logged under Plants (key 3).</source>
        <translation>Hoy no hay nada que hacer. El año (tecla 2) muestra lo que viene; lo abonado, regado o encontrado desde entonces se anota en Plantas (tecla 3).</translation>
    </message>
    <message>
        <source>No plant stands here yet. Each will have its tasks here in an order in which pests do not travel. Add the first under Plants.</source>
        <translation>Aún no hay plantas aquí. Cada una tendrá aquí sus tareas, en un orden en que las plagas no viajan. Añadir la primera en Plantas.</translation>
    </message>
    <message>
        <source>This household is invented: what is ticked stays in this window and is gone when it closes. A household of your own keeps it; the first start makes one when the window is opened anew.</source>
        <translation>Este hogar es inventado: lo que se marca queda en esta ventana y desaparece al cerrarla. Un hogar propio lo guarda; el primer inicio crea uno al abrir de nuevo la ventana.</translation>
    </message>
    <message>
        <source>No forecast is kept, so tonight is not in the round.</source>
        <translation>No hay previsión guardada, así que esta noche no está en la ronda.</translation>
    </message>
    <message>
        <source>%1; until %2</source>
        <translation>%1; hasta el %2</translation>
    </message>
    <message>
        <source>Not fed. %1.</source>
        <translation>Sin abono. %1.</translation>
    </message>
    <message>
        <source>%1, not fed: %2.</source>
        <translation>%1, sin abono: %2.</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 y %2 más</translation>
    </message>
    <message>
        <source>one plant</source>
        <translation>una planta</translation>
    </message>
    <message>
        <source>two plants</source>
        <translation>dos plantas</translation>
    </message>
    <message>
        <source>three plants</source>
        <translation>tres plantas</translation>
    </message>
    <message>
        <source>four plants</source>
        <translation>cuatro plantas</translation>
    </message>
    <message>
        <source>five plants</source>
        <translation>cinco plantas</translation>
    </message>
    <message>
        <source>six plants</source>
        <translation>seis plantas</translation>
    </message>
    <message>
        <source>seven plants</source>
        <translation>siete plantas</translation>
    </message>
    <message>
        <source>eight plants</source>
        <translation>ocho plantas</translation>
    </message>
    <message>
        <source>nine plants</source>
        <translation>nueve plantas</translation>
    </message>
    <message>
        <source>Carry %1 in this evening</source>
        <translation>Entrar %1 esta tarde</translation>
    </message>
    <message>
        <source>%1 plants</source>
        <translation>%1 plantas</translation>
    </message>
    <message>
        <source>Done: %1.</source>
        <translation>Hecho: %1.</translation>
    </message>
    <message>
        <source>How many seedlings of %1 were potted, each in a pot of its own? %2 are in the tray.</source>
        <translation>¿Cuántas plántulas de %1 se pasaron a maceta, cada una en la suya? En la bandeja hay %2.</translation>
    </message>
    <message>
        <source>How many seeds of %1 went into the tray? %2 are left.</source>
        <translation>¿Cuántas semillas de %1 fueron a la bandeja? Quedan %2.</translation>
    </message>
    <message>
        <source>How many seeds of %1 went into the tray?</source>
        <translation>¿Cuántas semillas de %1 fueron a la bandeja?</translation>
    </message>
    <message>
        <source>The tray has %1 seedlings; count it anew where there are more.</source>
        <translation>La bandeja tiene %1 plántulas; si hay más, contar de nuevo.</translation>
    </message>
    <message>
        <source>%1, 1 plant</source>
        <translation>%1, 1 planta</translation>
    </message>
    <message>
        <source>%1, %2 plants</source>
        <translation>%1, %2 plantas</translation>
    </message>
    <message>
        <source>Done: %1. They stand under Plants.</source>
        <translation>Hecho: %1. Están en Plantas.</translation>
    </message>
    <message>
        <source>Done: %1. They stand at no spot yet: say where under Plants, so that they are in plan and round.</source>
        <translation>Hecho: %1. Aún no están en ningún sitio: di dónde en Plantas, para que entren en el plan y la ronda.</translation>
    </message>
    <message>
        <source>Write how many seedlings were potted, such as 6.</source>
        <translation>Escribir cuántas plántulas se pasaron a maceta, por ejemplo 6.</translation>
    </message>
    <message>
        <source>Write how many seeds went into the tray, such as 12.</source>
        <translation>Escribir cuántas semillas fueron a la bandeja, como 12.</translation>
    </message>
    <message>
        <source>Of this lot %1 seeds are left. Sow fewer, or add the packet that they came from.</source>
        <translation>De este lote quedan %1 semillas. Sembrar menos o añadir el sobre del que vinieron.</translation>
    </message>
    <message>
        <source>%1, 1 seed</source>
        <translation>%1, 1 semilla</translation>
    </message>
    <message>
        <source>%1, %2 seeds</source>
        <translation>%1, %2 semillas</translation>
    </message>
    <message>
        <source>Done: %1. The tray stands under Seeds.</source>
        <translation>Hecho: %1. La bandeja está en Semillas.</translation>
    </message>
    <message>
        <source>That is done already; Undo takes it back.</source>
        <translation>Eso ya está hecho; Deshacer lo anula.</translation>
    </message>
    <message>
        <source>Washing cannot be put off: it stands between the classes so that pests do not travel.</source>
        <translation>Lavarse no se puede aplazar: está entre los grupos para que las plagas no viajen.</translation>
    </message>
    <message>
        <source>Washing cannot be left out: it stands between the classes so that pests do not travel.</source>
        <translation>Lavarse no se puede omitir: está entre los grupos para que las plagas no viajen.</translation>
    </message>
    <message>
        <source>A task is put off to a day after today, such as %1.</source>
        <translation>Una tarea se aplaza a un día posterior a hoy, por ejemplo %1.</translation>
    </message>
    <message>
        <source>Write for how many days it is put off, or until which date, such as %1.</source>
        <translation>Escribir cuántos días o hasta qué fecha se aplaza, por ejemplo %1.</translation>
    </message>
    <message>
        <source>Put off to %1: %2.</source>
        <translation>Aplazado al %1: %2.</translation>
    </message>
    <message>
        <source> It can wait until %1 at most.</source>
        <translation> Puede esperar hasta el %1 como máximo.</translation>
    </message>
    <message>
        <source>Say why it is left out, so that the journal knows.</source>
        <translation>Decir por qué se omite, para que el diario lo sepa.</translation>
    </message>
    <message>
        <source>Left out: %1.</source>
        <translation>Omitido: %1.</translation>
    </message>
    <message>
        <source>%1 plants carried in</source>
        <translation>%1 plantas entradas</translation>
    </message>
    <message>
        <source>Nothing was done in this window yet that could be taken back; Undo above the pages takes back what the journal had before.</source>
        <translation>En esta ventana no se ha hecho aún nada que se pueda deshacer; Deshacer, encima de las páginas, deshace lo que el diario tenía antes.</translation>
    </message>
    <message>
        <source>Taken back: %1.</source>
        <translation>Deshecho: %1.</translation>
    </message>
    <message>
        <source>Nothing was taken back last in this window that could be done again.</source>
        <translation>En esta ventana no se ha deshecho al final nada que se pueda rehacer.</translation>
    </message>
    <message>
        <source>Done again: %1.</source>
        <translation>Hecho de nuevo: %1.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::SeedsModel</name>
    <message>
        <source>Write how warm it is where the trays stand, %1 to %2.</source>
        <translation>Escribir qué temperatura hay donde están las bandejas, de %1 a %2.</translation>
    </message>
    <message>
        <source>Write the name of a crop, such as tomato or zinnia.</source>
        <translation>Escribir el nombre de un cultivo, como tomate o zinnia.</translation>
    </message>
    <message>
        <source>Write how many days ago it was, 0 to %1.</source>
        <translation>Escribir hace cuántos días fue, de 0 a %1.</translation>
    </message>
    <message>
        <source>%1 up in tray %2</source>
        <translation>%1 nacidas en la bandeja %2</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 el %2</translation>
    </message>
    <message>
        <source>%1, no more to come</source>
        <translation>%1, no se esperan más</translation>
    </message>
    <message>
        <source>Fewer than none cannot have come up.</source>
        <translation>No pueden haber nacido menos de ninguna.</translation>
    </message>
    <message>
        <source>Only %1 seeds were sown in this tray.</source>
        <translation>En esta bandeja solo se sembraron %1 semillas.</translation>
    </message>
    <message>
        <source>Write how many seeds went into the tray, such as 12.</source>
        <translation>Escribir cuántas semillas fueron a la bandeja, como 12.</translation>
    </message>
    <message>
        <source>Of this lot %1 seeds are left. Sow fewer, or add the packet that they came from.</source>
        <translation>De este lote quedan %1 semillas. Sembrar menos o añadir el sobre del que vinieron.</translation>
    </message>
    <message>
        <source>Write how warm the mix is, %1 to %2, or leave it blank.</source>
        <translation>Escriba qué temperatura tiene el sustrato, de %1 a %2, o déjelo en blanco.</translation>
    </message>
    <message>
        <source>%1: 1 seed was sown on %2. Undo above the pages takes it back.</source>
        <translation>%1: se sembró 1 semilla el %2. Deshacer, encima de las páginas, lo anula.</translation>
    </message>
    <message>
        <source>%1: %2 seeds were sown on %3. Undo above the pages takes it back.</source>
        <translation>%1: se sembraron %2 semillas el %3. Deshacer, encima de las páginas, lo anula.</translation>
    </message>
    <message>
        <source>%1: 1 seed was sown today. Undo above the pages takes it back.</source>
        <translation>%1: hoy se sembró 1 semilla. Deshacer, encima de las páginas, lo deshace.</translation>
    </message>
    <message>
        <source>%1: %2 seeds were sown today. Undo above the pages takes it back.</source>
        <translation>%1: hoy se sembraron %2 semillas. Deshacer, encima de las páginas, lo deshace.</translation>
    </message>
    <message>
        <source>Counted: %1.</source>
        <translation>Contado: %1.</translation>
    </message>
    <message>
        <source>Nothing was counted in this window yet that could be taken back; Undo above the pages takes back what the journal had before.</source>
        <translation>En esta ventana no se ha contado aún nada que se pueda deshacer; Deshacer, encima de las páginas, deshace lo que el diario tenía antes.</translation>
    </message>
    <message>
        <source>Taken back: %1.</source>
        <translation>Deshecho: %1.</translation>
    </message>
    <message>
        <source>Nothing was taken back last in this window that could be done again.</source>
        <translation>En esta ventana no se ha deshecho al final nada que se pueda rehacer.</translation>
    </message>
    <message>
        <source>Counted again: %1.</source>
        <translation>Contado de nuevo: %1.</translation>
    </message>
    <message>
        <source>Write how many seedlings were potted, such as 6.</source>
        <translation>Escribir cuántas plántulas se pasaron a maceta, por ejemplo 6.</translation>
    </message>
    <message>
        <source>The tray has %1 seedlings; count it anew where there are more.</source>
        <translation>La bandeja tiene %1 plántulas; si hay más, contar de nuevo.</translation>
    </message>
    <message>
        <source>Say where they stand: of the tray that is not known.</source>
        <translation>Decir dónde están: de la bandeja no se sabe.</translation>
    </message>
    <message>
        <source>Potted from tray %1: 1 plant, now under Plants. Undo above the pages takes it back.</source>
        <translation>De la bandeja %1 a maceta: 1 planta, ahora en Plantas. Deshacer, encima de las páginas, lo deshace.</translation>
    </message>
    <message>
        <source>Potted from tray %1: %2 plants, now under Plants. Undo above the pages takes it back.</source>
        <translation>De la bandeja %1 a maceta: %2 plantas, ahora en Plantas. Deshacer, encima de las páginas, lo deshace.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::SettingsModel</name>
    <message>
        <source>LATHHOUSE_THEME=%1 goes before what is chosen here, while it is set.</source>
        <translation>LATHHOUSE_THEME=%1 va antes que lo elegido aquí, mientras esté puesto.</translation>
    </message>
    <message>
        <source>LATHHOUSE_TEXT=%1 goes before what is chosen here, while it is set.</source>
        <translation>LATHHOUSE_TEXT=%1 va antes que lo elegido aquí, mientras esté puesto.</translation>
    </message>
    <message>
        <source>LATHHOUSE_MOTION=%1 goes before what is chosen here, while it is set.</source>
        <translation>LATHHOUSE_MOTION=%1 va antes que lo elegido aquí, mientras esté puesto.</translation>
    </message>
    <message>
        <source>LATHHOUSE_TOUCH=%1 goes before what is chosen here, while it is set.</source>
        <translation>LATHHOUSE_TOUCH=%1 va antes que lo elegido aquí, mientras esté puesto.</translation>
    </message>
    <message>
        <source>Opened with --units; what is chosen here is in force now and at the next start without it.</source>
        <translation>Abierto con --units; lo elegido aquí rige ahora y en el próximo inicio sin esa opción.</translation>
    </message>
    <message>
        <source>A night of %1, a pot of %2, a station %3 away, a plant of %4.</source>
        <translation>Una noche de %1, una maceta de %2, una estación a %3, una planta de %4.</translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation>%1 in</translation>
    </message>
    <message>
        <source>%1 cm</source>
        <translation>%1 cm</translation>
    </message>
    <message>
        <source>Dates as %1, numbers as %2, weeks from %3: as is usual in the language and the desktop’s region (%4). A change of either is in force at the next start.</source>
        <translation>Fechas como %1, números como %2, semanas desde el %3: como es usual en el idioma y la región del escritorio (%4). Un cambio rige desde el próximo inicio.</translation>
    </message>
    <message>
        <source>As the desktop</source>
        <translation>Como el escritorio</translation>
    </message>
    <message>
        <source>The window speaks it from the next start on.</source>
        <translation>La ventana lo hablará desde el próximo inicio.</translation>
    </message>
    <message>
        <source>Opened with --language; what is chosen here is in force at the next start without it.</source>
        <translation>Abierto con --language; lo elegido aquí rige en el próximo inicio sin esa opción.</translation>
    </message>
    <message>
        <source>It holds for this window and could not be kept in %1; see that the folder can be written.</source>
        <translation>Rige en esta ventana y no se pudo guardar en %1; comprobar que se puede escribir en la carpeta.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::SpotsForm</name>
    <message>
        <source>South sill</source>
        <translation>Alféizar sur</translation>
    </message>
    <message>
        <source>A window that faces south</source>
        <translation>Una ventana al sur</translation>
    </message>
    <message>
        <source>East sill</source>
        <translation>Alféizar este</translation>
    </message>
    <message>
        <source>A window that faces east</source>
        <translation>Una ventana al este</translation>
    </message>
    <message>
        <source>West sill</source>
        <translation>Alféizar oeste</translation>
    </message>
    <message>
        <source>A window that faces west</source>
        <translation>Una ventana al oeste</translation>
    </message>
    <message>
        <source>North sill</source>
        <translation>Alféizar norte</translation>
    </message>
    <message>
        <source>A window that faces north</source>
        <translation>Una ventana al norte</translation>
    </message>
    <message>
        <source>Cool landing</source>
        <translation>Rellano fresco</translation>
    </message>
    <message>
        <source>A stairwell or unheated room with a window; say its winter nights</source>
        <translation>Una escalera o habitación sin calefacción con ventana; indicar sus noches de invierno</translation>
    </message>
    <message>
        <source>Roofed balcony</source>
        <translation>Balcón techado</translation>
    </message>
    <message>
        <source>Outdoors under a roof: a balcony, a porch</source>
        <translation>Fuera bajo techo: un balcón, un porche</translation>
    </message>
    <message>
        <source>Open step</source>
        <translation>Escalón abierto</translation>
    </message>
    <message>
        <source>Outdoors under the open sky: a step, a rail, a bed before the house</source>
        <translation>Fuera a cielo abierto: un escalón, una barandilla, un arriate ante la casa</translation>
    </message>
    <message>
        <source>Screened porch</source>
        <translation>Porche con malla</translation>
    </message>
    <message>
        <source>Outdoors behind mesh</source>
        <translation>Fuera tras una malla</translation>
    </message>
    <message>
        <source>Glasshouse</source>
        <translation>Invernadero</translation>
    </message>
    <message>
        <source>Under glass, not heated</source>
        <translation>Bajo cristal, sin calefacción</translation>
    </message>
    <message>
        <source>indoors</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>roofed</source>
        <translation>techado</translation>
    </message>
    <message>
        <source>screened</source>
        <translation>con malla</translation>
    </message>
    <message>
        <source>glazed</source>
        <translation>acristalado</translation>
    </message>
    <message>
        <source>north</source>
        <translation>norte</translation>
    </message>
    <message>
        <source>north-east</source>
        <translation>noreste</translation>
    </message>
    <message>
        <source>east</source>
        <translation>este</translation>
    </message>
    <message>
        <source>south-east</source>
        <translation>sureste</translation>
    </message>
    <message>
        <source>south</source>
        <translation>sur</translation>
    </message>
    <message>
        <source>south-west</source>
        <translation>suroeste</translation>
    </message>
    <message>
        <source>west</source>
        <translation>oeste</translation>
    </message>
    <message>
        <source>north-west</source>
        <translation>noroeste</translation>
    </message>
    <message>
        <source>Indoors</source>
        <translation>Dentro</translation>
    </message>
    <message>
        <source>A room with a window</source>
        <translation>Una habitación con ventana</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Outdoors under the open sky</source>
        <translation>Fuera a cielo abierto</translation>
    </message>
    <message>
        <source>Roofed</source>
        <translation>Techado</translation>
    </message>
    <message>
        <source>Outdoors under a roof</source>
        <translation>Fuera bajo techo</translation>
    </message>
    <message>
        <source>Screened</source>
        <translation>Con malla</translation>
    </message>
    <message>
        <source>Glazed</source>
        <translation>Acristalado</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>NE</source>
        <translation>NE</translation>
    </message>
    <message>
        <source>E</source>
        <translation>E</translation>
    </message>
    <message>
        <source>SE</source>
        <translation>SE</translation>
    </message>
    <message>
        <source>S</source>
        <translation>S</translation>
    </message>
    <message>
        <source>SW</source>
        <translation>SO</translation>
    </message>
    <message>
        <source>W</source>
        <translation>O</translation>
    </message>
    <message>
        <source>NW</source>
        <translation>NO</translation>
    </message>
    <message>
        <source>A spot needs a name, such as %1.</source>
        <translation>Un sitio necesita un nombre, como %1.</translation>
    </message>
    <message>
        <source>There is a spot “%1” already; give this one another name.</source>
        <translation>Ya hay un sitio «%1»; dar otro nombre a este.</translation>
    </message>
    <message>
        <source>How many pots fit is a whole number, such as 5.</source>
        <translation>Cuántas macetas caben es un número entero, como 5.</translation>
    </message>
    <message>
        <source>From 0 to %1 pots fit at a spot; %2 do not.</source>
        <translation>En un sitio caben de 0 a %1 macetas; %2 no.</translation>
    </message>
    <message>
        <source>“%1” is not a number; write a night of the room as %2.</source>
        <translation>«%1» no es un número; escribir una noche de la habitación como %2.</translation>
    </message>
    <message>
        <source>No room has nights of %1 %2.</source>
        <translation>Ninguna habitación tiene noches de %1 %2.</translation>
    </message>
    <message>
        <source>Light by that: %1 moles a day in high summer, %2 in midwinter.</source>
        <translation>Luz según eso: %1 moles al día en pleno verano, %2 en pleno invierno.</translation>
    </message>
    <message>
        <source>faces %1</source>
        <translation>mira al %1</translation>
    </message>
    <message>
        <source>1 pot</source>
        <translation>1 maceta</translation>
    </message>
    <message>
        <source>%1 pots</source>
        <translation>%1 macetas</translation>
    </message>
    <message>
        <source>in reach of a child or an animal</source>
        <translation>al alcance de un niño o un animal</translation>
    </message>
    <message>
        <source>set apart</source>
        <translation>apartada</translation>
    </message>
    <message>
        <source>windy</source>
        <translation>ventoso</translation>
    </message>
    <message>
        <source>%1: %2. %3</source>
        <translation>%1: %2. %3</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::TonightModel</name>
    <message>
        <source>No outdoor spot.</source>
        <translation>Ningún sitio exterior.</translation>
    </message>
    <message>
        <source>Tonight %1 %2, %3. %4</source>
        <translation>Esta noche %1 %2, %3. %4</translation>
    </message>
    <message>
        <source>The dew point: %1</source>
        <translation>El punto de rocío: %1</translation>
    </message>
    <message>
        <source>Kept: a forecast of %1 for tonight. It is not taken back from here; a number typed later today counts instead.</source>
        <translation>Guardado: una previsión de %1 para esta noche. No se deshace desde aquí; un número escrito más tarde cuenta en su lugar.</translation>
    </message>
    <message>
        <source>Write how many days ago the forecast was made, 0 to %1.</source>
        <translation>Escribir hace cuántos días se hizo el pronóstico, de 0 a %1.</translation>
    </message>
    <message>
        <source>Say which file has the forecast.</source>
        <translation>Decir qué archivo tiene la previsión.</translation>
    </message>
    <message>
        <source>Kept: a forecast of 1 night. One read later today counts instead.</source>
        <translation>Guardada: una previsión de 1 noche. Una leída más tarde hoy cuenta en su lugar.</translation>
    </message>
    <message>
        <source>Kept: a forecast of %1 nights. One read later today counts instead.</source>
        <translation>Guardada: una previsión de %1 noches. Una leída más tarde hoy cuenta en su lugar.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::YearBegin</name>
    <message>
        <source>The year from %1</source>
        <translation>El año desde el %1</translation>
    </message>
    <message>
        <source>The year from today</source>
        <translation>El año desde hoy</translation>
    </message>
    <message>
        <source>“%1” is no date. Write it such as %2.</source>
        <translation>«%1» no es una fecha. Escribirla como %2.</translation>
    </message>
    <message>
        <source>A year can begin up to a year ago, or within the next five years.</source>
        <translation>Un año puede empezar hasta un año atrás, o dentro de los próximos cinco años.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::YearModel</name>
    <message>
        <source>1 in %1</source>
        <translation>1 de cada %1</translation>
    </message>
    <message>
        <source>No plan is kept yet. A kept plan changes only where it pays, and each change is named.</source>
        <translation>Aún no hay plan guardado. Un plan guardado cambia solo donde merece la pena, y cada cambio se nombra.</translation>
    </message>
    <message>
        <source>As in the plan kept on %1.</source>
        <translation>Como en el plan guardado el %1.</translation>
    </message>
    <message>
        <source>One stay is otherwise than in the plan kept on %1:</source>
        <translation>Una estancia es distinta que en el plan guardado el %1:</translation>
    </message>
    <message>
        <source>%1 stays are otherwise than in the plan kept on %2:</source>
        <translation>%1 estancias son distintas que en el plan guardado el %2:</translation>
    </message>
    <message>
        <source>%1 goes where the plan puts it</source>
        <translation>%1 va adonde la pone el plan</translation>
    </message>
    <message>
        <source>Risk you accept, %1</source>
        <translation>Riesgo que se acepta, %1</translation>
    </message>
    <message>
        <source>out %1</source>
        <translation>sale el %1</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>entra el %1</translation>
    </message>
    <message>
        <source>. %1 %2</source>
        <translation>. %1 %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source> %1: %2.</source>
        <translation> %1: %2.</translation>
    </message>
    <message>
        <source>%1. Night low %2, 9 in 10: %3 to %4.%5 Frost this night %6, frost after this night %7. Day %8.</source>
        <translation>%1. Mínima nocturna %2, 9 de cada 10: %3 a %4.%5 Helada esta noche %6, helada tras esta noche %7. Día %8.</translation>
    </message>
    <message>
        <source>, %1</source>
        <translation>, %1</translation>
    </message>
    <message>
        <source>Hardening %1 to %2, %3 steps</source>
        <translation>Endurecer del %1 al %2, %3 escalones</translation>
    </message>
    <message>
        <source>%1 all year</source>
        <translation>%1 todo el año</translation>
    </message>
    <message>
        <source>%1 %2 to %3</source>
        <translation>%1 del %2 al %3</translation>
    </message>
    <message>
        <source>, risk %1 out, %2 in</source>
        <translation>, riesgo %1 al salir, %2 al entrar</translation>
    </message>
</context>
<context>
    <name>lathhouse::sheet</name>
    <message>
        <source>Sheet %1 of %2</source>
        <translation>Hoja %1 de %2</translation>
    </message>
    <message>
        <source> · </source>
        <translation> · </translation>
    </message>
    <message>
        <source>The year from %1</source>
        <translation>El año desde el %1</translation>
    </message>
    <message>
        <source>The round from %1</source>
        <translation>La ronda desde el %1</translation>
    </message>
    <message>
        <source>Seeds on %1</source>
        <translation>Semillas el %1</translation>
    </message>
    <message>
        <source>Lathhouse · printed %1</source>
        <translation>Lathhouse · impreso el %1</translation>
    </message>
    <message>
        <source>can wait until %1</source>
        <translation>puede esperar hasta el %1</translation>
    </message>
    <message>
        <source>The round of %1</source>
        <translation>La ronda del %1</translation>
    </message>
    <message>
        <source>%1 · %2 days, to %3</source>
        <translation>%1 · %2 días, hasta el %3</translation>
    </message>
    <message>
        <source>In walking order: clean plants first, then suspect, then infested ones. A letter: the caution above it.</source>
        <translation>Por orden de paso: primero plantas limpias, luego sospechosas, luego infestadas. Una letra: la precaución de arriba.</translation>
    </message>
    <message>
        <source>In walking order: clean plants first, then suspect, then infested ones. A letter: the caution above it. No forecast is kept, so tonight is not in it.</source>
        <translation>Por orden de paso: primero plantas limpias, luego sospechosas, luego infestadas. Una letra: la precaución de arriba. No hay previsión guardada, así que esta noche no está.</translation>
    </message>
    <message>
        <source>%1 · by the date of sowing</source>
        <translation>%1 · por fecha de siembra</translation>
    </message>
</context>
<context>
    <name>lathhouse::sheet::SheetPrinter</name>
    <message>
        <source>A sheet is kept in a folder of this computer; %1 is none.</source>
        <translation>Una hoja se guarda en una carpeta de este equipo; %1 no lo es.</translation>
    </message>
    <message>
        <source>1 page is kept in %1.</source>
        <translation>1 página guardada en %1.</translation>
    </message>
    <message>
        <source>%1 pages are kept in %2.</source>
        <translation>%1 páginas guardadas en %2.</translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <source>this was not kept: %1</source>
        <translation>esto no se guardó: %1</translation>
    </message>
    <message>
        <source>a household in memory has no such photo</source>
        <translation>un hogar en memoria no tiene esa fotografía</translation>
    </message>
    <message>
        <source>the drawn photo could not be written to %1; make room where temporary files are kept</source>
        <translation>la fotografía dibujada no se pudo escribir en %1; haga sitio donde se guardan los archivos temporales</translation>
    </message>
    <message>
        <source>there is a plant &quot;%1&quot; already</source>
        <translation>ya hay una planta «%1»</translation>
    </message>
    <message>
        <source>the spot is not there any more</source>
        <translation>el sitio ya no está</translation>
    </message>
    <message>
        <source>the plant is not there any more</source>
        <translation>la planta ya no está</translation>
    </message>
    <message>
        <source>the night could not be kept: %1</source>
        <translation>no se pudo guardar la noche: %1</translation>
    </message>
    <message>
        <source>no night of it was kept: %1</source>
        <translation>no se guardó ninguna noche de él: %1</translation>
    </message>
    <message>
        <source>name the columns of date, low and high, and rain if there is one, with commas between: Day,Min,Max</source>
        <translation>nombrar las columnas de fecha, mínima y máxima, y la de lluvia si la hay, con comas entre ellas: Day,Min,Max</translation>
    </message>
    <message>
        <source>the height of the household&apos;s place is not known; say at which height the record was kept</source>
        <translation>no se conoce la altitud del lugar; indicar a qué altitud se llevó el registro</translation>
    </message>
    <message>
        <source>%1 has no night&apos;s low in it</source>
        <translation>%1 no contiene ninguna mínima nocturna</translation>
    </message>
    <message>
        <source>%1. Nothing was taken in</source>
        <translation>%1. No se incorporó nada</translation>
    </message>
    <message>
        <source>the tray has not that many seedlings left</source>
        <translation>a la bandeja no le quedan tantas plántulas</translation>
    </message>
    <message>
        <source>the tray was sown after that day</source>
        <translation>la bandeja se sembró después de ese día</translation>
    </message>
    <message>
        <source>stands there</source>
        <translation>está allí</translation>
    </message>
    <message>
        <source>this could not be written, so it counts as not done: %1</source>
        <translation>esto no se pudo escribir, así que cuenta como no hecho: %1</translation>
    </message>
    <message>
        <source>a task can be put off by 1 to %1 days</source>
        <translation>una tarea se puede aplazar de 1 a %1 días</translation>
    </message>
    <message>
        <source>the lot is not there any more</source>
        <translation>el lote ya no está</translation>
    </message>
    <message>
        <source>the tables have no crop &quot;%1&quot;, so nothing is known of its sowing</source>
        <translation>las tablas no tienen el cultivo «%1», así que no se sabe nada de su siembra</translation>
    </message>
    <message>
        <source>the count was not kept: %1</source>
        <translation>el recuento no se guardó: %1</translation>
    </message>
    <message>
        <source>%1 has a forecast that was made after today</source>
        <translation>%1 contiene un pronóstico hecho después de hoy</translation>
    </message>
    <message>
        <source>the forecast could not be kept: %1</source>
        <translation>no se pudo guardar la previsión: %1</translation>
    </message>
    <message>
        <source>%1. Sow indoors %2.</source>
        <translation>%1. Sembrar dentro %2.</translation>
    </message>
    <message>
        <source>%1. Sow outdoors %2.</source>
        <translation>%1. Sembrar fuera %2.</translation>
    </message>
    <message>
        <source>Comes up %1 to %2.</source>
        <translation>Nace del %1 al %2.</translation>
    </message>
    <message>
        <source>out %1</source>
        <translation>sale el %1</translation>
    </message>
    <message>
        <source>Plant out from %1.</source>
        <translation>Plantar fuera desde el %1.</translation>
    </message>
    <message>
        <source>%1 from %2.</source>
        <translation>%1 desde el %2.</translation>
    </message>
    <message>
        <source>The pest has no name that is known here; the slow clock of the citrus mealybug stands in.</source>
        <translation>La plaga no tiene un nombre conocido aquí; la suple el reloj lento de la cochinilla de los cítricos.</translation>
    </message>
    <message>
        <source>Back among the others not before %1: two weeks since the last contact and two clean looks one crawler stage apart.</source>
        <translation>De vuelta con las demás no antes del %1: dos semanas desde el último contacto y dos miradas limpias separadas por una fase de cría.</translation>
    </message>
    <message>
        <source>A generation by %1: through on %2.</source>
        <translation>Una generación según %1: cumplida el %2.</translation>
    </message>
    <message>
        <source>A generation by %1: never at these temperatures.</source>
        <translation>Una generación según %1: nunca a estas temperaturas.</translation>
    </message>
    <message>
        <source>Clear not before %1, and then only with a clean look; every find starts it anew.</source>
        <translation>Libre no antes del %1, y solo con una mirada limpia; cada hallazgo la reinicia.</translation>
    </message>
    <message>
        <source>It cannot be declared clear at this temperature: the pest&apos;s clock does not get through. At 20 °C it would take about %1 days.</source>
        <translation>No se puede declarar libre a esta temperatura: el reloj de la plaga no llega al final. A 20 °C tardaría unos %1 días.</translation>
    </message>
    <message>
        <source>Today it is too cold for the clock to run.</source>
        <translation>Hoy hace demasiado frío para que corra el reloj.</translation>
    </message>
    <message>
        <source>It was put back among the others before it was clear.</source>
        <translation>Volvió con las demás antes de estar libre.</translation>
    </message>
    <message>
        <source>Heavily infested: throwing it away, bagged, is a sound choice for an ordinary plant and spares the others.</source>
        <translation>Muy infestada: tirarla, en una bolsa, es una buena decisión con una planta corriente y protege a las demás.</translation>
    </message>
    <message>
        <source>Where: %1</source>
        <translation>Dónde: %1</translation>
    </message>
    <message>
        <source>Seen as: %1</source>
        <translation>Se ve como: %1</translation>
    </message>
    <message>
        <source>Gets about: %1</source>
        <translation>Se propaga: %1</translation>
    </message>
    <message>
        <source>Helps: %1; label first</source>
        <translation>Ayuda: %1; primero la etiqueta</translation>
    </message>
    <message>
        <source>A generation by %1: %2 at 15 °C, %3 at 20, %4 at 25</source>
        <translation>Una generación según %1: %2 a 15 °C, %3 a 20, %4 a 25</translation>
    </message>
    <message>
        <source>%1: first signs after %2.</source>
        <translation>%1: primeros signos a los %2.</translation>
    </message>
    <message>
        <source>%1 (%2): first signs after %3.</source>
        <translation>%1 (%2): primeros signos a los %3.</translation>
    </message>
    <message>
        <source>It travels in the plant.</source>
        <translation>Viaja por la planta.</translation>
    </message>
    <message>
        <source>It hurts what it touched.</source>
        <translation>Daña lo que tocó.</translation>
    </message>
    <message>
        <source>It may come as a vapour days later.</source>
        <translation>Puede llegar como vapor días después.</translation>
    </message>
    <message>
        <source>Sources disagree: %1</source>
        <translation>Las fuentes no coinciden: %1</translation>
    </message>
    <message>
        <source>fits well: %1</source>
        <translation>encaja bien: %1</translation>
    </message>
    <message>
        <source>fits: %1</source>
        <translation>encaja: %1</translation>
    </message>
    <message>
        <source>fits a little: %1</source>
        <translation>encaja un poco: %1</translation>
    </message>
    <message>
        <source>for it: %1</source>
        <translation>a favor: %1</translation>
    </message>
    <message>
        <source>against it: %1</source>
        <translation>en contra: %1</translation>
    </message>
    <message>
        <source>the time fits</source>
        <translation>el tiempo encaja</translation>
    </message>
    <message>
        <source>the time does not fit</source>
        <translation>el tiempo no encaja</translation>
    </message>
    <message>
        <source>Tonight</source>
        <translation>Esta noche</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Dejar</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Mirar</translation>
    </message>
    <message>
        <source>Rule out first</source>
        <translation>Descartar primero</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Anotar</translation>
    </message>
    <message>
        <source>Photograph</source>
        <translation>Fotografiar</translation>
    </message>
    <message>
        <source>Ask</source>
        <translation>Preguntar</translation>
    </message>
    <message>
        <source>Tell</source>
        <translation>Avisar</translation>
    </message>
    <message>
        <source>Roots: in a pot they are at risk at %1; a usual winter&apos;s lowest night at %2 is %3. Wrap the pot, stand it on the ground by a wall, or bring it in.</source>
        <translation>Raíces: en maceta corren riesgo a %1; la noche más fría de un invierno usual en %2 es de %3. Envolver la maceta, ponerla en el suelo junto a una pared o meterla dentro.</translation>
    </message>
    <message>
        <source>roots slow down</source>
        <translation>las raíces se frenan</translation>
    </message>
    <message>
        <source>roots stop</source>
        <translation>las raíces se paran</translation>
    </message>
    <message>
        <source>roots are harmed within hours</source>
        <translation>las raíces se dañan en horas</translation>
    </message>
    <message>
        <source>Roots: the mix at the pot&apos;s wall reaches about %1 at %2 about %3 (rough), where %4. Shade the pot itself, set it into a larger light one, and water early.</source>
        <translation>Raíces: el sustrato junto a la pared de la maceta llega a unos %1 en %2 hacia el %3 (aproximado), y ahí %4. Dar sombra a la maceta misma, meterla en otra mayor y clara, y regar temprano.</translation>
    </message>
    <message>
        <source>Winter: %1 is warm (%2) and dim (%3 mol a day). Warm and dim weakens a plant: give it a cool place, or much more light.</source>
        <translation>Invierno: %1 es cálido (%2) y oscuro (%3 mol al día). Cálido y oscuro debilita a una planta: darle un sitio fresco, o mucha más luz.</translation>
    </message>
    <message>
        <source>Winter: %1 is warm (%2) and dim (%3 mol a day). Warm and dim weakens a plant: more light, by a window or a lamp, or cooler and drier.</source>
        <translation>Invierno: %1 es cálido (%2) y oscuro (%3 mol al día). Cálido y oscuro debilita a una planta: más luz, de una ventana o una lámpara, o más fresco y más seco.</translation>
    </message>
    <message>
        <source>Growth was slowing before the event: the plant may be nearing its size, and would slow on without any harm. Compare it with spared plants of its kind (--spared).</source>
        <translation>El crecimiento ya se frenaba antes del suceso: quizá la planta se acerca a su tamaño y se frenaría sin ningún daño. Compararla con plantas no afectadas de su especie (--spared).</translation>
    </message>
    <message>
        <source>The share is near its full: growth can hardly be seen in it any more. Measure a size as well, or take a wider outline.</source>
        <translation>La parte está casi completa: apenas se ve ya crecimiento en ella. Medir también un tamaño, o tomar un contorno más amplio.</translation>
    </message>
    <message>
        <source>The interval lies above 0.2 and it is still too early: good news has a stricter limit, since a look after every reading gives chance many tries.</source>
        <translation>El intervalo está por encima de 0,2 y aún es pronto: una buena noticia tiene un límite más estricto, porque mirar tras cada medición da al azar muchas oportunidades.</translation>
    </message>
    <message>
        <source>not on a windy day, and not below %1</source>
        <translation>no en un día de viento, ni por debajo de %1</translation>
    </message>
    <message>
        <source>the nights would allow it from %1 on; the steps need until %2</source>
        <translation>las noches lo permitirían desde el %1; los pasos duran hasta el %2</translation>
    </message>
    <message>
        <source>nothing on %1, the forecast is too cold for it</source>
        <translation>nada el %1, el pronóstico es demasiado frío</translation>
    </message>
    <message>
        <source>no spot indoors is apart from other plants: keep it an arm&apos;s length away from them</source>
        <translation>ningún lugar interior está apartado de las demás plantas: déjela a un brazo de distancia de ellas</translation>
    </message>
    <message>
        <source>it weighs about %1: carry it with a second person or on wheels</source>
        <translation>pesa unos %1: llévela entre dos personas o sobre ruedas</translation>
    </message>
    <message>
        <source>it is poisonous: gloves where sap may run, out of reach of children and animals on the way</source>
        <translation>es venenosa: guantes donde pueda salir savia, y lejos del alcance de niños y animales por el camino</translation>
    </message>
    <message>
        <source>A plant of a kind that takes no feed needs none of it.</source>
        <translation>Una planta de una especie que no toma abono no lo necesita.</translation>
    </message>
    <message>
        <source>More than %1 ppm of nitrogen is above what greenhouses give at every watering; pots at home get half or less.</source>
        <translation>Más de %1 ppm de nitrógeno supera lo que los invernaderos dan en cada riego; las macetas de casa reciben la mitad o menos.</translation>
    </message>
    <message>
        <source>Without the weight of a millilitre (on the label) only grams are known.</source>
        <translation>Sin el peso de un mililitro (en la etiqueta) solo se conocen los gramos.</translation>
    </message>
    <message>
        <source>Without the weight of a level teaspoon only grams are known: spoons of powder differ by kind from 3.8 to 6.8 g.</source>
        <translation>Sin el peso de una cucharadita rasa solo se conocen los gramos: las cucharadas de polvo pesan según la clase de 3,8 a 6,8 g.</translation>
    </message>
    <message>
        <source>More than %1 percent burns leaves of many plants; the label&apos;s strength counts.</source>
        <translation>Más del %1 por ciento quema las hojas de muchas plantas; vale la fuerza de la etiqueta.</translation>
    </message>
    <message>
        <source>Stronger than usual, which is %1 to %2 percent; the label&apos;s strength counts.</source>
        <translation>Más fuerte de lo usual, que es de %1 a %2 por ciento; vale la fuerza de la etiqueta.</translation>
    </message>
    <message>
        <source>Weaker than usual, which is %1 to %2 percent, so it may do nothing; the label&apos;s strength counts.</source>
        <translation>Más flojo de lo usual, que es de %1 a %2 por ciento, y quizá sin efecto; vale la fuerza de la etiqueta.</translation>
    </message>
    <message>
        <source>January</source>
        <translation>enero</translation>
    </message>
    <message>
        <source>February</source>
        <translation>febrero</translation>
    </message>
    <message>
        <source>March</source>
        <translation>marzo</translation>
    </message>
    <message>
        <source>April</source>
        <translation>abril</translation>
    </message>
    <message>
        <source>May</source>
        <translation>mayo</translation>
    </message>
    <message>
        <source>June</source>
        <translation>junio</translation>
    </message>
    <message>
        <source>July</source>
        <translation>julio</translation>
    </message>
    <message>
        <source>August</source>
        <translation>agosto</translation>
    </message>
    <message>
        <source>September</source>
        <translation>septiembre</translation>
    </message>
    <message>
        <source>October</source>
        <translation>octubre</translation>
    </message>
    <message>
        <source>November</source>
        <translation>noviembre</translation>
    </message>
    <message>
        <source>December</source>
        <translation>diciembre</translation>
    </message>
    <message>
        <source>Day length: %1.</source>
        <translation>Duración del día: %1.</translation>
    </message>
    <message>
        <source>Many such seeds and their seedlings are poisonous: keep packets from children and animals.</source>
        <translation>Muchas de estas semillas y sus plántulas son venenosas: guardar los sobres lejos de niños y animales.</translation>
    </message>
    <message>
        <source>Raw beans are poisonous: keep seed from children; cook the harvest.</source>
        <translation>Las judías crudas son venenosas: semillas lejos de los niños; cocer la cosecha.</translation>
    </message>
    <message>
        <source>Dressed (coloured) seed is poisonous: gloves, never eaten, the packet&apos;s words come first.</source>
        <translation>La semilla tratada (coloreada) es venenosa: guantes, no comerla nunca, lo que dice el sobre va primero.</translation>
    </message>
    <message>
        <source>The room is too cool for the seed: warm the mix to %1 (a heat mat made for plants; water and mains apart).</source>
        <translation>La habitación es demasiado fresca para la semilla: calentar el sustrato a %1 (una manta térmica hecha para plantas; agua y corriente separadas).</translation>
    </message>
    <message>
        <source>Emergence from the usual days; cooler than the best range it is an estimate (common practice).</source>
        <translation>La nascencia según los días usuales; más fresco que el mejor intervalo es una estimación (práctica común).</translation>
    </message>
    <message>
        <source>The days to emergence hold only while the mix is kept moist.</source>
        <translation>Los días hasta nacer valen solo mientras el sustrato se mantiene húmedo.</translation>
    </message>
    <message>
        <source>A slow sort would still stand there when damaging nights come: choose a quick or usual one.</source>
        <translation>Una variedad lenta aún estaría allí cuando lleguen noches dañinas: elegir una rápida o normal.</translation>
    </message>
    <message>
        <source>It falls into months of heavy rain: trays and pots under a roof, saucers empty.</source>
        <translation>Cae en meses de lluvia intensa: bandejas y macetas bajo techo, platos vacíos.</translation>
    </message>
    <message>
        <source>a spot that is gone</source>
        <translation>un sitio que ya no existe</translation>
    </message>
    <message>
        <source>hardening, out by day</source>
        <translation>aclimatación, fuera de día</translation>
    </message>
    <message>
        <source>A date of the plan, which is a chance and not a promise.</source>
        <translation>Una fecha del plan, que es una probabilidad y no una promesa.</translation>
    </message>
    <message>
        <source>%1 (reckoned from its days at one temperature)</source>
        <translation>%1 (calculado de sus días a una temperatura)</translation>
    </message>
    <message>
        <source>%1 (common practice, no source)</source>
        <translation>%1 (práctica común, sin fuente)</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nunca</translation>
    </message>
    <message>
        <source>%1 d</source>
        <translation>%1 d</translation>
    </message>
    <message>
        <source>a pest without a known name</source>
        <translation>una plaga sin nombre conocido</translation>
    </message>
    <message>
        <source>nothing found</source>
        <translation>nada encontrado</translation>
    </message>
    <message>
        <source>%1 found, last on %2</source>
        <translation>%1, último hallazgo el %2</translation>
    </message>
    <message>
        <source>stood at one spot with %1, last on %2 (%3)</source>
        <translation>estuvo en el mismo sitio que %1, por última vez el %2 (%3)</translation>
    </message>
    <message>
        <source>stood at one spot with an infested plant, last on %1 (%2)</source>
        <translation>estuvo en el mismo sitio que una planta infestada, por última vez el %1 (%2)</translation>
    </message>
    <message>
        <source>%1 found at its spot on %2</source>
        <translation>%1, hallazgo en su sitio el %2</translation>
    </message>
    <message>
        <source>set apart on %1 to be watched</source>
        <translation>apartada el %1 para observarla</translation>
    </message>
    <message>
        <source>clear since %1: a whole generation without finds</source>
        <translation>libre desde el %1: una generación entera sin hallazgos</translation>
    </message>
    <message>
        <source>clean looks and time enough, since %1</source>
        <translation>miradas limpias y tiempo suficiente, desde el %1</translation>
    </message>
    <message>
        <source>set it apart from the others; wash hands and tools after it</source>
        <translation>apartarla de las demás; lavar manos y herramientas después</translation>
    </message>
    <message>
        <source>treat it (%1); label first, and ask what speaks against it before any spray</source>
        <translation>tratarla (%1); primero la etiqueta, y antes de pulverizar preguntar qué lo desaconseja</translation>
    </message>
    <message>
        <source>look it over</source>
        <translation>revisarla</translation>
    </message>
    <message>
        <source>look it over: %1</source>
        <translation>revisarla: %1</translation>
    </message>
    <message>
        <source>last look; clean means it may go back</source>
        <translation>última revisión; limpia quiere decir que puede volver</translation>
    </message>
    <message>
        <source>last look: %1; clean means it may go back</source>
        <translation>última revisión: %1; limpia quiere decir que puede volver</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>hasta el %1</translation>
    </message>
    <message>
        <source>with no end in sight</source>
        <translation>sin fin a la vista</translation>
    </message>
    <message>
        <source>%1 stands apart; leave it so %2.</source>
        <translation>%1 está apartada; dejarla así %2.</translation>
    </message>
    <message>
        <source>%1 should stand apart %2, and no spot is fit; bag it loosely or keep an arm&apos;s length free round it.</source>
        <translation>%1 debería estar apartada %2, y ningún sitio sirve; embolsarla floja o dejar libre un brazo de distancia alrededor.</translation>
    </message>
    <message>
        <source>%1: to %2 %3.</source>
        <translation>%1: a %2, %3.</translation>
    </message>
    <message>
        <source>%1: the least bad is %2 (1 clean plant there) %3; leaves must not touch, and it is visited last.</source>
        <translation>%1: lo menos malo es %2 (allí hay 1 planta limpia), %3; que las hojas no se toquen, y se visita la última.</translation>
    </message>
    <message>
        <source>%1: the least bad is %2 (%3 clean plants there) %4; leaves must not touch, and it is visited last.</source>
        <translation>%1: lo menos malo es %2 (allí hay %3 plantas limpias), %4; que las hojas no se toquen, y se visita la última.</translation>
    </message>
    <message>
        <source>No spot of this household is set down as apart, so nothing can be isolated properly; the spots with the fewest contacts are named instead.</source>
        <translation>Ningún sitio de este hogar figura como apartado, así que nada se puede aislar bien; se nombran los sitios con menos contactos.</translation>
    </message>
    <message>
        <source>The spots that are apart are full or unfit for a plant that needs one.</source>
        <translation>Los sitios apartados están llenos o no sirven para una planta que necesita uno.</translation>
    </message>
    <message>
        <source>A find names no pest; log it again with its name for a better date.</source>
        <translation>Un hallazgo no nombra la plaga; anótelo de nuevo con su nombre para tener mejor fecha.</translation>
    </message>
    <message>
        <source>No pest named &quot;%1&quot; is known here; its courses run by the citrus mealybug&apos;s clock.</source>
        <translation>Aquí no se conoce ninguna plaga «%1»; sus tratamientos siguen el reloj de la cochinilla de los cítricos.</translation>
    </message>
    <message>
        <source>%1 has no spot; its clock is reckoned at 20 °C, and its contacts are not known.</source>
        <translation>%1 no tiene sitio; su reloj se calcula a 20 °C y no se conocen sus contactos.</translation>
    </message>
    <message>
        <source>%1 flies: look at every plant of the rooms, wherever it stands.</source>
        <translation>%1 vuela: mirar todas las plantas de las habitaciones, estén donde estén.</translation>
    </message>
    <message>
        <source>%1: some countries want finds reported; ask the plant-health office.</source>
        <translation>%1: en algunos países hay que comunicar los hallazgos; pregunte a la oficina de sanidad vegetal.</translation>
    </message>
    <message>
        <source>%1 is set apart on a spot with clean plants.</source>
        <translation>%1 está apartada en un sitio con plantas limpias.</translation>
    </message>
    <message>
        <source>Clean plants first, suspect ones next, infested ones last; wash hands and tools between. Labels and local rules come first; keep children and animals away from what is wet with spray.</source>
        <translation>Primero las plantas limpias, luego las sospechosas, al final las infestadas; lavar manos y herramientas entre medias. Las etiquetas y las normas locales van primero; niños y animales lejos de lo que esté mojado de producto.</translation>
    </message>
    <message>
        <source>The household&apos;s own record %1, kept %2 away, %3</source>
        <translation>El registro propio del hogar %1, llevado a %2, %3</translation>
    </message>
    <message>
        <source>1 station, the nearest %1 away, %2</source>
        <translation>1 estación, la más cercana a %1, %2</translation>
    </message>
    <message>
        <source>%1 stations, the nearest %2 away, %3</source>
        <translation>%1 estaciones, la más cercana a %2, %3</translation>
    </message>
    <message>
        <source>Climate figures: %1</source>
        <translation>Datos del clima: %1</translation>
    </message>
    <message>
        <source>2003–2021 means computed from CLIMAT reports, Deutscher Wetterdienst (CC BY 4.0)</source>
        <translation>medias de 2003–2021 calculadas de informes CLIMAT, Deutscher Wetterdienst (CC BY 4.0)</translation>
    </message>
    <message>
        <source>computed from GHCN-Daily, NOAA NCEI (public domain)</source>
        <translation>calculado de GHCN-Daily, NOAA NCEI (dominio público)</translation>
    </message>
    <message>
        <source>the household&apos;s own record</source>
        <translation>el registro propio del hogar</translation>
    </message>
    <message>
        <source>%1 to %2 hours</source>
        <translation>%1 a %2 horas</translation>
    </message>
    <message>
        <source>%1 to %2 days</source>
        <translation>%1 a %2 días</translation>
    </message>
    <message>
        <source>It leaves no trace in the mix.</source>
        <translation>No deja rastro en el sustrato.</translation>
    </message>
    <message>
        <source>It is bound in the mix, so washing does not bring it out.</source>
        <translation>Queda fijado en el sustrato, así que el lavado no lo saca.</translation>
    </message>
    <message>
        <source>It is partly bound in the mix.</source>
        <translation>Queda fijado en parte en el sustrato.</translation>
    </message>
    <message>
        <source>It moves with water through the mix.</source>
        <translation>Se mueve con el agua por el sustrato.</translation>
    </message>
    <message>
        <source>Its half-life there is %1 to %2 days.</source>
        <translation>Su vida media allí es de %1 a %2 días.</translation>
    </message>
    <message>
        <source>Its half-life there is over %1 days.</source>
        <translation>Su vida media allí pasa de %1 días.</translation>
    </message>
    <message>
        <source>rinse the wet leaves, gloves on, the pot tipped</source>
        <translation>enjuagar las hojas mojadas, con guantes y la maceta inclinada</translation>
    </message>
    <message>
        <source>photograph and write down</source>
        <translation>fotografiar y anotar</translation>
    </message>
    <message>
        <source>ask whoever sprayed, and tell whom it concerns</source>
        <translation>preguntar a quien pulverizó, y avisar a quien le afecte</translation>
    </message>
    <message>
        <source>wash the mix through and catch the water</source>
        <translation>lavar el sustrato y recoger el agua</translation>
    </message>
    <message>
        <source>sow beans or peas in three pots of that mix and three of clean mix</source>
        <translation>sembrar judías o guisantes en tres macetas de ese sustrato y tres de sustrato limpio</translation>
    </message>
    <message>
        <source>compare the two sets of pots; bent or cupped leaves in one set alone mean a trace in the mix</source>
        <translation>comparar las dos series de macetas; hojas torcidas o abarquilladas solo en una indican un resto en el sustrato</translation>
    </message>
    <message>
        <source>look, photograph and log new growth</source>
        <translation>mirar, fotografiar y anotar los brotes nuevos</translation>
    </message>
    <message>
        <source>Above the plant&apos;s safe night: nothing is to be expected.</source>
        <translation>Por encima de la noche segura de la planta: no cabe esperar nada.</translation>
    </message>
    <message>
        <source>Stress: below the safe night, above the line of damage. Often nothing shows.</source>
        <translation>Estrés: bajo la noche segura, sobre la línea de daño. A menudo no se ve nada.</translation>
    </message>
    <message>
        <source>Growth is probably lost: long below the safe night stunts a plant without a sign on the leaves.</source>
        <translation>Probablemente se perdió crecimiento: mucho tiempo bajo la noche segura frena a una planta sin señal en las hojas.</translation>
    </message>
    <message>
        <source>Leaf damage is possible: the line was crossed, though not for long.</source>
        <translation>Es posible daño en las hojas: se cruzó la línea, aunque no por mucho tiempo.</translation>
    </message>
    <message>
        <source>Leaf damage is likely; the plant as a whole should live.</source>
        <translation>Es probable daño en las hojas; la planta en conjunto debería vivir.</translation>
    </message>
    <message>
        <source>Death is possible: the lethal line was reached. Wait for the looks before giving it up.</source>
        <translation>La muerte es posible: se alcanzó la línea mortal. Espere a los días de mirar antes de darla por perdida.</translation>
    </message>
    <message>
        <source>Death is likely: the night went below the lethal line. Roots or base may yet live, so wait.</source>
        <translation>La muerte es probable: la noche bajó de la línea mortal. Las raíces o la base pueden vivir aún, así que espere.</translation>
    </message>
    <message>
        <source>No temperature was ever published for this kind: its lines are common practice, so this is a guess.</source>
        <translation>Nunca se publicó una temperatura para esta especie: sus líneas son práctica común, así que esto es una estimación.</translation>
    </message>
    <message>
        <source>Its lines rest on a hardiness class, not on a measured injury.</source>
        <translation>Sus líneas se apoyan en una clase de rusticidad, no en un daño medido.</translation>
    </message>
    <message>
        <source>Its lines are those of its group or genus; sorts differ.</source>
        <translation>Sus líneas son las de su grupo o género; las variedades difieren.</translation>
    </message>
    <message>
        <source>Its lines come from cold stores in the dark; light and wind make it worse.</source>
        <translation>Sus líneas vienen de cámaras frías a oscuras; la luz y el viento lo empeoran.</translation>
    </message>
    <message>
        <source>Its lines are the household&apos;s own.</source>
        <translation>Sus líneas son las propias del hogar.</translation>
    </message>
    <message>
        <source>Nights add up; by how much is known for few kinds.</source>
        <translation>Las noches se suman; cuánto, se sabe de pocas especies.</translation>
    </message>
    <message>
        <source>How long it was cold was not measured; the night&apos;s course is a model with the usual swing of the spot at that time of the year where it is known, else with 8 K. A clear night&apos;s swing is wider and its cold shorter.</source>
        <translation>No se midió cuánto duró el frío; el curso de la noche es un modelo con la oscilación usual del sitio en esa época si se conoce, o si no con 8 K. En una noche despejada la oscilación es mayor y el frío más corto.</translation>
    </message>
    <message>
        <source>look at leaves and stems, photograph</source>
        <translation>mirar hojas y tallos, fotografiar</translation>
    </message>
    <message>
        <source>scratch test on woody stems: green and moist is alive</source>
        <translation>prueba de rascado en tallos leñosos: verde y húmedo está vivo</translation>
    </message>
    <message>
        <source>new growth by now is a sign of life; log it, then feeding may begin again</source>
        <translation>brotes nuevos a estas alturas son señal de vida; anotarlos, y entonces se puede volver a abonar</translation>
    </message>
    <message>
        <source>The database is damaged</source>
        <translation>La base de datos está dañada</translation>
    </message>
    <message>
        <source>A line of the journal leads nowhere</source>
        <translation>Una anotación no lleva a ninguna parte</translation>
    </message>
    <message>
        <source>A photo is missing</source>
        <translation>Falta una foto</translation>
    </message>
    <message>
        <source>A photo was altered</source>
        <translation>Una foto fue alterada</translation>
    </message>
    <message>
        <source>A photo cannot be read</source>
        <translation>Una foto no se puede leer</translation>
    </message>
    <message>
        <source>A photo is not in the journal</source>
        <translation>Una foto no está en el diario</translation>
    </message>
    <message>
        <source>A measurement&apos;s photo is unknown</source>
        <translation>La foto de una medición es desconocida</translation>
    </message>
    <message>
        <source>A file is not the program&apos;s</source>
        <translation>Un archivo no es del programa</translation>
    </message>
    <message>
        <source>Something unfinished is left over</source>
        <translation>Ha quedado algo sin terminar</translation>
    </message>
    <message>
        <source>copy the folder as it is, restore the latest backup into a new folder; without one, `lathhouse export csv DIR --salvage` saves what can be read and `lathhouse import csv DIR` makes a household of it</source>
        <translation>copiar la carpeta como está y recuperar la última copia en una carpeta nueva; sin copia, `lathhouse export csv CARPETA --salvage` salva lo que se puede leer y `lathhouse import csv CARPETA` hace de ello un hogar</translation>
    </message>
    <message>
        <source>restore a backup from before it; without one, `lathhouse export csv DIR` and `lathhouse import csv DIR --leave-out-broken` make a household without such entries</source>
        <translation>recuperar una copia anterior; sin ella, `lathhouse export csv CARPETA` y `lathhouse import csv CARPETA --leave-out-broken` hacen un hogar sin esas anotaciones</translation>
    </message>
    <message>
        <source>put the file back from a backup or the camera, by importing it again</source>
        <translation>devolver el archivo desde una copia o desde la cámara, incorporándolo de nuevo</translation>
    </message>
    <message>
        <source>put the original back from a backup; the altered one can be kept elsewhere first</source>
        <translation>devolver el original desde una copia; el alterado se puede guardar antes en otro lugar</translation>
    </message>
    <message>
        <source>look at the rights of the file and at the disk; put it back from a backup</source>
        <translation>mirar los permisos del archivo y el estado del disco; devolverlo desde una copia</translation>
    </message>
    <message>
        <source>import it if you want it in the journal; else it can be moved away</source>
        <translation>incorporarla si se quiere en el diario; si no, se puede llevar a otro lugar</translation>
    </message>
    <message>
        <source>the value stands as it is; import the photo (`lathhouse add photos FILE`) to see again what was measured, or measure anew in a photo that is there</source>
        <translation>el valor queda como está; incorporar la foto (`lathhouse add photos ARCHIVO`) para ver de nuevo qué se midió, o medir otra vez en una foto que exista</translation>
    </message>
    <message>
        <source>leave it or move it away; backups do not hold it unless it is below photos/</source>
        <translation>dejarlo o llevarlo a otro lugar; las copias no lo contienen salvo que esté bajo photos/</translation>
    </message>
    <message>
        <source>delete it when no other lathhouse is at work on the folder</source>
        <translation>borrarlo cuando ningún otro lathhouse trabaje en la carpeta</translation>
    </message>
    <message>
        <source>its kind is not in the reference, so follow the label at half strength while it grows</source>
        <translation>su especie no está en la referencia; seguir la etiqueta a media dosis mientras crece</translation>
    </message>
    <message>
        <source>a kind that takes no feed</source>
        <translation>una especie que no se abona</translation>
    </message>
    <message>
        <source>it stands at no spot</source>
        <translation>no está en ningún sitio</translation>
    </message>
    <message>
        <source>weed-killer or another chemical hit it on %1</source>
        <translation>un herbicida u otro producto la alcanzó el %1</translation>
    </message>
    <message>
        <source>weed-killer or another chemical hit it</source>
        <translation>un herbicida u otro producto la alcanzó</translation>
    </message>
    <message>
        <source>set apart with sick roots on %1</source>
        <translation>apartada con raíces enfermas el %1</translation>
    </message>
    <message>
        <source>set apart with sick roots</source>
        <translation>apartada con raíces enfermas</translation>
    </message>
    <message>
        <source>a cold night hurt it on %1</source>
        <translation>una noche fría la dañó el %1</translation>
    </message>
    <message>
        <source>a cold night hurt it</source>
        <translation>una noche fría la dañó</translation>
    </message>
    <message>
        <source>pests were found on it on %1</source>
        <translation>se le encontraron plagas el %1</translation>
    </message>
    <message>
        <source>pests were found on it</source>
        <translation>se le encontraron plagas</translation>
    </message>
    <message>
        <source>set apart on %1</source>
        <translation>apartada el %1</translation>
    </message>
    <message>
        <source>set apart</source>
        <translation>apartada</translation>
    </message>
    <message>
        <source>repotted on %1; fresh mix holds feed</source>
        <translation>trasplantada el %1; el sustrato nuevo tiene abono</translation>
    </message>
    <message>
        <source>repotted; fresh mix holds feed</source>
        <translation>trasplantada; el sustrato nuevo tiene abono</translation>
    </message>
    <message>
        <source>bought on %1; its mix holds feed</source>
        <translation>comprada el %1; su sustrato tiene abono</translation>
    </message>
    <message>
        <source>bought; its mix holds feed</source>
        <translation>comprada; su sustrato tiene abono</translation>
    </message>
    <message>
        <source>moved into much brighter light on %1; it changes its leaves first</source>
        <translation>llevada a mucha más luz el %1; primero cambia sus hojas</translation>
    </message>
    <message>
        <source>moved into much brighter light; it changes its leaves first</source>
        <translation>llevada a mucha más luz; primero cambia sus hojas</translation>
    </message>
    <message>
        <source>it rests</source>
        <translation>está en reposo</translation>
    </message>
    <message>
        <source>rain keeps the pot wet and washes feed out</source>
        <translation>la lluvia mantiene mojada la maceta y lava el abono</translation>
    </message>
    <message>
        <source>too cool to grow</source>
        <translation>demasiado fresco para crecer</translation>
    </message>
    <message>
        <source>too hot to grow</source>
        <translation>demasiado calor para crecer</translation>
    </message>
    <message>
        <source>too little light to grow</source>
        <translation>muy poca luz para crecer</translation>
    </message>
    <message>
        <source>days too short to grow</source>
        <translation>días demasiado cortos para crecer</translation>
    </message>
    <message>
        <source>%1 ml</source>
        <translation>%1 ml</translation>
    </message>
    <message>
        <source>%1 L</source>
        <translation>%1 L</translation>
    </message>
    <message>
        <source>%1 qt</source>
        <translation>%1 qt</translation>
    </message>
    <message>
        <source>%1 lb</source>
        <translation>%1 lb</translation>
    </message>
    <message>
        <source>%1 kg</source>
        <translation>%1 kg</translation>
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
        <source>%1; until new growth is logged</source>
        <translation>%1; hasta que se anoten brotes nuevos</translation>
    </message>
    <message>
        <source>%1; until it is released</source>
        <translation>%1; hasta que se libere</translation>
    </message>
    <message>
        <source>%1; until it is released and new growth is logged</source>
        <translation>%1; hasta que se libere y se anoten brotes nuevos</translation>
    </message>
    <message>
        <source>%1; until no pest is found any more</source>
        <translation>%1; hasta que no se encuentre ninguna plaga</translation>
    </message>
    <message>
        <source>no watering is logged</source>
        <translation>no hay ningún riego anotado</translation>
    </message>
    <message>
        <source>by then it has drawn what it may</source>
        <translation>para entonces ha consumido lo que puede</translation>
    </message>
    <message>
        <source>it draws little; look all the same</source>
        <translation>consume poco; mirar de todos modos</translation>
    </message>
    <message>
        <source>rain may keep it wet; feel 5 cm deep</source>
        <translation>quizá la lluvia la mantiene mojada; tocar a 5 cm de hondo</translation>
    </message>
    <message>
        <source>cool and dim</source>
        <translation>fresco y oscuro</translation>
    </message>
    <message>
        <source>cool and bright</source>
        <translation>fresco y claro</translation>
    </message>
    <message>
        <source>warm and bright</source>
        <translation>cálido y claro</translation>
    </message>
    <message>
        <source>warm and dim</source>
        <translation>cálido y oscuro</translation>
    </message>
    <message>
        <source>Wet season for pots in the open: %1. Cacti and succulents under a roof, pots on feet, saucers empty, no feed; look for fungus. The top may look dry while the roots stand wet: feel 5 cm deep.</source>
        <translation>Época húmeda para macetas al aire libre: %1. Cactus y suculentas bajo techo, macetas sobre pies, platos vacíos, sin abono; vigilar los hongos. Arriba puede parecer seco mientras las raíces están mojadas: palpar a 5 cm.</translation>
    </message>
    <message>
        <source>the rest is common practice without a source</source>
        <translation>el resto es práctica común sin fuente</translation>
    </message>
    <message>
        <source>Sources: %1.</source>
        <translation>Fuentes: %1.</translation>
    </message>
    <message>
        <source>%1 % a week in odds</source>
        <translation>%1 % por semana en razón de probabilidades</translation>
    </message>
    <message>
        <source>%1 % a week</source>
        <translation>%1 % por semana</translation>
    </message>
    <message>
        <source>It grew %1 before and grows %2 now</source>
        <translation>Antes crecía un %1 y ahora crece un %2</translation>
    </message>
    <message>
        <source>It grew %1 before and loses %2 now</source>
        <translation>Antes crecía un %1 y ahora pierde un %2</translation>
    </message>
    <message>
        <source>It lost %1 before and grows %2 now</source>
        <translation>Antes perdía un %1 y ahora crece un %2</translation>
    </message>
    <message>
        <source>It lost %1 before and loses %2 now</source>
        <translation>Antes perdía un %1 y ahora pierde un %2</translation>
    </message>
    <message>
        <source>none of it</source>
        <translation>nada de ello</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>none at 9 in 10</source>
        <translation>nada en 9 de cada 10</translation>
    </message>
    <message>
        <source>none to %1 at 9 in 10</source>
        <translation>de nada a %1 en 9 de cada 10</translation>
    </message>
    <message>
        <source>between %1 and %2 at 9 in 10</source>
        <translation>entre %1 y %2 en 9 de cada 10</translation>
    </message>
    <message>
        <source>No setback: the yellow share did not rise.</source>
        <translation>Sin retroceso: la parte amarilla no aumentó.</translation>
    </message>
    <message>
        <source>No setback: it grows on as it did before.</source>
        <translation>Sin retroceso: sigue creciendo como antes.</translation>
    </message>
    <message>
        <source>Recovered: nearly all of the yellowing is gone.</source>
        <translation>Recuperada: casi todo el amarillo ha desaparecido.</translation>
    </message>
    <message>
        <source>Recovered: it grows about as fast as before.</source>
        <translation>Recuperada: crece más o menos tan rápido como antes.</translation>
    </message>
    <message>
        <source>Recovering: some of the yellowing is gone.</source>
        <translation>Se recupera: parte del amarillo ha desaparecido.</translation>
    </message>
    <message>
        <source>Recovering: it grows again, how fast is not yet sure.</source>
        <translation>Se recupera: vuelve a crecer, aún no se sabe a qué ritmo.</translation>
    </message>
    <message>
        <source>Holding: the yellow share stays where it went.</source>
        <translation>Se mantiene: la parte amarilla sigue donde quedó.</translation>
    </message>
    <message>
        <source>Holding: it stands still or nearly so.</source>
        <translation>Se mantiene: está parada o casi.</translation>
    </message>
    <message>
        <source>Declining: the yellow share is rising.</source>
        <translation>Decae: la parte amarilla aumenta.</translation>
    </message>
    <message>
        <source>Declining: it gets smaller.</source>
        <translation>Decae: se hace más pequeña.</translation>
    </message>
    <message>
        <source>Cannot be judged by this measure: it has %1 of the 3 readings needed before the event, and later ones cannot help.</source>
        <translation>No se puede juzgar por esta medida: de las 3 mediciones necesarias antes del suceso hay %1, y las posteriores no ayudan.</translation>
    </message>
    <message>
        <source>Too early: it has %1 of the 4 readings that are needed after the event.</source>
        <translation>Demasiado pronto: de las 4 mediciones necesarias después del suceso hay %1.</translation>
    </message>
    <message>
        <source>Too early: by warmth and light there was no time to grow, so standing still says nothing.</source>
        <translation>Demasiado pronto: por calor y luz no hubo tiempo de crecer, así que estar parada no dice nada.</translation>
    </message>
    <message>
        <source>Too early: it did not grow before the event, so there is nothing to regain.</source>
        <translation>Demasiado pronto: no crecía antes del suceso, así que no hay nada que recuperar.</translation>
    </message>
    <message>
        <source>Too early by one reading: the last one looks good, and the next has to bear it out.</source>
        <translation>Pronto por una medición: la última pinta bien, y la siguiente debe confirmarlo.</translation>
    </message>
    <message>
        <source>Too early: the yellow share rose and seems to do so no longer; whether yellow goes again cannot be said yet.</source>
        <translation>Demasiado pronto: la parte amarilla subió y parece que ya no sube; si lo amarillo desaparece aún no se puede decir.</translation>
    </message>
    <message>
        <source>Too early: it got smaller and seems to do so no longer; whether it grows again cannot be said yet.</source>
        <translation>Demasiado pronto: se hizo más pequeña y parece que ya no; si vuelve a crecer aún no se puede decir.</translation>
    </message>
    <message>
        <source>Too early: the readings fit more than one answer.</source>
        <translation>Demasiado pronto: las mediciones encajan con más de una respuesta.</translation>
    </message>
    <message>
        <source>By %1 readings before the event and %2 after it.</source>
        <translation>Por %1 mediciones antes del suceso y %2 después.</translation>
    </message>
    <message>
        <source>Yellow changes by %1 now; of what the event turned yellow %2 is gone again, %3.</source>
        <translation>Lo amarillo cambia ahora un %1; de lo que el suceso puso amarillo, %2 ha desaparecido, %3.</translation>
    </message>
    <message>
        <source>Yellow changes by %1 now.</source>
        <translation>Lo amarillo cambia ahora un %1.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>That is %1 of what it was, %2.</source>
        <translation>Eso es %1 de lo que era, %2.</translation>
    </message>
    <message>
        <source>By the growth clock, which takes warmth and light out, that is %1 of what it was, %2.</source>
        <translation>Por el reloj de crecimiento, que descuenta el calor y la luz, eso es %1 de lo que era, %2.</translation>
    </message>
    <message>
        <source>A reading on %1 could settle it, if it goes on as now.</source>
        <translation>Una medición el %1 podría decidirlo, si sigue como ahora.</translation>
    </message>
    <message>
        <source>No date in sight settles it, if readings go on as they do.</source>
        <translation>Ninguna fecha a la vista lo decide, si se sigue midiendo así.</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>práctica común, sin fuente</translation>
    </message>
    <message>
        <source>a figure published for this plant; the other lines may be common practice</source>
        <translation>una cifra publicada para esta planta; los demás límites pueden ser práctica común</translation>
    </message>
    <message>
        <source>a published cold-store test; the lines are read from it</source>
        <translation>un ensayo publicado en cámara fría; los límites se leen de él</translation>
    </message>
    <message>
        <source>a figure or a list published for its group or genus, not for the plant itself</source>
        <translation>una cifra o lista publicada para su grupo o género, no para la planta misma</translation>
    </message>
    <message>
        <source>a published hardiness class or growth floor; damage and lethal line are common practice</source>
        <translation>una clase de rusticidad o un mínimo de crecimiento publicados; los límites de daño y letal son práctica común</translation>
    </message>
    <message>
        <source>its sources or common practice; not recorded which</source>
        <translation>sus fuentes o práctica común; no consta cuál</translation>
    </message>
    <message>
        <source>a list of plants among its sources, and common practice</source>
        <translation>una lista de plantas entre sus fuentes, y práctica común</translation>
    </message>
    <message>
        <source>dim</source>
        <translation>sombra</translation>
    </message>
    <message>
        <source>medium</source>
        <translation>media</translation>
    </message>
    <message>
        <source>bright, without direct sun</source>
        <translation>mucha, sin sol directo</translation>
    </message>
    <message>
        <source>four hours of direct sun or more</source>
        <translation>cuatro horas de sol directo o más</translation>
    </message>
    <message>
        <source>keep moist</source>
        <translation>mantener húmeda</translation>
    </message>
    <message>
        <source>let the top 2 to 3 cm, about an inch, dry</source>
        <translation>dejar secar los 2 a 3 cm de arriba</translation>
    </message>
    <message>
        <source>let it dry right out</source>
        <translation>dejar secar del todo</translation>
    </message>
    <message>
        <source>out for 1 hour</source>
        <translation>fuera 1 hora</translation>
    </message>
    <message>
        <source>out for %1 hours</source>
        <translation>fuera %1 horas</translation>
    </message>
    <message>
        <source>%1 in full shade, in for the night</source>
        <translation>%1 a plena sombra, dentro por la noche</translation>
    </message>
    <message>
        <source>%1 with morning sun only, in for the night</source>
        <translation>%1 solo con sol de mañana, dentro por la noche</translation>
    </message>
    <message>
        <source>%1 where it shall stand, in for the night</source>
        <translation>%1 donde ha de estar, dentro por la noche</translation>
    </message>
    <message>
        <source>first night out</source>
        <translation>primera noche fuera</translation>
    </message>
    <message>
        <source>into deeper shade outdoors</source>
        <translation>a una sombra más densa, fuera</translation>
    </message>
    <message>
        <source>look under every leaf, in the axils and at the pot&apos;s rim and holes</source>
        <translation>mirar bajo cada hoja, en las axilas y en el borde y los agujeros de la maceta</translation>
    </message>
    <message>
        <source>stand the pot in lukewarm water for 15 minutes and let it drain</source>
        <translation>poner la maceta 15 minutos en agua tibia y dejarla escurrir</translation>
    </message>
    <message>
        <source>carry it in</source>
        <translation>entrarla</translation>
    </message>
    <message>
        <source>keep it apart from the others, visit it last</source>
        <translation>mantenerla apartada de las demás, visitarla la última</translation>
    </message>
    <message>
        <source>from the brightest window step by step to its place; less water, no feed</source>
        <translation>de la ventana más clara paso a paso a su lugar; menos agua, sin abono</translation>
    </message>
    <message>
        <source>1 hour</source>
        <translation>1 hora</translation>
    </message>
    <message>
        <source>%1 hours</source>
        <translation>%1 horas</translation>
    </message>
    <message>
        <source>%1, full shade</source>
        <translation>%1, sombra plena</translation>
    </message>
    <message>
        <source>%1, morning sun</source>
        <translation>%1, sol de la mañana</translation>
    </message>
    <message>
        <source>%1, where it shall stand</source>
        <translation>%1, donde ha de quedar</translation>
    </message>
    <message>
        <source>A plant</source>
        <translation>Una planta</translation>
    </message>
    <message>
        <source>a spot</source>
        <translation>un sitio</translation>
    </message>
    <message>
        <source>%1 goes out to %2 on %3</source>
        <translation>%1 sale a %2 el %3</translation>
    </message>
    <message>
        <source>%1 comes in to %2 on %3</source>
        <translation>%1 entra a %2 el %3</translation>
    </message>
    <message>
        <source>%1, %2 times as light</source>
        <translation>%1, %2 veces más luz</translation>
    </message>
    <message>
        <source>%1, %2 times darker</source>
        <translation>%1, %2 veces menos luz</translation>
    </message>
    <message>
        <source>%1, nights %2 colder</source>
        <translation>%1, noches %2 más frías</translation>
    </message>
    <message>
        <source>%1, nights %2 warmer</source>
        <translation>%1, noches %2 más cálidas</translation>
    </message>
    <message>
        <source>Hang lamps so that water and wet hands stay away from them and from the plug, off damp floors and on a socket with a residual current device; a lamp that gets hot keeps its distance from leaves and curtains.</source>
        <translation>Colgar las lámparas de modo que el agua y las manos mojadas queden lejos de ellas y del enchufe, nunca sobre suelo húmedo y en una toma con diferencial; una lámpara que se calienta guarda distancia de hojas y cortinas.</translation>
    </message>
    <message>
        <source>Beyond %1 h a day most plants lack their dark hours: hang the lamp nearer or take a stronger one.</source>
        <translation>Con más de %1 h al día a la mayoría de las plantas les faltan sus horas de oscuridad: acercar la lámpara o poner una más fuerte.</translation>
    </message>
    <message>
        <source>%1 (%2 readings, ± %3)</source>
        <translation>%1 (%2 mediciones, ± %3)</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1 drops</source>
        <translation>%1 gotas</translation>
    </message>
    <message>
        <source>%1 ppm is too strong for a light feeder, which gets %2 to %3 ppm.</source>
        <translation>%1 ppm es demasiado para una planta poco exigente, que recibe de %2 a %3 ppm.</translation>
    </message>
    <message>
        <source>%1 ppm is too strong for a medium feeder, which gets %2 to %3 ppm.</source>
        <translation>%1 ppm es demasiado para una planta de exigencia media, que recibe de %2 a %3 ppm.</translation>
    </message>
    <message>
        <source>%1 ppm is too strong for a heavy feeder, which gets %2 to %3 ppm.</source>
        <translation>%1 ppm es demasiado para una planta muy exigente, que recibe de %2 a %3 ppm.</translation>
    </message>
    <message>
        <source>%1 ppm is weak for a light feeder, which gets %2 to %3 ppm; in a dim room half of that is right.</source>
        <translation>%1 ppm es poco para una planta poco exigente, que recibe de %2 a %3 ppm; en una sala oscura la mitad es lo justo.</translation>
    </message>
    <message>
        <source>%1 ppm is weak for a medium feeder, which gets %2 to %3 ppm; in a dim room half of that is right.</source>
        <translation>%1 ppm es poco para una planta de exigencia media, que recibe de %2 a %3 ppm; en una sala oscura la mitad es lo justo.</translation>
    </message>
    <message>
        <source>%1 ppm is weak for a heavy feeder, which gets %2 to %3 ppm; in a dim room half of that is right.</source>
        <translation>%1 ppm es poco para una planta muy exigente, que recibe de %2 a %3 ppm; en una sala oscura la mitad es lo justo.</translation>
    </message>
    <message>
        <source>less than ⅛</source>
        <translation>menos de ⅛</translation>
    </message>
    <message>
        <source>%1 tablespoon</source>
        <translation>%1 cucharada</translation>
    </message>
    <message>
        <source>%1 tablespoons</source>
        <translation>%1 cucharadas</translation>
    </message>
    <message>
        <source>%1 teaspoon</source>
        <translation>%1 cucharadita</translation>
    </message>
    <message>
        <source>%1 teaspoons</source>
        <translation>%1 cucharaditas</translation>
    </message>
    <message>
        <source>%1 g of %2 into %3 of water</source>
        <translation>%1 g de %2 en %3 de agua</translation>
    </message>
    <message>
        <source>about %1 (%2 g) of %3 into %4 of water</source>
        <translation>unas %1 (%2 g) de %3 en %4 de agua</translation>
    </message>
    <message>
        <source>%1 ml of %2, about %3, into %4 of water</source>
        <translation>%1 ml de %2, unas %3, en %4 de agua</translation>
    </message>
    <message>
        <source>%1 g of %2, about %3, into %4 of water</source>
        <translation>%1 g de %2, unas %3, en %4 de agua</translation>
    </message>
    <message>
        <source>about %1 (%2 ml) into %3 of water</source>
        <translation>unas %1 (%2 ml) en %3 de agua</translation>
    </message>
    <message>
        <source>%1 ml, about %2, into %3 of water</source>
        <translation>%1 ml, unas %2, en %3 de agua</translation>
    </message>
    <message>
        <source>Makes %1 ppm nitrogen, %2 ppm phosphorus, %3 ppm potassium.</source>
        <translation>Da %1 ppm de nitrógeno, %2 ppm de fósforo, %3 ppm de potasio.</translation>
    </message>
    <message>
        <source>A conductivity meter shows about %1 mS/cm more than the water alone (%2 where the nitrogen is urea, %3 where it is calcium nitrate); the label&apos;s figure goes before it.</source>
        <translation>Un medidor de conductividad marca unos %1 mS/cm más que el agua sola (%2 si el nitrógeno es urea, %3 si es nitrato de calcio); la cifra de la etiqueta va delante.</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>S</source>
        <translation>S</translation>
    </message>
    <message>
        <source>E</source>
        <translation>E</translation>
    </message>
    <message>
        <source>W</source>
        <translation>O</translation>
    </message>
    <message>
        <source>stays apart until %1 at least: it is watched for pests</source>
        <translation>sigue apartada al menos hasta el %1: se vigila por si tiene plagas</translation>
    </message>
    <message>
        <source>stays apart until no pest is found any more: it is watched for pests</source>
        <translation>sigue apartada hasta que no se encuentre plaga: se vigila</translation>
    </message>
    <message>
        <source>stays apart until no pest is found any more: %1 found</source>
        <translation>sigue apartada hasta que no se encuentre plaga: se encontró %1</translation>
    </message>
    <message>
        <source>stays apart until no pest is found any more: it may have %1</source>
        <translation>sigue apartada hasta que no se encuentre plaga: puede tener %1</translation>
    </message>
    <message>
        <source>stays apart until %1 at least: %2 found</source>
        <translation>sigue apartada al menos hasta el %1: se encontró %2</translation>
    </message>
    <message>
        <source>stays apart until %1 at least: it may have %2</source>
        <translation>sigue apartada al menos hasta el %1: puede tener %2</translation>
    </message>
    <message>
        <source>kept there by hand</source>
        <translation>fijada allí a mano</translation>
    </message>
    <message>
        <source>from here on at most %1 for a night at or below %2</source>
        <translation>desde aquí como mucho %1 de una noche a %2 o menos</translation>
    </message>
    <message>
        <source>better off outside from now on</source>
        <translation>desde ahora está mejor fuera</translation>
    </message>
    <message>
        <source>in before the chance of a night at or below %1 passes %2</source>
        <translation>dentro antes de que la probabilidad de una noche a %1 o menos pase de %2</translation>
    </message>
    <message>
        <source>nights below %1 would hold it back</source>
        <translation>noches por debajo de %1 la frenarían</translation>
    </message>
    <message>
        <source>suits it better there now</source>
        <translation>ahora le conviene más allí</translation>
    </message>
    <message>
        <source>the better spots are full</source>
        <translation>los sitios mejores están llenos</translation>
    </message>
    <message>
        <source>stays in and is not hardened before %1: hit by a spray on %2</source>
        <translation>se queda dentro y no se endurece antes del %1: alcanzada por una pulverización el %2</translation>
    </message>
    <message>
        <source>stays in and is not hardened before %1: harmed by the cold night of %2</source>
        <translation>se queda dentro y no se endurece antes del %1: dañada en la noche fría del %2</translation>
    </message>
    <message>
        <source>%1; it is carried to no clean plants</source>
        <translation>%1; no se lleva junto a plantas limpias</translation>
    </message>
    <message>
        <source>%1; no spot apart takes it, so keep it away from the others there</source>
        <translation>%1; ningún sitio apartado la admite: allí, mantenerla lejos de las demás</translation>
    </message>
    <message>
        <source>leaves the spot apart to plants with pests or under watch</source>
        <translation>deja el sitio apartado a plantas con plagas o en observación</translation>
    </message>
    <message>
        <source>out of reach of children and animals there</source>
        <translation>allí queda fuera del alcance de niños y animales</translation>
    </message>
    <message>
        <source>where it would do better, pests were found or may be</source>
        <translation>donde estaría mejor se encontraron plagas o puede haberlas</translation>
    </message>
    <message>
        <source>stays in all year: kept there by hand</source>
        <translation>se queda dentro todo el año: fijada allí a mano</translation>
    </message>
    <message>
        <source>stays in all year: every spot outdoors is within reach of a child or an animal</source>
        <translation>se queda dentro todo el año: todos los sitios exteriores están al alcance de un niño o un animal</translation>
    </message>
    <message>
        <source>stays in all year: at no time is the chance of a night at or below %1 within %2 for three weeks</source>
        <translation>se queda dentro todo el año: en ningún momento la probabilidad de una noche a %1 o menos está dentro de %2 durante tres semanas</translation>
    </message>
    <message>
        <source>its line</source>
        <translation>su límite</translation>
    </message>
    <message>
        <source>the risk</source>
        <translation>el riesgo</translation>
    </message>
    <message>
        <source>stays in all year: pests keep it from the others, and when it is clear cannot be said yet</source>
        <translation>se queda dentro todo el año: las plagas la mantienen lejos de las demás, y aún no puede decirse cuándo estará libre</translation>
    </message>
    <message>
        <source>stays in all year: outdoors it would be better off, and the spots are full</source>
        <translation>se queda dentro todo el año: fuera estaría mejor, y los sitios están llenos</translation>
    </message>
    <message>
        <source>stays in all year: going out would not make up for the carry</source>
        <translation>se queda dentro todo el año: salir no compensaría el acarreo</translation>
    </message>
    <message>
        <source>a plant</source>
        <translation>una planta</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>el %1</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>del %1 al %2</translation>
    </message>
    <message>
        <source>%1: %2 instead of %3 %4</source>
        <translation>%1: %2 en vez de %3 %4</translation>
    </message>
    <message>
        <source>%1 (new): %2 %3</source>
        <translation>%1 (nueva): %2 %3</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 stands on %2 from %3 against the accepted risk, since no indoor spot takes it; add an indoor spot or room in one</source>
        <translation>%1 está en %2 del %3 contra el riesgo aceptado, porque ningún sitio interior la admite; añadir un sitio interior o hacer hueco en uno</translation>
    </message>
    <message>
        <source>%1 can hurt a child or an animal and stands within reach on %2 from %3, since no other spot takes it; find it a place out of reach</source>
        <translation>%1 puede dañar a un niño o a un animal y está a su alcance en %2 del %3, porque ningún otro sitio la admite; buscarle un lugar fuera de alcance</translation>
    </message>
    <message>
        <source>%2 has one pot too many from %3 (%1); no other spot would do</source>
        <translation>%2 tiene una maceta de más del %3 (%1); ningún otro sitio serviría</translation>
    </message>
    <message>
        <source>%1 ought to stand apart from other plants from %2, and no spot apart takes it; keep it as far from them as you can, visit it last and wash your hands, or name such a spot with `lathhouse add spot --apart`</source>
        <translation>%1 debería estar apartada de otras plantas del %2, y ningún sitio apartado la admite; mantenerla lo más lejos posible, visitarla la última y lavarse las manos, o crear un sitio así con `lathhouse add spot --apart`</translation>
    </message>
    <message>
        <source>%1 is pinned to two places from %3; the pin entered last (%2) holds, and `lathhouse unpin` takes both back</source>
        <translation>%1 está fijada en dos lugares del %3; vale el último anotado (%2), y `lathhouse unpin` quita los dos</translation>
    </message>
    <message>
        <source>%1 %2; choose a folder into which a household was written as tables</source>
        <translation>%1 %2; elegir una carpeta en la que se escribió un hogar como tablas</translation>
    </message>
    <message>
        <source>%1 holds %2 stations; write one of them under Station, such as %3</source>
        <translation>%1 contiene %2 estaciones; escribir una de ellas en «Estación», por ejemplo %3</translation>
    </message>
    <message>
        <source>%1 is in GHCN-Daily&apos;s form, which is always in degrees Celsius; choose °C and millimetres</source>
        <translation>%1 tiene la forma de GHCN-Daily, que siempre está en grados Celsius; elegir °C y milímetros</translation>
    </message>
    <message>
        <source>%1 is there already; choose another name, or replace it</source>
        <translation>%1 ya existe; elegir otro nombre o reemplazarlo</translation>
    </message>
    <message>
        <source>%1 is damaged and was not backed up; look through the folder to see where, and bring the last backup back</source>
        <translation>%1 está dañado y no se copió; revisar la carpeta para saber dónde y recuperar la última copia de seguridad</translation>
    </message>
    <message>
        <source>%1 is damaged, so no tables were written; bring the last backup back</source>
        <translation>%1 está dañado, así que no se escribieron tablas; recuperar la última copia de seguridad</translation>
    </message>
    <message>
        <source>%1.csv: row %2 names a row of %3.csv that is not there; mend it, or choose that such rows are left out</source>
        <translation>%1.csv: la fila %2 nombra una fila de %3.csv que no existe; corregirla, o elegir que tales filas se omitan</translation>
    </message>
    <message>
        <source>%1 has no column &quot;%2&quot;; it has %3; call its columns so</source>
        <translation>%1 no tiene la columna «%2»; tiene: %3; llamar así a sus columnas</translation>
    </message>
    <message>
        <source>%1 has no column &quot;%2&quot;; write the names of its columns, such as Day,Min,Max</source>
        <translation>%1 no tiene la columna «%2»; escribir los nombres de sus columnas, por ejemplo Day,Min,Max</translation>
    </message>
    <message>
        <source>there is no spot &quot;%1&quot; in the household; write its name as it stands there</source>
        <translation>no hay ningún sitio «%1» en el hogar; escribir su nombre como está allí</translation>
    </message>
    <message>
        <source>no spot is named; fill the column spot</source>
        <translation>no se nombra ningún sitio; rellenar la columna spot</translation>
    </message>
    <message>
        <source>no station lies within %1 km and %2 m of height of that place; give a place or height nearer to one</source>
        <translation>no hay estación a menos de %1 km y %2 m de altitud de ese lugar; indicar un lugar o una altitud más cercanos a una</translation>
    </message>
    <message>
        <source>there is no household in %1</source>
        <translation>no hay ningún hogar en %1</translation>
    </message>
    <message>
        <source>there is no folder %1; choose a household&apos;s folder</source>
        <translation>no existe la carpeta %1; elegir la carpeta de un hogar</translation>
    </message>
    <message>
        <source>the plant is not among those that live, so it cannot be divided</source>
        <translation>la planta no está entre las vivas, así que no se puede dividir</translation>
    </message>
    <message>
        <source>that photo is no longer there</source>
        <translation>esa fotografía ya no está</translation>
    </message>
    <message>
        <source>that lot is no longer there</source>
        <translation>ese lote ya no está</translation>
    </message>
    <message>
        <source>the plant is no longer there</source>
        <translation>la planta ya no está</translation>
    </message>
    <message>
        <source>that tray is no longer there</source>
        <translation>esa bandeja ya no está</translation>
    </message>
    <message>
        <source>no crop named &quot;%1&quot; in the reference of seeds; choose one of the list</source>
        <translation>no hay ningún cultivo «%1» en las tablas de semillas; elegir uno de la lista</translation>
    </message>
    <message>
        <source>the values look like degrees Fahrenheit taken for Celsius; choose °F and inches</source>
        <translation>los valores parecen grados Fahrenheit tomados por Celsius; elegir °F y pulgadas</translation>
    </message>
    <message>
        <source>the values look like degrees Celsius taken for Fahrenheit; choose °C and millimetres</source>
        <translation>los valores parecen grados Celsius tomados por Fahrenheit; elegir °C y milímetros</translation>
    </message>
    <message>
        <source>new leaves</source>
        <translation>hojas nuevas</translation>
    </message>
    <message>
        <source>longest leaf</source>
        <translation>hoja más larga</translation>
    </message>
    <message>
        <source>green cover</source>
        <translation>parte verde</translation>
    </message>
    <message>
        <source>yellow share</source>
        <translation>parte amarilla</translation>
    </message>
    <message>
        <source>sow indoors</source>
        <translation>sembrar dentro</translation>
    </message>
    <message>
        <source>sow outdoors</source>
        <translation>sembrar fuera</translation>
    </message>
    <message>
        <source>count the seedlings</source>
        <translation>contar las plántulas</translation>
    </message>
    <message>
        <source>pot the seedlings up</source>
        <translation>trasplantar las plántulas a macetas</translation>
    </message>
    <message>
        <source>begin to harden the seedlings</source>
        <translation>empezar a endurecer las plántulas</translation>
    </message>
    <message>
        <source>plant out</source>
        <translation>plantar fuera</translation>
    </message>
    <message>
        <source>wash the mix through with %1 of water</source>
        <translation>lavar el sustrato con %1 de agua</translation>
    </message>
    <message>
        <source>wash the mix through with water</source>
        <translation>lavar el sustrato con agua</translation>
    </message>
    <message>
        <source>wash hands and tools before going on</source>
        <translation>lavar manos y herramientas antes de seguir</translation>
    </message>
    <message>
        <source>wash hands and tools; put on an apron or a shirt for these plants alone</source>
        <translation>lavar manos y herramientas; ponerse un delantal o camisa solo para estas plantas</translation>
    </message>
    <message>
        <source>wash hands and tools and change; nothing clean is touched before that</source>
        <translation>lavar manos y herramientas y cambiarse; no tocar nada limpio antes</translation>
    </message>
    <message>
        <source>carry it in, to stay: %1</source>
        <translation>entrarla, para quedarse: %1</translation>
    </message>
    <message>
        <source>carry it in for the night: %1</source>
        <translation>entrarla por la noche: %1</translation>
    </message>
    <message>
        <source>carry it in for the night</source>
        <translation>entrarla por la noche</translation>
    </message>
    <message>
        <source>carry it to %1</source>
        <translation>llevarla a %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, until %2</source>
        <translation>%1, hasta el %2</translation>
    </message>
    <message>
        <source>feel whether the mix is dry, and water only if it is</source>
        <translation>tocar si el sustrato está seco, y regar solo si lo está</translation>
    </message>
    <message>
        <source>feed, %1 ppm nitrogen, unless it was fed in the last %2 days</source>
        <translation>abonar, %1 ppm de nitrógeno, si no se hizo en los últimos %2 días</translation>
    </message>
    <message>
        <source>feed, %1 ppm nitrogen</source>
        <translation>abonar, %1 ppm de nitrógeno</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>abonar</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>pests travel with hands, tools and clothes</source>
        <translation>las plagas viajan con manos, herramientas y ropa</translation>
    </message>
    <message>
        <source>%1 for a low at or below %2</source>
        <translation>%1 de una mínima de %2 o menos</translation>
    </message>
    <message>
        <source>%1; the plan&apos;s date too</source>
        <translation>%1; también según el plan</translation>
    </message>
    <message>
        <source>the plan has it there from tonight on</source>
        <translation>el plan la tiene allí desde esta noche</translation>
    </message>
    <message>
        <source>it is being used to the open</source>
        <translation>se está acostumbrando al exterior</translation>
    </message>
    <message>
        <source>the plan&apos;s date</source>
        <translation>la fecha del plan</translation>
    </message>
    <message>
        <source>on the way in</source>
        <translation>camino de dentro</translation>
    </message>
    <message>
        <source>course against %1</source>
        <translation>tratamiento contra %1</translation>
    </message>
    <message>
        <source>course against a pest</source>
        <translation>tratamiento contra una plaga</translation>
    </message>
    <message>
        <source>salts gather in the mix</source>
        <translation>se acumulan sales en el sustrato</translation>
    </message>
    <message>
        <source>it is young: half the strength</source>
        <translation>es joven: la mitad de la dosis</translation>
    </message>
    <message>
        <source>it grows, and no feed is logged: if it was fed, log that or leave this out</source>
        <translation>crece, y no hay ningún abono anotado: si se abonó, anotarlo u omitir esto</translation>
    </message>
    <message>
        <source>it grows, and the last feed is used up</source>
        <translation>crece, y el último abono está gastado</translation>
    </message>
    <message>
        <source>after a cold night</source>
        <translation>tras una noche fría</translation>
    </message>
    <message>
        <source>after weed-killer or another chemical</source>
        <translation>tras un herbicida u otro producto</translation>
    </message>
    <message>
        <source>today is the last day on which it is of use</source>
        <translation>hoy es el último día en que aún sirve</translation>
    </message>
    <message>
        <source>its time is now</source>
        <translation>es su momento</translation>
    </message>
    <message>
        <source>clean plants</source>
        <translation>plantas limpias</translation>
    </message>
    <message>
        <source>suspect plants</source>
        <translation>plantas sospechosas</translation>
    </message>
    <message>
        <source>infested plants</source>
        <translation>plantas infestadas</translation>
    </message>
    <message>
        <source>It is dry all year.</source>
        <translation>Es seco todo el año.</translation>
    </message>
    <message>
        <source>Rain falls in every season.</source>
        <translation>Llueve en todas las estaciones.</translation>
    </message>
    <message>
        <source>Rain falls in every month.</source>
        <translation>Llueve todos los meses.</translation>
    </message>
    <message>
        <source>The wet season is %1, the dry season %2.</source>
        <translation>Estación lluviosa: %1; estación seca: %2.</translation>
    </message>
    <message>
        <source>Summers are dry.</source>
        <translation>Los veranos son secos.</translation>
    </message>
    <message>
        <source>Winters are dry.</source>
        <translation>Los inviernos son secos.</translation>
    </message>
    <message>
        <source>every month</source>
        <translation>todos los meses</translation>
    </message>
    <message>
        <source>no month</source>
        <translation>ningún mes</translation>
    </message>
    <message>
        <source>It is about as warm all year, a little cooler from %1; there is no winter.</source>
        <translation>Hace más o menos el mismo calor todo el año, algo menos de %1; no hay invierno.</translation>
    </message>
    <message>
        <source>It is about as warm all year; there is no winter.</source>
        <translation>Hace más o menos el mismo calor todo el año; no hay invierno.</translation>
    </message>
    <message>
        <source>There is no winter; the cool season is %1, the hottest months are %2.</source>
        <translation>No hay invierno; la época fresca es de %1, los meses más calurosos, de %2.</translation>
    </message>
    <message>
        <source>Winter is coldest from %1, summer warmest from %2.</source>
        <translation>El invierno es más frío de %1, el verano más cálido de %2.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>No frost in any of the years.</source>
        <translation>Ninguna helada en todos los años.</translation>
    </message>
    <message>
        <source>No frost in any of the years; the lowest night had %1, so it cannot be ruled out.</source>
        <translation>Ninguna helada en todos los años; la noche más fría tuvo %1, así que no puede descartarse.</translation>
    </message>
    <message>
        <source>No frost in any of the years; the lowest night had %1.</source>
        <translation>Ninguna helada en todos los años; la noche más fría tuvo %1.</translation>
    </message>
    <message>
        <source>Frost in every month, %1 nights a year.</source>
        <translation>Heladas todos los meses, %1 noches al año.</translation>
    </message>
    <message>
        <source>Frost is an exception, in about %1 years.</source>
        <translation>Las heladas son una excepción, más o menos en %1 años.</translation>
    </message>
    <message>
        <source>Frost in some years, %1 nights a year on average.</source>
        <translation>Heladas algunos años, %1 noches al año de media.</translation>
    </message>
    <message>
        <source>Frost every year, %1 nights a year.</source>
        <translation>Heladas todos los años, %1 noches al año.</translation>
    </message>
    <message>
        <source>the season is already on</source>
        <translation>la temporada ya está en marcha</translation>
    </message>
    <message>
        <source>before that a night at or below %1, which damages it, is still likelier than the risk</source>
        <translation>antes una noche a %1 o menos, que la daña, aún es más probable que el riesgo</translation>
    </message>
    <message>
        <source>later a night at or below %1, which damages it, becomes likelier than the risk before it is ready</source>
        <translation>después una noche a %1 o menos, que la daña, se hace más probable que el riesgo antes de que esté lista</translation>
    </message>
    <message>
        <source>usual nights are at or below its safe %1 until then</source>
        <translation>hasta entonces las noches usuales están a sus %1 seguros o menos</translation>
    </message>
    <message>
        <source>usual nights would be at or below its safe %1 before it is ready</source>
        <translation>las noches usuales estarían a sus %1 seguros o menos antes de que esté lista</translation>
    </message>
    <message>
        <source>the soil is too cold until then</source>
        <translation>hasta entonces el suelo está demasiado frío</translation>
    </message>
    <message>
        <source>the soil gets too cold</source>
        <translation>el suelo se enfría demasiado</translation>
    </message>
    <message>
        <source>the soil is hotter than the seed stands (%1)</source>
        <translation>el suelo está más caliente de lo que aguanta la semilla (%1)</translation>
    </message>
    <message>
        <source>until then it would stand in days hotter than it bears (mean %1 and more)</source>
        <translation>hasta entonces estaría en días más calurosos de lo que aguanta (media %1 o más)</translation>
    </message>
    <message>
        <source>later it would stand in days hotter than it bears (mean %1 and more)</source>
        <translation>después estaría en días más calurosos de lo que aguanta (media %1 o más)</translation>
    </message>
    <message>
        <source>months of more than %1 of rain wash out seed beds</source>
        <translation>los meses de más de %1 de lluvia arrastran los semilleros</translation>
    </message>
    <message>
        <source>in short or cool days it would hardly grow</source>
        <translation>en días cortos o frescos apenas crecería</translation>
    </message>
    <message>
        <source>%1 to %2 in apart</source>
        <translation>a %1 a %2 pulgadas entre sí</translation>
    </message>
    <message>
        <source>%1 in apart</source>
        <translation>a %1 pulgadas entre sí</translation>
    </message>
    <message>
        <source>%1 to %2 cm apart</source>
        <translation>a %1 a %2 cm entre sí</translation>
    </message>
    <message>
        <source>%1 cm apart</source>
        <translation>a %1 cm entre sí</translation>
    </message>
    <message>
        <source>It can go on from today, since the season is on.</source>
        <translation>Puede empezar desde hoy, porque la temporada está en marcha.</translation>
    </message>
    <message>
        <source>Plant out not before %1, since %2.</source>
        <translation>No plantar fuera antes del %1, ya que %2.</translation>
    </message>
    <message>
        <source>Sow outdoors not before %1, since %2.</source>
        <translation>No sembrar al aire libre antes del %1, ya que %2.</translation>
    </message>
    <message>
        <source>On %1 the chance of a damaging night still to come is %2, a usual night has %3, the soil %4.</source>
        <translation>El %1 la probabilidad de que aún venga una noche dañina es %2, una noche usual tiene %3, el suelo %4.</translation>
    </message>
    <message>
        <source>Nothing ends the season here: any day of the year will do.</source>
        <translation>Aquí nada termina la temporada: cualquier día del año sirve.</translation>
    </message>
    <message>
        <source>Sow not later than %1, since %2.</source>
        <translation>No sembrar después del %1, ya que %2.</translation>
    </message>
    <message>
        <source>even the coolest time of the year has days of %1 on average, and it grows badly above %2</source>
        <translation>incluso la época más fresca del año tiene días de %1 de media, y por encima de %2 crece mal</translation>
    </message>
    <message>
        <source>usual nights never stay above its safe %1 (the mildest reach %2)</source>
        <translation>las noches usuales nunca quedan por encima de sus %1 seguros (las más suaves llegan a %2)</translation>
    </message>
    <message>
        <source>the soil reaches %1 at best, and it needs %2</source>
        <translation>el suelo llega a %1 como mucho, y necesita %2</translation>
    </message>
    <message>
        <source>it needs %1 of full growth outdoors, and the longest stretch that is neither too cold at the risk nor too hot for it has %2, many of them too cool or too short for full growth</source>
        <translation>necesita %1 de pleno crecimiento fuera, y el periodo más largo que no es ni demasiado frío al riesgo ni demasiado caluroso tiene %2, muchos de ellos demasiado frescos o cortos para crecer del todo</translation>
    </message>
    <message>
        <source>No date exists here for %1 in the open: %2.</source>
        <translation>Aquí no hay fecha al aire libre para %1: %2.</translation>
    </message>
    <message>
        <source>a quick sort</source>
        <translation>una variedad rápida</translation>
    </message>
    <message>
        <source>bigger transplants, %1 weeks longer indoors</source>
        <translation>plantones más grandes, %1 semanas más dentro</translation>
    </message>
    <message>
        <source>in an unheated greenhouse or frame</source>
        <translation>en un invernadero o cajonera sin calefacción</translation>
    </message>
    <message>
        <source>a quick sort in an unheated greenhouse, %1 weeks longer indoors first</source>
        <translation>una variedad rápida en invernadero sin calefacción, antes %1 semanas más dentro</translation>
    </message>
    <message>
        <source>a quick sort in an unheated greenhouse</source>
        <translation>una variedad rápida en invernadero sin calefacción</translation>
    </message>
    <message>
        <source>accept a risk of %1</source>
        <translation>aceptar un riesgo de %1</translation>
    </message>
    <message>
        <source>keep it on a bright sill or under lamps, or choose another crop (`lathhouse sowing --calendar` names those that can be sown)</source>
        <translation>tenerla en un alféizar claro o bajo lámparas, o elegir otro cultivo (`lathhouse sowing --calendar` nombra los que se pueden sembrar)</translation>
    </message>
    <message>
        <source>%1: sow indoors %2, plant out %3</source>
        <translation>%1: sembrar dentro %2, plantar fuera %3</translation>
    </message>
    <message>
        <source>%1: sow %2</source>
        <translation>%1: sembrar %2</translation>
    </message>
    <message>
        <source>%1, ready from %2</source>
        <translation>%1, lista desde el %2</translation>
    </message>
    <message>
        <source>On the surface, pressed in</source>
        <translation>En la superficie, presionada</translation>
    </message>
    <message>
        <source>About %1 in deep</source>
        <translation>A unas %1 pulgadas de hondo</translation>
    </message>
    <message>
        <source>%1 mm deep</source>
        <translation>A %1 mm de hondo</translation>
    </message>
    <message>
        <source>%1, uncovered: it needs light to germinate</source>
        <translation>%1, sin cubrir: necesita luz para germinar</translation>
    </message>
    <message>
        <source>%1, barely covered: light helps</source>
        <translation>%1, apenas cubierta: la luz ayuda</translation>
    </message>
    <message>
        <source>%1, dark until it is up</source>
        <translation>%1, a oscuras hasta que nazca</translation>
    </message>
    <message>
        <source>%1, covered</source>
        <translation>%1, cubierta</translation>
    </message>
    <message>
        <source>%1, covered thinly</source>
        <translation>%1, cubierta con una capa fina</translation>
    </message>
    <message>
        <source>mix at %1 to %2</source>
        <translation>sustrato de %1 a %2</translation>
    </message>
    <message>
        <source>%1 % (least that may be sold unmarked, 7 CFR 201.31)</source>
        <translation>%1 % (lo mínimo que se puede vender sin marcar, 7 CFR 201.31)</translation>
    </message>
    <message>
        <source>%1 % (least by New Hampshire law)</source>
        <translation>%1 % (lo mínimo por la ley de New Hampshire)</translation>
    </message>
    <message>
        <source>%1 % (least by state flower seed law)</source>
        <translation>%1 % (lo mínimo por ley estatal de semillas de flor)</translation>
    </message>
    <message>
        <source>%1 % (common practice, no source)</source>
        <translation>%1 % (práctica común, sin fuente)</translation>
    </message>
    <message>
        <source>Wait for other weather: %1 is above %2.</source>
        <translation>Esperar otro tiempo: %1 pasa de %2.</translation>
    </message>
    <message>
        <source>Wait for other weather: %1 is below %2.</source>
        <translation>Esperar otro tiempo: %1 no llega a %2.</translation>
    </message>
    <message>
        <source>Read the label first: it stands above everything here.</source>
        <translation>Leer primero la etiqueta: está por encima de todo esto.</translation>
    </message>
    <message>
        <source>The label forbids this plant, pest or place, so it is not to be used here.</source>
        <translation>La etiqueta prohíbe esta planta, plaga o lugar, así que aquí no se usa.</translation>
    </message>
    <message>
        <source>Try one leaf and wait 24 to 48 hours before the rest.</source>
        <translation>Probar una hoja y esperar de 24 a 48 horas antes del resto.</translation>
    </message>
    <message>
        <source>The tried leaf was hurt: take another way for this plant.</source>
        <translation>La hoja probada se dañó: tome otro camino con esta planta.</translation>
    </message>
    <message>
        <source>Out of the sun first, and keep it there until it is dry.</source>
        <translation>Primero fuera del sol, y así hasta que se seque.</translation>
    </message>
    <message>
        <source>Water first and spray when the leaves stand again.</source>
        <translation>Regar primero y tratar cuando las hojas vuelvan a estar firmes.</translation>
    </message>
    <message>
        <source>It was repotted less than two weeks ago: let the roots take hold first.</source>
        <translation>Se trasplantó hace menos de dos semanas: deje que las raíces agarren antes.</translation>
    </message>
    <message>
        <source>Seedlings burn easily: wash or pick the pests off.</source>
        <translation>Las plántulas se queman con facilidad: lave o quite las plagas a mano.</translation>
    </message>
    <message>
        <source>Wait for still air; wind carries it to people, ponds and other plants.</source>
        <translation>Esperar aire en calma; el viento lo lleva a personas, estanques y otras plantas.</translation>
    </message>
    <message>
        <source>Rain would wash it off: wait for a dry day.</source>
        <translation>La lluvia lo lavaría: espere un día seco.</translation>
    </message>
    <message>
        <source>Open flowers outdoors: not while bees can reach them; wait until the flowers are over.</source>
        <translation>Flores abiertas al aire libre: no mientras las abejas lleguen; espere a que pase la floración.</translation>
    </message>
    <message>
        <source>Not on a plant in flower: what roots take up stays in nectar and pollen.</source>
        <translation>No en una planta en flor: lo que toman las raíces queda en el néctar y el polen.</translation>
    </message>
    <message>
        <source>Keep children away until it is dry and aired.</source>
        <translation>Mantener lejos a los niños hasta que esté seco y ventilado.</translation>
    </message>
    <message>
        <source>Keep animals away until it is dry and aired; cover fish tanks and stop their pumps.</source>
        <translation>Mantener lejos a los animales hasta que esté seco y ventilado; tapar los acuarios y parar sus bombas.</translation>
    </message>
    <message>
        <source>Let somebody else do it, and stay out until it is aired; ask the doctor where in doubt.</source>
        <translation>Que lo haga otra persona, y no entrar hasta que se ventile; en la duda, preguntar al médico.</translation>
    </message>
    <message>
        <source>Not without fresh air: open a window or carry it out.</source>
        <translation>No sin aire fresco: abra una ventana o sáquela fuera.</translation>
    </message>
    <message>
        <source>Never near a flame, a stove or a spark: alcohol burns.</source>
        <translation>Nunca cerca de una llama, una estufa o una chispa: el alcohol arde.</translation>
    </message>
    <message>
        <source>For eating: keep the waiting time of the label, and wash the harvest.</source>
        <translation>Para comer: respete el plazo de seguridad de la etiqueta y lave la cosecha.</translation>
    </message>
    <message>
        <source>The crop does not stand on the label: never on what is eaten.</source>
        <translation>El cultivo no figura en la etiqueta: nunca sobre lo que se come.</translation>
    </message>
    <message>
        <source>Household detergents burn more often than plant soaps, and in some places they may not be used.</source>
        <translation>Los detergentes domésticos queman más a menudo que los jabones para plantas, y en algunos sitios no se pueden usar.</translation>
    </message>
    <message>
        <source>It was mixed too long ago: mix afresh.</source>
        <translation>Se mezcló hace demasiado: mezcle de nuevo.</translation>
    </message>
    <message>
        <source>This kind is known to be hurt by it (%1): take another way.</source>
        <translation>Se sabe que daña a esta especie (%1): tome otro camino.</translation>
    </message>
    <message>
        <source>This kind may be hurt by it (%1): only after a leaf that stood 48 hours.</source>
        <translation>Puede dañar a esta especie (%1): solo tras una hoja que aguantó 48 horas.</translation>
    </message>
    <message>
        <source>This kind may be hurt by it (%1); the tried leaf stood.</source>
        <translation>Puede dañar a esta especie (%1); la hoja probada aguantó.</translation>
    </message>
    <message>
        <source>Was the label read?</source>
        <translation>¿Se leyó la etiqueta?</translation>
    </message>
    <message>
        <source>Does the label forbid this plant, pest or place?</source>
        <translation>¿Prohíbe la etiqueta esta planta, plaga o lugar?</translation>
    </message>
    <message>
        <source>How many hours ago was one leaf tried?</source>
        <translation>¿Hace cuántas horas se probó una hoja?</translation>
    </message>
    <message>
        <source>Was the tried leaf hurt?</source>
        <translation>¿Se dañó la hoja probada?</translation>
    </message>
    <message>
        <source>How warm does it get until it is dry?</source>
        <translation>¿Qué temperatura se alcanza hasta que se seque?</translation>
    </message>
    <message>
        <source>Is it in direct sun?</source>
        <translation>¿Está al sol directo?</translation>
    </message>
    <message>
        <source>Is it dry or wilted?</source>
        <translation>¿Está seca o mustia?</translation>
    </message>
    <message>
        <source>How many days since it was repotted?</source>
        <translation>¿Hace cuántos días se trasplantó?</translation>
    </message>
    <message>
        <source>Is it a seedling?</source>
        <translation>¿Es una plántula?</translation>
    </message>
    <message>
        <source>Is it windy?</source>
        <translation>¿Hace viento?</translation>
    </message>
    <message>
        <source>Is rain near?</source>
        <translation>¿Va a llover pronto?</translation>
    </message>
    <message>
        <source>Are flowers open?</source>
        <translation>¿Hay flores abiertas?</translation>
    </message>
    <message>
        <source>Are children near?</source>
        <translation>¿Hay niños cerca?</translation>
    </message>
    <message>
        <source>Are animals near, fish too?</source>
        <translation>¿Hay animales cerca, también peces?</translation>
    </message>
    <message>
        <source>Has anyone near asthma, or is anyone pregnant?</source>
        <translation>¿Hay cerca alguien con asma o embarazada?</translation>
    </message>
    <message>
        <source>Is there fresh air?</source>
        <translation>¿Hay aire fresco?</translation>
    </message>
    <message>
        <source>Is a flame, stove or spark near?</source>
        <translation>¿Hay cerca una llama, una estufa o una chispa?</translation>
    </message>
    <message>
        <source>Is any of it eaten?</source>
        <translation>¿Se come algo de ella?</translation>
    </message>
    <message>
        <source>Does the crop stand on the label?</source>
        <translation>¿Figura el cultivo en la etiqueta?</translation>
    </message>
    <message>
        <source>Is it homemade?</source>
        <translation>¿Es casero?</translation>
    </message>
    <message>
        <source>How many hours ago was it mixed?</source>
        <translation>¿Hace cuántas horas se mezcló?</translation>
    </message>
    <message>
        <source>Is it sprayed outdoors?</source>
        <translation>¿Se pulveriza al aire libre?</translation>
    </message>
    <message>
        <source>Sources disagree on the heat limit: %1 and %2; the lower one decides here.</source>
        <translation>Las fuentes no coinciden en el límite de calor: %1 y %2; aquí decide el más bajo.</translation>
    </message>
    <message>
        <source>Go: nothing speaks against it.</source>
        <translation>Adelante: nada lo desaconseja.</translation>
    </message>
    <message>
        <source>Never: not like this.</source>
        <translation>No: así nunca.</translation>
    </message>
    <message>
        <source>Wait: questions are open.</source>
        <translation>Esperar: quedan preguntas.</translation>
    </message>
    <message>
        <source>Wait.</source>
        <translation>Esperar.</translation>
    </message>
    <message>
        <source>Gloves on; wet both sides of the leaves; keep it out of sun until it is dry; look again after a day. The label and local rules come first.</source>
        <translation>Con guantes; mojar ambas caras de las hojas; fuera del sol hasta que se seque; volver a mirar al día siguiente. La etiqueta y las normas locales van primero.</translation>
    </message>
    <message>
        <source>clear and calm, so leaves get colder than the air: cover it or bring it under a roof</source>
        <translation>despejado y en calma, así que las hojas se enfrían más que el aire: cubrirla o llevarla bajo techo</translation>
    </message>
    <message>
        <source>if it turns clear and calm, leaves get colder than the air: cover it or bring it under a roof</source>
        <translation>si se despeja y calma, las hojas se enfrían más que el aire: cubrirla o llevarla bajo techo</translation>
    </message>
    <message>
        <source>if it turns clear and calm, leaves may freeze, without white frost in such dry air: cover it or bring it under a roof</source>
        <translation>si se despeja y queda en calma, las hojas pueden helarse, sin escarcha en un aire tan seco: cubrirla o ponerla bajo techo</translation>
    </message>
    <message>
        <source>if it turns clear and calm, frost on leaves though the air stays above freezing: cover it or bring it under a roof</source>
        <translation>si se despeja y queda en calma, helada en las hojas aunque el aire siga sobre cero: cubrirla o ponerla bajo techo</translation>
    </message>
    <message>
        <source>clear and calm, so leaves may freeze, without white frost in such dry air: cover it or bring it under a roof</source>
        <translation>despejado y en calma, así que las hojas pueden helarse, sin escarcha en un aire tan seco: cubrirla o ponerla bajo techo</translation>
    </message>
    <message>
        <source>clear and calm, so frost on leaves though the air stays above freezing: cover it or bring it under a roof</source>
        <translation>despejado y en calma, así que helada en las hojas aunque el aire siga sobre cero: cubrirla o ponerla bajo techo</translation>
    </message>
    <message>
        <source>%1 for a night at or below %2, where damage begins: within the risk</source>
        <translation>%1 de una noche a %2 o menos, donde empieza el daño: dentro del riesgo</translation>
    </message>
    <message>
        <source>%1 for a night at or below %2, where damage begins</source>
        <translation>%1 de una noche a %2 o menos, donde empieza el daño</translation>
    </message>
    <message>
        <source>%1 for a night at or below %2, which can kill it</source>
        <translation>%1 de una noche a %2 o menos, que puede matarla</translation>
    </message>
    <message>
        <source>indoors; by the room&apos;s logged lows %1 for a night at or below %2</source>
        <translation>dentro; según las mínimas anotadas de la habitación, %1 de una noche a %2 o menos</translation>
    </message>
    <message>
        <source>indoors, and by the room&apos;s logged lows %1 for a night at or below %2, where damage begins: find it a warmer room</source>
        <translation>dentro, y según las mínimas anotadas de la habitación, %1 de una noche a %2 o menos, donde empieza el daño: búsquele una habitación más cálida</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>%1 colder than the open air</source>
        <translation>%1 más frío que al aire libre</translation>
    </message>
    <message>
        <source>%1 milder than the open air</source>
        <translation>%1 más suave que al aire libre</translation>
    </message>
    <message>
        <source>Jan</source>
        <translation>ene</translation>
    </message>
    <message>
        <source>Feb</source>
        <translation>feb</translation>
    </message>
    <message>
        <source>Mar</source>
        <translation>mar</translation>
    </message>
    <message>
        <source>Apr</source>
        <translation>abr</translation>
    </message>
    <message>
        <source>Jun</source>
        <translation>jun</translation>
    </message>
    <message>
        <source>Jul</source>
        <translation>jul</translation>
    </message>
    <message>
        <source>Aug</source>
        <translation>ago</translation>
    </message>
    <message>
        <source>Sep</source>
        <translation>sept</translation>
    </message>
    <message>
        <source>Oct</source>
        <translation>oct</translation>
    </message>
    <message>
        <source>Nov</source>
        <translation>nov</translation>
    </message>
    <message>
        <source>Dec</source>
        <translation>dic</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>dom</translation>
    </message>
    <message>
        <source>Mon</source>
        <translation>lun</translation>
    </message>
    <message>
        <source>Tue</source>
        <translation>mar</translation>
    </message>
    <message>
        <source>Wed</source>
        <translation>mié</translation>
    </message>
    <message>
        <source>Thu</source>
        <translation>jue</translation>
    </message>
    <message>
        <source>Fri</source>
        <translation>vie</translation>
    </message>
    <message>
        <source>Sat</source>
        <translation>sáb</translation>
    </message>
    <message>
        <source>almost sure</source>
        <translation>casi seguro</translation>
    </message>
    <message>
        <source>%1 in 10</source>
        <translation>%1 de cada 10</translation>
    </message>
    <message>
        <source>under 1 in 1000</source>
        <translation>menos de 1 de cada 1000</translation>
    </message>
    <message>
        <source>1 in %1</source>
        <translation>1 de cada %1</translation>
    </message>
    <message>
        <source>miles</source>
        <translation>millas</translation>
    </message>
    <message>
        <source>%1 %2 %3</source>
        <translation>%1 %2 %3</translation>
    </message>
    <message>
        <source>keep out of reach of children and animals</source>
        <translation>mantener lejos de niños y animales</translation>
    </message>
    <message>
        <source>deadly to people and animals if eaten</source>
        <translation>mortal para personas y animales si se come</translation>
    </message>
    <message>
        <source>deadly to people if eaten</source>
        <translation>mortal para personas si se come</translation>
    </message>
    <message>
        <source>deadly to animals if eaten</source>
        <translation>mortal para animales si se come</translation>
    </message>
    <message>
        <source>kept at %1 always</source>
        <translation>fijada siempre en %1</translation>
    </message>
    <message>
        <source>kept at %1 %2</source>
        <translation>fijada en %1 %2</translation>
    </message>
    <message>
        <source>%1, at %2 %3</source>
        <translation>%1, en %2 %3</translation>
    </message>
    <message>
        <source>first flower</source>
        <translation>primera flor</translation>
    </message>
    <message>
        <source>full leaf</source>
        <translation>hoja completa</translation>
    </message>
    <message>
        <source>first ripe</source>
        <translation>primera madurez</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot name a jug; take 1 to 40 characters without digits, the first a letter, such as &quot;blue can&quot;</source>
        <translation>«%1» no puede ser el nombre de una regadera; usar de 1 a 40 caracteres sin cifras, el primero una letra, como «regadera azul»</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a backslash in its path</source>
        <translation>«%1» tiene una barra invertida en su ruta</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a path from the root of a disk</source>
        <translation>«%1» tiene una ruta desde la raíz de un disco</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has an empty part, &quot;.&quot; or &quot;..&quot; in its path</source>
        <translation>«%1» tiene una parte vacía, «.» o «..» en su ruta</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has over %2 bytes</source>
        <translation>«%1» tiene más de %2 bytes</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is a link or another special file</source>
        <translation>«%1» es un enlace u otro archivo especial</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is encrypted or packed in a way that is not read here</source>
        <translation>«%1» está cifrado o comprimido de un modo que aquí no se lee</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no amount of water; write a number and a measure, such as 2 L, 500 ml, cup, cup-metric, tbsp, tsp, floz-us, pint-us, pint-imp, quart-us, gal-us or gal-imp%2</source>
        <translation>«%1» no es una cantidad de agua; escribir un número y una medida, como 2 L, 500 ml, cup, cup-metric, tbsp, tsp, floz-us, pint-us, pint-imp, quart-us, gal-us o gal-imp%2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no column that is read here; there are %2</source>
        <translation>«%1» no es una columna que se lea aquí; hay %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no date; write it as 2027-05-09</source>
        <translation>«%1» no es una fecha; escribirla como 2027-05-09</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no day of the year; write it as 07-31</source>
        <translation>«%1» no es un día del año; escribirlo como 07-31</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no day; write it as 1991-01-31</source>
        <translation>«%1» no es un día; escribirlo como 1991-01-31</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no day; write it as 19910131</source>
        <translation>«%1» no es un día; escribirlo como 19910131</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no feed; write the three numbers of its label, such as 20-10-20</source>
        <translation>«%1» no es un abono; escribir los tres números de su etiqueta, como 20-10-20</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no number (%2)</source>
        <translation>«%1» no es un número (%2)</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no number (column %2)</source>
        <translation>«%1» no es un número (columna %2)</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no possible value; leave the cell empty for a gap</source>
        <translation>«%1» no es un valor posible; dejar la celda vacía donde falte</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no station, year, month and element</source>
        <translation>«%1» no es estación, año, mes y magnitud</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no time; write it as 2027-05-09T14:30:00</source>
        <translation>«%1» no es una hora; escribirla como 2027-05-09T14:30:00</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no value</source>
        <translation>«%1» no es un valor</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no value in tenths</source>
        <translation>«%1» no es un valor en décimas</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no whole number (column %2)</source>
        <translation>«%1» no es un número entero (columna %2)</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is there twice, or as a file and a folder</source>
        <translation>«%1» está dos veces, o como archivo y como carpeta</translation>
    </message>
    <message>
        <source>&quot;%1&quot; names no column; write our name, &apos;=&apos; and the name in the file, such as low_c=Tmin</source>
        <translation>«%1» no nombra ninguna columna; escribir nuestro nombre, «=» y el nombre en el archivo, como low_c=Tmin</translation>
    </message>
    <message>
        <source>&quot;%1&quot; on day %2 belongs to a day that the month does not have</source>
        <translation>«%1» en el día %2 es de un día que el mes no tiene</translation>
    </message>
    <message>
        <source>&quot;%1&quot; on day %2 is no number</source>
        <translation>«%1» en el día %2 no es un número</translation>
    </message>
    <message>
        <source>&quot;%1&quot; on day %2 is no possible value</source>
        <translation>«%1» en el día %2 no es un valor posible</translation>
    </message>
    <message>
        <source>%1 %2; nothing was unpacked</source>
        <translation>%1 %2; no se desempaquetó nada</translation>
    </message>
    <message>
        <source>%1 already holds a household; choose a new or an empty folder</source>
        <translation>%1 ya contiene un hogar; elegir una carpeta nueva o vacía</translation>
    </message>
    <message>
        <source>%1 cannot be made (%2)</source>
        <translation>%1 no se puede crear (%2)</translation>
    </message>
    <message>
        <source>%1 cannot be made (%2); choose another place</source>
        <translation>%1 no se puede crear (%2); elegir otro lugar</translation>
    </message>
    <message>
        <source>%1 cannot be made; choose a folder where you may write</source>
        <translation>%1 no se puede crear; elegir una carpeta donde se pueda escribir</translation>
    </message>
    <message>
        <source>%1 cannot be read (%2); check its rights</source>
        <translation>%1 no se puede leer (%2); revisar sus permisos</translation>
    </message>
    <message>
        <source>%1 cannot be read to its end; the disk may be failing</source>
        <translation>%1 no se puede leer hasta el final; puede que el disco esté fallando</translation>
    </message>
    <message>
        <source>%1 cannot be read; check its rights</source>
        <translation>%1 no se puede leer; revisar sus permisos</translation>
    </message>
    <message>
        <source>%1 cannot be read; you need the right to read it</source>
        <translation>%1 no se puede leer; hace falta permiso para leerlo</translation>
    </message>
    <message>
        <source>%1 cannot be written (%2); choose a folder where you may write</source>
        <translation>%1 no se puede escribir (%2); elegir una carpeta donde se pueda escribir</translation>
    </message>
    <message>
        <source>%1 cannot be written (%2); make room or choose a folder where you may write, and start again</source>
        <translation>%1 no se puede escribir (%2); hacer sitio o elegir una carpeta donde se pueda escribir, y empezar de nuevo</translation>
    </message>
    <message>
        <source>%1 cannot be written (it is there and is no file); choose another name</source>
        <translation>%1 no se puede escribir (existe y no es un archivo); elegir otro nombre</translation>
    </message>
    <message>
        <source>%1 cannot be written; its folder must be one where you may write, or copy it to such a one</source>
        <translation>%1 no se puede escribir; su carpeta debe permitir escribir, o copiarlo a una que lo permita</translation>
    </message>
    <message>
        <source>%1 characters where a line of GHCN-Daily has 269; the line is cut or has another form</source>
        <translation>%1 caracteres donde una línea de GHCN-Daily tiene 269; la línea está cortada o tiene otra forma</translation>
    </message>
    <message>
        <source>%1 could not be brought to the disk (%2); the disk may be full or failing</source>
        <translation>%1 no se pudo llevar al disco (%2); puede que esté lleno o fallando</translation>
    </message>
    <message>
        <source>%1 could not be copied (%2); make room or choose another place</source>
        <translation>%1 no se pudo copiar (%2); hacer sitio o elegir otro lugar</translation>
    </message>
    <message>
        <source>%1 could not be given its name (%2); choose another name or move away what is there</source>
        <translation>no se pudo dar su nombre a %1 (%2); elegir otro nombre o apartar lo que hay allí</translation>
    </message>
    <message>
        <source>%1 could not be read or written (%2); the disk may be full or failing</source>
        <translation>%1 no se pudo leer o escribir (%2); puede que el disco esté lleno o fallando</translation>
    </message>
    <message>
        <source>%1 could not be read to its end; was it changed meanwhile?</source>
        <translation>%1 no se pudo leer hasta el final; ¿se cambió entretanto?</translation>
    </message>
    <message>
        <source>%1 could not be replaced (%2)</source>
        <translation>%1 no se pudo reemplazar (%2)</translation>
    </message>
    <message>
        <source>%1 could not be unpacked (%2); choose another place</source>
        <translation>%1 no se pudo desempaquetar (%2); elegir otro lugar</translation>
    </message>
    <message>
        <source>%1 could not be unpacked (the disk is full, or files may not grow so large); make room or choose another place</source>
        <translation>%1 no se pudo desempaquetar (el disco está lleno, o los archivos no pueden crecer tanto); hacer sitio o elegir otro lugar</translation>
    </message>
    <message>
        <source>%1 could not be used (%2); restore a backup</source>
        <translation>%1 no se pudo usar (%2); recuperar una copia de seguridad</translation>
    </message>
    <message>
        <source>%1 could not be written (%2); choose another place</source>
        <translation>%1 no se pudo escribir (%2); elegir otro lugar</translation>
    </message>
    <message>
        <source>%1 could not be written (the disk is full, or files may not grow so large); make room or choose another place</source>
        <translation>%1 no se pudo escribir (el disco está lleno, o los archivos no pueden crecer tanto); hacer sitio o elegir otro lugar</translation>
    </message>
    <message>
        <source>%1 could not be written, the disk is full; make room and repeat</source>
        <translation>%1 no se pudo escribir, el disco está lleno; hacer sitio y repetir</translation>
    </message>
    <message>
        <source>%1 could not be written; make room or choose another folder</source>
        <translation>%1 no se pudo escribir; hacer sitio o elegir otra carpeta</translation>
    </message>
    <message>
        <source>%1 does not hold what was written; the disk may be failing</source>
        <translation>%1 no contiene lo que se escribió; puede que el disco esté fallando</translation>
    </message>
    <message>
        <source>%1 entries are more than the %2 that are taken</source>
        <translation>%1 entradas son más que las %2 que se admiten</translation>
    </message>
    <message>
        <source>%1 has %2 MB, at most %3 are read; leave only the nights that matter</source>
        <translation>%1 tiene %2 MB y se leen como mucho %3; dejar solo las noches que importan</translation>
    </message>
    <message>
        <source>%1 has %2 MB; photos up to %3 MB are taken, so save it smaller</source>
        <translation>%1 tiene %2 MB; se admiten fotografías de hasta %3 MB, así que guardarla más pequeña</translation>
    </message>
    <message>
        <source>%1 has %2 seeds left, not %3; sow fewer, or add the packet they came from</source>
        <translation>a %1 le quedan %2 semillas, no %3; sembrar menos, o añadir el sobre del que salieron</translation>
    </message>
    <message>
        <source>%1 has a column &quot;%2&quot; that is not known</source>
        <translation>%1 tiene una columna «%2» que no se conoce</translation>
    </message>
    <message>
        <source>%1 has a column twice</source>
        <translation>%1 tiene una columna dos veces</translation>
    </message>
    <message>
        <source>%1 has a head line and no days</source>
        <translation>%1 tiene una línea de cabecera y ningún día</translation>
    </message>
    <message>
        <source>%1 has a number in its JSON that is beyond any measure</source>
        <translation>%1 tiene en su JSON un número fuera de toda medida</translation>
    </message>
    <message>
        <source>%1 has column names and no row; it needs one for each night</source>
        <translation>%1 tiene nombres de columnas y ninguna fila; hace falta una por noche</translation>
    </message>
    <message>
        <source>%1 has minutes or seconds of 60 or more; they run from 0 to below 60</source>
        <translation>%1 tiene 60 o más minutos o segundos; van de 0 a menos de 60</translation>
    </message>
    <message>
        <source>%1 has more than %2 rows; leave only the nights that matter</source>
        <translation>%1 tiene más de %2 filas; dejar solo las noches que importan</translation>
    </message>
    <message>
        <source>%1 has no column &quot;%2&quot;</source>
        <translation>%1 no tiene la columna «%2»</translation>
    </message>
    <message>
        <source>%1 has no column &quot;%2&quot;; it has %3</source>
        <translation>%1 no tiene la columna «%2»; tiene: %3</translation>
    </message>
    <message>
        <source>%1 has no column TMIN; lows are needed</source>
        <translation>%1 no tiene la columna TMIN; hacen falta las mínimas</translation>
    </message>
    <message>
        <source>%1 has no data/%2 in it; it is no backup of a household</source>
        <translation>%1 no tiene dentro data/%2; no es copia de seguridad de un hogar</translation>
    </message>
    <message>
        <source>%1 has no night on or after %2, the day of the forecast; take a newer forecast</source>
        <translation>%1 no tiene ninguna noche del %2, el día del pronóstico, ni posterior; tomar un pronóstico más nuevo</translation>
    </message>
    <message>
        <source>%1 has no pixels</source>
        <translation>%1 no tiene píxeles</translation>
    </message>
    <message>
        <source>%1 has no record of its own to remove</source>
        <translation>%1 no tiene registro propio que quitar</translation>
    </message>
    <message>
        <source>%1 has no station %2; it has %3</source>
        <translation>%1 no tiene la estación %2; tiene %3</translation>
    </message>
    <message>
        <source>%1 has no station %2; it has %3 and others</source>
        <translation>%1 no tiene la estación %2; tiene %3 y otras</translation>
    </message>
    <message>
        <source>%1 has nothing at &quot;%2&quot;; at its top it has %3</source>
        <translation>%1 no tiene nada en «%2»; arriba tiene %3</translation>
    </message>
    <message>
        <source>%1 has room for %2 MB and the household needs %3 MB; make room or choose another place</source>
        <translation>%1 tiene sitio para %2 MB y el hogar necesita %3 MB; hacer sitio o elegir otro lugar</translation>
    </message>
    <message>
        <source>%1 holds a database that cannot be used; use another backup</source>
        <translation>%1 contiene una base de datos que no se puede usar; usar otra copia de seguridad</translation>
    </message>
    <message>
        <source>%1 holds a database that is no household of this program</source>
        <translation>%1 contiene una base de datos que no es un hogar de este programa</translation>
    </message>
    <message>
        <source>%1 holds no line of coast</source>
        <translation>%1 no contiene ninguna línea de costa</translation>
    </message>
    <message>
        <source>%1 is a file; choose a new or an empty folder</source>
        <translation>%1 es un archivo; elegir una carpeta nueva o vacía</translation>
    </message>
    <message>
        <source>%1 is a folder; name a file in it</source>
        <translation>%1 es una carpeta; nombrar un archivo dentro de ella</translation>
    </message>
    <message>
        <source>%1 is a folder; name a file of daily records in it</source>
        <translation>%1 es una carpeta; nombrar un archivo de registros diarios dentro de ella</translation>
    </message>
    <message>
        <source>%1 is cut off or damaged (%2: %3); copy it once more from the camera</source>
        <translation>%1 está cortada o dañada (%2: %3); copiarla otra vez de la cámara</translation>
    </message>
    <message>
        <source>%1 is damaged (%2 cannot be read); restore a backup</source>
        <translation>%1 está dañado (%2: no se puede leer); recuperar una copia de seguridad</translation>
    </message>
    <message>
        <source>%1 is damaged (%2); restore a backup</source>
        <translation>%1 está dañado (%2); recuperar una copia de seguridad</translation>
    </message>
    <message>
        <source>%1 is damaged (%2); restore a backup, the file was left as it is</source>
        <translation>%1 está dañado (%2); recuperar una copia de seguridad, el archivo se dejó como está</translation>
    </message>
    <message>
        <source>%1 is damaged (a day of its own record has no date); restore a backup</source>
        <translation>%1 está dañado (un día de su registro propio no tiene fecha); recuperar una copia de seguridad</translation>
    </message>
    <message>
        <source>%1 is damaged (a measurement of %2 cannot be read); restore a backup</source>
        <translation>%1 está dañado (una medición del %2 no se puede leer); recuperar una copia de seguridad</translation>
    </message>
    <message>
        <source>%1 is damaged (a stay of the accepted plan cannot be read); restore a backup</source>
        <translation>%1 está dañado (una estancia del plan aceptado no se puede leer); recuperar una copia de seguridad</translation>
    </message>
    <message>
        <source>%1 is damaged (an entry of kind &quot;%2&quot; cannot be read); restore a backup</source>
        <translation>%1 está dañado (una anotación del tipo «%2» no se puede leer); recuperar una copia de seguridad</translation>
    </message>
    <message>
        <source>%1 is damaged (an entry of no known kind, &quot;%2&quot;); restore a backup</source>
        <translation>%1 está dañado (una anotación de tipo desconocido, «%2»); recuperar una copia de seguridad</translation>
    </message>
    <message>
        <source>%1 is damaged (an event of %2 cannot be read); restore a backup</source>
        <translation>%1 está dañado (un suceso del %2 no se puede leer); recuperar una copia de seguridad</translation>
    </message>
    <message>
        <source>%1 is damaged (cut off after %2 bytes); restore a backup, the file was left as it is</source>
        <translation>%1 está dañado (cortado tras %2 bytes); recuperar una copia de seguridad, el archivo se dejó como está</translation>
    </message>
    <message>
        <source>%1 is damaged (event %2 is missing); restore a backup</source>
        <translation>%1 está dañado (falta el suceso %2); recuperar una copia de seguridad</translation>
    </message>
    <message>
        <source>%1 is damaged (it says nothing of its place); restore a backup</source>
        <translation>%1 está dañado (no dice nada de su lugar); recuperar una copia de seguridad</translation>
    </message>
    <message>
        <source>%1 is damaged (its own record has no days); restore a backup</source>
        <translation>%1 está dañado (su registro propio no tiene días); recuperar una copia de seguridad</translation>
    </message>
    <message>
        <source>%1 is damaged (its own record has no place or date); restore a backup</source>
        <translation>%1 está dañado (su registro propio no tiene lugar o fecha); recuperar una copia de seguridad</translation>
    </message>
    <message>
        <source>%1 is damaged (its place is not on the globe); restore a backup</source>
        <translation>%1 está dañado (su lugar no está en el globo); recuperar una copia de seguridad</translation>
    </message>
    <message>
        <source>%1 is damaged (measurement %2 is missing); restore a backup</source>
        <translation>%1 está dañado (falta la medición %2); recuperar una copia de seguridad</translation>
    </message>
    <message>
        <source>%1 is damaged (photo %2 cannot be read); restore a backup</source>
        <translation>%1 está dañado (la fotografía %2 no se puede leer); recuperar una copia de seguridad</translation>
    </message>
    <message>
        <source>%1 is damaged or no packed station table; build or install it again</source>
        <translation>%1 está dañado o no es una tabla de estaciones empaquetada; construirla o instalarla de nuevo</translation>
    </message>
    <message>
        <source>%1 is damaged or no packed table of towns; build or install it again</source>
        <translation>%1 está dañado o no es una tabla de poblaciones empaquetada; construirla o instalarla de nuevo</translation>
    </message>
    <message>
        <source>%1 is empty; copy it once more from the camera</source>
        <translation>%1 está vacía; copiarla otra vez de la cámara</translation>
    </message>
    <message>
        <source>%1 is empty; it needs a head line and a row a day</source>
        <translation>%1 está vacío; hacen falta una línea de cabecera y una fila por día</translation>
    </message>
    <message>
        <source>%1 is empty; it needs a line of column names</source>
        <translation>%1 está vacío; hace falta una línea con los nombres de las columnas</translation>
    </message>
    <message>
        <source>%1 is empty; it needs a line of column names and a row for each night</source>
        <translation>%1 está vacío; hacen falta una línea con los nombres de las columnas y una fila por noche</translation>
    </message>
    <message>
        <source>%1 is empty; it needs daily records</source>
        <translation>%1 está vacío; hacen falta registros diarios</translation>
    </message>
    <message>
        <source>%1 is held by another program; close that one or try again in a moment</source>
        <translation>otro programa tiene ocupado %1; cerrarlo o intentarlo de nuevo en un momento</translation>
    </message>
    <message>
        <source>%1 is kept at %2; move it first</source>
        <translation>%1 está fija en %2; moverla antes</translation>
    </message>
    <message>
        <source>%1 is nested more than 64 deep; that is no forecast</source>
        <translation>%1 tiene más de 64 niveles anidados; eso no es un pronóstico</translation>
    </message>
    <message>
        <source>%1 is no file; name a backup&apos;s zip file</source>
        <translation>%1 no es un archivo; nombrar el archivo zip de una copia de seguridad</translation>
    </message>
    <message>
        <source>%1 is no ordinary file; save the records to a file first</source>
        <translation>%1 no es un archivo corriente; guardar antes los registros en un archivo</translation>
    </message>
    <message>
        <source>%1 is no photo in JPEG, PNG, WebP or HEIC; save it as one of these</source>
        <translation>%1 no es una fotografía en JPEG, PNG, WebP o HEIC; guardarla en uno de estos</translation>
    </message>
    <message>
        <source>%1 is no place in %2; the form is EPSG:code:easting,northing, easting first</source>
        <translation>%1 no es un lugar en %2; la forma es EPSG:código:este,norte, primero el este</translation>
    </message>
    <message>
        <source>%1 is no place: %2; write it as 48.21,16.37 or 48°12&apos;36&quot;N 16°22&apos;12&quot;E</source>
        <translation>%1 no es un lugar: %2; escribirlo como 48.21,16.37 o 48°12&apos;36&quot;N 16°22&apos;12&quot;E</translation>
    </message>
    <message>
        <source>%1 is no place: the form is EPSG:code:easting,northing, such as EPSG:32633:601000,5340000</source>
        <translation>%1 no es un lugar: la forma es EPSG:código:este,norte, como EPSG:32633:601000,5340000</translation>
    </message>
    <message>
        <source>%1 is no text in UTF-8 (it has a zero byte); save it as UTF-8 text</source>
        <translation>%1 no es texto en UTF-8 (tiene un byte cero); guardarlo como texto UTF-8</translation>
    </message>
    <message>
        <source>%1 is not a file; name a photo</source>
        <translation>%1 no es un archivo; nombrar una fotografía</translation>
    </message>
    <message>
        <source>%1 is not a folder; name a household&apos;s folder</source>
        <translation>%1 no es una carpeta; nombrar la carpeta de un hogar</translation>
    </message>
    <message>
        <source>%1 is not a household; it has no file %2 in it</source>
        <translation>%1 no es un hogar; no tiene dentro el archivo %2</translation>
    </message>
    <message>
        <source>%1 is not a household; it was not made by this program</source>
        <translation>%1 no es un hogar; no lo hizo este programa</translation>
    </message>
    <message>
        <source>%1 is not a system of map coordinates (it measures heights or from the Earth&apos;s centre); take another code</source>
        <translation>%1 no es un sistema de coordenadas de mapa (mide alturas o desde el centro de la Tierra); tomar otro código</translation>
    </message>
    <message>
        <source>%1 is not empty; choose a new or an empty folder</source>
        <translation>%1 no está vacía; elegir una carpeta nueva o vacía</translation>
    </message>
    <message>
        <source>%1 is not safe to read (%2); save it anew without its EXIF</source>
        <translation>%1 no es segura de leer (%2); guardarla de nuevo sin su EXIF</translation>
    </message>
    <message>
        <source>%1 is not the photo that its name says; put the original in its place or take it away</source>
        <translation>%1 no es la fotografía que dice su nombre; poner la original en su lugar o quitarla</translation>
    </message>
    <message>
        <source>%1 is not there (looked at %2); install the program or name the file in %3</source>
        <translation>%1 no está (se buscó en %2); instalar el programa o indicar el archivo en %3</translation>
    </message>
    <message>
        <source>%1 is read-only; copy the household to a folder where you may write</source>
        <translation>%1 es de solo lectura; copiar el hogar a una carpeta donde se pueda escribir</translation>
    </message>
    <message>
        <source>%1 is the database of another program</source>
        <translation>%1 es la base de datos de otro programa</translation>
    </message>
    <message>
        <source>%1 lies outside the area that %2 is made for; the form is EPSG:code:easting,northing, easting first</source>
        <translation>%1 queda fuera de la zona para la que se hizo %2; la forma es EPSG:código:este,norte, primero el este</translation>
    </message>
    <message>
        <source>%1 must end in .jpg or .png, so that its form is known</source>
        <translation>%1 debe terminar en .jpg o .png, para que se conozca su forma</translation>
    </message>
    <message>
        <source>%1 must lie within %2 and %3 degrees, not %4</source>
        <translation>%1 debe estar entre %2 y %3 grados, no %4</translation>
    </message>
    <message>
        <source>%1 must lie within %2 and %3 m, not %4</source>
        <translation>%1 debe estar entre %2 y %3 m, no %4</translation>
    </message>
    <message>
        <source>%1 must lie within %2 and %3, not %4</source>
        <translation>%1 debe estar entre %2 y %3, no %4</translation>
    </message>
    <message>
        <source>%1 of %2 was measured in the photo %3</source>
        <translation>%1 del %2 se midió en la fotografía %3</translation>
    </message>
    <message>
        <source>%1 of its days have values that were never read on land</source>
        <translation>%1 de sus días tienen valores que nunca se midieron en tierra</translation>
    </message>
    <message>
        <source>%1 of that day stands twice for station %2</source>
        <translation>%1 de ese día está dos veces para la estación %2</translation>
    </message>
    <message>
        <source>%1 of that month stands twice for station %2</source>
        <translation>%1 de ese mes está dos veces para la estación %2</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 o %2</translation>
    </message>
    <message>
        <source>%1 seeds cannot be sown at once; log up to %2 in a tray</source>
        <translation>no se pueden sembrar %1 semillas a la vez; anotar hasta %2 por bandeja</translation>
    </message>
    <message>
        <source>%1 stands at %2; move it first</source>
        <translation>%1 está en %2; moverla antes</translation>
    </message>
    <message>
        <source>%1 stands on line %2 already; keep one of them</source>
        <translation>%1 está ya en la línea %2; dejar una de ellas</translation>
    </message>
    <message>
        <source>%1 stays on the list: %2; with 0 pots the plan uses it no more</source>
        <translation>%1 sigue en la lista: %2; con 0 macetas el plan deja de usarlo</translation>
    </message>
    <message>
        <source>%1 was made by a newer version of this program (schema %2, this one knows %3); import it with that one</source>
        <translation>%1 se hizo con una versión más nueva de este programa (esquema %2, esta conoce %3); importarlo con aquella</translation>
    </message>
    <message>
        <source>%1 was made by a newer version of this program; restore it with that one, nothing was made here</source>
        <translation>%1 se hizo con una versión más nueva de este programa; recuperarla con aquella, aquí no se creó nada</translation>
    </message>
    <message>
        <source>%1 was not added (%2); its name must be new and its numbers in their ranges</source>
        <translation>%1 no se añadió (%2); su nombre debe ser nuevo y sus números estar en sus límites</translation>
    </message>
    <message>
        <source>%1 was packed for a newer version of this program</source>
        <translation>%1 se empaquetó para una versión más nueva de este programa</translation>
    </message>
    <message>
        <source>%1 was written by a newer version of this program (schema %2, this one knows %3); it was left untouched</source>
        <translation>%1 se escribió con una versión más nueva de este programa (esquema %2, esta conoce %3); se dejó intacto</translation>
    </message>
    <message>
        <source>%1 would unpack to %2 x %3 pixels; up to %4 million are taken, so save it smaller</source>
        <translation>%1 se desplegaría a %2 x %3 píxeles; se admiten hasta %4 millones, así que guardarla más pequeña</translation>
    </message>
    <message>
        <source>%1, line %2: %3</source>
        <translation>%1, línea %2: %3</translation>
    </message>
    <message>
        <source>%1, line %2: %3 fields where the head has %4</source>
        <translation>%1, línea %2: %3 campos donde la cabecera tiene %4</translation>
    </message>
    <message>
        <source>%1, line %2: a quotation mark is not closed or stands inside a field; write fields as RFC 4180 asks</source>
        <translation>%1, línea %2: unas comillas no están cerradas o están dentro de un campo; escribir los campos como pide RFC 4180</translation>
    </message>
    <message>
        <source>%1, line %2: no line of coast; it needs pairs of whole numbers, longitude first, in hundredths of a degree</source>
        <translation>%1, línea %2: no es una línea de costa; hacen falta pares de números enteros, primero la longitud, en centésimas de grado</translation>
    </message>
    <message>
        <source>%1, line %2: the JSON breaks off or has a character that does not belong there</source>
        <translation>%1, línea %2: el JSON se interrumpe o tiene un carácter que no corresponde</translation>
    </message>
    <message>
        <source>%1, line 1: this is no daily record; give GHCN-Daily&apos;s fixed-width lines or one of its comma-separated forms</source>
        <translation>%1, línea 1: esto no es un registro diario; dar las líneas de ancho fijo de GHCN-Daily o una de sus formas separadas por comas</translation>
    </message>
    <message>
        <source>%1, or %2</source>
        <translation>%1, o %2</translation>
    </message>
    <message>
        <source>%1, row %2: %3</source>
        <translation>%1, fila %2: %3</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; %3; the file was altered or is torn, use another backup</source>
        <translation>%1: «%2» %3; el archivo fue alterado o está incompleto, usar otra copia de seguridad</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; has %3 values where another has %4</source>
        <translation>%1: «%2» tiene %3 valores donde otro tiene %4</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not what the backup&apos;s list says; it was altered or is torn, use another backup</source>
        <translation>%1: «%2» no es lo que dice la lista de la copia; fue alterado o está incompleto, usar otra copia de seguridad</translation>
    </message>
    <message>
        <source>%1: %2; nothing was unpacked</source>
        <translation>%1: %2; no se desempaquetó nada</translation>
    </message>
    <message>
        <source>%1: not enough memory to unpack it; close other programs</source>
        <translation>%1: no hay memoria bastante para desplegarla; cerrar otros programas</translation>
    </message>
    <message>
        <source>%1: part of its EXIF is damaged; its date may be missing</source>
        <translation>%1: parte de su EXIF está dañada; puede faltar su fecha</translation>
    </message>
    <message>
        <source>%1: the lines of station %2 do not stand together; sort the file by station</source>
        <translation>%1: las líneas de la estación %2 no están juntas; ordenar el archivo por estación</translation>
    </message>
    <message>
        <source>%1: this system&apos;s library cannot read that kind of HEIC (%2); let the phone save or share it as JPEG</source>
        <translation>%1: la biblioteca de este sistema no puede leer ese tipo de HEIC (%2); guardarla o compartirla como JPEG desde el teléfono</translation>
    </message>
    <message>
        <source>%1: where it was taken cannot be taken out of it (%2); export it with its position, or save it as JPEG</source>
        <translation>%1: no se puede quitar dónde se tomó (%2); exportarla con su posición, o guardarla como JPEG</translation>
    </message>
    <message>
        <source>%1: where it was taken cannot be taken out of it; export it with its position, or save it as JPEG</source>
        <translation>%1: no se puede quitar dónde se tomó; exportarla con su posición, o guardarla como JPEG</translation>
    </message>
    <message>
        <source>PROJ could not be started, so there is no map</source>
        <translation>PROJ no se pudo iniciar, así que no hay mapa</translation>
    </message>
    <message>
        <source>PROJ could not be started; write the place as LAT,LON</source>
        <translation>PROJ no se pudo iniciar; escribir el lugar como LATITUD,LONGITUD</translation>
    </message>
    <message>
        <source>PROJ knows no way from %1 to latitude and longitude; write the place as LAT,LON</source>
        <translation>PROJ no conoce cómo pasar de %1 a latitud y longitud; escribir el lugar como LATITUD,LONGITUD</translation>
    </message>
    <message>
        <source>PROJ&apos;s list of EPSG codes (proj.db) is not installed; write the place as LAT,LON</source>
        <translation>la lista de códigos EPSG de PROJ (proj.db) no está instalada; escribir el lugar como LATITUD,LONGITUD</translation>
    </message>
    <message>
        <source>a chance must lie within 0 and 1</source>
        <translation>una probabilidad debe estar entre 0 y 1</translation>
    </message>
    <message>
        <source>a comparison needs 2 plants, has %1</source>
        <translation>una comparación necesita 2 plantas, tiene %1</translation>
    </message>
    <message>
        <source>a comparison of two groups needs 2 plants in each, has %1 and %2</source>
        <translation>una comparación de dos grupos necesita 2 plantas en cada uno, tiene %1 y %2</translation>
    </message>
    <message>
        <source>a coordinate has both a sign and one of N, S, E, W</source>
        <translation>una coordenada tiene a la vez signo y una de N, S, E, W</translation>
    </message>
    <message>
        <source>a coordinate has no number</source>
        <translation>una coordenada no tiene número</translation>
    </message>
    <message>
        <source>a corner of the outline lies outside of the upright picture, which has %1 x %2 pixels</source>
        <translation>una esquina del contorno queda fuera de la imagen derecha, que tiene %1 x %2 píxeles</translation>
    </message>
    <message>
        <source>a count lies between the sowing on %1 and today</source>
        <translation>un recuento cae entre la siembra del %1 y hoy</translation>
    </message>
    <message>
        <source>a count of seedlings</source>
        <translation>un recuento de plántulas</translation>
    </message>
    <message>
        <source>a curve of %1 parameters needs %2 points, has %3</source>
        <translation>una curva de %1 parámetros necesita %2 puntos, tiene %3</translation>
    </message>
    <message>
        <source>a curve of growth needs 4 points, has %1</source>
        <translation>una curva de crecimiento necesita 4 puntos, tiene %1</translation>
    </message>
    <message>
        <source>a day of the year lies within 1 and 366</source>
        <translation>un día del año está entre 1 y 366</translation>
    </message>
    <message>
        <source>a demonstration has %1 to %2 %3, not %4</source>
        <translation>una demostración tiene de %1 a %2 %3, no %4</translation>
    </message>
    <message>
        <source>a demonstration needs a date in the years 1930 to 2190, not %1</source>
        <translation>una demostración necesita una fecha de los años 1930 a 2190, no %1</translation>
    </message>
    <message>
        <source>a division needs a name for each new piece</source>
        <translation>una división necesita un nombre para cada trozo nuevo</translation>
    </message>
    <message>
        <source>a forecast of %1</source>
        <translation>un pronóstico del %1</translation>
    </message>
    <message>
        <source>a jug must hold more than 0 and at most 1000 L</source>
        <translation>una regadera debe contener más de 0 y como mucho 1000 L</translation>
    </message>
    <message>
        <source>a length is measured by a scale: two points and their distance in cm</source>
        <translation>una longitud se mide con una escala: dos puntos y su distancia en cm</translation>
    </message>
    <message>
        <source>a line needs two points of different x</source>
        <translation>una recta necesita dos puntos de distinta x</translation>
    </message>
    <message>
        <source>a line with a break needs 5 points of different x, has %1</source>
        <translation>una recta con quiebro necesita 5 puntos de distinta x, tiene %1</translation>
    </message>
    <message>
        <source>a lot needs a name and a crop</source>
        <translation>un lote necesita un nombre y un cultivo</translation>
    </message>
    <message>
        <source>a lot of %1 seeds cannot be sown; give the number in the packet, or leave it out</source>
        <translation>un lote de %1 semillas no se puede sembrar; indicar el número del sobre, o dejarlo en blanco</translation>
    </message>
    <message>
        <source>a moving picture</source>
        <translation>una imagen en movimiento</translation>
    </message>
    <message>
        <source>a percentage must lie within 0 and 100</source>
        <translation>un porcentaje debe estar entre 0 y 100</translation>
    </message>
    <message>
        <source>a place needs a time zone</source>
        <translation>un lugar necesita una zona horaria</translation>
    </message>
    <message>
        <source>a plan that was accepted uses it</source>
        <translation>un plan aceptado lo usa</translation>
    </message>
    <message>
        <source>a planned stay</source>
        <translation>una estancia prevista</translation>
    </message>
    <message>
        <source>a plant is pinned to it</source>
        <translation>hay una planta fijada en él</translation>
    </message>
    <message>
        <source>a plant needs a name</source>
        <translation>una planta necesita un nombre</translation>
    </message>
    <message>
        <source>a plant stands there or is kept there</source>
        <translation>una planta está allí o tiene allí su sitio fijo</translation>
    </message>
    <message>
        <source>a plant that is gone stood there</source>
        <translation>una planta que ya no está estuvo allí</translation>
    </message>
    <message>
        <source>a reading of %1</source>
        <translation>una lectura del %1</translation>
    </message>
    <message>
        <source>a row has station, day, element, value and up to four flags</source>
        <translation>una fila tiene estación, día, magnitud, valor y hasta cuatro marcas</translation>
    </message>
    <message>
        <source>a sowing</source>
        <translation>una siembra</translation>
    </message>
    <message>
        <source>a sowing is logged when it is done; %1 is after today</source>
        <translation>una siembra se anota cuando está hecha; el %1 es posterior a hoy</translation>
    </message>
    <message>
        <source>a sowing needs at least one seed</source>
        <translation>una siembra necesita al menos una semilla</translation>
    </message>
    <message>
        <source>a spot needs a name</source>
        <translation>un sitio necesita un nombre</translation>
    </message>
    <message>
        <source>a spot needs a name, such as South sill</source>
        <translation>un sitio necesita un nombre, como Alféizar sur</translation>
    </message>
    <message>
        <source>a stay</source>
        <translation>una estancia</translation>
    </message>
    <message>
        <source>a temporary name is taken</source>
        <translation>un nombre temporal está ocupado</translation>
    </message>
    <message>
        <source>a town&apos;s name of %1 bytes is longer than any; write the town alone</source>
        <translation>un nombre de población de %1 bytes es más largo que cualquiera; escribir solo la población</translation>
    </message>
    <message>
        <source>a trend test needs 3 values, has %1</source>
        <translation>una prueba de tendencia necesita 3 valores, tiene %1</translation>
    </message>
    <message>
        <source>after the comma stands no country or region; write it as Springfield, Missouri</source>
        <translation>tras la coma no hay país ni región; escribirlo como Springfield, Missouri</translation>
    </message>
    <message>
        <source>all plants changed alike to the last digit; nothing can be said of chance</source>
        <translation>todas las plantas cambiaron igual hasta la última cifra; no se puede decir nada del azar</translation>
    </message>
    <message>
        <source>an amount of water must be above 0 and at most 1000 L</source>
        <translation>una cantidad de agua debe ser mayor que 0 y como mucho 1000 L</translation>
    </message>
    <message>
        <source>an outline has at least three corners</source>
        <translation>un contorno tiene al menos tres esquinas</translation>
    </message>
    <message>
        <source>cannot be unpacked</source>
        <translation>no se puede desempaquetar</translation>
    </message>
    <message>
        <source>cloud must lie within 0 and 100 percent</source>
        <translation>la nubosidad debe estar entre 0 y 100 por ciento</translation>
    </message>
    <message>
        <source>could not start the reader of comma-separated files</source>
        <translation>no se pudo iniciar la lectura de archivos separados por comas</translation>
    </message>
    <message>
        <source>does not unpack to what was packed</source>
        <translation>no se despliega en lo que se empaquetó</translation>
    </message>
    <message>
        <source>entry %1 %2</source>
        <translation>la entrada %1 %2</translation>
    </message>
    <message>
        <source>entry %1 has no name</source>
        <translation>la entrada %1 no tiene nombre</translation>
    </message>
    <message>
        <source>flowers</source>
        <translation>flores</translation>
    </message>
    <message>
        <source>gives no household (%1)</source>
        <translation>no da un hogar (%1)</translation>
    </message>
    <message>
        <source>gives no household (household.csv needs one row)</source>
        <translation>no da un hogar (household.csv necesita una fila)</translation>
    </message>
    <message>
        <source>gives no household that can be opened (%1)</source>
        <translation>no da un hogar que se pueda abrir (%1)</translation>
    </message>
    <message>
        <source>green_cover</source>
        <translation>parte verde</translation>
    </message>
    <message>
        <source>has %1 files below data/ and lists %2</source>
        <translation>tiene %1 archivos bajo data/ y enumera %2</translation>
    </message>
    <message>
        <source>has %1 readings; it needs one at least and %2 at most</source>
        <translation>tiene %1 lecturas; necesita al menos una y como mucho %2</translation>
    </message>
    <message>
        <source>has a %1 whose %2</source>
        <translation>tiene un %1 con fallo: %2</translation>
    </message>
    <message>
        <source>has a name that is not UTF-8</source>
        <translation>tiene un nombre que no es UTF-8</translation>
    </message>
    <message>
        <source>has a name with control characters</source>
        <translation>tiene un nombre con caracteres de control</translation>
    </message>
    <message>
        <source>has a part of over %1 bytes in its path</source>
        <translation>tiene una parte de más de %1 bytes en su ruta</translation>
    </message>
    <message>
        <source>has a reading of %1 %; a share lies within 0 and 100 %</source>
        <translation>tiene un valor de %1 %; una proporción está entre 0 y 100 %</translation>
    </message>
    <message>
        <source>has a reading of %1; a count is a whole number</source>
        <translation>tiene una lectura de %1; un recuento es un número entero</translation>
    </message>
    <message>
        <source>has a reading of %1; it lies within 0 and %2</source>
        <translation>tiene una lectura de %1; debe estar entre 0 y %2</translation>
    </message>
    <message>
        <source>has a reading of %1; it lies within 0 and %2 cm</source>
        <translation>tiene una lectura de %1; debe estar entre 0 y %2 cm</translation>
    </message>
    <message>
        <source>has a time outside the day or without its zone</source>
        <translation>tiene una hora fuera del día o sin su zona</translation>
    </message>
    <message>
        <source>has an about.csv that names no schema</source>
        <translation>tiene un about.csv que no nombra ningún esquema</translation>
    </message>
    <message>
        <source>has an empty name or one of over %1 bytes</source>
        <translation>tiene un nombre vacío o de más de %1 bytes</translation>
    </message>
    <message>
        <source>has no %1</source>
        <translation>no tiene %1</translation>
    </message>
    <message>
        <source>has no %1.csv (an empty table still has its head line)</source>
        <translation>no tiene %1.csv (una tabla vacía también tiene su línea de cabecera)</translation>
    </message>
    <message>
        <source>has no about.csv</source>
        <translation>no tiene about.csv</translation>
    </message>
    <message>
        <source>has no digest of 64 hexadecimal digits and a path</source>
        <translation>no tiene una suma de 64 cifras hexadecimales y una ruta</translation>
    </message>
    <message>
        <source>has tag files that are not in UTF-8</source>
        <translation>tiene archivos de etiquetas que no están en UTF-8</translation>
    </message>
    <message>
        <source>height</source>
        <translation>altura</translation>
    </message>
    <message>
        <source>is a bag of version &quot;%1&quot;; 1.0 and 0.97 are read</source>
        <translation>es un bag de la versión «%1»; se leen la 1.0 y la 0.97</translation>
    </message>
    <message>
        <source>is no backup of this program (a BagIt bag in a zip, with bagit.txt in its one folder)</source>
        <translation>no es una copia de seguridad de este programa (un bag de BagIt en un zip, con bagit.txt en su única carpeta)</translation>
    </message>
    <message>
        <source>is not whole: it lists &quot;%1&quot; and does not have it</source>
        <translation>no está completa: enumera «%1» y no lo tiene</translation>
    </message>
    <message>
        <source>is not whole: its fetch.txt names files that lie elsewhere, and nothing is fetched</source>
        <translation>no está completa: su fetch.txt nombra archivos que están en otra parte, y no se trae nada</translation>
    </message>
    <message>
        <source>it cannot be read</source>
        <translation>no se puede leer</translation>
    </message>
    <message>
        <source>it cannot be read to its end</source>
        <translation>no se puede leer hasta el final</translation>
    </message>
    <message>
        <source>it has two latitudes or two longitudes</source>
        <translation>tiene dos latitudes o dos longitudes</translation>
    </message>
    <message>
        <source>it holds something that is neither a number nor N, S, E, W</source>
        <translation>contiene algo que no es un número ni N, S, E, W</translation>
    </message>
    <message>
        <source>it is a link or has a name that no archive takes</source>
        <translation>es un enlace o tiene un nombre que ningún archivo comprimido admite</translation>
    </message>
    <message>
        <source>it is not a latitude and a longitude, two numbers with a decimal point</source>
        <translation>no es una latitud y una longitud, dos números con punto decimal</translation>
    </message>
    <message>
        <source>it is not named as a photo of a household</source>
        <translation>no se llama como una fotografía de un hogar</translation>
    </message>
    <message>
        <source>it is warmest when the place is coldest: check the dates, and the sign of the latitude</source>
        <translation>es más cálido cuando el lugar es más frío: revisar las fechas y el signo de la latitud</translation>
    </message>
    <message>
        <source>it would unpack to %1 MB, over %2 times its own size</source>
        <translation>se desplegaría a %1 MB, más de %2 veces su propio tamaño</translation>
    </message>
    <message>
        <source>it would unpack to more than %1 bytes</source>
        <translation>se desplegaría a más de %1 bytes</translation>
    </message>
    <message>
        <source>its EXIF directories lead in a circle</source>
        <translation>sus directorios EXIF dan vueltas en círculo</translation>
    </message>
    <message>
        <source>its EXIF has over %1 directories</source>
        <translation>sus datos EXIF tienen más de %1 directorios</translation>
    </message>
    <message>
        <source>its WebP data breaks off</source>
        <translation>sus datos WebP se interrumpen</translation>
    </message>
    <message>
        <source>its content has the digest %1</source>
        <translation>su contenido tiene la suma %1</translation>
    </message>
    <message>
        <source>its degree, minute and second marks are not in that order</source>
        <translation>sus signos de grado, minuto y segundo no están en ese orden</translation>
    </message>
    <message>
        <source>its highs lie %1 K above the place&apos;s on average: check unit, position, height and whether the thermometer stood in the sun</source>
        <translation>sus máximas están de media %1 K por encima de las del lugar: revisar unidad, posición y altitud, y si el termómetro estaba al sol</translation>
    </message>
    <message>
        <source>its highs lie %1 K below the place&apos;s on average: check unit, position, height and whether the thermometer stood in the sun</source>
        <translation>sus máximas están de media %1 K por debajo de las del lugar: revisar unidad, posición y altitud, y si el termómetro estaba al sol</translation>
    </message>
    <message>
        <source>its highs of %1 lie %2 K above the table&apos;s; a hollow, a warm wall, another height or a faulty thermometer would do that</source>
        <translation>sus máximas de %1 están %2 K por encima de las de la tabla; lo harían una hondonada, una pared cálida, otra altitud o un termómetro defectuoso</translation>
    </message>
    <message>
        <source>its highs of %1 lie %2 K below the table&apos;s; a hollow, a warm wall, another height or a faulty thermometer would do that</source>
        <translation>sus máximas de %1 están %2 K por debajo de las de la tabla; lo harían una hondonada, una pared cálida, otra altitud o un termómetro defectuoso</translation>
    </message>
    <message>
        <source>its lows lie %1 K above the place&apos;s on average: check unit, position and height</source>
        <translation>sus mínimas están de media %1 K por encima de las del lugar: revisar unidad, posición y altitud</translation>
    </message>
    <message>
        <source>its lows lie %1 K below the place&apos;s on average: check unit, position and height</source>
        <translation>sus mínimas están de media %1 K por debajo de las del lugar: revisar unidad, posición y altitud</translation>
    </message>
    <message>
        <source>its lows of %1 lie %2 K above the table&apos;s; a hollow, a warm wall, another height or a faulty thermometer would do that</source>
        <translation>sus mínimas de %1 están %2 K por encima de las de la tabla; lo harían una hondonada, una pared cálida, otra altitud o un termómetro defectuoso</translation>
    </message>
    <message>
        <source>its lows of %1 lie %2 K below the table&apos;s; a hollow, a warm wall, another height or a faulty thermometer would do that</source>
        <translation>sus mínimas de %1 están %2 K por debajo de las de la tabla; lo harían una hondonada, una pared cálida, otra altitud o un termómetro defectuoso</translation>
    </message>
    <message>
        <source>its parts are not degrees, minutes and seconds in that order</source>
        <translation>sus partes no son grados, minutos y segundos en ese orden</translation>
    </message>
    <message>
        <source>its parts cannot be found</source>
        <translation>no se encuentran sus partes</translation>
    </message>
    <message>
        <source>its thermometer has readings</source>
        <translation>su termómetro tiene lecturas</translation>
    </message>
    <message>
        <source>latitude must lie within -90 and 90 degrees</source>
        <translation>la latitud debe estar entre -90 y 90 grados</translation>
    </message>
    <message>
        <source>leaves</source>
        <translation>hojas</translation>
    </message>
    <message>
        <source>line %1 %2</source>
        <translation>la línea %1 %2</translation>
    </message>
    <message>
        <source>lists &quot;%1&quot; again</source>
        <translation>enumera «%1» otra vez</translation>
    </message>
    <message>
        <source>lists &quot;%1&quot;, which is not below data/</source>
        <translation>enumera «%1», que no está bajo data/</translation>
    </message>
    <message>
        <source>longest_leaf</source>
        <translation>hoja más larga</translation>
    </message>
    <message>
        <source>longitude must lie within -180 and 180 degrees</source>
        <translation>la longitud debe estar entre -180 y 180 grados</translation>
    </message>
    <message>
        <source>minutes and seconds have no sign</source>
        <translation>los minutos y los segundos no llevan signo</translation>
    </message>
    <message>
        <source>names a photo that is no SHA-256 of 64 small hex digits</source>
        <translation>nombra una fotografía que no es un SHA-256 de 64 cifras hexadecimales minúsculas</translation>
    </message>
    <message>
        <source>names a pot of no possible size; a pot has up to 1000 litres</source>
        <translation>nombra una maceta de tamaño imposible; una maceta tiene hasta 1000 litros</translation>
    </message>
    <message>
        <source>names a row of %1 that is not there</source>
        <translation>nombra una fila de %1 que no existe</translation>
    </message>
    <message>
        <source>new_leaves</source>
        <translation>hojas nuevas</translation>
    </message>
    <message>
        <source>no crop named &quot;%1&quot; in the reference of seeds; did you mean %2</source>
        <translation>no hay ningún cultivo «%1» en las tablas de semillas; quizá %2</translation>
    </message>
    <message>
        <source>no moment: %1</source>
        <translation>no es un momento: %1</translation>
    </message>
    <message>
        <source>no number: %1</source>
        <translation>no es un número: %1</translation>
    </message>
    <message>
        <source>no object: %1</source>
        <translation>no es un objeto: %1</translation>
    </message>
    <message>
        <source>no pest named &quot;%1&quot;; known are %2</source>
        <translation>no hay ninguna plaga «%1»; se conocen %2</translation>
    </message>
    <message>
        <source>no photo was added to %1 (%2); the plants must be of the household</source>
        <translation>no se añadió ninguna fotografía a %1 (%2); las plantas deben ser del hogar</translation>
    </message>
    <message>
        <source>no pixel lies inside of the outline; draw it larger</source>
        <translation>ningún píxel queda dentro del contorno; dibujarlo más grande</translation>
    </message>
    <message>
        <source>no pixels in it</source>
        <translation>sin píxeles</translation>
    </message>
    <message>
        <source>no plant named &quot;%1&quot; in the reference; did you mean %2</source>
        <translation>no hay ninguna planta «%1» en la lista; quizá %2</translation>
    </message>
    <message>
        <source>no plant named &quot;%1&quot; in the reference; give a common or botanical name</source>
        <translation>no hay ninguna planta «%1» en la lista; dar un nombre común o botánico</translation>
    </message>
    <message>
        <source>no readings: %1</source>
        <translation>sin lecturas: %1</translation>
    </message>
    <message>
        <source>no sound WebP header</source>
        <translation>sin cabecera WebP válida</translation>
    </message>
    <message>
        <source>no station lies within %1 m of the place&apos;s height: temperatures are carried there by the usual lapse</source>
        <translation>ninguna estación está a menos de %1 m de la altitud del lugar: las temperaturas se llevan allí con el gradiente habitual</translation>
    </message>
    <message>
        <source>no station near gives the spread of its days: frost dates are rough</source>
        <translation>ninguna estación cercana da la dispersión de sus días: las fechas de helada son aproximadas</translation>
    </message>
    <message>
        <source>no text: %1</source>
        <translation>no es texto: %1</translation>
    </message>
    <message>
        <source>no town &quot;%1&quot; is known; did you mean %2</source>
        <translation>no se conoce ninguna población «%1»; quizá %2</translation>
    </message>
    <message>
        <source>no town &quot;%1&quot; is known; name a larger town nearby or write the place as LAT,LON</source>
        <translation>no se conoce ninguna población «%1»; nombrar una mayor cercana o escribir el lugar como LATITUD,LONGITUD</translation>
    </message>
    <message>
        <source>no town is known in &quot;%1&quot;; name a country by its two letters or its English name, or a region of it</source>
        <translation>no se conoce ninguna población en «%1»; nombrar un país por sus dos letras o su nombre inglés, o una región suya</translation>
    </message>
    <message>
        <source>no year has day %1 in month %2</source>
        <translation>ningún año tiene el día %1 en el mes %2</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>nothing was changed (%1); names must differ, also from those of plants that are gone, and numbers lie in their ranges</source>
        <translation>no se cambió nada (%1); los nombres deben ser distintos, también de los de plantas que ya no están, y los números estar en sus límites</translation>
    </message>
    <message>
        <source>nothing was divided in %1; a piece&apos;s name is taken, also by plants that are gone, or its spot is not in the household</source>
        <translation>no se dividió nada en %1; el nombre de un trozo está ocupado, quizá por una planta que ya no está, o su sitio no es del hogar</translation>
    </message>
    <message>
        <source>nothing was kept in %1; a forecast is of a night before it was made, or a temperature lies outside -90 to 60 degrees Celsius</source>
        <translation>no se guardó nada en %1; un pronóstico es de una noche anterior a su fecha, o una temperatura no está entre -90 y 60 grados Celsius</translation>
    </message>
    <message>
        <source>nothing was logged in %1; a spot is not in the household, or a temperature lies outside -90 to 60 degrees Celsius</source>
        <translation>no se anotó nada en %1; un sitio no es del hogar, o una temperatura no está entre -90 y 60 grados Celsius</translation>
    </message>
    <message>
        <source>nothing was pinned; its last night lies before its first</source>
        <translation>no se fijó nada; su última noche es anterior a la primera</translation>
    </message>
    <message>
        <source>nothing was pinned; the plant and the spot must be of the household</source>
        <translation>no se fijó nada; la planta y el sitio deben ser del hogar</translation>
    </message>
    <message>
        <source>nothing was potted in %1; a plant&apos;s name is taken or its spot is not in the household</source>
        <translation>no se pasó nada a maceta en %1; el nombre de una planta está ocupado o su sitio no es del hogar</translation>
    </message>
    <message>
        <source>nothing was recorded in %1; a plant or spot of it is not in the household</source>
        <translation>no se anotó nada en %1; una planta o un sitio no es del hogar</translation>
    </message>
    <message>
        <source>nothing was recorded in %1; a plant that was measured is not in the household</source>
        <translation>no se anotó nada en %1; una planta medida no es del hogar</translation>
    </message>
    <message>
        <source>of %1 seeds %2 cannot have come up</source>
        <translation>de %1 semillas no pueden haber nacido %2</translation>
    </message>
    <message>
        <source>on %1 %2 were counted; count all that have come up so far, those lost since too, or log that day&apos;s count anew</source>
        <translation>el %1 se contaron %2; contar todas las nacidas hasta ahora, también las perdidas desde entonces, o anotar de nuevo el recuento de ese día</translation>
    </message>
    <message>
        <source>pairs of hexadecimal digits are expected (column %1)</source>
        <translation>se esperan pares de cifras hexadecimales (columna %1)</translation>
    </message>
    <message>
        <source>pest_clocks.csv: %1 lacks a generation or a crawler stage</source>
        <translation>pest_clocks.csv: a %1 le falta una generación o la fase de ninfa móvil</translation>
    </message>
    <message>
        <source>photo %1 does not show that plant; assign it to the plant first</source>
        <translation>la fotografía %1 no muestra esa planta; asignarla antes a la planta</translation>
    </message>
    <message>
        <source>plants</source>
        <translation>plantas</translation>
    </message>
    <message>
        <source>reading %1</source>
        <translation>la lectura %1</translation>
    </message>
    <message>
        <source>seedlings cannot be potted before their sowing on %1</source>
        <translation>las plántulas no se pueden pasar a maceta antes de su siembra del %1</translation>
    </message>
    <message>
        <source>several towns bear that name: %1 and others; add the region or the country after a comma</source>
        <translation>varias poblaciones llevan ese nombre: %1 y otras; añadir la región o el país tras una coma</translation>
    </message>
    <message>
        <source>several towns bear that name: %1; add the region or the country after a comma</source>
        <translation>varias poblaciones llevan ese nombre: %1; añadir la región o el país tras una coma</translation>
    </message>
    <message>
        <source>spots</source>
        <translation>sitios</translation>
    </message>
    <message>
        <source>station %1 has lows and highs in %2 years of month %3; %4 are needed</source>
        <translation>la estación %1 tiene mínimas y máximas en %2 años del mes %3; hacen falta %4</translation>
    </message>
    <message>
        <source>stem</source>
        <translation>tallo</translation>
    </message>
    <message>
        <source>stopped; %1 was not written</source>
        <translation>detenido; %1 no se escribió</translation>
    </message>
    <message>
        <source>stopped; nothing was changed</source>
        <translation>detenido; no se cambió nada</translation>
    </message>
    <message>
        <source>stopped; nothing was kept of it</source>
        <translation>detenido; no se guardó nada de ello</translation>
    </message>
    <message>
        <source>that area is not grey: its strongest colour has %1 times the light of its weakest, and no lamp makes that of grey; take another, such as the patch of the card</source>
        <translation>esa zona no es gris: su color más fuerte tiene %1 veces la luz del más débil, y ninguna lámpara hace eso con el gris; tomar otra, como el recuadro de la tarjeta</translation>
    </message>
    <message>
        <source>the %1 is missing</source>
        <translation>falta «%1»</translation>
    </message>
    <message>
        <source>the %1 of %2 lies outside -90 to 60 degrees Celsius</source>
        <translation>«%1» con %2 no está entre -90 y 60 grados Celsius</translation>
    </message>
    <message>
        <source>the JPEG cannot be made (%1)</source>
        <translation>el JPEG no se puede hacer (%1)</translation>
    </message>
    <message>
        <source>the PNG cannot be made (%1)</source>
        <translation>el PNG no se puede hacer (%1)</translation>
    </message>
    <message>
        <source>the calendar has no day %1 in month %2 of %3</source>
        <translation>el calendario no tiene el día %1 en el mes %2 de %3</translation>
    </message>
    <message>
        <source>the cold lines given for %1 contradict each other; they must rise from lethal over damage to the safe night</source>
        <translation>los límites de frío dados para %1 se contradicen; deben subir del letal por el de daño al de noche segura</translation>
    </message>
    <message>
        <source>the copy %1 could not be given its name</source>
        <translation>no se pudo dar su nombre a la copia %1</translation>
    </message>
    <message>
        <source>the copy %1 did not come out sound (%2); the household was left as it is</source>
        <translation>la copia %1 no salió sana (%2); el hogar se dejó como está</translation>
    </message>
    <message>
        <source>the copy %1 differs from what was copied</source>
        <translation>la copia %1 difiere de lo copiado</translation>
    </message>
    <message>
        <source>the curve finds no best fit from its start</source>
        <translation>la curva no halla un mejor ajuste desde su inicio</translation>
    </message>
    <message>
        <source>the day&apos;s high is below the night&apos;s low; exchange them</source>
        <translation>la máxima del día está por debajo de la mínima de la noche; intercambiarlas</translation>
    </message>
    <message>
        <source>the density must lie within 0.2 and 3 grams a millilitre</source>
        <translation>la densidad debe estar entre 0,2 y 3 gramos por mililitro</translation>
    </message>
    <message>
        <source>the depth of an overhang</source>
        <translation>el fondo de un alero</translation>
    </message>
    <message>
        <source>the direction a spot faces</source>
        <translation>la dirección a la que mira un sitio</translation>
    </message>
    <message>
        <source>the disk may be full</source>
        <translation>puede que el disco esté lleno</translation>
    </message>
    <message>
        <source>the distance from the window or opening</source>
        <translation>la distancia a la ventana o abertura</translation>
    </message>
    <message>
        <source>the distance sideways of the window&apos;s middle</source>
        <translation>la distancia lateral del centro de la ventana</translation>
    </message>
    <message>
        <source>the end of a plant</source>
        <translation>el final de una planta</translation>
    </message>
    <message>
        <source>the evening&apos;s temperature is below the night&apos;s low; exchange them</source>
        <translation>la temperatura de la tarde está por debajo de la mínima de la noche; intercambiarlas</translation>
    </message>
    <message>
        <source>the feed %1 holds no nitrogen, so it cannot be measured by it; follow its label</source>
        <translation>el abono %1 no contiene nitrógeno, así que no se puede medir por él; seguir su etiqueta</translation>
    </message>
    <message>
        <source>the folder %1 cannot be made (%2); choose one where you may write</source>
        <translation>la carpeta %1 no se puede crear (%2); elegir una donde se pueda escribir</translation>
    </message>
    <message>
        <source>the folder %1 cannot be made for a copy; the household was left as it is</source>
        <translation>la carpeta %1 no se puede crear para una copia; el hogar se dejó como está</translation>
    </message>
    <message>
        <source>the grey area is too bright or too dark to tell the colour of the light; take the photo in even light, or name another area</source>
        <translation>la zona gris es demasiado clara u oscura para conocer el color de la luz; tomar la fotografía con luz uniforme, o indicar otra zona</translation>
    </message>
    <message>
        <source>the height of a window or opening</source>
        <translation>la altura de una ventana o abertura</translation>
    </message>
    <message>
        <source>the height of the place is not given; %1 m is taken, as high as the towns near it lie</source>
        <translation>no se indica la altitud del lugar; se toman %1 m, la de las poblaciones cercanas</translation>
    </message>
    <message>
        <source>the height of the place is not given; %1 m, the weighted height of its stations, is taken</source>
        <translation>no se indica la altitud del lugar; se toman %1 m, la altitud ponderada de sus estaciones</translation>
    </message>
    <message>
        <source>the height of the wall behind</source>
        <translation>la altura de la pared de detrás</translation>
    </message>
    <message>
        <source>the height of what stands opposite</source>
        <translation>la altura de lo que hay enfrente</translation>
    </message>
    <message>
        <source>the high is below the low</source>
        <translation>la máxima está por debajo de la mínima</translation>
    </message>
    <message>
        <source>the hours of cold must lie within 0 and 72</source>
        <translation>las horas de frío deben estar entre 0 y 72</translation>
    </message>
    <message>
        <source>the household %1 cannot be made (%2); choose a folder where you may write</source>
        <translation>el hogar %1 no se puede crear (%2); elegir una carpeta donde se pueda escribir</translation>
    </message>
    <message>
        <source>the household %1 cannot be made (%2); names must differ and numbers lie in their ranges</source>
        <translation>el hogar %1 no se puede crear (%2); los nombres deben ser distintos y los números estar en sus límites</translation>
    </message>
    <message>
        <source>the household is damaged (a change of its rows cannot be read); restore a backup</source>
        <translation>el hogar está dañado (un cambio de sus filas no se puede leer); recuperar una copia de seguridad</translation>
    </message>
    <message>
        <source>the household&apos;s own record is not used: %1</source>
        <translation>el registro propio del hogar no se usa: %1</translation>
    </message>
    <message>
        <source>the journal tells of it</source>
        <translation>el diario habla de él</translation>
    </message>
    <message>
        <source>the last night %1 must be the first, %2, or up to a year later</source>
        <translation>la última noche %1 debe ser la primera, %2, o hasta un año después</translation>
    </message>
    <message>
        <source>the latitude %1 in %2 lies outside -90 to 90 degrees</source>
        <translation>la latitud %1 en %2 no está entre -90 y 90 grados</translation>
    </message>
    <message>
        <source>the latitude %1 in %2 lies outside -90 to 90 degrees; the latitude comes first</source>
        <translation>la latitud %1 en %2 no está entre -90 y 90 grados; la latitud va primero</translation>
    </message>
    <message>
        <source>the light that %1 needs to survive is above what it needs to thrive</source>
        <translation>la luz que %1 necesita para sobrevivir es más que la que necesita para crecer bien</translation>
    </message>
    <message>
        <source>the longitude %1 in %2 lies outside -180 to 180 degrees; count west as negative</source>
        <translation>la longitud %1 en %2 no está entre -180 y 180 grados; contar el oeste como negativo</translation>
    </message>
    <message>
        <source>the low is missing</source>
        <translation>falta la mínima</translation>
    </message>
    <message>
        <source>the map&apos;s radius must lie within 1 and 15,000 km</source>
        <translation>el radio del mapa debe estar entre 1 y 15.000 km</translation>
    </message>
    <message>
        <source>the measurement %1 of %2 %3</source>
        <translation>la medición «%1» del %2 %3</translation>
    </message>
    <message>
        <source>the mix must be above 0 and at most 20 percent of the water; oils and soaps for leaves are mixed at 0.5 to 2</source>
        <translation>la mezcla debe ser mayor que 0 y como mucho el 20 por ciento del agua; los aceites y jabones para hojas se mezclan al 0,5 a 2</translation>
    </message>
    <message>
        <source>the mix&apos;s temperature must lie within -10 and 60 degrees Celsius</source>
        <translation>la temperatura del sustrato debe estar entre -10 y 60 grados Celsius</translation>
    </message>
    <message>
        <source>the name of a town needs a letter; write it as Vienna or Springfield, Missouri</source>
        <translation>el nombre de una población necesita una letra; escribirlo como Viena o Springfield, Missouri</translation>
    </message>
    <message>
        <source>the nearest station is %1 km away</source>
        <translation>la estación más cercana está a %1 km</translation>
    </message>
    <message>
        <source>the nearest station is %1 km away: the answer is weak</source>
        <translation>la estación más cercana está a %1 km: la respuesta es débil</translation>
    </message>
    <message>
        <source>the night must be 3 to 21 hours long</source>
        <translation>la noche debe durar de 3 a 21 horas</translation>
    </message>
    <message>
        <source>the night of %1 is not over yet</source>
        <translation>la noche del %1 aún no ha pasado</translation>
    </message>
    <message>
        <source>the night of %1 stands in the file twice for one spot; keep one row for each</source>
        <translation>la noche del %1 está dos veces en el archivo para un sitio; dejar una fila para cada uno</translation>
    </message>
    <message>
        <source>the night of %1 stands in the file twice; keep one row for each night</source>
        <translation>la noche del %1 está dos veces en el archivo; dejar una fila para cada noche</translation>
    </message>
    <message>
        <source>the night&apos;s low must lie within -60 and 40 C</source>
        <translation>la mínima de la noche debe estar entre -60 y 40 °C</translation>
    </message>
    <message>
        <source>the nights of a room lie within -60 and 60 degrees Celsius (%1)</source>
        <translation>las noches de una habitación están entre -60 y 60 grados Celsius (%1)</translation>
    </message>
    <message>
        <source>the nitrogen must lie within 1 and 2000 ppm; pots at home get 50 to 250</source>
        <translation>el nitrógeno debe estar entre 1 y 2000 ppm; las macetas en casa reciben de 50 a 250</translation>
    </message>
    <message>
        <source>the number of panes</source>
        <translation>el número de cristales</translation>
    </message>
    <message>
        <source>the own record %1 was kept %2 km away and %3 m off in height; it speaks for places within %4 km and %5 m</source>
        <translation>el registro propio %1 se llevó a %2 km y a %3 m de diferencia de altitud; vale para lugares a menos de %4 km y %5 m</translation>
    </message>
    <message>
        <source>the packed year must lie within 1950 and %1</source>
        <translation>el año de envasado debe estar entre 1950 y %1</translation>
    </message>
    <message>
        <source>the picture would have over %1 million pixels; choose fewer photos or a smaller height</source>
        <translation>la imagen tendría más de %1 millones de píxeles; elegir menos fotografías o una altura menor</translation>
    </message>
    <message>
        <source>the place lies %1 from the sea, its stations mostly %2: its nights are usually colder than they say</source>
        <translation>el lugar está a %1 del mar, sus estaciones en general a %2: sus noches suelen ser más frías de lo que dicen</translation>
    </message>
    <message>
        <source>the place lies %1 from the sea, its stations mostly %2: its nights are usually milder than they say</source>
        <translation>el lugar está a %1 del mar, sus estaciones en general a %2: sus noches suelen ser más suaves de lo que dicen</translation>
    </message>
    <message>
        <source>the plant &quot;%1&quot;</source>
        <translation>la planta «%1»</translation>
    </message>
    <message>
        <source>the plant &quot;%1&quot; is no longer there</source>
        <translation>la planta «%1» ya no está</translation>
    </message>
    <message>
        <source>the plants of each group changed alike to the last digit; nothing can be said of chance</source>
        <translation>las plantas de cada grupo cambiaron igual hasta la última cifra; no se puede decir nada del azar</translation>
    </message>
    <message>
        <source>the points do not bend towards an end</source>
        <translation>los puntos no se curvan hacia un final</translation>
    </message>
    <message>
        <source>the pot of %1 must weigh more than 0 kg</source>
        <translation>la maceta de %1 debe pesar más de 0 kg</translation>
    </message>
    <message>
        <source>the pots that fit at %1 must be a number from 0 to %2, not %3</source>
        <translation>las macetas que caben en %1 deben ser un número de 0 a %2, no %3</translation>
    </message>
    <message>
        <source>the record was not kept in %1 (%2); it needs a name, a height within -500 and 9000 m and possible values</source>
        <translation>el registro no se guardó en %1 (%2); necesita un nombre, una altitud entre -500 y 9000 m y valores posibles</translation>
    </message>
    <message>
        <source>the row breaks a rule of the table (%1)</source>
        <translation>la fila incumple una regla de la tabla (%1)</translation>
    </message>
    <message>
        <source>the row has not the %1 fields that the head names</source>
        <translation>la fila no tiene los %1 campos que nombra la cabecera</translation>
    </message>
    <message>
        <source>the row names no station</source>
        <translation>la fila no nombra ninguna estación</translation>
    </message>
    <message>
        <source>the scale&apos;s length must lie within 0.1 and 1000 cm</source>
        <translation>la longitud de la escala debe estar entre 0,1 y 1000 cm</translation>
    </message>
    <message>
        <source>the schema must be a whole number from 1</source>
        <translation>el esquema debe ser un número entero desde 1</translation>
    </message>
    <message>
        <source>the share of light let through</source>
        <translation>la parte de luz que deja pasar</translation>
    </message>
    <message>
        <source>the shares of the feed %1 must be 0 or more and at most 100 together</source>
        <translation>las partes del abono %1 deben ser 0 o más y juntas como mucho 100</translation>
    </message>
    <message>
        <source>the sill&apos;s height above the leaves</source>
        <translation>la altura del alféizar sobre las hojas</translation>
    </message>
    <message>
        <source>the sky is &quot;%1&quot;; write clear or cloudy</source>
        <translation>el cielo es «%1»; escribir clear o cloudy</translation>
    </message>
    <message>
        <source>the sowing was not recorded in %1; its spot is not in the household</source>
        <translation>la siembra no se anotó en %1; su sitio no es del hogar</translation>
    </message>
    <message>
        <source>the spot &quot;%1&quot;</source>
        <translation>el sitio «%1»</translation>
    </message>
    <message>
        <source>the spot &quot;%1&quot; is no longer there</source>
        <translation>el sitio «%1» ya no está</translation>
    </message>
    <message>
        <source>the spot cannot be taken back: %1</source>
        <translation>el sitio no se puede deshacer: %1</translation>
    </message>
    <message>
        <source>the spot is no longer there</source>
        <translation>el sitio ya no está</translation>
    </message>
    <message>
        <source>the stated germination must lie above 0 and at most at 100 percent</source>
        <translation>la germinación indicada debe ser mayor que 0 y como mucho 100 por ciento</translation>
    </message>
    <message>
        <source>the system does not say its time zone; name one, such as Europe/Berlin</source>
        <translation>el sistema no dice su zona horaria; nombrar una, como Europe/Madrid</translation>
    </message>
    <message>
        <source>the system has no list of time zones; install the package tzdata</source>
        <translation>el sistema no tiene lista de zonas horarias; instalar el paquete tzdata</translation>
    </message>
    <message>
        <source>the tray has %1 seedlings left to pot, not %2</source>
        <translation>a la bandeja le quedan %1 plántulas por pasar a maceta, no %2</translation>
    </message>
    <message>
        <source>the two points of a length must lie apart</source>
        <translation>los dos puntos de una longitud deben estar separados</translation>
    </message>
    <message>
        <source>the two points of the scale must lie apart</source>
        <translation>los dos puntos de la escala deben estar separados</translation>
    </message>
    <message>
        <source>the values are not of the form that GHCN-Daily has</source>
        <translation>los valores no tienen la forma de GHCN-Daily</translation>
    </message>
    <message>
        <source>the values look like tenths of a degree taken for whole ones; divide them by ten first</source>
        <translation>los valores parecen décimas de grado tomadas por grados enteros; dividirlos antes por diez</translation>
    </message>
    <message>
        <source>the values look like whole degrees taken for tenths; write them with a decimal point</source>
        <translation>los valores parecen grados enteros tomados por décimas; escribirlos con punto decimal</translation>
    </message>
    <message>
        <source>the width of a window or opening</source>
        <translation>la anchura de una ventana o abertura</translation>
    </message>
    <message>
        <source>the wind is &quot;%1&quot;; write calm or windy, or use the column wind_m_s</source>
        <translation>el viento es «%1»; escribir calm o windy, o usar la columna wind_m_s</translation>
    </message>
    <message>
        <source>the wind is negative</source>
        <translation>el viento es negativo</translation>
    </message>
    <message>
        <source>the year %1 lies outside 1901 to 2199</source>
        <translation>el año %1 no está entre 1901 y 2199</translation>
    </message>
    <message>
        <source>the zone %1 has no %2 (its clocks went past it); take another day</source>
        <translation>la zona %1 no tiene el %2 (sus relojes lo saltaron); tomar otro día</translation>
    </message>
    <message>
        <source>there are no coast lines to measure to</source>
        <translation>no hay líneas de costa hasta las que medir</translation>
    </message>
    <message>
        <source>there is a lot &quot;%1&quot; already; give this one another name</source>
        <translation>ya hay un lote «%1»; dar otro nombre a este</translation>
    </message>
    <message>
        <source>there is a plant &quot;%1&quot; already; give this one another name</source>
        <translation>ya hay una planta «%1»; dar otro nombre a esta</translation>
    </message>
    <message>
        <source>there is a spot &quot;%1&quot; already; give this one another name</source>
        <translation>ya hay un sitio «%1»; dar otro nombre a este</translation>
    </message>
    <message>
        <source>there is no coordinate system %1 in PROJ&apos;s list; check the code or write the place as LAT,LON</source>
        <translation>no hay sistema de coordenadas %1 en la lista de PROJ; revisar el código o escribir el lugar como LATITUD,LONGITUD</translation>
    </message>
    <message>
        <source>there is no file %1</source>
        <translation>no existe el archivo %1</translation>
    </message>
    <message>
        <source>there is no file or folder %1</source>
        <translation>no existe el archivo ni la carpeta %1</translation>
    </message>
    <message>
        <source>there is no folder %1</source>
        <translation>no existe la carpeta %1</translation>
    </message>
    <message>
        <source>there is no photo to show</source>
        <translation>no hay ninguna fotografía que mostrar</translation>
    </message>
    <message>
        <source>there is no time zone &quot;%1&quot;; names look like Europe/Berlin or America/Denver</source>
        <translation>no hay zona horaria «%1»; los nombres son como Europe/Madrid o America/Denver</translation>
    </message>
    <message>
        <source>this is no zip file, or it is torn or was altered</source>
        <translation>esto no es un archivo zip, o está incompleto o fue alterado</translation>
    </message>
    <message>
        <source>unknown type of column</source>
        <translation>tipo de columna desconocido</translation>
    </message>
    <message>
        <source>unpacks to %1 bytes instead of %2</source>
        <translation>se despliega a %1 bytes en vez de %2</translation>
    </message>
    <message>
        <source>unpacks to more than its %1 bytes</source>
        <translation>se despliega a más de sus %1 bytes</translation>
    </message>
    <message>
        <source>width</source>
        <translation>anchura</translation>
    </message>
    <message>
        <source>years of history</source>
        <translation>años de anotaciones</translation>
    </message>
    <message>
        <source>yellow_share</source>
        <translation>parte amarilla</translation>
    </message>
</context>
</TS>
