### Le plan pour qui montre le travail, dans une salle ou devant une caméra.
### $piece : une pièce du vêtement. $letter : celle d’une opération du guide.

demonstration-skip = Aller à ce qu’il faut préparer
# $whose : pour qui, ou pour quelle taille, est le guide.
demonstration-for = démonstration, { $whose }

## Avant

demonstration-prepare = À tenir prêt
demonstration-prepare-are = Chacune est une pièce à part, travaillée jusqu’où il est dit : ainsi personne n’attend pendant que se coud ce qui a déjà été montré.
# $time : de toutes les parties. $parts (nombre)
demonstration-minutes = { $parts } parties, environ { $time } en tout ; chacune est montrée sur une seule pièce.
demonstration-cut = { PIECE($piece, at: "start") } : à l’état coupé
demonstration-after = { PIECE($piece, at: "start") } : dans l’état après { $letter }
demonstration-goes-on = { PIECE($piece, at: "start") } : tel que montré à l’instant en { $letter }

## Partie par partie

demonstration-parts = Partie par partie
demonstration-view = { $view ->
    [near] À voir de près : les mains, l’aiguille et le bord.
   *[wide] À voir en entier : la table et tout le tissu dessus.
 }
demonstration-ready = Prêt sur la table :
demonstration-at-hand = Sous la main :
demonstration-say = À dire avant de commencer :
demonstration-captions = Légendes :
