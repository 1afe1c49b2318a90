### Fronces au fil élastique : où sont les rangs de fil élastique, et de combien ils resserrent le tissu.

figure-shirring-rows = Rangs sur l’endroit
figure-shirring-drawn = { $rows } rangs le resserrent, à la même échelle
figure-shirring-stretched = étiré { $cloth }
figure-shirring-rest = au repos { $length }
figure-shirring-alt = { $rows } rangs de fil élastique, le premier à { $from-edge } du bord puis tous les { $spacing }, resserrent { $cloth } à { $length }.
figure-shirring-caption = { $rows } rangs, le premier à { $from-edge } du bord.
