### Cortar una tira larga al bies de un cuadrado.

figure-bias-square = El cuadrado, cortado en diagonal
figure-bias-lines = Unido y trazado
figure-bias-alt = Un cuadrado de { $side } cortado de esquina a esquina; después sus mitades unidas en un cuadrilátero inclinado, con líneas cada { $width } a lo largo del borde al bies.
figure-bias-caption = La tira sale de un solo cuadrado.
