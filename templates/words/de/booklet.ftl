# Ein Heft: eine Anleitung für alle Größen eines Modells.

booklet-whose = Größen { $sizes }
booklet-range = { $first } bis { $last }
# Vor einem Text, der für einige Größen gilt.
# $count (number): wie viele Größen.
booklet-version = { $count ->
    [1] Größe { $sizes }:
   *[other] Größen { $sizes }:
}
booklet-only = { $count ->
    [1] Nur für Größe { $sizes }.
   *[other] Nur für die Größen { $sizes }.
}

booklet-how = Die eigene Größe nach den Maßen wählen und in jeder Tabelle einkreisen. Wo in einem Satz ein Buchstabe steht, steht die eigene Zahl hinter diesem Buchstaben in der Tabelle „Die eigenen Zahlen“ desselben Arbeitsgangs, in der Spalte der Größe. Die Buchstaben beginnen in jedem Arbeitsgang von vorn. Die Zahl vor Beginn auf die Linie schreiben.
booklet-measure-told = Über dünner Kleidung, das Maßband waagerecht und nicht straff; eine zweite Person liest ab. Die Größe nehmen, der die eigenen Maße am nächsten kommen; weichen sie um mehr als eine Fingerbreite ab, eine eigene Anleitung machen lassen.
booklet-ring = Die eigene Größe einkreisen
booklet-numbers = Die eigenen Zahlen
booklet-in-head = Kopf
booklet-in-drawing = Zeichnung, { $sentence }
# How far a number may be off. $what: which number.
booklet-off = { $what }: Toleranz
booklet-part-of-drawing = in der Zeichnung „{ $drawing }“

booklet-cut-for = { $count ->
    [1] Zuschneiden, Größe { $sizes }
   *[other] Zuschneiden, Größen { $sizes }
}
booklet-cut-all = Zuschneiden, alle Größen
booklet-cut-told = Jede Größe wird nach ihrem eigenen Plan zugeschnitten. Den eigenen suchen und die anderen übergehen.
booklet-plan-for = { $count ->
    [1] Plan der Arbeitstage, Größe { $sizes }
   *[other] Plan der Arbeitstage, Größen { $sizes }
}
booklet-width = { $cloth }, { $width } breit
booklet-widths = Derselbe Stoff nach Breite
booklet-widths-told = Der Zuschnitt ist für die Breite in der Liste oben geplant. Für eine andere Breite die Anleitung der eigenen Größe machen lassen.

booklet-drawn-for = Gezeichnet für Größe { $size }.
booklet-drawn-of = { $count ->
    [1] Dies gilt für Größe { $sizes }.
   *[other] Dies gilt für die Größen { $sizes }.
}

booklet-drawn-each = Dasselbe für jede Größe
booklet-drawings-for = Zeichnungen, Größe { $size }

booklet-proved = Jede Größe wurde geprüft, bevor sie geschrieben wurde.

# Auf dem Bildschirm, wo eine Größe gewählt wird und ihre Zahlen in den Sätzen stehen.
booklet-choose = Die eigene Größe
booklet-every = Alle Größen
booklet-chosen = Größe { $size }: Ihre Zahlen stehen in den Sätzen, und was nicht für sie gilt, ist verborgen.
booklet-not-chosen = Die eigene Größe wählen, dann stehen ihre Zahlen in den Sätzen. Die Wahl bleibt allein auf diesem Gerät.
