<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>ActsMenu</name>
    <message>
        <source>Key %1</source>
        <translation>Taste %1</translation>
    </message>
</context>
<context>
    <name>AskLine</name>
    <message>
        <source>%1, past</source>
        <translation>%1, vorbei</translation>
    </message>
</context>
<context>
    <name>AskSheet</name>
    <message>
        <source>Sprayed: write it down</source>
        <translation>Gespritzt: aufschreiben</translation>
    </message>
    <message>
        <source>Write it down</source>
        <translation>Aufschreiben</translation>
    </message>
    <message>
        <source>Control and Enter. Into the journal of the plant; Undo takes it back.</source>
        <translation>Strg und Eingabe. Ins Tagebuch der Pflanze; Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
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
        <translation>Nach einer kalten Nacht: %1</translation>
    </message>
    <message>
        <source>Lowest at the plant</source>
        <translation>Tiefstwert an der Pflanze</translation>
    </message>
    <message>
        <source>Blank: as the journal has it. Several nights with ; between them, the last one last</source>
        <translation>Leer: wie es im Tagebuch steht. Mehrere Nächte mit ; dazwischen, die letzte zuletzt</translation>
    </message>
    <message>
        <source>Several nights with ; between them, the last one last</source>
        <translation>Mehrere Nächte mit ; dazwischen, die letzte zuletzt</translation>
    </message>
    <message>
        <source>The last of them ended</source>
        <translation>Ende der letzten</translation>
    </message>
    <message>
        <source>days ago</source>
        <translation>Tage her</translation>
    </message>
    <message>
        <source>Blank: this morning</source>
        <translation>Leer: heute Morgen</translation>
    </message>
    <message>
        <source>Two hours after sunset</source>
        <translation>Zwei Stunden nach Sonnenuntergang</translation>
    </message>
    <message>
        <source>May be left blank</source>
        <translation>Kann leer bleiben</translation>
    </message>
    <message>
        <source>High of the day</source>
        <translation>Höchstwert des Tages</translation>
    </message>
    <message>
        <source>Hours at or below %1</source>
        <translation>Stunden bei %1 oder darunter</translation>
    </message>
    <message>
        <source>h</source>
        <translation>h</translation>
    </message>
    <message>
        <source>Where somebody saw them</source>
        <translation>Wo jemand sie gesehen hat</translation>
    </message>
    <message>
        <source>From sunset to sunrise</source>
        <translation>Von Sonnenuntergang bis -aufgang</translation>
    </message>
    <message>
        <source>Blank: %1 h, by place and date</source>
        <translation>Leer: %1 h, nach Ort und Datum</translation>
    </message>
    <message>
        <source>Blank: %1 h</source>
        <translation>Leer: %1 h</translation>
    </message>
    <message>
        <source>Another kind of plant</source>
        <translation>Eine andere Pflanzenart</translation>
    </message>
    <message>
        <source>Blank: %1. Its name, for a plant that is not among yours</source>
        <translation>Leer: %1. Sonst der Name der Art, für eine Pflanze, die nicht zum Haushalt gehört</translation>
    </message>
    <message>
        <source>Write the lowest of the night at the plant.</source>
        <translation>Den Tiefstwert der Nacht an der Pflanze schreiben.</translation>
    </message>
    <message>
        <source>Nothing is written of a plant that is not among yours.</source>
        <translation>Von einer Pflanze, die nicht zum Haushalt gehört, wird nichts eingetragen.</translation>
    </message>
    <message>
        <source>The journal has the cold night of %1 without its lowest at the plant; write it here.</source>
        <translation>Im Tagebuch steht die kalte Nacht vom %1 ohne ihren Tiefstwert an der Pflanze; hier schreiben.</translation>
    </message>
    <message>
        <source>“%1” is no temperature.</source>
        <translation>„%1“ ist keine Temperatur.</translation>
    </message>
    <message>
        <source>That is below the night&apos;s lowest; exchange the two.</source>
        <translation>Das liegt unter dem Tiefstwert der Nacht; die beiden vertauschen.</translation>
    </message>
    <message>
        <source>Write how many days ago it was, 0 to %1.</source>
        <translation>Schreiben, wie viele Tage es her ist, 0 bis %1.</translation>
    </message>
    <message>
        <source>%1 is no low of a night at a pot.</source>
        <translation>%1 ist kein Nachttief an einem Topf.</translation>
    </message>
    <message>
        <source>Write %1 nights at most; older ones do not count with the last.</source>
        <translation>Höchstens %1 Nächte schreiben; ältere zählen nicht mit der letzten.</translation>
    </message>
    <message>
        <source>Write hours of cold, 0 to 72.</source>
        <translation>Stunden der Kälte schreiben, 0 bis 72.</translation>
    </message>
    <message>
        <source>A night lasts 3 to 21 hours.</source>
        <translation>Eine Nacht dauert 3 bis 21 Stunden.</translation>
    </message>
    <message>
        <source>As the journal has it.</source>
        <translation>Wie es im Tagebuch steht.</translation>
    </message>
    <message>
        <source>Safe night %1, damage begins at %2, lethal at %3.</source>
        <translation>Sichere Nacht %1, Schaden beginnt bei %2, tödlich bei %3.</translation>
    </message>
    <message>
        <source>Low %1; %2 h below the safe night (%3 kelvin hours), %4 h below the line of damage (%5).</source>
        <translation>Tief %1; %2 h unter der sicheren Nacht (%3 Kelvinstunden), %4 h unter der Schadenslinie (%5).</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>New growth is logged: feeding may begin again.</source>
        <translation>Neuer Trieb ist eingetragen: Düngen darf wieder beginnen.</translation>
    </message>
    <message>
        <source>The journal has the cold night of %1 already.</source>
        <translation>Im Tagebuch steht die kalte Nacht vom %1 schon.</translation>
    </message>
    <message>
        <source>%1: the cold night of %2 is written down. Looks at it come into the round.</source>
        <translation>%1: Die kalte Nacht vom %2 ist aufgeschrieben. Das Nachsehen kommt in die Runde.</translation>
    </message>
    <message>
        <source>%1: %2 cold nights to %3 are written down. Looks at it come into the round.</source>
        <translation>%1: %2 kalte Nächte bis %3 sind aufgeschrieben. Das Nachsehen kommt in die Runde.</translation>
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
        <translation>Heute Nacht sind %1 möglich %2; %3.</translation>
    </message>
    <message>
        <source>It is in</source>
        <translation>Sie ist drin</translation>
    </message>
    <message>
        <source>All of them are in</source>
        <translation>Alle sind drin</translation>
    </message>
    <message>
        <source>Ticks every plant that must come in tonight; one Undo takes all of it back</source>
        <translation>Hakt jede Pflanze ab, die heute Abend herein muss; einmal Rückgängig nimmt alles zurück</translation>
    </message>
</context>
<context>
    <name>ColdList</name>
    <message>
        <source>Plants outdoors tonight</source>
        <translation>Pflanzen heute Nacht draußen</translation>
    </message>
    <message>
        <source>Carry in</source>
        <translation>Hereintragen</translation>
    </message>
    <message>
        <source>%1 of %2 done</source>
        <translation>%1 von %2 erledigt</translation>
    </message>
    <message>
        <source>Tonight’s low at each spot, %1</source>
        <translation>Tiefstwert heute Nacht an jedem Platz, %1</translation>
    </message>
    <message>
        <source>At or below its line</source>
        <translation>An oder unter ihrer Grenze</translation>
    </message>
    <message>
        <source>Where to</source>
        <translation>Wohin</translation>
    </message>
    <message>
        <source>Is in</source>
        <translation>Ist drin</translation>
    </message>
    <message>
        <source>striped: the part of tonight’s range that harms the plant</source>
        <translation>gestreift: der Teil der heutigen Spanne, der der Pflanze schadet</translation>
    </message>
    <message>
        <source>Cannot carry one? Wall side, off the floor, a dry sheet to the ground over it, off again in the morning. It gains a degree or two at best (common practice, no source).</source>
        <translation>Eine lässt sich nicht tragen? An die Wand, weg vom Boden, ein trockenes Tuch bis zur Erde darüber, morgens wieder ab. Das bringt höchstens ein bis zwei Grad (übliche Praxis, ohne Quelle).</translation>
    </message>
</context>
<context>
    <name>ColdRow</name>
    <message>
        <source>%1 Not yet in.</source>
        <translation>%1 Noch nicht drin.</translation>
    </message>
    <message>
        <source>%1 It is in.</source>
        <translation>%1 Sie ist drin.</translation>
    </message>
    <message>
        <source>May stay; the next look is tomorrow</source>
        <translation>Dürfen draußen bleiben; morgen wird wieder nachgesehen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1; damage from %2</source>
        <translation>%1; Schaden ab %2</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>nach: %1</translation>
    </message>
</context>
<context>
    <name>ComingDays</name>
    <message>
        <source>This week</source>
        <translation>Diese Woche</translation>
    </message>
    <message>
        <source>The next %1 days</source>
        <translation>Die nächsten %1 Tage</translation>
    </message>
    <message>
        <source>How many days to come</source>
        <translation>Wie viele Tage voraus</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>How many days to come, here and on the printed sheet</source>
        <translation>Wie viele Tage voraus, hier und auf dem gedruckten Blatt</translation>
    </message>
    <message>
        <source>Nothing is planned for the next seven days; looks at the water come day by day.</source>
        <translation>Für die nächsten sieben Tage ist nichts geplant; nach dem Wasser gesehen wird Tag für Tag.</translation>
    </message>
    <message>
        <source>Nothing is planned for the next %1 days; looks at the water come day by day.</source>
        <translation>Für die nächsten %1 Tage ist nichts geplant; nach dem Wasser gesehen wird Tag für Tag.</translation>
    </message>
</context>
<context>
    <name>CompareSpots</name>
    <message>
        <source>Compare with</source>
        <translation>Vergleichen mit</translation>
    </message>
    <message>
        <source>Its light in long dashes in the chart and in the table; again: without it</source>
        <translation>Sein Licht lang gestrichelt im Diagramm und in der Tabelle; noch einmal: ohne ihn</translation>
    </message>
</context>
<context>
    <name>Comparison</name>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>What and where</source>
        <translation>Was und wo</translation>
    </message>
    <message>
        <source>Botanical name</source>
        <translation>Botanischer Name</translation>
    </message>
    <message>
        <source>Stands</source>
        <translation>Steht</translation>
    </message>
    <message>
        <source>at no spot</source>
        <translation>ohne Platz</translation>
    </message>
    <message>
        <source>Next move</source>
        <translation>Nächster Gang</translation>
    </message>
    <message>
        <source>none in the year ahead</source>
        <translation>keine im kommenden Jahr</translation>
    </message>
    <message>
        <source>Pot</source>
        <translation>Topf</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>none known, which is no proof</source>
        <translation>keine bekannt, was kein Beweis ist</translation>
    </message>
    <message>
        <source>Nights and light</source>
        <translation>Nächte und Licht</translation>
    </message>
    <message>
        <source>Killed at</source>
        <translation>Tödlich bei</translation>
    </message>
    <message>
        <source>Harmed from</source>
        <translation>Schaden ab</translation>
    </message>
    <message>
        <source>At ease above</source>
        <translation>Wohl ab</translation>
    </message>
    <message>
        <source>Tonight at its spot</source>
        <translation>Heute Nacht an ihrem Platz</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>etwa %1</translation>
    </message>
    <message>
        <source>Too hot from</source>
        <translation>Zu heiß ab</translation>
    </message>
    <message>
        <source>Good light</source>
        <translation>Gutes Licht</translation>
    </message>
    <message>
        <source>%1 mol/m² a day</source>
        <translation>%1 mol/m² am Tag</translation>
    </message>
    <message>
        <source>Keeps it alive</source>
        <translation>Hält sie am Leben</translation>
    </message>
    <message>
        <source>Between waterings</source>
        <translation>Zwischen dem Gießen</translation>
    </message>
    <message>
        <source>dries right out</source>
        <translation>trocknet ganz aus</translation>
    </message>
    <message>
        <source>does not dry out</source>
        <translation>trocknet nicht aus</translation>
    </message>
    <message>
        <source>Growth</source>
        <translation>Wachstum</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Since the reading before</source>
        <translation>Seit der vorigen Messung</translation>
    </message>
    <message>
        <source>Recovery</source>
        <translation>Erholung</translation>
    </message>
    <message>
        <source>nothing to judge</source>
        <translation>nichts zu beurteilen</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Next reading</source>
        <translation>Nächste Messung</translation>
    </message>
    <message>
        <source>%1: %2 %3, %4 %5.</source>
        <translation>%1: %2 %3, %4 %5.</translation>
    </message>
    <message>
        <source>%1: both %2.</source>
        <translation>%1: beide %2.</translation>
    </message>
</context>
<context>
    <name>CourseAsk</name>
    <message>
        <source>Pests and the course: %1</source>
        <translation>Schädlinge und Behandlung: %1</translation>
    </message>
    <message>
        <source>none in particular</source>
        <translation>keiner im Besonderen</translation>
    </message>
    <message>
        <source>its own</source>
        <translation>ihr eigener</translation>
    </message>
    <message>
        <source>What is known of a pest</source>
        <translation>Was über einen Schädling bekannt ist</translation>
    </message>
    <message>
        <source>Infested: %1.</source>
        <translation>Befallen: %1.</translation>
    </message>
    <message>
        <source>Suspect: %1.</source>
        <translation>Verdächtig: %1.</translation>
    </message>
    <message>
        <source>Clean: %1.</source>
        <translation>Sauber: %1.</translation>
    </message>
    <message>
        <source>A pest without a known name</source>
        <translation>Ein Schädling ohne bekannten Namen</translation>
    </message>
    <message>
        <source>Since the last find on %1: treated %2 times, clean looks %3.</source>
        <translation>Seit dem letzten Fund am %1: %2-mal behandelt, %3-mal sauber durchgesehen.</translation>
    </message>
    <message>
        <source>Since the last contact on %1: clean looks %2.</source>
        <translation>Seit dem letzten Kontakt am %1: %2-mal sauber durchgesehen.</translation>
    </message>
    <message>
        <source>Overdue: %1</source>
        <translation>Überfällig: %1</translation>
    </message>
    <message>
        <source>And so on, every %1 days at this temperature.</source>
        <translation>Und so weiter, bei dieser Temperatur alle %1 Tage.</translation>
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
        <translation>Von Spritzmittel oder Unkrautmittel getroffen: %1</translation>
    </message>
    <message>
        <source>another, not in the journal</source>
        <translation>ein anderes Mal, nicht im Tagebuch</translation>
    </message>
    <message>
        <source>Which, of those in the journal</source>
        <translation>Welches Mal, von denen im Tagebuch</translation>
    </message>
    <message>
        <source>What was sprayed</source>
        <translation>Was gespritzt wurde</translation>
    </message>
    <message>
        <source>The active substance, from the label; blank where nobody knows</source>
        <translation>Der Wirkstoff, vom Etikett; leer, wo es niemand weiß</translation>
    </message>
    <message>
        <source>It happened</source>
        <translation>Geschehen</translation>
    </message>
    <message>
        <source>days ago</source>
        <translation>Tage her</translation>
    </message>
    <message>
        <source>Blank: today</source>
        <translation>Leer: heute</translation>
    </message>
    <message>
        <source>From the spray to the first signs</source>
        <translation>Vom Spritzen bis zu den ersten Zeichen</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>May be left blank</source>
        <translation>Kann leer bleiben</translation>
    </message>
    <message>
        <source>Mix in the pot</source>
        <translation>Erde im Topf</translation>
    </message>
    <message>
        <source>quarts</source>
        <translation>Quart</translation>
    </message>
    <message>
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <source>Is it still wet on the leaves?</source>
        <translation>Ist es auf den Blättern noch nass?</translation>
    </message>
    <message>
        <source>Is it suspected in mix, compost or manure?</source>
        <translation>Wird es in Erde, Kompost oder Mist vermutet?</translation>
    </message>
    <message>
        <source>Is any of it eaten?</source>
        <translation>Wird etwas davon gegessen?</translation>
    </message>
    <message>
        <source>What is seen on new growth</source>
        <translation>Was am neuen Trieb zu sehen ist</translation>
    </message>
    <message>
        <source>On leaves that were there</source>
        <translation>An Blättern, die schon da waren</translation>
    </message>
    <message>
        <source>On stems</source>
        <translation>An Stängeln</translation>
    </message>
    <message>
        <source>On roots</source>
        <translation>An Wurzeln</translation>
    </message>
    <message>
        <source>Where and on which plants</source>
        <translation>Wo und an welchen Pflanzen</translation>
    </message>
    <message>
        <source>Write how many days ago it was, 0 to %1.</source>
        <translation>Schreiben, wie viele Tage es her ist, 0 bis %1.</translation>
    </message>
    <message>
        <source>Write days, 0 to 1000, or leave it blank.</source>
        <translation>Tage schreiben, 0 bis 1000, oder leer lassen.</translation>
    </message>
    <message>
        <source>Write how much mix the pot holds, or leave it blank.</source>
        <translation>Schreiben, wie viel Erde der Topf fasst, oder leer lassen.</translation>
    </message>
    <message>
        <source>What is known of %1, and what to do</source>
        <translation>Was über %1 bekannt ist, und was zu tun ist</translation>
    </message>
    <message>
        <source>It looks most like %1. That is not certain.</source>
        <translation>Am ehesten sieht es aus nach: %1. Sicher ist das nicht.</translation>
    </message>
    <message>
        <source>What did it is not known: the careful way.</source>
        <translation>Was es war, ist nicht bekannt: der vorsichtige Weg.</translation>
    </message>
    <message>
        <source>Do not eat.</source>
        <translation>Nicht essen.</translation>
    </message>
    <message>
        <source>“%1” is not in the table; read on the label what it contains.</source>
        <translation>„%1“ steht nicht in der Tabelle; auf dem Etikett lesen, was es enthält.</translation>
    </message>
    <message>
        <source>To wash the mix through: %1 of water, twice the pot&apos;s volume, caught in a basin.</source>
        <translation>Zum Durchspülen der Erde: %1 Wasser, das Doppelte des Topfvolumens, in einer Wanne aufgefangen.</translation>
    </message>
    <message>
        <source>Feed</source>
        <translation>Dünger</translation>
    </message>
    <message>
        <source>No feed before %1, and then only once new, healthy growth is logged.</source>
        <translation>Kein Dünger vor %1, und dann erst, wenn ein neuer, gesunder Austrieb eingetragen ist.</translation>
    </message>
    <message>
        <source>No feed before %1.</source>
        <translation>Kein Dünger vor %1.</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>This is no diagnosis and no legal proof.</source>
        <translation>Dies ist keine Diagnose und kein Beweis vor Gericht.</translation>
    </message>
    <message>
        <source>What the signs fit, not certain</source>
        <translation>Wozu die Zeichen passen, nicht sicher</translation>
    </message>
    <message>
        <source>Nothing in the table; show it to a plant clinic.</source>
        <translation>Nichts in der Tabelle; einer Pflanzenklinik zeigen.</translation>
    </message>
    <message>
        <source>What is known of these</source>
        <translation>Was über diese bekannt ist</translation>
    </message>
    <message>
        <source>The journal keeps the day it has, %1; another day is another case.</source>
        <translation>Das Tagebuch behält den Tag, den es hat, %1; ein anderer Tag ist ein anderer Fall.</translation>
    </message>
    <message>
        <source>As the journal has it.</source>
        <translation>Wie es im Tagebuch steht.</translation>
    </message>
    <message>
        <source>%1: hit by a spray on %2, written down. What helps and what waits comes into the round; nothing of it is eaten.</source>
        <translation>%1: am %2 von Spritzmittel getroffen, aufgeschrieben. Was hilft und was wartet, kommt in die Runde; gegessen wird nichts davon.</translation>
    </message>
</context>
<context>
    <name>DayBar</name>
    <message>
        <source>Begin the day</source>
        <translation>Den Tag beginnen</translation>
    </message>
    <message>
        <source>This window closes, and one of today opens. What is typed and not kept is lost.</source>
        <translation>Dieses Fenster schließt sich, und eines von heute geht auf. Was getippt und nicht behalten ist, geht verloren.</translation>
    </message>
</context>
<context>
    <name>DialogReturn</name>
    <message>
        <source>File name</source>
        <translation>Dateiname</translation>
    </message>
</context>
<context>
    <name>DoseLine</name>
    <message>
        <source>How much?</source>
        <translation>Wie viel?</translation>
    </message>
    <message>
        <source>Other feed or can</source>
        <translation>Anderer Dünger, andere Kanne</translation>
    </message>
    <message>
        <source>Key D. How much of your feed goes into your can, in your own measures.</source>
        <translation>Taste D. Wie viel von Ihrem Dünger in Ihre Kanne kommt, in Ihren eigenen Maßen.</translation>
    </message>
</context>
<context>
    <name>DoseSheet</name>
    <message>
        <source>Numbers on its label</source>
        <translation>Zahlen auf dem Etikett</translation>
    </message>
    <message>
        <source>It is a</source>
        <translation>Er ist</translation>
    </message>
    <message>
        <source>powder</source>
        <translation>Pulver</translation>
    </message>
    <message>
        <source>liquid</source>
        <translation>flüssig</translation>
    </message>
    <message>
        <source>A millilitre of it weighs</source>
        <translation>Ein Milliliter davon wiegt</translation>
    </message>
    <message>
        <source>A level teaspoon of it weighs</source>
        <translation>Ein gestrichener Teelöffel davon wiegt</translation>
    </message>
    <message>
        <source>On its label; may be left blank</source>
        <translation>Steht auf dem Etikett; kann leer bleiben</translation>
    </message>
    <message>
        <source>Weigh ten and take a tenth; may be left blank</source>
        <translation>Zehn wiegen und ein Zehntel nehmen; kann leer bleiben</translation>
    </message>
    <message>
        <source>Strength, nitrogen</source>
        <translation>Stärke, Stickstoff</translation>
    </message>
    <message>
        <source>By the plan for this plant</source>
        <translation>Nach dem Plan für diese Pflanze</translation>
    </message>
    <message>
        <source>Mixed from</source>
        <translation>Gemischt aus</translation>
    </message>
    <message>
        <source>oil</source>
        <translation>Öl</translation>
    </message>
    <message>
        <source>soap</source>
        <translation>Seife</translation>
    </message>
    <message>
        <source>Of the water, by the label</source>
        <translation>Vom Wasser, nach dem Etikett</translation>
    </message>
    <message>
        <source>Water, or a can of yours</source>
        <translation>Wasser, oder eine Kanne von Ihnen</translation>
    </message>
    <message>
        <source>Cans</source>
        <translation>Kannen</translation>
    </message>
    <message>
        <source>The dose stands here once all of it is known.</source>
        <translation>Die Gabe steht hier, sobald alles bekannt ist.</translation>
    </message>
    <message>
        <source>A can or a spoon of your own</source>
        <translation>Eine eigene Kanne oder ein eigener Löffel</translation>
    </message>
    <message>
        <source>What you call it</source>
        <translation>Wie Sie sie nennen</translation>
    </message>
    <message>
        <source>blue can, coffee spoon</source>
        <translation>blaue Kanne, Kaffeelöffel</translation>
    </message>
    <message>
        <source>What it holds</source>
        <translation>Was hineingeht</translation>
    </message>
    <message>
        <source>1.5 L, 6 cups, 7 ml</source>
        <translation>1,5 L, 7 ml</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>It stays with the household and can be taken wherever water is measured.</source>
        <translation>Sie bleibt beim Haushalt und lässt sich überall nehmen, wo Wasser gemessen wird.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Use this feed and can</source>
        <translation>Diesen Dünger, diese Kanne nehmen</translation>
    </message>
    <message>
        <source>Control and Enter</source>
        <translation>Strg und Eingabe</translation>
    </message>
    <message>
        <source>Control and Enter. Remembered on this machine; each feed then says its dose.</source>
        <translation>Strg und Eingabe. Wird auf diesem Rechner gemerkt; jede Düngung sagt dann ihre Gabe.</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Verlassen</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
</context>
<context>
    <name>FeedingYear</name>
    <message>
        <source>no feed: %1</source>
        <translation>kein Dünger: %1</translation>
    </message>
    <message>
        <source>Next feed %1 at %2 ppm nitrogen; it can wait until %3.</source>
        <translation>Nächste Düngung %1 mit %2 ppm Stickstoff; sie kann bis %3 warten.</translation>
    </message>
    <message>
        <source>Wash salts out about %1 with %2, twice the pot as guessed from its weight.</source>
        <translation>Salze etwa am %1 mit %2 ausspülen, dem Doppelten des Topfes, nach seinem Gewicht geschätzt.</translation>
    </message>
    <message>
        <source>Wash salts out about %1 with %2, twice the pot.</source>
        <translation>Salze etwa am %1 mit %2 ausspülen, dem Doppelten des Topfes.</translation>
    </message>
    <message>
        <source>Hard water leaves a crust and makes the mix less acid: use rain for citrus, ferns and others that want it acid.</source>
        <translation>Hartes Wasser hinterlässt eine Kruste und macht die Erde weniger sauer: Regenwasser für Zitrus, Farne und andere, die es sauer wollen.</translation>
    </message>
    <message>
        <source>Water from a softener holds salt: not for plants.</source>
        <translation>Wasser aus einem Enthärter enthält Salz: nicht für Pflanzen.</translation>
    </message>
    <message>
        <source>Dates are by usual weather: feed when you see it grow, never a dry pot, and follow the label.</source>
        <translation>Die Daten gelten bei üblichem Wetter: düngen, wenn man sie wachsen sieht, nie einen trockenen Topf, und nach dem Etikett.</translation>
    </message>
    <message>
        <source>every %1 days, %2 to %3 ppm nitrogen</source>
        <translation>alle %1 Tage, %2 bis %3 ppm Stickstoff</translation>
    </message>
    <message>
        <source>%1, half the strength while it is young</source>
        <translation>%1, die halbe Stärke, solange sie jung ist</translation>
    </message>
    <message>
        <source>%1, weak for want of light, by the lamps</source>
        <translation>%1, schwach aus Mangel an Licht, unter den Lampen</translation>
    </message>
    <message>
        <source>%1, weak for want of light</source>
        <translation>%1, schwach aus Mangel an Licht</translation>
    </message>
    <message>
        <source>%1, by the lamps</source>
        <translation>%1, unter den Lampen</translation>
    </message>
    <message>
        <source>%1 on</source>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
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
        <translation>Diesen Namen nehmen</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
</context>
<context>
    <name>FirstStart</name>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Spots</source>
        <translation>Plätze</translation>
    </message>
    <message>
        <source>Plants</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <source>On to the spots</source>
        <translation>Weiter zu den Plätzen</translation>
    </message>
    <message>
        <source>On to the plants</source>
        <translation>Weiter zu den Pflanzen</translation>
    </message>
    <message>
        <source>Open the year</source>
        <translation>Das Jahr öffnen</translation>
    </message>
    <message>
        <source>First start</source>
        <translation>Erster Start</translation>
    </message>
    <message>
        <source>When your pots go out, when they come in, and whether they liked it.</source>
        <translation>Wann die Töpfe hinausgehen, wann sie hereinkommen, und ob es ihnen bekam.</translation>
    </message>
    <message>
        <source>Look at the example household</source>
        <translation>Den Beispielhaushalt ansehen</translation>
    </message>
    <message>
        <source>An invented household, plainly marked as such; nothing is kept</source>
        <translation>Ein erfundener Haushalt, klar als solcher bezeichnet; nichts wird gespeichert</translation>
    </message>
    <message>
        <source>Nothing leaves this computer. Everything can be changed later. The household will lie in %1.</source>
        <translation>Nichts verlässt diesen Rechner. Alles lässt sich später ändern. Der Haushalt wird in %1 liegen.</translation>
    </message>
    <message>
        <source>Where are your pots?</source>
        <translation>Wo stehen die Töpfe?</translation>
    </message>
    <message>
        <source>Type the nearest town, or read the place off any map; coordinates of any form can be pasted.</source>
        <translation>Den nächsten Ort eintippen oder die Lage von einer Karte ablesen; Koordinaten jeder Form lassen sich einfügen.</translation>
    </message>
    <message>
        <source>Name of the household</source>
        <translation>Name des Haushalts</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Zuhause</translation>
    </message>
    <message>
        <source>The household is being written.</source>
        <translation>Der Haushalt wird geschrieben.</translation>
    </message>
    <message>
        <source>Step %1 of 3. %2</source>
        <translation>Schritt %1 von 3. %2</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Alt and Left. What was typed stays.</source>
        <translation>Alt und Links. Was getippt ist, bleibt.</translation>
    </message>
    <message>
        <source>Leave out for now</source>
        <translation>Vorerst auslassen</translation>
    </message>
    <message>
        <source>Control and Enter</source>
        <translation>Strg und Eingabe</translation>
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
        <translation>Vorhergesagtes Tief heute Nacht</translation>
    </message>
    <message>
        <source>Dew point tonight, where it is told</source>
        <translation>Taupunkt heute Nacht, wo er genannt ist</translation>
    </message>
    <message>
        <source>Dew point</source>
        <translation>Taupunkt</translation>
    </message>
    <message>
        <source>clear sky</source>
        <translation>klarer Himmel</translation>
    </message>
    <message>
        <source>cloudy</source>
        <translation>bewölkt</translation>
    </message>
    <message>
        <source>calm air</source>
        <translation>windstill</translation>
    </message>
    <message>
        <source>windy</source>
        <translation>windig</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Keeps it as tonight’s forecast, so that its errors here are learned</source>
        <translation>Speichert ihn als Vorhersage für heute Nacht, damit ihre Fehler hier gelernt werden</translation>
    </message>
</context>
<context>
    <name>GrowthPainter</name>
    <message>
        <source>growth clock</source>
        <translation>Wachstumsuhr</translation>
    </message>
    <message>
        <source>stands still</source>
        <translation>steht still</translation>
    </message>
    <message>
        <source>had nothing happened</source>
        <translation>wäre nichts geschehen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>next reading, %1</source>
        <translation>nächste Messung, %1</translation>
    </message>
</context>
<context>
    <name>GrowthPane</name>
    <message>
        <source>Key T shows the same as a table</source>
        <translation>Taste T zeigt dasselbe als Tabelle</translation>
    </message>
    <message>
        <source>%1, reading by reading</source>
        <translation>%1, Messung für Messung</translation>
    </message>
    <message>
        <source>&lt;b&gt;No readings yet.&lt;/b&gt; Three before an event and four after it make a verdict. Control and L, then Measured, keeps the first.</source>
        <translation>&lt;b&gt;Noch keine Messungen.&lt;/b&gt; Drei vor einem Ereignis und vier danach geben ein Urteil. Strg und L, dann Gemessen, trägt die erste ein.</translation>
    </message>
    <message>
        <source>What the chart shows</source>
        <translation>Was das Diagramm zeigt</translation>
    </message>
    <message>
        <source>As a table</source>
        <translation>Als Tabelle</translation>
    </message>
    <message>
        <source>Key T</source>
        <translation>Taste T</translation>
    </message>
    <message>
        <source>Green band: where the fit lies, 9 in 10.</source>
        <translation>Grünes Band: dort verläuft das Wachstum, 9 von 10.</translation>
    </message>
    <message>
        <source>Judged after</source>
        <translation>Beurteilt nach</translation>
    </message>
    <message>
        <source>After what growth is judged</source>
        <translation>Wonach das Wachstum beurteilt wird</translation>
    </message>
    <message>
        <source>Spared by it, of the same kind</source>
        <translation>Davon verschont, von derselben Art</translation>
    </message>
    <message>
        <source>What it grew meanwhile is the clock by which this plant is judged</source>
        <translation>Was sie inzwischen wuchs, ist die Uhr, nach der diese Pflanze beurteilt wird</translation>
    </message>
</context>
<context>
    <name>HardenAsk</name>
    <message>
        <source>Going out and coming in: %1</source>
        <translation>Ausräumen und Einräumen: %1</translation>
    </message>
    <message>
        <source>Neither goes out nor comes in within the year’s plan.</source>
        <translation>Geht im Jahresplan weder hinaus noch herein.</translation>
    </message>
    <message>
        <source>7 to 14 days out, a week of shade, a look, a bath, 14 days apart and 4 to 8 weeks of stepping down in: extension advice; how they grow with the step of light and cold is common practice, without a source. Leaves that bleach or hang want a step back.</source>
        <translation>Hinaus 7 bis 14 Tage; herein eine Woche Schatten, eine Durchsicht, ein Bad, 14 Tage abseits und 4 bis 8 Wochen stufenweise dunkler: Rat der Beratungsdienste; wie sie mit dem Schritt an Licht und Kälte wachsen, ist übliche Praxis, ohne Quelle. Bleichen oder hängen die Blätter, einen Schritt zurück.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
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
        <translation>%1 Aufbewahren wie einen Schlüssel und niemandem geben, der die Adresse nicht kennen muss.</translation>
    </message>
    <message>
        <source>Write it</source>
        <translation>Schreiben</translation>
    </message>
    <message>
        <source>Asked once; changed under What may leave the folder</source>
        <translation>Einmal gefragt; zu ändern unter „Was den Ordner verlassen darf“</translation>
    </message>
    <message>
        <source>Do not write it</source>
        <translation>Nicht schreiben</translation>
    </message>
    <message>
        <source>Open it in a window of its own</source>
        <translation>In einem eigenen Fenster öffnen</translation>
    </message>
    <message>
        <source>This window and its household stay as they are</source>
        <translation>Dieses Fenster und sein Haushalt bleiben, wie sie sind</translation>
    </message>
</context>
<context>
    <name>HomeCalendar</name>
    <message>
        <source>The tasks in your own calendar</source>
        <translation>Die Aufgaben im eigenen Kalender</translation>
    </message>
    <message>
        <source>Carrying and hardening, feeding and washing out, courses against pests, looks after cold and sprays, and sowings of the days to come, in one file that calendars read. Looks at the water are not in it, since each waits for the one before, nor carrying in for a cold night, which a forecast decides. What the plan drops stays in a calendar that took it in before: take it out there by hand.</source>
        <translation>Tragen und Abhärten, Düngen und Durchspülen, Maßnahmen gegen Schädlinge, Blicke nach Kälte und Spritzmitteln und Aussaaten der kommenden Tage in einer Datei, die Kalender lesen. Blicke auf das Wasser sind nicht darin, da jeder auf den vorigen wartet, auch nicht das Hereintragen in einer kalten Nacht, über das die Vorhersage entscheidet. Was der Plan fallen lässt, bleibt in einem Kalender, der es schon aufgenommen hat: dort von Hand löschen.</translation>
    </message>
    <message>
        <source>The calendar file to write</source>
        <translation>Die Kalenderdatei, die geschrieben wird</translation>
    </message>
    <message>
        <source>Calendars (*.ics)</source>
        <translation>Kalender (*.ics)</translation>
    </message>
    <message>
        <source>Days from today, up to 730</source>
        <translation>Tage ab heute, bis zu 730</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Blank: a year.</source>
        <translation>Leer: ein Jahr.</translation>
    </message>
    <message>
        <source>An alarm for each day</source>
        <translation>Ein Wecker für jeden Tag</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message>
        <source>at six in the evening before</source>
        <translation>um sechs am Abend davor</translation>
    </message>
    <message>
        <source>at noon of the day before</source>
        <translation>am Mittag davor</translation>
    </message>
    <message>
        <source>a whole day before</source>
        <translation>einen ganzen Tag davor</translation>
    </message>
    <message>
        <source>Write the calendar</source>
        <translation>Den Kalender schreiben</translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation>Ersetzen</translation>
    </message>
</context>
<context>
    <name>HomeCard</name>
    <message>
        <source>A scale card for your photographs</source>
        <translation>Eine Maßkarte für die Fotos</translation>
    </message>
    <message>
        <source>A ruler of 100 mm with a target at each end, by which a length is measured in the photo, and a grey patch by which its colours are set.</source>
        <translation>Ein Lineal von 100 mm mit einer Zielmarke an jedem Ende, nach dem eine Länge im Foto gemessen wird, und ein graues Feld, nach dem seine Farben eingestellt werden.</translation>
    </message>
    <message>
        <source>The card to write, .svg</source>
        <translation>Die Karte, die geschrieben wird, .svg</translation>
    </message>
    <message>
        <source>Drawings (*.svg)</source>
        <translation>Zeichnungen (*.svg)</translation>
    </message>
    <message>
        <source>Write the card</source>
        <translation>Die Karte schreiben</translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation>Ersetzen</translation>
    </message>
</context>
<context>
    <name>HomeCheck</name>
    <message>
        <source>Look through the folder</source>
        <translation>Den Ordner durchsehen</translation>
    </message>
    <message>
        <source>The journal, its references, every photograph against its digest; changes nothing</source>
        <translation>Das Journal, seine Verweise, jedes Foto gegen seine Prüfsumme; ändert nichts</translation>
    </message>
</context>
<context>
    <name>HomeCredits</name>
    <message>
        <source>Where the figures come from</source>
        <translation>Woher die Zahlen kommen</translation>
    </message>
    <message>
        <source>Fewer</source>
        <translation>Weniger</translation>
    </message>
    <message>
        <source>All %1 publications</source>
        <translation>Alle %1 Veröffentlichungen</translation>
    </message>
    <message>
        <source>Publications behind the tables of plants, seeds and pests</source>
        <translation>Veröffentlichungen hinter den Tabellen der Pflanzen, Samen und Schädlinge</translation>
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
        <translation>Was im Ordner des Haushalts liegt</translation>
    </message>
    <message>
        <source>The demonstration, invented for showing. It lies in memory and is gone when the window is closed.</source>
        <translation>Das Vorführbeispiel, zum Zeigen erfunden. Es liegt im Speicher und ist fort, wenn das Fenster schließt.</translation>
    </message>
    <message>
        <source>What was taken back is not counted. Photographs taken out of the lists stay in the folder and in every backup.</source>
        <translation>Zurückgenommenes zählt nicht. Fotos, die aus den Listen genommen wurden, bleiben im Ordner und in jeder Sicherung.</translation>
    </message>
    <message>
        <source>What may leave the folder</source>
        <translation>Was den Ordner verlassen darf</translation>
    </message>
    <message>
        <source>A backup is whole or it is none: with your home’s coordinates, and with photographs that may say where they were taken. Tables hold the same. You are asked before the first of each.</source>
        <translation>Eine Sicherung ist vollständig, oder sie ist keine: mit den Koordinaten des Zuhauses und mit Fotos, die verraten können, wo sie entstanden. Tabellen enthalten dasselbe. Vor der ersten von jeder Art wird gefragt.</translation>
    </message>
    <message>
        <source>Backups</source>
        <translation>Sicherungen</translation>
    </message>
    <message>
        <source>Ask first</source>
        <translation>Vorher fragen</translation>
    </message>
    <message>
        <source>May be written</source>
        <translation>Darf geschrieben werden</translation>
    </message>
    <message>
        <source>Tables for other programs</source>
        <translation>Tabellen für andere Programme</translation>
    </message>
    <message>
        <source>Back up</source>
        <translation>Sichern</translation>
    </message>
    <message>
        <source>There is nothing to back up: the demonstration is made anew at every start.</source>
        <translation>Es gibt nichts zu sichern: Das Vorführbeispiel entsteht bei jedem Start neu.</translation>
    </message>
    <message>
        <source>The file to write, outside the folder</source>
        <translation>Die Datei, außerhalb des Ordners</translation>
    </message>
    <message>
        <source>Backups (*.zip)</source>
        <translation>Sicherungen (*.zip)</translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation>Jetzt sichern</translation>
    </message>
    <message>
        <source>Writes the journal and all photographs into one file, and reads it back</source>
        <translation>Schreibt das Journal und alle Fotos in eine Datei und liest sie wieder</translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation>Ersetzen</translation>
    </message>
    <message>
        <source>The old one stays until the new one is whole</source>
        <translation>Die alte bleibt, bis die neue vollständig ist</translation>
    </message>
    <message>
        <source>Say so when the last backup is older than</source>
        <translation>Hinweisen, wenn die letzte Sicherung älter ist als</translation>
    </message>
    <message>
        <source>two weeks</source>
        <translation>zwei Wochen</translation>
    </message>
    <message>
        <source>a month</source>
        <translation>einen Monat</translation>
    </message>
    <message>
        <source>three months</source>
        <translation>drei Monate</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>Bring a backup back</source>
        <translation>Eine Sicherung zurückholen</translation>
    </message>
    <message>
        <source>Into a new or an empty folder. The household that is open stays as it is.</source>
        <translation>In einen neuen oder leeren Ordner. Der offene Haushalt bleibt, wie er ist.</translation>
    </message>
    <message>
        <source>The backup</source>
        <translation>Die Sicherung</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>The new or empty folder</source>
        <translation>Der neue oder leere Ordner</translation>
    </message>
    <message>
        <source>Bring it back</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>Every file is compared with the backup’s list before the folder appears</source>
        <translation>Jede Datei wird mit der Liste der Sicherung verglichen, bevor der Ordner erscheint</translation>
    </message>
    <message>
        <source>All that the journal knows as comma-separated tables, the photographs beside them.</source>
        <translation>Alles, was das Journal weiß, als kommagetrennte Tabellen, die Fotos daneben.</translation>
    </message>
    <message>
        <source>A new or an empty folder</source>
        <translation>Ein neuer oder leerer Ordner</translation>
    </message>
    <message>
        <source>Write the tables</source>
        <translation>Die Tabellen schreiben</translation>
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
        <translation> (Höhe naher Orte; die eigene ist nicht bekannt)</translation>
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
        <translation>%1: %2 entfernt, Gewicht %3</translation>
    </message>
    <message>
        <source>Lowest night of a winter</source>
        <translation>Tiefste Nacht eines Winters</translation>
    </message>
    <message>
        <source>Lowest night of a year</source>
        <translation>Tiefste Nacht eines Jahres</translation>
    </message>
    <message>
        <source>%1; 8 winters in 10: %2 to %3</source>
        <translation>%1; in 8 von 10 Wintern: %2 bis %3</translation>
    </message>
    <message>
        <source>%1; 8 years in 10: %2 to %3</source>
        <translation>%1; 8 von 10 Jahren: %2 bis %3</translation>
    </message>
    <message>
        <source>Hardiness zone</source>
        <translation>Winterhärtezone</translation>
    </message>
    <message>
        <source>Nights with frost</source>
        <translation>Nächte mit Frost</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>%1 a year</source>
        <translation>%1 im Jahr</translation>
    </message>
    <message>
        <source>Days above %1</source>
        <translation>Tage über %1</translation>
    </message>
    <message>
        <source>A month’s mean low is right to</source>
        <translation>Das mittlere Tief eines Monats stimmt auf</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>etwa %1</translation>
    </message>
    <message>
        <source>A frost date is right to</source>
        <translation>Genauigkeit eines Frostdatums</translation>
    </message>
    <message>
        <source>about %1 days</source>
        <translation>etwa %1 Tage</translation>
    </message>
    <message>
        <source> Lows there became %1 colder a decade over these years; shown, not added.</source>
        <translation> Die Tiefstwerte wurden dort in diesen Jahren je Jahrzehnt um %1 kälter; gezeigt, nicht eingerechnet.</translation>
    </message>
    <message>
        <source> Lows there became %1 warmer a decade over these years; shown, not added.</source>
        <translation> Die Tiefstwerte wurden dort in diesen Jahren je Jahrzehnt um %1 wärmer; gezeigt, nicht eingerechnet.</translation>
    </message>
    <message>
        <source> These are chances, not promises.</source>
        <translation> Das sind Wahrscheinlichkeiten, keine Zusagen.</translation>
    </message>
    <message>
        <source>; coast lines: Natural Earth (public domain)</source>
        <translation>; Küstenlinien: Natural Earth (gemeinfrei)</translation>
    </message>
    <message>
        <source>; towns: GeoNames (CC BY 4.0)</source>
        <translation>; Orte: GeoNames (CC BY 4.0)</translation>
    </message>
    <message>
        <source>from its window or roof as described</source>
        <translation>aus dem Fenster oder Dach, wie beschrieben</translation>
    </message>
    <message>
        <source>from your own summer and winter figure</source>
        <translation>nach eigener Angabe für Sommer und Winter</translation>
    </message>
    <message>
        <source>enough for all</source>
        <translation>genug für alle</translation>
    </message>
    <message>
        <source>less than %1 would like</source>
        <translation>zu wenig für %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1: %2 moles a day, 9 days in 10: %3. %4</source>
        <translation>%1: %2 Mol am Tag, an 9 von 10 Tagen %3. %4</translation>
    </message>
    <message>
        <source>%1: %2 moles a day. %3</source>
        <translation>%1: %2 Mol am Tag. %3</translation>
    </message>
    <message>
        <source>enough all year</source>
        <translation>ganzjährig genug</translation>
    </message>
    <message>
        <source>enough in %1</source>
        <translation>genug: %1</translation>
    </message>
    <message>
        <source>never enough to thrive</source>
        <translation>nie genug zum Gedeihen</translation>
    </message>
    <message>
        <source>; all year too little to live on</source>
        <translation>; ganzjährig zu wenig zum Leben</translation>
    </message>
    <message>
        <source>; too little to live on in %1</source>
        <translation>; zu wenig zum Leben: %1</translation>
    </message>
    <message>
        <source>thrives from %1</source>
        <translation>gedeiht ab %1</translation>
    </message>
    <message>
        <source>%1, %2: %3.</source>
        <translation>%1, %2: %3.</translation>
    </message>
    <message>
        <source>clear, calm</source>
        <translation>klar, windstill</translation>
    </message>
    <message>
        <source>cloud or wind</source>
        <translation>Wolken oder Wind</translation>
    </message>
    <message>
        <source>sky not noted</source>
        <translation>Himmel nicht notiert</translation>
    </message>
    <message>
        <source>Night to %1: %2, %3 against the open air, %4</source>
        <translation>Nacht auf %1: %2, %3 verglichen mit dem Freien, %4</translation>
    </message>
    <message>
        <source>%1 now</source>
        <translation>jetzt %1</translation>
    </message>
    <message>
        <source>9 in 10: %1 to %2</source>
        <translation>9 von 10: %1 bis %2</translation>
    </message>
    <message>
        <source>clear, calm nights: %1; cloud or wind: %2</source>
        <translation>klare, windstille Nächte: %1; Wolken oder Wind: %2</translation>
    </message>
</context>
<context>
    <name>HomeForecasts</name>
    <message>
        <source>How right the forecasts were here</source>
        <translation>Wie gut die Vorhersagen hier waren</translation>
    </message>
    <message>
        <source>made</source>
        <translation>gemacht</translation>
    </message>
    <message>
        <source>nights</source>
        <translation>Nächte</translation>
    </message>
    <message>
        <source>error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>missed by</source>
        <translation>verfehlt um</translation>
    </message>
    <message>
        <source>the season alone</source>
        <translation>die Jahreszeit allein</translation>
    </message>
    <message>
        <source>Made, nights, error, missed by, the season alone</source>
        <translation>Gemacht, Nächte, Fehler, verfehlt um, die Jahreszeit allein</translation>
    </message>
    <message>
        <source>Nights are those whose low a thermometer outdoors read. A miss is a mean one, with the spread that was stated weighed in: a forecast that misses by no less than the season alone is of no use.</source>
        <translation>Gezählt sind Nächte, deren Tiefstwert ein Thermometer im Freien ablas. Verfehlt ist ein Mittel, in dem die angegebene Spanne mitzählt: Eine Vorhersage, die nicht weniger verfehlt als die Jahreszeit allein, nützt nichts.</translation>
    </message>
</context>
<context>
    <name>HomeJournal</name>
    <message>
        <source>What happened in the household</source>
        <translation>Was im Haushalt geschah</translation>
    </message>
    <message>
        <source>Words to look for: a plant, a spot, what, when</source>
        <translation>Gesuchte Wörter: eine Pflanze, ein Platz, was, wann</translation>
    </message>
    <message>
        <source>words to look for</source>
        <translation>gesuchte Wörter</translation>
    </message>
    <message>
        <source>Log something without a plant</source>
        <translation>Ohne Pflanze eintragen</translation>
    </message>
    <message>
        <source>Control and L. At a spot, or in the whole household. Of a plant it is logged under Plants.</source>
        <translation>Strg und L. An einem Platz oder im ganzen Haushalt. Zu einer Pflanze wird unter Pflanzen eingetragen.</translation>
    </message>
    <message>
        <source>The journal is being read.</source>
        <translation>Das Journal wird gelesen.</translation>
    </message>
    <message>
        <source>Journal</source>
        <translation>Journal</translation>
    </message>
    <message>
        <source>Enter or a double click opens the plant’s page.</source>
        <translation>Eingabe oder ein Doppelklick öffnet die Seite der Pflanze.</translation>
    </message>
</context>
<context>
    <name>HomeJournalLog</name>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschah</translation>
    </message>
    <message>
        <source>Which pest</source>
        <translation>Welcher Schädling</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Note, may be left blank</source>
        <translation>Notiz, darf leer bleiben</translation>
    </message>
    <message>
        <source>How many days ago, blank for today</source>
        <translation>Vor wie vielen Tagen, leer für heute</translation>
    </message>
    <message>
        <source>0 days ago</source>
        <translation>vor 0 Tagen</translation>
    </message>
    <message>
        <source>days ago</source>
        <translation>Tage her</translation>
    </message>
    <message>
        <source>Keep in the journal</source>
        <translation>Ins Journal</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
</context>
<context>
    <name>HomeKeptNights</name>
    <message>
        <source>Put right</source>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>Night to</source>
        <translation>Nacht auf</translation>
    </message>
    <message>
        <source>low</source>
        <translation>Tief</translation>
    </message>
    <message>
        <source>high</source>
        <translation>Hoch</translation>
    </message>
    <message>
        <source>station</source>
        <translation>Station</translation>
    </message>
    <message>
        <source>sky</source>
        <translation>Himmel</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Night to, low, high, station, sky, note</source>
        <translation>Nacht auf, Tief, Hoch, Station, Himmel, Notiz</translation>
    </message>
    <message>
        <source>%1 nights more</source>
        <translation>%1 weitere Nächte</translation>
    </message>
    <message>
        <source>Put right, a night takes its own place. One that was kept for another day or spot is taken back with Undo above the pages.</source>
        <translation>Berichtigt nimmt eine Nacht ihren eigenen Platz ein. Eine, die für einen anderen Tag oder Platz behalten wurde, nimmt „Rückgängig“ über den Seiten zurück.</translation>
    </message>
</context>
<context>
    <name>HomeLightReading</name>
    <message>
        <source>A light meter’s reading</source>
        <translation>Was der Lichtmesser zeigt</translation>
    </message>
    <message>
        <source>What is known</source>
        <translation>Was bekannt ist</translation>
    </message>
    <message>
        <source>In the light of</source>
        <translation>Im Licht von</translation>
    </message>
    <message>
        <source>The same lux are more light for a plant from the sky than from a lamp. Hold the meter at the leaves, facing up.</source>
        <translation>Dieselben Lux sind für eine Pflanze vom Himmel mehr Licht als von einer Lampe. Den Messer an die Blätter halten, nach oben gerichtet.</translation>
    </message>
    <message>
        <source>A day’s light</source>
        <translation>Licht eines Tages</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>For how long a day</source>
        <translation>Wie lange am Tag</translation>
    </message>
    <message>
        <source>h</source>
        <translation>h</translation>
    </message>
    <message>
        <source>Blank: 8 h</source>
        <translation>Leer: 8 h</translation>
    </message>
    <message>
        <source>Hours of a lamp</source>
        <translation>Stunden einer Lampe</translation>
    </message>
    <message>
        <source>Day’s light that is wanted</source>
        <translation>Gewünschtes Licht am Tag</translation>
    </message>
    <message>
        <source>mol</source>
        <translation>mol</translation>
    </message>
    <message>
        <source>The lamp’s light at the leaves</source>
        <translation>Licht der Lampe an den Blättern</translation>
    </message>
    <message>
        <source>µmol</source>
        <translation>µmol</translation>
    </message>
    <message>
        <source>µmol per m² and s</source>
        <translation>µmol je m² und s</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>moles a day</source>
        <translation>Mol am Tag</translation>
    </message>
    <message>
        <source>the lamp burns</source>
        <translation>die Lampe brennt</translation>
    </message>
    <message>
        <source>Month, moles a day, the lamp burns</source>
        <translation>Monat, Mol am Tag, die Lampe brennt</translation>
    </message>
</context>
<context>
    <name>HomeNightEntry</name>
    <message>
        <source>A night with all that was read, also in a room</source>
        <translation>Eine Nacht mit allem, was abgelesen wurde, auch in einem Zimmer</translation>
    </message>
    <message>
        <source>Lowest of the night</source>
        <translation>Tiefstwert der Nacht</translation>
    </message>
    <message>
        <source>Highest since the last reading</source>
        <translation>Höchstwert seit der letzten Ablesung</translation>
    </message>
    <message>
        <source>May be left blank</source>
        <translation>Kann leer bleiben</translation>
    </message>
    <message>
        <source>Low of a station near by</source>
        <translation>Tiefstwert einer nahen Station</translation>
    </message>
    <message>
        <source>In the open, of that same night; may be left blank</source>
        <translation>Im Freien, in derselben Nacht; kann leer bleiben</translation>
    </message>
    <message>
        <source>The night ended</source>
        <translation>Ende der Nacht</translation>
    </message>
    <message>
        <source>days ago</source>
        <translation>Tage her</translation>
    </message>
    <message>
        <source>Blank: this morning</source>
        <translation>Leer: heute Morgen</translation>
    </message>
    <message>
        <source>Anything worth keeping</source>
        <translation>Was sonst zu behalten ist</translation>
    </message>
    <message>
        <source>The sky of that night</source>
        <translation>Der Himmel in jener Nacht</translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>nicht notiert</translation>
    </message>
    <message>
        <source>clear, calm</source>
        <translation>klar, windstill</translation>
    </message>
    <message>
        <source>cloud or wind</source>
        <translation>Wolken oder Wind</translation>
    </message>
    <message>
        <source>Keep the night</source>
        <translation>Die Nacht speichern</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Weniger</translation>
    </message>
    <message>
        <source>The nights of this spot</source>
        <translation>Die Nächte dieses Platzes</translation>
    </message>
    <message>
        <source>Lists what was read there, to look it up or put it right</source>
        <translation>Zeigt, was dort abgelesen wurde, zum Nachsehen oder Berichtigen</translation>
    </message>
</context>
<context>
    <name>HomeNightLine</name>
    <message>
        <source>Nights at or below a line of your own</source>
        <translation>Nächte bei oder unter einer eigenen Linie</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>The line</source>
        <translation>Die Linie</translation>
    </message>
    <message>
        <source>line</source>
        <translation>Linie</translation>
    </message>
    <message>
        <source>From which night on, may be left blank</source>
        <translation>Ab welcher Nacht, darf leer bleiben</translation>
    </message>
    <message>
        <source>from, such as 1.5.2027</source>
        <translation>von, etwa 1.5.2027</translation>
    </message>
    <message>
        <source>To which night, may be left blank</source>
        <translation>Bis zu welcher Nacht, darf leer bleiben</translation>
    </message>
    <message>
        <source>to, such as 31.5.2027</source>
        <translation>bis, etwa 31.5.2027</translation>
    </message>
    <message>
        <source>One more chance to give dates for, such as 1 in 12, may be left blank</source>
        <translation>Noch eine Chance, für die Tage genannt werden, etwa 1 von 12, kann leer bleiben</translation>
    </message>
    <message>
        <source>chance, such as 1 in 12</source>
        <translation>Chance, etwa 1 von 12</translation>
    </message>
    <message>
        <source>Tell the chances</source>
        <translation>Die Wahrscheinlichkeiten nennen</translation>
    </message>
    <message>
        <source>A night is named by its morning. Without dates: the last and the first of the season.</source>
        <translation>Eine Nacht heißt nach ihrem Morgen. Ohne Daten: die letzte und die erste der kalten Zeit.</translation>
    </message>
    <message>
        <source>Chance</source>
        <translation>Wahrscheinlichkeit</translation>
    </message>
    <message>
        <source>one more after</source>
        <translation>noch eine nach</translation>
    </message>
    <message>
        <source>the first one by</source>
        <translation>die erste bis</translation>
    </message>
    <message>
        <source>more days without than</source>
        <translation>mehr Tage ohne als</translation>
    </message>
    <message>
        <source>Chance, one more after, the first one by, more days without than</source>
        <translation>Wahrscheinlichkeit, noch eine nach, die erste bis, mehr Tage ohne als</translation>
    </message>
</context>
<context>
    <name>HomeNights</name>
    <message>
        <source>Thermometer</source>
        <translation>Thermometer</translation>
    </message>
    <message>
        <source>No spot outdoors is known, so there is nothing to learn from a thermometer. Add one under Home, Spots.</source>
        <translation>Es ist kein Platz im Freien bekannt, ein Thermometer kann also nichts lehren. Einen anlegen unter Zuhause, Plätze.</translation>
    </message>
    <message>
        <source>Log last night</source>
        <translation>Letzte Nacht eintragen</translation>
    </message>
    <message>
        <source>Keeps the low of the night that ended this morning</source>
        <translation>Speichert den Tiefstwert der Nacht, die heute früh endete</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>Key T: the nights as a table.</source>
        <translation>Taste T: die Nächte als Tabelle.</translation>
    </message>
    <message>
        <source>%1, by the number of logged nights. Band: where the spot’s mean lies, 9 in 10. Open dot: clear and calm; filled: cloud or wind; square: sky not noted.</source>
        <translation>%1, nach der Zahl der eingetragenen Nächte. Band: wo das Mittel des Platzes liegt, 9 von 10. Offener Punkt: klar und windstill; gefüllt: Wolken oder Wind; Quadrat: Himmel nicht notiert.</translation>
    </message>
    <message>
        <source>Night to</source>
        <translation>Nacht auf</translation>
    </message>
    <message>
        <source>low</source>
        <translation>Tief</translation>
    </message>
    <message>
        <source>against the open air</source>
        <translation>verglichen mit dem Freien</translation>
    </message>
    <message>
        <source>sky</source>
        <translation>Himmel</translation>
    </message>
    <message>
        <source>Night to, low, against the open air, sky</source>
        <translation>Nacht auf, Tief, verglichen mit dem Freien, Himmel</translation>
    </message>
    <message>
        <source>No night is logged yet.</source>
        <translation>Noch keine Nacht eingetragen.</translation>
    </message>
    <message>
        <source>As a table</source>
        <translation>Als Tabelle</translation>
    </message>
    <message>
        <source>Key T</source>
        <translation>Taste T</translation>
    </message>
</context>
<context>
    <name>HomePage</name>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Spots</source>
        <translation>Plätze</translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation>Thermometer</translation>
    </message>
    <message>
        <source>Own record</source>
        <translation>Eigene Aufzeichnung</translation>
    </message>
    <message>
        <source>People and animals</source>
        <translation>Menschen und Tiere</translation>
    </message>
    <message>
        <source>Journal</source>
        <translation>Journal</translation>
    </message>
    <message>
        <source>Data and backup</source>
        <translation>Daten und Sicherung</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Zuhause</translation>
    </message>
    <message>
        <source>Left and Right go through the sections</source>
        <translation>Links und Rechts gehen durch die Abschnitte</translation>
    </message>
    <message>
        <source>The place is being worked out.</source>
        <translation>Der Ort wird ausgearbeitet.</translation>
    </message>
</context>
<context>
    <name>HomePeople</name>
    <message>
        <source>Who is to be kept from harm</source>
        <translation>Wer vor Schaden bewahrt werden soll</translation>
    </message>
    <message>
        <source>List the child or the animal that gets at the plants, and the spots within reach: no plan will then put a poisonous plant there where another spot will do. What can hurt them is named below.</source>
        <translation>Das Kind oder das Tier eintragen, das an die Pflanzen kommt, und die Plätze in Reichweite: Kein Plan stellt dann eine giftige Pflanze dorthin, wo ein anderer Platz taugt. Was ihnen schaden kann, steht unten.</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>Who is added</source>
        <translation>Wer dazukommt</translation>
    </message>
    <message>
        <source>Name, if you like</source>
        <translation>Name, wenn gewünscht</translation>
    </message>
    <message>
        <source>Add to the list</source>
        <translation>Auf die Liste setzen</translation>
    </message>
    <message>
        <source>Within their reach now</source>
        <translation>Jetzt in ihrer Reichweite</translation>
    </message>
    <message>
        <source>Set them out of reach now; a plan made from now on does it with the poisonous ones, where another spot will do. If something was swallowed, ask a doctor, a vet or the poison line at once, and take a piece of the plant along. Label and local advice first.</source>
        <translation>Jetzt außer Reichweite stellen; ein neuer Plan tut es mit den giftigen, wo ein anderer Platz taugt. Wurde etwas verschluckt, sofort Arzt, Tierarzt oder Giftnotruf fragen und ein Stück der Pflanze mitnehmen. Etikett und örtlicher Rat gehen vor.</translation>
    </message>
</context>
<context>
    <name>HomePeopleHarm</name>
    <message>
        <source>%1, within reach of %2</source>
        <translation>%1, in Reichweite: %2</translation>
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
        <translation>Umbenennen</translation>
    </message>
    <message>
        <source>Take off the list</source>
        <translation>Von der Liste nehmen</translation>
    </message>
    <message>
        <source>The name of %1; blank for none</source>
        <translation>Der Name von %1; leer für keinen</translation>
    </message>
    <message>
        <source>Keep the name</source>
        <translation>Namen behalten</translation>
    </message>
    <message>
        <source>Press the spots within reach.</source>
        <translation>Die Plätze in Reichweite anklicken.</translation>
    </message>
    <message>
        <source>Within reach of %1</source>
        <translation>In Reichweite von %1</translation>
    </message>
    <message>
        <source>Out of reach of %1</source>
        <translation>Außer Reichweite von %1</translation>
    </message>
</context>
<context>
    <name>HomePhotosAside</name>
    <message>
        <source>Photographs that no plant’s page shows</source>
        <translation>Fotos, die auf keiner Pflanzenseite stehen</translation>
    </message>
    <message>
        <source>Those that were taken out of the lists, and those of no plant that is there. Their files stay in the folder in any case.</source>
        <translation>Die aus den Listen genommenen und die von keiner vorhandenen Pflanze. Ihre Dateien bleiben in jedem Fall im Ordner.</translation>
    </message>
    <message>
        <source>Bring it back</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>Into the lists, with the plants that it shows</source>
        <translation>In die Listen, mit den Pflanzen, die es zeigt</translation>
    </message>
    <message>
        <source>Bring back %1</source>
        <translation>%1 zurückholen</translation>
    </message>
    <message>
        <source>Shows a plant</source>
        <translation>Zeigt eine Pflanze</translation>
    </message>
    <message>
        <source>Choose the plant from a list.</source>
        <translation>Die Pflanze aus einer Liste wählen.</translation>
    </message>
    <message>
        <source>%1 shows a plant</source>
        <translation>%1 zeigt eine Pflanze</translation>
    </message>
    <message>
        <source>Out of the lists</source>
        <translation>Aus den Listen nehmen</translation>
    </message>
    <message>
        <source>Its file stays; it can be brought back here.</source>
        <translation>Die Datei bleibt; hier lässt es sich zurückholen.</translation>
    </message>
    <message>
        <source>Take %1 out of the lists</source>
        <translation>%1 aus den Listen nehmen</translation>
    </message>
    <message>
        <source>Which plant it shows</source>
        <translation>Welche Pflanze es zeigt</translation>
    </message>
</context>
<context>
    <name>HomePhotosOut</name>
    <message>
        <source>Photographs as files</source>
        <translation>Fotos als Dateien</translation>
    </message>
    <message>
        <source>Those of all plants, each under its date and its plant’s name. What is in the household stays as it is.</source>
        <translation>Die aller Pflanzen, jedes unter seinem Datum und dem Namen seiner Pflanze. Was im Haushalt liegt, bleibt, wie es ist.</translation>
    </message>
</context>
<context>
    <name>HomePlace</name>
    <message>
        <source>Map of the stations round home</source>
        <translation>Karte der Stationen rund um das Zuhause</translation>
    </message>
    <message>
        <source>%1 Key T: the same as a table.</source>
        <translation>%1 Taste T: dasselbe als Tabelle.</translation>
    </message>
    <message>
        <source>Stations round home</source>
        <translation>Stationen rund um das Zuhause</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Station</translation>
    </message>
    <message>
        <source>away, height</source>
        <translation>Entfernung, Höhe</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>Station, away and height, weight</source>
        <translation>Station, Entfernung und Höhe, Gewicht</translation>
    </message>
    <message>
        <source>As a table</source>
        <translation>Als Tabelle</translation>
    </message>
    <message>
        <source>Key T</source>
        <translation>Taste T</translation>
    </message>
    <message>
        <source>Change the place</source>
        <translation>Den Ort ändern</translation>
    </message>
    <message>
        <source>What the place is like</source>
        <translation>Wie der Ort ist</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Weniger</translation>
    </message>
    <message>
        <source>The twelve months, and a pot in them</source>
        <translation>Die zwölf Monate, auch für einen Topf</translation>
    </message>
    <message>
        <source>Nights, days, frost, rain, light, and what the soil and a pot meet</source>
        <translation>Nächte, Tage, Frost, Regen, Licht und was Boden und Topf erleben</translation>
    </message>
</context>
<context>
    <name>HomePlaceMonths</name>
    <message>
        <source>Working out the months.</source>
        <translation>Die Monate werden berechnet.</translation>
    </message>
    <message>
        <source>The air</source>
        <translation>Die Luft</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>mean low</source>
        <translation>mittleres Tief</translation>
    </message>
    <message>
        <source>mean high</source>
        <translation>mittleres Hoch</translation>
    </message>
    <message>
        <source>coldest of all years</source>
        <translation>kälteste aller Jahre</translation>
    </message>
    <message>
        <source>days with frost</source>
        <translation>Tage mit Frost</translation>
    </message>
    <message>
        <source>degree days</source>
        <translation>Gradtage</translation>
    </message>
    <message>
        <source>Rain and light</source>
        <translation>Regen und Licht</translation>
    </message>
    <message>
        <source>rain</source>
        <translation>Regen</translation>
    </message>
    <message>
        <source>day length</source>
        <translation>Tageslänge</translation>
    </message>
    <message>
        <source>moles a day</source>
        <translation>Mol am Tag</translation>
    </message>
    <message>
        <source>a lawn drinks</source>
        <translation>ein Rasen trinkt</translation>
    </message>
    <message>
        <source>The soil, and a pot</source>
        <translation>Der Boden und ein Topf</translation>
    </message>
    <message>
        <source>soil, shallow</source>
        <translation>Boden, flach</translation>
    </message>
    <message>
        <source>soil, deeper</source>
        <translation>Boden, tiefer</translation>
    </message>
    <message>
        <source>pot, low</source>
        <translation>Topf, Tief</translation>
    </message>
    <message>
        <source>pot, high</source>
        <translation>Topf, Hoch</translation>
    </message>
    <message>
        <source>it drinks a day</source>
        <translation>trinkt am Tag</translation>
    </message>
    <message>
        <source>Soil at 5 and 10 cm deep, that is 2 and 4 inches.</source>
        <translation>Boden in 5 und 10 cm Tiefe, das sind 2 und 4 Zoll.</translation>
    </message>
    <message>
        <source>Width of the pot, or of its crown</source>
        <translation>Breite des Topfes oder der Krone</translation>
    </message>
</context>
<context>
    <name>HomeReadings</name>
    <message>
        <source>Nights from a file</source>
        <translation>Nächte aus einer Datei</translation>
    </message>
    <message>
        <source>A table with the columns date and low_c (or low_f); where known also spot, high_c, station_low_c, sky, wind and note. Rows that name no spot are of the one shown here.</source>
        <translation>Eine Tabelle mit den Spalten date und low_c (oder low_f); wo bekannt auch spot, high_c, station_low_c, sky, wind und note. Zeilen ohne Platz gelten für den hier gezeigten.</translation>
    </message>
    <message>
        <source>The file with the readings</source>
        <translation>Die Datei mit den Ablesungen</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.json)</source>
        <translation>Tabellen (*.csv *.txt *.json)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>What it calls the columns, where otherwise; may be left blank</source>
        <translation>Eigene Spaltennamen der Datei, falls sie anders heißen (kann leer bleiben)</translation>
    </message>
    <message>
        <source>its own names: date=Day,low_c=Min</source>
        <translation>eigene Namen: date=Tag,low_c=Min</translation>
    </message>
    <message>
        <source>Keep the nights</source>
        <translation>Die Nächte speichern</translation>
    </message>
</context>
<context>
    <name>HomeRecord</name>
    <message>
        <source>No record of your own yet</source>
        <translation>Noch keine eigene Aufzeichnung</translation>
    </message>
    <message>
        <source>The shipped stations answer for this place. A thermometer’s record of ten years and more, kept here, answers better: dates of frost are then counted in it.</source>
        <translation>Für diesen Ort antworten die mitgelieferten Stationen. Die Aufzeichnung eines Thermometers über zehn Jahre und mehr antwortet besser: Frostdaten werden dann darin gezählt.</translation>
    </message>
    <message>
        <source>Remove the record</source>
        <translation>Die Aufzeichnung entfernen</translation>
    </message>
    <message>
        <source>It can be brought back while this window is open</source>
        <translation>Solange dieses Fenster offen ist, lässt sie sich zurückholen</translation>
    </message>
    <message>
        <source>The record taken out or replaced can be brought back until the window is closed; its file is never touched.</source>
        <translation>Die entfernte oder ersetzte Aufzeichnung lässt sich zurückholen, bis das Fenster schließt; ihre Datei wird nie angerührt.</translation>
    </message>
    <message>
        <source>Another record</source>
        <translation>Eine andere Aufzeichnung</translation>
    </message>
    <message>
        <source>Take a record in</source>
        <translation>Eine Aufzeichnung aufnehmen</translation>
    </message>
    <message>
        <source>Month by month against the shipped table</source>
        <translation>Monat für Monat gegen die mitgelieferte Tabelle</translation>
    </message>
    <message>
        <source>Here its lows and highs will stand beside those of the stations, so that a wrong unit, place or thermometer shows before it counts.</source>
        <translation>Hier stehen dann ihre Tiefst- und Höchstwerte neben denen der Stationen, damit sich eine falsche Einheit, ein falscher Ort oder ein falsches Thermometer zeigt, bevor sie zählt.</translation>
    </message>
    <message>
        <source>Mean lows and highs, here, by the table, and apart</source>
        <translation>Mittlere Tiefst- und Höchstwerte, hier, nach der Tabelle, Abstand</translation>
    </message>
    <message>
        <source>low</source>
        <translation>Tief</translation>
    </message>
    <message>
        <source>apart</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>high</source>
        <translation>Hoch</translation>
    </message>
    <message>
        <source>Means, %1</source>
        <translation>Mittel, %1</translation>
    </message>
    <message>
        <source>low here</source>
        <translation>Tief hier</translation>
    </message>
    <message>
        <source>low, table</source>
        <translation>Tief, Tabelle</translation>
    </message>
    <message>
        <source>high here</source>
        <translation>Hoch hier</translation>
    </message>
    <message>
        <source>high, table</source>
        <translation>Hoch, Tabelle</translation>
    </message>
    <message>
        <source>Month, mean low here, by the table, apart, mean high here, by the table, apart</source>
        <translation>Monat, mittleres Tief hier, nach der Tabelle, Abstand, mittleres Hoch hier, nach der Tabelle, Abstand</translation>
    </message>
    <message>
        <source>Apart: here less the table. Frost hollows and warm walls explain a degree or two; more is more often a wrong unit, place or hour of reading.</source>
        <translation>Abstand: hier weniger Tabelle. Frostmulden und warme Wände erklären ein bis zwei Grad; mehr ist öfter eine falsche Einheit, ein falscher Ort oder eine falsche Ablesezeit.</translation>
    </message>
</context>
<context>
    <name>HomeRecordImport</name>
    <message>
        <source>Let go to take it in</source>
        <translation>Loslassen zum Aufnehmen</translation>
    </message>
    <message>
        <source>Drop a file of daily lows and highs here, or name it below.</source>
        <translation>Eine Datei mit täglichen Tiefst- und Höchstwerten hier ablegen oder unten nennen.</translation>
    </message>
    <message>
        <source>File of daily records</source>
        <translation>Datei mit Tageswerten</translation>
    </message>
    <message>
        <source>Records (*.csv *.dly *.txt)</source>
        <translation>Aufzeichnungen (*.csv *.dly *.txt)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Its numbers are</source>
        <translation>Ihre Zahlen sind</translation>
    </message>
    <message>
        <source>°C and millimetres</source>
        <translation>°C und Millimeter</translation>
    </message>
    <message>
        <source>°F and inches</source>
        <translation>°F und Zoll</translation>
    </message>
    <message>
        <source>Of a table of your own. Files of GHCN-Daily say it themselves.</source>
        <translation>Einer eigenen Tabelle. Dateien von GHCN-Daily sagen es selbst.</translation>
    </message>
    <message>
        <source>Names of columns, station, height, position</source>
        <translation>Namen der Spalten, Station, Höhe, Lage</translation>
    </message>
    <message>
        <source>Columns of date, low, high, rain</source>
        <translation>Spalten für Tag, Tief, Hoch, Regen</translation>
    </message>
    <message>
        <source>Columns, as Day,Min,Max,Rain</source>
        <translation>Spalten, etwa Day,Min,Max,Rain</translation>
    </message>
    <message>
        <source>Station, of a file with several</source>
        <translation>Station, bei mehreren in der Datei</translation>
    </message>
    <message>
        <source>Height where it was kept</source>
        <translation>Höhe, in der gemessen wurde</translation>
    </message>
    <message>
        <source>Height where it was kept, if not at home</source>
        <translation>Höhe, in der gemessen wurde, wenn nicht zu Hause</translation>
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
        <translation>Wo sie geführt wurde, wenn nicht zu Hause: beide Koordinaten</translation>
    </message>
    <message>
        <source>Position, if not at home, such as 48.2, 20.5</source>
        <translation>Lage, wenn nicht zu Hause, etwa 48.2, 20.5</translation>
    </message>
    <message>
        <source>Take it in instead</source>
        <translation>Stattdessen aufnehmen</translation>
    </message>
    <message>
        <source>Take the record in</source>
        <translation>Die Aufzeichnung aufnehmen</translation>
    </message>
    <message>
        <source>Checked and compared with the shipped table first</source>
        <translation>Vorher geprüft und mit der mitgelieferten Tabelle verglichen</translation>
    </message>
    <message>
        <source>Take it in all the same</source>
        <translation>Trotzdem aufnehmen</translation>
    </message>
    <message>
        <source>The record is being read.</source>
        <translation>Die Aufzeichnung wird gelesen.</translation>
    </message>
</context>
<context>
    <name>HomeSettings</name>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Degrees</source>
        <translation>Grad</translation>
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
        <translation>Längen, Volumen, Gewichte</translation>
    </message>
    <message>
        <source>Centimetres, litres, millilitres</source>
        <translation>Zentimeter, Liter, Milliliter</translation>
    </message>
    <message>
        <source>Inches, US cups and gallons</source>
        <translation>Zoll, US-Tassen und -Gallonen</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Light and dark</source>
        <translation>Hell und dunkel</translation>
    </message>
    <message>
        <source>As the desktop</source>
        <translation>Wie der Schreibtisch</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>High contrast</source>
        <translation>Hoher Kontrast</translation>
    </message>
    <message>
        <source>Follows the desktop while the window is open.</source>
        <translation>Folgt dem Schreibtisch, solange das Fenster offen ist.</translation>
    </message>
    <message>
        <source>Size of the text</source>
        <translation>Größe der Schrift</translation>
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
        <translation>Zeilen, Knöpfe und Diagramme wachsen mit.</translation>
    </message>
    <message>
        <source>Fingers</source>
        <translation>Finger</translation>
    </message>
    <message>
        <source>From the first touch on</source>
        <translation>Ab der ersten Berührung</translation>
    </message>
    <message>
        <source>Always</source>
        <translation>Immer</translation>
    </message>
    <message>
        <source>Never</source>
        <translation>Nie</translation>
    </message>
    <message>
        <source>Buttons, chips and rows are large enough for fingers then, and further apart.</source>
        <translation>Knöpfe, Felder und Zeilen sind dann groß genug für Finger und stehen weiter auseinander.</translation>
    </message>
    <message>
        <source>Motion</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <source>Bars move to a new plan</source>
        <translation>Balken gleiten zum neuen Plan</translation>
    </message>
    <message>
        <source>Nothing moves</source>
        <translation>Nichts bewegt sich</translation>
    </message>
    <message>
        <source>A word from the desktop</source>
        <translation>Ein Wort vom Schreibtisch</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keines</translation>
    </message>
    <message>
        <source>Once in the evening, where a plant must come in</source>
        <translation>Einmal am Abend, wenn eine Pflanze herein muss</translation>
    </message>
    <message>
        <source>From 16:00 on, while the window is open, and never twice in an evening. It says what the window’s title says.</source>
        <translation>Ab 16:00, solange das Fenster offen ist, und nie zweimal an einem Abend. Es sagt, was der Titel des Fensters sagt.</translation>
    </message>
    <message>
        <source>Dates, numbers, weeks</source>
        <translation>Daten, Zahlen, Wochen</translation>
    </message>
    <message>
        <source>Every key of the page that is open is shown with F1.</source>
        <translation>F1 zeigt alle Tasten der Seite, die offen ist.</translation>
    </message>
    <message>
        <source>Of you and this machine, not of the household: kept in %1.</source>
        <translation>Gehört zu Person und Rechner, nicht zum Haushalt: gespeichert in %1.</translation>
    </message>
</context>
<context>
    <name>HomeSpots</name>
    <message>
        <source>Light on a spot through the year</source>
        <translation>Licht an einem Platz durch das Jahr</translation>
    </message>
    <message>
        <source>Add a spot</source>
        <translation>Platz anlegen</translation>
    </message>
    <message>
        <source>Change this spot</source>
        <translation>Diesen Platz ändern</translation>
    </message>
    <message>
        <source>Name, kind, side, pots, reach, window; or take it off the list</source>
        <translation>Name, Art, Richtung, Töpfe, Reichweite, Fenster; oder von der Liste nehmen</translation>
    </message>
    <message>
        <source>No spot is known yet. A sill, a shelf, a balcony: wherever pots can stand.</source>
        <translation>Noch ist kein Platz bekannt. Eine Fensterbank, ein Regal, ein Balkon: wo immer Töpfe stehen können.</translation>
    </message>
    <message>
        <source>Moles of light on a level leaf, m² and day; %1. Behind glass right to about 30 %, outdoors to 10 %.</source>
        <translation>Mol Licht auf ein waagrechtes Blatt, je m² und Tag; %1. Hinter Glas auf etwa 30 %, im Freien auf 10 % genau.</translation>
    </message>
    <message>
        <source>Key T: the same as a table.</source>
        <translation>Taste T: dasselbe als Tabelle.</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>moles a day</source>
        <translation>Mol am Tag</translation>
    </message>
    <message>
        <source>9 days in 10</source>
        <translation>9 von 10 Tagen</translation>
    </message>
    <message>
        <source>for the plants there</source>
        <translation>für die Pflanzen dort</translation>
    </message>
    <message>
        <source>As a table</source>
        <translation>Als Tabelle</translation>
    </message>
    <message>
        <source>Key T</source>
        <translation>Taste T</translation>
    </message>
    <message>
        <source>Plants that stand there now</source>
        <translation>Pflanzen, die jetzt dort stehen</translation>
    </message>
    <message>
        <source>None.</source>
        <translation>Keine.</translation>
    </message>
    <message>
        <source>Plants at the spot and their light</source>
        <translation>Pflanzen am Platz und ihr Licht</translation>
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
        <translation>Tabellen zurücklesen</translation>
    </message>
    <message>
        <source>Tables that were written here, perhaps edited since, become a household in a new or an empty folder. The one that is open stays as it is.</source>
        <translation>Tabellen, die hier geschrieben und vielleicht seither bearbeitet wurden, werden ein Haushalt in einem neuen oder leeren Ordner. Der offene bleibt, wie er ist.</translation>
    </message>
    <message>
        <source>The folder with the tables</source>
        <translation>Der Ordner mit den Tabellen</translation>
    </message>
    <message>
        <source>The new or empty folder</source>
        <translation>Der neue oder leere Ordner</translation>
    </message>
    <message>
        <source>A row that names a plant, spot or lot that is not there</source>
        <translation>Eine Zeile, die eine Pflanze, einen Platz oder ein Tütchen nennt, die es nicht gibt</translation>
    </message>
    <message>
        <source>stops the reading</source>
        <translation>beendet das Einlesen</translation>
    </message>
    <message>
        <source>is left out and named</source>
        <translation>bleibt weg und wird genannt</translation>
    </message>
    <message>
        <source>Read them back</source>
        <translation>Zurücklesen</translation>
    </message>
    <message>
        <source>Every row is held against the rules of its table before the folder appears</source>
        <translation>Jede Zeile wird an den Regeln ihrer Tabelle geprüft, bevor der Ordner erscheint</translation>
    </message>
</context>
<context>
    <name>HomeWatch</name>
    <message>
        <source>A folder that is watched</source>
        <translation>Ein Ordner, der beobachtet wird</translation>
    </message>
    <message>
        <source>What a phone copies there comes in by itself as long as this window is open. A photograph goes to the plant with whose name its own begins, or after which its folder is called; the files stay where they are.</source>
        <translation>Was ein Telefon dorthin kopiert, kommt von selbst herein, solange dieses Fenster offen ist. Ein Foto geht an die Pflanze, mit deren Namen sein eigener beginnt oder nach der sein Ordner heißt; die Dateien bleiben, wo sie sind.</translation>
    </message>
    <message>
        <source>The folder of photographs</source>
        <translation>Der Ordner mit den Fotos</translation>
    </message>
    <message>
        <source>Watch it</source>
        <translation>Beobachten</translation>
    </message>
    <message>
        <source>%1 is watched. %2</source>
        <translation>%1 wird beobachtet. %2</translation>
    </message>
    <message>
        <source>Watch it no longer</source>
        <translation>Nicht mehr beobachten</translation>
    </message>
    <message>
        <source>What came in stays.</source>
        <translation>Was hereingekommen ist, bleibt.</translation>
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
        <translation>Pflanze %1</translation>
    </message>
    <message>
        <source>a spot</source>
        <translation>ein Platz</translation>
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
        <translation>Gemessen: %1</translation>
    </message>
    <message>
        <source>Lowest of the night: %1</source>
        <translation>Tiefstwert der Nacht: %1</translation>
    </message>
    <message>
        <source>night to %1 %2</source>
        <translation>Nacht auf %1 %2</translation>
    </message>
    <message>
        <source>Forecast kept: %1</source>
        <translation>Vorhersage festgehalten: %1</translation>
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
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation>Auf, Ab</translation>
    </message>
    <message>
        <source>the task before, the next one</source>
        <translation>die Arbeit davor, die nächste</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>tick the task</source>
        <translation>die Aufgabe abhaken</translation>
    </message>
    <message>
        <source>the next washing step is done</source>
        <translation>der nächste Waschschritt ist getan</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>the plant’s page</source>
        <translation>die Seite der Pflanze</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Strg+L</translation>
    </message>
    <message>
        <source>log something for the task’s plant</source>
        <translation>für die Pflanze der Aufgabe etwas eintragen</translation>
    </message>
    <message>
        <source>Menu, Shift+F10</source>
        <translation>Menü, Umschalt+F10</translation>
    </message>
    <message>
        <source>all that can be done with the task</source>
        <translation>alles, was mit der Aufgabe zu tun ist</translation>
    </message>
    <message>
        <source>put it off a day</source>
        <translation>einen Tag später</translation>
    </message>
    <message>
        <source>Shift+P</source>
        <translation>Umschalt+P</translation>
    </message>
    <message>
        <source>put it off longer, or to a date</source>
        <translation>länger oder bis zu einem Tag verschieben</translation>
    </message>
    <message>
        <source>leave it out, and why</source>
        <translation>auslassen, und warum</translation>
    </message>
    <message>
        <source>how much feed or soap goes into the water</source>
        <translation>wie viel Dünger oder Seife ins Wasser kommt</translation>
    </message>
    <message>
        <source>what to look at before a spray</source>
        <translation>was vor dem Spritzen zu prüfen ist</translation>
    </message>
    <message>
        <source>the ten nights as a table, or drawn</source>
        <translation>die zehn Nächte als Tabelle oder gezeichnet</translation>
    </message>
    <message>
        <source>read the household again</source>
        <translation>den Haushalt neu lesen</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>Left, Right</source>
        <translation>Links, Rechts</translation>
    </message>
    <message>
        <source>a day before, a day on; with Ctrl a week</source>
        <translation>einen Tag zurück, einen vor; mit Strg eine Woche</translation>
    </message>
    <message>
        <source>Page up, Page down</source>
        <translation>Bild auf, Bild ab</translation>
    </message>
    <message>
        <source>a month before, a month on</source>
        <translation>einen Monat zurück, einen vor</translation>
    </message>
    <message>
        <source>Home, End</source>
        <translation>Pos1, Ende</translation>
    </message>
    <message>
        <source>the first day, the last day</source>
        <translation>der erste Tag, der letzte Tag</translation>
    </message>
    <message>
        <source>the plant above, the one below</source>
        <translation>die Pflanze darüber, die darunter</translation>
    </message>
    <message>
        <source>closer, down to a week, and back</source>
        <translation>näher, bis auf eine Woche, und zurück</translation>
    </message>
    <message>
        <source>Shift with Left, Right</source>
        <translation>Umschalt mit Links, Rechts</translation>
    </message>
    <message>
        <source>move the edge of the plant’s stay by a day, with Ctrl by a week; Enter keeps it, Escape leaves it</source>
        <translation>den Rand des Aufenthalts der Pflanze um einen Tag schieben, mit Strg um eine Woche; Eingabe behält es, Esc verwirft es</translation>
    </message>
    <message>
        <source>log something for the plant</source>
        <translation>für die Pflanze etwas eintragen</translation>
    </message>
    <message>
        <source>all that can be done with the plant, or with the lot below the plants</source>
        <translation>alles, was mit der Pflanze zu tun ist, oder mit dem Tütchen unter den Pflanzen</translation>
    </message>
    <message>
        <source>the rows by the date out, by spot, or by name</source>
        <translation>die Zeilen nach dem Tag des Ausräumens, nach Platz oder nach Namen</translation>
    </message>
    <message>
        <source>take off what is pinned of the plant</source>
        <translation>was an der Pflanze festgehalten ist, lösen</translation>
    </message>
    <message>
        <source>the year from another date</source>
        <translation>das Jahr ab einem anderen Datum</translation>
    </message>
    <message>
        <source>the year as a table, or drawn</source>
        <translation>das Jahr als Tabelle oder gezeichnet</translation>
    </message>
    <message>
        <source>Plants</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <source>Arrows</source>
        <translation>Pfeile</translation>
    </message>
    <message>
        <source>from plant to plant and from shelf to shelf</source>
        <translation>von Pflanze zu Pflanze und von Regal zu Regal</translation>
    </message>
    <message>
        <source>open the plant</source>
        <translation>die Pflanze öffnen</translation>
    </message>
    <message>
        <source>mark it, or take the mark off</source>
        <translation>sie markieren oder die Marke wegnehmen</translation>
    </message>
    <message>
        <source>all that can be done with the plant</source>
        <translation>alles, was mit der Pflanze zu tun ist</translation>
    </message>
    <message>
        <source>compare the two that are marked</source>
        <translation>die zwei markierten vergleichen</translation>
    </message>
    <message>
        <source>log something for the plant, or for all that are marked</source>
        <translation>etwas eintragen, für die Pflanze oder für alle markierten</translation>
    </message>
    <message>
        <source>move them</source>
        <translation>sie umstellen</translation>
    </message>
    <message>
        <source>keep the plant at a spot, always or from one evening to another</source>
        <translation>die Pflanze an einem Platz festhalten, immer oder von einem Abend bis zu einem anderen</translation>
    </message>
    <message>
        <source>all plants as a table, or on their shelves</source>
        <translation>alle Pflanzen als Tabelle oder in ihren Regalen</translation>
    </message>
    <message>
        <source>A plant’s page</source>
        <translation>Die Seite einer Pflanze</translation>
    </message>
    <message>
        <source>from photo to photo; Enter opens it</source>
        <translation>von Foto zu Foto; Eingabe öffnet es</translation>
    </message>
    <message>
        <source>two photos side by side</source>
        <translation>zwei Fotos nebeneinander</translation>
    </message>
    <message>
        <source>what was measured as a table, or drawn</source>
        <translation>was gemessen wurde als Tabelle oder gezeichnet</translation>
    </message>
    <message>
        <source>how much feed goes into the water</source>
        <translation>wie viel Dünger ins Wasser kommt</translation>
    </message>
    <message>
        <source>after a cold night</source>
        <translation>nach einer kalten Nacht</translation>
    </message>
    <message>
        <source>hit by a spray</source>
        <translation>von Spritzmittel getroffen</translation>
    </message>
    <message>
        <source>before a spray</source>
        <translation>vor dem Spritzen</translation>
    </message>
    <message>
        <source>pests and the course</source>
        <translation>Schädlinge und Behandlung</translation>
    </message>
    <message>
        <source>water and winter</source>
        <translation>Wasser und Winter</translation>
    </message>
    <message>
        <source>going out and coming in</source>
        <translation>hinaus und herein</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>back to all plants</source>
        <translation>zurück zu allen Pflanzen</translation>
    </message>
    <message>
        <source>A photo</source>
        <translation>Ein Foto</translation>
    </message>
    <message>
        <source>measure in it</source>
        <translation>darin messen</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tab</translation>
    </message>
    <message>
        <source>measuring: the next point</source>
        <translation>beim Messen: der nächste Punkt</translation>
    </message>
    <message>
        <source>measuring: the point by a pixel, with Shift by ten</source>
        <translation>beim Messen: den Punkt um ein Pixel, mit Umschalt um zehn</translation>
    </message>
    <message>
        <source>Backspace</source>
        <translation>Rücktaste</translation>
    </message>
    <message>
        <source>measuring: take the last point back</source>
        <translation>beim Messen: den letzten Punkt zurücknehmen</translation>
    </message>
    <message>
        <source>Adding plants</source>
        <translation>Pflanzen hinzufügen</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Runter</translation>
    </message>
    <message>
        <source>from the field to the kinds that answer</source>
        <translation>vom Feld zu den Arten, die passen</translation>
    </message>
    <message>
        <source>pick the kind, or one more of it</source>
        <translation>die Art wählen, oder eine mehr davon</translation>
    </message>
    <message>
        <source>what is known of the kind, before it is picked</source>
        <translation>was über die Art bekannt ist, bevor sie gewählt wird</translation>
    </message>
    <message>
        <source>Seeds</source>
        <translation>Samen</translation>
    </message>
    <message>
        <source>the lot above, the one below</source>
        <translation>das Tütchen darüber, das darunter</translation>
    </message>
    <message>
        <source>one more has come up in the lot’s first tray, or one fewer</source>
        <translation>in der ersten Schale des Tütchens ist einer mehr aufgegangen, oder einer weniger</translation>
    </message>
    <message>
        <source>lots by name, or by their dates</source>
        <translation>Tütchen nach Namen oder nach ihren Daten</translation>
    </message>
    <message>
        <source>up and down the sheet beside</source>
        <translation>das Blatt daneben auf und ab</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Zuhause</translation>
    </message>
    <message>
        <source>the section before, the next one</source>
        <translation>der Abschnitt davor, der nächste</translation>
    </message>
    <message>
        <source>what is above in the section, what is below</source>
        <translation>was im Abschnitt darüber steht, was darunter</translation>
    </message>
    <message>
        <source>what is drawn as a table, and back</source>
        <translation>was gezeichnet ist als Tabelle, und zurück</translation>
    </message>
    <message>
        <source>under Thermometer: type last night’s low; under Journal: log something at a spot</source>
        <translation>unter Thermometer: den Tiefstwert der letzten Nacht eintippen; unter Journal: an einem Platz eintragen</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>Überall</translation>
    </message>
    <message>
        <source>1 to 5, or with Alt</source>
        <translation>1 bis 5, oder mit Alt</translation>
    </message>
    <message>
        <source>Round, Year, Plants, Seeds, Home</source>
        <translation>Rundgang, Jahr, Pflanzen, Samen, Zuhause</translation>
    </message>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Umschalt+Tab</translation>
    </message>
    <message>
        <source>the next thing that takes a key, the one before</source>
        <translation>das Nächste, das Tasten annimmt, das davor</translation>
    </message>
    <message>
        <source>the next part of the page; with Shift the one before</source>
        <translation>der nächste Teil der Seite; mit Umschalt der davor</translation>
    </message>
    <message>
        <source>Ctrl+F</source>
        <translation>Strg+F</translation>
    </message>
    <message>
        <source>find a plant</source>
        <translation>eine Pflanze suchen</translation>
    </message>
    <message>
        <source>Ctrl+P</source>
        <translation>Strg+P</translation>
    </message>
    <message>
        <source>print the page</source>
        <translation>die Seite drucken</translation>
    </message>
    <message>
        <source>Ctrl+Z, Ctrl+Shift+Z</source>
        <translation>Strg+Z, Strg+Umschalt+Z</translation>
    </message>
    <message>
        <source>take back what was done last, do it again</source>
        <translation>zurücknehmen, was zuletzt getan wurde, es wieder tun</translation>
    </message>
    <message>
        <source>Ctrl+,</source>
        <translation>Strg+,</translation>
    </message>
    <message>
        <source>colours, text, units and language</source>
        <translation>Farben, Schrift, Einheiten und Sprache</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <translation>Strg+Eingabe</translation>
    </message>
    <message>
        <source>keep what stands in a form</source>
        <translation>behalten, was in einem Formular steht</translation>
    </message>
    <message>
        <source>close what was opened last</source>
        <translation>schließen, was zuletzt geöffnet wurde</translation>
    </message>
    <message>
        <source>these keys</source>
        <translation>diese Tasten</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>KindFigures</name>
    <message>
        <source>Safe night</source>
        <translation>Sichere Nacht</translation>
    </message>
    <message>
        <source>Harm begins</source>
        <translation>Schaden ab</translation>
    </message>
    <message>
        <source>May kill</source>
        <translation>Kann töten ab</translation>
    </message>
    <message>
        <source>Grows well</source>
        <translation>Wächst gut</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Heat harms</source>
        <translation>Hitze schadet</translation>
    </message>
    <message>
        <source>from %1 on</source>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Licht</translation>
    </message>
    <message>
        <source>Light of a day</source>
        <translation>Licht am Tag</translation>
    </message>
    <message>
        <source>%1 mol/m² is good, %2 keeps it alive</source>
        <translation>%1 mol/m² sind gut, %2 halten sie am Leben</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Grows in</source>
        <translation>Wächst</translation>
    </message>
    <message>
        <source>Its rest</source>
        <translation>Ihre Ruhe</translation>
    </message>
    <message>
        <source>Feed</source>
        <translation>Dünger</translation>
    </message>
    <message>
        <source>Repot</source>
        <translation>Umtopfen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>stands still in winter, and wants it cool then</source>
        <translation>steht im Winter still und will es dann kühl</translation>
    </message>
    <message>
        <source>stands still in winter</source>
        <translation>steht im Winter still</translation>
    </message>
    <message>
        <source>slower in winter, and wants it cool then</source>
        <translation>im Winter langsamer, und will es dann kühl</translation>
    </message>
    <message>
        <source>slower in winter</source>
        <translation>im Winter langsamer</translation>
    </message>
    <message>
        <source>stands still in the hot season</source>
        <translation>steht in der heißen Zeit still</translation>
    </message>
    <message>
        <source>a while after its flowers</source>
        <translation>eine Weile nach der Blüte</translation>
    </message>
    <message>
        <source>nearly dry while it rests</source>
        <translation>fast trocken, solange sie ruht</translation>
    </message>
    <message>
        <source>none known</source>
        <translation>keine bekannt</translation>
    </message>
    <message>
        <source>takes no feed</source>
        <translation>braucht keinen Dünger</translation>
    </message>
    <message>
        <source>while it grows, %1 to %2 ppm nitrogen each time</source>
        <translation>solange sie wächst, jedes Mal %1 bis %2 ppm Stickstoff</translation>
    </message>
    <message>
        <source>while it grows, %1 ppm nitrogen each time</source>
        <translation>solange sie wächst, jedes Mal %1 ppm Stickstoff</translation>
    </message>
    <message>
        <source>after %1 to %2 years</source>
        <translation>nach %1 bis %2 Jahren</translation>
    </message>
    <message>
        <source>after a year</source>
        <translation>nach einem Jahr</translation>
    </message>
    <message>
        <source>after %1 years</source>
        <translation>nach %1 Jahren</translation>
    </message>
</context>
<context>
    <name>KindFilterChips</name>
    <message>
        <source>By name alone</source>
        <translation>Nur nach Namen</translation>
    </message>
    <message>
        <source>By group and evidence</source>
        <translation>Nach Gruppe und Beleg</translation>
    </message>
    <message>
        <source>Lists all kinds again</source>
        <translation>Zeigt wieder alle Arten</translation>
    </message>
    <message>
        <source>Lists the kinds of one group, or those whose cold lines rest on one sort of evidence</source>
        <translation>Zeigt die Arten einer Gruppe oder die, deren Kältelinien auf einer Art von Beleg beruhen</translation>
    </message>
    <message>
        <source>Of which group</source>
        <translation>Aus welcher Gruppe</translation>
    </message>
    <message>
        <source>What their cold lines rest on</source>
        <translation>Worauf ihre Kältelinien beruhen</translation>
    </message>
</context>
<context>
    <name>KindRow</name>
    <message>
        <source>Look</source>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>Key L in the list. What is known of the kind, before it is picked.</source>
        <translation>Taste L in der Liste. Was über die Art bekannt ist, bevor sie gewählt wird.</translation>
    </message>
    <message>
        <source>Look at %1</source>
        <translation>%1 ansehen</translation>
    </message>
</context>
<context>
    <name>KindSheet</name>
    <message>
        <source>low of a night</source>
        <translation>Tiefstwert einer Nacht</translation>
    </message>
    <message>
        <source>Pick this kind</source>
        <translation>Diese Art wählen</translation>
    </message>
    <message>
        <source>One plant of it; it is kept with the form.</source>
        <translation>Eine Pflanze davon; behalten wird sie mit dem Formular.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
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
        <translation>Hält an; Begonnenes wird weggeräumt.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Nothing half written is left</source>
        <translation>Nichts Halbgeschriebenes bleibt</translation>
    </message>
</context>
<context>
    <name>LogLine</name>
    <message>
        <source>Keep</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>How many days ago the night ended, blank for this morning</source>
        <translation>Vor wie vielen Tagen die Nacht endete, leer für heute Morgen</translation>
    </message>
    <message>
        <source>this morning</source>
        <translation>heute Morgen</translation>
    </message>
    <message>
        <source>days ago</source>
        <translation>Tage her</translation>
    </message>
    <message>
        <source>clear, calm</source>
        <translation>klar, windstill</translation>
    </message>
    <message>
        <source>The sky was clear and the air still</source>
        <translation>Der Himmel war klar und die Luft still</translation>
    </message>
    <message>
        <source>cloud or wind</source>
        <translation>Wolken oder Wind</translation>
    </message>
</context>
<context>
    <name>LogPanel</name>
    <message>
        <source>Log for %1</source>
        <translation>Eintrag für %1</translation>
    </message>
    <message>
        <source>What was read; repeats with a semicolon between</source>
        <translation>Was abgelesen wurde; Wiederholungen mit Semikolon dazwischen</translation>
    </message>
    <message>
        <source>Nitrogen of the feed, may be left blank</source>
        <translation>Stickstoff der Düngung, darf leer bleiben</translation>
    </message>
    <message>
        <source>43.5; 43.7</source>
        <translation>43,5; 43,7</translation>
    </message>
    <message>
        <source>nitrogen</source>
        <translation>Stickstoff</translation>
    </message>
    <message>
        <source>Measured with</source>
        <translation>Gemessen mit</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>wie üblich</translation>
    </message>
    <message>
        <source>ruler</source>
        <translation>Lineal</translation>
    </message>
    <message>
        <source>counting</source>
        <translation>Zählen</translation>
    </message>
    <message>
        <source>by eye</source>
        <translation>Augenmaß</translation>
    </message>
    <message>
        <source>photograph</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>few</source>
        <translation>wenige</translation>
    </message>
    <message>
        <source>many</source>
        <translation>viele</translation>
    </message>
    <message>
        <source>all over it</source>
        <translation>überall</translation>
    </message>
    <message>
        <source>pests, or new here</source>
        <translation>Schädlinge, oder neu hier</translation>
    </message>
    <message>
        <source>sick roots</source>
        <translation>kranke Wurzeln</translation>
    </message>
    <message>
        <source>Which pest</source>
        <translation>Welcher Schädling</translation>
    </message>
    <message>
        <source>With what, may be left blank</source>
        <translation>Womit, kann leer bleiben</translation>
    </message>
    <message>
        <source>Lowest at the plant, may be left blank</source>
        <translation>Tiefstwert an der Pflanze, kann leer bleiben</translation>
    </message>
    <message>
        <source>Names of the new plants, with commas</source>
        <translation>Namen der neuen Pflanzen, mit Kommas</translation>
    </message>
    <message>
        <source>Which product, may be left blank</source>
        <translation>Welches Mittel, kann leer bleiben</translation>
    </message>
    <message>
        <source>The label and local advice come first, and say how long to keep away.</source>
        <translation>Das Etikett und der Rat vor Ort gehen vor und sagen, wie lange man fernbleibt.</translation>
    </message>
    <message>
        <source>How many days ago, blank for today</source>
        <translation>Vor wie vielen Tagen, leer für heute</translation>
    </message>
    <message>
        <source>0 days ago</source>
        <translation>vor 0 Tagen</translation>
    </message>
    <message>
        <source>days ago</source>
        <translation>Tage her</translation>
    </message>
    <message>
        <source>Time of day, may be left blank</source>
        <translation>Uhrzeit, darf leer bleiben</translation>
    </message>
    <message>
        <source>time, such as 14:30</source>
        <translation>Uhrzeit, etwa 14:30</translation>
    </message>
    <message>
        <source>Time zone of that clock; blank: the one at home</source>
        <translation>Zeitzone dieser Uhr; leer: die von zu Hause</translation>
    </message>
    <message>
        <source>zone, such as Europe/Rome</source>
        <translation>Zone, etwa Europe/Rome</translation>
    </message>
    <message>
        <source>Who measured, may be left blank</source>
        <translation>Wer gemessen hat, darf leer bleiben</translation>
    </message>
    <message>
        <source>who measured</source>
        <translation>wer gemessen hat</translation>
    </message>
    <message>
        <source>Volume of the pot then; blank: as it is now</source>
        <translation>Inhalt des Topfes damals; leer: wie jetzt</translation>
    </message>
    <message>
        <source>pot, if another</source>
        <translation>Topf, falls ein anderer</translation>
    </message>
    <message>
        <source>What it stood in, may be left blank</source>
        <translation>Worin sie stand, darf leer bleiben</translation>
    </message>
    <message>
        <source>mix it stood in</source>
        <translation>Erde, in der sie stand</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Note, may be left blank</source>
        <translation>Notiz, darf leer bleiben</translation>
    </message>
    <message>
        <source>Keep in the journal</source>
        <translation>Ins Journal</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Verlassen</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
</context>
<context>
    <name>LotEntry</name>
    <message>
        <source>Crop</source>
        <translation>Kultur</translation>
    </message>
    <message>
        <source>tomato, zinnia</source>
        <translation>Tomate, Zinnie</translation>
    </message>
    <message>
        <source>What you call the lot; blank: crop and year</source>
        <translation>Name des Tütchens; leer: Kultur und Jahr</translation>
    </message>
    <message>
        <source>Packed in</source>
        <translation>Abgepackt</translation>
    </message>
    <message>
        <source>Comes up, by the packet</source>
        <translation>Geht auf, laut Tütchen</translation>
    </message>
    <message>
        <source>Seeds in it</source>
        <translation>Samen darin</translation>
    </message>
    <message>
        <source>Note, may be left blank</source>
        <translation>Notiz, darf leer bleiben</translation>
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
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>Plants</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <source>Seeds</source>
        <translation>Samen</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Zuhause</translation>
    </message>
    <message>
        <source>%1, %2 to carry in tonight</source>
        <translation>%1, %2 heute Nacht hereinzutragen</translation>
    </message>
    <message>
        <source>Key %1</source>
        <translation>Taste %1</translation>
    </message>
    <message>
        <source>Invented, for showing · %1</source>
        <translation>Erfunden, zum Zeigen · %1</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Invented · %1</source>
        <translation>Erfunden · %1</translation>
    </message>
    <message>
        <source>Today is %1</source>
        <translation>Heute ist %1</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Control and Z. Takes back what was entered last, on any page.</source>
        <translation>Strg und Z. Nimmt zurück, was zuletzt eingetragen wurde, auf jeder Seite.</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Control and F. Finds a plant by its name or kind.</source>
        <translation>Strg und F. Findet eine Pflanze nach Namen oder Art.</translation>
    </message>
</context>
<context>
    <name>MeasureLength</name>
    <message>
        <source>1. Something of known size</source>
        <translation>1. Etwas von bekannter Größe</translation>
    </message>
    <message>
        <source>A to B is</source>
        <translation>A bis B misst</translation>
    </message>
    <message>
        <source>Length from A to B</source>
        <translation>Länge von A bis B</translation>
    </message>
    <message>
        <source>Write a number such as 14.0; between 1 mm and 10 m.</source>
        <translation>Eine Zahl wie 14,0 schreiben; zwischen 1 mm und 10 m.</translation>
    </message>
    <message>
        <source>The pot’s rim, a ruler, or the 10 cm of the printed card.</source>
        <translation>Der Rand des Topfs, ein Lineal oder die 10 cm der gedruckten Karte.</translation>
    </message>
    <message>
        <source>A card to print</source>
        <translation>Eine Karte zum Drucken</translation>
    </message>
    <message>
        <source>A ruler of 10 cm and a grey patch, to stand beside the plant; print it at 100 %</source>
        <translation>Ein Lineal von 10 cm und ein graues Feld, neben die Pflanze zu stellen; mit 100 % drucken</translation>
    </message>
    <message>
        <source>2. The plant</source>
        <translation>2. Die Pflanze</translation>
    </message>
    <message>
        <source>from 1 to 2</source>
        <translation>von 1 bis 2</translation>
    </message>
    <message>
        <source>%1 set</source>
        <translation>%1 gesetzt</translation>
    </message>
    <message>
        <source>%1 not set</source>
        <translation>%1 nicht gesetzt</translation>
    </message>
    <message>
        <source>Chooses the point; the arrow keys in the photograph move it.</source>
        <translation>Wählt den Punkt; die Pfeiltasten im Foto bewegen ihn.</translation>
    </message>
</context>
<context>
    <name>MeasurePage</name>
    <message>
        <source>Measure in a photograph</source>
        <translation>Im Foto messen</translation>
    </message>
    <message>
        <source>Measure in a photo</source>
        <translation>Im Foto messen</translation>
    </message>
    <message>
        <source>Press to set a point, drag to correct it. Arrow keys move the chosen point by one pixel, with Shift by ten. Tab goes to the next. Backspace takes a point back.</source>
        <translation>Klicken setzt einen Punkt, Ziehen berichtigt ihn. Pfeiltasten rücken den gewählten Punkt um einen Bildpunkt, mit Umschalt um zehn. Tab geht zum nächsten. Rücktaste nimmt einen Punkt zurück.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Green share</source>
        <translation>Grünanteil</translation>
    </message>
    <message>
        <source>Grey patch</source>
        <translation>Graue Fläche</translation>
    </message>
    <message>
        <source>Sets the colours of the green share by something that is grey in truth</source>
        <translation>Richtet die Farben des Grünanteils nach etwas, das wirklich grau ist</translation>
    </message>
    <message>
        <source>An outline round the grey patch</source>
        <translation>Ein Umriss um die graue Fläche</translation>
    </message>
    <message>
        <source>An outline round the leaves</source>
        <translation>Ein Umriss um die Blätter</translation>
    </message>
    <message>
        <source>No corner set yet.</source>
        <translation>Noch keine Ecke gesetzt.</translation>
    </message>
    <message>
        <source>%1 corners, %2</source>
        <translation>%1 Ecken, %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Keep what is known and what is measured at the same distance from the camera: at one metre, each 10 cm that the plant stands nearer makes it come out about 10 % too long.</source>
        <translation>Bekanntes und Gemessenes gleich weit von der Kamera halten: Bei einem Meter lassen je 10 cm, die die Pflanze näher steht, sie etwa 10 % zu lang erscheinen.</translation>
    </message>
    <message>
        <source>or type it</source>
        <translation>oder eintippen</translation>
    </message>
    <message>
        <source>Green share, typed instead of drawn</source>
        <translation>Grünanteil, getippt statt gezeichnet</translation>
    </message>
    <message>
        <source>Length, typed instead of marked</source>
        <translation>Länge, getippt statt markiert</translation>
    </message>
    <message>
        <source>Keep the reading</source>
        <translation>Messwert speichern</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Noch einmal</translation>
    </message>
    <message>
        <source>Takes the outline away.</source>
        <translation>Nimmt den Umriss weg.</translation>
    </message>
    <message>
        <source>Keeps this try in mind and has the points set once more.</source>
        <translation>Merkt sich diesen Versuch und lässt die Punkte noch einmal setzen.</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Verlassen</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
</context>
<context>
    <name>MeasurePicture</name>
    <message>
        <source>Photograph with marks, %1</source>
        <translation>Foto mit Marken, %1</translation>
    </message>
    <message>
        <source>%1, 4 times</source>
        <translation>%1, 4-fach</translation>
    </message>
</context>
<context>
    <name>MendSheet</name>
    <message>
        <source>Name of the household</source>
        <translation>Name des Haushalts</translation>
    </message>
    <message>
        <source>Control and Enter. One line in the journal, which can be taken back.</source>
        <translation>Strg und Eingabe. Ein Eintrag im Journal, der sich zurücknehmen lässt.</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Verlassen</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Take this spot off the list</source>
        <translation>Diesen Platz von der Liste nehmen</translation>
    </message>
    <message>
        <source>Only a spot where nothing stands and of which the journal tells nothing</source>
        <translation>Nur ein Platz, an dem nichts steht und von dem das Journal nichts erzählt</translation>
    </message>
    <message>
        <source>Take back what keeps it</source>
        <translation>Lösen, was sie festhält</translation>
    </message>
    <message>
        <source>It goes where the plan puts it</source>
        <translation>Sie geht, wohin der Plan sie stellt</translation>
    </message>
</context>
<context>
    <name>MovePanel</name>
    <message>
        <source>%1 moved today: where to?</source>
        <translation>%1 heute umgestellt: wohin?</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Verlassen</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Keep it at a spot</source>
        <translation>An einem Platz festhalten</translation>
    </message>
    <message>
        <source>Key K. Always, or from one evening to another; the plan keeps to it.</source>
        <translation>Taste K. Immer, oder von einem Abend bis zu einem anderen; der Plan hält sich daran.</translation>
    </message>
</context>
<context>
    <name>NightLine</name>
    <message>
        <source>No night at or below %1 in any season.</source>
        <translation>In keinem Jahr eine Nacht bei oder unter %1.</translation>
    </message>
    <message>
        <source>%1 nights a year at or below %2, some in every month: no stretch of the year is free of them.</source>
        <translation>%1 Nächte im Jahr bei oder unter %2, einige in jedem Monat: Kein Abschnitt des Jahres ist frei von ihnen.</translation>
    </message>
    <message>
        <source>%1 nights a year at or below %2. There is no cold season here, so there are no dates.</source>
        <translation>%1 Nächte im Jahr bei oder unter %2. Es gibt hier keine kalte Jahreszeit, also keine Daten.</translation>
    </message>
    <message>
        <source>%1 nights a year at or below %2; seasons without any: %3.</source>
        <translation>%1 Nächte im Jahr bei oder unter %2; Jahre ohne eine: %3.</translation>
    </message>
    <message>
        <source>%1 nights a year at or below %2.</source>
        <translation>%1 Nächte im Jahr bei oder unter %2.</translation>
    </message>
    <message>
        <source>%1: one more after %2, the first one by %3, more than %4 days without</source>
        <translation>%1: noch eine nach dem %2, die erste bis %3, mehr als %4 Tage ohne</translation>
    </message>
    <message>
        <source>Counted in the household’s own record.</source>
        <translation>Gezählt in der eigenen Aufzeichnung des Haushalts.</translation>
    </message>
    <message>
        <source>Counted at the station that stands here.</source>
        <translation>Gezählt an der Station, die hier steht.</translation>
    </message>
    <message>
        <source>From monthly figures, moved to the dates of the household’s own record.</source>
        <translation>Aus Monatswerten, verschoben auf die Daten der eigenen Aufzeichnung des Haushalts.</translation>
    </message>
    <message>
        <source>From monthly figures and the dates counted at stations near.</source>
        <translation>Aus Monatswerten und den an nahen Stationen gezählten Daten.</translation>
    </message>
    <message>
        <source>From monthly figures.</source>
        <translation>Aus Monatswerten.</translation>
    </message>
    <message>
        <source>At %1, whose nights are %2 against the open air, as far as is known. These are chances, not promises.</source>
        <translation>%1: die Nächte dort sind, soweit bekannt, %2 verglichen mit dem Freien. Das sind Wahrscheinlichkeiten, keine Zusagen.</translation>
    </message>
    <message>
        <source>In the open air at home. These are chances, not promises.</source>
        <translation>Im Freien zu Hause. Das sind Wahrscheinlichkeiten, keine Zusagen.</translation>
    </message>
    <message>
        <source>%1 Right to about %2 days at the middle chances. %3</source>
        <translation>%1 Auf etwa %2 Tage genau bei den mittleren Wahrscheinlichkeiten. %3</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>A night at or below %1 among the %2 from %3 to %4: %5; %6 such nights on average.</source>
        <translation>Eine Nacht bei oder unter %1 unter den %2 vom %3 bis %4: %5; im Mittel %6 solche Nächte.</translation>
    </message>
    <message>
        <source>One before these, since the turn of the season on %1: %2. One after these, up to the next turn: %3.</source>
        <translation>Eine davor, seit der Wende am %1: %2. Eine danach, bis zur nächsten Wende: %3.</translation>
    </message>
    <message>
        <source>%1 in 10</source>
        <translation>%1 von 10</translation>
    </message>
    <message>
        <source>1 in %1</source>
        <translation>1 von %1</translation>
    </message>
</context>
<context>
    <name>PathField</name>
    <message>
        <source>Choose</source>
        <translation>Wählen</translation>
    </message>
    <message>
        <source>%1: opens a dialog</source>
        <translation>%1: öffnet einen Dialog</translation>
    </message>
    <message>
        <source>There is no dialog for files on this machine; type the path.</source>
        <translation>Auf diesem Rechner gibt es keinen Dateidialog; den Pfad eintippen.</translation>
    </message>
</context>
<context>
    <name>PhotoChooser</name>
    <message>
        <source>Add photographs</source>
        <translation>Fotos hinzufügen</translation>
    </message>
    <message>
        <source>Photographs (*.jpg *.jpeg *.png *.webp *.heic *.heif *.JPG *.JPEG *.PNG *.HEIC)</source>
        <translation>Fotos (*.jpg *.jpeg *.png *.webp *.heic *.heif *.JPG *.JPEG *.PNG *.HEIC)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
</context>
<context>
    <name>PhotoDateAsked</name>
    <message>
        <source>When they were taken, blank for the dates of their files</source>
        <translation>Wann sie aufgenommen wurden, leer für das Datum der Dateien</translation>
    </message>
    <message>
        <source>as their files say</source>
        <translation>wie die Dateien sagen</translation>
    </message>
    <message>
        <source>Take them in</source>
        <translation>Aufnehmen</translation>
    </message>
    <message>
        <source>A date such as %1, with the time behind it where it is known. Those that say it themselves keep their own.</source>
        <translation>Ein Datum wie %1, mit der Uhrzeit dahinter, wo sie bekannt ist. Fotos, die es selbst sagen, behalten ihres.</translation>
    </message>
    <message>
        <source>Leave them out</source>
        <translation>Weglassen</translation>
    </message>
    <message>
        <source>Escape. None of what was chosen comes in.</source>
        <translation>Esc. Nichts vom Gewählten kommt herein.</translation>
    </message>
    <message>
        <source>Left blank, the date of each file stands for it; pictures that were sent or copied often have a later one.</source>
        <translation>Leer gilt das Datum jeder Datei; verschickte oder kopierte Bilder haben oft ein späteres.</translation>
    </message>
</context>
<context>
    <name>PhotoExport</name>
    <message>
        <source>Write out</source>
        <translation>Herausgeben</translation>
    </message>
    <message>
        <source>all of this plant</source>
        <translation>alle dieser Pflanze</translation>
    </message>
    <message>
        <source>a strip over time</source>
        <translation>einen Streifen über die Zeit</translation>
    </message>
    <message>
        <source>these two side by side</source>
        <translation>diese zwei nebeneinander</translation>
    </message>
    <message>
        <source>Where they were taken</source>
        <translation>Wo sie aufgenommen wurden</translation>
    </message>
    <message>
        <source>is taken out</source>
        <translation>wird entfernt</translation>
    </message>
    <message>
        <source>stays in them</source>
        <translation>bleibt darin</translation>
    </message>
    <message>
        <source>Give these to nobody who need not know where you live.</source>
        <translation>Diese niemandem geben, der nicht zu wissen braucht, wo man wohnt.</translation>
    </message>
    <message>
        <source>How many at most</source>
        <translation>Wie viele höchstens</translation>
    </message>
    <message>
        <source>Spread evenly over its time</source>
        <translation>Gleichmäßig über die Zeit verteilt</translation>
    </message>
    <message>
        <source>%1, as usual</source>
        <translation>%1, wie üblich</translation>
    </message>
    <message>
        <source>How many in a row</source>
        <translation>Wie viele in einer Reihe</translation>
    </message>
    <message>
        <source>Height of each</source>
        <translation>Höhe eines jeden</translation>
    </message>
    <message>
        <source>pixels</source>
        <translation>Pixel</translation>
    </message>
    <message>
        <source>The folder to write them to</source>
        <translation>Der Ordner, in den sie sollen</translation>
    </message>
    <message>
        <source>The picture to write, .jpg or .png</source>
        <translation>Das Bild, das geschrieben wird, .jpg oder .png</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.png)</source>
        <translation>Bilder (*.jpg *.png)</translation>
    </message>
    <message>
        <source>Write the photographs</source>
        <translation>Die Fotos schreiben</translation>
    </message>
    <message>
        <source>Write the picture</source>
        <translation>Das Bild schreiben</translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation>Ersetzen</translation>
    </message>
</context>
<context>
    <name>PhotoImportPanel</name>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>What came in stays.</source>
        <translation>Was hereinkam, bleibt.</translation>
    </message>
    <message>
        <source>Not taken: %1</source>
        <translation>Nicht aufgenommen: %1</translation>
    </message>
    <message>
        <source>Not taken: %1: %2</source>
        <translation>Nicht aufgenommen: %1: %2</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Gesehen</translation>
    </message>
    <message>
        <source>Takes these lines away.</source>
        <translation>Nimmt diese Zeilen weg.</translation>
    </message>
</context>
<context>
    <name>PhotoPage</name>
    <message>
        <source>Photographs of %1</source>
        <translation>Fotos von %1</translation>
    </message>
    <message>
        <source>%1, side by side</source>
        <translation>%1, nebeneinander</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Photographs of %1 and of %2</source>
        <translation>Fotos von %1 und %2</translation>
    </message>
    <message>
        <source>Photograph of %1, %2</source>
        <translation>Foto vom %1, %2</translation>
    </message>
    <message>
        <source>Back to the plant</source>
        <translation>Zurück zur Pflanze</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Older</source>
        <translation>Älter</translation>
    </message>
    <message>
        <source>Key Left</source>
        <translation>Taste Links</translation>
    </message>
    <message>
        <source>Newer</source>
        <translation>Neuer</translation>
    </message>
    <message>
        <source>Key Right</source>
        <translation>Taste Rechts</translation>
    </message>
    <message>
        <source>One alone</source>
        <translation>Nur eines</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <source>Key B. With Shift, Left and Right walk the other one.</source>
        <translation>Taste B. Mit Umschalt gehen Links und Rechts durch das andere.</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Messen</translation>
    </message>
    <message>
        <source>Key M. Measures in this photograph.</source>
        <translation>Taste M. Misst in diesem Foto.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 to %2, &lt;b&gt;%3&lt;/b&gt;</source>
        <translation>%1 bis %2, &lt;b&gt;%3&lt;/b&gt;</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Draw it again</source>
        <translation>Wieder zeichnen</translation>
    </message>
    <message>
        <source>Set as its picture</source>
        <translation>Als ihr Bild nehmen</translation>
    </message>
    <message>
        <source>The drawing stands for the plant again.</source>
        <translation>Die Zeichnung steht wieder für die Pflanze.</translation>
    </message>
    <message>
        <source>This photograph stands for the plant.</source>
        <translation>Dieses Foto steht für die Pflanze.</translation>
    </message>
    <message>
        <source>Not this plant</source>
        <translation>Nicht diese Pflanze</translation>
    </message>
    <message>
        <source>The photograph stays, but does not show this plant any more.</source>
        <translation>Das Foto bleibt, zeigt aber diese Pflanze nicht mehr.</translation>
    </message>
    <message>
        <source>Out of the lists</source>
        <translation>Aus den Listen nehmen</translation>
    </message>
    <message>
        <source>For one that is of no use. Its file stays; Home, Data and backup shows it and brings it back.</source>
        <translation>Für eines, das nichts taugt. Die Datei bleibt; Zuhause, Daten und Sicherung zeigt es und holt es zurück.</translation>
    </message>
    <message>
        <source>Shows another plant too</source>
        <translation>Zeigt noch eine Pflanze</translation>
    </message>
    <message>
        <source>Choose the plant from a list.</source>
        <translation>Die Pflanze aus einer Liste wählen.</translation>
    </message>
    <message>
        <source>Set its date</source>
        <translation>Datum setzen</translation>
    </message>
    <message>
        <source>Where the camera wrote none, or a wrong one. The photograph itself stays as it is.</source>
        <translation>Wo die Kamera keines schrieb oder ein falsches. Das Foto selbst bleibt, wie es ist.</translation>
    </message>
    <message>
        <source>Write out</source>
        <translation>Herausgeben</translation>
    </message>
    <message>
        <source>As files, as a strip over time, or two side by side, for others to see.</source>
        <translation>Als Dateien, als Streifen über die Zeit oder zwei nebeneinander, für andere zum Ansehen.</translation>
    </message>
    <message>
        <source>When it was taken, the time behind the date where it is known</source>
        <translation>Wann es aufgenommen wurde, die Uhrzeit hinter dem Datum, wo sie bekannt ist</translation>
    </message>
    <message>
        <source>Keep the date</source>
        <translation>Das Datum speichern</translation>
    </message>
    <message>
        <source>Plants</source>
        <translation>Pflanzen</translation>
    </message>
</context>
<context>
    <name>PhotoStrip</name>
    <message>
        <source>No photograph yet. One a month, from the same place, shows what the eye forgets. Drag files or a folder here, or choose them.</source>
        <translation>Noch kein Foto. Eines im Monat, von derselben Stelle, zeigt, was das Auge vergisst. Dateien oder einen Ordner hierher ziehen oder wählen.</translation>
    </message>
    <message>
        <source>Add photos</source>
        <translation>Fotos hinzufügen</translation>
    </message>
    <message>
        <source>Chooses files. They are copied into the household, unaltered.</source>
        <translation>Wählt Dateien. Sie werden unverändert in den Haushalt kopiert.</translation>
    </message>
    <message>
        <source>Opens it; Left and Right walk the photographs</source>
        <translation>Öffnet es; Links und Rechts gehen durch die Fotos</translation>
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
        <translation>Messen</translation>
    </message>
    <message>
        <source>Measures in the framed photograph.</source>
        <translation>Misst im gerahmten Foto.</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <source>Key B. Two dates beside each other, with what changed.</source>
        <translation>Taste B. Zwei Tage nebeneinander, mit dem, was sich änderte.</translation>
    </message>
    <message>
        <source>Chooses files; they can be dragged here too.</source>
        <translation>Wählt Dateien; man kann sie auch hierher ziehen.</translation>
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
        <translation>Einmal weniger: %1</translation>
    </message>
    <message>
        <source>Take %1 off the list</source>
        <translation>%1 von der Liste nehmen</translation>
    </message>
    <message>
        <source>One more %1</source>
        <translation>Noch einmal: %1</translation>
    </message>
</context>
<context>
    <name>PinEntry</name>
    <message>
        <source>At which spot</source>
        <translation>An welchem Platz</translation>
    </message>
    <message>
        <source>First evening</source>
        <translation>Erster Abend</translation>
    </message>
    <message>
        <source>Last evening</source>
        <translation>Letzter Abend</translation>
    </message>
    <message>
        <source>Both left blank: always. The plan keeps to it, whatever the nights are like; the page Year shows the plant’s chance of harm there.</source>
        <translation>Beide leer: immer. Der Plan hält sich daran, wie die Nächte auch sind; die Seite Jahr zeigt, wie leicht die Pflanze dort Schaden nimmt.</translation>
    </message>
</context>
<context>
    <name>PlaceEntry</name>
    <message>
        <source>Nearest town, or coordinates</source>
        <translation>Nächster Ort oder Koordinaten</translation>
    </message>
    <message>
        <source>Town, or 48.2, 16.4</source>
        <translation>Ort, oder 48,2 16,4</translation>
    </message>
    <message>
        <source>Towns that answer to it</source>
        <translation>Orte, die passen</translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>° N</source>
        <translation>° N</translation>
    </message>
    <message>
        <source>Longitude</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>° E</source>
        <translation>° O</translation>
    </message>
    <message>
        <source>Height above the sea</source>
        <translation>Höhe über dem Meer</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>What you call the place</source>
        <translation>Wie der Ort heißen soll</translation>
    </message>
</context>
<context>
    <name>PlaceGives</name>
    <message>
        <source>What this place gives</source>
        <translation>Was dieser Ort gibt</translation>
    </message>
    <message>
        <source>Its frost dates, its nights and how sure they are stand here as soon as there is a place.</source>
        <translation>Seine Frostdaten, seine Nächte und wie sicher sie sind, stehen hier, sobald es einen Ort gibt.</translation>
    </message>
    <message>
        <source>Map of the stations round the place: %1</source>
        <translation>Karte der Stationen rund um den Ort: %1</translation>
    </message>
    <message>
        <source>. These are chances, not promises.</source>
        <translation>. Das sind Wahrscheinlichkeiten, keine Zusagen.</translation>
    </message>
    <message>
        <source>; coast lines: Natural Earth (public domain)</source>
        <translation>; Küstenlinien: Natural Earth (gemeinfrei)</translation>
    </message>
    <message>
        <source>; towns: GeoNames (CC BY 4.0).</source>
        <translation>; Orte: GeoNames (CC BY 4.0).</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>no frost</source>
        <translation>kein Frost</translation>
    </message>
    <message>
        <source>Frost</source>
        <translation>Frost</translation>
    </message>
    <message>
        <source>none in an ordinary year</source>
        <translation>keiner in einem gewöhnlichen Jahr</translation>
    </message>
    <message>
        <source>frost in any month</source>
        <translation>Frost in jedem Monat</translation>
    </message>
    <message>
        <source>possible in every month</source>
        <translation>in jedem Monat möglich</translation>
    </message>
    <message>
        <source>no season</source>
        <translation>keine Jahreszeit</translation>
    </message>
    <message>
        <source>none; there is no cold season here</source>
        <translation>keine; hier gibt es keine kalte Jahreszeit</translation>
    </message>
    <message>
        <source>chance per night, no season here</source>
        <translation>Wahrscheinlichkeit je Nacht, hier keine Jahreszeit</translation>
    </message>
    <message>
        <source>no frost, most years</source>
        <translation>kein Frost, meistens</translation>
    </message>
    <message>
        <source>Last frost</source>
        <translation>Letzter Frost</translation>
    </message>
    <message>
        <source>half the years by %1, 1 in 10 after %2</source>
        <translation>in der Hälfte der Jahre bis %1, in 1 von 10 nach %2</translation>
    </message>
    <message>
        <source>First frost</source>
        <translation>Erster Frost</translation>
    </message>
    <message>
        <source>half the years by %1, 1 in 10 by %2</source>
        <translation>in der Hälfte der Jahre bis %1, in 1 von 10 bis %2</translation>
    </message>
    <message>
        <source>1 year in 10: %1; most years have none</source>
        <translation>1 Jahr von 10: %1; in den meisten Jahren keiner</translation>
    </message>
    <message>
        <source>not in most years; %1 nights a year</source>
        <translation>in den meisten Jahren nicht; %1 Nächte im Jahr</translation>
    </message>
    <message>
        <source>Hardiness zone</source>
        <translation>Winterhärtezone</translation>
    </message>
    <message>
        <source>%1, lowest night about %2</source>
        <translation>%1, tiefste Nacht etwa %2</translation>
    </message>
    <message>
        <source>Day length</source>
        <translation>Tageslänge</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Right to about</source>
        <translation>Stimmt auf etwa</translation>
    </message>
    <message>
        <source>%1 in a month’s lows</source>
        <translation>%1 im Tief eines Monats</translation>
    </message>
    <message>
        <source>%1 in a month’s lows, %2 days in a frost date</source>
        <translation>%1 im Tief eines Monats, %2 Tage bei einem Frostdatum</translation>
    </message>
    <message>
        <source>Night lows through the year: middle %1 in the coldest week, %2 in the warmest.</source>
        <translation>Nachttiefs durch das Jahr: im Mittel %1 in der kältesten Woche, %2 in der wärmsten.</translation>
    </message>
    <message>
        <source>1 station, %1 away</source>
        <translation>1 Station, %1 entfernt</translation>
    </message>
    <message>
        <source>%1 stations, %2 to %3 away</source>
        <translation>%1 Stationen, %2 bis %3 entfernt</translation>
    </message>
</context>
<context>
    <name>PlaceMonths</name>
    <message>
        <source>%1: nights %2 and days %3 on average, coldest night of all the years %4, days with frost %5, degree days %6</source>
        <translation>%1: Nächte %2 und Tage %3 im Mittel, kälteste Nacht aller Jahre %4, Tage mit Frost %5, Gradtage %6</translation>
    </message>
    <message>
        <source>%1: rain %2, day length %3, %4 moles of light a day, a lawn drinks %5</source>
        <translation>%1: Regen %2, Tageslänge %3, %4 Mol Licht am Tag, ein Rasen trinkt %5</translation>
    </message>
    <message>
        <source>%1: soil %2 near the top and %3 deeper, in a pot %4 to %5, which drinks %6 a day</source>
        <translation>%1: Boden flach %2 und tiefer %3, im Topf %4 bis %5, der am Tag %6 trinkt</translation>
    </message>
    <message>
        <source>The mean of the day lies above %1 from %2 to %3, %4 days.</source>
        <translation>Das Tagesmittel liegt über %1 vom %2 bis zum %3, %4 Tage.</translation>
    </message>
    <message>
        <source>The mean of the day lies above %1 all year.</source>
        <translation>Das Tagesmittel liegt das ganze Jahr über %1.</translation>
    </message>
    <message>
        <source>The mean of the day never lies above %1.</source>
        <translation>Das Tagesmittel liegt nie über %1.</translation>
    </message>
    <message>
        <source>Degree days above %1, counted in °C: %2 a year.</source>
        <translation>Gradtage über %1, in °C gezählt: %2 im Jahr.</translation>
    </message>
    <message>
        <source>Rain: %1 a year.</source>
        <translation>Regen: %1 im Jahr.</translation>
    </message>
    <message>
        <source>A pot or crown of %1 %2, well watered, in the open and in the shade. A dark pot in full sun gets much hotter and can burn roots and hands.</source>
        <translation>Ein Topf oder eine Krone von %1 %2, gut gegossen, im Freien und im Schatten. Ein dunkler Topf in voller Sonne wird viel heißer und kann Wurzeln und Hände verbrennen.</translation>
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
        <translation>Marke wegnehmen</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Markieren</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>Open the page of %1</source>
        <translation>Seite von %1 öffnen</translation>
    </message>
    <message>
        <source>Open its page</source>
        <translation>Ihre Seite öffnen</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Watered today</source>
        <translation>Heute gegossen</translation>
    </message>
    <message>
        <source>Fed today</source>
        <translation>Heute gedüngt</translation>
    </message>
    <message>
        <source>Keep a measurement</source>
        <translation>Eine Messung festhalten</translation>
    </message>
    <message>
        <source>Write a note</source>
        <translation>Eine Notiz schreiben</translation>
    </message>
    <message>
        <source>Log something else</source>
        <translation>Etwas anderes eintragen</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Strg+L</translation>
    </message>
    <message>
        <source>Move to another spot</source>
        <translation>An einen anderen Platz stellen</translation>
    </message>
    <message>
        <source>Keep it at a spot</source>
        <translation>An einem Platz festhalten</translation>
    </message>
    <message>
        <source>Compare the two</source>
        <translation>Die zwei vergleichen</translation>
    </message>
    <message>
        <source>Add photos</source>
        <translation>Fotos hinzufügen</translation>
    </message>
</context>
<context>
    <name>PlantAsks</name>
    <message>
        <source>Ask</source>
        <translation>Fragen</translation>
    </message>
    <message>
        <source>After a cold night</source>
        <translation>Nach einer kalten Nacht</translation>
    </message>
    <message>
        <source>Key C. What the cold may have done, what helps and what waits.</source>
        <translation>Taste C. Was die Kälte angerichtet haben kann, was hilft und was wartet.</translation>
    </message>
    <message>
        <source>Hit by a spray</source>
        <translation>Von Spritzmittel getroffen</translation>
    </message>
    <message>
        <source>Key H. What weed-killer or drift may have done, by what is seen.</source>
        <translation>Taste H. Was Unkrautmittel oder Abdrift angerichtet haben können, nach dem, was zu sehen ist.</translation>
    </message>
    <message>
        <source>Before a spray</source>
        <translation>Vor dem Spritzen</translation>
    </message>
    <message>
        <source>Key S. Whether to spray now, to wait, or not at all.</source>
        <translation>Taste S. Ob jetzt, später oder gar nicht gespritzt wird.</translation>
    </message>
    <message>
        <source>Pests and the course</source>
        <translation>Schädlinge und Behandlung</translation>
    </message>
    <message>
        <source>Key P. How it stands, the steps and when it may end.</source>
        <translation>Taste P. Wie es steht, die Schritte und wann es zu Ende sein kann.</translation>
    </message>
    <message>
        <source>Water and winter</source>
        <translation>Wasser und Winter</translation>
    </message>
    <message>
        <source>Key W. When to look at the mix, its roots and its winter quarters.</source>
        <translation>Taste W. Wann nach der Erde zu sehen ist, ihre Wurzeln und ihr Winterquartier.</translation>
    </message>
    <message>
        <source>Going out and coming in</source>
        <translation>Ausräumen und Einräumen</translation>
    </message>
    <message>
        <source>Key O. The days before it stays out, and those around its coming in.</source>
        <translation>Taste O. Die Tage, bevor sie draußen bleibt, und die um ihr Hereinholen.</translation>
    </message>
</context>
<context>
    <name>PlantCollection</name>
    <message>
        <source>Find a plant by its name</source>
        <translation>Eine Pflanze nach dem Namen suchen</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Add plants</source>
        <translation>Pflanzen hinzufügen</translation>
    </message>
    <message>
        <source>Shelves</source>
        <translation>Regale</translation>
    </message>
    <message>
        <source>Key T changes to the table and back</source>
        <translation>Taste T wechselt zur Tabelle und zurück</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Umstellen</translation>
    </message>
    <message>
        <source>Key M, then the number of the spot. For the chosen plant or those that are marked.</source>
        <translation>Taste M, dann die Nummer des Platzes. Für die gewählte Pflanze oder die markierten.</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleichen</translation>
    </message>
    <message>
        <source>Key C. The two marked plants beside each other.</source>
        <translation>Taste C. Die zwei markierten Pflanzen nebeneinander.</translation>
    </message>
    <message>
        <source>Log for %1</source>
        <translation>Eintrag für %1</translation>
    </message>
    <message>
        <source>Log something</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>Control and L. For the chosen plant or those that are marked.</source>
        <translation>Strg und L. Für die gewählte Pflanze oder die markierten.</translation>
    </message>
    <message>
        <source>Read again</source>
        <translation>Neu lesen</translation>
    </message>
    <message>
        <source>Key F5. Reads the household anew.</source>
        <translation>Taste F5. Liest den Haushalt neu.</translation>
    </message>
    <message>
        <source>The plants are being read.</source>
        <translation>Die Pflanzen werden gelesen.</translation>
    </message>
    <message>
        <source>No plant stands here yet. Each will have its page with photographs, growth and needs, and its place on a shelf. Add the first with the button above.</source>
        <translation>Noch steht keine Pflanze hier. Jede bekommt ihre Seite mit Fotos, Wachstum und Ansprüchen und ihren Platz im Regal. Die erste mit dem Knopf oben hinzufügen.</translation>
    </message>
    <message>
        <source>No plant of that name or kind. Escape shows all of them again.</source>
        <translation>Keine Pflanze dieses Namens oder dieser Art. Esc zeigt wieder alle.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 nach %2</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Spot</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Next move</source>
        <translation>Nächster Gang</translation>
    </message>
    <message>
        <source>Hazard</source>
        <translation>Gefahr</translation>
    </message>
    <message>
        <source>Plants as a table</source>
        <translation>Pflanzen als Tabelle</translation>
    </message>
    <message>
        <source>1 plant marked. Escape takes the mark off.</source>
        <translation>1 Pflanze markiert. Esc nimmt die Marke weg.</translation>
    </message>
    <message>
        <source>%1 plants marked. Escape takes the marks off.</source>
        <translation>%1 Pflanzen markiert. Esc nimmt die Marken weg.</translation>
    </message>
    <message>
        <source>Enter opens a plant, Space marks it, Control and L logs, M moves.</source>
        <translation>Eingabe öffnet eine Pflanze, Leertaste markiert sie, Strg und L trägt ein, M stellt um.</translation>
    </message>
    <message>
        <source>Gone, with all of their past kept:</source>
        <translation>Nicht mehr da; ihre Seiten bleiben:</translation>
    </message>
    <message>
        <source>All %1</source>
        <translation>Alle %1</translation>
    </message>
    <message>
        <source>Shows those that are gone, the latest first</source>
        <translation>Zeigt die, die nicht mehr da sind, die letzten zuerst</translation>
    </message>
</context>
<context>
    <name>PlantComparison</name>
    <message>
        <source>%1 and %2 beside each other</source>
        <translation>%1 und %2 nebeneinander</translation>
    </message>
    <message>
        <source>Newest photograph of %1</source>
        <translation>Neuestes Foto von %1</translation>
    </message>
    <message>
        <source>All plants</source>
        <translation>Alle Pflanzen</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
</context>
<context>
    <name>PlantEntry</name>
    <message>
        <source>Its name</source>
        <translation>Ihr Name</translation>
    </message>
    <message>
        <source>Pot holds</source>
        <translation>Topf fasst</translation>
    </message>
    <message>
        <source>Weight, moist</source>
        <translation>Gewicht, feucht</translation>
    </message>
    <message>
        <source>The pot is</source>
        <translation>Der Topf ist</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>light</source>
        <translation>hell</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>Its own lines: night lows, and the day’s heat</source>
        <translation>Ihre eigenen Linien: Nachttiefs und die Hitze des Tages</translation>
    </message>
    <message>
        <source>Safe night</source>
        <translation>Sichere Nacht</translation>
    </message>
    <message>
        <source>Harm begins</source>
        <translation>Schaden ab</translation>
    </message>
    <message>
        <source>May kill</source>
        <translation>Kann töten ab</translation>
    </message>
    <message>
        <source>Heat harms</source>
        <translation>Hitze schadet ab</translation>
    </message>
    <message>
        <source>Grown outdoors while the nights allow</source>
        <translation>Steht draußen, solange es die Nächte erlauben</translation>
    </message>
    <message>
        <source>Poisonous or spiny: out of reach of children and animals</source>
        <translation>Giftig oder stachlig: außer Reichweite von Kindern und Tieren</translation>
    </message>
    <message>
        <source>Always kept at</source>
        <translation>Immer festgehalten an</translation>
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
        <translation>gleicher Abstand nach oben heißt gleiches Wachstum in Prozent</translation>
    </message>
    <message>
        <source>; bar: error of one reading%1</source>
        <translation>; Strich: Fehler einer Messung%1</translation>
    </message>
    <message>
        <source>, by its repeats</source>
        <translation>, aus ihren Wiederholungen</translation>
    </message>
    <message>
        <source>%1 from %2 on %3 to %4 on %5, %6 readings.</source>
        <translation>%1 von %2 am %3 auf %4 am %5, %6 Messungen.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>a move</source>
        <translation>Umstellen</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 Prozentpunkte</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>umgestellt</translation>
    </message>
    <message>
        <source>went out</source>
        <translation>hinaus</translation>
    </message>
    <message>
        <source>came in</source>
        <translation>herein</translation>
    </message>
    <message>
        <source>mean of %1</source>
        <translation>Mittel aus %1</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1: %2, %3 since the one before.</source>
        <translation>%1: %2, %3 seit dem vorigen.</translation>
    </message>
    <message>
        <source>Measure again now.</source>
        <translation>Jetzt wieder messen.</translation>
    </message>
    <message>
        <source>Measure again on %1.</source>
        <translation>Wieder messen: %1</translation>
    </message>
    <message>
        <source>The last of %1 readings that are still needed, about %2, could settle it.</source>
        <translation>Die letzte von %1 Messungen, die noch nötig sind, etwa am %2, könnte es entscheiden.</translation>
    </message>
    <message>
        <source>No setback</source>
        <translation>Kein Rückschlag</translation>
    </message>
    <message>
        <source>Recovered</source>
        <translation>Erholt</translation>
    </message>
    <message>
        <source>Recovering</source>
        <translation>Erholt sich</translation>
    </message>
    <message>
        <source>Holding</source>
        <translation>Hält sich</translation>
    </message>
    <message>
        <source>Declining</source>
        <translation>Geht zurück</translation>
    </message>
    <message>
        <source>Too early</source>
        <translation>Zu früh</translation>
    </message>
    <message>
        <source>Cannot be judged</source>
        <translation>Nicht zu beurteilen</translation>
    </message>
    <message>
        <source>after: %1, %2</source>
        <translation>nach: %1, %2</translation>
    </message>
    <message>
        <source>Nothing to judge.</source>
        <translation>Nichts zu beurteilen.</translation>
    </message>
    <message>
        <source>No move, cold night, spray or other event lies between these readings.</source>
        <translation>Zwischen diesen Messungen liegt kein Umstellen, keine kalte Nacht, keine Spritzung und kein anderes Ereignis.</translation>
    </message>
    <message>
        <source>From %1 readings before and %2 after it.</source>
        <translation>Messungen davor: %1, danach: %2.</translation>
    </message>
    <message>
        <source>That reading could settle it, if it goes on as now.</source>
        <translation>Diese Messung könnte es entscheiden, wenn es so weitergeht.</translation>
    </message>
    <message>
        <source>No date in sight settles it, if readings go on as they do.</source>
        <translation>Kein absehbarer Tag entscheidet es, wenn weiter so gemessen wird.</translation>
    </message>
    <message>
        <source> Other things happened too close to tell apart; the verdict is on the plant after all of them.</source>
        <translation> Anderes geschah zu dicht daneben, um es zu trennen; das Urteil gilt der Pflanze nach allem zusammen.</translation>
    </message>
    <message>
        <source>Nights: lethal at %1, harm from %2, stress from %3 on, too hot from %4.%5</source>
        <translation>Nächte: tödlich bei %1, Schaden ab %2, Belastung ab %3, zu heiß ab %4.%5</translation>
    </message>
    <message>
        <source>Light: %1 mol/m² a day is good, %2 keeps it alive.</source>
        <translation>Licht: %1 mol/m² am Tag sind gut, %2 halten sie am Leben.</translation>
    </message>
    <message>
        <source> Where it was eaten or hurts, ask a doctor or a vet.</source>
        <translation> Wurde davon gegessen oder treten Beschwerden auf: Arzt oder Tierarzt fragen.</translation>
    </message>
    <message>
        <source>Not known to be poisonous,</source>
        <translation>Nicht als giftig bekannt,</translation>
    </message>
    <message>
        <source>which is no proof.</source>
        <translation>was kein Beweis ist.</translation>
    </message>
    <message>
        <source>Sheds leaves after any move,</source>
        <translation>Wirft nach jedem Umstellen Blätter ab,</translation>
    </message>
    <message>
        <source>whatever the temperature: move it seldom.</source>
        <translation>bei jeder Temperatur: selten bewegen.</translation>
    </message>
    <message>
        <source>Wants to dry right out</source>
        <translation>Soll ganz abtrocknen</translation>
    </message>
    <message>
        <source>between waterings.</source>
        <translation>zwischen dem Gießen.</translation>
    </message>
    <message>
        <source>A kind of your own: its figures are those that you gave.</source>
        <translation>Eine eigene Art: Ihre Zahlen sind die angegebenen.</translation>
    </message>
    <message>
        <source>Cold lines: %1 (%2 confidence).</source>
        <translation>Kältelinien: %1 (Vertrauen %2).</translation>
    </message>
    <message>
        <source>Sources: %1.</source>
        <translation>Quellen: %1.</translation>
    </message>
    <message>
        <source>Gone: %1. All that was kept of it stays; notes and photographs from before can be added.</source>
        <translation>Nicht mehr da: %1. Alles, was von ihr festgehalten ist, bleibt; Notizen und Fotos von früher können dazukommen.</translation>
    </message>
    <message>
        <source>Do not eat.</source>
        <translation>Nicht essen.</translation>
    </message>
    <message>
        <source>known since %1</source>
        <translation>bekannt seit %1</translation>
    </message>
    <message>
        <source>divided from %1</source>
        <translation>geteilt von %1</translation>
    </message>
    <message>
        <source>divided from a plant that is gone</source>
        <translation>geteilt von einer Pflanze, die es nicht mehr gibt</translation>
    </message>
    <message>
        <source>pot %1</source>
        <translation>Topf %1</translation>
    </message>
    <message>
        <source>about %1 wet</source>
        <translation>etwa %1 nass</translation>
    </message>
    <message>
        <source>where it stands</source>
        <translation>wo sie steht</translation>
    </message>
    <message>
        <source>at no spot yet</source>
        <translation>noch ohne Platz</translation>
    </message>
    <message>
        <source>M gives it one</source>
        <translation>M gibt ihr einen</translation>
    </message>
    <message>
        <source>pests found</source>
        <translation>Schädlinge gefunden</translation>
    </message>
    <message>
        <source>suspected</source>
        <translation>verdächtig</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>seit %1</translation>
    </message>
    <message>
        <source>carry in tonight: %1 for harm</source>
        <translation>heute Nacht hereintragen: %1 für Schaden</translation>
    </message>
    <message>
        <source>tonight: %1 for harm</source>
        <translation>heute Nacht: %1 für Schaden</translation>
    </message>
    <message>
        <source>by the forecast</source>
        <translation>nach der Vorhersage</translation>
    </message>
    <message>
        <source>by the season alone</source>
        <translation>allein nach der Jahreszeit</translation>
    </message>
    <message>
        <source>stays where it is</source>
        <translation>bleibt, wo sie ist</translation>
    </message>
    <message>
        <source>for the year ahead, by the plan</source>
        <translation>für das kommende Jahr, nach dem Plan</translation>
    </message>
    <message>
        <source>to %1 today</source>
        <translation>heute nach %1</translation>
    </message>
    <message>
        <source>to %1 %2</source>
        <translation>am %2 nach %1</translation>
    </message>
    <message>
        <source>chance of a harmful night after it: %1</source>
        <translation>Wahrscheinlichkeit einer schädlichen Nacht danach: %1</translation>
    </message>
    <message>
        <source>by the plan</source>
        <translation>nach dem Plan</translation>
    </message>
    <message>
        <source>feed today</source>
        <translation>heute düngen</translation>
    </message>
    <message>
        <source>feed %1</source>
        <translation>düngen %1</translation>
    </message>
    <message>
        <source>%1 ppm nitrogen</source>
        <translation>%1 ppm Stickstoff</translation>
    </message>
    <message>
        <source>Feed: %1.</source>
        <translation>Düngung: %1.</translation>
    </message>
    <message>
        <source>Feed today, %1 ppm nitrogen. The label comes first.</source>
        <translation>Heute düngen, %1 ppm Stickstoff. Das Etikett geht vor.</translation>
    </message>
    <message>
        <source>Feed on %1, %2 ppm nitrogen. The label comes first.</source>
        <translation>Düngen am %1, %2 ppm Stickstoff. Das Etikett geht vor.</translation>
    </message>
    <message>
        <source>takes no feed</source>
        <translation>nimmt keinen Dünger</translation>
    </message>
    <message>
        <source>no feed while it has pests</source>
        <translation>kein Dünger, solange sie Schädlinge hat</translation>
    </message>
    <message>
        <source>no feed until %1</source>
        <translation>kein Dünger bis %1</translation>
    </message>
    <message>
        <source>no feed until new growth is logged</source>
        <translation>kein Dünger, bis ein neuer Trieb eingetragen ist</translation>
    </message>
    <message>
        <source>no feed until it is released</source>
        <translation>kein Dünger bis zur Entlassung</translation>
    </message>
    <message>
        <source>no feed until released and growing</source>
        <translation>kein Dünger bis zur Entlassung und neuem Trieb</translation>
    </message>
    <message>
        <source>no feed for now</source>
        <translation>vorerst kein Dünger</translation>
    </message>
    <message>
        <source> Its spot has about %1 tonight.</source>
        <translation> Ihr Platz hat heute Nacht etwa %1.</translation>
    </message>
    <message>
        <source>Chance that it is harmed tonight: %1.</source>
        <translation>Wahrscheinlichkeit, dass sie heute Nacht Schaden nimmt: %1.</translation>
    </message>
    <message>
        <source>Chance that it is harmed tonight, by the season alone: %1.</source>
        <translation>Wahrscheinlichkeit, dass sie heute Nacht Schaden nimmt, allein nach der Jahreszeit: %1.</translation>
    </message>
    <message>
        <source>Light: %1 mol/m² a day is good, %2 keeps it alive; its spot gives about %3 now.</source>
        <translation>Licht: %1 mol/m² am Tag sind gut, %2 halten sie am Leben; ihr Platz gibt jetzt etwa %3.</translation>
    </message>
    <message>
        <source> That is %1 times as much: sun there may burn its leaves.</source>
        <translation> Das ist %1-mal so viel: Sonne kann dort die Blätter verbrennen.</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>um %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>von %1</translation>
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
        <translation>Datei fehlt</translation>
    </message>
    <message>
        <source>newest</source>
        <translation>neuestes</translation>
    </message>
    <message>
        <source>Photograph of %1</source>
        <translation>Foto vom %1</translation>
    </message>
    <message>
        <source>Photograph of %1, %2</source>
        <translation>Foto vom %1, %2</translation>
    </message>
    <message>
        <source>1 photograph</source>
        <translation>1 Foto</translation>
    </message>
    <message>
        <source>%1 photographs</source>
        <translation>%1 Fotos</translation>
    </message>
    <message>
        <source>%1 shown, spread over %2 months</source>
        <translation>%1 gezeigt, über %2 Monate verteilt</translation>
    </message>
</context>
<context>
    <name>PlantFeeding</name>
    <message>
        <source>Feeding through the year</source>
        <translation>Düngen übers Jahr</translation>
    </message>
    <message>
        <source>When, how strong, and why not; under lamps too</source>
        <translation>Wann, wie stark und warum nicht; auch unter Lampen</translation>
    </message>
    <message>
        <source>Hours a day that lamps burn over the plants indoors, may be left blank</source>
        <translation>Stunden am Tag, die Lampen über den Pflanzen drinnen brennen, darf leer bleiben</translation>
    </message>
    <message>
        <source>lamps: none</source>
        <translation>Lampen: keine</translation>
    </message>
    <message>
        <source>hours of lamps</source>
        <translation>Stunden Lampen</translation>
    </message>
    <message>
        <source>The lamps’ light at the leaves, may be left blank: a weak lamp</source>
        <translation>Das Licht der Lampen an den Blättern, darf leer bleiben: eine schwache Lampe</translation>
    </message>
    <message>
        <source>light at the leaves: a weak lamp</source>
        <translation>Licht an den Blättern: schwach</translation>
    </message>
    <message>
        <source>µmol/m² s</source>
        <translation>µmol/m² s</translation>
    </message>
    <message>
        <source>Work it out</source>
        <translation>Ausarbeiten</translation>
    </message>
    <message>
        <source>The water is</source>
        <translation>Das Wasser ist</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>soft</source>
        <translation>weich</translation>
    </message>
    <message>
        <source>hard</source>
        <translation>hart</translation>
    </message>
</context>
<context>
    <name>PlantList</name>
    <message>
        <source>Plants</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <source>No plant stands here yet. Each will have its year as a bar: where it stands, when it may go out, when it must come in. Add the first under Plants.</source>
        <translation>Noch steht keine Pflanze hier. Jede bekommt ihr Jahr als Balken: wo sie steht, wann sie hinaus darf, wann sie herein muss. Die erste unter Pflanzen hinzufügen.</translation>
    </message>
    <message>
        <source>Add plants</source>
        <translation>Pflanzen hinzufügen</translation>
    </message>
    <message>
        <source>Goes to Plants, with the form for new ones.</source>
        <translation>Geht zu Pflanzen, mit dem Formular für neue.</translation>
    </message>
</context>
<context>
    <name>PlantPage</name>
    <message>
        <source>All plants</source>
        <translation>Alle Pflanzen</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Umstellen</translation>
    </message>
    <message>
        <source>Key M, then the number of the spot</source>
        <translation>Taste M, dann die Nummer des Platzes</translation>
    </message>
    <message>
        <source>Print sheet</source>
        <translation>Blatt drucken</translation>
    </message>
    <message>
        <source>Control and P. Its history, photographs and growth as a PDF.</source>
        <translation>Strg und P. Geschichte, Fotos und Wachstum als PDF.</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Name, pot, its own lines, where it is kept</source>
        <translation>Name, Topf, eigene Linien, fester Platz</translation>
    </message>
    <message>
        <source>Add a note</source>
        <translation>Notiz hinzufügen</translation>
    </message>
    <message>
        <source>Log something</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>Control and L</source>
        <translation>Strg und L</translation>
    </message>
    <message>
        <source>The chooser of files is not installed (qml6-module-qtquick-dialogs). Drag the files onto this page instead.</source>
        <translation>Der Dateidialog ist nicht installiert (qml6-module-qtquick-dialogs). Die Dateien stattdessen auf diese Seite ziehen.</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschah</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Show more of %1 lines</source>
        <translation>Mehr von %1 Zeilen zeigen</translation>
    </message>
</context>
<context>
    <name>PlantRow</name>
    <message>
        <source>%1 Due: %2.</source>
        <translation>%1 Zu tun: %2.</translation>
    </message>
    <message>
        <source>Its page: Enter, or press twice</source>
        <translation>Ihre Seite: Eingabetaste oder zweimal drücken</translation>
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
        <translation>Im Lauf der Zeit</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>What it needs</source>
        <translation>Was sie braucht</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>What was written down</source>
        <translation>Was aufgeschrieben wurde</translation>
    </message>
    <message>
        <source>%1 entries, newest first</source>
        <translation>%1 Einträge, neueste zuerst</translation>
    </message>
    <message>
        <source>Where the numbers come from</source>
        <translation>Woher die Zahlen kommen</translation>
    </message>
</context>
<context>
    <name>PlantsEntry</name>
    <message>
        <source>Which plants?</source>
        <translation>Welche Pflanzen?</translation>
    </message>
    <message>
        <source>Common or botanical name</source>
        <translation>Deutscher oder botanischer Name</translation>
    </message>
    <message>
        <source>lemon, Ficus, basil</source>
        <translation>Zitrone, Ficus, Basilikum</translation>
    </message>
    <message>
        <source>Kinds that answer to it</source>
        <translation>Arten, die passen</translation>
    </message>
    <message>
        <source>Enter picks one; L looks at what is known of it</source>
        <translation>Eingabe wählt eine; L zeigt, was über sie bekannt ist</translation>
    </message>
    <message>
        <source>No kind of your own</source>
        <translation>Keine eigene Art</translation>
    </message>
    <message>
        <source>A kind of your own</source>
        <translation>Eine eigene Art</translation>
    </message>
    <message>
        <source>For a plant that is not in the list: you say its lines</source>
        <translation>Für eine Pflanze, die nicht in der Liste steht: ihre Grenzen selbst angeben</translation>
    </message>
    <message>
        <source>Its name</source>
        <translation>Ihr Name</translation>
    </message>
    <message>
        <source>Safe night</source>
        <translation>Sichere Nacht</translation>
    </message>
    <message>
        <source>Harm begins</source>
        <translation>Schaden ab</translation>
    </message>
    <message>
        <source>Kills</source>
        <translation>Tödlich bei</translation>
    </message>
    <message>
        <source>Little light</source>
        <translation>Wenig Licht</translation>
    </message>
    <message>
        <source>Some light</source>
        <translation>Etwas Licht</translation>
    </message>
    <message>
        <source>Bright</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Full sun</source>
        <translation>Volle Sonne</translation>
    </message>
    <message>
        <source>Poisonous or spiny: out of reach of children and animals</source>
        <translation>Giftig oder stachlig: außer Reichweite von Kindern und Tieren</translation>
    </message>
    <message>
        <source>Must dry out between waterings; rain on it is stress</source>
        <translation>Muss zwischen dem Gießen austrocknen; Regen belastet sie</translation>
    </message>
    <message>
        <source>Grown outdoors while the nights allow</source>
        <translation>Steht draußen, solange es die Nächte erlauben</translation>
    </message>
    <message>
        <source>Add this kind</source>
        <translation>Diese Art hinzufügen</translation>
    </message>
    <message>
        <source>Picked</source>
        <translation>Gewählt</translation>
    </message>
    <message>
        <source>Picked: 1 plant</source>
        <translation>Gewählt: 1 Pflanze</translation>
    </message>
    <message>
        <source>Picked: %1 plants</source>
        <translation>Gewählt: %1 Pflanzen</translation>
    </message>
    <message>
        <source>Press a kind to pick it, and again for one more. A few are enough for a year.</source>
        <translation>Eine Art anklicken wählt sie, noch einmal noch eine. Für ein Jahr genügen wenige.</translation>
    </message>
    <message>
        <source>Plants that were picked</source>
        <translation>Gewählte Pflanzen</translation>
    </message>
    <message>
        <source>%1 stands today at</source>
        <translation>%1 steht heute an</translation>
    </message>
</context>
<context>
    <name>PlantsFacts</name>
    <message>
        <source>gone</source>
        <translation>nicht mehr da</translation>
    </message>
    <message>
        <source>another spot</source>
        <translation>ein anderer Platz</translation>
    </message>
    <message>
        <source>to %1 today</source>
        <translation>heute nach %1</translation>
    </message>
    <message>
        <source>to %1 %2</source>
        <translation>am %2 nach %1</translation>
    </message>
    <message>
        <source>pests found</source>
        <translation>Schädlinge gefunden</translation>
    </message>
    <message>
        <source>suspected: look</source>
        <translation>verdächtig: nachsehen</translation>
    </message>
    <message>
        <source>set apart</source>
        <translation>abgesondert</translation>
    </message>
    <message>
        <source>carry in tonight</source>
        <translation>heute Nacht hereintragen</translation>
    </message>
    <message>
        <source>look today</source>
        <translation>heute nachsehen</translation>
    </message>
    <message>
        <source>declining</source>
        <translation>geht zurück</translation>
    </message>
    <message>
        <source>recovering</source>
        <translation>erholt sich</translation>
    </message>
    <message>
        <source>feed today</source>
        <translation>heute düngen</translation>
    </message>
    <message>
        <source>in flower</source>
        <translation>blüht</translation>
    </message>
    <message>
        <source>new shoots</source>
        <translation>neue Triebe</translation>
    </message>
    <message>
        <source>watered</source>
        <translation>gegossen</translation>
    </message>
    <message>
        <source>feel the mix</source>
        <translation>Erde fühlen</translation>
    </message>
    <message>
        <source>rests</source>
        <translation>ruht</translation>
    </message>
</context>
<context>
    <name>PlantsPage</name>
    <message>
        <source>Plants</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <source>It is planned</source>
        <translation>Das ist geplant</translation>
    </message>
    <message>
        <source>Takes the move of today back and asks from which evening to which it stands there; the plan keeps to it.</source>
        <translation>Nimmt das Umstellen von heute zurück und fragt, von welchem bis zu welchem Abend sie dort steht; der Plan hält sich daran.</translation>
    </message>
</context>
<context>
    <name>PotUp</name>
    <message>
        <source>How many seedlings were potted, each in a pot of its own</source>
        <translation>Wie viele Sämlinge getopft wurden, jeder in einen eigenen Topf</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>What they are called; several are numbered; blank for crop and tray</source>
        <translation>Wie sie heißen; mehrere werden nummeriert; leer für Kultur und Schale</translation>
    </message>
    <message>
        <source>Name, or blank for crop and tray</source>
        <translation>Name, oder leer für Kultur und Schale</translation>
    </message>
    <message>
        <source>Potted: today.</source>
        <translation>Eingetopft: heute.</translation>
    </message>
    <message>
        <source>Potted: %1 days ago, %2.</source>
        <translation>Eingetopft: vor %1 Tagen, %2.</translation>
    </message>
    <message>
        <source>Where they stand, if not where the tray does:</source>
        <translation>Wo sie stehen, wenn nicht bei der Schale:</translation>
    </message>
    <message>
        <source>Pot them up</source>
        <translation>Eintopfen</translation>
    </message>
    <message>
        <source>They stand under Plants then</source>
        <translation>Sie stehen dann unter Pflanzen</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation>Nicht erledigt</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
</context>
<context>
    <name>PrintPane</name>
    <message>
        <source>The sheet is being drawn.</source>
        <translation>Das Blatt wird gezeichnet.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Takes this word away.</source>
        <translation>Nimmt diese Nachricht weg.</translation>
    </message>
</context>
<context>
    <name>ReadAgain</name>
    <message>
        <source>Read again</source>
        <translation>Neu lesen</translation>
    </message>
    <message>
        <source>Key F5. Reads the household anew.</source>
        <translation>Taste F5. Liest den Haushalt neu.</translation>
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
        <translation>%1, %2 bis %3</translation>
    </message>
    <message>
        <source>From %1, taken in on %2. Kept %3 from the household’s place, at %4.</source>
        <translation>Aus %1, aufgenommen am %2. Gemessen %3 vom Ort des Haushalts, in %4 Höhe.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>First and last night</source>
        <translation>Erste und letzte Nacht</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Nights with a low</source>
        <translation>Nächte mit Tiefstwert</translation>
    </message>
    <message>
        <source>%1 of %2, %3 %</source>
        <translation>%1 von %2, %3 %</translation>
    </message>
    <message>
        <source>Cold seasons complete enough</source>
        <translation>Kalte Jahreszeiten, vollständig genug</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Gaps of five days and more</source>
        <translation>Lücken von fünf Tagen und mehr</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>%1; the longest %2 days from %3</source>
        <translation>%1; die längste %2 Tage ab %3</translation>
    </message>
    <message>
        <source>Years without any low</source>
        <translation>Jahre ohne jeden Tiefstwert</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Doubtful days</source>
        <translation>Zweifelhafte Tage</translation>
    </message>
    <message>
        <source>one %1: %2</source>
        <translation>einer %1: %2</translation>
    </message>
    <message>
        <source>%1 %2, the first %3</source>
        <translation>%1 %2, der erste %3</translation>
    </message>
    <message>
        <source>No shipped station is near enough to compare it with.</source>
        <translation>Keine mitgelieferte Station ist nah genug zum Vergleich.</translation>
    </message>
    <message>
        <source>%1: mean low %2 here, %3 by the table, apart %4; mean high %5 here, %6 by the table, apart %7</source>
        <translation>%1: mittleres Tief %2 hier, %3 nach der Tabelle, Abstand %4; mittleres Hoch %5 hier, %6 nach der Tabelle, Abstand %7</translation>
    </message>
    <message>
        <source>Plausible: every month lies as near to the shipped table as one may expect.</source>
        <translation>Glaubhaft: Jeder Monat liegt der mitgelieferten Tabelle so nah, wie zu erwarten ist.</translation>
    </message>
    <message>
        <source>Doubtful.</source>
        <translation>Zweifelhaft.</translation>
    </message>
    <message>
        <source>Implausible.</source>
        <translation>Unglaubhaft.</translation>
    </message>
    <message>
        <source>It answers here before the shipped table, with its years %1 to %2.</source>
        <translation>Sie antwortet hier vor der mitgelieferten Tabelle, mit ihren Jahren %1 bis %2.</translation>
    </message>
    <message>
        <source>It is not used: %1. The shipped table answers.</source>
        <translation>Sie wird nicht benutzt: %1. Es antwortet die mitgelieferte Tabelle.</translation>
    </message>
</context>
<context>
    <name>RiskSlider</name>
    <message>
        <source>For each plant, each way. Left and right choose the stop.</source>
        <translation>Je Pflanze und Weg. Links und Rechts wählen die Stufe.</translation>
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
        <translation>Heute erledigt</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>Open the plant’s page</source>
        <translation>Seite der Pflanze öffnen</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Log something</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Strg+L</translation>
    </message>
    <message>
        <source>How much goes into the water</source>
        <translation>Wie viel ins Wasser kommt</translation>
    </message>
    <message>
        <source>Before a spray</source>
        <translation>Vor dem Spritzen</translation>
    </message>
    <message>
        <source>Put off a day</source>
        <translation>Einen Tag später</translation>
    </message>
    <message>
        <source>Put off longer</source>
        <translation>Länger verschieben</translation>
    </message>
    <message>
        <source>Shift+P</source>
        <translation>Umschalt+P</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Auslassen</translation>
    </message>
</context>
<context>
    <name>RoundAsk</name>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
</context>
<context>
    <name>RoundFold</name>
    <message>
        <source>%1 more</source>
        <translation>%1 weitere</translation>
    </message>
    <message>
        <source>%1 more: %2</source>
        <translation>%1 weitere: %2</translation>
    </message>
</context>
<context>
    <name>RoundPage</name>
    <message>
        <source>Today&apos;s round</source>
        <translation>Rundgang heute</translation>
    </message>
    <message>
        <source>Why is this task left out</source>
        <translation>Warum wird diese Arbeit ausgelassen</translation>
    </message>
    <message>
        <source>Why, for the journal</source>
        <translation>Warum, für das Journal</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>For how many days is this task put off, up to 60, or until which date</source>
        <translation>Um wie viele Tage, bis 60, oder bis zu welchem Tag wird diese Arbeit verschoben</translation>
    </message>
    <message>
        <source>days, or a date</source>
        <translation>Tage oder ein Datum</translation>
    </message>
    <message>
        <source>Put it off</source>
        <translation>Verschieben</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>Done today</source>
        <translation>Heute erledigt</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation>Nicht erledigt</translation>
    </message>
    <message>
        <source>Show the year</source>
        <translation>Das Jahr zeigen</translation>
    </message>
    <message>
        <source>Add plants</source>
        <translation>Pflanzen hinzufügen</translation>
    </message>
    <message>
        <source>Key 2. What comes next for each plant.</source>
        <translation>Taste 2. Was für jede Pflanze als Nächstes kommt.</translation>
    </message>
    <message>
        <source>Goes to Plants, with the form for new ones.</source>
        <translation>Geht zu Pflanzen, mit dem Formular für neue.</translation>
    </message>
    <message>
        <source>The round is being worked out.</source>
        <translation>Der Rundgang wird ausgearbeitet.</translation>
    </message>
    <message>
        <source>Tasks</source>
        <translation>Arbeiten</translation>
    </message>
    <message>
        <source>Type tonight’s low</source>
        <translation>Tiefstwert heute Nacht eingeben</translation>
    </message>
    <message>
        <source>Goes to the field for it; then tonight is in the round.</source>
        <translation>Geht zum Feld dafür; dann steht heute Nacht im Rundgang.</translation>
    </message>
    <message>
        <source>Put off a day</source>
        <translation>Einen Tag später</translation>
    </message>
    <message>
        <source>Key P. The chosen task is due again tomorrow.</source>
        <translation>Taste P. Die gewählte Arbeit ist morgen wieder fällig.</translation>
    </message>
    <message>
        <source>Put off longer</source>
        <translation>Länger verschieben</translation>
    </message>
    <message>
        <source>Key Shift and P. Asks for how many days.</source>
        <translation>Umschalt und P. Fragt, um wie viele Tage.</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <source>Key S. The chosen task is not done this time; the journal is told why.</source>
        <translation>Taste S. Die gewählte Arbeit entfällt diesmal; das Journal erfährt, warum.</translation>
    </message>
    <message>
        <source>Print the list</source>
        <translation>Liste drucken</translation>
    </message>
    <message>
        <source>Control and P. The week&apos;s tasks as a PDF with boxes to tick.</source>
        <translation>Strg und P. Die Arbeiten der Woche als PDF mit Kästchen zum Abhaken.</translation>
    </message>
    <message>
        <source>Control and Z, or U. Takes back what was done last in this window.</source>
        <translation>Strg und Z, oder U. Nimmt zurück, was in diesem Fenster zuletzt getan wurde.</translation>
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
        <translation>festgehalten</translation>
    </message>
    <message>
        <source>They can wait. Shows them; the arrows do so too.</source>
        <translation>Sie können warten. Zeigt sie; die Pfeiltasten tun es auch.</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Seeds</source>
        <translation>Samen</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>%1; pinned</source>
        <translation>%1; festgehalten</translation>
    </message>
</context>
<context>
    <name>RoundSheet</name>
    <message>
        <source>nothing is due</source>
        <translation>nichts ist fällig</translation>
    </message>
    <message>
        <source>1 task, about %1 min</source>
        <translation>1 Arbeit, etwa %1 min</translation>
    </message>
    <message>
        <source>%1 tasks, about %2 min</source>
        <translation>%1 Arbeiten, etwa %2 min</translation>
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
        <translation>%1: wie oben gesagt</translation>
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
        <translation>Vor dem Spritzen</translation>
    </message>
    <message>
        <source>Key B. Whether to spray now, to wait, or not at all.</source>
        <translation>Taste B. Ob jetzt, später oder gar nicht gespritzt wird.</translation>
    </message>
</context>
<context>
    <name>RoundWaits</name>
    <message>
        <source>What waits, and why</source>
        <translation>Was wartet, und warum</translation>
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
        <translation>Taste O. Zeilen nach dem Tag des Ausräumens, nach Platz oder nach Namen.</translation>
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
        <translation>1 Pflanze</translation>
    </message>
    <message>
        <source>%1 plants</source>
        <translation>%1 Pflanzen</translation>
    </message>
    <message>
        <source>Sow %1 for %2</source>
        <translation>%1 aussäen für %2</translation>
    </message>
    <message>
        <source>1 seed</source>
        <translation>1 Samen</translation>
    </message>
    <message>
        <source>%1 seeds</source>
        <translation>%1 Samen</translation>
    </message>
    <message>
        <source>Over 100,000 seeds would be needed for %1</source>
        <translation>Über 100.000 Samen wären nötig für %1</translation>
    </message>
    <message>
        <source>enough 19 times in 20, at %1</source>
        <translation>reicht in 19 von 20 Fällen, bei %1</translation>
    </message>
    <message>
        <source>first flower</source>
        <translation>erste Blüte</translation>
    </message>
    <message>
        <source>full leaf</source>
        <translation>volles Laub</translation>
    </message>
    <message>
        <source>first ripe</source>
        <translation>erste Reife</translation>
    </message>
    <message>
        <source>What would help: %1</source>
        <translation>Was helfen würde: %1</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>in a mix at %1</source>
        <translation>in Erde von %1</translation>
    </message>
    <message>
        <source>, warmed</source>
        <translation>, erwärmt</translation>
    </message>
    <message>
        <source>; best at %1 to %2</source>
        <translation>; am besten %1 bis %2</translation>
    </message>
    <message>
        <source>Sow indoors</source>
        <translation>Drinnen aussäen</translation>
    </message>
    <message>
        <source>Comes up</source>
        <translation>Geht auf</translation>
    </message>
    <message>
        <source>Harden off from</source>
        <translation>Abhärten ab</translation>
    </message>
    <message>
        <source>two weeks, a little longer each day</source>
        <translation>zwei Wochen, jeden Tag etwas länger</translation>
    </message>
    <message>
        <source>Plant out</source>
        <translation>Auspflanzen</translation>
    </message>
    <message>
        <source>%1 for a night at %2 still to come; soil %3</source>
        <translation>%1, dass noch eine Nacht mit %2 oder weniger kommt; Boden %3</translation>
    </message>
    <message>
        <source>Sow outdoors</source>
        <translation>Draußen aussäen</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>soil %1</source>
        <translation>Boden %1</translation>
    </message>
    <message>
        <source>sown on the first day</source>
        <translation>am ersten Tag gesät</translation>
    </message>
    <message>
        <source>quick to slow sorts</source>
        <translation>schnelle bis langsame Sorten</translation>
    </message>
    <message>
        <source>Last useful sowing</source>
        <translation>Letzte sinnvolle Aussaat</translation>
    </message>
    <message>
        <source>all year</source>
        <translation>das ganze Jahr</translation>
    </message>
    <message>
        <source>nothing ends the season here</source>
        <translation>nichts beendet hier die Saison</translation>
    </message>
    <message>
        <source>The lot is past use: even the best it can be lies below the %1. Sow the rest thickly for what it gives, or buy new.</source>
        <translation>Der Samen ist hinüber: Selbst im besten Fall liegt er unter %1. Den Rest dicht aussäen für das, was er gibt, oder neu kaufen.</translation>
    </message>
    <message>
        <source>The lot is %1 years old; such seed usually keeps %2 (common practice, no source). Count ten in a damp cloth first.</source>
        <translation>Das Tütchen ist %1 Jahre alt; solcher Samen hält meist %2 (übliche Praxis, ohne Quelle). Erst zehn im feuchten Tuch zählen.</translation>
    </message>
    <message>
        <source>Nothing is left of the lot.</source>
        <translation>In dem Tütchen ist nichts mehr.</translation>
    </message>
    <message>
        <source>The lot has %1 seeds left, fewer than the %2 that are needed.</source>
        <translation>In dem Tütchen sind noch %1 Samen, weniger als die nötigen %2.</translation>
    </message>
    <message>
        <source>Depth, spacing and days to readiness are common practice without a source. How sure the figures of this crop are: %1. </source>
        <translation>Tiefe, Abstand und Tage bis zur Reife sind übliche Praxis, ohne Quelle. Wie sicher die Angaben zu dieser Kultur sind: %1. </translation>
    </message>
    <message>
        <source>Nothing comes up at %1; it wants %2 to %3.</source>
        <translation>Bei %1 geht nichts auf; nötig sind %2 bis %3.</translation>
    </message>
    <message>
        <source>The counting is over.</source>
        <translation>Die Zählung ist zu Ende.</translation>
    </message>
    <message>
        <source>Comes up %1 at %2; about %3 to be expected by today.</source>
        <translation>Geht %1 auf, bei %2; bis heute sind etwa %3 zu erwarten.</translation>
    </message>
    <message>
        <source> That is fewer than 19 of 20 such trays would show.</source>
        <translation> Das ist weniger, als 19 von 20 solchen Schalen zeigen würden.</translation>
    </message>
    <message>
        <source>Tray %1, sown %2</source>
        <translation>Schale %1, gesät %2</translation>
    </message>
    <message>
        <source>%1: %2 of %3 up. %4</source>
        <translation>%1: %2 von %3 aufgegangen. %4</translation>
    </message>
</context>
<context>
    <name>SeedSheet</name>
    <message>
        <source>No lot of seed is kept yet. A packet is entered on the page Seeds, or with: lathhouse add lot.</source>
        <translation>Noch keine Samenpartie. Ein Tütchen wird auf der Seite Samen eingetragen oder mit: lathhouse add lot.</translation>
    </message>
    <message>
        <source>packed %1</source>
        <translation>abgepackt %1</translation>
    </message>
    <message>
        <source>%1 seeds left</source>
        <translation>noch %1 Samen</translation>
    </message>
    <message>
        <source>%1 come up, 9 in 10: %2 to %3 %, %4</source>
        <translation>%1 gehen auf, 9 von 10: %2 bis %3 %, %4</translation>
    </message>
    <message>
        <source> · </source>
        <translation> · </translation>
    </message>
    <message>
        <source>The tables have no such crop, so nothing is known of its sowing.</source>
        <translation>Die Tabellen kennen diese Kultur nicht, über ihre Aussaat ist also nichts bekannt.</translation>
    </message>
    <message>
        <source>%1; %2.</source>
        <translation>%1; %2.</translation>
    </message>
    <message>
        <source>%1 of %2 up</source>
        <translation>%1 von %2 aufgegangen</translation>
    </message>
    <message>
        <source>date, up</source>
        <translation>Tag, aufgegangen</translation>
    </message>
    <message>
        <source>Where the numbers come from</source>
        <translation>Woher die Zahlen kommen</translation>
    </message>
    <message>
        <source>Dates are chances from the nights and soil of the place, not promises.</source>
        <translation>Die Daten sind Wahrscheinlichkeiten aus Nächten und Boden des Ortes, keine Zusagen.</translation>
    </message>
</context>
<context>
    <name>SeedsPage</name>
    <message>
        <source>Seeds</source>
        <translation>Samen</translation>
    </message>
    <message>
        <source>By sowing date</source>
        <translation>Nach Saatdatum</translation>
    </message>
    <message>
        <source>Key N changes the order</source>
        <translation>Taste N ändert die Reihenfolge</translation>
    </message>
    <message>
        <source>By name</source>
        <translation>Nach Namen</translation>
    </message>
    <message>
        <source>Any crop, for its sowing sheet</source>
        <translation>Beliebige Kultur, für ihr Saatblatt</translation>
    </message>
    <message>
        <source>Any crop</source>
        <translation>Beliebige Kultur</translation>
    </message>
    <message>
        <source>What can be sown now</source>
        <translation>Was jetzt gesät werden kann</translation>
    </message>
    <message>
        <source>Every crop of the tables, for this place</source>
        <translation>Jede Kultur der Tabellen, für diesen Ort</translation>
    </message>
    <message>
        <source>Print sheet</source>
        <translation>Blatt drucken</translation>
    </message>
    <message>
        <source>Control and P. All lots and trays as a PDF.</source>
        <translation>Strg und P. Alle Tütchen und Schalen als PDF.</translation>
    </message>
    <message>
        <source>Add a lot</source>
        <translation>Tütchen anlegen</translation>
    </message>
    <message>
        <source>Back to the lots</source>
        <translation>Zurück zu den Tütchen</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Read again</source>
        <translation>Neu lesen</translation>
    </message>
    <message>
        <source>Key F5. Reads the household anew.</source>
        <translation>Taste F5. Liest den Haushalt neu.</translation>
    </message>
    <message>
        <source>The lots are being worked out.</source>
        <translation>Die Tütchen werden ausgearbeitet.</translation>
    </message>
    <message>
        <source>No lot of seed is known yet. With a packet here its germination is followed by your own counts, and its sowing comes into the round. Add one with the button above.</source>
        <translation>Noch ist keine Samenpartie bekannt. Mit einem Tütchen hier folgt die Keimung der eigenen Zählung, und die Aussaat kommt in den Rundgang. Eine mit dem Knopf oben anlegen.</translation>
    </message>
    <message>
        <source>Until then write a crop above for its sowing sheet.</source>
        <translation>Bis dahin oben eine Kultur eintippen, für ihr Saatblatt.</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Tütchen</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>Of 100, how many come up</source>
        <translation>Von 100, wie viele aufgehen</translation>
    </message>
    <message>
        <source>Come up</source>
        <translation>Gehen auf</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Als Nächstes</translation>
    </message>
    <message>
        <source>Lots of seed</source>
        <translation>Samenpartien</translation>
    </message>
    <message>
        <source>Filled dot: your own counts. Open dot: packet or kind only. Line: 9 in 10.</source>
        <translation>Gefüllter Punkt: eigene Zählung. Offener Punkt: nur Tütchen oder Art. Linie: 9 von 10.</translation>
    </message>
    <message>
        <source>Control and Z, or U. Takes back what was counted last in this window.</source>
        <translation>Strg und Z, oder U. Nimmt zurück, was in diesem Fenster zuletzt gezählt wurde.</translation>
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
        <translation>Die Karte speichern als</translation>
    </message>
    <message>
        <source>Keep the sheet as</source>
        <translation>Das Blatt speichern als</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Drawings (*.svg)</source>
        <translation>Zeichnungen (*.svg)</translation>
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
        <translation>freier Platz</translation>
    </message>
    <message>
        <source>free</source>
        <translation>frei</translation>
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
        <translation>sortiert, vom Letzten</translation>
    </message>
    <message>
        <source>sorted, from the first</source>
        <translation>sortiert, vom Ersten</translation>
    </message>
    <message>
        <source>sorts the table by this</source>
        <translation>sortiert die Tabelle danach</translation>
    </message>
</context>
<context>
    <name>SowingActs</name>
    <message>
        <source>Open the lot in Seeds</source>
        <translation>Das Tütchen bei den Samen öffnen</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Write down a sowing</source>
        <translation>Eine Aussaat aufschreiben</translation>
    </message>
    <message>
        <source>What can be sown now</source>
        <translation>Was jetzt gesät werden kann</translation>
    </message>
</context>
<context>
    <name>SowingBarPainter</name>
    <message>
        <source>indoors</source>
        <translation>drinnen</translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation>draußen</translation>
    </message>
    <message>
        <source>sow</source>
        <translation>säen</translation>
    </message>
    <message>
        <source>plant out</source>
        <translation>auspflanzen</translation>
    </message>
    <message>
        <source>up</source>
        <translation>auf</translation>
    </message>
    <message>
        <source>last useful sowing</source>
        <translation>letzte sinnvolle Aussaat</translation>
    </message>
</context>
<context>
    <name>SowingCalendar</name>
    <message>
        <source>What can be sown here in the next</source>
        <translation>Was hier gesät werden kann in den nächsten</translation>
    </message>
    <message>
        <source>7 days</source>
        <translation>7 Tagen</translation>
    </message>
    <message>
        <source>30 days</source>
        <translation>30 Tagen</translation>
    </message>
    <message>
        <source>90 days</source>
        <translation>90 Tagen</translation>
    </message>
    <message>
        <source>Press a crop for its sowing sheet.</source>
        <translation>Eine Kultur drücken für ihr Aussaatblatt.</translation>
    </message>
    <message>
        <source>Nothing in these days; look farther ahead.</source>
        <translation>Nichts in diesen Tagen; weiter vorausschauen.</translation>
    </message>
    <message>
        <source>What can be sown</source>
        <translation>Was gesät werden kann</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2; ready from %3</source>
        <translation>%1, %2; so weit ab %3</translation>
    </message>
</context>
<context>
    <name>SowingPane</name>
    <message>
        <source>One plant fewer</source>
        <translation>Eine Pflanze weniger</translation>
    </message>
    <message>
        <source>One plant more</source>
        <translation>Eine Pflanze mehr</translation>
    </message>
    <message>
        <source>Trays stand at</source>
        <translation>Die Schalen stehen bei</translation>
    </message>
    <message>
        <source>How warm it is where trays stand, blank for the usual</source>
        <translation>Wie warm es ist, wo die Schalen stehen, leer für das Übliche</translation>
    </message>
    <message>
        <source>68, as usual</source>
        <translation>68, wie üblich</translation>
    </message>
    <message>
        <source>20, as usual</source>
        <translation>20, wie üblich</translation>
    </message>
    <message>
        <source>Risk you accept of a night that damages them outdoors</source>
        <translation>Risiko, dass ihnen draußen eine Nacht schadet</translation>
    </message>
    <message>
        <source>The year of this sowing</source>
        <translation>Das Jahr dieser Aussaat</translation>
    </message>
    <message>
        <source>Dates of the sowing</source>
        <translation>Daten der Aussaat</translation>
    </message>
</context>
<context>
    <name>SowingRows</name>
    <message>
        <source>Sowings</source>
        <translation>Aussaaten</translation>
    </message>
    <message>
        <source>ring: sow · bracket: comes up · steps: hardening · slash: first ripe or in flower</source>
        <translation>Ring: säen · Klammer: geht auf · Stufen: abhärten · Schrägstrich: erste Reife oder Blüte</translation>
    </message>
    <message>
        <source>Its lot: Enter, or press twice</source>
        <translation>Sein Tütchen: Eingabetaste oder zweimal drücken</translation>
    </message>
</context>
<context>
    <name>SpotChips</name>
    <message>
        <source>Up and Down go through the spots</source>
        <translation>Auf und Ab gehen durch die Plätze</translation>
    </message>
</context>
<context>
    <name>SpotMeasures</name>
    <message>
        <source>Glass, width</source>
        <translation>Glas, Breite</translation>
    </message>
    <message>
        <source>Opening, width</source>
        <translation>Öffnung, Breite</translation>
    </message>
    <message>
        <source>Glass, height</source>
        <translation>Glas, Höhe</translation>
    </message>
    <message>
        <source>Opening, height</source>
        <translation>Öffnung, Höhe</translation>
    </message>
    <message>
        <source>Pot behind it</source>
        <translation>Topf dahinter</translation>
    </message>
    <message>
        <source>Its lower edge above the leaves</source>
        <translation>Unterkante über den Blättern</translation>
    </message>
    <message>
        <source>Its middle right of the pot</source>
        <translation>Mitte rechts vom Topf</translation>
    </message>
    <message>
        <source>Roof or slab above it, depth</source>
        <translation>Dach oder Platte darüber, Tiefe</translation>
    </message>
    <message>
        <source>House opposite</source>
        <translation>Haus gegenüber</translation>
    </message>
    <message>
        <source>Wall behind</source>
        <translation>Wand dahinter</translation>
    </message>
    <message>
        <source>Panes, one behind the other</source>
        <translation>Scheiben hintereinander</translation>
    </message>
    <message>
        <source>Light that gets through</source>
        <translation>Licht, das durchkommt</translation>
    </message>
    <message>
        <source>In high summer</source>
        <translation>Im Hochsommer</translation>
    </message>
    <message>
        <source>In midwinter</source>
        <translation>Mitten im Winter</translation>
    </message>
    <message>
        <source>Nights milder by</source>
        <translation>Nächte milder um</translation>
    </message>
    <message>
        <source>Right to about</source>
        <translation>Stimmt auf etwa</translation>
    </message>
    <message>
        <source>With a minus where it lies below them</source>
        <translation>Mit Minus, wo sie darunter liegt</translation>
    </message>
    <message>
        <source>Looking out; with a minus to the left</source>
        <translation>Beim Blick hinaus; nach links mit Minus</translation>
    </message>
    <message>
        <source>How high it stands above the horizon</source>
        <translation>Wie hoch über dem Horizont</translation>
    </message>
    <message>
        <source>Past frame, dirt, mesh, slats or curtain</source>
        <translation>Vorbei an Rahmen, Schmutz, Netz, Latten oder Vorhang</translation>
    </message>
    <message>
        <source>Than the open air; with a minus where they are colder</source>
        <translation>Als im Freien; mit Minus, wo sie kälter sind</translation>
    </message>
    <message>
        <source>Two chances in three that it lies that near</source>
        <translation>Zwei Mal von drei liegt es so nahe</translation>
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
        <translation>Beide Lichtwerte angeben oder keinen.</translation>
    </message>
    <message>
        <source>“%1” is not a number; leave both fields blank for the light of the window.</source>
        <translation>„%1“ ist keine Zahl; beide Felder leer lassen für das Licht des Fensters.</translation>
    </message>
    <message>
        <source>“%1” is not a number; leave the field blank for the usual figure.</source>
        <translation>„%1“ ist keine Zahl; das Feld leer lassen für den üblichen Wert.</translation>
    </message>
    <message>
        <source>Panes are counted in whole numbers.</source>
        <translation>Scheiben zählen in ganzen Zahlen.</translation>
    </message>
    <message>
        <source>This lies from %1 to %2.</source>
        <translation>Das liegt zwischen %1 und %2.</translation>
    </message>
    <message>
        <source>This lies from %1 to %2 %3.</source>
        <translation>Das liegt zwischen %1 und %2 %3.</translation>
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
        <translation>Wo können Töpfe stehen?</translation>
    </message>
    <message>
        <source>One press adds a spot; change what is different at your home.</source>
        <translation>Ein Klick legt einen Platz an; ändern, was zu Hause anders ist.</translation>
    </message>
    <message>
        <source>The spots will stand here. The year carries each plant between them.</source>
        <translation>Hier werden die Plätze stehen. Das Jahr trägt jede Pflanze zwischen ihnen.</translation>
    </message>
    <message>
        <source>Spots</source>
        <translation>Plätze</translation>
    </message>
    <message>
        <source>The spot %1</source>
        <translation>Der Platz %1</translation>
    </message>
    <message>
        <source>What you call it</source>
        <translation>Wie er heißt</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was er ist</translation>
    </message>
    <message>
        <source>The house wall behind it faces; press again where there is none</source>
        <translation>Wohin die Hauswand dahinter schaut; noch einmal klicken, wo keine ist</translation>
    </message>
    <message>
        <source>Which way it looks</source>
        <translation>Wohin er schaut</translation>
    </message>
    <message>
        <source>Pots that fit</source>
        <translation>Töpfe, die passen</translation>
    </message>
    <message>
        <source>Winter nights</source>
        <translation>Winternächte</translation>
    </message>
    <message>
        <source>Summer nights</source>
        <translation>Sommernächte</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Weniger</translation>
    </message>
    <message>
        <source>Measured there</source>
        <translation>Dort gemessen</translation>
    </message>
    <message>
        <source>Measured at the window</source>
        <translation>Am Fenster gemessen</translation>
    </message>
    <message>
        <source>Measured at its opening</source>
        <translation>An der Öffnung gemessen</translation>
    </message>
    <message>
        <source>Sizes, distances, what stands opposite, light and nights; blank fields keep the usual figure</source>
        <translation>Größen, Abstände, was gegenüber steht, Licht und Nächte; leere Felder behalten den üblichen Wert</translation>
    </message>
    <message>
        <source>What is round it</source>
        <translation>Was rundum steht</translation>
    </message>
    <message>
        <source>The window</source>
        <translation>Das Fenster</translation>
    </message>
    <message>
        <source>The open side</source>
        <translation>Die offene Seite</translation>
    </message>
    <message>
        <source>A day’s light, where you measured it or know it</source>
        <translation>Licht eines Tages, wo es gemessen oder bekannt ist</translation>
    </message>
    <message>
        <source>Moles on a level leaf. These two count in place of what the fields above give; hours of sun are then not told.</source>
        <translation>Mol auf ein waagrechtes Blatt. Diese beiden gelten statt dessen, was die Felder darüber ergeben; Sonnenstunden werden dann nicht angegeben.</translation>
    </message>
    <message>
        <source>Its nights against the open air</source>
        <translation>Seine Nächte gegen die freie Luft</translation>
    </message>
    <message>
        <source>What the plan begins from; nights that you log then teach it.</source>
        <translation>Davon geht der Plan aus; eingetragene Nächte lehren ihn dann mehr.</translation>
    </message>
    <message>
        <source>A child or an animal gets at the pots there</source>
        <translation>Ein Kind oder ein Tier kommt an die Töpfe dort</translation>
    </message>
    <message>
        <source>Poisonous and spiny plants are then kept elsewhere</source>
        <translation>Giftige und stachlige Pflanzen stehen dann anderswo</translation>
    </message>
    <message>
        <source>Away from all other plants: fit for infested ones</source>
        <translation>Abseits aller anderen Pflanzen: tauglich für befallene</translation>
    </message>
    <message>
        <source>Wind tears at leaves and tips pots there</source>
        <translation>Wind zerrt dort an Blättern und wirft Töpfe um</translation>
    </message>
    <message>
        <source>Take %1 off the list</source>
        <translation>%1 von der Liste nehmen</translation>
    </message>
</context>
<context>
    <name>SprayAsk</name>
    <message>
        <source>Before a spray: %1</source>
        <translation>Vor dem Spritzen: %1</translation>
    </message>
    <message>
        <source>What is to be sprayed or wiped on</source>
        <translation>Was gespritzt oder aufgewischt wird</translation>
    </message>
    <message>
        <source>h</source>
        <translation>h</translation>
    </message>
    <message>
        <source>Blank: none was tried</source>
        <translation>Leer: keins wurde probiert</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Blank: long ago</source>
        <translation>Leer: lange her</translation>
    </message>
    <message>
        <source>Blank: just now</source>
        <translation>Leer: gerade eben</translation>
    </message>
    <message>
        <source>Another kind of plant</source>
        <translation>Eine andere Pflanzenart</translation>
    </message>
    <message>
        <source>Blank: %1. Its name, for a plant that is not among yours</source>
        <translation>Leer: %1. Sonst der Name der Art, für eine Pflanze, die nicht zum Haushalt gehört</translation>
    </message>
    <message>
        <source>A leaf tried today is looked at from %1 to %2.</source>
        <translation>Ein heute behandeltes Probeblatt von %1 bis %2 ansehen.</translation>
    </message>
    <message>
        <source>Nothing is written of a plant that is not among yours.</source>
        <translation>Von einer Pflanze, die nicht zum Haushalt gehört, wird nichts eingetragen.</translation>
    </message>
    <message>
        <source>soap</source>
        <translation>Seife</translation>
    </message>
    <message>
        <source>oil</source>
        <translation>Öl</translation>
    </message>
    <message>
        <source>neem</source>
        <translation>Neem</translation>
    </message>
    <message>
        <source>alcohol</source>
        <translation>Alkohol</translation>
    </message>
    <message>
        <source>what roots take up</source>
        <translation>was Wurzeln aufnehmen</translation>
    </message>
    <message>
        <source>something else</source>
        <translation>etwas anderes</translation>
    </message>
    <message>
        <source>Write hours, 0 to 1000, or leave it blank.</source>
        <translation>Stunden schreiben, 0 bis 1000, oder leer lassen.</translation>
    </message>
    <message>
        <source>Write days, or leave it blank.</source>
        <translation>Tage schreiben oder leer lassen.</translation>
    </message>
    <message>
        <source>“%1” is no warmth at which anybody sprays.</source>
        <translation>„%1“ ist keine Temperatur, bei der jemand spritzt.</translation>
    </message>
    <message>
        <source>Not answered yet</source>
        <translation>Noch nicht beantwortet</translation>
    </message>
    <message>
        <source>%1: treated today.</source>
        <translation>%1: heute behandelt.</translation>
    </message>
</context>
<context>
    <name>StartWindow</name>
    <message>
        <source>Lathhouse · First start</source>
        <translation>Lathhouse · Erster Start</translation>
    </message>
</context>
<context>
    <name>StepLath</name>
    <message>
        <source>Step %1, %2</source>
        <translation>Schritt %1, %2</translation>
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
        <translation>Heute Nacht</translation>
    </message>
    <message>
        <source>Tonight is being worked out.</source>
        <translation>Die Nacht wird ausgearbeitet.</translation>
    </message>
    <message>
        <source>No spot outdoors is known, so nights are not followed. Add one under Home, Spots.</source>
        <translation>Es ist kein Platz im Freien bekannt, den Nächten wird also nicht gefolgt. Einen anlegen unter Zuhause, Plätze.</translation>
    </message>
    <message>
        <source>Tonight’s low, middle %1</source>
        <translation>Tiefstwert heute Nacht, im Mittel %1</translation>
    </message>
    <message>
        <source>What must come in tonight is in.</source>
        <translation>Was heute Nacht herein muss, ist drinnen.</translation>
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
        <translation>Anderen Tiefstwert für heute Nacht eingeben</translation>
    </message>
    <message>
        <source>It counts instead of the one that is kept.</source>
        <translation>Er gilt statt des gespeicherten.</translation>
    </message>
    <message>
        <source>File with ten nights</source>
        <translation>Datei mit zehn Nächten</translation>
    </message>
    <message>
        <source>Forecasts (*.csv *.json *.txt)</source>
        <translation>Vorhersagen (*.csv *.json *.txt)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>What it calls the columns, where otherwise; may be left blank</source>
        <translation>Eigene Spaltennamen der Datei, falls sie anders heißen (kann leer bleiben)</translation>
    </message>
    <message>
        <source>its own names: date=Day,low_c=Min</source>
        <translation>eigene Namen: date=Tag,low_c=Min</translation>
    </message>
    <message>
        <source>How many days ago the forecast was made, blank for today</source>
        <translation>Vor wie vielen Tagen die Vorhersage gemacht wurde, leer für heute</translation>
    </message>
    <message>
        <source>made today</source>
        <translation>von heute</translation>
    </message>
    <message>
        <source>days ago</source>
        <translation>Tage her</translation>
    </message>
    <message>
        <source>Take it</source>
        <translation>Aufnehmen</translation>
    </message>
    <message>
        <source>Keeps its nights as the forecast</source>
        <translation>Speichert ihre Nächte als Vorhersage</translation>
    </message>
    <message>
        <source>A table with a line a night: date (the morning after), low_c or low_f; sky, wind and dew_point_c where they are known.</source>
        <translation>Eine Tabelle mit einer Zeile je Nacht: date (der Morgen danach), low_c oder low_f; sky, wind und dew_point_c, wo sie bekannt sind.</translation>
    </message>
    <message>
        <source>Night to</source>
        <translation>Nacht auf</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>9 in 10</source>
        <translation>9 von 10</translation>
    </message>
    <message>
        <source>from</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>Night to, middle, 9 in 10, from</source>
        <translation>Nacht auf, Mitte, 9 von 10, aus</translation>
    </message>
    <message>
        <source>As a table</source>
        <translation>Als Tabelle</translation>
    </message>
    <message>
        <source>Key T</source>
        <translation>Taste T</translation>
    </message>
    <message>
        <source>Plants outdoors tonight</source>
        <translation>Pflanzen heute Nacht draußen</translation>
    </message>
    <message>
        <source>tonight’s low at the plant, %1; striped: harms</source>
        <translation>Tief heute Nacht an der Pflanze, %1; gestreift: schadet</translation>
    </message>
    <message>
        <source>Risk you accept in one of these nights</source>
        <translation>Eingegangenes Risiko in einer dieser Nächte</translation>
    </message>
    <message>
        <source>For looking at the nights here: the tasks of the round keep to 1 in 10.</source>
        <translation>Zum Ansehen der Nächte hier: Die Arbeiten des Rundgangs bleiben bei 1 von 10.</translation>
    </message>
</context>
<context>
    <name>TonightFacts</name>
    <message>
        <source>tonight</source>
        <translation>heute Nacht</translation>
    </message>
    <message>
        <source>in the night to %1</source>
        <translation>in der Nacht auf %1</translation>
    </message>
    <message>
        <source>No forecast is kept, so these nights are what the season usually brings and nothing is said about carrying in. Type tonight’s low below, or take a file with ten nights.</source>
        <translation>Es ist keine Vorhersage gespeichert, diese Nächte sind also, was die Jahreszeit gewöhnlich bringt, und zum Hereintragen wird nichts gesagt. Das Tief heute Nacht unten eintippen oder eine Datei mit zehn Nächten aufnehmen.</translation>
    </message>
    <message>
        <source>The forecast has no low for tonight. Type it below.</source>
        <translation>Die Vorhersage hat kein Tief für heute Nacht. Unten eintippen.</translation>
    </message>
    <message>
        <source>Forecast for %1 of ten nights; the paler ones are what the season usually brings. More come in with a file.</source>
        <translation>Vorhersage für %1 von zehn Nächten; die blasseren sind, was die Jahreszeit gewöhnlich bringt. Mehr kommen mit einer Datei herein.</translation>
    </message>
    <message>
        <source>forecast</source>
        <translation>Vorhersage</translation>
    </message>
    <message>
        <source>season alone</source>
        <translation>nur Jahreszeit</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1: middle low %2, 9 in 10: %3, %4</source>
        <translation>%1: mittleres Tief %2, 9 von 10: %3, %4</translation>
    </message>
    <message>
        <source>Night lows at %1, next ten nights, %2</source>
        <translation>Nachttiefs: %1, die nächsten zehn Nächte, %2</translation>
    </message>
    <message>
        <source>A night is named by its morning. Box: half of such nights; line: 9 in 10. Key T: the same as a table.</source>
        <translation>Eine Nacht heißt nach ihrem Morgen. Kasten: die Hälfte solcher Nächte; Linie: 9 von 10. Taste T: dasselbe als Tabelle.</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>(%1)</translation>
    </message>
    <message>
        <source>9 nights in 10 like this: %1 to %2</source>
        <translation>9 von 10 solchen Nächten: %1 bis %2</translation>
    </message>
    <message>
        <source>by the season, 9 in 10: %1 to %2</source>
        <translation>nach der Jahreszeit, 9 von 10: %1 bis %2</translation>
    </message>
    <message>
        <source>%1 there, from %2 logged nights</source>
        <translation>dort %1, aus %2 eingetragenen Nächten</translation>
    </message>
    <message>
        <source>%1 there, a guess until nights are logged</source>
        <translation>dort %1, geschätzt, bis Nächte eingetragen sind</translation>
    </message>
    <message>
        <source>, clear and calm</source>
        <translation>, klar und windstill</translation>
    </message>
    <message>
        <source>, cloud or wind</source>
        <translation>, Wolken oder Wind</translation>
    </message>
    <message>
        <source>Forecast %1%2; with the season weighed in, the open air has %3; nights are %4.</source>
        <translation>Vorhersage %1%2; mit dem, was die Jahreszeit sonst bringt, hat die freie Luft %3; Nächte sind %4.</translation>
    </message>
    <message>
        <source>Nights are %1.</source>
        <translation>Nächte sind %1.</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>%1 +%2</source>
        <translation>%1 +%2</translation>
    </message>
    <message>
        <source>carry in, though kept there by hand</source>
        <translation>hereintragen, obwohl von Hand dort festgehalten</translation>
    </message>
    <message>
        <source>carry in</source>
        <translation>hereintragen</translation>
    </message>
    <message>
        <source>may stay</source>
        <translation>darf bleiben</translation>
    </message>
    <message>
        <source>by the season alone</source>
        <translation>nur nach der Jahreszeit</translation>
    </message>
    <message>
        <source>infested: carried last, then wash</source>
        <translation>befallen: zuletzt tragen, danach waschen</translation>
    </message>
    <message>
        <source>suspect: after the clean ones</source>
        <translation>verdächtig: nach den sauberen</translation>
    </message>
    <message>
        <source>%1, %2: %3. %4.</source>
        <translation>%1, %2: %3. %4.</translation>
    </message>
    <message>
        <source>It goes to: %1.</source>
        <translation>Sie kommt nach: %1.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1, middle %2</source>
        <translation>%1, im Mittel %2</translation>
    </message>
    <message>
        <source>9 in 10: %1 to %2</source>
        <translation>9 von 10: %1 bis %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Carry in one plant.</source>
        <translation>Eine Pflanze hereintragen.</translation>
    </message>
    <message>
        <source>Carry in %1 plants.</source>
        <translation>%1 Pflanzen hereintragen.</translation>
    </message>
    <message>
        <source>Nothing to carry in.</source>
        <translation>Nichts hereinzutragen.</translation>
    </message>
    <message>
        <source>No forecast for tonight.</source>
        <translation>Keine Vorhersage für heute Nacht.</translation>
    </message>
    <message>
        <source>No plant stands outdoors.</source>
        <translation>Keine Pflanze steht draußen.</translation>
    </message>
    <message>
        <source>Closest this week: %1, %2 %3.</source>
        <translation>Am knappsten diese Woche: %1, %2 %3.</translation>
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
        <translation>Kälteste Nacht voraus, %1</translation>
    </message>
    <message>
        <source>%1, %2 and %3 more</source>
        <translation>%1, %2 und %3 weitere</translation>
    </message>
    <message>
        <source>%1 more until %2</source>
        <translation>%1 weitere bis %2</translation>
    </message>
</context>
<context>
    <name>TonightPlantRow</name>
    <message>
        <source>%1; damage from %2</source>
        <translation>%1; Schaden ab %2</translation>
    </message>
</context>
<context>
    <name>TrayCells</name>
    <message>
        <source>Cells of %1</source>
        <translation>Zellen von %1</translation>
    </message>
    <message>
        <source>Cell %1 of %2, up</source>
        <translation>Zelle %1 von %2, aufgegangen</translation>
    </message>
    <message>
        <source>Cell %1 of %2, nothing up</source>
        <translation>Zelle %1 von %2, nichts aufgegangen</translation>
    </message>
</context>
<context>
    <name>TrayPane</name>
    <message>
        <source>Trays</source>
        <translation>Schalen</translation>
    </message>
    <message>
        <source>Seeds that went into a tray</source>
        <translation>Samen, die in eine Schale kamen</translation>
    </message>
    <message>
        <source>Seeds</source>
        <translation>Samen</translation>
    </message>
    <message>
        <source>How many days ago it was sown or counted, blank for today</source>
        <translation>Vor wie vielen Tagen gesät oder gezählt wurde, leer für heute</translation>
    </message>
    <message>
        <source>0 days ago</source>
        <translation>vor 0 Tagen</translation>
    </message>
    <message>
        <source>days ago</source>
        <translation>Tage her</translation>
    </message>
    <message>
        <source>Sown today</source>
        <translation>Heute gesät</translation>
    </message>
    <message>
        <source>Sown on that day</source>
        <translation>An diesem Tag gesät</translation>
    </message>
    <message>
        <source>A tray of this lot, to be counted from now on</source>
        <translation>Eine Schale aus diesem Tütchen, die von jetzt an gezählt wird</translation>
    </message>
    <message>
        <source>Where it stands, how warm its mix is and a note may be left out.</source>
        <translation>Wo sie steht, wie warm ihre Erde ist und eine Notiz können fehlen.</translation>
    </message>
    <message>
        <source>How warm the mix is, if it was measured</source>
        <translation>Wie warm die Erde ist, wenn es gemessen wurde</translation>
    </message>
    <message>
        <source>Warmth of the mix</source>
        <translation>Wärme der Erde</translation>
    </message>
    <message>
        <source>Note to the tray, may be left blank</source>
        <translation>Notiz zur Schale, kann leer bleiben</translation>
    </message>
    <message>
        <source>Trays of this lot</source>
        <translation>Schalen aus diesem Tütchen</translation>
    </message>
    <message>
        <source>No tray of this lot yet. Once seeds have gone into one, what comes up is counted here, and your counts tell how much of the lot comes up.</source>
        <translation>Noch keine Schale mit Samen aus diesem Tütchen. Sobald eine gesät ist, wird hier gezählt, was aufgeht, und die eigene Zählung sagt, wie viel aus dem Tütchen aufgeht.</translation>
    </message>
</context>
<context>
    <name>TrayRow</name>
    <message>
        <source>One fewer in %1</source>
        <translation>In %1 einer weniger</translation>
    </message>
    <message>
        <source>Key −</source>
        <translation>Taste −</translation>
    </message>
    <message>
        <source>&lt;b&gt;%1&lt;/b&gt; of %2 up</source>
        <translation>&lt;b&gt;%1&lt;/b&gt; von %2 aufgegangen</translation>
    </message>
    <message>
        <source>%1 of %2 up</source>
        <translation>%1 von %2 aufgegangen</translation>
    </message>
    <message>
        <source>One more in %1</source>
        <translation>In %1 einer mehr</translation>
    </message>
    <message>
        <source>Key +</source>
        <translation>Taste +</translation>
    </message>
    <message>
        <source>no more to come</source>
        <translation>keine mehr zu erwarten</translation>
    </message>
    <message>
        <source>The counting is over; only then does the tray change the lot’s share</source>
        <translation>Die Zählung ist zu Ende; erst dann ändert die Schale den Anteil des Tütchens</translation>
    </message>
    <message>
        <source>Pot seedlings up</source>
        <translation>Sämlinge eintopfen</translation>
    </message>
    <message>
        <source>Seedlings of this tray become plants, each in a pot of its own</source>
        <translation>Sämlinge dieser Schale werden zu Pflanzen, jeder in einem eigenen Topf</translation>
    </message>
</context>
<context>
    <name>Trouble</name>
    <message>
        <source>Write %1</source>
        <translation>%1 schreiben</translation>
    </message>
    <message>
        <source>Puts it into the field; nothing is kept by that</source>
        <translation>Setzt es in das Feld; damit ist noch nichts gespeichert</translation>
    </message>
</context>
<context>
    <name>UndoBar</name>
    <message>
        <source>Control and Z. Takes back what was logged last on this page.</source>
        <translation>Strg und Z. Nimmt zurück, was auf dieser Seite zuletzt eingetragen wurde.</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Control, Shift and Z. Does again what was taken back last.</source>
        <translation>Strg, Umschalt und Z. Tut wieder, was zuletzt zurückgenommen wurde.</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
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
        <translation>Was sie braucht</translation>
    </message>
    <message>
        <source>low of a night</source>
        <translation>Tief einer Nacht</translation>
    </message>
</context>
<context>
    <name>WaterAsk</name>
    <message>
        <source>Water, roots and winter: %1</source>
        <translation>Wasser, Wurzeln und Winter: %1</translation>
    </message>
    <message>
        <source>Looks of the next</source>
        <translation>Nachsehen in den nächsten</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Blank: %1</source>
        <translation>Leer: %1</translation>
    </message>
    <message>
        <source>Write days, 1 to %1.</source>
        <translation>Tage schreiben, 1 bis %1.</translation>
    </message>
    <message>
        <source>It stands at no spot, so nothing can be said; give it one.</source>
        <translation>Sie steht an keinem Platz, darum lässt sich nichts sagen; ihr einen geben.</translation>
    </message>
    <message>
        <source>Look at the mix today: %1.</source>
        <translation>Heute nach der Erde sehen: %1.</translation>
    </message>
    <message>
        <source>Look at the mix on %1: %2.</source>
        <translation>Nach der Erde sehen am %1: %2.</translation>
    </message>
    <message>
        <source>Reckoned from usual weather; heat, wind and a full crown make it sooner. Empty saucers.</source>
        <translation>Nach üblichem Wetter gerechnet; Hitze, Wind und eine volle Krone machen es früher. Untersetzer leeren.</translation>
    </message>
    <message>
        <source>A look is a finger in the mix or the pot lifted: water only what is dry as its kind wants it.</source>
        <translation>Nachsehen heißt ein Finger in der Erde oder den Topf anheben: nur gießen, was so trocken ist, wie seine Art es will.</translation>
    </message>
    <message>
        <source>Last watered on %1.</source>
        <translation>Zuletzt gegossen am %1.</translation>
    </message>
    <message>
        <source>After a watering, a look about every %1 now.</source>
        <translation>Nach dem Gießen zur Zeit nachsehen etwa alle: %1.</translation>
    </message>
    <message>
        <source>Learnt from 1 interval of yours.</source>
        <translation>Gelernt aus 1 Abstand von Ihnen.</translation>
    </message>
    <message>
        <source>Learnt from %1 intervals of yours.</source>
        <translation>Gelernt aus %1 Abständen von Ihnen.</translation>
    </message>
    <message>
        <source>They are short for such a pot: feel before you water.</source>
        <translation>Sie sind kurz für so einen Topf: vor dem Gießen fühlen.</translation>
    </message>
    <message>
        <source>The pot holds about %1 (guessed from its weight) and draws about %2 a day.</source>
        <translation>Der Topf fasst etwa %1 (nach seinem Gewicht geschätzt) und zieht etwa %2 am Tag.</translation>
    </message>
    <message>
        <source>The pot holds %1 and draws about %2 a day.</source>
        <translation>Der Topf fasst %1 und zieht etwa %2 am Tag.</translation>
    </message>
    <message>
        <source>What it draws is rough, from half of it to double, as the size of its crown is not reckoned in: the finger and the weight of the pot decide.</source>
        <translation>Was er zieht, ist grob, von der Hälfte bis zum Doppelten, denn die Größe der Krone ist nicht eingerechnet: Der Finger und das Gewicht des Topfes entscheiden.</translation>
    </message>
    <message>
        <source>Of a full pot roots draw about %1 with ease; a look is due once %2 is gone.</source>
        <translation>Aus einem vollen Topf ziehen Wurzeln etwa %1 leicht; nachgesehen wird, wenn %2 fort sind.</translation>
    </message>
    <message>
        <source>It rests: hardly any water.</source>
        <translation>Sie ruht: kaum Wasser.</translation>
    </message>
    <message>
        <source>It rests: less water.</source>
        <translation>Sie ruht: weniger Wasser.</translation>
    </message>
    <message>
        <source>It must dry right out first.</source>
        <translation>Sie muss erst ganz austrocknen.</translation>
    </message>
    <message>
        <source>Looks, as if it were watered at each</source>
        <translation>Nachsehen, als würde jedes Mal gegossen</translation>
    </message>
    <message>
        <source>feel the mix, or lift the pot</source>
        <translation>die Erde fühlen oder den Topf anheben</translation>
    </message>
    <message>
        <source>None in these days.</source>
        <translation>Keine in diesen Tagen.</translation>
    </message>
    <message>
        <source>And %1 more.</source>
        <translation>Und %1 weitere.</translation>
    </message>
    <message>
        <source>Roots and winter quarters</source>
        <translation>Wurzeln und Winterquartier</translation>
    </message>
    <message>
        <source>In its pot, roots are at risk from %1 on.</source>
        <translation>In ihrem Topf sind die Wurzeln ab %1 in Gefahr.</translation>
    </message>
    <message>
        <source>Its winter by the plan: %1, %2 on the mean, %3 mol/m² of light a day: %4.</source>
        <translation>Ihr Winter nach dem Plan: %1, im Mittel %2, %3 mol/m² Licht am Tag: %4.</translation>
    </message>
    <message>
        <source>Its kind rests cool.</source>
        <translation>Ihre Art ruht kühl.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
</context>
<context>
    <name>YearActs</name>
    <message>
        <source>Open its page</source>
        <translation>Ihre Seite öffnen</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Log something</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Strg+L</translation>
    </message>
    <message>
        <source>Keep it at a spot</source>
        <translation>An einem Platz festhalten</translation>
    </message>
    <message>
        <source>Take off what is pinned</source>
        <translation>Festgehaltenes lösen</translation>
    </message>
</context>
<context>
    <name>YearChart</name>
    <message>
        <source>Night lows, day length and frost through the year</source>
        <translation>Nachttiefs, Tageslänge und Frost durch das Jahr</translation>
    </message>
    <message>
        <source>Day length</source>
        <translation>Tageslänge</translation>
    </message>
    <message>
        <source>sunrise to sunset</source>
        <translation>Sonnenauf- bis -untergang</translation>
    </message>
    <message>
        <source>blue short, straw long</source>
        <translation>blau kurz, gelb lang</translation>
    </message>
    <message>
        <source>Night lows</source>
        <translation>Nachttiefs</translation>
    </message>
    <message>
        <source>open air, %1
9 nights in 10 lie in
the blue band</source>
        <translation>im Freien, %1
9 von 10 Nächten
liegen im Band</translation>
    </message>
</context>
<context>
    <name>YearFoot</name>
    <message>
        <source>Night low</source>
        <translation>Nachttief</translation>
    </message>
    <message>
        <source>9 in 10: %1</source>
        <translation>9 von 10: %1</translation>
    </message>
    <message>
        <source>Frost after this night</source>
        <translation>Frost nach dieser Nacht</translation>
    </message>
    <message>
        <source>Plants outdoors</source>
        <translation>Pflanzen draußen</translation>
    </message>
    <message>
        <source>Fewer</source>
        <translation>Weniger</translation>
    </message>
    <message>
        <source>All numbers</source>
        <translation>Alle Zahlen</translation>
    </message>
    <message>
        <source>Shows every number of this date, and what they rest on.</source>
        <translation>Zeigt jede Zahl dieses Tages und worauf sie beruht.</translation>
    </message>
</context>
<context>
    <name>YearFrom</name>
    <message>
        <source>The year from another date</source>
        <translation>Das Jahr ab einem anderen Tag</translation>
    </message>
    <message>
        <source>Twelve months from there, planned as the plants stand today. It is for looking: nothing of it is kept or pinned.</source>
        <translation>Zwölf Monate von dort an, geplant so, wie die Pflanzen heute stehen. Nur zum Ansehen: nichts davon wird behalten oder festgehalten.</translation>
    </message>
    <message>
        <source>From which date, blank for today</source>
        <translation>Ab welchem Tag, leer für heute</translation>
    </message>
    <message>
        <source>Show the year</source>
        <translation>Das Jahr zeigen</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabetaste</translation>
    </message>
    <message>
        <source>From today</source>
        <translation>Ab heute</translation>
    </message>
    <message>
        <source>The year in which plans are kept.</source>
        <translation>Das Jahr, in dem Pläne behalten werden.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
</context>
<context>
    <name>YearPage</name>
    <message>
        <source>Risk you accept</source>
        <translation>Eingegangenes Risiko</translation>
    </message>
    <message>
        <source>each plant, each way</source>
        <translation>je Pflanze und Weg</translation>
    </message>
    <message>
        <source>for each plant, each way</source>
        <translation>für jede Pflanze, jeden Weg</translation>
    </message>
    <message>
        <source>From another date</source>
        <translation>Ab einem anderen Tag</translation>
    </message>
    <message>
        <source>Key F. The year from a date to come, or as of the first of March.</source>
        <translation>Taste F. Das Jahr ab einem kommenden Tag oder vom ersten März an.</translation>
    </message>
    <message>
        <source>Print sheet</source>
        <translation>Blatt drucken</translation>
    </message>
    <message>
        <source>Control and P. A PDF to hang up.</source>
        <translation>Strg und P. Ein PDF zum Aufhängen.</translation>
    </message>
    <message>
        <source>As a chart</source>
        <translation>Als Diagramm</translation>
    </message>
    <message>
        <source>As a table</source>
        <translation>Als Tabelle</translation>
    </message>
    <message>
        <source>Key T. The same numbers, the same date.</source>
        <translation>Taste T. Dieselben Zahlen, derselbe Tag.</translation>
    </message>
</context>
<context>
    <name>YearPainter</name>
    <message>
        <source>frost in under 1 winter in 10</source>
        <translation>Frost in unter 1 von 10 Wintern</translation>
    </message>
    <message>
        <source>no frost at this place</source>
        <translation>hier kein Frost</translation>
    </message>
    <message>
        <source>frost in every month, no safe window</source>
        <translation>Frost in jedem Monat, keine sichere Zeit</translation>
    </message>
    <message>
        <source>chance per night, no season here</source>
        <translation>Wahrscheinlichkeit je Nacht, hier keine Jahreszeit</translation>
    </message>
    <message>
        <source>last frost: half by %1,</source>
        <translation>letzter Frost: Hälfte bis %1,</translation>
    </message>
    <message>
        <source>last frost: half the springs by %1,</source>
        <translation>letzter Frost: Hälfte der Frühjahre bis %1,</translation>
    </message>
    <message>
        <source>first frost: half by %1,</source>
        <translation>erster Frost: Hälfte bis %1,</translation>
    </message>
    <message>
        <source>first frost: half the autumns by %1,</source>
        <translation>erster Frost: Hälfte der Herbste bis %1,</translation>
    </message>
    <message>
        <source>last frost: 1 year in 10 after %1</source>
        <translation>letzter Frost: 1 von 10 Jahren nach %1</translation>
    </message>
    <message>
        <source>1 in 10 after %1</source>
        <translation>1 von 10 nach %1</translation>
    </message>
    <message>
        <source>1 spring in 10 after %1</source>
        <translation>1 Frühjahr von 10 nach %1</translation>
    </message>
    <message>
        <source>first frost: 1 year in 10 by %1</source>
        <translation>erster Frost: 1 von 10 Jahren bis %1</translation>
    </message>
    <message>
        <source>1 in 10 by %1</source>
        <translation>1 von 10 bis %1</translation>
    </message>
    <message>
        <source>1 autumn in 10 by %1</source>
        <translation>1 Herbst von 10 bis %1</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 am %2</translation>
    </message>
    <message>
        <source>middle night low</source>
        <translation>mittleres Nachttief</translation>
    </message>
    <message>
        <source>frost line</source>
        <translation>Frostlinie</translation>
    </message>
    <message>
        <source>9 nights in 10 within</source>
        <translation>9 von 10 Nächten hierin</translation>
    </message>
    <message>
        <source>1 night in 20 is warmer</source>
        <translation>1 von 20 Nächten ist wärmer</translation>
    </message>
    <message>
        <source>1 night in 20 is colder</source>
        <translation>1 von 20 Nächten ist kälter</translation>
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
        <translation>Zahlen vom %1</translation>
    </message>
    <message>
        <source>Chance of a harmful night</source>
        <translation>Schadnacht, wie wahrscheinlich</translation>
    </message>
    <message>
        <source>Keep this plan</source>
        <translation>Diesen Plan behalten</translation>
    </message>
    <message>
        <source>Later plans change it only where that pays, and name each change.</source>
        <translation>Spätere Pläne ändern ihn nur, wo es sich lohnt, und nennen jede Änderung.</translation>
    </message>
    <message>
        <source>For looking: nothing of this year is kept or pinned.</source>
        <translation>Nur zum Ansehen: nichts von diesem Jahr wird behalten oder festgehalten.</translation>
    </message>
    <message>
        <source>From another date</source>
        <translation>Ab einem anderen Tag</translation>
    </message>
    <message>
        <source>Key F. The year from a date to come, or as of the first of March.</source>
        <translation>Taste F. Das Jahr ab einem kommenden Tag oder vom ersten März an.</translation>
    </message>
</context>
<context>
    <name>YearSheet</name>
    <message>
        <source>in trays</source>
        <translation>in Schalen</translation>
    </message>
    <message>
        <source>out</source>
        <translation>draußen</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <translation>%1 ab %2</translation>
    </message>
    <message>
        <source>sow %1 to %2</source>
        <translation>säen %1 bis %2</translation>
    </message>
    <message>
        <source>The year from %1</source>
        <translation>Das Jahr ab %1</translation>
    </message>
    <message>
        <source>an invented example</source>
        <translation>ein erfundenes Beispiel</translation>
    </message>
    <message>
        <source>1 plant</source>
        <translation>1 Pflanze</translation>
    </message>
    <message>
        <source>%1 plants</source>
        <translation>%1 Pflanzen</translation>
    </message>
    <message>
        <source>1 sowing</source>
        <translation>1 Aussaat</translation>
    </message>
    <message>
        <source>%1 sowings</source>
        <translation>%1 Aussaaten</translation>
    </message>
    <message>
        <source> · </source>
        <translation> · </translation>
    </message>
    <message>
        <source>Risk accepted: %1 for each plant, each way · %2</source>
        <translation>Angenommenes Risiko: %1 für jede Pflanze, jeden Weg · %2</translation>
    </message>
    <message>
        <source>Day length</source>
        <translation>Tageslänge</translation>
    </message>
    <message>
        <source>grey short, white long</source>
        <translation>grau kurz, weiß lang</translation>
    </message>
    <message>
        <source>Night lows</source>
        <translation>Nachttiefs</translation>
    </message>
    <message>
        <source>open air, %1; 9 nights in 10 lie in the grey band</source>
        <translation>im Freien, %1; 9 von 10 Nächten liegen im grauen Band</translation>
    </message>
    <message>
        <source>%1 of %2 on this sheet, %3</source>
        <translation>%1 von %2 auf diesem Blatt, %3</translation>
    </message>
    <message>
        <source>Plants</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keine</translation>
    </message>
    <message>
        <source>Sowings</source>
        <translation>Aussaaten</translation>
    </message>
    <message>
        <source>ring: sow · bracket: comes up · steps: hardening and planting out · slash: first ready</source>
        <translation>Ring: säen · Klammer: geht auf · Stufen: abhärten und auspflanzen · Schrägstrich: erste Ernte oder Blüte</translation>
    </message>
    <message>
        <source>by the spot where the year begins</source>
        <translation>nach dem Platz, an dem das Jahr beginnt</translation>
    </message>
    <message>
        <source>by name</source>
        <translation>nach Namen</translation>
    </message>
    <message>
        <source>in order of going out</source>
        <translation>nach dem Tag des Hinausgehens</translation>
    </message>
    <message>
        <source>Look at the forecast before each move.</source>
        <translation>Vor jedem Umstellen die Vorhersage ansehen.</translation>
    </message>
    <message>
        <source>Stepped edge: hardening, or coming-in steps</source>
        <translation>Gestufte Kante: Abhärten, oder Stufen beim Hereinholen</translation>
    </message>
    <message>
        <source>Bracket above an edge: date at 1 in 5 to 1 in 20</source>
        <translation>Klammer über einer Kante: Tag bei 1 von 5 bis 1 von 20</translation>
    </message>
    <message>
        <source>Short ticks below a bar: feed</source>
        <translation>Kurze Striche unter einem Balken: düngen</translation>
    </message>
    <message>
        <source>Spots</source>
        <translation>Plätze</translation>
    </message>
    <message>
        <source>Marks</source>
        <translation>Zeichen</translation>
    </message>
    <message>
        <source>Where the numbers come from</source>
        <translation>Woher die Zahlen kommen</translation>
    </message>
    <message>
        <source>deadly if eaten: keep from children and animals</source>
        <translation>tödlich, wenn gegessen: von Kindern und Tieren fernhalten</translation>
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
        <translation>Tag</translation>
    </message>
    <message>
        <source>Night low, middle</source>
        <translation>Nachttief, Mitte</translation>
    </message>
    <message>
        <source>9 nights in 10</source>
        <translation>9 von 10 Nächten</translation>
    </message>
    <message>
        <source>Frost after this night</source>
        <translation>Frost nach dieser Nacht</translation>
    </message>
    <message>
        <source>Day length</source>
        <translation>Tageslänge</translation>
    </message>
    <message>
        <source>The year from today, a row for each date</source>
        <translation>Das Jahr ab heute, eine Zeile je Tag</translation>
    </message>
</context>
<context>
    <name>lathhouse::chart</name>
    <message>
        <source>home</source>
        <translation>Zuhause</translation>
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
        <translation>W</translation>
    </message>
    <message>
        <source>E</source>
        <translation>O</translation>
    </message>
    <message>
        <source>night 1</source>
        <translation>Nacht 1</translation>
    </message>
    <message>
        <source>a guess: no night is logged yet</source>
        <translation>geschätzt: noch keine Nacht eingetragen</translation>
    </message>
    <message>
        <source>left: the guess before any log</source>
        <translation>links: die Schätzung vor jedem Eintrag</translation>
    </message>
    <message>
        <source>lethal</source>
        <translation>tödlich</translation>
    </message>
    <message>
        <source>harm</source>
        <translation>Schaden</translation>
    </message>
    <message>
        <source>stress</source>
        <translation>Belastung</translation>
    </message>
    <message>
        <source>at ease</source>
        <translation>fühlt sich wohl</translation>
    </message>
    <message>
        <source>its spot tonight, about %1</source>
        <translation>ihr Platz heute Nacht, etwa %1</translation>
    </message>
    <message>
        <source>tonight about %1</source>
        <translation>heute Nacht etwa %1</translation>
    </message>
    <message>
        <source>%1, thrives</source>
        <translation>%1, gedeiht</translation>
    </message>
    <message>
        <source>9 days in 10 within</source>
        <translation>9 von 10 Tagen hierin</translation>
    </message>
    <message>
        <source>1 day in 20 is brighter</source>
        <translation>1 von 20 Tagen ist heller</translation>
    </message>
    <message>
        <source>1 day in 20 is darker</source>
        <translation>1 von 20 Tagen ist dunkler</translation>
    </message>
    <message>
        <source>mean of the month</source>
        <translation>Mittel des Monats</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>recovering</source>
        <translation>erholt sich</translation>
    </message>
    <message>
        <source>recovered</source>
        <translation>erholt</translation>
    </message>
    <message>
        <source>as before</source>
        <translation>wie zuvor</translation>
    </message>
</context>
<context>
    <name>lathhouse::models</name>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>The answer stands here once what is marked is right.</source>
        <translation>Die Antwort steht hier, sobald das Markierte stimmt.</translation>
    </message>
    <message>
        <source>The day&apos;s plan is being worked out.</source>
        <translation>Der Plan des Tages wird ausgearbeitet.</translation>
    </message>
    <message>
        <source>No kind here is called “%1”.</source>
        <translation>Keine Art hier heißt „%1“.</translation>
    </message>
    <message>
        <source>No kind here is called “%1”. Did you mean %2?</source>
        <translation>Keine Art hier heißt „%1“. War %2 gemeint?</translation>
    </message>
    <message>
        <source> or </source>
        <translation> oder </translation>
    </message>
    <message>
        <source>sown</source>
        <translation>gesät</translation>
    </message>
    <message>
        <source>1 seed of %1 sown, of the lot %2</source>
        <translation>1 Samen von %1 gesät, aus dem Tütchen %2</translation>
    </message>
    <message>
        <source>%1 seeds of %2 sown, of the lot %3</source>
        <translation>%1 Samen von %2 gesät, aus dem Tütchen %3</translation>
    </message>
    <message>
        <source>plant %1</source>
        <translation>Pflanze %1</translation>
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
        <translation>eine Pflanze</translation>
    </message>
    <message>
        <source>%1: its drawing stands for it</source>
        <translation>%1: ihre Zeichnung steht für sie</translation>
    </message>
    <message>
        <source>%1 photographs came in, %2 the first</source>
        <translation>%1 Fotos kamen herein, als erstes %2</translation>
    </message>
    <message>
        <source>the photograph %1 of %2</source>
        <translation>das Foto %1 vom %2</translation>
    </message>
    <message>
        <source>%1 shows %2</source>
        <translation>%1 zeigt %2</translation>
    </message>
    <message>
        <source>%1 shows %2 no longer</source>
        <translation>%1 zeigt %2 nicht mehr</translation>
    </message>
    <message>
        <source>%1 was dated by hand</source>
        <translation>%1 wurde von Hand datiert</translation>
    </message>
    <message>
        <source>%1 is out of the lists</source>
        <translation>%1 ist aus den Listen</translation>
    </message>
    <message>
        <source>%1 is back in the lists</source>
        <translation>%1 ist wieder in den Listen</translation>
    </message>
    <message>
        <source>%1 stands for %2</source>
        <translation>%1 steht für %2</translation>
    </message>
    <message>
        <source>%1 came in</source>
        <translation>%1 kam herein</translation>
    </message>
    <message>
        <source>%1: %2 %3, %4</source>
        <translation>%1: %2 %3, %4</translation>
    </message>
    <message>
        <source>%1: lowest of the night %2, %3</source>
        <translation>%1: Tiefstwert der Nacht %2, %3</translation>
    </message>
    <message>
        <source>a spot</source>
        <translation>ein Platz</translation>
    </message>
    <message>
        <source>%1: lowest of %2 nights, %3 to %4</source>
        <translation>%1: Tiefstwerte von %2 Nächten, %3 bis %4</translation>
    </message>
    <message>
        <source>lowest of %1 nights at several spots, %2 to %3</source>
        <translation>Tiefstwerte von %1 Nächten an mehreren Plätzen, %2 bis %3</translation>
    </message>
    <message>
        <source>Looked over</source>
        <translation>Durchgesehen</translation>
    </message>
    <message>
        <source>Treated</source>
        <translation>Behandelt</translation>
    </message>
    <message>
        <source>Watered</source>
        <translation>Gegossen</translation>
    </message>
    <message>
        <source>Fed</source>
        <translation>Gedüngt</translation>
    </message>
    <message>
        <source>Washed through</source>
        <translation>Durchgespült</translation>
    </message>
    <message>
        <source>Repotted</source>
        <translation>Umgetopft</translation>
    </message>
    <message>
        <source>Pruned</source>
        <translation>Geschnitten</translation>
    </message>
    <message>
        <source>Flowered</source>
        <translation>Geblüht</translation>
    </message>
    <message>
        <source>New growth</source>
        <translation>Neuer Trieb</translation>
    </message>
    <message>
        <source>Pest found</source>
        <translation>Schädling gefunden</translation>
    </message>
    <message>
        <source>Set apart</source>
        <translation>Abgesondert</translation>
    </message>
    <message>
        <source>Back among the others</source>
        <translation>Zurück bei den anderen</translation>
    </message>
    <message>
        <source>Cold night</source>
        <translation>Kalte Nacht</translation>
    </message>
    <message>
        <source>Hit by a spray</source>
        <translation>Von Spritzmittel getroffen</translation>
    </message>
    <message>
        <source>Sown</source>
        <translation>Gesät</translation>
    </message>
    <message>
        <source>Came up</source>
        <translation>Aufgegangen</translation>
    </message>
    <message>
        <source>Planted out</source>
        <translation>Ausgepflanzt</translation>
    </message>
    <message>
        <source>Died</source>
        <translation>Eingegangen</translation>
    </message>
    <message>
        <source>Given away</source>
        <translation>Weggegeben</translation>
    </message>
    <message>
        <source>Off the list</source>
        <translation>Von der Liste</translation>
    </message>
    <message>
        <source>Divided</source>
        <translation>Geteilt</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>moved to %1</source>
        <translation>umgestellt nach %1</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>umgestellt</translation>
    </message>
    <message>
        <source>%1 found</source>
        <translation>%1 gefunden</translation>
    </message>
    <message>
        <source>pests</source>
        <translation>Schädlinge</translation>
    </message>
    <message>
        <source>looked over, nothing found</source>
        <translation>durchgesehen, nichts gefunden</translation>
    </message>
    <message>
        <source>looked over</source>
        <translation>durchgesehen</translation>
    </message>
    <message>
        <source>looked over, found %1</source>
        <translation>durchgesehen, gefunden: %1</translation>
    </message>
    <message>
        <source>spray damage</source>
        <translation>Spritzschaden</translation>
    </message>
    <message>
        <source>damage by %1</source>
        <translation>Schaden durch %1</translation>
    </message>
    <message>
        <source>fed</source>
        <translation>gedüngt</translation>
    </message>
    <message>
        <source>fed, %1 ppm nitrogen</source>
        <translation>gedüngt, %1 ppm Stickstoff</translation>
    </message>
    <message>
        <source>cold night</source>
        <translation>kalte Nacht</translation>
    </message>
    <message>
        <source>new growth</source>
        <translation>neuer Trieb</translation>
    </message>
    <message>
        <source>set apart</source>
        <translation>abgesondert</translation>
    </message>
    <message>
        <source>back among the others</source>
        <translation>wieder bei den anderen</translation>
    </message>
    <message>
        <source>1 seedling of the lot %1 was potted</source>
        <translation>1 Sämling aus dem Tütchen %1 wurde getopft</translation>
    </message>
    <message>
        <source>%1 seedlings of the lot %2 were potted</source>
        <translation>%1 Sämlinge aus dem Tütchen %2 wurden getopft</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>the lot %1 of %2</source>
        <translation>das Tütchen %1 von %2</translation>
    </message>
    <message>
        <source>%1 of %2 seeds of the lot %3 had come up</source>
        <translation>%1 von %2 Samen aus dem Tütchen %3 waren aufgegangen</translation>
    </message>
    <message>
        <source>divided into %1</source>
        <translation>geteilt in %1</translation>
    </message>
    <message>
        <source>treated</source>
        <translation>behandelt</translation>
    </message>
    <message>
        <source>treated with %1</source>
        <translation>behandelt mit %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 days ahead</source>
        <translation>%1 Tage voraus</translation>
    </message>
    <message>
        <source>%1 to %2 days ahead</source>
        <translation>%1 bis %2 Tage voraus</translation>
    </message>
    <message>
        <source>%1 × the usual</source>
        <translation>%1 × des Üblichen</translation>
    </message>
    <message>
        <source>%1: %2 nights, error %3; missed by %4, the season alone by %5</source>
        <translation>%1: %2 Nächte, Fehler %3; verfehlt um %4, die Jahreszeit allein um %5</translation>
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
        <translation>%1 topfen</translation>
    </message>
    <message>
        <source>harden off from %1</source>
        <translation>abhärten ab %1</translation>
    </message>
    <message>
        <source>harden off now, out %1</source>
        <translation>jetzt abhärten, hinaus am %1</translation>
    </message>
    <message>
        <source>plant out now</source>
        <translation>jetzt auspflanzen</translation>
    </message>
    <message>
        <source>not in the tables</source>
        <translation>nicht in den Tabellen</translation>
    </message>
    <message>
        <source>sown; up from %1</source>
        <translation>gesät; geht ab %1 auf</translation>
    </message>
    <message>
        <source>sown; too cold or hot to come up</source>
        <translation>gesät; zu kalt oder heiß zum Aufgehen</translation>
    </message>
    <message>
        <source>nothing left</source>
        <translation>nichts übrig</translation>
    </message>
    <message>
        <source>past use</source>
        <translation>hinüber</translation>
    </message>
    <message>
        <source>old: test first</source>
        <translation>alt: erst proben</translation>
    </message>
    <message>
        <source>no date here</source>
        <translation>hier kein Datum</translation>
    </message>
    <message>
        <source>sow outdoors now, until %1</source>
        <translation>jetzt draußen säen, bis %1</translation>
    </message>
    <message>
        <source>sow now, until %1</source>
        <translation>jetzt säen, bis %1</translation>
    </message>
    <message>
        <source>outdoors from %1</source>
        <translation>draußen ab %1</translation>
    </message>
    <message>
        <source>sow %1</source>
        <translation>säen %1</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 of %2 came up</source>
        <translation>%1 von %2 gingen auf</translation>
    </message>
    <message>
        <source>packet says %1</source>
        <translation>laut Tütchen %1</translation>
    </message>
    <message>
        <source>no test yet</source>
        <translation>noch keine Probe</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2. %3 come up, 9 in 10: %4 to %5, %6. %7. %8</source>
        <translation>%1, %2. %3 gehen auf, 9 von 10: %4 bis %5, %6. %7. %8</translation>
    </message>
    <message>
        <source>%1 seeds left</source>
        <translation>noch %1 Samen</translation>
    </message>
    <message>
        <source>seeds not counted</source>
        <translation>Samen nicht gezählt</translation>
    </message>
    <message>
        <source>Nitrogen of the feed in ppm, may be left blank</source>
        <translation>Stickstoff des Düngers in ppm, darf leer bleiben</translation>
    </message>
    <message>
        <source>Which pest</source>
        <translation>Welcher Schädling</translation>
    </message>
    <message>
        <source>With what, may be left blank</source>
        <translation>Womit, kann leer bleiben</translation>
    </message>
    <message>
        <source>Lowest of the night there, may be left blank</source>
        <translation>Tiefster Wert der Nacht dort, darf leer bleiben</translation>
    </message>
    <message>
        <source>Which product, may be left blank</source>
        <translation>Welches Mittel, kann leer bleiben</translation>
    </message>
    <message>
        <source>Choose which pest was found, or write it.</source>
        <translation>Wählen, welcher Schädling gefunden wurde, oder ihn schreiben.</translation>
    </message>
    <message>
        <source>Parts of nitrogen in a million lie between 0 and 2000; leave it blank where you do not know.</source>
        <translation>Stickstoff liegt zwischen 0 und 2000 Teilen je Million; leer lassen, wo er nicht bekannt ist.</translation>
    </message>
    <message>
        <source>The map cannot be drawn: %1.</source>
        <translation>Die Karte lässt sich nicht zeichnen: %1.</translation>
    </message>
    <message>
        <source>Distances and directions are true from home. Larger triangle, thicker line: more weight.</source>
        <translation>Entfernungen und Richtungen stimmen vom Zuhause aus. Größeres Dreieck, dickere Linie: mehr Gewicht.</translation>
    </message>
    <message>
        <source> %1 more stations lie beyond the map.</source>
        <translation> %1 weitere Stationen liegen jenseits der Karte.</translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation>draußen</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>hardening %1 of %2</source>
        <translation>Abhärten, %1 von %2</translation>
    </message>
    <message>
        <source>kept apart</source>
        <translation>abgesondert gehalten</translation>
    </message>
    <message>
        <source>gets used to shade</source>
        <translation>gewöhnt sich an Schatten</translation>
    </message>
    <message>
        <source>died on %1</source>
        <translation>eingegangen am %1</translation>
    </message>
    <message>
        <source>given away on %1</source>
        <translation>weggegeben am %1</translation>
    </message>
    <message>
        <source>taken off the list on %1</source>
        <translation>von der Liste genommen am %1</translation>
    </message>
    <message>
        <source>keep out of reach of children and animals</source>
        <translation>von Kindern und Tieren fernhalten</translation>
    </message>
    <message>
        <source>deadly</source>
        <translation>tödlich</translation>
    </message>
    <message>
        <source>poisonous</source>
        <translation>giftig</translation>
    </message>
    <message>
        <source>slightly poisonous</source>
        <translation>leicht giftig</translation>
    </message>
    <message>
        <source>irritant</source>
        <translation>reizend</translation>
    </message>
    <message>
        <source>%1 to people and animals</source>
        <translation>%1 für Menschen und Tiere</translation>
    </message>
    <message>
        <source>%1 to animals</source>
        <translation>%1 für Tiere</translation>
    </message>
    <message>
        <source>%1 to people</source>
        <translation>%1 für Menschen</translation>
    </message>
    <message>
        <source>%1 to animals, %2 to people</source>
        <translation>%1 für Tiere, %2 für Menschen</translation>
    </message>
    <message>
        <source>At no spot yet</source>
        <translation>Noch ohne Platz</translation>
    </message>
    <message>
        <source>M gives it one</source>
        <translation>M gibt ihr einen</translation>
    </message>
    <message>
        <source>Gone</source>
        <translation>Nicht mehr da</translation>
    </message>
    <message>
        <source>with a value never read on land (taken as gaps)</source>
        <translation>mit einem an Land nie gemessenen Wert (als Lücke genommen)</translation>
    </message>
    <message>
        <source>with the low above the high (taken as gaps)</source>
        <translation>mit dem Tief über dem Hoch (als Lücke genommen)</translation>
    </message>
    <message>
        <source>with low and high both %1 (taken as gaps)</source>
        <translation>mit Tief und Hoch beide %1 (als Lücke genommen)</translation>
    </message>
    <message>
        <source>in a run of twenty or more equal lows (kept)</source>
        <translation>in einer Reihe von zwanzig oder mehr gleichen Tiefstwerten (behalten)</translation>
    </message>
    <message>
        <source>six standard deviations from the month’s mean (kept)</source>
        <translation>sechs Standardabweichungen vom Monatsmittel (behalten)</translation>
    </message>
    <message>
        <source>indoors</source>
        <translation>drinnen</translation>
    </message>
    <message>
        <source>%1: sow %2 %3</source>
        <translation>%1: %2 säen, %3</translation>
    </message>
    <message>
        <source>%1: sow %2 %3, ready from %4</source>
        <translation>%1: %2 säen, %3, so weit ab %4</translation>
    </message>
    <message>
        <source>Frost</source>
        <translation>Frost</translation>
    </message>
    <message>
        <source>Frost nights</source>
        <translation>Frostnächte</translation>
    </message>
    <message>
        <source>To %1</source>
        <translation>Bis %1</translation>
    </message>
    <message>
        <source>Nights to %1</source>
        <translation>Nächte bis %1</translation>
    </message>
    <message>
        <source>Over %1</source>
        <translation>Über %1</translation>
    </message>
    <message>
        <source>Days over %1</source>
        <translation>Tage über %1</translation>
    </message>
    <message>
        <source>Rain</source>
        <translation>Regen</translation>
    </message>
    <message>
        <source>chance of a frost night</source>
        <translation>Wahrscheinlichkeit einer Frostnacht</translation>
    </message>
    <message>
        <source>chance that a night has frost, open air</source>
        <translation>Wahrscheinlichkeit von Frost in der Nacht, im Freien</translation>
    </message>
    <message>
        <source>chance of harm to %1</source>
        <translation>Schadenswahrscheinlichkeit: %1</translation>
    </message>
    <message>
        <source>chance that a night in the open harms the tenderest, %1</source>
        <translation>Wahrscheinlichkeit, dass eine Nacht im Freien der Empfindlichsten schadet, %1</translation>
    </message>
    <message>
        <source>chance of a hot day</source>
        <translation>Wahrscheinlichkeit eines heißen Tages</translation>
    </message>
    <message>
        <source>chance that a day goes above %1</source>
        <translation>Wahrscheinlichkeit, dass ein Tag %1 übersteigt</translation>
    </message>
    <message>
        <source>rain of the month</source>
        <translation>Regen des Monats</translation>
    </message>
    <message>
        <source>rain of the month, mean of the years</source>
        <translation>Regen des Monats, Mittel der Jahre</translation>
    </message>
    <message>
        <source>Frost this night</source>
        <translation>Frost in dieser Nacht</translation>
    </message>
    <message>
        <source>To %1 this night</source>
        <translation>Bis %1 in dieser Nacht</translation>
    </message>
    <message>
        <source>Over %1 this day</source>
        <translation>Über %1 an diesem Tag</translation>
    </message>
    <message>
        <source>Rain of the month</source>
        <translation>Regen des Monats</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>fast sicher</translation>
    </message>
    <message>
        <source>1 in 2</source>
        <translation>1 von 2</translation>
    </message>
    <message>
        <source>sow indoors</source>
        <translation>drinnen aussäen</translation>
    </message>
    <message>
        <source>sow outdoors</source>
        <translation>draußen aussäen</translation>
    </message>
    <message>
        <source>count the seedlings</source>
        <translation>die Sämlinge zählen</translation>
    </message>
    <message>
        <source>pot the seedlings up</source>
        <translation>die Sämlinge umtopfen</translation>
    </message>
    <message>
        <source>begin to harden the seedlings</source>
        <translation>anfangen, die Sämlinge abzuhärten</translation>
    </message>
    <message>
        <source>plant out</source>
        <translation>auspflanzen</translation>
    </message>
    <message>
        <source>carry it in for the night</source>
        <translation>zur Nacht hereintragen</translation>
    </message>
    <message>
        <source>carry it to another spot</source>
        <translation>an einen anderen Platz tragen</translation>
    </message>
    <message>
        <source>out by day</source>
        <translation>tagsüber hinaus</translation>
    </message>
    <message>
        <source>the first night out</source>
        <translation>die erste Nacht draußen</translation>
    </message>
    <message>
        <source>into the shade</source>
        <translation>in den Schatten</translation>
    </message>
    <message>
        <source>look it over on the way in</source>
        <translation>auf dem Weg nach drinnen durchsehen</translation>
    </message>
    <message>
        <source>soak the pot</source>
        <translation>den Topf tauchen</translation>
    </message>
    <message>
        <source>carry it in</source>
        <translation>hereintragen</translation>
    </message>
    <message>
        <source>keep it apart</source>
        <translation>abgesondert halten</translation>
    </message>
    <message>
        <source>a step towards less light</source>
        <translation>ein Schritt zu weniger Licht</translation>
    </message>
    <message>
        <source>set it apart</source>
        <translation>absondern</translation>
    </message>
    <message>
        <source>treat against pests</source>
        <translation>gegen Schädlinge behandeln</translation>
    </message>
    <message>
        <source>look for pests</source>
        <translation>nach Schädlingen sehen</translation>
    </message>
    <message>
        <source>look for pests for the last time</source>
        <translation>zum letzten Mal nach Schädlingen sehen</translation>
    </message>
    <message>
        <source>feel whether the mix is dry</source>
        <translation>fühlen, ob die Erde trocken ist</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>düngen</translation>
    </message>
    <message>
        <source>wash the mix through</source>
        <translation>die Erde durchspülen</translation>
    </message>
    <message>
        <source>see to it after a cold night</source>
        <translation>nach einer kalten Nacht nach ihr sehen</translation>
    </message>
    <message>
        <source>see to it after weed-killer or another chemical</source>
        <translation>nach Unkrautmittel oder einer anderen Chemikalie nach ihr sehen</translation>
    </message>
    <message>
        <source>wash hands and tools</source>
        <translation>Hände und Werkzeug waschen</translation>
    </message>
    <message>
        <source>ticked in the round</source>
        <translation>im Rundgang abgehakt</translation>
    </message>
    <message>
        <source>ticked in the round: %1</source>
        <translation>im Rundgang abgehakt: %1</translation>
    </message>
    <message>
        <source>put off in the round</source>
        <translation>im Rundgang verschoben</translation>
    </message>
    <message>
        <source>put off in the round: %1</source>
        <translation>im Rundgang verschoben: %1</translation>
    </message>
    <message>
        <source>left out in the round</source>
        <translation>im Rundgang ausgelassen</translation>
    </message>
    <message>
        <source>left out in the round: %1</source>
        <translation>im Rundgang ausgelassen: %1</translation>
    </message>
    <message>
        <source>A number is missing: the lowest temperature, such as %1.</source>
        <translation>Eine Zahl fehlt: die tiefste Temperatur, etwa %1.</translation>
    </message>
    <message>
        <source>“%1” is not a number; write it as %2.</source>
        <translation>„%1“ ist keine Zahl; so schreiben: %2.</translation>
    </message>
    <message>
        <source>%1 is colder than any night ever measured.</source>
        <translation>%1 ist kälter als jede je gemessene Nacht.</translation>
    </message>
    <message>
        <source>%1 is no night low. Did you mean %2?</source>
        <translation>%1 ist kein Nachttief. War %2 gemeint?</translation>
    </message>
    <message>
        <source>Such a night usually has %1 here; %2 cannot be right.</source>
        <translation>So eine Nacht hat hier gewöhnlich %1; %2 kann nicht stimmen.</translation>
    </message>
    <message>
        <source>Such a night usually has %1 here. Instead of %2, did you mean %3?</source>
        <translation>So eine Nacht hat hier gewöhnlich %1. War statt %2 vielleicht %3 gemeint?</translation>
    </message>
    <message>
        <source>The folder %1 is not there yet; it is made when the file is written.</source>
        <translation>Den Ordner %1 gibt es noch nicht; er wird angelegt, wenn die Datei geschrieben wird.</translation>
    </message>
    <message>
        <source>“%1” is no date. Write it such as %2, with the time behind it where it is known.</source>
        <translation>„%1“ ist kein Datum. So schreiben: %2, mit der Uhrzeit dahinter, wo sie bekannt ist.</translation>
    </message>
    <message>
        <source>%1 is still to come.</source>
        <translation>Der %1 kommt erst noch.</translation>
    </message>
    <message>
        <source>One station, %1 km away, %2, dates right to about %3 days.</source>
        <translation>Eine Station, %1 km entfernt, %2, Daten auf etwa %3 Tage genau.</translation>
    </message>
    <message>
        <source>%1 stations, %2 to %3 km away, %4, dates right to about %5 days.</source>
        <translation>%1 Stationen, %2 bis %3 km entfernt, %4, Daten auf etwa %5 Tage genau.</translation>
    </message>
    <message>
        <source>%1 %2 (9 in 10: %3 to %4).</source>
        <translation>%1 %2 (9 von 10: %3 bis %4).</translation>
    </message>
    <message>
        <source>Plan within %1 % of the best.</source>
        <translation>Plan höchstens %1 % vom besten entfernt.</translation>
    </message>
    <message>
        <source>All dates are chances, not promises.</source>
        <translation>Alle Daten sind Wahrscheinlichkeiten, keine Zusagen.</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <translation>ddd d. MMM</translation>
    </message>
    <message>
        <source>ddd MMM d</source>
        <translation>ddd d. MMM</translation>
    </message>
    <message>
        <source>d MMM</source>
        <translation>d. MMM</translation>
    </message>
    <message>
        <source>MMM d</source>
        <translation>d. MMM</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <translation>d. MMMM</translation>
    </message>
    <message>
        <source>MMMM d</source>
        <translation>d. MMMM</translation>
    </message>
    <message>
        <source>dddd d MMMM</source>
        <translation>dddd, d. MMMM</translation>
    </message>
    <message>
        <source>dddd MMMM d</source>
        <translation>dddd, d. MMMM</translation>
    </message>
    <message>
        <source>dddd d MMMM yyyy</source>
        <translation>dddd, d. MMMM yyyy</translation>
    </message>
    <message>
        <source>dddd MMMM d, yyyy</source>
        <translation>dddd, d. MMMM yyyy</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <translation>d. MMMM yyyy</translation>
    </message>
    <message>
        <source>MMMM d, yyyy</source>
        <translation>d. MMMM yyyy</translation>
    </message>
    <message>
        <source>sun does not rise</source>
        <translation>Sonne geht nicht auf</translation>
    </message>
    <message>
        <source>sun does not set</source>
        <translation>Sonne geht nicht unter</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>&lt; 1 in 1000</source>
        <translation>&lt; 1 von 1000</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::AskModel</name>
    <message>
        <source>The household is being read.</source>
        <translation>Der Haushalt wird gelesen.</translation>
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
        <translation>pflanzen</translation>
    </message>
    <message>
        <source>Say which file the calendar is to be.</source>
        <translation>Sagen, welche Datei der Kalender werden soll.</translation>
    </message>
    <message>
        <source>Write how many days from today the calendar is to hold, 1 to %1.</source>
        <translation>Schreiben, wie viele Tage ab heute der Kalender enthalten soll, 1 bis %1.</translation>
    </message>
    <message>
        <source>%1 is there already. Replace it where it is an older calendar of yours; else take another name.</source>
        <translation>%1 ist schon da. Ersetzen, wenn es ein älterer eigener Kalender ist; sonst einen anderen Namen nehmen.</translation>
    </message>
    <message>
        <source>Wrote %1 events to %2. It names your plants and spots; where your home is stands nowhere in it. Write it again whenever the plan changes: the same matters keep their names, so that they are moved, not doubled.</source>
        <translation>%1 Termine nach %2 geschrieben. Pflanzen und Plätze stehen darin mit Namen; wo das Zuhause liegt, steht nirgends. Neu schreiben, wenn sich der Plan ändert: Gleiches behält seinen Namen und wird verschoben, nicht verdoppelt.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::CardModel</name>
    <message>
        <source>Say which file is to be written.</source>
        <translation>Sagen, welche Datei geschrieben werden soll.</translation>
    </message>
    <message>
        <source>%1 is there already. Replace it, or take another name.</source>
        <translation>%1 ist schon da. Ersetzen oder einen anderen Namen nehmen.</translation>
    </message>
    <message>
        <source>Wrote the card to %1. Print it at 100 % and check with a ruler that its targets are 100 mm apart.</source>
        <translation>Karte nach %1 geschrieben. Sie wird mit 100 % gedruckt; ein Lineal zeigt, ob ihre Zielmarken 100 mm auseinander liegen.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::ChangesModel</name>
    <message>
        <source>Nothing is left to take back.</source>
        <translation>Nichts mehr zurückzunehmen.</translation>
    </message>
    <message>
        <source>Nothing is left to do again.</source>
        <translation>Nichts mehr zu wiederholen.</translation>
    </message>
    <message>
        <source>Taken back: %1</source>
        <translation>Zurückgenommen: %1</translation>
    </message>
    <message>
        <source>Counts again: %1</source>
        <translation>Gilt wieder: %1</translation>
    </message>
    <message>
        <source>the last change in this window</source>
        <translation>die letzte Änderung in diesem Fenster</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::ComparisonModel</name>
    <message>
        <source>They differ in none of these %1.</source>
        <translation>Sie unterscheiden sich in keinem dieser %1.</translation>
    </message>
    <message>
        <source>They differ in %1 of these %2, which are in bold. Why they differ, two plants cannot show.</source>
        <translation>Sie unterscheiden sich in %1 dieser %2, die fett stehen. Warum, können zwei Pflanzen nicht zeigen.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::CursorReading</name>
    <message>
        <source>%1 of day</source>
        <translation>%1 Tag</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>at %1 %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>at its damage line, since %1</source>
        <translation>an ihrer Schadenslinie, seit %1</translation>
    </message>
    <message>
        <source>at its damage line, to %1</source>
        <translation>an ihrer Schadenslinie, bis %1</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>none between</source>
        <translation>keine dazwischen</translation>
    </message>
    <message>
        <source>%1 between two lights</source>
        <translation>%1 beim Abhärten</translation>
    </message>
    <message>
        <source>%1 at %2: %3.</source>
        <translation>%1, %2: %3.</translation>
    </message>
    <message>
        <source>%1 to %2 on %3: %4.</source>
        <comment>a plant, a spot, a date, the reason</comment>
        <translation>%1 am %3 nach %2: %4.</translation>
    </message>
    <message>
        <source>step %1 of %2</source>
        <translation>Stufe %1 von %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a step of hardening: what is done on it</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>indoors</source>
        <translation>drinnen</translation>
    </message>
    <message>
        <source>Night low, middle</source>
        <translation>Nachttief, Mitte</translation>
    </message>
    <message>
        <source>9 nights in 10</source>
        <translation>9 von 10 Nächten</translation>
    </message>
    <message>
        <source>At %1</source>
        <translation>%1</translation>
    </message>
    <message>
        <source>Frost this night</source>
        <translation>Frost in dieser Nacht</translation>
    </message>
    <message>
        <source>Frost after this night</source>
        <translation>Frost nach dieser Nacht</translation>
    </message>
    <message>
        <source>… %1</source>
        <translation>… %1</translation>
    </message>
    <message>
        <source>Day length</source>
        <translation>Tageslänge</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Sonne</translation>
    </message>
    <message>
        <source>no rise or set</source>
        <translation>kein Auf- oder Untergang</translation>
    </message>
    <message>
        <source>Daily light</source>
        <translation>Licht am Tag</translation>
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
        <translation>Es ist jetzt %1; diese Seiten sind von %2.</translation>
    </message>
    <message>
        <source>The new day could not be begun here. Close this window and start the program again.</source>
        <translation>Der neue Tag ließ sich hier nicht beginnen. Dieses Fenster schließen und das Programm neu starten.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::DoseModel</name>
    <message>
        <source>How much oil or soap</source>
        <translation>Wie viel Öl oder Seife</translation>
    </message>
    <message>
        <source>How much oil or soap for %1</source>
        <translation>Wie viel Öl oder Seife für %1</translation>
    </message>
    <message>
        <source>How much feed</source>
        <translation>Wie viel Dünger</translation>
    </message>
    <message>
        <source>How much feed for %1</source>
        <translation>Wie viel Dünger für %1</translation>
    </message>
    <message>
        <source>%1 holds %2</source>
        <translation>%1 fasst %2</translation>
    </message>
    <message>
        <source>1 quart</source>
        <translation>1 Quart</translation>
    </message>
    <message>
        <source>1 quart of water</source>
        <translation>1 Quart Wasser</translation>
    </message>
    <message>
        <source>½ gallon</source>
        <translation>½ Gallone</translation>
    </message>
    <message>
        <source>½ gallon of water</source>
        <translation>½ Gallone Wasser</translation>
    </message>
    <message>
        <source>1 gallon</source>
        <translation>1 Gallone</translation>
    </message>
    <message>
        <source>1 gallon of water</source>
        <translation>1 Gallone Wasser</translation>
    </message>
    <message>
        <source>%1 of water</source>
        <translation>%1 Wasser</translation>
    </message>
    <message>
        <source>Write percent of the water above 0 and at most 20, as the label has it; leaves are sprayed at 0.5 to 2.</source>
        <translation>Prozent vom Wasser über 0 und höchstens 20 schreiben, wie das Etikett sie nennt; auf Blätter kommen 0,5 bis 2.</translation>
    </message>
    <message>
        <source>Write the three numbers of the feed&apos;s label, such as 20-10-20: nitrogen, phosphate, potash.</source>
        <translation>Die drei Zahlen vom Etikett des Düngers schreiben, etwa 20-10-20: Stickstoff, Phosphat, Kali.</translation>
    </message>
    <message>
        <source>The first number, nitrogen, is above 0 and the three are at most 100 together. A feed without nitrogen is measured by its label alone.</source>
        <translation>Die erste Zahl, Stickstoff, liegt über 0, und die drei sind zusammen höchstens 100. Ein Dünger ohne Stickstoff wird allein nach dem Etikett bemessen.</translation>
    </message>
    <message>
        <source>A millilitre of feed weighs 0.2 to 3 g. Leave it blank where the label does not say.</source>
        <translation>Ein Milliliter Dünger wiegt 0,2 bis 3 g. Leer lassen, wo das Etikett nichts sagt.</translation>
    </message>
    <message>
        <source>A level teaspoon of powder weighs 1 to 14 g. Leave it blank where you do not know.</source>
        <translation>Ein gestrichener Teelöffel Pulver wiegt 1 bis 14 g. Leer lassen, wo Sie es nicht wissen.</translation>
    </message>
    <message>
        <source>Its kind is not in the tables, so no strength is known. Write one: half of what the label says at first.</source>
        <translation>Ihre Art steht nicht in den Tabellen, darum ist keine Stärke bekannt. Eine schreiben: zuerst die Hälfte dessen, was das Etikett sagt.</translation>
    </message>
    <message>
        <source>Nitrogen lies within 1 and 2000 ppm; pots at home get 50 to 250.</source>
        <translation>Stickstoff liegt zwischen 1 und 2000 ppm; Töpfe im Haus bekommen 50 bis 250.</translation>
    </message>
    <message>
        <source>Write how much water, such as 1 gallon, 6 cups or 2 quarts, or take one of the cans.</source>
        <translation>Schreiben, wie viel Wasser, etwa 1 gallon, 6 cups oder 2 quarts, oder eine der Kannen nehmen.</translation>
    </message>
    <message>
        <source>Write how much water, such as 2 L or 500 ml, or take one of the cans.</source>
        <translation>Schreiben, wie viel Wasser, etwa 2 L oder 500 ml, oder eine der Kannen nehmen.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>A can or a spoon is called by 1 to 40 letters without digits, and not as a measure is (cup, L): such as blue can.</source>
        <translation>Eine Kanne oder ein Löffel heißt mit 1 bis 40 Buchstaben ohne Ziffern und nicht wie ein Maß (cup, L): etwa blaue Kanne.</translation>
    </message>
    <message>
        <source>Write what it holds, such as 6 cups or 1/2 gallon; a spoon such as 2 tsp.</source>
        <translation>Schreiben, was hineingeht, etwa 6 cups oder 1/2 gallon; ein Löffel etwa 2 tsp.</translation>
    </message>
    <message>
        <source>Write what it holds, such as 1.5 L; a spoon such as 7 ml.</source>
        <translation>Schreiben, was hineingeht, etwa 1,5 L; ein Löffel etwa 7 ml.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::EdgeByHand</name>
    <message>
        <source>%1 to %2 on %3</source>
        <translation>%1 nach %2 am %3</translation>
    </message>
    <message>
        <source>: %1 of a harmful night after it, to %2</source>
        <translation>: %1 für eine schädliche Nacht danach, bis %2</translation>
    </message>
    <message>
        <source>: %1 of a harmful night before it, since %2</source>
        <translation>: %1 für eine schädliche Nacht davor, seit %2</translation>
    </message>
    <message>
        <source>%1. Letting go pins it; Esc leaves it.</source>
        <translation>%1. Loslassen hält fest; Esc lässt es.</translation>
    </message>
    <message>
        <source>%1 is carried from %2 to %3 on %4, by hand</source>
        <translation>%1 kommt am %4 von %2 nach %3, von Hand bestimmt</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::EveningNotice</name>
    <message>
        <source>Nothing comes of it here: no desktop is reached from this window.</source>
        <translation>Hier wird nichts daraus: Von diesem Fenster aus ist kein Schreibtisch zu erreichen.</translation>
    </message>
    <message>
        <source>Nothing comes of it here: the desktop has nothing that shows notices.</source>
        <translation>Hier wird nichts daraus: Der Schreibtisch hat nichts, was Hinweise zeigt.</translation>
    </message>
    <message>
        <source>The desktop did not show it (%1); it is tried again this evening.</source>
        <translation>Der Schreibtisch hat es nicht gezeigt (%1); heute Abend wird es noch einmal versucht.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::FeedingAskModel</name>
    <message>
        <source>The year is still being worked out; ask again in a moment.</source>
        <translation>Das Jahr wird noch ausgearbeitet; gleich noch einmal fragen.</translation>
    </message>
    <message>
        <source>Write how many hours a day the lamps burn, 0 to 24.</source>
        <translation>Schreiben, wie viele Stunden am Tag die Lampen brennen, 0 bis 24.</translation>
    </message>
    <message>
        <source>The lamps’ light at the leaves lies between 0 and 2500 micromoles; leave it blank where you do not know.</source>
        <translation>Das Licht der Lampen an den Blättern liegt zwischen 0 und 2500 Mikromol; leer lassen, wo es nicht bekannt ist.</translation>
    </message>
    <message>
        <source>Say how many hours a day the lamps burn as well.</source>
        <translation>Auch sagen, wie viele Stunden am Tag die Lampen brennen.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::FirstStartModel</name>
    <message>
        <source>near %1, by the clock</source>
        <translation>bei %1, nach der Uhr</translation>
    </message>
    <message>
        <source>where the pots stand</source>
        <translation>wo die Töpfe stehen</translation>
    </message>
    <message>
        <source>by its coordinates</source>
        <translation>nach den Koordinaten</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>sills, shelves, balcony</source>
        <translation>Fensterbänke, Regale, Balkon</translation>
    </message>
    <message>
        <source>1 spot</source>
        <translation>1 Platz</translation>
    </message>
    <message>
        <source>%1 spots</source>
        <translation>%1 Plätze</translation>
    </message>
    <message>
        <source>a few are enough to begin</source>
        <translation>wenige genügen für den Anfang</translation>
    </message>
    <message>
        <source>1 plant</source>
        <translation>1 Pflanze</translation>
    </message>
    <message>
        <source>%1 plants</source>
        <translation>%1 Pflanzen</translation>
    </message>
    <message>
        <source>This computer’s clock tells no place, so the year needs one.</source>
        <translation>Die Uhr dieses Rechners verrät keinen Ort, das Jahr braucht also einen.</translation>
    </message>
    <message>
        <source>The year is then that of %1, by this computer’s clock, until you change it.</source>
        <translation>Das Jahr ist dann das von %1, nach der Uhr dieses Rechners, bis es geändert wird.</translation>
    </message>
    <message>
        <source>Spots can be added later under Home. Plants then stand nowhere yet.</source>
        <translation>Plätze lassen sich später unter Zuhause anlegen. Pflanzen stehen dann noch nirgends.</translation>
    </message>
    <message>
        <source>Spots can be added later under Home.</source>
        <translation>Plätze lassen sich später unter Zuhause ergänzen.</translation>
    </message>
    <message>
        <source>Plants can be added later under Plants.</source>
        <translation>Pflanzen lassen sich später unter Pflanzen hinzufügen.</translation>
    </message>
    <message>
        <source>Without a place there is no year, and this computer’s clock tells none. Type the nearest town, or look at the example household.</source>
        <translation>Ohne Ort gibt es kein Jahr, und die Uhr dieses Rechners verrät keinen. Den nächsten Ort eintippen oder den Beispielhaushalt ansehen.</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Zuhause</translation>
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
        <translation>Nächte, Frost, Wärme, Regen</translation>
    </message>
    <message>
        <source>Coast lines of the map</source>
        <translation>Küstenlinien der Karte</translation>
    </message>
    <message>
        <source>Natural Earth, public domain.</source>
        <translation>Natural Earth, gemeinfrei.</translation>
    </message>
    <message>
        <source>Towns, search by name</source>
        <translation>Orte, Suche nach Namen</translation>
    </message>
    <message>
        <source>GeoNames, geonames.org, CC BY 4.0; a selection of its towns.</source>
        <translation>GeoNames, geonames.org, CC BY 4.0; eine Auswahl der Orte.</translation>
    </message>
    <message>
        <source>What plants, seeds and pests need</source>
        <translation>Was Pflanzen, Samen und Schädlinge brauchen</translation>
    </message>
    <message>
        <source>%1 publications, listed below; a figure without one is marked as common practice where it stands.</source>
        <translation>%1 Veröffentlichungen, unten aufgeführt; eine Zahl ohne Quelle ist an ihrer Stelle als übliche Praxis bezeichnet.</translation>
    </message>
    <message>
        <source>Sun, light, water, nights, dates</source>
        <translation>Sonne, Licht, Wasser, Nächte, Daten</translation>
    </message>
    <message>
        <source>Worked out by this program; formulas with their sources and measured errors come with it (docs/methods).</source>
        <translation>Von diesem Programm berechnet; Formeln mit Quellen und gemessenen Fehlern liegen bei (docs/methods).</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 of %2 photographs</source>
        <translation>%1 von %2 Fotos</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Getting ready</source>
        <translation>Vorbereitung</translation>
    </message>
    <message>
        <source>%1 read back and compared</source>
        <translation>%1 zurückgelesen und verglichen</translation>
    </message>
    <message>
        <source>%1 written</source>
        <translation>%1 geschrieben</translation>
    </message>
    <message>
        <source>%1 compared</source>
        <translation>%1 verglichen</translation>
    </message>
    <message>
        <source>%1 of %2 photographs copied</source>
        <translation>%1 von %2 Fotos kopiert</translation>
    </message>
    <message>
        <source>%1 unpacked and compared</source>
        <translation>%1 ausgepackt und verglichen</translation>
    </message>
    <message>
        <source>Stopped. Nothing was changed.</source>
        <translation>Angehalten. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written, and nothing half done is left.</source>
        <translation>Angehalten. Nichts wurde geschrieben, und nichts Halbes blieb zurück.</translation>
    </message>
    <message>
        <source>Nothing was written.</source>
        <translation>Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>The demonstration lies in memory; there is nothing to back up.</source>
        <translation>Das Vorführbeispiel liegt im Speicher; es gibt nichts zu sichern.</translation>
    </message>
    <message>
        <source>Say which file the backup is to be.</source>
        <translation>Angeben, welche Datei die Sicherung werden soll.</translation>
    </message>
    <message>
        <source>%1 is there already. Take another name, or replace it once the new one is whole.</source>
        <translation>%1 gibt es schon. Einen anderen Namen nehmen, oder sie ersetzen, sobald die neue vollständig ist.</translation>
    </message>
    <message>
        <source>Wrote %1, %2: the journal and %3, read back and compared. Keep it where you would keep a key.</source>
        <translation>%1 geschrieben, %2: das Journal und %3, zurückgelesen und verglichen. Aufbewahren wie einen Schlüssel.</translation>
    </message>
    <message>
        <source> %1 that the journal names are not in the folder and so not in the backup; look through the folder for which.</source>
        <translation> %1, im Journal genannt, fehlt im Ordner und damit in der Sicherung; welche, zeigt das Durchsehen des Ordners.</translation>
    </message>
    <message>
        <source> Left out, since no archive takes its name or it is a link: %1.</source>
        <translation> Ausgelassen, weil kein Archiv den Namen nimmt oder es eine Verknüpfung ist: %1.</translation>
    </message>
    <message>
        <source>The demonstration lies in memory; there is no folder to look through.</source>
        <translation>Das Vorführbeispiel liegt im Speicher; es gibt keinen Ordner durchzusehen.</translation>
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
        <translation>kein Foto zu vergleichen</translation>
    </message>
    <message>
        <source>%1 compared with their digests</source>
        <translation>%1 mit ihren Prüfsummen verglichen</translation>
    </message>
    <message>
        <source>The household is sound: the journal and its references hold, %1.</source>
        <translation>Der Haushalt ist heil: Das Journal und seine Verweise stimmen, %1.</translation>
    </message>
    <message>
        <source>One thing is lost or wrong; nothing was changed. The journal was looked at, %1.</source>
        <translation>Eines fehlt oder ist falsch; nichts wurde geändert. Das Journal wurde durchgesehen, %1.</translation>
    </message>
    <message>
        <source>%1 things are lost or wrong; nothing was changed. The journal was looked at, %2.</source>
        <translation>%1 Dinge fehlen oder sind falsch; nichts wurde geändert. Das Journal wurde durchgesehen, %2.</translation>
    </message>
    <message>
        <source>Say which backup is to be brought back.</source>
        <translation>Angeben, welche Sicherung zurückgeholt werden soll.</translation>
    </message>
    <message>
        <source>Say into which folder; it must be new or empty.</source>
        <translation>Angeben, in welchen Ordner; er muss neu oder leer sein.</translation>
    </message>
    <message>
        <source>The household as it was on %1 is in %2: the journal and %3, each compared with the backup’s list.</source>
        <translation>Der Haushalt, wie er am %1 war, liegt in %2: das Journal und %3, jedes mit der Liste der Sicherung verglichen.</translation>
    </message>
    <message>
        <source>The household is in %1: the journal and %2, each compared with the backup’s list.</source>
        <translation>Der Haushalt liegt in %1: das Journal und %2, jedes mit der Liste der Sicherung verglichen.</translation>
    </message>
    <message>
        <source> What is open here is as it was.</source>
        <translation> Was hier offen ist, bleibt, wie es war.</translation>
    </message>
    <message>
        <source>  %1 of the backup belongs to no household and was left out.</source>
        <translation>  %1 der Sicherung gehört zu keinem Haushalt und wurde ausgelassen.</translation>
    </message>
    <message>
        <source>The demonstration lies in memory; there is nothing to write out.</source>
        <translation>Das Vorführbeispiel liegt im Speicher; es gibt nichts zu schreiben.</translation>
    </message>
    <message>
        <source>Wrote %1 tables with %2 rows and %3 to %4. A leading apostrophe marks a text that a spreadsheet could take for a formula.</source>
        <translation>%1 Tabellen mit %2 Zeilen und %3 nach %4 geschrieben. Ein Apostroph am Anfang bezeichnet Text, den eine Tabellenkalkulation für eine Formel halten könnte.</translation>
    </message>
    <message>
        <source>Say which folder has the tables.</source>
        <translation>Sagen, in welchem Ordner die Tabellen sind.</translation>
    </message>
    <message>
        <source>Made the household %1 of %2 tables with %3 rows and %4.</source>
        <translation>Der Haushalt %1 entstand aus %2 Tabellen mit %3 Zeilen und %4.</translation>
    </message>
    <message>
        <source>What is open here is as it was.</source>
        <translation>Was hier offen ist, bleibt, wie es war.</translation>
    </message>
    <message>
        <source>Left out, since they name rows that are not there: %1.</source>
        <translation>Weggelassen, weil sie Zeilen nennen, die nicht da sind: %1.</translation>
    </message>
    <message>
        <source>Named by the journal and not there: %1. Put them beside the tables and read them again.</source>
        <translation>Vom Journal genannt und nicht da: %1. Neben die Tabellen legen und noch einmal lesen.</translation>
    </message>
    <message>
        <source>Passed over, since no table is called so: %1.</source>
        <translation>Übergangen, weil keine Tabelle so heißt: %1.</translation>
    </message>
    <message>
        <source>No second window could be started. Close this one and start the program with the folder %1.</source>
        <translation>Ein zweites Fenster ließ sich nicht starten. Dieses schließen und das Programm mit dem Ordner %1 starten.</translation>
    </message>
    <message>
        <source>under %1 MB</source>
        <translation>unter %1 MB</translation>
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
        <translation>kein Foto</translation>
    </message>
    <message>
        <source>one photograph</source>
        <translation>ein Foto</translation>
    </message>
    <message>
        <source>%1 photographs</source>
        <translation>%1 Fotos</translation>
    </message>
    <message>
        <source>Last backup: %1, %2. Nothing was entered since.</source>
        <translation>Letzte Sicherung: %1, %2. Seitdem wurde nichts eingetragen.</translation>
    </message>
    <message>
        <source>Last backup: %1, %2. One thing was entered since.</source>
        <translation>Letzte Sicherung: %1, %2. Seitdem wurde einmal etwas eingetragen.</translation>
    </message>
    <message>
        <source>Last backup: %1, %2. %3 things were entered since.</source>
        <translation>Letzte Sicherung: %1, %2. Seitdem wurde %3-mal etwas eingetragen.</translation>
    </message>
    <message>
        <source>No backup was made from this window yet.</source>
        <translation>Aus diesem Fenster wurde noch keine Sicherung gemacht.</translation>
    </message>
    <message>
        <source>Last backup from this window: %1, %2.</source>
        <translation>Letzte Sicherung aus diesem Fenster: %1, %2.</translation>
    </message>
    <message>
        <source>No backup of this household was made from this window yet.</source>
        <translation>Von diesem Haushalt wurde aus diesem Fenster noch keine Sicherung gemacht.</translation>
    </message>
    <message>
        <source>%1 things were entered since the last backup.</source>
        <translation>Seit der letzten Sicherung wurde %1-mal etwas eingetragen.</translation>
    </message>
    <message>
        <source>The last backup is %1 days old.</source>
        <translation>Die letzte Sicherung ist %1 Tage alt.</translation>
    </message>
    <message>
        <source>The last backup is %1 weeks old.</source>
        <translation>Die letzte Sicherung ist %1 Wochen alt.</translation>
    </message>
    <message>
        <source>%1-tables</source>
        <translation>%1-Tabellen</translation>
    </message>
    <message>
        <source>It holds where your home is, as exactly as you gave it</source>
        <translation>Darin steht, wo das Zuhause liegt, so genau wie angegeben</translation>
    </message>
    <message>
        <source>%1; none of the photographs says where it was taken.</source>
        <translation>%1; keines der Fotos sagt, wo es entstand.</translation>
    </message>
    <message>
        <source>%1, and %2 in which the camera wrote where it was taken.</source>
        <translation>%1, und %2, in die die Kamera schrieb, wo sie entstanden.</translation>
    </message>
    <message>
        <source>The folder lies on a network drive. Have it open on one machine at a time, or keep it on this machine’s own disk and copy it by backup.</source>
        <translation>Der Ordner liegt auf einem Netzlaufwerk. Immer nur auf einem Rechner öffnen, oder auf der eigenen Platte halten und per Sicherung kopieren.</translation>
    </message>
    <message>
        <source>The folder lies on a drive that a program provides, perhaps a synced or a remote one. Keep the household on this machine’s own disk and let backups be synced instead.</source>
        <translation>Der Ordner liegt auf einem Laufwerk, das ein Programm stellt, vielleicht einem abgeglichenen oder fernen. Den Haushalt auf der eigenen Platte halten und stattdessen Sicherungen abgleichen lassen.</translation>
    </message>
    <message>
        <source>Plants</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <source>Spots</source>
        <translation>Plätze</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Ereignisse</translation>
    </message>
    <message>
        <source>Measurements</source>
        <translation>Messungen</translation>
    </message>
    <message>
        <source>Nights logged</source>
        <translation>Eingetragene Nächte</translation>
    </message>
    <message>
        <source>Photographs</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>The journal</source>
        <translation>Das Journal</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::HomeJournalModel</name>
    <message>
        <source>Nothing is in the journal yet.</source>
        <translation>Im Journal steht noch nichts.</translation>
    </message>
    <message>
        <source>One line.</source>
        <translation>Eine Zeile.</translation>
    </message>
    <message>
        <source>%1 lines, the newest first.</source>
        <translation>%1 Zeilen, die neueste zuerst.</translation>
    </message>
    <message>
        <source>None of %1 lines has these words.</source>
        <translation>Keine von %1 Zeilen hat diese Wörter.</translation>
    </message>
    <message>
        <source>Lines with these words: %1 of %2.</source>
        <translation>Zeilen mit diesen Wörtern: %1 von %2.</translation>
    </message>
    <message>
        <source>the whole household</source>
        <translation>der ganze Haushalt</translation>
    </message>
    <message>
        <source>The label and local advice come first, and say how long to keep away.</source>
        <translation>Das Etikett und der Rat vor Ort gehen vor und sagen, wie lange man fernbleibt.</translation>
    </message>
    <message>
        <source>Nothing that it may have touched is eaten. Plants that stood there that day get no feed and are not hardened for a while. Each one that was hit is logged on its own page: from there its course begins.</source>
        <translation>Was es berührt haben kann, wird nicht gegessen. Pflanzen, die an diesem Tag dort standen, bekommen eine Weile keinen Dünger und werden nicht abgehärtet. Jede getroffene wird auf ihrer eigenen Seite eingetragen: Von dort an läuft ihre Beobachtung.</translation>
    </message>
    <message>
        <source>Nothing that it may have touched is eaten. It names no spot, so it counts for the plants that stood outdoors that day: they get no feed and are not hardened for a while. Each one that was hit is logged on its own page: from there its course begins.</source>
        <translation>Was es berührt haben kann, wird nicht gegessen. Ein Platz ist nicht genannt, also gilt es für die Pflanzen, die an diesem Tag draußen standen: Sie bekommen eine Weile keinen Dünger und werden nicht abgehärtet. Jede getroffene wird auf ihrer eigenen Seite eingetragen: Von dort an läuft ihre Beobachtung.</translation>
    </message>
    <message>
        <source>Every plant that stood there that day is suspect from then on: it is looked over, and set apart. Where the pest is on a plant itself, log it on that plant’s own page: from there it counts as infested and its treatment begins.</source>
        <translation>Jede Pflanze, die an dem Tag dort stand, gilt von da an als verdächtig: Sie wird durchgesehen und abgesondert. Sitzt der Schädling auf einer Pflanze selbst, wird er auf ihrer eigenen Seite eingetragen: Von da an gilt sie als befallen, und ihre Behandlung beginnt.</translation>
    </message>
    <message>
        <source>It counts for every plant that stood there that night: one whose line was reached is looked over in the days after, and gets no feed until new growth is logged.</source>
        <translation>Es zählt für jede Pflanze, die in der Nacht dort stand: Wurde ihre Grenze erreicht, wird sie in den Tagen danach durchgesehen und bekommt keinen Dünger, bis neues Wachstum eingetragen ist.</translation>
    </message>
    <message>
        <source>It names no spot, so it counts for every plant that stood outdoors that night: one whose line was reached is looked over in the days after, and gets no feed until new growth is logged.</source>
        <translation>Es nennt keinen Platz, also zählt es für jede Pflanze, die in der Nacht draußen stand: Wurde ihre Grenze erreicht, wird sie in den Tagen danach durchgesehen und bekommt keinen Dünger, bis neues Wachstum eingetragen ist.</translation>
    </message>
    <message>
        <source>Plants that stood there that day get no feed until they are released. A plant counts as set apart from pests where that is logged on its own page.</source>
        <translation>Pflanzen, die an dem Tag dort standen, bekommen keinen Dünger, bis sie freigegeben sind. Als wegen Schädlingen abgesondert gilt eine Pflanze, wenn das auf ihrer eigenen Seite eingetragen ist.</translation>
    </message>
    <message>
        <source>Say where it happened, and what.</source>
        <translation>Angeben, wo es geschah und was.</translation>
    </message>
    <message>
        <source>Write how many days ago it happened, 0 to %1.</source>
        <translation>Schreiben, vor wie vielen Tagen es geschah, 0 bis %1.</translation>
    </message>
    <message>
        <source>Write what is to be kept.</source>
        <translation>Schreiben, was ins Journal soll.</translation>
    </message>
    <message>
        <source>Kept: %1, %2. Undo above the pages takes it back.</source>
        <translation>Gespeichert: %1, %2. Rückgängig über den Seiten nimmt es zurück.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::HomeModel</name>
    <message>
        <source>%1: %2 to %3 moles of light a day through the year</source>
        <translation>%1: %2 bis %3 Mol Licht am Tag durch das Jahr</translation>
    </message>
    <message>
        <source>9 days in 10: %1 in %2, %3 in %4</source>
        <translation>9 von 10 Tagen: %1 (%2), %3 (%4)</translation>
    </message>
    <message>
        <source>Beside it %1: %2 to %3</source>
        <translation>Daneben %1: %2 bis %3</translation>
    </message>
    <message>
        <source>The line is the mean of the month. Of ten days nine lie within the band, which is what clouds change; it is told from the month’s mean (Bendt, Collares-Pereira and Rabl 1981). Held against nine months that were measured in one town, its brightest days were 6 % too bright; in the tropics days differ less than it says.</source>
        <translation>Die Linie ist das Mittel des Monats. Von zehn Tagen liegen neun im Band: So viel ändern die Wolken, berechnet aus dem Mittel des Monats (Bendt, Collares-Pereira und Rabl 1981). Mit neun gemessenen Monaten einer Stadt verglichen, waren die hellsten Tage um 6 % zu hell; in den Tropen unterscheiden sich die Tage weniger.</translation>
    </message>
    <message>
        <source>What clouds change from day to day is not told of light that does not rise towards the summer, as under lamps.</source>
        <translation>Was die Wolken von Tag zu Tag ändern, wird nicht gesagt, wo das Licht zum Sommer hin nicht zunimmt, wie unter Lampen.</translation>
    </message>
    <message>
        <source>%1 against the open air</source>
        <translation>%1 verglichen mit dem Freien</translation>
    </message>
    <message>
        <source>%1; %2: %3</source>
        <translation>%1; %2: %3</translation>
    </message>
    <message>
        <source>Write how many days ago the night ended, 0 to %1.</source>
        <translation>Schreiben, vor wie vielen Tagen die Nacht endete, 0 bis %1.</translation>
    </message>
    <message>
        <source>Kept: %1 at %2, the night to %3. The same night logged again takes its place; Undo above the pages takes it back.</source>
        <translation>Gespeichert: %1 an %2, die Nacht auf %3. Dieselbe Nacht, erneut eingetragen, tritt an ihre Stelle; Rückgängig über den Seiten nimmt sie zurück.</translation>
    </message>
    <message>
        <source>Say which file has the readings.</source>
        <translation>Sagen, in welcher Datei die Ablesungen stehen.</translation>
    </message>
    <message>
        <source>Kept 1 night of the file. The same night logged again takes its place.</source>
        <translation>1 Nacht der Datei gespeichert. Dieselbe Nacht noch einmal eingetragen tritt an ihre Stelle.</translation>
    </message>
    <message>
        <source>Kept %1 nights of the file; one Undo above the pages takes them back. The same nights logged again take their place.</source>
        <translation>%1 Nächte der Datei gespeichert; einmal Rückgängig über den Seiten nimmt sie zurück. Dieselben Nächte noch einmal eingetragen treten an ihre Stelle.</translation>
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
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>child</source>
        <translation>Kind</translation>
    </message>
    <message>
        <source>cat</source>
        <translation>Katze</translation>
    </message>
    <message>
        <source>dog</source>
        <translation>Hund</translation>
    </message>
    <message>
        <source>other animal</source>
        <translation>anderes Tier</translation>
    </message>
    <message>
        <source>%1, %2: reaches no spot</source>
        <translation>%1, %2: erreicht keinen Platz</translation>
    </message>
    <message>
        <source>%1, %2: reaches %3</source>
        <translation>%1, %2: erreicht %3</translation>
    </message>
    <message>
        <source>Spots marked as within reach, though nobody on the list gets at them: %1.</source>
        <translation>Als erreichbar bezeichnete Plätze, an die niemand auf der Liste kommt: %1.</translation>
    </message>
    <message>
        <source>whoever comes there</source>
        <translation>wer dort hinkommt</translation>
    </message>
    <message>
        <source>%1 at %2, within reach of %3. %4. %5 %6</source>
        <translation>%1, %2, in Reichweite: %3. %4. %5 %6</translation>
    </message>
    <message>
        <source>Nobody is listed, and no spot is marked as within reach.</source>
        <translation>Niemand steht auf der Liste, und kein Platz ist als erreichbar bezeichnet.</translation>
    </message>
    <message>
        <source>No plant that is known to hurt stands within their reach. One that is not known to may hurt all the same.</source>
        <translation>Keine Pflanze, die bekanntermaßen schadet, steht in ihrer Reichweite. Auch eine, von der nichts bekannt ist, kann schaden.</translation>
    </message>
    <message>
        <source>One plant that can hurt stands within reach.</source>
        <translation>Eine Pflanze, die schaden kann, steht in Reichweite.</translation>
    </message>
    <message>
        <source>%1 plants that can hurt stand within reach.</source>
        <translation>%1 Pflanzen, die schaden können, stehen in Reichweite.</translation>
    </message>
    <message>
        <source>A cat is on the list: %1 can kill it, wherever the plant stands. %2</source>
        <translation>Eine Katze steht auf der Liste: %1 kann sie töten, wo immer die Pflanze steht. %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: reaches no spot</source>
        <translation>%1: erreicht keinen Platz</translation>
    </message>
    <message>
        <source>%1: reaches %2</source>
        <translation>%1: erreicht %2</translation>
    </message>
    <message>
        <source>The name is longer than %1 letters; a shorter one is enough.</source>
        <translation>Der Name ist länger als %1 Buchstaben; ein kürzerer genügt.</translation>
    </message>
    <message>
        <source>%1 is on the list. Say which spots are within reach.</source>
        <translation>%1 steht auf der Liste. Angeben, welche Plätze in Reichweite sind.</translation>
    </message>
    <message>
        <source>%1 is now called %2.</source>
        <translation>%1 heißt jetzt %2.</translation>
    </message>
    <message>
        <source>%1 reaches %2; plans made from now on heed it.</source>
        <translation>%1 erreicht %2; Pläne von jetzt an beachten es.</translation>
    </message>
    <message>
        <source>%1 does not reach %2; plans made from now on heed it.</source>
        <translation>%1 erreicht %2 nicht; Pläne von jetzt an beachten es.</translation>
    </message>
    <message>
        <source>%1: off the list</source>
        <translation>%1: von der Liste</translation>
    </message>
    <message>
        <source>%1 is off the list.</source>
        <translation>%1 ist von der Liste.</translation>
    </message>
    <message>
        <source>Taken back: %1</source>
        <translation>Zurückgenommen: %1</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::HomeRecordModel</name>
    <message>
        <source>A record is one file, and %1 were let go here. Nothing was taken in.</source>
        <translation>Eine Aufzeichnung ist eine Datei, und hier wurden %1 losgelassen. Nichts wurde aufgenommen.</translation>
    </message>
    <message>
        <source>Only a file of this computer can be taken in. Save the record first. Nothing was taken in.</source>
        <translation>Nur eine Datei dieses Rechners kann aufgenommen werden. Die Aufzeichnung zuerst speichern. Nichts wurde aufgenommen.</translation>
    </message>
    <message>
        <source>Say which file holds the record.</source>
        <translation>Angeben, in welcher Datei die Aufzeichnung steht.</translation>
    </message>
    <message>
        <source>“%1” is no height of a place; write it as %2.</source>
        <translation>„%1“ ist keine Höhe eines Ortes; so schreiben: %2.</translation>
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
        <translation>„%1“ ist keine Lage; beide Koordinaten schreiben, etwa 48.2, 20.5.</translation>
    </message>
    <message>
        <source>The head line of the file has no columns date, low and high (rain may be missing). If it is a table of days that calls them otherwise, write its names below in the order date, low, high, rain, such as Day,Min,Max,Rain. Nothing was taken in.</source>
        <translation>Die Kopfzeile der Datei hat keine Spalten date, low und high (rain darf fehlen). Ist sie eine Tabelle von Tagen, die sie anders nennt, ihre Namen unten in der Reihenfolge Datum, Tief, Hoch, Regen schreiben, etwa Day,Min,Max,Rain. Nichts wurde übernommen.</translation>
    </message>
    <message>
        <source>It is not plausible for this place: %1. Nothing was taken in.</source>
        <translation>Für diesen Ort ist sie nicht glaubhaft: %1. Nichts wurde aufgenommen.</translation>
    </message>
    <message>
        <source>Taken in: %1.</source>
        <translation>Aufgenommen: %1.</translation>
    </message>
    <message>
        <source>Removed: %1. The shipped stations answer again.</source>
        <translation>Entfernt: %1. Es antworten wieder die mitgelieferten Stationen.</translation>
    </message>
    <message>
        <source>%1 is there again.</source>
        <translation>%1 ist wieder da.</translation>
    </message>
    <message>
        <source>Taken out again; the shipped stations answer.</source>
        <translation>Wieder herausgenommen; es antworten die mitgelieferten Stationen.</translation>
    </message>
    <message>
        <source>Removed again; the shipped stations answer.</source>
        <translation>Wieder entfernt; es antworten die mitgelieferten Stationen.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::KindFilter</name>
    <message>
        <source>summer flowers</source>
        <translation>Sommerblumen</translation>
    </message>
    <message>
        <source>bulbs and tubers</source>
        <translation>Zwiebeln und Knollen</translation>
    </message>
    <message>
        <source>insect eaters</source>
        <translation>Insektenfresser</translation>
    </message>
    <message>
        <source>citrus and fruit</source>
        <translation>Zitrus und Obst</translation>
    </message>
    <message>
        <source>ferns</source>
        <translation>Farne</translation>
    </message>
    <message>
        <source>flowering pot plants</source>
        <translation>blühende Topfpflanzen</translation>
    </message>
    <message>
        <source>foliage plants</source>
        <translation>Blattpflanzen</translation>
    </message>
    <message>
        <source>herbs</source>
        <translation>Kräuter</translation>
    </message>
    <message>
        <source>orchids</source>
        <translation>Orchideen</translation>
    </message>
    <message>
        <source>palms</source>
        <translation>Palmen</translation>
    </message>
    <message>
        <source>hardy porch plants</source>
        <translation>harte Kübelpflanzen</translation>
    </message>
    <message>
        <source>tender porch plants</source>
        <translation>zarte Kübelpflanzen</translation>
    </message>
    <message>
        <source>succulents</source>
        <translation>Sukkulenten</translation>
    </message>
    <message>
        <source>vegetables</source>
        <translation>Gemüse</translation>
    </message>
    <message>
        <source>a figure of their own</source>
        <translation>eine eigene Zahl</translation>
    </message>
    <message>
        <source>a cold-store test</source>
        <translation>ein Kühlhausversuch</translation>
    </message>
    <message>
        <source>a hardiness class</source>
        <translation>eine Härteklasse</translation>
    </message>
    <message>
        <source>a figure of their group</source>
        <translation>eine Zahl ihrer Gruppe</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>übliche Praxis</translation>
    </message>
    <message>
        <source>all groups</source>
        <translation>alle Gruppen</translation>
    </message>
    <message>
        <source>whatever it is</source>
        <translation>was auch immer</translation>
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
        <translation>Auf Englisch: %1.</translation>
    </message>
    <message>
        <source>%1 In English: %2.</source>
        <translation>%1 Auf Englisch: %2.</translation>
    </message>
    <message>
        <source>Where it grows well, heat, light, growth and rest: %1.</source>
        <translation>Wo sie gut wächst, Hitze, Licht, Wachstum und Ruhe: %1.</translation>
    </message>
    <message>
        <source>Poison: %1.</source>
        <translation>Gift: %1.</translation>
    </message>
    <message>
        <source>Water, feed, repotting, and light in moles by its class: common practice, no source.</source>
        <translation>Wasser, Dünger, Umtopfen und Licht in Mol nach seiner Klasse: übliche Praxis, ohne Quelle.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::LightReadingModel</name>
    <message>
        <source>lux</source>
        <translation>Lux</translation>
    </message>
    <message>
        <source>foot-candles</source>
        <translation>Footcandle</translation>
    </message>
    <message>
        <source>µmol per m² and s</source>
        <translation>µmol je m² und s</translation>
    </message>
    <message>
        <source>moles a day</source>
        <translation>Mol am Tag</translation>
    </message>
    <message>
        <source>daylight</source>
        <translation>Tageslicht</translation>
    </message>
    <message>
        <source>a white LED lamp</source>
        <translation>einer weißen LED-Lampe</translation>
    </message>
    <message>
        <source>a fluorescent tube</source>
        <translation>einer Leuchtstoffröhre</translation>
    </message>
    <message>
        <source>a high-pressure sodium lamp</source>
        <translation>einer Natriumdampf-Hochdrucklampe</translation>
    </message>
    <message>
        <source>none needed</source>
        <translation>keine nötig</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>too weak</source>
        <translation>zu schwach</translation>
    </message>
    <message>
        <source>A reading is a number from 0 to %1.</source>
        <translation>Ein Messwert ist eine Zahl von 0 bis %1.</translation>
    </message>
    <message>
        <source>Hours of a day lie above 0 and up to 24.</source>
        <translation>Stunden eines Tages liegen über 0 und gehen bis 24.</translation>
    </message>
    <message>
        <source>Spread over %1 h that is %2 µmol per m² and s: a meter reads %3 lux, or %4 foot-candles.</source>
        <translation>Über %1 h verteilt sind das %2 µmol je m² und s: ein Messgerät zeigt %3 Lux oder %4 Footcandle.</translation>
    </message>
    <message>
        <source>%1 µmol per m² and s; over %2 h they make %3 moles of light a day.</source>
        <translation>%1 µmol je m² und s; in %2 h werden daraus %3 Mol Licht am Tag.</translation>
    </message>
    <message>
        <source>White LEDs differ by their colour: right to about 15 %.</source>
        <translation>Weiße LEDs unterscheiden sich nach ihrer Farbe: auf etwa 15 % genau.</translation>
    </message>
    <message>
        <source>The plan reckons with %1 moles a day at %2 in %3.</source>
        <translation>Der Plan rechnet mit %1 Mol am Tag, Platz: %2, Monat: %3.</translation>
    </message>
    <message>
        <source>Write the day’s light that is wanted too.</source>
        <translation>Auch das gewünschte Licht am Tag angeben.</translation>
    </message>
    <message>
        <source>A day’s light lies above 0 and up to 80 moles.</source>
        <translation>Das Licht eines Tages liegt über 0 und geht bis 80 Mol.</translation>
    </message>
    <message>
        <source>Write the lamp’s light at the leaves too.</source>
        <translation>Auch das Licht der Lampe an den Blättern angeben.</translation>
    </message>
    <message>
        <source>A lamp’s light at the leaves lies above 0 and up to 3000 µmol.</source>
        <translation>Das Licht einer Lampe an den Blättern liegt über 0 und geht bis 3000 µmol.</translation>
    </message>
    <message>
        <source>On top of what was read, this lamp is too weak.</source>
        <translation>Zu dem, was gemessen ist, ist diese Lampe zu schwach.</translation>
    </message>
    <message>
        <source>On top of what was read, the lamp burns %1 h a day.</source>
        <translation>Zu dem, was gemessen ist, brennt die Lampe %1 h am Tag.</translation>
    </message>
    <message>
        <source>What was read is enough without a lamp.</source>
        <translation>Was gemessen ist, reicht ohne Lampe.</translation>
    </message>
    <message>
        <source>%1: %2 moles a day, lamp: %3</source>
        <translation>%1: %2 Mol am Tag, Lampe: %3</translation>
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
        <translation>Es fehlt, welche Kultur es ist, etwa Tomate.</translation>
    </message>
    <message>
        <source>No crop here is called “%1”, nor nearly so. Write another name of it, or its botanical name.</source>
        <translation>Keine Kultur hier heißt „%1“ oder ähnlich. Einen anderen Namen davon schreiben oder den botanischen.</translation>
    </message>
    <message>
        <source>No crop here is called “%1”; did you mean %2?</source>
        <translation>Keine Kultur hier heißt „%1“; war %2 gemeint?</translation>
    </message>
    <message>
        <source>There is a lot “%1” already; give this one another name.</source>
        <translation>Ein Tütchen „%1“ gibt es schon; diesem einen anderen Namen geben.</translation>
    </message>
    <message>
        <source>The year on the packet lies from 1950 to %1, or is left blank.</source>
        <translation>Das Jahr auf dem Tütchen liegt zwischen 1950 und %1, oder das Feld bleibt leer.</translation>
    </message>
    <message>
        <source>Give a percentage above 0, up to 100, or leave it blank.</source>
        <translation>Einen Prozentsatz über 0 bis 100 angeben oder leer lassen.</translation>
    </message>
    <message>
        <source>The seeds of the packet are a whole number from 1, or are left blank.</source>
        <translation>Die Samen des Tütchens sind eine ganze Zahl ab 1, oder das Feld bleibt leer.</translation>
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
        <translation>Ecke %1 von %2</translation>
    </message>
    <message>
        <source>next corner</source>
        <translation>nächste Ecke</translation>
    </message>
    <message>
        <source>point %1</source>
        <translation>Punkt %1</translation>
    </message>
    <message>
        <source>point %1, not set</source>
        <translation>Punkt %1, nicht gesetzt</translation>
    </message>
    <message>
        <source>Set A, B, 1 and 2 first, and say how long A to B is.</source>
        <translation>Erst A, B, 1 und 2 setzen und angeben, wie lang A bis B ist.</translation>
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
        <translation>Letzte Messung, %1</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 Prozentpunkte</translation>
    </message>
    <message>
        <source>real: above %1</source>
        <translation>echt: über %1</translation>
    </message>
    <message>
        <source>real above %1</source>
        <translation>echt über %1</translation>
    </message>
    <message>
        <source>Set A and B on something of known size, then 1 and 2 on the plant.</source>
        <translation>A und B auf etwas von bekannter Größe setzen, dann 1 und 2 auf die Pflanze.</translation>
    </message>
    <message>
        <source>as the camera sees it; 9 in 10: %1 to %2</source>
        <translation>wie die Kamera sie sieht; 9 von 10: %1 bis %2</translation>
    </message>
    <message>
        <source>Try %1</source>
        <translation>Versuch %1</translation>
    </message>
    <message>
        <source>Mean of %1</source>
        <translation>Mittel aus %1</translation>
    </message>
    <message>
        <source>± %1</source>
        <translation>± %1</translation>
    </message>
    <message>
        <source>A second try shows how far the marks can be trusted: set all four points again. The error here is that of marks set to within two pixels of the photograph, and no nearer than a pixel of the screen; arrow keys set them finer.</source>
        <translation>Ein zweiter Versuch zeigt, wie weit den Marken zu trauen ist: alle vier Punkte neu setzen. Der Fehler hier gilt für Marken, die auf zwei Bildpunkte des Fotos genau sitzen, und nicht genauer als ein Punkt des Bildschirms; mit den Pfeiltasten sitzen sie genauer.</translation>
    </message>
    <message>
        <source>Another try would bring the error to %1.</source>
        <translation>Ein weiterer Versuch brächte den Fehler auf %1.</translation>
    </message>
    <message>
        <source>Set corners round something that is grey in truth and stands in the plant’s light, such as the patch of the card; three at least. The colours of the whole photograph are set by it.</source>
        <translation>Ecken um etwas setzen, das wirklich grau ist und im Licht der Pflanze steht, etwa die Fläche der Karte; mindestens drei. Danach richten sich die Farben des ganzen Fotos.</translation>
    </message>
    <message>
        <source>The patch is set. Under Green share, set corners round the leaves next.</source>
        <translation>Die Fläche ist gesetzt. Als Nächstes unter Grünanteil Ecken um die Blätter setzen.</translation>
    </message>
    <message>
        <source>Set corners round the leaves, three at least; keep clear of pot and soil.</source>
        <translation>Ecken um die Blätter setzen, mindestens drei; Topf und Erde aussparen.</translation>
    </message>
    <message>
        <source>of the leaves %1 yellow or brown</source>
        <translation>von den Blättern %1 gelb oder braun</translation>
    </message>
    <message>
        <source>%1 green</source>
        <translation>%1 grün</translation>
    </message>
    <message>
        <source>of the outline</source>
        <translation>des Umrisses</translation>
    </message>
    <message>
        <source>of the outline; %1</source>
        <translation>des Umrisses; %1</translation>
    </message>
    <message>
        <source>%1; colours set by the grey patch</source>
        <translation>%1; Farben nach der grauen Fläche</translation>
    </message>
    <message>
        <source>As the camera took it</source>
        <translation>Wie die Kamera es aufnahm</translation>
    </message>
    <message>
        <source>Green and the rest hardly part here, so this share means little. A plain ground behind the plant helps.</source>
        <translation>Grün und Rest trennen sich hier kaum, der Anteil sagt also wenig. Ein ruhiger Grund hinter der Pflanze hilft.</translation>
    </message>
    <message>
        <source>The patch’s strongest colour came out %1 % above its weakest, more than the lamps of a room and a camera that allows for them leave. If it is not grey in truth, mark another: its own colour was taken out.</source>
        <translation>Die stärkste Farbe der Fläche lag %1 % über der schwächsten, mehr als Zimmerlampen und eine Kamera übrig lassen, die sie ausgleicht. Ist sie in Wahrheit nicht grau, eine andere markieren: Ihre eigene Farbe wurde herausgerechnet.</translation>
    </message>
    <message>
        <source>In this light the patch’s strongest colour came out %1 % above its weakest, and that is taken out. Keep the patch in every photograph that is to be compared.</source>
        <translation>In diesem Licht fiel die stärkste Farbe der Fläche %1 % stärker aus als die schwächste; das ist herausgerechnet. Die Fläche in jedem Foto mitnehmen, das verglichen werden soll.</translation>
    </message>
    <message>
        <source>The same outline, light and place of the camera each time make it comparable. Where the light changes, mark a grey patch.</source>
        <translation>Jedes Mal derselbe Umriss, dasselbe Licht und derselbe Platz der Kamera machen es vergleichbar. Wo das Licht wechselt, eine graue Fläche markieren.</translation>
    </message>
    <message>
        <source>“%1” is no number. Write it such as 27.3.</source>
        <translation>„%1“ ist keine Zahl. So schreiben: 27,3.</translation>
    </message>
    <message>
        <source>Draw the outline first, or type the share.</source>
        <translation>Erst den Umriss zeichnen oder den Anteil eintippen.</translation>
    </message>
    <message>
        <source>Set the four points first, or type the length.</source>
        <translation>Erst die vier Punkte setzen oder die Länge eintippen.</translation>
    </message>
    <message>
        <source>colours set by the grey patch</source>
        <translation>Farben nach der grauen Fläche</translation>
    </message>
    <message>
        <source>%1: %2 %3 in the photograph of %4.</source>
        <translation>%1: %2 %3 im Foto vom %4.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::MendModel</name>
    <message>
        <source>Add plants</source>
        <translation>Pflanzen hinzufügen</translation>
    </message>
    <message>
        <source>Add spots</source>
        <translation>Plätze anlegen</translation>
    </message>
    <message>
        <source>Change a spot</source>
        <translation>Einen Platz ändern</translation>
    </message>
    <message>
        <source>Change the place</source>
        <translation>Den Ort ändern</translation>
    </message>
    <message>
        <source>Change a plant</source>
        <translation>Eine Pflanze ändern</translation>
    </message>
    <message>
        <source>Add a lot of seed</source>
        <translation>Eine Samenpartie anlegen</translation>
    </message>
    <message>
        <source>Keep %1 at a spot</source>
        <translation>%1 an einem Platz festhalten</translation>
    </message>
    <message>
        <source>Add the plants</source>
        <translation>Die Pflanzen hinzufügen</translation>
    </message>
    <message>
        <source>Add the spots</source>
        <translation>Die Plätze anlegen</translation>
    </message>
    <message>
        <source>Add the lot</source>
        <translation>Das Tütchen anlegen</translation>
    </message>
    <message>
        <source>Keep it there</source>
        <translation>Dort festhalten</translation>
    </message>
    <message>
        <source>Keep the change</source>
        <translation>Die Änderung speichern</translation>
    </message>
    <message>
        <source>The plant is no longer there.</source>
        <translation>Die Pflanze ist nicht mehr da.</translation>
    </message>
    <message>
        <source>Changed %1</source>
        <translation>Geändert: %1</translation>
    </message>
    <message>
        <source>Pick a kind first.</source>
        <translation>Erst eine Art wählen.</translation>
    </message>
    <message>
        <source>Added %1</source>
        <translation>Hinzugefügt: %1</translation>
    </message>
    <message>
        <source>Added %1 plants</source>
        <translation>%1 Pflanzen hinzugefügt</translation>
    </message>
    <message>
        <source>Press one of the spots first.</source>
        <translation>Erst einen der Plätze anklicken.</translation>
    </message>
    <message>
        <source>Added the spot %1</source>
        <translation>Platz angelegt: %1</translation>
    </message>
    <message>
        <source>Added %1 spots</source>
        <translation>%1 Plätze angelegt</translation>
    </message>
    <message>
        <source>Changed the spot %1</source>
        <translation>Platz geändert: %1</translation>
    </message>
    <message>
        <source>Took %1 off the list</source>
        <translation>Von der Liste genommen: %1</translation>
    </message>
    <message>
        <source>Changed the place to %1</source>
        <translation>Ort geändert: %1</translation>
    </message>
    <message>
        <source>Added the lot %1.</source>
        <translation>Tütchen angelegt: %1.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::NightEntryModel</name>
    <message>
        <source>No night is kept of %1 yet.</source>
        <translation>Von %1 ist noch keine Nacht eingetragen.</translation>
    </message>
    <message>
        <source>One night is kept of %1.</source>
        <translation>Von %1 ist eine Nacht eingetragen.</translation>
    </message>
    <message>
        <source>%1 nights are kept of %2.</source>
        <translation>%1 Nächte sind von %2 eingetragen.</translation>
    </message>
    <message>
        <source>clear, calm</source>
        <translation>klar, windstill</translation>
    </message>
    <message>
        <source>cloud or wind</source>
        <translation>Wolken oder Wind</translation>
    </message>
    <message>
        <source>Night to %1: low %2</source>
        <translation>Nacht auf %1: Tief %2</translation>
    </message>
    <message>
        <source>high %1</source>
        <translation>Hoch %1</translation>
    </message>
    <message>
        <source>at the station %1</source>
        <translation>an der Station %1</translation>
    </message>
    <message>
        <source>“%1” is no temperature of the air.</source>
        <translation>„%1“ ist keine Lufttemperatur.</translation>
    </message>
    <message>
        <source>The high lies below the low; exchange the two.</source>
        <translation>Der Höchstwert liegt unter dem Tiefstwert; die beiden vertauschen.</translation>
    </message>
    <message>
        <source>Write how many days ago the night ended, 0 to %1.</source>
        <translation>Schreiben, vor wie vielen Tagen die Nacht endete, 0 bis %1.</translation>
    </message>
    <message>
        <source>Kept: %1 at %2, the night to %3. The same night logged again takes its place; Undo above the pages takes it back.</source>
        <translation>Gespeichert: %1 an %2, die Nacht auf %3. Dieselbe Nacht, erneut eingetragen, tritt an ihre Stelle; Rückgängig über den Seiten nimmt sie zurück.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::NightLineModel</name>
    <message>
        <source>the open air at home</source>
        <translation>im Freien zu Hause</translation>
    </message>
    <message>
        <source>“%1” is no date. Write both, such as %2, or leave both blank.</source>
        <translation>„%1“ ist kein Datum. Beide schreiben, etwa %2, oder beide leer lassen.</translation>
    </message>
    <message>
        <source>The last night must be the first, or up to a year later.</source>
        <translation>Die letzte Nacht muss die erste sein oder bis zu ein Jahr später.</translation>
    </message>
    <message>
        <source>A further chance is written such as 1 in 12 or just 12, down to 1 in 1000; or leave it blank.</source>
        <translation>Eine weitere Chance schreibt sich etwa 1 von 12 oder nur 12, bis hinab zu 1 von 1000; oder leer lassen.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::NightTable</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::PhotoExportModel</name>
    <message>
        <source>Write how high each photograph is to be, %1 to %2 pixels, or leave it blank.</source>
        <translation>Schreiben, wie hoch jedes Foto werden soll, %1 bis %2 Pixel, oder leer lassen.</translation>
    </message>
    <message>
        <source>Write how many stand in a row, %1 to %2, or leave it blank.</source>
        <translation>Schreiben, wie viele in einer Reihe stehen, %1 bis %2, oder leer lassen.</translation>
    </message>
    <message>
        <source>Write how many it takes at most, %1 to %2, or leave it blank.</source>
        <translation>Schreiben, wie viele es höchstens sind, %1 bis %2, oder leer lassen.</translation>
    </message>
    <message>
        <source>Say into which folder.</source>
        <translation>Sagen, in welchen Ordner.</translation>
    </message>
    <message>
        <source>Say which picture is to be written.</source>
        <translation>Sagen, welches Bild geschrieben werden soll.</translation>
    </message>
    <message>
        <source>%1 is there already. Replace it, or take another name.</source>
        <translation>%1 ist schon da. Ersetzen oder einen anderen Namen nehmen.</translation>
    </message>
    <message>
        <source>Wrote 1 photograph to %1.</source>
        <translation>1 Foto nach %1 geschrieben.</translation>
    </message>
    <message>
        <source>Wrote %1 photographs to %2.</source>
        <translation>%1 Fotos nach %2 geschrieben.</translation>
    </message>
    <message>
        <source>They are as they were taken: some may say where that was.</source>
        <translation>Sie sind, wie sie aufgenommen wurden: Manche sagen vielleicht, wo das war.</translation>
    </message>
    <message>
        <source>Where they were taken has been taken out; the pictures are untouched.</source>
        <translation>Wo sie aufgenommen wurden, ist entfernt; die Bilder sind unverändert.</translation>
    </message>
    <message>
        <source>Stopped before the end.</source>
        <translation>Vor dem Ende angehalten.</translation>
    </message>
    <message>
        <source>There is no photograph to write.</source>
        <translation>Es gibt kein Foto zu schreiben.</translation>
    </message>
    <message>
        <source>Wrote %1 photographs beside each other to %2; nothing in it says where they were taken.</source>
        <translation>%1 Fotos nebeneinander nach %2 geschrieben; nichts darin sagt, wo sie aufgenommen wurden.</translation>
    </message>
    <message>
        <source>%1 of %2 photographs</source>
        <translation>%1 von %2 Fotos</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::PhotoImportModel</name>
    <message>
        <source>Photographs are on their way in already; wait for them or stop them first.</source>
        <translation>Es kommen schon Fotos herein; abwarten oder sie erst anhalten.</translation>
    </message>
    <message>
        <source>Say first when those photographs were taken, or leave them out.</source>
        <translation>Zuerst sagen, wann jene Fotos aufgenommen wurden, oder sie weglassen.</translation>
    </message>
    <message>
        <source>Only files and folders of this computer can be taken in. Save the photograph first.</source>
        <translation>Nur Dateien und Ordner dieses Rechners lassen sich aufnehmen. Das Foto erst speichern.</translation>
    </message>
    <message>
        <source>The photographs are being counted.</source>
        <translation>Die Fotos werden gezählt.</translation>
    </message>
    <message>
        <source>the plant</source>
        <translation>die Pflanze</translation>
    </message>
    <message>
        <source>%1: 1 photograph does not say when it was taken. When was that?</source>
        <translation>%1: 1 Foto sagt nicht, wann es aufgenommen wurde. Wann war das?</translation>
    </message>
    <message>
        <source>%1: %2 photographs do not say when they were taken. When was that?</source>
        <translation>%1: %2 Fotos sagen nicht, wann sie aufgenommen wurden. Wann war das?</translation>
    </message>
    <message>
        <source>%1 of %2 photographs</source>
        <translation>%1 von %2 Fotos</translation>
    </message>
    <message>
        <source>%1: no new photograph.</source>
        <translation>%1: kein neues Foto.</translation>
    </message>
    <message>
        <source>%1: 1 photograph came in.</source>
        <translation>%1: 1 Foto kam herein.</translation>
    </message>
    <message>
        <source>%1: %2 photographs came in.</source>
        <translation>%1: %2 Fotos kamen herein.</translation>
    </message>
    <message>
        <source> 1 was known already and shows the plant now; it still shows %1 too.</source>
        <translation> 1 war schon bekannt und zeigt jetzt die Pflanze; es zeigt weiterhin auch %1.</translation>
    </message>
    <message>
        <source> %1 were known already and show the plant now; some of them still show %2 too.</source>
        <translation> %1 waren schon bekannt und zeigen jetzt die Pflanze; einige davon zeigen weiterhin auch %2.</translation>
    </message>
    <message>
        <source> 1 was known already and shows the plant now.</source>
        <translation> 1 war schon bekannt und zeigt jetzt die Pflanze.</translation>
    </message>
    <message>
        <source> %1 were known already and show the plant now.</source>
        <translation> %1 waren schon bekannt und zeigen jetzt die Pflanze.</translation>
    </message>
    <message>
        <source> 1 was not taken.</source>
        <translation> 1 wurde nicht aufgenommen.</translation>
    </message>
    <message>
        <source> %1 were not taken.</source>
        <translation> %1 wurden nicht aufgenommen.</translation>
    </message>
    <message>
        <source> Stopped; what came in stays.</source>
        <translation> Angehalten; was hereinkam, bleibt.</translation>
    </message>
    <message>
        <source>Say which folder is to be watched.</source>
        <translation>Sagen, welcher Ordner beobachtet werden soll.</translation>
    </message>
    <message>
        <source>%1 is no folder of this computer.</source>
        <translation>%1 ist kein Ordner dieses Rechners.</translation>
    </message>
    <message>
        <source>Nothing new has come yet.</source>
        <translation>Noch ist nichts Neues gekommen.</translation>
    </message>
    <message>
        <source>it names no plant; begin its name with a plant’s, or put it into a folder called after one</source>
        <translation>es nennt keine Pflanze; seinen Namen mit dem einer Pflanze beginnen oder es in einen Ordner legen, der nach einer heißt</translation>
    </message>
    <message>
        <source>1 photograph has come in.</source>
        <translation>1 Foto ist hereingekommen.</translation>
    </message>
    <message>
        <source>%1 photographs have come in.</source>
        <translation>%1 Fotos sind hereingekommen.</translation>
    </message>
    <message>
        <source>1 photograph came in from the folder that is watched.</source>
        <translation>1 Foto kam aus dem beobachteten Ordner herein.</translation>
    </message>
    <message>
        <source>%1 photographs came in from the folder that is watched.</source>
        <translation>%1 Fotos kamen aus dem beobachteten Ordner herein.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::PhotosAsideModel</name>
    <message>
        <source>%1, which is gone</source>
        <translation>%1, die es nicht mehr gibt</translation>
    </message>
    <message>
        <source>a plant that is gone</source>
        <translation>eine Pflanze, die es nicht mehr gibt</translation>
    </message>
    <message>
        <source>out of the lists; shows no plant</source>
        <translation>aus den Listen; zeigt keine Pflanze</translation>
    </message>
    <message>
        <source>shows no plant</source>
        <translation>zeigt keine Pflanze</translation>
    </message>
    <message>
        <source>out of the lists; shows %1</source>
        <translation>aus den Listen; zeigt %1</translation>
    </message>
    <message>
        <source>shows %1</source>
        <translation>zeigt %1</translation>
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
        <translation>Keine: Jedes Foto steht in den Listen und zeigt eine vorhandene Pflanze.</translation>
    </message>
    <message>
        <source>The newest %1 of %2.</source>
        <translation>Die neuesten %1 von %2.</translation>
    </message>
    <message>
        <source>The photograph %1 of %2</source>
        <translation>Das Foto %1 vom %2</translation>
    </message>
    <message>
        <source>%1 is back in the lists. Undo above the pages takes that back.</source>
        <translation>%1 ist wieder in den Listen. Rückgängig über den Seiten nimmt das zurück.</translation>
    </message>
    <message>
        <source>%1 is out of the lists; its file stays.</source>
        <translation>%1 ist aus den Listen; die Datei bleibt.</translation>
    </message>
    <message>
        <source>%1 shows %2.</source>
        <translation>%1 zeigt %2.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::PhotosModel</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Two photographs of the plant are needed to lay them side by side.</source>
        <translation>Zwei Fotos der Pflanze sind nötig, um sie nebeneinander zu legen.</translation>
    </message>
    <message>
        <source>by the camera’s clock</source>
        <translation>nach der Uhr der Kamera</translation>
    </message>
    <message>
        <source>by the file’s time; the camera wrote none</source>
        <translation>nach der Zeit der Datei; die Kamera schrieb keine</translation>
    </message>
    <message>
        <source>set by hand</source>
        <translation>von Hand gesetzt</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Aufgenommen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 x %2 pixels</source>
        <translation>%1 x %2 Bildpunkte</translation>
    </message>
    <message>
        <source>%1, %2 MB</source>
        <translation>%1, %2 MB</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Position</translation>
    </message>
    <message>
        <source>%1. It leaves the household only where you say so.</source>
        <translation>%1. Sie verlässt den Haushalt nur, wo Sie es sagen.</translation>
    </message>
    <message>
        <source>The camera wrote none.</source>
        <translation>Die Kamera schrieb keine.</translation>
    </message>
    <message>
        <source>Shows</source>
        <translation>Zeigt</translation>
    </message>
    <message>
        <source>Camera</source>
        <translation>Kamera</translation>
    </message>
    <message>
        <source>%1: %2, then %3, %4</source>
        <translation>%1: %2, dann %3, %4</translation>
    </message>
    <message>
        <source>%1 days apart. Nothing was measured near both dates; measure in each of the two.</source>
        <translation>%1 Tage auseinander. Nichts wurde nahe beiden Tagen gemessen; in jedem der beiden messen.</translation>
    </message>
    <message>
        <source>%1 days apart; measured within %2 days of each photograph.</source>
        <translation>%1 Tage auseinander; gemessen höchstens %2 Tage neben jedem Foto.</translation>
    </message>
    <message>
        <source>The photograph of %1 stands for %2.</source>
        <translation>Das Foto vom %1 steht für %2.</translation>
    </message>
    <message>
        <source>%1 is drawn on its shelf again.</source>
        <translation>%1 wird im Regal wieder gezeichnet.</translation>
    </message>
    <message>
        <source>The photograph of %1 does not show %2 any more; it stays among the photographs.</source>
        <translation>Das Foto vom %1 zeigt %2 nicht mehr; es bleibt unter den Fotos.</translation>
    </message>
    <message>
        <source>The photograph of %1 is out of the lists; its file stays, and Home, Data and backup brings it back.</source>
        <translation>Das Foto vom %1 ist aus den Listen; die Datei bleibt, und Zuhause, Daten und Sicherung holt es zurück.</translation>
    </message>
    <message>
        <source>There is no plant with the number %1 (any more).</source>
        <translation>Eine Pflanze mit der Nummer %1 gibt es nicht (mehr).</translation>
    </message>
    <message>
        <source>The photograph of %1 shows %2 too.</source>
        <translation>Das Foto vom %1 zeigt auch %2.</translation>
    </message>
    <message>
        <source>The photograph %1 was taken on %2.</source>
        <translation>Das Foto %1 wurde am %2 aufgenommen.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::PinForm</name>
    <message>
        <source>on %1</source>
        <translation>am %1</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>vom %1 bis %2</translation>
    </message>
    <message>
        <source>It is kept at %1 always.</source>
        <translation>Immer festgehalten: %1.</translation>
    </message>
    <message>
        <source>It is kept at %1 %2.</source>
        <translation>Festgehalten: %1, %2.</translation>
    </message>
    <message>
        <source>%1 is poisonous or spiny, and a child or an animal gets at the plants of %2. Choose another spot.</source>
        <translation>%1 ist giftig oder stachlig, und ein Kind oder ein Tier kommt an die Pflanzen dort (%2). Einen anderen Platz wählen.</translation>
    </message>
    <message>
        <source>Choose a spot first.</source>
        <translation>Erst einen Platz wählen.</translation>
    </message>
    <message>
        <source>%1 is kept at %2 always already.</source>
        <translation>%1 ist schon immer festgehalten: %2.</translation>
    </message>
    <message>
        <source>%1 is kept at %2 always</source>
        <translation>%1 ist immer festgehalten: %2</translation>
    </message>
    <message>
        <source>Write both evenings, or leave both blank to keep it there always.</source>
        <translation>Beide Abende angeben, oder beide leer lassen, um sie immer dort festzuhalten.</translation>
    </message>
    <message>
        <source>“%1” is no date. Write it such as %2.</source>
        <translation>„%1“ ist kein Datum. So schreiben: %2.</translation>
    </message>
    <message>
        <source>The last evening lies before the first; exchange the two.</source>
        <translation>Der letzte Abend liegt vor dem ersten; die beiden vertauschen.</translation>
    </message>
    <message>
        <source>The last evening is over; nothing is left to keep it for.</source>
        <translation>Der letzte Abend ist vorbei; es bleibt nichts festzuhalten.</translation>
    </message>
    <message>
        <source>%1 is kept at %2 %3 already, and it cannot stand in two places. Take that back first, or choose other evenings.</source>
        <translation>%1 ist schon festgehalten (%2, %3) und kann nicht an zwei Plätzen stehen. Das erst lösen, oder andere Abende wählen.</translation>
    </message>
    <message>
        <source>%1 is kept at %2 %3</source>
        <translation>%1 ist festgehalten: %2, %3</translation>
    </message>
    <message>
        <source>%1 is pinned no longer</source>
        <translation>%1 ist nicht mehr festgehalten</translation>
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
        <translation>Wie getippt.</translation>
    </message>
    <message>
        <source>Unsure? Leave it empty; the stations’ height is taken and the error grows.</source>
        <translation>Unsicher? Leer lassen; dann gilt die Höhe der Stationen, und der Fehler wächst.</translation>
    </message>
    <message>
        <source>“%1” is no latitude; write it as 48.2 or 48°12′N.</source>
        <translation>„%1“ ist keine Breite; so schreiben: 48,2 oder 48°12′N.</translation>
    </message>
    <message>
        <source>“%1” is no longitude; write it as 16.4 or 16°24′E.</source>
        <translation>„%1“ ist keine Länge; so schreiben: 16,4 oder 16°24′E.</translation>
    </message>
    <message>
        <source>A latitude lies within −90 and 90 degrees; %1 does not. Are the two exchanged?</source>
        <translation>Eine Breite liegt zwischen −90 und 90 Grad; %1 nicht. Sind die beiden vertauscht?</translation>
    </message>
    <message>
        <source>A longitude lies within −180 and 180 degrees; %1 does not.</source>
        <translation>Eine Länge liegt zwischen −180 und 180 Grad; %1 nicht.</translation>
    </message>
    <message>
        <source>“%1” is not a number; write the height as 170, or leave it empty.</source>
        <translation>„%1“ ist keine Zahl; die Höhe so schreiben: 170, oder leer lassen.</translation>
    </message>
    <message>
        <source>No place on land is %1 %2 high; heights lie within −500 and 9000 m.</source>
        <translation>Kein Ort an Land liegt %1 %2 hoch; Höhen liegen zwischen −500 und 9000 m.</translation>
    </message>
    <message>
        <source>There is no time zone “%1”; names are like Europe/Vienna.</source>
        <translation>Eine Zeitzone „%1“ gibt es nicht; Namen lauten wie Europe/Vienna.</translation>
    </message>
    <message>
        <source>Proposed: the height of %1. Correct it where you know better.</source>
        <translation>Vorgeschlagen: die Höhe von %1. Berichtigen, wo es besser bekannt ist.</translation>
    </message>
    <message>
        <source>No town is near enough to propose one; names are like Europe/Vienna.</source>
        <translation>Kein Ort ist nah genug, um eine vorzuschlagen; Namen lauten wie Europe/Vienna.</translation>
    </message>
    <message>
        <source>Proposed: that of %1.</source>
        <translation>Vorgeschlagen: die von %1.</translation>
    </message>
    <message>
        <source> Please check it.</source>
        <translation> Bitte prüfen.</translation>
    </message>
    <message>
        <source> Towns with %1 are near too; please check it.</source>
        <translation> Orte mit %1 liegen auch nahe; bitte prüfen.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>A place is missing: the nearest town, or latitude and longitude.</source>
        <translation>Ein Ort fehlt: der nächste Ort, oder Breite und Länge.</translation>
    </message>
    <message>
        <source>A time zone is missing; names are like Europe/Vienna.</source>
        <translation>Eine Zeitzone fehlt; Namen lauten wie Europe/Vienna.</translation>
    </message>
    <message>
        <source>Towns cannot be looked for: %1. Coordinates work.</source>
        <translation>Orte lassen sich nicht suchen: %1. Koordinaten gehen.</translation>
    </message>
    <message>
        <source>These are no coordinates: %1.</source>
        <translation>Das sind keine Koordinaten: %1.</translation>
    </message>
    <message>
        <source>No town here is called that. Try a larger one near, or type coordinates.</source>
        <translation>Kein Ort heißt hier so. Einen größeren in der Nähe versuchen oder Koordinaten eintippen.</translation>
    </message>
    <message>
        <source>No town is called that. Did you mean one of these?</source>
        <translation>Kein Ort heißt so. War einer von diesen gemeint?</translation>
    </message>
    <message>
        <source>%1, %2 above the sea</source>
        <translation>%1, %2 über dem Meer</translation>
    </message>
    <message>
        <source>%1, guessed by the clock</source>
        <translation>%1, nach der Uhr geraten</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::PlaceMonthsModel</name>
    <message>
        <source>A pot is %1 to %2 %3 across.</source>
        <translation>Ein Topf ist %1 bis %2 %3 breit.</translation>
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
        <translation>nirgends: der Plan trägt sie</translation>
    </message>
    <message>
        <source>A plant needs a name.</source>
        <translation>Eine Pflanze braucht einen Namen.</translation>
    </message>
    <message>
        <source>There is, or was, a plant “%1”; give this one another name, so that their histories stay apart.</source>
        <translation>Eine Pflanze „%1“ gibt oder gab es; dieser einen anderen Namen geben, damit ihre Geschichten getrennt bleiben.</translation>
    </message>
    <message>
        <source>The pot’s volume is a number above 0, such as 12, or is left blank.</source>
        <translation>Das Volumen des Topfs ist eine Zahl über 0, etwa 12, oder das Feld bleibt leer.</translation>
    </message>
    <message>
        <source>The weight of plant and pot is a number above 0, such as 4.</source>
        <translation>Das Gewicht von Pflanze und Topf ist eine Zahl über 0, etwa 4.</translation>
    </message>
    <message>
        <source>Each line is a temperature, such as %1.</source>
        <translation>Jede Linie ist eine Temperatur, etwa %1.</translation>
    </message>
    <message>
        <source>The lines rise from what kills over where harm begins to the safe night.</source>
        <translation>Die Linien steigen von der tödlichen über den Beginn des Schadens zur sicheren Nacht.</translation>
    </message>
    <message>
        <source>Heat cannot harm below the safe night.</source>
        <translation>Hitze kann nicht unter der sicheren Nacht schaden.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::PlantRows</name>
    <message>
        <source>%1 by the spot where the year begins</source>
        <translation>%1 nach dem Platz, an dem das Jahr beginnt</translation>
    </message>
    <message>
        <source>%1 by name</source>
        <translation>%1 nach Namen</translation>
    </message>
    <message>
        <source>%1 in order of going out</source>
        <translation>%1 nach dem Tag des Hinausgehens</translation>
    </message>
    <message>
        <source>%1 by spot</source>
        <translation>%1 nach Platz</translation>
    </message>
    <message>
        <source>%1 by date out</source>
        <translation>%1, nach dem Tag des Ausräumens</translation>
    </message>
    <message>
        <source>stepped edge: hardening</source>
        <translation>gestufte Kante: Abhärten</translation>
    </message>
    <message>
        <source>bracket: date at 1 in 5 to 1 in 20</source>
        <translation>Klammer: Tag bei 1 von 5 bis 1 von 20</translation>
    </message>
    <message>
        <source>tick below the bar: feed</source>
        <translation>Strich unter dem Balken: düngen</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::PlantShelves</name>
    <message>
        <source>at no spot</source>
        <translation>ohne Platz</translation>
    </message>
    <message>
        <source> Marked.</source>
        <translation> Markiert.</translation>
    </message>
    <message>
        <source>1 plant</source>
        <translation>1 Pflanze</translation>
    </message>
    <message>
        <source>%1 plants</source>
        <translation>%1 Pflanzen</translation>
    </message>
    <message>
        <source>%1 plants, room for 1</source>
        <translation>%1 Pflanzen, Raum für 1</translation>
    </message>
    <message>
        <source>%1 plants, room for %2</source>
        <translation>%1 Pflanzen, Raum für %2</translation>
    </message>
    <message>
        <source>%1 of %2 places, full</source>
        <translation>%1 von %2 belegt, voll</translation>
    </message>
    <message>
        <source>%1 of %2 places</source>
        <translation>%1 von %2 belegt</translation>
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
        <translation>noch ohne Platz</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::PlantsForm</name>
    <message>
        <source>No kind is of that group and rests on that; choose another.</source>
        <translation>Keine Art dieser Gruppe beruht darauf; anders wählen.</translation>
    </message>
    <message>
        <source>What is called “%1” is of another group or rests on something else.</source>
        <translation>Was „%1“ heißt, ist aus einer anderen Gruppe oder beruht auf anderem.</translation>
    </message>
    <message>
        <source>No kind here is called “%1”. Add it as a kind of your own below.</source>
        <translation>Keine Art hier heißt „%1“. Unten als eigene Art hinzufügen.</translation>
    </message>
    <message>
        <source>No kind here is called “%1”. Did you mean one of these?</source>
        <translation>Keine Art hier heißt „%1“. War eine von diesen gemeint?</translation>
    </message>
    <message>
        <source>%1 kinds are known; type a part of a name.</source>
        <translation>%1 Arten sind bekannt; einen Teil des Namens eintippen.</translation>
    </message>
    <message>
        <source>%1 of %2 kinds</source>
        <translation>%1 von %2 Arten</translation>
    </message>
    <message>
        <source>harm from %1</source>
        <translation>Schaden ab %1</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>, poisonous</source>
        <translation>, giftig</translation>
    </message>
    <message>
        <source>Stands nowhere yet; choose its spot.</source>
        <translation>Steht noch nirgends; ihren Platz wählen.</translation>
    </message>
    <message>
        <source>Poisonous, and %1 is in reach of a child or an animal.</source>
        <translation>Giftig, und %1 ist in Reichweite eines Kindes oder Tieres.</translation>
    </message>
    <message>
        <source>%1 more than fit at %2.</source>
        <translation>%1 mehr, als an den Platz passen: %2.</translation>
    </message>
    <message>
        <source>nowhere yet</source>
        <translation>noch nirgends</translation>
    </message>
    <message>
        <source>a kind of your own</source>
        <translation>eine eigene Art</translation>
    </message>
    <message>
        <source>%1, %2, at %3. %4</source>
        <translation>%1, %2, Platz: %3. %4</translation>
    </message>
    <message>
        <source>1 place free</source>
        <translation>1 Platz frei</translation>
    </message>
    <message>
        <source>%1 places free</source>
        <translation>%1 Plätze frei</translation>
    </message>
    <message>
        <source>The kind needs a name.</source>
        <translation>Die Art braucht einen Namen.</translation>
    </message>
    <message>
        <source>The safe night is missing: the lowest night that it stands without stress, such as %1.</source>
        <translation>Die sichere Nacht fehlt: die tiefste Nacht, die sie ohne Belastung übersteht, etwa %1.</translation>
    </message>
    <message>
        <source>The night at which harm begins is missing, such as %1.</source>
        <translation>Die Nacht fehlt, ab der Schaden beginnt, etwa %1.</translation>
    </message>
    <message>
        <source>Harm cannot begin above the safe night, %1.</source>
        <translation>Schaden kann nicht über der sicheren Nacht beginnen, %1.</translation>
    </message>
    <message>
        <source>The night that kills it lies at %1 or below, or is left blank.</source>
        <translation>Die tödliche Nacht liegt bei %1 oder tiefer, oder das Feld bleibt leer.</translation>
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
        <translation>%1 ist nicht mehr da (%2): Die Seite lässt sich öffnen, und Notizen werden angenommen.</translation>
    </message>
    <message>
        <source>%1 plants</source>
        <translation>%1 Pflanzen</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Write how many days ago it was, 0 to %1.</source>
        <translation>Schreiben, vor wie vielen Tagen es war, 0 bis %1.</translation>
    </message>
    <message>
        <source>Choose a plant first: arrow keys, or a click.</source>
        <translation>Erst eine Pflanze wählen: Pfeiltasten oder ein Klick.</translation>
    </message>
    <message>
        <source>%1: watered today.</source>
        <translation>%1: heute gegossen.</translation>
    </message>
    <message>
        <source>%1: fed today.</source>
        <translation>%1: heute gedüngt.</translation>
    </message>
    <message>
        <source>%1: new growth seen today.</source>
        <translation>%1: heute neuer Trieb gesehen.</translation>
    </message>
    <message>
        <source>%1: in flower today.</source>
        <translation>%1: blüht heute.</translation>
    </message>
    <message>
        <source>%1: repotted today.</source>
        <translation>%1: heute umgetopft.</translation>
    </message>
    <message>
        <source>%1: pruned today.</source>
        <translation>%1: heute geschnitten.</translation>
    </message>
    <message>
        <source>%1: died today. Off the lists, with all of the past kept; Undo brings it back.</source>
        <translation>%1: heute eingegangen. Von den Listen genommen, die Vergangenheit bleibt ganz erhalten; Rückgängig bringt sie zurück.</translation>
    </message>
    <message>
        <source>%1: given away today. Off the lists, with all of the past kept; Undo brings it back.</source>
        <translation>%1: heute weggegeben. Von den Listen genommen, die Vergangenheit bleibt ganz erhalten; Rückgängig bringt sie zurück.</translation>
    </message>
    <message>
        <source>Write the note first.</source>
        <translation>Erst die Notiz schreiben.</translation>
    </message>
    <message>
        <source>%1: noted.</source>
        <translation>%1: notiert.</translation>
    </message>
    <message>
        <source>Choose what happened.</source>
        <translation>Wählen, was geschah.</translation>
    </message>
    <message>
        <source>%1: %2, on %3.</source>
        <translation>%1: %2, am %3.</translation>
    </message>
    <message>
        <source>There is no spot of that number.</source>
        <translation>Einen Platz mit dieser Nummer gibt es nicht.</translation>
    </message>
    <message>
        <source>%1 stands at %2 already.</source>
        <translation>%1 steht schon dort: %2.</translation>
    </message>
    <message>
        <source>%1 moved to %2 today.</source>
        <translation>%1 heute umgestellt: %2.</translation>
    </message>
    <message>
        <source> It has %1 places.</source>
        <translation> Er fasst %1.</translation>
    </message>
    <message>
        <source>Nothing was logged on this page yet that could be taken back; Undo above the pages takes back what the journal had before.</source>
        <translation>Auf dieser Seite wurde noch nichts eingetragen, das sich zurücknehmen ließe; Rückgängig über den Seiten nimmt zurück, was vorher im Tagebuch stand.</translation>
    </message>
    <message>
        <source>Taken back: %1</source>
        <translation>Zurückgenommen: %1</translation>
    </message>
    <message>
        <source>Nothing was taken back last on this page that could be done again.</source>
        <translation>Auf dieser Seite wurde zuletzt nichts zurückgenommen, das sich wiederholen ließe.</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>Wieder getan: %1</translation>
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
        <translation>Gemessen wird eine Pflanze auf einmal; die Marken mit Esc wegnehmen.</translation>
    </message>
    <message>
        <source>Choose what was measured.</source>
        <translation>Wählen, was gemessen wurde.</translation>
    </message>
    <message>
        <source>Write what was read, such as 27.3; repeats with a semicolon between.</source>
        <translation>Zu schreiben ist, was abgelesen wurde, etwa 27.3; Wiederholungen mit Semikolon dazwischen.</translation>
    </message>
    <message>
        <source>“%1” is no number. Write it such as 27.3.</source>
        <translation>„%1“ ist keine Zahl. So schreiben: 27,3.</translation>
    </message>
    <message>
        <source>“%1” is no time of day. Write it such as 14:30.</source>
        <translation>„%1“ ist keine Uhrzeit. So schreiben: 14:30.</translation>
    </message>
    <message>
        <source>A time zone goes with a time of day; write the time too, or leave the zone blank.</source>
        <translation>Eine Zeitzone gehört zu einer Uhrzeit; auch die Uhrzeit angeben oder die Zone leer lassen.</translation>
    </message>
    <message>
        <source>No time zone is called “%1”. Write it such as Europe/Rome.</source>
        <translation>Keine Zeitzone heißt „%1“. Etwa so schreiben: Europe/Rome.</translation>
    </message>
    <message>
        <source>%1 in %2 is after today at home. Write how many days ago it was there.</source>
        <translation>%1 in %2 ist zu Hause nach dem heutigen Tag. Angeben, vor wie vielen Tagen es dort war.</translation>
    </message>
    <message>
        <source>The pot’s volume is a number above 0, such as 12, or is left blank.</source>
        <translation>Das Volumen des Topfs ist eine Zahl über 0, etwa 12, oder das Feld bleibt leer.</translation>
    </message>
    <message>
        <source>%1: %2 %3 today.</source>
        <translation>%1: %2 %3 heute.</translation>
    </message>
    <message>
        <source>%1: %2 %3 on %4.</source>
        <translation>%1: %2 %3 am %4.</translation>
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
        <translation>Pflanzen</translation>
    </message>
    <message>
        <source>No plants yet</source>
        <translation>Noch keine Pflanzen</translation>
    </message>
    <message>
        <source>1 plant</source>
        <translation>1 Pflanze</translation>
    </message>
    <message>
        <source>This household is invented: what is logged stays in this window and is gone when it closes.</source>
        <translation>Dieser Haushalt ist erfunden: Was eingetragen wird, bleibt in diesem Fenster und ist mit ihm fort.</translation>
    </message>
    <message>
        <source>All %1</source>
        <translation>Alle %1</translation>
    </message>
    <message>
        <source>Outdoors %1</source>
        <translation>Draußen %1</translation>
    </message>
    <message>
        <source>Hardening %1</source>
        <translation>Beim Abhärten: %1</translation>
    </message>
    <message>
        <source>To look at %1</source>
        <translation>Nachzusehen %1</translation>
    </message>
    <message>
        <source>Poisonous %1</source>
        <translation>Giftig %1</translation>
    </message>
    <message>
        <source>Set apart %1</source>
        <translation>Abgesondert %1</translation>
    </message>
    <message>
        <source>Recovering %1</source>
        <translation>Erholt sich: %1</translation>
    </message>
    <message>
        <source>Gone %1</source>
        <translation>Nicht mehr da %1</translation>
    </message>
    <message>
        <source>There is no plant with the number %1 (any more).</source>
        <translation>Eine Pflanze mit der Nummer %1 gibt es nicht (mehr).</translation>
    </message>
    <message>
        <source>One plant is divided at a time; take the marks off with Escape.</source>
        <translation>Es wird eine Pflanze auf einmal geteilt; die Markierungen mit Escape entfernen.</translation>
    </message>
    <message>
        <source>Write a name for each new plant, with a comma between them.</source>
        <translation>Für jede neue Pflanze einen Namen schreiben, mit Komma dazwischen.</translation>
    </message>
    <message>
        <source>There is a plant called %1 already; write another name.</source>
        <translation>Es gibt schon eine Pflanze namens %1; einen anderen Namen schreiben.</translation>
    </message>
    <message>
        <source>%1: looked over today, nothing found.</source>
        <translation>%1: heute durchgesehen, nichts gefunden.</translation>
    </message>
    <message>
        <source>Choose how many there are.</source>
        <translation>Wählen, wie viele es sind.</translation>
    </message>
    <message>
        <source>%1: pests found today. It comes last in the round from now on.</source>
        <translation>%1: heute Schädlinge gefunden. Sie kommt in der Runde von nun an zuletzt.</translation>
    </message>
    <message>
        <source>%1: treated today.</source>
        <translation>%1: heute behandelt.</translation>
    </message>
    <message>
        <source>%1: set apart today.</source>
        <translation>%1: heute abgesondert.</translation>
    </message>
    <message>
        <source>%1: back among the others today.</source>
        <translation>%1: heute zurück bei den anderen.</translation>
    </message>
    <message>
        <source>%1: washed through with water today.</source>
        <translation>%1: heute mit Wasser durchgespült.</translation>
    </message>
    <message>
        <source>%1: a cold night hurt it. Looks at it come into the round; no feed until new growth is logged.</source>
        <translation>%1: eine kalte Nacht hat ihr geschadet. Blicke auf sie kommen in die Runde; kein Dünger, bis neuer Wuchs eingetragen ist.</translation>
    </message>
    <message>
        <source>%1: hit by a spray. What helps and what waits comes into the round; nothing of it is eaten.</source>
        <translation>%1: von Spritzmittel getroffen. Was hilft und was wartet, kommt in die Runde; nichts davon wird gegessen.</translation>
    </message>
    <message>
        <source>%1: planted out today. Its growth is judged from there on.</source>
        <translation>%1: heute ausgepflanzt. Ihr Wachstum wird von da an beurteilt.</translation>
    </message>
    <message>
        <source>%1: divided today. The new ones stand beside it; Move gives them another spot.</source>
        <translation>%1: heute geteilt. Die neuen stehen daneben; Umstellen gibt ihnen einen anderen Platz.</translation>
    </message>
    <message>
        <source>%1: taken off the list today, with all of its past kept; Undo brings it back.</source>
        <translation>%1: heute von der Liste genommen, alles Vergangene bleibt; Rückgängig bringt sie zurück.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::RoundModel</name>
    <message>
        <source>carry in this evening</source>
        <translation>heute Abend hereintragen</translation>
    </message>
    <message>
        <source>carry to its new spot today</source>
        <translation>heute an den neuen Platz tragen</translation>
    </message>
    <message>
        <source>carry out for the day today</source>
        <translation>heute über Tag hinaustragen</translation>
    </message>
    <message>
        <source>carry out today, to stay</source>
        <translation>heute hinaustragen, es bleibt draußen</translation>
    </message>
    <message>
        <source>carry into deeper shade today</source>
        <translation>heute in tieferen Schatten tragen</translation>
    </message>
    <message>
        <source>carry in today</source>
        <translation>heute hereintragen</translation>
    </message>
    <message>
        <source>can wait until %1</source>
        <translation>kann bis %1 warten</translation>
    </message>
    <message>
        <source>was due %1</source>
        <translation>war fällig am %1</translation>
    </message>
    <message>
        <source>done %1</source>
        <translation>erledigt um %1</translation>
    </message>
    <message>
        <source>%1. In full above, at %2.</source>
        <translation>%1. Vollständig oben, bei %2.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Can wait until %1</source>
        <translation>Kann bis %1 warten</translation>
    </message>
    <message>
        <source>Pinned</source>
        <translation>Festgehalten</translation>
    </message>
    <message>
        <source>About 1 minute</source>
        <translation>Etwa 1 Minute</translation>
    </message>
    <message>
        <source>About %1 minutes</source>
        <translation>Etwa %1 Minuten</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation>Nicht erledigt</translation>
    </message>
    <message>
        <source>1 task</source>
        <translation>1 Arbeit</translation>
    </message>
    <message>
        <source>%1 tasks</source>
        <translation>%1 Arbeiten</translation>
    </message>
    <message>
        <source>%1, last of all</source>
        <translation>%1, ganz zuletzt</translation>
    </message>
    <message>
        <source>%1, in walking order</source>
        <translation>%1, in der Reihenfolge des Weges</translation>
    </message>
    <message>
        <source>%1’s round</source>
        <translation>Rundgang: %1</translation>
    </message>
    <message>
        <source>%1, nothing is due.</source>
        <translation>%1, nichts ist fällig.</translation>
    </message>
    <message>
        <source>%1, %2, about %3 minutes.</source>
        <translation>%1, %2, etwa %3 Minuten.</translation>
    </message>
    <message>
        <source> Clean plants first, infested ones last.</source>
        <translation> Saubere Pflanzen zuerst, befallene zuletzt.</translation>
    </message>
    <message>
        <source>%1 of %2 done</source>
        <translation>%1 von %2 erledigt</translation>
    </message>
    <message>
        <source>%1 min left</source>
        <translation>noch %1 min</translation>
    </message>
    <message>
        <source>Nothing is due today. The year (key 2) shows what comes next; what was fed, watered or found since is logged under Plants (key 3).</source>
        <translation>Heute ist nichts fällig. Das Jahr (Taste 2) zeigt, was als Nächstes kommt; was inzwischen gedüngt, gegossen oder gefunden wurde, trägt man unter Pflanzen ein (Taste 3).</translation>
    </message>
    <message>
        <source>No plant stands here yet. Each will have its tasks here in an order in which pests do not travel. Add the first under Plants.</source>
        <translation>Noch steht keine Pflanze hier. Jede bekommt hier ihre Arbeiten in einer Reihenfolge, in der Schädlinge nicht mitreisen. Die erste unter Pflanzen hinzufügen.</translation>
    </message>
    <message>
        <source>This household is invented: what is ticked stays in this window and is gone when it closes. A household of your own keeps it; the first start makes one when the window is opened anew.</source>
        <translation>Dieser Haushalt ist erfunden: Was abgehakt wird, bleibt in diesem Fenster und ist mit ihm fort. Ein eigener Haushalt speichert es; der erste Start legt einen an, wenn das Fenster neu geöffnet wird.</translation>
    </message>
    <message>
        <source>No forecast is kept, so tonight is not in the round.</source>
        <translation>Es ist keine Vorhersage gespeichert, heute Nacht fehlt also im Rundgang.</translation>
    </message>
    <message>
        <source>%1; until %2</source>
        <translation>%1; bis %2</translation>
    </message>
    <message>
        <source>Not fed. %1.</source>
        <translation>Kein Dünger. %1.</translation>
    </message>
    <message>
        <source>%1, not fed: %2.</source>
        <translation>%1, kein Dünger: %2.</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>one plant</source>
        <translation>eine Pflanze</translation>
    </message>
    <message>
        <source>two plants</source>
        <translation>zwei Pflanzen</translation>
    </message>
    <message>
        <source>three plants</source>
        <translation>drei Pflanzen</translation>
    </message>
    <message>
        <source>four plants</source>
        <translation>vier Pflanzen</translation>
    </message>
    <message>
        <source>five plants</source>
        <translation>fünf Pflanzen</translation>
    </message>
    <message>
        <source>six plants</source>
        <translation>sechs Pflanzen</translation>
    </message>
    <message>
        <source>seven plants</source>
        <translation>sieben Pflanzen</translation>
    </message>
    <message>
        <source>eight plants</source>
        <translation>acht Pflanzen</translation>
    </message>
    <message>
        <source>nine plants</source>
        <translation>neun Pflanzen</translation>
    </message>
    <message>
        <source>Carry %1 in this evening</source>
        <translation>Heute Abend %1 hereintragen</translation>
    </message>
    <message>
        <source>%1 plants</source>
        <translation>%1 Pflanzen</translation>
    </message>
    <message>
        <source>Done: %1.</source>
        <translation>Erledigt: %1.</translation>
    </message>
    <message>
        <source>How many seedlings of %1 were potted, each in a pot of its own? %2 are in the tray.</source>
        <translation>Wie viele Sämlinge von %1 wurden getopft, jeder in einen eigenen Topf? %2 sind in der Schale.</translation>
    </message>
    <message>
        <source>How many seeds of %1 went into the tray? %2 are left.</source>
        <translation>Wie viele Samen von %1 kamen in die Schale? %2 sind übrig.</translation>
    </message>
    <message>
        <source>How many seeds of %1 went into the tray?</source>
        <translation>Wie viele Samen von %1 kamen in die Schale?</translation>
    </message>
    <message>
        <source>The tray has %1 seedlings; count it anew where there are more.</source>
        <translation>In der Schale sind %1 Sämlinge; sind es mehr, neu zählen.</translation>
    </message>
    <message>
        <source>%1, 1 plant</source>
        <translation>%1, 1 Pflanze</translation>
    </message>
    <message>
        <source>%1, %2 plants</source>
        <translation>%1, %2 Pflanzen</translation>
    </message>
    <message>
        <source>Done: %1. They stand under Plants.</source>
        <translation>Erledigt: %1. Sie stehen unter Pflanzen.</translation>
    </message>
    <message>
        <source>Done: %1. They stand at no spot yet: say where under Plants, so that they are in plan and round.</source>
        <translation>Erledigt: %1. Sie stehen noch an keinem Platz: unter Pflanzen sagen, wo, damit sie in Plan und Rundgang kommen.</translation>
    </message>
    <message>
        <source>Write how many seedlings were potted, such as 6.</source>
        <translation>Schreiben, wie viele Sämlinge getopft wurden, etwa 6.</translation>
    </message>
    <message>
        <source>Write how many seeds went into the tray, such as 12.</source>
        <translation>Schreiben, wie viele Samen in die Schale kamen, etwa 12.</translation>
    </message>
    <message>
        <source>Of this lot %1 seeds are left. Sow fewer, or add the packet that they came from.</source>
        <translation>In diesem Tütchen sind noch %1 Samen. Weniger säen oder das Tütchen eintragen, aus dem sie kamen.</translation>
    </message>
    <message>
        <source>%1, 1 seed</source>
        <translation>%1, 1 Same</translation>
    </message>
    <message>
        <source>%1, %2 seeds</source>
        <translation>%1, %2 Samen</translation>
    </message>
    <message>
        <source>Done: %1. The tray stands under Seeds.</source>
        <translation>Erledigt: %1. Die Schale steht unter Samen.</translation>
    </message>
    <message>
        <source>That is done already; Undo takes it back.</source>
        <translation>Das ist schon erledigt; Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>Washing cannot be put off: it stands between the classes so that pests do not travel.</source>
        <translation>Waschen lässt sich nicht aufschieben: Es steht zwischen den Gruppen, damit Schädlinge nicht mitwandern.</translation>
    </message>
    <message>
        <source>Washing cannot be left out: it stands between the classes so that pests do not travel.</source>
        <translation>Waschen lässt sich nicht auslassen: Es steht zwischen den Gruppen, damit Schädlinge nicht mitwandern.</translation>
    </message>
    <message>
        <source>A task is put off to a day after today, such as %1.</source>
        <translation>Eine Arbeit wird auf einen Tag nach heute verschoben, etwa %1.</translation>
    </message>
    <message>
        <source>Write for how many days it is put off, or until which date, such as %1.</source>
        <translation>Schreiben, um wie viele Tage oder bis zu welchem Tag sie verschoben wird, etwa %1.</translation>
    </message>
    <message>
        <source>Put off to %1: %2.</source>
        <translation>Verschoben auf %1: %2.</translation>
    </message>
    <message>
        <source> It can wait until %1 at most.</source>
        <translation> Es kann höchstens bis %1 warten.</translation>
    </message>
    <message>
        <source>Say why it is left out, so that the journal knows.</source>
        <translation>Sagen, warum es ausgelassen wird, damit das Tagebuch es weiß.</translation>
    </message>
    <message>
        <source>Left out: %1.</source>
        <translation>Ausgelassen: %1.</translation>
    </message>
    <message>
        <source>%1 plants carried in</source>
        <translation>%1 Pflanzen hineingetragen</translation>
    </message>
    <message>
        <source>Nothing was done in this window yet that could be taken back; Undo above the pages takes back what the journal had before.</source>
        <translation>In diesem Fenster wurde noch nichts getan, das sich zurücknehmen ließe; Rückgängig über den Seiten nimmt zurück, was vorher im Tagebuch stand.</translation>
    </message>
    <message>
        <source>Taken back: %1.</source>
        <translation>Zurückgenommen: %1.</translation>
    </message>
    <message>
        <source>Nothing was taken back last in this window that could be done again.</source>
        <translation>In diesem Fenster wurde zuletzt nichts zurückgenommen, das sich wiederholen ließe.</translation>
    </message>
    <message>
        <source>Done again: %1.</source>
        <translation>Wieder getan: %1.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::SeedsModel</name>
    <message>
        <source>Write how warm it is where the trays stand, %1 to %2.</source>
        <translation>Schreiben, wie warm es ist, wo die Schalen stehen, %1 bis %2.</translation>
    </message>
    <message>
        <source>Write the name of a crop, such as tomato or zinnia.</source>
        <translation>Den Namen einer Kultur schreiben, etwa Tomate oder Zinnie.</translation>
    </message>
    <message>
        <source>Write how many days ago it was, 0 to %1.</source>
        <translation>Schreiben, vor wie vielen Tagen es war, 0 bis %1.</translation>
    </message>
    <message>
        <source>%1 up in tray %2</source>
        <translation>%1 aufgegangen in Schale %2</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 am %2</translation>
    </message>
    <message>
        <source>%1, no more to come</source>
        <translation>%1, keine mehr zu erwarten</translation>
    </message>
    <message>
        <source>Fewer than none cannot have come up.</source>
        <translation>Weniger als keine können nicht aufgegangen sein.</translation>
    </message>
    <message>
        <source>Only %1 seeds were sown in this tray.</source>
        <translation>In diese Schale wurden nur %1 Samen gesät.</translation>
    </message>
    <message>
        <source>Write how many seeds went into the tray, such as 12.</source>
        <translation>Schreiben, wie viele Samen in die Schale kamen, etwa 12.</translation>
    </message>
    <message>
        <source>Of this lot %1 seeds are left. Sow fewer, or add the packet that they came from.</source>
        <translation>In diesem Tütchen sind noch %1 Samen. Weniger säen oder das Tütchen eintragen, aus dem sie kamen.</translation>
    </message>
    <message>
        <source>Write how warm the mix is, %1 to %2, or leave it blank.</source>
        <translation>Schreiben, wie warm die Erde ist, %1 bis %2, oder leer lassen.</translation>
    </message>
    <message>
        <source>%1: 1 seed was sown on %2. Undo above the pages takes it back.</source>
        <translation>%1: 1 Samen wurde am %2 gesät. Rückgängig über den Seiten nimmt es zurück.</translation>
    </message>
    <message>
        <source>%1: %2 seeds were sown on %3. Undo above the pages takes it back.</source>
        <translation>%1: %2 Samen wurden am %3 gesät. Rückgängig über den Seiten nimmt es zurück.</translation>
    </message>
    <message>
        <source>%1: 1 seed was sown today. Undo above the pages takes it back.</source>
        <translation>%1: Heute wurde 1 Samen gesät. Rückgängig über den Seiten nimmt es zurück.</translation>
    </message>
    <message>
        <source>%1: %2 seeds were sown today. Undo above the pages takes it back.</source>
        <translation>%1: Heute wurden %2 Samen gesät. Rückgängig über den Seiten nimmt es zurück.</translation>
    </message>
    <message>
        <source>Counted: %1.</source>
        <translation>Gezählt: %1.</translation>
    </message>
    <message>
        <source>Nothing was counted in this window yet that could be taken back; Undo above the pages takes back what the journal had before.</source>
        <translation>In diesem Fenster wurde noch nichts gezählt, das sich zurücknehmen ließe; Rückgängig über den Seiten nimmt zurück, was vorher im Tagebuch stand.</translation>
    </message>
    <message>
        <source>Taken back: %1.</source>
        <translation>Zurückgenommen: %1.</translation>
    </message>
    <message>
        <source>Nothing was taken back last in this window that could be done again.</source>
        <translation>In diesem Fenster wurde zuletzt nichts zurückgenommen, das sich wiederholen ließe.</translation>
    </message>
    <message>
        <source>Counted again: %1.</source>
        <translation>Wieder gezählt: %1.</translation>
    </message>
    <message>
        <source>Write how many seedlings were potted, such as 6.</source>
        <translation>Schreiben, wie viele Sämlinge getopft wurden, etwa 6.</translation>
    </message>
    <message>
        <source>The tray has %1 seedlings; count it anew where there are more.</source>
        <translation>In der Schale sind %1 Sämlinge; sind es mehr, neu zählen.</translation>
    </message>
    <message>
        <source>Say where they stand: of the tray that is not known.</source>
        <translation>Angeben, wo sie stehen: Von der Schale ist das nicht bekannt.</translation>
    </message>
    <message>
        <source>Potted from tray %1: 1 plant, now under Plants. Undo above the pages takes it back.</source>
        <translation>Aus Schale %1 getopft: 1 Pflanze, jetzt unter Pflanzen. Rückgängig über den Seiten nimmt es zurück.</translation>
    </message>
    <message>
        <source>Potted from tray %1: %2 plants, now under Plants. Undo above the pages takes it back.</source>
        <translation>Aus Schale %1 getopft: %2 Pflanzen, jetzt unter Pflanzen. Rückgängig über den Seiten nimmt es zurück.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::SettingsModel</name>
    <message>
        <source>LATHHOUSE_THEME=%1 goes before what is chosen here, while it is set.</source>
        <translation>LATHHOUSE_THEME=%1 geht vor, solange es gesetzt ist.</translation>
    </message>
    <message>
        <source>LATHHOUSE_TEXT=%1 goes before what is chosen here, while it is set.</source>
        <translation>LATHHOUSE_TEXT=%1 geht vor, solange es gesetzt ist.</translation>
    </message>
    <message>
        <source>LATHHOUSE_MOTION=%1 goes before what is chosen here, while it is set.</source>
        <translation>LATHHOUSE_MOTION=%1 geht vor, solange es gesetzt ist.</translation>
    </message>
    <message>
        <source>LATHHOUSE_TOUCH=%1 goes before what is chosen here, while it is set.</source>
        <translation>LATHHOUSE_TOUCH=%1 geht vor, solange es gesetzt ist.</translation>
    </message>
    <message>
        <source>Opened with --units; what is chosen here is in force now and at the next start without it.</source>
        <translation>Mit --units geöffnet; was hier gewählt wird, gilt jetzt und beim nächsten Start ohne diese Angabe.</translation>
    </message>
    <message>
        <source>A night of %1, a pot of %2, a station %3 away, a plant of %4.</source>
        <translation>Eine Nacht von %1, ein Topf von %2, eine Station in %3 Entfernung, eine Pflanze von %4.</translation>
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
        <translation>Tage wie %1, Zahlen wie %2, Wochen ab %3: wie in der Sprache und der Region des Schreibtischs üblich (%4). Eine Änderung gilt ab dem nächsten Start.</translation>
    </message>
    <message>
        <source>As the desktop</source>
        <translation>Wie der Schreibtisch</translation>
    </message>
    <message>
        <source>The window speaks it from the next start on.</source>
        <translation>Das Fenster spricht sie ab dem nächsten Start.</translation>
    </message>
    <message>
        <source>Opened with --language; what is chosen here is in force at the next start without it.</source>
        <translation>Mit --language geöffnet; was hier gewählt wird, gilt beim nächsten Start ohne diese Angabe.</translation>
    </message>
    <message>
        <source>It holds for this window and could not be kept in %1; see that the folder can be written.</source>
        <translation>Es gilt für dieses Fenster und ließ sich nicht in %1 speichern; nachsehen, ob sich der Ordner beschreiben lässt.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::SpotsForm</name>
    <message>
        <source>South sill</source>
        <translation>Südfenster</translation>
    </message>
    <message>
        <source>A window that faces south</source>
        <translation>Ein Fenster nach Süden</translation>
    </message>
    <message>
        <source>East sill</source>
        <translation>Ostfenster</translation>
    </message>
    <message>
        <source>A window that faces east</source>
        <translation>Ein Fenster nach Osten</translation>
    </message>
    <message>
        <source>West sill</source>
        <translation>Westfenster</translation>
    </message>
    <message>
        <source>A window that faces west</source>
        <translation>Ein Fenster nach Westen</translation>
    </message>
    <message>
        <source>North sill</source>
        <translation>Nordfenster</translation>
    </message>
    <message>
        <source>A window that faces north</source>
        <translation>Ein Fenster nach Norden</translation>
    </message>
    <message>
        <source>Cool landing</source>
        <translation>Kühles Treppenhaus</translation>
    </message>
    <message>
        <source>A stairwell or unheated room with a window; say its winter nights</source>
        <translation>Ein Treppenhaus oder unbeheizter Raum mit Fenster; seine Winternächte angeben</translation>
    </message>
    <message>
        <source>Roofed balcony</source>
        <translation>Überdachter Balkon</translation>
    </message>
    <message>
        <source>Outdoors under a roof: a balcony, a porch</source>
        <translation>Draußen unter einem Dach: ein Balkon, eine Veranda</translation>
    </message>
    <message>
        <source>Open step</source>
        <translation>Offene Stufe</translation>
    </message>
    <message>
        <source>Outdoors under the open sky: a step, a rail, a bed before the house</source>
        <translation>Draußen unter freiem Himmel: eine Stufe, ein Geländer, ein Beet vor dem Haus</translation>
    </message>
    <message>
        <source>Screened porch</source>
        <translation>Veranda mit Netz</translation>
    </message>
    <message>
        <source>Outdoors behind mesh</source>
        <translation>Draußen hinter Netz</translation>
    </message>
    <message>
        <source>Glasshouse</source>
        <translation>Gewächshaus</translation>
    </message>
    <message>
        <source>Under glass, not heated</source>
        <translation>Unter Glas, ungeheizt</translation>
    </message>
    <message>
        <source>indoors</source>
        <translation>drinnen</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>roofed</source>
        <translation>überdacht</translation>
    </message>
    <message>
        <source>screened</source>
        <translation>hinter Netz</translation>
    </message>
    <message>
        <source>glazed</source>
        <translation>verglast</translation>
    </message>
    <message>
        <source>north</source>
        <translation>Nord</translation>
    </message>
    <message>
        <source>north-east</source>
        <translation>Nordost</translation>
    </message>
    <message>
        <source>east</source>
        <translation>Ost</translation>
    </message>
    <message>
        <source>south-east</source>
        <translation>Südost</translation>
    </message>
    <message>
        <source>south</source>
        <translation>Süd</translation>
    </message>
    <message>
        <source>south-west</source>
        <translation>Südwest</translation>
    </message>
    <message>
        <source>west</source>
        <translation>West</translation>
    </message>
    <message>
        <source>north-west</source>
        <translation>Nordwest</translation>
    </message>
    <message>
        <source>Indoors</source>
        <translation>Drinnen</translation>
    </message>
    <message>
        <source>A room with a window</source>
        <translation>Ein Raum mit Fenster</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Outdoors under the open sky</source>
        <translation>Draußen unter freiem Himmel</translation>
    </message>
    <message>
        <source>Roofed</source>
        <translation>Überdacht</translation>
    </message>
    <message>
        <source>Outdoors under a roof</source>
        <translation>Draußen unter einem Dach</translation>
    </message>
    <message>
        <source>Screened</source>
        <translation>Mit Netz</translation>
    </message>
    <message>
        <source>Glazed</source>
        <translation>Verglast</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>NE</source>
        <translation>NO</translation>
    </message>
    <message>
        <source>E</source>
        <translation>O</translation>
    </message>
    <message>
        <source>SE</source>
        <translation>SO</translation>
    </message>
    <message>
        <source>S</source>
        <translation>S</translation>
    </message>
    <message>
        <source>SW</source>
        <translation>SW</translation>
    </message>
    <message>
        <source>W</source>
        <translation>W</translation>
    </message>
    <message>
        <source>NW</source>
        <translation>NW</translation>
    </message>
    <message>
        <source>A spot needs a name, such as %1.</source>
        <translation>Ein Platz braucht einen Namen, etwa %1.</translation>
    </message>
    <message>
        <source>There is a spot “%1” already; give this one another name.</source>
        <translation>Einen Platz „%1“ gibt es schon; diesem einen anderen Namen geben.</translation>
    </message>
    <message>
        <source>How many pots fit is a whole number, such as 5.</source>
        <translation>Wie viele Töpfe passen, ist eine ganze Zahl, etwa 5.</translation>
    </message>
    <message>
        <source>From 0 to %1 pots fit at a spot; %2 do not.</source>
        <translation>An einen Platz passen 0 bis %1 Töpfe; %2 nicht.</translation>
    </message>
    <message>
        <source>“%1” is not a number; write a night of the room as %2.</source>
        <translation>„%1“ ist keine Zahl; eine Nacht des Raums so schreiben: %2.</translation>
    </message>
    <message>
        <source>No room has nights of %1 %2.</source>
        <translation>Kein Raum hat Nächte von %1 %2.</translation>
    </message>
    <message>
        <source>Light by that: %1 moles a day in high summer, %2 in midwinter.</source>
        <translation>Licht danach: %1 Mol am Tag im Hochsommer, %2 mitten im Winter.</translation>
    </message>
    <message>
        <source>faces %1</source>
        <translation>schaut nach %1</translation>
    </message>
    <message>
        <source>1 pot</source>
        <translation>1 Topf</translation>
    </message>
    <message>
        <source>%1 pots</source>
        <translation>%1 Töpfe</translation>
    </message>
    <message>
        <source>in reach of a child or an animal</source>
        <translation>in Reichweite eines Kindes oder Tieres</translation>
    </message>
    <message>
        <source>set apart</source>
        <translation>abgesondert</translation>
    </message>
    <message>
        <source>windy</source>
        <translation>windig</translation>
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
        <translation>Kein Platz im Freien.</translation>
    </message>
    <message>
        <source>Tonight %1 %2, %3. %4</source>
        <translation>Heute Nacht %1 %2, %3. %4</translation>
    </message>
    <message>
        <source>The dew point: %1</source>
        <translation>Der Taupunkt: %1</translation>
    </message>
    <message>
        <source>Kept: a forecast of %1 for tonight. It is not taken back from here; a number typed later today counts instead.</source>
        <translation>Gespeichert: eine Vorhersage von %1 für heute Nacht. Von hier aus wird sie nicht zurückgenommen; eine später getippte Zahl gilt stattdessen.</translation>
    </message>
    <message>
        <source>Write how many days ago the forecast was made, 0 to %1.</source>
        <translation>Schreiben, vor wie vielen Tagen die Vorhersage gemacht wurde, 0 bis %1.</translation>
    </message>
    <message>
        <source>Say which file has the forecast.</source>
        <translation>Sagen, in welcher Datei die Vorhersage steht.</translation>
    </message>
    <message>
        <source>Kept: a forecast of 1 night. One read later today counts instead.</source>
        <translation>Gespeichert: eine Vorhersage für 1 Nacht. Eine, die heute später gelesen wird, zählt statt ihrer.</translation>
    </message>
    <message>
        <source>Kept: a forecast of %1 nights. One read later today counts instead.</source>
        <translation>Gespeichert: eine Vorhersage für %1 Nächte. Eine, die heute später gelesen wird, zählt statt ihrer.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::YearBegin</name>
    <message>
        <source>The year from %1</source>
        <translation>Das Jahr ab %1</translation>
    </message>
    <message>
        <source>The year from today</source>
        <translation>Das Jahr ab heute</translation>
    </message>
    <message>
        <source>“%1” is no date. Write it such as %2.</source>
        <translation>„%1“ ist kein Datum. So schreiben: %2.</translation>
    </message>
    <message>
        <source>A year can begin up to a year ago, or within the next five years.</source>
        <translation>Ein Jahr kann bis zu einem Jahr zurück oder in den nächsten fünf Jahren beginnen.</translation>
    </message>
</context>
<context>
    <name>lathhouse::models::YearModel</name>
    <message>
        <source>1 in %1</source>
        <translation>1 von %1</translation>
    </message>
    <message>
        <source>No plan is kept yet. A kept plan changes only where it pays, and each change is named.</source>
        <translation>Noch ist kein Plan gespeichert. Ein gespeicherter Plan ändert sich nur, wo es sich lohnt, und jede Änderung wird genannt.</translation>
    </message>
    <message>
        <source>As in the plan kept on %1.</source>
        <translation>Wie im am %1 gespeicherten Plan.</translation>
    </message>
    <message>
        <source>One stay is otherwise than in the plan kept on %1:</source>
        <translation>Ein Aufenthalt ist anders als im am %1 gespeicherten Plan:</translation>
    </message>
    <message>
        <source>%1 stays are otherwise than in the plan kept on %2:</source>
        <translation>%1 Aufenthalte sind anders als im am %2 gespeicherten Plan:</translation>
    </message>
    <message>
        <source>%1 goes where the plan puts it</source>
        <translation>%1 geht, wohin der Plan sie stellt</translation>
    </message>
    <message>
        <source>Risk you accept, %1</source>
        <translation>Eingegangenes Risiko, %1</translation>
    </message>
    <message>
        <source>out %1</source>
        <translation>hinaus %1</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>herein %1</translation>
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
        <translation>%1. Nachttief %2, 9 von 10: %3 bis %4.%5 Frost in dieser Nacht %6, Frost nach dieser Nacht %7. Tag %8.</translation>
    </message>
    <message>
        <source>, %1</source>
        <translation>, %1</translation>
    </message>
    <message>
        <source>Hardening %1 to %2, %3 steps</source>
        <translation>Abhärten %1 bis %2, %3 Stufen</translation>
    </message>
    <message>
        <source>%1 all year</source>
        <translation>%1 das ganze Jahr</translation>
    </message>
    <message>
        <source>%1 %2 to %3</source>
        <translation>%1 %2 bis %3</translation>
    </message>
    <message>
        <source>, risk %1 out, %2 in</source>
        <translation>, Risiko %1 hinaus, %2 herein</translation>
    </message>
</context>
<context>
    <name>lathhouse::sheet</name>
    <message>
        <source>Sheet %1 of %2</source>
        <translation>Blatt %1 von %2</translation>
    </message>
    <message>
        <source> · </source>
        <translation> · </translation>
    </message>
    <message>
        <source>The year from %1</source>
        <translation>Das Jahr ab %1</translation>
    </message>
    <message>
        <source>The round from %1</source>
        <translation>Der Rundgang ab %1</translation>
    </message>
    <message>
        <source>Seeds on %1</source>
        <translation>Samen am %1</translation>
    </message>
    <message>
        <source>Lathhouse · printed %1</source>
        <translation>Lathhouse · gedruckt %1</translation>
    </message>
    <message>
        <source>can wait until %1</source>
        <translation>kann bis %1 warten</translation>
    </message>
    <message>
        <source>The round of %1</source>
        <translation>Der Rundgang am %1</translation>
    </message>
    <message>
        <source>%1 · %2 days, to %3</source>
        <translation>%1 · %2 Tage, bis %3</translation>
    </message>
    <message>
        <source>In walking order: clean plants first, then suspect, then infested ones. A letter: the caution above it.</source>
        <translation>In Gehreihenfolge: erst saubere, dann verdächtige, dann befallene Pflanzen. Ein Buchstabe: die Vorsicht darüber.</translation>
    </message>
    <message>
        <source>In walking order: clean plants first, then suspect, then infested ones. A letter: the caution above it. No forecast is kept, so tonight is not in it.</source>
        <translation>In Gehreihenfolge: erst saubere, dann verdächtige, dann befallene Pflanzen. Ein Buchstabe: die Vorsicht darüber. Es ist keine Vorhersage gespeichert, heute Nacht fehlt also.</translation>
    </message>
    <message>
        <source>%1 · by the date of sowing</source>
        <translation>%1 · nach Saatdatum</translation>
    </message>
</context>
<context>
    <name>lathhouse::sheet::SheetPrinter</name>
    <message>
        <source>A sheet is kept in a folder of this computer; %1 is none.</source>
        <translation>Ein Blatt wird in einem Ordner dieses Rechners gespeichert; %1 ist keiner.</translation>
    </message>
    <message>
        <source>1 page is kept in %1.</source>
        <translation>1 Seite ist in %1 gespeichert.</translation>
    </message>
    <message>
        <source>%1 pages are kept in %2.</source>
        <translation>%1 Seiten sind in %2 gespeichert.</translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <source>this was not kept: %1</source>
        <translation>Das wurde nicht gespeichert: %1</translation>
    </message>
    <message>
        <source>a household in memory has no such photo</source>
        <translation>ein Haushalt im Speicher hat kein solches Foto</translation>
    </message>
    <message>
        <source>the drawn photo could not be written to %1; make room where temporary files are kept</source>
        <translation>das gezeichnete Foto konnte nicht nach %1 geschrieben werden; Platz schaffen, wo vorläufige Dateien liegen</translation>
    </message>
    <message>
        <source>there is a plant &quot;%1&quot; already</source>
        <translation>es gibt schon eine Pflanze „%1“</translation>
    </message>
    <message>
        <source>the spot is not there any more</source>
        <translation>der Platz ist nicht mehr da</translation>
    </message>
    <message>
        <source>the plant is not there any more</source>
        <translation>die Pflanze ist nicht mehr da</translation>
    </message>
    <message>
        <source>the night could not be kept: %1</source>
        <translation>Die Nacht ließ sich nicht speichern: %1</translation>
    </message>
    <message>
        <source>no night of it was kept: %1</source>
        <translation>Keine Nacht davon wurde gespeichert: %1</translation>
    </message>
    <message>
        <source>name the columns of date, low and high, and rain if there is one, with commas between: Day,Min,Max</source>
        <translation>die Spalten von Datum, Tiefst- und Höchstwert nennen, und die des Regens, wenn es eine gibt, mit Kommas dazwischen: Day,Min,Max</translation>
    </message>
    <message>
        <source>the height of the household&apos;s place is not known; say at which height the record was kept</source>
        <translation>die Höhe des Ortes ist nicht bekannt; angeben, in welcher Höhe aufgezeichnet wurde</translation>
    </message>
    <message>
        <source>%1 has no night&apos;s low in it</source>
        <translation>%1 enthält kein Nachttief</translation>
    </message>
    <message>
        <source>%1. Nothing was taken in</source>
        <translation>%1. Nichts wurde aufgenommen</translation>
    </message>
    <message>
        <source>the tray has not that many seedlings left</source>
        <translation>so viele Sämlinge hat die Schale nicht mehr</translation>
    </message>
    <message>
        <source>the tray was sown after that day</source>
        <translation>die Schale wurde nach diesem Tag gesät</translation>
    </message>
    <message>
        <source>stands there</source>
        <translation>steht dort</translation>
    </message>
    <message>
        <source>this could not be written, so it counts as not done: %1</source>
        <translation>Das ließ sich nicht schreiben und gilt als nicht erledigt: %1</translation>
    </message>
    <message>
        <source>a task can be put off by 1 to %1 days</source>
        <translation>Eine Arbeit lässt sich um 1 bis %1 Tage verschieben</translation>
    </message>
    <message>
        <source>the lot is not there any more</source>
        <translation>das Tütchen ist nicht mehr da</translation>
    </message>
    <message>
        <source>the tables have no crop &quot;%1&quot;, so nothing is known of its sowing</source>
        <translation>in den Tabellen steht keine Kultur „%1“, daher ist über ihre Aussaat nichts bekannt</translation>
    </message>
    <message>
        <source>the count was not kept: %1</source>
        <translation>Die Zählung wurde nicht gespeichert: %1</translation>
    </message>
    <message>
        <source>%1 has a forecast that was made after today</source>
        <translation>%1 enthält eine Vorhersage, die nach heute gemacht wurde</translation>
    </message>
    <message>
        <source>the forecast could not be kept: %1</source>
        <translation>Die Vorhersage ließ sich nicht speichern: %1</translation>
    </message>
    <message>
        <source>%1. Sow indoors %2.</source>
        <translation>%1. Drinnen säen %2.</translation>
    </message>
    <message>
        <source>%1. Sow outdoors %2.</source>
        <translation>%1. Draußen säen %2.</translation>
    </message>
    <message>
        <source>Comes up %1 to %2.</source>
        <translation>Geht auf %1 bis %2.</translation>
    </message>
    <message>
        <source>out %1</source>
        <translation>hinaus %1</translation>
    </message>
    <message>
        <source>Plant out from %1.</source>
        <translation>Auspflanzen ab %1.</translation>
    </message>
    <message>
        <source>%1 from %2.</source>
        <translation>%1 ab %2.</translation>
    </message>
    <message>
        <source>The pest has no name that is known here; the slow clock of the citrus mealybug stands in.</source>
        <translation>Der Schädling hat keinen Namen, der hier bekannt ist; die langsame Uhr der Zitrus-Wolllaus vertritt ihn.</translation>
    </message>
    <message>
        <source>Back among the others not before %1: two weeks since the last contact and two clean looks one crawler stage apart.</source>
        <translation>Zurück zu den anderen nicht vor %1: zwei Wochen seit dem letzten Kontakt und zwei saubere Durchsichten im Abstand eines Jugendstadiums.</translation>
    </message>
    <message>
        <source>A generation by %1: through on %2.</source>
        <translation>Eine Generation nach %1: vorbei am %2.</translation>
    </message>
    <message>
        <source>A generation by %1: never at these temperatures.</source>
        <translation>Eine Generation nach %1: bei diesen Temperaturen nie.</translation>
    </message>
    <message>
        <source>Clear not before %1, and then only with a clean look; every find starts it anew.</source>
        <translation>Befallsfrei frühestens am %1, und nur nach einer Durchsicht ohne Fund; nach jedem Fund beginnt die Frist neu.</translation>
    </message>
    <message>
        <source>It cannot be declared clear at this temperature: the pest&apos;s clock does not get through. At 20 °C it would take about %1 days.</source>
        <translation>Bei dieser Temperatur lässt sie sich nicht für frei erklären: Die Uhr des Schädlings kommt nicht durch. Bei 20 °C wären es etwa %1 Tage.</translation>
    </message>
    <message>
        <source>Today it is too cold for the clock to run.</source>
        <translation>Heute ist es für die Uhr zu kalt.</translation>
    </message>
    <message>
        <source>It was put back among the others before it was clear.</source>
        <translation>Sie kam zu den anderen zurück, bevor sie frei war.</translation>
    </message>
    <message>
        <source>Heavily infested: throwing it away, bagged, is a sound choice for an ordinary plant and spares the others.</source>
        <translation>Stark befallen: Eine gewöhnliche Pflanze in einem Beutel wegzuwerfen ist eine gute Wahl und schont die anderen.</translation>
    </message>
    <message>
        <source>Where: %1</source>
        <translation>Wo: %1</translation>
    </message>
    <message>
        <source>Seen as: %1</source>
        <translation>Zu sehen als: %1</translation>
    </message>
    <message>
        <source>Gets about: %1</source>
        <translation>Verbreitet sich: %1</translation>
    </message>
    <message>
        <source>Helps: %1; label first</source>
        <translation>Hilft: %1; zuerst das Etikett</translation>
    </message>
    <message>
        <source>A generation by %1: %2 at 15 °C, %3 at 20, %4 at 25</source>
        <translation>Eine Generation nach %1: %2 bei 15 °C, %3 bei 20, %4 bei 25</translation>
    </message>
    <message>
        <source>%1: first signs after %2.</source>
        <translation>%1: erste Zeichen nach %2.</translation>
    </message>
    <message>
        <source>%1 (%2): first signs after %3.</source>
        <translation>%1 (%2): erste Zeichen nach %3.</translation>
    </message>
    <message>
        <source>It travels in the plant.</source>
        <translation>Es wandert in der Pflanze.</translation>
    </message>
    <message>
        <source>It hurts what it touched.</source>
        <translation>Es schadet dem, was es berührt hat.</translation>
    </message>
    <message>
        <source>It may come as a vapour days later.</source>
        <translation>Es kann Tage später als Dampf kommen.</translation>
    </message>
    <message>
        <source>Sources disagree: %1</source>
        <translation>Quellen sind uneins: %1</translation>
    </message>
    <message>
        <source>fits well: %1</source>
        <translation>passt gut: %1</translation>
    </message>
    <message>
        <source>fits: %1</source>
        <translation>passt: %1</translation>
    </message>
    <message>
        <source>fits a little: %1</source>
        <translation>passt ein wenig: %1</translation>
    </message>
    <message>
        <source>for it: %1</source>
        <translation>dafür: %1</translation>
    </message>
    <message>
        <source>against it: %1</source>
        <translation>dagegen: %1</translation>
    </message>
    <message>
        <source>the time fits</source>
        <translation>die Zeit passt</translation>
    </message>
    <message>
        <source>the time does not fit</source>
        <translation>die Zeit passt nicht</translation>
    </message>
    <message>
        <source>Tonight</source>
        <translation>Heute Nacht</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Unterlassen</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Nachsehen</translation>
    </message>
    <message>
        <source>Rule out first</source>
        <translation>Zuerst ausschließen</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Aufschreiben</translation>
    </message>
    <message>
        <source>Photograph</source>
        <translation>Fotografieren</translation>
    </message>
    <message>
        <source>Ask</source>
        <translation>Fragen</translation>
    </message>
    <message>
        <source>Tell</source>
        <translation>Bescheid geben</translation>
    </message>
    <message>
        <source>Roots: in a pot they are at risk at %1; a usual winter&apos;s lowest night at %2 is %3. Wrap the pot, stand it on the ground by a wall, or bring it in.</source>
        <translation>Wurzeln: Im Topf sind sie bei %1 in Gefahr; die tiefste Nacht eines üblichen Winters am Platz %2 hat %3. Den Topf einhüllen, auf den Boden an eine Wand stellen oder hereinholen.</translation>
    </message>
    <message>
        <source>roots slow down</source>
        <translation>Wurzeln langsamer wachsen</translation>
    </message>
    <message>
        <source>roots stop</source>
        <translation>Wurzeln nicht mehr wachsen</translation>
    </message>
    <message>
        <source>roots are harmed within hours</source>
        <translation>Wurzeln binnen Stunden Schaden nehmen</translation>
    </message>
    <message>
        <source>Roots: the mix at the pot&apos;s wall reaches about %1 at %2 about %3 (rough), where %4. Shade the pot itself, set it into a larger light one, and water early.</source>
        <translation>Wurzeln: Die Erde an der Topfwand erreicht am Platz %2 um den %3 etwa %1 (grob), wobei %4. Den Topf selbst beschatten, in einen größeren hellen stellen und früh gießen.</translation>
    </message>
    <message>
        <source>Winter: %1 is warm (%2) and dim (%3 mol a day). Warm and dim weakens a plant: give it a cool place, or much more light.</source>
        <translation>Winter: %1 ist warm (%2) und dunkel (%3 mol am Tag). Warm und dunkel schwächt eine Pflanze: ihr einen kühlen Platz geben oder viel mehr Licht.</translation>
    </message>
    <message>
        <source>Winter: %1 is warm (%2) and dim (%3 mol a day). Warm and dim weakens a plant: more light, by a window or a lamp, or cooler and drier.</source>
        <translation>Winter: %1 ist warm (%2) und dunkel (%3 mol am Tag). Warm und dunkel schwächt eine Pflanze: mehr Licht, durch ein Fenster oder eine Lampe, oder kühler und trockener.</translation>
    </message>
    <message>
        <source>Growth was slowing before the event: the plant may be nearing its size, and would slow on without any harm. Compare it with spared plants of its kind (--spared).</source>
        <translation>Das Wachstum ließ schon vor dem Ereignis nach: Die Pflanze nähert sich vielleicht ihrer Größe und würde auch ohne Schaden langsamer. Mit verschonten Pflanzen ihrer Art vergleichen (--spared).</translation>
    </message>
    <message>
        <source>The share is near its full: growth can hardly be seen in it any more. Measure a size as well, or take a wider outline.</source>
        <translation>Der Anteil ist fast voll: Wachstum ist darin kaum noch zu sehen. Auch eine Größe messen oder einen weiteren Umriss nehmen.</translation>
    </message>
    <message>
        <source>The interval lies above 0.2 and it is still too early: good news has a stricter limit, since a look after every reading gives chance many tries.</source>
        <translation>Die Spanne liegt über 0,2, und doch ist es zu früh: Gute Nachricht hat eine strengere Grenze, denn Hinsehen nach jeder Messung gibt dem Zufall viele Versuche.</translation>
    </message>
    <message>
        <source>not on a windy day, and not below %1</source>
        <translation>nicht an einem windigen Tag und nicht unter %1</translation>
    </message>
    <message>
        <source>the nights would allow it from %1 on; the steps need until %2</source>
        <translation>die Nächte erlaubten es ab %1; die Schritte brauchen bis %2</translation>
    </message>
    <message>
        <source>nothing on %1, the forecast is too cold for it</source>
        <translation>am %1 nichts, die Vorhersage ist dafür zu kalt</translation>
    </message>
    <message>
        <source>no spot indoors is apart from other plants: keep it an arm&apos;s length away from them</source>
        <translation>drinnen liegt kein Platz abseits der anderen Pflanzen: eine Armlänge Abstand zu ihnen halten</translation>
    </message>
    <message>
        <source>it weighs about %1: carry it with a second person or on wheels</source>
        <translation>sie wiegt etwa %1: zu zweit tragen oder auf Rollen bewegen</translation>
    </message>
    <message>
        <source>it is poisonous: gloves where sap may run, out of reach of children and animals on the way</source>
        <translation>sie ist giftig: Handschuhe, wo Saft austreten kann, unterwegs außer Reichweite von Kindern und Tieren</translation>
    </message>
    <message>
        <source>A plant of a kind that takes no feed needs none of it.</source>
        <translation>Eine Pflanze, deren Art keinen Dünger nimmt, braucht keinen.</translation>
    </message>
    <message>
        <source>More than %1 ppm of nitrogen is above what greenhouses give at every watering; pots at home get half or less.</source>
        <translation>Mehr als %1 ppm Stickstoff ist mehr, als Gärtnereien bei jedem Gießen geben; Töpfe im Haus bekommen die Hälfte oder weniger.</translation>
    </message>
    <message>
        <source>Without the weight of a millilitre (on the label) only grams are known.</source>
        <translation>Ohne das Gewicht eines Milliliters (auf dem Etikett) sind nur Gramm bekannt.</translation>
    </message>
    <message>
        <source>Without the weight of a level teaspoon only grams are known: spoons of powder differ by kind from 3.8 to 6.8 g.</source>
        <translation>Ohne das Gewicht eines gestrichenen Teelöffels sind nur Gramm bekannt: Löffel voll Pulver wiegen je nach Sorte 3,8 bis 6,8 g.</translation>
    </message>
    <message>
        <source>More than %1 percent burns leaves of many plants; the label&apos;s strength counts.</source>
        <translation>Mehr als %1 Prozent verbrennt Blätter vieler Pflanzen; es gilt die Stärke des Etiketts.</translation>
    </message>
    <message>
        <source>Stronger than usual, which is %1 to %2 percent; the label&apos;s strength counts.</source>
        <translation>Stärker als üblich, das sind %1 bis %2 Prozent; es gilt die Stärke des Etiketts.</translation>
    </message>
    <message>
        <source>Weaker than usual, which is %1 to %2 percent, so it may do nothing; the label&apos;s strength counts.</source>
        <translation>Schwächer als üblich, das sind %1 bis %2 Prozent, und so vielleicht ohne Wirkung; es gilt die Stärke des Etiketts.</translation>
    </message>
    <message>
        <source>January</source>
        <translation>Januar</translation>
    </message>
    <message>
        <source>February</source>
        <translation>Februar</translation>
    </message>
    <message>
        <source>March</source>
        <translation>März</translation>
    </message>
    <message>
        <source>April</source>
        <translation>April</translation>
    </message>
    <message>
        <source>May</source>
        <translation>Mai</translation>
    </message>
    <message>
        <source>June</source>
        <translation>Juni</translation>
    </message>
    <message>
        <source>July</source>
        <translation>Juli</translation>
    </message>
    <message>
        <source>August</source>
        <translation>August</translation>
    </message>
    <message>
        <source>September</source>
        <translation>September</translation>
    </message>
    <message>
        <source>October</source>
        <translation>Oktober</translation>
    </message>
    <message>
        <source>November</source>
        <translation>November</translation>
    </message>
    <message>
        <source>December</source>
        <translation>Dezember</translation>
    </message>
    <message>
        <source>Day length: %1.</source>
        <translation>Tageslänge: %1.</translation>
    </message>
    <message>
        <source>Many such seeds and their seedlings are poisonous: keep packets from children and animals.</source>
        <translation>Viele solche Samen und ihre Sämlinge sind giftig: Tütchen von Kindern und Tieren fernhalten.</translation>
    </message>
    <message>
        <source>Raw beans are poisonous: keep seed from children; cook the harvest.</source>
        <translation>Rohe Bohnen sind giftig: Saatgut von Kindern fernhalten; die Ernte kochen.</translation>
    </message>
    <message>
        <source>Dressed (coloured) seed is poisonous: gloves, never eaten, the packet&apos;s words come first.</source>
        <translation>Gebeiztes (gefärbtes) Saatgut ist giftig: Handschuhe, nie essen, die Angaben auf dem Tütchen gehen vor.</translation>
    </message>
    <message>
        <source>The room is too cool for the seed: warm the mix to %1 (a heat mat made for plants; water and mains apart).</source>
        <translation>Der Raum ist dem Samen zu kühl: die Erde auf %1 wärmen (eine Heizmatte für Pflanzen; Wasser und Netzstrom getrennt).</translation>
    </message>
    <message>
        <source>Emergence from the usual days; cooler than the best range it is an estimate (common practice).</source>
        <translation>Das Aufgehen nach den üblichen Tagen; kühler als der beste Bereich ist es eine Schätzung (übliche Praxis).</translation>
    </message>
    <message>
        <source>The days to emergence hold only while the mix is kept moist.</source>
        <translation>Die Tage bis zum Aufgehen gelten nur, solange die Erde feucht bleibt.</translation>
    </message>
    <message>
        <source>A slow sort would still stand there when damaging nights come: choose a quick or usual one.</source>
        <translation>Eine langsame Sorte stünde noch da, wenn schädliche Nächte kommen: eine schnelle oder übliche wählen.</translation>
    </message>
    <message>
        <source>It falls into months of heavy rain: trays and pots under a roof, saucers empty.</source>
        <translation>Es fällt in Monate mit starkem Regen: Schalen und Töpfe unter ein Dach, Untersetzer leer.</translation>
    </message>
    <message>
        <source>a spot that is gone</source>
        <translation>ein Platz, den es nicht mehr gibt</translation>
    </message>
    <message>
        <source>hardening, out by day</source>
        <translation>Abhärten, tagsüber draußen</translation>
    </message>
    <message>
        <source>A date of the plan, which is a chance and not a promise.</source>
        <translation>Ein Datum des Plans: eine Wahrscheinlichkeit, kein Versprechen.</translation>
    </message>
    <message>
        <source>%1 (reckoned from its days at one temperature)</source>
        <translation>%1 (aus den Tagen bei einer Temperatur gerechnet)</translation>
    </message>
    <message>
        <source>%1 (common practice, no source)</source>
        <translation>%1 (übliche Praxis, keine Quelle)</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>%1 d</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>a pest without a known name</source>
        <translation>ein Schädling ohne bekannten Namen</translation>
    </message>
    <message>
        <source>nothing found</source>
        <translation>nichts gefunden</translation>
    </message>
    <message>
        <source>%1 found, last on %2</source>
        <translation>%1 gefunden, zuletzt am %2</translation>
    </message>
    <message>
        <source>stood at one spot with %1, last on %2 (%3)</source>
        <translation>stand am selben Platz wie %1, zuletzt am %2 (%3)</translation>
    </message>
    <message>
        <source>stood at one spot with an infested plant, last on %1 (%2)</source>
        <translation>stand am selben Platz wie eine befallene Pflanze, zuletzt am %1 (%2)</translation>
    </message>
    <message>
        <source>%1 found at its spot on %2</source>
        <translation>%1 an ihrem Platz gefunden am %2</translation>
    </message>
    <message>
        <source>set apart on %1 to be watched</source>
        <translation>abgesondert am %1 zum Beobachten</translation>
    </message>
    <message>
        <source>clear since %1: a whole generation without finds</source>
        <translation>frei seit %1: eine ganze Generation ohne Fund</translation>
    </message>
    <message>
        <source>clean looks and time enough, since %1</source>
        <translation>saubere Durchsichten und genug Zeit, seit %1</translation>
    </message>
    <message>
        <source>set it apart from the others; wash hands and tools after it</source>
        <translation>von den anderen absondern; danach Hände und Werkzeug waschen</translation>
    </message>
    <message>
        <source>treat it (%1); label first, and ask what speaks against it before any spray</source>
        <translation>behandeln (%1); zuerst das Etikett, und vor jedem Spritzen fragen, was dagegen spricht</translation>
    </message>
    <message>
        <source>look it over</source>
        <translation>durchsehen</translation>
    </message>
    <message>
        <source>look it over: %1</source>
        <translation>durchsehen: %1</translation>
    </message>
    <message>
        <source>last look; clean means it may go back</source>
        <translation>letzte Durchsicht; sauber heißt, sie darf zurück</translation>
    </message>
    <message>
        <source>last look: %1; clean means it may go back</source>
        <translation>letzte Durchsicht: %1; sauber heißt, sie darf zurück</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>with no end in sight</source>
        <translation>ohne absehbares Ende</translation>
    </message>
    <message>
        <source>%1 stands apart; leave it so %2.</source>
        <translation>%1 steht abgesondert; so lassen, %2.</translation>
    </message>
    <message>
        <source>%1 should stand apart %2, and no spot is fit; bag it loosely or keep an arm&apos;s length free round it.</source>
        <translation>%1 sollte abgesondert stehen, %2, und kein Platz taugt dafür; locker einbeuteln oder ringsum eine Armlänge frei halten.</translation>
    </message>
    <message>
        <source>%1: to %2 %3.</source>
        <translation>%1: nach %2, %3.</translation>
    </message>
    <message>
        <source>%1: the least bad is %2 (1 clean plant there) %3; leaves must not touch, and it is visited last.</source>
        <translation>%1: am besten ist noch %2 (dort 1 saubere Pflanze), %3; Blätter dürfen sich nicht berühren, und sie kommt zuletzt dran.</translation>
    </message>
    <message>
        <source>%1: the least bad is %2 (%3 clean plants there) %4; leaves must not touch, and it is visited last.</source>
        <translation>%1: am besten ist noch %2 (dort %3 saubere Pflanzen), %4; Blätter dürfen sich nicht berühren, und sie kommt zuletzt dran.</translation>
    </message>
    <message>
        <source>No spot of this household is set down as apart, so nothing can be isolated properly; the spots with the fewest contacts are named instead.</source>
        <translation>Kein Platz dieses Haushalts ist als abgesondert eingetragen, darum lässt sich nichts richtig absondern; genannt sind die Plätze mit den wenigsten Kontakten.</translation>
    </message>
    <message>
        <source>The spots that are apart are full or unfit for a plant that needs one.</source>
        <translation>Die abgesonderten Plätze sind voll oder taugen nicht für eine Pflanze, die einen braucht.</translation>
    </message>
    <message>
        <source>A find names no pest; log it again with its name for a better date.</source>
        <translation>Ein Fund nennt keinen Schädling; mit seinem Namen neu eintragen, dann stimmt das Datum besser.</translation>
    </message>
    <message>
        <source>No pest named &quot;%1&quot; is known here; its courses run by the citrus mealybug&apos;s clock.</source>
        <translation>Ein Schädling „%1“ ist hier nicht bekannt; seine Kuren laufen nach der Uhr der Zitrus-Wolllaus.</translation>
    </message>
    <message>
        <source>%1 has no spot; its clock is reckoned at 20 °C, and its contacts are not known.</source>
        <translation>%1 hat keinen Platz; ihre Uhr ist mit 20 °C gerechnet, und ihre Kontakte sind nicht bekannt.</translation>
    </message>
    <message>
        <source>%1 flies: look at every plant of the rooms, wherever it stands.</source>
        <translation>%1 fliegt: jede Pflanze der Räume durchsehen, wo sie auch steht.</translation>
    </message>
    <message>
        <source>%1: some countries want finds reported; ask the plant-health office.</source>
        <translation>%1: In manchen Ländern ist ein Fund zu melden; beim Pflanzenschutzamt fragen.</translation>
    </message>
    <message>
        <source>%1 is set apart on a spot with clean plants.</source>
        <translation>%1 ist an einem Platz mit sauberen Pflanzen abgesondert.</translation>
    </message>
    <message>
        <source>Clean plants first, suspect ones next, infested ones last; wash hands and tools between. Labels and local rules come first; keep children and animals away from what is wet with spray.</source>
        <translation>Zuerst saubere Pflanzen, dann verdächtige, zuletzt befallene; dazwischen Hände und Werkzeug waschen. Etiketten und örtliche Regeln gehen vor; Kinder und Tiere von allem fernhalten, was noch nass vom Spritzen ist.</translation>
    </message>
    <message>
        <source>The household&apos;s own record %1, kept %2 away, %3</source>
        <translation>Die eigene Aufzeichnung des Haushalts %1, %2 entfernt geführt, %3</translation>
    </message>
    <message>
        <source>1 station, the nearest %1 away, %2</source>
        <translation>1 Station, die nächste %1 entfernt, %2</translation>
    </message>
    <message>
        <source>%1 stations, the nearest %2 away, %3</source>
        <translation>%1 Stationen, die nächste %2 entfernt, %3</translation>
    </message>
    <message>
        <source>Climate figures: %1</source>
        <translation>Klimawerte: %1</translation>
    </message>
    <message>
        <source>2003–2021 means computed from CLIMAT reports, Deutscher Wetterdienst (CC BY 4.0)</source>
        <translation>Mittel 2003–2021, berechnet aus CLIMAT-Meldungen, Deutscher Wetterdienst (CC BY 4.0)</translation>
    </message>
    <message>
        <source>computed from GHCN-Daily, NOAA NCEI (public domain)</source>
        <translation>berechnet aus GHCN-Daily, NOAA NCEI (gemeinfrei)</translation>
    </message>
    <message>
        <source>the household&apos;s own record</source>
        <translation>die eigene Aufzeichnung des Haushalts</translation>
    </message>
    <message>
        <source>%1 to %2 hours</source>
        <translation>%1 bis %2 Stunden</translation>
    </message>
    <message>
        <source>%1 to %2 days</source>
        <translation>%1 bis %2 Tagen</translation>
    </message>
    <message>
        <source>It leaves no trace in the mix.</source>
        <translation>Es lässt keine Spur in der Erde.</translation>
    </message>
    <message>
        <source>It is bound in the mix, so washing does not bring it out.</source>
        <translation>Es ist in der Erde gebunden, Waschen bringt es nicht heraus.</translation>
    </message>
    <message>
        <source>It is partly bound in the mix.</source>
        <translation>Es ist in der Erde zum Teil gebunden.</translation>
    </message>
    <message>
        <source>It moves with water through the mix.</source>
        <translation>Es wandert mit dem Wasser durch die Erde.</translation>
    </message>
    <message>
        <source>Its half-life there is %1 to %2 days.</source>
        <translation>Seine Halbwertszeit dort ist %1 bis %2 Tage.</translation>
    </message>
    <message>
        <source>Its half-life there is over %1 days.</source>
        <translation>Seine Halbwertszeit dort liegt über %1 Tagen.</translation>
    </message>
    <message>
        <source>rinse the wet leaves, gloves on, the pot tipped</source>
        <translation>die nassen Blätter abspülen, mit Handschuhen, den Topf gekippt</translation>
    </message>
    <message>
        <source>photograph and write down</source>
        <translation>fotografieren und aufschreiben</translation>
    </message>
    <message>
        <source>ask whoever sprayed, and tell whom it concerns</source>
        <translation>fragen, wer gespritzt hat, und allen Betroffenen Bescheid geben</translation>
    </message>
    <message>
        <source>wash the mix through and catch the water</source>
        <translation>die Erde durchspülen und das Wasser auffangen</translation>
    </message>
    <message>
        <source>sow beans or peas in three pots of that mix and three of clean mix</source>
        <translation>Bohnen oder Erbsen in drei Töpfe mit dieser Erde und drei mit sauberer säen</translation>
    </message>
    <message>
        <source>compare the two sets of pots; bent or cupped leaves in one set alone mean a trace in the mix</source>
        <translation>die beiden Reihen Töpfe vergleichen; gebogene oder gewölbte Blätter nur in einer Reihe deuten auf Reste in der Erde</translation>
    </message>
    <message>
        <source>look, photograph and log new growth</source>
        <translation>nachsehen, fotografieren und neuen Trieb eintragen</translation>
    </message>
    <message>
        <source>Above the plant&apos;s safe night: nothing is to be expected.</source>
        <translation>Über der sicheren Nacht der Pflanze: Es ist nichts zu erwarten.</translation>
    </message>
    <message>
        <source>Stress: below the safe night, above the line of damage. Often nothing shows.</source>
        <translation>Stress: unter der sicheren Nacht, über der Schadenslinie. Oft zeigt sich nichts.</translation>
    </message>
    <message>
        <source>Growth is probably lost: long below the safe night stunts a plant without a sign on the leaves.</source>
        <translation>Wachstum ist wahrscheinlich verloren: Lange unter der sicheren Nacht hemmt eine Pflanze, ohne dass die Blätter es zeigen.</translation>
    </message>
    <message>
        <source>Leaf damage is possible: the line was crossed, though not for long.</source>
        <translation>Blattschaden ist möglich: Die Linie wurde unterschritten, wenn auch nicht lange.</translation>
    </message>
    <message>
        <source>Leaf damage is likely; the plant as a whole should live.</source>
        <translation>Blattschaden ist wahrscheinlich; die Pflanze als Ganzes sollte leben.</translation>
    </message>
    <message>
        <source>Death is possible: the lethal line was reached. Wait for the looks before giving it up.</source>
        <translation>Absterben ist möglich: Die tödliche Linie wurde erreicht. Die Tage des Nachsehens abwarten, bevor man sie aufgibt.</translation>
    </message>
    <message>
        <source>Death is likely: the night went below the lethal line. Roots or base may yet live, so wait.</source>
        <translation>Absterben ist wahrscheinlich: Die Nacht ging unter die tödliche Linie. Wurzeln oder Fuß können noch leben, also warten.</translation>
    </message>
    <message>
        <source>No temperature was ever published for this kind: its lines are common practice, so this is a guess.</source>
        <translation>Für diese Art wurde nie eine Temperatur veröffentlicht: Ihre Linien sind übliche Praxis, dies ist also geschätzt.</translation>
    </message>
    <message>
        <source>Its lines rest on a hardiness class, not on a measured injury.</source>
        <translation>Ihre Linien beruhen auf einer Winterhärteklasse, nicht auf einem gemessenen Schaden.</translation>
    </message>
    <message>
        <source>Its lines are those of its group or genus; sorts differ.</source>
        <translation>Ihre Linien sind die ihrer Gruppe oder Gattung; Sorten unterscheiden sich.</translation>
    </message>
    <message>
        <source>Its lines come from cold stores in the dark; light and wind make it worse.</source>
        <translation>Ihre Linien stammen aus dunklen Kühlräumen; Licht und Wind machen es schlimmer.</translation>
    </message>
    <message>
        <source>Its lines are the household&apos;s own.</source>
        <translation>Ihre Linien sind die eigenen des Haushalts.</translation>
    </message>
    <message>
        <source>Nights add up; by how much is known for few kinds.</source>
        <translation>Nächte summieren sich; wie sehr, ist für wenige Arten bekannt.</translation>
    </message>
    <message>
        <source>How long it was cold was not measured; the night&apos;s course is a model with the usual swing of the spot at that time of the year where it is known, else with 8 K. A clear night&apos;s swing is wider and its cold shorter.</source>
        <translation>Wie lange es kalt war, wurde nicht gemessen; der Verlauf der Nacht ist ein Modell mit der üblichen Schwankung des Platzes zu dieser Jahreszeit, wo sie bekannt ist, sonst mit 8 K. In einer klaren Nacht ist die Schwankung größer und die Kälte kürzer.</translation>
    </message>
    <message>
        <source>look at leaves and stems, photograph</source>
        <translation>Blätter und Stängel ansehen, fotografieren</translation>
    </message>
    <message>
        <source>scratch test on woody stems: green and moist is alive</source>
        <translation>Kratzprobe an verholzten Trieben: grün und feucht lebt</translation>
    </message>
    <message>
        <source>new growth by now is a sign of life; log it, then feeding may begin again</source>
        <translation>neuer Trieb ist inzwischen ein Lebenszeichen; eintragen, dann darf wieder gedüngt werden</translation>
    </message>
    <message>
        <source>The database is damaged</source>
        <translation>Die Datenbank ist beschädigt</translation>
    </message>
    <message>
        <source>A line of the journal leads nowhere</source>
        <translation>Ein Eintrag führt ins Leere</translation>
    </message>
    <message>
        <source>A photo is missing</source>
        <translation>Ein Foto fehlt</translation>
    </message>
    <message>
        <source>A photo was altered</source>
        <translation>Ein Foto wurde verändert</translation>
    </message>
    <message>
        <source>A photo cannot be read</source>
        <translation>Ein Foto lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>A photo is not in the journal</source>
        <translation>Ein Foto steht nicht im Journal</translation>
    </message>
    <message>
        <source>A measurement&apos;s photo is unknown</source>
        <translation>Das Foto einer Messung ist unbekannt</translation>
    </message>
    <message>
        <source>A file is not the program&apos;s</source>
        <translation>Eine Datei gehört nicht zum Programm</translation>
    </message>
    <message>
        <source>Something unfinished is left over</source>
        <translation>Etwas Unfertiges ist übrig</translation>
    </message>
    <message>
        <source>copy the folder as it is, restore the latest backup into a new folder; without one, `lathhouse export csv DIR --salvage` saves what can be read and `lathhouse import csv DIR` makes a household of it</source>
        <translation>den Ordner kopieren, wie er ist, und die letzte Sicherung in einen neuen Ordner zurückholen; ohne eine rettet `lathhouse export csv ORDNER --salvage`, was lesbar ist, und `lathhouse import csv ORDNER` macht einen Haushalt daraus</translation>
    </message>
    <message>
        <source>restore a backup from before it; without one, `lathhouse export csv DIR` and `lathhouse import csv DIR --leave-out-broken` make a household without such entries</source>
        <translation>eine Sicherung von davor zurückholen; ohne eine machen `lathhouse export csv ORDNER` und `lathhouse import csv ORDNER --leave-out-broken` einen Haushalt ohne solche Einträge</translation>
    </message>
    <message>
        <source>put the file back from a backup or the camera, by importing it again</source>
        <translation>die Datei aus einer Sicherung zurücklegen oder durch neues Aufnehmen von der Kamera</translation>
    </message>
    <message>
        <source>put the original back from a backup; the altered one can be kept elsewhere first</source>
        <translation>das Original aus einer Sicherung zurücklegen; das veränderte vorher anderswo aufbewahren</translation>
    </message>
    <message>
        <source>look at the rights of the file and at the disk; put it back from a backup</source>
        <translation>die Rechte der Datei und den Zustand der Platte prüfen; sie aus einer Sicherung zurücklegen</translation>
    </message>
    <message>
        <source>import it if you want it in the journal; else it can be moved away</source>
        <translation>aufnehmen, wenn es ins Journal soll; sonst darf es fort</translation>
    </message>
    <message>
        <source>the value stands as it is; import the photo (`lathhouse add photos FILE`) to see again what was measured, or measure anew in a photo that is there</source>
        <translation>der Wert bleibt, wie er ist; das Foto aufnehmen (`lathhouse add photos DATEI`), um wieder zu sehen, was gemessen wurde, oder in einem vorhandenen Foto neu messen</translation>
    </message>
    <message>
        <source>leave it or move it away; backups do not hold it unless it is below photos/</source>
        <translation>lassen oder wegräumen; Sicherungen enthalten sie nur unter photos/</translation>
    </message>
    <message>
        <source>delete it when no other lathhouse is at work on the folder</source>
        <translation>löschen, wenn kein anderes lathhouse am Ordner arbeitet</translation>
    </message>
    <message>
        <source>its kind is not in the reference, so follow the label at half strength while it grows</source>
        <translation>ihre Art steht nicht im Verzeichnis, also nach dem Etikett mit halber Stärke, solange sie wächst</translation>
    </message>
    <message>
        <source>a kind that takes no feed</source>
        <translation>eine Art, die keinen Dünger nimmt</translation>
    </message>
    <message>
        <source>it stands at no spot</source>
        <translation>sie steht an keinem Platz</translation>
    </message>
    <message>
        <source>weed-killer or another chemical hit it on %1</source>
        <translation>Unkrautmittel oder eine andere Chemikalie traf sie am %1</translation>
    </message>
    <message>
        <source>weed-killer or another chemical hit it</source>
        <translation>Unkrautmittel oder eine andere Chemikalie traf sie</translation>
    </message>
    <message>
        <source>set apart with sick roots on %1</source>
        <translation>mit kranken Wurzeln abgesondert am %1</translation>
    </message>
    <message>
        <source>set apart with sick roots</source>
        <translation>mit kranken Wurzeln abgesondert</translation>
    </message>
    <message>
        <source>a cold night hurt it on %1</source>
        <translation>eine kalte Nacht schadete ihr am %1</translation>
    </message>
    <message>
        <source>a cold night hurt it</source>
        <translation>eine kalte Nacht schadete ihr</translation>
    </message>
    <message>
        <source>pests were found on it on %1</source>
        <translation>am %1 wurden Schädlinge an ihr gefunden</translation>
    </message>
    <message>
        <source>pests were found on it</source>
        <translation>an ihr wurden Schädlinge gefunden</translation>
    </message>
    <message>
        <source>set apart on %1</source>
        <translation>abgesondert am %1</translation>
    </message>
    <message>
        <source>set apart</source>
        <translation>abgesondert</translation>
    </message>
    <message>
        <source>repotted on %1; fresh mix holds feed</source>
        <translation>umgetopft am %1; frische Erde enthält Nährstoffe</translation>
    </message>
    <message>
        <source>repotted; fresh mix holds feed</source>
        <translation>umgetopft; frische Erde enthält Nährstoffe</translation>
    </message>
    <message>
        <source>bought on %1; its mix holds feed</source>
        <translation>gekauft am %1; ihre Erde enthält Nährstoffe</translation>
    </message>
    <message>
        <source>bought; its mix holds feed</source>
        <translation>gekauft; ihre Erde enthält Nährstoffe</translation>
    </message>
    <message>
        <source>moved into much brighter light on %1; it changes its leaves first</source>
        <translation>in viel helleres Licht umgestellt am %1; sie stellt erst ihre Blätter um</translation>
    </message>
    <message>
        <source>moved into much brighter light; it changes its leaves first</source>
        <translation>in viel helleres Licht umgestellt; sie stellt erst ihre Blätter um</translation>
    </message>
    <message>
        <source>it rests</source>
        <translation>sie ruht</translation>
    </message>
    <message>
        <source>rain keeps the pot wet and washes feed out</source>
        <translation>Regen hält den Topf nass und wäscht Dünger aus</translation>
    </message>
    <message>
        <source>too cool to grow</source>
        <translation>zu kühl zum Wachsen</translation>
    </message>
    <message>
        <source>too hot to grow</source>
        <translation>zu heiß zum Wachsen</translation>
    </message>
    <message>
        <source>too little light to grow</source>
        <translation>zu wenig Licht zum Wachsen</translation>
    </message>
    <message>
        <source>days too short to grow</source>
        <translation>Tage zu kurz zum Wachsen</translation>
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
        <translation>1 Tag</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>%1; until new growth is logged</source>
        <translation>%1; bis ein neuer Trieb eingetragen ist</translation>
    </message>
    <message>
        <source>%1; until it is released</source>
        <translation>%1; bis sie entlassen ist</translation>
    </message>
    <message>
        <source>%1; until it is released and new growth is logged</source>
        <translation>%1; bis sie entlassen und ein neuer Trieb eingetragen ist</translation>
    </message>
    <message>
        <source>%1; until no pest is found any more</source>
        <translation>%1; bis kein Schädling mehr gefunden wird</translation>
    </message>
    <message>
        <source>no watering is logged</source>
        <translation>kein Gießen ist eingetragen</translation>
    </message>
    <message>
        <source>by then it has drawn what it may</source>
        <translation>bis dahin hat sie das Wasser im Topf verbraucht, das sie verbrauchen soll</translation>
    </message>
    <message>
        <source>it draws little; look all the same</source>
        <translation>sie verbraucht wenig; trotzdem nachsehen</translation>
    </message>
    <message>
        <source>rain may keep it wet; feel 5 cm deep</source>
        <translation>Regen hält sie vielleicht nass; 5 cm tief fühlen</translation>
    </message>
    <message>
        <source>cool and dim</source>
        <translation>kühl und dunkel</translation>
    </message>
    <message>
        <source>cool and bright</source>
        <translation>kühl und hell</translation>
    </message>
    <message>
        <source>warm and bright</source>
        <translation>warm und hell</translation>
    </message>
    <message>
        <source>warm and dim</source>
        <translation>warm und dunkel</translation>
    </message>
    <message>
        <source>Wet season for pots in the open: %1. Cacti and succulents under a roof, pots on feet, saucers empty, no feed; look for fungus. The top may look dry while the roots stand wet: feel 5 cm deep.</source>
        <translation>Nasse Zeit für Töpfe im Freien: %1. Kakteen und Sukkulenten unter ein Dach, Töpfe auf Füße, Untersetzer leer, kein Dünger; auf Pilz achten. Oben kann es trocken aussehen, während die Wurzeln nass stehen: 5 cm tief fühlen.</translation>
    </message>
    <message>
        <source>the rest is common practice without a source</source>
        <translation>der Rest ist übliche Praxis ohne Quelle</translation>
    </message>
    <message>
        <source>Sources: %1.</source>
        <translation>Quellen: %1.</translation>
    </message>
    <message>
        <source>%1 % a week in odds</source>
        <translation>%1 % in der Woche an Chancen</translation>
    </message>
    <message>
        <source>%1 % a week</source>
        <translation>%1 % in der Woche</translation>
    </message>
    <message>
        <source>It grew %1 before and grows %2 now</source>
        <translation>Sie wuchs vorher %1 und wächst jetzt %2</translation>
    </message>
    <message>
        <source>It grew %1 before and loses %2 now</source>
        <translation>Sie wuchs vorher %1 und verliert jetzt %2</translation>
    </message>
    <message>
        <source>It lost %1 before and grows %2 now</source>
        <translation>Sie verlor vorher %1 und wächst jetzt %2</translation>
    </message>
    <message>
        <source>It lost %1 before and loses %2 now</source>
        <translation>Sie verlor vorher %1 und verliert jetzt %2</translation>
    </message>
    <message>
        <source>none of it</source>
        <translation>nichts davon</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>none at 9 in 10</source>
        <translation>nichts bei 9 von 10</translation>
    </message>
    <message>
        <source>none to %1 at 9 in 10</source>
        <translation>nichts bis %1 bei 9 von 10</translation>
    </message>
    <message>
        <source>between %1 and %2 at 9 in 10</source>
        <translation>zwischen %1 und %2 bei 9 von 10</translation>
    </message>
    <message>
        <source>No setback: the yellow share did not rise.</source>
        <translation>Kein Rückschlag: Der gelbe Anteil stieg nicht.</translation>
    </message>
    <message>
        <source>No setback: it grows on as it did before.</source>
        <translation>Kein Rückschlag: Sie wächst weiter wie zuvor.</translation>
    </message>
    <message>
        <source>Recovered: nearly all of the yellowing is gone.</source>
        <translation>Erholt: Fast alles Gelbe ist fort.</translation>
    </message>
    <message>
        <source>Recovered: it grows about as fast as before.</source>
        <translation>Erholt: Sie wächst etwa so schnell wie zuvor.</translation>
    </message>
    <message>
        <source>Recovering: some of the yellowing is gone.</source>
        <translation>Erholt sich: Ein Teil des Gelben ist fort.</translation>
    </message>
    <message>
        <source>Recovering: it grows again, how fast is not yet sure.</source>
        <translation>Erholt sich: Sie wächst wieder; wie schnell, ist noch nicht sicher.</translation>
    </message>
    <message>
        <source>Holding: the yellow share stays where it went.</source>
        <translation>Hält sich: Der gelbe Anteil bleibt, wo er hinkam.</translation>
    </message>
    <message>
        <source>Holding: it stands still or nearly so.</source>
        <translation>Hält sich: Sie steht still oder fast.</translation>
    </message>
    <message>
        <source>Declining: the yellow share is rising.</source>
        <translation>Geht zurück: Der gelbe Anteil steigt.</translation>
    </message>
    <message>
        <source>Declining: it gets smaller.</source>
        <translation>Geht zurück: Sie wird kleiner.</translation>
    </message>
    <message>
        <source>Cannot be judged by this measure: it has %1 of the 3 readings needed before the event, and later ones cannot help.</source>
        <translation>Nach diesem Maß nicht zu beurteilen: Von den 3 Messungen, die vor dem Ereignis nötig sind, gibt es %1, und spätere helfen nicht.</translation>
    </message>
    <message>
        <source>Too early: it has %1 of the 4 readings that are needed after the event.</source>
        <translation>Zu früh: Von den 4 Messungen, die nach dem Ereignis nötig sind, gibt es %1.</translation>
    </message>
    <message>
        <source>Too early: by warmth and light there was no time to grow, so standing still says nothing.</source>
        <translation>Zu früh: Nach Wärme und Licht war keine Zeit zum Wachsen, Stillstand sagt also nichts.</translation>
    </message>
    <message>
        <source>Too early: it did not grow before the event, so there is nothing to regain.</source>
        <translation>Zu früh: Sie wuchs schon vor dem Ereignis nicht, also ist nichts wiederzugewinnen.</translation>
    </message>
    <message>
        <source>Too early by one reading: the last one looks good, and the next has to bear it out.</source>
        <translation>Um eine Messung zu früh: Die letzte sieht gut aus, die nächste muss es bestätigen.</translation>
    </message>
    <message>
        <source>Too early: the yellow share rose and seems to do so no longer; whether yellow goes again cannot be said yet.</source>
        <translation>Zu früh: Der gelbe Anteil stieg und tut es wohl nicht mehr; ob das Gelbe wieder vergeht, lässt sich noch nicht sagen.</translation>
    </message>
    <message>
        <source>Too early: it got smaller and seems to do so no longer; whether it grows again cannot be said yet.</source>
        <translation>Zu früh: Sie wurde kleiner und wird es wohl nicht mehr; ob sie wieder wächst, lässt sich noch nicht sagen.</translation>
    </message>
    <message>
        <source>Too early: the readings fit more than one answer.</source>
        <translation>Zu früh: Die Messungen passen zu mehr als einer Antwort.</translation>
    </message>
    <message>
        <source>By %1 readings before the event and %2 after it.</source>
        <translation>Aus %1 Messungen vor dem Ereignis und %2 danach.</translation>
    </message>
    <message>
        <source>Yellow changes by %1 now; of what the event turned yellow %2 is gone again, %3.</source>
        <translation>Das Gelbe ändert sich jetzt um %1; von dem, was durch das Ereignis gelb wurde, ist %2 wieder fort, %3.</translation>
    </message>
    <message>
        <source>Yellow changes by %1 now.</source>
        <translation>Das Gelbe ändert sich jetzt um %1.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>That is %1 of what it was, %2.</source>
        <translation>Das ist das %1-Fache von vorher, %2.</translation>
    </message>
    <message>
        <source>By the growth clock, which takes warmth and light out, that is %1 of what it was, %2.</source>
        <translation>Nach der Wachstumsuhr, die Wärme und Licht herausrechnet, ist das das %1-Fache von vorher, %2.</translation>
    </message>
    <message>
        <source>A reading on %1 could settle it, if it goes on as now.</source>
        <translation>Eine Messung am %1 könnte es entscheiden, wenn es so weitergeht.</translation>
    </message>
    <message>
        <source>No date in sight settles it, if readings go on as they do.</source>
        <translation>Kein absehbarer Tag entscheidet es, wenn weiter so gemessen wird.</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>a figure published for this plant; the other lines may be common practice</source>
        <translation>ein für diese Pflanze veröffentlichter Wert; die anderen Linien sind vielleicht übliche Praxis</translation>
    </message>
    <message>
        <source>a published cold-store test; the lines are read from it</source>
        <translation>ein veröffentlichter Kühlraumversuch; die Linien sind daraus abgelesen</translation>
    </message>
    <message>
        <source>a figure or a list published for its group or genus, not for the plant itself</source>
        <translation>ein Wert oder eine Liste für ihre Gruppe oder Gattung, nicht für die Pflanze selbst</translation>
    </message>
    <message>
        <source>a published hardiness class or growth floor; damage and lethal line are common practice</source>
        <translation>eine veröffentlichte Winterhärteklasse oder Wachstumsgrenze; Schadens- und tödliche Linie sind übliche Praxis</translation>
    </message>
    <message>
        <source>its sources or common practice; not recorded which</source>
        <translation>ihre Quellen oder übliche Praxis; welche, ist nicht festgehalten</translation>
    </message>
    <message>
        <source>a list of plants among its sources, and common practice</source>
        <translation>eine Liste von Pflanzen unter ihren Quellen, und übliche Praxis</translation>
    </message>
    <message>
        <source>dim</source>
        <translation>schattig</translation>
    </message>
    <message>
        <source>medium</source>
        <translation>mittel</translation>
    </message>
    <message>
        <source>bright, without direct sun</source>
        <translation>hell, ohne direkte Sonne</translation>
    </message>
    <message>
        <source>four hours of direct sun or more</source>
        <translation>vier Stunden direkte Sonne oder mehr</translation>
    </message>
    <message>
        <source>keep moist</source>
        <translation>feucht halten</translation>
    </message>
    <message>
        <source>let the top 2 to 3 cm, about an inch, dry</source>
        <translation>die oberen 2 bis 3 cm trocknen lassen</translation>
    </message>
    <message>
        <source>let it dry right out</source>
        <translation>ganz austrocknen lassen</translation>
    </message>
    <message>
        <source>out for 1 hour</source>
        <translation>für 1 Stunde hinaus</translation>
    </message>
    <message>
        <source>out for %1 hours</source>
        <translation>für %1 Stunden hinaus</translation>
    </message>
    <message>
        <source>%1 in full shade, in for the night</source>
        <translation>%1 in vollen Schatten, zur Nacht herein</translation>
    </message>
    <message>
        <source>%1 with morning sun only, in for the night</source>
        <translation>%1 nur mit Morgensonne, zur Nacht herein</translation>
    </message>
    <message>
        <source>%1 where it shall stand, in for the night</source>
        <translation>%1 dorthin, wo sie stehen soll, zur Nacht herein</translation>
    </message>
    <message>
        <source>first night out</source>
        <translation>erste Nacht draußen</translation>
    </message>
    <message>
        <source>into deeper shade outdoors</source>
        <translation>draußen in tieferen Schatten</translation>
    </message>
    <message>
        <source>look under every leaf, in the axils and at the pot&apos;s rim and holes</source>
        <translation>unter jedes Blatt sehen, in die Achseln, an Topfrand und Löcher</translation>
    </message>
    <message>
        <source>stand the pot in lukewarm water for 15 minutes and let it drain</source>
        <translation>den Topf 15 Minuten in lauwarmes Wasser stellen und abtropfen lassen</translation>
    </message>
    <message>
        <source>carry it in</source>
        <translation>hereintragen</translation>
    </message>
    <message>
        <source>keep it apart from the others, visit it last</source>
        <translation>von den anderen abgesondert halten, zuletzt versorgen</translation>
    </message>
    <message>
        <source>from the brightest window step by step to its place; less water, no feed</source>
        <translation>vom hellsten Fenster Schritt für Schritt an ihren Platz; weniger Wasser, kein Dünger</translation>
    </message>
    <message>
        <source>1 hour</source>
        <translation>1 Stunde</translation>
    </message>
    <message>
        <source>%1 hours</source>
        <translation>%1 Stunden</translation>
    </message>
    <message>
        <source>%1, full shade</source>
        <translation>%1, Vollschatten</translation>
    </message>
    <message>
        <source>%1, morning sun</source>
        <translation>%1, Morgensonne</translation>
    </message>
    <message>
        <source>%1, where it shall stand</source>
        <translation>%1, wo sie stehen soll</translation>
    </message>
    <message>
        <source>A plant</source>
        <translation>Eine Pflanze</translation>
    </message>
    <message>
        <source>a spot</source>
        <translation>ein Platz</translation>
    </message>
    <message>
        <source>%1 goes out to %2 on %3</source>
        <translation>%1 kommt am %3 hinaus, Platz: %2</translation>
    </message>
    <message>
        <source>%1 comes in to %2 on %3</source>
        <translation>%1 kommt am %3 herein, Platz: %2</translation>
    </message>
    <message>
        <source>%1, %2 times as light</source>
        <translation>%1; dort ist es %2-mal so hell</translation>
    </message>
    <message>
        <source>%1, %2 times darker</source>
        <translation>%1; dort ist es %2-mal dunkler</translation>
    </message>
    <message>
        <source>%1, nights %2 colder</source>
        <translation>%1, Nächte %2 kälter</translation>
    </message>
    <message>
        <source>%1, nights %2 warmer</source>
        <translation>%1, Nächte %2 wärmer</translation>
    </message>
    <message>
        <source>Hang lamps so that water and wet hands stay away from them and from the plug, off damp floors and on a socket with a residual current device; a lamp that gets hot keeps its distance from leaves and curtains.</source>
        <translation>Lampen so aufhängen, dass Wasser und nasse Hände von ihnen und vom Stecker fern bleiben, nicht auf feuchtem Boden und an einer Steckdose mit FI-Schutzschalter; eine Lampe, die heiß wird, hält Abstand von Blättern und Vorhängen.</translation>
    </message>
    <message>
        <source>Beyond %1 h a day most plants lack their dark hours: hang the lamp nearer or take a stronger one.</source>
        <translation>Über %1 h am Tag fehlen den meisten Pflanzen ihre dunklen Stunden: die Lampe näher hängen oder eine stärkere nehmen.</translation>
    </message>
    <message>
        <source>%1 (%2 readings, ± %3)</source>
        <translation>%1 (%2 Messungen, ± %3)</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1 drops</source>
        <translation>%1 Tropfen</translation>
    </message>
    <message>
        <source>%1 ppm is too strong for a light feeder, which gets %2 to %3 ppm.</source>
        <translation>%1 ppm ist zu stark für einen Schwachzehrer, der %2 bis %3 ppm bekommt.</translation>
    </message>
    <message>
        <source>%1 ppm is too strong for a medium feeder, which gets %2 to %3 ppm.</source>
        <translation>%1 ppm ist zu stark für einen Mittelzehrer, der %2 bis %3 ppm bekommt.</translation>
    </message>
    <message>
        <source>%1 ppm is too strong for a heavy feeder, which gets %2 to %3 ppm.</source>
        <translation>%1 ppm ist zu stark für einen Starkzehrer, der %2 bis %3 ppm bekommt.</translation>
    </message>
    <message>
        <source>%1 ppm is weak for a light feeder, which gets %2 to %3 ppm; in a dim room half of that is right.</source>
        <translation>%1 ppm ist schwach für einen Schwachzehrer, der %2 bis %3 ppm bekommt; in einem dunklen Zimmer ist die Hälfte davon richtig.</translation>
    </message>
    <message>
        <source>%1 ppm is weak for a medium feeder, which gets %2 to %3 ppm; in a dim room half of that is right.</source>
        <translation>%1 ppm ist schwach für einen Mittelzehrer, der %2 bis %3 ppm bekommt; in einem dunklen Zimmer ist die Hälfte davon richtig.</translation>
    </message>
    <message>
        <source>%1 ppm is weak for a heavy feeder, which gets %2 to %3 ppm; in a dim room half of that is right.</source>
        <translation>%1 ppm ist schwach für einen Starkzehrer, der %2 bis %3 ppm bekommt; in einem dunklen Zimmer ist die Hälfte davon richtig.</translation>
    </message>
    <message>
        <source>less than ⅛</source>
        <translation>weniger als ⅛</translation>
    </message>
    <message>
        <source>%1 tablespoon</source>
        <translation>%1 Esslöffel</translation>
    </message>
    <message>
        <source>%1 tablespoons</source>
        <translation>%1 Esslöffel</translation>
    </message>
    <message>
        <source>%1 teaspoon</source>
        <translation>%1 Teelöffel</translation>
    </message>
    <message>
        <source>%1 teaspoons</source>
        <translation>%1 Teelöffel</translation>
    </message>
    <message>
        <source>%1 g of %2 into %3 of water</source>
        <translation>%1 g %2 auf %3 Wasser</translation>
    </message>
    <message>
        <source>about %1 (%2 g) of %3 into %4 of water</source>
        <translation>etwa %1 (%2 g) %3 auf %4 Wasser</translation>
    </message>
    <message>
        <source>%1 ml of %2, about %3, into %4 of water</source>
        <translation>%1 ml %2, etwa %3, auf %4 Wasser</translation>
    </message>
    <message>
        <source>%1 g of %2, about %3, into %4 of water</source>
        <translation>%1 g %2, etwa %3, auf %4 Wasser</translation>
    </message>
    <message>
        <source>about %1 (%2 ml) into %3 of water</source>
        <translation>etwa %1 (%2 ml) auf %3 Wasser</translation>
    </message>
    <message>
        <source>%1 ml, about %2, into %3 of water</source>
        <translation>%1 ml, etwa %2, auf %3 Wasser</translation>
    </message>
    <message>
        <source>Makes %1 ppm nitrogen, %2 ppm phosphorus, %3 ppm potassium.</source>
        <translation>Ergibt %1 ppm Stickstoff, %2 ppm Phosphor, %3 ppm Kalium.</translation>
    </message>
    <message>
        <source>A conductivity meter shows about %1 mS/cm more than the water alone (%2 where the nitrogen is urea, %3 where it is calcium nitrate); the label&apos;s figure goes before it.</source>
        <translation>Ein Leitwertmesser zeigt etwa %1 mS/cm mehr als das Wasser allein (%2, wo der Stickstoff Harnstoff ist, %3, wo er Kalksalpeter ist); die Angabe des Etiketts geht vor.</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
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
        <translation>O</translation>
    </message>
    <message>
        <source>W</source>
        <translation>W</translation>
    </message>
    <message>
        <source>stays apart until %1 at least: it is watched for pests</source>
        <translation>bleibt mindestens bis %1 abseits: sie wird auf Schädlinge beobachtet</translation>
    </message>
    <message>
        <source>stays apart until no pest is found any more: it is watched for pests</source>
        <translation>bleibt abseits, bis kein Schädling mehr gefunden wird: sie wird beobachtet</translation>
    </message>
    <message>
        <source>stays apart until no pest is found any more: %1 found</source>
        <translation>bleibt abseits, bis kein Schädling mehr gefunden wird: %1 gefunden</translation>
    </message>
    <message>
        <source>stays apart until no pest is found any more: it may have %1</source>
        <translation>bleibt abseits, bis kein Schädling mehr gefunden wird: %1 möglich</translation>
    </message>
    <message>
        <source>stays apart until %1 at least: %2 found</source>
        <translation>bleibt mindestens bis %1 abseits: %2 gefunden</translation>
    </message>
    <message>
        <source>stays apart until %1 at least: it may have %2</source>
        <translation>bleibt mindestens bis %1 abseits: %2 möglich</translation>
    </message>
    <message>
        <source>kept there by hand</source>
        <translation>von Hand dort festgehalten</translation>
    </message>
    <message>
        <source>from here on at most %1 for a night at or below %2</source>
        <translation>von hier an höchstens %1 für eine Nacht bei oder unter %2</translation>
    </message>
    <message>
        <source>better off outside from now on</source>
        <translation>von jetzt an draußen besser dran</translation>
    </message>
    <message>
        <source>in before the chance of a night at or below %1 passes %2</source>
        <translation>herein, bevor die Wahrscheinlichkeit einer Nacht bei oder unter %1 über %2 steigt</translation>
    </message>
    <message>
        <source>nights below %1 would hold it back</source>
        <translation>Nächte unter %1 würden sie bremsen</translation>
    </message>
    <message>
        <source>suits it better there now</source>
        <translation>steht jetzt dort besser</translation>
    </message>
    <message>
        <source>the better spots are full</source>
        <translation>die besseren Plätze sind voll</translation>
    </message>
    <message>
        <source>stays in and is not hardened before %1: hit by a spray on %2</source>
        <translation>bleibt drinnen und wird nicht vor dem %1 abgehärtet: am %2 von Spritzmittel getroffen</translation>
    </message>
    <message>
        <source>stays in and is not hardened before %1: harmed by the cold night of %2</source>
        <translation>bleibt drinnen und wird nicht vor dem %1 abgehärtet: geschädigt in der kalten Nacht vom %2</translation>
    </message>
    <message>
        <source>%1; it is carried to no clean plants</source>
        <translation>%1; zu sauberen Pflanzen wird sie nicht gestellt</translation>
    </message>
    <message>
        <source>%1; no spot apart takes it, so keep it away from the others there</source>
        <translation>%1; kein Platz abseits nimmt sie auf, dort also von den anderen fernhalten</translation>
    </message>
    <message>
        <source>leaves the spot apart to plants with pests or under watch</source>
        <translation>überlässt den Platz abseits Pflanzen mit Schädlingen oder unter Beobachtung</translation>
    </message>
    <message>
        <source>out of reach of children and animals there</source>
        <translation>dort außer Reichweite von Kindern und Tieren</translation>
    </message>
    <message>
        <source>where it would do better, pests were found or may be</source>
        <translation>wo sie besser stünde, wurden Schädlinge gefunden oder sind möglich</translation>
    </message>
    <message>
        <source>stays in all year: kept there by hand</source>
        <translation>bleibt das ganze Jahr drinnen: von Hand dort festgehalten</translation>
    </message>
    <message>
        <source>stays in all year: every spot outdoors is within reach of a child or an animal</source>
        <translation>bleibt das ganze Jahr drinnen: jeder Platz im Freien ist in Reichweite eines Kindes oder Tieres</translation>
    </message>
    <message>
        <source>stays in all year: at no time is the chance of a night at or below %1 within %2 for three weeks</source>
        <translation>bleibt das ganze Jahr drinnen: Zu keiner Zeit liegt die Wahrscheinlichkeit einer Nacht bei oder unter %1 drei Wochen lang innerhalb %2</translation>
    </message>
    <message>
        <source>its line</source>
        <translation>ihrer Linie</translation>
    </message>
    <message>
        <source>the risk</source>
        <translation>des Risikos</translation>
    </message>
    <message>
        <source>stays in all year: pests keep it from the others, and when it is clear cannot be said yet</source>
        <translation>bleibt das ganze Jahr drinnen: Schädlinge halten sie von den anderen fern, und wann sie befallsfrei ist, lässt sich noch nicht sagen</translation>
    </message>
    <message>
        <source>stays in all year: outdoors it would be better off, and the spots are full</source>
        <translation>bleibt das ganze Jahr drinnen: Draußen wäre sie besser dran, aber die Plätze sind voll</translation>
    </message>
    <message>
        <source>stays in all year: going out would not make up for the carry</source>
        <translation>bleibt das ganze Jahr drinnen: Hinausgehen würde das Tragen nicht lohnen</translation>
    </message>
    <message>
        <source>a plant</source>
        <translation>eine Pflanze</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>am %1</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>vom %1 bis %2</translation>
    </message>
    <message>
        <source>%1: %2 instead of %3 %4</source>
        <translation>%1: %2 statt %3 %4</translation>
    </message>
    <message>
        <source>%1 (new): %2 %3</source>
        <translation>%1 (neu): %2 %3</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 stands on %2 from %3 against the accepted risk, since no indoor spot takes it; add an indoor spot or room in one</source>
        <translation>%1 steht vom %3 gegen das angenommene Risiko: %2; kein Platz drinnen nimmt sie auf; einen anlegen oder dort Raum schaffen</translation>
    </message>
    <message>
        <source>%1 can hurt a child or an animal and stands within reach on %2 from %3, since no other spot takes it; find it a place out of reach</source>
        <translation>%1 kann einem Kind oder Tier schaden und steht vom %3 in Reichweite: %2; kein anderer Platz nimmt sie auf; einen Ort außer Reichweite finden</translation>
    </message>
    <message>
        <source>%2 has one pot too many from %3 (%1); no other spot would do</source>
        <translation>%2 hat vom %3 einen Topf zu viel (%1); kein anderer Platz taugte</translation>
    </message>
    <message>
        <source>%1 ought to stand apart from other plants from %2, and no spot apart takes it; keep it as far from them as you can, visit it last and wash your hands, or name such a spot with `lathhouse add spot --apart`</source>
        <translation>%1 sollte vom %2 abseits anderer Pflanzen stehen, und kein Platz abseits nimmt sie auf; so weit weg wie möglich halten, zuletzt versorgen und Hände waschen, oder einen solchen Platz anlegen mit `lathhouse add spot --apart`</translation>
    </message>
    <message>
        <source>%1 is pinned to two places from %3; the pin entered last (%2) holds, and `lathhouse unpin` takes both back</source>
        <translation>%1 ist vom %3 an zwei Plätzen festgehalten; der zuletzt genannte (%2) gilt, und `lathhouse unpin` nimmt beide zurück</translation>
    </message>
    <message>
        <source>%1 %2; choose a folder into which a household was written as tables</source>
        <translation>%1 %2; einen Ordner wählen, in den ein Haushalt als Tabellen geschrieben wurde</translation>
    </message>
    <message>
        <source>%1 holds %2 stations; write one of them under Station, such as %3</source>
        <translation>%1 enthält %2 Stationen; eine davon unter „Station“ eintragen, etwa %3</translation>
    </message>
    <message>
        <source>%1 is in GHCN-Daily&apos;s form, which is always in degrees Celsius; choose °C and millimetres</source>
        <translation>%1 hat die Form von GHCN-Daily, die immer in Grad Celsius ist; °C und Millimeter wählen</translation>
    </message>
    <message>
        <source>%1 is there already; choose another name, or replace it</source>
        <translation>%1 ist schon da; einen anderen Namen wählen oder sie ersetzen</translation>
    </message>
    <message>
        <source>%1 is damaged and was not backed up; look through the folder to see where, and bring the last backup back</source>
        <translation>%1 ist beschädigt und wurde nicht gesichert; den Ordner durchsehen, um zu erfahren, wo, und die letzte Sicherung zurückholen</translation>
    </message>
    <message>
        <source>%1 is damaged, so no tables were written; bring the last backup back</source>
        <translation>%1 ist beschädigt, daher wurden keine Tabellen geschrieben; die letzte Sicherung zurückholen</translation>
    </message>
    <message>
        <source>%1.csv: row %2 names a row of %3.csv that is not there; mend it, or choose that such rows are left out</source>
        <translation>%1.csv: Zeile %2 nennt eine Zeile von %3.csv, die es nicht gibt; sie berichtigen, oder wählen, dass solche Zeilen ausgelassen werden</translation>
    </message>
    <message>
        <source>%1 has no column &quot;%2&quot;; it has %3; call its columns so</source>
        <translation>%1 hat keine Spalte „%2“; vorhanden: %3; die Spalten so nennen</translation>
    </message>
    <message>
        <source>%1 has no column &quot;%2&quot;; write the names of its columns, such as Day,Min,Max</source>
        <translation>%1 hat keine Spalte „%2“; die Namen ihrer Spalten angeben, etwa Day,Min,Max</translation>
    </message>
    <message>
        <source>there is no spot &quot;%1&quot; in the household; write its name as it stands there</source>
        <translation>im Haushalt gibt es keinen Platz „%1“; seinen Namen so schreiben, wie er dort steht</translation>
    </message>
    <message>
        <source>no spot is named; fill the column spot</source>
        <translation>es ist kein Platz genannt; die Spalte spot ausfüllen</translation>
    </message>
    <message>
        <source>no station lies within %1 km and %2 m of height of that place; give a place or height nearer to one</source>
        <translation>innerhalb von %1 km und %2 m Höhe liegt keine Station bei diesem Ort; einen Ort oder eine Höhe näher bei einer angeben</translation>
    </message>
    <message>
        <source>there is no household in %1</source>
        <translation>in %1 ist kein Haushalt</translation>
    </message>
    <message>
        <source>there is no folder %1; choose a household&apos;s folder</source>
        <translation>es gibt keinen Ordner %1; den Ordner eines Haushalts wählen</translation>
    </message>
    <message>
        <source>the plant is not among those that live, so it cannot be divided</source>
        <translation>die Pflanze ist nicht unter den lebenden und kann nicht geteilt werden</translation>
    </message>
    <message>
        <source>that photo is no longer there</source>
        <translation>dieses Foto ist nicht mehr da</translation>
    </message>
    <message>
        <source>that lot is no longer there</source>
        <translation>dieses Tütchen ist nicht mehr da</translation>
    </message>
    <message>
        <source>the plant is no longer there</source>
        <translation>die Pflanze ist nicht mehr da</translation>
    </message>
    <message>
        <source>that tray is no longer there</source>
        <translation>diese Schale ist nicht mehr da</translation>
    </message>
    <message>
        <source>no crop named &quot;%1&quot; in the reference of seeds; choose one of the list</source>
        <translation>in den Tabellen der Samen gibt es keine Kultur „%1“; eine aus der Liste wählen</translation>
    </message>
    <message>
        <source>the values look like degrees Fahrenheit taken for Celsius; choose °F and inches</source>
        <translation>die Werte sehen nach Grad Fahrenheit aus, die für Celsius genommen wurden; °F und Zoll wählen</translation>
    </message>
    <message>
        <source>the values look like degrees Celsius taken for Fahrenheit; choose °C and millimetres</source>
        <translation>die Werte sehen nach Grad Celsius aus, die für Fahrenheit genommen wurden; °C und Millimeter wählen</translation>
    </message>
    <message>
        <source>new leaves</source>
        <translation>neue Blätter</translation>
    </message>
    <message>
        <source>longest leaf</source>
        <translation>längstes Blatt</translation>
    </message>
    <message>
        <source>green cover</source>
        <translation>Grünanteil</translation>
    </message>
    <message>
        <source>yellow share</source>
        <translation>gelber Anteil</translation>
    </message>
    <message>
        <source>sow indoors</source>
        <translation>drinnen aussäen</translation>
    </message>
    <message>
        <source>sow outdoors</source>
        <translation>draußen aussäen</translation>
    </message>
    <message>
        <source>count the seedlings</source>
        <translation>die Sämlinge zählen</translation>
    </message>
    <message>
        <source>pot the seedlings up</source>
        <translation>die Sämlinge umtopfen</translation>
    </message>
    <message>
        <source>begin to harden the seedlings</source>
        <translation>anfangen, die Sämlinge abzuhärten</translation>
    </message>
    <message>
        <source>plant out</source>
        <translation>auspflanzen</translation>
    </message>
    <message>
        <source>wash the mix through with %1 of water</source>
        <translation>die Erde mit %1 Wasser durchspülen</translation>
    </message>
    <message>
        <source>wash the mix through with water</source>
        <translation>die Erde mit Wasser durchspülen</translation>
    </message>
    <message>
        <source>wash hands and tools before going on</source>
        <translation>vor dem Weitergehen Hände und Werkzeug waschen</translation>
    </message>
    <message>
        <source>wash hands and tools; put on an apron or a shirt for these plants alone</source>
        <translation>Hände und Werkzeug waschen; Schürze oder Hemd nur für diese Pflanzen anziehen</translation>
    </message>
    <message>
        <source>wash hands and tools and change; nothing clean is touched before that</source>
        <translation>Hände und Werkzeug waschen und umziehen; vorher nichts Sauberes anfassen</translation>
    </message>
    <message>
        <source>carry it in, to stay: %1</source>
        <translation>hereintragen, es bleibt drin: %1</translation>
    </message>
    <message>
        <source>carry it in for the night: %1</source>
        <translation>zur Nacht hereintragen: %1</translation>
    </message>
    <message>
        <source>carry it in for the night</source>
        <translation>zur Nacht hereintragen</translation>
    </message>
    <message>
        <source>carry it to %1</source>
        <translation>tragen nach: %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, until %2</source>
        <translation>%1, bis %2</translation>
    </message>
    <message>
        <source>feel whether the mix is dry, and water only if it is</source>
        <translation>fühlen, ob die Erde trocken ist, und nur dann gießen</translation>
    </message>
    <message>
        <source>feed, %1 ppm nitrogen, unless it was fed in the last %2 days</source>
        <translation>düngen, %1 ppm Stickstoff, wenn es in den letzten %2 Tagen nicht geschah</translation>
    </message>
    <message>
        <source>feed, %1 ppm nitrogen</source>
        <translation>düngen, %1 ppm Stickstoff</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>düngen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>pests travel with hands, tools and clothes</source>
        <translation>Schädlinge reisen mit Händen, Werkzeug und Kleidern</translation>
    </message>
    <message>
        <source>%1 for a low at or below %2</source>
        <translation>%1 für ein Tief bei oder unter %2</translation>
    </message>
    <message>
        <source>%1; the plan&apos;s date too</source>
        <translation>%1; auch nach dem Plan ist es so weit</translation>
    </message>
    <message>
        <source>the plan has it there from tonight on</source>
        <translation>laut Plan steht sie ab heute Nacht dort</translation>
    </message>
    <message>
        <source>it is being used to the open</source>
        <translation>sie wird abgehärtet</translation>
    </message>
    <message>
        <source>the plan&apos;s date</source>
        <translation>das Datum des Plans</translation>
    </message>
    <message>
        <source>on the way in</source>
        <translation>auf dem Weg herein</translation>
    </message>
    <message>
        <source>course against %1</source>
        <translation>Kur gegen %1</translation>
    </message>
    <message>
        <source>course against a pest</source>
        <translation>Kur gegen einen Schädling</translation>
    </message>
    <message>
        <source>salts gather in the mix</source>
        <translation>Salze sammeln sich in der Erde</translation>
    </message>
    <message>
        <source>it is young: half the strength</source>
        <translation>sie ist jung: die halbe Stärke</translation>
    </message>
    <message>
        <source>it grows, and no feed is logged: if it was fed, log that or leave this out</source>
        <translation>sie wächst, und keine Düngung ist eingetragen: Wurde sie gedüngt, das eintragen oder dies auslassen</translation>
    </message>
    <message>
        <source>it grows, and the last feed is used up</source>
        <translation>sie wächst, und der letzte Dünger ist verbraucht</translation>
    </message>
    <message>
        <source>after a cold night</source>
        <translation>nach einer kalten Nacht</translation>
    </message>
    <message>
        <source>after weed-killer or another chemical</source>
        <translation>nach Unkrautmittel oder einer anderen Chemikalie</translation>
    </message>
    <message>
        <source>today is the last day on which it is of use</source>
        <translation>heute ist der letzte Tag, an dem es noch etwas nützt</translation>
    </message>
    <message>
        <source>its time is now</source>
        <translation>jetzt ist die Zeit dafür</translation>
    </message>
    <message>
        <source>clean plants</source>
        <translation>saubere Pflanzen</translation>
    </message>
    <message>
        <source>suspect plants</source>
        <translation>verdächtige Pflanzen</translation>
    </message>
    <message>
        <source>infested plants</source>
        <translation>befallene Pflanzen</translation>
    </message>
    <message>
        <source>It is dry all year.</source>
        <translation>Es ist das ganze Jahr trocken.</translation>
    </message>
    <message>
        <source>Rain falls in every season.</source>
        <translation>Regen fällt in jeder Jahreszeit.</translation>
    </message>
    <message>
        <source>Rain falls in every month.</source>
        <translation>Regen fällt in jedem Monat.</translation>
    </message>
    <message>
        <source>The wet season is %1, the dry season %2.</source>
        <translation>Regenzeit: %1; Trockenzeit: %2.</translation>
    </message>
    <message>
        <source>Summers are dry.</source>
        <translation>Die Sommer sind trocken.</translation>
    </message>
    <message>
        <source>Winters are dry.</source>
        <translation>Die Winter sind trocken.</translation>
    </message>
    <message>
        <source>every month</source>
        <translation>jeden Monat</translation>
    </message>
    <message>
        <source>no month</source>
        <translation>keinen Monat</translation>
    </message>
    <message>
        <source>It is about as warm all year, a little cooler from %1; there is no winter.</source>
        <translation>Es ist das ganze Jahr etwa gleich warm, ein wenig kühler %1; einen Winter gibt es nicht.</translation>
    </message>
    <message>
        <source>It is about as warm all year; there is no winter.</source>
        <translation>Es ist das ganze Jahr etwa gleich warm; einen Winter gibt es nicht.</translation>
    </message>
    <message>
        <source>There is no winter; the cool season is %1, the hottest months are %2.</source>
        <translation>Einen Winter gibt es nicht; kühl ist es %1, am heißesten %2.</translation>
    </message>
    <message>
        <source>Winter is coldest from %1, summer warmest from %2.</source>
        <translation>Im Winter ist es %1 am kältesten, im Sommer %2 am wärmsten.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>No frost in any of the years.</source>
        <translation>Kein Frost in all den Jahren.</translation>
    </message>
    <message>
        <source>No frost in any of the years; the lowest night had %1, so it cannot be ruled out.</source>
        <translation>Kein Frost in all den Jahren; die kälteste Nacht hatte %1, auszuschließen ist er also nicht.</translation>
    </message>
    <message>
        <source>No frost in any of the years; the lowest night had %1.</source>
        <translation>Kein Frost in all den Jahren; die kälteste Nacht hatte %1.</translation>
    </message>
    <message>
        <source>Frost in every month, %1 nights a year.</source>
        <translation>Frost in jedem Monat, %1 Nächte im Jahr.</translation>
    </message>
    <message>
        <source>Frost is an exception, in about %1 years.</source>
        <translation>Frost ist die Ausnahme, etwa in %1 Jahren.</translation>
    </message>
    <message>
        <source>Frost in some years, %1 nights a year on average.</source>
        <translation>Frost in manchen Jahren, im Mittel %1 Nächte im Jahr.</translation>
    </message>
    <message>
        <source>Frost every year, %1 nights a year.</source>
        <translation>Frost in jedem Jahr, %1 Nächte im Jahr.</translation>
    </message>
    <message>
        <source>the season is already on</source>
        <translation>die Saison läuft schon</translation>
    </message>
    <message>
        <source>before that a night at or below %1, which damages it, is still likelier than the risk</source>
        <translation>davor eine Nacht bei oder unter %1, die ihr schadet, noch wahrscheinlicher ist als das Risiko</translation>
    </message>
    <message>
        <source>later a night at or below %1, which damages it, becomes likelier than the risk before it is ready</source>
        <translation>später eine Nacht bei oder unter %1, die ihr schadet, wahrscheinlicher wird als das Risiko, bevor sie so weit ist</translation>
    </message>
    <message>
        <source>usual nights are at or below its safe %1 until then</source>
        <translation>übliche Nächte bis dahin bei oder unter ihren sicheren %1 liegen</translation>
    </message>
    <message>
        <source>usual nights would be at or below its safe %1 before it is ready</source>
        <translation>übliche Nächte bei oder unter ihren sicheren %1 lägen, bevor sie so weit ist</translation>
    </message>
    <message>
        <source>the soil is too cold until then</source>
        <translation>der Boden bis dahin zu kalt ist</translation>
    </message>
    <message>
        <source>the soil gets too cold</source>
        <translation>der Boden zu kalt wird</translation>
    </message>
    <message>
        <source>the soil is hotter than the seed stands (%1)</source>
        <translation>der Boden heißer ist, als der Samen verträgt (%1)</translation>
    </message>
    <message>
        <source>until then it would stand in days hotter than it bears (mean %1 and more)</source>
        <translation>sie bis dahin in heißeren Tagen stünde, als sie verträgt (Mittel %1 und mehr)</translation>
    </message>
    <message>
        <source>later it would stand in days hotter than it bears (mean %1 and more)</source>
        <translation>sie später in heißeren Tagen stünde, als sie verträgt (Mittel %1 und mehr)</translation>
    </message>
    <message>
        <source>months of more than %1 of rain wash out seed beds</source>
        <translation>Monate mit mehr als %1 Regen Saatbeete ausspülen</translation>
    </message>
    <message>
        <source>in short or cool days it would hardly grow</source>
        <translation>sie in kurzen oder kühlen Tagen kaum wüchse</translation>
    </message>
    <message>
        <source>%1 to %2 in apart</source>
        <translation>%1 bis %2 Zoll Abstand</translation>
    </message>
    <message>
        <source>%1 in apart</source>
        <translation>%1 Zoll Abstand</translation>
    </message>
    <message>
        <source>%1 to %2 cm apart</source>
        <translation>%1 bis %2 cm Abstand</translation>
    </message>
    <message>
        <source>%1 cm apart</source>
        <translation>%1 cm Abstand</translation>
    </message>
    <message>
        <source>It can go on from today, since the season is on.</source>
        <translation>Es kann von heute an losgehen, denn die Saison läuft.</translation>
    </message>
    <message>
        <source>Plant out not before %1, since %2.</source>
        <translation>Auspflanzen nicht vor dem %1, weil %2.</translation>
    </message>
    <message>
        <source>Sow outdoors not before %1, since %2.</source>
        <translation>Draußen säen nicht vor dem %1, weil %2.</translation>
    </message>
    <message>
        <source>On %1 the chance of a damaging night still to come is %2, a usual night has %3, the soil %4.</source>
        <translation>Am %1 beträgt die Wahrscheinlichkeit einer noch kommenden schädlichen Nacht %2, eine übliche Nacht hat %3, der Boden %4.</translation>
    </message>
    <message>
        <source>Nothing ends the season here: any day of the year will do.</source>
        <translation>Nichts beendet hier die Saison: Jeder Tag des Jahres ist recht.</translation>
    </message>
    <message>
        <source>Sow not later than %1, since %2.</source>
        <translation>Säen nicht nach dem %1, weil %2.</translation>
    </message>
    <message>
        <source>even the coolest time of the year has days of %1 on average, and it grows badly above %2</source>
        <translation>selbst die kühlste Zeit des Jahres hat Tage von %1 im Mittel, und über %2 wächst sie schlecht</translation>
    </message>
    <message>
        <source>usual nights never stay above its safe %1 (the mildest reach %2)</source>
        <translation>übliche Nächte bleiben nie über ihren sicheren %1 (die mildesten erreichen %2)</translation>
    </message>
    <message>
        <source>the soil reaches %1 at best, and it needs %2</source>
        <translation>der Boden erreicht bestenfalls %1, nötig sind %2</translation>
    </message>
    <message>
        <source>it needs %1 of full growth outdoors, and the longest stretch that is neither too cold at the risk nor too hot for it has %2, many of them too cool or too short for full growth</source>
        <translation>sie braucht %1 vollen Wachstums draußen, und die längste Zeit, die ihr weder zu kalt beim Risiko noch zu heiß ist, hat %2, viele davon zu kühl oder zu kurz für volles Wachstum</translation>
    </message>
    <message>
        <source>No date exists here for %1 in the open: %2.</source>
        <translation>Für %1 gibt es hier im Freien kein Datum: %2.</translation>
    </message>
    <message>
        <source>a quick sort</source>
        <translation>eine schnelle Sorte</translation>
    </message>
    <message>
        <source>bigger transplants, %1 weeks longer indoors</source>
        <translation>größere Jungpflanzen, %1 Wochen länger drinnen</translation>
    </message>
    <message>
        <source>in an unheated greenhouse or frame</source>
        <translation>in einem ungeheizten Gewächshaus oder Frühbeet</translation>
    </message>
    <message>
        <source>a quick sort in an unheated greenhouse, %1 weeks longer indoors first</source>
        <translation>eine schnelle Sorte im ungeheizten Gewächshaus, vorher %1 Wochen länger drinnen</translation>
    </message>
    <message>
        <source>a quick sort in an unheated greenhouse</source>
        <translation>eine schnelle Sorte im ungeheizten Gewächshaus</translation>
    </message>
    <message>
        <source>accept a risk of %1</source>
        <translation>ein Risiko von %1 annehmen</translation>
    </message>
    <message>
        <source>keep it on a bright sill or under lamps, or choose another crop (`lathhouse sowing --calendar` names those that can be sown)</source>
        <translation>auf einer hellen Fensterbank oder unter Lampen halten, oder eine andere Kultur wählen (`lathhouse sowing --calendar` nennt die möglichen)</translation>
    </message>
    <message>
        <source>%1: sow indoors %2, plant out %3</source>
        <translation>%1: drinnen säen %2, auspflanzen %3</translation>
    </message>
    <message>
        <source>%1: sow %2</source>
        <translation>%1: säen %2</translation>
    </message>
    <message>
        <source>%1, ready from %2</source>
        <translation>%1, fertig ab %2</translation>
    </message>
    <message>
        <source>On the surface, pressed in</source>
        <translation>Auf die Oberfläche, angedrückt</translation>
    </message>
    <message>
        <source>About %1 in deep</source>
        <translation>Etwa %1 Zoll tief</translation>
    </message>
    <message>
        <source>%1 mm deep</source>
        <translation>%1 mm tief</translation>
    </message>
    <message>
        <source>%1, uncovered: it needs light to germinate</source>
        <translation>%1, unbedeckt: braucht Licht zum Keimen</translation>
    </message>
    <message>
        <source>%1, barely covered: light helps</source>
        <translation>%1, kaum bedeckt: Licht hilft</translation>
    </message>
    <message>
        <source>%1, dark until it is up</source>
        <translation>%1, dunkel, bis sie aufgegangen ist</translation>
    </message>
    <message>
        <source>%1, covered</source>
        <translation>%1, bedeckt</translation>
    </message>
    <message>
        <source>%1, covered thinly</source>
        <translation>%1, dünn bedeckt</translation>
    </message>
    <message>
        <source>mix at %1 to %2</source>
        <translation>Erde bei %1 bis %2</translation>
    </message>
    <message>
        <source>%1 % (least that may be sold unmarked, 7 CFR 201.31)</source>
        <translation>%1 % (das Mindeste, was ohne Kennzeichnung verkauft werden darf, 7 CFR 201.31)</translation>
    </message>
    <message>
        <source>%1 % (least by New Hampshire law)</source>
        <translation>%1 % (das Mindeste nach dem Recht von New Hampshire)</translation>
    </message>
    <message>
        <source>%1 % (least by state flower seed law)</source>
        <translation>%1 % (das Mindeste nach einzelstaatlichem Blumensaatrecht)</translation>
    </message>
    <message>
        <source>%1 % (common practice, no source)</source>
        <translation>%1 % (übliche Praxis, ohne Quelle)</translation>
    </message>
    <message>
        <source>Wait for other weather: %1 is above %2.</source>
        <translation>Auf anderes Wetter warten: %1 liegt über %2.</translation>
    </message>
    <message>
        <source>Wait for other weather: %1 is below %2.</source>
        <translation>Auf anderes Wetter warten: %1 liegt unter %2.</translation>
    </message>
    <message>
        <source>Read the label first: it stands above everything here.</source>
        <translation>Zuerst das Etikett lesen: Es steht über allem hier.</translation>
    </message>
    <message>
        <source>The label forbids this plant, pest or place, so it is not to be used here.</source>
        <translation>Das Etikett verbietet diese Pflanze, diesen Schädling oder diesen Ort; hier ist es nicht zu verwenden.</translation>
    </message>
    <message>
        <source>Try one leaf and wait 24 to 48 hours before the rest.</source>
        <translation>Ein Blatt probieren und 24 bis 48 Stunden warten, bevor der Rest drankommt.</translation>
    </message>
    <message>
        <source>The tried leaf was hurt: take another way for this plant.</source>
        <translation>Das probierte Blatt nahm Schaden: für diese Pflanze einen anderen Weg nehmen.</translation>
    </message>
    <message>
        <source>Out of the sun first, and keep it there until it is dry.</source>
        <translation>Zuerst aus der Sonne, und dort lassen, bis es trocken ist.</translation>
    </message>
    <message>
        <source>Water first and spray when the leaves stand again.</source>
        <translation>Zuerst gießen und erst spritzen, wenn die Blätter wieder stehen.</translation>
    </message>
    <message>
        <source>It was repotted less than two weeks ago: let the roots take hold first.</source>
        <translation>Sie wurde vor weniger als zwei Wochen umgetopft: zuerst die Wurzeln fassen lassen.</translation>
    </message>
    <message>
        <source>Seedlings burn easily: wash or pick the pests off.</source>
        <translation>Sämlinge verbrennen leicht: die Schädlinge abwaschen oder absammeln.</translation>
    </message>
    <message>
        <source>Wait for still air; wind carries it to people, ponds and other plants.</source>
        <translation>Auf Windstille warten; Wind trägt es zu Menschen, Teichen und anderen Pflanzen.</translation>
    </message>
    <message>
        <source>Rain would wash it off: wait for a dry day.</source>
        <translation>Regen würde es abwaschen: auf einen trockenen Tag warten.</translation>
    </message>
    <message>
        <source>Open flowers outdoors: not while bees can reach them; wait until the flowers are over.</source>
        <translation>Offene Blüten im Freien: nicht, solange Bienen sie erreichen; warten, bis sie verblüht sind.</translation>
    </message>
    <message>
        <source>Not on a plant in flower: what roots take up stays in nectar and pollen.</source>
        <translation>Nicht an einer blühenden Pflanze: Was Wurzeln aufnehmen, bleibt in Nektar und Pollen.</translation>
    </message>
    <message>
        <source>Keep children away until it is dry and aired.</source>
        <translation>Kinder fernhalten, bis es trocken und gelüftet ist.</translation>
    </message>
    <message>
        <source>Keep animals away until it is dry and aired; cover fish tanks and stop their pumps.</source>
        <translation>Tiere fernhalten, bis es trocken und gelüftet ist; Aquarien abdecken und ihre Pumpen abstellen.</translation>
    </message>
    <message>
        <source>Let somebody else do it, and stay out until it is aired; ask the doctor where in doubt.</source>
        <translation>Jemand anderen machen lassen und draußen bleiben, bis gelüftet ist; im Zweifel ärztlich fragen.</translation>
    </message>
    <message>
        <source>Not without fresh air: open a window or carry it out.</source>
        <translation>Nicht ohne frische Luft: ein Fenster öffnen oder hinaustragen.</translation>
    </message>
    <message>
        <source>Never near a flame, a stove or a spark: alcohol burns.</source>
        <translation>Nie bei Flamme, Ofen oder Funken: Alkohol brennt.</translation>
    </message>
    <message>
        <source>For eating: keep the waiting time of the label, and wash the harvest.</source>
        <translation>Zum Essen: die Wartezeit des Etiketts einhalten und die Ernte waschen.</translation>
    </message>
    <message>
        <source>The crop does not stand on the label: never on what is eaten.</source>
        <translation>Die Kultur steht nicht auf dem Etikett: nie auf das, was gegessen wird.</translation>
    </message>
    <message>
        <source>Household detergents burn more often than plant soaps, and in some places they may not be used.</source>
        <translation>Haushaltsreiniger verbrennen öfter als Pflanzenseifen und sind mancherorts verboten.</translation>
    </message>
    <message>
        <source>It was mixed too long ago: mix afresh.</source>
        <translation>Es wurde vor zu langer Zeit angerührt: frisch anrühren.</translation>
    </message>
    <message>
        <source>This kind is known to be hurt by it (%1): take another way.</source>
        <translation>Von dieser Art ist Schaden dadurch bekannt (%1): einen anderen Weg nehmen.</translation>
    </message>
    <message>
        <source>This kind may be hurt by it (%1): only after a leaf that stood 48 hours.</source>
        <translation>Dieser Art kann es schaden (%1): nur wenn ein Probeblatt 48 Stunden ohne Schaden blieb.</translation>
    </message>
    <message>
        <source>This kind may be hurt by it (%1); the tried leaf stood.</source>
        <translation>Dieser Art kann es schaden (%1); das probierte Blatt hielt.</translation>
    </message>
    <message>
        <source>Was the label read?</source>
        <translation>Wurde das Etikett gelesen?</translation>
    </message>
    <message>
        <source>Does the label forbid this plant, pest or place?</source>
        <translation>Verbietet das Etikett diese Pflanze, diesen Schädling oder diesen Ort?</translation>
    </message>
    <message>
        <source>How many hours ago was one leaf tried?</source>
        <translation>Vor wie vielen Stunden wurde ein Blatt probiert?</translation>
    </message>
    <message>
        <source>Was the tried leaf hurt?</source>
        <translation>Nahm das probierte Blatt Schaden?</translation>
    </message>
    <message>
        <source>How warm does it get until it is dry?</source>
        <translation>Wie warm wird es, bis es trocken ist?</translation>
    </message>
    <message>
        <source>Is it in direct sun?</source>
        <translation>Steht sie in direkter Sonne?</translation>
    </message>
    <message>
        <source>Is it dry or wilted?</source>
        <translation>Ist sie trocken oder welk?</translation>
    </message>
    <message>
        <source>How many days since it was repotted?</source>
        <translation>Vor wie vielen Tagen wurde sie umgetopft?</translation>
    </message>
    <message>
        <source>Is it a seedling?</source>
        <translation>Ist sie ein Sämling?</translation>
    </message>
    <message>
        <source>Is it windy?</source>
        <translation>Ist es windig?</translation>
    </message>
    <message>
        <source>Is rain near?</source>
        <translation>Kommt bald Regen?</translation>
    </message>
    <message>
        <source>Are flowers open?</source>
        <translation>Sind Blüten offen?</translation>
    </message>
    <message>
        <source>Are children near?</source>
        <translation>Sind Kinder in der Nähe?</translation>
    </message>
    <message>
        <source>Are animals near, fish too?</source>
        <translation>Sind Tiere in der Nähe, auch Fische?</translation>
    </message>
    <message>
        <source>Has anyone near asthma, or is anyone pregnant?</source>
        <translation>Hat jemand in der Nähe Asthma oder ist schwanger?</translation>
    </message>
    <message>
        <source>Is there fresh air?</source>
        <translation>Gibt es frische Luft?</translation>
    </message>
    <message>
        <source>Is a flame, stove or spark near?</source>
        <translation>Ist eine Flamme, ein Ofen oder ein Funke in der Nähe?</translation>
    </message>
    <message>
        <source>Is any of it eaten?</source>
        <translation>Wird etwas davon gegessen?</translation>
    </message>
    <message>
        <source>Does the crop stand on the label?</source>
        <translation>Steht die Kultur auf dem Etikett?</translation>
    </message>
    <message>
        <source>Is it homemade?</source>
        <translation>Ist es selbst gemischt?</translation>
    </message>
    <message>
        <source>How many hours ago was it mixed?</source>
        <translation>Vor wie vielen Stunden wurde es angerührt?</translation>
    </message>
    <message>
        <source>Is it sprayed outdoors?</source>
        <translation>Wird im Freien gespritzt?</translation>
    </message>
    <message>
        <source>Sources disagree on the heat limit: %1 and %2; the lower one decides here.</source>
        <translation>Quellen sind über die Hitzegrenze uneins: %1 und %2; hier entscheidet die niedrigere.</translation>
    </message>
    <message>
        <source>Go: nothing speaks against it.</source>
        <translation>Ja: Es spricht nichts dagegen.</translation>
    </message>
    <message>
        <source>Never: not like this.</source>
        <translation>Nein: so nicht.</translation>
    </message>
    <message>
        <source>Wait: questions are open.</source>
        <translation>Warten: Fragen sind offen.</translation>
    </message>
    <message>
        <source>Wait.</source>
        <translation>Warten.</translation>
    </message>
    <message>
        <source>Gloves on; wet both sides of the leaves; keep it out of sun until it is dry; look again after a day. The label and local rules come first.</source>
        <translation>Handschuhe an; beide Seiten der Blätter benetzen; aus der Sonne halten, bis es trocken ist; nach einem Tag wieder nachsehen. Etikett und örtliche Regeln gehen vor.</translation>
    </message>
    <message>
        <source>clear and calm, so leaves get colder than the air: cover it or bring it under a roof</source>
        <translation>klar und windstill, also werden Blätter kälter als die Luft: abdecken oder unter ein Dach bringen</translation>
    </message>
    <message>
        <source>if it turns clear and calm, leaves get colder than the air: cover it or bring it under a roof</source>
        <translation>wird es klar und windstill, werden Blätter kälter als die Luft: abdecken oder unter ein Dach bringen</translation>
    </message>
    <message>
        <source>if it turns clear and calm, leaves may freeze, without white frost in such dry air: cover it or bring it under a roof</source>
        <translation>wird es klar und windstill, können Blätter gefrieren, ohne Reif in so trockener Luft: abdecken oder unter ein Dach stellen</translation>
    </message>
    <message>
        <source>if it turns clear and calm, frost on leaves though the air stays above freezing: cover it or bring it under a roof</source>
        <translation>wird es klar und windstill, Frost an den Blättern, obwohl die Luft über dem Gefrierpunkt bleibt: abdecken oder unter ein Dach stellen</translation>
    </message>
    <message>
        <source>clear and calm, so leaves may freeze, without white frost in such dry air: cover it or bring it under a roof</source>
        <translation>klar und windstill, daher können Blätter gefrieren, ohne Reif in so trockener Luft: abdecken oder unter ein Dach stellen</translation>
    </message>
    <message>
        <source>clear and calm, so frost on leaves though the air stays above freezing: cover it or bring it under a roof</source>
        <translation>klar und windstill, daher Frost an den Blättern, obwohl die Luft über dem Gefrierpunkt bleibt: abdecken oder unter ein Dach stellen</translation>
    </message>
    <message>
        <source>%1 for a night at or below %2, where damage begins: within the risk</source>
        <translation>%1 für eine Nacht bei oder unter %2, wo der Schaden beginnt: innerhalb des Risikos</translation>
    </message>
    <message>
        <source>%1 for a night at or below %2, where damage begins</source>
        <translation>%1 für eine Nacht bei oder unter %2, wo der Schaden beginnt</translation>
    </message>
    <message>
        <source>%1 for a night at or below %2, which can kill it</source>
        <translation>%1 für eine Nacht bei oder unter %2, die sie töten kann</translation>
    </message>
    <message>
        <source>indoors; by the room&apos;s logged lows %1 for a night at or below %2</source>
        <translation>drinnen; nach den eingetragenen Tiefs des Raums %1 für eine Nacht bei oder unter %2</translation>
    </message>
    <message>
        <source>indoors, and by the room&apos;s logged lows %1 for a night at or below %2, where damage begins: find it a warmer room</source>
        <translation>drinnen, und nach den eingetragenen Tiefs des Raums %1 für eine Nacht bei oder unter %2, wo der Schaden beginnt: einen wärmeren Raum suchen</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>%1 colder than the open air</source>
        <translation>%1 kälter als im Freien</translation>
    </message>
    <message>
        <source>%1 milder than the open air</source>
        <translation>%1 milder als im Freien</translation>
    </message>
    <message>
        <source>Jan</source>
        <translation>Jan.</translation>
    </message>
    <message>
        <source>Feb</source>
        <translation>Feb.</translation>
    </message>
    <message>
        <source>Mar</source>
        <translation>März</translation>
    </message>
    <message>
        <source>Apr</source>
        <translation>Apr.</translation>
    </message>
    <message>
        <source>Jun</source>
        <translation>Juni</translation>
    </message>
    <message>
        <source>Jul</source>
        <translation>Juli</translation>
    </message>
    <message>
        <source>Aug</source>
        <translation>Aug.</translation>
    </message>
    <message>
        <source>Sep</source>
        <translation>Sept.</translation>
    </message>
    <message>
        <source>Oct</source>
        <translation>Okt.</translation>
    </message>
    <message>
        <source>Nov</source>
        <translation>Nov.</translation>
    </message>
    <message>
        <source>Dec</source>
        <translation>Dez.</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>So.</translation>
    </message>
    <message>
        <source>Mon</source>
        <translation>Mo.</translation>
    </message>
    <message>
        <source>Tue</source>
        <translation>Di.</translation>
    </message>
    <message>
        <source>Wed</source>
        <translation>Mi.</translation>
    </message>
    <message>
        <source>Thu</source>
        <translation>Do.</translation>
    </message>
    <message>
        <source>Fri</source>
        <translation>Fr.</translation>
    </message>
    <message>
        <source>Sat</source>
        <translation>Sa.</translation>
    </message>
    <message>
        <source>almost sure</source>
        <translation>fast sicher</translation>
    </message>
    <message>
        <source>%1 in 10</source>
        <translation>%1 von 10</translation>
    </message>
    <message>
        <source>under 1 in 1000</source>
        <translation>unter 1 von 1000</translation>
    </message>
    <message>
        <source>1 in %1</source>
        <translation>1 von %1</translation>
    </message>
    <message>
        <source>miles</source>
        <translation>Meilen</translation>
    </message>
    <message>
        <source>%1 %2 %3</source>
        <translation>%1 %2 %3</translation>
    </message>
    <message>
        <source>keep out of reach of children and animals</source>
        <translation>von Kindern und Tieren fernhalten</translation>
    </message>
    <message>
        <source>deadly to people and animals if eaten</source>
        <translation>tödlich für Menschen und Tiere, wenn gegessen</translation>
    </message>
    <message>
        <source>deadly to people if eaten</source>
        <translation>tödlich für Menschen, wenn gegessen</translation>
    </message>
    <message>
        <source>deadly to animals if eaten</source>
        <translation>tödlich für Tiere, wenn gegessen</translation>
    </message>
    <message>
        <source>kept at %1 always</source>
        <translation>immer festgehalten: %1</translation>
    </message>
    <message>
        <source>kept at %1 %2</source>
        <translation>festgehalten: %1 %2</translation>
    </message>
    <message>
        <source>%1, at %2 %3</source>
        <translation>%1, dann: %2 %3</translation>
    </message>
    <message>
        <source>first flower</source>
        <translation>erste Blüte</translation>
    </message>
    <message>
        <source>full leaf</source>
        <translation>volles Laub</translation>
    </message>
    <message>
        <source>first ripe</source>
        <translation>erste Reife</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot name a jug; take 1 to 40 characters without digits, the first a letter, such as &quot;blue can&quot;</source>
        <translation>„%1“ kann kein Name einer Kanne sein; 1 bis 40 Zeichen ohne Ziffern wählen, das erste ein Buchstabe, etwa „blaue Kanne“</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a backslash in its path</source>
        <translation>„%1“ hat einen umgekehrten Schrägstrich im Pfad</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a path from the root of a disk</source>
        <translation>„%1“ hat einen Pfad von der Wurzel eines Datenträgers an</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has an empty part, &quot;.&quot; or &quot;..&quot; in its path</source>
        <translation>„%1“ hat einen leeren Teil, „.“ oder „..“ im Pfad</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has over %2 bytes</source>
        <translation>„%1“ hat über %2 Bytes</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is a link or another special file</source>
        <translation>„%1“ ist eine Verknüpfung oder eine andere besondere Datei</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is encrypted or packed in a way that is not read here</source>
        <translation>„%1“ ist verschlüsselt oder auf eine Weise gepackt, die hier nicht gelesen wird</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no amount of water; write a number and a measure, such as 2 L, 500 ml, cup, cup-metric, tbsp, tsp, floz-us, pint-us, pint-imp, quart-us, gal-us or gal-imp%2</source>
        <translation>„%1“ ist keine Wassermenge; eine Zahl und ein Maß angeben, etwa 2 L, 500 ml, cup, cup-metric, tbsp, tsp, floz-us, pint-us, pint-imp, quart-us, gal-us oder gal-imp%2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no column that is read here; there are %2</source>
        <translation>„%1“ ist keine Spalte, die hier gelesen wird; es gibt %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no date; write it as 2027-05-09</source>
        <translation>„%1“ ist kein Datum; in der Form 2027-05-09 angeben</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no day of the year; write it as 07-31</source>
        <translation>„%1“ ist kein Tag des Jahres; in der Form 07-31 angeben</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no day; write it as 1991-01-31</source>
        <translation>„%1“ ist kein Tag; in der Form 1991-01-31 angeben</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no day; write it as 19910131</source>
        <translation>„%1“ ist kein Tag; in der Form 19910131 angeben</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no feed; write the three numbers of its label, such as 20-10-20</source>
        <translation>„%1“ ist kein Dünger; die drei Zahlen seines Etiketts angeben, etwa 20-10-20</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no number (%2)</source>
        <translation>„%1“ ist keine Zahl (%2)</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no number (column %2)</source>
        <translation>„%1“ ist keine Zahl (Spalte %2)</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no possible value; leave the cell empty for a gap</source>
        <translation>„%1“ ist kein möglicher Wert; für eine Lücke die Zelle leer lassen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no station, year, month and element</source>
        <translation>„%1“ ist nicht Station, Jahr, Monat und Größe</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no time; write it as 2027-05-09T14:30:00</source>
        <translation>„%1“ ist keine Zeit; in der Form 2027-05-09T14:30:00 angeben</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no value</source>
        <translation>„%1“ ist kein Wert</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no value in tenths</source>
        <translation>„%1“ ist kein Wert in Zehnteln</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no whole number (column %2)</source>
        <translation>„%1“ ist keine ganze Zahl (Spalte %2)</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is there twice, or as a file and a folder</source>
        <translation>„%1“ gibt es zweimal, oder als Datei und als Ordner</translation>
    </message>
    <message>
        <source>&quot;%1&quot; names no column; write our name, &apos;=&apos; and the name in the file, such as low_c=Tmin</source>
        <translation>„%1“ nennt keine Spalte; unseren Namen, „=“ und den Namen in der Datei schreiben, etwa low_c=Tmin</translation>
    </message>
    <message>
        <source>&quot;%1&quot; on day %2 belongs to a day that the month does not have</source>
        <translation>„%1“ am Tag %2 gehört zu einem Tag, den der Monat nicht hat</translation>
    </message>
    <message>
        <source>&quot;%1&quot; on day %2 is no number</source>
        <translation>„%1“ am Tag %2 ist keine Zahl</translation>
    </message>
    <message>
        <source>&quot;%1&quot; on day %2 is no possible value</source>
        <translation>„%1“ am Tag %2 ist kein möglicher Wert</translation>
    </message>
    <message>
        <source>%1 %2; nothing was unpacked</source>
        <translation>%1 %2; nichts wurde ausgepackt</translation>
    </message>
    <message>
        <source>%1 already holds a household; choose a new or an empty folder</source>
        <translation>%1 enthält schon einen Haushalt; einen neuen oder leeren Ordner wählen</translation>
    </message>
    <message>
        <source>%1 cannot be made (%2)</source>
        <translation>%1 lässt sich nicht anlegen (%2)</translation>
    </message>
    <message>
        <source>%1 cannot be made (%2); choose another place</source>
        <translation>%1 lässt sich nicht anlegen (%2); eine andere Stelle wählen</translation>
    </message>
    <message>
        <source>%1 cannot be made; choose a folder where you may write</source>
        <translation>%1 lässt sich nicht anlegen; einen Ordner wählen, in den geschrieben werden darf</translation>
    </message>
    <message>
        <source>%1 cannot be read (%2); check its rights</source>
        <translation>%1 lässt sich nicht lesen (%2); die Rechte prüfen</translation>
    </message>
    <message>
        <source>%1 cannot be read to its end; the disk may be failing</source>
        <translation>%1 lässt sich nicht bis zum Ende lesen; vielleicht versagt der Datenträger</translation>
    </message>
    <message>
        <source>%1 cannot be read; check its rights</source>
        <translation>%1 lässt sich nicht lesen; die Rechte prüfen</translation>
    </message>
    <message>
        <source>%1 cannot be read; you need the right to read it</source>
        <translation>%1 lässt sich nicht lesen; es fehlt das Recht dazu</translation>
    </message>
    <message>
        <source>%1 cannot be written (%2); choose a folder where you may write</source>
        <translation>%1 lässt sich nicht schreiben (%2); einen Ordner wählen, in den geschrieben werden darf</translation>
    </message>
    <message>
        <source>%1 cannot be written (%2); make room or choose a folder where you may write, and start again</source>
        <translation>%1 lässt sich nicht schreiben (%2); Platz schaffen oder einen Ordner wählen, in den geschrieben werden darf, und noch einmal beginnen</translation>
    </message>
    <message>
        <source>%1 cannot be written (it is there and is no file); choose another name</source>
        <translation>%1 lässt sich nicht schreiben (das gibt es und ist keine Datei); einen anderen Namen wählen</translation>
    </message>
    <message>
        <source>%1 cannot be written; its folder must be one where you may write, or copy it to such a one</source>
        <translation>%1 lässt sich nicht schreiben; der Ordner muss einer sein, in den geschrieben werden darf, sonst in einen solchen kopieren</translation>
    </message>
    <message>
        <source>%1 characters where a line of GHCN-Daily has 269; the line is cut or has another form</source>
        <translation>%1 Zeichen, wo eine Zeile von GHCN-Daily 269 hat; die Zeile ist abgeschnitten oder hat eine andere Form</translation>
    </message>
    <message>
        <source>%1 could not be brought to the disk (%2); the disk may be full or failing</source>
        <translation>%1 ließ sich nicht auf den Datenträger bringen (%2); vielleicht ist er voll oder versagt</translation>
    </message>
    <message>
        <source>%1 could not be copied (%2); make room or choose another place</source>
        <translation>%1 ließ sich nicht kopieren (%2); Platz schaffen oder eine andere Stelle wählen</translation>
    </message>
    <message>
        <source>%1 could not be given its name (%2); choose another name or move away what is there</source>
        <translation>%1 ließ sich nicht so nennen (%2); einen anderen Namen wählen oder wegräumen, was dort ist</translation>
    </message>
    <message>
        <source>%1 could not be read or written (%2); the disk may be full or failing</source>
        <translation>%1 ließ sich nicht lesen oder schreiben (%2); vielleicht ist der Datenträger voll oder versagt</translation>
    </message>
    <message>
        <source>%1 could not be read to its end; was it changed meanwhile?</source>
        <translation>%1 ließ sich nicht bis zum Ende lesen; wurde die Datei inzwischen geändert?</translation>
    </message>
    <message>
        <source>%1 could not be replaced (%2)</source>
        <translation>%1 ließ sich nicht ersetzen (%2)</translation>
    </message>
    <message>
        <source>%1 could not be unpacked (%2); choose another place</source>
        <translation>%1 ließ sich nicht auspacken (%2); eine andere Stelle wählen</translation>
    </message>
    <message>
        <source>%1 could not be unpacked (the disk is full, or files may not grow so large); make room or choose another place</source>
        <translation>%1 ließ sich nicht auspacken (der Datenträger ist voll, oder Dateien dürfen nicht so groß werden); Platz schaffen oder eine andere Stelle wählen</translation>
    </message>
    <message>
        <source>%1 could not be used (%2); restore a backup</source>
        <translation>%1 ließ sich nicht benutzen (%2); eine Sicherung zurückholen</translation>
    </message>
    <message>
        <source>%1 could not be written (%2); choose another place</source>
        <translation>%1 ließ sich nicht schreiben (%2); eine andere Stelle wählen</translation>
    </message>
    <message>
        <source>%1 could not be written (the disk is full, or files may not grow so large); make room or choose another place</source>
        <translation>%1 ließ sich nicht schreiben (der Datenträger ist voll, oder Dateien dürfen nicht so groß werden); Platz schaffen oder eine andere Stelle wählen</translation>
    </message>
    <message>
        <source>%1 could not be written, the disk is full; make room and repeat</source>
        <translation>%1 ließ sich nicht schreiben, der Datenträger ist voll; Platz schaffen und wiederholen</translation>
    </message>
    <message>
        <source>%1 could not be written; make room or choose another folder</source>
        <translation>%1 ließ sich nicht schreiben; Platz schaffen oder einen anderen Ordner wählen</translation>
    </message>
    <message>
        <source>%1 does not hold what was written; the disk may be failing</source>
        <translation>%1 enthält nicht, was geschrieben wurde; vielleicht versagt der Datenträger</translation>
    </message>
    <message>
        <source>%1 entries are more than the %2 that are taken</source>
        <translation>%1 Einträge sind mehr als die %2, die genommen werden</translation>
    </message>
    <message>
        <source>%1 has %2 MB, at most %3 are read; leave only the nights that matter</source>
        <translation>%1 hat %2 MB, gelesen werden höchstens %3; nur die Nächte lassen, auf die es ankommt</translation>
    </message>
    <message>
        <source>%1 has %2 MB; photos up to %3 MB are taken, so save it smaller</source>
        <translation>%1 hat %2 MB; Fotos werden bis %3 MB genommen, also kleiner speichern</translation>
    </message>
    <message>
        <source>%1 has %2 seeds left, not %3; sow fewer, or add the packet they came from</source>
        <translation>%1 hat noch %2 Samen, nicht %3; weniger säen oder das Tütchen eintragen, aus dem sie kamen</translation>
    </message>
    <message>
        <source>%1 has a column &quot;%2&quot; that is not known</source>
        <translation>%1 hat eine Spalte „%2“, die nicht bekannt ist</translation>
    </message>
    <message>
        <source>%1 has a column twice</source>
        <translation>%1 hat eine Spalte zweimal</translation>
    </message>
    <message>
        <source>%1 has a head line and no days</source>
        <translation>%1 hat eine Kopfzeile und keine Tage</translation>
    </message>
    <message>
        <source>%1 has a number in its JSON that is beyond any measure</source>
        <translation>%1 hat in ihrem JSON eine Zahl jenseits jedes Maßes</translation>
    </message>
    <message>
        <source>%1 has column names and no row; it needs one for each night</source>
        <translation>%1 hat Spaltennamen und keine Zeile; es braucht eine für jede Nacht</translation>
    </message>
    <message>
        <source>%1 has minutes or seconds of 60 or more; they run from 0 to below 60</source>
        <translation>%1 hat 60 oder mehr Minuten oder Sekunden; sie gehen von 0 bis unter 60</translation>
    </message>
    <message>
        <source>%1 has more than %2 rows; leave only the nights that matter</source>
        <translation>%1 hat über %2 Zeilen; nur die Nächte lassen, auf die es ankommt</translation>
    </message>
    <message>
        <source>%1 has no column &quot;%2&quot;</source>
        <translation>%1 hat keine Spalte „%2“</translation>
    </message>
    <message>
        <source>%1 has no column &quot;%2&quot;; it has %3</source>
        <translation>%1 hat keine Spalte „%2“; vorhanden: %3</translation>
    </message>
    <message>
        <source>%1 has no column TMIN; lows are needed</source>
        <translation>%1 hat keine Spalte TMIN; Tiefstwerte werden gebraucht</translation>
    </message>
    <message>
        <source>%1 has no data/%2 in it; it is no backup of a household</source>
        <translation>%1 hat kein data/%2 in sich; das ist keine Sicherung eines Haushalts</translation>
    </message>
    <message>
        <source>%1 has no night on or after %2, the day of the forecast; take a newer forecast</source>
        <translation>%1 hat keine Nacht am oder nach dem %2, dem Tag der Vorhersage; eine neuere Vorhersage nehmen</translation>
    </message>
    <message>
        <source>%1 has no pixels</source>
        <translation>%1 hat keine Bildpunkte</translation>
    </message>
    <message>
        <source>%1 has no record of its own to remove</source>
        <translation>%1 hat keine eigene Aufzeichnung, die zu entfernen wäre</translation>
    </message>
    <message>
        <source>%1 has no station %2; it has %3</source>
        <translation>%1 hat keine Station %2; vorhanden ist %3</translation>
    </message>
    <message>
        <source>%1 has no station %2; it has %3 and others</source>
        <translation>%1 hat keine Station %2; vorhanden sind %3 und andere</translation>
    </message>
    <message>
        <source>%1 has nothing at &quot;%2&quot;; at its top it has %3</source>
        <translation>%1 hat nichts bei „%2“; zuoberst steht %3</translation>
    </message>
    <message>
        <source>%1 has room for %2 MB and the household needs %3 MB; make room or choose another place</source>
        <translation>%1 hat Platz für %2 MB, und der Haushalt braucht %3 MB; Platz schaffen oder eine andere Stelle wählen</translation>
    </message>
    <message>
        <source>%1 holds a database that cannot be used; use another backup</source>
        <translation>%1 enthält eine Datenbank, die sich nicht benutzen lässt; eine andere Sicherung nehmen</translation>
    </message>
    <message>
        <source>%1 holds a database that is no household of this program</source>
        <translation>%1 enthält eine Datenbank, die kein Haushalt dieses Programms ist</translation>
    </message>
    <message>
        <source>%1 holds no line of coast</source>
        <translation>%1 enthält keine Küstenlinie</translation>
    </message>
    <message>
        <source>%1 is a file; choose a new or an empty folder</source>
        <translation>%1 ist eine Datei; einen neuen oder leeren Ordner wählen</translation>
    </message>
    <message>
        <source>%1 is a folder; name a file in it</source>
        <translation>%1 ist ein Ordner; eine Datei darin nennen</translation>
    </message>
    <message>
        <source>%1 is a folder; name a file of daily records in it</source>
        <translation>%1 ist ein Ordner; eine Datei mit Tageswerten darin nennen</translation>
    </message>
    <message>
        <source>%1 is cut off or damaged (%2: %3); copy it once more from the camera</source>
        <translation>%1 ist abgeschnitten oder beschädigt (%2: %3); noch einmal von der Kamera kopieren</translation>
    </message>
    <message>
        <source>%1 is damaged (%2 cannot be read); restore a backup</source>
        <translation>%1 ist beschädigt (%2: nicht zu lesen); eine Sicherung zurückholen</translation>
    </message>
    <message>
        <source>%1 is damaged (%2); restore a backup</source>
        <translation>%1 ist beschädigt (%2); eine Sicherung zurückholen</translation>
    </message>
    <message>
        <source>%1 is damaged (%2); restore a backup, the file was left as it is</source>
        <translation>%1 ist beschädigt (%2); eine Sicherung zurückholen, die Datei blieb, wie sie ist</translation>
    </message>
    <message>
        <source>%1 is damaged (a day of its own record has no date); restore a backup</source>
        <translation>%1 ist beschädigt (ein Tag der eigenen Aufzeichnung hat kein Datum); eine Sicherung zurückholen</translation>
    </message>
    <message>
        <source>%1 is damaged (a measurement of %2 cannot be read); restore a backup</source>
        <translation>%1 ist beschädigt (eine Messung vom %2 lässt sich nicht lesen); eine Sicherung zurückholen</translation>
    </message>
    <message>
        <source>%1 is damaged (a stay of the accepted plan cannot be read); restore a backup</source>
        <translation>%1 ist beschädigt (ein Aufenthalt des angenommenen Plans lässt sich nicht lesen); eine Sicherung zurückholen</translation>
    </message>
    <message>
        <source>%1 is damaged (an entry of kind &quot;%2&quot; cannot be read); restore a backup</source>
        <translation>%1 ist beschädigt (eine Zeile der Art „%2“ lässt sich nicht lesen); eine Sicherung zurückholen</translation>
    </message>
    <message>
        <source>%1 is damaged (an entry of no known kind, &quot;%2&quot;); restore a backup</source>
        <translation>%1 ist beschädigt (eine Zeile unbekannter Art, „%2“); eine Sicherung zurückholen</translation>
    </message>
    <message>
        <source>%1 is damaged (an event of %2 cannot be read); restore a backup</source>
        <translation>%1 ist beschädigt (ein Ereignis vom %2 lässt sich nicht lesen); eine Sicherung zurückholen</translation>
    </message>
    <message>
        <source>%1 is damaged (cut off after %2 bytes); restore a backup, the file was left as it is</source>
        <translation>%1 ist beschädigt (nach %2 Bytes abgeschnitten); eine Sicherung zurückholen, die Datei blieb, wie sie ist</translation>
    </message>
    <message>
        <source>%1 is damaged (event %2 is missing); restore a backup</source>
        <translation>%1 ist beschädigt (Ereignis %2 fehlt); eine Sicherung zurückholen</translation>
    </message>
    <message>
        <source>%1 is damaged (it says nothing of its place); restore a backup</source>
        <translation>%1 ist beschädigt (über den Ort steht nichts darin); eine Sicherung zurückholen</translation>
    </message>
    <message>
        <source>%1 is damaged (its own record has no days); restore a backup</source>
        <translation>%1 ist beschädigt (die eigene Aufzeichnung hat keine Tage); eine Sicherung zurückholen</translation>
    </message>
    <message>
        <source>%1 is damaged (its own record has no place or date); restore a backup</source>
        <translation>%1 ist beschädigt (die eigene Aufzeichnung hat keinen Ort oder kein Datum); eine Sicherung zurückholen</translation>
    </message>
    <message>
        <source>%1 is damaged (its place is not on the globe); restore a backup</source>
        <translation>%1 ist beschädigt (der Ort liegt nicht auf der Erde); eine Sicherung zurückholen</translation>
    </message>
    <message>
        <source>%1 is damaged (measurement %2 is missing); restore a backup</source>
        <translation>%1 ist beschädigt (Messung %2 fehlt); eine Sicherung zurückholen</translation>
    </message>
    <message>
        <source>%1 is damaged (photo %2 cannot be read); restore a backup</source>
        <translation>%1 ist beschädigt (Foto %2 lässt sich nicht lesen); eine Sicherung zurückholen</translation>
    </message>
    <message>
        <source>%1 is damaged or no packed station table; build or install it again</source>
        <translation>%1 ist beschädigt oder keine gepackte Stationstabelle; sie neu bauen oder installieren</translation>
    </message>
    <message>
        <source>%1 is damaged or no packed table of towns; build or install it again</source>
        <translation>%1 ist beschädigt oder keine gepackte Tabelle der Orte; sie neu bauen oder installieren</translation>
    </message>
    <message>
        <source>%1 is empty; copy it once more from the camera</source>
        <translation>%1 ist leer; noch einmal von der Kamera kopieren</translation>
    </message>
    <message>
        <source>%1 is empty; it needs a head line and a row a day</source>
        <translation>%1 ist leer; es braucht eine Kopfzeile und je Tag eine Zeile</translation>
    </message>
    <message>
        <source>%1 is empty; it needs a line of column names</source>
        <translation>%1 ist leer; es braucht eine Zeile mit Spaltennamen</translation>
    </message>
    <message>
        <source>%1 is empty; it needs a line of column names and a row for each night</source>
        <translation>%1 ist leer; es braucht eine Zeile mit Spaltennamen und für jede Nacht eine Zeile</translation>
    </message>
    <message>
        <source>%1 is empty; it needs daily records</source>
        <translation>%1 ist leer; es braucht Tageswerte</translation>
    </message>
    <message>
        <source>%1 is held by another program; close that one or try again in a moment</source>
        <translation>%1 wird von einem anderen Programm festgehalten; jenes schließen oder es gleich noch einmal versuchen</translation>
    </message>
    <message>
        <source>%1 is kept at %2; move it first</source>
        <translation>%1 ist fest an %2; zuerst umstellen</translation>
    </message>
    <message>
        <source>%1 is nested more than 64 deep; that is no forecast</source>
        <translation>%1 ist mehr als 64-fach geschachtelt; das ist keine Vorhersage</translation>
    </message>
    <message>
        <source>%1 is no file; name a backup&apos;s zip file</source>
        <translation>%1 ist keine Datei; die Zip-Datei einer Sicherung nennen</translation>
    </message>
    <message>
        <source>%1 is no ordinary file; save the records to a file first</source>
        <translation>%1 ist keine gewöhnliche Datei; die Werte zuerst in eine Datei speichern</translation>
    </message>
    <message>
        <source>%1 is no photo in JPEG, PNG, WebP or HEIC; save it as one of these</source>
        <translation>%1 ist kein Foto in JPEG, PNG, WebP oder HEIC; in einem davon speichern</translation>
    </message>
    <message>
        <source>%1 is no place in %2; the form is EPSG:code:easting,northing, easting first</source>
        <translation>%1 ist kein Ort in %2; die Form ist EPSG:Kennzahl:Rechtswert,Hochwert, der Rechtswert zuerst</translation>
    </message>
    <message>
        <source>%1 is no place: %2; write it as 48.21,16.37 or 48°12&apos;36&quot;N 16°22&apos;12&quot;E</source>
        <translation>%1 ist kein Ort: %2; in der Form 48.21,16.37 oder 48°12&apos;36&quot;N 16°22&apos;12&quot;E angeben</translation>
    </message>
    <message>
        <source>%1 is no place: the form is EPSG:code:easting,northing, such as EPSG:32633:601000,5340000</source>
        <translation>%1 ist kein Ort: die Form ist EPSG:Kennzahl:Rechtswert,Hochwert, etwa EPSG:32633:601000,5340000</translation>
    </message>
    <message>
        <source>%1 is no text in UTF-8 (it has a zero byte); save it as UTF-8 text</source>
        <translation>%1 ist kein Text in UTF-8 (ein Byte ist null); als Text in UTF-8 speichern</translation>
    </message>
    <message>
        <source>%1 is not a file; name a photo</source>
        <translation>%1 ist keine Datei; ein Foto nennen</translation>
    </message>
    <message>
        <source>%1 is not a folder; name a household&apos;s folder</source>
        <translation>%1 ist kein Ordner; den Ordner eines Haushalts nennen</translation>
    </message>
    <message>
        <source>%1 is not a household; it has no file %2 in it</source>
        <translation>%1 ist kein Haushalt; darin ist keine Datei %2</translation>
    </message>
    <message>
        <source>%1 is not a household; it was not made by this program</source>
        <translation>%1 ist kein Haushalt; dieses Programm hat das nicht gemacht</translation>
    </message>
    <message>
        <source>%1 is not a system of map coordinates (it measures heights or from the Earth&apos;s centre); take another code</source>
        <translation>%1 ist kein System von Kartenkoordinaten (es misst Höhen oder vom Erdmittelpunkt aus); eine andere Kennzahl nehmen</translation>
    </message>
    <message>
        <source>%1 is not empty; choose a new or an empty folder</source>
        <translation>%1 ist nicht leer; einen neuen oder leeren Ordner wählen</translation>
    </message>
    <message>
        <source>%1 is not safe to read (%2); save it anew without its EXIF</source>
        <translation>%1 lässt sich nicht sicher lesen (%2); ohne EXIF neu speichern</translation>
    </message>
    <message>
        <source>%1 is not the photo that its name says; put the original in its place or take it away</source>
        <translation>%1 ist nicht das Foto, das der Name nennt; das Original an seine Stelle legen oder es wegnehmen</translation>
    </message>
    <message>
        <source>%1 is not there (looked at %2); install the program or name the file in %3</source>
        <translation>%1 ist nicht da (gesucht in %2); das Programm installieren oder die Datei in %3 nennen</translation>
    </message>
    <message>
        <source>%1 is read-only; copy the household to a folder where you may write</source>
        <translation>%1 darf nur gelesen werden; den Haushalt in einen Ordner kopieren, in den geschrieben werden darf</translation>
    </message>
    <message>
        <source>%1 is the database of another program</source>
        <translation>%1 ist die Datenbank eines anderen Programms</translation>
    </message>
    <message>
        <source>%1 lies outside the area that %2 is made for; the form is EPSG:code:easting,northing, easting first</source>
        <translation>%1 liegt außerhalb des Gebiets, für das %2 gemacht ist; die Form ist EPSG:Kennzahl:Rechtswert,Hochwert, der Rechtswert zuerst</translation>
    </message>
    <message>
        <source>%1 must end in .jpg or .png, so that its form is known</source>
        <translation>%1 muss auf .jpg oder .png enden, damit die Form bekannt ist</translation>
    </message>
    <message>
        <source>%1 must lie within %2 and %3 degrees, not %4</source>
        <translation>%1 muss zwischen %2 und %3 Grad liegen, nicht bei %4</translation>
    </message>
    <message>
        <source>%1 must lie within %2 and %3 m, not %4</source>
        <translation>%1 muss zwischen %2 und %3 m liegen, nicht bei %4</translation>
    </message>
    <message>
        <source>%1 must lie within %2 and %3, not %4</source>
        <translation>%1 muss zwischen %2 und %3 liegen, nicht bei %4</translation>
    </message>
    <message>
        <source>%1 of %2 was measured in the photo %3</source>
        <translation>%1 vom %2 wurde in dem Foto %3 gemessen</translation>
    </message>
    <message>
        <source>%1 of its days have values that were never read on land</source>
        <translation>%1 ihrer Tage haben Werte, die an Land nie gemessen wurden</translation>
    </message>
    <message>
        <source>%1 of that day stands twice for station %2</source>
        <translation>%1 dieses Tages steht zweimal da für die Station %2</translation>
    </message>
    <message>
        <source>%1 of that month stands twice for station %2</source>
        <translation>%1 dieses Monats steht zweimal da für die Station %2</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 oder %2</translation>
    </message>
    <message>
        <source>%1 seeds cannot be sown at once; log up to %2 in a tray</source>
        <translation>%1 Samen sind nicht auf einmal zu säen; bis zu %2 je Schale eintragen</translation>
    </message>
    <message>
        <source>%1 stands at %2; move it first</source>
        <translation>%1 steht an %2; zuerst umstellen</translation>
    </message>
    <message>
        <source>%1 stands on line %2 already; keep one of them</source>
        <translation>%1 steht schon in Zeile %2; eine davon behalten</translation>
    </message>
    <message>
        <source>%1 stays on the list: %2; with 0 pots the plan uses it no more</source>
        <translation>%1 bleibt in der Liste: %2; mit 0 Töpfen rechnet der Plan nicht mehr damit</translation>
    </message>
    <message>
        <source>%1 was made by a newer version of this program (schema %2, this one knows %3); import it with that one</source>
        <translation>%1 wurde mit einer neueren Fassung dieses Programms gemacht (Schema %2, diese kennt %3); mit jener einlesen</translation>
    </message>
    <message>
        <source>%1 was made by a newer version of this program; restore it with that one, nothing was made here</source>
        <translation>%1 wurde mit einer neueren Fassung dieses Programms gemacht; mit jener zurückholen, hier wurde nichts angelegt</translation>
    </message>
    <message>
        <source>%1 was not added (%2); its name must be new and its numbers in their ranges</source>
        <translation>%1 wurde nicht hinzugefügt (%2); der Name muss neu sein und die Zahlen in ihren Grenzen</translation>
    </message>
    <message>
        <source>%1 was packed for a newer version of this program</source>
        <translation>%1 wurde für eine neuere Fassung dieses Programms gepackt</translation>
    </message>
    <message>
        <source>%1 was written by a newer version of this program (schema %2, this one knows %3); it was left untouched</source>
        <translation>%1 wurde mit einer neueren Fassung dieses Programms geschrieben (Schema %2, diese kennt %3); es blieb unberührt</translation>
    </message>
    <message>
        <source>%1 would unpack to %2 x %3 pixels; up to %4 million are taken, so save it smaller</source>
        <translation>%1 würde zu %2 x %3 Bildpunkten ausgepackt; genommen werden bis %4 Millionen, also kleiner speichern</translation>
    </message>
    <message>
        <source>%1, line %2: %3</source>
        <translation>%1, Zeile %2: %3</translation>
    </message>
    <message>
        <source>%1, line %2: %3 fields where the head has %4</source>
        <translation>%1, Zeile %2: %3 Felder, wo der Kopf %4 hat</translation>
    </message>
    <message>
        <source>%1, line %2: a quotation mark is not closed or stands inside a field; write fields as RFC 4180 asks</source>
        <translation>%1, Zeile %2: ein Anführungszeichen ist nicht geschlossen oder steht mitten in einem Feld; Felder so schreiben, wie es RFC 4180 verlangt</translation>
    </message>
    <message>
        <source>%1, line %2: no line of coast; it needs pairs of whole numbers, longitude first, in hundredths of a degree</source>
        <translation>%1, Zeile %2: keine Küstenlinie; es braucht Paare ganzer Zahlen, die Länge zuerst, in Hundertstelgrad</translation>
    </message>
    <message>
        <source>%1, line %2: the JSON breaks off or has a character that does not belong there</source>
        <translation>%1, Zeile %2: das JSON bricht ab oder hat ein Zeichen, das nicht dorthin gehört</translation>
    </message>
    <message>
        <source>%1, line 1: this is no daily record; give GHCN-Daily&apos;s fixed-width lines or one of its comma-separated forms</source>
        <translation>%1, Zeile 1: das ist keine Aufzeichnung nach Tagen; die Zeilen fester Breite von GHCN-Daily oder eine seiner kommagetrennten Formen angeben</translation>
    </message>
    <message>
        <source>%1, or %2</source>
        <translation>%1, oder %2</translation>
    </message>
    <message>
        <source>%1, row %2: %3</source>
        <translation>%1, Eintrag %2: %3</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; %3; the file was altered or is torn, use another backup</source>
        <translation>%1: „%2“ %3; die Datei wurde verändert oder ist unvollständig, eine andere Sicherung nehmen</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; has %3 values where another has %4</source>
        <translation>%1: „%2“ hat %3 Werte, wo ein anderes %4 hat</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not what the backup&apos;s list says; it was altered or is torn, use another backup</source>
        <translation>%1: „%2“ ist nicht, was die Liste der Sicherung sagt; es wurde verändert oder ist unvollständig, eine andere Sicherung nehmen</translation>
    </message>
    <message>
        <source>%1: %2; nothing was unpacked</source>
        <translation>%1: %2; nichts wurde ausgepackt</translation>
    </message>
    <message>
        <source>%1: not enough memory to unpack it; close other programs</source>
        <translation>%1: zu wenig Speicher zum Auspacken; andere Programme schließen</translation>
    </message>
    <message>
        <source>%1: part of its EXIF is damaged; its date may be missing</source>
        <translation>%1: ein Teil der EXIF-Angaben ist beschädigt; das Datum kann fehlen</translation>
    </message>
    <message>
        <source>%1: the lines of station %2 do not stand together; sort the file by station</source>
        <translation>%1: die Zeilen der Station %2 stehen nicht beisammen; die Datei nach Stationen ordnen</translation>
    </message>
    <message>
        <source>%1: this system&apos;s library cannot read that kind of HEIC (%2); let the phone save or share it as JPEG</source>
        <translation>%1: die Bibliothek dieses Systems kann diese Art HEIC nicht lesen (%2); das Foto vom Telefon als JPEG speichern oder teilen lassen</translation>
    </message>
    <message>
        <source>%1: where it was taken cannot be taken out of it (%2); export it with its position, or save it as JPEG</source>
        <translation>%1: wo es aufgenommen wurde, lässt sich nicht herausnehmen (%2); mit dem Aufnahmeort ausgeben oder als JPEG speichern</translation>
    </message>
    <message>
        <source>%1: where it was taken cannot be taken out of it; export it with its position, or save it as JPEG</source>
        <translation>%1: wo es aufgenommen wurde, lässt sich nicht herausnehmen; mit dem Aufnahmeort ausgeben oder als JPEG speichern</translation>
    </message>
    <message>
        <source>PROJ could not be started, so there is no map</source>
        <translation>PROJ ließ sich nicht starten, daher gibt es keine Karte</translation>
    </message>
    <message>
        <source>PROJ could not be started; write the place as LAT,LON</source>
        <translation>PROJ ließ sich nicht starten; den Ort als BREITE,LÄNGE angeben</translation>
    </message>
    <message>
        <source>PROJ knows no way from %1 to latitude and longitude; write the place as LAT,LON</source>
        <translation>PROJ kennt keinen Weg von %1 zu Breite und Länge; den Ort als BREITE,LÄNGE angeben</translation>
    </message>
    <message>
        <source>PROJ&apos;s list of EPSG codes (proj.db) is not installed; write the place as LAT,LON</source>
        <translation>die Liste der EPSG-Kennzahlen von PROJ (proj.db) ist nicht installiert; den Ort als BREITE,LÄNGE angeben</translation>
    </message>
    <message>
        <source>a chance must lie within 0 and 1</source>
        <translation>eine Wahrscheinlichkeit muss zwischen 0 und 1 liegen</translation>
    </message>
    <message>
        <source>a comparison needs 2 plants, has %1</source>
        <translation>ein Vergleich braucht 2 Pflanzen, hat %1</translation>
    </message>
    <message>
        <source>a comparison of two groups needs 2 plants in each, has %1 and %2</source>
        <translation>ein Vergleich zweier Gruppen braucht 2 Pflanzen in jeder, hat %1 und %2</translation>
    </message>
    <message>
        <source>a coordinate has both a sign and one of N, S, E, W</source>
        <translation>eine Koordinate hat ein Vorzeichen und dazu N, S, E oder W</translation>
    </message>
    <message>
        <source>a coordinate has no number</source>
        <translation>eine Koordinate hat keine Zahl</translation>
    </message>
    <message>
        <source>a corner of the outline lies outside of the upright picture, which has %1 x %2 pixels</source>
        <translation>eine Ecke des Umrisses liegt außerhalb des aufrechten Bildes, das %1 x %2 Bildpunkte hat</translation>
    </message>
    <message>
        <source>a count lies between the sowing on %1 and today</source>
        <translation>eine Zählung liegt zwischen der Aussaat am %1 und heute</translation>
    </message>
    <message>
        <source>a count of seedlings</source>
        <translation>eine Zählung der Sämlinge</translation>
    </message>
    <message>
        <source>a curve of %1 parameters needs %2 points, has %3</source>
        <translation>eine Kurve mit %1 Parametern braucht %2 Punkte, hat %3</translation>
    </message>
    <message>
        <source>a curve of growth needs 4 points, has %1</source>
        <translation>eine Wachstumskurve braucht 4 Punkte, hat %1</translation>
    </message>
    <message>
        <source>a day of the year lies within 1 and 366</source>
        <translation>ein Tag des Jahres liegt zwischen 1 und 366</translation>
    </message>
    <message>
        <source>a demonstration has %1 to %2 %3, not %4</source>
        <translation>eine Vorführung hat %1 bis %2 %3, nicht %4</translation>
    </message>
    <message>
        <source>a demonstration needs a date in the years 1930 to 2190, not %1</source>
        <translation>eine Vorführung braucht ein Datum in den Jahren 1930 bis 2190, nicht %1</translation>
    </message>
    <message>
        <source>a division needs a name for each new piece</source>
        <translation>eine Teilung braucht für jedes neue Stück einen Namen</translation>
    </message>
    <message>
        <source>a forecast of %1</source>
        <translation>eine Vorhersage vom %1</translation>
    </message>
    <message>
        <source>a jug must hold more than 0 and at most 1000 L</source>
        <translation>eine Kanne muss mehr als 0 und höchstens 1000 L fassen</translation>
    </message>
    <message>
        <source>a length is measured by a scale: two points and their distance in cm</source>
        <translation>eine Länge wird an einem Maßstab gemessen: zwei Punkte und ihr Abstand in cm</translation>
    </message>
    <message>
        <source>a line needs two points of different x</source>
        <translation>eine Gerade braucht zwei Punkte an verschiedenen Stellen</translation>
    </message>
    <message>
        <source>a line with a break needs 5 points of different x, has %1</source>
        <translation>eine Gerade mit Knick braucht 5 Punkte an verschiedenen Stellen, hat %1</translation>
    </message>
    <message>
        <source>a lot needs a name and a crop</source>
        <translation>ein Tütchen braucht einen Namen und eine Kultur</translation>
    </message>
    <message>
        <source>a lot of %1 seeds cannot be sown; give the number in the packet, or leave it out</source>
        <translation>ein Tütchen mit %1 Samen kann nicht gesät werden; die Anzahl im Tütchen angeben oder sie weglassen</translation>
    </message>
    <message>
        <source>a moving picture</source>
        <translation>ein bewegtes Bild</translation>
    </message>
    <message>
        <source>a percentage must lie within 0 and 100</source>
        <translation>ein Prozentwert muss zwischen 0 und 100 liegen</translation>
    </message>
    <message>
        <source>a place needs a time zone</source>
        <translation>ein Ort braucht eine Zeitzone</translation>
    </message>
    <message>
        <source>a plan that was accepted uses it</source>
        <translation>ein angenommener Plan braucht diesen Platz</translation>
    </message>
    <message>
        <source>a planned stay</source>
        <translation>ein geplanter Aufenthalt</translation>
    </message>
    <message>
        <source>a plant is pinned to it</source>
        <translation>eine Pflanze ist dort festgehalten</translation>
    </message>
    <message>
        <source>a plant needs a name</source>
        <translation>eine Pflanze braucht einen Namen</translation>
    </message>
    <message>
        <source>a plant stands there or is kept there</source>
        <translation>eine Pflanze steht dort oder ist dort fest</translation>
    </message>
    <message>
        <source>a plant that is gone stood there</source>
        <translation>eine Pflanze, die es nicht mehr gibt, stand dort</translation>
    </message>
    <message>
        <source>a reading of %1</source>
        <translation>eine Ablesung vom %1</translation>
    </message>
    <message>
        <source>a row has station, day, element, value and up to four flags</source>
        <translation>eine Zeile hat Station, Tag, Größe, Wert und bis zu vier Kennzeichen</translation>
    </message>
    <message>
        <source>a sowing</source>
        <translation>eine Aussaat</translation>
    </message>
    <message>
        <source>a sowing is logged when it is done; %1 is after today</source>
        <translation>eine Aussaat wird eingetragen, wenn sie getan ist; der %1 ist nach heute</translation>
    </message>
    <message>
        <source>a sowing needs at least one seed</source>
        <translation>eine Aussaat braucht mindestens einen Samen</translation>
    </message>
    <message>
        <source>a spot needs a name</source>
        <translation>ein Platz braucht einen Namen</translation>
    </message>
    <message>
        <source>a spot needs a name, such as South sill</source>
        <translation>ein Platz braucht einen Namen, etwa Südfenster</translation>
    </message>
    <message>
        <source>a stay</source>
        <translation>ein Aufenthalt</translation>
    </message>
    <message>
        <source>a temporary name is taken</source>
        <translation>ein vorläufiger Name ist vergeben</translation>
    </message>
    <message>
        <source>a town&apos;s name of %1 bytes is longer than any; write the town alone</source>
        <translation>der Name eines Ortes mit %1 Bytes ist länger als jeder; den Ort allein schreiben</translation>
    </message>
    <message>
        <source>a trend test needs 3 values, has %1</source>
        <translation>eine Prüfung auf Richtung braucht 3 Werte, hat %1</translation>
    </message>
    <message>
        <source>after the comma stands no country or region; write it as Springfield, Missouri</source>
        <translation>nach dem Komma steht kein Land und keine Region; in der Form Springfield, Missouri angeben</translation>
    </message>
    <message>
        <source>all plants changed alike to the last digit; nothing can be said of chance</source>
        <translation>alle Pflanzen haben sich bis zur letzten Stelle gleich verändert; über den Zufall lässt sich nichts sagen</translation>
    </message>
    <message>
        <source>an amount of water must be above 0 and at most 1000 L</source>
        <translation>eine Wassermenge muss über 0 und höchstens bei 1000 L liegen</translation>
    </message>
    <message>
        <source>an outline has at least three corners</source>
        <translation>ein Umriss hat mindestens drei Ecken</translation>
    </message>
    <message>
        <source>cannot be unpacked</source>
        <translation>lässt sich nicht auspacken</translation>
    </message>
    <message>
        <source>cloud must lie within 0 and 100 percent</source>
        <translation>die Bewölkung muss zwischen 0 und 100 Prozent liegen</translation>
    </message>
    <message>
        <source>could not start the reader of comma-separated files</source>
        <translation>das Lesen kommagetrennter Dateien ließ sich nicht starten</translation>
    </message>
    <message>
        <source>does not unpack to what was packed</source>
        <translation>ergibt beim Auspacken nicht, was gepackt wurde</translation>
    </message>
    <message>
        <source>entry %1 %2</source>
        <translation>Eintrag %1 %2</translation>
    </message>
    <message>
        <source>entry %1 has no name</source>
        <translation>Eintrag %1 hat keinen Namen</translation>
    </message>
    <message>
        <source>flowers</source>
        <translation>Blüten</translation>
    </message>
    <message>
        <source>gives no household (%1)</source>
        <translation>ergibt keinen Haushalt (%1)</translation>
    </message>
    <message>
        <source>gives no household (household.csv needs one row)</source>
        <translation>ergibt keinen Haushalt (household.csv braucht eine Zeile)</translation>
    </message>
    <message>
        <source>gives no household that can be opened (%1)</source>
        <translation>ergibt keinen Haushalt, der sich öffnen lässt (%1)</translation>
    </message>
    <message>
        <source>green_cover</source>
        <translation>Grünanteil</translation>
    </message>
    <message>
        <source>has %1 files below data/ and lists %2</source>
        <translation>hat %1 Dateien unter data/ und nennt %2</translation>
    </message>
    <message>
        <source>has %1 readings; it needs one at least and %2 at most</source>
        <translation>hat %1 Messwerte; es braucht mindestens einen und höchstens %2</translation>
    </message>
    <message>
        <source>has a %1 whose %2</source>
        <translation>hat ein fehlerhaftes %1: %2</translation>
    </message>
    <message>
        <source>has a name that is not UTF-8</source>
        <translation>hat einen Namen, der nicht UTF-8 ist</translation>
    </message>
    <message>
        <source>has a name with control characters</source>
        <translation>hat einen Namen mit Steuerzeichen</translation>
    </message>
    <message>
        <source>has a part of over %1 bytes in its path</source>
        <translation>hat einen Teil von über %1 Bytes im Pfad</translation>
    </message>
    <message>
        <source>has a reading of %1 %; a share lies within 0 and 100 %</source>
        <translation>hat einen Wert von %1 %; ein Anteil liegt zwischen 0 und 100 %</translation>
    </message>
    <message>
        <source>has a reading of %1; a count is a whole number</source>
        <translation>hat einen Messwert von %1; eine Anzahl ist eine ganze Zahl</translation>
    </message>
    <message>
        <source>has a reading of %1; it lies within 0 and %2</source>
        <translation>hat einen Messwert von %1; er liegt zwischen 0 und %2</translation>
    </message>
    <message>
        <source>has a reading of %1; it lies within 0 and %2 cm</source>
        <translation>hat einen Messwert von %1; er liegt zwischen 0 und %2 cm</translation>
    </message>
    <message>
        <source>has a time outside the day or without its zone</source>
        <translation>hat eine Uhrzeit außerhalb des Tages oder ohne ihre Zone</translation>
    </message>
    <message>
        <source>has an about.csv that names no schema</source>
        <translation>hat eine about.csv, die kein Schema nennt</translation>
    </message>
    <message>
        <source>has an empty name or one of over %1 bytes</source>
        <translation>hat einen leeren Namen oder einen von über %1 Bytes</translation>
    </message>
    <message>
        <source>has no %1</source>
        <translation>hat kein %1</translation>
    </message>
    <message>
        <source>has no %1.csv (an empty table still has its head line)</source>
        <translation>hat keine %1.csv (auch eine leere Tabelle hat ihre Kopfzeile)</translation>
    </message>
    <message>
        <source>has no about.csv</source>
        <translation>hat keine about.csv</translation>
    </message>
    <message>
        <source>has no digest of 64 hexadecimal digits and a path</source>
        <translation>hat keine Prüfsumme aus 64 hexadezimalen Ziffern und keinen Pfad</translation>
    </message>
    <message>
        <source>has tag files that are not in UTF-8</source>
        <translation>hat Begleitdateien, die nicht in UTF-8 sind</translation>
    </message>
    <message>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>is a bag of version &quot;%1&quot;; 1.0 and 0.97 are read</source>
        <translation>ist ein Bag der Version „%1“; gelesen werden 1.0 und 0.97</translation>
    </message>
    <message>
        <source>is no backup of this program (a BagIt bag in a zip, with bagit.txt in its one folder)</source>
        <translation>ist keine Sicherung dieses Programms (ein Bag nach BagIt in einer Zip-Datei, mit bagit.txt in ihrem einzigen Ordner)</translation>
    </message>
    <message>
        <source>is not whole: it lists &quot;%1&quot; and does not have it</source>
        <translation>ist nicht vollständig: sie nennt „%1“ und enthält es nicht</translation>
    </message>
    <message>
        <source>is not whole: its fetch.txt names files that lie elsewhere, and nothing is fetched</source>
        <translation>ist nicht vollständig: ihre fetch.txt nennt Dateien, die anderswo liegen, und geholt wird nichts</translation>
    </message>
    <message>
        <source>it cannot be read</source>
        <translation>lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>it cannot be read to its end</source>
        <translation>lässt sich nicht bis zum Ende lesen</translation>
    </message>
    <message>
        <source>it has two latitudes or two longitudes</source>
        <translation>es hat zwei Breiten oder zwei Längen</translation>
    </message>
    <message>
        <source>it holds something that is neither a number nor N, S, E, W</source>
        <translation>es enthält etwas, das weder eine Zahl noch N, S, E, W ist</translation>
    </message>
    <message>
        <source>it is a link or has a name that no archive takes</source>
        <translation>ist eine Verknüpfung oder hat einen Namen, den keine Archivdatei nimmt</translation>
    </message>
    <message>
        <source>it is not a latitude and a longitude, two numbers with a decimal point</source>
        <translation>es ist nicht Breite und Länge, zwei Zahlen mit Dezimalpunkt</translation>
    </message>
    <message>
        <source>it is not named as a photo of a household</source>
        <translation>heißt nicht wie ein Foto eines Haushalts</translation>
    </message>
    <message>
        <source>it is warmest when the place is coldest: check the dates, and the sign of the latitude</source>
        <translation>am wärmsten ist es dort, wenn der Ort am kältesten ist: die Daten prüfen und das Vorzeichen der Breite</translation>
    </message>
    <message>
        <source>it would unpack to %1 MB, over %2 times its own size</source>
        <translation>sie würde zu %1 MB ausgepackt, über das %2-Fache der eigenen Größe</translation>
    </message>
    <message>
        <source>it would unpack to more than %1 bytes</source>
        <translation>sie würde zu mehr als %1 Bytes ausgepackt</translation>
    </message>
    <message>
        <source>its EXIF directories lead in a circle</source>
        <translation>die EXIF-Verzeichnisse führen im Kreis</translation>
    </message>
    <message>
        <source>its EXIF has over %1 directories</source>
        <translation>die EXIF-Daten haben über %1 Verzeichnisse</translation>
    </message>
    <message>
        <source>its WebP data breaks off</source>
        <translation>die WebP-Daten brechen ab</translation>
    </message>
    <message>
        <source>its content has the digest %1</source>
        <translation>der Inhalt hat die Prüfsumme %1</translation>
    </message>
    <message>
        <source>its degree, minute and second marks are not in that order</source>
        <translation>die Zeichen für Grad, Minuten und Sekunden stehen nicht in dieser Folge</translation>
    </message>
    <message>
        <source>its highs lie %1 K above the place&apos;s on average: check unit, position, height and whether the thermometer stood in the sun</source>
        <translation>ihre Höchstwerte liegen im Mittel %1 K über denen des Ortes: Einheit, Lage und Höhe prüfen, und ob das Thermometer in der Sonne stand</translation>
    </message>
    <message>
        <source>its highs lie %1 K below the place&apos;s on average: check unit, position, height and whether the thermometer stood in the sun</source>
        <translation>ihre Höchstwerte liegen im Mittel %1 K unter denen des Ortes: Einheit, Lage und Höhe prüfen, und ob das Thermometer in der Sonne stand</translation>
    </message>
    <message>
        <source>its highs of %1 lie %2 K above the table&apos;s; a hollow, a warm wall, another height or a faulty thermometer would do that</source>
        <translation>ihre Höchstwerte im %1 liegen %2 K über denen der Tabelle; eine Mulde, eine warme Wand, eine andere Höhe oder ein fehlerhaftes Thermometer kann das bewirken</translation>
    </message>
    <message>
        <source>its highs of %1 lie %2 K below the table&apos;s; a hollow, a warm wall, another height or a faulty thermometer would do that</source>
        <translation>ihre Höchstwerte im %1 liegen %2 K unter denen der Tabelle; eine Mulde, eine warme Wand, eine andere Höhe oder ein fehlerhaftes Thermometer kann das bewirken</translation>
    </message>
    <message>
        <source>its lows lie %1 K above the place&apos;s on average: check unit, position and height</source>
        <translation>ihre Tiefstwerte liegen im Mittel %1 K über denen des Ortes: Einheit, Lage und Höhe prüfen</translation>
    </message>
    <message>
        <source>its lows lie %1 K below the place&apos;s on average: check unit, position and height</source>
        <translation>ihre Tiefstwerte liegen im Mittel %1 K unter denen des Ortes: Einheit, Lage und Höhe prüfen</translation>
    </message>
    <message>
        <source>its lows of %1 lie %2 K above the table&apos;s; a hollow, a warm wall, another height or a faulty thermometer would do that</source>
        <translation>ihre Tiefstwerte im %1 liegen %2 K über denen der Tabelle; eine Mulde, eine warme Wand, eine andere Höhe oder ein fehlerhaftes Thermometer kann das bewirken</translation>
    </message>
    <message>
        <source>its lows of %1 lie %2 K below the table&apos;s; a hollow, a warm wall, another height or a faulty thermometer would do that</source>
        <translation>ihre Tiefstwerte im %1 liegen %2 K unter denen der Tabelle; eine Mulde, eine warme Wand, eine andere Höhe oder ein fehlerhaftes Thermometer kann das bewirken</translation>
    </message>
    <message>
        <source>its parts are not degrees, minutes and seconds in that order</source>
        <translation>die Teile sind nicht Grad, Minuten und Sekunden in dieser Folge</translation>
    </message>
    <message>
        <source>its parts cannot be found</source>
        <translation>die Teile sind nicht zu finden</translation>
    </message>
    <message>
        <source>its thermometer has readings</source>
        <translation>das Thermometer dort hat Ablesungen</translation>
    </message>
    <message>
        <source>latitude must lie within -90 and 90 degrees</source>
        <translation>die Breite muss zwischen -90 und 90 Grad liegen</translation>
    </message>
    <message>
        <source>leaves</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <source>line %1 %2</source>
        <translation>Zeile %1 %2</translation>
    </message>
    <message>
        <source>lists &quot;%1&quot; again</source>
        <translation>nennt „%1“ noch einmal</translation>
    </message>
    <message>
        <source>lists &quot;%1&quot;, which is not below data/</source>
        <translation>nennt „%1“, das nicht unter data/ liegt</translation>
    </message>
    <message>
        <source>longest_leaf</source>
        <translation>längstes Blatt</translation>
    </message>
    <message>
        <source>longitude must lie within -180 and 180 degrees</source>
        <translation>die Länge muss zwischen -180 und 180 Grad liegen</translation>
    </message>
    <message>
        <source>minutes and seconds have no sign</source>
        <translation>Minuten und Sekunden haben kein Vorzeichen</translation>
    </message>
    <message>
        <source>names a photo that is no SHA-256 of 64 small hex digits</source>
        <translation>nennt ein Foto, das keine SHA-256 aus 64 kleinen Hexadezimalziffern ist</translation>
    </message>
    <message>
        <source>names a pot of no possible size; a pot has up to 1000 litres</source>
        <translation>nennt einen Topf von unmöglicher Größe; ein Topf hat bis zu 1000 Liter</translation>
    </message>
    <message>
        <source>names a row of %1 that is not there</source>
        <translation>nennt eine Zeile von %1, die es nicht gibt</translation>
    </message>
    <message>
        <source>new_leaves</source>
        <translation>neue Blätter</translation>
    </message>
    <message>
        <source>no crop named &quot;%1&quot; in the reference of seeds; did you mean %2</source>
        <translation>in den Tabellen der Samen gibt es keine Kultur „%1“; gemeint vielleicht %2</translation>
    </message>
    <message>
        <source>no moment: %1</source>
        <translation>kein Zeitpunkt: %1</translation>
    </message>
    <message>
        <source>no number: %1</source>
        <translation>keine Zahl: %1</translation>
    </message>
    <message>
        <source>no object: %1</source>
        <translation>kein Objekt: %1</translation>
    </message>
    <message>
        <source>no pest named &quot;%1&quot;; known are %2</source>
        <translation>es gibt keinen Schädling „%1“; bekannt sind %2</translation>
    </message>
    <message>
        <source>no photo was added to %1 (%2); the plants must be of the household</source>
        <translation>zu %1 wurde kein Foto hinzugefügt (%2); die Pflanzen müssen zum Haushalt gehören</translation>
    </message>
    <message>
        <source>no pixel lies inside of the outline; draw it larger</source>
        <translation>kein Bildpunkt liegt im Umriss; ihn größer zeichnen</translation>
    </message>
    <message>
        <source>no pixels in it</source>
        <translation>ohne Bildpunkte</translation>
    </message>
    <message>
        <source>no plant named &quot;%1&quot; in the reference; did you mean %2</source>
        <translation>in der Liste der Pflanzen gibt es keine „%1“; gemeint vielleicht %2</translation>
    </message>
    <message>
        <source>no plant named &quot;%1&quot; in the reference; give a common or botanical name</source>
        <translation>in der Liste der Pflanzen gibt es keine „%1“; einen gebräuchlichen oder botanischen Namen angeben</translation>
    </message>
    <message>
        <source>no readings: %1</source>
        <translation>keine Messwerte: %1</translation>
    </message>
    <message>
        <source>no sound WebP header</source>
        <translation>kein heiler WebP-Kopf</translation>
    </message>
    <message>
        <source>no station lies within %1 m of the place&apos;s height: temperatures are carried there by the usual lapse</source>
        <translation>keine Station liegt innerhalb von %1 m der Höhe des Ortes: Temperaturen werden mit der üblichen Abnahme dorthin übertragen</translation>
    </message>
    <message>
        <source>no station near gives the spread of its days: frost dates are rough</source>
        <translation>keine Station in der Nähe gibt an, wie ihre Tage streuen: Frostdaten sind grob</translation>
    </message>
    <message>
        <source>no text: %1</source>
        <translation>kein Text: %1</translation>
    </message>
    <message>
        <source>no town &quot;%1&quot; is known; did you mean %2</source>
        <translation>kein Ort „%1“ ist bekannt; gemeint vielleicht %2</translation>
    </message>
    <message>
        <source>no town &quot;%1&quot; is known; name a larger town nearby or write the place as LAT,LON</source>
        <translation>kein Ort „%1“ ist bekannt; einen größeren in der Nähe nennen oder den Ort als BREITE,LÄNGE angeben</translation>
    </message>
    <message>
        <source>no town is known in &quot;%1&quot;; name a country by its two letters or its English name, or a region of it</source>
        <translation>in „%1“ ist kein Ort bekannt; ein Land mit seinen zwei Buchstaben oder seinem englischen Namen nennen, oder eine seiner Regionen</translation>
    </message>
    <message>
        <source>no year has day %1 in month %2</source>
        <translation>kein Jahr hat einen Tag %1 im Monat %2</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>nothing was changed (%1); names must differ, also from those of plants that are gone, and numbers lie in their ranges</source>
        <translation>nichts wurde geändert (%1); Namen müssen sich unterscheiden, auch von denen der Pflanzen, die es nicht mehr gibt, und Zahlen in ihren Grenzen liegen</translation>
    </message>
    <message>
        <source>nothing was divided in %1; a piece&apos;s name is taken, also by plants that are gone, or its spot is not in the household</source>
        <translation>in %1 wurde nichts geteilt; der Name eines Stücks ist vergeben, vielleicht an eine Pflanze, die es nicht mehr gibt, oder sein Platz ist nicht im Haushalt</translation>
    </message>
    <message>
        <source>nothing was kept in %1; a forecast is of a night before it was made, or a temperature lies outside -90 to 60 degrees Celsius</source>
        <translation>in %1 wurde nichts aufgenommen; eine Vorhersage gilt einer Nacht vor ihrem Tag, oder eine Temperatur liegt nicht zwischen -90 und 60 Grad Celsius</translation>
    </message>
    <message>
        <source>nothing was logged in %1; a spot is not in the household, or a temperature lies outside -90 to 60 degrees Celsius</source>
        <translation>in %1 wurde nichts eingetragen; ein Platz ist nicht im Haushalt, oder eine Temperatur liegt nicht zwischen -90 und 60 Grad Celsius</translation>
    </message>
    <message>
        <source>nothing was pinned; its last night lies before its first</source>
        <translation>nichts wurde festgehalten; die letzte Nacht liegt vor der ersten</translation>
    </message>
    <message>
        <source>nothing was pinned; the plant and the spot must be of the household</source>
        <translation>nichts wurde festgehalten; Pflanze und Platz müssen zum Haushalt gehören</translation>
    </message>
    <message>
        <source>nothing was potted in %1; a plant&apos;s name is taken or its spot is not in the household</source>
        <translation>in %1 wurde nichts getopft; der Name einer Pflanze ist vergeben oder ihr Platz ist nicht im Haushalt</translation>
    </message>
    <message>
        <source>nothing was recorded in %1; a plant or spot of it is not in the household</source>
        <translation>in %1 wurde nichts eingetragen; eine Pflanze oder ein Platz davon ist nicht im Haushalt</translation>
    </message>
    <message>
        <source>nothing was recorded in %1; a plant that was measured is not in the household</source>
        <translation>in %1 wurde nichts eingetragen; eine gemessene Pflanze ist nicht im Haushalt</translation>
    </message>
    <message>
        <source>of %1 seeds %2 cannot have come up</source>
        <translation>von %1 Samen können nicht %2 aufgegangen sein</translation>
    </message>
    <message>
        <source>on %1 %2 were counted; count all that have come up so far, those lost since too, or log that day&apos;s count anew</source>
        <translation>am %1 wurden %2 gezählt; alle zählen, die bisher aufgegangen sind, auch die verlorenen, oder jenen Tag neu eintragen</translation>
    </message>
    <message>
        <source>pairs of hexadecimal digits are expected (column %1)</source>
        <translation>erwartet werden Paare hexadezimaler Ziffern (Spalte %1)</translation>
    </message>
    <message>
        <source>pest_clocks.csv: %1 lacks a generation or a crawler stage</source>
        <translation>pest_clocks.csv: bei %1 fehlt eine Generation oder das Stadium der Wanderlarven</translation>
    </message>
    <message>
        <source>photo %1 does not show that plant; assign it to the plant first</source>
        <translation>Foto %1 zeigt diese Pflanze nicht; es zuerst der Pflanze zuordnen</translation>
    </message>
    <message>
        <source>plants</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <source>reading %1</source>
        <translation>Ablesung %1</translation>
    </message>
    <message>
        <source>seedlings cannot be potted before their sowing on %1</source>
        <translation>Sämlinge lassen sich nicht vor ihrer Aussaat am %1 topfen</translation>
    </message>
    <message>
        <source>several towns bear that name: %1 and others; add the region or the country after a comma</source>
        <translation>mehrere Orte heißen so: %1 und andere; nach einem Komma die Region oder das Land angeben</translation>
    </message>
    <message>
        <source>several towns bear that name: %1; add the region or the country after a comma</source>
        <translation>mehrere Orte heißen so: %1; nach einem Komma die Region oder das Land angeben</translation>
    </message>
    <message>
        <source>spots</source>
        <translation>Plätze</translation>
    </message>
    <message>
        <source>station %1 has lows and highs in %2 years of month %3; %4 are needed</source>
        <translation>die Station %1 hat Tiefst- und Höchstwerte in %2 Jahren des Monats %3; gebraucht werden %4</translation>
    </message>
    <message>
        <source>stem</source>
        <translation>Stamm</translation>
    </message>
    <message>
        <source>stopped; %1 was not written</source>
        <translation>angehalten; %1 wurde nicht geschrieben</translation>
    </message>
    <message>
        <source>stopped; nothing was changed</source>
        <translation>angehalten; nichts wurde geändert</translation>
    </message>
    <message>
        <source>stopped; nothing was kept of it</source>
        <translation>angehalten; nichts davon wurde behalten</translation>
    </message>
    <message>
        <source>that area is not grey: its strongest colour has %1 times the light of its weakest, and no lamp makes that of grey; take another, such as the patch of the card</source>
        <translation>diese Fläche ist nicht grau: Ihre stärkste Farbe hat das %1-Fache des Lichts der schwächsten, und so färbt keine Lampe Grau; eine andere nehmen, etwa das Feld der Karte</translation>
    </message>
    <message>
        <source>the %1 is missing</source>
        <translation>„%1“ fehlt</translation>
    </message>
    <message>
        <source>the %1 of %2 lies outside -90 to 60 degrees Celsius</source>
        <translation>„%1“ mit %2 liegt nicht zwischen -90 und 60 Grad Celsius</translation>
    </message>
    <message>
        <source>the JPEG cannot be made (%1)</source>
        <translation>das JPEG lässt sich nicht machen (%1)</translation>
    </message>
    <message>
        <source>the PNG cannot be made (%1)</source>
        <translation>das PNG lässt sich nicht machen (%1)</translation>
    </message>
    <message>
        <source>the calendar has no day %1 in month %2 of %3</source>
        <translation>der Kalender hat keinen Tag %1 im Monat %2 von %3</translation>
    </message>
    <message>
        <source>the cold lines given for %1 contradict each other; they must rise from lethal over damage to the safe night</source>
        <translation>die für %1 angegebenen Kältelinien widersprechen sich; sie müssen von tödlich über Schaden zur sicheren Nacht ansteigen</translation>
    </message>
    <message>
        <source>the copy %1 could not be given its name</source>
        <translation>die Kopie %1 ließ sich nicht so nennen</translation>
    </message>
    <message>
        <source>the copy %1 did not come out sound (%2); the household was left as it is</source>
        <translation>die Kopie %1 ist nicht heil geworden (%2); der Haushalt blieb, wie er ist</translation>
    </message>
    <message>
        <source>the copy %1 differs from what was copied</source>
        <translation>die Kopie %1 weicht von dem ab, was kopiert wurde</translation>
    </message>
    <message>
        <source>the curve finds no best fit from its start</source>
        <translation>die Kurve findet von ihrem Anfang aus keine beste Lage</translation>
    </message>
    <message>
        <source>the day&apos;s high is below the night&apos;s low; exchange them</source>
        <translation>der Höchstwert des Tages liegt unter dem Tiefstwert der Nacht; beide tauschen</translation>
    </message>
    <message>
        <source>the density must lie within 0.2 and 3 grams a millilitre</source>
        <translation>die Dichte muss zwischen 0,2 und 3 Gramm je Milliliter liegen</translation>
    </message>
    <message>
        <source>the depth of an overhang</source>
        <translation>die Tiefe eines Überstands</translation>
    </message>
    <message>
        <source>the direction a spot faces</source>
        <translation>die Richtung, in die ein Platz schaut,</translation>
    </message>
    <message>
        <source>the disk may be full</source>
        <translation>vielleicht ist der Datenträger voll</translation>
    </message>
    <message>
        <source>the distance from the window or opening</source>
        <translation>der Abstand vom Fenster oder von der Öffnung</translation>
    </message>
    <message>
        <source>the distance sideways of the window&apos;s middle</source>
        <translation>der seitliche Abstand der Fenstermitte</translation>
    </message>
    <message>
        <source>the end of a plant</source>
        <translation>das Ende einer Pflanze</translation>
    </message>
    <message>
        <source>the evening&apos;s temperature is below the night&apos;s low; exchange them</source>
        <translation>die Temperatur am Abend liegt unter dem Tiefstwert der Nacht; beide tauschen</translation>
    </message>
    <message>
        <source>the feed %1 holds no nitrogen, so it cannot be measured by it; follow its label</source>
        <translation>der Dünger %1 enthält keinen Stickstoff und lässt sich daher nicht danach bemessen; seinem Etikett folgen</translation>
    </message>
    <message>
        <source>the folder %1 cannot be made (%2); choose one where you may write</source>
        <translation>der Ordner %1 lässt sich nicht anlegen (%2); einen wählen, in den geschrieben werden darf</translation>
    </message>
    <message>
        <source>the folder %1 cannot be made for a copy; the household was left as it is</source>
        <translation>der Ordner %1 lässt sich für eine Kopie nicht anlegen; der Haushalt blieb, wie er ist</translation>
    </message>
    <message>
        <source>the grey area is too bright or too dark to tell the colour of the light; take the photo in even light, or name another area</source>
        <translation>die graue Fläche ist zu hell oder zu dunkel, um die Farbe des Lichts zu erkennen; das Foto in gleichmäßigem Licht aufnehmen oder eine andere Fläche angeben</translation>
    </message>
    <message>
        <source>the height of a window or opening</source>
        <translation>die Höhe eines Fensters oder einer Öffnung</translation>
    </message>
    <message>
        <source>the height of the place is not given; %1 m is taken, as high as the towns near it lie</source>
        <translation>die Höhe des Ortes ist nicht angegeben; genommen werden %1 m, so hoch wie die Orte in der Nähe</translation>
    </message>
    <message>
        <source>the height of the place is not given; %1 m, the weighted height of its stations, is taken</source>
        <translation>die Höhe des Ortes ist nicht angegeben; genommen werden %1 m, die gewichtete Höhe seiner Stationen</translation>
    </message>
    <message>
        <source>the height of the wall behind</source>
        <translation>die Höhe der Wand dahinter</translation>
    </message>
    <message>
        <source>the height of what stands opposite</source>
        <translation>die Höhe dessen, was gegenüber steht,</translation>
    </message>
    <message>
        <source>the high is below the low</source>
        <translation>der Höchstwert liegt unter dem Tiefstwert</translation>
    </message>
    <message>
        <source>the hours of cold must lie within 0 and 72</source>
        <translation>die Stunden der Kälte müssen zwischen 0 und 72 liegen</translation>
    </message>
    <message>
        <source>the household %1 cannot be made (%2); choose a folder where you may write</source>
        <translation>der Haushalt %1 lässt sich nicht anlegen (%2); einen Ordner wählen, in den geschrieben werden darf</translation>
    </message>
    <message>
        <source>the household %1 cannot be made (%2); names must differ and numbers lie in their ranges</source>
        <translation>der Haushalt %1 lässt sich nicht anlegen (%2); Namen müssen sich unterscheiden und Zahlen in ihren Grenzen liegen</translation>
    </message>
    <message>
        <source>the household is damaged (a change of its rows cannot be read); restore a backup</source>
        <translation>der Haushalt ist beschädigt (eine Änderung seiner Zeilen lässt sich nicht lesen); eine Sicherung zurückholen</translation>
    </message>
    <message>
        <source>the household&apos;s own record is not used: %1</source>
        <translation>die eigene Aufzeichnung des Haushalts wird nicht benutzt: %1</translation>
    </message>
    <message>
        <source>the journal tells of it</source>
        <translation>das Tagebuch berichtet von ihm</translation>
    </message>
    <message>
        <source>the last night %1 must be the first, %2, or up to a year later</source>
        <translation>die letzte Nacht %1 muss die erste, %2, oder bis zu einem Jahr später sein</translation>
    </message>
    <message>
        <source>the latitude %1 in %2 lies outside -90 to 90 degrees</source>
        <translation>die Breite %1 in %2 liegt nicht zwischen -90 und 90 Grad</translation>
    </message>
    <message>
        <source>the latitude %1 in %2 lies outside -90 to 90 degrees; the latitude comes first</source>
        <translation>die Breite %1 in %2 liegt nicht zwischen -90 und 90 Grad; die Breite kommt zuerst</translation>
    </message>
    <message>
        <source>the light that %1 needs to survive is above what it needs to thrive</source>
        <translation>das Licht, das %1 zum Überleben braucht, liegt über dem, was zum Gedeihen nötig ist</translation>
    </message>
    <message>
        <source>the longitude %1 in %2 lies outside -180 to 180 degrees; count west as negative</source>
        <translation>die Länge %1 in %2 liegt nicht zwischen -180 und 180 Grad; Westen ist negativ</translation>
    </message>
    <message>
        <source>the low is missing</source>
        <translation>der Tiefstwert fehlt</translation>
    </message>
    <message>
        <source>the map&apos;s radius must lie within 1 and 15,000 km</source>
        <translation>der Umkreis der Karte muss zwischen 1 und 15.000 km liegen</translation>
    </message>
    <message>
        <source>the measurement %1 of %2 %3</source>
        <translation>die Messung „%1“ vom %2 %3</translation>
    </message>
    <message>
        <source>the mix must be above 0 and at most 20 percent of the water; oils and soaps for leaves are mixed at 0.5 to 2</source>
        <translation>die Mischung muss über 0 und höchstens bei 20 Prozent des Wassers liegen; Öle und Seifen für Blätter werden mit 0,5 bis 2 gemischt</translation>
    </message>
    <message>
        <source>the mix&apos;s temperature must lie within -10 and 60 degrees Celsius</source>
        <translation>die Temperatur der Erde muss zwischen -10 und 60 Grad Celsius liegen</translation>
    </message>
    <message>
        <source>the name of a town needs a letter; write it as Vienna or Springfield, Missouri</source>
        <translation>der Name eines Ortes braucht einen Buchstaben; in der Form Wien oder Springfield, Missouri angeben</translation>
    </message>
    <message>
        <source>the nearest station is %1 km away</source>
        <translation>die nächste Station ist %1 km entfernt</translation>
    </message>
    <message>
        <source>the nearest station is %1 km away: the answer is weak</source>
        <translation>die nächste Station ist %1 km entfernt: die Antwort ist schwach</translation>
    </message>
    <message>
        <source>the night must be 3 to 21 hours long</source>
        <translation>die Nacht muss 3 bis 21 Stunden lang sein</translation>
    </message>
    <message>
        <source>the night of %1 is not over yet</source>
        <translation>die Nacht vom %1 ist noch nicht vorbei</translation>
    </message>
    <message>
        <source>the night of %1 stands in the file twice for one spot; keep one row for each</source>
        <translation>die Nacht vom %1 steht für einen Platz zweimal in der Datei; für jeden eine Zeile behalten</translation>
    </message>
    <message>
        <source>the night of %1 stands in the file twice; keep one row for each night</source>
        <translation>die Nacht vom %1 steht zweimal in der Datei; für jede Nacht eine Zeile behalten</translation>
    </message>
    <message>
        <source>the night&apos;s low must lie within -60 and 40 C</source>
        <translation>der Tiefstwert der Nacht muss zwischen -60 und 40 °C liegen</translation>
    </message>
    <message>
        <source>the nights of a room lie within -60 and 60 degrees Celsius (%1)</source>
        <translation>die Nächte eines Raums liegen zwischen -60 und 60 Grad Celsius (%1)</translation>
    </message>
    <message>
        <source>the nitrogen must lie within 1 and 2000 ppm; pots at home get 50 to 250</source>
        <translation>der Stickstoff muss zwischen 1 und 2000 ppm liegen; Töpfe zu Hause bekommen 50 bis 250</translation>
    </message>
    <message>
        <source>the number of panes</source>
        <translation>die Anzahl der Scheiben</translation>
    </message>
    <message>
        <source>the own record %1 was kept %2 km away and %3 m off in height; it speaks for places within %4 km and %5 m</source>
        <translation>die eigene Aufzeichnung %1 wurde %2 km entfernt und %3 m höher oder tiefer geführt; sie gilt für Orte innerhalb von %4 km und %5 m</translation>
    </message>
    <message>
        <source>the packed year must lie within 1950 and %1</source>
        <translation>das Jahr der Abpackung muss zwischen 1950 und %1 liegen</translation>
    </message>
    <message>
        <source>the picture would have over %1 million pixels; choose fewer photos or a smaller height</source>
        <translation>das Bild hätte über %1 Millionen Pixel; weniger Fotos oder eine kleinere Höhe wählen</translation>
    </message>
    <message>
        <source>the place lies %1 from the sea, its stations mostly %2: its nights are usually colder than they say</source>
        <translation>der Ort liegt %1 vom Meer, seine Stationen meist %2: seine Nächte sind gewöhnlich kälter, als sie sagen</translation>
    </message>
    <message>
        <source>the place lies %1 from the sea, its stations mostly %2: its nights are usually milder than they say</source>
        <translation>der Ort liegt %1 vom Meer, seine Stationen meist %2: seine Nächte sind gewöhnlich milder, als sie sagen</translation>
    </message>
    <message>
        <source>the plant &quot;%1&quot;</source>
        <translation>die Pflanze „%1“</translation>
    </message>
    <message>
        <source>the plant &quot;%1&quot; is no longer there</source>
        <translation>die Pflanze „%1“ ist nicht mehr da</translation>
    </message>
    <message>
        <source>the plants of each group changed alike to the last digit; nothing can be said of chance</source>
        <translation>die Pflanzen jeder Gruppe haben sich bis zur letzten Stelle gleich verändert; über den Zufall lässt sich nichts sagen</translation>
    </message>
    <message>
        <source>the points do not bend towards an end</source>
        <translation>die Punkte biegen nicht auf ein Ende zu</translation>
    </message>
    <message>
        <source>the pot of %1 must weigh more than 0 kg</source>
        <translation>der Topf von %1 muss mehr als 0 kg wiegen</translation>
    </message>
    <message>
        <source>the pots that fit at %1 must be a number from 0 to %2, not %3</source>
        <translation>die Töpfe, die an %1 passen, müssen eine Zahl von 0 bis %2 sein, nicht %3</translation>
    </message>
    <message>
        <source>the record was not kept in %1 (%2); it needs a name, a height within -500 and 9000 m and possible values</source>
        <translation>die Aufzeichnung wurde nicht in %1 aufgenommen (%2); sie braucht einen Namen, eine Höhe zwischen -500 und 9000 m und mögliche Werte</translation>
    </message>
    <message>
        <source>the row breaks a rule of the table (%1)</source>
        <translation>die Zeile verstößt gegen eine Regel der Tabelle (%1)</translation>
    </message>
    <message>
        <source>the row has not the %1 fields that the head names</source>
        <translation>die Zeile hat nicht die %1 Felder, die der Kopf nennt</translation>
    </message>
    <message>
        <source>the row names no station</source>
        <translation>die Zeile nennt keine Station</translation>
    </message>
    <message>
        <source>the scale&apos;s length must lie within 0.1 and 1000 cm</source>
        <translation>die Länge des Maßstabs muss zwischen 0,1 und 1000 cm liegen</translation>
    </message>
    <message>
        <source>the schema must be a whole number from 1</source>
        <translation>das Schema muss eine ganze Zahl ab 1 sein</translation>
    </message>
    <message>
        <source>the share of light let through</source>
        <translation>der Anteil des durchgelassenen Lichts</translation>
    </message>
    <message>
        <source>the shares of the feed %1 must be 0 or more and at most 100 together</source>
        <translation>die Anteile des Düngers %1 müssen 0 oder mehr und zusammen höchstens 100 sein</translation>
    </message>
    <message>
        <source>the sill&apos;s height above the leaves</source>
        <translation>die Höhe der Fensterbank über den Blättern</translation>
    </message>
    <message>
        <source>the sky is &quot;%1&quot;; write clear or cloudy</source>
        <translation>der Himmel ist „%1“; clear oder cloudy schreiben</translation>
    </message>
    <message>
        <source>the sowing was not recorded in %1; its spot is not in the household</source>
        <translation>die Aussaat wurde nicht in %1 eingetragen; ihr Platz ist nicht im Haushalt</translation>
    </message>
    <message>
        <source>the spot &quot;%1&quot;</source>
        <translation>der Platz „%1“</translation>
    </message>
    <message>
        <source>the spot &quot;%1&quot; is no longer there</source>
        <translation>der Platz „%1“ ist nicht mehr da</translation>
    </message>
    <message>
        <source>the spot cannot be taken back: %1</source>
        <translation>der Platz lässt sich nicht zurücknehmen: %1</translation>
    </message>
    <message>
        <source>the spot is no longer there</source>
        <translation>der Platz ist nicht mehr da</translation>
    </message>
    <message>
        <source>the stated germination must lie above 0 and at most at 100 percent</source>
        <translation>die angegebene Keimung muss über 0 und höchstens bei 100 Prozent liegen</translation>
    </message>
    <message>
        <source>the system does not say its time zone; name one, such as Europe/Berlin</source>
        <translation>das System sagt seine Zeitzone nicht; eine nennen, etwa Europe/Berlin</translation>
    </message>
    <message>
        <source>the system has no list of time zones; install the package tzdata</source>
        <translation>das System hat keine Liste der Zeitzonen; das Paket tzdata installieren</translation>
    </message>
    <message>
        <source>the tray has %1 seedlings left to pot, not %2</source>
        <translation>die Schale hat noch %1 Sämlinge zum Topfen, nicht %2</translation>
    </message>
    <message>
        <source>the two points of a length must lie apart</source>
        <translation>die zwei Punkte einer Länge müssen auseinander liegen</translation>
    </message>
    <message>
        <source>the two points of the scale must lie apart</source>
        <translation>die zwei Punkte des Maßstabs müssen auseinander liegen</translation>
    </message>
    <message>
        <source>the values are not of the form that GHCN-Daily has</source>
        <translation>die Werte haben nicht die Form von GHCN-Daily</translation>
    </message>
    <message>
        <source>the values look like tenths of a degree taken for whole ones; divide them by ten first</source>
        <translation>die Werte sehen nach Zehntelgrad aus, die für ganze genommen wurden; sie zuerst durch zehn teilen</translation>
    </message>
    <message>
        <source>the values look like whole degrees taken for tenths; write them with a decimal point</source>
        <translation>die Werte sehen nach ganzen Grad aus, die für Zehntel genommen wurden; mit Dezimalpunkt schreiben</translation>
    </message>
    <message>
        <source>the width of a window or opening</source>
        <translation>die Breite eines Fensters oder einer Öffnung</translation>
    </message>
    <message>
        <source>the wind is &quot;%1&quot;; write calm or windy, or use the column wind_m_s</source>
        <translation>der Wind ist „%1“; calm oder windy schreiben oder die Spalte wind_m_s benutzen</translation>
    </message>
    <message>
        <source>the wind is negative</source>
        <translation>der Wind ist negativ</translation>
    </message>
    <message>
        <source>the year %1 lies outside 1901 to 2199</source>
        <translation>das Jahr %1 liegt nicht zwischen 1901 und 2199</translation>
    </message>
    <message>
        <source>the zone %1 has no %2 (its clocks went past it); take another day</source>
        <translation>die Zone %1 hat keinen %2 (ihre Uhren übersprangen ihn); einen anderen Tag nehmen</translation>
    </message>
    <message>
        <source>there are no coast lines to measure to</source>
        <translation>es gibt keine Küstenlinien, zu denen zu messen wäre</translation>
    </message>
    <message>
        <source>there is a lot &quot;%1&quot; already; give this one another name</source>
        <translation>es gibt schon ein Tütchen „%1“; diesem einen anderen Namen geben</translation>
    </message>
    <message>
        <source>there is a plant &quot;%1&quot; already; give this one another name</source>
        <translation>es gibt schon eine Pflanze „%1“; dieser einen anderen Namen geben</translation>
    </message>
    <message>
        <source>there is a spot &quot;%1&quot; already; give this one another name</source>
        <translation>es gibt schon einen Platz „%1“; diesem einen anderen Namen geben</translation>
    </message>
    <message>
        <source>there is no coordinate system %1 in PROJ&apos;s list; check the code or write the place as LAT,LON</source>
        <translation>in der Liste von PROJ gibt es kein Koordinatensystem %1; die Kennzahl prüfen oder den Ort als BREITE,LÄNGE angeben</translation>
    </message>
    <message>
        <source>there is no file %1</source>
        <translation>es gibt keine Datei %1</translation>
    </message>
    <message>
        <source>there is no file or folder %1</source>
        <translation>es gibt keine Datei und keinen Ordner %1</translation>
    </message>
    <message>
        <source>there is no folder %1</source>
        <translation>es gibt keinen Ordner %1</translation>
    </message>
    <message>
        <source>there is no photo to show</source>
        <translation>es gibt kein Foto, das zu zeigen wäre</translation>
    </message>
    <message>
        <source>there is no time zone &quot;%1&quot;; names look like Europe/Berlin or America/Denver</source>
        <translation>es gibt keine Zeitzone „%1“; Namen sehen aus wie Europe/Berlin oder America/Denver</translation>
    </message>
    <message>
        <source>this is no zip file, or it is torn or was altered</source>
        <translation>das ist keine Zip-Datei, oder sie ist unvollständig oder wurde verändert</translation>
    </message>
    <message>
        <source>unknown type of column</source>
        <translation>unbekannte Art von Spalte</translation>
    </message>
    <message>
        <source>unpacks to %1 bytes instead of %2</source>
        <translation>ergibt ausgepackt %1 Bytes statt %2</translation>
    </message>
    <message>
        <source>unpacks to more than its %1 bytes</source>
        <translation>ergibt ausgepackt mehr als die %1 Bytes, die es hat</translation>
    </message>
    <message>
        <source>width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>years of history</source>
        <translation>Jahre mit Einträgen</translation>
    </message>
    <message>
        <source>yellow_share</source>
        <translation>gelber Anteil</translation>
    </message>
</context>
</TS>
