### Rubans à anneaux à l’intérieur du dos d’une jupe, lâchés et relevés.

figure-bustle-tapes-down = Lâché, vu de l’intérieur
figure-bustle-tapes-up = Relevé
figure-bustle-tapes-alt = { $tapes ->
    [one] Un ruban de { $long } à l’intérieur du dos, { $below } sous le bord supérieur, avec { $rings } anneaux à { $every } l’un de l’autre et un cordon noué à celui du bas. Relevé, il mesure { $left } et l’ourlet est { $up } plus haut.
   *[other] { $tapes } rubans de { $long } à l’intérieur du dos, à { $apart } l’un de l’autre en bas et { $below } sous le bord supérieur, chacun avec { $rings } anneaux à { $every } l’un de l’autre et un cordon noué à celui du bas. Relevés, ils mesurent { $alike ->
        [yes] { $left }
       *[no] { $lefts }, du milieu du dos vers l’extérieur,
     } et l’ourlet est { $up } plus haut.
 }
figure-bustle-tapes-caption = Les rubans lâchés, et l’un de ceux du milieu relevé, avec le nœud à l’anneau du haut.
figure-bustle-tapes-loop = boucle
figure-bustle-tapes-end = bout
