### Streifen, die in Stücken zugeschnitten sind: jeder mit seinen Stücken und Verbindungsnähten, wie der Zuschnittplan sie angibt.
### $mark: die Nummer des Teils im Zuschnittplan. $label (Text): der Name, den die Schneiderin ihm gibt.
### $strips: die Streifen, die gleich zugeschnitten sind, etwa „A1 und A2“.

figure-strips-piece = Teil { $mark }, { $label }
figure-strips-alike = { $joins ->
    [0] { $strips }: ganz, keine Verbindungsnaht
    [one] { $strips }: { $joins } Verbindungsnaht
   *[other] { $strips }: { $joins } Verbindungsnähte
 }
figure-strips-note = Längen in einem Maßstab, Nähte inbegriffen; Höhen nicht.
# Ein Satz für alle Streifen, die gleich zugeschnitten sind.
figure-strips-alt = { $joins ->
    [0] { $strips } von { PIECE($piece) }: ganz, keine Verbindungsnaht, { $segments }.
    [one] { $strips } von { PIECE($piece) }: { $joins } Verbindungsnaht, { $segments }.
   *[other] { $strips } von { PIECE($piece) }: { $joins } Verbindungsnähte, { $segments }.
 }
figure-strips-caption = Die Stücke jedes Streifens: die Enden zusammennähen, die einander gegenüberliegen.
