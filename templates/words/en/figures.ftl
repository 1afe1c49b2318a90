### What figures of several kinds say alike.

figure-gap = gap { $gap }
figure-side-seam = side seam
figure-not-to-scale = Not to scale.
