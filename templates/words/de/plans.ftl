### Wie gut ein Zuschnittplan ist, gesagt von `furbelow cutting`. $gap: der Anteil seiner Kosten, den ein anderer Plan sparen könnte, in Hundertsteln.

plan-by-area = Nur nach der Fläche, ob es sich legen lässt oder nicht.
plan-first-fit = Das Längste zuerst gelegt, jedes Teil an die erste Stelle mit Platz.
plan-proven = Bewiesen: Kein Plan mit bis zu { $sections } Abschnitten entlang des Ballens kostet bei diesen Preisen weniger.
plan-proven-straight = Bewiesen: Kein Plan mit bis zu { $sections } Abschnitten entlang des Ballens, in Streifenbahnen oder mit frei gelegten Bahnen, die gerade Schnitte trennen, kostet bei diesen Preisen weniger.
plan-proven-panels = Bewiesen: Kein Plan mit bis zu { $sections } Abschnitten entlang des Ballens, in Streifenbahnen oder mit frei gelegten Bahnen, kostet bei diesen Preisen weniger.
# Die Werkstatt begrenzt Verbindungsnähte und Abschnitte.
plan-proven-within = Bewiesen: Innerhalb der Grenzen kostet kein Plan mit bis zu { $sections } Abschnitten entlang des Ballens bei diesen Preisen weniger.
plan-proven-within-straight = Bewiesen: Innerhalb der Grenzen kostet kein Plan mit bis zu { $sections } Abschnitten entlang des Ballens, in Streifenbahnen oder mit frei gelegten Bahnen, die gerade Schnitte trennen, bei diesen Preisen weniger.
plan-proven-within-panels = Bewiesen: Innerhalb der Grenzen kostet kein Plan mit bis zu { $sections } Abschnitten entlang des Ballens, in Streifenbahnen oder mit frei gelegten Bahnen, bei diesen Preisen weniger.
plan-best-found = Der beste Plan, der im erlaubten Aufwand gefunden wurde; ein anderer könnte höchstens { $gap }{ "\u00A0" }% sparen.
plan-best-of-class = Der beste von mehreren Plänen für den ganzen Kurs; ein anderer könnte höchstens { $gap }{ "\u00A0" }% sparen.
plan-after-each-other = Pläne hintereinander auf einem Ballen: Kein gemeinsamer Plan, der gefunden wurde, kostet weniger.
plan-shortest-proven = Bewiesen: Mit so wenigen Verbindungsnähten und Abschnitten ist kein Plan kürzer.
plan-shortest-found = Der kürzeste Plan, der im erlaubten Aufwand gefunden wurde; ein anderer könnte höchstens { $gap }{ "\u00A0" }% sparen.
