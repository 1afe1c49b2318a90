### La prenda entera, una capa junto a otra, con sus medidas finales.

# Qué capa es: la prenda entera si solo tiene una.
figure-overview-place = { $place ->
    [all] La prenda
    [outside] Por fuera
    [inside] Por dentro
    [sewn-on] Cosido sobre { PIECE($on) }
   *[between] En medio
 }
figure-overview-name = { $layers ->
    [one] { figure-overview-place }
   *[other] { figure-overview-place }, { $layers } capas iguales
 }
figure-overview-hem = { $ring ->
    [yes] bajo { $hem } de contorno
   *[no] borde inferior { $hem }
 }
figure-overview-drop = { $drop } desde arriba
figure-overview-dips = delante { $front }, costados { $side }, detrás { $back }
figure-overview-waist = Cintura: { $rest } sin estirar; { $cloth } de tela.
figure-overview-to-scale = { $level ->
    [yes] A escala, en plano.
   *[no] Altos a la misma escala; anchos en proporción.
 }

## En palabras

figure-overview-piece = { PIECE($piece, form: "bare") }, { $deep } de alto
figure-overview-layer = { $level ->
    [yes] { $ring ->
        [yes] { figure-overview-name }: { $pieces }, hasta { $drop } desde arriba, bajo de { $hem } de contorno.
       *[no] { figure-overview-name }: { $pieces }, hasta { $drop } desde arriba, borde inferior de { $hem }.
    }
   *[no] { figure-overview-name }: { $pieces }, borde inferior de { $hem }.
 }
figure-overview-waist-told = La cintura mide { $rest } sin estirar y lleva { $cloth } de tela.
figure-overview-alt = { $title }, { $long } de largo. { $layers }
figure-overview-caption = La prenda terminada, { $long } de largo.
