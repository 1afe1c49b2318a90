### Was zu kaufen ist: Mengen, Beschreibungen und wofür jedes Material ist.

## Mengen

buy-volume = { $amount }{ "\u00A0" }ml
# Ein Pulver, das gewogen wird.
buy-mass = { $amount }{ "\u00A0" }g
# $length: Faden auf einer Rolle.
buy-reels = { $reels ->
    [one] { $reels } Rolle zu { $length }
   *[other] { $reels } Rollen zu { $length }
 }
# Was einzeln angenäht wird: Reißverschlüsse, Ösen, Knöpfe.
buy-pieces = { $pieces } Stück

## Beschreibungen: was hinter dem Namen eines Materials steht

buy-long = { $length } lang
buy-wide = { $width } breit
# Of thread whose colour the spec does not say.
buy-colour-as = in der Farbe des Stoffs ({ $cloth })
buy-stretches = dehnbar um mindestens { $stretch }
# $class: was die Fasern annehmen; any, wo keine Klasse von Farbe für alle ist. $fibres (Liste)
buy-dye = { $class ->
    [acid] Säurefarbstoff, für { $fibres }
    [disperse] Dispersionsfarbstoff, für { $fibres }
    [reactive] Reaktivfarbstoff, für { $fibres }
    [direct] Direktfarbstoff, für { $fibres }
   *[any] Farbe für { $fibres }
 }

# Ein Verschluss, den die Vorgabe nicht nennt. $kind
fastener = { $kind ->
    [hook-and-bar] Haken mit Steg
    [hook-and-eye] Haken mit Öse
    [snap] Druckknopf
    [flat-button] flacher Knopf
   *[button] Knopf
 }

## Wofür es ist

# Faden.
use-seams = alle Nähte
# Hinter der Angabe, wofür der Faden ist.
use-reels-at-once = { $sewing ->
    [0] die Overlock braucht { $reels } Rollen gleichzeitig
   *[other] die Overlock braucht { $reels } Rollen gleichzeitig und die Nähmaschine daneben noch eine
 }
use-bobbins = { $bobbins ->
    [one] zuerst { $bobbins } Spule aufspulen
   *[other] zuerst { $bobbins } Spulen aufspulen
 }
use-trim = Borte an { PIECE($piece) }
use-binding = Einfassung von { PIECE($piece) }
use-ribbon = Band in { PIECE($piece) }
use-zip = die Öffnung
use-fastening = die Taille
use-opening = die Öffnung unter der Taille
use-elastic-end = das Ende des Gummibands
use-interfacing = Einlage für { PIECE($piece) }
use-petersham = der Taillenrand
use-sewn-elastic = die Kante, die es einzieht
use-hang-loops = Aufhänger
use-bustle-tape = Raffbänder
use-bustle-rings = Ringe der Raffbänder
use-bustle-cord = Kordeln der Raffbänder
use-channel = Tunnel auf { PIECE($piece) }
use-hoop = Reifen in { PIECE($piece) }
use-shirring = Smoken von { PIECE($piece) }
use-elastic = Gummiband in { PIECE($piece) }
use-cord = Kordel in { PIECE($piece) }
use-piping = Paspel an { PIECE($piece) }
use-holes = Löcher für die Kordel in { PIECE($piece) }
use-dye = Färben von { PIECE($piece) }
use-dye-trim = Färben der Borte ({ $trim })
use-starch = Stärken von { PIECE($piece) }
use-agent = Behandeln gegen Feuer: { PIECE($piece) }
# Eine Arbeitsweise, die die Schneiderin selbst beschreibt, mit ihrem Namen.
use-own = { $name }

## Die Materialtabelle für Programme

bom-width = Breite { $amount }
bom-length = Länge { $amount }
bom-weight = Gewicht { $amount }
bom-stretch = Dehnung { $amount }
bom-reel = Rolle { $amount }
# Die englische Baumwollnummer eines Fadens.
bom-count = Ne { $amount }
# Die Überschriften der Spalten.
bom-name = Name
bom-code = Bestellnummer
bom-consumption = Verbrauch je Kleidungsstück
bom-supplier = Lieferant
bom-cost = Kosten
bom-specification = Beschreibung
bom-colour = Farbe
bom-size = Größe
bom-placement = Verwendung
# Reißverschlüsse und Verschlüsse werden gezählt.
bom-pieces = Stück
