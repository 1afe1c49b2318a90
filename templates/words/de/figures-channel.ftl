### Ein Bund im Schnitt, gefaltet und für das Gummiband gesteppt.

figure-channel-wide = Tunnel { $channel }
figure-channel-fold = Bruch
figure-channel-raw = Schnittkanten
figure-channel-alt = { PIECE($band, at: "start") } im Schnitt, Innenseite oben: zur Hälfte gefaltet, vom Bruch bis zu den Schnittkanten { $deep }, eine Naht { $edge-stitch } und eine { $row } neben dem Bruch, dazwischen der Tunnel von { $channel }.
figure-channel-caption = Der Bund im Schnitt, sein Tunnel am Bruch.{ figure-hatched }
