### Pliegues: las líneas que se marcan en la tela lisa, y el borde plegado visto desde arriba.

figure-pleats-flat = Marcas en la tela lisa, con el derecho encima
figure-pleats-folded = Plegado, el borde visto desde arriba
figure-pleats-shown = se ven { $shown }
figure-pleats-depth = Cada pliegue tiene { $depth } de profundidad. El derecho está abajo.
figure-pleats-lines = Las líneas gruesas son las marcas; las de rayas y las de puntos, los dobleces. El borde plegado está dibujado más grande.
figure-pleats-alt = { $kind ->
    [knife] Pliegues planos: una marca cada { $every } de tela lisa, cada pliegue de { $depth } de profundidad, del que se ven { $shown }; { $count } pliegues reducen { $cloth } a { $length }.
    [box] Tablas dobles: una marca cada { $every } de tela lisa, cada tabla de { $depth } de profundidad, de la que se ven { $shown }; { $count } tablas reducen { $cloth } a { $length }.
   *[inverted] Tablas encontradas: una marca cada { $every } de tela lisa, cada tabla de { $depth } de profundidad, de la que se ven { $shown }; { $count } tablas reducen { $cloth } a { $length }.
 }
figure-pleats-caption = { $kind ->
    [knife] { $drawn } de { $count } pliegues planos, en liso y plegados.
    [box] { $drawn } de { $count } tablas dobles, en liso y plegadas.
   *[inverted] { $drawn } de { $count } tablas encontradas, en liso y plegadas.
 }
