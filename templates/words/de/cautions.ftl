### Vorsicht: Jeder Hinweis steht vor dem ersten Schritt, den er betrifft.

caution-pins = Jede Stecknadel herausziehen, bevor sie unter die Nadel kommt, und in die Dose zurückzählen.
caution-clips = Jede Klammer abnehmen, bevor sie unter die Nadel kommt, und in die Dose zurückzählen.
caution-hand-needle = Beim Nähen von Hand einen Fingerhut tragen; die Nadel im Nadelkissen ablegen, nie in der Kleidung.
caution-fingers = Die Finger neben dem Nähfuß halten, nie vor der Nadel.
caution-knives = Die Messer der Overlock schneiden Finger ebenso wie Stoff: Hände neben den Nähfuß, nie davor.
caution-needle-teeth = Eine Nadel, die auf Zähnchen oder Stopper des Reißverschlusses trifft, bricht und springt: dort das Handrad von Hand drehen und eine Brille tragen. Vor dem Schieber mit der Nadel im Stoff anhalten, den Fuß heben, den Schieber vorbeiziehen und weiternähen.
caution-ripper = Ein Nahttrenner rutscht ab: an jedem Ende des Schlitzes eine Stecknadel quer einstecken und auf eine Nadel zu schneiden, nie auf die Hand zu.
caution-ripper-row = Ein Nahttrenner rutscht ab: die Arbeit auf den Tisch legen und ihn an der Naht entlang schieben, nie auf die Hand zu.
caution-awl = Eine Ahle geht durch eine Hand wie durch Stoff: auf dem Tisch in Kork oder ein gefaltetes Handtuch stechen, nie gegen die Handfläche und nie über dem Schoß.
caution-cutting = Weg vom Körper und von der anderen Hand schneiden, Schere und Rollschneider bei jedem Ablegen schließen oder abdecken.
caution-shears = Scheren schneiden Finger ebenso wie Stoff: die andere Hand weit von den Klingen weghalten.
caution-iron = Bügeleisen und Dampf verbrennen die Haut: Finger weg vom Bruch, das Eisen zwischendurch aufstellen und ausschalten, wenn es mit etwas anderem weitergeht.
caution-iron-marks = Hitze fixiert manche Stifte und wachshaltige Kreiden für immer: Kreide, Stift und Bügeleisen zuerst auf einem Rest probieren, und eine Markierung entfernen, bevor das Eisen in ihre Nähe kommt, außer sie liegt in der Nahtzugabe.
# Der Stoff schmilzt: Nylon, Acetat oder eine unbekannte Faser.
caution-iron-melts = { caution-iron } Nylon und Tüll schmelzen unter dem heißen Eisen und kleben an der Haut: geringe Hitze, kein Dampf, ein trockenes Bügeltuch, und nie am Körper bügeln.

## Nadeln und Kordeln an der Taille

caution-safety-pin = Die Sicherheitsnadel schließen, bevor sie losgelassen wird.
caution-safety-pin-last = Die Sicherheitsnadel schließen, bevor sie losgelassen wird, und die letzte Nadel aus dem Tunnel nehmen.
caution-no-flame-on-ends = Enden nie mit einer Flamme verschmelzen: Nylon und Polyester tropfen, verbrennen die Haut und setzen Tüll in Brand. Stiche, ein Bruch oder Textilkleber halten ebenso gut. Textilkleber gibt Dämpfe ab: ein Fenster öffnen, von Flammen fernhalten und trocknen lassen.
caution-cords = Kordeln verfangen sich in Türen, Aufzügen und Rutschen. Bei Kindern bis 14 Jahre dürfen die Enden an der Taille höchstens { $open } herabhängen, wenn das Kleidungsstück offen liegt, und { $drawn-in }, wenn es zusammengezogen ist (EN 14682:2007; eine neuere Ausgabe ist in Kraft). Unterhalb des Schritts gar keine Kordel, und keine am Hals oder hinten gebunden. In den Vereinigten Staaten dürfen die Enden an Jacken und Oberteilen bei ganz geöffnetem Tunnel höchstens { $united-states } herausschauen, ohne Knoten oder Stopper (ASTM F1816-18). Örtliche Sicherheitsvorschriften gehen dieser Anleitung vor.
caution-tight-elastic = Zu enges Gummiband staut das Blut. Zwei Finger müssen darunterpassen, und es darf keine tiefe Druckstelle hinterlassen. Ein Kind sagt es vielleicht nicht: nach einigen Minuten nachsehen und sofort ausziehen, wo die Haut weiß wird oder kribbelt.
caution-loops = Aufhänger hängen nur innen und flach am Kleidungsstück: An einem Kind bleibt ein freier Aufhänger hängen.
caution-small-parts = An einem losen Verschluss kann ein kleines Kind ersticken. Jeden so annähen, dass er sich auch bei kräftigem Ziehen nicht bewegt, oder Bindebänder oder Gummiband nehmen.
caution-steam = Dampf verbrüht: die andere Hand weghalten und das Eisen zwischen den Nähten aufstellen. Nylon und Tüll laufen ein und schmelzen: zuerst auf dem Probestreifen ausprobieren, aus größerem Abstand.

## Bögen und Reifen

caution-arc = Einen Bogen in kurzen Schnitten schneiden, die Schere flach auf dem Tisch, die andere Hand weit hinter den Klingen.
caution-short-bites = In kurzen Schnitten schneiden, die Schere flach auf dem Tisch, die andere Hand weit von den Klingen entfernt.
caution-boning = Beim Schneiden von Reifenband eine Schutzbrille tragen: Die Enden springen weg. Jedes Ende vor dem Einziehen abdecken oder rund machen; ein blankes Ende arbeitet sich durch Stoff und Haut. Ein Reifen kippt beim Sitzen hoch, wird auf Treppen zur Stolperfalle und schwingt in Flammen: vorher ausprobieren.

## Vor der Arbeit: Vorsicht, die das ganze Kleidungsstück betrifft

caution-garment-flame-sheer = Tüll und andere durchsichtige Stoffe fangen in einem Augenblick Feuer und verbrennen in Sekunden, nach dem Waschen noch schneller. Ein weiter Rock steht vom Körper ab und kann eine Flamme erreichen, bevor man es merkt. Das Kleidungsstück von Kerzen, offenem Feuer, Heizgeräten, Gasflammen und Zigaretten fernhalten, beim Nähen und beim Tragen. Ein Etikett einnähen: VON FEUER FERNHALTEN. { caution-garment-finish } { caution-garment-local }
caution-garment-flame-light = Leichte Stoffe aus Baumwolle, Leinen und Viskose fangen so schnell Feuer wie Tüll und verbrennen so schnell. Ein weiter Rock steht vom Körper ab und kann eine Flamme erreichen, bevor man es merkt. Das Kleidungsstück von Kerzen, offenem Feuer, Heizgeräten, Gasflammen und Zigaretten fernhalten, beim Nähen und beim Tragen. Ein Etikett einnähen: VON FEUER FERNHALTEN. { caution-garment-finish } { caution-garment-local }
caution-garment-flame = Ein weiter Rock steht vom Körper ab und kann eine Flamme erreichen, bevor man es merkt: von Kerzen, Feuer und Heizgeräten fernbleiben. { caution-garment-local }
# Nur in den beiden darüber gesagt.
caution-garment-finish = Eine Ausrüstung gegen Feuer wäscht sich aus: fragen, wie viele Wäschen sie hält, und sie rechtzeitig erneuern lassen.
caution-garment-local = Örtliche Vorschriften und das Wort einer zugelassenen Fachperson, bei Bühne oder Saal der Brandschutzbeauftragten, gehen dieser Anleitung vor.
caution-garment-blades = Stoffschere und Rollschneider: vom Körper weg schneiden, die Klinge bei jedem Ablegen schließen oder abdecken, Schuhe anbehalten.
caution-garment-needles = Stecknadeln und Nadeln abzählen und zurückzählen. Das fertige Kleidungsstück nach vergessenen Stecknadeln absuchen, bevor jemand es anzieht. Vor dem Einfädeln oder Wechseln einer Nadel den Fuß vom Pedal nehmen.
caution-garment-needles-clips = Stecknadeln, Klammern und Nähnadeln abzählen, beim Herausnehmen und beim Zurücklegen. Das fertige Stück nach vergessenen absuchen, bevor es jemand anzieht. Den Fuß vom Pedal nehmen, bevor eine Nadel eingefädelt oder gewechselt wird.
caution-garment-hem = Ein langer Saum bringt auf Treppen und Bühnen zum Stolpern, eine Schleppe gerät ins Feuer. Vor dem ersten Tragen damit eine Treppe hinauf- und hinuntergehen.
caution-garment-child = Für ein Kind unter 14 Jahren: keine Kordel, kein Bandende und keinen Aufhänger an der Taille oder unter dem Saum hängen lassen, kleine Teile fest annähen. Für Kinderkleidung und Nachtwäsche gelten eigene Vorschriften; vor dem Verkaufen oder Verleihen danach fragen.
caution-train = Eine Schleppe bringt zu Fall, wer sie trägt und wer dahinter geht. Vor Treppen, auf dunkler Bühne und in der Nähe von Maschinen hochbinden oder tragen.
caution-bustle-cords = Kordeln hinten am Rock geraten in Türen und unter Räder. Nicht an einen Kinderrock; dort mit kurzen Schlaufen aufhängen.
