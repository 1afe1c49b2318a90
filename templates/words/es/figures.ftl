### Lo que dicen igual figuras de varias clases.

figure-gap = abertura { $gap }
figure-side-seam = costura lateral
figure-not-to-scale = Sin escala.
