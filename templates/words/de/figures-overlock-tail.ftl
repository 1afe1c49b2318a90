### Die Fadenkette, die eine Overlock stehen lässt, und wie sie vernäht wird.

figure-tail-chain = Die Fadenkette am Ende der Naht
figure-tail-length = etwa { $tail }
figure-tail-back = Unter die Stiche zurückziehen
figure-tail-needle = stumpfe Nadel
figure-tail-alt = Eine Kante mit Overlockstich, an ihrem Ende eine Fadenkette von etwa { $tail }, mit einer stumpfen Nadel unter die Stiche zurückgezogen.
figure-tail-caption = Die Fadenkette kommt unter die eigenen Stiche; der Rest wird abgeschnitten.
