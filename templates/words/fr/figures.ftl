### Ce que des figures de plusieurs sortes disent de même.

figure-gap = ouverture { $gap }
figure-side-seam = couture de côté
figure-not-to-scale = Sans échelle.
