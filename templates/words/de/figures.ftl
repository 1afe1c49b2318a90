### Was Abbildungen mehrerer Arten gleich sagen.

figure-gap = Öffnung { $gap }
figure-side-seam = Seitennaht
figure-not-to-scale = Nicht maßstäblich.
