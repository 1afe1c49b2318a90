### Ce que toutes les coupes à travers l’ouvrage disent de même.

figure-right-side-up = Endroit dessus
figure-inside-up = Intérieur dessus
figure-finished-edge = bord fini
# Finit une légende. $sided : si un tissu de la coupe a un endroit et un envers.
figure-hatched = { $sided ->
    [yes] { " " }La moitié hachurée d’un tissu est son envers.
   *[no] { "" }
 }
