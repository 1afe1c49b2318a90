### Tratar piezas con un producto contra el fuego, como dice su fabricante.
### $agent: cómo se llama el producto; $liquid: cuánto hace falta, listo para usar.

flame-retardant-title = Trata contra el fuego { PIECE($pieces) }
    .number = { $liquid }
flame-retardant-aim = { PIECE($pieces, at: "start") }: con { $agent } hasta calar, y seco. Arde más despacio, hasta que se lave.
flame-retardant-caution = Ningún tratamiento libra a la tela del fuego: arde de todos modos. La etiqueta y la ficha de seguridad del producto, las normas locales y la palabra del responsable de incendios de un escenario o una sala están por encima de esta guía. No lo pruebes nunca con una llama: haz que lo comprueben.
flame-retardant-caution-skin = Estos productos irritan la piel y los ojos: ponte guantes y gafas, abre una ventana, aparta a los niños y la comida, y no tires nada de otro modo que como dice la etiqueta.
flame-retardant-caution-mist = No respires la niebla: pulveriza al aire libre o en un cuarto bien ventilado, con la mascarilla que pida la etiqueta.
flame-retardant-caution-child = Algunos productos no son para ropa, o no para niños ni en contacto con la piel: usa este solo si su etiqueta lo permite, y solo sobre otra ropa si no dice más.

flame-retardant-read = Lee la etiqueta del producto ({ $agent }): si nombra la fibra, cómo se mezcla, cuánto toma un peso de tela y qué hace con los colores. Lava y seca por última vez { PIECE($pieces) }.
    .check = La etiqueta nombra la fibra y permite ropa.
    .remedy = Si no, no lo uses: toma un producto que sí.
flame-retardant-mix = Prepara { $liquid } de { $agent } listos para usar, como dice su etiqueta. Trata antes un retal y deja que se seque.
    .check = No tiene manchas, no se pega y conserva su color.
    .remedy = Si ha cambiado, pregunta al fabricante antes de seguir.
flame-retardant-dip = Mete en el producto { PIECE($pieces) } y saca todo el aire. Tenlo sumergido el tiempo que diga la etiqueta y escúrrelo por igual. No aclares.
    .check = Está mojado del todo, sin zonas claras.
    .remedy = Vuelve a meterlo donde haya quedado seco.
flame-retardant-spray = Cuelga sobre una sábana { PIECE($pieces) } y pulveriza por los dos lados, capa por capa, hasta que esté calado y gotee.
    .check = Está mojado del todo, sin zonas claras.
    .remedy = Vuelve a pulverizar donde haya quedado seco.
flame-retardant-dry = Deja que escurra y se seque colgado, al aire, el tiempo que diga la etiqueta: lejos de calefactores y llamas.
    .check = Está seco del todo y sin costra blanca.
    .remedy = Cepilla una costra ligeramente al aire libre.
flame-retardant-keep = Guarda el retal tratado en una bolsa con el nombre del producto ({ $agent }) y el día, para quien compruebe la prenda.
flame-retardant-label = Escribe en una cinta de algodón, con un rotulador que no se vaya al lavar: tratado, el día, { $agent }, NO LAVAR. Cósela junto a la otra etiqueta.
    .check = Quien la lleve o la guarde puede leerla. Se trata y se comprueba de nuevo después de cada lavado, y una vez al año.
