### Une pince telle qu’elle est tracée et cousue.

figure-darts-marked = Tracée sur l’envers
figure-darts-sewn = Pliée et cousue
figure-darts-leg = côté { $leg }
figure-darts-alt = Une pince avec sa ligne du milieu de { $long } depuis le bord et { $half } de chaque côté ; ses deux côtés mesurent { $leg }. Pliée sur la ligne du milieu, elle est cousue à { $half } du pli au bord et meurt à la pointe.
figure-darts-caption = Une pince, à l’échelle.
