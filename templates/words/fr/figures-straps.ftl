### Coudre deux bretelles et les fixer à l’intérieur du bord supérieur.

figure-straps-inside = Intérieur dessus
figure-straps-alt = Un bout de bretelle est posé sur { $lap } à l’intérieur du bord supérieur, replié de { $under }, et piqué en rectangle.
figure-straps-caption = Un bout de bretelle à l’intérieur du bord.
