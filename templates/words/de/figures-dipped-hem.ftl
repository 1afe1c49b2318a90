### Eine Unterkante, die vorn höher als hinten geschnitten wird.

figure-dipped-hem-head = { PIECE($piece, at: "start") }, die Unterkante
figure-dipped-hem-front = vorn
figure-dipped-hem-side = Seite
figure-dipped-hem-back = hinten
figure-dipped-hem-alt = Die Unterkante von { PIECE($piece) } gerade ausgelegt, darüber eine Linie zum Schneiden: vorn { $front } höher, an den Seiten { $side }, hinten nichts.
figure-dipped-hem-caption = Wo die Kante höher geschnitten wird; was wegfällt, ist kreuzweise schraffiert und tiefer gezeichnet, als es ist.
